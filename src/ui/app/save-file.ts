/** Hands a file to the browser to be kept where the person wants it. */
export function saveFile(name: string, content: Blob | string, type = "text/plain"): void {
  const blob = typeof content === "string" ? new Blob([content], { type }) : content;
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
