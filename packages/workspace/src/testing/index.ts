export { fleet, pairs, trailerPlan } from './plans.js';
