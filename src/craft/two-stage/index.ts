export { searchTwoStages, type TwoStageOrder } from './search.ts';
