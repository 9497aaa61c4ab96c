/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */
let a={rectangle:{seams:2,each:1,words:""},half:{seams:"7/2",each:2,words:"cut once on the diagonal"},quarter:{seams:5,each:4,words:"cut twice on the diagonal"}},e="24 in",s="24 x 36 in";export{s as M,a as P,e as R};
