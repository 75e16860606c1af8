import { useEffect, useRef, useState } from "react";
import { useBook } from "../../../store/index.ts";
import { type PhotoFault, photoCaps, startPhotos } from "../../../workers/index.ts";
import { go, useAddressValue } from "../../app/navigate.ts";
import { hasKeys } from "../../parts/has-keys.ts";
import { Acts, Button, Field, FilePick } from "../../parts/index.ts";
import { codeWords as words } from "../../words/codes.ts";
import { photoWords } from "../../words/photos.ts";
import { OtherPage } from "../other-page.tsx";
import styles from "./code.module.css";
import { lookUp } from "./look-up.ts";
import { Outcome } from "./outcome.tsx";
import { useCamera } from "./use-camera.ts";

type Saying = keyof typeof words.notes | PhotoFault | "unread";

const saying = (said: Saying): string => {
  if (Object.hasOwn(words.notes, said)) return words.notes[said as keyof typeof words.notes]; // its own key
  const { problem, remedy } = photoWords.faults[said as PhotoFault]; // the other kind
  return `${problem} ${remedy}`;
};

/** The number in a photo, or what is to be said of it. */
async function codeIn(file: File): Promise<Readonly<{ code: string }> | Readonly<{ said: Saying }>> {
  if (file.size > photoCaps.bytes) return { said: "too-large" };
  const bytes = await file.arrayBuffer().catch(() => null);
  if (!bytes) return { said: "unread" };
  const photos = startPhotos();
  const read = await photos.readCode(bytes);
  photos.stop();
  if (!read.ok) return { said: read.fault };
  return read.code === null ? { said: "unseen" } : { code: read.code };
}

/** Finds a thing by its bar code: typed, held before the camera, or in a photo. */
export function CodePage() {
  const [address] = useAddressValue("code");
  const given = address === null || address === "find" ? "" : address;
  const [typed, setTyped] = useState(given);
  const [asked, setAsked] = useState<string | null>(given === "" ? null : given);
  const [said, setSaid] = useState<Saying | null>(null);
  const [reading, setReading] = useState(false);
  const field = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  useEffect(() => {
    if (hasKeys()) field.current?.focus(); // whoever has a reader that types can use it at once
  }, []);
  const ask = (text: string) => {
    setSaid(null);
    setTyped(text);
    setAsked(text);
    const looked = lookUp(text, useBook.getState().book.stash ?? []);
    const [only, more] = looked.kind === "found" ? looked.items : [];
    if (only && !more) go({ name: "stash-item", id: only.id });
  };
  const camera = useCamera(ask);
  const take = async ([file]: readonly File[]) => {
    if (!file || reading) return;
    camera.stop();
    setAsked(null);
    setSaid(null);
    setReading(true);
    const read = await codeIn(file);
    setReading(false);
    if ("code" in read) ask(read.code);
    else setSaid(read.said);
  };
  const trouble = said ?? camera.fault;
  return (
    <OtherPage words={words}>
      <div className={styles.ways}>
        <Field
          label={words.number}
          hint={words.numberHint}
          keys="numeric"
          value={typed}
          inputRef={field}
          onValue={(text) => {
            setTyped(text);
            setAsked(null);
          }}
          onEnter={ask}
        />
        <Acts>
          <Button kind="primary" onClick={() => ask(typed)}>
            {words.find}
          </Button>
          <Button onClick={camera.isOn ? camera.stop : camera.start}>
            {camera.isOn ? words.stop : words.camera}
          </Button>
          <FilePick label={words.photo} accept="image/*" onFiles={(files) => void take(files)} />
        </Acts>
        <p role="status">
          {camera.isOn ? words.looking : reading ? words.reading : trouble ? saying(trouble) : ""}
        </p>
        {camera.isOn && (
          <video
            ref={camera.video}
            className={styles.view}
            aria-label={words.view}
            autoPlay
            muted
            playsInline
          />
        )}
      </div>
      {asked !== null && <Outcome asked={asked} />}
    </OtherPage>
  );
}
