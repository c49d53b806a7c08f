import { hasTravelled, picksFurther, type Tool } from './tool.ts';

/** Takes hold of the paper: dragging moves it, a press alone picks out nothing. */
export const pan: Tool = {
  name: 'pan',
  begin: (_hit, start, hand) => {
    let last = start.canvas;
    let panning = false;
    return {
      cursor: 'grabbing',
      move: (at) => {
        panning ||= hasTravelled(start, at);
        if (!panning) return;
        hand.pan({ x: at.canvas.x - last.x, y: at.canvas.y - last.y });
        last = at.canvas;
      },
      end: () => {
        if (!panning && !picksFurther(start)) hand.select({});
      },
      cancel: () => undefined,
    };
  },
};
