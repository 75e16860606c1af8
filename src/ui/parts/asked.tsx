import { Button } from "./button.tsx";
import styles from "./field.module.css";

type Props = Readonly<{
  values: readonly string[];
  print: (value: string) => string;
  onValue: (value: string) => void;
}>;

/** The readings of an ambiguous text, to pick one from. */
export function Asked({ values, print, onValue }: Props) {
  return (
    <span className={styles.asked}>
      {values.map((value) => (
        <Button key={value} kind="quiet" onClick={() => onValue(value)}>
          {print(value)}
        </Button>
      ))}
    </span>
  );
}
