import { type KeyboardEvent, type MouseEvent, useEffect, useRef, useState } from "react";
import { Acts, Button, FilePick } from "../../parts/index.ts";
import { format } from "../../words/index.ts";
import { kitLogWords } from "../../words/kit-log.ts";
import { type Picked, type Pixels, pickColour, type Spot, whiteAt } from "../view/pick-colour.ts";
import styles from "./from-photo.module.css";

const text = kitLogWords.photo;

/** Wide enough to point at a swatch, and small enough for any memory. */
const widest = 1200;
const mostPixels = 60_000_000;
const radius = 9;
const stepPx = 8;

type Photo = Readonly<{ bitmap: ImageBitmap; width: number; height: number }>;

/** Opens a photo, upright as its camera meant it; a text says why it cannot be. */
async function opened(file: File): Promise<Photo | string> {
  try {
    const whole = await createImageBitmap(file);
    if (whole.width * whole.height > mostPixels) return text.large;
    const scale = Math.min(1, widest / whole.width);
    return {
      bitmap: whole,
      width: Math.round(whole.width * scale),
      height: Math.round(whole.height * scale),
    };
  } catch {
    return text.unreadable;
  }
}

type Props = Readonly<{ onTake: (hex: string) => Promise<void>; onClose: () => void }>;

/** A colour pointed at in a photo of the thing, and a white in the same light. The photo is not kept. */
export function FromPhoto({ onTake, onClose }: Props) {
  const [photo, setPhoto] = useState<Photo | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const open = async ([file]: readonly File[]) => {
    const found = file ? await opened(file) : text.unreadable;
    setFault(typeof found === "string" ? found : null);
    setPhoto(typeof found === "string" ? null : found);
  };
  return (
    <div className={styles.photo}>
      {photo ? <Pointing photo={photo} onTake={onTake} /> : <p>{fault}</p>}
      <Acts>
        <FilePick label={text.choose} accept="image/*" onFiles={(files) => void open(files)} />
        <Button kind="quiet" onClick={onClose}>
          {text.close}
        </Button>
      </Acts>
      <p className={styles.fact}>{text.gone}</p>
    </div>
  );
}

function Pointing({ photo, onTake }: Readonly<{ photo: Photo; onTake: Props["onTake"] }>) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [spot, setSpot] = useState<Spot>({
    x: Math.round(photo.width / 2),
    y: Math.round(photo.height / 2),
  });
  const [wants, setWants] = useState<"colour" | "white">("colour");
  const [colourAt, setColourAt] = useState<Spot | null>(null);
  const [white, setWhite] = useState<Spot | null>(null);
  const [picked, setPicked] = useState<Picked | null>(null);
  const [clipped, setClipped] = useState(false);
  useEffect(() => draw(canvas.current, photo, spot), [photo, spot]);

  const pick = (at: Spot) => {
    const pixels = pixelsOf(photo);
    if (!pixels) return;
    const nextWhite = wants === "white" ? at : white;
    const nextColour = wants === "colour" ? at : colourAt;
    const light = nextWhite && whiteAt(pixels, nextWhite, radius);
    setSpot(at);
    setWhite(nextWhite);
    setColourAt(nextColour);
    setClipped(nextWhite !== null && light === null);
    if (nextColour) setPicked(pickColour(pixels, nextColour, radius, light));
    setWants("colour");
  };
  const onClick = (event: MouseEvent<HTMLButtonElement>) => {
    const box = canvas.current?.getBoundingClientRect();
    if (event.detail === 0 || !box) return pick(spot); // Enter or space
    const scale = photo.width / box.width;
    pick({
      x: Math.round((event.clientX - box.left) * scale),
      y: Math.round((event.clientY - box.top) * scale),
    });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const [across, down] = moves.get(event.key) ?? [0, 0];
    if (across === 0 && down === 0) return;
    event.preventDefault();
    setSpot({
      x: Math.min(photo.width - 1, Math.max(0, spot.x + across * stepPx)),
      y: Math.min(photo.height - 1, Math.max(0, spot.y + down * stepPx)),
    });
  };
  const light = clipped ? text.clipped : white ? text.withWhite : text.noWhite;
  return (
    <>
      <p className={styles.fact}>{wants === "white" ? text.whiteHint : text.hint}</p>
      <button
        type="button"
        className={styles.canvas}
        aria-label={text.canvas}
        onClick={onClick}
        onKeyDown={onKeyDown}
      >
        <canvas ref={canvas} width={photo.width} height={photo.height} />
      </button>
      <p role="status">{picked && `${text.found(picked.hex, format.number(picked.spread, 1))}. ${light}`}</p>
      {picked && (
        <Acts>
          <Button kind="primary" onClick={() => onTake(picked.hex)}>
            {text.take}
          </Button>
          <Button onClick={() => setWants(wants === "white" ? "colour" : "white")}>
            {wants === "white" ? text.asColour : text.asWhite}
          </Button>
        </Acts>
      )}
    </>
  );
}

const moves: ReadonlyMap<string, readonly [number, number]> = new Map([
  ["ArrowLeft", [-1, 0]],
  ["ArrowRight", [1, 0]],
  ["ArrowUp", [0, -1]],
  ["ArrowDown", [0, 1]],
]);

/** The photo's own pixels, without the ring that is drawn on what is seen. */
function pixelsOf({ bitmap, width, height }: Photo): Pixels | null {
  const plain = new OffscreenCanvas(width, height).getContext("2d");
  plain?.drawImage(bitmap, 0, 0, width, height);
  return plain?.getImageData(0, 0, width, height) ?? null;
}

/** The photo with a ring round what would be taken: dark and light, so that it is seen on any colour. */
function draw(canvas: HTMLCanvasElement | null, { bitmap, width, height }: Photo, { x, y }: Spot): void {
  const pen = canvas?.getContext("2d");
  if (!pen) return;
  pen.drawImage(bitmap, 0, 0, width, height);
  for (const [colour, wide] of [
    ["#000000", 5],
    ["#ffffff", 2],
  ] as const) {
    pen.beginPath();
    pen.arc(x, y, radius + 3, 0, 2 * Math.PI);
    pen.strokeStyle = colour;
    pen.lineWidth = wide;
    pen.stroke();
  }
}
