export { type RandomScene, randomScene } from './random-scene.js';
export * from './sample-scenes.js';
export { aFrame, ladder, pile, rakedPairs, shoredBlock, strutBetweenBlocks } from './worked-scenes.js';
