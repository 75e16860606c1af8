import type { Target } from "../../app/navigate.ts";

/** What there is to keep the stash right, each at an address of its own. */
export const tidies = ["doubles", "unused", "many", "low"] as const;
export type Tidy = (typeof tidies)[number];

export const isTidy = (value: string | null): value is Tidy => tidies.some((tidy) => tidy === value);

export const tidyAddress = (tidy: Tidy): Target => `/stash?tidy=${tidy}`;
