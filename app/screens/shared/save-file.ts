/** The browser needs the address a little longer than the click, ms. */
const KEPT_FOR_MS = 60_000;

/** Lets the browser save a file under a name. */
export function saveFile(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_FOR_MS);
}
