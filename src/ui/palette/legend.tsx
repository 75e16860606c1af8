import type { ReactNode } from "react";
import { paletteWords as words } from "../words/palette.ts";
import { AloneMark, KitMark, StandInMark } from "./marks.tsx";
import styles from "./palette.module.css";

const sample = { at: { x: 10, y: 10 }, size: 5.5, fill: "none" } as const;

/** Which mark is whose. */
export const Legend = ({ alone }: Readonly<{ alone: boolean }>) => (
  <ul className={styles.legend}>
    <Key name={words.kit}>
      <KitMark {...sample} />
    </Key>
    <Key name={words.mine}>
      <StandInMark {...sample} />
    </Key>
    {alone && (
      <Key name={words.alone}>
        <AloneMark {...sample} />
      </Key>
    )}
  </ul>
);

const Key = ({ name, children }: Readonly<{ name: string; children: ReactNode }>) => (
  <li className={styles.key}>
    <svg className={styles.picture} width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      {children}
    </svg>
    {name}
  </li>
);
