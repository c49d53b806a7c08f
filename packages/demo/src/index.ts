export type { DemoImage } from './image/demo-image.ts';
export { demoImage } from './image/demo-image.ts';
export { demoPlan } from './plan/demo-plan.ts';
