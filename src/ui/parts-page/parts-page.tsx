import { Page } from "../parts/index.ts";
import { words } from "../words/index.ts";
import { ActsAndFields } from "./acts-and-fields.tsx";
import { Blocks } from "./blocks.tsx";
import { Figures } from "./figures.tsx";
import { Ground } from "./ground.tsx";
import { Pictures } from "./pictures.tsx";
import { sheet } from "./sheet-words.ts";
import { LargeSwatches, Pairs, Swatches } from "./swatches.tsx";
import { TypeSheet } from "./type-sheet.tsx";

/** The sheet of parts: everything the screens are made of, once, in every state. */
export function PartsPage() {
  return (
    <Page place={words.places.parts} title={words.places.parts} margin={sheet.address} leadMore={sheet.lead}>
      <Ground />
      <Swatches />
      <LargeSwatches />
      <Pairs />
      <TypeSheet />
      <ActsAndFields />
      <Figures />
      <Pictures />
      <Blocks />
    </Page>
  );
}
