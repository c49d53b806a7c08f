/** Hands a file to the person. */
export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}

/** A file name from a board's name: letters and numbers kept, the rest hyphens. */
export function fileNameOf(name: string, ending: string): string {
  const stem = name
    .toLocaleLowerCase('en')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${stem || 'board'}.${ending}`;
}
