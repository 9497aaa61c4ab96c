//# allFunctionsCalledOnLoad
/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */
let a={rectangle:{seams:2,each:1},half:{seams:"7/2",each:2},quarter:{seams:5,each:4}},e={in:"24 in",cm:"60 cm"},s={in:"24 x 36 in",cm:"60 x 90 cm"};export{s as M,a as P,e as R};
