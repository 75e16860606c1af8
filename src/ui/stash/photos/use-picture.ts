import { useEffect, useState } from "react";
import type { Photo } from "../../../engine/workbook/index.ts";
import { picture } from "../../../store/index.ts";

/** Where a photo can be shown from: an address of its bytes, "missing" where they are not here, null until it is known. */
export function usePicture({ sha256 }: Photo): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let isCurrent = true;
    void picture(sha256 ?? "").then((found) => {
      if (!isCurrent) return;
      if (found.ok && found.value) {
        made = URL.createObjectURL(new Blob([found.value.bytes], { type: "image/jpeg" }));
        setAddress(made);
      } else setAddress("missing");
    });
    return () => {
      isCurrent = false;
      if (made !== null) URL.revokeObjectURL(made);
    };
  }, [sha256]);
  return address;
}
