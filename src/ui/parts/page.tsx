import { type ReactNode, useEffect, useId, useRef } from "react";
import { usePath, useRoute } from "../app/navigate.ts";
import { termsOf } from "../app/terms-of.ts";
import { useSheetName } from "../app/use-sheet-name.ts";
import { words } from "../words/index.ts";
import { classes } from "./classes.ts";
import styles from "./page.module.css";
import { notAskedIn } from "./read/terms-in.ts";
import { type Tab, Tabs } from "./tabs.tsx";
import { TermsLine, Told } from "./terms.tsx";

type PageProps = Readonly<{
  /** The place it belongs to, for the window's title: words.places.kits. */
  place: string;
  /** What the page is about, or better, what it found. */
  title: string;
  tabs?: readonly Tab[];
  /** Facts and dates in the margin beside the title; above it on a phone. */
  margin?: ReactNode;
  /** An italic margin note beside the lead. */
  note?: ReactNode;
  /** The sentence that sums up the page, before any number. */
  lead?: ReactNode;
  /** What follows the lead, in pale ink. */
  leadMore?: ReactNode;
  /** Acts at the right of the title. */
  acts?: ReactNode;
  children?: ReactNode;
}>;

// The first page of a visit leaves the focus where the browser puts it.
let isFirstPage = true;

/** The title takes the focus when a page opens, so that the keyboard and a screen reader start there. */
function useTitleFocus() {
  const path = usePath();
  const ref = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each address is a page of its own
  useEffect(() => {
    if (!isFirstPage) ref.current?.focus({ preventScroll: true });
    isFirstPage = false;
  }, [path]);
  return ref;
}

/** One page of the notebook: title, tabs, the sentence that sums up, then its sections. */
export function Page({ place, title, tabs, margin, note, lead, leadMore, acts, children }: PageProps) {
  const terms = termsOf(useRoute());
  const ref = useTitleFocus();
  useEffect(() => {
    document.title = words.documentTitle(title, place);
  }, [title, place]);
  const open = tabs?.find(({ current }) => current)?.label;
  useSheetName(typeof open === "string" ? `${title}, ${open}` : title);
  return (
    <div className={styles.page}>
      {margin && <div className={styles.facts}>{margin}</div>}
      <div className={styles.head}>
        <h1 ref={ref} tabIndex={-1}>
          {title}
        </h1>
        {acts && <div className={styles.acts}>{acts}</div>}
      </div>
      {tabs && <Tabs label={title} tabs={tabs} />}
      {(lead || leadMore || note) && (
        <Beside note={note}>
          <p className={styles.leadLine}>
            {lead && (
              <span className={styles.lead}>
                <Told terms={terms}>{lead}</Told>
              </span>
            )}{" "}
            {leadMore && (
              <span className={styles.more}>
                <Told terms={notAskedIn(lead, terms)}>{leadMore}</Told>
              </span>
            )}
          </p>
        </Beside>
      )}
      {children}
      {terms.length > 0 && <TermsLine terms={terms} />}
    </div>
  );
}

type BesideProps = Readonly<{
  /** Short things that stay in the margin down to 768: a number, a date, `why?`. */
  aside?: ReactNode;
  /** A note in italics: in the margin at 1440, above at 768, led by a short double rule on a phone. */
  note?: ReactNode;
  className?: string | undefined;
  children: ReactNode;
}>;

/** Something in the writing column with its note in the margin. It can stand anywhere in a page. */
export function Beside({ aside, note, className, children }: BesideProps) {
  const hasNote = Array.isArray(note) ? note.length > 0 : Boolean(note);
  return (
    <div className={classes(styles.beside, className)}>
      {aside && <div className={styles.aside}>{aside}</div>}
      {hasNote && <div className={styles.note}>{note}</div>}
      {children}
    </div>
  );
}

type SectionProps = Omit<BesideProps, "className"> &
  Readonly<{
    title: ReactNode;
    /** A quiet act or fact at the right of the title. */
    act?: ReactNode;
    id?: string;
    level?: 2 | 3;
  }>;

/** A titled part of a page, with its note in the margin. */
export function Section({ title, act, id, level = 2, aside, note, children }: SectionProps) {
  const made = useId();
  const Title = level === 2 ? "h2" : "h3";
  return (
    <section id={id} aria-labelledby={made} className={styles.section}>
      <Beside aside={aside} note={note}>
        <div className={styles.sectionHead}>
          <Title id={made}>{title}</Title>
          {act && <div className={styles.act}>{act}</div>}
        </div>
        {children}
      </Beside>
    </section>
  );
}
