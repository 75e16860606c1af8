import { type Member, writeZip } from "../archive/write.ts";

/** One file of an archive to be. `stored`: not packed, for what a reader looks at without unpacking. */
export type Part = Readonly<{ name: string; text: string; stored?: boolean }>;

async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

async function memberOf({ name, text, stored = false }: Part): Promise<Member> {
  const bytes = new TextEncoder().encode(text);
  return stored ? { name, bytes } : { name, bytes, packed: await deflated(bytes) };
}

/** The first moment that an archive can tell: the same list always gives the same bytes. */
const always = "1980-01-01T00:00:00Z";

/** An archive of files of text, in their order. */
export async function zipOf(parts: readonly Part[]): Promise<Uint8Array<ArrayBuffer>> {
  const archive = writeZip(await Promise.all(parts.map(memberOf)), always);
  return new Uint8Array(await archive.arrayBuffer());
}
