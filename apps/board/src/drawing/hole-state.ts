/** How a hole stands out on the drawing. */
export type HoleState = 'plain' | 'hovered' | 'selected';
