import { readdirSync, readFileSync } from 'node:fs';
import { planQuilt } from '#craft';
import { openSolver } from './src/cli/solver.ts';
const solver = await openSolver();
const steps=Number(process.argv[2]??24);
for (const f of readdirSync('examples').filter(f=>f.endsWith('.quilt.json'))) {
  const text=readFileSync('examples/'+f,'utf8');
  const p=planQuilt(text,{solver,budget:{steps}}); if(!p.ok) throw 1;
  for (const x of p.value.fabrics as any[]) { if('sheets' in x.laid) continue;
    const L=x.laid.layout.length,B=x.laid.bound; if (L>B+1e-9) console.log(f.slice(0,16).padEnd(16), x.id.padEnd(10), 'len',L,'bound',B,x.laid.boundKind,'gap',(100*(L-B)/B).toFixed(1)+'%','kinds',x.pieces.length,'pieces',x.pieces.reduce((a:any,b:any)=>a+b.count,0), x.buy.proven===undefined?'':'proven '+x.buy.proven);
  }
}
