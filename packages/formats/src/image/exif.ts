const SHORT = 3;
const ORIENTATION = 0x0112;
/** A first directory with more entries than this is made up. */
const MOST_ENTRIES = 1000;

/**
 * How the stored pixels lie, 1 to 8, by the Exif data of an image; 1 where it says nothing that can be read.
 *
 * @param data  from its TIFF header on ('II' or 'MM'); untrusted
 *
 * Source: Exif 2.32 (CIPA DC-008), 4.5 and table 4, tag 0x0112; TIFF 6.0, section 2.
 */
export function orientationIn(data: DataView): number {
  if (data.byteLength < 14) return 1;
  const order = data.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return 1;
  const little = order === 0x4949;
  if (data.getUint16(2, little) !== 42) return 1;
  const directory = data.getUint32(4, little);
  if (directory + 2 > data.byteLength) return 1;
  const entries = Math.min(MOST_ENTRIES, data.getUint16(directory, little));
  for (let entry = 0; entry < entries; entry++) {
    const at = directory + 2 + entry * 12;
    if (at + 12 > data.byteLength) return 1;
    if (data.getUint16(at, little) !== ORIENTATION) continue;
    const value = data.getUint16(at + 8, little);
    return data.getUint16(at + 2, little) === SHORT && value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}
