import { type RefObject, useCallback, useEffect, useRef, useState } from "react";
import { startPhotos } from "../../../workers/index.ts";

/** Why there is no picture. */
export type CameraFault = "noCamera" | "denied" | "busy";

/** How long between two looks: a hand does not hold still for less, and the device stays cool. */
const restMs = 120;

const faults: ReadonlyMap<string, CameraFault> = new Map([
  ["NotFoundError", "noCamera"],
  ["OverconstrainedError", "noCamera"],
  ["NotAllowedError", "denied"],
  ["SecurityError", "denied"],
]);

const faultOf = (error: unknown): CameraFault =>
  (error instanceof DOMException && faults.get(error.name)) || "busy";

/** The camera on the far side, where there are two. */
async function opened(): Promise<MediaStream | CameraFault> {
  // Without it in a page that is not served securely, whatever the types say.
  const devices: MediaDevices | undefined = navigator.mediaDevices;
  if (!devices) return "noCamera";
  try {
    return await devices.getUserMedia({ video: { facingMode: "environment", width: { ideal: 1_280 } } });
  } catch (error) {
    return faultOf(error);
  }
}

const close = (stream: MediaStream): void => {
  for (const track of stream.getTracks()) track.stop();
};

/** Looks at what the camera sees, again and again, until a code is seen or nobody wants to know any more. */
async function watch(video: HTMLVideoElement, isWanted: () => boolean): Promise<string | null> {
  const photos = startPhotos();
  try {
    while (isWanted()) {
      const code = video.videoWidth > 0 ? await photos.readFrame(await createImageBitmap(video)) : null;
      if (code !== null) return code;
      await new Promise((resolve) => setTimeout(resolve, restMs));
    }
    return null;
  } finally {
    photos.stop();
  }
}

type Camera = Readonly<{
  video: RefObject<HTMLVideoElement | null>;
  isOn: boolean;
  fault: CameraFault | null;
  start: () => void;
  stop: () => void;
}>;

/** The camera, for as long as it is asked for: it is off once a code is seen, the page is left or hidden. */
export function useCamera(onCode: (code: string) => void): Camera {
  const video = useRef<HTMLVideoElement>(null);
  const told = useRef(onCode);
  told.current = onCode;
  const [isOn, setOn] = useState(false);
  const [fault, setFault] = useState<CameraFault | null>(null);
  const stop = useCallback(() => setOn(false), []);
  useEffect(() => {
    if (!isOn) return undefined;
    let stream: MediaStream | null = null;
    let isWanted = true;
    const run = async () => {
      const got = await opened();
      if (typeof got === "string") {
        setFault(got);
        return setOn(false);
      }
      stream = got;
      if (!isWanted || !video.current) return close(got);
      video.current.srcObject = got;
      const code = await watch(video.current, () => isWanted);
      if (code === null) return undefined;
      setOn(false);
      return told.current(code);
    };
    const hide = () => document.hidden && setOn(false);
    document.addEventListener("visibilitychange", hide);
    void run().catch(() => isWanted && setFault("busy"));
    return () => {
      isWanted = false;
      document.removeEventListener("visibilitychange", hide);
      if (stream) close(stream);
    };
  }, [isOn]);
  const start = useCallback(() => {
    setFault(null);
    setOn(true);
  }, []);
  return { video, isOn, fault, start, stop };
}
