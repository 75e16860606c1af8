import type { ButtonHTMLAttributes, ReactNode, Ref } from "react";
import { Link } from "../app/link.tsx";
import type { Target } from "../app/navigate.ts";
import styles from "./button.module.css";
import { classes } from "./classes.ts";

/** `primary`: the one act of a screen. `quiet`: an underlined word, for acts beside a thing. */
export type ButtonKind = "primary" | "secondary" | "quiet";

type Props = Omit<ButtonHTMLAttributes<HTMLButtonElement>, "disabled" | "type"> &
  Readonly<{
    kind?: ButtonKind;
    type?: "button" | "submit";
    /** Why it cannot be done now. The button stays reachable, so that the reason can be read. */
    notNow?: string | false | null | undefined;
    ref?: Ref<HTMLButtonElement>;
  }>;

/** A button that says what happens. */
export function Button({ kind = "secondary", type = "button", notNow, onClick, title, ...rest }: Props) {
  return (
    <button
      {...rest}
      type={type}
      className={classes(styles.button, styles[kind], Boolean(notNow) && styles.notNow, rest.className)}
      aria-disabled={notNow ? true : undefined}
      title={notNow || title}
      onClick={(event) => (notNow ? event.preventDefault() : onClick?.(event))}
    />
  );
}

type LinkProps = Readonly<{
  to: Target;
  /** What is done there at once, by its name in the search field. */
  act?: string;
  kind?: ButtonKind;
  className?: string;
  children: ReactNode;
}>;

/** A link drawn as a button: for the act that leads to another page. */
export function ButtonLink({ to, act, kind = "secondary", className, children }: LinkProps) {
  return (
    <Link to={to} act={act} className={classes(styles.button, styles[kind], className)}>
      {children}
    </Link>
  );
}

/** Buttons in a row, wrapping; on a phone one under the other. */
export function Acts({ children }: Readonly<{ children: ReactNode }>) {
  return <div className={styles.acts}>{children}</div>;
}
