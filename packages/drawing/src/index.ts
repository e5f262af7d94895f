export type * from './scene/scene.js';
