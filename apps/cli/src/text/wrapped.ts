/** Text in lines of at most `width` characters, broken between words; a longer word stands alone. */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && [...longer].length > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** The same, each line behind `indent` spaces; the first behind `lead`, which is as wide. */
export function hanging(lead: string, text: string, width: number): readonly string[] {
  const indent = ' '.repeat([...lead].length);
  const lines = wrapped(text, Math.max(20, width - indent.length));
  return (lines.length > 0 ? lines : ['']).map((line, index) => (index === 0 ? lead : indent) + line);
}
