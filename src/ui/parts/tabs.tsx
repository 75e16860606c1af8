import type { ReactNode } from "react";
import { Link } from "../app/link.tsx";
import type { Target } from "../app/navigate.ts";
import { classes } from "./classes.ts";
import styles from "./tabs.module.css";

export type Tab = Readonly<{
  label: ReactNode;
  /** A fact beside the label, such as a currency. */
  more?: ReactNode;
  to: Target;
  current: boolean;
}>;

type Props = Readonly<{
  label: string;
  tabs: readonly Tab[];
  /** `page` stands on a firm rule under the title; `view` is a switch within a page. */
  kind?: "page" | "view";
}>;

/** Pages or views side by side. They are links: each has its address. */
export function Tabs({ label, tabs, kind = "page" }: Props) {
  return (
    <nav aria-label={label} className={classes(styles.tabs, kind === "view" && styles.view)}>
      <ul>
        {tabs.map((tab) => (
          <li key={typeof tab.to === "string" ? tab.to : JSON.stringify(tab.to)}>
            <Link to={tab.to} aria-current={tab.current ? (kind === "page" ? "page" : "true") : undefined}>
              {tab.label}
              {tab.more && <span className={styles.more}> {tab.more}</span>}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
