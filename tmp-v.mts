import { readFileSync } from 'node:fs';
import { planQuilt } from '#craft';
import { openSolver } from './src/cli/solver.ts';
const solver = await openSolver();
const text=readFileSync('examples/harvest-home-throw.quilt.json','utf8');
const t=(o:any)=>{ const c=process.cpuUsage(); planQuilt(text,o); return (process.cpuUsage(c).user/1000).toFixed(0)};
for (let i=0;i<4;i++) console.log('0 steps no solver',t({budget:{steps:0}}),'0 steps solver',t({budget:{steps:0},solver}),'24 no solver',t({budget:{steps:24}}),'24 solver',t({budget:{steps:24},solver}));
