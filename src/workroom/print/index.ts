// Print: what leaves the workroom, on paper and as files.
export { PrintView } from './print-view.tsx';
