import type { Kinship } from "../../engine/supply/index.ts";
import type { Photo, Request, Workbook } from "../../engine/workbook/index.ts";
import type { ActDraft, Path } from "../journal/index.ts";
import { storeWords as words } from "../words/index.ts";
import { act, put, set } from "./record.ts";
import { removal, thenMend } from "./remove.ts";
import { change, fieldOf } from "./words.ts";

export const nameBook = (name: string): ActDraft =>
  act(words.nameBook(name), set("book", "book", ["name"], name));

/** Changes where the person lives, or which markets to report on. */
export const editHome = (path: Path, value: unknown): ActDraft =>
  act(words.changeHome(fieldOf(path)), set("book", "book", ["home", ...path], value));

/** Sets how much a trait counts for a family; undefined goes back to the built-in weight. */
export const setWeight = (family: string, trait: string, weight: number | undefined): ActDraft =>
  act(words.setWeight(trait, family), set("book", "book", ["weights", family, trait], weight));

/** Links products, or whole lines: one kinship, or a list of them as one act. */
export const addKinships = (kinships: readonly Kinship[]): ActDraft =>
  act(words.addKinships(kinships.length), ...kinships.map((kinship) => put("kinships", kinship)));

export const editKinship = (kinship: Kinship, path: Path, value: unknown): ActDraft =>
  act(change(path, words.kinship), set("kinships", kinship.id, path, value));

export const removeKinship = (kinship: Kinship): ActDraft =>
  act(words.removeKinship, removal("kinships", kinship.id));

export const addPhoto = (photo: Photo): ActDraft => act(words.addPhoto, put("photos", photo));

export const removePhoto = (book: Workbook, photo: Photo): ActDraft => ({
  label: words.removePhoto,
  changes: thenMend(book, [removal("photos", photo.id)]),
});

export const addRequest = (request: Request): ActDraft => act(words.addRequest, put("requests", request));

export const editRequest = (request: Request, path: Path, value: unknown): ActDraft =>
  act(change(path, words.request), set("requests", request.id, path, value));

export const removeRequest = (request: Request): ActDraft =>
  act(words.removeRequest, removal("requests", request.id));
