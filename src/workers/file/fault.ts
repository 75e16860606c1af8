/** Why a file is not read. The screens say each in words. */
export type FileFault =
  | "too-large"
  | "too-many-rows"
  | "too-many-columns"
  | "too-much"
  | "bomb"
  | "damaged"
  | "locked"
  | "old-spreadsheet"
  | "pdf"
  | "picture"
  | "web-page"
  | "archive"
  | "no-table"
  | "other-json"
  | "empty"
  | "unreadable";

/** A file that is refused: thrown where it is found, and a value again before it leaves the reader. */
export class Refused extends Error {
  readonly fault: FileFault;
  constructor(fault: FileFault) {
    super(fault);
    this.fault = fault;
  }
}

export const refuse = (fault: FileFault): never => {
  throw new Refused(fault);
};
