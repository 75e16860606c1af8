/** What is used of SheetJS: reading only, from parts that are unpacked already. */
declare module "@e965/xlsx/dist/xlsx.mini.min.js" {
  type CellObject = Readonly<{ t: string; v?: string | number | boolean | Date; z?: string }>;
  type Sheet = Readonly<{ "!data"?: readonly (readonly (CellObject | undefined)[] | undefined)[] }>;
  type Read = Readonly<{
    SheetNames: readonly string[];
    Sheets: Readonly<Record<string, Sheet | undefined>>;
    Workbook?: Readonly<{ Sheets?: readonly Readonly<{ Hidden?: number }>[] }>;
  }>;
  type Part = Readonly<{ name: string; type: 2; content: Uint8Array; size: number }>;
  type Parts = Readonly<{ FullPaths: readonly string[]; FileIndex: readonly Part[] }>;
  type Options = Readonly<Record<string, boolean | number>>;
  const library: Readonly<{ parse_zip: (parts: Parts, options: Options) => Read }>;
  export default library;
}
