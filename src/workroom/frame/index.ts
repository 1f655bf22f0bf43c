// The frame: home, the quilt's head and job line, and what every view shares.
export { App } from './app.tsx';
