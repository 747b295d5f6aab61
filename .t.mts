import { sawingPatterns } from "./src/core/sawing/patterns";
import { board, planned, sawLog } from "./test/support/sawing";
const products=[board(1, 4, 600),  board(1, 6, 700),  board(1, 8, 750),  board(1, 10, 800),  board(1.25, 6, 800),  board(1.25, 8, 850),  board(1.25, 10, 900),  board(2, 4, 650),  board(2, 6, 700),  board(2, 8, 750),  board(4, 4, 600),  board(6, 6, 700)];
const t=(n:number,f:()=>any)=>{let best=1e9; let w=0; const end=performance.now()+n; while(performance.now()<end){const s=performance.now();w=f().worth;best=Math.min(best,performance.now()-s);} return best.toFixed(2)+" $"+w.toFixed(2)};
const ov=(a:number,b:number)=>({...sawLog(a,a+2,16),smallEndAcross:b as never,largeEndAcross:b+2 as never});
for (const p of sawingPatterns) {
 console.log(p.title, "plain", t(1500,()=>planned(sawLog(24,24,16),products,0.09,{pattern:p})),
 "scale", t(1500,()=>planned(sawLog(24,24,16),products,0.09,{pattern:p,mill:{scaleStep:1/16}})),
 "oval", t(1000,()=>planned(ov(24,25),products,0.09,{pattern:p,mill:{}})),
 "oval scale", t(1000,()=>planned(ov(24,25),products,0.09,{pattern:p,mill:{scaleStep:1/16}})),
 "swept", t(500,()=>planned({...sawLog(24,26,16),sweep:1.5 as never},products,0.09,{pattern:p,mill:{}})),
 "swept scale", t(500,()=>planned({...sawLog(24,26,16),sweep:1.5 as never},products,0.09,{pattern:p,mill:{scaleStep:1/16}})),
);}
