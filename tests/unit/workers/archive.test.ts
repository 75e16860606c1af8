import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { packCopy, readArchive } from "../../../src/workers/archive/copy.ts";
import { bareJpeg } from "../../../src/workers/photo/jpeg.ts";
import fc from "../../chance.ts";
import { type Made, zipOf } from "./zipped.ts";

const at = "2026-05-02T10:00:00.000Z";
const text = (content: string) => new TextEncoder().encode(content);
const fixture = new Uint8Array(readFileSync("fixtures/photos/place.jpg"));
const bytes = bareJpeg(fixture) ?? new Uint8Array();
const sumOf = (of: Uint8Array) => createHash("sha256").update(of).digest("hex");
const photo = { sha256: sumOf(bytes), bytes };
const book: Made = { name: "workbook.json", content: text("{}") };
const named = (content: Uint8Array, sum = sumOf(content)): Made => ({ name: `photos/${sum}.jpg`, content });

const packed = async (json = '{"a":1}') => new Uint8Array(await packCopy(json, [photo], at).arrayBuffer());

describe("a copy with photos", () => {
  it("gives back its notebook and its photos to the byte", async () => {
    const read = await readArchive(await packed('{"name":"Märit"}'));
    expect(read).toEqual({ ok: true, copy: { json: text('{"name":"Märit"}'), photos: [photo], leftOut: 0 } });
  });

  it("is the same when another program has packed it anew", async () => {
    const read = await readArchive(
      zipOf([{ name: "photos/", content: text(""), stored: true }, book, named(bytes)]),
    );
    expect(read).toEqual({ ok: true, copy: { json: text("{}"), photos: [photo], leftOut: 0 } });
  });

  it.each([
    ["is under another's name", named(bytes, "0".repeat(64))],
    ["still says where it was taken", named(fixture)],
    ["is no photo", named(text("no photo"))],
    ["does not unpack", { ...named(bytes), says: { crc: 1 } }],
  ])("leaves out a photo that %s, and says so", async (_, made) => {
    expect(await readArchive(zipOf([book, made]))).toMatchObject({
      ok: true,
      copy: { photos: [], leftOut: 1 },
    });
  });

  // PKWARE APPNOTE.TXT 4.4.17.1: names are relative, with forward slashes, and without a drive
  it.each([
    ["../workbook.json"],
    ["photos/../../x.jpg"],
    ["/etc/passwd"],
    ["C:/x"],
    ["photos\\x.jpg"],
    ["a\0b"],
  ])("is refused with a file that is called %j", async (name) => {
    const read = await readArchive(zipOf([book, { name, content: text("x") }]));
    expect(read).toEqual({ ok: false, fault: "hostile" });
  });

  it.each<[string, Uint8Array, string]>([
    ["without a notebook", zipOf([named(bytes)]), "no-copy"],
    ["with two notebooks", zipOf([book, book]), "damaged"],
    ["with a notebook that does not unpack", zipOf([{ ...book, says: { crc: 1 } }]), "damaged"],
    ["with a password", zipOf([{ ...book, says: { flags: 1 } }]), "locked"],
    ["that would fill the memory", zipOf([{ ...book, says: { unpacked: 400_000_000 } }]), "bomb"],
    ["whose notebook is larger than it says", zipOf([{ ...book, says: { unpacked: 1 } }]), "bomb"],
    ["of too many files", zipOf([book], 2_001), "bomb"],
    ["that is cut", zipOf([book, named(bytes)]).slice(0, -30), "damaged"],
    ["that is none", text("PK\x03\x04 and no more"), "damaged"],
  ])("is refused %s", async (_, file, fault) => {
    expect(await readArchive(file)).toEqual({ ok: false, fault });
  });

  it("never gives a damaged byte for a whole one", async () => {
    const whole = await packed();
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), async (place, by) => {
        const read = await readArchive(whole.with(place, (whole[place] ?? 0) ^ by));
        if (!read.ok) return;
        const { json, photos } = read.copy;
        expect(json).toEqual(text('{"a":1}'));
        for (const one of photos) expect(one).toEqual(photo);
      }),
    );
  });
});
