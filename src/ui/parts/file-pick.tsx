import { useId } from "react";
import { classes } from "./classes.ts";
import styles from "./file-pick.module.css";

type Props = Readonly<{
  /** What happens with the file: "Choose a backup". */
  label: string;
  /** As the `accept` attribute: ".json,.zip" or "image/*". */
  accept?: string;
  many?: boolean;
  /** Opens the camera on a phone. */
  camera?: boolean;
  kind?: "primary" | "secondary";
  onFiles: (files: readonly File[]) => void;
}>;

/** The one way to pick files. The same file can be picked again. */
export function FilePick({
  label,
  accept,
  many = false,
  camera = false,
  kind = "secondary",
  onFiles,
}: Props) {
  const id = useId();
  return (
    <span className={styles.pick}>
      <input
        id={id}
        type="file"
        className={styles.input}
        accept={accept}
        multiple={many}
        capture={camera ? "environment" : undefined}
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = "";
          if (files.length > 0) onFiles(files);
        }}
      />
      <label htmlFor={id} className={classes(styles.button, kind === "primary" && styles.primary)}>
        {label}
      </label>
    </span>
  );
}
