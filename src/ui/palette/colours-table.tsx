import { type Column, Table } from "../parts/index.ts";
import { paletteWords } from "../words/palette.ts";
import styles from "./palette.module.css";
import type { ColourRow } from "./view/palette.ts";

const words = paletteWords.table;

const Colour = ({ name, lab }: Readonly<{ name: string; lab: string }>) => (
  <>
    {name} {lab && <span className={styles.lab}>{lab}</span>}
  </>
);

const columns: readonly Column<ColourRow>[] = [
  {
    key: "line",
    head: words.line,
    names: true,
    width: "24%",
    cell: ({ number, name }) => (
      <span className={styles.line}>
        <span className={styles.lineNumber}>{number}</span> <span>{name}</span>
      </span>
    ),
  },
  { key: "kit", head: words.kit, cell: ({ kit, kitLab }) => <Colour name={kit} lab={kitLab} /> },
  {
    key: "mine",
    head: words.mine,
    cell: ({ mine, mineLab }) => mine && <Colour name={mine} lab={mineLab} />,
  },
  { key: "apart", head: words.apart, align: "end", cell: ({ apart }) => apart },
  { key: "how", head: words.how, width: "20%", cell: ({ how }) => how },
];

/** All that the picture shows, in words and figures. */
export const ColoursTable = ({ rows }: Readonly<{ rows: readonly ColourRow[] }>) => (
  <>
    <Table caption={words.caption} columns={columns} rows={rows} keyOf={({ line }) => line} />
    <p className={styles.about}>{words.about}</p>
  </>
);
