/** The browser's store of site images, by their addresses: filled by whoever fetches or brings one, read without a network. */
export const KEPT_IMAGES = 'loopwright-images';

/** Images of the last so many that were looked at; an aerial has some 30 MB. */
export const MOST_IMAGES = 12;
