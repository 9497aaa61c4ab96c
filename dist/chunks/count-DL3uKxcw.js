/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */
import{an as e}from"./sheet-CaXQskiH.js";let t=e(2e4,{initial:"1"},0);export{t as b};
