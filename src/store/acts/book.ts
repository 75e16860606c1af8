import type { Kinship } from "../../engine/supply/index.ts";
import type { Photo, Request, Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { act, put, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change, fieldWord } from "./words.ts";

export const nameBook = (name: string): ActDraft =>
  act(`Name the workbook ${name}`, set("book", "book", ["name"], name));

/** Changes where the person lives, or which markets to report on. */
export const editHome = (path: Path, value: unknown): ActDraft =>
  act(`Change the ${fieldWord(path)}`, set("book", "book", ["home", ...path], value));

/** Sets how much a trait counts for a family; undefined goes back to the built-in weight. */
export const setWeight = (family: string, trait: string, weight: number | undefined): ActDraft =>
  act(
    `Change how much ${trait} counts for ${family}`,
    set("book", "book", ["weights", family, trait], weight),
  );

export const addKinship = (kinship: Kinship): ActDraft => act("Link two products", put("kinships", kinship));

export const editKinship = (kinship: Kinship, path: Path, value: unknown): ActDraft =>
  act(change(path, "a link of two products"), set("kinships", kinship.id, path, value));

export const removeKinship = (kinship: Kinship): ActDraft =>
  act("Unlink two products", removal("kinships", kinship.id));

export const addPhoto = (photo: Photo): ActDraft => act("Add a photo", put("photos", photo));

export const removePhoto = (book: Workbook, photo: Photo): ActDraft => ({
  label: "Remove a photo",
  changes: thenMend(book, [removal("photos", photo.id)]),
});

export const addRequest = (request: Request): ActDraft => act("Add a request", put("requests", request));

export const editRequest = (request: Request, path: Path, value: unknown): ActDraft =>
  act(change(path, "a request"), set("requests", request.id, path, value));

export const removeRequest = (request: Request): ActDraft =>
  act("Remove a request", removal("requests", request.id));
