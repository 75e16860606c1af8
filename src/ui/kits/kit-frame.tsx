import { type ReactNode, useMemo } from "react";
import type { Kit } from "../../engine/worth/index.ts";
import { newId, removeKit, startRemake, useBook } from "../../store/index.ts";
import { type Act, useOffer } from "../app/acts.ts";
import { doAct } from "../app/do-act.ts";
import { go } from "../app/navigate.ts";
import { hrefOf, type KitTab, kitTabs } from "../app/route.ts";
import { Button, ButtonLink, Empty, Menu, Page } from "../parts/index.ts";
import { format, words } from "../words/index.ts";
import { kitsWords } from "../words/kits.ts";
import styles from "./kits.module.css";
import { today } from "./today.ts";
import { kitName } from "./view/kits-list.ts";

const text = kitsWords.kit;

type Props = Readonly<{
  kit: Kit;
  tab: KitTab;
  lead?: ReactNode;
  leadMore?: ReactNode;
  note?: ReactNode;
  children: ReactNode;
}>;

/** What a kit's three pages have in common: its title, tabs and dates, and the acts about the whole kit. */
export function KitFrame({ kit, tab, children, ...rest }: Props) {
  const acts = useKitActs(kit);
  const [first, ...others] = acts;
  const tabs = kitTabs.map((name) => ({
    label: text[name],
    to: { name: "kit", id: kit.id, tab: name } as const,
    current: name === tab,
  }));
  useOffer(useMemo(() => [...acts, ...pagesOf(kit)], [acts, kit]));
  return (
    <Page
      {...rest}
      place={words.places.kits}
      title={kitName(kit)}
      tabs={tabs}
      margin={<Dates kit={kit} tab={tab} />}
      acts={
        <div className={styles.acts}>
          {first && <Button onClick={first.run}>{first.name}</Button>}
          <Menu
            label={text.acts}
            name={text.actsName}
            acts={others.map(({ name, run }) => ({ label: name, onPick: run }))}
          />
        </div>
      }
    >
      {children}
    </Page>
  );
}

function Dates({ kit, tab }: Pick<Props, "kit" | "tab">) {
  const second =
    tab === "contents"
      ? kit.loggedOn && text.logged(format.date(kit.loggedOn))
      : kit.valuedOn && text.valued(format.date(kit.valuedOn));
  return (
    <>
      <p>{text.of(format.month(kit.period))}</p>
      {second && <p>{second}</p>}
    </>
  );
}

/** The kit's pages, by name from the search field. */
const pagesOf = (kit: Kit): readonly Act[] =>
  kitTabs.map((tab) => ({
    name: text[tab],
    fact: kitName(kit),
    run: () => go({ name: "kit", id: kit.id, tab }),
  }));

/** Starts a remake of the kit, or goes on with the one under way; removes the kit. */
function useKitActs(kit: Kit) {
  const book = useBook((state) => state.book);
  return useMemo(() => {
    const underWay = (book.remakes ?? []).find((remake) => remake.kit === kit.id && !remake.finished);
    const open = (id: string) => go({ name: "remake", id, tab: "stand-ins" });
    const start = async () => {
      const id = newId("rm-", book.remakes);
      const prompts = kit.prompt ? [{ text: kit.prompt, from: "kit" }] : [];
      const remake = { id, kit: kit.id, started: today(), ...(prompts.length > 0 ? { prompts } : {}) };
      if (await doAct(startRemake(remake, kit))) open(id);
    };
    const remove = async () => {
      if (await doAct(removeKit(book, kit))) go({ name: "kits" });
    };
    return [
      underWay ? { name: text.goOn, run: () => open(underWay.id) } : { name: text.remake, run: start },
      {
        name: text.another,
        run: () => go(`${hrefOf({ name: "kits" })}?${new URLSearchParams({ from: kit.id })}`),
      },
      { name: text.remove, run: remove },
    ];
  }, [book, kit]);
}

/** What stands at the address of a kit that is not there. */
export function NoSuchKit() {
  return (
    <Page place={words.places.kits} title={text.gone}>
      <Empty title={text.gone} act={<ButtonLink to={{ name: "kits" }}>{text.toKits}</ButtonLink>}>
        {text.goneText}
      </Empty>
    </Page>
  );
}
