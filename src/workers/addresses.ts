import charts from "./charts.ts?worker&url";
import photos from "./photos.ts?worker&url";
import tables from "./tables.ts?worker&url";

/** Where our own workers are. */
const addresses = { charts, photos, tables } as const;

/** What is used of trusted types, where the browser has them. */
type Policies = Readonly<{
  createPolicy: (
    name: string,
    rules: Readonly<{ createScriptURL: (address: string) => string }>,
  ) => Readonly<{ createScriptURL: (address: string) => unknown }>;
}>;

const policies = (globalThis as Readonly<{ trustedTypes?: Policies }>).trustedTypes;

/** The app's one policy: it passes the addresses of our own workers, and nothing else. */
const policy = policies?.createPolicy("app", {
  createScriptURL: (address) => {
    if (Object.values(addresses).some((known) => known === address)) return address;
    throw new TypeError("not the address of a worker of ours");
  },
});

/** The address of one of our workers, as `new Worker` takes it under the content policy. */
export const workerAddress = (name: keyof typeof addresses): string =>
  (policy?.createScriptURL(addresses[name]) ?? addresses[name]) as string; // a trusted address stands for its text
