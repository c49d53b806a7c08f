import { useEffect } from 'react';

/** Hears files that are pasted onto the page; text pasted into a field is the field's. */
export function usePastedFiles(onFiles: (files: readonly File[]) => void): void {
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const files = [...(event.clipboardData?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      onFiles(files);
    };
    window.addEventListener('paste', paste);
    return () => window.removeEventListener('paste', paste);
  }, [onFiles]);
}
