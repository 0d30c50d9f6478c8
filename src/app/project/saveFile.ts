/** Hands a text or picture to the browser's own way of saving files. */
export function saveFile(name: string, content: string | Blob, type = "application/json"): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = fileName(name);
  link.click();
  // The browser has begun to read by then; the address is of no use afterwards.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** What any file system takes: letters, digits, dots and dashes. */
export function fileName(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}.]+/gu, "-")
    .replace(/^[-.]+|[-.]+$/g, "")
    .slice(0, 80);
  return plain === "" ? "project.json" : plain;
}
