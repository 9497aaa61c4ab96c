/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */
import{n as s}from"./sheet-BTcN30_z.js";let t=(s,t,e)=>t.mul(s).sub(e.mul(s-1)),e=(t,e,u)=>e.gte(t)?1:e.gt(u)?s(t.sub(u).div(e.sub(u))):void 0;export{e as f,t as r};
