/** Today where the person is, as `YYYY-MM-DD`. */
export function today(now: Date = new Date()): string {
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
