/** Others' drags from which on a picture is too short for all that follows from them. */
const CROWD = 4;

/** What a picture moves on: others' hands on the drawing, the figures about it, or both. My own hand always. */
export type PictureTurn = 'both' | 'hands' | 'figures';

/**
 * In a crowd hands and figures take turns: 30 times a second each at 60 pictures, where a number that changes faster
 * could not be read anyway. A picture of hands is always followed by one of figures.
 */
export function openPictureTurns(): (othersDragging: number) => PictureTurn {
  let last: PictureTurn = 'both';
  return (othersDragging) => {
    if (last === 'hands') last = 'figures';
    else last = othersDragging < CROWD ? 'both' : 'hands';
    return last;
  };
}
