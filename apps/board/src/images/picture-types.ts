/** What the choice of a file offers: pictures and their world files. */
export const PICTURE_TYPES = ['image/png', 'image/jpeg', 'image/webp', '.pgw', '.jgw', '.tfw', '.wld'];
