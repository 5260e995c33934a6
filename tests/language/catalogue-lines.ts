/** Every line of a catalogue with its path, such as 'ledger.counts.plants'. */
export function catalogueLines(catalogue: object, path = ''): Map<string, string> {
  const lines = new Map<string, string>();
  for (const [key, value] of Object.entries(catalogue)) {
    const here = path ? `${path}.${key}` : key;
    if (typeof value === 'string') lines.set(here, value);
    else for (const [below, line] of catalogueLines(value as object, here)) lines.set(below, line);
  }
  return lines;
}
