import { backupFile, recordsIn, useBook } from "../../store/index.ts";
import { saveFile } from "../app/save-file.ts";
import { noteCopy } from "./last-copy.ts";
import { copyName, writtenText } from "./view/copy.ts";
import { dayOf } from "./view/moment.ts";

/** Saves everything as a file, notes when, and says what was written. It needs no room on the device. */
export function saveWholeCopy(): string {
  const { book } = useBook.getState();
  const at = new Date().toISOString();
  const file = backupFile(book, at);
  const name = copyName(book.name, dayOf(at));
  saveFile(name, file.text, file.type);
  noteCopy(at);
  return writtenText(name, file, recordsIn(book));
}
