import { readdirSync, readFileSync } from 'node:fs';
import { planQuilt } from '#craft';
import { openSolver } from './src/cli/solver.ts';
const solver = await openSolver();
const steps=(process.argv[2]??'0,6,24').split(',').map(Number);
for (const f of readdirSync('examples').filter(f=>f.endsWith('.quilt.json'))) {
  const text=readFileSync('examples/'+f,'utf8'); let out=f.slice(0,20).padEnd(20);
  planQuilt(text,{budget:{steps:0}});
  for (const s of steps) { const c=process.cpuUsage(); const p=planQuilt(text,{solver,budget:{steps:s}}); const ms=process.cpuUsage(c).user/1000; if(!p.ok) throw 1;
    const fs=p.value.fabrics.filter(x=>!('sheets' in x.laid)) as any[]; const used=fs.reduce((a,x)=>a+x.laid.layout.length,0), b=fs.reduce((a,x)=>a+x.laid.bound,0);
    out+=` | ${s}: ${ms.toFixed(0)}ms ${used.toFixed(2)} gap ${(100*(used-b)/b).toFixed(2)}% proven ${fs.filter(x=>x.laid.layout.length<=x.laid.bound+1e-9).length}/${fs.length}`; }
  console.log(out);
}
