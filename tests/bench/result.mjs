export const median = (values) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** A gate on how many times as long we take as the peer beside us. */
export const ratio = (gate, what, ours, peer, limit, more) => ({
  gate,
  what,
  figure: `${(ours / peer).toFixed(3)}x`,
  limit: `${limit}x`,
  met: ours / peer <= limit,
  more: [`${ours.toFixed(1)} ÷ ${peer.toFixed(1)} ms`, more].filter(Boolean).join("; "),
});

/** A gate on a figure as it stands. */
export const within = (gate, what, figure, limit, unit, more) => ({
  gate,
  what,
  figure: `${figure.toFixed(unit === "ms" ? 0 : 2)} ${unit}`.trim(),
  limit: `${limit} ${unit}`.trim(),
  met: figure <= limit,
  more,
});
