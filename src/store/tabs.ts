/** Tells the other tabs of this browser that the book has changed. */
export type Tabs = Readonly<{
  tell: (revision: number) => void;
  /** Hears of the revision that another tab has reached. */
  listen: (listener: (revision: number) => void) => void;
  close: () => void;
}>;

/** Tabs that reach each other by this name; a browser without channels has each tab find out when it writes. */
export function channelTabs(name: string): Tabs {
  if (typeof BroadcastChannel === "undefined") return { tell: () => {}, listen: () => {}, close: () => {} };
  const channel = new BroadcastChannel(name);
  return {
    tell: (revision) => channel.postMessage(revision),
    listen: (listener) => {
      channel.onmessage = ({ data }: MessageEvent<unknown>) => {
        if (typeof data === "number") listener(data);
      };
    },
    close: () => channel.close(),
  };
}
