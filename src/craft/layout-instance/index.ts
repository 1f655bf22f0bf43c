export type { Instance, InstanceSheet, Item } from './instance.ts';
export { type InstanceJob, type ItemShare, jobFor } from './instance-job.ts';
export { type LayoutProblem, problemFor } from './layout-problem.ts';
export type { Counted, InstanceProblem, Shape } from './problems.ts';
export { parseInstance } from './read-instance.ts';
