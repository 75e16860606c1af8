/** How wide letters are, in parts of their size: near enough to break lines by, and rather too wide than too narrow. */
const narrow = /[iljtfrI.,:;'’!|()[\]\s-]/;
const wide = /[mwMWÅÄÖ@%&…—]/;

const letterWidth = (letter: string): number => {
  if (narrow.test(letter)) return 0.32;
  if (wide.test(letter)) return 0.86;
  if (/[\u2e80-\uffef]/.test(letter)) return 1; // kana and ideographs fill their square
  return /\p{Lu}/u.test(letter) ? 0.64 : 0.54;
};

export const textWidth = (text: string): number =>
  [...text].reduce((sum, letter) => sum + letterWidth(letter), 0);

/** As much of a text as fits, with an ellipsis where there was more. */
function cut(text: string, room: number): string {
  if (textWidth(text) <= room) return text;
  let kept = "";
  for (const letter of text) {
    if (textWidth(`${kept}${letter}…`) > room) break;
    kept += letter;
  }
  return `${kept.trimEnd()}…`;
}

/**
 * Words in at most `most` lines that fit; the last one ends in an ellipsis where there is more.
 * @param room the width of a line, in sizes of its letters
 */
export function brokenInto(text: string, room: number, most: number): readonly string[] {
  const lines: string[] = [];
  let rest = text.replace(/\s+/g, " ").trim();
  while (rest !== "" && lines.length < most - 1 && textWidth(rest) > room) {
    const words = rest.split(" ");
    let count = 1;
    while (count < words.length && textWidth(words.slice(0, count + 1).join(" ")) <= room) count += 1;
    if (textWidth(words.slice(0, count).join(" ")) > room) break; // one long word: it is cut
    lines.push(words.slice(0, count).join(" "));
    rest = words.slice(count).join(" ");
  }
  return rest === "" ? lines : [...lines, cut(rest, room)];
}
