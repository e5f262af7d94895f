export { library } from './generated/library.js';
export { rulePages } from './generated/rule-pages.js';
export * from './protocol/requests.js';
