export { fleet, pairs, scaleHousePlan, trailerPlan } from './plans.js';
