export * from './protocol/requests.js';
