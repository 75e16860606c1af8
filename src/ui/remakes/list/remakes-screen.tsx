import { useMemo } from "react";
import { useBook } from "../../../store/index.ts";
import { Link } from "../../app/link.tsx";
import { ButtonLink, type Column, Empty, Page, Table } from "../../parts/index.ts";
import { words as common } from "../../words/index.ts";
import { remakeWords } from "../../words/remakes.ts";
import { type RemakeRow, remakesView } from "../view/list.ts";
import styles from "./start.module.css";
import { Start } from "./start.tsx";

const words = remakeWords.list;

const columns: readonly Column<RemakeRow>[] = [
  {
    key: "kit",
    head: words.kit,
    names: true,
    width: "32%",
    cell: ({ id, title }) => (
      <Link className={styles.title} to={{ name: "remake", id, tab: "stand-ins" }}>
        {title}
      </Link>
    ),
  },
  { key: "maker", head: words.maker, cell: ({ maker }) => maker },
  { key: "begun", head: words.begun, cell: ({ begun }) => begun },
  { key: "stands", head: words.stands, cell: ({ stands }) => stands },
];

/** Every remake and where it stands, and the start of another. */
export function RemakesScreen() {
  const book = useBook((state) => state.book);
  const view = useMemo(() => remakesView(book), [book]);
  const place = common.places.remakes;
  if ((book.kits ?? []).length === 0) {
    return (
      <Page place={place} title={place}>
        <Empty
          title={words.noKitsTitle}
          act={
            <ButtonLink kind="primary" to={{ name: "kits" }}>
              {words.toKits}
            </ButtonLink>
          }
        >
          {words.noKitsText}
        </Empty>
      </Page>
    );
  }
  return (
    <Page place={place} title={place} lead={view.rows.length > 0 ? view.lead : null}>
      {view.rows.length > 0 ? (
        <Table caption={words.caption} columns={columns} rows={view.rows} keyOf={({ id }) => id} />
      ) : (
        <Empty title={words.emptyTitle}>{words.emptyText}</Empty>
      )}
      <Start book={book} />
    </Page>
  );
}
