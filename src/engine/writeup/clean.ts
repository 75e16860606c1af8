// Controls, bidi controls and zero-width signs: invisible, and able to make a text lie about its order.
const invisible = /[\p{Cc}\u00AD\u061C\u200B-\u200F\u2028-\u202E\u2060-\u2069\uFEFF]/gu;

/**
 * Text on one line that a platform takes as it stands: composed (NFC), nothing invisible, no angle brackets.
 */
export const clean = (text: string): string =>
  text
    .normalize("NFC")
    .replace(/\s+/gu, " ")
    .replace(invisible, "")
    .replaceAll("<", "‹")
    .replaceAll(">", "›")
    .trim();

/**
 * The same for text outside chapters and tags, where `1:30` would become a link into the video and `#` a tag.
 */
export const cleanProse = (text: string): string =>
  clean(text)
    .replaceAll("#", "")
    .replace(/(\d):(?=\d\d)/g, "$1.");
