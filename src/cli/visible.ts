// Controls (line breaks and the escape that steers a terminal among them), line separators, bidi controls.
const unseen = /[\p{Cc}\u2028\u2029\u202A-\u202E\u2066-\u2069]/gu;

const written = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;

/**
 * Text out of a file as it may stand on one line of a terminal: what would break the line or steer the
 * terminal is written out (`\u000a`). JSON needs none of this, it escapes by itself.
 */
export const visible = (text: string): string => text.replace(unseen, written);
