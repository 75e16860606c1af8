const signs = "[-–—‒*+•·▪◦‣⁃∙●○■□◆◇★☆►▸▹➤→»›✓✗✔✘☐☑☒⬜⬛]";
const picture =
  "\\p{Extended_Pictographic}(?:\\uFE0F|\\u200D\\p{Extended_Pictographic}|[\\u{1F3FB}-\\u{1F3FF}])*";

// A number with a dot or bracket and a space numbers the line; "0.3 mm" and "2 gouache" do not.
const bullet = new RegExp(
  `^(?:\\s|\\u200B|\\uFEFF)*(?:${signs}(?:\\s+|(?=\\p{L}))|[•▪◦‣●☐☑✓✔]|\\[[ xX✓]?\\]\\s*|\\(?\\d{1,3}[.)]\\s+|[a-z]\\)\\s+|#{1,6}\\s+|\\d\\uFE0F?\\u20E3\\s*|[\\u2460-\\u2473]\\s*|(?:${picture})+\\s*)+`,
  "u",
);

/** A line without what lists it: bullets, boxes, numbers, pictures. A line that is nothing else stays as it is. */
export function withoutBullet(line: string): string {
  const text = line.replace(bullet, "");
  return text.trim() === "" ? line : text;
}
