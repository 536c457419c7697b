// The door of @tinwright/testing. Names, no `export *`.
export { verifyFlat, verifyForm } from '@tinwright/core';
export type { Duty } from './duty.js';
export { type ContractOptions, familyContract, familyDuties } from './family-contract.js';
export { paramsOf } from './params-of.js';
export { type Params, planOne } from './plan-one.js';
export { bendings, type RandomSheet, sheets } from './sheets.js';
export { type PlanFlaw, verifyPlan } from './verify-plan.js';
