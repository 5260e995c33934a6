/** Saves a file on the visitor's device; it is made here and sent nowhere. */
export function saveFile(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has the file's content by the next turn; the address can go.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
