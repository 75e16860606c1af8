import { useId, useMemo, useState } from "react";
import type { StashItem } from "../../../engine/supply/index.ts";
import type { Photo } from "../../../engine/workbook/index.ts";
import { removeItemPhoto, useBook } from "../../../store/index.ts";
import { useOffer } from "../../app/acts.ts";
import { doAct } from "../../app/do-act.ts";
import { Button, Dialog, Fault, FilePick } from "../../parts/index.ts";
import { photoWords as words } from "../../words/photos.ts";
import styles from "./photos.module.css";
import { type Refusal, takePhoto } from "./take-photo.ts";
import { usePicture } from "./use-picture.ts";

type Props = Readonly<{ item: StashItem; level: 2 | 3 }>;

/** The photos of an item: small, each to be seen larger and removed; and one more to choose or take. */
export function Photos({ item, level }: Props) {
  const all = useBook((state) => state.book.photos);
  const titleId = useId();
  const [open, setOpen] = useState<string | null>(null);
  const photos = useMemo(
    () => (item.photos ?? []).flatMap((id) => all?.find((photo) => photo.id === id) ?? []),
    [item, all],
  );
  const altOf = (photo: Photo) => words.photoOf(item.supply.name, photos.indexOf(photo) + 1, photos.length);
  const opened = photos.find(({ id }) => id === open) ?? null;
  const remove = (photo: Photo) => {
    setOpen(null);
    void doAct(removeItemPhoto(useBook.getState().book, item, photo.id), words.removed(item.supply.name));
  };
  const Head = level === 2 ? "h2" : "h3";
  return (
    <section aria-labelledby={titleId} className={styles.photos}>
      <Head id={titleId} className={styles.head}>
        {words.title}
      </Head>
      {photos.length > 0 && (
        <ul className={styles.list}>
          {photos.map((photo) => (
            <li key={photo.id}>
              <button
                type="button"
                className={styles.small}
                aria-haspopup="dialog"
                onClick={() => setOpen(photo.id)}
              >
                <Small photo={photo} alt={altOf(photo)} />
              </button>
            </li>
          ))}
        </ul>
      )}
      <AddPhoto item={item} />
      <Dialog
        open={opened !== null}
        wide
        title={opened && altOf(opened)}
        onClose={() => setOpen(null)}
        acts={
          <>
            <Button onClick={() => setOpen(null)}>{words.close}</Button>
            <Button kind="quiet" onClick={() => opened && remove(opened)}>
              {words.remove}
            </Button>
          </>
        }
      >
        {opened && <Large photo={opened} alt={altOf(opened)} />}
      </Dialog>
    </section>
  );
}

type PictureProps = Readonly<{ photo: Photo; alt: string }>;

function Small({ photo, alt }: PictureProps) {
  const address = usePicture(photo);
  if (address === "missing") return <span className={styles.missing}>{words.missingShort}</span>;
  return address && <img src={address} alt={alt} />;
}

function Large({ photo, alt }: PictureProps) {
  const address = usePicture(photo);
  if (address === "missing") return <p>{words.missing}</p>;
  return address && <img src={address} alt={alt} className={styles.large} />;
}

type Refused = Readonly<{ name: string; why: Refusal }>;

function AddPhoto({ item }: Readonly<{ item: StashItem }>) {
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<Refused | null>(null);
  const add = useMemo(
    () => ({
      name: words.addNamed(item.supply.name),
      run: () => document.getElementById(id)?.querySelector("input")?.focus(),
    }),
    [id, item.supply.name],
  );
  useOffer(useMemo(() => [add], [add]));
  const take = async ([file]: readonly File[]) => {
    if (!file || busy) return;
    setRefused(null);
    setBusy(true);
    const why = await takePhoto(file, item);
    setBusy(false);
    if (why) setRefused({ name: file.name, why });
  };
  return (
    <div id={id} className={styles.add}>
      <FilePick label={words.add} accept="image/*" onFiles={(files) => void take(files)} />
      <p role="status" className={styles.hint}>
        {busy ? words.busy : words.hint}
      </p>
      {refused && (
        <Fault title={words.refused(refused.name)}>
          {words.faults[refused.why].problem} {words.faults[refused.why].remedy} {words.nothingAdded}
        </Fault>
      )}
    </div>
  );
}
