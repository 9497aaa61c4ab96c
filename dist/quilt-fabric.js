//# allFunctionsCalledOnLoad
/*! quilt-reckoner: MIT. Inside: lit, BSD-3-Clause; fraction.js, MIT. See third-party-licenses.txt */
import{aS as t,as as e,G as a}from"./chunks/sheet-D3GbB3sd.js";class s extends t{static{this.properties={letter:{},name:{},fabricWidth:{attribute:"fabric-width"},sheet:{},price:{},swatch:{},atHand:{attribute:"at-hand"}}}render(){return e}updated(){this.dispatchEvent(new Event("reckoned",{bubbles:!0}))}}a("quilt-fabric",s);export{s as QuiltFabric};
