/** Whether brackets nest deeper than `limit` anywhere outside texts: no honest workbook does. */
export function nestsDeeperThan(json: string, limit: number): boolean {
  let depth = 0;
  let inText = false;
  for (let i = 0; i < json.length; i += 1) {
    const sign = json[i];
    if (inText) {
      if (sign === "\\") i += 1;
      else if (sign === '"') inText = false;
    } else if (sign === '"') inText = true;
    else if (sign === "{" || sign === "[") {
      depth += 1;
      if (depth > limit) return true;
    } else if (sign === "}" || sign === "]") depth -= 1;
  }
  return false;
}
