"use strict";(()=>{function _n(e,t){return e==null||t==null?NaN:e<t?-1:e>t?1:e>=t?0:NaN}function Rr(e,t){return e==null||t==null?NaN:t<e?-1:t>e?1:t>=e?0:NaN}function ea(e){let t,n,i;e.length!==2?(t=_n,n=(a,l)=>_n(e(a),l),i=(a,l)=>e(a)-l):(t=e===_n||e===Rr?e:D3,n=e,i=e);function r(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<0?c=h+1:u=h}while(c<u)}return c}function s(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<=0?c=h+1:u=h}while(c<u)}return c}function o(a,l,c=0,u=a.length){let h=r(a,l,c,u-1);return h>c&&i(a[h-1],l)>-i(a[h],l)?h-1:h}return{left:r,center:o,right:s}}function D3(){return 0}function fv(e){return e===null?NaN:+e}function*N3(e,t){if(t===void 0)for(let n of e)n!=null&&(n=+n)>=n&&(yield n);else{let n=-1;for(let i of e)(i=t(i,++n,e))!=null&&(i=+i)>=i&&(yield i)}}var hv=ea(_n),na=hv.right,yk=hv.left,xk=ea(fv).center;var _k=dv(pv),vk=dv(U3);function dv(e){return function(t,n,i=n){if(!((n=+n)>=0))throw new RangeError("invalid rx");if(!((i=+i)>=0))throw new RangeError("invalid ry");let{data:r,width:s,height:o}=t;if(!((s=Math.floor(s))>=0))throw new RangeError("invalid width");if(!((o=Math.floor(o!==void 0?o:r.length/s))>=0))throw new RangeError("invalid height");if(!s||!o||!n&&!i)return t;let a=n&&e(n),l=i&&e(i),c=r.slice();return a&&l?(Ko(a,c,r,s,o),Ko(a,r,c,s,o),Ko(a,c,r,s,o),jo(l,r,c,s,o),jo(l,c,r,s,o),jo(l,r,c,s,o)):a?(Ko(a,r,c,s,o),Ko(a,c,r,s,o),Ko(a,r,c,s,o)):l&&(jo(l,r,c,s,o),jo(l,c,r,s,o),jo(l,r,c,s,o)),t}}function Ko(e,t,n,i,r){for(let s=0,o=i*r;s<o;)e(t,n,s,s+=i,1)}function jo(e,t,n,i,r){for(let s=0,o=i*r;s<i;++s)e(t,n,s,s+o,i)}function U3(e){let t=pv(e);return(n,i,r,s,o)=>{r<<=2,s<<=2,o<<=2,t(n,i,r+0,s+0,o),t(n,i,r+1,s+1,o),t(n,i,r+2,s+2,o),t(n,i,r+3,s+3,o)}}function pv(e){let t=Math.floor(e);if(t===e)return F3(e);let n=e-t,i=2*e+1;return(r,s,o,a,l)=>{if(!((a-=l)>=o))return;let c=t*s[o],u=l*t,h=u+l;for(let f=o,d=o+u;f<d;f+=l)c+=s[Math.min(a,f)];for(let f=o,d=a;f<=d;f+=l)c+=s[Math.min(a,f+u)],r[f]=(c+n*(s[Math.max(o,f-h)]+s[Math.min(a,f+h)]))/i,c-=s[Math.max(o,f-u)]}}function F3(e){let t=2*e+1;return(n,i,r,s,o)=>{if(!((s-=o)>=r))return;let a=e*i[r],l=o*e;for(let c=r,u=r+l;c<u;c+=o)a+=i[Math.min(s,c)];for(let c=r,u=s;c<=u;c+=o)a+=i[Math.min(s,c+l)],n[c]=a/t,a-=i[Math.max(r,c-l)]}}function Xp(e,t){let n=0;if(t===void 0)for(let i of e)i!=null&&(i=+i)>=i&&++n;else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(r=+r)>=r&&++n}return n}function O3(e){return e.length|0}function B3(e){return!(e>0)}function k3(e){return typeof e!="object"||"length"in e?e:Array.from(e)}function z3(e){return t=>e(...t)}function mv(...e){let t=typeof e[e.length-1]=="function"&&z3(e.pop());e=e.map(k3);let n=e.map(O3),i=e.length-1,r=new Array(i+1).fill(0),s=[];if(i<0||n.some(B3))return s;for(;;){s.push(r.map((a,l)=>e[l][a]));let o=i;for(;++r[o]===n[o];){if(o===0)return t?s.map(t):s;r[o--]=0}}}function gv(e,t){var n=0,i=0;return Float64Array.from(e,t===void 0?r=>n+=+r||0:r=>n+=+t(r,i++,e)||0)}function qp(e,t){let n=0,i,r=0,s=0;if(t===void 0)for(let o of e)o!=null&&(o=+o)>=o&&(i=o-r,r+=i/++n,s+=i*(o-r));else{let o=-1;for(let a of e)(a=t(a,++o,e))!=null&&(a=+a)>=a&&(i=a-r,r+=i/++n,s+=i*(a-r))}if(n>1)return s/(n-1)}function Yp(e,t){let n=qp(e,t);return n&&Math.sqrt(n)}function un(e,t){let n,i;if(t===void 0)for(let r of e)r!=null&&(n===void 0?r>=r&&(n=i=r):(n>r&&(n=r),i<r&&(i=r)));else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(n===void 0?s>=s&&(n=i=s):(n>s&&(n=s),i<s&&(i=s)))}return[n,i]}var fi=class{constructor(){this._partials=new Float64Array(32),this._n=0}add(t){let n=this._partials,i=0;for(let r=0;r<this._n&&r<32;r++){let s=n[r],o=t+s,a=Math.abs(t)<Math.abs(s)?t-(o-s):s-(o-t);a&&(n[i++]=a),t=o}return n[i]=t,this._n=i+1,this}valueOf(){let t=this._partials,n=this._n,i,r,s,o=0;if(n>0){for(o=t[--n];n>0&&(i=o,r=t[--n],o=i+r,s=r-(o-i),!s););n>0&&(s<0&&t[n-1]<0||s>0&&t[n-1]>0)&&(r=s*2,i=o+r,r==i-o&&(o=i))}return o}};var hi=class extends Map{constructor(t,n=_v){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let[i,r]of t)this.set(i,r)}get(t){return super.get(Wp(this,t))}has(t){return super.has(Wp(this,t))}set(t,n){return super.set(yv(this,t),n)}delete(t){return super.delete(xv(this,t))}},er=class extends Set{constructor(t,n=_v){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let i of t)this.add(i)}has(t){return super.has(Wp(this,t))}add(t){return super.add(yv(this,t))}delete(t){return super.delete(xv(this,t))}};function Wp({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):n}function yv({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):(e.set(i,n),n)}function xv({_intern:e,_key:t},n){let i=t(n);return e.has(i)&&(n=e.get(i),e.delete(i)),n}function _v(e){return e!==null&&typeof e=="object"?e.valueOf():e}function $p(e){return e}function to(e,...t){return Zp(e,$p,$p,t)}function Pr(e,t,...n){return Zp(e,$p,t,n)}function vv(e,t,...n){return Zp(e,Array.from,t,n)}function Zp(e,t,n,i){return(function r(s,o){if(o>=i.length)return n(s);let a=new hi,l=i[o++],c=-1;for(let u of s){let h=l(u,++c,s),f=a.get(h);f?f.push(u):a.set(h,[u])}for(let[u,h]of a)a.set(u,r(h,o));return t(a)})(e,0)}function G3(e,t){return Array.from(t,n=>e[n])}function Qo(e,...t){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");e=Array.from(e);let[n]=t;if(n&&n.length!==2||t.length>1){let i=Uint32Array.from(e,(r,s)=>s);return t.length>1?(t=t.map(r=>e.map(r)),i.sort((r,s)=>{for(let o of t){let a=Au(o[r],o[s]);if(a)return a}})):(n=e.map(n),i.sort((r,s)=>Au(n[r],n[s]))),G3(e,i)}return e.sort(bv(n))}function bv(e=_n){if(e===_n)return Au;if(typeof e!="function")throw new TypeError("compare is not a function");return(t,n)=>{let i=e(t,n);return i||i===0?i:(e(n,n)===0)-(e(t,t)===0)}}function Au(e,t){return(e==null||!(e>=e))-(t==null||!(t>=t))||(e<t?-1:e>t?1:0)}function Ru(e,t,n){return(t.length!==2?Qo(Pr(e,t,n),(([i,r],[s,o])=>_n(r,o)||_n(i,s))):Qo(to(e,n),(([i,r],[s,o])=>t(r,o)||_n(i,s)))).map(([i])=>i)}var V3=Array.prototype,bk=V3.slice;var H3=Math.sqrt(50),W3=Math.sqrt(10),$3=Math.sqrt(2);function Cu(e,t,n){let i=(t-e)/Math.max(0,n),r=Math.floor(Math.log10(i)),s=i/Math.pow(10,r),o=s>=H3?10:s>=W3?5:s>=$3?2:1,a,l,c;return r<0?(c=Math.pow(10,-r)/o,a=Math.round(e*c),l=Math.round(t*c),a/c<e&&++a,l/c>t&&--l,c=-c):(c=Math.pow(10,r)*o,a=Math.round(e/c),l=Math.round(t/c),a*c<e&&++a,l*c>t&&--l),l<a&&.5<=n&&n<2?Cu(e,t,n*2):[a,l,c]}function hs(e,t,n){if(t=+t,e=+e,n=+n,!(n>0))return[];if(e===t)return[e];let i=t<e,[r,s,o]=i?Cu(t,e,n):Cu(e,t,n);if(!(s>=r))return[];let a=s-r+1,l=new Array(a);if(i)if(o<0)for(let c=0;c<a;++c)l[c]=(s-c)/-o;else for(let c=0;c<a;++c)l[c]=(s-c)*o;else if(o<0)for(let c=0;c<a;++c)l[c]=(r+c)/-o;else for(let c=0;c<a;++c)l[c]=(r+c)*o;return l}function ta(e,t,n){return t=+t,e=+e,n=+n,Cu(e,t,n)[2]}function Ul(e,t,n){t=+t,e=+e,n=+n;let i=t<e,r=i?ta(t,e,n):ta(e,t,n);return(i?-1:1)*(r<0?1/-r:r)}function Mv(e){return Math.max(1,Math.ceil(Math.log(Xp(e))/Math.LN2)+1)}function Rn(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n<i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n<r||n===void 0&&r>=r)&&(n=r)}return n}function Sv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);return i}function di(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n>i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n>r||n===void 0&&r>=r)&&(n=r)}return n}function wv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);return i}function Tv(e,t,n=0,i=1/0,r){if(t=Math.floor(t),n=Math.floor(Math.max(0,n)),i=Math.floor(Math.min(e.length-1,i)),!(n<=t&&t<=i))return e;for(r=r===void 0?Au:bv(r);i>n;){if(i-n>600){let l=i-n+1,c=t-n+1,u=Math.log(l),h=.5*Math.exp(2*u/3),f=.5*Math.sqrt(u*h*(l-h)/l)*(c-l/2<0?-1:1),d=Math.max(n,Math.floor(t-c*h/l+f)),p=Math.min(i,Math.floor(t+(l-c)*h/l+f));Tv(e,t,d,p,r)}let s=e[t],o=n,a=i;for(Nl(e,n,t),r(e[i],s)>0&&Nl(e,n,i);o<a;){for(Nl(e,o,a),++o,--a;r(e[o],s)<0;)++o;for(;r(e[a],s)>0;)--a}r(e[n],s)===0?Nl(e,n,a):(++a,Nl(e,a,i)),a<=t&&(n=a+1),t<=a&&(i=a-1)}return e}function Nl(e,t,n){let i=e[t];e[t]=e[n],e[n]=i}function Jp(e,t=_n){let n,i=!1;if(t.length===1){let r;for(let s of e){let o=t(s);(i?_n(o,r)>0:_n(o,o)===0)&&(n=s,r=o,i=!0)}}else for(let r of e)(i?t(r,n)>0:t(r,r)===0)&&(n=r,i=!0);return n}function Cr(e,t,n){if(e=Float64Array.from(N3(e,n)),!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return di(e);if(t>=1)return Rn(e);var i,r=(i-1)*t,s=Math.floor(r),o=Rn(Tv(e,s).subarray(0,s+1)),a=di(e.subarray(s+1));return o+(a-o)*(r-s)}}function Ev(e,t,n=fv){if(!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return+n(e[0],0,e);if(t>=1)return+n(e[i-1],i-1,e);var i,r=(i-1)*t,s=Math.floor(r),o=+n(e[s],s,e),a=+n(e[s+1],s+1,e);return o+(a-o)*(r-s)}}function Av(e,t,n){let i=Xp(e),r=Cr(e,.75)-Cr(e,.25);return i&&r?Math.ceil((n-t)/(2*r*Math.pow(i,-1/3))):1}function Kp(e,t,n){let i=Xp(e),r=Yp(e);return i&&r?Math.ceil((n-t)*Math.cbrt(i)/(3.49*r)):1}function Cv(e,t){let n=0,i=0;if(t===void 0)for(let r of e)r!=null&&(r=+r)>=r&&(++n,i+=r);else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(s=+s)>=s&&(++n,i+=s)}if(n)return i/n}function Fl(e,t){return Cr(e,.5,t)}function*X3(e){for(let t of e)yield*t}function jp(e){return Array.from(X3(e))}function Rv(e,t){let n=new hi;if(t===void 0)for(let s of e)s!=null&&s>=s&&n.set(s,(n.get(s)||0)+1);else{let s=-1;for(let o of e)(o=t(o,++s,e))!=null&&o>=o&&n.set(o,(n.get(o)||0)+1)}let i,r=0;for(let[s,o]of n)o>r&&(r=o,i=s);return i}function Pv(e,t=q3){let n=[],i,r=!1;for(let s of e)r&&n.push(t(i,s)),i=s,r=!0;return n}function q3(e,t){return[e,t]}function ia(e,t,n){e=+e,t=+t,n=(r=arguments.length)<2?(t=e,e=0,1):r<3?1:+n;for(var i=-1,r=Math.max(0,Math.ceil((t-e)/n))|0,s=new Array(r);++i<r;)s[i]=e+i*n;return s}var Mk=Y3(Math.random);function Y3(e){return function(n,i=0,r=n.length){let s=r-(i=+i);for(;s;){let o=e()*s--|0,a=n[s+i];n[s+i]=n[o+i],n[o+i]=a}return n}}function Di(e,t){let n=0;if(t===void 0)for(let i of e)(i=+i)&&(n+=i);else{let i=-1;for(let r of e)(r=+t(r,++i,e))&&(n+=r)}return n}function ra(e){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");return Array.from(e).reverse()}function Z3(e){return e}var Qp=1,tm=2,em=3,Pu=4,Iv=1e-6;function J3(e){return"translate("+e+",0)"}function K3(e){return"translate(0,"+e+")"}function j3(e){return t=>+e(t)}function Q3(e,t){return t=Math.max(0,e.bandwidth()-t*2)/2,e.round()&&(t=Math.round(t)),n=>+e(n)+t}function tC(){return!this.__axis}function eC(e,t){var n=[],i=null,r=null,s=6,o=6,a=3,l=typeof window<"u"&&window.devicePixelRatio>1?0:.5,c=e===Qp||e===Pu?-1:1,u=e===Pu||e===tm?"x":"y",h=e===Qp||e===em?J3:K3;function f(d){var p=i??(t.ticks?t.ticks.apply(t,n):t.domain()),y=r??(t.tickFormat?t.tickFormat.apply(t,n):Z3),m=Math.max(s,0)+a,g=t.range(),_=+g[0]+l,M=+g[g.length-1]+l,v=(t.bandwidth?Q3:j3)(t.copy(),l),S=d.selection?d.selection():d,b=S.selectAll(".domain").data([null]),x=S.selectAll(".tick").data(p,t).order(),w=x.exit(),A=x.enter().append("g").attr("class","tick"),C=x.select("line"),R=x.select("text");b=b.merge(b.enter().insert("path",".tick").attr("class","domain").attr("stroke","currentColor")),x=x.merge(A),C=C.merge(A.append("line").attr("stroke","currentColor").attr(u+"2",c*s)),R=R.merge(A.append("text").attr("fill","currentColor").attr(u,c*m).attr("dy",e===Qp?"0em":e===em?"0.71em":"0.32em")),d!==S&&(b=b.transition(d),x=x.transition(d),C=C.transition(d),R=R.transition(d),w=w.transition(d).attr("opacity",Iv).attr("transform",function(D){return isFinite(D=v(D))?h(D+l):this.getAttribute("transform")}),A.attr("opacity",Iv).attr("transform",function(D){var k=this.parentNode.__axis;return h((k&&isFinite(k=k(D))?k:v(D))+l)})),w.remove(),b.attr("d",e===Pu||e===tm?o?"M"+c*o+","+_+"H"+l+"V"+M+"H"+c*o:"M"+l+","+_+"V"+M:o?"M"+_+","+c*o+"V"+l+"H"+M+"V"+c*o:"M"+_+","+l+"H"+M),x.attr("opacity",1).attr("transform",function(D){return h(v(D)+l)}),C.attr(u+"2",c*s),R.attr(u,c*m).text(y),S.filter(tC).attr("fill","none").attr("font-size",10).attr("font-family","sans-serif").attr("text-anchor",e===tm?"start":e===Pu?"end":"middle"),S.each(function(){this.__axis=v})}return f.scale=function(d){return arguments.length?(t=d,f):t},f.ticks=function(){return n=Array.from(arguments),f},f.tickArguments=function(d){return arguments.length?(n=d==null?[]:Array.from(d),f):n.slice()},f.tickValues=function(d){return arguments.length?(i=d==null?null:Array.from(d),f):i&&i.slice()},f.tickFormat=function(d){return arguments.length?(r=d,f):r},f.tickSize=function(d){return arguments.length?(s=o=+d,f):s},f.tickSizeInner=function(d){return arguments.length?(s=+d,f):s},f.tickSizeOuter=function(d){return arguments.length?(o=+d,f):o},f.tickPadding=function(d){return arguments.length?(a=+d,f):a},f.offset=function(d){return arguments.length?(l=+d,f):l},f}function Lv(e){return eC(em,e)}var nm="http://www.w3.org/1999/xhtml",ds={svg:"http://www.w3.org/2000/svg",xhtml:nm,xlink:"http://www.w3.org/1999/xlink",xml:"http://www.w3.org/XML/1998/namespace",xmlns:"http://www.w3.org/2000/xmlns/"};function Dv(e){var t=e+="",n=t.indexOf(":");return n>=0&&(t=e.slice(0,n))!=="xmlns"&&(e=e.slice(n+1)),ds.hasOwnProperty(t)?{space:ds[t],local:e}:e}function nC(e){return function(){var t=this.ownerDocument,n=this.namespaceURI;return n===nm&&t.documentElement.namespaceURI===nm?t.createElement(e):t.createElementNS(n,e)}}function iC(e){return function(){return this.ownerDocument.createElementNS(e.space,e.local)}}function sa(e){var t=Dv(e);return(t.local?iC:nC)(t)}function rC(){}function Nv(e){return e==null?rC:function(){return this.querySelector(e)}}function sC(e){typeof e!="function"&&(e=Nv(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=new Array(o),l,c,u=0;u<o;++u)(l=s[u])&&(c=e.call(l,l.__data__,u,s))&&("__data__"in l&&(c.__data__=l.__data__),a[u]=c);return new jn(i,this._parents)}function oC(e){return e==null?[]:Array.isArray(e)?e:Array.from(e)}function aC(){return[]}function lC(e){return e==null?aC:function(){return this.querySelectorAll(e)}}function cC(e){return function(){return oC(e.apply(this,arguments))}}function uC(e){typeof e=="function"?e=cC(e):e=lC(e);for(var t=this._groups,n=t.length,i=[],r=[],s=0;s<n;++s)for(var o=t[s],a=o.length,l,c=0;c<a;++c)(l=o[c])&&(i.push(e.call(l,l.__data__,c,o)),r.push(l));return new jn(i,r)}function fC(e){return function(){return this.matches(e)}}function Uv(e){return function(t){return t.matches(e)}}var hC=Array.prototype.find;function dC(e){return function(){return hC.call(this.children,e)}}function pC(){return this.firstElementChild}function mC(e){return this.select(e==null?pC:dC(typeof e=="function"?e:Uv(e)))}var gC=Array.prototype.filter;function yC(){return Array.from(this.children)}function xC(e){return function(){return gC.call(this.children,e)}}function _C(e){return this.selectAll(e==null?yC:xC(typeof e=="function"?e:Uv(e)))}function vC(e){typeof e!="function"&&(e=fC(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=[],l,c=0;c<o;++c)(l=s[c])&&e.call(l,l.__data__,c,s)&&a.push(l);return new jn(i,this._parents)}function Fv(e){return new Array(e.length)}function bC(){return new jn(this._enter||this._groups.map(Fv),this._parents)}function Iu(e,t){this.ownerDocument=e.ownerDocument,this.namespaceURI=e.namespaceURI,this._next=null,this._parent=e,this.__data__=t}Iu.prototype={constructor:Iu,appendChild:function(e){return this._parent.insertBefore(e,this._next)},insertBefore:function(e,t){return this._parent.insertBefore(e,t)},querySelector:function(e){return this._parent.querySelector(e)},querySelectorAll:function(e){return this._parent.querySelectorAll(e)}};function MC(e){return function(){return e}}function SC(e,t,n,i,r,s){for(var o=0,a,l=t.length,c=s.length;o<c;++o)(a=t[o])?(a.__data__=s[o],i[o]=a):n[o]=new Iu(e,s[o]);for(;o<l;++o)(a=t[o])&&(r[o]=a)}function wC(e,t,n,i,r,s,o){var a,l,c=new Map,u=t.length,h=s.length,f=new Array(u),d;for(a=0;a<u;++a)(l=t[a])&&(f[a]=d=o.call(l,l.__data__,a,t)+"",c.has(d)?r[a]=l:c.set(d,l));for(a=0;a<h;++a)d=o.call(e,s[a],a,s)+"",(l=c.get(d))?(i[a]=l,l.__data__=s[a],c.delete(d)):n[a]=new Iu(e,s[a]);for(a=0;a<u;++a)(l=t[a])&&c.get(f[a])===l&&(r[a]=l)}function TC(e){return e.__data__}function EC(e,t){if(!arguments.length)return Array.from(this,TC);var n=t?wC:SC,i=this._parents,r=this._groups;typeof e!="function"&&(e=MC(e));for(var s=r.length,o=new Array(s),a=new Array(s),l=new Array(s),c=0;c<s;++c){var u=i[c],h=r[c],f=h.length,d=AC(e.call(u,u&&u.__data__,c,i)),p=d.length,y=a[c]=new Array(p),m=o[c]=new Array(p),g=l[c]=new Array(f);n(u,h,y,m,g,d,t);for(var _=0,M=0,v,S;_<p;++_)if(v=y[_]){for(_>=M&&(M=_+1);!(S=m[M])&&++M<p;);v._next=S||null}}return o=new jn(o,i),o._enter=a,o._exit=l,o}function AC(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function CC(){return new jn(this._exit||this._groups.map(Fv),this._parents)}function RC(e,t,n){var i=this.enter(),r=this,s=this.exit();return typeof e=="function"?(i=e(i),i&&(i=i.selection())):i=i.append(e+""),t!=null&&(r=t(r),r&&(r=r.selection())),n==null?s.remove():n(s),i&&r?i.merge(r).order():r}function PC(e){for(var t=e.selection?e.selection():e,n=this._groups,i=t._groups,r=n.length,s=i.length,o=Math.min(r,s),a=new Array(r),l=0;l<o;++l)for(var c=n[l],u=i[l],h=c.length,f=a[l]=new Array(h),d,p=0;p<h;++p)(d=c[p]||u[p])&&(f[p]=d);for(;l<r;++l)a[l]=n[l];return new jn(a,this._parents)}function IC(){for(var e=this._groups,t=-1,n=e.length;++t<n;)for(var i=e[t],r=i.length-1,s=i[r],o;--r>=0;)(o=i[r])&&(s&&o.compareDocumentPosition(s)^4&&s.parentNode.insertBefore(o,s),s=o);return this}function LC(e){e||(e=DC);function t(h,f){return h&&f?e(h.__data__,f.__data__):!h-!f}for(var n=this._groups,i=n.length,r=new Array(i),s=0;s<i;++s){for(var o=n[s],a=o.length,l=r[s]=new Array(a),c,u=0;u<a;++u)(c=o[u])&&(l[u]=c);l.sort(t)}return new jn(r,this._parents).order()}function DC(e,t){return e<t?-1:e>t?1:e>=t?0:NaN}function NC(){var e=arguments[0];return arguments[0]=this,e.apply(null,arguments),this}function UC(){return Array.from(this)}function FC(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length;r<s;++r){var o=i[r];if(o)return o}return null}function OC(){let e=0;for(let t of this)++e;return e}function BC(){return!this.node()}function kC(e){for(var t=this._groups,n=0,i=t.length;n<i;++n)for(var r=t[n],s=0,o=r.length,a;s<o;++s)(a=r[s])&&e.call(a,a.__data__,s,r);return this}function zC(e){return function(){this.removeAttribute(e)}}function GC(e){return function(){this.removeAttributeNS(e.space,e.local)}}function VC(e,t){return function(){this.setAttribute(e,t)}}function HC(e,t){return function(){this.setAttributeNS(e.space,e.local,t)}}function WC(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttribute(e):this.setAttribute(e,n)}}function $C(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttributeNS(e.space,e.local):this.setAttributeNS(e.space,e.local,n)}}function XC(e,t){var n=Dv(e);if(arguments.length<2){var i=this.node();return n.local?i.getAttributeNS(n.space,n.local):i.getAttribute(n)}return this.each((t==null?n.local?GC:zC:typeof t=="function"?n.local?$C:WC:n.local?HC:VC)(n,t))}function Ov(e){return e.ownerDocument&&e.ownerDocument.defaultView||e.document&&e||e.defaultView}function qC(e){return function(){this.style.removeProperty(e)}}function YC(e,t,n){return function(){this.style.setProperty(e,t,n)}}function ZC(e,t,n){return function(){var i=t.apply(this,arguments);i==null?this.style.removeProperty(e):this.style.setProperty(e,i,n)}}function JC(e,t,n){return arguments.length>1?this.each((t==null?qC:typeof t=="function"?ZC:YC)(e,t,n??"")):KC(this.node(),e)}function KC(e,t){return e.style.getPropertyValue(t)||Ov(e).getComputedStyle(e,null).getPropertyValue(t)}function jC(e){return function(){delete this[e]}}function QC(e,t){return function(){this[e]=t}}function tR(e,t){return function(){var n=t.apply(this,arguments);n==null?delete this[e]:this[e]=n}}function eR(e,t){return arguments.length>1?this.each((t==null?jC:typeof t=="function"?tR:QC)(e,t)):this.node()[e]}function Bv(e){return e.trim().split(/^|\s+/)}function rm(e){return e.classList||new kv(e)}function kv(e){this._node=e,this._names=Bv(e.getAttribute("class")||"")}kv.prototype={add:function(e){var t=this._names.indexOf(e);t<0&&(this._names.push(e),this._node.setAttribute("class",this._names.join(" ")))},remove:function(e){var t=this._names.indexOf(e);t>=0&&(this._names.splice(t,1),this._node.setAttribute("class",this._names.join(" ")))},contains:function(e){return this._names.indexOf(e)>=0}};function zv(e,t){for(var n=rm(e),i=-1,r=t.length;++i<r;)n.add(t[i])}function Gv(e,t){for(var n=rm(e),i=-1,r=t.length;++i<r;)n.remove(t[i])}function nR(e){return function(){zv(this,e)}}function iR(e){return function(){Gv(this,e)}}function rR(e,t){return function(){(t.apply(this,arguments)?zv:Gv)(this,e)}}function sR(e,t){var n=Bv(e+"");if(arguments.length<2){for(var i=rm(this.node()),r=-1,s=n.length;++r<s;)if(!i.contains(n[r]))return!1;return!0}return this.each((typeof t=="function"?rR:t?nR:iR)(n,t))}function oR(){this.textContent=""}function aR(e){return function(){this.textContent=e}}function lR(e){return function(){var t=e.apply(this,arguments);this.textContent=t??""}}function cR(e){return arguments.length?this.each(e==null?oR:(typeof e=="function"?lR:aR)(e)):this.node().textContent}function uR(){this.innerHTML=""}function fR(e){return function(){this.innerHTML=e}}function hR(e){return function(){var t=e.apply(this,arguments);this.innerHTML=t??""}}function dR(e){return arguments.length?this.each(e==null?uR:(typeof e=="function"?hR:fR)(e)):this.node().innerHTML}function pR(){this.nextSibling&&this.parentNode.appendChild(this)}function mR(){return this.each(pR)}function gR(){this.previousSibling&&this.parentNode.insertBefore(this,this.parentNode.firstChild)}function yR(){return this.each(gR)}function xR(e){var t=typeof e=="function"?e:sa(e);return this.select(function(){return this.appendChild(t.apply(this,arguments))})}function _R(){return null}function vR(e,t){var n=typeof e=="function"?e:sa(e),i=t==null?_R:typeof t=="function"?t:Nv(t);return this.select(function(){return this.insertBefore(n.apply(this,arguments),i.apply(this,arguments)||null)})}function bR(){var e=this.parentNode;e&&e.removeChild(this)}function MR(){return this.each(bR)}function SR(){var e=this.cloneNode(!1),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function wR(){var e=this.cloneNode(!0),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function TR(e){return this.select(e?wR:SR)}function ER(e){return arguments.length?this.property("__data__",e):this.node().__data__}function AR(e){return function(t){e.call(this,t,this.__data__)}}function CR(e){return e.trim().split(/^|\s+/).map(function(t){var n="",i=t.indexOf(".");return i>=0&&(n=t.slice(i+1),t=t.slice(0,i)),{type:t,name:n}})}function RR(e){return function(){var t=this.__on;if(t){for(var n=0,i=-1,r=t.length,s;n<r;++n)s=t[n],(!e.type||s.type===e.type)&&s.name===e.name?this.removeEventListener(s.type,s.listener,s.options):t[++i]=s;++i?t.length=i:delete this.__on}}}function PR(e,t,n){return function(){var i=this.__on,r,s=AR(t);if(i){for(var o=0,a=i.length;o<a;++o)if((r=i[o]).type===e.type&&r.name===e.name){this.removeEventListener(r.type,r.listener,r.options),this.addEventListener(r.type,r.listener=s,r.options=n),r.value=t;return}}this.addEventListener(e.type,s,n),r={type:e.type,name:e.name,value:t,listener:s,options:n},i?i.push(r):this.__on=[r]}}function IR(e,t,n){var i=CR(e+""),r,s=i.length,o;if(arguments.length<2){var a=this.node().__on;if(a){for(var l=0,c=a.length,u;l<c;++l)for(r=0,u=a[l];r<s;++r)if((o=i[r]).type===u.type&&o.name===u.name)return u.value}return}for(a=t?PR:RR,r=0;r<s;++r)this.each(a(i[r],t,n));return this}function Vv(e,t,n){var i=Ov(e),r=i.CustomEvent;typeof r=="function"?r=new r(t,n):(r=i.document.createEvent("Event"),n?(r.initEvent(t,n.bubbles,n.cancelable),r.detail=n.detail):r.initEvent(t,!1,!1)),e.dispatchEvent(r)}function LR(e,t){return function(){return Vv(this,e,t)}}function DR(e,t){return function(){return Vv(this,e,t.apply(this,arguments))}}function NR(e,t){return this.each((typeof t=="function"?DR:LR)(e,t))}function*UR(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length,o;r<s;++r)(o=i[r])&&(yield o)}var Hv=[null];function jn(e,t){this._groups=e,this._parents=t}function FR(){return new jn([[document.documentElement]],Hv)}function OR(){return this}jn.prototype=FR.prototype={constructor:jn,select:sC,selectAll:uC,selectChild:mC,selectChildren:_C,filter:vC,data:EC,enter:bC,exit:CC,join:RC,merge:PC,selection:OR,order:IC,sort:LC,call:NC,nodes:UC,node:FC,size:OC,empty:BC,each:kC,attr:XC,style:JC,property:eR,classed:sR,text:cR,html:dR,raise:mR,lower:yR,append:xR,insert:vR,remove:MR,clone:TR,datum:ER,on:IR,dispatch:NR,[Symbol.iterator]:UR};function Ni(e){return typeof e=="string"?new jn([[document.querySelector(e)]],[document.documentElement]):new jn([[e]],Hv)}var BR=0;function kR(){return new im}function im(){this._="@"+(++BR).toString(36)}im.prototype=kR.prototype={constructor:im,get:function(e){for(var t=this._;!(t in e);)if(!(e=e.parentNode))return;return e[t]},set:function(e,t){return e[this._]=t},remove:function(e){return this._ in e&&delete e[this._]},toString:function(){return this._}};function zR(e){let t;for(;t=e.sourceEvent;)e=t;return e}function Wv(e,t){if(e=zR(e),t===void 0&&(t=e.currentTarget),t){var n=t.ownerSVGElement||t;if(n.createSVGPoint){var i=n.createSVGPoint();return i.x=e.clientX,i.y=e.clientY,i=i.matrixTransform(t.getScreenCTM().inverse()),[i.x,i.y]}if(t.getBoundingClientRect){var r=t.getBoundingClientRect();return[e.clientX-r.left-t.clientLeft,e.clientY-r.top-t.clientTop]}}return[e.pageX,e.pageY]}function ca(e,t,n){e.prototype=t.prototype=n,n.constructor=e}function kl(e,t){var n=Object.create(e.prototype);for(var i in t)n[i]=t[i];return n}function ps(){}var ro=.7,la=1/ro,oa="\\s*([+-]?\\d+)\\s*",Ol="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)\\s*",nr="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)%\\s*",GR=/^#([0-9a-f]{3,8})$/,VR=new RegExp(`^rgb\\(${oa},${oa},${oa}\\)$`),HR=new RegExp(`^rgb\\(${nr},${nr},${nr}\\)$`),WR=new RegExp(`^rgba\\(${oa},${oa},${oa},${Ol}\\)$`),$R=new RegExp(`^rgba\\(${nr},${nr},${nr},${Ol}\\)$`),XR=new RegExp(`^hsl\\(${Ol},${nr},${nr}\\)$`),qR=new RegExp(`^hsla\\(${Ol},${nr},${nr},${Ol}\\)$`),$v={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074};ca(ps,ua,{copy(e){return Object.assign(new this.constructor,this,e)},displayable(){return this.rgb().displayable()},hex:Xv,formatHex:Xv,formatHex8:YR,formatHsl:ZR,formatRgb:qv,toString:qv});function Xv(){return this.rgb().formatHex()}function YR(){return this.rgb().formatHex8()}function ZR(){return nb(this).formatHsl()}function qv(){return this.rgb().formatRgb()}function ua(e){var t,n;return e=(e+"").trim().toLowerCase(),(t=GR.exec(e))?(n=t[1].length,t=parseInt(t[1],16),n===6?Yv(t):n===3?new tn(t>>8&15|t>>4&240,t>>4&15|t&240,(t&15)<<4|t&15,1):n===8?Lu(t>>24&255,t>>16&255,t>>8&255,(t&255)/255):n===4?Lu(t>>12&15|t>>8&240,t>>8&15|t>>4&240,t>>4&15|t&240,((t&15)<<4|t&15)/255):null):(t=VR.exec(e))?new tn(t[1],t[2],t[3],1):(t=HR.exec(e))?new tn(t[1]*255/100,t[2]*255/100,t[3]*255/100,1):(t=WR.exec(e))?Lu(t[1],t[2],t[3],t[4]):(t=$R.exec(e))?Lu(t[1]*255/100,t[2]*255/100,t[3]*255/100,t[4]):(t=XR.exec(e))?Kv(t[1],t[2]/100,t[3]/100,1):(t=qR.exec(e))?Kv(t[1],t[2]/100,t[3]/100,t[4]):$v.hasOwnProperty(e)?Yv($v[e]):e==="transparent"?new tn(NaN,NaN,NaN,0):null}function Yv(e){return new tn(e>>16&255,e>>8&255,e&255,1)}function Lu(e,t,n,i){return i<=0&&(e=t=n=NaN),new tn(e,t,n,i)}function um(e){return e instanceof ps||(e=ua(e)),e?(e=e.rgb(),new tn(e.r,e.g,e.b,e.opacity)):new tn}function Fi(e,t,n,i){return arguments.length===1?um(e):new tn(e,t,n,i??1)}function tn(e,t,n,i){this.r=+e,this.g=+t,this.b=+n,this.opacity=+i}ca(tn,Fi,kl(ps,{brighter(e){return e=e==null?la:Math.pow(la,e),new tn(this.r*e,this.g*e,this.b*e,this.opacity)},darker(e){return e=e==null?ro:Math.pow(ro,e),new tn(this.r*e,this.g*e,this.b*e,this.opacity)},rgb(){return this},clamp(){return new tn(no(this.r),no(this.g),no(this.b),Nu(this.opacity))},displayable(){return-.5<=this.r&&this.r<255.5&&-.5<=this.g&&this.g<255.5&&-.5<=this.b&&this.b<255.5&&0<=this.opacity&&this.opacity<=1},hex:Zv,formatHex:Zv,formatHex8:JR,formatRgb:Jv,toString:Jv}));function Zv(){return`#${eo(this.r)}${eo(this.g)}${eo(this.b)}`}function JR(){return`#${eo(this.r)}${eo(this.g)}${eo(this.b)}${eo((isNaN(this.opacity)?1:this.opacity)*255)}`}function Jv(){let e=Nu(this.opacity);return`${e===1?"rgb(":"rgba("}${no(this.r)}, ${no(this.g)}, ${no(this.b)}${e===1?")":`, ${e})`}`}function Nu(e){return isNaN(e)?1:Math.max(0,Math.min(1,e))}function no(e){return Math.max(0,Math.min(255,Math.round(e)||0))}function eo(e){return e=no(e),(e<16?"0":"")+e.toString(16)}function Kv(e,t,n,i){return i<=0?e=t=n=NaN:n<=0||n>=1?e=t=NaN:t<=0&&(e=NaN),new Ui(e,t,n,i)}function nb(e){if(e instanceof Ui)return new Ui(e.h,e.s,e.l,e.opacity);if(e instanceof ps||(e=ua(e)),!e)return new Ui;if(e instanceof Ui)return e;e=e.rgb();var t=e.r/255,n=e.g/255,i=e.b/255,r=Math.min(t,n,i),s=Math.max(t,n,i),o=NaN,a=s-r,l=(s+r)/2;return a?(t===s?o=(n-i)/a+(n<i)*6:n===s?o=(i-t)/a+2:o=(t-n)/a+4,a/=l<.5?s+r:2-s-r,o*=60):a=l>0&&l<1?0:o,new Ui(o,a,l,e.opacity)}function Fu(e,t,n,i){return arguments.length===1?nb(e):new Ui(e,t,n,i??1)}function Ui(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}ca(Ui,Fu,kl(ps,{brighter(e){return e=e==null?la:Math.pow(la,e),new Ui(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?ro:Math.pow(ro,e),new Ui(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=this.h%360+(this.h<0)*360,t=isNaN(e)||isNaN(this.s)?0:this.s,n=this.l,i=n+(n<.5?n:1-n)*t,r=2*n-i;return new tn(sm(e>=240?e-240:e+120,r,i),sm(e,r,i),sm(e<120?e+240:e-120,r,i),this.opacity)},clamp(){return new Ui(jv(this.h),Du(this.s),Du(this.l),Nu(this.opacity))},displayable(){return(0<=this.s&&this.s<=1||isNaN(this.s))&&0<=this.l&&this.l<=1&&0<=this.opacity&&this.opacity<=1},formatHsl(){let e=Nu(this.opacity);return`${e===1?"hsl(":"hsla("}${jv(this.h)}, ${Du(this.s)*100}%, ${Du(this.l)*100}%${e===1?")":`, ${e})`}`}}));function jv(e){return e=(e||0)%360,e<0?e+360:e}function Du(e){return Math.max(0,Math.min(1,e||0))}function sm(e,t,n){return(e<60?t+(n-t)*e/60:e<180?n:e<240?t+(n-t)*(240-e)/60:t)*255}var ib=Math.PI/180,rb=180/Math.PI,Uu=18,sb=.96422,ob=1,ab=.82521,lb=4/29,aa=6/29,cb=3*aa*aa,KR=aa*aa*aa;function ub(e){if(e instanceof ir)return new ir(e.l,e.a,e.b,e.opacity);if(e instanceof Ir)return fb(e);e instanceof tn||(e=um(e));var t=cm(e.r),n=cm(e.g),i=cm(e.b),r=om((.2225045*t+.7168786*n+.0606169*i)/ob),s,o;return t===n&&n===i?s=o=r:(s=om((.4360747*t+.3850649*n+.1430804*i)/sb),o=om((.0139322*t+.0971045*n+.7141733*i)/ab)),new ir(116*r-16,500*(s-r),200*(r-o),e.opacity)}function Ou(e,t,n,i){return arguments.length===1?ub(e):new ir(e,t,n,i??1)}function ir(e,t,n,i){this.l=+e,this.a=+t,this.b=+n,this.opacity=+i}ca(ir,Ou,kl(ps,{brighter(e){return new ir(this.l+Uu*(e??1),this.a,this.b,this.opacity)},darker(e){return new ir(this.l-Uu*(e??1),this.a,this.b,this.opacity)},rgb(){var e=(this.l+16)/116,t=isNaN(this.a)?e:e+this.a/500,n=isNaN(this.b)?e:e-this.b/200;return t=sb*am(t),e=ob*am(e),n=ab*am(n),new tn(lm(3.1338561*t-1.6168667*e-.4906146*n),lm(-.9787684*t+1.9161415*e+.033454*n),lm(.0719453*t-.2289914*e+1.4052427*n),this.opacity)}}));function om(e){return e>KR?Math.pow(e,1/3):e/cb+lb}function am(e){return e>aa?e*e*e:cb*(e-lb)}function lm(e){return 255*(e<=.0031308?12.92*e:1.055*Math.pow(e,1/2.4)-.055)}function cm(e){return(e/=255)<=.04045?e/12.92:Math.pow((e+.055)/1.055,2.4)}function jR(e){if(e instanceof Ir)return new Ir(e.h,e.c,e.l,e.opacity);if(e instanceof ir||(e=ub(e)),e.a===0&&e.b===0)return new Ir(NaN,0<e.l&&e.l<100?0:NaN,e.l,e.opacity);var t=Math.atan2(e.b,e.a)*rb;return new Ir(t<0?t+360:t,Math.sqrt(e.a*e.a+e.b*e.b),e.l,e.opacity)}function Bu(e,t,n,i){return arguments.length===1?jR(e):new Ir(e,t,n,i??1)}function Ir(e,t,n,i){this.h=+e,this.c=+t,this.l=+n,this.opacity=+i}function fb(e){if(isNaN(e.h))return new ir(e.l,0,0,e.opacity);var t=e.h*ib;return new ir(e.l,Math.cos(t)*e.c,Math.sin(t)*e.c,e.opacity)}ca(Ir,Bu,kl(ps,{brighter(e){return new Ir(this.h,this.c,this.l+Uu*(e??1),this.opacity)},darker(e){return new Ir(this.h,this.c,this.l-Uu*(e??1),this.opacity)},rgb(){return fb(this).rgb()}}));var hb=-.14861,fm=1.78277,hm=-.29227,ku=-.90649,Bl=1.97294,Qv=Bl*ku,tb=Bl*fm,eb=fm*hm-ku*hb;function QR(e){if(e instanceof io)return new io(e.h,e.s,e.l,e.opacity);e instanceof tn||(e=um(e));var t=e.r/255,n=e.g/255,i=e.b/255,r=(eb*i+Qv*t-tb*n)/(eb+Qv-tb),s=i-r,o=(Bl*(n-r)-hm*s)/ku,a=Math.sqrt(o*o+s*s)/(Bl*r*(1-r)),l=a?Math.atan2(o,s)*rb-120:NaN;return new io(l<0?l+360:l,a,r,e.opacity)}function pi(e,t,n,i){return arguments.length===1?QR(e):new io(e,t,n,i??1)}function io(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}ca(io,pi,kl(ps,{brighter(e){return e=e==null?la:Math.pow(la,e),new io(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?ro:Math.pow(ro,e),new io(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=isNaN(this.h)?0:(this.h+120)*ib,t=+this.l,n=isNaN(this.s)?0:this.s*t*(1-t),i=Math.cos(e),r=Math.sin(e);return new tn(255*(t+n*(hb*i+fm*r)),255*(t+n*(hm*i+ku*r)),255*(t+n*(Bl*i)),this.opacity)}}));function mb(e,t,n,i,r){var s=e*e,o=s*e;return((1-3*e+3*s-o)*t+(4-6*s+3*o)*n+(1+3*e+3*s-3*o)*i+o*r)/6}function tP(e){var t=e.length-1;return function(n){var i=n<=0?n=0:n>=1?(n=1,t-1):Math.floor(n*t),r=e[i],s=e[i+1],o=i>0?e[i-1]:2*r-s,a=i<t-1?e[i+2]:2*s-r;return mb((n-i/t)*t,o,r,s,a)}}function eP(e){var t=e.length;return function(n){var i=Math.floor(((n%=1)<0?++n:n)*t),r=e[(i+t-1)%t],s=e[i%t],o=e[(i+1)%t],a=e[(i+2)%t];return mb((n-i/t)*t,r,s,o,a)}}var Gu=e=>()=>e;function gb(e,t){return function(n){return e+n*t}}function nP(e,t,n){return e=Math.pow(e,n),t=Math.pow(t,n)-e,n=1/n,function(i){return Math.pow(e+i*t,n)}}function gm(e,t){var n=t-e;return n?gb(e,n>180||n<-180?n-360*Math.round(n/360):n):Gu(isNaN(e)?t:e)}function iP(e){return(e=+e)==1?en:function(t,n){return n-t?nP(t,n,e):Gu(isNaN(t)?n:t)}}function en(e,t){var n=t-e;return n?gb(e,n):Gu(isNaN(e)?t:e)}var so=(function e(t){var n=iP(t);function i(r,s){var o=n((r=Fi(r)).r,(s=Fi(s)).r),a=n(r.g,s.g),l=n(r.b,s.b),c=en(r.opacity,s.opacity);return function(u){return r.r=o(u),r.g=a(u),r.b=l(u),r.opacity=c(u),r+""}}return i.gamma=e,i})(1);function yb(e){return function(t){var n=t.length,i=new Array(n),r=new Array(n),s=new Array(n),o,a;for(o=0;o<n;++o)a=Fi(t[o]),i[o]=a.r||0,r[o]=a.g||0,s[o]=a.b||0;return i=e(i),r=e(r),s=e(s),a.opacity=1,function(l){return a.r=i(l),a.g=r(l),a.b=s(l),a+""}}}var xb=yb(tP),Ck=yb(eP);function rP(e,t){t||(t=[]);var n=e?Math.min(t.length,e.length):0,i=t.slice(),r;return function(s){for(r=0;r<n;++r)i[r]=e[r]*(1-s)+t[r]*s;return i}}function sP(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function oP(e,t){var n=t?t.length:0,i=e?Math.min(n,e.length):0,r=new Array(i),s=new Array(n),o;for(o=0;o<i;++o)r[o]=fa(e[o],t[o]);for(;o<n;++o)s[o]=t[o];return function(a){for(o=0;o<i;++o)s[o]=r[o](a);return s}}function aP(e,t){var n=new Date;return e=+e,t=+t,function(i){return n.setTime(e*(1-i)+t*i),n}}function We(e,t){return e=+e,t=+t,function(n){return e*(1-n)+t*n}}function lP(e,t){var n={},i={},r;(e===null||typeof e!="object")&&(e={}),(t===null||typeof t!="object")&&(t={});for(r in t)r in e?n[r]=fa(e[r],t[r]):i[r]=t[r];return function(s){for(r in n)i[r]=n[r](s);return i}}var pm=/[-+]?(?:\d+\.?\d*|\.?\d+)(?:[eE][-+]?\d+)?/g,dm=new RegExp(pm.source,"g");function cP(e){return function(){return e}}function uP(e){return function(t){return e(t)+""}}function fP(e,t){var n=pm.lastIndex=dm.lastIndex=0,i,r,s,o=-1,a=[],l=[];for(e=e+"",t=t+"";(i=pm.exec(e))&&(r=dm.exec(t));)(s=r.index)>n&&(s=t.slice(n,s),a[o]?a[o]+=s:a[++o]=s),(i=i[0])===(r=r[0])?a[o]?a[o]+=r:a[++o]=r:(a[++o]=null,l.push({i:o,x:We(i,r)})),n=dm.lastIndex;return n<t.length&&(s=t.slice(n),a[o]?a[o]+=s:a[++o]=s),a.length<2?l[0]?uP(l[0].x):cP(t):(t=l.length,function(c){for(var u=0,h;u<t;++u)a[(h=l[u]).i]=h.x(c);return a.join("")})}function fa(e,t){var n=typeof t,i;return t==null||n==="boolean"?Gu(t):(n==="number"?We:n==="string"?(i=ua(t))?(t=i,so):fP:t instanceof ua?so:t instanceof Date?aP:sP(t)?rP:Array.isArray(t)?oP:typeof t.valueOf!="function"&&typeof t.toString!="function"||isNaN(t)?lP:We)(e,t)}function zl(e,t){return e=+e,t=+t,function(n){return Math.round(e*(1-n)+t*n)}}var db=180/Math.PI,mm={translateX:0,translateY:0,rotate:0,skewX:0,scaleX:1,scaleY:1};function _b(e,t,n,i,r,s){var o,a,l;return(o=Math.sqrt(e*e+t*t))&&(e/=o,t/=o),(l=e*n+t*i)&&(n-=e*l,i-=t*l),(a=Math.sqrt(n*n+i*i))&&(n/=a,i/=a,l/=a),e*i<t*n&&(e=-e,t=-t,l=-l,o=-o),{translateX:r,translateY:s,rotate:Math.atan2(t,e)*db,skewX:Math.atan(l)*db,scaleX:o,scaleY:a}}var zu;function hP(e){let t=new(typeof DOMMatrix=="function"?DOMMatrix:WebKitCSSMatrix)(e+"");return t.isIdentity?mm:_b(t.a,t.b,t.c,t.d,t.e,t.f)}function dP(e){return e==null||(zu||(zu=document.createElementNS("http://www.w3.org/2000/svg","g")),zu.setAttribute("transform",e),!(e=zu.transform.baseVal.consolidate()))?mm:(e=e.matrix,_b(e.a,e.b,e.c,e.d,e.e,e.f))}function vb(e,t,n,i){function r(c){return c.length?c.pop()+" ":""}function s(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push("translate(",null,t,null,n);p.push({i:y-4,x:We(c,h)},{i:y-2,x:We(u,f)})}else(h||f)&&d.push("translate("+h+t+f+n)}function o(c,u,h,f){c!==u?(c-u>180?u+=360:u-c>180&&(c+=360),f.push({i:h.push(r(h)+"rotate(",null,i)-2,x:We(c,u)})):u&&h.push(r(h)+"rotate("+u+i)}function a(c,u,h,f){c!==u?f.push({i:h.push(r(h)+"skewX(",null,i)-2,x:We(c,u)}):u&&h.push(r(h)+"skewX("+u+i)}function l(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push(r(d)+"scale(",null,",",null,")");p.push({i:y-4,x:We(c,h)},{i:y-2,x:We(u,f)})}else(h!==1||f!==1)&&d.push(r(d)+"scale("+h+","+f+")")}return function(c,u){var h=[],f=[];return c=e(c),u=e(u),s(c.translateX,c.translateY,u.translateX,u.translateY,h,f),o(c.rotate,u.rotate,h,f),a(c.skewX,u.skewX,h,f),l(c.scaleX,c.scaleY,u.scaleX,u.scaleY,h,f),c=u=null,function(d){for(var p=-1,y=f.length,m;++p<y;)h[(m=f[p]).i]=m.x(d);return h.join("")}}}var Rk=vb(hP,"px, ","px)","deg)"),Pk=vb(dP,", ",")",")"),pP=1e-12;function pb(e){return((e=Math.exp(e))+1/e)/2}function mP(e){return((e=Math.exp(e))-1/e)/2}function gP(e){return((e=Math.exp(2*e))-1)/(e+1)}var Ik=(function e(t,n,i){function r(s,o){var a=s[0],l=s[1],c=s[2],u=o[0],h=o[1],f=o[2],d=u-a,p=h-l,y=d*d+p*p,m,g;if(y<pP)g=Math.log(f/c)/t,m=function(x){return[a+x*d,l+x*p,c*Math.exp(t*x*g)]};else{var _=Math.sqrt(y),M=(f*f-c*c+i*y)/(2*c*n*_),v=(f*f-c*c-i*y)/(2*f*n*_),S=Math.log(Math.sqrt(M*M+1)-M),b=Math.log(Math.sqrt(v*v+1)-v);g=(b-S)/t,m=function(x){var w=x*g,A=pb(S),C=c/(n*_)*(A*gP(t*w+S)-mP(S));return[a+C*d,l+C*p,c*A/pb(t*w+S)]}}return m.duration=Math.abs(g)*1e3*t/Math.SQRT2,m}return r.rho=function(s){var o=Math.max(.001,+s),a=o*o,l=a*a;return e(o,a,l)},r})(Math.SQRT2,2,4);function bb(e){return function(t,n){var i=e((t=Fu(t)).h,(n=Fu(n)).h),r=en(t.s,n.s),s=en(t.l,n.l),o=en(t.opacity,n.opacity);return function(a){return t.h=i(a),t.s=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Mb=bb(gm),Lk=bb(en);function Sb(e,t){var n=en((e=Ou(e)).l,(t=Ou(t)).l),i=en(e.a,t.a),r=en(e.b,t.b),s=en(e.opacity,t.opacity);return function(o){return e.l=n(o),e.a=i(o),e.b=r(o),e.opacity=s(o),e+""}}function wb(e){return function(t,n){var i=e((t=Bu(t)).h,(n=Bu(n)).h),r=en(t.c,n.c),s=en(t.l,n.l),o=en(t.opacity,n.opacity);return function(a){return t.h=i(a),t.c=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Tb=wb(gm),Dk=wb(en);function Eb(e){return(function t(n){n=+n;function i(r,s){var o=e((r=pi(r)).h,(s=pi(s)).h),a=en(r.s,s.s),l=en(r.l,s.l),c=en(r.opacity,s.opacity);return function(u){return r.h=o(u),r.s=a(u),r.l=l(Math.pow(u,n)),r.opacity=c(u),r+""}}return i.gamma=t,i})(1)}var Nk=Eb(gm),Vu=Eb(en);function ms(e,t){t===void 0&&(t=e,e=fa);for(var n=0,i=t.length-1,r=t[0],s=new Array(i<0?0:i);n<i;)s[n]=e(r,r=t[++n]);return function(o){var a=Math.max(0,Math.min(i-1,Math.floor(o*=i)));return s[a](o-a)}}function Pn(e,t){for(var n=new Array(t),i=0;i<t;++i)n[i]=e(i/(t-1));return n}var Gl=Math.PI,ym=2*Gl,oo=1e-6,yP=ym-oo;function Ab(e){this._+=e[0];for(let t=1,n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function xP(e){let t=Math.floor(e);if(!(t>=0))throw new Error(`invalid digits: ${e}`);if(t>15)return Ab;let n=10**t;return function(i){this._+=i[0];for(let r=1,s=i.length;r<s;++r)this._+=Math.round(arguments[r]*n)/n+i[r]}}function Cb(e,t,n,i){return e===n&&t===i}function _P(e){let t=Math.floor(e);if(!(t<=15))return Cb;let n=10**t,i=function(r){return Math.round(r*n)};return function(r,s,o,a){return i(r)===i(o)&&i(s)===i(a)}}var ao=class{constructor(t){this._x0=this._y0=this._x1=this._y1=null,this._="",this._append=t==null?Ab:xP(t),this._equal=t==null?Cb:_P(t)}moveTo(t,n){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}`}closePath(){this._x1!==null&&(this._x1=this._x0,this._y1=this._y0,this._append`Z`)}lineTo(t,n){this._append`L${this._x1=+t},${this._y1=+n}`}quadraticCurveTo(t,n,i,r){this._append`Q${+t},${+n},${this._x1=+i},${this._y1=+r}`}bezierCurveTo(t,n,i,r,s,o){this._append`C${+t},${+n},${+i},${+r},${this._x1=+s},${this._y1=+o}`}arcTo(t,n,i,r,s){if(t=+t,n=+n,i=+i,r=+r,s=+s,s<0)throw new Error(`negative radius: ${s}`);let o=this._x1,a=this._y1,l=i-t,c=r-n,u=o-t,h=a-n,f=u*u+h*h;if(this._x1===null)this._append`M${this._x1=t},${this._y1=n}`;else if(f>oo)if(!(Math.abs(h*l-c*u)>oo)||!s)this._append`L${this._x1=t},${this._y1=n}`;else{let d=i-o,p=r-a,y=l*l+c*c,m=d*d+p*p,g=Math.sqrt(y),_=Math.sqrt(f),M=s*Math.tan((Gl-Math.acos((y+f-m)/(2*g*_)))/2),v=M/_,S=M/g;Math.abs(v-1)>oo&&this._append`L${t+v*u},${n+v*h}`,this._append`A${s},${s},0,0,${+(h*d>u*p)},${this._x1=t+S*l},${this._y1=n+S*c}`}}arc(t,n,i,r,s,o){if(t=+t,n=+n,i=+i,o=!!o,i<0)throw new Error(`negative radius: ${i}`);let a=i*Math.cos(r),l=i*Math.sin(r),c=t+a,u=n+l,h=1^o,f=o?r-s:s-r;if(this._x1===null?this._append`M${c},${u}`:(Math.abs(this._x1-c)>oo||Math.abs(this._y1-u)>oo)&&this._append`L${c},${u}`,!!i){if(f<0&&(f=f%ym+ym),f>yP)this._append`A${i},${i},0,1,${h},${t-a},${n-l}A${i},${i},0,1,${h},${this._x1=c},${this._y1=u}`;else if(f>oo){let d=t+i*Math.cos(s),p=n+i*Math.sin(s);if(f>=Gl&&this._equal(c,u,d,p)){f/=2;let y=r+f;this._append`A${i},${i},0,${+(f>=Gl)},${h},${t+i*Math.cos(y)},${n+i*Math.sin(y)}`}this._append`A${i},${i},0,${+(f>=Gl)},${h},${this._x1=d},${this._y1=p}`}}}rect(t,n,i,r){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}h${i=+i}v${+r}h${-i}Z`}toString(){return this._}};function vP(){return new ao}vP.prototype=ao.prototype;function mi(e=3){return new ao(+e)}function bP(e){return Math.abs(e=Math.round(e))>=1e21?e.toLocaleString("en").replace(/,/g,""):e.toString(10)}function Wu(e,t){if(!isFinite(e)||e===0)return null;var n=(e=t?e.toExponential(t-1):e.toExponential()).indexOf("e"),i=e.slice(0,n);return[i.length>1?i[0]+i.slice(2):i,+e.slice(n+1)]}function ha(e){return e=Wu(Math.abs(e)),e?e[1]:NaN}function MP(e,t){return function(n,i){for(var r=n.length,s=[],o=0,a=e[0],l=0;r>0&&a>0&&(l+a+1>i&&(a=Math.max(1,i-l)),s.push(n.substring(r-=a,r+a)),!((l+=a+1)>i));)a=e[o=(o+1)%e.length];return s.reverse().join(t)}}function SP(e){return function(t){return t.replace(/[0-9]/g,function(n){return e[+n]})}}var wP=/^(?:(.)?([<>=^]))?([+\-( ])?([$#])?(0)?(\d+)?(,)?(\.\d+)?(~)?([a-z%])?$/i;function da(e){if(!(t=wP.exec(e)))throw new Error("invalid format: "+e);var t;return new xm({fill:t[1],align:t[2],sign:t[3],symbol:t[4],zero:t[5],width:t[6],comma:t[7],precision:t[8]&&t[8].slice(1),trim:t[9],type:t[10]})}da.prototype=xm.prototype;function xm(e){this.fill=e.fill===void 0?" ":e.fill+"",this.align=e.align===void 0?">":e.align+"",this.sign=e.sign===void 0?"-":e.sign+"",this.symbol=e.symbol===void 0?"":e.symbol+"",this.zero=!!e.zero,this.width=e.width===void 0?void 0:+e.width,this.comma=!!e.comma,this.precision=e.precision===void 0?void 0:+e.precision,this.trim=!!e.trim,this.type=e.type===void 0?"":e.type+""}xm.prototype.toString=function(){return this.fill+this.align+this.sign+this.symbol+(this.zero?"0":"")+(this.width===void 0?"":Math.max(1,this.width|0))+(this.comma?",":"")+(this.precision===void 0?"":"."+Math.max(0,this.precision|0))+(this.trim?"~":"")+this.type};function TP(e){t:for(var t=e.length,n=1,i=-1,r;n<t;++n)switch(e[n]){case".":i=r=n;break;case"0":i===0&&(i=n),r=n;break;default:if(!+e[n])break t;i>0&&(i=0);break}return i>0?e.slice(0,i)+e.slice(r+1):e}var $u;function EP(e,t){var n=Wu(e,t);if(!n)return $u=void 0,e.toPrecision(t);var i=n[0],r=n[1],s=r-($u=Math.max(-8,Math.min(8,Math.floor(r/3)))*3)+1,o=i.length;return s===o?i:s>o?i+new Array(s-o+1).join("0"):s>0?i.slice(0,s)+"."+i.slice(s):"0."+new Array(1-s).join("0")+Wu(e,Math.max(0,t+s-1))[0]}function Rb(e,t){var n=Wu(e,t);if(!n)return e+"";var i=n[0],r=n[1];return r<0?"0."+new Array(-r).join("0")+i:i.length>r+1?i.slice(0,r+1)+"."+i.slice(r+1):i+new Array(r-i.length+2).join("0")}var Pb={"%":(e,t)=>(e*100).toFixed(t),b:e=>Math.round(e).toString(2),c:e=>e+"",d:bP,e:(e,t)=>e.toExponential(t),f:(e,t)=>e.toFixed(t),g:(e,t)=>e.toPrecision(t),o:e=>Math.round(e).toString(8),p:(e,t)=>Rb(e*100,t),r:Rb,s:EP,X:e=>Math.round(e).toString(16).toUpperCase(),x:e=>Math.round(e).toString(16)};function Ib(e){return e}var Lb=Array.prototype.map,Db=["y","z","a","f","p","n","µ","m","","k","M","G","T","P","E","Z","Y"];function AP(e){var t=e.grouping===void 0||e.thousands===void 0?Ib:MP(Lb.call(e.grouping,Number),e.thousands+""),n=e.currency===void 0?"":e.currency[0]+"",i=e.currency===void 0?"":e.currency[1]+"",r=e.decimal===void 0?".":e.decimal+"",s=e.numerals===void 0?Ib:SP(Lb.call(e.numerals,String)),o=e.percent===void 0?"%":e.percent+"",a=e.minus===void 0?"−":e.minus+"",l=e.nan===void 0?"NaN":e.nan+"";function c(h,f){h=da(h);var d=h.fill,p=h.align,y=h.sign,m=h.symbol,g=h.zero,_=h.width,M=h.comma,v=h.precision,S=h.trim,b=h.type;b==="n"?(M=!0,b="g"):Pb[b]||(v===void 0&&(v=12),S=!0,b="g"),(g||d==="0"&&p==="=")&&(g=!0,d="0",p="=");var x=(f&&f.prefix!==void 0?f.prefix:"")+(m==="$"?n:m==="#"&&/[boxX]/.test(b)?"0"+b.toLowerCase():""),w=(m==="$"?i:/[%p]/.test(b)?o:"")+(f&&f.suffix!==void 0?f.suffix:""),A=Pb[b],C=/[defgprs%]/.test(b);v=v===void 0?6:/[gprs]/.test(b)?Math.max(1,Math.min(21,v)):Math.max(0,Math.min(20,v));function R(D){var k=x,P=w,L,z,U;if(b==="c")P=A(D)+P,D="";else{D=+D;var Z=D<0||1/D<0;if(D=isNaN(D)?l:A(Math.abs(D),v),S&&(D=TP(D)),Z&&+D==0&&y!=="+"&&(Z=!1),k=(Z?y==="("?y:a:y==="-"||y==="("?"":y)+k,P=(b==="s"&&!isNaN(D)&&$u!==void 0?Db[8+$u/3]:"")+P+(Z&&y==="("?")":""),C){for(L=-1,z=D.length;++L<z;)if(U=D.charCodeAt(L),48>U||U>57){P=(U===46?r+D.slice(L+1):D.slice(L))+P,D=D.slice(0,L);break}}}M&&!g&&(D=t(D,1/0));var F=k.length+D.length+P.length,V=F<_?new Array(_-F+1).join(d):"";switch(M&&g&&(D=t(V+D,V.length?_-P.length:1/0),V=""),p){case"<":D=k+D+P+V;break;case"=":D=k+V+D+P;break;case"^":D=V.slice(0,F=V.length>>1)+k+D+P+V.slice(F);break;default:D=V+k+D+P;break}return s(D)}return R.toString=function(){return h+""},R}function u(h,f){var d=Math.max(-8,Math.min(8,Math.floor(ha(f)/3)))*3,p=Math.pow(10,-d),y=c((h=da(h),h.type="f",h),{suffix:Db[8+d/3]});return function(m){return y(p*m)}}return{format:c,formatPrefix:u}}var Hu,rr,_m;CP({thousands:",",grouping:[3],currency:["$",""]});function CP(e){return Hu=AP(e),rr=Hu.format,_m=Hu.formatPrefix,Hu}function Nb(e){return Math.max(0,-ha(Math.abs(e)))}function Ub(e,t){return Math.max(0,Math.max(-8,Math.min(8,Math.floor(ha(t)/3)))*3-ha(Math.abs(e)))}function Fb(e,t){return e=Math.abs(e),t=Math.abs(t)-e,Math.max(0,ha(t)-ha(e))+1}var qt=1e-6,e1=1e-12,te=Math.PI,Ie=te/2,Ob=te/4,Qn=te*2,In=180/te,Pe=te/180,fe=Math.abs,ya=Math.atan,Dr=Math.atan2,Qt=Math.cos;var n1=Math.exp;var ju=Math.log,vm=Math.pow,Yt=Math.sin,yi=Math.sign||function(e){return e>0?1:e<0?-1:0},Hn=Math.sqrt,zm=Math.tan;function i1(e){return e>1?0:e<-1?te:Math.acos(e)}function _i(e){return e>1?Ie:e<-1?-Ie:Math.asin(e)}function xi(){}function Qu(e,t){e&&kb.hasOwnProperty(e.type)&&kb[e.type](e,t)}var Bb={Feature:function(e,t){Qu(e.geometry,t)},FeatureCollection:function(e,t){for(var n=e.features,i=-1,r=n.length;++i<r;)Qu(n[i].geometry,t)}},kb={Sphere:function(e,t){t.sphere()},Point:function(e,t){e=e.coordinates,t.point(e[0],e[1],e[2])},MultiPoint:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)e=n[i],t.point(e[0],e[1],e[2])},LineString:function(e,t){Tm(e.coordinates,t,0)},MultiLineString:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)Tm(n[i],t,0)},Polygon:function(e,t){zb(e.coordinates,t)},MultiPolygon:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)zb(n[i],t)},GeometryCollection:function(e,t){for(var n=e.geometries,i=-1,r=n.length;++i<r;)Qu(n[i],t)}};function Tm(e,t,n){var i=-1,r=e.length-n,s;for(t.lineStart();++i<r;)s=e[i],t.point(s[0],s[1],s[2]);t.lineEnd()}function zb(e,t){var n=-1,i=e.length;for(t.polygonStart();++n<i;)Tm(e[n],t,1);t.polygonEnd()}function gs(e,t){e&&Bb.hasOwnProperty(e.type)?Bb[e.type](e,t):Qu(e,t)}var kk=new fi,zk=new fi;function Em(e){return[Dr(e[1],e[0]),_i(e[2])]}function ma(e){var t=e[0],n=e[1],i=Qt(n);return[i*Qt(t),i*Yt(t),Yt(n)]}function Xu(e,t){return e[0]*t[0]+e[1]*t[1]+e[2]*t[2]}function tf(e,t){return[e[1]*t[2]-e[2]*t[1],e[2]*t[0]-e[0]*t[2],e[0]*t[1]-e[1]*t[0]]}function bm(e,t){e[0]+=t[0],e[1]+=t[1],e[2]+=t[2]}function qu(e,t){return[e[0]*t,e[1]*t,e[2]*t]}function Am(e){var t=Hn(e[0]*e[0]+e[1]*e[1]+e[2]*e[2]);e[0]/=t,e[1]/=t,e[2]/=t}function Cm(e,t){function n(i,r){return i=e(i,r),t(i[0],i[1])}return e.invert&&t.invert&&(n.invert=function(i,r){return i=t.invert(i,r),i&&e.invert(i[0],i[1])}),n}function Rm(e,t){return fe(e)>te&&(e-=Math.round(e/Qn)*Qn),[e,t]}Rm.invert=Rm;function r1(e,t,n){return(e%=Qn)?t||n?Cm(Vb(e),Hb(t,n)):Vb(e):t||n?Hb(t,n):Rm}function Gb(e){return function(t,n){return t+=e,fe(t)>te&&(t-=Math.round(t/Qn)*Qn),[t,n]}}function Vb(e){var t=Gb(e);return t.invert=Gb(-e),t}function Hb(e,t){var n=Qt(e),i=Yt(e),r=Qt(t),s=Yt(t);function o(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*n+u*i;return[Dr(h*r-d*s,u*n-f*i),_i(d*r+h*s)]}return o.invert=function(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*r-h*s;return[Dr(h*r+f*s,u*n+d*i),_i(d*n-u*i)]},o}function RP(e){e=r1(e[0]*Pe,e[1]*Pe,e.length>2?e[2]*Pe:0);function t(n){return n=e(n[0]*Pe,n[1]*Pe),n[0]*=In,n[1]*=In,n}return t.invert=function(n){return n=e.invert(n[0]*Pe,n[1]*Pe),n[0]*=In,n[1]*=In,n},t}function PP(e,t,n,i,r,s){if(n){var o=Qt(t),a=Yt(t),l=i*n;r==null?(r=t+i*Qn,s=t-l/2):(r=Wb(o,r),s=Wb(o,s),(i>0?r<s:r>s)&&(r+=i*Qn));for(var c,u=r;i>0?u>s:u<s;u-=l)c=Em([o,-a*Qt(u),-a*Yt(u)]),e.point(c[0],c[1])}}function Wb(e,t){t=ma(t),t[0]-=e,Am(t);var n=i1(-t[1]);return((-t[2]<0?-n:n)+Qn-qt)%Qn}function s1(){var e=[],t;return{point:function(n,i,r){t.push([n,i,r])},lineStart:function(){e.push(t=[])},lineEnd:xi,rejoin:function(){e.length>1&&e.push(e.pop().concat(e.shift()))},result:function(){var n=e;return e=[],t=null,n}}}function Ku(e,t){return fe(e[0]-t[0])<qt&&fe(e[1]-t[1])<qt}function Yu(e,t,n,i){this.x=e,this.z=t,this.o=n,this.e=i,this.v=!1,this.n=this.p=null}function o1(e,t,n,i,r){var s=[],o=[],a,l;if(e.forEach(function(p){if(!((y=p.length-1)<=0)){var y,m=p[0],g=p[y],_;if(Ku(m,g)){if(!m[2]&&!g[2]){for(r.lineStart(),a=0;a<y;++a)r.point((m=p[a])[0],m[1]);r.lineEnd();return}g[0]+=2*qt}s.push(_=new Yu(m,p,null,!0)),o.push(_.o=new Yu(m,null,_,!1)),s.push(_=new Yu(g,p,null,!1)),o.push(_.o=new Yu(g,null,_,!0))}}),!!s.length){for(o.sort(t),$b(s),$b(o),a=0,l=o.length;a<l;++a)o[a].e=n=!n;for(var c=s[0],u,h;;){for(var f=c,d=!0;f.v;)if((f=f.n)===c)return;u=f.z,r.lineStart();do{if(f.v=f.o.v=!0,f.e){if(d)for(a=0,l=u.length;a<l;++a)r.point((h=u[a])[0],h[1]);else i(f.x,f.n.x,1,r);f=f.n}else{if(d)for(u=f.p.z,a=u.length-1;a>=0;--a)r.point((h=u[a])[0],h[1]);else i(f.x,f.p.x,-1,r);f=f.p}f=f.o,u=f.z,d=!d}while(!f.v);r.lineEnd()}}}function $b(e){if(t=e.length){for(var t,n=0,i=e[0],r;++n<t;)i.n=r=e[n],r.p=i,i=r;i.n=r=e[0],r.p=i}}function Mm(e){return fe(e[0])<=te?e[0]:yi(e[0])*((fe(e[0])+te)%Qn-te)}function IP(e,t){var n=Mm(t),i=t[1],r=Yt(i),s=[Yt(n),-Qt(n),0],o=0,a=0,l=new fi;r===1?i=Ie+qt:r===-1&&(i=-Ie-qt);for(var c=0,u=e.length;c<u;++c)if(f=(h=e[c]).length)for(var h,f,d=h[f-1],p=Mm(d),y=d[1]/2+Ob,m=Yt(y),g=Qt(y),_=0;_<f;++_,p=v,m=b,g=x,d=M){var M=h[_],v=Mm(M),S=M[1]/2+Ob,b=Yt(S),x=Qt(S),w=v-p,A=w>=0?1:-1,C=A*w,R=C>te,D=m*b;if(l.add(Dr(D*A*Yt(C),g*x+D*Qt(C))),o+=R?w+A*Qn:w,R^p>=n^v>=n){var k=tf(ma(d),ma(M));Am(k);var P=tf(s,k);Am(P);var L=(R^w>=0?-1:1)*_i(P[2]);(i>L||i===L&&(k[0]||k[1]))&&(a+=R^w>=0?1:-1)}}return(o<-qt||o<qt&&l<-e1)^a&1}function a1(e,t,n,i){return function(r){var s=t(r),o=s1(),a=t(o),l=!1,c,u,h,f={point:d,lineStart:y,lineEnd:m,polygonStart:function(){f.point=g,f.lineStart=_,f.lineEnd=M,u=[],c=[]},polygonEnd:function(){f.point=d,f.lineStart=y,f.lineEnd=m,u=jp(u);var v=IP(c,i);u.length?(l||(r.polygonStart(),l=!0),o1(u,DP,v,n,r)):v&&(l||(r.polygonStart(),l=!0),r.lineStart(),n(null,null,1,r),r.lineEnd()),l&&(r.polygonEnd(),l=!1),u=c=null},sphere:function(){r.polygonStart(),r.lineStart(),n(null,null,1,r),r.lineEnd(),r.polygonEnd()}};function d(v,S){e(v,S)&&r.point(v,S)}function p(v,S){s.point(v,S)}function y(){f.point=p,s.lineStart()}function m(){f.point=d,s.lineEnd()}function g(v,S){h.push([v,S]),a.point(v,S)}function _(){a.lineStart(),h=[]}function M(){g(h[0][0],h[0][1]),a.lineEnd();var v=a.clean(),S=o.result(),b,x=S.length,w,A,C;if(h.pop(),c.push(h),h=null,!!x){if(v&1){if(A=S[0],(w=A.length-1)>0){for(l||(r.polygonStart(),l=!0),r.lineStart(),b=0;b<w;++b)r.point((C=A[b])[0],C[1]);r.lineEnd()}return}x>1&&v&2&&S.push(S.pop().concat(S.shift())),u.push(S.filter(LP))}}return f}}function LP(e){return e.length>1}function DP(e,t){return((e=e.x)[0]<0?e[1]-Ie-qt:Ie-e[1])-((t=t.x)[0]<0?t[1]-Ie-qt:Ie-t[1])}var Xb=a1(function(){return!0},NP,FP,[-te,-Ie]);function NP(e){var t=NaN,n=NaN,i=NaN,r;return{lineStart:function(){e.lineStart(),r=1},point:function(s,o){var a=s>0?te:-te,l=fe(s-t);fe(l-te)<qt?(e.point(t,n=(n+o)/2>0?Ie:-Ie),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),e.point(s,n),r=0):i!==a&&l>=te&&(fe(t-i)<qt&&(t-=i*qt),fe(s-a)<qt&&(s-=a*qt),n=UP(t,n,s,o),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),r=0),e.point(t=s,n=o),i=a},lineEnd:function(){e.lineEnd(),t=n=NaN},clean:function(){return 2-r}}}function UP(e,t,n,i){var r,s,o=Yt(e-n);return fe(o)>qt?ya((Yt(t)*(s=Qt(i))*Yt(n)-Yt(i)*(r=Qt(t))*Yt(e))/(r*s*o)):(t+i)/2}function FP(e,t,n,i){var r;if(e==null)r=n*Ie,i.point(-te,r),i.point(0,r),i.point(te,r),i.point(te,0),i.point(te,-r),i.point(0,-r),i.point(-te,-r),i.point(-te,0),i.point(-te,r);else if(fe(e[0]-t[0])>qt){var s=e[0]<t[0]?te:-te;r=n*s/2,i.point(-s,r),i.point(0,r),i.point(s,r)}else i.point(t[0],t[1])}function OP(e){var t=Qt(e),n=2*Pe,i=t>0,r=fe(t)>qt;function s(u,h,f,d){PP(d,e,n,f,u,h)}function o(u,h){return Qt(u)*Qt(h)>t}function a(u){var h,f,d,p,y;return{lineStart:function(){p=d=!1,y=1},point:function(m,g){var _=[m,g],M,v=o(m,g),S=i?v?0:c(m,g):v?c(m+(m<0?te:-te),g):0;if(!h&&(p=d=v)&&u.lineStart(),v!==d&&(M=l(h,_),(!M||Ku(h,M)||Ku(_,M))&&(_[2]=1)),v!==d)y=0,v?(u.lineStart(),M=l(_,h),u.point(M[0],M[1])):(M=l(h,_),u.point(M[0],M[1],2),u.lineEnd()),h=M;else if(r&&h&&i^v){var b;!(S&f)&&(b=l(_,h,!0))&&(y=0,i?(u.lineStart(),u.point(b[0][0],b[0][1]),u.point(b[1][0],b[1][1]),u.lineEnd()):(u.point(b[1][0],b[1][1]),u.lineEnd(),u.lineStart(),u.point(b[0][0],b[0][1],3)))}v&&(!h||!Ku(h,_))&&u.point(_[0],_[1]),h=_,d=v,f=S},lineEnd:function(){d&&u.lineEnd(),h=null},clean:function(){return y|(p&&d)<<1}}}function l(u,h,f){var d=ma(u),p=ma(h),y=[1,0,0],m=tf(d,p),g=Xu(m,m),_=m[0],M=g-_*_;if(!M)return!f&&u;var v=t*g/M,S=-t*_/M,b=tf(y,m),x=qu(y,v),w=qu(m,S);bm(x,w);var A=b,C=Xu(x,A),R=Xu(A,A),D=C*C-R*(Xu(x,x)-1);if(!(D<0)){var k=Hn(D),P=qu(A,(-C-k)/R);if(bm(P,x),P=Em(P),!f)return P;var L=u[0],z=h[0],U=u[1],Z=h[1],F;z<L&&(F=L,L=z,z=F);var V=z-L,q=fe(V-te)<qt,st=q||V<qt;if(!q&&Z<U&&(F=U,U=Z,Z=F),st?q?U+Z>0^P[1]<(fe(P[0]-L)<qt?U:Z):U<=P[1]&&P[1]<=Z:V>te^(L<=P[0]&&P[0]<=z)){var lt=qu(A,(-C+k)/R);return bm(lt,x),[P,Em(lt)]}}}function c(u,h){var f=i?e:te-e,d=0;return u<-f?d|=1:u>f&&(d|=2),h<-f?d|=4:h>f&&(d|=8),d}return a1(o,a,s,i?[0,-e]:[-te,e-te])}function BP(e,t,n,i,r,s){var o=e[0],a=e[1],l=t[0],c=t[1],u=0,h=1,f=l-o,d=c-a,p;if(p=n-o,!(!f&&p>0)){if(p/=f,f<0){if(p<u)return;p<h&&(h=p)}else if(f>0){if(p>h)return;p>u&&(u=p)}if(p=r-o,!(!f&&p<0)){if(p/=f,f<0){if(p>h)return;p>u&&(u=p)}else if(f>0){if(p<u)return;p<h&&(h=p)}if(p=i-a,!(!d&&p>0)){if(p/=d,d<0){if(p<u)return;p<h&&(h=p)}else if(d>0){if(p>h)return;p>u&&(u=p)}if(p=s-a,!(!d&&p<0)){if(p/=d,d<0){if(p>h)return;p>u&&(u=p)}else if(d>0){if(p<u)return;p<h&&(h=p)}return u>0&&(e[0]=o+u*f,e[1]=a+u*d),h<1&&(t[0]=o+h*f,t[1]=a+h*d),!0}}}}}var Vl=1e9,Zu=-Vl;function Gm(e,t,n,i){function r(c,u){return e<=c&&c<=n&&t<=u&&u<=i}function s(c,u,h,f){var d=0,p=0;if(c==null||(d=o(c,h))!==(p=o(u,h))||l(c,u)<0^h>0)do f.point(d===0||d===3?e:n,d>1?i:t);while((d=(d+h+4)%4)!==p);else f.point(u[0],u[1])}function o(c,u){return fe(c[0]-e)<qt?u>0?0:3:fe(c[0]-n)<qt?u>0?2:1:fe(c[1]-t)<qt?u>0?1:0:u>0?3:2}function a(c,u){return l(c.x,u.x)}function l(c,u){var h=o(c,1),f=o(u,1);return h!==f?h-f:h===0?u[1]-c[1]:h===1?c[0]-u[0]:h===2?c[1]-u[1]:u[0]-c[0]}return function(c){var u=c,h=s1(),f,d,p,y,m,g,_,M,v,S,b,x={point:w,lineStart:D,lineEnd:k,polygonStart:C,polygonEnd:R};function w(L,z){r(L,z)&&u.point(L,z)}function A(){for(var L=0,z=0,U=d.length;z<U;++z)for(var Z=d[z],F=1,V=Z.length,q=Z[0],st,lt,$=q[0],at=q[1];F<V;++F)st=$,lt=at,q=Z[F],$=q[0],at=q[1],lt<=i?at>i&&($-st)*(i-lt)>(at-lt)*(e-st)&&++L:at<=i&&($-st)*(i-lt)<(at-lt)*(e-st)&&--L;return L}function C(){u=h,f=[],d=[],b=!0}function R(){var L=A(),z=b&&L,U=(f=jp(f)).length;(z||U)&&(c.polygonStart(),z&&(c.lineStart(),s(null,null,1,c),c.lineEnd()),U&&o1(f,a,L,s,c),c.polygonEnd()),u=c,f=d=p=null}function D(){x.point=P,d&&d.push(p=[]),S=!0,v=!1,_=M=NaN}function k(){f&&(P(y,m),g&&v&&h.rejoin(),f.push(h.result())),x.point=w,v&&u.lineEnd()}function P(L,z){var U=r(L,z);if(d&&p.push([L,z]),S)y=L,m=z,g=U,S=!1,U&&(u.lineStart(),u.point(L,z));else if(U&&v)u.point(L,z);else{var Z=[_=Math.max(Zu,Math.min(Vl,_)),M=Math.max(Zu,Math.min(Vl,M))],F=[L=Math.max(Zu,Math.min(Vl,L)),z=Math.max(Zu,Math.min(Vl,z))];BP(Z,F,e,t,n,i)?(v||(u.lineStart(),u.point(Z[0],Z[1])),u.point(F[0],F[1]),U||u.lineEnd(),b=!1):U&&(u.lineStart(),u.point(L,z),b=!1)}_=L,M=z,v=U}return x}}var Pm=e=>e,Sm=new fi,Im=new fi,l1,c1,Lm,Dm,Lr={point:xi,lineStart:xi,lineEnd:xi,polygonStart:function(){Lr.lineStart=kP,Lr.lineEnd=GP},polygonEnd:function(){Lr.lineStart=Lr.lineEnd=Lr.point=xi,Sm.add(fe(Im)),Im=new fi},result:function(){var e=Sm/2;return Sm=new fi,e}};function kP(){Lr.point=zP}function zP(e,t){Lr.point=u1,l1=Lm=e,c1=Dm=t}function u1(e,t){Im.add(Dm*e-Lm*t),Lm=e,Dm=t}function GP(){u1(l1,c1)}var ga=1/0,ef=ga,Kl=-ga,nf=Kl,rf={point:VP,lineStart:xi,lineEnd:xi,polygonStart:xi,polygonEnd:xi,result:function(){var e=[[ga,ef],[Kl,nf]];return Kl=nf=-(ef=ga=1/0),e}};function VP(e,t){e<ga&&(ga=e),e>Kl&&(Kl=e),t<ef&&(ef=t),t>nf&&(nf=t)}var Nm=0,Um=0,Hl=0,sf=0,of=0,pa=0,Fm=0,Om=0,Wl=0,f1,h1,sr,or,gi={point:lo,lineStart:qb,lineEnd:Yb,polygonStart:function(){gi.lineStart=$P,gi.lineEnd=XP},polygonEnd:function(){gi.point=lo,gi.lineStart=qb,gi.lineEnd=Yb},result:function(){var e=Wl?[Fm/Wl,Om/Wl]:pa?[sf/pa,of/pa]:Hl?[Nm/Hl,Um/Hl]:[NaN,NaN];return Nm=Um=Hl=sf=of=pa=Fm=Om=Wl=0,e}};function lo(e,t){Nm+=e,Um+=t,++Hl}function qb(){gi.point=HP}function HP(e,t){gi.point=WP,lo(sr=e,or=t)}function WP(e,t){var n=e-sr,i=t-or,r=Hn(n*n+i*i);sf+=r*(sr+e)/2,of+=r*(or+t)/2,pa+=r,lo(sr=e,or=t)}function Yb(){gi.point=lo}function $P(){gi.point=qP}function XP(){d1(f1,h1)}function qP(e,t){gi.point=d1,lo(f1=sr=e,h1=or=t)}function d1(e,t){var n=e-sr,i=t-or,r=Hn(n*n+i*i);sf+=r*(sr+e)/2,of+=r*(or+t)/2,pa+=r,r=or*e-sr*t,Fm+=r*(sr+e),Om+=r*(or+t),Wl+=r*3,lo(sr=e,or=t)}function p1(e){this._context=e}p1.prototype={_radius:4.5,pointRadius:function(e){return this._radius=e,this},polygonStart:function(){this._line=0},polygonEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){this._line===0&&this._context.closePath(),this._point=NaN},point:function(e,t){switch(this._point){case 0:{this._context.moveTo(e,t),this._point=1;break}case 1:{this._context.lineTo(e,t);break}default:{this._context.moveTo(e+this._radius,t),this._context.arc(e,t,this._radius,0,Qn);break}}},result:xi};var Bm=new fi,wm,m1,g1,$l,Xl,jl={point:xi,lineStart:function(){jl.point=YP},lineEnd:function(){wm&&y1(m1,g1),jl.point=xi},polygonStart:function(){wm=!0},polygonEnd:function(){wm=null},result:function(){var e=+Bm;return Bm=new fi,e}};function YP(e,t){jl.point=y1,m1=$l=e,g1=Xl=t}function y1(e,t){$l-=e,Xl-=t,Bm.add(Hn($l*$l+Xl*Xl)),$l=e,Xl=t}var Zb,af,Jb,Kb,lf=class{constructor(t){this._append=t==null?x1:ZP(t),this._radius=4.5,this._=""}pointRadius(t){return this._radius=+t,this}polygonStart(){this._line=0}polygonEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){this._line===0&&(this._+="Z"),this._point=NaN}point(t,n){switch(this._point){case 0:{this._append`M${t},${n}`,this._point=1;break}case 1:{this._append`L${t},${n}`;break}default:{if(this._append`M${t},${n}`,this._radius!==Jb||this._append!==af){let i=this._radius,r=this._;this._="",this._append`m0,${i}a${i},${i} 0 1,1 0,${-2*i}a${i},${i} 0 1,1 0,${2*i}z`,Jb=i,af=this._append,Kb=this._,this._=r}this._+=Kb;break}}}result(){let t=this._;return this._="",t.length?t:null}};function x1(e){let t=1;this._+=e[0];for(let n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function ZP(e){let t=Math.floor(e);if(!(t>=0))throw new RangeError(`invalid digits: ${e}`);if(t>15)return x1;if(t!==Zb){let n=10**t;Zb=t,af=function(r){let s=1;this._+=r[0];for(let o=r.length;s<o;++s)this._+=Math.round(arguments[s]*n)/n+r[s]}}return af}function tc(e,t){let n=3,i=4.5,r,s;function o(a){return a&&(typeof i=="function"&&s.pointRadius(+i.apply(this,arguments)),gs(a,r(s))),s.result()}return o.area=function(a){return gs(a,r(Lr)),Lr.result()},o.measure=function(a){return gs(a,r(jl)),jl.result()},o.bounds=function(a){return gs(a,r(rf)),rf.result()},o.centroid=function(a){return gs(a,r(gi)),gi.result()},o.projection=function(a){return arguments.length?(r=a==null?(e=null,Pm):(e=a).stream,o):e},o.context=function(a){return arguments.length?(s=a==null?(t=null,new lf(n)):new p1(t=a),typeof i!="function"&&s.pointRadius(i),o):t},o.pointRadius=function(a){return arguments.length?(i=typeof a=="function"?a:(s.pointRadius(+a),+a),o):i},o.digits=function(a){if(!arguments.length)return n;if(a==null)n=null;else{let l=Math.floor(a);if(!(l>=0))throw new RangeError(`invalid digits: ${a}`);n=l}return t===null&&(s=new lf(n)),o},o.projection(e).digits(n).context(t)}function ec(e){return{stream:ff(e)}}function ff(e){return function(t){var n=new km;for(var i in e)n[i]=e[i];return n.stream=t,n}}function km(){}km.prototype={constructor:km,point:function(e,t){this.stream.point(e,t)},sphere:function(){this.stream.sphere()},lineStart:function(){this.stream.lineStart()},lineEnd:function(){this.stream.lineEnd()},polygonStart:function(){this.stream.polygonStart()},polygonEnd:function(){this.stream.polygonEnd()}};function Vm(e,t,n){var i=e.clipExtent&&e.clipExtent();return e.scale(150).translate([0,0]),i!=null&&e.clipExtent(null),gs(n,e.stream(rf)),t(rf.result()),i!=null&&e.clipExtent(i),e}function Hm(e,t,n){return Vm(e,function(i){var r=t[1][0]-t[0][0],s=t[1][1]-t[0][1],o=Math.min(r/(i[1][0]-i[0][0]),s/(i[1][1]-i[0][1])),a=+t[0][0]+(r-o*(i[1][0]+i[0][0]))/2,l=+t[0][1]+(s-o*(i[1][1]+i[0][1]))/2;e.scale(150*o).translate([a,l])},n)}function _1(e,t,n){return Hm(e,[[0,0],t],n)}function v1(e,t,n){return Vm(e,function(i){var r=+t,s=r/(i[1][0]-i[0][0]),o=(r-s*(i[1][0]+i[0][0]))/2,a=-s*i[0][1];e.scale(150*s).translate([o,a])},n)}function b1(e,t,n){return Vm(e,function(i){var r=+t,s=r/(i[1][1]-i[0][1]),o=-s*i[0][0],a=(r-s*(i[1][1]+i[0][1]))/2;e.scale(150*s).translate([o,a])},n)}var jb=16,JP=Qt(30*Pe);function Qb(e,t){return+t?jP(e,t):KP(e)}function KP(e){return ff({point:function(t,n){t=e(t,n),this.stream.point(t[0],t[1])}})}function jP(e,t){function n(i,r,s,o,a,l,c,u,h,f,d,p,y,m){var g=c-i,_=u-r,M=g*g+_*_;if(M>4*t&&y--){var v=o+f,S=a+d,b=l+p,x=Hn(v*v+S*S+b*b),w=_i(b/=x),A=fe(fe(b)-1)<qt||fe(s-h)<qt?(s+h)/2:Dr(S,v),C=e(A,w),R=C[0],D=C[1],k=R-i,P=D-r,L=_*k-g*P;(L*L/M>t||fe((g*k+_*P)/M-.5)>.3||o*f+a*d+l*p<JP)&&(n(i,r,s,o,a,l,R,D,A,v/=x,S/=x,b,y,m),m.point(R,D),n(R,D,A,v,S,b,c,u,h,f,d,p,y,m))}}return function(i){var r,s,o,a,l,c,u,h,f,d,p,y,m={point:g,lineStart:_,lineEnd:v,polygonStart:function(){i.polygonStart(),m.lineStart=S},polygonEnd:function(){i.polygonEnd(),m.lineStart=_}};function g(w,A){w=e(w,A),i.point(w[0],w[1])}function _(){h=NaN,m.point=M,i.lineStart()}function M(w,A){var C=ma([w,A]),R=e(w,A);n(h,f,u,d,p,y,h=R[0],f=R[1],u=w,d=C[0],p=C[1],y=C[2],jb,i),i.point(h,f)}function v(){m.point=g,i.lineEnd()}function S(){_(),m.point=b,m.lineEnd=x}function b(w,A){M(r=w,A),s=h,o=f,a=d,l=p,c=y,m.point=M}function x(){n(h,f,u,d,p,y,s,o,r,a,l,c,jb,i),m.lineEnd=v,v()}return m}}var QP=ff({point:function(e,t){this.stream.point(e*Pe,t*Pe)}});function tI(e){return ff({point:function(t,n){var i=e(t,n);return this.stream.point(i[0],i[1])}})}function eI(e,t,n,i,r){function s(o,a){return o*=i,a*=r,[t+e*o,n-e*a]}return s.invert=function(o,a){return[(o-t)/e*i,(n-a)/e*r]},s}function t1(e,t,n,i,r,s){if(!s)return eI(e,t,n,i,r);var o=Qt(s),a=Yt(s),l=o*e,c=a*e,u=o/e,h=a/e,f=(a*n-o*t)/e,d=(a*t+o*n)/e;function p(y,m){return y*=i,m*=r,[l*y-c*m+t,n-c*y-l*m]}return p.invert=function(y,m){return[i*(u*y-h*m+f),r*(d-h*y-u*m)]},p}function ys(e){return M1(function(){return e})()}function M1(e){var t,n=150,i=480,r=250,s=0,o=0,a=0,l=0,c=0,u,h=0,f=1,d=1,p=null,y=Xb,m=null,g,_,M,v=Pm,S=.5,b,x,w,A,C;function R(L){return w(L[0]*Pe,L[1]*Pe)}function D(L){return L=w.invert(L[0],L[1]),L&&[L[0]*In,L[1]*In]}R.stream=function(L){return A&&C===L?A:A=QP(tI(u)(y(b(v(C=L)))))},R.preclip=function(L){return arguments.length?(y=L,p=void 0,P()):y},R.postclip=function(L){return arguments.length?(v=L,m=g=_=M=null,P()):v},R.clipAngle=function(L){return arguments.length?(y=+L?OP(p=L*Pe):(p=null,Xb),P()):p*In},R.clipExtent=function(L){return arguments.length?(v=L==null?(m=g=_=M=null,Pm):Gm(m=+L[0][0],g=+L[0][1],_=+L[1][0],M=+L[1][1]),P()):m==null?null:[[m,g],[_,M]]},R.scale=function(L){return arguments.length?(n=+L,k()):n},R.translate=function(L){return arguments.length?(i=+L[0],r=+L[1],k()):[i,r]},R.center=function(L){return arguments.length?(s=L[0]%360*Pe,o=L[1]%360*Pe,k()):[s*In,o*In]},R.rotate=function(L){return arguments.length?(a=L[0]%360*Pe,l=L[1]%360*Pe,c=L.length>2?L[2]%360*Pe:0,k()):[a*In,l*In,c*In]},R.angle=function(L){return arguments.length?(h=L%360*Pe,k()):h*In},R.reflectX=function(L){return arguments.length?(f=L?-1:1,k()):f<0},R.reflectY=function(L){return arguments.length?(d=L?-1:1,k()):d<0},R.precision=function(L){return arguments.length?(b=Qb(x,S=L*L),P()):Hn(S)},R.fitExtent=function(L,z){return Hm(R,L,z)},R.fitSize=function(L,z){return _1(R,L,z)},R.fitWidth=function(L,z){return v1(R,L,z)},R.fitHeight=function(L,z){return b1(R,L,z)};function k(){var L=t1(n,0,0,f,d,h).apply(null,t(s,o)),z=t1(n,i-L[0],r-L[1],f,d,h);return u=r1(a,l,c),x=Cm(t,z),w=Cm(u,x),b=Qb(x,S),P()}function P(){return A=C=null,R}return function(){return t=e.apply(this,arguments),R.invert=t.invert&&D,k()}}function Wm(e){var t=0,n=te/3,i=M1(e),r=i(t,n);return r.parallels=function(s){return arguments.length?i(t=s[0]*Pe,n=s[1]*Pe):[t*In,n*In]},r}function nI(e){var t=Qt(e);function n(i,r){return[i*t,Yt(r)/t]}return n.invert=function(i,r){return[i/t,_i(r*t)]},n}function iI(e,t){var n=Yt(e),i=(n+Yt(t))/2;if(fe(i)<qt)return nI(e);var r=1+n*(2*i-n),s=Hn(r)/i;function o(a,l){var c=Hn(r-2*i*Yt(l))/i;return[c*Yt(a*=i),s-c*Qt(a)]}return o.invert=function(a,l){var c=s-l,u=Dr(a,fe(c))*yi(c);return c*i<0&&(u-=te*yi(a)*yi(c)),[u/i,_i((r-(a*a+c*c)*i*i)/(2*i))]},o}function Ql(){return Wm(iI).scale(155.424).center([0,33.6442])}function $m(){return Ql().parallels([29.5,45.5]).scale(1070).translate([480,250]).rotate([96,0]).center([-.6,38.7])}function rI(e){var t=e.length;return{point:function(n,i){for(var r=-1;++r<t;)e[r].point(n,i)},sphere:function(){for(var n=-1;++n<t;)e[n].sphere()},lineStart:function(){for(var n=-1;++n<t;)e[n].lineStart()},lineEnd:function(){for(var n=-1;++n<t;)e[n].lineEnd()},polygonStart:function(){for(var n=-1;++n<t;)e[n].polygonStart()},polygonEnd:function(){for(var n=-1;++n<t;)e[n].polygonEnd()}}}function S1(){var e,t,n=$m(),i,r=Ql().rotate([154,0]).center([-2,58.5]).parallels([55,65]),s,o=Ql().rotate([157,0]).center([-3,19.9]).parallels([8,18]),a,l,c={point:function(f,d){l=[f,d]}};function u(f){var d=f[0],p=f[1];return l=null,i.point(d,p),l||(s.point(d,p),l)||(a.point(d,p),l)}u.invert=function(f){var d=n.scale(),p=n.translate(),y=(f[0]-p[0])/d,m=(f[1]-p[1])/d;return(m>=.12&&m<.234&&y>=-.425&&y<-.214?r:m>=.166&&m<.234&&y>=-.214&&y<-.115?o:n).invert(f)},u.stream=function(f){return e&&t===f?e:e=rI([n.stream(t=f),r.stream(f),o.stream(f)])},u.precision=function(f){return arguments.length?(n.precision(f),r.precision(f),o.precision(f),h()):n.precision()},u.scale=function(f){return arguments.length?(n.scale(f),r.scale(f*.35),o.scale(f),u.translate(n.translate())):n.scale()},u.translate=function(f){if(!arguments.length)return n.translate();var d=n.scale(),p=+f[0],y=+f[1];return i=n.translate(f).clipExtent([[p-.455*d,y-.238*d],[p+.455*d,y+.238*d]]).stream(c),s=r.translate([p-.307*d,y+.201*d]).clipExtent([[p-.425*d+qt,y+.12*d+qt],[p-.214*d-qt,y+.234*d-qt]]).stream(c),a=o.translate([p-.205*d,y+.212*d]).clipExtent([[p-.214*d+qt,y+.166*d+qt],[p-.115*d-qt,y+.234*d-qt]]).stream(c),h()},u.fitExtent=function(f,d){return Hm(u,f,d)},u.fitSize=function(f,d){return _1(u,f,d)},u.fitWidth=function(f,d){return v1(u,f,d)},u.fitHeight=function(f,d){return b1(u,f,d)};function h(){return e=t=null,u}return u.scale(1070)}function w1(e){return function(t,n){var i=Qt(t),r=Qt(n),s=e(i*r);return s===1/0?[2,0]:[s*r*Yt(t),s*Yt(n)]}}function nc(e){return function(t,n){var i=Hn(t*t+n*n),r=e(i),s=Yt(r),o=Qt(r);return[Dr(t*s,i*o),_i(i&&n*s/i)]}}var T1=w1(function(e){return Hn(2/(1+e))});T1.invert=nc(function(e){return 2*_i(e/2)});function E1(){return ys(T1).scale(124.75).clipAngle(180-.001)}var A1=w1(function(e){return(e=i1(e))&&e/Yt(e)});A1.invert=nc(function(e){return e});function C1(){return ys(A1).scale(79.4188).clipAngle(180-.001)}function hf(e,t){return[e,ju(zm((Ie+t)/2))]}hf.invert=function(e,t){return[e,2*ya(n1(t))-Ie]};function R1(){return P1(hf).scale(961/Qn)}function P1(e){var t=ys(e),n=t.center,i=t.scale,r=t.translate,s=t.clipExtent,o=null,a,l,c;t.scale=function(h){return arguments.length?(i(h),u()):i()},t.translate=function(h){return arguments.length?(r(h),u()):r()},t.center=function(h){return arguments.length?(n(h),u()):n()},t.clipExtent=function(h){return arguments.length?(h==null?o=a=l=c=null:(o=+h[0][0],a=+h[0][1],l=+h[1][0],c=+h[1][1]),u()):o==null?null:[[o,a],[l,c]]};function u(){var h=te*i(),f=t(RP(t.rotate()).invert([0,0]));return s(o==null?[[f[0]-h,f[1]-h],[f[0]+h,f[1]+h]]:e===hf?[[Math.max(f[0]-h,o),a],[Math.min(f[0]+h,l),c]]:[[o,Math.max(f[1]-h,a)],[l,Math.min(f[1]+h,c)]])}return u()}function Ju(e){return zm((Ie+e)/2)}function sI(e,t){var n=Qt(e),i=e===t?Yt(e):ju(n/Qt(t))/ju(Ju(t)/Ju(e)),r=n*vm(Ju(e),i)/i;if(!i)return hf;function s(o,a){r>0?a<-Ie+qt&&(a=-Ie+qt):a>Ie-qt&&(a=Ie-qt);var l=r/vm(Ju(a),i);return[l*Yt(i*o),r-l*Qt(i*o)]}return s.invert=function(o,a){var l=r-a,c=yi(i)*Hn(o*o+l*l),u=Dr(o,fe(l))*yi(l);return l*i<0&&(u-=te*yi(o)*yi(l)),[u/i,2*ya(vm(r/c,1/i))-Ie]},s}function I1(){return Wm(sI).scale(109.5).parallels([30,30])}function cf(e,t){return[e,t]}cf.invert=cf;function L1(){return ys(cf).scale(152.63)}function oI(e,t){var n=Qt(e),i=e===t?Yt(e):(n-Qt(t))/(t-e),r=n/i+e;if(fe(i)<qt)return cf;function s(o,a){var l=r-a,c=i*o;return[l*Yt(c),r-l*Qt(c)]}return s.invert=function(o,a){var l=r-a,c=Dr(o,fe(l))*yi(l);return l*i<0&&(c-=te*yi(o)*yi(l)),[c/i,r-yi(i)*Hn(o*o+l*l)]},s}function D1(){return Wm(oI).scale(131.154).center([0,13.9389])}var ql=1.340264,Yl=-.081106,Zl=893e-6,Jl=.003796,uf=Hn(3)/2,aI=12;function N1(e,t){var n=_i(uf*Yt(t)),i=n*n,r=i*i*i;return[e*Qt(n)/(uf*(ql+3*Yl*i+r*(7*Zl+9*Jl*i))),n*(ql+Yl*i+r*(Zl+Jl*i))]}N1.invert=function(e,t){for(var n=t,i=n*n,r=i*i*i,s=0,o,a,l;s<aI&&(a=n*(ql+Yl*i+r*(Zl+Jl*i))-t,l=ql+3*Yl*i+r*(7*Zl+9*Jl*i),n-=o=a/l,i=n*n,r=i*i*i,!(fe(o)<e1));++s);return[uf*e*(ql+3*Yl*i+r*(7*Zl+9*Jl*i))/Qt(n),_i(Yt(n)/uf)]};function U1(){return ys(N1).scale(177.158)}function F1(e,t){var n=Qt(t),i=Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}F1.invert=nc(ya);function O1(){return ys(F1).scale(144.049).clipAngle(60)}function lI(e,t){var n=t*t,i=n*n;return[e*(.8707-.131979*n+i*(-.013791+i*(.003971*n-.001529*i))),t*(1.007226+n*(.015085+i*(-.044475+.028874*n-.005916*i)))]}lI.invert=function(e,t){var n=t,i=25,r;do{var s=n*n,o=s*s;n-=r=(n*(1.007226+s*(.015085+o*(-.044475+.028874*s-.005916*o)))-t)/(1.007226+s*(.015085*3+o*(-.044475*7+.028874*9*s-.005916*11*o)))}while(fe(r)>qt&&--i>0);return[e/(.8707+(s=n*n)*(-.131979+s*(-.013791+s*s*s*(.003971-.001529*s)))),n]};function B1(e,t){return[Qt(t)*Yt(e),Yt(t)]}B1.invert=nc(_i);function k1(){return ys(B1).scale(249.5).clipAngle(90+qt)}function z1(e,t){var n=Qt(t),i=1+Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}z1.invert=nc(function(e){return 2*ya(e)});function G1(){return ys(z1).scale(250).clipAngle(142)}function V1(e,t){return[ju(zm((Ie+t)/2)),-e]}V1.invert=function(e,t){return[-t,2*ya(n1(e))-Ie]};function H1(){var e=P1(V1),t=e.center,n=e.rotate;return e.center=function(i){return arguments.length?t([-i[1],i[0]]):(i=t(),[i[1],-i[0]])},e.rotate=function(i){return arguments.length?n([i[0],i[1],i.length>2?i[2]+90:90]):(i=n(),[i[0],i[1],i[2]-90])},n([0,0,90]).scale(159.155)}var Xm=new Date,qm=new Date;function $e(e,t,n,i){function r(s){return e(s=arguments.length===0?new Date:new Date(+s)),s}return r.floor=s=>(e(s=new Date(+s)),s),r.ceil=s=>(e(s=new Date(s-1)),t(s,1),e(s),s),r.round=s=>{let o=r(s),a=r.ceil(s);return s-o<a-s?o:a},r.offset=(s,o)=>(t(s=new Date(+s),o==null?1:Math.floor(o)),s),r.range=(s,o,a)=>{let l=[];if(s=r.ceil(s),a=a==null?1:Math.floor(a),!(s<o)||!(a>0))return l;let c;do l.push(c=new Date(+s)),t(s,a),e(s);while(c<s&&s<o);return l},r.filter=s=>$e(o=>{if(o>=o)for(;e(o),!s(o);)o.setTime(o-1)},(o,a)=>{if(o>=o)if(a<0)for(;++a<=0;)for(;t(o,-1),!s(o););else for(;--a>=0;)for(;t(o,1),!s(o););}),n&&(r.count=(s,o)=>(Xm.setTime(+s),qm.setTime(+o),e(Xm),e(qm),Math.floor(n(Xm,qm))),r.every=s=>(s=Math.floor(s),!isFinite(s)||!(s>0)?null:s>1?r.filter(i?o=>i(o)%s===0:o=>r.count(0,o)%s===0):r)),r}var df=$e(()=>{},(e,t)=>{e.setTime(+e+t)},(e,t)=>t-e);df.every=e=>(e=Math.floor(e),!isFinite(e)||!(e>0)?null:e>1?$e(t=>{t.setTime(Math.floor(t/e)*e)},(t,n)=>{t.setTime(+t+n*e)},(t,n)=>(n-t)/e):df);var Hk=df.range,Nr=1e3,vi=Nr*60,Ur=vi*60,Fr=Ur*24,Zm=Fr*7,W1=Fr*30,Ym=Fr*365,Ln=$e(e=>{e.setTime(e-e.getMilliseconds())},(e,t)=>{e.setTime(+e+t*Nr)},(e,t)=>(t-e)/Nr,e=>e.getUTCSeconds()),Wk=Ln.range,co=$e(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Nr)},(e,t)=>{e.setTime(+e+t*vi)},(e,t)=>(t-e)/vi,e=>e.getMinutes()),$k=co.range,uo=$e(e=>{e.setUTCSeconds(0,0)},(e,t)=>{e.setTime(+e+t*vi)},(e,t)=>(t-e)/vi,e=>e.getUTCMinutes()),Xk=uo.range,fo=$e(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Nr-e.getMinutes()*vi)},(e,t)=>{e.setTime(+e+t*Ur)},(e,t)=>(t-e)/Ur,e=>e.getHours()),qk=fo.range,ho=$e(e=>{e.setUTCMinutes(0,0,0)},(e,t)=>{e.setTime(+e+t*Ur)},(e,t)=>(t-e)/Ur,e=>e.getUTCHours()),Yk=ho.range,ar=$e(e=>e.setHours(0,0,0,0),(e,t)=>e.setDate(e.getDate()+t),(e,t)=>(t-e-(t.getTimezoneOffset()-e.getTimezoneOffset())*vi)/Fr,e=>e.getDate()-1),Zk=ar.range,xa=$e(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/Fr,e=>e.getUTCDate()-1),Jk=xa.range,ic=$e(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/Fr,e=>Math.floor(e/Fr)),Kk=ic.range;function po(e){return $e(t=>{t.setDate(t.getDate()-(t.getDay()+7-e)%7),t.setHours(0,0,0,0)},(t,n)=>{t.setDate(t.getDate()+n*7)},(t,n)=>(n-t-(n.getTimezoneOffset()-t.getTimezoneOffset())*vi)/Zm)}var lr=po(0),mo=po(1),Jm=po(2),Km=po(3),Or=po(4),jm=po(5),Qm=po(6),jk=lr.range,Qk=mo.range,t8=Jm.range,e8=Km.range,n8=Or.range,i8=jm.range,r8=Qm.range;function go(e){return $e(t=>{t.setUTCDate(t.getUTCDate()-(t.getUTCDay()+7-e)%7),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCDate(t.getUTCDate()+n*7)},(t,n)=>(n-t)/Zm)}var cr=go(0),yo=go(1),tg=go(2),eg=go(3),Br=go(4),ng=go(5),ig=go(6),s8=cr.range,o8=yo.range,a8=tg.range,l8=eg.range,c8=Br.range,u8=ng.range,f8=ig.range,xo=$e(e=>{e.setDate(1),e.setHours(0,0,0,0)},(e,t)=>{e.setMonth(e.getMonth()+t)},(e,t)=>t.getMonth()-e.getMonth()+(t.getFullYear()-e.getFullYear())*12,e=>e.getMonth()),h8=xo.range,_o=$e(e=>{e.setUTCDate(1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCMonth(e.getUTCMonth()+t)},(e,t)=>t.getUTCMonth()-e.getUTCMonth()+(t.getUTCFullYear()-e.getUTCFullYear())*12,e=>e.getUTCMonth()),d8=_o.range,Wn=$e(e=>{e.setMonth(0,1),e.setHours(0,0,0,0)},(e,t)=>{e.setFullYear(e.getFullYear()+t)},(e,t)=>t.getFullYear()-e.getFullYear(),e=>e.getFullYear());Wn.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:$e(t=>{t.setFullYear(Math.floor(t.getFullYear()/e)*e),t.setMonth(0,1),t.setHours(0,0,0,0)},(t,n)=>{t.setFullYear(t.getFullYear()+n*e)});var p8=Wn.range,$n=$e(e=>{e.setUTCMonth(0,1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCFullYear(e.getUTCFullYear()+t)},(e,t)=>t.getUTCFullYear()-e.getUTCFullYear(),e=>e.getUTCFullYear());$n.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:$e(t=>{t.setUTCFullYear(Math.floor(t.getUTCFullYear()/e)*e),t.setUTCMonth(0,1),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCFullYear(t.getUTCFullYear()+n*e)});var m8=$n.range;function $1(e,t,n,i,r,s){let o=[[Ln,1,Nr],[Ln,5,5*Nr],[Ln,15,15*Nr],[Ln,30,30*Nr],[s,1,vi],[s,5,5*vi],[s,15,15*vi],[s,30,30*vi],[r,1,Ur],[r,3,3*Ur],[r,6,6*Ur],[r,12,12*Ur],[i,1,Fr],[i,2,2*Fr],[n,1,Zm],[t,1,W1],[t,3,3*W1],[e,1,Ym]];function a(c,u,h){let f=u<c;f&&([c,u]=[u,c]);let d=h&&typeof h.range=="function"?h:l(c,u,h),p=d?d.range(c,+u+1):[];return f?p.reverse():p}function l(c,u,h){let f=Math.abs(u-c)/h,d=ea(([,,m])=>m).right(o,f);if(d===o.length)return e.every(Ul(c/Ym,u/Ym,h));if(d===0)return df.every(Math.max(Ul(c,u,h),1));let[p,y]=o[f/o[d-1][2]<o[d][2]/f?d-1:d];return p.every(y)}return[a,l]}var[X1,pf]=$1($n,_o,cr,ic,ho,uo),[q1,Y1]=$1(Wn,xo,lr,ar,fo,co);function rg(e){if(0<=e.y&&e.y<100){var t=new Date(-1,e.m,e.d,e.H,e.M,e.S,e.L);return t.setFullYear(e.y),t}return new Date(e.y,e.m,e.d,e.H,e.M,e.S,e.L)}function sg(e){if(0<=e.y&&e.y<100){var t=new Date(Date.UTC(-1,e.m,e.d,e.H,e.M,e.S,e.L));return t.setUTCFullYear(e.y),t}return new Date(Date.UTC(e.y,e.m,e.d,e.H,e.M,e.S,e.L))}function rc(e,t,n){return{y:e,m:t,d:n,H:0,M:0,S:0,L:0}}function cI(e){var t=e.dateTime,n=e.date,i=e.time,r=e.periods,s=e.days,o=e.shortDays,a=e.months,l=e.shortMonths,c=sc(r),u=oc(r),h=sc(s),f=oc(s),d=sc(o),p=oc(o),y=sc(a),m=oc(a),g=sc(l),_=oc(l),M={a:U,A:Z,b:F,B:V,c:null,d:tM,e:tM,f:LI,g:VI,G:WI,H:RI,I:PI,j:II,L:sM,m:DI,M:NI,p:q,q:st,Q:iM,s:rM,S:UI,u:FI,U:OI,V:BI,w:kI,W:zI,x:null,X:null,y:GI,Y:HI,Z:$I,"%":nM},v={a:lt,A:$,b:at,B:ft,c:null,d:eM,e:eM,f:ZI,g:sL,G:aL,H:XI,I:qI,j:YI,L:aM,m:JI,M:KI,p:ot,q:rt,Q:iM,s:rM,S:jI,u:QI,U:tL,V:eL,w:nL,W:iL,x:null,X:null,y:rL,Y:oL,Z:lL,"%":nM},S={a:C,A:R,b:D,B:k,c:P,d:j1,e:j1,f:TI,g:K1,G:J1,H:Q1,I:Q1,j:bI,L:wI,m:vI,M:MI,p:A,q:_I,Q:AI,s:CI,S:SI,u:pI,U:mI,V:gI,w:dI,W:yI,x:L,X:z,y:K1,Y:J1,Z:xI,"%":EI};M.x=b(n,M),M.X=b(i,M),M.c=b(t,M),v.x=b(n,v),v.X=b(i,v),v.c=b(t,v);function b(J,gt){return function(ct){var K=[],It=-1,pt=0,Ot=J.length,Ht,le,oe;for(ct instanceof Date||(ct=new Date(+ct));++It<Ot;)J.charCodeAt(It)===37&&(K.push(J.slice(pt,It)),(le=Z1[Ht=J.charAt(++It)])!=null?Ht=J.charAt(++It):le=Ht==="e"?" ":"0",(oe=gt[Ht])&&(Ht=oe(ct,le)),K.push(Ht),pt=It+1);return K.push(J.slice(pt,It)),K.join("")}}function x(J,gt){return function(ct){var K=rc(1900,void 0,1),It=w(K,J,ct+="",0),pt,Ot;if(It!=ct.length)return null;if("Q"in K)return new Date(K.Q);if("s"in K)return new Date(K.s*1e3+("L"in K?K.L:0));if(gt&&!("Z"in K)&&(K.Z=0),"p"in K&&(K.H=K.H%12+K.p*12),K.m===void 0&&(K.m="q"in K?K.q:0),"V"in K){if(K.V<1||K.V>53)return null;"w"in K||(K.w=1),"Z"in K?(pt=sg(rc(K.y,0,1)),Ot=pt.getUTCDay(),pt=Ot>4||Ot===0?yo.ceil(pt):yo(pt),pt=xa.offset(pt,(K.V-1)*7),K.y=pt.getUTCFullYear(),K.m=pt.getUTCMonth(),K.d=pt.getUTCDate()+(K.w+6)%7):(pt=rg(rc(K.y,0,1)),Ot=pt.getDay(),pt=Ot>4||Ot===0?mo.ceil(pt):mo(pt),pt=ar.offset(pt,(K.V-1)*7),K.y=pt.getFullYear(),K.m=pt.getMonth(),K.d=pt.getDate()+(K.w+6)%7)}else("W"in K||"U"in K)&&("w"in K||(K.w="u"in K?K.u%7:"W"in K?1:0),Ot="Z"in K?sg(rc(K.y,0,1)).getUTCDay():rg(rc(K.y,0,1)).getDay(),K.m=0,K.d="W"in K?(K.w+6)%7+K.W*7-(Ot+5)%7:K.w+K.U*7-(Ot+6)%7);return"Z"in K?(K.H+=K.Z/100|0,K.M+=K.Z%100,sg(K)):rg(K)}}function w(J,gt,ct,K){for(var It=0,pt=gt.length,Ot=ct.length,Ht,le;It<pt;){if(K>=Ot)return-1;if(Ht=gt.charCodeAt(It++),Ht===37){if(Ht=gt.charAt(It++),le=S[Ht in Z1?gt.charAt(It++):Ht],!le||(K=le(J,ct,K))<0)return-1}else if(Ht!=ct.charCodeAt(K++))return-1}return K}function A(J,gt,ct){var K=c.exec(gt.slice(ct));return K?(J.p=u.get(K[0].toLowerCase()),ct+K[0].length):-1}function C(J,gt,ct){var K=d.exec(gt.slice(ct));return K?(J.w=p.get(K[0].toLowerCase()),ct+K[0].length):-1}function R(J,gt,ct){var K=h.exec(gt.slice(ct));return K?(J.w=f.get(K[0].toLowerCase()),ct+K[0].length):-1}function D(J,gt,ct){var K=g.exec(gt.slice(ct));return K?(J.m=_.get(K[0].toLowerCase()),ct+K[0].length):-1}function k(J,gt,ct){var K=y.exec(gt.slice(ct));return K?(J.m=m.get(K[0].toLowerCase()),ct+K[0].length):-1}function P(J,gt,ct){return w(J,t,gt,ct)}function L(J,gt,ct){return w(J,n,gt,ct)}function z(J,gt,ct){return w(J,i,gt,ct)}function U(J){return o[J.getDay()]}function Z(J){return s[J.getDay()]}function F(J){return l[J.getMonth()]}function V(J){return a[J.getMonth()]}function q(J){return r[+(J.getHours()>=12)]}function st(J){return 1+~~(J.getMonth()/3)}function lt(J){return o[J.getUTCDay()]}function $(J){return s[J.getUTCDay()]}function at(J){return l[J.getUTCMonth()]}function ft(J){return a[J.getUTCMonth()]}function ot(J){return r[+(J.getUTCHours()>=12)]}function rt(J){return 1+~~(J.getUTCMonth()/3)}return{format:function(J){var gt=b(J+="",M);return gt.toString=function(){return J},gt},parse:function(J){var gt=x(J+="",!1);return gt.toString=function(){return J},gt},utcFormat:function(J){var gt=b(J+="",v);return gt.toString=function(){return J},gt},utcParse:function(J){var gt=x(J+="",!0);return gt.toString=function(){return J},gt}}}var Z1={"-":"",_:" ",0:"0"},nn=/^\s*\d+/,uI=/^%/,fI=/[\\^$*+?|[\]().{}]/g;function ae(e,t,n){var i=e<0?"-":"",r=(i?-e:e)+"",s=r.length;return i+(s<n?new Array(n-s+1).join(t)+r:r)}function hI(e){return e.replace(fI,"\\$&")}function sc(e){return new RegExp("^(?:"+e.map(hI).join("|")+")","i")}function oc(e){return new Map(e.map((t,n)=>[t.toLowerCase(),n]))}function dI(e,t,n){var i=nn.exec(t.slice(n,n+1));return i?(e.w=+i[0],n+i[0].length):-1}function pI(e,t,n){var i=nn.exec(t.slice(n,n+1));return i?(e.u=+i[0],n+i[0].length):-1}function mI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.U=+i[0],n+i[0].length):-1}function gI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.V=+i[0],n+i[0].length):-1}function yI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.W=+i[0],n+i[0].length):-1}function J1(e,t,n){var i=nn.exec(t.slice(n,n+4));return i?(e.y=+i[0],n+i[0].length):-1}function K1(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.y=+i[0]+(+i[0]>68?1900:2e3),n+i[0].length):-1}function xI(e,t,n){var i=/^(Z)|([+-]\d\d)(?::?(\d\d))?/.exec(t.slice(n,n+6));return i?(e.Z=i[1]?0:-(i[2]+(i[3]||"00")),n+i[0].length):-1}function _I(e,t,n){var i=nn.exec(t.slice(n,n+1));return i?(e.q=i[0]*3-3,n+i[0].length):-1}function vI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.m=i[0]-1,n+i[0].length):-1}function j1(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.d=+i[0],n+i[0].length):-1}function bI(e,t,n){var i=nn.exec(t.slice(n,n+3));return i?(e.m=0,e.d=+i[0],n+i[0].length):-1}function Q1(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.H=+i[0],n+i[0].length):-1}function MI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.M=+i[0],n+i[0].length):-1}function SI(e,t,n){var i=nn.exec(t.slice(n,n+2));return i?(e.S=+i[0],n+i[0].length):-1}function wI(e,t,n){var i=nn.exec(t.slice(n,n+3));return i?(e.L=+i[0],n+i[0].length):-1}function TI(e,t,n){var i=nn.exec(t.slice(n,n+6));return i?(e.L=Math.floor(i[0]/1e3),n+i[0].length):-1}function EI(e,t,n){var i=uI.exec(t.slice(n,n+1));return i?n+i[0].length:-1}function AI(e,t,n){var i=nn.exec(t.slice(n));return i?(e.Q=+i[0],n+i[0].length):-1}function CI(e,t,n){var i=nn.exec(t.slice(n));return i?(e.s=+i[0],n+i[0].length):-1}function tM(e,t){return ae(e.getDate(),t,2)}function RI(e,t){return ae(e.getHours(),t,2)}function PI(e,t){return ae(e.getHours()%12||12,t,2)}function II(e,t){return ae(1+ar.count(Wn(e),e),t,3)}function sM(e,t){return ae(e.getMilliseconds(),t,3)}function LI(e,t){return sM(e,t)+"000"}function DI(e,t){return ae(e.getMonth()+1,t,2)}function NI(e,t){return ae(e.getMinutes(),t,2)}function UI(e,t){return ae(e.getSeconds(),t,2)}function FI(e){var t=e.getDay();return t===0?7:t}function OI(e,t){return ae(lr.count(Wn(e)-1,e),t,2)}function oM(e){var t=e.getDay();return t>=4||t===0?Or(e):Or.ceil(e)}function BI(e,t){return e=oM(e),ae(Or.count(Wn(e),e)+(Wn(e).getDay()===4),t,2)}function kI(e){return e.getDay()}function zI(e,t){return ae(mo.count(Wn(e)-1,e),t,2)}function GI(e,t){return ae(e.getFullYear()%100,t,2)}function VI(e,t){return e=oM(e),ae(e.getFullYear()%100,t,2)}function HI(e,t){return ae(e.getFullYear()%1e4,t,4)}function WI(e,t){var n=e.getDay();return e=n>=4||n===0?Or(e):Or.ceil(e),ae(e.getFullYear()%1e4,t,4)}function $I(e){var t=e.getTimezoneOffset();return(t>0?"-":(t*=-1,"+"))+ae(t/60|0,"0",2)+ae(t%60,"0",2)}function eM(e,t){return ae(e.getUTCDate(),t,2)}function XI(e,t){return ae(e.getUTCHours(),t,2)}function qI(e,t){return ae(e.getUTCHours()%12||12,t,2)}function YI(e,t){return ae(1+xa.count($n(e),e),t,3)}function aM(e,t){return ae(e.getUTCMilliseconds(),t,3)}function ZI(e,t){return aM(e,t)+"000"}function JI(e,t){return ae(e.getUTCMonth()+1,t,2)}function KI(e,t){return ae(e.getUTCMinutes(),t,2)}function jI(e,t){return ae(e.getUTCSeconds(),t,2)}function QI(e){var t=e.getUTCDay();return t===0?7:t}function tL(e,t){return ae(cr.count($n(e)-1,e),t,2)}function lM(e){var t=e.getUTCDay();return t>=4||t===0?Br(e):Br.ceil(e)}function eL(e,t){return e=lM(e),ae(Br.count($n(e),e)+($n(e).getUTCDay()===4),t,2)}function nL(e){return e.getUTCDay()}function iL(e,t){return ae(yo.count($n(e)-1,e),t,2)}function rL(e,t){return ae(e.getUTCFullYear()%100,t,2)}function sL(e,t){return e=lM(e),ae(e.getUTCFullYear()%100,t,2)}function oL(e,t){return ae(e.getUTCFullYear()%1e4,t,4)}function aL(e,t){var n=e.getUTCDay();return e=n>=4||n===0?Br(e):Br.ceil(e),ae(e.getUTCFullYear()%1e4,t,4)}function lL(){return"+0000"}function nM(){return"%"}function iM(e){return+e}function rM(e){return Math.floor(+e/1e3)}var _a,ac,cL,ur,cM;uL({dateTime:"%x, %X",date:"%-m/%-d/%Y",time:"%-I:%M:%S %p",periods:["AM","PM"],days:["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"],shortDays:["Sun","Mon","Tue","Wed","Thu","Fri","Sat"],months:["January","February","March","April","May","June","July","August","September","October","November","December"],shortMonths:["Jan","Feb","Mar","Apr","May","Jun","Jul","Aug","Sep","Oct","Nov","Dec"]});function uL(e){return _a=cI(e),ac=_a.format,cL=_a.parse,ur=_a.utcFormat,cM=_a.utcParse,_a}var uM="%Y-%m-%dT%H:%M:%S.%LZ";function fL(e){return e.toISOString()}var x8=Date.prototype.toISOString?fL:ur(uM);function hL(e){var t=new Date(e);return isNaN(t)?null:t}var _8=+new Date("2000-01-01T00:00:00.000Z")?hL:cM(uM);function fr(e,t){switch(arguments.length){case 0:break;case 1:this.range(e);break;default:this.range(t).domain(e);break}return this}function gf(e,t){switch(arguments.length){case 0:break;case 1:{typeof e=="function"?this.interpolator(e):this.range(e);break}default:{this.domain(e),typeof t=="function"?this.interpolator(t):this.range(t);break}}return this}var mf=Symbol("implicit");function yf(){var e=new hi,t=[],n=[],i=mf;function r(s){let o=e.get(s);if(o===void 0){if(i!==mf)return i;e.set(s,o=t.push(s)-1)}return n[o%n.length]}return r.domain=function(s){if(!arguments.length)return t.slice();t=[],e=new hi;for(let o of s)e.has(o)||e.set(o,t.push(o)-1);return r},r.range=function(s){return arguments.length?(n=Array.from(s),r):n.slice()},r.unknown=function(s){return arguments.length?(i=s,r):i},r.copy=function(){return yf(t,n).unknown(i)},fr.apply(r,arguments),r}function va(){var e=yf().unknown(void 0),t=e.domain,n=e.range,i=0,r=1,s,o,a=!1,l=0,c=0,u=.5;delete e.unknown;function h(){var f=t().length,d=r<i,p=d?r:i,y=d?i:r;s=(y-p)/Math.max(1,f-l+c*2),a&&(s=Math.floor(s)),p+=(y-p-s*(f-l))*u,o=s*(1-l),a&&(p=Math.round(p),o=Math.round(o));var m=ia(f).map(function(g){return p+s*g});return n(d?m.reverse():m)}return e.domain=function(f){return arguments.length?(t(f),h()):t()},e.range=function(f){return arguments.length?([i,r]=f,i=+i,r=+r,h()):[i,r]},e.rangeRound=function(f){return[i,r]=f,i=+i,r=+r,a=!0,h()},e.bandwidth=function(){return o},e.step=function(){return s},e.round=function(f){return arguments.length?(a=!!f,h()):a},e.padding=function(f){return arguments.length?(l=Math.min(1,c=+f),h()):l},e.paddingInner=function(f){return arguments.length?(l=Math.min(1,f),h()):l},e.paddingOuter=function(f){return arguments.length?(c=+f,h()):c},e.align=function(f){return arguments.length?(u=Math.max(0,Math.min(1,f)),h()):u},e.copy=function(){return va(t(),[i,r]).round(a).paddingInner(l).paddingOuter(c).align(u)},fr.apply(h(),arguments)}function xM(e){var t=e.copy;return e.padding=e.paddingOuter,delete e.paddingInner,delete e.paddingOuter,e.copy=function(){return xM(t())},e}function _M(){return xM(va.apply(null,arguments).paddingInner(1))}function dL(e){return function(){return e}}function og(e){return+e}var fM=[0,1];function bi(e){return e}function ag(e,t){return(t-=e=+e)?function(n){return(n-e)/t}:dL(isNaN(t)?NaN:.5)}function pL(e,t){var n;return e>t&&(n=e,e=t,t=n),function(i){return Math.max(e,Math.min(t,i))}}function mL(e,t,n){var i=e[0],r=e[1],s=t[0],o=t[1];return r<i?(i=ag(r,i),s=n(o,s)):(i=ag(i,r),s=n(s,o)),function(a){return s(i(a))}}function gL(e,t,n){var i=Math.min(e.length,t.length)-1,r=new Array(i),s=new Array(i),o=-1;for(e[i]<e[0]&&(e=e.slice().reverse(),t=t.slice().reverse());++o<i;)r[o]=ag(e[o],e[o+1]),s[o]=n(t[o],t[o+1]);return function(a){var l=na(e,a,1,i)-1;return s[l](r[l](a))}}function lc(e,t){return t.domain(e.domain()).range(e.range()).interpolate(e.interpolate()).clamp(e.clamp()).unknown(e.unknown())}function xf(){var e=fM,t=fM,n=fa,i,r,s,o=bi,a,l,c;function u(){var f=Math.min(e.length,t.length);return o!==bi&&(o=pL(e[0],e[f-1])),a=f>2?gL:mL,l=c=null,h}function h(f){return f==null||isNaN(f=+f)?s:(l||(l=a(e.map(i),t,n)))(i(o(f)))}return h.invert=function(f){return o(r((c||(c=a(t,e.map(i),We)))(f)))},h.domain=function(f){return arguments.length?(e=Array.from(f,og),u()):e.slice()},h.range=function(f){return arguments.length?(t=Array.from(f),u()):t.slice()},h.rangeRound=function(f){return t=Array.from(f),n=zl,u()},h.clamp=function(f){return arguments.length?(o=f?!0:bi,u()):o!==bi},h.interpolate=function(f){return arguments.length?(n=f,u()):n},h.unknown=function(f){return arguments.length?(s=f,h):s},function(f,d){return i=f,r=d,u()}}function vM(){return xf()(bi,bi)}function yL(e,t,n,i){var r=Ul(e,t,n),s;switch(i=da(i??",f"),i.type){case"s":{var o=Math.max(Math.abs(e),Math.abs(t));return i.precision==null&&!isNaN(s=Ub(r,o))&&(i.precision=s),_m(i,o)}case"":case"e":case"g":case"p":case"r":{i.precision==null&&!isNaN(s=Fb(r,Math.max(Math.abs(e),Math.abs(t))))&&(i.precision=s-(i.type==="e"));break}case"f":case"%":{i.precision==null&&!isNaN(s=Nb(r))&&(i.precision=s-(i.type==="%")*2);break}}return rr(i)}function cc(e){var t=e.domain;return e.ticks=function(n){var i=t();return hs(i[0],i[i.length-1],n??10)},e.tickFormat=function(n,i){var r=t();return yL(r[0],r[r.length-1],n??10,i)},e.nice=function(n){n==null&&(n=10);var i=t(),r=0,s=i.length-1,o=i[r],a=i[s],l,c,u=10;for(a<o&&(c=o,o=a,a=c,c=r,r=s,s=c);u-- >0;){if(c=ta(o,a,n),c===l)return i[r]=o,i[s]=a,t(i);if(c>0)o=Math.floor(o/c)*c,a=Math.ceil(a/c)*c;else if(c<0)o=Math.ceil(o*c)/c,a=Math.floor(a*c)/c;else break;l=c}return e},e}function uc(){var e=vM();return e.copy=function(){return lc(e,uc())},fr.apply(e,arguments),cc(e)}function lg(e){var t;function n(i){return i==null||isNaN(i=+i)?t:i}return n.invert=n,n.domain=n.range=function(i){return arguments.length?(e=Array.from(i,og),n):e.slice()},n.unknown=function(i){return arguments.length?(t=i,n):t},n.copy=function(){return lg(e).unknown(t)},e=arguments.length?Array.from(e,og):[0,1],cc(n)}function bM(e,t){e=e.slice();var n=0,i=e.length-1,r=e[n],s=e[i],o;return s<r&&(o=n,n=i,i=o,o=r,r=s,s=o),e[n]=t.floor(r),e[i]=t.ceil(s),e}function hM(e){return Math.log(e)}function dM(e){return Math.exp(e)}function xL(e){return-Math.log(-e)}function _L(e){return-Math.exp(-e)}function vL(e){return isFinite(e)?+("1e"+e):e<0?0:e}function bL(e){return e===10?vL:e===Math.E?Math.exp:t=>Math.pow(e,t)}function ML(e){return e===Math.E?Math.log:e===10&&Math.log10||e===2&&Math.log2||(e=Math.log(e),t=>Math.log(t)/e)}function pM(e){return(t,n)=>-e(-t,n)}function MM(e){let t=e(hM,dM),n=t.domain,i=10,r,s;function o(){return r=ML(i),s=bL(i),n()[0]<0?(r=pM(r),s=pM(s),e(xL,_L)):e(hM,dM),t}return t.base=function(a){return arguments.length?(i=+a,o()):i},t.domain=function(a){return arguments.length?(n(a),o()):n()},t.ticks=a=>{let l=n(),c=l[0],u=l[l.length-1],h=u<c;h&&([c,u]=[u,c]);let f=r(c),d=r(u),p,y,m=a==null?10:+a,g=[];if(!(i%1)&&d-f<m){if(f=Math.floor(f),d=Math.ceil(d),c>0){for(;f<=d;++f)for(p=1;p<i;++p)if(y=f<0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;g.push(y)}}else for(;f<=d;++f)for(p=i-1;p>=1;--p)if(y=f>0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;g.push(y)}g.length*2<m&&(g=hs(c,u,m))}else g=hs(f,d,Math.min(d-f,m)).map(s);return h?g.reverse():g},t.tickFormat=(a,l)=>{if(a==null&&(a=10),l==null&&(l=i===10?"s":","),typeof l!="function"&&(!(i%1)&&(l=da(l)).precision==null&&(l.trim=!0),l=rr(l)),a===1/0)return l;let c=Math.max(1,i*a/t.ticks().length);return u=>{let h=u/s(Math.round(r(u)));return h*i<i-.5&&(h*=i),h<=c?l(u):""}},t.nice=()=>n(bM(n(),{floor:a=>s(Math.floor(r(a))),ceil:a=>s(Math.ceil(r(a)))})),t}function cg(){let e=MM(xf()).domain([1,10]);return e.copy=()=>lc(e,cg()).base(e.base()),fr.apply(e,arguments),e}function mM(e){return function(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))}}function gM(e){return function(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}function SM(e){var t=1,n=e(mM(t),gM(t));return n.constant=function(i){return arguments.length?e(mM(t=+i),gM(t)):t},cc(n)}function ug(){var e=SM(xf());return e.copy=function(){return lc(e,ug()).constant(e.constant())},fr.apply(e,arguments)}function yM(e){return function(t){return t<0?-Math.pow(-t,e):Math.pow(t,e)}}function SL(e){return e<0?-Math.sqrt(-e):Math.sqrt(e)}function wL(e){return e<0?-e*e:e*e}function wM(e){var t=e(bi,bi),n=1;function i(){return n===1?e(bi,bi):n===.5?e(SL,wL):e(yM(n),yM(1/n))}return t.exponent=function(r){return arguments.length?(n=+r,i()):n},cc(t)}function fg(){var e=wM(xf());return e.copy=function(){return lc(e,fg()).exponent(e.exponent())},fr.apply(e,arguments),e}function hg(){var e=[],t=[],n=[],i;function r(){var o=0,a=Math.max(1,t.length);for(n=new Array(a-1);++o<a;)n[o-1]=Ev(e,o/a);return s}function s(o){return o==null||isNaN(o=+o)?i:t[na(n,o)]}return s.invertExtent=function(o){var a=t.indexOf(o);return a<0?[NaN,NaN]:[a>0?n[a-1]:e[0],a<n.length?n[a]:e[e.length-1]]},s.domain=function(o){if(!arguments.length)return e.slice();e=[];for(let a of o)a!=null&&!isNaN(a=+a)&&e.push(a);return e.sort(_n),r()},s.range=function(o){return arguments.length?(t=Array.from(o),r()):t.slice()},s.unknown=function(o){return arguments.length?(i=o,s):i},s.quantiles=function(){return n.slice()},s.copy=function(){return hg().domain(e).range(t).unknown(i)},fr.apply(s,arguments)}function dg(){var e=[.5],t=[0,1],n,i=1;function r(s){return s!=null&&s<=s?t[na(e,s,0,i)]:n}return r.domain=function(s){return arguments.length?(e=Array.from(s),i=Math.min(e.length,t.length-1),r):e.slice()},r.range=function(s){return arguments.length?(t=Array.from(s),i=Math.min(e.length,t.length-1),r):t.slice()},r.invertExtent=function(s){var o=t.indexOf(s);return[e[o-1],e[o]]},r.unknown=function(s){return arguments.length?(n=s,r):n},r.copy=function(){return dg().domain(e).range(t).unknown(n)},fr.apply(r,arguments)}function TL(e){return new Date(e)}function EL(e){return e instanceof Date?+e:Math.round(e)}function pg(e,t,n,i,r,s,o,a,l,c){var u=vM(),h=u.invert,f=u.domain,d=c(".%L"),p=c(":%S"),y=c("%I:%M"),m=c("%I %p"),g=c("%a %d"),_=c("%b %d"),M=c("%B"),v=c("%Y");function S(b){return(l(b)<b?d:a(b)<b?p:o(b)<b?y:s(b)<b?m:i(b)<b?r(b)<b?g:_:n(b)<b?M:v)(b)}return u.invert=function(b){return new Date(Math.round(h(b)))},u.domain=function(b){return arguments.length?f(Array.from(b,EL)):f().map(TL)},u.ticks=function(b){var x=f();return e(x[0],x[x.length-1],b??10)},u.tickFormat=function(b,x){return x==null?S:c(x)},u.nice=function(b){var x=f();return(!b||typeof b.range!="function")&&(b=t(x[0],x[x.length-1],b??10)),b?f(bM(x,b)):u},u.copy=function(){return lc(u,pg(e,t,n,i,r,s,o,a,l,c))},u}function TM(){return fr.apply(pg(q1,Y1,Wn,xo,lr,ar,fo,co,Ln,ac).domain([new Date(2e3,0,1),new Date(2e3,0,2)]),arguments)}function EM(){return fr.apply(pg(X1,pf,$n,_o,cr,xa,ho,uo,Ln,ur).domain([Date.UTC(2e3,0,1),Date.UTC(2e3,0,2)]),arguments)}function _f(e,t){return t.domain(e.domain()).interpolator(e.interpolator()).clamp(e.clamp()).unknown(e.unknown())}function vf(){var e=0,t=.5,n=1,i=1,r,s,o,a,l,c=bi,u,h=!1,f;function d(y){return y==null||isNaN(y=+y)?f:(y=.5+((y=+u(y))-s)*(i*y<i*s?a:l),c(h?Math.max(0,Math.min(1,y)):y))}d.domain=function(y){return arguments.length?([e,t,n]=y,r=u(e=+e),s=u(t=+t),o=u(n=+n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d):[e,t,n]},d.clamp=function(y){return arguments.length?(h=!!y,d):h},d.interpolator=function(y){return arguments.length?(c=y,d):c};function p(y){return function(m){var g,_,M;return arguments.length?([g,_,M]=m,c=ms(y,[g,_,M]),d):[c(0),c(.5),c(1)]}}return d.range=p(fa),d.rangeRound=p(zl),d.unknown=function(y){return arguments.length?(f=y,d):f},function(y){return u=y,r=y(e),s=y(t),o=y(n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d}}function mg(){var e=cc(vf()(bi));return e.copy=function(){return _f(e,mg())},gf.apply(e,arguments)}function gg(){var e=MM(vf()).domain([.1,1,10]);return e.copy=function(){return _f(e,gg()).base(e.base())},gf.apply(e,arguments)}function yg(){var e=SM(vf());return e.copy=function(){return _f(e,yg()).constant(e.constant())},gf.apply(e,arguments)}function xg(){var e=wM(vf());return e.copy=function(){return _f(e,xg()).exponent(e.exponent())},gf.apply(e,arguments)}function Zt(e){for(var t=e.length/6|0,n=new Array(t),i=0;i<t;)n[i]="#"+e.slice(i*6,++i*6);return n}var AM=Zt("1f77b4ff7f0e2ca02cd627289467bd8c564be377c27f7f7fbcbd2217becf"),CM=Zt("7fc97fbeaed4fdc086ffff99386cb0f0027fbf5b17666666"),RM=Zt("1b9e77d95f027570b3e7298a66a61ee6ab02a6761d666666"),PM=Zt("4269d0efb118ff725c6cc5b03ca951ff8ab7a463f297bbf59c6b4e9498a0"),IM=Zt("a6cee31f78b4b2df8a33a02cfb9a99e31a1cfdbf6fff7f00cab2d66a3d9affff99b15928"),LM=Zt("fbb4aeb3cde3ccebc5decbe4fed9a6ffffcce5d8bdfddaecf2f2f2"),DM=Zt("b3e2cdfdcdaccbd5e8f4cae4e6f5c9fff2aef1e2cccccccc"),NM=Zt("e41a1c377eb84daf4a984ea3ff7f00ffff33a65628f781bf999999"),UM=Zt("66c2a5fc8d628da0cbe78ac3a6d854ffd92fe5c494b3b3b3"),FM=Zt("8dd3c7ffffb3bebadafb807280b1d3fdb462b3de69fccde5d9d9d9bc80bdccebc5ffed6f"),OM=Zt("4e79a7f28e2ce1575976b7b259a14fedc949af7aa1ff9da79c755fbab0ab"),_e=e=>xb(e[e.length-1]),_g=new Array(3).concat("d8b365f5f5f55ab4ac","a6611adfc27d80cdc1018571","a6611adfc27df5f5f580cdc1018571","8c510ad8b365f6e8c3c7eae55ab4ac01665e","8c510ad8b365f6e8c3f5f5f5c7eae55ab4ac01665e","8c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e","8c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e","5430058c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e003c30","5430058c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e003c30").map(Zt),vg=_e(_g),bg=new Array(3).concat("af8dc3f7f7f77fbf7b","7b3294c2a5cfa6dba0008837","7b3294c2a5cff7f7f7a6dba0008837","762a83af8dc3e7d4e8d9f0d37fbf7b1b7837","762a83af8dc3e7d4e8f7f7f7d9f0d37fbf7b1b7837","762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b7837","762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b7837","40004b762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b783700441b","40004b762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b783700441b").map(Zt),Mg=_e(bg),Sg=new Array(3).concat("e9a3c9f7f7f7a1d76a","d01c8bf1b6dab8e1864dac26","d01c8bf1b6daf7f7f7b8e1864dac26","c51b7de9a3c9fde0efe6f5d0a1d76a4d9221","c51b7de9a3c9fde0eff7f7f7e6f5d0a1d76a4d9221","c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221","c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221","8e0152c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221276419","8e0152c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221276419").map(Zt),wg=_e(Sg),Tg=new Array(3).concat("998ec3f7f7f7f1a340","5e3c99b2abd2fdb863e66101","5e3c99b2abd2f7f7f7fdb863e66101","542788998ec3d8daebfee0b6f1a340b35806","542788998ec3d8daebf7f7f7fee0b6f1a340b35806","5427888073acb2abd2d8daebfee0b6fdb863e08214b35806","5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b35806","2d004b5427888073acb2abd2d8daebfee0b6fdb863e08214b358067f3b08","2d004b5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b358067f3b08").map(Zt),Eg=_e(Tg),Sf=new Array(3).concat("ef8a62f7f7f767a9cf","ca0020f4a58292c5de0571b0","ca0020f4a582f7f7f792c5de0571b0","b2182bef8a62fddbc7d1e5f067a9cf2166ac","b2182bef8a62fddbc7f7f7f7d1e5f067a9cf2166ac","b2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac","b2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac","67001fb2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac053061","67001fb2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac053061").map(Zt),fc=_e(Sf),Ag=new Array(3).concat("ef8a62ffffff999999","ca0020f4a582bababa404040","ca0020f4a582ffffffbababa404040","b2182bef8a62fddbc7e0e0e09999994d4d4d","b2182bef8a62fddbc7ffffffe0e0e09999994d4d4d","b2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d","b2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d","67001fb2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d1a1a1a","67001fb2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d1a1a1a").map(Zt),Cg=_e(Ag),wf=new Array(3).concat("fc8d59ffffbf91bfdb","d7191cfdae61abd9e92c7bb6","d7191cfdae61ffffbfabd9e92c7bb6","d73027fc8d59fee090e0f3f891bfdb4575b4","d73027fc8d59fee090ffffbfe0f3f891bfdb4575b4","d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4","d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4","a50026d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4313695","a50026d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4313695").map(Zt),hc=_e(wf),Rg=new Array(3).concat("fc8d59ffffbf91cf60","d7191cfdae61a6d96a1a9641","d7191cfdae61ffffbfa6d96a1a9641","d73027fc8d59fee08bd9ef8b91cf601a9850","d73027fc8d59fee08bffffbfd9ef8b91cf601a9850","d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850","d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850","a50026d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850006837","a50026d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850006837").map(Zt),Pg=_e(Rg),Ig=new Array(3).concat("fc8d59ffffbf99d594","d7191cfdae61abdda42b83ba","d7191cfdae61ffffbfabdda42b83ba","d53e4ffc8d59fee08be6f59899d5943288bd","d53e4ffc8d59fee08bffffbfe6f59899d5943288bd","d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd","d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd","9e0142d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd5e4fa2","9e0142d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd5e4fa2").map(Zt),Lg=_e(Ig),Dg=new Array(3).concat("e5f5f999d8c92ca25f","edf8fbb2e2e266c2a4238b45","edf8fbb2e2e266c2a42ca25f006d2c","edf8fbccece699d8c966c2a42ca25f006d2c","edf8fbccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45006d2c00441b").map(Zt),Ng=_e(Dg),Ug=new Array(3).concat("e0ecf49ebcda8856a7","edf8fbb3cde38c96c688419d","edf8fbb3cde38c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d810f7c4d004b").map(Zt),Fg=_e(Ug),Og=new Array(3).concat("e0f3dba8ddb543a2ca","f0f9e8bae4bc7bccc42b8cbe","f0f9e8bae4bc7bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe0868ac084081").map(Zt),Bg=_e(Og),kg=new Array(3).concat("fee8c8fdbb84e34a33","fef0d9fdcc8afc8d59d7301f","fef0d9fdcc8afc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301fb300007f0000").map(Zt),zg=_e(kg),Gg=new Array(3).concat("ece2f0a6bddb1c9099","f6eff7bdc9e167a9cf02818a","f6eff7bdc9e167a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016c59014636").map(Zt),Vg=_e(Gg),Hg=new Array(3).concat("ece7f2a6bddb2b8cbe","f1eef6bdc9e174a9cf0570b0","f1eef6bdc9e174a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0045a8d023858").map(Zt),Wg=_e(Hg),$g=new Array(3).concat("e7e1efc994c7dd1c77","f1eef6d7b5d8df65b0ce1256","f1eef6d7b5d8df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125698004367001f").map(Zt),Xg=_e($g),qg=new Array(3).concat("fde0ddfa9fb5c51b8a","feebe2fbb4b9f768a1ae017e","feebe2fbb4b9f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a017749006a").map(Zt),Yg=_e(qg),Zg=new Array(3).concat("edf8b17fcdbb2c7fb8","ffffcca1dab441b6c4225ea8","ffffcca1dab441b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea8253494081d58").map(Zt),Jg=_e(Zg),Kg=new Array(3).concat("f7fcb9addd8e31a354","ffffccc2e69978c679238443","ffffccc2e69978c67931a354006837","ffffccd9f0a3addd8e78c67931a354006837","ffffccd9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443006837004529").map(Zt),jg=_e(Kg),Qg=new Array(3).concat("fff7bcfec44fd95f0e","ffffd4fed98efe9929cc4c02","ffffd4fed98efe9929d95f0e993404","ffffd4fee391fec44ffe9929d95f0e993404","ffffd4fee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c02993404662506").map(Zt),t0=_e(Qg),e0=new Array(3).concat("ffeda0feb24cf03b20","ffffb2fecc5cfd8d3ce31a1c","ffffb2fecc5cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cbd0026800026").map(Zt),n0=_e(e0),i0=new Array(3).concat("deebf79ecae13182bd","eff3ffbdd7e76baed62171b5","eff3ffbdd7e76baed63182bd08519c","eff3ffc6dbef9ecae16baed63182bd08519c","eff3ffc6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b508519c08306b").map(Zt),r0=_e(i0),s0=new Array(3).concat("e5f5e0a1d99b31a354","edf8e9bae4b374c476238b45","edf8e9bae4b374c47631a354006d2c","edf8e9c7e9c0a1d99b74c47631a354006d2c","edf8e9c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45006d2c00441b").map(Zt),o0=_e(s0),a0=new Array(3).concat("f0f0f0bdbdbd636363","f7f7f7cccccc969696525252","f7f7f7cccccc969696636363252525","f7f7f7d9d9d9bdbdbd969696636363252525","f7f7f7d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525000000").map(Zt),l0=_e(a0),c0=new Array(3).concat("efedf5bcbddc756bb1","f2f0f7cbc9e29e9ac86a51a3","f2f0f7cbc9e29e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a354278f3f007d").map(Zt),u0=_e(c0),f0=new Array(3).concat("fee0d2fc9272de2d26","fee5d9fcae91fb6a4acb181d","fee5d9fcae91fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181da50f1567000d").map(Zt),h0=_e(f0),d0=new Array(3).concat("fee6cefdae6be6550d","feeddefdbe85fd8d3cd94701","feeddefdbe85fd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d94801a636037f2704").map(Zt),p0=_e(d0);function m0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(-4.54-e*(35.34-e*(2381.73-e*(6402.7-e*(7024.72-e*2710.57)))))))+", "+Math.max(0,Math.min(255,Math.round(32.49+e*(170.73+e*(52.82-e*(131.46-e*(176.58-e*67.37)))))))+", "+Math.max(0,Math.min(255,Math.round(81.24+e*(442.36-e*(2482.43-e*(6167.24-e*(6614.94-e*2475.67)))))))+")"}var g0=Vu(pi(300,.5,0),pi(-240,.5,1)),y0=Vu(pi(-100,.75,.35),pi(80,1.5,.8)),x0=Vu(pi(260,.75,.35),pi(80,1.5,.8)),bf=pi();function _0(e){(e<0||e>1)&&(e-=Math.floor(e));var t=Math.abs(e-.5);return bf.h=360*e-100,bf.s=1.5-1.5*t,bf.l=.8-.9*t,bf+""}var Mf=Fi(),AL=Math.PI/3,CL=Math.PI*2/3;function v0(e){var t;return e=(.5-e)*Math.PI,Mf.r=255*(t=Math.sin(e))*t,Mf.g=255*(t=Math.sin(e+AL))*t,Mf.b=255*(t=Math.sin(e+CL))*t,Mf+""}function b0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(34.61+e*(1172.33-e*(10793.56-e*(33300.12-e*(38394.49-e*14825.05)))))))+", "+Math.max(0,Math.min(255,Math.round(23.31+e*(557.33+e*(1225.33-e*(3574.96-e*(1073.77+e*707.56)))))))+", "+Math.max(0,Math.min(255,Math.round(27.2+e*(3211.1-e*(15327.97-e*(27814-e*(22569.18-e*6838.66)))))))+")"}function Tf(e){var t=e.length;return function(n){return e[Math.max(0,Math.min(t-1,Math.floor(n*t)))]}}var dc=Tf(Zt("44015444025645045745055946075a46085c460a5d460b5e470d60470e6147106347116447136548146748166848176948186a481a6c481b6d481c6e481d6f481f70482071482173482374482475482576482677482878482979472a7a472c7a472d7b472e7c472f7d46307e46327e46337f463480453581453781453882443983443a83443b84433d84433e85423f854240864241864142874144874045884046883f47883f48893e49893e4a893e4c8a3d4d8a3d4e8a3c4f8a3c508b3b518b3b528b3a538b3a548c39558c39568c38588c38598c375a8c375b8d365c8d365d8d355e8d355f8d34608d34618d33628d33638d32648e32658e31668e31678e31688e30698e306a8e2f6b8e2f6c8e2e6d8e2e6e8e2e6f8e2d708e2d718e2c718e2c728e2c738e2b748e2b758e2a768e2a778e2a788e29798e297a8e297b8e287c8e287d8e277e8e277f8e27808e26818e26828e26828e25838e25848e25858e24868e24878e23888e23898e238a8d228b8d228c8d228d8d218e8d218f8d21908d21918c20928c20928c20938c1f948c1f958b1f968b1f978b1f988b1f998a1f9a8a1e9b8a1e9c891e9d891f9e891f9f881fa0881fa1881fa1871fa28720a38620a48621a58521a68522a78522a88423a98324aa8325ab8225ac8226ad8127ad8128ae8029af7f2ab07f2cb17e2db27d2eb37c2fb47c31b57b32b67a34b67935b77937b87838b9773aba763bbb753dbc743fbc7340bd7242be7144bf7046c06f48c16e4ac16d4cc26c4ec36b50c46a52c56954c56856c66758c7655ac8645cc8635ec96260ca6063cb5f65cb5e67cc5c69cd5b6ccd5a6ece5870cf5773d05675d05477d1537ad1517cd2507fd34e81d34d84d44b86d54989d5488bd6468ed64590d74393d74195d84098d83e9bd93c9dd93ba0da39a2da37a5db36a8db34aadc32addc30b0dd2fb2dd2db5de2bb8de29bade28bddf26c0df25c2df23c5e021c8e020cae11fcde11dd0e11cd2e21bd5e21ad8e219dae319dde318dfe318e2e418e5e419e7e419eae51aece51befe51cf1e51df4e61ef6e620f8e621fbe723fde725")),M0=Tf(Zt("00000401000501010601010802010902020b02020d03030f03031204041405041606051806051a07061c08071e0907200a08220b09240c09260d0a290e0b2b100b2d110c2f120d31130d34140e36150e38160f3b180f3d19103f1a10421c10441d11471e114920114b21114e22115024125325125527125829115a2a115c2c115f2d11612f116331116533106734106936106b38106c390f6e3b0f703d0f713f0f72400f74420f75440f764510774710784910784a10794c117a4e117b4f127b51127c52137c54137d56147d57157e59157e5a167e5c167f5d177f5f187f601880621980641a80651a80671b80681c816a1c816b1d816d1d816e1e81701f81721f817320817521817621817822817922827b23827c23827e24828025828125818326818426818627818827818928818b29818c29818e2a81902a81912b81932b80942c80962c80982d80992d809b2e7f9c2e7f9e2f7fa02f7fa1307ea3307ea5317ea6317da8327daa337dab337cad347cae347bb0357bb2357bb3367ab5367ab73779b83779ba3878bc3978bd3977bf3a77c03a76c23b75c43c75c53c74c73d73c83e73ca3e72cc3f71cd4071cf4070d0416fd2426fd3436ed5446dd6456cd8456cd9466bdb476adc4869de4968df4a68e04c67e24d66e34e65e44f64e55064e75263e85362e95462ea5661eb5760ec5860ed5a5fee5b5eef5d5ef05f5ef1605df2625df2645cf3655cf4675cf4695cf56b5cf66c5cf66e5cf7705cf7725cf8745cf8765cf9785df9795df97b5dfa7d5efa7f5efa815ffb835ffb8560fb8761fc8961fc8a62fc8c63fc8e64fc9065fd9266fd9467fd9668fd9869fd9a6afd9b6bfe9d6cfe9f6dfea16efea36ffea571fea772fea973feaa74feac76feae77feb078feb27afeb47bfeb67cfeb77efeb97ffebb81febd82febf84fec185fec287fec488fec68afec88cfeca8dfecc8ffecd90fecf92fed194fed395fed597fed799fed89afdda9cfddc9efddea0fde0a1fde2a3fde3a5fde5a7fde7a9fde9aafdebacfcecaefceeb0fcf0b2fcf2b4fcf4b6fcf6b8fcf7b9fcf9bbfcfbbdfcfdbf")),S0=Tf(Zt("00000401000501010601010802010a02020c02020e03021004031204031405041706041907051b08051d09061f0a07220b07240c08260d08290e092b10092d110a30120a32140b34150b37160b39180c3c190c3e1b0c411c0c431e0c451f0c48210c4a230c4c240c4f260c51280b53290b552b0b572d0b592f0a5b310a5c320a5e340a5f3609613809623909633b09643d09653e0966400a67420a68440a68450a69470b6a490b6a4a0c6b4c0c6b4d0d6c4f0d6c510e6c520e6d540f6d550f6d57106e59106e5a116e5c126e5d126e5f136e61136e62146e64156e65156e67166e69166e6a176e6c186e6d186e6f196e71196e721a6e741a6e751b6e771c6d781c6d7a1d6d7c1d6d7d1e6d7f1e6c801f6c82206c84206b85216b87216b88226a8a226a8c23698d23698f24699025689225689326679526679727669827669a28659b29649d29649f2a63a02a63a22b62a32c61a52c60a62d60a82e5fa92e5eab2f5ead305dae305cb0315bb1325ab3325ab43359b63458b73557b93556ba3655bc3754bd3853bf3952c03a51c13a50c33b4fc43c4ec63d4dc73e4cc83f4bca404acb4149cc4248ce4347cf4446d04545d24644d34743d44842d54a41d74b3fd84c3ed94d3dda4e3cdb503bdd513ade5238df5337e05536e15635e25734e35933e45a31e55c30e65d2fe75e2ee8602de9612bea632aeb6429eb6628ec6726ed6925ee6a24ef6c23ef6e21f06f20f1711ff1731df2741cf3761bf37819f47918f57b17f57d15f67e14f68013f78212f78410f8850ff8870ef8890cf98b0bf98c0af98e09fa9008fa9207fa9407fb9606fb9706fb9906fb9b06fb9d07fc9f07fca108fca309fca50afca60cfca80dfcaa0ffcac11fcae12fcb014fcb216fcb418fbb61afbb81dfbba1ffbbc21fbbe23fac026fac228fac42afac62df9c72ff9c932f9cb35f8cd37f8cf3af7d13df7d340f6d543f6d746f5d949f5db4cf4dd4ff4df53f4e156f3e35af3e55df2e661f2e865f2ea69f1ec6df1ed71f1ef75f1f179f2f27df2f482f3f586f3f68af4f88ef5f992f6fa96f8fb9af9fc9dfafda1fcffa4")),w0=Tf(Zt("0d088710078813078916078a19068c1b068d1d068e20068f2206902406912605912805922a05932c05942e05952f059631059733059735049837049938049a3a049a3c049b3e049c3f049c41049d43039e44039e46039f48039f4903a04b03a14c02a14e02a25002a25102a35302a35502a45601a45801a45901a55b01a55c01a65e01a66001a66100a76300a76400a76600a76700a86900a86a00a86c00a86e00a86f00a87100a87201a87401a87501a87701a87801a87a02a87b02a87d03a87e03a88004a88104a78305a78405a78606a68707a68808a68a09a58b0aa58d0ba58e0ca48f0da4910ea3920fa39410a29511a19613a19814a099159f9a169f9c179e9d189d9e199da01a9ca11b9ba21d9aa31e9aa51f99a62098a72197a82296aa2395ab2494ac2694ad2793ae2892b02991b12a90b22b8fb32c8eb42e8db52f8cb6308bb7318ab83289ba3388bb3488bc3587bd3786be3885bf3984c03a83c13b82c23c81c33d80c43e7fc5407ec6417dc7427cc8437bc9447aca457acb4679cc4778cc4977cd4a76ce4b75cf4c74d04d73d14e72d24f71d35171d45270d5536fd5546ed6556dd7566cd8576bd9586ada5a6ada5b69db5c68dc5d67dd5e66de5f65de6164df6263e06363e16462e26561e26660e3685fe4695ee56a5de56b5de66c5ce76e5be76f5ae87059e97158e97257ea7457eb7556eb7655ec7754ed7953ed7a52ee7b51ef7c51ef7e50f07f4ff0804ef1814df1834cf2844bf3854bf3874af48849f48948f58b47f58c46f68d45f68f44f79044f79143f79342f89441f89540f9973ff9983ef99a3efa9b3dfa9c3cfa9e3bfb9f3afba139fba238fca338fca537fca636fca835fca934fdab33fdac33fdae32fdaf31fdb130fdb22ffdb42ffdb52efeb72dfeb82cfeba2cfebb2bfebd2afebe2afec029fdc229fdc328fdc527fdc627fdc827fdca26fdcb26fccd25fcce25fcd025fcd225fbd324fbd524fbd724fad824fada24f9dc24f9dd25f8df25f8e125f7e225f7e425f6e626f6e826f5e926f5eb27f4ed27f3ee27f3f027f2f227f1f426f1f525f0f724f0f921"));function rn(e){return function(){return e}}var HM=Math.cos;var C0=Math.min,Ef=Math.sin,Xe=Math.sqrt,BM=1e-12,pc=Math.PI,I8=pc/2,If=2*pc;function WM(e){let t=3;return e.digits=function(n){if(!arguments.length)return t;if(n==null)t=null;else{let i=Math.floor(n);if(!(i>=0))throw new RangeError(`invalid digits: ${n}`);t=i}return e},()=>new ao(t)}var L8=Array.prototype.slice;function $M(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function XM(e){this._context=e}XM.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:this._context.lineTo(e,t);break}}};function vo(e){return new XM(e)}function qM(e){return e[0]}function YM(e){return e[1]}function R0(e,t){var n=rn(!0),i=null,r=vo,s=null,o=WM(a);e=typeof e=="function"?e:e===void 0?qM:rn(e),t=typeof t=="function"?t:t===void 0?YM:rn(t);function a(l){var c,u=(l=$M(l)).length,h,f=!1,d;for(i==null&&(s=r(d=o())),c=0;c<=u;++c)!(c<u&&n(h=l[c],c,l))===f&&((f=!f)?s.lineStart():s.lineEnd()),f&&s.point(+e(h,c,l),+t(h,c,l));if(d)return s=null,d+""||null}return a.x=function(l){return arguments.length?(e=typeof l=="function"?l:rn(+l),a):e},a.y=function(l){return arguments.length?(t=typeof l=="function"?l:rn(+l),a):t},a.defined=function(l){return arguments.length?(n=typeof l=="function"?l:rn(!!l),a):n},a.curve=function(l){return arguments.length?(r=l,i!=null&&(s=r(i)),a):r},a.context=function(l){return arguments.length?(l==null?i=s=null:s=r(i=l),a):i},a}function ZM(e,t,n){var i=null,r=rn(!0),s=null,o=vo,a=null,l=WM(c);e=typeof e=="function"?e:e===void 0?qM:rn(+e),t=typeof t=="function"?t:rn(t===void 0?0:+t),n=typeof n=="function"?n:n===void 0?YM:rn(+n);function c(h){var f,d,p,y=(h=$M(h)).length,m,g=!1,_,M=new Array(y),v=new Array(y);for(s==null&&(a=o(_=l())),f=0;f<=y;++f){if(!(f<y&&r(m=h[f],f,h))===g)if(g=!g)d=f,a.areaStart(),a.lineStart();else{for(a.lineEnd(),a.lineStart(),p=f-1;p>=d;--p)a.point(M[p],v[p]);a.lineEnd(),a.areaEnd()}g&&(M[f]=+e(m,f,h),v[f]=+t(m,f,h),a.point(i?+i(m,f,h):M[f],n?+n(m,f,h):v[f]))}if(_)return a=null,_+""||null}function u(){return R0().defined(r).curve(o).context(s)}return c.x=function(h){return arguments.length?(e=typeof h=="function"?h:rn(+h),i=null,c):e},c.x0=function(h){return arguments.length?(e=typeof h=="function"?h:rn(+h),c):e},c.x1=function(h){return arguments.length?(i=h==null?null:typeof h=="function"?h:rn(+h),c):i},c.y=function(h){return arguments.length?(t=typeof h=="function"?h:rn(+h),n=null,c):t},c.y0=function(h){return arguments.length?(t=typeof h=="function"?h:rn(+h),c):t},c.y1=function(h){return arguments.length?(n=h==null?null:typeof h=="function"?h:rn(+h),c):n},c.lineX0=c.lineY0=function(){return u().x(e).y(t)},c.lineY1=function(){return u().x(e).y(n)},c.lineX1=function(){return u().x(i).y(t)},c.defined=function(h){return arguments.length?(r=typeof h=="function"?h:rn(!!h),c):r},c.curve=function(h){return arguments.length?(o=h,s!=null&&(a=o(s)),c):o},c.context=function(h){return arguments.length?(h==null?s=a=null:a=o(s=h),c):s},c}var D8=RL(vo);function JM(e){this._curve=e}JM.prototype={areaStart:function(){this._curve.areaStart()},areaEnd:function(){this._curve.areaEnd()},lineStart:function(){this._curve.lineStart()},lineEnd:function(){this._curve.lineEnd()},point:function(e,t){this._curve.point(t*Math.sin(e),t*-Math.cos(e))}};function RL(e){function t(n){return new JM(e(n))}return t._curve=e,t}var Af=class{constructor(t,n){this._context=t,this._x=n}areaStart(){this._line=0}areaEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line}point(t,n){switch(t=+t,n=+n,this._point){case 0:{this._point=1,this._line?this._context.lineTo(t,n):this._context.moveTo(t,n);break}case 1:this._point=2;default:{this._x?this._context.bezierCurveTo(this._x0=(this._x0+t)/2,this._y0,this._x0,n,t,n):this._context.bezierCurveTo(this._x0,this._y0=(this._y0+n)/2,t,this._y0,t,n);break}}this._x0=t,this._y0=n}};function KM(e){return new Af(e,!0)}function jM(e){return new Af(e,!1)}var PL=Xe(3),P0={draw(e,t){let n=Xe(t+C0(t/28,.75))*.59436,i=n/2,r=i*PL;e.moveTo(0,n),e.lineTo(0,-n),e.moveTo(-r,-i),e.lineTo(r,i),e.moveTo(-r,i),e.lineTo(r,-i)}},bo={draw(e,t){let n=Xe(t/pc);e.moveTo(n,0),e.arc(0,0,n,0,If)}},I0={draw(e,t){let n=Xe(t/5)/2;e.moveTo(-3*n,-n),e.lineTo(-n,-n),e.lineTo(-n,-3*n),e.lineTo(n,-3*n),e.lineTo(n,-n),e.lineTo(3*n,-n),e.lineTo(3*n,n),e.lineTo(n,n),e.lineTo(n,3*n),e.lineTo(-n,3*n),e.lineTo(-n,n),e.lineTo(-3*n,n),e.closePath()}},QM=Xe(1/3),IL=QM*2,L0={draw(e,t){let n=Xe(t/IL),i=n*QM;e.moveTo(0,-n),e.lineTo(i,0),e.lineTo(0,n),e.lineTo(-i,0),e.closePath()}},D0={draw(e,t){let n=Xe(t)*.62625;e.moveTo(0,-n),e.lineTo(n,0),e.lineTo(0,n),e.lineTo(-n,0),e.closePath()}},N0={draw(e,t){let n=Xe(t-C0(t/7,2))*.87559;e.moveTo(-n,0),e.lineTo(n,0),e.moveTo(0,n),e.lineTo(0,-n)}},U0={draw(e,t){let n=Xe(t),i=-n/2;e.rect(i,i,n,n)}},F0={draw(e,t){let n=Xe(t)*.4431;e.moveTo(n,n),e.lineTo(n,-n),e.lineTo(-n,-n),e.lineTo(-n,n),e.closePath()}},LL=.8908130915292852,tS=Ef(pc/10)/Ef(7*pc/10),DL=Ef(If/10)*tS,NL=-HM(If/10)*tS,O0={draw(e,t){let n=Xe(t*LL),i=DL*n,r=NL*n;e.moveTo(0,-n),e.lineTo(i,r);for(let s=1;s<5;++s){let o=If*s/5,a=HM(o),l=Ef(o);e.lineTo(l*n,-a*n),e.lineTo(a*i-l*r,l*i+a*r)}e.closePath()}},T0=Xe(3),B0={draw(e,t){let n=-Xe(t/(T0*3));e.moveTo(0,n*2),e.lineTo(-T0*n,-n),e.lineTo(T0*n,-n),e.closePath()}},UL=Xe(3),k0={draw(e,t){let n=Xe(t)*.6824,i=n/2,r=n*UL/2;e.moveTo(0,-n),e.lineTo(r,i),e.lineTo(-r,i),e.closePath()}},Mi=-.5,Si=Xe(3)/2,A0=1/Xe(12),FL=(A0/2+1)*3,z0={draw(e,t){let n=Xe(t/FL),i=n/2,r=n*A0,s=i,o=n*A0+n,a=-s,l=o;e.moveTo(i,r),e.lineTo(s,o),e.lineTo(a,l),e.lineTo(Mi*i-Si*r,Si*i+Mi*r),e.lineTo(Mi*s-Si*o,Si*s+Mi*o),e.lineTo(Mi*a-Si*l,Si*a+Mi*l),e.lineTo(Mi*i+Si*r,Mi*r-Si*i),e.lineTo(Mi*s+Si*o,Mi*o-Si*s),e.lineTo(Mi*a+Si*l,Mi*l-Si*a),e.closePath()}},G0={draw(e,t){let n=Xe(t-C0(t/6,1.7))*.6189;e.moveTo(-n,-n),e.lineTo(n,n),e.moveTo(-n,n),e.lineTo(n,-n)}},eS=[bo,I0,L0,U0,O0,B0,z0],nS=[bo,N0,G0,k0,P0,F0,D0];function xs(){}function Cf(e,t,n){e._context.bezierCurveTo((2*e._x0+e._x1)/3,(2*e._y0+e._y1)/3,(e._x0+2*e._x1)/3,(e._y0+2*e._y1)/3,(e._x0+4*e._x1+t)/6,(e._y0+4*e._y1+n)/6)}function Lf(e){this._context=e}Lf.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){switch(this._point){case 3:Cf(this,this._x1,this._y1);case 2:this._context.lineTo(this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,this._context.lineTo((5*this._x0+this._x1)/6,(5*this._y0+this._y1)/6);default:Cf(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function iS(e){return new Lf(e)}function rS(e){this._context=e}rS.prototype={areaStart:xs,areaEnd:xs,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._y0=this._y1=this._y2=this._y3=this._y4=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x2,this._y2),this._context.closePath();break}case 2:{this._context.moveTo((this._x2+2*this._x3)/3,(this._y2+2*this._y3)/3),this._context.lineTo((this._x3+2*this._x2)/3,(this._y3+2*this._y2)/3),this._context.closePath();break}case 3:{this.point(this._x2,this._y2),this.point(this._x3,this._y3),this.point(this._x4,this._y4);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x2=e,this._y2=t;break;case 1:this._point=2,this._x3=e,this._y3=t;break;case 2:this._point=3,this._x4=e,this._y4=t,this._context.moveTo((this._x0+4*this._x1+e)/6,(this._y0+4*this._y1+t)/6);break;default:Cf(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function sS(e){return new rS(e)}function oS(e){this._context=e}oS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3;var n=(this._x0+4*this._x1+e)/6,i=(this._y0+4*this._y1+t)/6;this._line?this._context.lineTo(n,i):this._context.moveTo(n,i);break;case 3:this._point=4;default:Cf(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function aS(e){return new oS(e)}function lS(e,t){this._basis=new Lf(e),this._beta=t}lS.prototype={lineStart:function(){this._x=[],this._y=[],this._basis.lineStart()},lineEnd:function(){var e=this._x,t=this._y,n=e.length-1;if(n>0)for(var i=e[0],r=t[0],s=e[n]-i,o=t[n]-r,a=-1,l;++a<=n;)l=a/n,this._basis.point(this._beta*e[a]+(1-this._beta)*(i+l*s),this._beta*t[a]+(1-this._beta)*(r+l*o));this._x=this._y=null,this._basis.lineEnd()},point:function(e,t){this._x.push(+e),this._y.push(+t)}};var cS=(function e(t){function n(i){return t===1?new Lf(i):new lS(i,t)}return n.beta=function(i){return e(+i)},n})(.85);function Rf(e,t,n){e._context.bezierCurveTo(e._x1+e._k*(e._x2-e._x0),e._y1+e._k*(e._y2-e._y0),e._x2+e._k*(e._x1-t),e._y2+e._k*(e._y1-n),e._x2,e._y2)}function V0(e,t){this._context=e,this._k=(1-t)/6}V0.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:Rf(this,this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2,this._x1=e,this._y1=t;break;case 2:this._point=3;default:Rf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var uS=(function e(t){function n(i){return new V0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function H0(e,t){this._context=e,this._k=(1-t)/6}H0.prototype={areaStart:xs,areaEnd:xs,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:Rf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var fS=(function e(t){function n(i){return new H0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function W0(e,t){this._context=e,this._k=(1-t)/6}W0.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:Rf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var hS=(function e(t){function n(i){return new W0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function $0(e,t,n){var i=e._x1,r=e._y1,s=e._x2,o=e._y2;if(e._l01_a>BM){var a=2*e._l01_2a+3*e._l01_a*e._l12_a+e._l12_2a,l=3*e._l01_a*(e._l01_a+e._l12_a);i=(i*a-e._x0*e._l12_2a+e._x2*e._l01_2a)/l,r=(r*a-e._y0*e._l12_2a+e._y2*e._l01_2a)/l}if(e._l23_a>BM){var c=2*e._l23_2a+3*e._l23_a*e._l12_a+e._l12_2a,u=3*e._l23_a*(e._l23_a+e._l12_a);s=(s*c+e._x1*e._l23_2a-t*e._l12_2a)/u,o=(o*c+e._y1*e._l23_2a-n*e._l12_2a)/u}e._context.bezierCurveTo(i,r,s,o,e._x2,e._y2)}function dS(e,t){this._context=e,this._alpha=t}dS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:this.point(this._x2,this._y2);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3;default:$0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var pS=(function e(t){function n(i){return t?new dS(i,t):new V0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function mS(e,t){this._context=e,this._alpha=t}mS.prototype={areaStart:xs,areaEnd:xs,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:$0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var gS=(function e(t){function n(i){return t?new mS(i,t):new H0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function yS(e,t){this._context=e,this._alpha=t}yS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:$0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var xS=(function e(t){function n(i){return t?new yS(i,t):new W0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function _S(e){this._context=e}_S.prototype={areaStart:xs,areaEnd:xs,lineStart:function(){this._point=0},lineEnd:function(){this._point&&this._context.closePath()},point:function(e,t){e=+e,t=+t,this._point?this._context.lineTo(e,t):(this._point=1,this._context.moveTo(e,t))}};function vS(e){return new _S(e)}function kM(e){return e<0?-1:1}function zM(e,t,n){var i=e._x1-e._x0,r=t-e._x1,s=(e._y1-e._y0)/(i||r<0&&-0),o=(n-e._y1)/(r||i<0&&-0),a=(s*r+o*i)/(i+r);return(kM(s)+kM(o))*Math.min(Math.abs(s),Math.abs(o),.5*Math.abs(a))||0}function GM(e,t){var n=e._x1-e._x0;return n?(3*(e._y1-e._y0)/n-t)/2:t}function E0(e,t,n){var i=e._x0,r=e._y0,s=e._x1,o=e._y1,a=(s-i)/3;e._context.bezierCurveTo(i+a,r+a*t,s-a,o-a*n,s,o)}function Pf(e){this._context=e}Pf.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=this._t0=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x1,this._y1);break;case 3:E0(this,this._t0,GM(this,this._t0));break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){var n=NaN;if(e=+e,t=+t,!(e===this._x1&&t===this._y1)){switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,E0(this,GM(this,n=zM(this,e,t)),n);break;default:E0(this,this._t0,n=zM(this,e,t));break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t,this._t0=n}}};function bS(e){this._context=new MS(e)}(bS.prototype=Object.create(Pf.prototype)).point=function(e,t){Pf.prototype.point.call(this,t,e)};function MS(e){this._context=e}MS.prototype={moveTo:function(e,t){this._context.moveTo(t,e)},closePath:function(){this._context.closePath()},lineTo:function(e,t){this._context.lineTo(t,e)},bezierCurveTo:function(e,t,n,i,r,s){this._context.bezierCurveTo(t,e,i,n,s,r)}};function SS(e){return new Pf(e)}function wS(e){return new bS(e)}function TS(e){this._context=e}TS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=[],this._y=[]},lineEnd:function(){var e=this._x,t=this._y,n=e.length;if(n)if(this._line?this._context.lineTo(e[0],t[0]):this._context.moveTo(e[0],t[0]),n===2)this._context.lineTo(e[1],t[1]);else for(var i=VM(e),r=VM(t),s=0,o=1;o<n;++s,++o)this._context.bezierCurveTo(i[0][s],r[0][s],i[1][s],r[1][s],e[o],t[o]);(this._line||this._line!==0&&n===1)&&this._context.closePath(),this._line=1-this._line,this._x=this._y=null},point:function(e,t){this._x.push(+e),this._y.push(+t)}};function VM(e){var t,n=e.length-1,i,r=new Array(n),s=new Array(n),o=new Array(n);for(r[0]=0,s[0]=2,o[0]=e[0]+2*e[1],t=1;t<n-1;++t)r[t]=1,s[t]=4,o[t]=4*e[t]+2*e[t+1];for(r[n-1]=2,s[n-1]=7,o[n-1]=8*e[n-1]+e[n],t=1;t<n;++t)i=r[t]/s[t-1],s[t]-=i,o[t]-=i*o[t-1];for(r[n-1]=o[n-1]/s[n-1],t=n-2;t>=0;--t)r[t]=(o[t]-r[t+1])/s[t];for(s[n-1]=(e[n]+r[n-1])/2,t=0;t<n-1;++t)s[t]=2*e[t+1]-r[t+1];return[r,s]}function ES(e){return new TS(e)}function Df(e,t){this._context=e,this._t=t}Df.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=this._y=NaN,this._point=0},lineEnd:function(){0<this._t&&this._t<1&&this._point===2&&this._context.lineTo(this._x,this._y),(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line>=0&&(this._t=1-this._t,this._line=1-this._line)},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:{if(this._t<=0)this._context.lineTo(this._x,t),this._context.lineTo(e,t);else{var n=this._x*(1-this._t)+e*this._t;this._context.lineTo(n,this._y),this._context.lineTo(n,t)}break}}this._x=e,this._y=t}};function AS(e){return new Df(e,.5)}function CS(e){return new Df(e,0)}function RS(e){return new Df(e,1)}function wi(e){return e!=null&&!Number.isNaN(e)}function vn(e,t){return+wi(t)-+wi(e)||_n(e,t)}function Mo(e,t){return+wi(t)-+wi(e)||Rr(e,t)}function mc(e){return e!=null&&`${e}`!=""}function X0(e){return isFinite(e)?e:NaN}function So(e){return e>0&&isFinite(e)?e:NaN}function ba(e){return e<0&&isFinite(e)?e:NaN}function Nf(e,t){if(e instanceof Date||(e=new Date(+e)),isNaN(e))return typeof t=="function"?t(e):t;let n=e.getUTCHours(),i=e.getUTCMinutes(),r=e.getUTCSeconds(),s=e.getUTCMilliseconds();return`${OL(e.getUTCFullYear(),4)}-${kr(e.getUTCMonth()+1,2)}-${kr(e.getUTCDate(),2)}${n||i||r||s?`T${kr(n,2)}:${kr(i,2)}${r||s?`:${kr(r,2)}${s?`.${kr(s,3)}`:""}`:""}Z`:""}`}function OL(e){return e<0?`-${kr(-e,6)}`:e>9999?`+${kr(e,6)}`:kr(e,4)}function kr(e,t){return`${e}`.padStart(t,"0")}var BL=/^(?:[-+]\d{2})?\d{4}(?:-\d{2}(?:-\d{2})?)?(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d{3})?)?(?:Z|[-+]\d{2}:?\d{2})?)?$/;function gc(e,t){return BL.test(e+="")?new Date(e):typeof t=="function"?t(e):t}function zr(e){if(e==null)return;let t=e[0],n=e[e.length-1];return Rr(t,n)}var Sa=1e3,vs=Sa*60,bs=vs*60,dr=bs*24,hr=dr*7,wo=dr*30,_s=dr*365,q0=[["millisecond",1],["2 milliseconds",2],["5 milliseconds",5],["10 milliseconds",10],["20 milliseconds",20],["50 milliseconds",50],["100 milliseconds",100],["200 milliseconds",200],["500 milliseconds",500],["second",Sa],["5 seconds",5*Sa],["15 seconds",15*Sa],["30 seconds",30*Sa],["minute",vs],["5 minutes",5*vs],["15 minutes",15*vs],["30 minutes",30*vs],["hour",bs],["3 hours",3*bs],["6 hours",6*bs],["12 hours",12*bs],["day",dr],["2 days",2*dr],["week",hr],["2 weeks",2*hr],["month",wo],["3 months",3*wo],["6 months",6*wo],["year",_s],["2 years",2*_s],["5 years",5*_s],["10 years",10*_s],["20 years",20*_s],["50 years",50*_s],["100 years",100*_s]],Y0=new Map([["second",Sa],["minute",vs],["hour",bs],["day",dr],["monday",hr],["tuesday",hr],["wednesday",hr],["thursday",hr],["friday",hr],["saturday",hr],["sunday",hr],["week",hr],["month",wo],["year",_s]]),IS=new Map([["second",Ln],["minute",co],["hour",fo],["day",ar],["monday",mo],["tuesday",Jm],["wednesday",Km],["thursday",Or],["friday",jm],["saturday",Qm],["sunday",lr],["week",lr],["month",xo],["year",Wn]]),Z0=new Map([["second",Ln],["minute",uo],["hour",ho],["day",ic],["monday",yo],["tuesday",tg],["wednesday",eg],["thursday",Br],["friday",ng],["saturday",ig],["sunday",cr],["week",cr],["month",_o],["year",$n]]),wa=Symbol("intervalDuration"),Ff=Symbol("intervalType");for(let[e,t]of IS)t[wa]=Y0.get(e),t[Ff]="time";for(let[e,t]of Z0)t[wa]=Y0.get(e),t[Ff]="utc";var yc=[["year",$n,"utc"],["month",_o,"utc"],["day",ic,"utc",6*wo],["hour",ho,"utc",3*dr],["minute",uo,"utc",6*bs],["second",Ln,"utc",30*vs]],Uf=[["year",Wn,"time"],["month",xo,"time"],["day",ar,"time",6*wo],["hour",fo,"time",3*dr],["minute",co,"time",6*bs],["second",Ln,"time",30*vs]],kL=[yc[0],Uf[0],yc[1],Uf[1],yc[2],Uf[2],...yc.slice(3)];function LS(e){let t=`${e}`.toLowerCase();t.endsWith("s")&&(t=t.slice(0,-1));let n=1,i=/^(?:(\d+)\s+)/.exec(t);switch(i&&(t=t.slice(i[0].length),n=+i[1]),t){case"quarter":t="month",n*=3;break;case"half":t="month",n*=6;break}let r=Z0.get(t);if(!r)throw new Error(`unknown interval: ${e}`);if(n>1&&!r.every)throw new Error(`non-periodic interval: ${t}`);return[t,n]}function J0(e){return DS(LS(e),"time")}function xc(e){return DS(LS(e),"utc")}function DS([e,t],n){let i=(n==="time"?IS:Z0).get(e);return t>1&&(i=i.every(t),i[wa]=Y0.get(e)*t,i[Ff]=n),i}function K0(e,t){if(!(t>1))return;let n=e[wa];if(!q0.some(([,r])=>r===n)||n%dr===0&&dr<n&&n<wo)return;let[i]=q0[ea(([,r])=>Math.log(r)).center(q0,Math.log(n*t))];return(e[Ff]==="time"?J0:xc)(i)}function PS(e,t,n){let i=t==="time"?ac:ur;if(n==null)return i(e==="year"?"%Y":e==="month"?"%Y-%m":e==="day"?"%Y-%m-%d":e==="hour"||e==="minute"?"%Y-%m-%dT%H:%M":e==="second"?"%Y-%m-%dT%H:%M:%S":"%Y-%m-%dT%H:%M:%S.%L");let r=zL(n);switch(e){case"millisecond":return Ma(i(".%L"),i(":%M:%S"),r);case"second":return Ma(i(":%S"),i("%-I:%M"),r);case"minute":return Ma(i("%-I:%M"),i("%p"),r);case"hour":return Ma(i("%-I %p"),i("%b %-d"),r);case"day":return Ma(i("%-d"),i("%b"),r);case"month":return Ma(i("%b"),i("%Y"),r);case"year":return i("%Y")}throw new Error("unable to format time ticks")}function zL(e){return e==="left"||e==="right"?(t,n)=>`
${t}
${n}`:e==="top"?(t,n)=>`${n}
${t}`:(t,n)=>`${t}
${n}`}function GL(e){return e==="time"?Uf:e==="utc"?yc:kL}function NS(e,t,n){let i=Rn(Pv(t,(r,s)=>Math.abs(s-r)));if(i<1e3)return PS("millisecond","utc",n);for(let[r,s,o,a]of GL(e)){if(i>a||r==="hour"&&!i)break;if(t.every(l=>s.floor(l)>=l))return PS(r,o,n)}}function Ma(e,t,n){return(i,r,s)=>{let o=e(i,r),a=t(i,r),l=r-zr(s);return r!==l&&s[l]!==void 0&&a===t(s[l],l)?o:n(o,a)}}var Q0=Object.getPrototypeOf(Uint8Array),VL=Object.prototype.toString;function Oi(e){return e instanceof Array||e instanceof Q0}function OS(e){return e instanceof Q0&&!HL(e)}function BS(e){return e?.prototype instanceof Q0&&!WL(e)}function HL(e){return e instanceof BigInt64Array||e instanceof BigUint64Array}function WL(e){return e===BigInt64Array||e===BigUint64Array}var ty=Symbol("reindex");function Te(e,t,n){let i=typeof t;return i==="string"?nw(e)?ey(e.getChild(t),n):US(e,ny(t),n):i==="function"?US(e,t,n):i==="number"||t instanceof Date||i==="boolean"?me(e,ti(t),n):typeof t?.transform=="function"?j0(t.transform(e),n):$L(j0(t,n),e?.[ty])}function $L(e,t){return e!=null&&t?Bf(e,t):e}function US(e,t,n){return me(e,BS(n)?(i,r)=>iy(t(i,r)):t,n)}function j0(e,t){return t===void 0?pr(e):iw(e)?ey(e,t):e instanceof t?e:t.from(e,BS(t)&&!OS(e)?iy:void 0)}function ey(e,t){return e==null?e:(t===void 0||t===Array)&&ZL(e.type)?ry(FS(e)):j0(FS(e),t)}function FS(e){return e.nullCount?e.toJSON():e.toArray()}var Ta=[null],ny=e=>t=>{let n=t[e];return n===void 0&&t.type==="Feature"?t.properties?.[e]:n},To={transform:Un},Ae={transform:e=>e};var kS=()=>1,zS=()=>!0,Fe=e=>e==null?e:`${e}`,Oe=e=>e==null?e:+e;var Of=e=>e?e[0]:void 0,_c=e=>e?e[1]:void 0;var ti=e=>()=>e;function GS(e){let t=+`${e}`.slice(1)/100;return(n,i)=>Cr(n,t,i)}function Dn(e){return OS(e)?e:me(e,iy,Float64Array)}function iy(e){return e==null?NaN:Number(e)}function ry(e){return me(e,sy)}function sy(e){return e instanceof Date&&!isNaN(e)?e:typeof e=="string"?gc(e):e==null||isNaN(e=Number(e))?void 0:new Date(e)}function Xn(e,t){return e===void 0&&(e=t),e===null?[void 0,"none"]:Pa(e)?[void 0,e]:[e,void 0]}function Le(e,t){return e===void 0&&(e=t),e===null||typeof e=="number"?[void 0,e]:[e,void 0]}function oy(e,t,n){if(e!=null)return Nn(e,t,n)}function Nn(e,t,n){let i=`${e}`.toLowerCase();if(!n.includes(i))throw new Error(`invalid ${t}: ${e}`);return i}function Gr(e){return nw(e)?e:pr(e)}function pr(e){if(e==null||Oi(e))return e;if(iw(e))return ey(e);if(VS(e))switch(e.type){case"FeatureCollection":return e.features;case"GeometryCollection":return e.geometries;default:return[e]}return Array.from(e)}function VS(e){switch(e?.type){case"FeatureCollection":case"GeometryCollection":case"Feature":case"LineString":case"MultiLineString":case"MultiPoint":case"MultiPolygon":case"Point":case"Polygon":case"Sphere":return!0;default:return!1}}function me(e,t,n=Array){return e==null?e:e instanceof n?e.map(t):n.from(e,t)}function Ms(e,t=Array){return e instanceof t?e.slice():t.from(e)}function HS({y:e,y1:t,y2:n}){return e!==void 0||t!==void 0||n!==void 0}function Bi(e){return e?.toString===VL}function Ea(e){return Bi(e)&&(e.type!==void 0||e.domain!==void 0)}function Aa(e){return Bi(e)&&typeof e.transform!="function"}function Ss(e){return Aa(e)&&e.value===void 0&&e.channel===void 0}function WS(e,t,n,i=Ae){return t===void 0&&n===void 0?(t=0,n=e===void 0?i:e):t===void 0?t=e===void 0?0:e:n===void 0&&(n=e===void 0?0:e),[t,n]}function ki(e,t){return e===void 0&&t===void 0?[Of,_c]:[e,t]}function Ca({z:e,fill:t,stroke:n}={}){return e===void 0&&([e]=Xn(t)),e===void 0&&([e]=Xn(n)),e}function ws(e){return Oi(e)?e.length:e?.numRows}function Un(e){let t=ws(e),n=new Uint32Array(t);for(let i=0;i<t;++i)n[i]=i;return n}function Bf(e,t){return Oi(e)?me(t,n=>e[n],e.constructor):me(t,n=>e.at(n))}function $S(e,t,n){return e.subarray?e.subarray(t,n):e.slice(t,n)}function Ti(e){return e!==null&&typeof e=="object"?e.valueOf():e}function XS(e,t){if(t[e]!==void 0)return t[e];switch(e){case"x1":case"x2":e="x";break;case"y1":case"y2":e="y";break}return t[e]}function Ra(e){let t;return[{transform:()=>t,label:zi(e)},n=>t=n]}function Ei(e){return e==null?[e]:Ra(e)}function zi(e,t){return typeof e=="string"?e:e&&e.label!==void 0?e.label:t}function vc(e,t){return{transform(n){let i=e.transform(n),r=t.transform(n);return Ue(i)||Ue(r)?me(i,(s,o)=>new Date((+i[o]+ +r[o])/2)):me(i,(s,o)=>(+i[o]+ +r[o])/2,Float64Array)},label:e.label}}function bc(e,t){let n=ay(t?.interval,t?.type);return n?me(e,n):e}function ay(e,t){let n=kf(e,t);return n&&(i=>wi(i)?n.floor(i):i)}function kf(e,t){if(e!=null){if(typeof e=="number")return XL(e);if(typeof e=="string")return(t==="time"?J0:xc)(e);if(typeof e.floor!="function")throw new Error("invalid interval; missing floor method");if(typeof e.offset!="function")throw new Error("invalid interval; missing offset method");return e}}function XL(e){e=+e,0<e&&e<1&&Number.isInteger(1/e)&&(e=-1/e);let t=Math.abs(e);return e<0?{floor:n=>Math.floor(n*t)/t,offset:(n,i=1)=>(n*t+Math.floor(i))/t,range:(n,i)=>ia(Math.ceil(n*t),i*t).map(r=>r/t)}:{floor:n=>Math.floor(n/t)*t,offset:(n,i=1)=>n+t*Math.floor(i),range:(n,i)=>ia(Math.ceil(n/t),i/t).map(r=>r*t)}}function mr(e,t){if(e=kf(e,t),e&&typeof e.range!="function")throw new Error("invalid interval: missing range method");return e}function qS(e,t){if(e=mr(e,t),e&&typeof e.ceil!="function")throw new Error("invalid interval: missing ceil method");return e}function YS(e){return Ts(e)&&typeof e?.floor=="function"&&e.floor()instanceof Date}function Ts(e){return typeof e?.range=="function"}function gr(e){return e===void 0||Aa(e)?e:{value:e}}function ZS(e){return e==null?null:{transform:t=>Te(t,e,Float64Array),label:zi(e)}}function qn(e){return e&&typeof e[Symbol.iterator]=="function"}function zf(e){for(let t of e)if(t!=null)return typeof t!="object"||t instanceof Date}function ly(e){for(let t of e){if(t==null)continue;let n=typeof t;return n==="string"||n==="boolean"}}function Ue(e){for(let t of e)if(t!=null)return t instanceof Date}function JS(e){for(let t of e)if(t!=null)return typeof t=="string"&&isNaN(t)&&gc(t)}function KS(e){for(let t of e)if(t!=null){if(typeof t!="string")return!1;if(t.trim())return!isNaN(t)}}function jS(e){for(let t of e)if(t!=null)return typeof t=="number"}function Gf(e,t){let n;for(let i of e)if(i!=null){if(!t(i))return!1;n=!0}return n}var qL=new Set("none,currentcolor,transparent,aliceblue,antiquewhite,aqua,aquamarine,azure,beige,bisque,black,blanchedalmond,blue,blueviolet,brown,burlywood,cadetblue,chartreuse,chocolate,coral,cornflowerblue,cornsilk,crimson,cyan,darkblue,darkcyan,darkgoldenrod,darkgray,darkgreen,darkgrey,darkkhaki,darkmagenta,darkolivegreen,darkorange,darkorchid,darkred,darksalmon,darkseagreen,darkslateblue,darkslategray,darkslategrey,darkturquoise,darkviolet,deeppink,deepskyblue,dimgray,dimgrey,dodgerblue,firebrick,floralwhite,forestgreen,fuchsia,gainsboro,ghostwhite,gold,goldenrod,gray,green,greenyellow,grey,honeydew,hotpink,indianred,indigo,ivory,khaki,lavender,lavenderblush,lawngreen,lemonchiffon,lightblue,lightcoral,lightcyan,lightgoldenrodyellow,lightgray,lightgreen,lightgrey,lightpink,lightsalmon,lightseagreen,lightskyblue,lightslategray,lightslategrey,lightsteelblue,lightyellow,lime,limegreen,linen,magenta,maroon,mediumaquamarine,mediumblue,mediumorchid,mediumpurple,mediumseagreen,mediumslateblue,mediumspringgreen,mediumturquoise,mediumvioletred,midnightblue,mintcream,mistyrose,moccasin,navajowhite,navy,oldlace,olive,olivedrab,orange,orangered,orchid,palegoldenrod,palegreen,paleturquoise,palevioletred,papayawhip,peachpuff,peru,pink,plum,powderblue,purple,rebeccapurple,red,rosybrown,royalblue,saddlebrown,salmon,sandybrown,seagreen,seashell,sienna,silver,skyblue,slateblue,slategray,slategrey,snow,springgreen,steelblue,tan,teal,thistle,tomato,turquoise,violet,wheat,white,whitesmoke,yellow".split(","));function Pa(e){return typeof e!="string"?!1:(e=e.toLowerCase().trim(),/^#[0-9a-f]{3,8}$/.test(e)||/^(?:url|var|rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch|color|color-mix)\(.*\)$/.test(e)||qL.has(e))}function QS(e){return typeof e=="number"&&(0<=e&&e<=1||isNaN(e))}function sn(e){return e==null||Eo(e)}function Eo(e){return/^\s*none\s*$/i.test(e)}function tw(e){return/^\s*round\s*$/i.test(e)}function Vf(e,t){return oy(e,t,["middle","top-left","top","top-right","right","bottom-right","bottom","bottom-left","left"])}function Es(e="middle"){return Vf(e,"frameAnchor")}function ew(e={},...t){let n=e;for(let i of t)for(let r in i)if(n[r]===void 0){let s=i[r];n===e?n={...n,[r]:s}:n[r]=s}return n}function YL(e){console.warn("named iterables are deprecated; please use an object instead");let t=new Set;return Object.fromEntries(Array.from(e,n=>{let{name:i}=n;if(i==null)throw new Error("missing name");let r=`${i}`;if(r==="__proto__")throw new Error(`illegal name: ${r}`);if(t.has(r))throw new Error(`duplicate name: ${r}`);return t.add(r),[i,n]}))}function cy(e){return qn(e)?YL(e):e}function Hf(e){return e===!0?e="frame":e===!1?e=null:!VS(e)&&e!=null&&(e=Nn(e,"clip",["frame","sphere"]),e==="sphere"&&(e={type:"Sphere"})),e}function nw(e){return e&&typeof e.getChild=="function"&&typeof e.toArray=="function"&&e.schema&&Array.isArray(e.schema.fields)}function iw(e){return e&&typeof e.toArray=="function"&&e.type}function ZL(e){return e&&(e.typeId===8||e.typeId===10)&&e.unit===1}var Ai=Symbol("position"),ei=Symbol("color"),Ao=Symbol("radius"),Co=Symbol("length"),Ro=Symbol("opacity"),Ia=Symbol("symbol"),rw=Symbol("projection"),ge=new Map([["x",Ai],["y",Ai],["fx",Ai],["fy",Ai],["r",Ao],["color",ei],["opacity",Ro],["symbol",Ia],["length",Co],["projection",rw]]);function sw(e){return e===Ai||e===rw}function ow(e){return e===Ai||e===Ao||e===Co||e===Ro}var JL=Math.sqrt(3),KL=2/JL,jL={draw(e,t){let n=Math.sqrt(t/Math.PI),i=n*KL,r=i/2;e.moveTo(0,i),e.lineTo(n,r),e.lineTo(n,-r),e.lineTo(0,-i),e.lineTo(-n,-r),e.lineTo(-n,r),e.closePath()}},uy=new Map([["asterisk",P0],["circle",bo],["cross",I0],["diamond",L0],["diamond2",D0],["hexagon",jL],["plus",N0],["square",U0],["square2",F0],["star",O0],["times",G0],["triangle",B0],["triangle2",k0],["wye",z0]]);function fy(e){return e&&typeof e.draw=="function"}function aw(e){return fy(e)?!0:typeof e!="string"?!1:uy.has(e.toLowerCase())}function La(e){if(e==null||fy(e))return e;let t=uy.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid symbol: ${e}`)}function lw(e){if(e==null||fy(e))return[void 0,e];if(typeof e=="string"){let t=uy.get(`${e}`.toLowerCase());if(t)return[void 0,t]}return[e,void 0]}function Po({filter:e,sort:t,reverse:n,transform:i,initializer:r,...s}={},o){if(i===void 0&&(e!=null&&(i=cw(e)),t!=null&&!Ss(t)&&(i=hy(i,py(t))),n&&(i=hy(i,uw))),o!=null&&r!=null)throw new Error("transforms cannot be applied after initializers");return{...s,...(t===null||Ss(t))&&{sort:t},transform:hy(i,o)}}function Vr({filter:e,sort:t,reverse:n,initializer:i,...r}={},s){return i===void 0&&(e!=null&&(i=cw(e)),t!=null&&!Ss(t)&&(i=dy(i,py(t))),n&&(i=dy(i,uw))),{...r,...(t===null||Ss(t))&&{sort:t},initializer:dy(i,s)}}function hy(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r){return{data:n,facets:i}=e.call(this,n,i,r),t.call(this,Gr(n),i,r)}}function dy(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r,...s){let o,a,l,c,u,h;return{data:a=n,facets:l=i,channels:o}=e.call(this,n,i,r,...s),{data:u=a,facets:h=l,channels:c}=t.call(this,a,l,{...r,...o},...s),{data:u,facets:h,channels:{...o,...c}}}}function QL(e,t){return(e.initializer!=null?Vr:Po)(e,t)}function cw(e){return(t,n)=>{let i=Te(t,e);return{data:t,facets:n.map(r=>r.filter(s=>i[s]))}}}function uw(e,t){return{data:e,facets:t.map(n=>n.slice().reverse())}}function fw(e,{sort:t,...n}={}){return{...(Aa(e)&&e.channel!==void 0?Vr:QL)(n,py(e)),sort:Ss(t)?t:null}}function py(e){return(typeof e=="function"&&e.length!==1?tD:eD)(e)}function tD(e){return(t,n)=>{let i=Oi(t)?(r,s)=>e(t[r],t[s]):(r,s)=>e(t.get(r),t.get(s));return{data:t,facets:n.map(r=>r.slice().sort(i))}}}function eD(e){let t,n;({channel:t,value:e,order:n}={...gr(e)});let i=t?.startsWith("-");if(i&&(t=t.slice(1)),n===void 0&&(n=i?Mo:vn),typeof n!="function")switch(`${n}`.toLowerCase()){case"ascending":n=vn;break;case"descending":n=Mo;break;default:throw new Error(`invalid order: ${n}`)}return(r,s,o)=>{let a;if(t===void 0)a=Te(r,e);else{if(o===void 0)throw new Error("channel sort requires an initializer");if(a=o[t],!a)return{};a=a.value}let l=(c,u)=>n(a[c],a[u]);return{data:r,facets:s.map(c=>c.slice().sort(l))}}}function Sc(e,...t){for(let{name:n}of e)if(t.includes(n))return!0;return!1}function pw(e,t,n=my){let i=Object.entries(e);return t.title!=null&&e.title===void 0&&i.push(["title",oD]),t.href!=null&&e.href===void 0&&i.push(["href",Wf]),i.filter(([,r])=>r!==void 0).map(([r,s])=>s===null?nD(r):n(r,s,t))}function my(e,t,n,i=gy){let r;Bi(t)&&"reduce"in t&&(r=t.scale,t=t.reduce);let s=i(e,t,n),[o,a]=Ra(s.label),l;return{name:e,output:r===void 0?o:{value:o,scale:r},initialize(c){s.initialize(c),l=a([])},scope(c,u){s.scope(c,u)},reduce(c,u){l.push(s.reduce(c,u))}}}function nD(e){return{name:e,initialize(){},scope(){},reduce(){}}}function gy(e,t,n,i=wc){let r=XS(e,n),s=i(t,r),o,a;return{label:zi(s===Mc?null:r,s.label),initialize(l){o=r===void 0?l:Te(l,r),s.scope==="data"&&(a=s.reduceIndex(Un(l),o))},scope(l,c){s.scope===l&&(a=s.reduceIndex(c,o))},reduce(l,c){return s.scope==null?s.reduceIndex(l,o,c):s.reduceIndex(l,o,a,c)}}}function yy(e,t){return t?to(e,n=>t[n]):[[,e]]}function wc(e,t,n=iD){if(e==null)return n(e);if(typeof e.reduceIndex=="function")return e;if(typeof e.reduce=="function"&&Bi(e))return rD(e);if(typeof e=="function")return sD(e);if(/^p\d{2}$/i.test(e))return Hr(GS(e));switch(`${e}`.toLowerCase()){case"first":return Wf;case"last":return aD;case"identity":return xy;case"count":return Mc;case"distinct":return lD;case"sum":return t==null?Mc:cD;case"proportion":return dw(t,"data");case"proportion-facet":return dw(t,"facet");case"deviation":return Hr(Yp);case"min":return Hr(di);case"min-index":return Hr(wv);case"max":return Hr(Rn);case"max-index":return Hr(Sv);case"mean":return hw(Cv);case"median":return hw(Fl);case"variance":return Hr(qp);case"mode":return Hr(Rv)}return n(e)}function iD(e){throw new Error(`invalid reduce: ${e}`)}function mw(e,t){for(let n in t){let i=t[n];if(i!==void 0&&!e.some(r=>r.name===n))return i}}function gw(e,t,n){if(t){let i=t.output.transform(),r=(s,o)=>vn(i[s],i[o]);e.forEach(s=>s.sort(r))}n&&e.forEach(i=>i.reverse())}function rD(e){return console.warn("deprecated reduce interface; implement reduceIndex instead."),{...e,reduceIndex:e.reduce.bind(e)}}function sD(e){return{reduceIndex(t,n,i){return e(Bf(n,t),i)}}}function Hr(e){return{reduceIndex(t,n){return e(t,i=>n[i])}}}function hw(e){return{reduceIndex(t,n){let i=e(t,r=>n[r]);return Ue(n)?new Date(i):i}}}var xy={reduceIndex(e,t){return Bf(t,e)}},Wf={reduceIndex(e,t){return t[e[0]]}},oD={reduceIndex(e,t){let i=Qo(Pr(e,s=>s.length,s=>t[s]),_c),r=i.slice(-5).reverse();if(r.length<i.length){let s=i.slice(0,-4);r[4]=[`… ${s.length.toLocaleString("en-US")} more`,Di(s,_c)]}return r.map(([s,o])=>`${s} (${o.toLocaleString("en-US")})`).join(`
`)}},aD={reduceIndex(e,t){return t[e[e.length-1]]}},Mc={label:"Frequency",reduceIndex(e){return e.length}},lD={label:"Distinct",reduceIndex(e,t){let n=new er;for(let i of e)n.add(t[i]);return n.size}},cD=Hr(Di);function dw(e,t){return e==null?{scope:t,label:"Frequency",reduceIndex:(n,i,r=1)=>n.length/r}:{scope:t,reduceIndex:(n,i,r=1)=>Di(n,s=>i[s])/r}}var yw={reduceIndex(e,t,{z:n}){return n}};function Da(e,{scale:t,type:n,value:i,filter:r,hint:s,label:o=zi(i)},a){return s===void 0&&typeof i?.transform=="function"&&(s=i.hint),vy(a,{scale:t,type:n,value:Te(e,i),label:o,filter:r,hint:s})}function _w(e,t){return Object.fromEntries(Object.entries(e).map(([n,i])=>[n,Da(t,i,n)]))}function vw(e,t){let n=Object.fromEntries(Object.entries(e).map(([i,{scale:r,value:s}])=>{let o=r==null?null:t[r];return[i,o==null?s:me(s,o)]}));return n.channels=e,n}function vy(e,t){let{scale:n,value:i}=t;if(n===!0||n==="auto")switch(e){case"fill":case"stroke":case"color":t.scale=n!==!0&&Gf(i,Pa)?null:"color",t.defaultScale="color";break;case"fillOpacity":case"strokeOpacity":case"opacity":t.scale=n!==!0&&Gf(i,QS)?null:"opacity",t.defaultScale="opacity";break;case"symbol":n!==!0&&Gf(i,aw)?(t.scale=null,t.value=me(i,La)):t.scale="symbol",t.defaultScale="symbol";break;default:t.scale=ge.has(e)?e:null;break}else if(n===!1)t.scale=null;else if(n!=null&&!ge.has(n))throw new Error(`unknown scale: ${n}`);return t}function bw(e,t,n,i,r){let{order:s,reverse:o,reduce:a=!0,limit:l}=r;for(let c in r){if(!ge.has(c))continue;let{value:u,order:h=s,reverse:f=o,reduce:d=a,limit:p=l}=gr(r[c]),y=u?.startsWith("-");if(y&&(u=u.slice(1)),h=h===void 0?y!==(u==="width"||u==="height")?Sw:Mw:hD(h),d==null||d===!1)continue;let m=c==="fx"||c==="fy"?fD(t,i[c]):uD(n,c);if(!m)throw new Error(`missing channel for scale: ${c}`);let g=m.value,[_=0,M=1/0]=qn(p)?p:p<0?[p]:[0,p];if(u==null)m.domain=()=>{let v=Array.from(new er(g));return f&&(v=v.reverse()),(_!==0||M!==1/0)&&(v=v.slice(_,M)),v};else{let v=u==="data"?e:u==="height"?xw(n,"y1","y2"):u==="width"?xw(n,"x1","x2"):_y(n,u,u==="y"?"y2":u==="x"?"x2":void 0),S=wc(d===!0?"max":d,v);m.domain=()=>{let b=vv(Un(g),x=>S.reduceIndex(x,v),x=>g[x]);return h&&b.sort(h),f&&b.reverse(),(_!==0||M!==1/0)&&(b=b.slice(_,M)),b.map(Of)}}}}function uD(e,t){for(let n in e){let i=e[n];if(i.scale===t)return i}}function fD(e,t){let n=e.original;if(n===e)return t;let i=t.value,r=t.value=[];for(let s=0;s<n.length;++s){let o=i[n[s][0]];for(let a of e[s])r[a]=o}return t}function xw(e,t,n){let i=_y(e,t),r=_y(e,n);return me(r,(s,o)=>Math.abs(s-i[o]),Float64Array)}function _y(e,t,n){let i=e[t];if(!i&&n!==void 0&&(i=e[n]),i)return i.value;throw new Error(`missing channel: ${t}`)}function hD(e){if(e==null||typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"ascending":return Mw;case"descending":return Sw}throw new Error(`invalid order: ${e}`)}function Mw([e,t],[n,i]){return vn(t,i)||vn(e,n)}function Sw([e,t],[n,i]){return Mo(t,i)||vn(e,n)}function by(e,t){let n=e[t];if(n){for(;n.source;)n=n.source;return n.source===null?null:n}}var Cw=new Map([["accent",CM],["category10",AM],["dark2",RM],["observable10",PM],["paired",IM],["pastel1",LM],["pastel2",DM],["set1",NM],["set2",UM],["set3",FM],["tableau10",OM]]);function Rw(e){return e!=null&&Cw.has(`${e}`.toLowerCase())}var ww=new Map([...Cw,["brbg",Wr(_g,vg)],["prgn",Wr(bg,Mg)],["piyg",Wr(Sg,wg)],["puor",Wr(Tg,Eg)],["rdbu",Wr(Sf,fc)],["rdgy",Wr(Ag,Cg)],["rdylbu",Wr(wf,hc)],["rdylgn",Wr(Rg,Pg)],["spectral",Wr(Ig,Lg)],["burd",Tw(Sf,fc)],["buylrd",Tw(wf,hc)],["blues",on(i0,r0)],["greens",on(s0,o0)],["greys",on(a0,l0)],["oranges",on(d0,p0)],["purples",on(c0,u0)],["reds",on(f0,h0)],["turbo",$r(b0)],["viridis",$r(dc)],["magma",$r(M0)],["inferno",$r(S0)],["plasma",$r(w0)],["cividis",$r(m0)],["cubehelix",$r(g0)],["warm",$r(y0)],["cool",$r(x0)],["bugn",on(Dg,Ng)],["bupu",on(Ug,Fg)],["gnbu",on(Og,Bg)],["orrd",on(kg,zg)],["pubu",on(Hg,Wg)],["pubugn",on(Gg,Vg)],["purd",on($g,Xg)],["rdpu",on(qg,Yg)],["ylgn",on(Kg,jg)],["ylgnbu",on(Zg,Jg)],["ylorbr",on(Qg,t0)],["ylorrd",on(e0,n0)],["rainbow",Ew(_0)],["sinebow",Ew(v0)]]);function on(e,t){return({length:n})=>n===1?[e[3][1]]:n===2?[e[3][1],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>9?Pn(t,n):e[n])}function Wr(e,t){return({length:n})=>n===2?[e[3][0],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>11?Pn(t,n):e[n])}function Tw(e,t){return({length:n})=>n===2?[e[3][2],e[3][0]]:(n=Math.max(3,Math.floor(n)),n>11?Pn(i=>t(1-i),n):e[n].slice().reverse())}function $r(e){return({length:t})=>Pn(e,Math.max(2,Math.floor(t)))}function Ew(e){return({length:t})=>Pn(e,Math.floor(t)+1).slice(0,-1)}function My(e){let t=`${e}`.toLowerCase();if(!ww.has(t))throw new Error(`unknown ordinal scheme: ${t}`);return ww.get(t)}function Tc(e,t){let n=My(e),i=typeof n=="function"?n({length:t}):n;return i.length!==t?i.slice(0,t):i}function Pw(e,t="greys"){let n=new Set,[i,r]=Tc(t,2);for(let s of e)if(s!=null)if(s===!0)n.add(r);else if(s===!1)n.add(i);else return;return[...n]}var Aw=new Map([["brbg",vg],["prgn",Mg],["piyg",wg],["puor",Eg],["rdbu",fc],["rdgy",Cg],["rdylbu",hc],["rdylgn",Pg],["spectral",Lg],["burd",e=>fc(1-e)],["buylrd",e=>hc(1-e)],["blues",r0],["greens",o0],["greys",l0],["purples",u0],["reds",h0],["oranges",p0],["turbo",b0],["viridis",dc],["magma",M0],["inferno",S0],["plasma",w0],["cividis",m0],["cubehelix",g0],["warm",y0],["cool",x0],["bugn",Ng],["bupu",Fg],["gnbu",Bg],["orrd",zg],["pubugn",Vg],["pubu",Wg],["purd",Xg],["rdpu",Yg],["ylgnbu",Jg],["ylgn",jg],["ylorbr",t0],["ylorrd",n0],["rainbow",_0],["sinebow",v0]]);function Na(e){let t=`${e}`.toLowerCase();if(!Aw.has(t))throw new Error(`unknown quantitative scheme: ${t}`);return Aw.get(t)}var dD=new Set(["brbg","prgn","piyg","puor","rdbu","rdgy","rdylbu","rdylgn","spectral","burd","buylrd"]);function Iw(e){return e!=null&&dD.has(`${e}`.toLowerCase())}var wy=e=>t=>e(1-t),Sy=[0,1],Lw=new Map([["number",We],["rgb",so],["hsl",Mb],["hcl",Tb],["lab",Sb]]);function Ty(e){let t=`${e}`.toLowerCase();if(!Lw.has(t))throw new Error(`unknown interpolator: ${t}`);return Lw.get(t)}function Fa(e,t,n,{type:i,nice:r,clamp:s,zero:o,domain:a=Gw(e,n),unknown:l,round:c,scheme:u,interval:h,range:f=ge.get(e)===Ao?yD(n,a):ge.get(e)===Co?xD(n,a):ge.get(e)===Ro?Sy:void 0,interpolate:d=ge.get(e)===ei?u==null&&f!==void 0?so:Na(u!==void 0?u:i==="cyclical"?"rainbow":"turbo"):c?zl:We,reverse:p}){if(a=Dw(a),h=mr(h,i),(i==="cyclical"||i==="sequential")&&(i="linear"),typeof d!="function"&&(d=Ty(d)),p=!!p,f!==void 0){let y=a.length,m=(f=Dw(f)).length;if(y!==m){if(d.length===1)throw new Error("invalid piecewise interpolator");d=ms(d,f),f=void 0}}if(d.length===1?(p&&(d=wy(d),p=!1),f===void 0&&(f=Float64Array.from(a,(y,m)=>m/(a.length-1)),f.length===2&&(f=Sy)),t.interpolate((f===Sy?ti:Ec)(d))):t.interpolate(d),o){let[y,m]=un(a);(y>0||m<0)&&(a=Ms(a),(zr(a)||1)===Math.sign(y)?a[0]=0:a[a.length-1]=0)}return p&&(a=ra(a)),t.domain(a).unknown(l),r&&(t.nice(pD(r,i)),a=t.domain()),f!==void 0&&t.range(f),s&&t.clamp(s),{type:i,domain:a,range:f,scale:t,interpolate:d,interval:h}}function Dw(e){return e=pr(e),e.length>=2?e:[e[0],e[0]]}function pD(e,t){return e===!0?void 0:typeof e=="number"?e:qS(e,t)}function Nw(e,t,n){return Fa(e,uc(),t,n)}function Uw(e,t,n){return Ey(e,t,{...n,exponent:.5})}function Ey(e,t,{exponent:n=1,...i}){return Fa(e,fg().exponent(n),t,{...i,type:"pow"})}function Fw(e,t,{base:n=10,domain:i=_D(t),...r}){return Fa(e,cg().base(n),t,{...r,domain:i})}function Ow(e,t,{constant:n=1,...i}){return Fa(e,ug().constant(n),t,i)}function Bw(e,t,{range:n,quantiles:i=n===void 0?5:(n=[...n]).length,n:r=i,scheme:s="rdylbu",domain:o=vD(t),unknown:a,interpolate:l,reverse:c}){return n===void 0&&(n=l!==void 0?Pn(l,r):ge.get(e)===ei?Tc(s,r):void 0),o.length>0&&(o=hg(o,n===void 0?{length:r}:n).quantiles()),$f(e,t,{domain:o,range:n,reverse:c,unknown:a})}function kw(e,t,{range:n,n:i=n===void 0?5:(n=[...n]).length,scheme:r="rdylbu",domain:s=Gw(e,t),unknown:o,interpolate:a,reverse:l}){let[c,u]=un(s),h;return n===void 0?(h=hs(c,u,i),h[0]<=c&&h.splice(0,1),h[h.length-1]>=u&&h.pop(),i=h.length+1,n=a!==void 0?Pn(a,i):ge.get(e)===ei?Tc(r,i):void 0):(h=Pn(We(c,u),i+1).slice(1,-1),c instanceof Date&&(h=h.map(f=>new Date(f)))),zr(pr(s))<0&&h.reverse(),$f(e,t,{domain:h,range:n,reverse:l,unknown:o})}function $f(e,t,{domain:n=[0],unknown:i,scheme:r="rdylbu",interpolate:s,range:o=s!==void 0?Pn(s,n.length+1):ge.get(e)===ei?Tc(r,n.length+1):void 0,reverse:a}){n=pr(n);let l=zr(n);if(!isNaN(l)&&!mD(n,l))throw new Error(`the ${e} scale has a non-monotonic domain`);return a&&(o=ra(o)),{type:"threshold",scale:dg(l<0?ra(n):n,o===void 0?[]:o).unknown(i),domain:n,range:o}}function mD(e,t){for(let n=1,i=e.length,r=e[0];n<i;++n){let s=Rr(r,r=e[n]);if(s!==0&&s!==t)return!1}return!0}function zw(e){return{type:"identity",scale:ow(ge.get(e))?lg():t=>t}}function Ua(e,t=X0){return e.length?[di(e,({value:n})=>n===void 0?n:di(n,t)),Rn(e,({value:n})=>n===void 0?n:Rn(n,t))]:[0,1]}function Gw(e,t){let n=ge.get(e);return(n===Ao||n===Ro||n===Co?gD:Ua)(t)}function gD(e){return[0,e.length?Rn(e,({value:t})=>t===void 0?t:Rn(t,X0)):1]}function yD(e,t){let n=e.find(({radius:o})=>o!==void 0);if(n!==void 0)return[0,n.radius];let i=Cr(e,.5,({value:o})=>o===void 0?NaN:Cr(o,.25,So)),r=t.map(o=>3*Math.sqrt(o/i)),s=30/Rn(r);return s<1?r.map(o=>o*s):r}function xD(e,t){let n=Fl(e,({value:s})=>s===void 0?NaN:Fl(s,Math.abs)),i=t.map(s=>12*s/n),r=60/Rn(i);return r<1?i.map(s=>s*r):i}function _D(e){for(let{value:t}of e)if(t!==void 0)for(let n of t){if(n>0)return Ua(e,So);if(n<0)return Ua(e,ba)}return[1,10]}function vD(e){let t=[];for(let{value:n}of e)if(n!==void 0)for(let i of n)t.push(i);return t}function Ec(e){return(t,n)=>i=>e(t+i*(n-t))}var Ay=0,Cy;function Vw(){let e=Ay;return Ay=0,Cy=void 0,e}function Yn(e){e!==Cy&&(Cy=e,console.warn(e),++Ay)}function Xf(e,t,n,i,{type:r,nice:s,clamp:o,domain:a=Ua(i),unknown:l,pivot:c=0,scheme:u,range:h,symmetric:f=!0,interpolate:d=ge.get(e)===ei?u==null&&h!==void 0?so:Na(u!==void 0?u:"rdbu"):We,reverse:p}){c=+c,a=pr(a);let[y,m]=a;if(a.length>2&&Yn(`Warning: the diverging ${e} scale domain contains extra elements.`),Rr(y,m)<0&&([y,m]=[m,y],p=!p),y=Math.min(y,c),m=Math.max(m,c),typeof d!="function"&&(d=Ty(d)),h!==void 0&&(d=d.length===1?Ec(d)(...h):ms(d,h)),p&&(d=wy(d)),f){let g=n.apply(c),_=g-n.apply(y),M=n.apply(m)-g;_<M?y=n.invert(g-M):_>M&&(m=n.invert(g+_))}return t.domain([y,c,m]).unknown(l).interpolator(d),o&&t.clamp(o),s&&t.nice(s),{type:r,domain:[y,m],pivot:c,interpolate:d,scale:t}}function Hw(e,t,n){return Xf(e,mg(),bD,t,n)}function Ww(e,t,n){return Ry(e,t,{...n,exponent:.5})}function Ry(e,t,{exponent:n=1,...i}){return Xf(e,xg().exponent(n=+n),wD(n),t,{...i,type:"diverging-pow"})}function $w(e,t,{base:n=10,pivot:i=1,domain:r=Ua(t,i<0?ba:So),...s}){return Xf(e,gg().base(n=+n),MD,t,{domain:r,pivot:i,...s})}function Xw(e,t,{constant:n=1,...i}){return Xf(e,yg().constant(n=+n),TD(n),t,i)}var bD={apply(e){return e},invert(e){return e}},MD={apply:Math.log,invert:Math.exp},SD={apply(e){return Math.sign(e)*Math.sqrt(Math.abs(e))},invert(e){return Math.sign(e)*(e*e)}};function wD(e){return e===.5?SD:{apply(t){return Math.sign(t)*Math.pow(Math.abs(t),e)},invert(t){return Math.sign(t)*Math.pow(Math.abs(t),1/e)}}}function TD(e){return{apply(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))},invert(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}}function qw(e,t,n,i){return Fa(e,t,n,i)}function Yw(e,t,n){return qw(e,TM(),t,n)}function Zw(e,t,n){return qw(e,EM(),t,n)}var Oa=Symbol("ordinal");function Kw(e,t,n,{type:i,interval:r,domain:s,range:o,reverse:a,hint:l}){return r=mr(r,i),s===void 0&&(s=nT(n,r,e)),(i==="categorical"||i===Oa)&&(i="ordinal"),a&&(s=ra(s)),s=t.domain(s).domain(),o!==void 0&&(typeof o=="function"&&(o=o(s)),t.range(o)),{type:i,domain:s,range:o,scale:t,hint:l,interval:r}}function jw(e,t,{type:n,interval:i,domain:r,range:s,scheme:o,unknown:a,...l}){i=mr(i,n),r===void 0&&(r=nT(t,i,e));let c;if(ge.get(e)===Ia)c=ED(t),s=s===void 0?AD(c):me(s,La);else if(ge.get(e)===ei&&(s===void 0&&(n==="ordinal"||n===Oa)&&(s=Pw(r,o),s!==void 0&&(o=void 0)),o===void 0&&s===void 0&&(o=n==="ordinal"?"turbo":"observable10"),o!==void 0))if(s!==void 0){let u=Na(o),h=s[0],f=s[1]-s[0];s=({length:d})=>Pn(p=>u(h+f*p),d)}else s=My(o);if(a===mf)throw new Error(`implicit unknown on ${e} scale is not supported`);return Kw(e,yf().unknown(a),t,{...l,type:n,domain:r,range:s,hint:c})}function Qw(e,t,{align:n=.5,padding:i=.5,...r}){return eT(_M().align(n).padding(i),t,r,e)}function tT(e,t,{align:n=.5,padding:i=.1,paddingInner:r=i,paddingOuter:s=e==="fx"||e==="fy"?0:i,...o}){return eT(va().align(n).paddingInner(r).paddingOuter(s),t,o,e)}function eT(e,t,n,i){let{round:r}=n;return r!==void 0&&e.round(r=!!r),e=Kw(i,e,t,n),e.round=r,e}function nT(e,t,n){let i=new er;for(let{value:r,domain:s}of e){if(s!==void 0)return s();if(r!==void 0)for(let o of r)i.add(o)}if(t!==void 0){let[r,s]=un(i).map(t.floor,t);return t.range(r,t.offset(s))}if(i.size>1e4&&ge.get(n)===Ai)throw new Error(`implicit ordinal domain of ${n} scale has more than 10,000 values`);return Qo(i,vn)}function Jw(e,t){let n;for(let{hint:i}of e){let r=i?.[t];if(r!==void 0){if(n===void 0)n=r;else if(n!==r)return}}return n}function ED(e){return{fill:Jw(e,"fill"),stroke:Jw(e,"stroke")}}function AD(e){return sn(e.fill)?nS:eS}function Ac(e,{label:t,inset:n=0,insetTop:i=n,insetRight:r=n,insetBottom:s=n,insetLeft:o=n,round:a,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,facet:{label:p=t}={},...y}={}){let m={};for(let[g,_]of e){let M=y[g],v=PD(g,_,{round:ge.get(g)===Ai?a:void 0,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,...M});if(v){let{label:S=g==="fx"||g==="fy"?p:t,percent:b,transform:x,inset:w,insetTop:A=w!==void 0?w:g==="y"?i:0,insetRight:C=w!==void 0?w:g==="x"?r:0,insetBottom:R=w!==void 0?w:g==="y"?s:0,insetLeft:D=w!==void 0?w:g==="x"?o:0}=M||{};if(x==null)x=void 0;else if(typeof x!="function")throw new Error("invalid scale transform; not a function");v.percent=!!b,v.label=S===void 0?CD(_,v):S,v.transform=x,g==="x"||g==="fx"?(v.insetLeft=+D,v.insetRight=+C):(g==="y"||g==="fy")&&(v.insetTop=+A,v.insetBottom=+R),m[g]=v}}return m}function Iy(e){let t={},n={scales:t};for(let[i,r]of Object.entries(e)){let{scale:s,type:o,interval:a,label:l}=r;t[i]=ND(r),n[i]=s,s.type=o,a!=null&&(s.interval=a),l!=null&&(s.label=l)}return n}function aT(e,t){let{x:n,y:i,fx:r,fy:s}=e,o=r||s?Yf(t):t;r&&iT(r,o),s&&rT(s,o);let a=r||s?Ly(e,t):t;n&&iT(n,a),i&&rT(i,a)}function CD(e=[],t){let n;for(let{label:i}of e)if(i!==void 0){if(n===void 0)n=i;else if(n!==i)return}if(n!==void 0)return!yr(t)&&t.percent&&(n=`${n} (%)`),{inferred:!0,toString:()=>n}}function lT(e){return Math.sign(zr(e.domain()))*Math.sign(zr(e.range()))}function Yf(e){let{marginTop:t,marginRight:n,marginBottom:i,marginLeft:r,width:s,height:o,facet:{marginTop:a,marginRight:l,marginBottom:c,marginLeft:u}}=e;return{marginTop:Math.max(t,a),marginRight:Math.max(n,l),marginBottom:Math.max(i,c),marginLeft:Math.max(r,u),width:s,height:o}}function Ly({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Yf(n);return{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:e?e.scale.bandwidth()+o+r:a,height:t?t.scale.bandwidth()+i+s:l,facet:{width:a,height:l}}}function iT(e,t){if(e.range===void 0){let{insetLeft:n,insetRight:i}=e,{width:r,marginLeft:s=0,marginRight:o=0}=t,a=s+n,l=r-o-i;e.range=[a,Math.max(a,l)],yr(e)||(e.range=uT(e)),e.scale.range(e.range)}cT(e)}function rT(e,t){if(e.range===void 0){let{insetTop:n,insetBottom:i}=e,{height:r,marginTop:s=0,marginBottom:o=0}=t,a=s+n,l=r-o-i;e.range=[Math.max(a,l),a],yr(e)?e.range.reverse():e.range=uT(e),e.scale.range(e.range)}cT(e)}function cT(e){e.round===void 0&&LD(e)&&RD(e)<=30&&e.scale.round(!0)}function RD({scale:e}){let t=e.domain().length,[n,i]=e.range(),r=e.paddingInner?e.paddingInner():1,s=e.paddingOuter?e.paddingOuter():e.padding(),o=t-r,a=Math.abs(i-n)/Math.max(1,o+s*2);return(a-Math.floor(a))*o}function uT(e){let t=e.scale.domain().length+Dy(e);if(!(t>2))return e.range;let[n,i]=e.range;return Array.from({length:t},(r,s)=>n+s/(t-1)*(i-n))}function PD(e,t=[],n={}){let i=ID(e,t,n);if(n.type===void 0&&n.domain===void 0&&n.range===void 0&&n.interval==null&&e!=="fx"&&e!=="fy"&&yr({type:i})){let r=t.map(({value:s})=>s).filter(s=>s!==void 0);r.some(Ue)?Yn(`Warning: some data associated with the ${e} scale are dates. Dates are typically associated with a "utc" or "time" scale rather than a "${Ba(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., d3.utcDay), or you can suppress this warning by setting the type of the ${e} scale to "${Ba(i)}".`):r.some(JS)?Yn(`Warning: some data associated with the ${e} scale are strings that appear to be dates (e.g., YYYY-MM-DD). If these strings represent dates, you should parse them to Date objects. Dates are typically associated with a "utc" or "time" scale rather than a "${Ba(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can suppress this warning by setting the type of the ${e} scale to "${Ba(i)}".`):r.some(KS)&&Yn(`Warning: some data associated with the ${e} scale are strings that appear to be numbers. If these strings represent numbers, you should parse or coerce them to numbers. Numbers are typically associated with a "linear" scale rather than a "${Ba(i)}" scale. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., 1 for integers), or you can suppress this warning by setting the type of the ${e} scale to "${Ba(i)}".`)}switch(n.type=i,i){case"diverging":case"diverging-sqrt":case"diverging-pow":case"diverging-log":case"diverging-symlog":case"cyclical":case"sequential":case"linear":case"sqrt":case"threshold":case"quantile":case"pow":case"log":case"symlog":n=qf(t,n,Dn);break;case"identity":switch(ge.get(e)){case Ai:n=qf(t,n,Dn);break;case Ia:n=qf(t,n,DD);break}break;case"utc":case"time":n=qf(t,n,ry);break}switch(i){case"diverging":return Hw(e,t,n);case"diverging-sqrt":return Ww(e,t,n);case"diverging-pow":return Ry(e,t,n);case"diverging-log":return $w(e,t,n);case"diverging-symlog":return Xw(e,t,n);case"categorical":case"ordinal":case Oa:return jw(e,t,n);case"cyclical":case"sequential":case"linear":return Nw(e,t,n);case"sqrt":return Uw(e,t,n);case"threshold":return $f(e,t,n);case"quantile":return Bw(e,t,n);case"quantize":return kw(e,t,n);case"pow":return Ey(e,t,n);case"log":return Fw(e,t,n);case"symlog":return Ow(e,t,n);case"utc":return Zw(e,t,n);case"time":return Yw(e,t,n);case"point":return Qw(e,t,n);case"band":return tT(e,t,n);case"identity":return zw(e);case void 0:return;default:throw new Error(`unknown scale type: ${i}`)}}function Ba(e){return typeof e=="symbol"?e.description:e}function sT(e){return typeof e=="string"?`${e}`.toLowerCase():e}var oT={toString:()=>"projection"};function ID(e,t,{type:n,domain:i,range:r,scheme:s,pivot:o,projection:a}){if(n=sT(n),e==="fx"||e==="fy")return"band";(e==="x"||e==="y")&&a!=null&&(n=oT);for(let u of t){let h=sT(u.type);if(h!==void 0){if(n===void 0)n=h;else if(n!==h)throw new Error(`scale incompatible with channel: ${n} !== ${h}`)}}if(n===oT)return;if(n!==void 0)return n;if(i===void 0&&!t.some(({value:u})=>u!==void 0))return;let l=ge.get(e);if(l===Ao)return"sqrt";if(l===Ro||l===Co)return"linear";if(l===Ia)return"ordinal";let c=(i??r)?.length;if(c<2||c>2)return Py(l);if(i!==void 0){if(ly(i))return Py(l);if(Ue(i))return"utc"}else{let u=t.map(({value:h})=>h).filter(h=>h!==void 0);if(u.some(ly))return Py(l);if(u.some(Ue))return"utc"}if(l===ei){if(o!=null||Iw(s))return"diverging";if(Rw(s))return"categorical"}return"linear"}function Py(e){switch(e){case Ai:return"point";case ei:return Oa;default:return"ordinal"}}function yr({type:e}){return e==="ordinal"||e==="point"||e==="band"||e===Oa}function Dy({type:e}){return e==="threshold"}function LD({type:e}){return e==="point"||e==="band"}function As(e){if(e===void 0)return!0;let t=e.domain(),n=e(t[0]);for(let i=1,r=t.length;i<r;++i)if(e(t[i])-n)return!1;return!0}function qf(e,{domain:t,...n},i){for(let r of e)r.value!==void 0&&(t===void 0&&(t=r.value?.domain),r.value=i(r.value));return{domain:t===void 0?t:i(t),...n}}function DD(e){return me(e,La)}function fT(e){return t=>{if(!ge.has(t=`${t}`))throw new Error(`unknown scale: ${t}`);return e[t]}}function ND({scale:e,type:t,domain:n,range:i,interpolate:r,interval:s,transform:o,percent:a,pivot:l}){if(t==="identity")return{type:"identity",apply:u=>u,invert:u=>u};let c=e.unknown?e.unknown():void 0;return{type:t,domain:Ms(n),...i!==void 0&&{range:Ms(i)},...o!==void 0&&{transform:o},...a&&{percent:a},...c!==void 0&&{unknown:c},...s!==void 0&&{interval:s},...r!==void 0&&{interpolate:r},...e.clamp&&{clamp:e.clamp()},...l!==void 0&&{pivot:l,symmetric:!1},...e.base&&{base:e.base()},...e.exponent&&{exponent:e.exponent()},...e.constant&&{constant:e.constant()},...e.align&&{align:e.align(),round:e.round()},...e.padding&&(e.paddingInner?{paddingInner:e.paddingInner(),paddingOuter:e.paddingOuter()}:{padding:e.padding()}),...e.bandwidth&&{bandwidth:e.bandwidth(),step:e.step()},apply:u=>e(u),...e.invert&&{invert:u=>e.invert(u)}}}function dT(e,t){let{fx:n,fy:i}=Ac(e,t),r=n?.scale.domain(),s=i?.scale.domain();return r&&s?mv(r,s).map(([o,a],l)=>({x:o,y:a,i:l})):r?r.map((o,a)=>({x:o,i:a})):s?s.map((o,a)=>({y:o,i:a})):void 0}function pT(e,{x:t,y:n}){return t&&=By(t),n&&=By(n),e.filter(t&&n?i=>t.has(i.x)&&n.has(i.y):t?i=>t.has(i.x):i=>n.has(i.y)).sort(t&&n?(i,r)=>t.get(i.x)-t.get(r.x)||n.get(i.y)-n.get(r.y):t?(i,r)=>t.get(i.x)-t.get(r.x):(i,r)=>n.get(i.y)-n.get(r.y))}function Jf(e,{fx:t,fy:n}){let i=Un(e),r=t?.value,s=n?.value;return t&&n?Pr(i,o=>(o.fx=r[o[0]],o.fy=s[o[0]],o),o=>r[o],o=>s[o]):t?Pr(i,o=>(o.fx=r[o[0]],o),o=>r[o]):Pr(i,o=>(o.fy=s[o[0]],o),o=>s[o])}function mT(e,t,{marginTop:n,marginLeft:i}){let r=e?({x:o})=>e(o)-i:()=>0,s=t?({y:o})=>t(o)-n:()=>0;return function(o){this.tagName==="svg"?(this.setAttribute("x",r(o)),this.setAttribute("y",s(o))):this.setAttribute("transform",`translate(${r(o)},${s(o)})`)}}function gT(e){let t=[],n=new Uint32Array(Di(e,i=>i.length));for(let i of e){let r=0;for(let s of e)i!==s&&(n.set(s,r),r+=s.length);t.push(n.slice(0,r))}return t}var UD=new Map([["top",Ny],["right",Oy],["bottom",Uy],["left",Fy],["top-left",Zf(Ny,Fy)],["top-right",Zf(Ny,Oy)],["bottom-left",Zf(Uy,Fy)],["bottom-right",Zf(Uy,Oy)],["top-empty",OD],["right-empty",zD],["bottom-empty",BD],["left-empty",kD],["empty",GD]]);function yT(e){if(e==null)return null;let t=UD.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid facet anchor: ${e}`)}var hT=new WeakMap;function By(e){let t=hT.get(e);return t||hT.set(e,t=new hi(me(e,(n,i)=>[n,i]))),t}function Cs(e,t){return By(e).get(t)}function FD(e,t,n){return t=Ti(t),n=Ti(n),e.find(i=>Object.is(Ti(i.x),t)&&Object.is(Ti(i.y),n))}function Kf(e,t,n){return FD(e,t,n)?.empty}function Ny(e,{y:t},{y:n}){return t?Cs(t,n)===0:!0}function Uy(e,{y:t},{y:n}){return t?Cs(t,n)===t.length-1:!0}function Fy(e,{x:t},{x:n}){return t?Cs(t,n)===0:!0}function Oy(e,{x:t},{x:n}){return t?Cs(t,n)===t.length-1:!0}function OD(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Cs(t,i);if(s>0)return Kf(e,n,t[s-1])}function BD(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Cs(t,i);if(s<t.length-1)return Kf(e,n,t[s+1])}function kD(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Cs(t,n);if(s>0)return Kf(e,t[s-1],i)}function zD(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Cs(t,n);if(s<t.length-1)return Kf(e,t[s+1],i)}function GD(e,t,{empty:n}){return n}function Zf(e,t){return function(){return e.apply(null,arguments)&&t.apply(null,arguments)}}function jf(e,{channels:{fx:t,fy:n},groups:i}){return t&&n?e.map(({x:r,y:s})=>i.get(r)?.get(s)??[]):t?e.map(({x:r})=>i.get(r)??[]):e.map(({y:r})=>i.get(r)??[])}var xT=Math.PI,Xr=2*xT,ky=.618;function _T({projection:e,inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={},o){if(e==null)return;if(typeof e.stream=="function")return e;let a,l,c="frame";if(Bi(e)){let S;if({type:e,domain:l,inset:S,insetTop:n=S!==void 0?S:n,insetRight:i=S!==void 0?S:i,insetBottom:r=S!==void 0?S:r,insetLeft:s=S!==void 0?S:s,clip:c=c,...a}=e,e==null)return}typeof e!="function"&&({type:e}=zy(e));let{width:u,height:h,marginLeft:f,marginRight:d,marginTop:p,marginBottom:y}=o,m=u-f-d-s-i,g=h-p-y-n-r;if(e=e?.({width:m,height:g,clip:c,...a}),e==null)return;c=VD(c,f,p,u-d,h-y);let _=f+s,M=p+n,v;if(l!=null){let[[S,b],[x,w]]=tc(e).bounds(l),A=Math.min(m/(x-S),g/(w-b));A>0?(_-=(A*(S+x)-m)/2,M-=(A*(b+w)-g)/2,v=ec({point(C,R){this.stream.point(C*A+_,R*A+M)}})):Yn("Warning: the projection could not be fit to the specified domain; using the default scale.")}return v??=_===0&&M===0?vT():ec({point(S,b){this.stream.point(S+_,b+M)}}),{stream:S=>e.stream(v.stream(c(S)))}}function zy(e){switch(`${e}`.toLowerCase()){case"albers-usa":return Gi(S1,.7463,.4673);case"albers":return Qf($m,.7463,.4673);case"azimuthal-equal-area":return Gi(E1,4,4);case"azimuthal-equidistant":return Gi(C1,Xr,Xr);case"conic-conformal":return Qf(I1,Xr,Xr);case"conic-equal-area":return Qf(Ql,6.1702,2.9781);case"conic-equidistant":return Qf(D1,7.312,3.6282);case"equal-earth":return Gi(U1,5.4133,2.6347);case"equirectangular":return Gi(L1,Xr,xT);case"gnomonic":return Gi(O1,3.4641,3.4641);case"identity":return{type:vT};case"reflect-y":return{type:HD};case"mercator":return Gi(R1,Xr,Xr);case"orthographic":return Gi(k1,2,2);case"stereographic":return Gi(G1,2,2);case"transverse-mercator":return Gi(H1,Xr,Xr);default:throw new Error(`unknown projection type: ${e}`)}}function VD(e,t,n,i,r){if(e===!1||e==null||typeof e=="number")return s=>s;if(e===!0&&(e="frame"),`${e}`.toLowerCase()==="frame")return Gm(t,n,i,r);throw new Error(`unknown projection clip type: ${e}`)}function Gi(e,t,n){return{type:({width:i,height:r,rotate:s,precision:o=.15,clip:a})=>{let l=e();return o!=null&&l.precision?.(o),s!=null&&l.rotate?.(s),typeof a=="number"&&l.clipAngle?.(a),i!=null&&(l.scale(Math.min(i/t,r/n)),l.translate([i/2,r/2])),l},aspectRatio:n/t}}function Qf(e,t,n){let{type:i,aspectRatio:r}=Gi(e,t,n);return{type:s=>{let{parallels:o,domain:a,width:l,height:c}=s,u=i(s);return o!=null&&(u.parallels(o),a===void 0&&l!=null&&u.fitSize([l,c],{type:"Sphere"})),u},aspectRatio:r}}var vT=ti({stream:e=>e}),HD=ti(ec({point(e,t){this.stream.point(e,-t)}}));function bT(e,t,n,i){let r=n[e],s=n[t],o=r.length,a=n[e]=new Float64Array(o).fill(NaN),l=n[t]=new Float64Array(o).fill(NaN),c,u=i.stream({point(h,f){a[c]=h,l[c]=f}});for(c=0;c<o;++c)u.point(r[c],s[c])}function MT({projection:e}={}){return e==null?!1:typeof e.stream=="function"?!0:(Bi(e)&&(e=e.type),e!=null)}function ST(e){if(typeof e?.stream=="function")return ky;if(Bi(e)){let t,n;if({domain:t,type:e,...n}=e,t!=null&&e!=null){let i=typeof e=="string"?zy(e).type:e,[[r,s],[o,a]]=tc(i({...n,width:100,height:100})).bounds(t),l=(a-s)/(o-r);return l&&isFinite(l)?l<.2?.2:l>5?5:l:ky}}if(e!=null){if(typeof e!="function"){let{aspectRatio:t}=zy(e);if(t)return t}return ky}}function wT(e){let t=[],n=[],i={scale:"x",value:t},r={scale:"y",value:n},s={point(o,a){t.push(o),n.push(a)},lineStart(){},lineEnd(){},polygonStart(){},polygonEnd(){},sphere(){}};for(let o of e.value)gs(o,s);return[i,r]}function TT({x:e,y:t}){if(e||t)return e??=n=>n,t??=n=>n,ec({point(n,i){this.stream.point(e(n),t(i))}})}function ka(e={}){let{document:t=typeof window<"u"?window.document:void 0,clip:n}=e;return{document:t,clip:Hf(n)}}function se(e,{document:t}){return Ni(sa(e).call(t.documentElement))}var th=Symbol("unset");function eh(e){return(e.length===1?WD:$D)(e)}function WD(e){let t,n=th;return i=>(Object.is(n,i)||(n=i,t=e(i)),t)}function $D(e){let t,n;return(...i)=>((n?.length!==i.length||n.some((r,s)=>!Object.is(r,i[s])))&&(n=i,t=e(...i)),t)}var XD=eh(e=>new Intl.NumberFormat(e)),T9=eh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{month:t}})),E9=eh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{weekday:t}}));function qD(e="en-US"){let t=XD(e);return n=>n!=null&&!isNaN(n)?t.format(n):void 0}function YD(e){return Nf(e,"Invalid Date")}function ZD(e="en-US"){let t=qD(e);return n=>(n instanceof Date?YD:typeof n=="number"?t:Fe)(n)}var xr=ZD();var fn=(typeof window<"u"?window.devicePixelRatio>1:typeof it>"u")?0:.5,JD=0;function AT(){return`plot-clip-${++JD}`}function CT(e,{title:t,href:n,ariaLabel:i,ariaDescription:r,ariaHidden:s,target:o,fill:a,fillOpacity:l,stroke:c,strokeWidth:u,strokeOpacity:h,strokeLinejoin:f,strokeLinecap:d,strokeMiterlimit:p,strokeDasharray:y,strokeDashoffset:m,opacity:g,mixBlendMode:_,imageFilter:M,paintOrder:v,pointerEvents:S,shapeRendering:b,channels:x},{ariaLabel:w,fill:A="currentColor",fillOpacity:C,stroke:R="none",strokeOpacity:D,strokeWidth:k,strokeLinecap:P,strokeLinejoin:L,strokeMiterlimit:z,paintOrder:U}){A===null&&(a=null,l=null),R===null&&(c=null,h=null),sn(A)?!sn(R)&&(!sn(a)||x?.fill)&&(R="none"):sn(R)&&(!sn(c)||x?.stroke)&&(A="none");let[Z,F]=Xn(a,A),[V,q]=Le(l,C),[st,lt]=Xn(c,R),[$,at]=Le(h,D),[ft,ot]=Le(g);Eo(lt)||(u===void 0&&(u=k),d===void 0&&(d=P),f===void 0&&(f=L),p===void 0&&!tw(f)&&(p=z),!Eo(F)&&v===void 0&&(v=U));let[rt,J]=Le(u);return A!==null&&(e.fill=De(F,"currentColor"),e.fillOpacity=Cc(q,1)),R!==null&&(e.stroke=De(lt,"none"),e.strokeWidth=Cc(J,1),e.strokeOpacity=Cc(at,1),e.strokeLinejoin=De(f,"miter"),e.strokeLinecap=De(d,"butt"),e.strokeMiterlimit=Cc(p,4),e.strokeDasharray=De(y,"none"),e.strokeDashoffset=De(m,"0")),e.target=Fe(o),e.ariaLabel=Fe(w),e.ariaDescription=Fe(r),e.ariaHidden=Fe(s),e.opacity=Cc(ot,1),e.mixBlendMode=De(_,"normal"),e.imageFilter=De(M,"none"),e.paintOrder=De(v,"normal"),e.pointerEvents=De(S,"auto"),e.shapeRendering=De(b,"auto"),{title:{value:t,optional:!0,filter:null},href:{value:n,optional:!0,filter:null},ariaLabel:{value:i,optional:!0,filter:null},fill:{value:Z,scale:"auto",optional:!0},fillOpacity:{value:V,scale:"auto",optional:!0},stroke:{value:st,scale:"auto",optional:!0},strokeOpacity:{value:$,scale:"auto",optional:!0},strokeWidth:{value:rt,optional:!0},opacity:{value:ft,scale:"auto",optional:!0}}}function KD(e,t){t&&e.filter(n=>mc(t[n])).append("title").call(QD,t)}function jD(e,t){t&&e.filter(([n])=>mc(t[n])).append("title").call(tN,t)}function QD(e,t){t&&e.text(n=>xr(t[n]))}function tN(e,t){t&&e.text(([n])=>xr(t[n]))}function bn(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",f=>i[f]),s&&Wt(e,"fill",f=>s[f]),o&&Wt(e,"fill-opacity",f=>o[f]),a&&Wt(e,"stroke",f=>a[f]),l&&Wt(e,"stroke-opacity",f=>l[f]),c&&Wt(e,"stroke-width",f=>c[f]),u&&Wt(e,"opacity",f=>u[f]),h&&RT(e,f=>h[f],t),n||KD(e,r)}function nh(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",([f])=>i[f]),s&&Wt(e,"fill",([f])=>s[f]),o&&Wt(e,"fill-opacity",([f])=>o[f]),a&&Wt(e,"stroke",([f])=>a[f]),l&&Wt(e,"stroke-opacity",([f])=>l[f]),c&&Wt(e,"stroke-width",([f])=>c[f]),u&&Wt(e,"opacity",([f])=>u[f]),h&&RT(e,([f])=>h[f],t),n||jD(e,r)}function eN({ariaLabel:e,title:t,fill:n,fillOpacity:i,stroke:r,strokeOpacity:s,strokeWidth:o,opacity:a,href:l},{tip:c}){return[e,c?void 0:t,n,i,r,s,o,a,l].filter(u=>u!==void 0)}function nN(e,t,n){let i=to(e,r=>t[r]);return n===void 0&&i.size>1+e.length>>1&&Yn("Warning: the implicit z channel has high cardinality. This may occur when the fill or stroke channel is associated with quantitative data rather than ordinal or categorical data. You can suppress this warning by setting the z option explicitly; if this data represents a single series, set z to null."),i.values()}function*ih(e,t,n,i){let{z:r}=n,{z:s}=i,o=eN(i,n),a=[...t,...o];for(let l of s?nN(e,s,r):[e]){let c,u;t:for(let h of l){for(let f of a)if(!wi(f[h])){u&&u.push(-1);continue t}if(c===void 0){u&&(yield u),c=o.map(f=>Ti(f[h])),u=[h];continue}u.push(h);for(let f=0;f<o.length;++f)if(Ti(o[f][h])!==c[f]){yield u,c=o.map(p=>Ti(p[h])),u=[h];continue t}}u&&(yield u)}}function iN(e,t,n,i){let r,{clip:s=i.clip}=t;s==="frame"?(e=se("svg:g",i).each(function(){this.appendChild(e.node()),e.node=()=>this}),r=sN(i,n)):s&&(r=aN(s,i)),Wt(e,"aria-label",t.ariaLabel),Wt(e,"aria-description",t.ariaDescription),Wt(e,"aria-hidden",t.ariaHidden),Wt(e,"clip-path",r)}function rN(e){let t=new WeakMap;return(n,i)=>{let r=t.get(n);if(!r){let s=AT();Ni(n.ownerSVGElement).append("clipPath").attr("id",s).call(e,n,i),t.set(n,r=`url(#${s})`)}return r}}var sN=rN((e,t,n)=>{let{width:i,height:r,marginLeft:s,marginRight:o,marginTop:a,marginBottom:l}=n;e.append("rect").attr("x",s).attr("y",a).attr("width",i-o-s).attr("height",r-a-l)}),ET=new WeakMap,oN={type:"Sphere"};function aN(e,t){let n,i;if((n=ET.get(t))||ET.set(t,n=new WeakMap),e.type==="Sphere"&&(e=oN),!(i=n.get(e))){let r=AT();Ni(t.ownerSVGElement).append("clipPath").attr("id",r).append("path").attr("d",t.path()(e)),n.set(e,i=`url(#${r})`)}return i}function Be(e,t,n,i){iN(e,t,n,i),Wt(e,"class",t.className),Wt(e,"fill",t.fill),Wt(e,"fill-opacity",t.fillOpacity),Wt(e,"stroke",t.stroke),Wt(e,"stroke-width",t.strokeWidth),Wt(e,"stroke-opacity",t.strokeOpacity),Wt(e,"stroke-linejoin",t.strokeLinejoin),Wt(e,"stroke-linecap",t.strokeLinecap),Wt(e,"stroke-miterlimit",t.strokeMiterlimit),Wt(e,"stroke-dasharray",t.strokeDasharray),Wt(e,"stroke-dashoffset",t.strokeDashoffset),Wt(e,"shape-rendering",t.shapeRendering),Wt(e,"filter",t.imageFilter),Wt(e,"paint-order",t.paintOrder);let{pointerEvents:r=i.pointerSticky===!1?"none":void 0}=t;Wt(e,"pointer-events",r)}function Ne(e,t){lN(e,"mix-blend-mode",t.mixBlendMode),Wt(e,"opacity",t.opacity)}function RT(e,t,n){e.each(function(i){let r=t(i);if(r!=null){let s=this.ownerDocument.createElementNS(ds.svg,"a");s.setAttribute("fill","inherit"),s.setAttributeNS(ds.xlink,"href",r),n!=null&&s.setAttribute("target",n),this.parentNode.insertBefore(s,this).appendChild(this)}})}function Wt(e,t,n){n!=null&&e.attr(t,n)}function lN(e,t,n){n!=null&&e.style(t,n)}function ke(e,t,{x:n,y:i},r=fn,s=fn){r+=t.dx,s+=t.dy,n?.bandwidth&&(r+=n.bandwidth()/2),i?.bandwidth&&(s+=i.bandwidth()/2),(r||s)&&e.attr("transform",`translate(${r},${s})`)}function De(e,t){if((e=Fe(e))!==t)return e}function Cc(e,t){if((e=Oe(e))!==t)return e}var cN=/^-?([_a-z]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])([_a-z0-9-]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])*$/i;function za(e){if(e===void 0)return"plot-d6a7b5";if(e=`${e}`,!cN.test(e))throw new Error(`invalid class name: ${e}`);return e}function Ga(e,t){if(typeof t=="string")e.property("style",t);else if(t!=null)for(let n of e)Object.assign(n.style,t)}function _r({frameAnchor:e},{width:t,height:n,marginTop:i,marginRight:r,marginBottom:s,marginLeft:o}){return[/left$/.test(e)?o:/right$/.test(e)?t-r:(o+t-r)/2,/^top/.test(e)?i:/^bottom/.test(e)?n-s:(i+n-s)/2]}var ye=class{constructor(t,n={},i={},r){let{facet:s="auto",facetAnchor:o,fx:a,fy:l,sort:c,dx:u=0,dy:h=0,margin:f=0,marginTop:d=f,marginRight:p=f,marginBottom:y=f,marginLeft:m=f,className:g,clip:_=r?.clip,channels:M,tip:v,render:S}=i;if(this.data=t,this.sort=Ss(c)?c:null,this.initializer=Vr(i).initializer,this.transform=this.initializer?i.transform:Po(i).transform,s===null||s===!1?this.facet=null:(this.facet=Nn(s===!0?"include":s,"facet",["auto","include","exclude","super"]),this.fx=t===Ta&&typeof a=="string"?[a]:a,this.fy=t===Ta&&typeof l=="string"?[l]:l),this.facetAnchor=yT(o),n=cy(n),M!==void 0&&(n={...uN(M),...n}),r!==void 0&&(n={...CT(this,i,r),...n}),this.channels=Object.fromEntries(Object.entries(n).map(([b,x])=>{if(Aa(x.value)){let{value:w,label:A=x.label,scale:C=x.scale}=x.value;x={...x,label:A,scale:C,value:w}}if(t===Ta&&typeof x.value=="string"){let{value:w}=x;x={...x,value:[w]}}return[b,x]}).filter(([b,{value:x,optional:w}])=>{if(x!=null)return!0;if(w)return!1;throw new Error(`missing channel value: ${b}`)})),this.dx=+u,this.dy=+h,this.marginTop=+d,this.marginRight=+p,this.marginBottom=+y,this.marginLeft=+m,this.clip=Hf(_),this.tip=fN(v),this.className=Fe(g),this.facet==="super"){if(a||l)throw new Error("super-faceting cannot use fx or fy");for(let b in this.channels){let{scale:x}=n[b];if(!(x!=="x"&&x!=="y"))throw new Error("super-faceting cannot use x or y")}}S!=null&&(this.render=Vy(S,this.render))}initialize(t,n,i){let r=Gr(this.data);t===void 0&&r!=null&&(t=[Un(r)]);let s=t;this.transform!=null&&({facets:t,data:r}=this.transform(r,t,i),r=Gr(r)),t!==void 0&&(t.original=s);let o=_w(this.channels,r);return this.sort!=null&&bw(r,t,o,n,this.sort),{data:r,facets:t,channels:o}}filter(t,n,i){for(let r in n){let{filter:s=wi}=n[r];if(s!==null){let o=i[r];t=t.filter(a=>s(o[a]))}}return t}project(t,n,i){for(let r in t)if(t[r].scale==="x"&&/^x|x$/.test(r)){let s=r.replace(/^x|x$/,"y");s in t&&t[s].scale==="y"&&bT(r,s,n,i.projection)}}scale(t,n,i){let r=vw(t,n);return i.projection&&this.project(t,r,i),r}};function Gy(...e){return e.plot=ye.prototype.plot,e}function Vy(e,t){if(e==null)return t===null?void 0:t;if(t==null)return e===null?void 0:e;if(typeof e!="function")throw new TypeError(`invalid render transform: ${e}`);if(typeof t!="function")throw new TypeError(`invalid render transform: ${t}`);return function(n,i,r,s,o,a){return e.call(this,n,i,r,s,o,(l,c,u,h,f)=>t.call(this,l,c,u,h,f,a))}}function uN(e){return Object.fromEntries(Object.entries(cy(e)).map(([t,n])=>(n=typeof n=="string"?{value:n,label:t}:gr(n),n.filter===void 0&&n.scale==null&&(n={...n,filter:null}),[t,n])))}function fN(e){return e===!0?"xy":e===!1||e==null?null:typeof e=="string"?Nn(e,"tip",["x","y","xy"]):e}function Io(e,t){return e?.tip===!0?{...e,tip:t}:Bi(e?.tip)&&e.tip.pointer===void 0?{...e,tip:{...e.tip,pointer:t}}:e}function IT(e,t,n={}){let i=.5-fn,r=.5+fn,s=.5+fn,o=.5-fn;for(let{marginTop:y,marginRight:m,marginBottom:g,marginLeft:_}of t)y>i&&(i=y),m>r&&(r=m),g>s&&(s=g),_>o&&(o=_);let{margin:a,marginTop:l=a!==void 0?a:i,marginRight:c=a!==void 0?a:r,marginBottom:u=a!==void 0?a:s,marginLeft:h=a!==void 0?a:o}=n;l=+l,c=+c,u=+u,h=+h;let{width:f=640,height:d=hN(e,n,{width:f,marginTopDefault:i,marginRightDefault:r,marginBottomDefault:s,marginLeftDefault:o})+Math.max(0,l-i+u-s)}=n;f=+f,d=+d;let p={width:f,height:d,marginTop:l,marginRight:c,marginBottom:u,marginLeft:h};if(e.fx||e.fy){let{margin:y,marginTop:m=y!==void 0?y:l,marginRight:g=y!==void 0?y:c,marginBottom:_=y!==void 0?y:u,marginLeft:M=y!==void 0?y:h}=n.facet??{};m=+m,g=+g,_=+_,M=+M,p.facet={marginTop:m,marginRight:g,marginBottom:_,marginLeft:M}}return p}function hN({x:e,y:t,fy:n,fx:i},{projection:r,aspectRatio:s},{width:o,marginTopDefault:a,marginRightDefault:l,marginBottomDefault:c,marginLeftDefault:u}){let h=n&&n.scale.domain().length||1,f=ST(r);if(f){let p=i?i.scale.domain().length:1,y=(1.1*h-.1)/(1.1*p-.1)*f,m=Math.max(.1,Math.min(10,y));return Math.round((o-u-l)*m+a+c)}let d=t?yr(t)?t.scale.domain().length||1:Math.max(7,17/h):1;if(s!=null){if(s=+s,!(isFinite(s)&&s>0))throw new Error(`invalid aspectRatio: ${s}`);let p=PT("y",t)/(PT("x",e)*s),y=i?i.scale.bandwidth():1,m=n?n.scale.bandwidth():1,g=y*(o-u-l)-e.insetLeft-e.insetRight;return(p*g+t.insetTop+t.insetBottom)/m+a+c}return!!(t||n)*Math.max(1,Math.min(60,d*h))*20+!!i*30+60}function PT(e,t){if(!t)throw new Error(`aspectRatio requires ${e} scale`);let{type:n,domain:i}=t,r;switch(n){case"linear":case"utc":case"time":r=Number;break;case"pow":{let a=t.scale.exponent();r=l=>Math.pow(l,a);break}case"log":r=Math.log;break;case"point":case"band":return i.length;default:throw new Error(`unsupported ${e} scale for aspectRatio: ${n}`)}let[s,o]=un(i);return Math.abs(r(o)-r(s))}var LT=new WeakMap;function Hy(e,t,{x:n,y:i,px:r,py:s,maxRadius:o=40,channels:a,render:l,...c}={}){return o=+o,r!=null&&(n??=null,a={...a,px:{value:r,scale:"x"}}),s!=null&&(i??=null,a={...a,py:{value:s,scale:"y"}}),{x:n,y:i,channels:a,...c,render:Vy(function(u,h,f,d,p,y){p={...p,pointerSticky:!1};let m=p.ownerSVGElement,{data:g}=p.getMarkState(this),_=LT.get(m);_||LT.set(m,_={sticky:!1,roots:[],renders:[]});let M=_.renders.push(lt)-1,{x:v,y:S,fx:b,fy:x}=h,w=b?b(u.fx)-d.marginLeft:0,A=x?x(u.fy)-d.marginTop:0;v?.bandwidth&&(w+=v.bandwidth()/2),S?.bandwidth&&(A+=S.bandwidth()/2);let C=u.fi!=null,R;if(C){let ot=_.facetStates;ot||(_.facetStates=ot=new Map),R=ot.get(this),R||ot.set(this,R=new Map)}let[D,k]=_r(this,d),{px:P,py:L}=f,z=P?ot=>P[ot]:$y(f,D),U=L?ot=>L[ot]:Xy(f,k),Z,F,V,q;function st(ot,rt){if(C)if(q&&(q=cancelAnimationFrame(q)),ot==null)R.delete(u.fi);else{R.set(u.fi,rt),q=requestAnimationFrame(()=>{q=null;for(let[J,gt]of R)if(gt<rt||gt===rt&&J<u.fi){ot=null;break}lt(ot)});return}lt(ot)}function lt(ot){if(Z===ot&&V===_.sticky)return;Z=ot,V=p.pointerSticky=_.sticky;let rt=Z==null?[]:[Z];C&&(rt.fx=u.fx,rt.fy=u.fy,rt.fi=u.fi);let J=y(rt,h,f,d,p);if(F){if(C){let gt=F.parentNode,ct=F.getAttribute("transform"),K=J.getAttribute("transform");ct?J.setAttribute("transform",ct):J.removeAttribute("transform"),K?gt.setAttribute("transform",K):gt.removeAttribute("transform"),J.removeAttribute("aria-label"),J.removeAttribute("aria-description"),J.removeAttribute("aria-hidden")}F.replaceWith(J)}if(_.roots[M]=F=J,!(Z==null&&R?.size>1)){let gt=Z==null?null:Oi(g)?g[Z]:g.get(Z);p.dispatchValue(gt)}return J}function $(ot){if(_.sticky||ot.pointerType==="mouse"&&ot.buttons===1)return;let[rt,J]=Wv(ot);rt-=w,J-=A;let gt=rt<d.marginLeft||rt>d.width-d.marginRight?1:e,ct=J<d.marginTop||J>d.height-d.marginBottom?1:t,K=null,It=o*o;for(let pt of u){let Ot=gt*(z(pt)-rt),Ht=ct*(U(pt)-J),le=Ot*Ot+Ht*Ht;le<=It&&(K=pt,It=le)}if(K!=null&&(e!==1||t!==1)){let pt=z(K)-rt,Ot=U(K)-J;It=pt*pt+Ot*Ot}st(K,It)}function at(ot){ot.pointerType==="mouse"&&Z!=null&&(_.sticky&&_.roots.some(rt=>rt?.contains(ot.target))||(_.sticky?(_.sticky=!1,_.renders.forEach(rt=>rt(null))):(_.sticky=!0,lt(Z)),ot.stopImmediatePropagation()))}function ft(ot){ot.pointerType==="mouse"&&(_.sticky||st(null))}return m.addEventListener("pointerenter",$),m.addEventListener("pointermove",$),m.addEventListener("pointerdown",at),m.addEventListener("pointerleave",ft),lt(null)},l)}}function DT(e){return Hy(1,1,e)}function NT(e){return Hy(1,.01,e)}function Wy(e){return Hy(.01,1,e)}function $y({x1:e,x2:t,x:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function Xy({y1:e,y2:t,y:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function rh(e){return yr(e)&&e.interval===void 0?void 0:"tabular-nums"}function UT(e,t){let{label:n=e.label,tickSize:i=6,width:r=240,height:s=44+i,marginTop:o=18,marginRight:a=0,marginBottom:l=16+i,marginLeft:c=0,style:u,ticks:h=(r-c-a)/64,tickFormat:f,fontVariant:d=rh(e),round:p=!0,opacity:y,className:m}=t,g=ka(t);m=za(m),y=Le(y)[1],f===null&&(f=()=>null);let _=se("svg",g).attr("class",`${m}-ramp`).attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("width",r).attr("height",s).attr("viewBox",`0 0 ${r} ${s}`).call(D=>D.append("style").text(`:where(.${m}-ramp) {
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
  overflow: visible;
}
:where(.${m}-ramp text) {
  white-space: pre;
}`)).call(Ga,u),M=D=>D.selectAll(".tick line").attr("y1",o+l-s),v,S=p?(D,k)=>D.rangeRound(k):(D,k)=>D.range(k),{type:b,domain:x,range:w,interpolate:A,scale:C,pivot:R}=e;if(A){let D=w===void 0?A:ms(A.length===1?Ec(A):A,w);v=S(C.copy(),Pn(We(c,r-a),Math.min(x.length+(R!==void 0),w===void 0?1/0:w.length)));let k=256,P=g.document.createElement("canvas");P.width=k,P.height=1;let L=P.getContext("2d");for(let z=0,U=k-1;z<k;++z)L.fillStyle=D(z/U),L.fillRect(z,0,1,1);_.append("image").attr("opacity",y).attr("x",c).attr("y",o).attr("width",r-c-a).attr("height",s-o-l).attr("preserveAspectRatio","none").attr("xlink:href",P.toDataURL())}else if(b==="threshold"){let D=x,k=f===void 0?P=>P:typeof f=="string"?rr(f):f;v=S(uc().domain([-1,w.length-1]),[c,r-a]),_.append("g").attr("fill-opacity",y).selectAll().data(w).enter().append("rect").attr("x",(P,L)=>v(L-1)).attr("y",o).attr("width",(P,L)=>v(L)-v(L-1)).attr("height",s-o-l).attr("fill",P=>P),h=me(D,(P,L)=>L),f=P=>k(D[P],P)}else v=S(va().domain(x),[c,r-a]),_.append("g").attr("fill-opacity",y).selectAll().data(x).enter().append("rect").attr("x",v).attr("y",o).attr("width",Math.max(0,v.bandwidth()-1)).attr("height",s-o-l).attr("fill",C),M=()=>{};return _.append("g").attr("transform",`translate(0,${s-l})`).call(Lv(v).ticks(Array.isArray(h)?null:h,typeof f=="string"?f:void 0).tickFormat(typeof f=="function"?f:void 0).tickSize(i).tickValues(Array.isArray(h)?h:null)).attr("font-size",null).attr("font-family",null).attr("font-variant",De(d,"normal")).call(M).call(D=>D.select(".domain").remove()),n!==void 0&&_.append("text").attr("x",c).attr("y",o-6).attr("fill","currentColor").attr("font-weight","bold").text(n),_.node()}var qy=Math.PI/180;function Lo(e,{marker:t,markerStart:n=t,markerMid:i=t,markerEnd:r=t}={}){e.markerStart=Yy(n),e.markerMid=Yy(i),e.markerEnd=Yy(r)}function Yy(e){if(e==null||e===!1)return null;if(e===!0)return OT;if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"none":return null;case"arrow":return FT("auto");case"arrow-reverse":return FT("auto-start-reverse");case"dot":return dN;case"circle":case"circle-fill":return OT;case"circle-stroke":return pN;case"tick":return Zy("auto");case"tick-x":return Zy(90);case"tick-y":return Zy(0)}throw new Error(`invalid marker: ${e}`)}function FT(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("orient",e).attr("fill","none").attr("stroke",t).attr("stroke-width",1.5).attr("stroke-linecap","round").attr("stroke-linejoin","round").call(i=>i.append("path").attr("d","M-1.5,-3l3,3l-3,3")).node()}function dN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","none").call(n=>n.append("circle").attr("r",2.5)).node()}function OT(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","var(--plot-background)").attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function pN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill","var(--plot-background)").attr("stroke",e).attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function Zy(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-3 -3 6 6").attr("markerWidth",6).attr("markerHeight",6).attr("orient",e).attr("stroke",t).call(i=>i.append("path").attr("d","M0,-3v6")).node()}var mN=0;function Rc(e,t,{stroke:n},i){return zT(e,t,n&&(r=>n[r]),null,i)}function BT(e,t,{stroke:n,z:i},r){return zT(e,t,n&&(([s])=>n[s]),i,r)}var Jy=1,kT=2;function gN(e,t){let n=new Uint8Array(t.length),i=e.data().filter(s=>s.length>1),r=i.length;for(let s=0,o=th;s<r;++s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ti(t[l]))&&(n[l]|=Jy)}}for(let s=r-1,o=th;s>=0;--s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ti(t[l]))&&(n[l]|=kT)}}return([s])=>n[s]}function zT(e,{markerStart:t,markerMid:n,markerEnd:i,stroke:r},s=()=>r,o,a){if(!t&&!n&&!i)return;let l=new Map,c=o&&gN(e,o);function u(h,f,d){return function(p){if(d&&!d(p))return;let y=s(p),m=l.get(f);m||l.set(f,m=new Map);let g=m.get(y);if(!g){let _=this.parentNode.insertBefore(f(y,a),this),M=`plot-marker-${++mN}`;_.setAttribute("id",M),m.set(y,g=`url(#${M})`)}this.setAttribute(h,g)}}t&&e.each(u("marker-start",t,c&&(h=>c(h)&Jy))),n&&c&&e.each(u("marker-start",n,h=>!(c(h)&Jy))),n&&e.each(u("marker-mid",n)),i&&e.each(u("marker-end",i,c&&(h=>c(h)&kT)))}function Va({inset:e,insetLeft:t,insetRight:n,...i}={}){return[t,n]=GT(e,t,n),{inset:e,insetLeft:t,insetRight:n,...i}}function Pc({inset:e,insetTop:t,insetBottom:n,...i}={}){return[t,n]=GT(e,t,n),{inset:e,insetTop:t,insetBottom:n,...i}}function GT(e,t,n){return e===void 0&&t===void 0&&n===void 0?fn?[1,0]:[.5,.5]:[t,n]}function VT(e,{interval:t}){return e={...gr(e)},e.interval=kf(e.interval===void 0?t:e.interval),e}function sh(e,t,n,i){let{[e]:r,[`${e}1`]:s,[`${e}2`]:o}=n,{value:a,interval:l}=VT(r,n);if(a==null||l==null&&!i)return n;let c=zi(r);if(l==null){let d,p={transform:y=>d||(d=Te(y,a)),label:c};return{...n,[e]:void 0,[`${e}1`]:s===void 0?p:s,[`${e}2`]:o===void 0&&!(s===o&&i)?p:o}}let u,h;function f(d){return h!==void 0&&d===u?h:h=me(Te(u=d,a),p=>l.floor(p))}return t({...n,[e]:void 0,[`${e}1`]:s===void 0?{transform:f,label:c}:s,[`${e}2`]:o===void 0?{transform:d=>f(d).map(p=>l.offset(p)),label:c}:o})}function HT(e,t,n){let{[e]:i}=n,{value:r,interval:s}=VT(i,n);return r==null||s==null?n:t({...n,[e]:{label:zi(i),transform:o=>{let a=me(Te(o,r),c=>s.floor(c)),l=a.map(c=>s.offset(c));return a.map(Ue(a)?(c,u)=>c==null||isNaN(c=+c)||(u=l[u],u==null)||isNaN(u=+u)?void 0:new Date((c+u)/2):(c,u)=>c==null||(u=l[u],u==null)?NaN:(+c+ +u)/2)}}})}function WT(e={}){return sh("x",Va,e,!0)}function $T(e={}){return sh("y",Pc,e,!0)}function XT(e={}){return sh("x",Va,e)}function qT(e={}){return sh("y",Pc,e)}function YT(e={}){return HT("x",Va,e)}function ZT(e={}){return HT("y",Pc,e)}var JT={ariaLabel:"rule",fill:null,stroke:"currentColor"},oh=class extends ye{constructor(t,n={}){let{x:i,y1:r,y2:s,inset:o=0,insetTop:a=o,insetBottom:l=o}=n;super(t,{x:{value:i,scale:"x",optional:!0},y1:{value:r,scale:"y",optional:!0},y2:{value:s,scale:"y",optional:!0}},Io(n,"x"),JT),this.insetTop=Oe(a),this.insetBottom=Oe(l),Lo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y1:c,y2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:m}=r,{insetTop:g,insetBottom:_}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o},fn,0).call(M=>M.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",l?v=>l[v]:(y+h-p)/2).attr("x2",l?v=>l[v]:(y+h-p)/2).attr("y1",c&&!As(a)?v=>c[v]+g:d+g).attr("y2",u&&!As(a)?a.bandwidth?v=>u[v]+a.bandwidth()-_:v=>u[v]-_:f-m-_).call(bn,this,i).call(Rc,this,i,s)).node()}},ah=class extends ye{constructor(t,n={}){let{x1:i,x2:r,y:s,inset:o=0,insetRight:a=o,insetLeft:l=o}=n;super(t,{y:{value:s,scale:"y",optional:!0},x1:{value:i,scale:"x",optional:!0},x2:{value:r,scale:"x",optional:!0}},Io(n,"y"),JT),this.insetRight=Oe(a),this.insetLeft=Oe(l),Lo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{y:l,x1:c,x2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:m}=r,{insetLeft:g,insetRight:_}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{y:l&&a},0,fn).call(M=>M.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",c&&!As(o)?v=>c[v]+g:y+g).attr("x2",u&&!As(o)?o.bandwidth?v=>u[v]+o.bandwidth()-_:v=>u[v]-_:h-p-_).attr("y1",l?v=>l[v]:(d+f-m)/2).attr("y2",l?v=>l[v]:(d+f-m)/2).call(bn,this,i).call(Rc,this,i,s)).node()}};function Ic(e,t){let{x:n=Ae,y:i,y1:r,y2:s,...o}=qT(t);return[r,s]=KT(i,r,s),new oh(e,{...o,x:n,y1:r,y2:s})}function Do(e,t){let{y:n=Ae,x:i,x1:r,x2:s,...o}=XT(t);return[r,s]=KT(i,r,s),new ah(e,{...o,y:n,x1:r,x2:s})}function KT(e,t,n){if(e==null){if(t===void 0){if(n!==void 0)return[0,n]}else if(n===void 0)return[0,t]}else{if(t===void 0)return n===void 0?[0,e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}function Ha(e,...t){let n=t.length;for(let i=0,r=!0;i<n;++i)typeof t[i]!="function"&&(r&&(e=e.slice(),r=!1),e.splice(i,2,e[i]+t[i]+e[i+1]),t.splice(i,1),--i,--n);return i=>{let r=e[0];for(let s=0;s<n;++s)r+=t[s](i)+e[s+1];return r}}var yN={ariaLabel:"text",strokeLinejoin:"round",strokeWidth:3,paintOrder:"stroke"},nE="­",Wa=class extends ye{constructor(t,n={}){let{x:i,y:r,text:s=qn(t)&&zf(t)?Ae:To,frameAnchor:o,textAnchor:a=/right$/i.test(o)?"end":/left$/i.test(o)?"start":"middle",lineAnchor:l=/^top/i.test(o)?"top":/^bottom/i.test(o)?"bottom":"middle",lineHeight:c=1,lineWidth:u=1/0,textOverflow:h,monospace:f,fontFamily:d=f?"ui-monospace, monospace":void 0,fontSize:p,fontStyle:y,fontVariant:m,fontWeight:g,rotate:_}=n,[M,v]=Le(_,0),[S,b]=bN(p);if(super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},fontSize:{value:S,optional:!0},rotate:{value:ZS(M),optional:!0},text:{value:s,filter:mc,optional:!0}},n,yN),this.rotate=v,this.textAnchor=De(a,"middle"),this.lineAnchor=Nn(l,"lineAnchor",["top","middle","bottom"]),this.lineHeight=+c,this.lineWidth=+u,this.textOverflow=jy(h),this.monospace=!!f,this.fontFamily=Fe(d),this.fontSize=b,this.fontStyle=Fe(y),this.fontVariant=Fe(m),this.fontWeight=Fe(g),this.frameAnchor=Es(o),!(this.lineWidth>=0))throw new Error(`invalid lineWidth: ${u}`);this.splitLines=nx(this),this.clipLine=ix(this)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,rotate:u,text:h,title:f,fontSize:d}=i,{rotate:p}=this,[y,m]=_r(this,r);return se("svg:g",s).call(Be,this,r,s).call(ex,this,h,r).call(ke,this,{x:l&&o,y:c&&a}).call(g=>g.selectAll().data(t).enter().append("text").call(Ne,this).call(xN,this,h,f).attr("transform",Ha`translate(${l?_=>l[_]:y},${c?_=>c[_]:m})${u?_=>` rotate(${u[_]})`:p?` rotate(${p})`:""}`).call(Wt,"font-size",d&&(_=>d[_])).call(bn,this,i)).node()}};function jy(e){return e==null?null:Nn(e,"textOverflow",["clip","ellipsis","clip-start","clip-end","ellipsis-start","ellipsis-middle","ellipsis-end"]).replace(/^(clip|ellipsis)$/,"$1-end")}function xN(e,t,n,i){if(!n)return;let{lineAnchor:r,lineHeight:s,textOverflow:o,splitLines:a,clipLine:l}=t;e.each(function(c){let u=a(xr(n[c])??"").map(l),h=u.length,f=r==="top"?.71:r==="bottom"?1-h:(164-h*100)/200;if(h>1){let d=0;for(let p=0;p<h;++p){if(++d,!u[p])continue;let y=this.ownerDocument.createElementNS(ds.svg,"tspan");y.setAttribute("x",0),p===d-1?y.setAttribute("y",`${(f+p)*s}em`):y.setAttribute("dy",`${d*s}em`),y.textContent=u[p],this.appendChild(y),d=0}}else f&&this.setAttribute("y",`${f*s}em`),this.textContent=u[0];if(o&&!i&&u[0]!==n[c]){let d=this.ownerDocument.createElementNS(ds.svg,"title");d.textContent=n[c],this.appendChild(d)}})}function $a(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=ki(t,n)),new Wa(e,{...i,x:t,y:n})}function Qy(e,{x:t=Ae,...n}={}){return new Wa(e,ZT({...n,x:t}))}function tx(e,{y:t=Ae,...n}={}){return new Wa(e,YT({...n,y:t}))}function ex(e,t,n){Wt(e,"text-anchor",t.textAnchor),Wt(e,"font-family",t.fontFamily),Wt(e,"font-size",t.fontSize),Wt(e,"font-style",t.fontStyle),Wt(e,"font-variant",t.fontVariant===void 0?_N(n):t.fontVariant),Wt(e,"font-weight",t.fontWeight)}function _N(e){return e&&(jS(e)||Ue(e))?"tabular-nums":void 0}var vN=new Set(["inherit","initial","revert","unset","xx-small","x-small","small","medium","large","x-large","xx-large","xxx-large","larger","smaller"]);function bN(e){return e==null||typeof e=="number"?[void 0,e]:typeof e!="string"?[e,void 0]:(e=e.trim().toLowerCase(),vN.has(e)||/^[+-]?\d*\.?\d+(e[+-]?\d+)?(\w*|%)$/.test(e)?[void 0,e]:[e,void 0])}function MN(e,t,n){let i=[],r,s=0;for(let[o,a,l]of SN(e)){if(r===void 0&&(r=o),s>r&&n(e,r,a)>t&&(i.push(e.slice(r,s)+(e[s-1]===nE?"-":"")),r=o),l){i.push(e.slice(r,a)),r=void 0;continue}s=a}return i}function*SN(e){let t=0,n=0,i=e.length;for(;n<i;){let r=1;switch(e[n]){case nE:case"-":++n,yield[t,n,!1],t=n;break;case" ":for(yield[t,n,!1];e[++n]===" ";);t=n;break;case"\r":e[n+1]===`
`&&++r;case`
`:yield[t,n,!0],n+=r,t=n;break;default:++n;break}}yield[t,n,!0]}var jT={a:56,b:63,c:57,d:63,e:58,f:37,g:62,h:60,i:26,j:26,k:55,l:26,m:88,n:60,o:60,p:62,q:62,r:39,s:54,t:38,u:60,v:55,w:79,x:54,y:55,z:55,A:69,B:67,C:73,D:74,E:61,F:58,G:76,H:75,I:28,J:55,K:67,L:58,M:89,N:75,O:78,P:65,Q:78,R:67,S:65,T:65,U:75,V:69,W:98,X:69,Y:67,Z:67,0:64,1:48,2:62,3:64,4:66,5:63,6:65,7:58,8:65,9:65," ":29,"!":32,'"':49,"'":31,"(":39,")":39,",":31,"-":48,".":31,"/":32,":":31,";":31,"?":52,"‘":31,"’":31,"“":47,"”":47,"…":82};function lh(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Xa(e,r))i+=jT[e[r]]??(rE(e,r)?120:jT.e);return i}function ch(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Xa(e,r))i+=rE(e,r)?126:63;return i}function nx({monospace:e,lineWidth:t,textOverflow:n}){if(n!=null||t==1/0)return s=>s.split(/\r\n?|\n/g);let i=e?ch:lh,r=t*100;return s=>MN(s,r,i)}function ix({monospace:e,lineWidth:t,textOverflow:n}){if(n==null||t==1/0)return s=>s;let i=e?ch:lh,r=t*100;switch(n){case"clip-start":return s=>tE(s,r,i,"");case"clip-end":return s=>QT(s,r,i,"");case"ellipsis-start":return s=>tE(s,r,i,No);case"ellipsis-middle":return s=>wN(s,r,i,No);case"ellipsis-end":return s=>QT(s,r,i,No)}}var No="…";function Uo(e,t,n,i){let r=[],s=0;for(let o=0,a=0,l=e.length;o<l;o=a){a=Xa(e,o);let c=n(e,o,a);if(s+c>t){for(s+=i;s>t&&o>0;)a=o,o=r.pop(),s-=n(e,o,a);return[o,t-s]}s+=c,r.push(o)}return[-1,0]}function QT(e,t,n,i){e=e.trim();let r=n(i),[s]=Uo(e,t,n,r);return s<0?e:e.slice(0,s).trimEnd()+i}function wN(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i)/2,[o,a]=Uo(e,t/2,n,s),[l]=Uo(e,r-t/2-a+s,n,-s);return l<0?i:e.slice(0,o).trimEnd()+i+e.slice(Xa(e,l)).trimStart()}function tE(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i),[o]=Uo(e,r-t+s,n,-s);return o<0?i:i+e.slice(Xa(e,o)).trimStart()}var Ky=/[\p{Combining_Mark}\p{Emoji_Modifier}]+/uy,eE=/\p{Extended_Pictographic}/uy;function Xa(e,t){return t+=TN(e,t)?2:1,AN(e,t)&&(t=Ky.lastIndex),EN(e,t)?Xa(e,t+1):t}function iE(e,t){return e.charCodeAt(t)<128}function TN(e,t){let n=e.charCodeAt(t);if(n>=55296&&n<56320){let i=e.charCodeAt(t+1);return i>=56320&&i<57344}return!1}function EN(e,t){return e.charCodeAt(t)===8205}function AN(e,t){return iE(e,t)?!1:(Ky.lastIndex=t,Ky.test(e))}function rE(e,t){return iE(e,t)?!1:(eE.lastIndex=t,eE.test(e))}var CN={ariaLabel:"vector",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinejoin:"round",strokeLinecap:"round"},sE=3.5,RN=sE*5,oE={draw(e,t,n){let i=t*n/RN;e.moveTo(0,0),e.lineTo(0,-t),e.moveTo(-i,i-t),e.lineTo(0,-t),e.lineTo(i,i-t)}},PN={draw(e,t,n){e.moveTo(-n,0),e.lineTo(0,-t),e.lineTo(n,0)}},IN=new Map([["arrow",oE],["spike",PN]]);function LN(e){return e&&typeof e.draw=="function"}function DN(e){if(LN(e))return e;let t=IN.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid shape: ${e}`)}var uh=class extends ye{constructor(t,n={}){let{x:i,y:r,r:s=sE,length:o,rotate:a,shape:l=oE,anchor:c="middle",frameAnchor:u}=n,[h,f]=Le(o,12),[d,p]=Le(a,0);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},length:{value:h,scale:"length",optional:!0},rotate:{value:d,optional:!0}},n,CN),this.r=+s,this.length=f,this.rotate=p,this.shape=DN(l),this.anchor=Nn(c,"anchor",["start","middle","end"]),this.frameAnchor=Es(u)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,length:u,rotate:h}=i,{length:f,rotate:d,anchor:p,shape:y,r:m}=this,[g,_]=_r(this,r);return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(M=>M.selectAll().data(t).enter().append("path").call(Ne,this).attr("transform",Ha`translate(${l?v=>l[v]:g},${c?v=>c[v]:_})${h?v=>` rotate(${h[v]})`:d?` rotate(${d})`:""}${p==="start"?"":p==="end"?u?v=>` translate(0,${u[v]})`:` translate(0,${f})`:u?v=>` translate(0,${u[v]/2})`:` translate(0,${f/2})`}`).attr("d",u?v=>{let S=mi();return y.draw(S,u[v],m),S}:(()=>{let v=mi();return y.draw(v,f,m),v})()).call(bn,this,i)).node()}};function aE(e,t={}){let{x:n=Ae,...i}=t;return new uh(e,{...i,x:n})}function lE(e,t={}){let{y:n=Ae,...i}=t;return new uh(e,{...i,y:n})}function Rs(e,t){return arguments.length<2&&!qn(e)&&(t=e,e=null),t===void 0&&(t={}),[e,t]}function fh({anchor:e}={},t){return e===void 0?t[0]:Nn(e,"anchor",t)}function cE(e){return fh(e,["left","right"])}function uE(e){return fh(e,["right","left"])}function fE(e){return fh(e,["bottom","top"])}function hE(e){return fh(e,["top","bottom"])}function sx(){let[e,t]=Rs(...arguments);return mE("y",cE(t),e,t)}function dE(){let[e,t]=Rs(...arguments);return mE("fy",uE(t),e,t)}function ox(){let[e,t]=Rs(...arguments);return gE("x",fE(t),e,t)}function pE(){let[e,t]=Rs(...arguments);return gE("fx",hE(t),e,t)}function mE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="y"?6:0,tickPadding:y,tickRotate:m,x:g,margin:_,marginTop:M=_===void 0?20:_,marginRight:v=_===void 0?t==="right"?40:0:_,marginBottom:S=_===void 0?20:_,marginLeft:b=_===void 0?t==="left"?40:0:_,label:x,labelAnchor:w,labelArrow:A,labelOffset:C,ariaLabel:R=`${e}-axis`,...D}){return p=Oe(p),y=Oe(y),m=Oe(m),w!==void 0&&(w=Nn(w,"labelAnchor",["center","top","bottom"])),A=CE(A),Gy(p&&!sn(s)?NN(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:m,x:g,ariaLabel:R,...D}):null,sn(l)?null:FN(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:m,x:g,marginTop:M,marginRight:v,marginBottom:S,marginLeft:b,ariaLabel:R,...D}),!sn(l)&&x!==null?$a([],wE({fill:l,fillOpacity:c,...D},function(k,P,L,z,U){let Z=z[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="y"&&U.inset||U,lt=w??(Z.bandwidth?"center":"top"),$=C??(t==="right"?V:st)-3;return lt==="center"?(this.textAnchor=void 0,this.lineAnchor=t==="right"?"bottom":"top",this.frameAnchor=t,this.rotate=-90):(this.textAnchor=t==="right"?"end":"start",this.lineAnchor=lt,this.frameAnchor=`${lt}-${t}`,this.rotate=0),this.dy=lt==="top"?3-F:lt==="bottom"?q-3:0,this.dx=t==="right"?$:-$,this.ariaLabel=`${R} label`,{facets:[[0]],channels:{text:{value:[AE(e,Z,{anchor:t,label:x,labelAnchor:lt,labelArrow:A})]}}}})):null)}function gE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="x"?6:0,tickPadding:y,tickRotate:m,y:g,margin:_,marginTop:M=_===void 0?t==="top"?30:0:_,marginRight:v=_===void 0?20:_,marginBottom:S=_===void 0?t==="bottom"?30:0:_,marginLeft:b=_===void 0?20:_,label:x,labelAnchor:w,labelArrow:A,labelOffset:C,ariaLabel:R=`${e}-axis`,...D}){return p=Oe(p),y=Oe(y),m=Oe(m),w!==void 0&&(w=Nn(w,"labelAnchor",["center","left","right"])),A=CE(A),Gy(p&&!sn(s)?UN(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:m,y:g,ariaLabel:R,...D}):null,sn(l)?null:ON(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:m,y:g,marginTop:M,marginRight:v,marginBottom:S,marginLeft:b,ariaLabel:R,...D}),!sn(l)&&x!==null?$a([],wE({fill:l,fillOpacity:c,...D},function(k,P,L,z,U){let Z=z[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="x"&&U.inset||U,lt=w??(Z.bandwidth?"center":"right"),$=C??(t==="top"?F:q)-3;return lt==="center"?(this.frameAnchor=t,this.textAnchor=void 0):(this.frameAnchor=`${t}-${lt}`,this.textAnchor=lt==="right"?"end":"start"),this.lineAnchor=t,this.dy=t==="top"?-$:$,this.dx=lt==="right"?V-3:lt==="left"?3-st:0,this.ariaLabel=`${R} label`,{facets:[[0]],channels:{text:{value:[AE(e,Z,{anchor:t,label:x,labelAnchor:lt,labelArrow:A})]}}}})):null)}function NN(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="y"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetLeft:u=c,insetRight:h=c,dx:f=0,y:d=e==="y"?void 0:null,ariaLabel:p,...y}){return qa(lE,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinecap:r,strokeLinejoin:s,facetAnchor:o,frameAnchor:a,y:d,...y,dx:t==="left"?+f-fn+ +u:+f+fn-h,anchor:"start",length:l,shape:t==="left"?GN:VN})}function UN(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="x"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetTop:u=c,insetBottom:h=c,dy:f=0,x:d=e==="x"?void 0:null,ariaLabel:p,...y}){return qa(aE,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinejoin:s,strokeLinecap:r,facetAnchor:o,frameAnchor:a,x:d,...y,dy:t==="bottom"?+f-fn-h:+f+fn+ +u,anchor:"start",length:l,shape:t==="bottom"?kN:zN})}function FN(e,t,n,{facetAnchor:i=t+(e==="y"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>60?4*Math.cos(o*qy):0),text:l,textAnchor:c=Math.abs(o)>60?"middle":t==="left"?"end":"start",lineAnchor:u=o>60?"top":o<-60?"bottom":"middle",fontVariant:h,inset:f=0,insetLeft:d=f,insetRight:p=f,dx:y=0,ariaLabel:m,y:g=e==="y"?void 0:null,..._}){return qa(tx,e,n,{ariaLabel:`${m} tick label`},{facetAnchor:i,frameAnchor:r,text:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,y:g,..._,dx:t==="left"?+y-s-a+ +d:+y+ +s+ +a-p},function(M,v,S,b,x){h===void 0&&(this.fontVariant=EE(M)),l===void 0&&(x.text=TE(M,v,S,b,t))})}function ON(e,t,n,{facetAnchor:i=t+(e==="x"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>=10?4*Math.cos(o*qy):0),text:l,textAnchor:c=Math.abs(o)>=10?o<0^t==="bottom"?"start":"end":"middle",lineAnchor:u=Math.abs(o)>=10?"middle":t==="bottom"?"top":"bottom",fontVariant:h,inset:f=0,insetTop:d=f,insetBottom:p=f,dy:y=0,x:m=e==="x"?void 0:null,ariaLabel:g,..._}){return qa(Qy,e,n,{ariaLabel:`${g} tick label`},{facetAnchor:i,frameAnchor:r,text:l===void 0?null:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,x:m,..._,dy:t==="bottom"?+y+ +s+ +a-p:+y-s-a+ +d},function(M,v,S,b,x){h===void 0&&(this.fontVariant=EE(M)),l===void 0&&(x.text=TE(M,v,S,b,t))})}function yE(){let[e,t]=Rs(...arguments);return bE("y",cE(t),e,t)}function xE(){let[e,t]=Rs(...arguments);return bE("fy",uE(t),e,t)}function _E(){let[e,t]=Rs(...arguments);return ME("x",fE(t),e,t)}function vE(){let[e,t]=Rs(...arguments);return ME("fx",hE(t),e,t)}function bE(e,t,n,{y:i=e==="y"?void 0:null,x:r=null,x1:s=t==="left"?r:null,x2:o=t==="right"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return qa(Do,e,n,{ariaLabel:a,ariaHidden:l},{y:i,x1:s,x2:o,...SE(c)})}function ME(e,t,n,{x:i=e==="x"?void 0:null,y:r=null,y1:s=t==="top"?r:null,y2:o=t==="bottom"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return qa(Ic,e,n,{ariaLabel:a,ariaHidden:l},{x:i,y1:s,y2:o,...SE(c)})}function SE({color:e="currentColor",opacity:t=.1,stroke:n=e,strokeOpacity:i=t,strokeWidth:r=1,...s}){return{stroke:n,strokeOpacity:i,strokeWidth:r,...s}}function wE({fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u=!1},h){return[,e]=Xn(e),[,t]=Le(t),{facet:"super",x:null,y:null,fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u,initializer:h}}function qa(e,t,n,i,r,s){let o;function a(u,h,f,d,p,y){let m=u==null&&(t==="fx"||t==="fy"),{[t]:g}=d;if(!g)throw new Error(`missing scale: ${t}`);let _=g.domain(),{interval:M,ticks:v,tickFormat:S,tickSpacing:b=t==="x"?80:35}=r;if(typeof v=="string"&&RE(g)&&(M=v,v=void 0),v===void 0&&(v=mr(M,g.type)??BN(g,b)),u==null){if(qn(v))u=pr(v);else if(Ts(v))u=rx(v,...un(_));else if(g.interval){let w=g.interval;if(g.ticks){let[A,C]=un(_),R=(C-A)/w[wa];w=K0(w,R/v)??w,u=rx(w,A,C)}else{u=_;let A=u.length;w=K0(w,A/v)??w,w!==g.interval&&(u=rx(w,...un(u)))}if(w===g.interval){let A=Math.round(u.length/v);A>1&&(u=u.filter((C,R)=>R%A===0))}}else g.ticks?u=g.ticks(v):u=_;if(!g.ticks&&u.length&&u!==_){let w=new er(_);u=u.filter(A=>w.has(A)),u.length||Yn(`Warning: the ${t}-axis ticks appear to not align with the scale domain, resulting in no ticks. Try different ticks?`)}t==="y"||t==="x"?h=[Un(u)]:o[t]={scale:t,value:Ae}}s?.call(this,g,u,v,S,o);let x=Object.fromEntries(Object.entries(o).map(([w,A])=>[w,{...A,value:Te(u,A.value)}]));return m&&(h=y.filterFacets(u,x)),{data:u,facets:h,channels:x}}let l=Vr(r).initializer,c=e(n,Vr({...r,initializer:a},l));return n==null?(o=c.channels,c.channels={}):o={},i!==void 0&&Object.assign(c,i),c.clip===void 0&&(c.clip=!1),c}function BN(e,t){let[n,i]=un(e.range());return(i-n)/t}function TE(e,t,n,i,r){return{value:Lc(e,t,n,i,r)}}function Lc(e,t,n,i,r){return typeof i=="function"&&!(e.type==="log"&&e.tickFormat)?i:i===void 0&&t&&Ue(t)?NS(e.type,t,r)??xr:e.tickFormat?e.tickFormat(typeof n=="number"?n:null,i):typeof i=="string"&&e.domain().length>0?(Ue(e.domain())?ur:rr)(i):i===void 0?xr:ti(i)}function rx(e,t,n){return e.range(t,e.offset(e.floor(n)))}var kN={draw(e,t){e.moveTo(0,0),e.lineTo(0,t)}},zN={draw(e,t){e.moveTo(0,0),e.lineTo(0,-t)}},GN={draw(e,t){e.moveTo(0,0),e.lineTo(-t,0)}},VN={draw(e,t){e.moveTo(0,0),e.lineTo(t,0)}};function EE(e){return e.bandwidth&&!e.interval?void 0:"tabular-nums"}function AE(e,t,{anchor:n,label:i=t.label,labelAnchor:r,labelArrow:s}={}){if(!(i==null||i.inferred&&RE(t)&&/^(date|time|year)$/i.test(i))){if(i=String(i),s==="auto"&&(s=(!t.bandwidth||t.interval)&&!/[↑↓→←]/.test(i)),!s)return i;if(s===!0){let o=lT(t);o&&(s=/x$/.test(e)||r==="center"?/x$/.test(e)===o<0?"left":"right":o<0?"up":"down")}switch(s){case"left":return`← ${i}`;case"right":return`${i} →`;case"up":return n==="right"?`${i} ↑`:`↑ ${i}`;case"down":return n==="right"?`${i} ↓`:`↓ ${i}`}return i}}function CE(e="auto"){return sn(e)?!1:typeof e=="boolean"?e:Nn(e,"labelArrow",["auto","up","right","down","left"])}function RE(e){return Ue(e.domain())}function PE(e,t){if(t==null)return t;let n=e(t);if(!n)throw new Error(`scale not found: ${t}`);return n}function IE(e,{opacity:t,...n}={}){if(!yr(e)&&!Dy(e))throw new Error(`swatches legend requires ordinal or threshold color scale (not ${e.type})`);return DE(e,n,(i,r,s,o)=>i.append("svg").attr("width",s).attr("height",o).attr("fill",r.scale).attr("fill-opacity",Le(t)[1]).append("rect").attr("width","100%").attr("height","100%"))}function LE(e,{fill:t=e.hint?.fill!==void 0?e.hint.fill:"none",fillOpacity:n=1,stroke:i=e.hint?.stroke!==void 0?e.hint.stroke:sn(t)?"currentColor":"none",strokeOpacity:r=1,strokeWidth:s=1.5,r:o=4.5,...a}={},l){let[c,u]=Xn(t),[h,f]=Xn(i),d=PE(l,c),p=PE(l,h),y=o*o*Math.PI;return n=Le(n)[1],r=Le(r)[1],s=Le(s)[1],DE(e,a,(m,g,_,M)=>m.append("svg").attr("viewBox","-8 -8 16 16").attr("width",_).attr("height",M).attr("fill",c==="color"?v=>d.scale(v):u).attr("fill-opacity",n).attr("stroke",h==="color"?v=>p.scale(v):f).attr("stroke-opacity",r).attr("stroke-width",s).append("path").attr("d",v=>{let S=mi();return e.scale(v).draw(S,y),S}))}function DE(e,t={},n){let{columns:i,tickFormat:r,fontVariant:s=rh(e),swatchSize:o=15,swatchWidth:a=o,swatchHeight:l=o,marginLeft:c=0,className:u,style:h,width:f}=t,d=ka(t);u=za(u),r=Lc(e.scale,e.domain,void 0,r);let p=se("div",d).attr("class",`${u}-swatches ${u}-swatches-${i!=null?"columns":"wrap"}`),y;return i!=null?(y=`:where(.${u}-swatches-columns .${u}-swatch) {
  display: flex;
  align-items: center;
  break-inside: avoid;
  padding-bottom: 1px;
}
:where(.${u}-swatches-columns .${u}-swatch::before) {
  flex-shrink: 0;
}
:where(.${u}-swatches-columns .${u}-swatch-label) {
  white-space: nowrap;
  overflow: hidden;
  text-overflow: ellipsis;
}`,p.style("columns",i).selectAll().data(e.domain).enter().append("div").attr("class",`${u}-swatch`).call(n,e,a,l).call(m=>m.append("div").attr("class",`${u}-swatch-label`).attr("title",r).text(r))):(y=`:where(.${u}-swatches-wrap) {
  display: flex;
  align-items: center;
  min-height: 33px;
  flex-wrap: wrap;
}
:where(.${u}-swatches-wrap .${u}-swatch) {
  display: inline-flex;
  align-items: center;
  margin-right: 1em;
}`,p.selectAll().data(e.domain).enter().append("span").attr("class",`${u}-swatch`).call(n,e,a,l).append(function(){return this.ownerDocument.createTextNode(r.apply(this,arguments))})),p.call(m=>m.insert("style","*").text(`:where(.${u}-swatches) {
  font-family: system-ui, sans-serif;
  font-size: 10px;
  margin-bottom: 0.5em;
}
:where(.${u}-swatch > svg) {
  margin-right: 0.5em;
  overflow: visible;
}
${y}`)).style("margin-left",c?`${+c}px`:null).style("width",f===void 0?null:`${+f}px`).style("font-variant",De(s,"normal")).call(Ga,h).node()}var ax=new Map([["symbol",LE],["color",FE],["opacity",HN]]);function NE(e,t,n={}){return(i,r)=>{if(!ax.has(i))throw new Error(`unknown legend type: ${i}`);if(i in e)return ax.get(i)(e[i],UE(t,n[i],r),s=>e[s])}}function UE({className:e,...t},{label:n,ticks:i,tickFormat:r}={},s){return ew(s,{className:e,...t},{label:n,ticks:i,tickFormat:r})}function FE(e,{legend:t=!0,...n}){if(t===!0&&(t=e.type==="ordinal"?"swatches":"ramp"),e.domain!==void 0)switch(`${t}`.toLowerCase()){case"swatches":return IE(e,n);case"ramp":return UT(e,n);default:throw new Error(`unknown legend type: ${t}`)}}function HN({type:e,interpolate:t,...n},{legend:i=!0,color:r=Fi(0,0,0),...s}){if(!t)throw new Error(`${e} opacity scales are not supported`);if(i===!0&&(i="ramp"),`${i}`.toLowerCase()!=="ramp")throw new Error(`${i} opacity legends are not supported`);return FE({type:e,...n,interpolate:WN(r)},{legend:i,...s})}function WN(e){let{r:t,g:n,b:i}=Fi(e)||Fi(0,0,0);return r=>`rgba(${t},${n},${i},${r})`}function OE(e,t,n){let i=[];for(let[r,s]of ax){let o=n[r];if(o?.legend&&r in e){let a=s(e[r],UE(t,e[r],o),l=>e[l]);a!=null&&i.push(a)}}return i}function BE(e={},t="y"){return HS(e)?e:{...e,[t]:Ae}}function kE(e,t){if(t.length===1)return{data:e,facets:t};let n=ws(e),i=new Uint8Array(n),r=0;for(let a of t)for(let l of a)i[l]&&++r,i[l]=1;if(r===0)return{data:e,facets:t};e=Ms(e);let s=e[ty]=new Uint32Array(n+r);t=t.map(a=>Ms(a,Uint32Array));let o=n;i.fill(0);for(let a of t)for(let l=0,c=a.length;l<c;++l){let u=a[l];i[u]?(a[l]=o,e[o]=e[u],s[o]=u,++o):s[u]=u,i[u]=1}return{data:e,facets:t}}function $N(e={},t={}){arguments.length===1&&([e,t]=XN(e));let{x1:n,x:i=n,y:r,...s}=t,[o,a,l,c]=YN(i,r,"x","y",e,s);return{...o,x1:n,x:a,y1:l,y2:c,y:vc(l,c)}}function VE({y:e,y1:t,y2:n,...i}={}){return i=Io(i,"x"),t===void 0&&n===void 0?$N({y:e,...i}):([t,n]=WS(e,t,n),{...i,y1:t,y2:n})}function XN(e){let{offset:t,order:n,reverse:i,...r}=e;return[{offset:t,order:n,reverse:i},r]}var qN={length:!0};function YN(e,t=kS,n,i,{offset:r,order:s,reverse:o},a){if(t===null)throw new Error(`stack requires ${i}`);let l=Ca(a),[c,u]=Ei(e),[h,f]=Ra(t),[d,p]=Ra(t);return h.hint=d.hint=qN,r=ZN(r),s=jN(s,r,i),[Po(a,(y,m,g)=>{({data:y,facets:m}=kE(y,m));let _=e==null?void 0:u(bc(Te(y,e),g?.[n])),M=Te(y,t,Float64Array),v=Te(y,l),S=s&&s(y,_,M,v),b=ws(y),x=f(new Float64Array(b)),w=p(new Float64Array(b)),A=[];for(let C of m){let R=_?Array.from(to(C,D=>_[D]).values()):[C];if(S)for(let D of R)D.sort(S);for(let D of R){let k=0,P=0;o&&D.reverse();for(let L of D){let z=M[L];z<0?k=w[L]=(x[L]=k)+z:z>0?P=w[L]=(x[L]=P)+z:w[L]=x[L]=P}}A.push(R)}return r&&r(A,x,w,v),{data:y,facets:m}}),c,h,d]}function ZN(e){if(e!=null){if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"expand":case"normalize":return JN;case"center":case"silhouette":return KN;case"wiggle":return WE}throw new Error(`unknown offset: ${e}`)}}function HE(e,t){let n=0,i=0;for(let r of e){let s=t[r];s<n&&(n=s),s>i&&(i=s)}return[n,i]}function JN(e,t,n){for(let i of e)for(let r of i){let[s,o]=HE(r,n);for(let a of r){let l=1/(o-s||1);t[a]=l*(t[a]-s),n[a]=l*(n[a]-s)}}}function KN(e,t,n){for(let i of e){for(let r of i){let[s,o]=HE(r,n);for(let a of r){let l=(o+s)/2;t[a]-=l,n[a]-=l}}$E(i,t,n)}XE(e,t,n)}function WE(e,t,n,i){for(let r of e){let s=new hi,o=0;for(let a of r){let l=-1,c=a.map(d=>Math.abs(n[d]-t[d])),u=a.map(d=>{l=i?i[d]:++l;let p=n[d]-t[d],y=s.has(l)?p-s.get(l):0;return s.set(l,p),y}),h=[0,...gv(u)];for(let d of a)t[d]+=o,n[d]+=o;let f=Di(c);f&&(o-=Di(c,(d,p)=>(u[p]/2+h[p])*d)/f)}$E(r,t,n)}XE(e,t,n)}function $E(e,t,n){let i=di(e,r=>di(r,s=>t[s]));for(let r of e)for(let s of r)t[s]-=i,n[s]-=i}function XE(e,t,n){let i=e.length;if(i===1)return;let r=e.map(a=>a.flat()),s=r.map(a=>(di(a,l=>t[l])+Rn(a,l=>n[l]))/2),o=di(s);for(let a=0;a<i;a++){let l=o-s[a];for(let c of r[a])t[c]+=l,n[c]+=l}}function jN(e,t,n){if(e===void 0&&t===WE)return zE(vn);if(e!=null){if(typeof e=="string"){let i=e.startsWith("-"),r=i?Mo:vn;switch((i?e.slice(1):e).toLowerCase()){case"value":case n:return QN(r);case"z":return tU(r);case"sum":return eU(r);case"appearance":return nU(r);case"inside-out":return zE(r)}return GE(ny(e))}if(typeof e=="function")return(e.length===1?GE:iU)(e);if(Oi(e))return rU(e);throw new Error(`invalid order: ${e}`)}}function QN(e){return(t,n,i)=>(r,s)=>e(i[r],i[s])}function tU(e){return(t,n,i,r)=>(s,o)=>e(r[s],r[o])}function eU(e){return hh(e,(t,n,i,r)=>Ru(Un(t),s=>Di(s,o=>i[o]),s=>r[s]))}function nU(e){return hh(e,(t,n,i,r)=>Ru(Un(t),s=>n[Jp(s,o=>i[o])],s=>r[s]))}function zE(e){return hh(e,(t,n,i,r)=>{let s=Un(t),o=Ru(s,h=>n[Jp(h,f=>i[f])],h=>r[h]),a=Pr(s,h=>Di(h,f=>i[f]),h=>r[h]),l=[],c=[],u=0;for(let h of o)u<0?(u+=a.get(h),l.push(h)):(u-=a.get(h),c.push(h));return c.reverse().concat(l)})}function GE(e){return t=>{let n=Te(t,e);return(i,r)=>vn(n[i],n[r])}}function iU(e){return t=>Oi(t)?(n,i)=>e(t[n],t[i]):(n,i)=>e(t.get(n),t.get(i))}function rU(e){return hh(vn,()=>e)}function hh(e,t){return(n,i,r,s)=>{if(!s)throw new Error("missing channel: z");let o=new hi(t(n,i,r,s).map((a,l)=>[a,l]));return(a,l)=>e(o.get(s[a]),o.get(s[l]))}}var sU={ariaLabel:"rect"},mh=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o}=n;super(t,{x1:{value:i,scale:"x",type:i!=null&&s==null?"band":void 0,optional:!0},y1:{value:r,scale:"y",type:r!=null&&o==null?"band":void 0,optional:!0},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,sU),lx(this,n),cx(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x1:l,y1:c,x2:u,y2:h}=i,{marginTop:f,marginRight:d,marginBottom:p,marginLeft:y,width:m,height:g}=r,{projection:_}=s,{insetTop:M,insetRight:v,insetBottom:S,insetLeft:b}=this,{rx:x,ry:w,rx1y1:A,rx1y2:C,rx2y1:R,rx2y2:D}=this;(l||u)&&!_&&As(o)&&(l=u=null),(c||h)&&!_&&As(a)&&(c=h=null);let k=o?.bandwidth?o.bandwidth():0,P=a?.bandwidth?a.bandwidth():0;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{},0,0).call(L=>L.selectAll().data(t).enter().call(A||C||R||D?z=>z.append("path").call(Ne,this).call(ux,l&&u?U=>l[U]+(u[U]<l[U]?-v:b):l?U=>l[U]+b:y+b,c&&h?U=>c[U]+(h[U]<c[U]?-S:M):c?U=>c[U]+M:f+M,l&&u?U=>u[U]-(u[U]<l[U]?-b:v):l?U=>l[U]+k-v:m-d-v,c&&h?U=>h[U]-(h[U]<c[U]?-M:S):c?U=>c[U]+P-S:g-p-S,this).call(bn,this,i):z=>z.append("rect").call(Ne,this).attr("x",l?u?U=>Math.min(l[U],u[U])+b:U=>l[U]+b:y+b).attr("y",c?h?U=>Math.min(c[U],h[U])+M:U=>c[U]+M:f+M).attr("width",l?u?U=>Math.max(0,Math.abs(u[U]-l[U])+k-b-v):k-b-v:m-d-y-v-b).attr("height",c?h?U=>Math.max(0,Math.abs(c[U]-h[U])+P-M-S):P-M-S:g-f-p-M-S).call(Wt,"rx",x).call(Wt,"ry",w).call(bn,this,i))).node()}};function lx(e,{inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={}){e.insetTop=Oe(n),e.insetRight=Oe(i),e.insetBottom=Oe(r),e.insetLeft=Oe(s)}function cx(e,{r:t,rx:n,ry:i,rx1:r=t,ry1:s=t,rx2:o=t,ry2:a=t,rx1y1:l=r!==void 0?+r:s!==void 0?+s:0,rx1y2:c=r!==void 0?+r:a!==void 0?+a:0,rx2y1:u=o!==void 0?+o:s!==void 0?+s:0,rx2y2:h=o!==void 0?+o:a!==void 0?+a:0}={}){l||c||u||h?(e.rx1y1=l,e.rx1y2=c,e.rx2y1=u,e.rx2y2=h):(e.rx=De(n,"auto"),e.ry=De(i,"auto"))}function ux(e,t,n,i,r,s){let{rx1y1:o,rx1y2:a,rx2y1:l,rx2y2:c}=s;typeof t!="function"&&(t=ti(t)),typeof n!="function"&&(n=ti(n)),typeof i!="function"&&(i=ti(i)),typeof r!="function"&&(r=ti(r));let u=Math.max(Math.abs(o+l),Math.abs(a+c)),h=Math.max(Math.abs(o+a),Math.abs(l+c));e.attr("d",f=>{let d=t(f),p=n(f),y=i(f),m=r(f),g=d>y,_=p>m,M=g?y:d,v=g?d:y,S=_?m:p,b=_?p:m,x=Math.min(1,(v-M)/u,(b-S)/h),w=x*(g?_?c:l:_?a:o),A=x*(g?_?a:o:_?c:l),C=x*(g?_?o:a:_?l:c),R=x*(g?_?l:c:_?o:a);return`M${M},${S+ph(w,R)}A${w},${w} 0 0 ${w<0?0:1} ${M+dh(w,R)},${S}H${v-dh(A,C)}A${A},${A} 0 0 ${A<0?0:1} ${v},${S+ph(A,C)}V${b-ph(C,A)}A${C},${C} 0 0 ${C<0?0:1} ${v-dh(C,A)},${b}H${M+dh(R,w)}A${R},${R} 0 0 ${R<0?0:1} ${M},${b-ph(R,w)}Z`})}function dh(e,t){return t<0?e:Math.abs(e)}function ph(e,t){return t<0?Math.abs(e):e}function gh(e,t){return new mh(e,WT($T(t)))}var oU={ariaLabel:"frame",fill:"none",stroke:"currentColor",clip:!1},aU={ariaLabel:"frame",fill:null,stroke:"currentColor",strokeLinecap:"square",clip:!1},fx=class extends ye{constructor(t={}){let{anchor:n=null}=t;super(Ta,void 0,t,n==null?oU:aU),this.anchor=oy(n,"anchor",["top","right","bottom","left"]),lx(this,t),n||cx(this,t)}render(t,n,i,r,s){let{marginTop:o,marginRight:a,marginBottom:l,marginLeft:c,width:u,height:h}=r,{anchor:f,insetTop:d,insetRight:p,insetBottom:y,insetLeft:m}=this,{rx:g,ry:_,rx1y1:M,rx1y2:v,rx2y1:S,rx2y2:b}=this,x=c+m,w=u-a-p,A=o+d,C=h-l-y;return se(f?"svg:line":M||v||S||b?"svg:path":"svg:rect",s).datum(0).call(Be,this,r,s).call(Ne,this).call(bn,this,i).call(ke,this,{}).call(f==="left"?R=>R.attr("x1",x).attr("x2",x).attr("y1",A).attr("y2",C):f==="right"?R=>R.attr("x1",w).attr("x2",w).attr("y1",A).attr("y2",C):f==="top"?R=>R.attr("x1",x).attr("x2",w).attr("y1",A).attr("y2",A):f==="bottom"?R=>R.attr("x1",x).attr("x2",w).attr("y1",C).attr("y2",C):M||v||S||b?R=>R.call(ux,x,A,w,C,this):R=>R.attr("x",x).attr("y",A).attr("width",w-x).attr("height",C-A).attr("rx",g).attr("ry",_)).node()}};function qE(e){return new fx(e)}var hx={ariaLabel:"tip",fill:"var(--plot-background)",stroke:"currentColor"},lU=new Set(["geometry","href","src","ariaLabel","scales"]),dx=class extends ye{constructor(t,n={}){n.tip&&(n={...n,tip:!1}),n.title===void 0&&qn(t)&&zf(t)&&(n={...n,title:Ae});let{x:i,y:r,x1:s,x2:o,y1:a,y2:l,anchor:c,preferredAnchor:u="bottom",monospace:h,fontFamily:f=h?"ui-monospace, monospace":void 0,fontSize:d,fontStyle:p,fontVariant:y,fontWeight:m,lineHeight:g=1,lineWidth:_=20,frameAnchor:M,format:v,textAnchor:S="start",textOverflow:b,textPadding:x=8,title:w,pointerSize:A=12,pathFilter:C="drop-shadow(0 3px 4px rgba(0,0,0,0.2))"}=n;super(t,{x:{value:s!=null&&o!=null?null:i,scale:"x",optional:!0},y:{value:a!=null&&l!=null?null:r,scale:"y",optional:!0},x1:{value:s,scale:"x",optional:o==null},y1:{value:a,scale:"y",optional:l==null},x2:{value:o,scale:"x",optional:s==null},y2:{value:l,scale:"y",optional:a==null},title:{value:w,optional:!0}},n,hx),this.anchor=Vf(c,"anchor"),this.preferredAnchor=Vf(u,"preferredAnchor"),this.frameAnchor=Es(M),this.textAnchor=De(S,"middle"),this.textPadding=+x,this.pointerSize=+A,this.pathFilter=Fe(C),this.lineHeight=+g,this.lineWidth=+_,this.textOverflow=jy(b),this.monospace=!!h,this.fontFamily=Fe(f),this.fontSize=Oe(d),this.fontStyle=Fe(p),this.fontVariant=Fe(y),this.fontWeight=Fe(m);for(let R in hx)R in this.channels&&(this[R]=hx[R]);this.splitLines=nx(this),this.clipLine=ix(this),this.format=typeof v=="string"||typeof v=="function"?{title:v}:{...v}}render(t,n,i,r,s){let o=this,{x:a,y:l,fx:c,fy:u}=n,{ownerSVGElement:h,document:f}=s,{anchor:d,monospace:p,lineHeight:y,lineWidth:m}=this,{textPadding:g,pointerSize:_,pathFilter:M}=this,{marginTop:v,marginLeft:S}=r,{x1:b,y1:x,x2:w,y2:A,x:C=b??w,y:R=x??A}=i,D=c?c(t.fx)-S:0,k=u?u(t.fy)-v:0,[P,L]=_r(this,r),z=$y(i,P),U=Xy(i,L),Z=p?ch:lh,F=Z(No),V,q;"title"in i?(V=YE.call(this,{title:i.channels.title},n),q=hU):(V=YE.call(this,i.channels,n),q=dU);let st=se("svg:g",s).call(Be,this,r,s).call(ex,this).call(ke,this,{x:C&&a,y:R&&l}).call(at=>at.selectAll().data(t).enter().append("g").attr("transform",ft=>`translate(${Math.round(z(ft))},${Math.round(U(ft))})`).call(Ne,this).call(ft=>ft.append("path").attr("filter",M)).call(ft=>ft.append("text").each(function(ot){let rt=Ni(this);this.setAttribute("fill","currentColor"),this.setAttribute("fill-opacity",1),this.setAttribute("stroke","none");let J=q.call(o,ot,t,V,n,i);if(typeof J=="string")for(let gt of o.splitLines(J))lt(rt,{value:o.clipLine(gt)});else{let gt=new Set;for(let ct of J){let{label:K=""}=ct;K&&gt.has(K)||(gt.add(K),lt(rt,ct))}}})));function lt(at,{label:ft,value:ot,color:rt,opacity:J}){ft??="",ot??="";let gt=rt!=null||J!=null,ct,K=m*100,[It]=Uo(ft,K,Z,F);if(It>=0)ft=ft.slice(0,It).trimEnd()+No,ct=ot.trim(),ot="";else{(ft||!ot&&!gt)&&(ot=" "+ot);let[Ot]=Uo(ot,K-Z(ft),Z,F);Ot>=0&&(ct=ot.trim(),ot=ot.slice(0,Ot).trimEnd()+No)}let pt=at.append("tspan").attr("x",0).attr("dy",`${y}em`).text("​");ft&&pt.append("tspan").attr("font-weight","bold").text(ft),ot&&pt.append(()=>f.createTextNode(ot)),gt&&pt.append("tspan").text(" ■").attr("fill",rt).attr("fill-opacity",J).style("user-select","none"),ct&&pt.append("title").text(ct)}function $(){let{width:at,height:ft}=r.facet??r;st.selectChildren().each(function(ot){let{x:rt,width:J,height:gt}=this.getBBox();J=Math.round(J),gt=Math.round(gt);let ct=d;if(ct===void 0){let pt=z(ot)+D,Ot=U(ot)+k,Ht=pt+J+_+g*2<at,le=pt-J-_-g*2>0,oe=Ot+gt+_+g*2<ft,Ke=Ot-gt-_-g*2>0;ct=Ht&&le?oe&&Ke?o.preferredAnchor:Ke?"bottom":"top":oe&&Ke?Ht?"left":"right":(Ht||le)&&(oe||Ke)?`${Ke?"bottom":"top"}-${Ht?"left":"right"}`:o.preferredAnchor}let K=this.firstChild,It=this.lastChild;if(K.setAttribute("d",fU(ct,_,g,J,gt)),rt)for(let pt of It.childNodes)pt.setAttribute("x",-rt);It.setAttribute("y",`${+cU(ct,It.childNodes.length,y).toFixed(6)}em`),It.setAttribute("transform",`translate(${uU(ct,_,g,J,gt)})`)}),st.attr("visibility",null)}return t.length&&(st.attr("visibility","hidden"),h.isConnected?Promise.resolve().then($):typeof requestAnimationFrame<"u"&&requestAnimationFrame($)),st.node()}};function jE(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=ki(t,n)),new dx(e,{...i,x:t,y:n})}function cU(e,t,n){return/^top(?:-|$)/.test(e)?.94-n:-.29-t*n}function uU(e,t,n,i,r){switch(e){case"middle":return[-i/2,r/2];case"top-left":return[n,t+n];case"top":return[-i/2,t/2+n];case"top-right":return[-i-n,t+n];case"right":return[-t/2-i-n,r/2];case"bottom-left":return[n,-t-n];case"bottom":return[-i/2,-t/2-n];case"bottom-right":return[-i-n,-t-n];case"left":return[n+t/2,r/2]}}function fU(e,t,n,i,r){let s=i+n*2,o=r+n*2;switch(e){case"middle":return`M${-s/2},${-o/2}h${s}v${o}h${-s}z`;case"top-left":return`M0,0l${t},${t}h${s-t}v${o}h${-s}z`;case"top":return`M0,0l${t/2},${t/2}h${(s-t)/2}v${o}h${-s}v${-o}h${(s-t)/2}z`;case"top-right":return`M0,0l${-t},${t}h${t-s}v${o}h${s}z`;case"right":return`M0,0l${-t/2},${-t/2}v${t/2-o/2}h${-s}v${o}h${s}v${t/2-o/2}z`;case"bottom-left":return`M0,0l${t},${-t}h${s-t}v${-o}h${-s}z`;case"bottom":return`M0,0l${t/2},${-t/2}h${(s-t)/2}v${-o}h${-s}v${o}h${(s-t)/2}z`;case"bottom-right":return`M0,0l${-t},${-t}h${t-s}v${-o}h${s}z`;case"left":return`M0,0l${t/2},${-t/2}v${t/2-o/2}h${s}v${o}h${-s}v${t/2-o/2}z`}}function YE(e,t){let n={},i=this.format;i=ZE(i,e,"x"),i=ZE(i,e,"y"),this.format=i;for(let r in i){let s=i[r];if(!(s===null||s===!1))if(r==="fx"||r==="fy")n[r]=!0;else{let o=by(e,r);o&&(n[r]=o)}}for(let r in e){if(r in n||r in i||lU.has(r)||(r==="x"||r==="y")&&e.geometry)continue;let s=by(e,r);if(s){if(s.scale==null&&s.defaultScale==="color")continue;n[r]=s}}this.facet&&(t.fx&&!("fx"in i)&&(n.fx=!0),t.fy&&!("fy"in i)&&(n.fy=!0));for(let r in n){let s=this.format[r];if(typeof s=="string"){let o=n[r]?.value??t[r]?.domain()??[];this.format[r]=(Ue(o)?ur:rr)(s)}else if(s===void 0||s===!0){let o=t[r];this.format[r]=o?.bandwidth?Lc(o,o.domain()):xr}}return n}function ZE(e,t,n){if(!(n in e))return e;let i=`${n}1`,r=`${n}2`;if((i in e||!(i in t))&&(r in e||!(r in t)))return e;let s=Object.entries(e),o=e[n];return s.splice(s.findIndex(([a])=>a===n)+1,0,[i,o],[r,o]),Object.fromEntries(s)}function hU(e,t,{title:n}){return this.format.title(n.value[e],e)}function*dU(e,t,n,i,r){for(let s in n){if(s==="fx"||s==="fy"){yield{label:yh(i,n,s),value:this.format[s](t[s],e)};continue}if(s==="x1"&&"x2"in n||s==="y1"&&"y2"in n)continue;let o=n[s];if(s==="x2"&&"x1"in n)yield{label:KE(i,n,"x"),value:JE(this.format.x2,n.x1,o,e)};else if(s==="y2"&&"y1"in n)yield{label:KE(i,n,"y"),value:JE(this.format.y2,n.y1,o,e)};else{let a=o.value[e],l=o.scale;if(!wi(a)&&l==null)continue;yield{label:yh(i,n,s),value:this.format[s](a,e),color:l==="color"?r[s][e]:null,opacity:l==="opacity"?r[s][e]:null}}}}function JE(e,t,n,i){return n.hint?.length?`${e(n.value[i]-t.value[i],i)}`:`${e(t.value[i],i)}–${e(n.value[i],i)}`}function KE(e,t,n){let i=yh(e,t,`${n}1`,n),r=yh(e,t,`${n}2`,n);return i===r?i:`${i}–${r}`}function yh(e,t,n,i=n){let r=t[n],s=e[r?.scale??n];return String(s?.label??r?.label??i)}function Ya(e={}){let{facet:t,style:n,title:i,subtitle:r,caption:s,ariaLabel:o,ariaDescription:a}=e,l=za(e.className),c=e.marks===void 0?[]:tA(e.marks);c.push(..._U(c));let u=yU(t,e),h=new Map;for(let F of c){let V=eA(F,u,e);V&&h.set(F,V)}let f=new Map;u&&Dc(f,[u],e),Dc(f,h,e);let d=tA(vU(c,f,e));for(let F of d){let V=eA(F,u,e);V&&h.set(F,V)}c.unshift(...d);let p=dT(f,e);if(p!==void 0){let F=u?jf(p,u):void 0;for(let q of c){if(q.facet===null||q.facet==="super")continue;let st=h.get(q);st!==void 0&&(st.facetsIndex=q.fx!=null||q.fy!=null?jf(p,st):F)}let V=new Set;for(let{facetsIndex:q}of h.values())q?.forEach((st,lt)=>{st?.length>0&&V.add(lt)});p.forEach(0<V.size&&V.size<p.length?(q,st)=>q.empty=!V.has(st):q=>q.empty=!1);for(let q of c)if(q.facet==="exclude"){let st=h.get(q);st!==void 0&&(st.facetsIndex=gT(st.facetsIndex))}}for(let F of ge.keys())Ea(e[F])&&F!=="fx"&&F!=="fy"&&f.set(F,[]);let y=new Map;for(let F of c){if(y.has(F))throw new Error("duplicate mark; each mark must be unique");let{facetsIndex:V,channels:q}=h.get(F)??{},{data:st,facets:lt,channels:$}=F.initialize(V,q,e);gx($,e),y.set(F,{data:st,facets:lt,channels:$})}let m=Ac(Dc(f,y,e),e),g=IT(m,c,e);aT(m,g);let _=Iy(m),{fx:M,fy:v}=_,S=M||v?Ly(m,g):g,b=M||v?AU(_,g):g,x=ka(e),w=x.document,A=sa("svg").call(w.documentElement),C=A;x.ownerSVGElement=A,x.className=l,x.projection=_T(e,S),x.path=function(){return tc(this.projection??TT(_))},x.filterFacets=(F,V)=>jf(p,{channels:V,groups:Jf(F,V)}),x.getMarkState=F=>{let V=y.get(F),q=h.get(F);return{...V,channels:{...V.channels,...q?.channels}}},x.dispatchValue=F=>{C.value!==F&&(C.value=F,C.dispatchEvent(new x.document.defaultView.Event("input",{bubbles:!0})))};let R=new Set;for(let[F,V]of y)if(F.initializer!=null){let q=F.facet==="super"?b:S,st=F.initializer(V.data,V.facets,V.channels,_,q,x);if(st.data!==void 0&&(V.data=st.data),st.facets!==void 0&&(V.facets=st.facets),st.channels!==void 0){let{fx:lt,fy:$,...at}=st.channels;gU(at),Object.assign(V.channels,at);for(let ft of Object.values(at)){let{scale:ot}=ft;ot!=null&&!sw(ge.get(ot))&&(rA(ft,e),R.add(ot))}(lt!=null||$!=null)&&h.set(F,!0)}}if(R.size){let F=new Map;Dc(F,y,e,lt=>R.has(lt)),Dc(f,y,e,lt=>R.has(lt));let V=EU(Ac(F,e),m),{scales:q,...st}=Iy(V);Object.assign(m,V),Object.assign(_,st),Object.assign(_.scales,q)}let D,k;p!==void 0&&(D={x:M?.domain(),y:v?.domain()},p=pT(p,D),k=mT(M,v,g));for(let[F,V]of y)V.values=F.scale(V.channels,_,x);let{width:P,height:L}=g;Ni(A).attr("class",l).attr("fill","currentColor").attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("text-anchor","middle").attr("width",P).attr("height",L).attr("viewBox",`0 0 ${P} ${L}`).attr("aria-label",o).attr("aria-description",a).call(F=>F.append("style").text(`:where(.${l}) {
  --plot-background: white;
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
}
:where(.${l} text),
:where(.${l} tspan) {
  white-space: pre;
}`)).call(Ga,n);for(let F of c){let{channels:V,values:q,facets:st}=y.get(F);if(p===void 0||F.facet==="super"){let lt=null;if(st&&(lt=st[0],lt=F.filter(lt,V,q),lt.length===0))continue;let $=F.render(lt,_,q,b,x);if($==null)continue;A.appendChild($)}else{let lt;for(let $ of p){if(!(F.facetAnchor?.(p,D,$)??!$.empty))continue;let at=null;if(st){let ot=h.has(F);if(at=st[ot?$.i:0],at=F.filter(at,V,q),at.length===0)continue;!ot&&at===st[0]&&(at=$S(at)),at.fx=$.x,at.fy=$.y,at.fi=$.i}let ft=F.render(at,_,q,S,x);if(ft!=null){(lt??=Ni(A).append("g")).append(()=>ft).datum($);for(let ot of["aria-label","aria-description","aria-hidden","transform"])ft.hasAttribute(ot)&&(lt.attr(ot,ft.getAttribute(ot)),ft.removeAttribute(ot))}}lt?.selectChildren().each(k)}}let z=OE(m,x,e),{figure:U=i!=null||r!=null||s!=null||z.length>0}=e;U&&(C=w.createElement("figure"),C.className=`${l}-figure`,C.style.maxWidth="initial",i!=null&&C.append(QE(w,i,"h2")),r!=null&&C.append(QE(w,r,"h3")),C.append(...z,A),s!=null&&C.append(pU(w,s)),"value"in A&&(C.value=A.value,delete A.value)),C.scale=fT(_.scales),C.legend=NE(m,x,e);let Z=Vw();return Z>0&&Ni(A).append("text").attr("x",P).attr("y",20).attr("dy","-1em").attr("text-anchor","end").attr("font-family","initial").text("⚠️").append("title").text(`${Z.toLocaleString("en-US")} warning${Z===1?"":"s"}. Please check the console.`),C}function QE(e,t,n){if(t.ownerDocument)return t;let i=e.createElement(n);return i.append(t),i}function pU(e,t){let n=e.createElement("figcaption");return n.append(t),n}function tA(e){return e.flat(1/0).filter(t=>t!=null).map(mU)}function mU(e){return typeof e.render=="function"?e:new mx(e)}var mx=class extends ye{constructor(t){if(typeof t!="function")throw new TypeError("invalid mark; missing render function");super(),this.render=t}render(){}};function gx(e,t){for(let n in e)rA(e[n],t);return e}function rA(e,t){let{scale:n,transform:i=!0}=e;if(n==null||!i)return;let{type:r,percent:s,interval:o,transform:a=s?l=>l==null?NaN:l*100:ay(o,r)}=t[n]??{};a!=null&&(e.value=me(e.value,a),e.transform=!1)}function gU(e){for(let t in e)vy(t,e[t])}function Dc(e,t,n,i=zS){for(let{channels:r}of t.values())for(let s in r){let o=r[s],{scale:a}=o;if(a!=null&&i(a))if(a==="projection"){if(!MT(n)){let l=n.x?.domain===void 0,c=n.y?.domain===void 0;if(l||c){let[u,h]=wT(o);l&&px(e,"x",u),c&&px(e,"y",h)}}}else px(e,a,o)}return e}function px(e,t,n){let i=e.get(t);i!==void 0?i.push(n):e.set(t,[n])}function yU(e,t){if(e==null)return;let{x:n,y:i}=e;if(n==null&&i==null)return;let r=Gr(e.data);if(r==null)throw new Error("missing facet data");let s={};n!=null&&(s.fx=Da(r,{value:n,scale:"fx"})),i!=null&&(s.fy=Da(r,{value:i,scale:"fy"})),gx(s,t);let o=Jf(r,s);return{channels:s,groups:o,data:e.data}}function eA(e,t,n){if(e.facet===null||e.facet==="super")return;let{fx:i,fy:r}=e;if(i!=null||r!=null){let l=Gr(e.data??i??r);if(l===void 0)throw new Error(`missing facet data in ${e.ariaLabel}`);if(l===null)return;let c={};return i!=null&&(c.fx=Da(l,{value:i,scale:"fx"})),r!=null&&(c.fy=Da(l,{value:r,scale:"fy"})),gx(c,n),{channels:c,groups:Jf(l,c)}}if(t===void 0)return;let{channels:s,groups:o,data:a}=t;if(e.facet!=="auto"||e.data===a)return{channels:s,groups:o};a.length>0&&(o.size>1||o.size===1&&s.fx&&s.fy&&[...o][0][1].size>1)&&ws(Gr(e.data))===ws(a)&&Yn(`Warning: the ${e.ariaLabel} mark appears to use faceted data, but isn’t faceted. The mark data has the same length as the facet data and the mark facet option is "auto", but the mark data and facet data are distinct. If this mark should be faceted, set the mark facet option to true; otherwise, suppress this warning by setting the mark facet option to false.`)}function xU(e,t={}){return Vr({...t,x:null,y:null},(n,i,r,s,o,a)=>a.getMarkState(e))}function _U(e){let t=[];for(let n of e){let i=n.tip;if(i){i===!0?i={}:typeof i=="string"&&(i={pointer:i});let{pointer:r,preferredAnchor:s}=i;r=/^x$/i.test(r)?NT:/^y$/i.test(r)?Wy:DT,i=r(xU(n,i)),i.title=null,s===void 0&&(i.preferredAnchor=r===Wy?"left":"bottom");let o=jE(n.data,i);o.facet=n.facet,o.facetAnchor=n.facetAnchor,t.push(o)}}return t}function vU(e,t,n){let{projection:i,x:r={},y:s={},fx:o={},fy:a={},axis:l,grid:c,facet:u={},facet:{axis:h=l,grid:f}=u,x:{axis:d=l,grid:p=d===null?null:c}=r,y:{axis:y=l,grid:m=y===null?null:c}=s,fx:{axis:g=h,grid:_=g===null?null:f}=o,fy:{axis:M=h,grid:v=M===null?null:f}=a}=n;(i||!Ea(r)&&!nA("x",e))&&(d=p=null),(i||!Ea(s)&&!nA("y",e))&&(y=m=null),t.has("fx")||(g=_=null),t.has("fy")||(M=v=null),d===void 0&&(d=!vh(e,"x")),y===void 0&&(y=!vh(e,"y")),g===void 0&&(g=!vh(e,"fx")),M===void 0&&(M=!vh(e,"fy")),d===!0&&(d="bottom"),y===!0&&(y="left"),g===!0&&(g=d==="top"||d===null?"bottom":"top"),M===!0&&(M=y==="right"||y===null?"left":"right");let S=[];return _h(S,v,xE,a),xh(S,M,dE,"right","left",u,a),_h(S,_,vE,o),xh(S,g,pE,"top","bottom",u,o),_h(S,m,yE,s),xh(S,y,sx,"left","right",n,s),_h(S,p,_E,r),xh(S,d,ox,"bottom","top",n,r),S}function xh(e,t,n,i,r,s,o){if(!t)return;let a=bU(t);o=MU(a?i:t,s,o);let{line:l}=o;(n===sx||n===ox)&&l&&!Eo(l)&&e.push(qE(SU(o))),e.push(n(o)),a&&e.push(n({...o,anchor:r,label:null}))}function _h(e,t,n,i){!t||Eo(t)||e.push(n(wU(t,i)))}function bU(e){return/^\s*both\s*$/i.test(e)}function MU(e,t,{line:n=t.line,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f=t.label,labelAnchor:d,labelArrow:p=t.labelArrow,labelOffset:y}){return{anchor:e,line:n,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f,labelAnchor:d,labelArrow:p,labelOffset:y}}function SU(e){let{anchor:t,line:n}=e;return{anchor:t,facetAnchor:t+"-empty",stroke:n===!0?void 0:n}}function wU(e,{stroke:t=Pa(e)?e:void 0,ticks:n=TU(e)?e:void 0,tickSpacing:i,ariaLabel:r,ariaDescription:s}){return{stroke:t,ticks:n,tickSpacing:i,ariaLabel:r,ariaDescription:s}}function TU(e){switch(typeof e){case"number":return!0;case"string":return!Pa(e)}return qn(e)||typeof e?.range=="function"}function vh(e,t){let n=`${t}-axis `;return e.some(i=>i.ariaLabel?.startsWith(n))}function nA(e,t){for(let n of t)for(let i in n.channels){let{scale:r}=n.channels[i];if(r===e||r==="projection")return!0}return!1}function EU(e,t){for(let n in e){let i=e[n],r=t[n];i.label===void 0&&r&&(i.label=r.label)}return e}function AU({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Yf(n),c=e&&iA(e),u=t&&iA(t);return{marginTop:t?u[0]:i,marginRight:e?a-c[1]:r,marginBottom:t?l-u[1]:s,marginLeft:e?c[0]:o,inset:{marginTop:n.marginTop,marginRight:n.marginRight,marginBottom:n.marginBottom,marginLeft:n.marginLeft},width:a,height:l}}function iA(e){let t=e.domain();if(t.length===0)return[0,e.bandwidth()];let n=e(t[0]),i=e(t[t.length-1]);return i<n&&([n,i]=[i,n]),[n,i+e.bandwidth()]}var CU=new Map([["basis",iS],["basis-closed",sS],["basis-open",aS],["bundle",cS],["bump-x",KM],["bump-y",jM],["cardinal",uS],["cardinal-closed",fS],["cardinal-open",hS],["catmull-rom",pS],["catmull-rom-closed",gS],["catmull-rom-open",xS],["linear",vo],["linear-closed",vS],["monotone-x",SS],["monotone-y",wS],["natural",ES],["step",AS],["step-after",RS],["step-before",CS]]);function yx(e=vo,t){if(typeof e=="function")return e;let n=CU.get(`${e}`.toLowerCase());if(!n)throw new Error(`unknown curve: ${e}`);if(t!==void 0){if("beta"in n)return n.beta(t);if("tension"in n)return n.tension(t);if("alpha"in n)return n.alpha(t)}return n}function bh(e=Ps,t){return typeof e!="function"&&`${e}`.toLowerCase()==="auto"?Ps:yx(e,t)}function Ps(e){return vo(e)}function RU(e={y:"count"},t={}){[e,t]=LU(e,t);let{x:n,y:i}=t;return IU(DU(n,t,Ae),null,null,i,e,Va(t))}function PU(e,t,n={}){if(n?.interval==null)return n;let{reduce:i=Wf}=n,r={filter:null};return n[t]!=null&&(r[t]=i),n[`${t}1`]!=null&&(r[`${t}1`]=i),n[`${t}2`]!=null&&(r[`${t}2`]=i),e(r,n)}function aA(e={}){return PU(RU,"y",Io(e,"x"))}function IU(e,t,n,i,{data:r=xy,filter:s=Mc,sort:o,reverse:a,...l}={},c={}){e=sA(e),t=sA(t),l=UU(l,c),r=uA(r,Ae),o=o==null?void 0:lA("sort",o,c),s=s==null?void 0:cA("filter",s,c),n!=null&&Sc(l,"x","x1","x2")&&(n=null),i!=null&&Sc(l,"y","y1","y2")&&(i=null);let[u,h]=Ei(e),[f,d]=Ei(e),[p,y]=Ei(t),[m,g]=Ei(t),[_,M]=n!=null?[n,"x"]:i!=null?[i,"y"]:[],[v,S]=Ei(_),{x:b,y:x,z:w,fill:A,stroke:C,x1:R,x2:D,y1:k,y2:P,domain:L,cumulative:z,thresholds:U,interval:Z,...F}=c,[V,q]=Ei(w),[st]=Xn(A),[lt]=Xn(C),[$,at]=Ei(st),[ft,ot]=Ei(lt);return{..."z"in c&&{z:V||w},..."fill"in c&&{fill:$||A},..."stroke"in c&&{stroke:ft||C},...Po(F,(rt,J,gt)=>{let ct=bc(Te(rt,_),gt?.[M]),K=Te(rt,w),It=Te(rt,st),pt=Te(rt,lt),Ot=mw(l,{z:K,fill:It,stroke:pt}),Ht=[],le=[],oe=ct&&S([]),Ke=K&&q([]),Ge=It&&at([]),zn=pt&&ot([]),An=e&&h([]),Gn=e&&d([]),G=t&&y([]),Vn=t&&g([]),be=BU(e,t,rt),Me=0;for(let mt of l)mt.initialize(rt);o&&o.initialize(rt),s&&s.initialize(rt);for(let mt of J){let Re=[];for(let Dt of l)Dt.scope("facet",mt);o&&o.scope("facet",mt),s&&s.scope("facet",mt);for(let[Dt,zt]of yy(mt,Ot))for(let[I,T]of yy(zt,ct))for(let[H,ut]of be(T))if(Ot&&(ut.z=Dt),!(s&&!s.reduce(H,ut))){Re.push(Me++),le.push(r.reduceIndex(H,rt,ut)),ct&&oe.push(I),K&&Ke.push(Ot===K?Dt:K[(H.length>0?H:T)[0]]),It&&Ge.push(Ot===It?Dt:It[(H.length>0?H:T)[0]]),pt&&zn.push(Ot===pt?Dt:pt[(H.length>0?H:T)[0]]),An&&(An.push(ut.x1),Gn.push(ut.x2)),G&&(G.push(ut.y1),Vn.push(ut.y2));for(let nt of l)nt.reduce(H,ut);o&&o.reduce(H,ut)}Ht.push(Re)}return gw(Ht,o,a),{data:le,facets:Ht}}),...!Sc(l,"x")&&(u?{x1:u,x2:f,x:vc(u,f)}:{x:b,x1:R,x2:D}),...!Sc(l,"y")&&(p?{y1:p,y2:m,y:vc(p,m)}:{y:x,y1:k,y2:P}),...v&&{[M]:v},...Object.fromEntries(l.map(({name:rt,output:J})=>[rt,J]))}}function LU({cumulative:e,domain:t,thresholds:n,interval:i,...r},s){return[r,{cumulative:e,domain:t,thresholds:n,interval:i,...s}]}function DU(e,{cumulative:t,domain:n,thresholds:i,interval:r},s){return e={...gr(e)},e.domain===void 0&&(e.domain=n),e.cumulative===void 0&&(e.cumulative=t),e.thresholds===void 0&&(e.thresholds=i),e.interval===void 0&&(e.interval=r),e.value===void 0&&(e.value=s),e.thresholds=NU(e.thresholds,e.interval),e}function sA(e){if(e==null)return;let{value:t,cumulative:n,domain:i=un,thresholds:r}=e,s=o=>{let a=Te(o,t),l;if(Ue(a)||OU(r)){a=me(a,sy,Float64Array);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Ts(r)?r(a,u,h):r;typeof f=="number"&&(f=pf(u,h,f)),Ts(f)&&(i===un&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h))),l=f}else{a=Dn(a);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Ts(r)?r(a,u,h):r;if(typeof f=="number")if(i===un){let d=ta(u,h,f);if(isFinite(d))if(d>0){let p=Math.round(u/d),y=Math.round(h/d);p*d<=u||--p,y*d>h||++y;let m=y-p+1;f=new Float64Array(m);for(let g=0;g<m;++g)f[g]=(p+g)*d}else if(d<0){d=-d;let p=Math.round(u*d),y=Math.round(h*d);p/d<=u||--p,y/d>h||++y;let m=y-p+1;f=new Float64Array(m);for(let g=0;g<m;++g)f[g]=(p+g)/d}else f=[u];else f=[u]}else f=hs(u,h,f);else Ts(f)&&(i===un&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h)));l=f}let c=[];if(l.length===1)c.push([l[0],l[0]]);else for(let u=1;u<l.length;++u)c.push([l[u-1],l[u]]);return c.bin=(n<0?zU:n>0?kU:xx)(c,l,a),c};return s.label=zi(t),s}function NU(e,t,n=oA){if(e===void 0)return t===void 0?n:mr(t);if(typeof e=="string"){switch(e.toLowerCase()){case"freedman-diaconis":return Av;case"scott":return Kp;case"sturges":return Mv;case"auto":return oA}return xc(e)}return e}function UU(e,t){return pw(e,t,lA)}function lA(e,t,n){return my(e,t,n,cA)}function cA(e,t,n){return gy(e,t,n,uA)}function uA(e,t){return wc(e,t,FU)}function FU(e){switch(`${e}`.toLowerCase()){case"x":return GU;case"x1":return HU;case"x2":return WU;case"y":return VU;case"y1":return $U;case"y2":return XU;case"z":return yw}throw new Error(`invalid bin reduce: ${e}`)}function oA(e,t,n){return Math.min(200,Kp(e,t,n))}function OU(e){return YS(e)||qn(e)&&Ue(e)}function BU(e,t,n){let i=e?.(n),r=t?.(n);return i&&r?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries()){let u=r.bin(o[a]);for(let[h,[f,d]]of r.entries())yield[u[h],{data:n,x1:l,y1:f,x2:c,y2:d}]}}:i?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries())yield[o[a],{data:n,x1:l,x2:c}]}:function*(s){let o=r.bin(s);for(let[a,[l,c]]of r.entries())yield[o[a],{data:n,y1:l,y2:c}]}}function xx(e,t,n){return t=Dn(t),i=>{let r=e.map(()=>[]);for(let s of i)r[na(t,n[s])-1]?.push(s);return r}}function kU(e,t,n){let i=xx(e,t,n);return r=>{let s=i(r);for(let o=1,a=s.length;o<a;++o){let l=s[o-1],c=s[o];for(let u of l)c.push(u)}return s}}function zU(e,t,n){let i=xx(e,t,n);return r=>{let s=i(r);for(let o=s.length-2;o>=0;--o){let a=s[o+1],l=s[o];for(let c of a)l.push(c)}return s}}function fA(e,t){let n=(+e+ +t)/2;return e instanceof Date?new Date(n):n}var GU={reduceIndex(e,t,{x1:n,x2:i}){return fA(n,i)}},VU={reduceIndex(e,t,{y1:n,y2:i}){return fA(n,i)}},HU={reduceIndex(e,t,{x1:n}){return n}},WU={reduceIndex(e,t,{x2:n}){return n}},$U={reduceIndex(e,t,{y1:n}){return n}},XU={reduceIndex(e,t,{y2:n}){return n}};var qU={ariaLabel:"area",strokeWidth:1,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Mh=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,z:a,curve:l,tension:c}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0},z:{value:Ca(n),optional:!0}},n,qU),this.z=a,this.curve=yx(l,c)}filter(t){return t}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n,0,0).call(u=>u.selectAll().data(ih(t,[o,a,l,c],this,i)).enter().append("path").call(Ne,this).call(nh,this,i).attr("d",ZM().curve(this.curve).defined(h=>h>=0).x0(h=>o[h]).y0(h=>a[h]).x1(h=>l[h]).y1(h=>c[h]))).node()}};function _x(e,t){let{x:n=To,...i}=aA(t);return new Mh(e,VE(BE({...i,x1:n,x2:void 0},n===To?"y2":"y")))}var YU={ariaLabel:"link",fill:"none",stroke:"currentColor",strokeMiterlimit:1},Sh=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,curve:a,tension:l}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,YU),this.curve=bh(a,l),Lo(this,n)}project(t,n,i){this.curve!==Ps&&super.project(t,n,i)}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i,{curve:u}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(h=>h.selectAll().data(t).enter().append("path").call(Ne,this).attr("d",u===Ps&&s.projection?ZU(s.path(),o,a,l,c):f=>{let d=mi(),p=u(d);return p.lineStart(),p.point(o[f],a[f]),p.point(l[f],c[f]),p.lineEnd(),d}).call(bn,this,i).call(Rc,this,i,s)).node()}};function ZU(e,t,n,i,r){return t=Dn(t),n=Dn(n),i=Dn(i),r=Dn(r),s=>e({type:"LineString",coordinates:[[t[s],n[s]],[i[s],r[s]]]})}function vx(e,{x:t,x1:n,x2:i,y:r,y1:s,y2:o,...a}={}){return[n,i]=hA(t,n,i),[s,o]=hA(r,s,o),new Sh(e,{...a,x1:n,x2:i,y1:s,y2:o})}function hA(e,t,n){if(e===void 0){if(t===void 0){if(n!==void 0)return[n]}else if(n===void 0)return[t]}else{if(t===void 0)return n===void 0?[e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}var JU={ariaLabel:"dot",fill:"none",stroke:"currentColor",strokeWidth:1.5};function KU(e){return e.sort===void 0&&e.reverse===void 0?fw({channel:"-r"},e):e}var wh=class extends ye{constructor(t,n={}){let{x:i,y:r,r:s,rotate:o,symbol:a=bo,frameAnchor:l}=n,[c,u]=Le(o,0),[h,f]=lw(a),[d,p]=Le(s,h==null?3:4.5);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},r:{value:d,scale:"r",filter:So,optional:!0},rotate:{value:c,optional:!0},symbol:{value:h,scale:"auto",optional:!0}},KU(n),JU),this.r=p,this.rotate=u,this.symbol=f,this.frameAnchor=Es(l);let{channels:y}=this,{symbol:m}=y;if(m){let{fill:g,stroke:_}=y;m.hint={fill:g?g.value===m.value?"color":"currentColor":this.fill??"currentColor",stroke:_?_.value===m.value?"color":"currentColor":this.stroke??"none"}}}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,r:u,rotate:h,symbol:f}=i,{r:d,rotate:p,symbol:y}=this,[m,g]=_r(this,r),_=y===bo,M=u?void 0:d*d*Math.PI;return ba(d)&&(t=[]),se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(v=>v.selectAll().data(t).enter().append(_?"circle":"path").call(Ne,this).call(_?S=>{S.attr("cx",l?b=>l[b]:m).attr("cy",c?b=>c[b]:g).attr("r",u?b=>u[b]:d)}:S=>{S.attr("transform",Ha`translate(${l?b=>l[b]:m},${c?b=>c[b]:g})${h?b=>` rotate(${h[b]})`:p?` rotate(${p})`:""}`).attr("d",u&&f?b=>{let x=mi();return f[b].draw(x,u[b]*u[b]*Math.PI),x}:u?b=>{let x=mi();return y.draw(x,u[b]*u[b]*Math.PI),x}:f?b=>{let x=mi();return f[b].draw(x,M),x}:(()=>{let b=mi();return y.draw(b,M),b})())}).call(bn,this,i)).node()}};function Nc(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=ki(t,n)),new wh(e,{...i,x:t,y:n})}var jU={ariaLabel:"line",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Th=class extends ye{constructor(t,n={}){let{x:i,y:r,z:s,curve:o,tension:a}=n;super(t,{x:{value:i,scale:"x"},y:{value:r,scale:"y"},z:{value:Ca(n),optional:!0}},n,jU),this.z=s,this.curve=bh(o,a),Lo(this,n)}filter(t){return t}project(t,n,i){this.curve!==Ps&&super.project(t,n,i)}render(t,n,i,r,s){let{x:o,y:a}=i,{curve:l}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(c=>c.selectAll().data(ih(t,[o,a],this,i)).enter().append("path").call(Ne,this).call(nh,this,i).call(BT,this,i,s).attr("d",l===Ps&&s.projection?QU(s.path(),o,a):R0().curve(l).defined(u=>u>=0).x(u=>o[u]).y(u=>a[u]))).node()}};function QU(e,t,n){return t=Dn(t),n=Dn(n),i=>{let r=[],s=[r];for(let o of i)o===-1?(r=[],s.push(r)):r.push([t[o],n[o]]);return e({type:"MultiLineString",coordinates:s})}}function Eh(e,{x:t,y:n,...i}={}){return[t,n]=ki(t,n),new Th(e,{...i,x:t,y:n})}ye.prototype.plot=function({marks:e=[],...t}={}){return Ya({...t,marks:[...e,this]})};var eF="http://www.w3.org/2000/svg";function Tt(e,t={},...n){let i=document.createElement(e);for(let[r,s]of Object.entries(t))i.setAttribute(r,s);return i.append(...n.filter(r=>r!==null)),i}function we(e,t,...n){let i=document.createElementNS(eF,e);for(let[r,s]of Object.entries(t))i.setAttribute(r,String(s));return i.append(...n.filter(r=>r!==null)),i}function ze(e,t=3){return String(Number(e.toPrecision(t)))}function pA(e,t,n,i,r){let s=[],o=i>980?Math.min(3,e.pairs.length):i>640?2:1,a=Math.min(520,Math.floor((i-16*(o-1))/o)),l=e.pairs.length===1;return s.push(Tt("div",{class:l?"side-by-side with-window":"side-by-side"},Tt("figure",{class:"small-plan"},n,Tt("figcaption",{},"From above in the blank.")),e.entries.length?iF(e,t,r):Tt("div"),l?dA(e.pairs[0],t,Math.min(380,i)):null)),e.run&&s.push(...nF(e.run,t,i,r)),e.pairs.length>1&&s.push(Tt("div",{class:"pairs"},...e.pairs.map(c=>dA(c,t,a)))),s}function mA(e){for(let t of e.querySelectorAll("style"))t.remove();for(let t of e.querySelectorAll("[aria-label]"))t.removeAttribute("aria-label");return e}function bx(e,t,n,i,r,s,o){let a=(l,c)=>l&&l[c]!==null?l[c]*s:null;return e.to.map((l,c)=>({from:(c?e.to[c-1]:0)*o,to:l*o,low:a(t,c),high:a(n,c),left:a(i,c),right:a(r,c)}))}function nF(e,t,n,i){let r=t.unit==="mm",s=r?.001:t.scale/12,o=`cut, ${r?"m":"ft"}`,{unit:a,scale:l}=t,c=(f,d,p,y,m,g)=>{let _=Math.max(...p.flatMap(b=>[b.high??0,g?b.right??0:0]),0)||Math.max(...p.map(b=>b.right??0),0),M=m?Math.max(_*1.1,Math.min(Math.max(...p.map(b=>b.right??0)),_*2.2)):_*1.1;if(!(M>0))return null;let v=b=>b.left!==null||b.right!==null,S=mA(Ya({width:n,height:y?128:108,marginLeft:62,marginRight:12,marginTop:8,marginBottom:y?36:18,className:"chart",x:{label:y?o:null,domain:[0,e.to[e.to.length-1]*s],ticks:Math.max(3,n/110),tickFormat:y?void 0:()=>""},y:{label:null,domain:[0,M],ticks:4,grid:!0,clamp:!0},marks:[m?gh(p.filter(v),{x1:"from",x2:"to",y1:b=>b.left??0,y2:b=>b.right??M,className:"band"}):null,gh(p.filter(b=>b.high!==null),{x1:"from",x2:"to",y1:b=>Math.min(b.low??0,b.high),y2:b=>Math.max(b.high,(b.low??0)+M/60),className:"values"}),g?Do(p.filter(b=>b.right!==null),{x1:"from",x2:"to",y:"right",className:"set-line"}):null,Do([0])]}));return S.setAttribute("role","img"),S.setAttribute("aria-label",`${f} along the run: ${d}`),S.addEventListener("click",b=>{let x=S.getBoundingClientRect(),w=((b.clientX-x.left)/x.width*n-62)/(n-74),A=e.to[e.to.length-1],C=e.to.findIndex(R=>R>=w*A);C>=0&&w>=0&&i(e.worst[C])}),Tt("figure",{class:"run"},Tt("figcaption",{},Tt("b",{},f),` ${d}`),S)},u=e.chip_high.some(f=>f!==null),h=e.window_low.some(f=>f!==null)||e.window_high.some(f=>f!==null);return[u?c(`Chip, ${a}`,h?"thinnest to thickest; the band is its window":"thinnest to thickest; no window is known",bx(e,e.chip_low,e.chip_high,e.window_low,e.window_high,l,s),!1,h,!1):null,c(`Feed, ${a}/min`,"what is reached; the line is F",bx(e,e.feed_low,e.feed_high,null,e.set,l,s),!1,!1,!0),c(`Depth, ${a}`,"deepest cut at once",bx(e,e.depth.map(f=>f===null?null:0),e.depth,null,null,l,s),!0,!1,!1)].filter(f=>f!==null)}var Mx=190,Za=116,Is=58;function iF(e,t,n){let i=Tt("div",{class:"entries"});for(let r of e.entries){let s=Tt("button",{type:"button",class:"plain script-only","aria-label":`Show line ${r.line} on the path`},`line ${r.line}`);s.addEventListener("click",()=>n(r.row));let o=[r.solid?`${ze(r.solid*t.scale)} ${t.unit} of solid`:null,r.slope!==null&&(r.kind==="ramp"||r.kind==="helix")?`${ze(r.slope)}° below level`:null].filter(Boolean).join(", ");i.append(Tt("figure",{class:"entry"},rF(r,e,e.diameter??3,t),Tt("figcaption",{},Tt("b",{},`${r.words}${r.count>1?` × ${r.count.toLocaleString("en")}`:""}`),o?` ${o} `:" ",s,Tt("span",{class:"print-only"},`line ${r.line}`))))}return i}function rF(e,t,n,i){let[r,s]=e.inside,{travel:o,z:a}=e,l=e.top??Math.max(...a),c=o[r]-n,u=o[s]+n,h=Math.min(...a.slice(r,s+1)),f=Math.min(Math.max(...a.slice(r,s+1)),l+Math.max(n,l-h)),d=Math.max((f-h)*.18,n*.3,.3),p=Mx-Is,y=Math.min(p/(u-c),Za/(f-h+2*d)),m=(c+u)/2,g=w=>Is+p/2+(w-m)*y,_=w=>Za/2-(w-(h+f)/2)*y,M=we("svg",{viewBox:`0 0 ${Mx} ${Za}`,class:"side-view",role:"img","aria-label":`${e.words}, from the side`}),v=`side-${++sF}`;M.append(we("clipPath",{id:v},we("rect",{x:Is,y:0,width:p,height:Za})));let S=we("g",{"clip-path":`url(#${v})`});M.append(S),S.append(we("rect",{x:Is,y:_(l),width:p,height:Math.max(0,Za-_(l)),class:"solid"})),S.append(we("line",{x1:Is,x2:Mx,y1:_(l),y2:_(l),class:"top"}));let b=n*y;S.append(we("path",{d:aF(g(o[s]),_(a[s]),b,t),class:"tool"}));let x=(w,A,C)=>{let R="";for(let D=Math.max(0,w);D<=Math.min(A,a.length-1);D++)R+=`${R?"L":"M"}${g(o[D]).toFixed(1)} ${_(a[D]).toFixed(1)}`;S.append(we("path",{d:R,class:C}))};return x(0,r,"way before"),x(s,a.length-1,"way before"),x(r,s,"way"),S.append(we("circle",{cx:g(o[s]),cy:_(a[s]),r:2.6,class:"tip"})),oF(M,[...e.top!==null&&_(l)>=0?[{at:_(l),text:`top ${ze(l*i.scale,4)}`}]:[],{at:_(a[s]),text:`Z ${ze(a[s]*i.scale,4)}`}]),M}var sF=0;function oF(e,t){t.sort((r,s)=>r.at-s.at);let i=-1/0;for(let r of t){let s=Math.min(Za-3,Math.max(9,r.at+3,i+12));i=s,e.append(we("path",{d:`M${Is-5} ${r.at.toFixed(1)}H${Is}`,class:"top"}),we("text",{x:Is-7,y:s,class:"note","text-anchor":"end"},r.text))}}function aF(e,t,n,i){let r=Math.max(n/2,.8);if(i.angle!==null&&i.angle<180){let o=r/Math.tan(i.angle*Math.PI/360);return`M${e-r} -2V${t-o}L${e} ${t}L${e+r} ${t-o}V-2`}let s=Math.min(i.round===null?0:i.round/(i.diameter??1)*n,r);return`M${e-r} -2V${t-s}A${s} ${s} 0 0 0 ${e-r+s} ${t}H${e+r-s}A${s} ${s} 0 0 0 ${e+r} ${t-s}V-2`}function dA(e,t,n){let{scale:i,unit:r}=t,s=r==="mm",{pairs:o}=e,a=e.speeds.map((S,b)=>({speed:S,low:e.low[b]===null&&e.high[b]===null?null:(e.low[b]??0)*i,high:e.high[b]===null?null:e.high[b]*i})),l=o.map(S=>({speed:S.speed,feed:S.feed*i,inside:S.inside})),c=o.flatMap(S=>S.near?[{from:S.speed,at:S.feed*i,speed:S.near.speed,feed:S.near.feed*i}]:[]),u=[...l,...c].map(S=>S.feed),h=[...l,...c].map(S=>S.speed),f=Math.max(...u)*1.35,d=Math.min(Math.max(f,...a.flatMap(S=>[S.low??0,S.high??0])),f*2.2),p=Math.min(e.speeds[0],...h),y=Math.max(e.speeds.at(-1),...h),m=mA(Ya({width:n,height:250,marginLeft:64,marginRight:16,marginTop:26,marginBottom:38,className:"chart",x:{label:"true speed, rev/min",domain:[p,y],ticks:Math.max(3,n/90)},y:{label:`feed, ${r}/min`,labelAnchor:"center",labelArrow:"none",domain:[0,d],clamp:!0,ticks:5},marks:[_x(a.map(S=>({...S,high:S.low===null?null:S.high??d})),{x:"speed",y1:"low",y2:"high",className:"band"}),Eh(a,{x:"speed",y:"low",className:"limit"}),Eh(a,{x:"speed",y:"high",className:"limit"}),Ic(e.marks,{x:"speed",className:"mark-line"}),$a(e.marks,{x:"speed",y:d,text:"mark",dy:-8,className:"mark-text"}),vx(c,{x1:"from",y1:"at",x2:"speed",y2:"feed",className:"to-near"}),Nc(c,{x:"speed",y:"feed",symbol:"diamond",r:6,className:"near"}),Nc(l.filter(S=>S.inside),{x:"speed",y:"feed",symbol:"circle",r:5,className:"pair inside"}),Nc(l.filter(S=>!S.inside),{x:"speed",y:"feed",symbol:"times",r:6,className:"pair outside"}),Do([0])]})),g=S=>`F${ze(S*i,4)}`,_=S=>s?`${ze(S*.001)} m`:`${ze(S*i/12)} ft`,M=[];for(let S of o){let{near:b}=S,x=`${ze(S.speed,5)} rev/min`,w=b?`the nearest good pair is ${g(b.feed)} at ${ze(b.speed,5)} rev/min${b.mark?`, dial ${b.mark}`:""}`:"no pair near it is inside",A=S.dial.length>1?`; on the dial ${S.dial.map(D=>`${D.mark} ${g(D.feed)}`).join(", ")}`:"",C=S.inside?"inside every limit that is known":`outside (${S.broken.join(", ")}); ${w}${A}`,R=M.find(D=>D.speed===x&&D.text===C);R?(R.feeds.push(g(S.feed)),R.cut+=S.cut):M.push({feeds:[g(S.feed)],speed:x,cut:S.cut,text:C})}let v=S=>`${S.feeds.join(", ")} at ${S.speed}`;return m.setAttribute("role","img"),m.setAttribute("aria-label",`Operating window: ${M.map(S=>`${v(S)}: ${S.text}`).join(". ")}.`),Tt("figure",{class:"window"},Tt("figcaption",{},Tt("b",{},"Operating window"),": the feeds and speeds at which every limit that is known is kept.",Tt("ul",{class:"pair-words"},...M.map(S=>Tt("li",{},Tt("b",{},v(S)),` (${_(S.cut)}): ${S.text}`)))),m,Tt("ul",{class:"key"},o.some(S=>S.inside)?Tt("li",{class:"key-in"},"in the program, inside"):null,o.some(S=>!S.inside)?Tt("li",{class:"key-out"},"in the program, outside"):null,c.length?Tt("li",{class:"key-near"},"nearest good pair"):null,e.marks.length?Tt("li",{class:"key-mark"},"mark of the dial"):null))}async function Ch(e){let t=document.getElementById(e),n=Uint8Array.from(atob(t.textContent.trim()),r=>r.charCodeAt(0));t.textContent="";let i=new Blob([n]).stream().pipeThrough(new DecompressionStream("deflate"));return new Uint8Array(await new Response(i).arrayBuffer())}var Ah=class{constructor(t){this.raw=t}raw;bytes(t){return this.raw.subarray(t.at,t.at+t.length)}whole(t){let n=t.length,i=this.raw,r=new Int32Array(n),s=0;for(let o=0,a=t.at;o<n;o++,a++){let l=i[a]|i[a+n]<<8|i[a+2*n]<<16|i[a+3*n]<<24;s=t.delta?s+l|0:l,r[o]=s}return r}numbers(t){return Float32Array.from(this.whole(t),n=>n/t.scale)}path(t){return{n:t.line.length,x:this.numbers(t.x),y:this.numbers(t.y),z:this.numbers(t.z),line:this.whole(t.line),tool:this.whole(t.tool),kind:this.bytes(t.kind),place:this.bytes(t.place),share:this.bytes(t.share),chip:this.bytes(t.chip),depth:this.bytes(t.depth),force:this.bytes(t.force)}}};function gA(e,t){let{unit:n,scale:i,most:r}=e,s=(u,h=3)=>String(Number((u*i).toPrecision(h))),o=1/0,a=-1/0;for(let u=0;u<t.n;u++)t.kind[u]===2&&(o=Math.min(o,t.z[u+1]),a=Math.max(a,t.z[u+1]));a>o||(o-=.5,a+=.5);let l=(u,h,f=254)=>u[h]===255?NaN:Math.min(u[h]/f,1),c=(o+a)/2;return[{key:"chip",label:"chip against its window",about:"the slice of one tooth, against what is good",at:(u,h)=>l(u.place,h,240),ticks:[[0,"nothing"],[1/3,"thinnest good"],[2/3,"thickest good"],[1,"twice that"]]},{key:"reached",label:"reached over set feed",about:"how much of F the machine really gets to",at:(u,h)=>l(u.share,h,200),ticks:[[0,"0 %"],[.5,"50 %"],[1,"all of F"]]},{key:"depth",label:"depth of cut",about:"how deep the tool cuts at once",at:(u,h)=>l(u.depth,h),ticks:[[0,"0"],[.5,s(r.depth/2)],[1,`${s(r.depth)} ${n}`]]},{key:"force",label:"force",about:"on the tool, the high end of what it may be",at:(u,h)=>l(u.force,h),ticks:[[0,"0"],[.5,String(Number((r.force/2).toPrecision(2)))],[1,`${Number(r.force.toPrecision(2))} N`]]},{key:"height",label:"height",about:"Z of the tip of the tool",at:(u,h)=>(u.z[h+1]-o)/(a-o),ticks:[[0,s(o)],[.5,s(c)],[1,`${s(a)} ${n}`]]}]}function Ja(e,t){return dc(t?.18+.82*e:.9*e)}function Sx(e,t){let n=0,i=0;for(let r=0;r<t.n;r++)t.kind[r]===2&&(n++,Number.isNaN(e.at(t,r))||i++);return n?i/n:0}var qr=22,wx=6e6,Ph=class{constructor(t,n,i,r,s){this.lines=t;this.numbers=n;this.total=i;this.findings=r;this.pick=s;this.rows=Tt("div",{class:"rows",role:"presentation"}),this.inner=Tt("div",{class:"inner",role:"presentation"},this.rows),this.element=Tt("div",{class:"listing",tabindex:"0",role:"listbox","aria-label":"Text of the program"},this.inner),this.inner.style.height=`${Math.min(this.lines.length*qr,wx)}px`,this.element.addEventListener("scroll",()=>this.refresh()),this.element.addEventListener("keydown",o=>this.key(o)),this.rows.addEventListener("click",o=>{let a=o.target.closest("[data-line]");a&&this.pick(Number(a.dataset.line))}),new ResizeObserver(()=>this.refresh()).observe(this.element),this.refresh()}lines;numbers;total;findings;pick;element;inner;rows;chosen=-1;marked=new Set;show(t,n=[]){this.marked=new Set(n),this.chosen=this.placeOf(t);let i=Math.max(1,Math.floor(this.element.clientHeight/qr)),r=Math.max(0,this.chosen-Math.floor(i/2));this.element.scrollTop=r*this.scale(i),this.refresh()}scale(t){let n=Math.max(1,this.lines.length-t);return this.lines.length*qr<=wx?qr:(wx-t*qr)/n}placeOf(t){let n=0,i=this.lines.length-1;for(;n<i;){let r=n+i+1>>1;this.numbers(r)<=t?n=r:i=r-1}return n}key(t){let n=Math.max(1,Math.floor(this.element.clientHeight/qr)-1),i={ArrowDown:1,ArrowUp:-1,PageDown:n,PageUp:-n,Home:-1/0,End:1/0}[t.key];if(i===void 0)return;t.preventDefault();let r=Math.min(this.lines.length-1,Math.max(0,this.chosen+i));this.pick(this.numbers(r))}refresh(){let t=Math.ceil(this.element.clientHeight/qr)+1,n=this.scale(t),i=Math.max(0,Math.min(this.lines.length-t+1,Math.floor(this.element.scrollTop/n))),r=[];for(let s=i;s<Math.min(this.lines.length,i+t);s++)r.push(this.row(s));this.rows.style.transform=`translateY(${n===qr?i*qr:this.element.scrollTop}px)`,this.rows.replaceChildren(...r),this.chosen>=i&&this.chosen<i+t?this.element.setAttribute("aria-activedescendant",`line-${this.numbers(this.chosen)}`):this.element.removeAttribute("aria-activedescendant")}row(t){let n=this.numbers(t),i=t===this.chosen,r=Tt("div",{class:i?"row here":this.marked.has(n)?"row also":"row",role:"option",id:`line-${n}`,"aria-selected":String(i),"data-line":String(n)},Tt("i",{},n.toLocaleString("en")),Tt("code",{},this.lines[t]));t>0&&this.numbers(t-1)!==n-1&&r.classList.add("gap");let o=this.findings.get(n);return o&&r.append(Tt("span",{class:"at"},`finding ${o.slice(0,3).map(a=>a+1).join(", ")}`)),r}get whole(){return this.lines.length===this.total}};var Ih=[],yA=matchMedia("(prefers-color-scheme: dark)"),xA=!1;function Ls(){if(xA)return!1;let e=document.documentElement.dataset.theme;return e?e==="dark":yA.matches}function _A(e){Ih.push(e)}function Hi(e){return getComputedStyle(document.documentElement).getPropertyValue(`--${e}`).trim()}function vA(){let e=document.getElementById("theme"),t=i=>{i?document.documentElement.dataset.theme=i:delete document.documentElement.dataset.theme;for(let r of Ih)r()},n="";try{n=localStorage.getItem("gclint-theme")??""}catch{}e&&(n==="light"||n==="dark")&&(e.value=n,t(n)),e?.addEventListener("change",()=>{t(e.value);try{localStorage.setItem("gclint-theme",e.value)}catch{}});for(let i of[!0,!1])addEventListener(i?"beforeprint":"afterprint",()=>{let r=Ls();if(xA=i,Ls()!==r)for(let s of Ih)s()});yA.addEventListener("change",()=>{for(let i of Ih)i()})}var Tx=12,Ds=26;function Ex(e,t,n,i,r,s,o){let[a,l,c,u]=Ax(e,t),h=Math.min((r-2*Ds)/(l-a),(r*1.05-2*Ds)/(u-c)),f=(l-a)*h+2*Ds,d=(u-c)*h+2*Ds,p=Math.max(0,(r-f)/2),y=A=>(A-a)*h+Ds+p,m=A=>d-Ds-(A-c)*h,g=(A,C)=>`${y(A).toFixed(1)} ${m(C).toFixed(1)}`,_=we("svg",{viewBox:`0 0 ${r} ${d.toFixed(0)}`,class:"plan",role:"img","aria-label":"The path from above in the blank"}),M=e.field;M&&_.append(we("rect",{x:y(M.x[0]),y:m(M.y[1]),width:(M.x[1]-M.x[0])*h,height:(M.y[1]-M.y[0])*h,class:M.declared&&M.placed?"blank":"blank assumed"}));for(let A of e.keep_out)_.append(we("rect",{x:y(A.low[0]),y:m(A.high[1]),width:Math.max(1,(A.high[0]-A.low[0])*h),height:Math.max(1,(A.high[1]-A.low[1])*h),class:"keep-out"},we("title",{},A.name)));let v=new Map,S="",b=-1,x=0;for(let A=0;A<t.n;A++){if(t.kind[A]===4||s!==null&&t.tool[A]!==s)continue;let C=lF(t,A,i),R=v.get(C);R||v.set(C,R=[]),t.kind[A]===2&&(x+=Math.hypot(t.x[A+1]-t.x[A],t.y[A+1]-t.y[A])*h),(b!==A||S!==C)&&R.push(`M${g(t.x[A],t.y[A])}`),R.push(`L${g(t.x[A+1],t.y[A+1])}`),S=C,b=A+1}let w=Math.min(1.6,Math.max(.3,.3*(l-a)*(u-c)*h*h/Math.max(x,1)));for(let A of[...v.keys()].sort()){let C=we("path",{d:v.get(A).join(""),class:`line ${A.split(" ")[1]}`});A.includes("cut")&&(C.style.strokeWidth=`${w.toFixed(2)}px`);let R=Number(A.split(" ")[2]??-1);R>=0&&(C.style.stroke=Ja((R+.5)/Tx,Ls())),_.append(C)}return y(0)>0&&y(0)<r&&m(0)>0&&m(0)<d&&_.append(we("path",{d:`M${y(0)-7} ${m(0)}h14M${y(0)} ${m(0)-7}v14`,class:"zero"}),we("circle",{cx:y(0),cy:m(0),r:3.5,class:"zero"},we("title",{},"work zero"))),M&&cF(_,e,y,m,d),o&&uF(_,e,n,y,m),{svg:_,toMm:A=>{let C=_.getScreenCTM();if(!C)return null;let R=new DOMPoint(A.clientX,A.clientY).matrixTransform(C.inverse());return[(R.x-Ds-p)/h+a,(d-Ds-R.y)/h+c]},mark:(A,C)=>_.append(we("circle",{cx:y(A),cy:m(C),r:11,class:"here"})),toScreen:(A,C)=>{let R=_.getScreenCTM();if(!R)return null;let D=new DOMPoint(y(A),m(C)).matrixTransform(R);return[D.x,D.y]},perPixel:()=>1/(h*(_.getScreenCTM()?.a||1))}}function lF(e,t,n){let i=e.kind[t];if(i===0)return"0 rapid";if(i===1)return"1 air";if(i===3)return"9 crash";let r=n?n.at(e,t):NaN;return Number.isNaN(r)?"2 cut":`3 cut ${String(Math.min(Tx-1,Math.floor(r*Tx))).padStart(2,"0")}`}function Ax(e,t){let[n,i,r,s]=[1/0,-1/0,1/0,-1/0];e.field&&([n,i,r,s]=[...e.field.x,...e.field.y]);for(let a=0;a<t.n;a++)if(!(t.kind[a]!==2&&(e.field||t.kind[a]===4)))for(let l of[a,a+1])n=Math.min(n,t.x[l]),i=Math.max(i,t.x[l]),r=Math.min(r,t.y[l]),s=Math.max(s,t.y[l]);if(!(i>=n))return[-10,10,-10,10];let o=Math.max(i-n,s-r,1)*.04;return[n-o,i+o,r-o,s+o]}function cF(e,t,n,i,r){let s=t.field,o=t.scale,a=(l,c,u,h)=>e.append(we("text",{x:l,y:c,class:"side","text-anchor":h},u));a(n(s.x[0]),r-6,`X ${ze(s.x[0]*o,4)}`,"start"),a(n(s.x[1]),r-6,`X ${ze(s.x[1]*o,4)} ${t.unit}`,"end"),a(n(s.x[0]),i(s.y[1])-5,`Y ${ze(s.y[1]*o,4)}`,"start"),a(n(s.x[1]),i(s.y[0])+12,`Y ${ze(s.y[0]*o,4)}`,"end")}function uF(e,t,n,i,r){let s=t.findings.length>25?6.5:8,o=new Set;t.findings.forEach((a,l)=>{if(a.row===null)return;let c=a.row,u=i((n.x[c]+n.x[c+1])/2),h=r((n.y[c]+n.y[c+1])/2),f=`${Math.round(u/14)} ${Math.round(h/14)}`;o.has(f)||(o.add(f),e.append(we("g",{class:`pin g-${a.grade}`,"data-pin":l},we("circle",{cx:u,cy:h,r:s}),we("text",{x:u,y:h+3.2,"text-anchor":"middle"},String(l+1)))))})}var Ws={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},$s={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},jA=0,r_=1,QA=2;var fu=1,t2=2,El=3,Xs=0,Bn=1,Ii=2,$o=0,Al=1,s_=2,o_=3,a_=4,e2=5;var Xo=100,n2=101,i2=102,r2=103,s2=104,o2=200,a2=201,l2=202,c2=203,l_=204,c_=205,u2=206,f2=207,h2=208,d2=209,p2=210,m2=211,g2=212,y2=213,x2=214,ad=0,ld=1,cd=2,ml=3,ud=4,fd=5,hd=6,dd=7,Vd=0,_2=1,v2=2,Mr=0,u_=1,f_=2,h_=3,d_=4,p_=5,m_=6,g_=7;var y_=300,qo=301,Cl=302,Hd=303,Wd=304,pd=1e3,br=1001,md=1002,ln=1003,b2=1004;var hu=1005;var On=1006,$d=1007;var as=1008;var Jn=1009,x_=1010,__=1011,Rl=1012,Xd=1013,Ki=1014,ji=1015,Qi=1016,qd=1017,Yd=1018,Yo=1020,v_=35902,b_=35899,M_=1021,S_=1022,tr=1023,es=1026,ls=1027,w_=1028,Zd=1029,qs=1030,Jd=1031;var Kd=1033,du=33776,pu=33777,mu=33778,gu=33779,jd=35840,Qd=35841,tp=35842,ep=35843,np=36196,ip=37492,rp=37496,sp=37488,op=37489,yu=37490,ap=37491,lp=37808,cp=37809,up=37810,fp=37811,hp=37812,dp=37813,pp=37814,mp=37815,gp=37816,yp=37817,xp=37818,_p=37819,vp=37820,bp=37821,Mp=36492,Sp=36494,wp=36495,Tp=36283,Ep=36284,xu=36285,Ap=36286;var Vc=2300,gd=2301,sd=2302,Kx=2303,jx=2400,Qx=2401,t_=2402;var M2=3200;var Cp=0,S2=1,cs="",ri="srgb",Hc="srgb-linear",Wc="linear",he="srgb";var od=7680;var w2=519,T2=512,E2=513,A2=514,T_=515,C2=516,R2=517,E_=518,A_=519,C_=35044;var R_="300 es",Ri=2e3,gl=2001;function fF(e){for(let t=e.length-1;t>=0;--t)if(e[t]>=65535)return!0;return!1}function hF(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function $c(e){return document.createElementNS("http://www.w3.org/1999/xhtml",e)}function P2(){let e=$c("canvas");return e.style.display="block",e}var bA={},yl=null;function Xc(...e){let t="THREE."+e.shift();yl?yl("log",t,...e):console.log(t,...e)}function I2(e){let t=e[0];if(typeof t=="string"&&t.startsWith("TSL:")){let n=e[1];n&&n.isStackTrace?e[0]+=" "+n.getLocation():e[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return e}function Ft(...e){e=I2(e);let t="THREE."+e.shift();if(yl)yl("warn",t,...e);else{let n=e[0];n&&n.isStackTrace?console.warn(n.getError(t)):console.warn(t,...e)}}function Gt(...e){e=I2(e);let t="THREE."+e.shift();if(yl)yl("error",t,...e);else{let n=e[0];n&&n.isStackTrace?console.error(n.getError(t)):console.error(t,...e)}}function zc(...e){let t=e.join(" ");t in bA||(bA[t]=!0,Ft(...e))}function L2(e,t,n){return new Promise(function(i,r){function s(){switch(e.clientWaitSync(t,e.SYNC_FLUSH_COMMANDS_BIT,0)){case e.WAIT_FAILED:r();break;case e.TIMEOUT_EXPIRED:setTimeout(s,n);break;default:i()}}setTimeout(s,n)})}var D2={[ad]:ad,[cd]:hd,[ud]:ud,[ml]:fd,[ld]:ld,[hd]:cd,[dd]:dd,[fd]:ml},qi=class{addEventListener(t,n){this._listeners===void 0&&(this._listeners={});let i=this._listeners;i[t]===void 0&&(i[t]=[]),i[t].indexOf(n)===-1&&i[t].push(n)}hasEventListener(t,n){let i=this._listeners;return i===void 0?!1:i[t]!==void 0&&i[t].indexOf(n)!==-1}removeEventListener(t,n){let i=this._listeners;if(i===void 0)return;let r=i[t];if(r!==void 0){let s=r.indexOf(n);s!==-1&&r.splice(s,1)}}dispatchEvent(t){let n=this._listeners;if(n===void 0)return;let i=n[t.type];if(i!==void 0){t.target=this;let r=i.slice(0);for(let s=0,o=r.length;s<o;s++)r[s].call(this,t);t.target=null}}},Mn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],MA=1234567,dl=Math.PI/180,xl=180/Math.PI;function Ys(){let e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0,i=Math.random()*4294967295|0;return(Mn[e&255]+Mn[e>>8&255]+Mn[e>>16&255]+Mn[e>>24&255]+"-"+Mn[t&255]+Mn[t>>8&255]+"-"+Mn[t>>16&15|64]+Mn[t>>24&255]+"-"+Mn[n&63|128]+Mn[n>>8&255]+"-"+Mn[n>>16&255]+Mn[n>>24&255]+Mn[i&255]+Mn[i>>8&255]+Mn[i>>16&255]+Mn[i>>24&255]).toLowerCase()}function Xt(e,t,n){return Math.max(t,Math.min(n,e))}function P_(e,t){return(e%t+t)%t}function dF(e,t,n,i,r){return i+(e-t)*(r-i)/(n-t)}function pF(e,t,n){return e!==t?(n-e)/(t-e):0}function Gc(e,t,n){return(1-n)*e+n*t}function mF(e,t,n,i){return Gc(e,t,1-Math.exp(-n*i))}function gF(e,t=1){return t-Math.abs(P_(e,t*2)-t)}function yF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*(3-2*e))}function xF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*e*(e*(e*6-15)+10))}function _F(e,t){return e+Math.floor(Math.random()*(t-e+1))}function vF(e,t){return e+Math.random()*(t-e)}function bF(e){return e*(.5-Math.random())}function MF(e){e!==void 0&&(MA=e);let t=MA+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function SF(e){return e*dl}function wF(e){return e*xl}function TF(e){return e>0&&Number.isInteger(e)&&2**Math.round(Math.log2(e))===e}function EF(e){return Math.pow(2,Math.ceil(Math.log(e)/Math.LN2))}function I_(e){return Math.pow(2,Math.floor(Math.log(e)/Math.LN2))}function AF(e,t,n,i,r){let s=Math.cos,o=Math.sin,a=s(n/2),l=o(n/2),c=s((t+i)/2),u=o((t+i)/2),h=s((t-i)/2),f=o((t-i)/2),d=s((i-t)/2),p=o((i-t)/2);switch(r){case"XYX":e.set(a*u,l*h,l*f,a*c);break;case"YZY":e.set(l*f,a*u,l*h,a*c);break;case"ZXZ":e.set(l*h,l*f,a*u,a*c);break;case"XZX":e.set(a*u,l*p,l*d,a*c);break;case"YXY":e.set(l*d,a*u,l*p,a*c);break;case"ZYZ":e.set(l*p,l*d,a*u,a*c);break;default:Ft("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+r)}}function Rp(e){switch(e.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function L_(e,t){if(t.constructor===Float32Array)return e;let n=Rp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(e/n,-1)}function D_(e,t){if(t.constructor===Float32Array)return e;let n=Rp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(e*n)}var _u={DEG2RAD:dl,RAD2DEG:xl,generateUUID:Ys,clamp:Xt,euclideanModulo:P_,mapLinear:dF,inverseLerp:pF,lerp:Gc,damp:mF,pingpong:gF,smoothstep:yF,smootherstep:xF,randInt:_F,randFloat:vF,randFloatSpread:bF,seededRandom:MF,degToRad:SF,radToDeg:wF,isPowerOfTwo:TF,ceilPowerOfTwo:EF,floorPowerOfTwo:I_,setQuaternionFromProperEuler:AF,normalize:D_,denormalize:L_},Bt=class{static{this.prototype.isVector2=!0}constructor(t=0,n=0){this.x=t,this.y=n}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,n){return this.x=t,this.y=n,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let n=this.x,i=this.y,r=t.elements;return this.x=r[0]*n+r[3]*i+r[6],this.y=r[1]*n+r[4]*i+r[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y;return n*n+i*i}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this}rotateAround(t,n){let i=Math.cos(n),r=Math.sin(n),s=this.x-t.x,o=this.y-t.y;return this.x=s*i-o*r+t.x,this.y=s*r+o*i+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},ai=class{constructor(t=0,n=0,i=0,r=1){this.isQuaternion=!0,this._x=t,this._y=n,this._z=i,this._w=r}static slerpFlat(t,n,i,r,s,o,a){let l=i[r+0],c=i[r+1],u=i[r+2],h=i[r+3],f=s[o+0],d=s[o+1],p=s[o+2],y=s[o+3];if(h!==y||l!==f||c!==d||u!==p){let m=l*f+c*d+u*p+h*y;m<0&&(f=-f,d=-d,p=-p,y=-y,m=-m);let g=1-a;if(m<.9995){let _=Math.acos(m),M=Math.sin(_);g=Math.sin(g*_)/M,a=Math.sin(a*_)/M,l=l*g+f*a,c=c*g+d*a,u=u*g+p*a,h=h*g+y*a}else{l=l*g+f*a,c=c*g+d*a,u=u*g+p*a,h=h*g+y*a;let _=1/Math.sqrt(l*l+c*c+u*u+h*h);l*=_,c*=_,u*=_,h*=_}}t[n]=l,t[n+1]=c,t[n+2]=u,t[n+3]=h}static multiplyQuaternionsFlat(t,n,i,r,s,o){let a=i[r],l=i[r+1],c=i[r+2],u=i[r+3],h=s[o],f=s[o+1],d=s[o+2],p=s[o+3];return t[n]=a*p+u*h+l*d-c*f,t[n+1]=l*p+u*f+c*h-a*d,t[n+2]=c*p+u*d+a*f-l*h,t[n+3]=u*p-a*h-l*f-c*d,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,n,i,r){return this._x=t,this._y=n,this._z=i,this._w=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,n=!0){let i=t._x,r=t._y,s=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(i/2),u=a(r/2),h=a(s/2),f=l(i/2),d=l(r/2),p=l(s/2);switch(o){case"XYZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"YXZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"ZXY":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"ZYX":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"YZX":this._x=f*u*h+c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h-f*d*p;break;case"XZY":this._x=f*u*h-c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h+f*d*p;break;default:Ft("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return n===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,n){let i=n/2,r=Math.sin(i);return this._x=t.x*r,this._y=t.y*r,this._z=t.z*r,this._w=Math.cos(i),this._onChangeCallback(),this}setFromRotationMatrix(t){let n=t.elements,i=n[0],r=n[4],s=n[8],o=n[1],a=n[5],l=n[9],c=n[2],u=n[6],h=n[10],f=i+a+h;if(f>0){let d=.5/Math.sqrt(f+1);this._w=.25/d,this._x=(u-l)*d,this._y=(s-c)*d,this._z=(o-r)*d}else if(i>a&&i>h){let d=2*Math.sqrt(1+i-a-h);this._w=(u-l)/d,this._x=.25*d,this._y=(r+o)/d,this._z=(s+c)/d}else if(a>h){let d=2*Math.sqrt(1+a-i-h);this._w=(s-c)/d,this._x=(r+o)/d,this._y=.25*d,this._z=(l+u)/d}else{let d=2*Math.sqrt(1+h-i-a);this._w=(o-r)/d,this._x=(s+c)/d,this._y=(l+u)/d,this._z=.25*d}return this._onChangeCallback(),this}setFromUnitVectors(t,n){let i=t.dot(n)+1;return i<1e-8?(i=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=i):(this._x=0,this._y=-t.z,this._z=t.y,this._w=i)):(this._x=t.y*n.z-t.z*n.y,this._y=t.z*n.x-t.x*n.z,this._z=t.x*n.y-t.y*n.x,this._w=i),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(Xt(this.dot(t),-1,1)))}rotateTowards(t,n){let i=this.angleTo(t);if(i===0)return this;let r=Math.min(1,n/i);return this.slerp(t,r),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=n._x,l=n._y,c=n._z,u=n._w;return this._x=i*u+o*a+r*c-s*l,this._y=r*u+o*l+s*a-i*c,this._z=s*u+o*c+i*l-r*a,this._w=o*u-i*a-r*l-s*c,this._onChangeCallback(),this}slerp(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=this.dot(t);a<0&&(i=-i,r=-r,s=-s,o=-o,a=-a);let l=1-n;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,n=Math.sin(n*c)/u,this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this._onChangeCallback()}else this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this.normalize();return this}slerpQuaternions(t,n,i){return this.copy(t).slerp(n,i)}random(){let t=2*Math.PI*Math.random(),n=2*Math.PI*Math.random(),i=Math.random(),r=Math.sqrt(1-i),s=Math.sqrt(i);return this.set(r*Math.sin(t),r*Math.cos(t),s*Math.sin(n),s*Math.cos(n))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,n=0){return this._x=t[n],this._y=t[n+1],this._z=t[n+2],this._w=t[n+3],this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._w,t}fromBufferAttribute(t,n){return this._x=t.getX(n),this._y=t.getY(n),this._z=t.getZ(n),this._w=t.getW(n),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},B=class{static{this.prototype.isVector3=!0}constructor(t=0,n=0,i=0){this.x=t,this.y=n,this.z=i}set(t,n,i){return i===void 0&&(i=this.z),this.x=t,this.y=n,this.z=i,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,n){return this.x=t.x*n.x,this.y=t.y*n.y,this.z=t.z*n.z,this}applyEuler(t){return this.applyQuaternion(SA.setFromEuler(t))}applyAxisAngle(t,n){return this.applyQuaternion(SA.setFromAxisAngle(t,n))}applyMatrix3(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[3]*i+s[6]*r,this.y=s[1]*n+s[4]*i+s[7]*r,this.z=s[2]*n+s[5]*i+s[8]*r,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=t.elements,o=1/(s[3]*n+s[7]*i+s[11]*r+s[15]);return this.x=(s[0]*n+s[4]*i+s[8]*r+s[12])*o,this.y=(s[1]*n+s[5]*i+s[9]*r+s[13])*o,this.z=(s[2]*n+s[6]*i+s[10]*r+s[14])*o,this}applyQuaternion(t){let n=this.x,i=this.y,r=this.z,s=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*r-a*i),u=2*(a*n-s*r),h=2*(s*i-o*n);return this.x=n+l*c+o*h-a*u,this.y=i+l*u+a*c-s*h,this.z=r+l*h+s*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[4]*i+s[8]*r,this.y=s[1]*n+s[5]*i+s[9]*r,this.z=s[2]*n+s[6]*i+s[10]*r,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,n){let i=t.x,r=t.y,s=t.z,o=n.x,a=n.y,l=n.z;return this.x=r*l-s*a,this.y=s*o-i*l,this.z=i*a-r*o,this}projectOnVector(t){let n=t.lengthSq();if(n===0)return this.set(0,0,0);let i=t.dot(this)/n;return this.copy(t).multiplyScalar(i)}projectOnPlane(t){return Cx.copy(this).projectOnVector(t),this.sub(Cx)}reflect(t){return this.sub(Cx.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y,r=this.z-t.z;return n*n+i*i+r*r}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,n,i){let r=Math.sin(n)*t;return this.x=r*Math.sin(i),this.y=Math.cos(n)*t,this.z=r*Math.cos(i),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,n,i){return this.x=t*Math.sin(n),this.y=i,this.z=t*Math.cos(n),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this}setFromMatrixScale(t){let n=this.setFromMatrixColumn(t,0).length(),i=this.setFromMatrixColumn(t,1).length(),r=this.setFromMatrixColumn(t,2).length();return this.x=n,this.y=i,this.z=r,this}setFromMatrixColumn(t,n){return this.fromArray(t.elements,n*4)}setFromMatrix3Column(t,n){return this.fromArray(t.elements,n*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,n=Math.random()*2-1,i=Math.sqrt(1-n*n);return this.x=i*Math.cos(t),this.y=n,this.z=i*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Cx=new B,SA=new ai,Vt=class{static{this.prototype.isMatrix3=!0}constructor(t,n,i,r,s,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c)}set(t,n,i,r,s,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=r,u[2]=a,u[3]=n,u[4]=s,u[5]=l,u[6]=i,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],this}extractBasis(t,n,i){return t.setFromMatrix3Column(this,0),n.setFromMatrix3Column(this,1),i.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let n=t.elements;return this.set(n[0],n[4],n[8],n[1],n[5],n[9],n[2],n[6],n[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[3],l=i[6],c=i[1],u=i[4],h=i[7],f=i[2],d=i[5],p=i[8],y=r[0],m=r[3],g=r[6],_=r[1],M=r[4],v=r[7],S=r[2],b=r[5],x=r[8];return s[0]=o*y+a*_+l*S,s[3]=o*m+a*M+l*b,s[6]=o*g+a*v+l*x,s[1]=c*y+u*_+h*S,s[4]=c*m+u*M+h*b,s[7]=c*g+u*v+h*x,s[2]=f*y+d*_+p*S,s[5]=f*m+d*M+p*b,s[8]=f*g+d*v+p*x,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[3]*=t,n[6]*=t,n[1]*=t,n[4]*=t,n[7]*=t,n[2]*=t,n[5]*=t,n[8]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return n*o*u-n*a*c-i*s*u+i*a*l+r*s*c-r*o*l}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=u*o-a*c,f=a*l-u*s,d=c*s-o*l,p=n*h+i*f+r*d;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let y=1/p;return t[0]=h*y,t[1]=(r*c-u*i)*y,t[2]=(a*i-r*o)*y,t[3]=f*y,t[4]=(u*n-r*l)*y,t[5]=(r*s-a*n)*y,t[6]=d*y,t[7]=(i*l-c*n)*y,t[8]=(o*n-i*s)*y,this}transpose(){let t,n=this.elements;return t=n[1],n[1]=n[3],n[3]=t,t=n[2],n[2]=n[6],n[6]=t,t=n[5],n[5]=n[7],n[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let n=this.elements;return t[0]=n[0],t[1]=n[3],t[2]=n[6],t[3]=n[1],t[4]=n[4],t[5]=n[7],t[6]=n[2],t[7]=n[5],t[8]=n[8],this}setUvTransform(t,n,i,r,s,o,a){let l=Math.cos(s),c=Math.sin(s);return this.set(i*l,i*c,-i*(l*o+c*a)+o+t,-r*c,r*l,-r*(-c*o+l*a)+a+n,0,0,1),this}scale(t,n){return zc("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Rx.makeScale(t,n)),this}rotate(t){return zc("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Rx.makeRotation(-t)),this}translate(t,n){return zc("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Rx.makeTranslation(t,n)),this}makeTranslation(t,n){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,n,0,0,1),this}makeRotation(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,i,n,0,0,0,1),this}makeScale(t,n){return this.set(t,0,0,0,n,0,0,0,1),this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<9;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<9;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Rx=new Vt,wA=new Vt().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),TA=new Vt().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function CF(){let e={enabled:!0,workingColorSpace:Hc,spaces:{},convert:function(r,s,o){return this.enabled===!1||s===o||!s||!o||(this.spaces[s].transfer===he&&(r.r=ts(r.r),r.g=ts(r.g),r.b=ts(r.b)),this.spaces[s].primaries!==this.spaces[o].primaries&&(r.applyMatrix3(this.spaces[s].toXYZ),r.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===he&&(r.r=pl(r.r),r.g=pl(r.g),r.b=pl(r.b))),r},workingToColorSpace:function(r,s){return this.convert(r,this.workingColorSpace,s)},colorSpaceToWorking:function(r,s){return this.convert(r,s,this.workingColorSpace)},getPrimaries:function(r){return this.spaces[r].primaries},getTransfer:function(r){return r===cs?Wc:this.spaces[r].transfer},getToneMappingMode:function(r){return this.spaces[r].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(r,s=this.workingColorSpace){return r.fromArray(this.spaces[s].luminanceCoefficients)},define:function(r){Object.assign(this.spaces,r)},_getMatrix:function(r,s,o){return r.copy(this.spaces[o].fromXYZ).multiply(this.spaces[s].toXYZ)},_getDrawingBufferColorSpace:function(r){return this.spaces[r].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(r=this.workingColorSpace){return this.spaces[r].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],n=[.2126,.7152,.0722],i=[.3127,.329];return e.define({[Hc]:{primaries:t,whitePoint:i,transfer:Wc,toXYZ:wA,fromXYZ:TA,luminanceCoefficients:n,workingColorSpaceConfig:{unpackColorSpace:ri},outputColorSpaceConfig:{drawingBufferColorSpace:ri}},[ri]:{primaries:t,whitePoint:i,transfer:he,toXYZ:wA,fromXYZ:TA,luminanceCoefficients:n,outputColorSpaceConfig:{drawingBufferColorSpace:ri}}}),e}var ie=CF();function ts(e){return e<.04045?e*.0773993808:Math.pow(e*.9478672986+.0521327014,2.4)}function pl(e){return e<.0031308?e*12.92:1.055*Math.pow(e,.41666)-.055}var ja,yd=class{static getDataURL(t,n="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let i;if(t instanceof HTMLCanvasElement)i=t;else{ja===void 0&&(ja=$c("canvas")),ja.width=t.width,ja.height=t.height;let r=ja.getContext("2d");t instanceof ImageData?r.putImageData(t,0,0):r.drawImage(t,0,0,t.width,t.height),i=ja}return i.toDataURL(n)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let n=$c("canvas");n.width=t.width,n.height=t.height;let i=n.getContext("2d");i.drawImage(t,0,0,t.width,t.height);let r=i.getImageData(0,0,t.width,t.height),s=r.data;for(let o=0;o<s.length;o++)s[o]=ts(s[o]/255)*255;return i.putImageData(r,0,0),n}else if(t.data){let n=t.data.slice(0);for(let i=0;i<n.length;i++)n instanceof Uint8Array||n instanceof Uint8ClampedArray?n[i]=Math.floor(ts(n[i]/255)*255):n[i]=ts(n[i]);return{data:n,width:t.width,height:t.height}}else return Ft("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},RF=0,_l=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:RF++}),this.uuid=Ys(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let n=this.data;return typeof HTMLVideoElement<"u"&&n instanceof HTMLVideoElement?t.set(n.videoWidth,n.videoHeight,0):typeof VideoFrame<"u"&&n instanceof VideoFrame?t.set(n.displayWidth,n.displayHeight,0):n!==null?t.set(n.width||0,n.height||0,n.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let i={uuid:this.uuid,url:""},r=this.data;if(r!==null){let s;if(Array.isArray(r)){s=[];for(let o=0,a=r.length;o<a;o++)r[o].isDataTexture?s.push(Px(r[o].image)):s.push(Px(r[o]))}else s=Px(r);i.url=s}return n||(t.images[this.uuid]=i),i}};function Px(e){return typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap?yd.getDataURL(e):e.data?{data:Array.from(e.data),width:e.width,height:e.height,type:e.data.constructor.name}:(Ft("Texture: Unable to serialize Texture."),{})}var PF=0,Ix=new B,Zn=class e extends qi{constructor(t=e.DEFAULT_IMAGE,n=e.DEFAULT_MAPPING,i=br,r=br,s=On,o=as,a=tr,l=Jn,c=e.DEFAULT_ANISOTROPY,u=cs){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:PF++}),this.uuid=Ys(),this.name="",this.source=new _l(t),this.mipmaps=[],this.mapping=n,this.channel=0,this.wrapS=i,this.wrapT=r,this.magFilter=s,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new Bt(0,0),this.repeat=new Bt(1,1),this.center=new Bt(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Vt,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Ix).x}get height(){return this.source.getSize(Ix).y}get depth(){return this.source.getSize(Ix).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let n in t){let i=t[n];if(i===void 0){Ft(`Texture.setValues(): parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Texture.setValues(): property '${n}' does not exist.`);continue}r&&i&&r.isVector2&&i.isVector2||r&&i&&r.isVector3&&i.isVector3||r&&i&&r.isMatrix3&&i.isMatrix3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let i={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(i.userData=this.userData),n||(t.textures[this.uuid]=i),i}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==y_)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case pd:t.x=t.x-Math.floor(t.x);break;case br:t.x=t.x<0?0:1;break;case md:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case pd:t.y=t.y-Math.floor(t.y);break;case br:t.y=t.y<0?0:1;break;case md:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Zn.DEFAULT_IMAGE=null;Zn.DEFAULT_MAPPING=y_;Zn.DEFAULT_ANISOTROPY=1;var de=class{static{this.prototype.isVector4=!0}constructor(t=0,n=0,i=0,r=1){this.x=t,this.y=n,this.z=i,this.w=r}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,n,i,r){return this.x=t,this.y=n,this.z=i,this.w=r,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;case 3:this.w=n;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this.w=t.w+n.w,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this.w+=t.w*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this.w=t.w-n.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=this.w,o=t.elements;return this.x=o[0]*n+o[4]*i+o[8]*r+o[12]*s,this.y=o[1]*n+o[5]*i+o[9]*r+o[13]*s,this.z=o[2]*n+o[6]*i+o[10]*r+o[14]*s,this.w=o[3]*n+o[7]*i+o[11]*r+o[15]*s,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let n=Math.sqrt(1-t.w*t.w);return n<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/n,this.y=t.y/n,this.z=t.z/n),this}setAxisAngleFromRotationMatrix(t){let n,i,r,s,l=t.elements,c=l[0],u=l[4],h=l[8],f=l[1],d=l[5],p=l[9],y=l[2],m=l[6],g=l[10];if(Math.abs(u-f)<.01&&Math.abs(h-y)<.01&&Math.abs(p-m)<.01){if(Math.abs(u+f)<.1&&Math.abs(h+y)<.1&&Math.abs(p+m)<.1&&Math.abs(c+d+g-3)<.1)return this.set(1,0,0,0),this;n=Math.PI;let M=(c+1)/2,v=(d+1)/2,S=(g+1)/2,b=(u+f)/4,x=(h+y)/4,w=(p+m)/4;return M>v&&M>S?M<.01?(i=0,r=.707106781,s=.707106781):(i=Math.sqrt(M),r=b/i,s=x/i):v>S?v<.01?(i=.707106781,r=0,s=.707106781):(r=Math.sqrt(v),i=b/r,s=w/r):S<.01?(i=.707106781,r=.707106781,s=0):(s=Math.sqrt(S),i=x/s,r=w/s),this.set(i,r,s,n),this}let _=Math.sqrt((m-p)*(m-p)+(h-y)*(h-y)+(f-u)*(f-u));return Math.abs(_)<.001&&(_=1),this.x=(m-p)/_,this.y=(h-y)/_,this.z=(f-u)/_,this.w=Math.acos((c+d+g-1)/2),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this.w=n[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this.w=Xt(this.w,t.w,n.w),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this.w=Xt(this.w,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this.w+=(t.w-this.w)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this.w=t.w+(n.w-t.w)*i,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this.w=t[n+3],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t[n+3]=this.w,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this.w=t.getW(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},xd=class extends qi{constructor(t=1,n=1,i={}){super(),i=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:On,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},i),this.isRenderTarget=!0,this.width=t,this.height=n,this.depth=i.depth,this.scissor=new de(0,0,t,n),this.scissorTest=!1,this.viewport=new de(0,0,t,n),this.textures=[];let r=i.count;for(let s=0;s<r;s++)this.textures[s]=new Zn({width:t,height:n,depth:i.depth}),this.textures[s].isRenderTargetTexture=!0,this.textures[s].renderTarget=this;this._setTextureOptions(i),this.depthBuffer=i.depthBuffer,this.stencilBuffer=i.stencilBuffer,this.resolveColorBuffer=i.resolveColorBuffer,this.resolveDepthBuffer=i.resolveDepthBuffer,this.resolveStencilBuffer=i.resolveStencilBuffer,this.storeMultisampledColorBuffer=i.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=i.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=i.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=i.depthTexture,this.samples=i.samples,this.multiview=i.multiview,this.useArrayDepthTexture=i.useArrayDepthTexture}_setTextureOptions(t={}){let n={minFilter:On,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(n.mapping=t.mapping),t.wrapS!==void 0&&(n.wrapS=t.wrapS),t.wrapT!==void 0&&(n.wrapT=t.wrapT),t.wrapR!==void 0&&(n.wrapR=t.wrapR),t.magFilter!==void 0&&(n.magFilter=t.magFilter),t.minFilter!==void 0&&(n.minFilter=t.minFilter),t.format!==void 0&&(n.format=t.format),t.type!==void 0&&(n.type=t.type),t.anisotropy!==void 0&&(n.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(n.colorSpace=t.colorSpace),t.flipY!==void 0&&(n.flipY=t.flipY),t.generateMipmaps!==void 0&&(n.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(n.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(n.internalFormat=t.internalFormat);for(let i=0;i<this.textures.length;i++)this.textures[i].setValues(n)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,n,i=1){if(this.width!==t||this.height!==n||this.depth!==i){this.width=t,this.height=n,this.depth=i;for(let r=0,s=this.textures.length;r<s;r++)this.textures[r].image.width=t,this.textures[r].image.height=n,this.textures[r].image.depth=i,this.textures[r].isData3DTexture!==!0&&(this.textures[r].isArrayTexture=this.textures[r].image.depth>1);this.dispose()}this.viewport.set(0,0,t,n),this.scissor.set(0,0,t,n)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let n=0,i=t.textures.length;n<i;n++){this.textures[n]=t.textures[n].clone(),this.textures[n].isRenderTargetTexture=!0,this.textures[n].renderTarget=this;let r=Object.assign({},t.textures[n].image);this.textures[n].source=new _l(r)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let n=t.depthTexture.clone();n.renderTarget=null,this.depthTexture=n}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},li=class extends xd{constructor(t=1,n=1,i={}){super(t,n,i),this.isWebGLRenderTarget=!0}},qc=class extends Zn{constructor(t=null,n=1,i=1,r=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=ln,this.minFilter=ln,this.wrapR=br,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var _d=class extends Zn{constructor(t=null,n=1,i=1,r=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=ln,this.minFilter=ln,this.wrapR=br,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var ve=class e{static{this.prototype.isMatrix4=!0}constructor(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,m){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,m)}set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,m){let g=this.elements;return g[0]=t,g[4]=n,g[8]=i,g[12]=r,g[1]=s,g[5]=o,g[9]=a,g[13]=l,g[2]=c,g[6]=u,g[10]=h,g[14]=f,g[3]=d,g[7]=p,g[11]=y,g[15]=m,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new e().fromArray(this.elements)}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],n[9]=i[9],n[10]=i[10],n[11]=i[11],n[12]=i[12],n[13]=i[13],n[14]=i[14],n[15]=i[15],this}copyPosition(t){let n=this.elements,i=t.elements;return n[12]=i[12],n[13]=i[13],n[14]=i[14],this}setFromMatrix3(t){let n=t.elements;return this.set(n[0],n[3],n[6],0,n[1],n[4],n[7],0,n[2],n[5],n[8],0,0,0,0,1),this}extractBasis(t,n,i){return this.determinantAffine()===0?(t.set(1,0,0),n.set(0,1,0),i.set(0,0,1),this):(t.setFromMatrixColumn(this,0),n.setFromMatrixColumn(this,1),i.setFromMatrixColumn(this,2),this)}makeBasis(t,n,i){return this.set(t.x,n.x,i.x,0,t.y,n.y,i.y,0,t.z,n.z,i.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let n=this.elements,i=t.elements,r=1/Qa.setFromMatrixColumn(t,0).length(),s=1/Qa.setFromMatrixColumn(t,1).length(),o=1/Qa.setFromMatrixColumn(t,2).length();return n[0]=i[0]*r,n[1]=i[1]*r,n[2]=i[2]*r,n[3]=0,n[4]=i[4]*s,n[5]=i[5]*s,n[6]=i[6]*s,n[7]=0,n[8]=i[8]*o,n[9]=i[9]*o,n[10]=i[10]*o,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromEuler(t){let n=this.elements,i=t.x,r=t.y,s=t.z,o=Math.cos(i),a=Math.sin(i),l=Math.cos(r),c=Math.sin(r),u=Math.cos(s),h=Math.sin(s);if(t.order==="XYZ"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=-l*h,n[8]=c,n[1]=d+p*c,n[5]=f-y*c,n[9]=-a*l,n[2]=y-f*c,n[6]=p+d*c,n[10]=o*l}else if(t.order==="YXZ"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f+y*a,n[4]=p*a-d,n[8]=o*c,n[1]=o*h,n[5]=o*u,n[9]=-a,n[2]=d*a-p,n[6]=y+f*a,n[10]=o*l}else if(t.order==="ZXY"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f-y*a,n[4]=-o*h,n[8]=p+d*a,n[1]=d+p*a,n[5]=o*u,n[9]=y-f*a,n[2]=-o*c,n[6]=a,n[10]=o*l}else if(t.order==="ZYX"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=p*c-d,n[8]=f*c+y,n[1]=l*h,n[5]=y*c+f,n[9]=d*c-p,n[2]=-c,n[6]=a*l,n[10]=o*l}else if(t.order==="YZX"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=y-f*h,n[8]=p*h+d,n[1]=h,n[5]=o*u,n[9]=-a*u,n[2]=-c*u,n[6]=d*h+p,n[10]=f-y*h}else if(t.order==="XZY"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=-h,n[8]=c*u,n[1]=f*h+y,n[5]=o*u,n[9]=d*h-p,n[2]=p*h-d,n[6]=a*u,n[10]=y*h+f}return n[3]=0,n[7]=0,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromQuaternion(t){return this.compose(IF,t,LF)}lookAt(t,n,i){let r=this.elements;return ni.subVectors(t,n),ni.lengthSq()===0&&(ni.z=1),ni.normalize(),Ns.crossVectors(i,ni),Ns.lengthSq()===0&&(Math.abs(i.z)===1?ni.x+=1e-4:ni.z+=1e-4,ni.normalize(),Ns.crossVectors(i,ni)),Ns.normalize(),Dh.crossVectors(ni,Ns),r[0]=Ns.x,r[4]=Dh.x,r[8]=ni.x,r[1]=Ns.y,r[5]=Dh.y,r[9]=ni.y,r[2]=Ns.z,r[6]=Dh.z,r[10]=ni.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[4],l=i[8],c=i[12],u=i[1],h=i[5],f=i[9],d=i[13],p=i[2],y=i[6],m=i[10],g=i[14],_=i[3],M=i[7],v=i[11],S=i[15],b=r[0],x=r[4],w=r[8],A=r[12],C=r[1],R=r[5],D=r[9],k=r[13],P=r[2],L=r[6],z=r[10],U=r[14],Z=r[3],F=r[7],V=r[11],q=r[15];return s[0]=o*b+a*C+l*P+c*Z,s[4]=o*x+a*R+l*L+c*F,s[8]=o*w+a*D+l*z+c*V,s[12]=o*A+a*k+l*U+c*q,s[1]=u*b+h*C+f*P+d*Z,s[5]=u*x+h*R+f*L+d*F,s[9]=u*w+h*D+f*z+d*V,s[13]=u*A+h*k+f*U+d*q,s[2]=p*b+y*C+m*P+g*Z,s[6]=p*x+y*R+m*L+g*F,s[10]=p*w+y*D+m*z+g*V,s[14]=p*A+y*k+m*U+g*q,s[3]=_*b+M*C+v*P+S*Z,s[7]=_*x+M*R+v*L+S*F,s[11]=_*w+M*D+v*z+S*V,s[15]=_*A+M*k+v*U+S*q,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[4]*=t,n[8]*=t,n[12]*=t,n[1]*=t,n[5]*=t,n[9]*=t,n[13]*=t,n[2]*=t,n[6]*=t,n[10]*=t,n[14]*=t,n[3]*=t,n[7]*=t,n[11]*=t,n[15]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],h=t[6],f=t[10],d=t[14],p=t[3],y=t[7],m=t[11],g=t[15],_=l*d-c*f,M=a*d-c*h,v=a*f-l*h,S=o*d-c*u,b=o*f-l*u,x=o*h-a*u;return n*(y*_-m*M+g*v)-i*(p*_-m*S+g*b)+r*(p*M-y*S+g*x)-s*(p*v-y*b+m*x)}determinantAffine(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return n*(o*u-a*c)-i*(s*u-a*l)+r*(s*c-o*l)}transpose(){let t=this.elements,n;return n=t[1],t[1]=t[4],t[4]=n,n=t[2],t[2]=t[8],t[8]=n,n=t[6],t[6]=t[9],t[9]=n,n=t[3],t[3]=t[12],t[12]=n,n=t[7],t[7]=t[13],t[13]=n,n=t[11],t[11]=t[14],t[14]=n,this}setPosition(t,n,i){let r=this.elements;return t.isVector3?(r[12]=t.x,r[13]=t.y,r[14]=t.z):(r[12]=t,r[13]=n,r[14]=i),this}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=t[9],f=t[10],d=t[11],p=t[12],y=t[13],m=t[14],g=t[15],_=n*a-i*o,M=n*l-r*o,v=n*c-s*o,S=i*l-r*a,b=i*c-s*a,x=r*c-s*l,w=u*y-h*p,A=u*m-f*p,C=u*g-d*p,R=h*m-f*y,D=h*g-d*y,k=f*g-d*m,P=_*k-M*D+v*R+S*C-b*A+x*w;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let L=1/P;return t[0]=(a*k-l*D+c*R)*L,t[1]=(r*D-i*k-s*R)*L,t[2]=(y*x-m*b+g*S)*L,t[3]=(f*b-h*x-d*S)*L,t[4]=(l*C-o*k-c*A)*L,t[5]=(n*k-r*C+s*A)*L,t[6]=(m*v-p*x-g*M)*L,t[7]=(u*x-f*v+d*M)*L,t[8]=(o*D-a*C+c*w)*L,t[9]=(i*C-n*D-s*w)*L,t[10]=(p*b-y*v+g*_)*L,t[11]=(h*v-u*b-d*_)*L,t[12]=(a*A-o*R-l*w)*L,t[13]=(n*R-i*A+r*w)*L,t[14]=(y*M-p*S-m*_)*L,t[15]=(u*S-h*M+f*_)*L,this}scale(t){let n=this.elements,i=t.x,r=t.y,s=t.z;return n[0]*=i,n[4]*=r,n[8]*=s,n[1]*=i,n[5]*=r,n[9]*=s,n[2]*=i,n[6]*=r,n[10]*=s,n[3]*=i,n[7]*=r,n[11]*=s,this}getMaxScaleOnAxis(){let t=this.elements,n=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],i=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],r=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(n,i,r))}makeTranslation(t,n,i){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,n,0,0,1,i,0,0,0,1),this}makeRotationX(t){let n=Math.cos(t),i=Math.sin(t);return this.set(1,0,0,0,0,n,-i,0,0,i,n,0,0,0,0,1),this}makeRotationY(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,0,i,0,0,1,0,0,-i,0,n,0,0,0,0,1),this}makeRotationZ(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,0,i,n,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,n){let i=Math.cos(n),r=Math.sin(n),s=1-i,o=t.x,a=t.y,l=t.z,c=s*o,u=s*a;return this.set(c*o+i,c*a-r*l,c*l+r*a,0,c*a+r*l,u*a+i,u*l-r*o,0,c*l-r*a,u*l+r*o,s*l*l+i,0,0,0,0,1),this}makeScale(t,n,i){return this.set(t,0,0,0,0,n,0,0,0,0,i,0,0,0,0,1),this}makeShear(t,n,i,r,s,o){return this.set(1,i,s,0,t,1,o,0,n,r,1,0,0,0,0,1),this}compose(t,n,i){let r=this.elements,s=n._x,o=n._y,a=n._z,l=n._w,c=s+s,u=o+o,h=a+a,f=s*c,d=s*u,p=s*h,y=o*u,m=o*h,g=a*h,_=l*c,M=l*u,v=l*h,S=i.x,b=i.y,x=i.z;return r[0]=(1-(y+g))*S,r[1]=(d+v)*S,r[2]=(p-M)*S,r[3]=0,r[4]=(d-v)*b,r[5]=(1-(f+g))*b,r[6]=(m+_)*b,r[7]=0,r[8]=(p+M)*x,r[9]=(m-_)*x,r[10]=(1-(f+y))*x,r[11]=0,r[12]=t.x,r[13]=t.y,r[14]=t.z,r[15]=1,this}decompose(t,n,i){let r=this.elements;t.x=r[12],t.y=r[13],t.z=r[14];let s=this.determinantAffine();if(s===0)return i.set(1,1,1),n.identity(),this;let o=Qa.set(r[0],r[1],r[2]).length(),a=Qa.set(r[4],r[5],r[6]).length(),l=Qa.set(r[8],r[9],r[10]).length();s<0&&(o=-o),Wi.copy(this);let c=1/o,u=1/a,h=1/l;return Wi.elements[0]*=c,Wi.elements[1]*=c,Wi.elements[2]*=c,Wi.elements[4]*=u,Wi.elements[5]*=u,Wi.elements[6]*=u,Wi.elements[8]*=h,Wi.elements[9]*=h,Wi.elements[10]*=h,n.setFromRotationMatrix(Wi),i.x=o,i.y=a,i.z=l,this}makePerspective(t,n,i,r,s,o,a=Ri,l=!1){let c=this.elements,u=2*s/(n-t),h=2*s/(i-r),f=(n+t)/(n-t),d=(i+r)/(i-r),p,y;if(l)p=s/(o-s),y=o*s/(o-s);else if(a===Ri)p=-(o+s)/(o-s),y=-2*o*s/(o-s);else if(a===gl)p=-o/(o-s),y=-o*s/(o-s);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=f,c[12]=0,c[1]=0,c[5]=h,c[9]=d,c[13]=0,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,n,i,r,s,o,a=Ri,l=!1){let c=this.elements,u=2/(n-t),h=2/(i-r),f=-(n+t)/(n-t),d=-(i+r)/(i-r),p,y;if(l)p=1/(o-s),y=o/(o-s);else if(a===Ri)p=-2/(o-s),y=-(o+s)/(o-s);else if(a===gl)p=-1/(o-s),y=-s/(o-s);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=f,c[1]=0,c[5]=h,c[9]=0,c[13]=d,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<16;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<16;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t[n+9]=i[9],t[n+10]=i[10],t[n+11]=i[11],t[n+12]=i[12],t[n+13]=i[13],t[n+14]=i[14],t[n+15]=i[15],t}},Qa=new B,Wi=new ve,IF=new B(0,0,0),LF=new B(1,1,1),Ns=new B,Dh=new B,ni=new B,EA=new ve,AA=new ai,ns=class e{constructor(t=0,n=0,i=0,r=e.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=n,this._z=i,this._order=r}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,n,i,r=this._order){return this._x=t,this._y=n,this._z=i,this._order=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,n=this._order,i=!0){let r=t.elements,s=r[0],o=r[4],a=r[8],l=r[1],c=r[5],u=r[9],h=r[2],f=r[6],d=r[10];switch(n){case"XYZ":this._y=Math.asin(Xt(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,d),this._z=Math.atan2(-o,s)):(this._x=Math.atan2(f,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Xt(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,d),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-h,s),this._z=0);break;case"ZXY":this._x=Math.asin(Xt(f,-1,1)),Math.abs(f)<.9999999?(this._y=Math.atan2(-h,d),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,s));break;case"ZYX":this._y=Math.asin(-Xt(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(f,d),this._z=Math.atan2(l,s)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(Xt(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-h,s)):(this._x=0,this._y=Math.atan2(a,d));break;case"XZY":this._z=Math.asin(-Xt(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(f,c),this._y=Math.atan2(a,s)):(this._x=Math.atan2(-u,d),this._y=0);break;default:Ft("Euler: .setFromRotationMatrix() encountered an unknown order: "+n)}return this._order=n,i===!0&&this._onChangeCallback(),this}setFromQuaternion(t,n,i){return EA.makeRotationFromQuaternion(t),this.setFromRotationMatrix(EA,n,i)}setFromVector3(t,n=this._order){return this.set(t.x,t.y,t.z,n)}reorder(t){return AA.setFromEuler(this),this.setFromQuaternion(AA,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ns.DEFAULT_ORDER="XYZ";var Yc=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},DF=0,CA=new B,tl=new ai,Yr=new ve,Nh=new B,Uc=new B,NF=new B,UF=new ai,RA=new B(1,0,0),PA=new B(0,1,0),IA=new B(0,0,1),LA={type:"added"},FF={type:"removed"},el={type:"childadded",child:null},Lx={type:"childremoved",child:null},wn=class e extends qi{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:DF++}),this.uuid=Ys(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=e.DEFAULT_UP.clone();let t=new B,n=new ns,i=new ai,r=new B(1,1,1);function s(){i.setFromEuler(n,!1)}function o(){n.setFromQuaternion(i,void 0,!1)}n._onChange(s),i._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:n},quaternion:{configurable:!0,enumerable:!0,value:i},scale:{configurable:!0,enumerable:!0,value:r},modelViewMatrix:{value:new ve},normalMatrix:{value:new Vt}}),this.matrix=new ve,this.matrixWorld=new ve,this.matrixAutoUpdate=e.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=e.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Yc,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,n){this.quaternion.setFromAxisAngle(t,n)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,n){return tl.setFromAxisAngle(t,n),this.quaternion.multiply(tl),this}rotateOnWorldAxis(t,n){return tl.setFromAxisAngle(t,n),this.quaternion.premultiply(tl),this}rotateX(t){return this.rotateOnAxis(RA,t)}rotateY(t){return this.rotateOnAxis(PA,t)}rotateZ(t){return this.rotateOnAxis(IA,t)}translateOnAxis(t,n){return CA.copy(t).applyQuaternion(this.quaternion),this.position.add(CA.multiplyScalar(n)),this}translateX(t){return this.translateOnAxis(RA,t)}translateY(t){return this.translateOnAxis(PA,t)}translateZ(t){return this.translateOnAxis(IA,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(Yr.copy(this.matrixWorld).invert())}lookAt(t,n,i){t.isVector3?Nh.copy(t):Nh.set(t,n,i);let r=this.parent;this.updateWorldMatrix(!0,!1),Uc.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?Yr.lookAt(Uc,Nh,this.up):Yr.lookAt(Nh,Uc,this.up),this.quaternion.setFromRotationMatrix(Yr),r&&(Yr.extractRotation(r.matrixWorld),tl.setFromRotationMatrix(Yr),this.quaternion.premultiply(tl.invert()))}add(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.add(arguments[n]);return this}return t===this?(Gt("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(LA),el.child=t,this.dispatchEvent(el),el.child=null):Gt("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let i=0;i<arguments.length;i++)this.remove(arguments[i]);return this}let n=this.children.indexOf(t);return n!==-1&&(t.parent=null,this.children.splice(n,1),t.dispatchEvent(FF),Lx.child=t,this.dispatchEvent(Lx),Lx.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),Yr.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),Yr.multiply(t.parent.matrixWorld)),t.applyMatrix4(Yr),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(LA),el.child=t,this.dispatchEvent(el),el.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,n){if(this[t]===n)return this;for(let i=0,r=this.children.length;i<r;i++){let o=this.children[i].getObjectByProperty(t,n);if(o!==void 0)return o}}getObjectsByProperty(t,n,i=[]){this[t]===n&&i.push(this);let r=this.children;for(let s=0,o=r.length;s<o;s++)r[s].getObjectsByProperty(t,n,i);return i}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Uc,t,NF),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Uc,UF,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let n=this.matrixWorld.elements;return t.set(n[8],n[9],n[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverseVisible(t)}traverseAncestors(t){let n=this.parent;n!==null&&(t(n),n.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let n=t.x,i=t.y,r=t.z,s=this.matrix.elements;s[12]+=n-s[0]*n-s[4]*i-s[8]*r,s[13]+=i-s[1]*n-s[5]*i-s[9]*r,s[14]+=r-s[2]*n-s[6]*i-s[10]*r}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].updateMatrixWorld(t)}updateWorldMatrix(t,n,i=!1){let r=this.parent;if(t===!0&&r!==null&&r.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||i)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,i=!0),n===!0){let s=this.children;for(let o=0,a=s.length;o<a;o++)s[o].updateWorldMatrix(!1,!0,i)}}toJSON(t){let n=t===void 0||typeof t=="string",i={};n&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},i.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let r={};r.uuid=this.uuid,r.type=this.type,r.name=this.name,r.castShadow=this.castShadow,r.receiveShadow=this.receiveShadow,r.visible=this.visible,r.frustumCulled=this.frustumCulled,r.renderOrder=this.renderOrder,r.static=this.static,r.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(r.userData=this.userData),r.layers=this.layers.mask,r.matrix=this.matrix.toArray(),r.up=this.up.toArray(),this.pivot!==null&&(r.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(r.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(r.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(r.type="InstancedMesh",r.count=this.count,r.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(r.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(r.type="BatchedMesh",r.perObjectFrustumCulled=this.perObjectFrustumCulled,r.sortObjects=this.sortObjects,r.drawRanges=this._drawRanges,r.reservedRanges=this._reservedRanges,r.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),r.instanceInfo=this._instanceInfo.map(a=>({...a})),r.availableInstanceIds=this._availableInstanceIds.slice(),r.availableGeometryIds=this._availableGeometryIds.slice(),r.nextIndexStart=this._nextIndexStart,r.nextVertexStart=this._nextVertexStart,r.geometryCount=this._geometryCount,r.maxInstanceCount=this._maxInstanceCount,r.maxVertexCount=this._maxVertexCount,r.maxIndexCount=this._maxIndexCount,r.geometryInitialized=this._geometryInitialized,r.matricesTexture=this._matricesTexture.toJSON(t),r.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(r.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(r.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(r.boundingBox=this.boundingBox.toJSON()));function s(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?r.background=this.background.toJSON():this.background.isTexture&&(r.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(r.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){r.geometry=s(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let h=l[c];s(t.shapes,h)}else s(t.shapes,l)}}if(this.isSkinnedMesh&&(r.bindMode=this.bindMode,r.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(s(t.skeletons,this.skeleton),r.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(s(t.materials,this.material[l]));r.material=a}else r.material=s(t.materials,this.material);if(this.children.length>0){r.children=[];for(let a=0;a<this.children.length;a++)r.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){r.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];r.animations.push(s(t.animations,l))}}if(n){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),h=o(t.shapes),f=o(t.skeletons),d=o(t.animations),p=o(t.nodes);a.length>0&&(i.geometries=a),l.length>0&&(i.materials=l),c.length>0&&(i.textures=c),u.length>0&&(i.images=u),h.length>0&&(i.shapes=h),f.length>0&&(i.skeletons=f),d.length>0&&(i.animations=d),p.length>0&&(i.nodes=p)}return i.object=r,i;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,n=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),n===!0)for(let i=0;i<t.children.length;i++){let r=t.children[i];this.add(r.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};wn.DEFAULT_UP=new B(0,1,0);wn.DEFAULT_MATRIX_AUTO_UPDATE=!0;wn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Vo=class extends wn{constructor(){super(),this.isGroup=!0,this.type="Group"}},OF={type:"move"},vl=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Vo,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Vo,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new B,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new B),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Vo,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new B,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new B,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let n=this._hand;if(n)for(let i of t.hand.values())this._getHandJoint(n,i)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,n,i){let r=null,s=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&n.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let y of t.hand.values()){let m=n.getJointPose(y,i),g=this._getHandJoint(c,y);m!==null&&(g.matrix.fromArray(m.transform.matrix),g.matrix.decompose(g.position,g.quaternion,g.scale),g.matrixWorldNeedsUpdate=!0,g.jointRadius=m.radius),g.visible=m!==null}let u=c.joints["index-finger-tip"],h=c.joints["thumb-tip"],f=u.position.distanceTo(h.position),d=.02,p=.005;c.inputState.pinching&&f>d+p?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&f<=d-p&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(s=n.getPose(t.gripSpace,i),s!==null&&(l.matrix.fromArray(s.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,s.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(s.linearVelocity)):l.hasLinearVelocity=!1,s.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(s.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(r=n.getPose(t.targetRaySpace,i),r===null&&s!==null&&(r=s),r!==null&&(a.matrix.fromArray(r.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,r.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(r.linearVelocity)):a.hasLinearVelocity=!1,r.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(r.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(OF)))}return a!==null&&(a.visible=r!==null),l!==null&&(l.visible=s!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,n){if(t.joints[n.jointName]===void 0){let i=new Vo;i.matrixAutoUpdate=!1,i.visible=!1,t.joints[n.jointName]=i,t.add(i)}return t.joints[n.jointName]}},N2={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Us={h:0,s:0,l:0},Uh={h:0,s:0,l:0};function Dx(e,t,n){return n<0&&(n+=1),n>1&&(n-=1),n<1/6?e+(t-e)*6*n:n<1/2?t:n<2/3?e+(t-e)*6*(2/3-n):e}var kt=class{constructor(t,n,i){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,n,i)}set(t,n,i){if(n===void 0&&i===void 0){let r=t;r&&r.isColor?this.copy(r):typeof r=="number"?this.setHex(r):typeof r=="string"&&this.setStyle(r)}else this.setRGB(t,n,i);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,n=ri){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ie.colorSpaceToWorking(this,n),this}setRGB(t,n,i,r=ie.workingColorSpace){return this.r=t,this.g=n,this.b=i,ie.colorSpaceToWorking(this,r),this}setHSL(t,n,i,r=ie.workingColorSpace){if(t=P_(t,1),n=Xt(n,0,1),i=Xt(i,0,1),n===0)this.r=this.g=this.b=i;else{let s=i<=.5?i*(1+n):i+n-i*n,o=2*i-s;this.r=Dx(o,s,t+1/3),this.g=Dx(o,s,t),this.b=Dx(o,s,t-1/3)}return ie.colorSpaceToWorking(this,r),this}setStyle(t,n=ri){function i(s){s!==void 0&&parseFloat(s)<1&&Ft("Color: Alpha component of "+t+" will be ignored.")}let r;if(r=/^(\w+)\(([^\)]*)\)/.exec(t)){let s,o=r[1],a=r[2];switch(o){case"rgb":case"rgba":if(s=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(255,parseInt(s[1],10))/255,Math.min(255,parseInt(s[2],10))/255,Math.min(255,parseInt(s[3],10))/255,n);if(s=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(100,parseFloat(s[1]))/100,Math.min(100,parseFloat(s[2]))/100,Math.min(100,parseFloat(s[3]))/100,n);break;case"hsl":case"hsla":if(s=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setHSL(parseFloat(s[1])/360,parseFloat(s[2])/100,parseFloat(s[3])/100,n);break;default:Ft("Color: Unknown color model "+t)}}else if(r=/^\#([A-Fa-f\d]+)$/.exec(t)){let s=r[1],o=s.length;if(o===3)return this.setRGB(parseInt(s.charAt(0),16)/15,parseInt(s.charAt(1),16)/15,parseInt(s.charAt(2),16)/15,n);if(o===6)return this.setHex(parseInt(s,16),n);Ft("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,n);return this}setColorName(t,n=ri){let i=N2[t.toLowerCase()];return i!==void 0?this.setHex(i,n):Ft("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=ts(t.r),this.g=ts(t.g),this.b=ts(t.b),this}copyLinearToSRGB(t){return this.r=pl(t.r),this.g=pl(t.g),this.b=pl(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=ri){return ie.workingToColorSpace(Sn.copy(this),t),Math.round(Xt(Sn.r*255,0,255))*65536+Math.round(Xt(Sn.g*255,0,255))*256+Math.round(Xt(Sn.b*255,0,255))}getHexString(t=ri){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,n=ie.workingColorSpace){ie.workingToColorSpace(Sn.copy(this),n);let i=Sn.r,r=Sn.g,s=Sn.b,o=Math.max(i,r,s),a=Math.min(i,r,s),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let h=o-a;switch(c=u<=.5?h/(o+a):h/(2-o-a),o){case i:l=(r-s)/h+(r<s?6:0);break;case r:l=(s-i)/h+2;break;case s:l=(i-r)/h+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,n=ie.workingColorSpace){return ie.workingToColorSpace(Sn.copy(this),n),t.r=Sn.r,t.g=Sn.g,t.b=Sn.b,t}getStyle(t=ri){ie.workingToColorSpace(Sn.copy(this),t);let n=Sn.r,i=Sn.g,r=Sn.b;return t!==ri?`color(${t} ${n.toFixed(3)} ${i.toFixed(3)} ${r.toFixed(3)})`:`rgb(${Math.round(n*255)},${Math.round(i*255)},${Math.round(r*255)})`}offsetHSL(t,n,i){return this.getHSL(Us),this.setHSL(Us.h+t,Us.s+n,Us.l+i)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,n){return this.r=t.r+n.r,this.g=t.g+n.g,this.b=t.b+n.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,n){return this.r+=(t.r-this.r)*n,this.g+=(t.g-this.g)*n,this.b+=(t.b-this.b)*n,this}lerpColors(t,n,i){return this.r=t.r+(n.r-t.r)*i,this.g=t.g+(n.g-t.g)*i,this.b=t.b+(n.b-t.b)*i,this}lerpHSL(t,n){this.getHSL(Us),t.getHSL(Uh);let i=Gc(Us.h,Uh.h,n),r=Gc(Us.s,Uh.s,n),s=Gc(Us.l,Uh.l,n);return this.setHSL(i,r,s),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let n=this.r,i=this.g,r=this.b,s=t.elements;return this.r=s[0]*n+s[3]*i+s[6]*r,this.g=s[1]*n+s[4]*i+s[7]*r,this.b=s[2]*n+s[5]*i+s[8]*r,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,n=0){return this.r=t[n],this.g=t[n+1],this.b=t[n+2],this}toArray(t=[],n=0){return t[n]=this.r,t[n+1]=this.g,t[n+2]=this.b,t}fromBufferAttribute(t,n){return this.r=t.getX(n),this.g=t.getY(n),this.b=t.getZ(n),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Sn=new kt;kt.NAMES=N2;var Zc=class extends wn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ns,this.environmentIntensity=1,this.environmentRotation=new ns,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,n){return super.copy(t,n),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let n=super.toJSON(t);return this.fog!==null&&(n.object.fog=this.fog.toJSON()),n.object.backgroundBlurriness=this.backgroundBlurriness,n.object.backgroundIntensity=this.backgroundIntensity,n.object.backgroundRotation=this.backgroundRotation.toArray(),n.object.environmentIntensity=this.environmentIntensity,n.object.environmentRotation=this.environmentRotation.toArray(),n}},$i=new B,Zr=new B,Nx=new B,Jr=new B,nl=new B,il=new B,DA=new B,Ux=new B,Fx=new B,Ox=new B,Bx=new de,kx=new de,zx=new de,Qr=class e{constructor(t=new B,n=new B,i=new B){this.a=t,this.b=n,this.c=i}static getNormal(t,n,i,r){r.subVectors(i,n),$i.subVectors(t,n),r.cross($i);let s=r.lengthSq();return s>0?r.multiplyScalar(1/Math.sqrt(s)):r.set(0,0,0)}static getBarycoord(t,n,i,r,s){$i.subVectors(r,n),Zr.subVectors(i,n),Nx.subVectors(t,n);let o=$i.dot($i),a=$i.dot(Zr),l=$i.dot(Nx),c=Zr.dot(Zr),u=Zr.dot(Nx),h=o*c-a*a;if(h===0)return s.set(0,0,0),null;let f=1/h,d=(c*l-a*u)*f,p=(o*u-a*l)*f;return s.set(1-d-p,p,d)}static containsPoint(t,n,i,r){return this.getBarycoord(t,n,i,r,Jr)===null?!1:Jr.x>=0&&Jr.y>=0&&Jr.x+Jr.y<=1}static getInterpolation(t,n,i,r,s,o,a,l){return this.getBarycoord(t,n,i,r,Jr)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(s,Jr.x),l.addScaledVector(o,Jr.y),l.addScaledVector(a,Jr.z),l)}static getInterpolatedAttribute(t,n,i,r,s,o){return Bx.setScalar(0),kx.setScalar(0),zx.setScalar(0),Bx.fromBufferAttribute(t,n),kx.fromBufferAttribute(t,i),zx.fromBufferAttribute(t,r),o.setScalar(0),o.addScaledVector(Bx,s.x),o.addScaledVector(kx,s.y),o.addScaledVector(zx,s.z),o}static isFrontFacing(t,n,i,r){return $i.subVectors(i,n),Zr.subVectors(t,n),$i.cross(Zr).dot(r)<0}set(t,n,i){return this.a.copy(t),this.b.copy(n),this.c.copy(i),this}setFromPointsAndIndices(t,n,i,r){return this.a.copy(t[n]),this.b.copy(t[i]),this.c.copy(t[r]),this}setFromAttributeAndIndices(t,n,i,r){return this.a.fromBufferAttribute(t,n),this.b.fromBufferAttribute(t,i),this.c.fromBufferAttribute(t,r),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return $i.subVectors(this.c,this.b),Zr.subVectors(this.a,this.b),$i.cross(Zr).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return e.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,n){return e.getBarycoord(t,this.a,this.b,this.c,n)}getInterpolation(t,n,i,r,s){return e.getInterpolation(t,this.a,this.b,this.c,n,i,r,s)}containsPoint(t){return e.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return e.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,n){let i=this.a,r=this.b,s=this.c,o,a;nl.subVectors(r,i),il.subVectors(s,i),Ux.subVectors(t,i);let l=nl.dot(Ux),c=il.dot(Ux);if(l<=0&&c<=0)return n.copy(i);Fx.subVectors(t,r);let u=nl.dot(Fx),h=il.dot(Fx);if(u>=0&&h<=u)return n.copy(r);let f=l*h-u*c;if(f<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),n.copy(i).addScaledVector(nl,o);Ox.subVectors(t,s);let d=nl.dot(Ox),p=il.dot(Ox);if(p>=0&&d<=p)return n.copy(s);let y=d*c-l*p;if(y<=0&&c>=0&&p<=0)return a=c/(c-p),n.copy(i).addScaledVector(il,a);let m=u*p-d*h;if(m<=0&&h-u>=0&&d-p>=0)return DA.subVectors(s,r),a=(h-u)/(h-u+(d-p)),n.copy(r).addScaledVector(DA,a);let g=1/(m+y+f);return o=y*g,a=f*g,n.copy(i).addScaledVector(nl,o).addScaledVector(il,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},ci=class{constructor(t=new B(1/0,1/0,1/0),n=new B(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=n}set(t,n){return this.min.copy(t),this.max.copy(n),this}setFromArray(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n+=3)this.expandByPoint(Xi.fromArray(t,n));return this}setFromBufferAttribute(t){this.makeEmpty();for(let n=0,i=t.count;n<i;n++)this.expandByPoint(Xi.fromBufferAttribute(t,n));return this}setFromPoints(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n++)this.expandByPoint(t[n]);return this}setFromCenterAndSize(t,n){let i=Xi.copy(n).multiplyScalar(.5);return this.min.copy(t).sub(i),this.max.copy(t).add(i),this}setFromObject(t,n=!1){return this.makeEmpty(),this.expandByObject(t,n)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,n=!1){t.updateWorldMatrix(!1,!1);let i=t.geometry;if(i!==void 0){let s=i.getAttribute("position");if(n===!0&&s!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=s.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Xi):Xi.fromBufferAttribute(s,o),Xi.applyMatrix4(t.matrixWorld),this.expandByPoint(Xi);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Fh.copy(t.boundingBox)):(i.boundingBox===null&&i.computeBoundingBox(),Fh.copy(i.boundingBox)),Fh.applyMatrix4(t.matrixWorld),this.union(Fh)}let r=t.children;for(let s=0,o=r.length;s<o;s++)this.expandByObject(r[s],n);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,n){return n.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Xi),Xi.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let n,i;return t.normal.x>0?(n=t.normal.x*this.min.x,i=t.normal.x*this.max.x):(n=t.normal.x*this.max.x,i=t.normal.x*this.min.x),t.normal.y>0?(n+=t.normal.y*this.min.y,i+=t.normal.y*this.max.y):(n+=t.normal.y*this.max.y,i+=t.normal.y*this.min.y),t.normal.z>0?(n+=t.normal.z*this.min.z,i+=t.normal.z*this.max.z):(n+=t.normal.z*this.max.z,i+=t.normal.z*this.min.z),n<=-t.constant&&i>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Fc),Oh.subVectors(this.max,Fc),rl.subVectors(t.a,Fc),sl.subVectors(t.b,Fc),ol.subVectors(t.c,Fc),Fs.subVectors(sl,rl),Os.subVectors(ol,sl),Bo.subVectors(rl,ol);let n=[0,-Fs.z,Fs.y,0,-Os.z,Os.y,0,-Bo.z,Bo.y,Fs.z,0,-Fs.x,Os.z,0,-Os.x,Bo.z,0,-Bo.x,-Fs.y,Fs.x,0,-Os.y,Os.x,0,-Bo.y,Bo.x,0];return!Gx(n,rl,sl,ol,Oh)||(n=[1,0,0,0,1,0,0,0,1],!Gx(n,rl,sl,ol,Oh))?!1:(Bh.crossVectors(Fs,Os),n=[Bh.x,Bh.y,Bh.z],Gx(n,rl,sl,ol,Oh))}clampPoint(t,n){return n.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Xi).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Xi).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(Kr[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),Kr[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),Kr[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),Kr[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),Kr[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),Kr[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),Kr[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),Kr[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(Kr),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},Kr=[new B,new B,new B,new B,new B,new B,new B,new B],Xi=new B,Fh=new ci,rl=new B,sl=new B,ol=new B,Fs=new B,Os=new B,Bo=new B,Fc=new B,Oh=new B,Bh=new B,ko=new B;function Gx(e,t,n,i,r){for(let s=0,o=e.length-3;s<=o;s+=3){ko.fromArray(e,s);let a=r.x*Math.abs(ko.x)+r.y*Math.abs(ko.y)+r.z*Math.abs(ko.z),l=t.dot(ko),c=n.dot(ko),u=i.dot(ko);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var He=new B,kh=new Bt,BF=0,hn=class extends qi{constructor(t,n,i=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:BF++}),this.name="",this.array=t,this.itemSize=n,this.count=t!==void 0?t.length/n:0,this.normalized=i,this.usage=C_,this.updateRanges=[],this.gpuType=ji,this.version=0,this._normalizationScale=t!==void 0?Rp(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,n,i){t*=this.itemSize,i*=n.itemSize;for(let r=0,s=this.itemSize;r<s;r++)this.array[t+r]=n.array[i+r];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let n=0,i=this.count;n<i;n++)kh.fromBufferAttribute(this,n),kh.applyMatrix3(t),this.setXY(n,kh.x,kh.y);else if(this.itemSize===3)for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyMatrix3(t),this.setXYZ(n,He.x,He.y,He.z);return this}applyMatrix4(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyMatrix4(t),this.setXYZ(n,He.x,He.y,He.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyNormalMatrix(t),this.setXYZ(n,He.x,He.y,He.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.transformDirection(t),this.setXYZ(n,He.x,He.y,He.z);return this}set(t,n=0){return this.array.set(t,n),this}getComponent(t,n){let i=this.array[t*this.itemSize+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.array[t*this.itemSize+n]=i,this}getX(t){let n=this.array[t*this.itemSize];return this.normalized&&(n=this._denormalize(n)),n}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize]=n,this}getY(t){let n=this.array[t*this.itemSize+1];return this.normalized&&(n=this._denormalize(n)),n}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+1]=n,this}getZ(t){let n=this.array[t*this.itemSize+2];return this.normalized&&(n=this._denormalize(n)),n}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+2]=n,this}getW(t){let n=this.array[t*this.itemSize+3];return this.normalized&&(n=this._denormalize(n)),n}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+3]=n,this}setXY(t,n,i){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.array[t+0]=n,this.array[t+1]=i,this}setXYZ(t,n,i,r){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this.array[t+3]=s,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):L_(t,this.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):D_(t,this.array)}};var Jc=class extends hn{constructor(t,n,i){super(new Uint16Array(t),n,i)}};var Kc=class extends hn{constructor(t,n,i){super(new Uint32Array(t),n,i)}};var qe=class extends hn{constructor(t,n,i){super(new Float32Array(t),n,i)}},kF=new ci,Oc=new B,Vx=new B,Yi=class{constructor(t=new B,n=-1){this.isSphere=!0,this.center=t,this.radius=n}set(t,n){return this.center.copy(t),this.radius=n,this}setFromPoints(t,n){let i=this.center;n!==void 0?i.copy(n):kF.setFromPoints(t).getCenter(i);let r=0;for(let s=0,o=t.length;s<o;s++)r=Math.max(r,i.distanceToSquared(t[s]));return this.radius=Math.sqrt(r),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let n=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=n*n}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,n){let i=this.center.distanceToSquared(t);return n.copy(t),i>this.radius*this.radius&&(n.sub(this.center).normalize(),n.multiplyScalar(this.radius).add(this.center)),n}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Oc.subVectors(t,this.center);let n=Oc.lengthSq();if(n>this.radius*this.radius){let i=Math.sqrt(n),r=(i-this.radius)*.5;this.center.addScaledVector(Oc,r/i),this.radius+=r}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Vx.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Oc.copy(t.center).add(Vx)),this.expandByPoint(Oc.copy(t.center).sub(Vx))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},zF=0,Ci=new ve,Hx=new wn,al=new B,ii=new ci,Bc=new ci,an=new B,dn=class e extends qi{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:zF++}),this.uuid=Ys(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(fF(t)?Kc:Jc)(t,1):this.index=t,this}setIndirect(t,n=0){return this.indirect=t,this.indirectOffset=n,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,n){return this.attributes[t]=n,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,n,i=0){this.groups.push({start:t,count:n,materialIndex:i})}clearGroups(){this.groups=[]}setDrawRange(t,n){this.drawRange.start=t,this.drawRange.count=n}applyMatrix4(t){let n=this.attributes.position;n!==void 0&&(n.applyMatrix4(t),n.needsUpdate=!0);let i=this.attributes.normal;if(i!==void 0){let s=new Vt().getNormalMatrix(t);i.applyNormalMatrix(s),i.needsUpdate=!0}let r=this.attributes.tangent;return r!==void 0&&(r.transformDirection(t),r.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return Ci.makeRotationFromQuaternion(t),this.applyMatrix4(Ci),this}rotateX(t){return Ci.makeRotationX(t),this.applyMatrix4(Ci),this}rotateY(t){return Ci.makeRotationY(t),this.applyMatrix4(Ci),this}rotateZ(t){return Ci.makeRotationZ(t),this.applyMatrix4(Ci),this}translate(t,n,i){return Ci.makeTranslation(t,n,i),this.applyMatrix4(Ci),this}scale(t,n,i){return Ci.makeScale(t,n,i),this.applyMatrix4(Ci),this}lookAt(t){return Hx.lookAt(t),Hx.updateMatrix(),this.applyMatrix4(Hx.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(al).negate(),this.translate(al.x,al.y,al.z),this}setFromPoints(t){let n=this.getAttribute("position");if(n===void 0){let i=[];for(let r=0,s=t.length;r<s;r++){let o=t[r];i.push(o.x,o.y,o.z||0)}this.setAttribute("position",new qe(i,3))}else{let i=Math.min(t.length,n.count);for(let r=0;r<i;r++){let s=t[r];n.setXYZ(r,s.x,s.y,s.z||0)}t.length>n.count&&Ft("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),n.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new ci);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new B(-1/0,-1/0,-1/0),new B(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),n)for(let i=0,r=n.length;i<r;i++){let s=n[i];ii.setFromBufferAttribute(s),this.morphTargetsRelative?(an.addVectors(this.boundingBox.min,ii.min),this.boundingBox.expandByPoint(an),an.addVectors(this.boundingBox.max,ii.max),this.boundingBox.expandByPoint(an)):(this.boundingBox.expandByPoint(ii.min),this.boundingBox.expandByPoint(ii.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&Gt('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Yi);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new B,1/0);return}if(t){let i=this.boundingSphere.center;if(ii.setFromBufferAttribute(t),n)for(let s=0,o=n.length;s<o;s++){let a=n[s];Bc.setFromBufferAttribute(a),this.morphTargetsRelative?(an.addVectors(ii.min,Bc.min),ii.expandByPoint(an),an.addVectors(ii.max,Bc.max),ii.expandByPoint(an)):(ii.expandByPoint(Bc.min),ii.expandByPoint(Bc.max))}ii.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)an.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared(an));if(n)for(let s=0,o=n.length;s<o;s++){let a=n[s],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)an.fromBufferAttribute(a,c),l&&(al.fromBufferAttribute(t,c),an.add(al)),r=Math.max(r,i.distanceToSquared(an))}this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&Gt('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,n=this.attributes;if(t===null||n.position===void 0||n.normal===void 0||n.uv===void 0){Gt("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let i=n.position,r=n.normal,s=n.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==i.count)&&(o=new hn(new Float32Array(4*i.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(i.count);for(let A=0;A<i.count;A++)a[A]=new B,l[A]=new B;let u=new B,h=new B,f=new B,d=new Bt,p=new Bt,y=new Bt,m=new B,g=new B;function _(A,C,R){c[A]=c[C]=c[R]=1,u.fromBufferAttribute(i,A),h.fromBufferAttribute(i,C),f.fromBufferAttribute(i,R),d.fromBufferAttribute(s,A),p.fromBufferAttribute(s,C),y.fromBufferAttribute(s,R),h.sub(u),f.sub(u),p.sub(d),y.sub(d);let D=1/(p.x*y.y-y.x*p.y);isFinite(D)&&(m.copy(h).multiplyScalar(y.y).addScaledVector(f,-p.y).multiplyScalar(D),g.copy(f).multiplyScalar(p.x).addScaledVector(h,-y.x).multiplyScalar(D),a[A].add(m),a[C].add(m),a[R].add(m),l[A].add(g),l[C].add(g),l[R].add(g))}let M=this.groups;M.length===0&&(M=[{start:0,count:t.count}]);for(let A=0,C=M.length;A<C;++A){let R=M[A],D=R.start,k=R.count;for(let P=D,L=D+k;P<L;P+=3)_(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let v=new B,S=new B,b=new B,x=new B;function w(A){b.fromBufferAttribute(r,A),x.copy(b);let C=a[A];v.copy(C),v.sub(b.multiplyScalar(b.dot(C))).normalize(),S.crossVectors(x,C);let D=S.dot(l[A])<0?-1:1;o.setXYZW(A,v.x,v.y,v.z,D)}for(let A=0,C=i.count;A<C;++A)c[A]&&w(A);this._transformed=!0}computeVertexNormals(){let t=this.index,n=this.getAttribute("position");if(n!==void 0){let i=this.getAttribute("normal");if(i===void 0||i.count!==n.count)i=new hn(new Float32Array(n.count*3),3),this.setAttribute("normal",i);else for(let f=0,d=i.count;f<d;f++)i.setXYZ(f,0,0,0);let r=new B,s=new B,o=new B,a=new B,l=new B,c=new B,u=new B,h=new B;if(t)for(let f=0,d=t.count;f<d;f+=3){let p=t.getX(f+0),y=t.getX(f+1),m=t.getX(f+2);r.fromBufferAttribute(n,p),s.fromBufferAttribute(n,y),o.fromBufferAttribute(n,m),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),a.fromBufferAttribute(i,p),l.fromBufferAttribute(i,y),c.fromBufferAttribute(i,m),a.add(u),l.add(u),c.add(u),i.setXYZ(p,a.x,a.y,a.z),i.setXYZ(y,l.x,l.y,l.z),i.setXYZ(m,c.x,c.y,c.z)}else for(let f=0,d=n.count;f<d;f+=3)r.fromBufferAttribute(n,f+0),s.fromBufferAttribute(n,f+1),o.fromBufferAttribute(n,f+2),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),i.setXYZ(f+0,u.x,u.y,u.z),i.setXYZ(f+1,u.x,u.y,u.z),i.setXYZ(f+2,u.x,u.y,u.z);this.normalizeNormals(),i.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let n=0,i=t.count;n<i;n++)an.fromBufferAttribute(t,n),an.normalize(),t.setXYZ(n,an.x,an.y,an.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,h=a.normalized,f=new c.constructor(l.length*u),d=0,p=0;for(let y=0,m=l.length;y<m;y++){a.isInterleavedBufferAttribute?d=l[y]*a.data.stride+a.offset:d=l[y]*u;for(let g=0;g<u;g++)f[p++]=c[d++]}return new hn(f,u,h)}if(this.index===null)return Ft("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let n=new e,i=this.index.array,r=this.attributes;for(let a in r){let l=r[a],c=t(l,i);n.setAttribute(a,c)}let s=this.morphAttributes;for(let a in s){let l=[],c=s[a];for(let u=0,h=c.length;u<h;u++){let f=c[u],d=t(f,i);l.push(d)}n.morphAttributes[a]=l}n.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];n.addGroup(c.start,c.count,c.materialIndex)}return n}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let n=this.index;n!==null&&(t.data.index={type:n.array.constructor.name,array:Array.prototype.slice.call(n.array)});let i=this.attributes;for(let l in i){let c=i[l];t.data.attributes[l]=c.toJSON(t.data)}let r={},s=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let h=0,f=c.length;h<f;h++){let d=c[h];u.push(d.toJSON(t.data))}u.length>0&&(r[l]=u,s=!0)}s&&(t.data.morphAttributes=r,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let n={};this.name=t.name;let i=t.index;i!==null&&this.setIndex(i.clone());let r=t.attributes;for(let c in r){let u=r[c];this.setAttribute(c,u.clone(n))}let s=t.morphAttributes;for(let c in s){let u=[],h=s[c];for(let f=0,d=h.length;f<d;f++)u.push(h[f].clone(n));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let h=o[c];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}},vd=class{constructor(t,n){this.isInterleavedBuffer=!0,this.array=t,this.stride=n,this.count=t!==void 0?t.length/n:0,this.usage=C_,this.updateRanges=[],this.version=0,this.uuid=Ys()}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.array=new t.array.constructor(t.array),this.count=t.count,this.stride=t.stride,this.usage=t.usage,this}copyAt(t,n,i){t*=this.stride,i*=n.stride;for(let r=0,s=this.stride;r<s;r++)this.array[t+r]=n.array[i+r];return this}set(t,n=0){return this.array.set(t,n),this}clone(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=NA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=this.array.slice(0).buffer);let i=new this.array.constructor(t.arrayBuffers[n]),r=new this.constructor(i,this.stride);return r.setUsage(this.usage),r}onUpload(t){return this.onUploadCallback=t,this}toJSON(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=NA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=Array.from(new Uint32Array(this.array.slice(0).buffer)));let i={uuid:this.uuid,buffer:n,type:this.array.constructor.name,stride:this.stride};return i.usage=this.usage,i}};function NA(e){return e.buffer._uuid===void 0&&(e.buffer._uuid=Ys()),e.byteOffset===0&&e.byteLength===e.buffer.byteLength?e.buffer._uuid:e.buffer._uuid+":"+e.byteOffset+":"+e.byteLength}var Fn=new B,Zi=class e{constructor(t,n,i,r=!1){this.isInterleavedBufferAttribute=!0,this.name="",this.data=t,this.itemSize=n,this.offset=i,this.normalized=r,this._normalizationScale=t!==void 0?Rp(t.array):void 0}get count(){return this.data.count}get array(){return this.data.array}set needsUpdate(t){this.data.needsUpdate=t}applyMatrix4(t){for(let n=0,i=this.data.count;n<i;n++)Fn.fromBufferAttribute(this,n),Fn.applyMatrix4(t),this.setXYZ(n,Fn.x,Fn.y,Fn.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)Fn.fromBufferAttribute(this,n),Fn.applyNormalMatrix(t),this.setXYZ(n,Fn.x,Fn.y,Fn.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)Fn.fromBufferAttribute(this,n),Fn.transformDirection(t),this.setXYZ(n,Fn.x,Fn.y,Fn.z);return this}getComponent(t,n){let i=this.array[t*this.data.stride+this.offset+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.data.array[t*this.data.stride+this.offset+n]=i,this}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset]=n,this}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+1]=n,this}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+2]=n,this}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+3]=n,this}getX(t){let n=this.data.array[t*this.data.stride+this.offset];return this.normalized&&(n=this._denormalize(n)),n}getY(t){let n=this.data.array[t*this.data.stride+this.offset+1];return this.normalized&&(n=this._denormalize(n)),n}getZ(t){let n=this.data.array[t*this.data.stride+this.offset+2];return this.normalized&&(n=this._denormalize(n)),n}getW(t){let n=this.data.array[t*this.data.stride+this.offset+3];return this.normalized&&(n=this._denormalize(n)),n}setXY(t,n,i){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.data.array[t+0]=n,this.data.array[t+1]=i,this}setXYZ(t,n,i,r){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this.data.array[t+3]=s,this}clone(t){if(t===void 0){Xc("InterleavedBufferAttribute.clone(): Cloning an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return new hn(new this.array.constructor(n),this.itemSize,this.normalized)}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.clone(t)),new e(t.interleavedBuffers[this.data.uuid],this.itemSize,this.offset,this.normalized)}toJSON(t){if(t===void 0){Xc("InterleavedBufferAttribute.toJSON(): Serializing an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return{itemSize:this.itemSize,type:this.array.constructor.name,array:n,normalized:this.normalized}}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.toJSON(t)),{isInterleavedBufferAttribute:!0,itemSize:this.itemSize,data:this.data.uuid,offset:this.offset,normalized:this.normalized}}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):L_(t,this.data.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):D_(t,this.data.array)}},Wx=new B,GF=new B,VF=new Vt,si=class{constructor(t=new B(1,0,0),n=0){this.isPlane=!0,this.normal=t,this.constant=n}set(t,n){return this.normal.copy(t),this.constant=n,this}setComponents(t,n,i,r){return this.normal.set(t,n,i),this.constant=r,this}setFromNormalAndCoplanarPoint(t,n){return this.normal.copy(t),this.constant=-n.dot(this.normal),this}setFromCoplanarPoints(t,n,i){let r=Wx.subVectors(i,n).cross(GF.subVectors(t,n)).normalize();return this.setFromNormalAndCoplanarPoint(r,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,n){return n.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,n,i=!0){let r=t.delta(Wx),s=this.normal.dot(r);if(s===0)return this.distanceToPoint(t.start)===0?n.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/s;return i===!0&&(o<0||o>1)?null:n.copy(t.start).addScaledVector(r,o)}intersectsLine(t){let n=this.distanceToPoint(t.start),i=this.distanceToPoint(t.end);return n<0&&i>0||i<0&&n>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,n){let i=n||VF.getNormalMatrix(t),r=this.coplanarPoint(Wx).applyMatrix4(t),s=this.normal.applyMatrix3(i).normalize();return this.constant=-r.dot(s),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},HF=0,is=class extends qi{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:HF++}),this.uuid=Ys(),this.name="",this.type="Material",this.blending=Al,this.side=Xs,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=l_,this.blendDst=c_,this.blendEquation=Xo,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new kt(0,0,0),this.blendAlpha=0,this.depthFunc=ml,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=w2,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=od,this.stencilZFail=od,this.stencilZPass=od,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let n in t){let i=t[n];if(i===void 0){Ft(`Material: parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Material: '${n}' is not a property of THREE.${this.type}.`);continue}r&&r.isColor?r.set(i):r&&r.isVector2&&i&&i.isVector2||r&&r.isEuler&&i&&i.isEuler||r&&r.isVector3&&i&&i.isVector3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";n&&(t={textures:{},images:{}});let i={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};i.uuid=this.uuid,i.type=this.type,i.blending=this.blending,i.side=this.side,i.shadowSide=this.shadowSide,i.vertexColors=this.vertexColors,i.opacity=this.opacity,i.transparent=this.transparent,i.blendSrc=this.blendSrc,i.blendDst=this.blendDst,i.blendEquation=this.blendEquation,i.blendSrcAlpha=this.blendSrcAlpha,i.blendDstAlpha=this.blendDstAlpha,i.blendEquationAlpha=this.blendEquationAlpha,i.blendColor=this.blendColor.getHex(),i.blendAlpha=this.blendAlpha,i.depthFunc=this.depthFunc,i.depthTest=this.depthTest,i.depthWrite=this.depthWrite,i.colorWrite=this.colorWrite,i.clipIntersection=this.clipIntersection,i.clipShadows=this.clipShadows,i.stencilWriteMask=this.stencilWriteMask,i.stencilFunc=this.stencilFunc,i.stencilRef=this.stencilRef,i.stencilFuncMask=this.stencilFuncMask,i.stencilFail=this.stencilFail,i.stencilZFail=this.stencilZFail,i.stencilZPass=this.stencilZPass,i.stencilWrite=this.stencilWrite,i.polygonOffset=this.polygonOffset,i.polygonOffsetFactor=this.polygonOffsetFactor,i.polygonOffsetUnits=this.polygonOffsetUnits,i.dithering=this.dithering,i.alphaTest=this.alphaTest,i.alphaHash=this.alphaHash,i.alphaToCoverage=this.alphaToCoverage,i.premultipliedAlpha=this.premultipliedAlpha,i.forceSinglePass=this.forceSinglePass,i.allowOverride=this.allowOverride,i.visible=this.visible,i.toneMapped=this.toneMapped,i.name=this.name,this.color&&this.color.isColor&&(i.color=this.color.getHex()),this.roughness!==void 0&&(i.roughness=this.roughness),this.metalness!==void 0&&(i.metalness=this.metalness),this.sheen!==void 0&&(i.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(i.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(i.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(i.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(i.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(i.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(i.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(i.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(i.shininess=this.shininess),this.clearcoat!==void 0&&(i.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(i.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(i.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(i.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(i.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(i.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(i.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,i.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(i.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(i.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(i.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(i.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(i.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(i.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(i.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(i.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(i.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(i.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(i.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(i.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(i.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(i.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(i.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(i.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(i.lightMap=this.lightMap.toJSON(t).uuid,i.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(i.aoMap=this.aoMap.toJSON(t).uuid,i.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(i.bumpMap=this.bumpMap.toJSON(t).uuid,i.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(i.normalMap=this.normalMap.toJSON(t).uuid,i.normalMapType=this.normalMapType,i.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(i.displacementMap=this.displacementMap.toJSON(t).uuid,i.displacementScale=this.displacementScale,i.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(i.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(i.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(i.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(i.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(i.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(i.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(i.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(i.combine=this.combine)),this.envMapRotation!==void 0&&(i.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(i.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(i.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(i.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(i.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(i.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(i.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(i.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(i.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(i.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(i.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(i.size=this.size),this.sizeAttenuation!==void 0&&(i.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(i.clippingPlanes=this.clippingPlanes.map(s=>s.toJSON())),this.rotation!==void 0&&(i.rotation=this.rotation),this.depthPacking!==void 0&&(i.depthPacking=this.depthPacking),this.linewidth!==void 0&&(i.linewidth=this.linewidth),this.linecap!==void 0&&(i.linecap=this.linecap),this.linejoin!==void 0&&(i.linejoin=this.linejoin),this.dashSize!==void 0&&(i.dashSize=this.dashSize),this.gapSize!==void 0&&(i.gapSize=this.gapSize),this.scale!==void 0&&(i.scale=this.scale),this.wireframe!==void 0&&(i.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(i.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(i.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(i.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(i.flatShading=this.flatShading),this.fog!==void 0&&(i.fog=this.fog),Object.keys(this.userData).length>0&&(i.userData=this.userData);function r(s){let o=[];for(let a in s){let l=s[a];delete l.metadata,o.push(l)}return o}if(n){let s=r(t.textures),o=r(t.images);s.length>0&&(i.textures=s),o.length>0&&(i.images=o)}return i}fromJSON(t,n){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new kt().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(i=>new si().fromJSON(i))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=n[t.map]||null),t.matcap!==void 0&&(this.matcap=n[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=n[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=n[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=n[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let i=t.normalScale;Array.isArray(i)===!1&&(i=[i,i]),this.normalScale=new Bt().fromArray(i)}return t.displacementMap!==void 0&&(this.displacementMap=n[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=n[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=n[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=n[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=n[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=n[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=n[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=n[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=n[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=n[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=n[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=n[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=n[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=n[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new Bt().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=n[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=n[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=n[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=n[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=n[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=n[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=n[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=n[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let n=t.clippingPlanes,i=null;if(n!==null){let r=n.length;i=new Array(r);for(let s=0;s!==r;++s)i[s]=n[s].clone()}return this.clippingPlanes=i,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var jr=new B,$x=new B,zh=new B,Gh=new B,Ho=class{constructor(t=new B,n=new B(0,0,-1)){this.origin=t,this.direction=n}set(t,n){return this.origin.copy(t),this.direction.copy(n),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,n){return n.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,jr)),this}closestPointToPoint(t,n){n.subVectors(t,this.origin);let i=n.dot(this.direction);return i<0?n.copy(this.origin):n.copy(this.origin).addScaledVector(this.direction,i)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let n=jr.subVectors(t,this.origin).dot(this.direction);return n<0?this.origin.distanceToSquared(t):(jr.copy(this.origin).addScaledVector(this.direction,n),jr.distanceToSquared(t))}distanceSqToSegment(t,n,i,r){$x.copy(t).add(n).multiplyScalar(.5),zh.copy(n).sub(t).normalize(),Gh.copy(this.origin).sub($x);let s=t.distanceTo(n)*.5,o=-this.direction.dot(zh),a=Gh.dot(this.direction),l=-Gh.dot(zh),c=Gh.lengthSq(),u=Math.abs(1-o*o),h,f,d,p;if(u>0)if(h=o*l-a,f=o*a-l,p=s*u,h>=0)if(f>=-p)if(f<=p){let y=1/u;h*=y,f*=y,d=h*(h+o*f+2*a)+f*(o*h+f+2*l)+c}else f=s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f=-s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f<=-p?(h=Math.max(0,-(-o*s+a)),f=h>0?-s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c):f<=p?(h=0,f=Math.min(Math.max(-s,-l),s),d=f*(f+2*l)+c):(h=Math.max(0,-(o*s+a)),f=h>0?s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c);else f=o>0?-s:s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;return i&&i.copy(this.origin).addScaledVector(this.direction,h),r&&r.copy($x).addScaledVector(zh,f),d}intersectSphere(t,n){if(t.radius<0)return null;jr.subVectors(t.center,this.origin);let i=jr.dot(this.direction),r=jr.dot(jr)-i*i,s=t.radius*t.radius;if(r>s)return null;let o=Math.sqrt(s-r),a=i-o,l=i+o;return l<0?null:a<0?this.at(l,n):this.at(a,n)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let n=t.normal.dot(this.direction);if(n===0)return t.distanceToPoint(this.origin)===0?0:null;let i=-(this.origin.dot(t.normal)+t.constant)/n;return i>=0?i:null}intersectPlane(t,n){let i=this.distanceToPlane(t);return i===null?null:this.at(i,n)}intersectsPlane(t){let n=t.distanceToPoint(this.origin);return n===0||t.normal.dot(this.direction)*n<0}intersectBox(t,n){let i,r,s,o,a,l,c=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,f=this.origin;return c>=0?(i=(t.min.x-f.x)*c,r=(t.max.x-f.x)*c):(i=(t.max.x-f.x)*c,r=(t.min.x-f.x)*c),u>=0?(s=(t.min.y-f.y)*u,o=(t.max.y-f.y)*u):(s=(t.max.y-f.y)*u,o=(t.min.y-f.y)*u),i>o||s>r||((s>i||isNaN(i))&&(i=s),(o<r||isNaN(r))&&(r=o),h>=0?(a=(t.min.z-f.z)*h,l=(t.max.z-f.z)*h):(a=(t.max.z-f.z)*h,l=(t.min.z-f.z)*h),i>l||a>r)||((a>i||i!==i)&&(i=a),(l<r||r!==r)&&(r=l),r<0)?null:this.at(i>=0?i:r,n)}intersectsBox(t){return this.intersectBox(t,jr)!==null}intersectTriangle(t,n,i,r,s){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,h=t.x-o.x,f=t.y-o.y,d=t.z-o.z,p=n.x-o.x,y=n.y-o.y,m=n.z-o.z,g=i.x-o.x,_=i.y-o.y,M=i.z-o.z,v=Math.abs(l),S=Math.abs(c),b=Math.abs(u),x,w,A,C,R,D,k,P,L,z,U,Z;if(v>=S&&v>=b?(A=l,D=h,L=p,Z=g,l>=0?(x=c,w=u,C=f,R=d,k=y,P=m,z=_,U=M):(x=u,w=c,C=d,R=f,k=m,P=y,z=M,U=_)):S>=b?(A=c,D=f,L=y,Z=_,c>=0?(x=u,w=l,C=d,R=h,k=m,P=p,z=M,U=g):(x=l,w=u,C=h,R=d,k=p,P=m,z=g,U=M)):(A=u,D=d,L=m,Z=M,u>=0?(x=l,w=c,C=h,R=f,k=p,P=y,z=g,U=_):(x=c,w=l,C=f,R=h,k=y,P=p,z=_,U=g)),A===0)return null;let F=x/A,V=w/A,q=1/A,st=C-F*D,lt=R-V*D,$=k-F*L,at=P-V*L,ft=z-F*Z,ot=U-V*Z,rt=ft*at-ot*$,J=st*ot-lt*ft,gt=$*lt-at*st;if(r){if(rt<0||J<0||gt<0)return null}else if((rt<0||J<0||gt<0)&&(rt>0||J>0||gt>0))return null;let ct=rt+J+gt;if(ct===0)return null;let K=q*(rt*D+J*L+gt*Z);return(ct>0?K<0:K>0)?null:this.at(K/ct,s)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},bd=class extends is{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ns,this.combine=Vd,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},UA=new ve,zo=new Ho,Vh=new Yi,FA=new B,Hh=new B,Wh=new B,$h=new B,Xx=new B,Xh=new B,OA=new B,qh=new B,Tn=class extends wn{constructor(t=new dn,n=new bd){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}getVertexPosition(t,n){let i=this.geometry,r=i.attributes.position,s=i.morphAttributes.position,o=i.morphTargetsRelative;n.fromBufferAttribute(r,t);let a=this.morphTargetInfluences;if(s&&a){Xh.set(0,0,0);for(let l=0,c=s.length;l<c;l++){let u=a[l],h=s[l];u!==0&&(Xx.fromBufferAttribute(h,t),o?Xh.addScaledVector(Xx,u):Xh.addScaledVector(Xx.sub(n),u))}n.add(Xh)}return n}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.material,s=this.matrixWorld;r!==void 0&&(i.boundingSphere===null&&i.computeBoundingSphere(),Vh.copy(i.boundingSphere),Vh.applyMatrix4(s),zo.copy(t.ray).recast(t.near),!(Vh.containsPoint(zo.origin)===!1&&(zo.intersectSphere(Vh,FA)===null||zo.origin.distanceToSquared(FA)>(t.far-t.near)**2))&&(UA.copy(s).invert(),zo.copy(t.ray).applyMatrix4(UA),!(i.boundingBox!==null&&zo.intersectsBox(i.boundingBox)===!1)&&this._computeIntersections(t,n,zo)))}_computeIntersections(t,n,i){let r,s=this.geometry,o=this.material,a=s.index,l=s.attributes.position,c=s.attributes.uv,u=s.attributes.uv1,h=s.attributes.normal,f=s.groups,d=s.drawRange;if(a!==null)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let m=f[p],g=o[m.materialIndex],_=Math.max(m.start,d.start),M=Math.min(a.count,Math.min(m.start+m.count,d.start+d.count));for(let v=_,S=M;v<S;v+=3){let b=a.getX(v),x=a.getX(v+1),w=a.getX(v+2);r=Yh(this,g,t,i,c,u,h,b,x,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=m.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(a.count,d.start+d.count);for(let m=p,g=y;m<g;m+=3){let _=a.getX(m),M=a.getX(m+1),v=a.getX(m+2);r=Yh(this,o,t,i,c,u,h,_,M,v),r&&(r.faceIndex=Math.floor(m/3),n.push(r))}}else if(l!==void 0)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let m=f[p],g=o[m.materialIndex],_=Math.max(m.start,d.start),M=Math.min(l.count,Math.min(m.start+m.count,d.start+d.count));for(let v=_,S=M;v<S;v+=3){let b=v,x=v+1,w=v+2;r=Yh(this,g,t,i,c,u,h,b,x,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=m.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(l.count,d.start+d.count);for(let m=p,g=y;m<g;m+=3){let _=m,M=m+1,v=m+2;r=Yh(this,o,t,i,c,u,h,_,M,v),r&&(r.faceIndex=Math.floor(m/3),n.push(r))}}}};function WF(e,t,n,i,r,s,o,a){let l;if(t.side===Bn?l=i.intersectTriangle(o,s,r,!0,a):l=i.intersectTriangle(r,s,o,t.side===Xs,a),l===null)return null;qh.copy(a),qh.applyMatrix4(e.matrixWorld);let c=n.ray.origin.distanceTo(qh);return c<n.near||c>n.far?null:{distance:c,point:qh.clone(),object:e}}function Yh(e,t,n,i,r,s,o,a,l,c){e.getVertexPosition(a,Hh),e.getVertexPosition(l,Wh),e.getVertexPosition(c,$h);let u=WF(e,t,n,i,Hh,Wh,$h,OA);if(u){let h=new B;Qr.getBarycoord(OA,Hh,Wh,$h,h),r&&(u.uv=Qr.getInterpolatedAttribute(r,a,l,c,h,new Bt)),s&&(u.uv1=Qr.getInterpolatedAttribute(s,a,l,c,h,new Bt)),o&&(u.normal=Qr.getInterpolatedAttribute(o,a,l,c,h,new B),u.normal.dot(i.direction)>0&&u.normal.multiplyScalar(-1));let f={a,b:l,c,normal:new B,materialIndex:0};Qr.getNormal(Hh,Wh,$h,f.normal),u.face=f,u.barycoord=h}return u}var Md=class extends Zn{constructor(t=null,n=1,i=1,r,s,o,a,l,c=ln,u=ln,h,f){super(null,o,a,l,c,u,r,s,h,f),this.isDataTexture=!0,this.image={data:t,width:n,height:i},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Go=new Yi,$F=new Bt(.5,.5),Zh=new B,ks=class{constructor(t=new si,n=new si,i=new si,r=new si,s=new si,o=new si){this.planes=[t,n,i,r,s,o]}set(t,n,i,r,s,o){let a=this.planes;return a[0].copy(t),a[1].copy(n),a[2].copy(i),a[3].copy(r),a[4].copy(s),a[5].copy(o),this}copy(t){let n=this.planes;for(let i=0;i<6;i++)n[i].copy(t.planes[i]);return this}setFromProjectionMatrix(t,n=Ri,i=!1){let r=this.planes,s=t.elements,o=s[0],a=s[1],l=s[2],c=s[3],u=s[4],h=s[5],f=s[6],d=s[7],p=s[8],y=s[9],m=s[10],g=s[11],_=s[12],M=s[13],v=s[14],S=s[15];if(r[0].setComponents(c-o,d-u,g-p,S-_).normalize(),r[1].setComponents(c+o,d+u,g+p,S+_).normalize(),r[2].setComponents(c+a,d+h,g+y,S+M).normalize(),r[3].setComponents(c-a,d-h,g-y,S-M).normalize(),i)r[4].setComponents(l,f,m,v).normalize(),r[5].setComponents(c-l,d-f,g-m,S-v).normalize();else if(r[4].setComponents(c-l,d-f,g-m,S-v).normalize(),n===Ri)r[5].setComponents(c+l,d+f,g+m,S+v).normalize();else if(n===gl)r[5].setComponents(l,f,m,v).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+n);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),Go.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let n=t.geometry;n.boundingSphere===null&&n.computeBoundingSphere(),Go.copy(n.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(Go)}intersectsSprite(t){Go.center.set(0,0,0);let n=$F.distanceTo(t.center);return Go.radius=.7071067811865476+n,Go.applyMatrix4(t.matrixWorld),this.intersectsSphere(Go)}intersectsSphere(t){let n=this.planes,i=t.center,r=-t.radius;for(let s=0;s<6;s++)if(n[s].distanceToPoint(i)<r)return!1;return!0}intersectsBox(t){let n=this.planes;for(let i=0;i<6;i++){let r=n[i];if(Zh.x=r.normal.x>0?t.max.x:t.min.x,Zh.y=r.normal.y>0?t.max.y:t.min.y,Zh.z=r.normal.z>0?t.max.z:t.min.z,r.distanceToPoint(Zh)<0)return!1}return!0}containsPoint(t){let n=this.planes;for(let i=0;i<6;i++)if(n[i].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},BA=new ve,Sd=class e{constructor(){this.coordinateSystem=Ri,this._frustums=[],this._count=0}setFromArrayCamera(t){let n=t.cameras,i=this._frustums;for(let r=0;r<n.length;r++){let s=n[r];BA.multiplyMatrices(s.projectionMatrix,s.matrixWorldInverse),i[r]===void 0&&(i[r]=new ks),i[r].setFromProjectionMatrix(BA,s.coordinateSystem,s.reversedDepth)}return this._count=n.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsObject(t))return!0;return!1}intersectsSprite(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSphere(t))return!0;return!1}intersectsBox(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsBox(t))return!0;return!1}containsPoint(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let n=this._frustums,i=t._frustums;for(let r=0;r<t._count;r++)n[r]===void 0&&(n[r]=new ks),n[r].copy(i[r]);return this._count=t._count,this}clone(){return new e().copy(this)}};var Ji=class extends is{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new kt(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},wd=new B,Td=new B,kA=new ve,kc=new Ho,Jh=new Yi,qx=new B,zA=new B,Ed=class extends wn{constructor(t=new dn,n=new Ji){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[0];for(let r=1,s=n.count;r<s;r++)wd.fromBufferAttribute(n,r-1),Td.fromBufferAttribute(n,r),i[r]=i[r-1],i[r]+=wd.distanceTo(Td);t.setAttribute("lineDistance",new qe(i,1))}else Ft("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.matrixWorld,s=t.params.Line.threshold,o=i.drawRange;if(i.boundingSphere===null&&i.computeBoundingSphere(),Jh.copy(i.boundingSphere),Jh.applyMatrix4(r),Jh.radius+=s,t.ray.intersectsSphere(Jh)===!1)return;kA.copy(r).invert(),kc.copy(t.ray).applyMatrix4(kA);let a=s/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=i.index,f=i.attributes.position;if(u!==null){let d=Math.max(0,o.start),p=Math.min(u.count,o.start+o.count);for(let y=d,m=p-1;y<m;y+=c){let g=u.getX(y),_=u.getX(y+1),M=Kh(this,t,kc,l,g,_,y);M&&n.push(M)}if(this.isLineLoop){let y=u.getX(p-1),m=u.getX(d),g=Kh(this,t,kc,l,y,m,p-1);g&&n.push(g)}}else{let d=Math.max(0,o.start),p=Math.min(f.count,o.start+o.count);for(let y=d,m=p-1;y<m;y+=c){let g=Kh(this,t,kc,l,y,y+1,y);g&&n.push(g)}if(this.isLineLoop){let y=Kh(this,t,kc,l,p-1,d,p-1);y&&n.push(y)}}}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}};function Kh(e,t,n,i,r,s,o){let a=e.geometry.attributes.position;if(wd.fromBufferAttribute(a,r),Td.fromBufferAttribute(a,s),n.distanceSqToSegment(wd,Td,qx,zA)>i)return;qx.applyMatrix4(e.matrixWorld);let c=t.ray.origin.distanceTo(qx);if(!(c<t.near||c>t.far))return{distance:c,point:zA.clone().applyMatrix4(e.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:e}}var GA=new B,VA=new B,rs=class extends Ed{constructor(t,n){super(t,n),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[];for(let r=0,s=n.count;r<s;r+=2)GA.fromBufferAttribute(n,r),VA.fromBufferAttribute(n,r+1),i[r]=r===0?0:i[r-1],i[r+1]=i[r]+GA.distanceTo(VA);t.setAttribute("lineDistance",new qe(i,1))}else Ft("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var jc=class extends Zn{constructor(t=[],n=qo,i,r,s,o,a,l,c,u){super(t,n,i,r,s,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var ss=class extends Zn{constructor(t,n,i=Ki,r,s,o,a=ln,l=ln,c,u=es,h=1){if(u!==es&&u!==ls)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let f={width:t,height:n,depth:h};super(f,r,s,o,a,l,u,i,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new _l(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let n=super.toJSON(t);return n.compareFunction=this.compareFunction,n}},Qc=class extends ss{constructor(t,n=Ki,i=qo,r,s,o=ln,a=ln,l,c=es){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,n,i,r,s,o,a,l,c),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},tu=class extends Zn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},os=class e extends dn{constructor(t=1,n=1,i=1,r=1,s=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:n,depth:i,widthSegments:r,heightSegments:s,depthSegments:o};let a=this;r=Math.floor(r),s=Math.floor(s),o=Math.floor(o);let l=[],c=[],u=[],h=[],f=0,d=0;p("z","y","x",-1,-1,i,n,t,o,s,0),p("z","y","x",1,-1,i,n,-t,o,s,1),p("x","z","y",1,1,t,i,n,r,o,2),p("x","z","y",1,-1,t,i,-n,r,o,3),p("x","y","z",1,-1,t,n,i,r,s,4),p("x","y","z",-1,-1,t,n,-i,r,s,5),this.setIndex(l),this.setAttribute("position",new qe(c,3)),this.setAttribute("normal",new qe(u,3)),this.setAttribute("uv",new qe(h,2));function p(y,m,g,_,M,v,S,b,x,w,A){let C=v/x,R=S/w,D=v/2,k=S/2,P=b/2,L=x+1,z=w+1,U=0,Z=0,F=new B;for(let V=0;V<z;V++){let q=V*R-k;for(let st=0;st<L;st++){let lt=st*C-D;F[y]=lt*_,F[m]=q*M,F[g]=P,c.push(F.x,F.y,F.z),F[y]=0,F[m]=0,F[g]=b>0?1:-1,u.push(F.x,F.y,F.z),h.push(st/x),h.push(1-V/w),U+=1}}for(let V=0;V<w;V++)for(let q=0;q<x;q++){let st=f+q+L*V,lt=f+q+L*(V+1),$=f+(q+1)+L*(V+1),at=f+(q+1)+L*V;l.push(st,lt,at),l.push(lt,$,at),Z+=6}a.addGroup(d,Z,A),d+=Z,f+=U}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var jh=new B,Qh=new B,Yx=new B,td=new Qr,bl=class extends dn{constructor(t=null,n=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:n},t!==null){let r=Math.pow(10,4),s=Math.cos(dl*n),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],u=["a","b","c"],h=new Array(3),f=new Map,d=[];for(let p=0;p<l;p+=3){o?(c[0]=o.getX(p),c[1]=o.getX(p+1),c[2]=o.getX(p+2)):(c[0]=p,c[1]=p+1,c[2]=p+2);let{a:y,b:m,c:g}=td;if(y.fromBufferAttribute(a,c[0]),m.fromBufferAttribute(a,c[1]),g.fromBufferAttribute(a,c[2]),td.getNormal(Yx),h[0]=`${Math.round(y.x*r)},${Math.round(y.y*r)},${Math.round(y.z*r)}`,h[1]=`${Math.round(m.x*r)},${Math.round(m.y*r)},${Math.round(m.z*r)}`,h[2]=`${Math.round(g.x*r)},${Math.round(g.y*r)},${Math.round(g.z*r)}`,!(h[0]===h[1]||h[1]===h[2]||h[2]===h[0]))for(let _=0;_<3;_++){let M=(_+1)%3,v=h[_],S=h[M],b=td[u[_]],x=td[u[M]],w=`${v}_${S}`,A=`${S}_${v}`,C=f.get(A);C?(Yx.dot(C.normal)<=s&&(d.push(b.x,b.y,b.z),d.push(x.x,x.y,x.z)),f.set(A,null)):f.has(w)||f.set(w,{index0:c[_],index1:c[M],normal:Yx.clone()})}}for(let p of f.values())if(p){let{index0:y,index1:m}=p;jh.fromBufferAttribute(a,y),Qh.fromBufferAttribute(a,m),d.push(jh.x,jh.y,jh.z),d.push(Qh.x,Qh.y,Qh.z)}this.setAttribute("position",new qe(d,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var eu=class e extends dn{constructor(t=1,n=1,i=1,r=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:n,widthSegments:i,heightSegments:r};let s=t/2,o=n/2,a=Math.floor(i),l=Math.floor(r),c=a+1,u=l+1,h=t/a,f=n/l,d=[],p=[],y=[],m=[];for(let g=0;g<u;g++){let _=g*f-o;for(let M=0;M<c;M++){let v=M*h-s;p.push(v,-_,0),y.push(0,0,1),m.push(M/a),m.push(1-g/l)}}for(let g=0;g<l;g++)for(let _=0;_<a;_++){let M=_+c*g,v=_+c*(g+1),S=_+1+c*(g+1),b=_+1+c*g;d.push(M,v,b),d.push(v,S,b)}this.setIndex(d),this.setAttribute("position",new qe(p,3)),this.setAttribute("normal",new qe(y,3)),this.setAttribute("uv",new qe(m,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.widthSegments,t.heightSegments)}};var nu=class extends dn{constructor(t=null){if(super(),this.type="WireframeGeometry",this.parameters={geometry:t},t!==null){let n=[],i=new Set,r=new B,s=new B;if(t.index!==null){let o=t.attributes.position,a=t.index,l=t.groups;l.length===0&&(l=[{start:0,count:a.count,materialIndex:0}]);for(let c=0,u=l.length;c<u;++c){let h=l[c],f=h.start,d=h.count;for(let p=f,y=f+d;p<y;p+=3)for(let m=0;m<3;m++){let g=a.getX(p+m),_=a.getX(p+(m+1)%3);r.fromBufferAttribute(o,g),s.fromBufferAttribute(o,_),HA(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}}else{let o=t.attributes.position;for(let a=0,l=o.count/3;a<l;a++)for(let c=0;c<3;c++){let u=3*a+c,h=3*a+(c+1)%3;r.fromBufferAttribute(o,u),s.fromBufferAttribute(o,h),HA(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}this.setAttribute("position",new qe(n,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};function HA(e,t,n){let i=`${e.x},${e.y},${e.z}-${t.x},${t.y},${t.z}`,r=`${t.x},${t.y},${t.z}-${e.x},${e.y},${e.z}`;return n.has(i)===!0||n.has(r)===!0?!1:(n.add(i),n.add(r),!0)}function Zo(e){let t={};for(let n in e){t[n]={};for(let i in e[n]){let r=e[n][i];if(WA(r))r.isRenderTargetTexture?(Ft("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[n][i]=null):t[n][i]=r.clone();else if(Array.isArray(r))if(WA(r[0])){let s=[];for(let o=0,a=r.length;o<a;o++)s[o]=r[o].clone();t[n][i]=s}else t[n][i]=r.slice();else t[n][i]=r}}return t}function En(e){let t={};for(let n=0;n<e.length;n++){let i=Zo(e[n]);for(let r in i)t[r]=i[r]}return t}function WA(e){return e&&(e.isColor||e.isMatrix3||e.isMatrix4||e.isVector2||e.isVector3||e.isVector4||e.isTexture||e.isQuaternion)}function XF(e){let t=[];for(let n=0;n<e.length;n++)t.push(e[n].clone());return t}function N_(e){let t=e.getRenderTarget();return t===null?e.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ie.workingColorSpace}var vu={clone:Zo,merge:En},qF=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,YF=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Pi=class extends is{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=qF,this.fragmentShader=YF,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=Zo(t.uniforms),this.uniformsGroups=XF(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let n=super.toJSON(t);n.glslVersion=this.glslVersion,n.uniforms={};for(let r in this.uniforms){let o=this.uniforms[r].value;o&&o.isTexture?n.uniforms[r]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?n.uniforms[r]={type:"c",value:o.getHex()}:o&&o.isVector2?n.uniforms[r]={type:"v2",value:o.toArray()}:o&&o.isVector3?n.uniforms[r]={type:"v3",value:o.toArray()}:o&&o.isVector4?n.uniforms[r]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?n.uniforms[r]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?n.uniforms[r]={type:"m4",value:o.toArray()}:n.uniforms[r]={value:o}}Object.keys(this.defines).length>0&&(n.defines=this.defines),n.vertexShader=this.vertexShader,n.fragmentShader=this.fragmentShader,n.lights=this.lights,n.clipping=this.clipping;let i={};for(let r in this.extensions)this.extensions[r]===!0&&(i[r]=!0);return Object.keys(i).length>0&&(n.extensions=i),n}fromJSON(t,n){if(super.fromJSON(t,n),t.uniforms!==void 0)for(let i in t.uniforms){let r=t.uniforms[i];switch(this.uniforms[i]={},r.type){case"t":this.uniforms[i].value=n[r.value]||null;break;case"c":this.uniforms[i].value=new kt().setHex(r.value);break;case"v2":this.uniforms[i].value=new Bt().fromArray(r.value);break;case"v3":this.uniforms[i].value=new B().fromArray(r.value);break;case"v4":this.uniforms[i].value=new de().fromArray(r.value);break;case"m3":this.uniforms[i].value=new Vt().fromArray(r.value);break;case"m4":this.uniforms[i].value=new ve().fromArray(r.value);break;default:this.uniforms[i].value=r.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let i in t.extensions)this.extensions[i]=t.extensions[i];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Ad=class extends Pi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var Ml=class extends is{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new kt(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Cp,this.normalScale=new Bt(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ns,this.combine=Vd,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Cd=class extends is{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=M2,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Rd=class extends is{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};var Sl=class extends Ji{constructor(t){super(),this.isLineDashedMaterial=!0,this.type="LineDashedMaterial",this.scale=1,this.dashSize=3,this.gapSize=1,this.setValues(t)}copy(t){return super.copy(t),this.scale=t.scale,this.dashSize=t.dashSize,this.gapSize=t.gapSize,this}};function ll(e,t){return!e||e.constructor===t?e:typeof t.BYTES_PER_ELEMENT=="number"?new t(e):Array.prototype.slice.call(e)}function ed(e){return e!==void 0&&e.inTangents!==void 0&&e.outTangents!==void 0}var zs=class{constructor(t,n,i,r){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=r!==void 0?r:new n.constructor(i),this.sampleValues=n,this.valueSize=i,this.settings=null,this.DefaultSettings_={}}evaluate(t){let n=this.parameterPositions,i=this._cachedIndex,r=n[i],s=n[i-1];t:{e:{let o;n:{i:if(!(t<r)){for(let a=i+2;;){if(r===void 0){if(t<s)break i;return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}if(i===a)break;if(s=r,r=n[++i],t<r)break e}o=n.length;break n}if(!(t>=s)){let a=n[1];t<a&&(i=2,s=a);for(let l=i-2;;){if(s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(i===l)break;if(r=s,s=n[--i-1],t>=s)break e}o=i,i=0;break n}break t}for(;i<o;){let a=i+o>>>1;t<n[a]?o=a:i=a+1}if(r=n[i],s=n[i-1],s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(r===void 0)return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}this._cachedIndex=i,this.intervalChanged_(i,s,r)}return this.interpolate_(i,s,t,r)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let n=this.resultBuffer,i=this.sampleValues,r=this.valueSize,s=t*r;for(let o=0;o!==r;++o)n[o]=i[s+o];return n}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Pd=class extends zs{constructor(t,n,i,r){super(t,n,i,r),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:jx,endingEnd:jx}}intervalChanged_(t,n,i){let r=this.parameterPositions,s=t-2,o=t+1,a=r[s],l=r[o];if(a===void 0)switch(this.getSettings_().endingStart){case Qx:s=t,a=2*n-i;break;case t_:s=r.length-2,a=n+r[s]-r[s+1];break;default:s=t,a=i}if(l===void 0)switch(this.getSettings_().endingEnd){case Qx:o=t,l=2*i-n;break;case t_:o=1,l=i+r[1]-r[0];break;default:o=t-1,l=n}let c=(i-n)*.5,u=this.valueSize;this._weightPrev=c/(n-a),this._weightNext=c/(l-i),this._offsetPrev=s*u,this._offsetNext=o*u}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,h=this._offsetNext,f=this._weightPrev,d=this._weightNext,p=(i-n)/(r-n),y=p*p,m=y*p,g=-f*m+2*f*y-f*p,_=(1+f)*m+(-1.5-2*f)*y+(-.5+f)*p+1,M=(-1-d)*m+(1.5+d)*y+.5*p,v=d*m-d*y;for(let S=0;S!==a;++S)s[S]=g*o[u+S]+_*o[c+S]+M*o[l+S]+v*o[h+S];return s}},Id=class extends zs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(i-n)/(r-n),h=1-u;for(let f=0;f!==a;++f)s[f]=o[c+f]*h+o[l+f]*u;return s}},Ld=class extends zs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t){return this.copySampleValue_(t-1)}},Dd=class extends zs{interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let p=(i-n)/(r-n),y=1-p;for(let m=0;m!==a;++m)s[m]=o[c+m]*y+o[l+m]*p;return s}let f=a*2,d=t-1;for(let p=0;p!==a;++p){let y=o[c+p],m=o[l+p],g=d*f+p*2,_=h[g],M=h[g+1],v=t*f+p*2,S=u[v],b=u[v+1],x=JF(i,n,_,S,r);s[p]=U2(x,y,M,b,m)}return s}};function U2(e,t,n,i,r){let s=1-e;return s*s*s*t+3*s*s*e*n+3*s*e*e*i+e*e*e*r}function ZF(e,t,n,i,r){let s=1-e;return 3*s*s*(n-t)+6*s*e*(i-n)+3*e*e*(r-i)}function JF(e,t,n,i,r){let s=(e-t)/(r-t);for(let o=0;o<8;o++){let a=U2(s,t,n,i,r)-e;if(Math.abs(a)<1e-10)break;let l=ZF(s,t,n,i,r);if(Math.abs(l)<1e-10)break;s=Math.max(0,Math.min(1,s-a/l))}return s}var ui=class{constructor(t,n,i,r){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(n===void 0||n.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=ll(n,this.TimeBufferType),this.values=ll(i,this.ValueBufferType),this.setInterpolation(r||this.DefaultInterpolation)}static toJSON(t){let n=t.constructor,i;if(n.toJSON!==this.toJSON)i=n.toJSON(t);else{i={name:t.name,times:ll(t.times,Array),values:ll(t.values,Array)};let r=t.getInterpolation();r!==t.DefaultInterpolation&&(i.interpolation=r),ed(t.settings)&&(i.settings={inTangents:ll(t.settings.inTangents,Array),outTangents:ll(t.settings.outTangents,Array)})}return i.type=t.ValueTypeName,i}InterpolantFactoryMethodDiscrete(t){return new Ld(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Id(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Pd(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let n=new Dd(this.times,this.values,this.getValueSize(),t);return this.settings&&(n.inTangents=this.settings.inTangents,n.outTangents=this.settings.outTangents),n}setInterpolation(t){let n;switch(t){case Vc:n=this.InterpolantFactoryMethodDiscrete;break;case gd:n=this.InterpolantFactoryMethodLinear;break;case sd:n=this.InterpolantFactoryMethodSmooth;break;case Kx:n=this.InterpolantFactoryMethodBezier;break}if(n===void 0){let i="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(i);return Ft("KeyframeTrack:",i),this}return this.createInterpolant=n,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Vc;case this.InterpolantFactoryMethodLinear:return gd;case this.InterpolantFactoryMethodSmooth:return sd;case this.InterpolantFactoryMethodBezier:return Kx}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]+=t;ed(this.settings)&&($A(this.settings.inTangents,t),$A(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]*=t;ed(this.settings)&&(XA(this.settings.inTangents,t),XA(this.settings.outTangents,t))}return this}trim(t,n){let i=this.times,r=i.length,s=0,o=r-1;for(;s!==r&&i[s]<t;)++s;for(;o!==-1&&i[o]>n;)--o;if(++o,s!==0||o!==r){s>=o&&(o=Math.max(o,1),s=o-1);let a=this.getValueSize();this.times=i.slice(s,o),this.values=this.values.slice(s*a,o*a)}return this}validate(){let t=!0,n=this.getValueSize();n-Math.floor(n)!==0&&(Gt("KeyframeTrack: Invalid value size in track.",this),t=!1);let i=this.times,r=this.values,s=i.length;s===0&&(Gt("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==s;a++){let l=i[a];if(typeof l=="number"&&isNaN(l)){Gt("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){Gt("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(r!==void 0&&hF(r))for(let a=0,l=r.length;a!==l;++a){let c=r[a];if(isNaN(c)){Gt("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),n=this.values.slice(),i=this.getValueSize(),r=this.getInterpolation()===sd,s=t.length-1,o=1;for(let a=1;a<s;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(r)l=!0;else{let h=a*i,f=h-i,d=h+i;for(let p=0;p!==i;++p){let y=n[h+p];if(y!==n[f+p]||y!==n[d+p]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let h=a*i,f=o*i;for(let d=0;d!==i;++d)n[f+d]=n[h+d]}++o}}if(s>0){t[o]=t[s];for(let a=s*i,l=o*i,c=0;c!==i;++c)n[l+c]=n[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=n.slice(0,o*i)):(this.times=t,this.values=n),this}clone(){let t=this.times.slice(),n=this.values.slice(),i=this.constructor,r=new i(this.name,t,n);return r.createInterpolant=this.createInterpolant,ed(this.settings)&&(r.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),r}};function $A(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]+=t}function XA(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]*=t}ui.prototype.ValueTypeName="";ui.prototype.TimeBufferType=Float32Array;ui.prototype.ValueBufferType=Float32Array;ui.prototype.DefaultInterpolation=gd;var Gs=class extends ui{constructor(t,n,i){super(t,n,i)}};Gs.prototype.ValueTypeName="bool";Gs.prototype.ValueBufferType=Array;Gs.prototype.DefaultInterpolation=Vc;Gs.prototype.InterpolantFactoryMethodLinear=void 0;Gs.prototype.InterpolantFactoryMethodSmooth=void 0;var Nd=class extends ui{constructor(t,n,i,r){super(t,n,i,r)}};Nd.prototype.ValueTypeName="color";var Ud=class extends ui{constructor(t,n,i,r){super(t,n,i,r)}};Ud.prototype.ValueTypeName="number";var Fd=class extends zs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(i-n)/(r-n),c=t*a;for(let u=c+a;c!==u;c+=4)ai.slerpFlat(s,0,o,c-a,o,c,l);return s}},iu=class extends ui{constructor(t,n,i,r){super(t,n,i,r)}InterpolantFactoryMethodLinear(t){return new Fd(this.times,this.values,this.getValueSize(),t)}};iu.prototype.ValueTypeName="quaternion";iu.prototype.InterpolantFactoryMethodSmooth=void 0;var Vs=class extends ui{constructor(t,n,i){super(t,n,i)}};Vs.prototype.ValueTypeName="string";Vs.prototype.ValueBufferType=Array;Vs.prototype.DefaultInterpolation=Vc;Vs.prototype.InterpolantFactoryMethodLinear=void 0;Vs.prototype.InterpolantFactoryMethodSmooth=void 0;var Od=class extends ui{constructor(t,n,i,r){super(t,n,i,r)}};Od.prototype.ValueTypeName="vector";var Bd=class{constructor(t,n,i){let r=this,s=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=n,this.onError=i,this._abortController=null,this.itemStart=function(u){a++,s===!1&&r.onStart!==void 0&&r.onStart(u,o,a),s=!0},this.itemEnd=function(u){o++,r.onProgress!==void 0&&r.onProgress(u,o,a),o===a&&(s=!1,r.onLoad!==void 0&&r.onLoad())},this.itemError=function(u){r.onError!==void 0&&r.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,h){return c.push(u,h),this},this.removeHandler=function(u){let h=c.indexOf(u);return h!==-1&&c.splice(h,2),this},this.getHandler=function(u){for(let h=0,f=c.length;h<f;h+=2){let d=c[h],p=c[h+1];if(d.global&&(d.lastIndex=0),d.test(u))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},F2=new Bd,kd=class{constructor(t){this.manager=t!==void 0?t:F2,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,n){let i=this;return new Promise(function(r,s){i.load(t,r,n,s)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};kd.DEFAULT_MATERIAL_NAME="__DEFAULT";var ru=class extends wn{static registerNode(t){this.prototype._lightNode=t}constructor(t,n=1){super(),this.isLight=!0,this.type="Light",this.color=new kt(t),this.intensity=n}copy(t,n){return super.copy(t,n),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let n=super.toJSON(t);return n.object.color=this.color.getHex(),n.object.intensity=this.intensity,n}};var Zx=new ve,qA=new B,YA=new B,zd=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new Bt(512,512),this.mapType=Jn,this.map=null,this.mapPass=null,this.matrix=new ve,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new ks,this._frameExtents=new Bt(1,1),this._viewportCount=1,this._viewports=[new de(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let n=this.camera;qA.setFromMatrixPosition(t.matrixWorld),n.position.copy(qA),YA.setFromMatrixPosition(t.target.matrixWorld),n.lookAt(YA),n.updateMatrixWorld(),this._updateMatrix(n,this.matrix,this._frustum)}_updateMatrix(t,n,i,r){Zx.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),i.setFromProjectionMatrix(Zx,t.coordinateSystem,t.reversedDepth);let s=this._frameExtents,o=r?r.z/s.x:1,a=r?r.w/s.y:1,l=r?r.x/s.x:0,c=r?r.y/s.y:0;t.coordinateSystem===gl||t.reversedDepth?n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),n.multiply(Zx)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},nd=new B,id=new ai,vr=new B,su=class extends wn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new ve,this.projectionMatrix=new ve,this.projectionMatrixInverse=new ve,this.coordinateSystem=Ri,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,n){return super.copy(t,n),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(nd,id,vr),vr.x===1&&vr.y===1&&vr.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(nd,id,vr.set(1,1,1)).invert()}updateWorldMatrix(t,n,i=!1){super.updateWorldMatrix(t,n,i),this.matrixWorld.decompose(nd,id,vr),vr.x===1&&vr.y===1&&vr.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(nd,id,vr.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Bs=new B,ZA=new Bt,JA=new Bt,oi=class extends su{constructor(t=50,n=1,i=.1,r=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=i,this.far=r,this.focus=10,this.aspect=n,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let n=.5*this.getFilmHeight()/t;this.fov=xl*2*Math.atan(n),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(dl*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return xl*2*Math.atan(Math.tan(dl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,n,i){Bs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Bs.x,Bs.y).multiplyScalar(-t/Bs.z),Bs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),i.set(Bs.x,Bs.y).multiplyScalar(-t/Bs.z)}getViewSize(t,n){return this.getViewBounds(t,ZA,JA),n.subVectors(JA,ZA)}setViewOffset(t,n,i,r,s,o){this.aspect=t/n,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,n=t*Math.tan(dl*.5*this.fov)/this.zoom,i=2*n,r=this.aspect*i,s=-.5*r,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;s+=o.offsetX*r/l,n-=o.offsetY*i/c,r*=o.width/l,i*=o.height/c}let a=this.filmOffset;a!==0&&(s+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(s,s+r,n,n-i,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.fov=this.fov,n.object.zoom=this.zoom,n.object.near=this.near,n.object.far=this.far,n.object.focus=this.focus,n.object.aspect=this.aspect,this.view!==null&&(n.object.view=Object.assign({},this.view)),n.object.filmGauge=this.filmGauge,n.object.filmOffset=this.filmOffset,n}};var Wo=class extends su{constructor(t=-1,n=1,i=1,r=-1,s=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=n,this.top=i,this.bottom=r,this.near=s,this.far=o,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,n,i,r,s,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),n=(this.top-this.bottom)/(2*this.zoom),i=(this.right+this.left)/2,r=(this.top+this.bottom)/2,s=i-t,o=i+t,a=r+n,l=r-n;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;s+=c*this.view.offsetX,o=s+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(s,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.zoom=this.zoom,n.object.left=this.left,n.object.right=this.right,n.object.top=this.top,n.object.bottom=this.bottom,n.object.near=this.near,n.object.far=this.far,this.view!==null&&(n.object.view=Object.assign({},this.view)),n}},e_=class extends zd{constructor(){super(new Wo(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},ou=class extends ru{constructor(t,n){super(t,n),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(wn.DEFAULT_UP),this.updateMatrix(),this.target=new wn,this.shadow=new e_}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let n=super.toJSON(t);return n.object.shadow=this.shadow.toJSON(),n.object.target=this.target.uuid,n}},au=class extends ru{constructor(t,n){super(t,n),this.isAmbientLight=!0,this.type="AmbientLight"}};var lu=class extends dn{constructor(){super(),this.isInstancedBufferGeometry=!0,this.type="InstancedBufferGeometry",this.instanceCount=1/0}copy(t){return super.copy(t),this.instanceCount=t.instanceCount,this}toJSON(){let t=super.toJSON();return t.instanceCount=this.instanceCount,t.isInstancedBufferGeometry=!0,t}};var cl=-90,ul=1,wl=class extends wn{constructor(t,n,i){super(),this.type="CubeCamera",this.renderTarget=i,this.coordinateSystem=null,this.activeMipmapLevel=0;let r=new oi(cl,ul,t,n);r.layers=this.layers,this.add(r);let s=new oi(cl,ul,t,n);s.layers=this.layers,this.add(s);let o=new oi(cl,ul,t,n);o.layers=this.layers,this.add(o);let a=new oi(cl,ul,t,n);a.layers=this.layers,this.add(a);let l=new oi(cl,ul,t,n);l.layers=this.layers,this.add(l);let c=new oi(cl,ul,t,n);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,n=this.children.concat(),[i,r,s,o,a,l]=n;for(let c of n)this.remove(c);if(t===Ri)i.up.set(0,1,0),i.lookAt(1,0,0),r.up.set(0,1,0),r.lookAt(-1,0,0),s.up.set(0,0,-1),s.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===gl)i.up.set(0,-1,0),i.lookAt(-1,0,0),r.up.set(0,-1,0),r.lookAt(1,0,0),s.up.set(0,0,1),s.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of n)this.add(c),c.updateMatrixWorld()}update(t,n){this.parent===null&&this.updateMatrixWorld();let{renderTarget:i,activeMipmapLevel:r}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[s,o,a,l,c,u]=this.children,h=t.getRenderTarget(),f=t.getActiveCubeFace(),d=t.getActiveMipmapLevel(),p=t.xr.enabled;t.xr.enabled=!1;let y=i.texture.mipmapsAutoUpdate;i.texture.mipmapsAutoUpdate=!1;let m=!1;t.isWebGLRenderer===!0?m=t.state.buffers.depth.getReversed():m=t.reversedDepthBuffer,t.setRenderTarget(i,0,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,s),t.setRenderTarget(i,1,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,o),t.setRenderTarget(i,2,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,a),t.setRenderTarget(i,3,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,l),t.setRenderTarget(i,4,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,c),i.texture.mipmapsAutoUpdate=y,t.setRenderTarget(i,5,r),m&&t.autoClear===!1&&t.clearDepth(),t.render(n,u),t.setRenderTarget(h,f,d),t.xr.enabled=p,i.texture.needsPMREMUpdate=!0}},Gd=class extends oi{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var U_="\\[\\]\\.:\\/",KF=new RegExp("["+U_+"]","g"),F_="[^"+U_+"]",jF="[^"+U_.replace("\\.","")+"]",QF=/((?:WC+[\/:])*)/.source.replace("WC",F_),tO=/(WCOD+)?/.source.replace("WCOD",jF),eO=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",F_),nO=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",F_),iO=new RegExp("^"+QF+tO+eO+nO+"$"),rO=["material","materials","bones","map"],n_=class{constructor(t,n,i){let r=i||Ee.parseTrackName(n);this._targetGroup=t,this._bindings=t.subscribe_(n,r)}getValue(t,n){this.bind();let i=this._targetGroup.nCachedObjects_,r=this._bindings[i];r!==void 0&&r.getValue(t,n)}setValue(t,n){let i=this._bindings;for(let r=this._targetGroup.nCachedObjects_,s=i.length;r!==s;++r)i[r].setValue(t,n)}bind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].bind()}unbind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].unbind()}},Ee=class e{constructor(t,n,i){this.path=n,this.parsedPath=i||e.parseTrackName(n),this.node=e.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,n,i){return t&&t.isAnimationObjectGroup?new e.Composite(t,n,i):new e(t,n,i)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(KF,"")}static parseTrackName(t){let n=iO.exec(t);if(n===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let i={nodeName:n[2],objectName:n[3],objectIndex:n[4],propertyName:n[5],propertyIndex:n[6]},r=i.nodeName&&i.nodeName.lastIndexOf(".");if(r!==void 0&&r!==-1){let s=i.nodeName.substring(r+1);rO.indexOf(s)!==-1&&(i.nodeName=i.nodeName.substring(0,r),i.objectName=s)}if(i.propertyName===null||i.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return i}static findNode(t,n){if(n===void 0||n===""||n==="."||n===-1||n===t.name||n===t.uuid)return t;if(t.skeleton){let i=t.skeleton.getBoneByName(n);if(i!==void 0)return i}if(t.children){let i=function(s){for(let o=0;o<s.length;o++){let a=s[o];if(a.name===n||a.uuid===n)return a;let l=i(a.children);if(l)return l}return null},r=i(t.children);if(r)return r}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,n){t[n]=this.targetObject[this.propertyName]}_getValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)t[n++]=i[r]}_getValue_arrayElement(t,n){t[n]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,n){this.resolvedProperty.toArray(t,n)}_setValue_direct(t,n){this.targetObject[this.propertyName]=t[n]}_setValue_direct_setNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++]}_setValue_array_setNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,n){this.resolvedProperty[this.propertyIndex]=t[n]}_setValue_arrayElement_setNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,n){this.resolvedProperty.fromArray(t,n)}_setValue_fromArray_setNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,n){this.bind(),this.getValue(t,n)}_setValue_unbound(t,n){this.bind(),this.setValue(t,n)}bind(){let t=this.node,n=this.parsedPath,i=n.objectName,r=n.propertyName,s=n.propertyIndex;if(t||(t=e.findNode(this.rootNode,n.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Ft("PropertyBinding: No target node found for track: "+this.path+".");return}if(i){let c=n.objectIndex;switch(i){case"materials":if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){Gt("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){Gt("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){Gt("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[i]===void 0){Gt("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[i]}if(c!==void 0){if(t[c]===void 0){Gt("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[r];if(o===void 0){let c=n.nodeName;Gt("PropertyBinding: Trying to update property for track: "+c+"."+r+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(s!==void 0){if(r==="morphTargetInfluences"){if(!t.geometry){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[s]!==void 0&&(s=t.morphTargetDictionary[s])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=s}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=r;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Ee.Composite=n_;Ee.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Ee.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Ee.prototype.GetterByBindingType=[Ee.prototype._getValue_direct,Ee.prototype._getValue_array,Ee.prototype._getValue_arrayElement,Ee.prototype._getValue_toArray];Ee.prototype.SetterByBindingTypeAndVersioning=[[Ee.prototype._setValue_direct,Ee.prototype._setValue_direct_setNeedsUpdate,Ee.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_array,Ee.prototype._setValue_array_setNeedsUpdate,Ee.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_arrayElement,Ee.prototype._setValue_arrayElement_setNeedsUpdate,Ee.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_fromArray,Ee.prototype._setValue_fromArray_setNeedsUpdate,Ee.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var oW=new Float32Array(1);var Hs=class extends vd{constructor(t,n,i=1){super(t,n),this.isInstancedInterleavedBuffer=!0,this.meshPerAttribute=i}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}clone(t){let n=super.clone(t);return n.meshPerAttribute=this.meshPerAttribute,n}toJSON(t){let n=super.toJSON(t);return n.isInstancedInterleavedBuffer=!0,n.meshPerAttribute=this.meshPerAttribute,n}};var Tl=class{constructor(t=1,n=0,i=0){this.radius=t,this.phi=n,this.theta=i}set(t,n,i){return this.radius=t,this.phi=n,this.theta=i,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=Xt(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,n,i){return this.radius=Math.sqrt(t*t+n*n+i*i),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,i),this.phi=Math.acos(Xt(n/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var i_=class{static{this.prototype.isMatrix2=!0}constructor(t,n,i,r){this.elements=[1,0,0,1],t!==void 0&&this.set(t,n,i,r)}identity(){return this.set(1,0,0,1),this}fromArray(t,n=0){for(let i=0;i<4;i++)this.elements[i]=t[i+n];return this}set(t,n,i,r){let s=this.elements;return s[0]=t,s[2]=n,s[1]=i,s[3]=r,this}};var KA=new B,rd=new B,fl=new B,hl=new B,Jx=new B,sO=new B,oO=new B,cu=class{constructor(t=new B,n=new B){this.start=t,this.end=n}set(t,n){return this.start.copy(t),this.end.copy(n),this}copy(t){return this.start.copy(t.start),this.end.copy(t.end),this}getCenter(t){return t.addVectors(this.start,this.end).multiplyScalar(.5)}delta(t){return t.subVectors(this.end,this.start)}distanceSq(){return this.start.distanceToSquared(this.end)}distance(){return this.start.distanceTo(this.end)}at(t,n){return this.delta(n).multiplyScalar(t).add(this.start)}closestPointToPointParameter(t,n){KA.subVectors(t,this.start),rd.subVectors(this.end,this.start);let i=rd.dot(rd);if(i===0)return 0;let s=rd.dot(KA)/i;return n&&(s=Xt(s,0,1)),s}closestPointToPoint(t,n,i){let r=this.closestPointToPointParameter(t,n);return this.delta(i).multiplyScalar(r).add(this.start)}distanceSqToLine3(t,n=sO,i=oO){let r=10000000000000001e-32,s,o,a=this.start,l=t.start,c=this.end,u=t.end;fl.subVectors(c,a),hl.subVectors(u,l),Jx.subVectors(a,l);let h=fl.dot(fl),f=hl.dot(hl),d=hl.dot(Jx);if(h<=r&&f<=r)return n.copy(a),i.copy(l),n.distanceToSquared(i);if(h<=r)s=0,o=d/f,o=Xt(o,0,1);else{let p=fl.dot(Jx);if(f<=r)o=0,s=Xt(-p/h,0,1);else{let y=fl.dot(hl),m=h*f-y*y;m!==0?s=Xt((y*d-p*f)/m,0,1):s=0,o=(y*s+d)/f,o<0?(o=0,s=Xt(-p/h,0,1)):o>1&&(o=1,s=Xt((y-p)/h,0,1))}}return n.copy(a).addScaledVector(fl,s),i.copy(l).addScaledVector(hl,o),n.distanceToSquared(i)}applyMatrix4(t){return this.start.applyMatrix4(t),this.end.applyMatrix4(t),this}equals(t){return t.start.equals(this.start)&&t.end.equals(this.end)}clone(){return new this.constructor().copy(this)}};var uu=class extends qi{constructor(t,n=null){super(),this.object=t,this.domElement=n,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function O_(e,t,n,i){let r=aO(i);switch(n){case M_:return e*t;case w_:return e*t/r.components*r.byteLength;case Zd:return e*t/r.components*r.byteLength;case qs:return e*t*2/r.components*r.byteLength;case Jd:return e*t*2/r.components*r.byteLength;case S_:return e*t*3/r.components*r.byteLength;case tr:return e*t*4/r.components*r.byteLength;case Kd:return e*t*4/r.components*r.byteLength;case du:case pu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case mu:case gu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case Qd:case ep:return Math.max(e,16)*Math.max(t,8)/4;case jd:case tp:return Math.max(e,8)*Math.max(t,8)/2;case np:case ip:case sp:case op:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case rp:case yu:case ap:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case lp:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case cp:return Math.floor((e+4)/5)*Math.floor((t+3)/4)*16;case up:return Math.floor((e+4)/5)*Math.floor((t+4)/5)*16;case fp:return Math.floor((e+5)/6)*Math.floor((t+4)/5)*16;case hp:return Math.floor((e+5)/6)*Math.floor((t+5)/6)*16;case dp:return Math.floor((e+7)/8)*Math.floor((t+4)/5)*16;case pp:return Math.floor((e+7)/8)*Math.floor((t+5)/6)*16;case mp:return Math.floor((e+7)/8)*Math.floor((t+7)/8)*16;case gp:return Math.floor((e+9)/10)*Math.floor((t+4)/5)*16;case yp:return Math.floor((e+9)/10)*Math.floor((t+5)/6)*16;case xp:return Math.floor((e+9)/10)*Math.floor((t+7)/8)*16;case _p:return Math.floor((e+9)/10)*Math.floor((t+9)/10)*16;case vp:return Math.floor((e+11)/12)*Math.floor((t+9)/10)*16;case bp:return Math.floor((e+11)/12)*Math.floor((t+11)/12)*16;case Mp:case Sp:case wp:return Math.ceil(e/4)*Math.ceil(t/4)*16;case Tp:case Ep:return Math.ceil(e/4)*Math.ceil(t/4)*8;case xu:case Ap:return Math.ceil(e/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${n} format.`)}function aO(e){switch(e){case Jn:case x_:return{byteLength:1,components:1};case Rl:case __:case Qi:return{byteLength:2,components:1};case qd:case Yd:return{byteLength:2,components:4};case Ki:case Xd:case ji:return{byteLength:4,components:1};case v_:case b_:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${e}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Ft("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function r3(){let e=null,t=!1,n=null,i=null;function r(s,o){i=e.requestAnimationFrame(r),n(s,o)}return{start:function(){t!==!0&&n!==null&&e!==null&&(i=e.requestAnimationFrame(r),t=!0)},stop:function(){e!==null&&e.cancelAnimationFrame(i),t=!1},setAnimationLoop:function(s){n=s},setContext:function(s){e=s}}}function cO(e){let t=new WeakMap;function n(a,l){let c=a.array,u=a.usage,h=c.byteLength,f=e.createBuffer();e.bindBuffer(l,f),e.bufferData(l,c,u),a.onUploadCallback();let d;if(c instanceof Float32Array)d=e.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)d=e.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?d=e.HALF_FLOAT:d=e.UNSIGNED_SHORT;else if(c instanceof Int16Array)d=e.SHORT;else if(c instanceof Uint32Array)d=e.UNSIGNED_INT;else if(c instanceof Int32Array)d=e.INT;else if(c instanceof Int8Array)d=e.BYTE;else if(c instanceof Uint8Array)d=e.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)d=e.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:f,type:d,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:h}}function i(a,l,c){let u=l.array,h=l.updateRanges;if(e.bindBuffer(c,a),h.length===0)e.bufferSubData(c,0,u);else{h.sort((d,p)=>d.start-p.start);let f=0;for(let d=1;d<h.length;d++){let p=h[f],y=h[d];y.start<=p.start+p.count+1?p.count=Math.max(p.count,y.start+y.count-p.start):(++f,h[f]=y)}h.length=f+1;for(let d=0,p=h.length;d<p;d++){let y=h[d];e.bufferSubData(c,y.start*u.BYTES_PER_ELEMENT,u,y.start,y.count)}l.clearUpdateRanges()}l.onUploadCallback()}function r(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function s(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(e.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,n(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");i(c.buffer,a,l),c.version=a.version}}return{get:r,remove:s,update:o}}var uO=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,fO=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,hO=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,dO=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,pO=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,mO=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,gO=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,yO=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,xO=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,_O=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,vO=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,bO=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,MO=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,SO=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,wO=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,TO=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,EO=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,AO=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,CO=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,RO=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,PO=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,IO=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,LO=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,DO=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,NO=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,UO=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,FO=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,OO=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,BO=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,kO="gl_FragColor = linearToOutputTexel( gl_FragColor );",zO=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,GO=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,VO=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,HO=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,WO=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,$O=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,XO=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,qO=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,YO=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,ZO=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,JO=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,KO=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,jO=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,QO=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,t4=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,e4=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,n4=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,i4=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,r4=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,s4=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,o4=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,a4=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,l4=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,c4=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,u4=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,f4=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,h4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,d4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,p4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,m4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,g4=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,y4=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,x4=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,_4=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,v4=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,b4=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,M4=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,S4=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,w4=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,T4=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,E4=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,A4=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,C4=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,R4=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,P4=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,I4=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,L4=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,D4=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,N4=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,U4=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,F4=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,O4=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,B4=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,k4=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,z4=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,G4=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,V4=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,H4=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,W4=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,$4=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,X4=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,q4=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Y4=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,Z4=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,J4=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,K4=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,j4=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,Q4=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,t5=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,e5=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,n5=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,i5=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,r5=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,s5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,o5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,a5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,l5=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,c5=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,u5=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,f5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,h5=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,d5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,p5=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,m5=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,g5=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,y5=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,x5=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,_5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,v5=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,b5=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,M5=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,S5=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,w5=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,T5=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,E5=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,A5=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,C5=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,R5=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,P5=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,I5=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,L5=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,D5=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,N5=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,U5=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,F5=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,O5=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,B5=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,k5=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,z5=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,G5=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,V5=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,jt={alphahash_fragment:uO,alphahash_pars_fragment:fO,alphamap_fragment:hO,alphamap_pars_fragment:dO,alphatest_fragment:pO,alphatest_pars_fragment:mO,aomap_fragment:gO,aomap_pars_fragment:yO,batching_pars_vertex:xO,batching_vertex:_O,begin_vertex:vO,beginnormal_vertex:bO,bsdfs:MO,iridescence_fragment:SO,bumpmap_pars_fragment:wO,clipping_planes_fragment:TO,clipping_planes_pars_fragment:EO,clipping_planes_pars_vertex:AO,clipping_planes_vertex:CO,color_fragment:RO,color_pars_fragment:PO,color_pars_vertex:IO,color_vertex:LO,common:DO,defaultnormal_vertex:NO,displacementmap_pars_vertex:UO,displacementmap_vertex:FO,emissivemap_fragment:OO,emissivemap_pars_fragment:BO,colorspace_fragment:kO,colorspace_pars_fragment:zO,envmap_fragment:GO,envmap_common_pars_fragment:VO,envmap_pars_fragment:HO,envmap_pars_vertex:WO,envmap_physical_pars_fragment:e4,envmap_vertex:$O,fog_vertex:XO,fog_pars_vertex:qO,fog_fragment:YO,fog_pars_fragment:ZO,gradientmap_pars_fragment:JO,lightmap_pars_fragment:KO,lights_lambert_fragment:jO,lights_lambert_pars_fragment:QO,lights_pars_begin:t4,lights_toon_fragment:n4,lights_toon_pars_fragment:i4,lights_phong_fragment:r4,lights_phong_pars_fragment:s4,lights_physical_fragment:o4,lights_physical_pars_fragment:a4,lights_fragment_begin:l4,lights_fragment_maps:c4,lights_fragment_end:u4,lightprobes_pars_fragment:f4,logdepthbuf_fragment:h4,logdepthbuf_pars_fragment:d4,logdepthbuf_pars_vertex:p4,logdepthbuf_vertex:m4,map_fragment:g4,map_pars_fragment:y4,map_particle_fragment:x4,map_particle_pars_fragment:_4,metalnessmap_fragment:v4,metalnessmap_pars_fragment:b4,morphinstance_vertex:M4,morphcolor_vertex:S4,morphnormal_vertex:w4,morphtarget_pars_vertex:T4,morphtarget_vertex:E4,normal_fragment_begin:A4,normal_fragment_maps:C4,normal_pars_fragment:R4,normal_pars_vertex:P4,normal_vertex:I4,normalmap_pars_fragment:L4,clearcoat_normal_fragment_begin:D4,clearcoat_normal_fragment_maps:N4,clearcoat_pars_fragment:U4,iridescence_pars_fragment:F4,opaque_fragment:O4,packing:B4,premultiplied_alpha_fragment:k4,project_vertex:z4,dithering_fragment:G4,dithering_pars_fragment:V4,roughnessmap_fragment:H4,roughnessmap_pars_fragment:W4,shadowmap_pars_fragment:$4,shadowmap_pars_vertex:X4,shadowmap_vertex:q4,shadowmask_pars_fragment:Y4,skinbase_vertex:Z4,skinning_pars_vertex:J4,skinning_vertex:K4,skinnormal_vertex:j4,specularmap_fragment:Q4,specularmap_pars_fragment:t5,tonemapping_fragment:e5,tonemapping_pars_fragment:n5,transmission_fragment:i5,transmission_pars_fragment:r5,uv_pars_fragment:s5,uv_pars_vertex:o5,uv_vertex:a5,worldpos_vertex:l5,background_vert:c5,background_frag:u5,backgroundCube_vert:f5,backgroundCube_frag:h5,cube_vert:d5,cube_frag:p5,depth_vert:m5,depth_frag:g5,distance_vert:y5,distance_frag:x5,equirect_vert:_5,equirect_frag:v5,linedashed_vert:b5,linedashed_frag:M5,meshbasic_vert:S5,meshbasic_frag:w5,meshlambert_vert:T5,meshlambert_frag:E5,meshmatcap_vert:A5,meshmatcap_frag:C5,meshnormal_vert:R5,meshnormal_frag:P5,meshphong_vert:I5,meshphong_frag:L5,meshphysical_vert:D5,meshphysical_frag:N5,meshtoon_vert:U5,meshtoon_frag:F5,points_vert:O5,points_frag:B5,shadow_vert:k5,shadow_frag:z5,sprite_vert:G5,sprite_frag:V5},wt={common:{diffuse:{value:new kt(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Vt}},envmap:{envMap:{value:null},envMapRotation:{value:new Vt},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Vt}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Vt}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Vt},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Vt},normalScale:{value:new Bt(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Vt},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Vt}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Vt}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Vt}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new kt(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new kt(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0},uvTransform:{value:new Vt}},sprite:{diffuse:{value:new kt(16777215)},opacity:{value:1},center:{value:new Bt(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}}},kn={basic:{uniforms:En([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.fog]),vertexShader:jt.meshbasic_vert,fragmentShader:jt.meshbasic_frag},lambert:{uniforms:En([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},envMapIntensity:{value:1}}]),vertexShader:jt.meshlambert_vert,fragmentShader:jt.meshlambert_frag},phong:{uniforms:En([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},specular:{value:new kt(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:jt.meshphong_vert,fragmentShader:jt.meshphong_frag},standard:{uniforms:En([wt.common,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.roughnessmap,wt.metalnessmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag},toon:{uniforms:En([wt.common,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.gradientmap,wt.fog,wt.lights,{emissive:{value:new kt(0)}}]),vertexShader:jt.meshtoon_vert,fragmentShader:jt.meshtoon_frag},matcap:{uniforms:En([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,{matcap:{value:null}}]),vertexShader:jt.meshmatcap_vert,fragmentShader:jt.meshmatcap_frag},points:{uniforms:En([wt.points,wt.fog]),vertexShader:jt.points_vert,fragmentShader:jt.points_frag},dashed:{uniforms:En([wt.common,wt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:jt.linedashed_vert,fragmentShader:jt.linedashed_frag},depth:{uniforms:En([wt.common,wt.displacementmap]),vertexShader:jt.depth_vert,fragmentShader:jt.depth_frag},normal:{uniforms:En([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,{opacity:{value:1}}]),vertexShader:jt.meshnormal_vert,fragmentShader:jt.meshnormal_frag},sprite:{uniforms:En([wt.sprite,wt.fog]),vertexShader:jt.sprite_vert,fragmentShader:jt.sprite_frag},background:{uniforms:{uvTransform:{value:new Vt},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:jt.background_vert,fragmentShader:jt.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Vt}},vertexShader:jt.backgroundCube_vert,fragmentShader:jt.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:jt.cube_vert,fragmentShader:jt.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:jt.equirect_vert,fragmentShader:jt.equirect_frag},distance:{uniforms:En([wt.common,wt.displacementmap,{referencePosition:{value:new B},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:jt.distance_vert,fragmentShader:jt.distance_frag},shadow:{uniforms:En([wt.lights,wt.fog,{color:{value:new kt(0)},opacity:{value:1}}]),vertexShader:jt.shadow_vert,fragmentShader:jt.shadow_frag}};kn.physical={uniforms:En([kn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Vt},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Vt},clearcoatNormalScale:{value:new Bt(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Vt},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Vt},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Vt},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Vt},sheen:{value:0},sheenColor:{value:new kt(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Vt},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Vt},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Vt},transmissionSamplerSize:{value:new Bt},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Vt},attenuationDistance:{value:0},attenuationColor:{value:new kt(0)},specularColor:{value:new kt(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Vt},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Vt},anisotropyVector:{value:new Bt},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Vt}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag};var Pp={r:0,b:0,g:0},H5=new ve,s3=new Vt;s3.set(-1,0,0,0,1,0,0,0,1);function W5(e,t,n,i,r,s){let o=new kt(0),a=r===!0?0:1,l,c,u=null,h=0,f=null;function d(_){let M=_.isScene===!0?_.background:null;if(M&&M.isTexture){let v=_.backgroundBlurriness>0;M=t.get(M,v)}return M}function p(_){let M=!1,v=d(_);v===null?m(o,a):v&&v.isColor&&(m(v,1),M=!0);let S=e.xr.getEnvironmentBlendMode();S==="additive"?n.buffers.color.setClear(0,0,0,1,s):S==="alpha-blend"&&n.buffers.color.setClear(0,0,0,0,s),(e.autoClear||M)&&(n.buffers.depth.setTest(!0),n.buffers.depth.setMask(!0),n.buffers.color.setMask(!0),e.clear(e.autoClearColor,e.autoClearDepth,e.autoClearStencil))}function y(_,M){let v=d(M);v&&v.isCubeTexture?(c===void 0&&(c=new Tn(new os(1,1,1),new Pi({name:"BackgroundCubeMaterial",uniforms:Zo(kn.backgroundCube.uniforms),vertexShader:kn.backgroundCube.vertexShader,fragmentShader:kn.backgroundCube.fragmentShader,side:Bn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(S,b,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),i.update(c)),c.material.uniforms.envMap.value=v,c.material.uniforms.backgroundBlurriness.value=M.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(H5.makeRotationFromEuler(M.backgroundRotation)).transpose(),v.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(s3),c.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,(u!==v||h!==v.version||f!==e.toneMapping)&&(c.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),c.layers.enableAll(),_.unshift(c,c.geometry,c.material,0,0,null)):v&&v.isTexture&&(l===void 0&&(l=new Tn(new eu(2,2),new Pi({name:"BackgroundMaterial",uniforms:Zo(kn.background.uniforms),vertexShader:kn.background.vertexShader,fragmentShader:kn.background.fragmentShader,side:Xs,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),i.update(l)),l.material.uniforms.t2D.value=v,l.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,l.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,v.matrixAutoUpdate===!0&&v.updateMatrix(),l.material.uniforms.uvTransform.value.copy(v.matrix),(u!==v||h!==v.version||f!==e.toneMapping)&&(l.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),l.layers.enableAll(),_.unshift(l,l.geometry,l.material,0,0,null))}function m(_,M){_.getRGB(Pp,N_(e)),n.buffers.color.setClear(Pp.r,Pp.g,Pp.b,M,s)}function g(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(_,M=1){o.set(_),a=M,m(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(_){a=_,m(o,a)},render:p,addToRenderList:y,dispose:g}}function $5(e,t){let n=e.getParameter(e.MAX_VERTEX_ATTRIBS),i={},r=f(null),s=r,o=!1;function a(R,D,k,P,L){let z=!1,U=h(R,P,k,D);s!==U&&(s=U,c(s.object)),z=d(R,P,k,L),z&&p(R,P,k,L),L!==null&&t.update(L,e.ELEMENT_ARRAY_BUFFER),(z||o)&&(o=!1,v(R,D,k,P),L!==null&&e.bindBuffer(e.ELEMENT_ARRAY_BUFFER,t.get(L).buffer))}function l(){return e.createVertexArray()}function c(R){return e.bindVertexArray(R)}function u(R){return e.deleteVertexArray(R)}function h(R,D,k,P){let L=P.wireframe===!0,z=i[D.id];z===void 0&&(z={},i[D.id]=z);let U=R.isInstancedMesh===!0?R.id:0,Z=z[U];Z===void 0&&(Z={},z[U]=Z);let F=Z[k.id];F===void 0&&(F={},Z[k.id]=F);let V=F[L];return V===void 0&&(V=f(l()),F[L]=V),V}function f(R){let D=[],k=[],P=[];for(let L=0;L<n;L++)D[L]=0,k[L]=0,P[L]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:D,enabledAttributes:k,attributeDivisors:P,object:R,attributes:{},index:null}}function d(R,D,k,P){let L=s.attributes,z=D.attributes,U=0,Z=k.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=L[F],st=z[F];if(st===void 0&&(F==="instanceMatrix"&&R.instanceMatrix&&(st=R.instanceMatrix),F==="instanceColor"&&R.instanceColor&&(st=R.instanceColor)),q===void 0||q.attribute!==st||st&&q.data!==st.data)return!0;U++}return s.attributesNum!==U||s.index!==P}function p(R,D,k,P){let L={},z=D.attributes,U=0,Z=k.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=z[F];q===void 0&&(F==="instanceMatrix"&&R.instanceMatrix&&(q=R.instanceMatrix),F==="instanceColor"&&R.instanceColor&&(q=R.instanceColor));let st={};st.attribute=q,q&&q.data&&(st.data=q.data),L[F]=st,U++}s.attributes=L,s.attributesNum=U,s.index=P}function y(){let R=s.newAttributes;for(let D=0,k=R.length;D<k;D++)R[D]=0}function m(R){g(R,0)}function g(R,D){let k=s.newAttributes,P=s.enabledAttributes,L=s.attributeDivisors;k[R]=1,P[R]===0&&(e.enableVertexAttribArray(R),P[R]=1),L[R]!==D&&(e.vertexAttribDivisor(R,D),L[R]=D)}function _(){let R=s.newAttributes,D=s.enabledAttributes;for(let k=0,P=D.length;k<P;k++)D[k]!==R[k]&&(e.disableVertexAttribArray(k),D[k]=0)}function M(R,D,k,P,L,z,U){U===!0?e.vertexAttribIPointer(R,D,k,L,z):e.vertexAttribPointer(R,D,k,P,L,z)}function v(R,D,k,P){y();let L=P.attributes,z=k.getAttributes(),U=D.defaultAttributeValues;for(let Z in z){let F=z[Z];if(F.location>=0){let V=L[Z];if(V===void 0&&(Z==="instanceMatrix"&&R.instanceMatrix&&(V=R.instanceMatrix),Z==="instanceColor"&&R.instanceColor&&(V=R.instanceColor)),V!==void 0){let q=V.normalized,st=V.itemSize,lt=t.get(V);if(lt===void 0)continue;let $=lt.buffer,at=lt.type,ft=lt.bytesPerElement,ot=at===e.INT||at===e.UNSIGNED_INT||V.gpuType===Xd;if(V.isInterleavedBufferAttribute){let rt=V.data,J=rt.isInterleavedBuffer===!0?rt.stride:rt.itemSize,gt=V.offset;if(rt.isInstancedInterleavedBuffer||rt.isInstancedBufferAttribute){for(let ct=0;ct<F.locationSize;ct++)g(F.location+ct,rt.meshPerAttribute);R.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=rt.meshPerAttribute*rt.count)}else for(let ct=0;ct<F.locationSize;ct++)m(F.location+ct);e.bindBuffer(e.ARRAY_BUFFER,$);for(let ct=0;ct<F.locationSize;ct++)M(F.location+ct,st/F.locationSize,at,q,J*ft,(gt+st/F.locationSize*ct)*ft,ot)}else{if(V.isInstancedBufferAttribute){for(let rt=0;rt<F.locationSize;rt++)g(F.location+rt,V.meshPerAttribute);R.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=V.meshPerAttribute*V.count)}else for(let rt=0;rt<F.locationSize;rt++)m(F.location+rt);e.bindBuffer(e.ARRAY_BUFFER,$);for(let rt=0;rt<F.locationSize;rt++)M(F.location+rt,st/F.locationSize,at,q,st*ft,st/F.locationSize*rt*ft,ot)}}else if(U!==void 0){let q=U[Z];if(q!==void 0)switch(q.length){case 2:e.vertexAttrib2fv(F.location,q);break;case 3:e.vertexAttrib3fv(F.location,q);break;case 4:e.vertexAttrib4fv(F.location,q);break;default:e.vertexAttrib1fv(F.location,q)}}}}_()}function S(){A();for(let R in i){let D=i[R];for(let k in D){let P=D[k];for(let L in P){let z=P[L];for(let U in z)u(z[U].object),delete z[U];delete P[L]}}delete i[R]}}function b(R){if(i[R.id]===void 0)return;let D=i[R.id];for(let k in D){let P=D[k];for(let L in P){let z=P[L];for(let U in z)u(z[U].object),delete z[U];delete P[L]}}delete i[R.id]}function x(R){for(let D in i){let k=i[D];for(let P in k){let L=k[P];if(L[R.id]===void 0)continue;let z=L[R.id];for(let U in z)u(z[U].object),delete z[U];delete L[R.id]}}}function w(R){for(let D in i){let k=i[D],P=R.isInstancedMesh===!0?R.id:0,L=k[P];if(L!==void 0){for(let z in L){let U=L[z];for(let Z in U)u(U[Z].object),delete U[Z];delete L[z]}delete k[P],Object.keys(k).length===0&&delete i[D]}}}function A(){C(),o=!0,s!==r&&(s=r,c(s.object))}function C(){r.geometry=null,r.program=null,r.wireframe=!1}return{setup:a,reset:A,resetDefaultState:C,dispose:S,releaseStatesOfGeometry:b,releaseStatesOfObject:w,releaseStatesOfProgram:x,initAttributes:y,enableAttribute:m,disableUnusedAttributes:_}}function X5(e,t,n){let i;function r(l){i=l}function s(l,c){e.drawArrays(i,l,c),n.update(c,i,1)}function o(l,c,u){u!==0&&(e.drawArraysInstanced(i,l,c,u),n.update(c,i,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(i,l,0,c,0,u);let f=0;for(let d=0;d<u;d++)f+=c[d];n.update(f,i,1)}this.setMode=r,this.render=s,this.renderInstances=o,this.renderMultiDraw=a}function q5(e,t,n,i){let r;function s(){if(r!==void 0)return r;if(t.has("EXT_texture_filter_anisotropic")===!0){let x=t.get("EXT_texture_filter_anisotropic");r=e.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else r=0;return r}function o(x){return!(x!==tr&&i.convert(x)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(x){let w=x===Qi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(x!==Jn&&x!==ji&&!w&&i.convert(x)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.HIGH_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.MEDIUM_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=n.precision!==void 0?n.precision:"highp",u=l(c);u!==c&&(Ft("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let h=n.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),f=n.logarithmicDepthBuffer===!0&&h===!1;n.reversedDepthBuffer===!0&&h===!1&&Ft("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),n.logarithmicDepthBuffer===!0&&h===!0&&Ft("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let d=e.getParameter(e.MAX_TEXTURE_IMAGE_UNITS),p=e.getParameter(e.MAX_VERTEX_TEXTURE_IMAGE_UNITS),y=e.getParameter(e.MAX_TEXTURE_SIZE),m=e.getParameter(e.MAX_CUBE_MAP_TEXTURE_SIZE),g=e.getParameter(e.MAX_VERTEX_ATTRIBS),_=e.getParameter(e.MAX_VERTEX_UNIFORM_VECTORS),M=e.getParameter(e.MAX_VARYING_VECTORS),v=e.getParameter(e.MAX_FRAGMENT_UNIFORM_VECTORS),S=e.getParameter(e.MAX_SAMPLES),b=e.getParameter(e.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:s,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:f,reversedDepthBuffer:h,maxTextures:d,maxVertexTextures:p,maxTextureSize:y,maxCubemapSize:m,maxAttributes:g,maxVertexUniforms:_,maxVaryings:M,maxFragmentUniforms:v,maxSamples:S,samples:b}}function Y5(e){let t=this,n=null,i=0,r=!1,s=!1,o=new si,a=new Vt,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(h,f){let d=h.length!==0||f||i!==0||r;return r=f,i=h.length,d},this.beginShadows=function(){s=!0,u(null)},this.endShadows=function(){s=!1},this.setGlobalState=function(h,f){n=u(h,f,0)},this.setState=function(h,f,d){let p=h.clippingPlanes,y=h.clipIntersection,m=h.clipShadows,g=e.get(h);if(!r||p===null||p.length===0||s&&!m)s?u(null):c();else{let _=s?0:i,M=_*4,v=g.clippingState||null;l.value=v,v=u(p,f,M,d);for(let S=0;S!==M;++S)v[S]=n[S];g.clippingState=v,this.numIntersection=y?this.numPlanes:0,this.numPlanes+=_}};function c(){l.value!==n&&(l.value=n,l.needsUpdate=i>0),t.numPlanes=i,t.numIntersection=0}function u(h,f,d,p){let y=h!==null?h.length:0,m=null;if(y!==0){if(m=l.value,p!==!0||m===null){let g=d+y*4,_=f.matrixWorldInverse;a.getNormalMatrix(_),(m===null||m.length<g)&&(m=new Float32Array(g));for(let M=0,v=d;M!==y;++M,v+=4)o.copy(h[M]).applyMatrix4(_,a),o.normal.toArray(m,v),m[v+3]=o.constant}l.value=m,l.needsUpdate=!0}return t.numPlanes=y,t.numIntersection=0,m}}var Su=class extends li{constructor(t=1,n={}){super(t,t,n),this.isWebGLCubeRenderTarget=!0;let i={width:t,height:t,depth:1},r=[i,i,i,i,i,i];this.texture=new jc(r),this._setTextureOptions(n),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,n){this.texture.type=n.type,this.texture.colorSpace=n.colorSpace,this.texture.generateMipmaps=n.generateMipmaps,this.texture.minFilter=n.minFilter,this.texture.magFilter=n.magFilter;let i={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},r=new os(5,5,5),s=new Pi({name:"CubemapFromEquirect",uniforms:Zo(i.uniforms),vertexShader:i.vertexShader,fragmentShader:i.fragmentShader,side:Bn,blending:$o});s.uniforms.tEquirect.value=n;let o=new Tn(r,s),a=n.minFilter;return n.minFilter===as&&(n.minFilter=On),new wl(1,10,this).update(t,o),n.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,n=!0,i=!0,r=!0){let s=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(n,i,r);t.setRenderTarget(s)}},O2=256,Z5=3,J5=20,o3=256,a3=16,K5=3,j5=new B,Q5=new kt,Lp=class e{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new wl(1,10,null),this._boxMesh=new Tn(new os(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,n=0,i=.1,r=100,s={}){let{size:o=256,position:a=j5}=s,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);n>0&&(u.texture.mipmapsAutoUpdate=!1);let h=l.autoClear,f=l.autoClearColor,d=l.autoClearDepth,p=l.autoClearStencil,y=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,y===null&&(t.background=l.getClearColor(Q5));let m=new wl(i,r,u);return m.position.copy(a),m.update(l,t),l.autoClear=h,l.autoClearColor=f,l.autoClearDepth=d,l.autoClearStencil=p,t.background=y,n>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,n)),this._applyPMREM(c),c}fromEquirectangular(t,n=null){return this._fromTexture(t,n)}fromCubemap(t,n=null){return this._fromTexture(t,n)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=z2(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=k2(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,n){return n>0?1-Math.sqrt(1-t/n):0}_setSize(t){this._cubeSize=Math.max(O2,I_(t))}_fromTexture(t,n){t.mapping===qo||t.mapping===Cl?this._setSize(t.image.length===0?O2:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let i=n||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(i),i}_allocateTarget(){let t=this._cubeSize,n=B2(t,!1,!1),i=Math.log2(t)-Z5;for(let r=0;r<=i;r++)n.texture.mipmaps.push({width:t>>r,height:t>>r});return n.texture.name="PMREM",n.texture.isPMREMTexture=!0,n}_getSourceTarget(t=!1){let n=this._cubeSize,i=this._sourceTarget;return(i===null||i.width!==n||t&&i.depthBuffer===!1)&&(i!==null&&i.dispose(),this._sourceTarget=B2(n,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,n,i){let r=this._boxMesh,s=this._cubeCamera;r.material=i,s.renderTarget=t,s.activeMipmapLevel=n;let o=t.width>>n;t.viewport.set(0,0,o,o),s.update(this._renderer,r),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let n;t.mapping===qo||t.mapping===Cl?(this._cubemapMaterial===null&&(this._cubemapMaterial=z2()),n=this._cubemapMaterial,n.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=k2()),n=this._equirectMaterial),n.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,n)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=tB(),this._integrationMaterial=eB());let n=this._cubeSize,i=t.texture.mipmaps.length-1,r=this._ggxMaterial.uniforms;r.envMap.value=this._sourceTarget.texture;let s=this._integrationMaterial.uniforms;s.envMap.value=this._sourceTarget.texture,s.sourceLod.value=Math.log2(n/a3);for(let o=0;o<=i;o++){let a=e.lodToRoughness(o,i);if(o>i-K5)s.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(n)+.5*Math.log2(6/(o3*Math.pow(a,4)))+.5:0;r.roughness.value=a,r.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,n){this._blurMaterial===null&&(this._blurMaterial=nB());let i=this._blurMaterial,r=i.uniforms,s=this._sourceTarget;r.sigma.value=Math.min(n,Math.PI)/Math.SQRT2,r.envMap.value=s.texture,this._renderCube(t,0,i),r.envMap.value=t.texture,this._renderCube(s,0,i)}};function B2(e,t,n){return new Su(e,{minFilter:as,generateMipmaps:t,type:Qi,colorSpace:Hc,depthBuffer:n})}function wu(e,t,n){return new Pi({name:e,uniforms:t,vertexShader:jt.cube_vert,fragmentShader:n,side:Bn,blending:$o,depthTest:!1,depthWrite:!1})}function tB(){return wu("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${o3}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function eB(){return wu("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:a3}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function nB(){return wu("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${J5}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function k2(){return wu("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function z2(){return wu("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function iB(e){let t=new WeakMap,n=new WeakMap,i=null;function r(f,d=!1){return f==null?null:d?o(f):s(f)}function s(f){if(f&&f.isTexture){let d=f.mapping;if(d===Hd||d===Wd)if(t.has(f)){let p=t.get(f).texture;return a(p,f.mapping)}else{let p=f.image;if(p&&p.height>0){let y=new Su(p.height);return y.fromEquirectangularTexture(e,f),t.set(f,y),f.addEventListener("dispose",c),a(y.texture,f.mapping)}else return null}}return f}function o(f){if(f&&f.isTexture&&f.isPMREMTexture!==!0){let d=f.mapping,p=d===Hd||d===Wd,y=d===qo||d===Cl;if(p||y){let m=n.get(f),g=m!==void 0?m.texture.pmremVersion:0;if(f.isRenderTargetTexture&&f.pmremVersion!==g)return i===null&&(i=new Lp(e)),m=p?i.fromEquirectangular(f,m):i.fromCubemap(f,m),m.texture.pmremVersion=f.pmremVersion,n.set(f,m),m.texture;if(m!==void 0)return m.texture;{let _=f.image;return p&&_&&_.height>0||y&&_&&l(_)?(i===null&&(i=new Lp(e)),m=p?i.fromEquirectangular(f):i.fromCubemap(f),m.texture.pmremVersion=f.pmremVersion,n.set(f,m),f.addEventListener("dispose",u),m.texture):null}}}return f}function a(f,d){return d===Hd?f.mapping=qo:d===Wd&&(f.mapping=Cl),f}function l(f){let d=0,p=6;for(let y=0;y<p;y++)f[y]!==void 0&&d++;return d===p}function c(f){let d=f.target;d.removeEventListener("dispose",c);let p=t.get(d);p!==void 0&&(t.delete(d),p.dispose())}function u(f){let d=f.target;d.removeEventListener("dispose",u);let p=n.get(d);p!==void 0&&(n.delete(d),p.dispose())}function h(){t=new WeakMap,n=new WeakMap,i!==null&&(i.dispose(),i=null)}return{get:r,dispose:h}}function rB(e){let t={};function n(i){if(t[i]!==void 0)return t[i];let r=e.getExtension(i);return t[i]=r,r}return{has:function(i){return n(i)!==null},init:function(){n("EXT_color_buffer_float"),n("WEBGL_clip_cull_distance"),n("OES_texture_float_linear"),n("EXT_color_buffer_half_float"),n("WEBGL_multisampled_render_to_texture"),n("WEBGL_render_shared_exponent")},get:function(i){let r=n(i);return r===null&&zc("WebGLRenderer: "+i+" extension not supported."),r}}}function sB(e,t,n,i){let r={},s=new WeakMap,o=new FinalizationRegistry(p=>delete r[p]);function a(p){l(p.target)}function l(p){p.index!==null&&t.remove(p.index);for(let m in p.attributes)t.remove(p.attributes[m]);p.removeEventListener("dispose",a),delete r[p.id],o.unregister(p);let y=s.get(p);y&&(t.remove(y),s.delete(p)),i.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,n.memory.geometries--}function c(p,y){return r[y.id]!==void 0||(y.addEventListener("dispose",a),r[y.id]=new WeakRef(y),o.register(y,y.id,y),n.memory.geometries++),y}function u(p){let y=p.attributes;for(let m in y)t.update(y[m],e.ARRAY_BUFFER)}function h(p){let y=p.index,m=p.attributes.position,g=0;if(m===void 0)return;let _=y!==null?y.array.length:m.array.length/3-1,M=m.count>=65535?Kc:Jc,v=new M(Math.ceil(_/3)*6,1),S=v.array;if(y!==null){let x=y.array;g=y.version;for(let w=0,A=0;w<_;w+=3){let C=x[w+0],R=x[w+1],D=x[w+2];S[A++]=C,S[A++]=R,S[A++]=R,S[A++]=D,S[A++]=D,S[A++]=C}}else{g=m.version;for(let x=0,w=0;x<_;x+=3){let A=x+0,C=x+1,R=x+2;S[w++]=A,S[w++]=C,S[w++]=C,S[w++]=R,S[w++]=R,S[w++]=A}}v.version=g;let b=s.get(p);b&&t.remove(b),s.set(p,v)}function f(p){let y=s.get(p);if(y){let m=p.index;m!==null&&y.version<m.version&&h(p)}else h(p);return s.get(p)}function d(){for(let p in r){let y=r[p].deref();y!==void 0&&l(y)}}return{get:c,update:u,getWireframeAttribute:f,dispose:d}}function oB(e,t,n){let i;function r(h){i=h}let s,o;function a(h){s=h.type,o=h.bytesPerElement}function l(h,f){e.drawElements(i,f,s,h*o),n.update(f,i,1)}function c(h,f,d){d!==0&&(e.drawElementsInstanced(i,f,s,h*o,d),n.update(f,i,d))}function u(h,f,d){if(d===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(i,f,0,s,h,0,d);let y=0;for(let m=0;m<d;m++)y+=f[m];n.update(y,i,1)}this.setMode=r,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function aB(e){let t={geometries:0,textures:0},n={frame:0,calls:0,triangles:0,points:0,lines:0};function i(s,o,a){switch(n.calls++,o){case e.TRIANGLES:n.triangles+=a*(s/3);break;case e.LINES:n.lines+=a*(s/2);break;case e.LINE_STRIP:n.lines+=a*(s-1);break;case e.LINE_LOOP:n.lines+=a*s;break;case e.POINTS:n.points+=a*s;break;default:Gt("WebGLInfo: Unknown draw mode:",o);break}}function r(){n.calls=0,n.triangles=0,n.points=0,n.lines=0}return{memory:t,render:n,programs:null,autoReset:!0,reset:r,update:i}}function lB(e,t,n){let i=new WeakMap,r=new de;function s(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,f=i.get(a);if(f===void 0||f.count!==h){let A=function(){x.dispose(),i.delete(a),a.removeEventListener("dispose",A)};f!==void 0&&f.texture.dispose();let d=a.morphAttributes.position!==void 0,p=a.morphAttributes.normal!==void 0,y=a.morphAttributes.color!==void 0,m=a.morphAttributes.position||[],g=a.morphAttributes.normal||[],_=a.morphAttributes.color||[],M=0;d===!0&&(M=1),p===!0&&(M=2),y===!0&&(M=3);let v=a.attributes.position.count*M,S=1;v>t.maxTextureSize&&(S=Math.ceil(v/t.maxTextureSize),v=t.maxTextureSize);let b=new Float32Array(v*S*4*h),x=new qc(b,v,S,h);x.type=ji,x.needsUpdate=!0;let w=M*4;for(let C=0;C<h;C++){let R=m[C],D=g[C],k=_[C],P=v*S*4*C;for(let L=0;L<R.count;L++){let z=L*w;d===!0&&(r.fromBufferAttribute(R,L),b[P+z+0]=r.x,b[P+z+1]=r.y,b[P+z+2]=r.z,b[P+z+3]=0),p===!0&&(r.fromBufferAttribute(D,L),b[P+z+4]=r.x,b[P+z+5]=r.y,b[P+z+6]=r.z,b[P+z+7]=0),y===!0&&(r.fromBufferAttribute(k,L),b[P+z+8]=r.x,b[P+z+9]=r.y,b[P+z+10]=r.z,b[P+z+11]=k.itemSize===4?r.w:1)}}f={count:h,texture:x,size:new Bt(v,S)},i.set(a,f),a.addEventListener("dispose",A)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(e,"morphTexture",o.morphTexture,n);else{let d=0;for(let y=0;y<c.length;y++)d+=c[y];let p=a.morphTargetsRelative?1:1-d;l.getUniforms().setValue(e,"morphTargetBaseInfluence",p),l.getUniforms().setValue(e,"morphTargetInfluences",c)}l.getUniforms().setValue(e,"morphTargetsTexture",f.texture,n),l.getUniforms().setValue(e,"morphTargetsTextureSize",f.size)}return{update:s}}function cB(e,t,n,i,r){let s=new WeakMap;function o(c){let u=r.render.frame,h=c.geometry,f=t.get(c,h);if(s.get(f)!==u&&(t.update(f),s.set(f,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),s.get(c)!==u&&(n.update(c.instanceMatrix,e.ARRAY_BUFFER),c.instanceColor!==null&&n.update(c.instanceColor,e.ARRAY_BUFFER),s.set(c,u))),c.isSkinnedMesh){let d=c.skeleton;s.get(d)!==u&&(d.update(),s.set(d,u))}return f}function a(){s=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),i.releaseStatesOfObject(u),n.remove(u.instanceMatrix),u.instanceColor!==null&&n.remove(u.instanceColor)}return{update:o,dispose:a}}var uB={[u_]:"LINEAR_TONE_MAPPING",[f_]:"REINHARD_TONE_MAPPING",[h_]:"CINEON_TONE_MAPPING",[d_]:"ACES_FILMIC_TONE_MAPPING",[m_]:"AGX_TONE_MAPPING",[g_]:"NEUTRAL_TONE_MAPPING",[p_]:"CUSTOM_TONE_MAPPING"};function fB(e,t,n,i,r,s){let o=new li(t,n,{type:e,depthBuffer:r,stencilBuffer:s,samples:i?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new dn;u.setAttribute("position",new qe([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new qe([0,2,0,0,2,0],2));let h=new Ad({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),f=new Tn(u,h),d=new Wo(-1,1,1,-1,0,1),p=null,y=null,m=!1,g,_=null,M=[],v=!1;this.setSize=function(S,b){o.setSize(S,b),a!==null&&a.setSize(S,b),l!==null&&l.setSize(S,b);for(let x=0;x<M.length;x++){let w=M[x];w.setSize&&w.setSize(S,b)}},this.setEffects=function(S){M=S,v=M.length>0&&M[0].isRenderPass===!0;let b=o.width,x=o.height;M.length>0&&a===null&&(a=new li(b,x,{type:Qi,depthBuffer:!1,stencilBuffer:!1}),l=new li(b,x,{type:Qi,depthBuffer:!1,stencilBuffer:!1}));let w=r===!0&&M.some(A=>A.needsDepthTexture===!0);w!==(o.depthTexture!==null)&&(w===!0&&c===null&&(c=new ss(b,x),s===!0&&(c.format=ls,c.type=Yo)),o.dispose(),o.depthTexture=w?c:null,o.resolveDepthBuffer=w,o.storeMultisampledDepthBuffer=w);for(let A=0;A<M.length;A++){let C=M[A];C.setSize&&C.setSize(b,x),w&&C.needsDepthTexture===!0&&C.setDepthTexture&&C.setDepthTexture(c)}},this.begin=function(S,b){if(m||S.toneMapping===Mr&&M.length===0)return!1;if(_=b,b!==null){let x=b.width,w=b.height;(o.width!==x||o.height!==w)&&this.setSize(x,w)}return v===!1&&S.setRenderTarget(o),g=S.toneMapping,S.toneMapping=Mr,!0},this.hasRenderPass=function(){return v},this.end=function(S,b){S.toneMapping=g,m=!0;let x=o,w=a;for(let A=0;A<M.length;A++){let C=M[A];C.enabled!==!1&&(C.render(S,w,x,b),C.needsSwap!==!1&&(x=w,w=w===a?l:a))}if(p!==S.outputColorSpace||y!==S.toneMapping){p=S.outputColorSpace,y=S.toneMapping,h.defines={},ie.getTransfer(p)===he&&(h.defines.SRGB_TRANSFER="");let A=uB[y];A&&(h.defines[A]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=x.texture,S.setRenderTarget(_),S.render(f,d),_=null,m=!1},this.isCompositing=function(){return m},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),h.dispose()}}var l3=new Zn,c3=new ss(1,1),u3=new Qc(1),f3=new qc,h3=new _d,d3=new jc,G2=[],V2=[],H2=new Float32Array(16),W2=new Float32Array(9),$2=new Float32Array(4);function Il(e,t,n){let i=e[0];if(i<=0||i>0)return e;let r=t*n,s=G2[r];if(s===void 0&&(s=new Float32Array(r),G2[r]=s),t!==0){i.toArray(s,0);for(let o=1,a=0;o!==t;++o)a+=n,e[o].toArray(s,a)}return s}function Ye(e,t){if(e.length!==t.length)return!1;for(let n=0,i=e.length;n<i;n++)if(e[n]!==t[n])return!1;return!0}function Ze(e,t){for(let n=0,i=t.length;n<i;n++)e[n]=t[n]}function Np(e,t){let n=V2[t];n===void 0&&(n=new Int32Array(t),V2[t]=n);for(let i=0;i!==t;++i)n[i]=e.allocateTextureUnit();return n}function hB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1f(this.addr,t),n[0]=t)}function dB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2f(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Ye(n,t))return;e.uniform2fv(this.addr,t),Ze(n,t)}}function pB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3f(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else if(t.r!==void 0)(n[0]!==t.r||n[1]!==t.g||n[2]!==t.b)&&(e.uniform3f(this.addr,t.r,t.g,t.b),n[0]=t.r,n[1]=t.g,n[2]=t.b);else{if(Ye(n,t))return;e.uniform3fv(this.addr,t),Ze(n,t)}}function mB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4f(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Ye(n,t))return;e.uniform4fv(this.addr,t),Ze(n,t)}}function gB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Ye(n,t))return;e.uniformMatrix2fv(this.addr,!1,t),Ze(n,t)}else{if(Ye(n,i))return;$2.set(i),e.uniformMatrix2fv(this.addr,!1,$2),Ze(n,i)}}function yB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Ye(n,t))return;e.uniformMatrix3fv(this.addr,!1,t),Ze(n,t)}else{if(Ye(n,i))return;W2.set(i),e.uniformMatrix3fv(this.addr,!1,W2),Ze(n,i)}}function xB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Ye(n,t))return;e.uniformMatrix4fv(this.addr,!1,t),Ze(n,t)}else{if(Ye(n,i))return;H2.set(i),e.uniformMatrix4fv(this.addr,!1,H2),Ze(n,i)}}function _B(e,t){let n=this.cache;n[0]!==t&&(e.uniform1i(this.addr,t),n[0]=t)}function vB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2i(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Ye(n,t))return;e.uniform2iv(this.addr,t),Ze(n,t)}}function bB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3i(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(Ye(n,t))return;e.uniform3iv(this.addr,t),Ze(n,t)}}function MB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4i(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Ye(n,t))return;e.uniform4iv(this.addr,t),Ze(n,t)}}function SB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1ui(this.addr,t),n[0]=t)}function wB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2ui(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Ye(n,t))return;e.uniform2uiv(this.addr,t),Ze(n,t)}}function TB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3ui(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(Ye(n,t))return;e.uniform3uiv(this.addr,t),Ze(n,t)}}function EB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4ui(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Ye(n,t))return;e.uniform4uiv(this.addr,t),Ze(n,t)}}function Up(e){return e.version===0&&(e.compareFunction=A_,e.needsUpdate=!0),e}function AB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_2D_SHADOW?s=Up(c3):s=l3,n.setTexture2D(t||s,r)}function CB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture3D(t||h3,r)}function RB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_CUBE_SHADOW?s=Up(u3):s=d3,n.setTextureCube(t||s,r)}function PB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture2DArray(t||f3,r)}function IB(e){switch(e){case 5126:return hB;case 35664:return dB;case 35665:return pB;case 35666:return mB;case 35674:return gB;case 35675:return yB;case 35676:return xB;case 5124:case 35670:return _B;case 35667:case 35671:return vB;case 35668:case 35672:return bB;case 35669:case 35673:return MB;case 5125:return SB;case 36294:return wB;case 36295:return TB;case 36296:return EB;case 35678:case 36198:case 36298:case 36306:case 35682:return AB;case 35679:case 36299:case 36307:return CB;case 35680:case 36300:case 36308:case 36293:return RB;case 36289:case 36303:case 36311:case 36292:return PB}}function LB(e,t){e.uniform1fv(this.addr,t)}function DB(e,t){let n=Il(t,this.size,2);e.uniform2fv(this.addr,n)}function NB(e,t){let n=Il(t,this.size,3);e.uniform3fv(this.addr,n)}function UB(e,t){let n=Il(t,this.size,4);e.uniform4fv(this.addr,n)}function FB(e,t){let n=Il(t,this.size,4);e.uniformMatrix2fv(this.addr,!1,n)}function OB(e,t){let n=Il(t,this.size,9);e.uniformMatrix3fv(this.addr,!1,n)}function BB(e,t){let n=Il(t,this.size,16);e.uniformMatrix4fv(this.addr,!1,n)}function kB(e,t){e.uniform1iv(this.addr,t)}function zB(e,t){e.uniform2iv(this.addr,t)}function GB(e,t){e.uniform3iv(this.addr,t)}function VB(e,t){e.uniform4iv(this.addr,t)}function HB(e,t){e.uniform1uiv(this.addr,t)}function WB(e,t){e.uniform2uiv(this.addr,t)}function $B(e,t){e.uniform3uiv(this.addr,t)}function XB(e,t){e.uniform4uiv(this.addr,t)}function qB(e,t,n){let i=this.cache,r=t.length,s=Np(n,r);Ye(i,s)||(e.uniform1iv(this.addr,s),Ze(i,s));let o;this.type===e.SAMPLER_2D_SHADOW?o=Up(c3):o=l3;for(let a=0;a!==r;++a)n.setTexture2D(t[a]||o,s[a])}function YB(e,t,n){let i=this.cache,r=t.length,s=Np(n,r);Ye(i,s)||(e.uniform1iv(this.addr,s),Ze(i,s));for(let o=0;o!==r;++o)n.setTexture3D(t[o]||h3,s[o])}function ZB(e,t,n){let i=this.cache,r=t.length,s=Np(n,r);Ye(i,s)||(e.uniform1iv(this.addr,s),Ze(i,s));let o;this.type===e.SAMPLER_CUBE_SHADOW?o=Up(u3):o=d3;for(let a=0;a!==r;++a)n.setTextureCube(t[a]||o,s[a])}function JB(e,t,n){let i=this.cache,r=t.length,s=Np(n,r);Ye(i,s)||(e.uniform1iv(this.addr,s),Ze(i,s));for(let o=0;o!==r;++o)n.setTexture2DArray(t[o]||f3,s[o])}function KB(e){switch(e){case 5126:return LB;case 35664:return DB;case 35665:return NB;case 35666:return UB;case 35674:return FB;case 35675:return OB;case 35676:return BB;case 5124:case 35670:return kB;case 35667:case 35671:return zB;case 35668:case 35672:return GB;case 35669:case 35673:return VB;case 5125:return HB;case 36294:return WB;case 36295:return $B;case 36296:return XB;case 35678:case 36198:case 36298:case 36306:case 35682:return qB;case 35679:case 36299:case 36307:return YB;case 35680:case 36300:case 36308:case 36293:return ZB;case 36289:case 36303:case 36311:case 36292:return JB}}var z_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.setValue=IB(n.type)}},G_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.size=n.size,this.setValue=KB(n.type)}},V_=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,n,i){let r=this.seq;for(let s=0,o=r.length;s!==o;++s){let a=r[s];a.setValue(t,n[a.id],i)}}},B_=/(\w+)(\])?(\[|\.)?/g;function X2(e,t){e.seq.push(t),e.map[t.id]=t}function jB(e,t,n){let i=e.name,r=i.length;for(B_.lastIndex=0;;){let s=B_.exec(i),o=B_.lastIndex,a=s[1],l=s[2]==="]",c=s[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===r){X2(n,c===void 0?new z_(a,e,t):new G_(a,e,t));break}else{let h=n.map[a];h===void 0&&(h=new V_(a),X2(n,h)),n=h}}}var Pl=class{constructor(t,n){this.seq=[],this.map={};let i=t.getProgramParameter(n,t.ACTIVE_UNIFORMS);for(let o=0;o<i;++o){let a=t.getActiveUniform(n,o),l=t.getUniformLocation(n,a.name);jB(a,l,this)}let r=[],s=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?r.push(o):s.push(o);r.length>0&&(this.seq=r.concat(s))}setValue(t,n,i,r){let s=this.map[n];s!==void 0&&s.setValue(t,i,r)}setOptional(t,n,i){let r=n[i];r!==void 0&&this.setValue(t,i,r)}static upload(t,n,i,r){for(let s=0,o=n.length;s!==o;++s){let a=n[s],l=i[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,r)}}static seqWithValue(t,n){let i=[];for(let r=0,s=t.length;r!==s;++r){let o=t[r];o.id in n&&i.push(o)}return i}};function q2(e,t,n){let i=e.createShader(t);return e.shaderSource(i,n),e.compileShader(i),i}var QB=37297,t6=0;function e6(e,t){let n=e.split(`
`),i=[],r=Math.max(t-6,0),s=Math.min(t+6,n.length);for(let o=r;o<s;o++){let a=o+1;i.push(`${a===t?">":" "} ${a}: ${n[o]}`)}return i.join(`
`)}var Y2=new Vt;function n6(e){ie._getMatrix(Y2,ie.workingColorSpace,e);let t=`mat3( ${Y2.elements.map(n=>n.toFixed(4))} )`;switch(ie.getTransfer(e)){case Wc:return[t,"LinearTransferOETF"];case he:return[t,"sRGBTransferOETF"];default:return Ft("WebGLProgram: Unsupported color space: ",e),[t,"LinearTransferOETF"]}}function Z2(e,t,n){let i=e.getShaderParameter(t,e.COMPILE_STATUS),s=(e.getShaderInfoLog(t)||"").trim();if(i&&s==="")return"";let o=/ERROR: 0:(\d+)/.exec(s);if(o){let a=parseInt(o[1]);return n.toUpperCase()+`

`+s+`

`+e6(e.getShaderSource(t),a)}else return s}function i6(e,t){let n=n6(t);return[`vec4 ${e}( vec4 value ) {`,`	return ${n[1]}( vec4( ${n[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var r6={[u_]:"Linear",[f_]:"Reinhard",[h_]:"Cineon",[d_]:"ACESFilmic",[m_]:"AgX",[g_]:"Neutral",[p_]:"Custom"};function s6(e,t){let n=r6[t];return n===void 0?(Ft("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+e+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+e+"( vec3 color ) { return "+n+"ToneMapping( color ); }"}var Ip=new B;function o6(){ie.getLuminanceCoefficients(Ip);let e=Ip.x.toFixed(4),t=Ip.y.toFixed(4),n=Ip.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${e}, ${t}, ${n} );`,"	return dot( weights, rgb );","}"].join(`
`)}function a6(e){return[e.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",e.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Mu).join(`
`)}function l6(e){let t=[];for(let n in e){let i=e[n];i!==!1&&t.push("#define "+n+" "+i)}return t.join(`
`)}function c6(e,t){let n={},i=e.getProgramParameter(t,e.ACTIVE_ATTRIBUTES);for(let r=0;r<i;r++){let s=e.getActiveAttrib(t,r),o=s.name,a=1;s.type===e.FLOAT_MAT2&&(a=2),s.type===e.FLOAT_MAT3&&(a=3),s.type===e.FLOAT_MAT4&&(a=4),n[o]={type:s.type,location:e.getAttribLocation(t,o),locationSize:a}}return n}function Mu(e){return e!==""}function J2(e,t){let n=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return e.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,n).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function K2(e,t){return e.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var u6=/^[ \t]*#include +<([\w\d./]+)>/gm;function H_(e){return e.replace(u6,f6)}function f6(e,t){let n=jt[t];if(n===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return H_(n)}var h6=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function j2(e){return e.replace(h6,d6)}function d6(e,t,n,i){let r="";for(let s=parseInt(t);s<parseInt(n);s++)r+=i.replace(/\[\s*i\s*\]/g,"[ "+s+" ]").replace(/UNROLLED_LOOP_INDEX/g,s);return r}function Q2(e){let t=`precision ${e.precision} float;
	precision ${e.precision} int;
	precision ${e.precision} sampler2D;
	precision ${e.precision} samplerCube;
	precision ${e.precision} sampler3D;
	precision ${e.precision} sampler2DArray;
	precision ${e.precision} sampler2DShadow;
	precision ${e.precision} samplerCubeShadow;
	precision ${e.precision} sampler2DArrayShadow;
	precision ${e.precision} isampler2D;
	precision ${e.precision} isampler3D;
	precision ${e.precision} isamplerCube;
	precision ${e.precision} isampler2DArray;
	precision ${e.precision} usampler2D;
	precision ${e.precision} usampler3D;
	precision ${e.precision} usamplerCube;
	precision ${e.precision} usampler2DArray;
	`;return e.precision==="highp"?t+=`
#define HIGH_PRECISION`:e.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:e.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var p6={[fu]:"SHADOWMAP_TYPE_PCF",[El]:"SHADOWMAP_TYPE_VSM"};function m6(e){return p6[e.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var g6={[Cl]:"ENVMAP_MODE_REFRACTION"};function y6(e){return e.envMap===!1?"ENVMAP_MODE_REFLECTION":g6[e.envMapMode]||"ENVMAP_MODE_REFLECTION"}var x6={[Vd]:"ENVMAP_BLENDING_MULTIPLY",[_2]:"ENVMAP_BLENDING_MIX",[v2]:"ENVMAP_BLENDING_ADD"};function _6(e){return e.envMap===!1?"ENVMAP_BLENDING_NONE":x6[e.combine]||"ENVMAP_BLENDING_NONE"}function v6(e,t,n,i){let r=e.getContext(),s=n.defines,o=n.vertexShader,a=n.fragmentShader,l=m6(n),c=n.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=y6(n),h=_6(n),f=a6(n),d=l6(s),p=r.createProgram(),y,m,g=n.glslVersion?"#version "+n.glslVersion+`
`:"";n.isRawShaderMaterial?(y=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(Mu).join(`
`),y.length>0&&(y+=`
`),m=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(Mu).join(`
`),m.length>0&&(m+=`
`)):(y=[Q2(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",n.batching?"#define USE_BATCHING":"",n.batchingColor?"#define USE_BATCHING_COLOR":"",n.instancing?"#define USE_INSTANCING":"",n.instancingColor?"#define USE_INSTANCING_COLOR":"",n.instancingMorph?"#define USE_INSTANCING_MORPH":"",n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.map?"#define USE_MAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+u:"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.displacementMap?"#define USE_DISPLACEMENTMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.mapUv?"#define MAP_UV "+n.mapUv:"",n.alphaMapUv?"#define ALPHAMAP_UV "+n.alphaMapUv:"",n.lightMapUv?"#define LIGHTMAP_UV "+n.lightMapUv:"",n.aoMapUv?"#define AOMAP_UV "+n.aoMapUv:"",n.emissiveMapUv?"#define EMISSIVEMAP_UV "+n.emissiveMapUv:"",n.bumpMapUv?"#define BUMPMAP_UV "+n.bumpMapUv:"",n.normalMapUv?"#define NORMALMAP_UV "+n.normalMapUv:"",n.displacementMapUv?"#define DISPLACEMENTMAP_UV "+n.displacementMapUv:"",n.metalnessMapUv?"#define METALNESSMAP_UV "+n.metalnessMapUv:"",n.roughnessMapUv?"#define ROUGHNESSMAP_UV "+n.roughnessMapUv:"",n.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+n.anisotropyMapUv:"",n.clearcoatMapUv?"#define CLEARCOATMAP_UV "+n.clearcoatMapUv:"",n.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+n.clearcoatNormalMapUv:"",n.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+n.clearcoatRoughnessMapUv:"",n.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+n.diffuseRoughnessMapUv:"",n.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+n.iridescenceMapUv:"",n.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+n.iridescenceThicknessMapUv:"",n.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+n.sheenColorMapUv:"",n.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+n.sheenRoughnessMapUv:"",n.specularMapUv?"#define SPECULARMAP_UV "+n.specularMapUv:"",n.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+n.specularColorMapUv:"",n.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+n.specularIntensityMapUv:"",n.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+n.transmissionMapUv:"",n.thicknessMapUv?"#define THICKNESSMAP_UV "+n.thicknessMapUv:"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexNormals?"#define HAS_NORMAL":"",n.vertexColors?"#define USE_COLOR":"",n.vertexAlphas?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.flatShading?"#define FLAT_SHADED":"",n.skinning?"#define USE_SKINNING":"",n.morphTargets?"#define USE_MORPHTARGETS":"",n.morphNormals&&n.flatShading===!1?"#define USE_MORPHNORMALS":"",n.morphColors?"#define USE_MORPHCOLORS":"",n.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+n.morphTextureStride:"",n.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+n.morphTargetsCount:"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.sizeAttenuation?"#define USE_SIZEATTENUATION":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Mu).join(`
`),m=[Q2(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",n.map?"#define USE_MAP":"",n.matcap?"#define USE_MATCAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+c:"",n.envMap?"#define "+u:"",n.envMap?"#define "+h:"",n.envMapPMREM?"#define ENVMAP_MAX_LOD "+n.envMapMaxLod+".0":"",n.envMapPMREM?"#define ENVMAP_SIZE "+n.envMapSize+".0":"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoat?"#define USE_CLEARCOAT":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.dispersion?"#define USE_DISPERSION":"",n.retroreflection?"#define USE_RETROREFLECTION":"",n.iridescence?"#define USE_IRIDESCENCE":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaTest?"#define USE_ALPHATEST":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.sheen?"#define USE_SHEEN":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexColors||n.instancingColor?"#define USE_COLOR":"",n.vertexAlphas||n.batchingColor?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.gradientMap?"#define USE_GRADIENTMAP":"",n.flatShading?"#define FLAT_SHADED":"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",n.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",n.toneMapping!==Mr?"#define TONE_MAPPING":"",n.toneMapping!==Mr?jt.tonemapping_pars_fragment:"",n.toneMapping!==Mr?s6("toneMapping",n.toneMapping):"",n.dithering?"#define DITHERING":"",n.opaque?"#define OPAQUE":"",jt.colorspace_pars_fragment,i6("linearToOutputTexel",n.outputColorSpace),o6(),n.useDepthPacking?"#define DEPTH_PACKING "+n.depthPacking:"",`
`].filter(Mu).join(`
`)),o=H_(o),o=J2(o,n),o=K2(o,n),a=H_(a),a=J2(a,n),a=K2(a,n),o=j2(o),a=j2(a),n.isRawShaderMaterial!==!0&&(g=`#version 300 es
`,y=[f,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+y,m=["#define varying in",n.glslVersion===R_?"":"layout(location = 0) out highp vec4 pc_fragColor;",n.glslVersion===R_?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+m);let _=g+y+o,M=g+m+a,v=q2(r,r.VERTEX_SHADER,_),S=q2(r,r.FRAGMENT_SHADER,M);r.attachShader(p,v),r.attachShader(p,S),n.index0AttributeName!==void 0?r.bindAttribLocation(p,0,n.index0AttributeName):n.hasPositionAttribute===!0&&r.bindAttribLocation(p,0,"position"),r.linkProgram(p);function b(C){if(e.debug.checkShaderErrors){let R=r.getProgramInfoLog(p)||"",D=r.getShaderInfoLog(v)||"",k=r.getShaderInfoLog(S)||"",P=R.trim(),L=D.trim(),z=k.trim(),U=!0,Z=!0;if(r.getProgramParameter(p,r.LINK_STATUS)===!1)if(U=!1,typeof e.debug.onShaderError=="function")e.debug.onShaderError(r,p,v,S);else{let F=Z2(r,v,"vertex"),V=Z2(r,S,"fragment");Gt("WebGLProgram: Shader Error "+r.getError()+" - VALIDATE_STATUS "+r.getProgramParameter(p,r.VALIDATE_STATUS)+`

Material Name: `+C.name+`
Material Type: `+C.type+`

Program Info Log: `+P+`
`+F+`
`+V)}else P!==""?Ft("WebGLProgram: Program Info Log:",P):(L===""||z==="")&&(Z=!1);Z&&(C.diagnostics={runnable:U,programLog:P,vertexShader:{log:L,prefix:y},fragmentShader:{log:z,prefix:m}})}r.deleteShader(v),r.deleteShader(S),x=new Pl(r,p),w=c6(r,p)}let x;this.getUniforms=function(){return x===void 0&&b(this),x};let w;this.getAttributes=function(){return w===void 0&&b(this),w};let A=n.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return A===!1&&(A=r.getProgramParameter(p,QB)),A},this.destroy=function(){i.releaseStatesOfProgram(this),r.deleteProgram(p),this.program=void 0},this.type=n.shaderType,this.name=n.shaderName,this.id=t6++,this.cacheKey=t,this.usedTimes=1,this.program=p,this.vertexShader=v,this.fragmentShader=S,this}var b6=0,W_=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,n,i){let r=this._getShaderCacheForMaterial(t);return r.has(n)===!1&&(r.add(n),n.usedTimes++),r.has(i)===!1&&(r.add(i),i.usedTimes++),this}remove(t){let n=this.materialCache.get(t);for(let i of n)i.usedTimes--,i.usedTimes===0&&this.shaderCache.delete(i.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let n=this.materialCache,i=n.get(t);return i===void 0&&(i=new Set,n.set(t,i)),i}_getShaderStage(t){let n=this.shaderCache,i=n.get(t);return i===void 0&&(i=new $_(t),n.set(t,i)),i}},$_=class{constructor(t){this.id=b6++,this.code=t,this.usedTimes=0}};function M6(e){return e===qs||e===yu||e===xu}function S6(e,t,n,i,r,s){let o=new Yc,a=new W_,l=new Set,c=[],u=new Map,h=i.logarithmicDepthBuffer,f={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function d(x){return l.add(x),x===0?"uv":`uv${x}`}function p(x,w,A,C,R,D){let k=C.fog,P=R.geometry,L=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?C.environment:null,z=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,U=t.get(x.envMap||L,z),Z=f[x.type],F=i.precision;x.precision!==null&&(F=i.getMaxPrecision(x.precision),F!==x.precision&&Ft("WebGLProgram.getParameters:",x.precision,"not supported, using",F,"instead."));let V=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,q=V!==void 0?V.length:0,st=0;P.morphAttributes.position!==void 0&&(st=1),P.morphAttributes.normal!==void 0&&(st=2),P.morphAttributes.color!==void 0&&(st=3);let lt,$,at,ft;if(Z){let Et=kn[Z];lt=Et.vertexShader,$=Et.fragmentShader}else{lt=x.vertexShader,$=x.fragmentShader;let Et=a.getVertexShaderStage(x),pe=a.getFragmentShaderStage(x);a.update(x,Et,pe),at=Et.id,ft=pe.id}let ot=e.getRenderTarget(),rt=e.state.buffers.depth.getReversed(),J=R.isInstancedMesh===!0,gt=R.isBatchedMesh===!0,ct=!!x.map,K=!!x.matcap,It=!!U,pt=It&&U.isPMREMTexture===!0,Ot=!!x.aoMap,Ht=!!x.lightMap,le=!!x.bumpMap&&x.wireframe===!1,oe=!!x.normalMap,Ke=!!x.displacementMap,Ge=!!x.emissiveMap,zn=!!x.metalnessMap,An=!!x.roughnessMap,Gn=x.anisotropy>0,G=x.clearcoat>0,Vn=x.diffuseRoughness>0,be=x.dispersion>0,Me=x.retroreflectivity>0,mt=x.iridescence>0,Re=x.sheen>0,Dt=x.transmission>0,zt=Gn&&!!x.anisotropyMap,I=G&&!!x.clearcoatMap,T=G&&!!x.clearcoatNormalMap,H=G&&!!x.clearcoatRoughnessMap,ut=Vn&&!!x.diffuseRoughnessMap,nt=mt&&!!x.iridescenceMap,yt=mt&&!!x.iridescenceThicknessMap,Mt=Re&&!!x.sheenColorMap,Q=Re&&!!x.sheenRoughnessMap,tt=!!x.specularMap,_t=!!x.specularColorMap,N=!!x.specularIntensityMap,et=Dt&&!!x.transmissionMap,j=Dt&&!!x.thicknessMap,vt=!!x.gradientMap,dt=!!x.alphaMap,xt=x.alphaTest>0,Nt=!!x.alphaHash,Kt=!!x.extensions,ht=Mr;x.toneMapped&&(ot===null||ot.isXRRenderTarget===!0)&&(ht=e.toneMapping);let Ut=pt?U.isCompressedCubeTexture?U.image[0].mipmaps:U.mipmaps:null,Jt={shaderID:Z,shaderType:x.type,shaderName:x.name,vertexShader:lt,fragmentShader:$,defines:x.defines,customVertexShaderID:at,customFragmentShaderID:ft,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:F,batching:gt,batchingColor:gt&&R._colorsTexture!==null,instancing:J,instancingColor:J&&R.instanceColor!==null,instancingMorph:J&&R.morphTexture!==null,outputColorSpace:ot===null?e.outputColorSpace:ot.isXRRenderTarget===!0?ot.texture.colorSpace:ie.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:ct,matcap:K,envMap:It,envMapMode:It&&U.mapping,envMapPMREM:pt,envMapMaxLod:pt?Ut.length-1:null,envMapSize:pt?Ut[0].width:null,aoMap:Ot,lightMap:Ht,bumpMap:le,normalMap:oe,displacementMap:Ke,emissiveMap:Ge,normalMapObjectSpace:oe&&x.normalMapType===S2,normalMapTangentSpace:oe&&x.normalMapType===Cp,packedNormalMap:oe&&x.normalMapType===Cp&&M6(x.normalMap.format),metalnessMap:zn,roughnessMap:An,anisotropy:Gn,anisotropyMap:zt,clearcoat:G,clearcoatMap:I,clearcoatNormalMap:T,clearcoatRoughnessMap:H,diffuseRoughness:Vn,diffuseRoughnessMap:ut,dispersion:be,retroreflection:Me,iridescence:mt,iridescenceMap:nt,iridescenceThicknessMap:yt,sheen:Re,sheenColorMap:Mt,sheenRoughnessMap:Q,specularMap:tt,specularColorMap:_t,specularIntensityMap:N,transmission:Dt,transmissionMap:et,thicknessMap:j,gradientMap:vt,opaque:x.transparent===!1&&x.blending===Al&&x.alphaToCoverage===!1,alphaMap:dt,alphaTest:xt,alphaHash:Nt,combine:x.combine,mapUv:ct&&d(x.map.channel),aoMapUv:Ot&&d(x.aoMap.channel),lightMapUv:Ht&&d(x.lightMap.channel),bumpMapUv:le&&d(x.bumpMap.channel),normalMapUv:oe&&d(x.normalMap.channel),displacementMapUv:Ke&&d(x.displacementMap.channel),emissiveMapUv:Ge&&d(x.emissiveMap.channel),metalnessMapUv:zn&&d(x.metalnessMap.channel),roughnessMapUv:An&&d(x.roughnessMap.channel),anisotropyMapUv:zt&&d(x.anisotropyMap.channel),clearcoatMapUv:I&&d(x.clearcoatMap.channel),clearcoatNormalMapUv:T&&d(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:H&&d(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ut&&d(x.diffuseRoughnessMap.channel),iridescenceMapUv:nt&&d(x.iridescenceMap.channel),iridescenceThicknessMapUv:yt&&d(x.iridescenceThicknessMap.channel),sheenColorMapUv:Mt&&d(x.sheenColorMap.channel),sheenRoughnessMapUv:Q&&d(x.sheenRoughnessMap.channel),specularMapUv:tt&&d(x.specularMap.channel),specularColorMapUv:_t&&d(x.specularColorMap.channel),specularIntensityMapUv:N&&d(x.specularIntensityMap.channel),transmissionMapUv:et&&d(x.transmissionMap.channel),thicknessMapUv:j&&d(x.thicknessMap.channel),alphaMapUv:dt&&d(x.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(oe||Gn),vertexNormals:!!P.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:R.isPoints===!0&&!!P.attributes.uv&&(ct||dt),fog:!!k,useFog:x.fog===!0,fogExp2:!!k&&k.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||P.attributes.normal===void 0&&oe===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:rt,skinning:R.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:q,morphTextureStride:st,numSunLights:w.sun.length,numDirLights:w.directional.length,numPointLights:w.point.length,numSpotLights:w.spot.length,numSpotLightMaps:w.spotLightMap.length,numRectAreaLights:w.rectArea.length,numHemiLights:w.hemi.length,numSunLightShadows:w.sunShadowMap.length,numDirLightShadows:w.directionalShadowMap.length,numPointLightShadows:w.pointShadowMap.length,numSpotLightShadows:w.spotShadowMap.length,numSpotLightShadowsWithMaps:w.numSpotLightShadowsWithMaps,numLightProbes:w.numLightProbes,numLightProbeGrids:D.filter(Et=>Et.texture!==null).length,numClippingPlanes:s.numPlanes,numClipIntersection:s.numIntersection,dithering:x.dithering,shadowMapEnabled:e.shadowMap.enabled&&A.length>0,shadowMapType:e.shadowMap.type,toneMapping:ht,decodeVideoTexture:ct&&x.map.isVideoTexture===!0&&ie.getTransfer(x.map.colorSpace)===he,decodeVideoTextureEmissive:Ge&&x.emissiveMap.isVideoTexture===!0&&ie.getTransfer(x.emissiveMap.colorSpace)===he,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===Ii,flipSided:x.side===Bn,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Kt&&x.extensions.clipCullDistance===!0&&n.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Kt&&x.extensions.multiDraw===!0||gt)&&n.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:n.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return Jt.vertexUv1s=l.has(1),Jt.vertexUv2s=l.has(2),Jt.vertexUv3s=l.has(3),l.clear(),Jt}function y(x){let w=[];if(x.shaderID?w.push(x.shaderID):(w.push(x.customVertexShaderID),w.push(x.customFragmentShaderID)),x.defines!==void 0)for(let A in x.defines)w.push(A),w.push(x.defines[A]);return x.isRawShaderMaterial===!1&&(m(w,x),g(w,x),w.push(e.outputColorSpace)),w.push(x.customProgramCacheKey),w.join()}function m(x,w){x.push(w.precision),x.push(w.outputColorSpace),x.push(w.envMapMode),x.push(w.envMapPMREM),x.push(w.envMapMaxLod),x.push(w.envMapSize),x.push(w.mapUv),x.push(w.alphaMapUv),x.push(w.lightMapUv),x.push(w.aoMapUv),x.push(w.bumpMapUv),x.push(w.normalMapUv),x.push(w.displacementMapUv),x.push(w.emissiveMapUv),x.push(w.metalnessMapUv),x.push(w.roughnessMapUv),x.push(w.anisotropyMapUv),x.push(w.clearcoatMapUv),x.push(w.clearcoatNormalMapUv),x.push(w.clearcoatRoughnessMapUv),x.push(w.diffuseRoughnessMapUv),x.push(w.iridescenceMapUv),x.push(w.iridescenceThicknessMapUv),x.push(w.sheenColorMapUv),x.push(w.sheenRoughnessMapUv),x.push(w.specularMapUv),x.push(w.specularColorMapUv),x.push(w.specularIntensityMapUv),x.push(w.transmissionMapUv),x.push(w.thicknessMapUv),x.push(w.combine),x.push(w.fogExp2),x.push(w.sizeAttenuation),x.push(w.morphTargetsCount),x.push(w.numSunLights),x.push(w.numDirLights),x.push(w.numPointLights),x.push(w.numSpotLights),x.push(w.numSpotLightMaps),x.push(w.numHemiLights),x.push(w.numRectAreaLights),x.push(w.numSunLightShadows),x.push(w.numDirLightShadows),x.push(w.numPointLightShadows),x.push(w.numSpotLightShadows),x.push(w.numSpotLightShadowsWithMaps),x.push(w.numLightProbes),x.push(w.numLightProbeGrids),x.push(w.shadowMapType),x.push(w.toneMapping),x.push(w.numClippingPlanes),x.push(w.numClipIntersection),x.push(w.depthPacking)}function g(x,w){o.disableAll(),w.instancing&&o.enable(0),w.instancingColor&&o.enable(1),w.instancingMorph&&o.enable(2),w.matcap&&o.enable(3),w.envMap&&o.enable(4),w.normalMapObjectSpace&&o.enable(5),w.normalMapTangentSpace&&o.enable(6),w.clearcoat&&o.enable(7),w.iridescence&&o.enable(8),w.alphaTest&&o.enable(9),w.vertexColors&&o.enable(10),w.vertexAlphas&&o.enable(11),w.vertexUv1s&&o.enable(12),w.vertexUv2s&&o.enable(13),w.vertexUv3s&&o.enable(14),w.vertexTangents&&o.enable(15),w.anisotropy&&o.enable(16),w.alphaHash&&o.enable(17),w.batching&&o.enable(18),w.dispersion&&o.enable(19),w.retroreflection&&o.enable(24),w.diffuseRoughness&&o.enable(25),w.batchingColor&&o.enable(20),w.gradientMap&&o.enable(21),w.packedNormalMap&&o.enable(22),w.vertexNormals&&o.enable(23),x.push(o.mask),o.disableAll(),w.fog&&o.enable(0),w.useFog&&o.enable(1),w.flatShading&&o.enable(2),w.logarithmicDepthBuffer&&o.enable(3),w.reversedDepthBuffer&&o.enable(4),w.skinning&&o.enable(5),w.morphTargets&&o.enable(6),w.morphNormals&&o.enable(7),w.morphColors&&o.enable(8),w.premultipliedAlpha&&o.enable(9),w.shadowMapEnabled&&o.enable(10),w.doubleSided&&o.enable(11),w.flipSided&&o.enable(12),w.useDepthPacking&&o.enable(13),w.dithering&&o.enable(14),w.transmission&&o.enable(15),w.sheen&&o.enable(16),w.opaque&&o.enable(17),w.pointsUvs&&o.enable(18),w.decodeVideoTexture&&o.enable(19),w.decodeVideoTextureEmissive&&o.enable(20),w.alphaToCoverage&&o.enable(21),w.numLightProbeGrids>0&&o.enable(22),w.hasPositionAttribute&&o.enable(23),x.push(o.mask)}function _(x){let w=f[x.type],A;if(w){let C=kn[w];A=vu.clone(C.uniforms)}else A=x.uniforms;return A}function M(x,w){let A=u.get(w);return A!==void 0?++A.usedTimes:(A=new v6(e,w,x,r),c.push(A),u.set(w,A)),A}function v(x){if(--x.usedTimes===0){let w=c.indexOf(x);c[w]=c[c.length-1],c.pop(),u.delete(x.cacheKey),x.destroy()}}function S(x){a.remove(x)}function b(){a.dispose()}return{getParameters:p,getProgramCacheKey:y,getUniforms:_,acquireProgram:M,releaseProgram:v,releaseShaderCache:S,programs:c,dispose:b}}function w6(){let e=new WeakMap;function t(o){return e.has(o)}function n(o){let a=e.get(o);return a===void 0&&(a={},e.set(o,a)),a}function i(o){e.delete(o)}function r(o,a,l){e.get(o)[a]=l}function s(){e=new WeakMap}return{has:t,get:n,remove:i,update:r,dispose:s}}function T6(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.material.id!==t.material.id?e.material.id-t.material.id:e.materialVariant!==t.materialVariant?e.materialVariant-t.materialVariant:e.z!==t.z?e.z-t.z:e.id-t.id}function t3(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.z!==t.z?t.z-e.z:e.id-t.id}function e3(){let e=[],t=0,n=[],i=[],r=[];function s(){t=0,n.length=0,i.length=0,r.length=0}function o(f){let d=0;return f.isInstancedMesh&&(d+=2),f.isSkinnedMesh&&(d+=1),d}function a(f,d,p,y,m,g){let _=e[t];return _===void 0?(_={id:f.id,object:f,geometry:d,material:p,materialVariant:o(f),groupOrder:y,renderOrder:f.renderOrder,z:m,group:g},e[t]=_):(_.id=f.id,_.object=f,_.geometry=d,_.material=p,_.materialVariant=o(f),_.groupOrder=y,_.renderOrder=f.renderOrder,_.z=m,_.group=g),t++,_}function l(f,d,p,y,m,g,_){_.reversedDepth===!0&&(m=-m);let M=a(f,d,p,y,m,g);p.transmission>0?i.push(M):p.transparent===!0?r.push(M):n.push(M)}function c(f,d,p,y,m,g){let _=a(f,d,p,y,m,g);p.transmission>0?i.unshift(_):p.transparent===!0?r.unshift(_):n.unshift(_)}function u(f,d){n.length>1&&n.sort(f||T6),i.length>1&&i.sort(d||t3),r.length>1&&r.sort(d||t3)}function h(){for(let f=t,d=e.length;f<d;f++){let p=e[f];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:n,transmissive:i,transparent:r,init:s,push:l,unshift:c,finish:h,sort:u}}function E6(){let e=new WeakMap;function t(i,r){let s=e.get(i),o;return s===void 0?(o=new e3,e.set(i,[o])):r>=s.length?(o=new e3,s.push(o)):o=s[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}function A6(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={direction:new B,color:new kt};break;case"SpotLight":n={position:new B,direction:new B,color:new kt,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":n={position:new B,color:new kt,distance:0,decay:0};break;case"HemisphereLight":n={direction:new B,skyColor:new kt,groundColor:new kt};break;case"RectAreaLight":n={color:new kt,position:new B,halfWidth:new B,halfHeight:new B};break}return e[t.id]=n,n}}}function C6(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"SpotLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"PointLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt,shadowCameraNear:1,shadowCameraFar:1e3};break}return e[t.id]=n,n}}}var R6=0;function P6(e,t){return(t.castShadow?2:0)-(e.castShadow?2:0)+(t.map?1:0)-(e.map?1:0)}function I6(e){let t=new A6,n=C6(),i={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)i.probe.push(new B);let r=new B,s=new ve,o=new ve;function a(c){let u=0,h=0,f=0;for(let D=0;D<9;D++)i.probe[D].set(0,0,0);let d=0,p=0,y=0,m=0,g=0,_=0,M=0,v=0,S=0,b=0,x=0,w=0,A=0,C=0;c.sort(P6);for(let D=0,k=c.length;D<k;D++){let P=c[D],L=P.color,z=P.intensity,U=P.distance,Z=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===qs?Z=P.shadow.map.texture:Z=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)u+=L.r*z,h+=L.g*z,f+=L.b*z;else if(P.isLightProbe){for(let F=0;F<9;F++)i.probe[F].addScaledVector(P.sh.coefficients[F],z);C++}else if(P.isSunLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize.copy(V.mapSize).multiply(V.getFrameExtents()),i.sunShadow[p]=q,i.sunShadowMap[p]=Z;let st=V.getViewportCount();for(let lt=0;lt<st;lt++)i.sunShadowMatrix[y+lt]=V.getMatrix(lt),i.sunShadowCascade[y+lt]=V._cascadeData[lt];y+=st,p++}i.sun[d]=F,d++}else if(P.isDirectionalLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.directionalShadow[m]=q,i.directionalShadowMap[m]=Z,i.directionalShadowMatrix[m]=P.shadow.matrix,S++}i.directional[m]=F,m++}else if(P.isSpotLight){let F=t.get(P);F.position.setFromMatrixPosition(P.matrixWorld),F.color.copy(L).multiplyScalar(z),F.distance=U,F.coneCos=Math.cos(P.angle),F.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),F.decay=P.decay,i.spot[_]=F;let V=P.shadow;if(P.map&&(i.spotLightMap[w]=P.map,w++,V.updateMatrices(P),P.castShadow&&A++),i.spotLightMatrix[_]=V.matrix,P.castShadow){let q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.spotShadow[_]=q,i.spotShadowMap[_]=Z,x++}_++}else if(P.isRectAreaLight){let F=t.get(P);F.color.copy(L).multiplyScalar(z),F.halfWidth.set(P.width*.5,0,0),F.halfHeight.set(0,P.height*.5,0),i.rectArea[M]=F,M++}else if(P.isPointLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),F.distance=P.distance,F.decay=P.decay,P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,q.shadowCameraNear=V.camera.near,q.shadowCameraFar=V.camera.far,i.pointShadow[g]=q,i.pointShadowMap[g]=Z,i.pointShadowMatrix[g]=P.shadow.matrix,b++}i.point[g]=F,g++}else if(P.isHemisphereLight){let F=t.get(P);F.skyColor.copy(P.color).multiplyScalar(z),F.groundColor.copy(P.groundColor).multiplyScalar(z),i.hemi[v]=F,v++}}M>0&&(e.has("OES_texture_float_linear")===!0?(i.rectAreaLTC1=wt.LTC_FLOAT_1,i.rectAreaLTC2=wt.LTC_FLOAT_2):(i.rectAreaLTC1=wt.LTC_HALF_1,i.rectAreaLTC2=wt.LTC_HALF_2)),i.ambient[0]=u,i.ambient[1]=h,i.ambient[2]=f;let R=i.hash;(R.sunLength!==d||R.directionalLength!==m||R.pointLength!==g||R.spotLength!==_||R.rectAreaLength!==M||R.hemiLength!==v||R.numSunShadows!==p||R.numDirectionalShadows!==S||R.numPointShadows!==b||R.numSpotShadows!==x||R.numSpotMaps!==w||R.numLightProbes!==C)&&(i.sun.length=d,i.directional.length=m,i.spot.length=_,i.rectArea.length=M,i.point.length=g,i.hemi.length=v,i.sunShadow.length=p,i.sunShadowMap.length=p,i.sunShadowMatrix.length=y,i.sunShadowCascade.length=y,i.directionalShadow.length=S,i.directionalShadowMap.length=S,i.directionalShadowMatrix.length=S,i.pointShadow.length=b,i.pointShadowMap.length=b,i.pointShadowMatrix.length=b,i.spotShadow.length=x,i.spotShadowMap.length=x,i.spotLightMatrix.length=x+w-A,i.spotLightMap.length=w,i.numSpotLightShadowsWithMaps=A,i.numLightProbes=C,R.sunLength=d,R.directionalLength=m,R.pointLength=g,R.spotLength=_,R.rectAreaLength=M,R.hemiLength=v,R.numSunShadows=p,R.numDirectionalShadows=S,R.numPointShadows=b,R.numSpotShadows=x,R.numSpotMaps=w,R.numLightProbes=C,i.version=R6++)}function l(c,u){let h=0,f=0,d=0,p=0,y=0,m=0,g=u.matrixWorldInverse;for(let _=0,M=c.length;_<M;_++){let v=c[_];if(v.isSunLight){let S=i.sun[h];S.direction.setFromMatrixPosition(v.matrixWorld),S.direction.transformDirection(g),h++}else if(v.isDirectionalLight){let S=i.directional[f];S.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),S.direction.sub(r),S.direction.transformDirection(g),f++}else if(v.isSpotLight){let S=i.spot[p];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(g),S.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),S.direction.sub(r),S.direction.transformDirection(g),p++}else if(v.isRectAreaLight){let S=i.rectArea[y];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(g),o.identity(),s.copy(v.matrixWorld),s.premultiply(g),o.extractRotation(s),S.halfWidth.set(v.width*.5,0,0),S.halfHeight.set(0,v.height*.5,0),S.halfWidth.applyMatrix4(o),S.halfHeight.applyMatrix4(o),y++}else if(v.isPointLight){let S=i.point[d];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(g),d++}else if(v.isHemisphereLight){let S=i.hemi[m];S.direction.setFromMatrixPosition(v.matrixWorld),S.direction.transformDirection(g),m++}}}return{setup:a,setupView:l,state:i}}function n3(e){let t=new I6(e),n=[],i=[],r=[];function s(h){u.camera=h,n.length=0,i.length=0,r.length=0}function o(h){h.isLightProbeGrid?r.push(h):n.push(h)}function a(h){i.push(h)}function l(){t.setup(n),r.sort((h,f)=>h.priority-f.priority||h.id-f.id)}function c(h){t.setupView(n,h)}let u={lightsArray:n,shadowsArray:i,lightProbeGridArray:r,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:s,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function L6(e){let t=new WeakMap;function n(r,s=0){let o=t.get(r),a;return o===void 0?(a=new n3(e),t.set(r,[a])):s>=o.length?(a=new n3(e),o.push(a)):a=o[s],a}function i(){t=new WeakMap}return{get:n,dispose:i}}var D6=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,N6=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,U6=[new B(1,0,0),new B(-1,0,0),new B(0,1,0),new B(0,-1,0),new B(0,0,1),new B(0,0,-1)],F6=[new B(0,-1,0),new B(0,-1,0),new B(0,0,1),new B(0,0,-1),new B(0,-1,0),new B(0,-1,0)],i3=new ve,bu=new B,k_=new B;function O6(e,t,n){let i=new ks,r=new Bt,s=new Bt,o=new de,a=new Cd,l=new Rd,c={},u=n.maxTextureSize,h={[Xs]:Bn,[Bn]:Xs,[Ii]:Ii},f=new Pi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new Bt},radius:{value:4}},vertexShader:D6,fragmentShader:N6}),d=f.clone();d.defines.HORIZONTAL_PASS=1;let p=new dn;p.setAttribute("position",new hn(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let y=new Tn(p,f),m=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=fu;let g=this.type;this.render=function(b,x,w){if(m.enabled===!1||m.autoUpdate===!1&&m.needsUpdate===!1||b.length===0)return;this.type===t2&&(Ft("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=fu);let A=e.getRenderTarget(),C=e.getActiveCubeFace(),R=e.getActiveMipmapLevel(),D=e.state;D.setBlending($o),D.buffers.depth.getReversed()===!0?D.buffers.color.setClear(0,0,0,0):D.buffers.color.setClear(1,1,1,1),D.buffers.depth.setTest(!0),D.setScissorTest(!1);let k=g!==this.type;k&&x.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(L=>L.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,L=b.length;P<L;P++){let z=b[P],U=z.shadow;if(U===void 0){Ft("WebGLShadowMap:",z,"has no shadow.");continue}if(U.autoUpdate===!1&&U.needsUpdate===!1)continue;r.copy(U.mapSize);let Z=U.getFrameExtents();r.multiply(Z),s.copy(U.mapSize),(r.x>u||r.y>u)&&(r.x>u&&(s.x=Math.floor(u/Z.x),r.x=s.x*Z.x,U.mapSize.x=s.x),r.y>u&&(s.y=Math.floor(u/Z.y),r.y=s.y*Z.y,U.mapSize.y=s.y));let F=e.state.buffers.depth.getReversed();if(U.camera._reversedDepth=F,U.map===null||k===!0){if(U.map!==null&&(U.map.depthTexture!==null&&(U.map.depthTexture.dispose(),U.map.depthTexture=null),U.map.dispose()),this.type===El){if(z.isPointLight){Ft("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}U.map=new li(r.x,r.y,{format:qs,type:Qi,minFilter:On,magFilter:On,generateMipmaps:!1}),U.map.texture.name=z.name+".shadowMap",U.map.depthTexture=new ss(r.x,r.y,ji),U.map.depthTexture.name=z.name+".shadowMapDepth",U.map.depthTexture.format=es,U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=ln,U.map.depthTexture.magFilter=ln}else z.isPointLight?(U.map=new Su(r.x),U.map.depthTexture=new Qc(r.x,Ki)):(U.map=new li(r.x,r.y),U.map.depthTexture=new ss(r.x,r.y,Ki)),U.map.depthTexture.name=z.name+".shadowMap",U.map.depthTexture.format=es,this.type===fu?(U.map.depthTexture.compareFunction=F?E_:T_,U.map.depthTexture.minFilter=On,U.map.depthTexture.magFilter=On):(U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=ln,U.map.depthTexture.magFilter=ln);U.camera.updateProjectionMatrix()}U.map.isWebGLCubeRenderTarget!==!0&&(U.map.width!==r.x||U.map.height!==r.y)&&U.map.setSize(r.x,r.y);let V=U.map.isWebGLCubeRenderTarget?6:U.getViewportCount();z.isPointLight!==!0&&U.updateMatrices(z,w);let q=(U.camera.layers.mask&4294967294)!==0?U.camera.layers:w.layers;for(let st=0;st<V;st++){let lt=U.getCamera(st);if(z.isPointLight){let $=U.camera,at=U.matrix,ft=z.distance||$.far;ft!==$.far&&($.far=ft,$.updateProjectionMatrix()),bu.setFromMatrixPosition(z.matrixWorld),$.position.copy(bu),k_.copy($.position),k_.add(U6[st]),$.up.copy(F6[st]),$.lookAt(k_),$.updateMatrixWorld(),at.makeTranslation(-bu.x,-bu.y,-bu.z),i3.multiplyMatrices($.projectionMatrix,$.matrixWorldInverse),U._frustum.setFromProjectionMatrix(i3,$.coordinateSystem,$.reversedDepth)}if(U.map.isWebGLCubeRenderTarget)e.setRenderTarget(U.map,st),e.clear();else{st===0&&(e.setRenderTarget(U.map),e.clear());let $=U.getViewport(st);o.set(s.x*$.x,s.y*$.y,s.x*$.z,s.y*$.w),D.viewport(o)}i=U.getFrustum(st),v(x,w,lt,z,q,this.type)}U.isPointLightShadow!==!0&&this.type===El&&_(U,w),U.needsUpdate=!1}g=this.type,m.needsUpdate=!1,e.setRenderTarget(A,C,R)};function _(b,x){let w=t.update(y);f.defines.VSM_SAMPLES!==b.blurSamples&&(f.defines.VSM_SAMPLES=b.blurSamples,d.defines.VSM_SAMPLES=b.blurSamples,f.needsUpdate=!0,d.needsUpdate=!0),b.mapPass===null?b.mapPass=new li(r.x,r.y,{format:qs,type:Qi}):(b.mapPass.width!==b.map.width||b.mapPass.height!==b.map.height)&&b.mapPass.setSize(b.map.width,b.map.height),f.uniforms.shadow_pass.value=b.map.depthTexture,f.uniforms.resolution.value.set(b.map.width,b.map.height),f.uniforms.radius.value=b.radius,e.setRenderTarget(b.mapPass),e.clear(),e.renderBufferDirect(x,null,w,f,y,null),d.uniforms.shadow_pass.value=b.mapPass.texture,d.uniforms.resolution.value.set(b.map.width,b.map.height),d.uniforms.radius.value=b.radius,e.setRenderTarget(b.map),e.clear(),e.renderBufferDirect(x,null,w,d,y,null)}function M(b,x,w,A){let C=null,R=w.isPointLight===!0?b.customDistanceMaterial:b.customDepthMaterial;if(R!==void 0)C=R;else if(C=w.isPointLight===!0?l:a,e.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let D=C.uuid,k=x.uuid,P=c[D];P===void 0&&(P={},c[D]=P);let L=P[k];L===void 0&&(L=C.clone(),P[k]=L,x.addEventListener("dispose",S)),C=L}if(C.visible=x.visible,C.wireframe=x.wireframe,A===El?C.side=x.shadowSide!==null?x.shadowSide:x.side:C.side=x.shadowSide!==null?x.shadowSide:h[x.side],C.alphaMap=x.alphaMap,C.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,C.map=x.map,C.clipShadows=x.clipShadows,C.clippingPlanes=x.clippingPlanes,C.clipIntersection=x.clipIntersection,C.displacementMap=x.displacementMap,C.displacementScale=x.displacementScale,C.displacementBias=x.displacementBias,C.wireframeLinewidth=x.wireframeLinewidth,C.linewidth=x.linewidth,w.isPointLight===!0&&C.isMeshDistanceMaterial===!0){let D=e.properties.get(C);D.light=w}return C}function v(b,x,w,A,C,R){if(b.visible===!1)return;if(b.layers.test(C)&&(b.isMesh||b.isLine||b.isPoints)&&(b.castShadow||b.receiveShadow&&R===El)&&(!b.frustumCulled||b.intersectsFrustum(i))){b.modelViewMatrix.multiplyMatrices(w.matrixWorldInverse,b.matrixWorld);let P=t.update(b),L=b.material;if(Array.isArray(L)){let z=P.groups;for(let U=0,Z=z.length;U<Z;U++){let F=z[U],V=L[F.materialIndex];if(V&&V.visible){let q=M(b,V,A,R);b.onBeforeShadow(e,b,x,w,P,q,F),e.renderBufferDirect(w,null,P,q,b,F),b.onAfterShadow(e,b,x,w,P,q,F)}}}else if(L.visible){let z=M(b,L,A,R);b.onBeforeShadow(e,b,x,w,P,z,null),e.renderBufferDirect(w,null,P,z,b,null),b.onAfterShadow(e,b,x,w,P,z,null)}}let k=b.children;for(let P=0,L=k.length;P<L;P++)v(k[P],x,w,A,C,R)}function S(b){b.target.removeEventListener("dispose",S);for(let w in c){let A=c[w],C=b.target.uuid;C in A&&(A[C].dispose(),delete A[C])}}}function B6(e,t){function n(){let N=!1,et=new de,j=null,vt=new de(0,0,0,0);return{setMask:function(dt){j!==dt&&!N&&(e.colorMask(dt,dt,dt,dt),j=dt)},setLocked:function(dt){N=dt},setClear:function(dt,xt,Nt,Kt,ht){ht===!0&&(dt*=Kt,xt*=Kt,Nt*=Kt),et.set(dt,xt,Nt,Kt),vt.equals(et)===!1&&(e.clearColor(dt,xt,Nt,Kt),vt.copy(et))},reset:function(){N=!1,j=null,vt.set(-1,0,0,0)}}}function i(){let N=!1,et=!1,j=null,vt=null,dt=null;return{setReversed:function(xt){if(et!==xt){let Nt=t.get("EXT_clip_control");xt?Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.ZERO_TO_ONE_EXT):Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.NEGATIVE_ONE_TO_ONE_EXT),et=xt;let Kt=dt;dt=null,this.setClear(Kt)}},getReversed:function(){return et},setTest:function(xt){xt?rt(e.DEPTH_TEST):J(e.DEPTH_TEST)},setMask:function(xt){j!==xt&&!N&&(e.depthMask(xt),j=xt)},setFunc:function(xt){if(et&&(xt=D2[xt]),vt!==xt){switch(xt){case ad:e.depthFunc(e.NEVER);break;case ld:e.depthFunc(e.ALWAYS);break;case cd:e.depthFunc(e.LESS);break;case ml:e.depthFunc(e.LEQUAL);break;case ud:e.depthFunc(e.EQUAL);break;case fd:e.depthFunc(e.GEQUAL);break;case hd:e.depthFunc(e.GREATER);break;case dd:e.depthFunc(e.NOTEQUAL);break;default:e.depthFunc(e.LEQUAL)}vt=xt}},setLocked:function(xt){N=xt},setClear:function(xt){dt!==xt&&(dt=xt,et&&(xt=1-xt),e.clearDepth(xt))},reset:function(){N=!1,j=null,vt=null,dt=null,et=!1}}}function r(){let N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Kt=null,ht=null;return{setTest:function(Ut){N||(Ut?rt(e.STENCIL_TEST):J(e.STENCIL_TEST))},setMask:function(Ut){et!==Ut&&!N&&(e.stencilMask(Ut),et=Ut)},setFunc:function(Ut,Jt,Et){(j!==Ut||vt!==Jt||dt!==Et)&&(e.stencilFunc(Ut,Jt,Et),j=Ut,vt=Jt,dt=Et)},setOp:function(Ut,Jt,Et){(xt!==Ut||Nt!==Jt||Kt!==Et)&&(e.stencilOp(Ut,Jt,Et),xt=Ut,Nt=Jt,Kt=Et)},setLocked:function(Ut){N=Ut},setClear:function(Ut){ht!==Ut&&(e.clearStencil(Ut),ht=Ut)},reset:function(){N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Kt=null,ht=null}}}let s=new n,o=new i,a=new r,l={},c=new WeakMap,u={},h={},f={},d=new WeakMap,p=[],y=null,m=!1,g=null,_=null,M=null,v=null,S=null,b=null,x=null,w=new kt(0,0,0),A=0,C=!1,R=null,D=null,k=null,P=null,L=null,z=e.getParameter(e.MAX_COMBINED_TEXTURE_IMAGE_UNITS),U=!1,Z=0,F=e.getParameter(e.VERSION);F.indexOf("WebGL")!==-1?(Z=parseFloat(/^WebGL (\d)/.exec(F)[1]),U=Z>=1):F.indexOf("OpenGL ES")!==-1&&(Z=parseFloat(/^OpenGL ES (\d)/.exec(F)[1]),U=Z>=2);let V=null,q={},st=e.getParameter(e.SCISSOR_BOX),lt=e.getParameter(e.VIEWPORT),$=new de().fromArray(st),at=new de().fromArray(lt);function ft(N,et,j,vt){let dt=new Uint8Array(4),xt=e.createTexture();e.bindTexture(N,xt),e.texParameteri(N,e.TEXTURE_MIN_FILTER,e.NEAREST),e.texParameteri(N,e.TEXTURE_MAG_FILTER,e.NEAREST);for(let Nt=0;Nt<j;Nt++)N===e.TEXTURE_3D||N===e.TEXTURE_2D_ARRAY?e.texImage3D(et,0,e.RGBA,1,1,vt,0,e.RGBA,e.UNSIGNED_BYTE,dt):e.texImage2D(et+Nt,0,e.RGBA,1,1,0,e.RGBA,e.UNSIGNED_BYTE,dt);return xt}let ot={};ot[e.TEXTURE_2D]=ft(e.TEXTURE_2D,e.TEXTURE_2D,1),ot[e.TEXTURE_CUBE_MAP]=ft(e.TEXTURE_CUBE_MAP,e.TEXTURE_CUBE_MAP_POSITIVE_X,6),ot[e.TEXTURE_2D_ARRAY]=ft(e.TEXTURE_2D_ARRAY,e.TEXTURE_2D_ARRAY,1,1),ot[e.TEXTURE_3D]=ft(e.TEXTURE_3D,e.TEXTURE_3D,1,1),s.setClear(0,0,0,1),o.setClear(1),a.setClear(0),rt(e.DEPTH_TEST),o.setFunc(ml),le(!1),oe(r_),rt(e.CULL_FACE),Ot($o);function rt(N){u[N]!==!0&&(e.enable(N),u[N]=!0)}function J(N){u[N]!==!1&&(e.disable(N),u[N]=!1)}function gt(N,et){return f[N]!==et?(e.bindFramebuffer(N,et),f[N]=et,N===e.DRAW_FRAMEBUFFER&&(f[e.FRAMEBUFFER]=et),N===e.FRAMEBUFFER&&(f[e.DRAW_FRAMEBUFFER]=et),!0):!1}function ct(N,et){let j=p,vt=!1;if(N){j=d.get(et),j===void 0&&(j=[],d.set(et,j));let dt=N.textures;if(j.length!==dt.length||j[0]!==e.COLOR_ATTACHMENT0){for(let xt=0,Nt=dt.length;xt<Nt;xt++)j[xt]=e.COLOR_ATTACHMENT0+xt;j.length=dt.length,vt=!0}}else j[0]!==e.BACK&&(j[0]=e.BACK,vt=!0);vt&&e.drawBuffers(j)}function K(N){return y!==N?(e.useProgram(N),y=N,!0):!1}let It={[Xo]:e.FUNC_ADD,[n2]:e.FUNC_SUBTRACT,[i2]:e.FUNC_REVERSE_SUBTRACT};It[r2]=e.MIN,It[s2]=e.MAX;let pt={[o2]:e.ZERO,[a2]:e.ONE,[l2]:e.SRC_COLOR,[l_]:e.SRC_ALPHA,[p2]:e.SRC_ALPHA_SATURATE,[h2]:e.DST_COLOR,[u2]:e.DST_ALPHA,[c2]:e.ONE_MINUS_SRC_COLOR,[c_]:e.ONE_MINUS_SRC_ALPHA,[d2]:e.ONE_MINUS_DST_COLOR,[f2]:e.ONE_MINUS_DST_ALPHA,[m2]:e.CONSTANT_COLOR,[g2]:e.ONE_MINUS_CONSTANT_COLOR,[y2]:e.CONSTANT_ALPHA,[x2]:e.ONE_MINUS_CONSTANT_ALPHA};function Ot(N,et,j,vt,dt,xt,Nt,Kt,ht,Ut){if(N===$o){m===!0&&(J(e.BLEND),m=!1);return}if(m===!1&&(rt(e.BLEND),m=!0),N!==e2){if(N!==g||Ut!==C){if((_!==Xo||S!==Xo)&&(e.blendEquation(e.FUNC_ADD),_=Xo,S=Xo),Ut)switch(N){case Al:e.blendFuncSeparate(e.ONE,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case s_:e.blendFunc(e.ONE,e.ONE);break;case o_:e.blendFuncSeparate(e.ZERO,e.ONE_MINUS_SRC_COLOR,e.ZERO,e.ONE);break;case a_:e.blendFuncSeparate(e.DST_COLOR,e.ONE_MINUS_SRC_ALPHA,e.ZERO,e.ONE);break;default:Gt("WebGLState: Invalid blending: ",N);break}else switch(N){case Al:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case s_:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE,e.ONE,e.ONE);break;case o_:Gt("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case a_:Gt("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:Gt("WebGLState: Invalid blending: ",N);break}M=null,v=null,b=null,x=null,w.set(0,0,0),A=0,g=N,C=Ut}return}dt=dt||et,xt=xt||j,Nt=Nt||vt,(et!==_||dt!==S)&&(e.blendEquationSeparate(It[et],It[dt]),_=et,S=dt),(j!==M||vt!==v||xt!==b||Nt!==x)&&(e.blendFuncSeparate(pt[j],pt[vt],pt[xt],pt[Nt]),M=j,v=vt,b=xt,x=Nt),(Kt.equals(w)===!1||ht!==A)&&(e.blendColor(Kt.r,Kt.g,Kt.b,ht),w.copy(Kt),A=ht),g=N,C=!1}function Ht(N,et){N.side===Ii?J(e.CULL_FACE):rt(e.CULL_FACE);let j=N.side===Bn;et&&(j=!j),le(j),N.blending===Al&&N.transparent===!1?Ot($o):Ot(N.blending,N.blendEquation,N.blendSrc,N.blendDst,N.blendEquationAlpha,N.blendSrcAlpha,N.blendDstAlpha,N.blendColor,N.blendAlpha,N.premultipliedAlpha),o.setFunc(N.depthFunc),o.setTest(N.depthTest),o.setMask(N.depthWrite),s.setMask(N.colorWrite);let vt=N.stencilWrite;a.setTest(vt),vt&&(a.setMask(N.stencilWriteMask),a.setFunc(N.stencilFunc,N.stencilRef,N.stencilFuncMask),a.setOp(N.stencilFail,N.stencilZFail,N.stencilZPass)),Ge(N.polygonOffset,N.polygonOffsetFactor,N.polygonOffsetUnits),N.alphaToCoverage===!0?rt(e.SAMPLE_ALPHA_TO_COVERAGE):J(e.SAMPLE_ALPHA_TO_COVERAGE)}function le(N){R!==N&&(N?e.frontFace(e.CW):e.frontFace(e.CCW),R=N)}function oe(N){N!==jA?(rt(e.CULL_FACE),N!==D&&(N===r_?e.cullFace(e.BACK):N===QA?e.cullFace(e.FRONT):e.cullFace(e.FRONT_AND_BACK))):J(e.CULL_FACE),D=N}function Ke(N){N!==k&&(U&&e.lineWidth(N),k=N)}function Ge(N,et,j){N?(rt(e.POLYGON_OFFSET_FILL),(P!==et||L!==j)&&(P=et,L=j,o.getReversed()&&(et=-et,j=-j),e.polygonOffset(et,j))):J(e.POLYGON_OFFSET_FILL)}function zn(N){N?rt(e.SCISSOR_TEST):J(e.SCISSOR_TEST)}function An(N){N===void 0&&(N=e.TEXTURE0+z-1),V!==N&&(e.activeTexture(N),V=N)}function Gn(N,et,j){j===void 0&&(V===null?j=e.TEXTURE0+z-1:j=V);let vt=q[j];vt===void 0&&(vt={type:void 0,texture:void 0},q[j]=vt),(vt.type!==N||vt.texture!==et)&&(V!==j&&(e.activeTexture(j),V=j),e.bindTexture(N,et||ot[N]),vt.type=N,vt.texture=et)}function G(){let N=q[V];N!==void 0&&N.type!==void 0&&(e.bindTexture(N.type,null),N.type=void 0,N.texture=void 0)}function Vn(){try{e.compressedTexImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function be(){try{e.compressedTexImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Me(){try{e.texSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function mt(){try{e.texSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Re(){try{e.compressedTexSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Dt(){try{e.compressedTexSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function zt(){try{e.texStorage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function I(){try{e.texStorage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function T(){try{e.texImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function H(){try{e.texImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function ut(N){return h[N]!==void 0?h[N]:e.getParameter(N)}function nt(N,et){h[N]!==et&&(e.pixelStorei(N,et),h[N]=et)}function yt(N){$.equals(N)===!1&&(e.scissor(N.x,N.y,N.z,N.w),$.copy(N))}function Mt(N){at.equals(N)===!1&&(e.viewport(N.x,N.y,N.z,N.w),at.copy(N))}function Q(N,et){let j=c.get(et);j===void 0&&(j=new WeakMap,c.set(et,j));let vt=j.get(N);vt===void 0&&(vt=e.getUniformBlockIndex(et,N.name),e.uniformBlockBinding(et,vt,vt),j.set(N,vt))}function tt(N,et,j){let dt=c.get(et).get(N);l[dt]!==j&&(e.bindBufferBase(e.UNIFORM_BUFFER,dt,j),l[dt]=j)}function _t(){e.disable(e.BLEND),e.disable(e.CULL_FACE),e.disable(e.DEPTH_TEST),e.disable(e.POLYGON_OFFSET_FILL),e.disable(e.SCISSOR_TEST),e.disable(e.STENCIL_TEST),e.disable(e.SAMPLE_ALPHA_TO_COVERAGE),e.blendEquation(e.FUNC_ADD),e.blendFunc(e.ONE,e.ZERO),e.blendFuncSeparate(e.ONE,e.ZERO,e.ONE,e.ZERO),e.blendColor(0,0,0,0),e.colorMask(!0,!0,!0,!0),e.clearColor(0,0,0,0),e.depthMask(!0),e.depthFunc(e.LESS),o.setReversed(!1),e.clearDepth(1),e.stencilMask(4294967295),e.stencilFunc(e.ALWAYS,0,4294967295),e.stencilOp(e.KEEP,e.KEEP,e.KEEP),e.clearStencil(0),e.cullFace(e.BACK),e.frontFace(e.CCW),e.polygonOffset(0,0),e.activeTexture(e.TEXTURE0),e.bindFramebuffer(e.FRAMEBUFFER,null),e.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),e.bindFramebuffer(e.READ_FRAMEBUFFER,null),e.useProgram(null),e.lineWidth(1),e.scissor(0,0,e.canvas.width,e.canvas.height),e.viewport(0,0,e.canvas.width,e.canvas.height),e.pixelStorei(e.PACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,!1),e.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),e.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,e.BROWSER_DEFAULT_WEBGL),e.pixelStorei(e.PACK_ROW_LENGTH,0),e.pixelStorei(e.PACK_SKIP_PIXELS,0),e.pixelStorei(e.PACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_ROW_LENGTH,0),e.pixelStorei(e.UNPACK_IMAGE_HEIGHT,0),e.pixelStorei(e.UNPACK_SKIP_PIXELS,0),e.pixelStorei(e.UNPACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_SKIP_IMAGES,0),u={},h={},V=null,q={},f={},l={},d=new WeakMap,p=[],y=null,m=!1,g=null,_=null,M=null,v=null,S=null,b=null,x=null,w=new kt(0,0,0),A=0,C=!1,R=null,D=null,k=null,P=null,L=null,$.set(0,0,e.canvas.width,e.canvas.height),at.set(0,0,e.canvas.width,e.canvas.height),s.reset(),o.reset(),a.reset()}return{buffers:{color:s,depth:o,stencil:a},enable:rt,disable:J,bindFramebuffer:gt,drawBuffers:ct,useProgram:K,setBlending:Ot,setMaterial:Ht,setFlipSided:le,setCullFace:oe,setLineWidth:Ke,setPolygonOffset:Ge,setScissorTest:zn,activeTexture:An,bindTexture:Gn,unbindTexture:G,compressedTexImage2D:Vn,compressedTexImage3D:be,texImage2D:T,texImage3D:H,pixelStorei:nt,getParameter:ut,updateUBOMapping:Q,uniformBlockBinding:tt,texStorage2D:zt,texStorage3D:I,texSubImage2D:Me,texSubImage3D:mt,compressedTexSubImage2D:Re,compressedTexSubImage3D:Dt,scissor:yt,viewport:Mt,reset:_t}}function k6(e,t,n,i,r,s,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new Bt,u=new WeakMap,h=new Set,f,d=new WeakMap,p=new Set,y=new FinalizationRegistry(I=>p.delete(I)),m=!1;try{m=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function g(I,T){return m?new OffscreenCanvas(I,T):$c("canvas")}function _(I,T,H){let ut=1,nt=zt(I);if((nt.width>H||nt.height>H)&&(ut=H/Math.max(nt.width,nt.height)),ut<1)if(typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&I instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&I instanceof ImageBitmap||typeof VideoFrame<"u"&&I instanceof VideoFrame){let yt=Math.floor(ut*nt.width),Mt=Math.floor(ut*nt.height);f===void 0&&(f=g(yt,Mt));let Q=T?g(yt,Mt):f;return Q.width=yt,Q.height=Mt,Q.getContext("2d").drawImage(I,0,0,yt,Mt),Ft("WebGLRenderer: Texture has been resized from ("+nt.width+"x"+nt.height+") to ("+yt+"x"+Mt+")."),Q}else return"data"in I&&Ft("WebGLRenderer: Image in DataTexture is too big ("+nt.width+"x"+nt.height+")."),I;return I}function M(I){return I.generateMipmaps}function v(I){e.generateMipmap(I)}function S(I){return I.isWebGLCubeRenderTarget?e.TEXTURE_CUBE_MAP:I.isWebGL3DRenderTarget?e.TEXTURE_3D:I.isWebGLArrayRenderTarget||I.isCompressedArrayTexture?e.TEXTURE_2D_ARRAY:e.TEXTURE_2D}function b(I,T,H,ut,nt,yt=!1){if(I!==null){if(e[I]!==void 0)return e[I];Ft("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+I+"'")}let Mt;ut&&(Mt=t.get("EXT_texture_norm16"),Mt||Ft("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let Q=T;if(T===e.RED&&(H===e.FLOAT&&(Q=e.R32F),H===e.HALF_FLOAT&&(Q=e.R16F),H===e.UNSIGNED_BYTE&&(Q=e.R8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.R16_EXT),H===e.SHORT&&Mt&&(Q=Mt.R16_SNORM_EXT)),T===e.RED_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.R8UI),H===e.UNSIGNED_SHORT&&(Q=e.R16UI),H===e.UNSIGNED_INT&&(Q=e.R32UI),H===e.BYTE&&(Q=e.R8I),H===e.SHORT&&(Q=e.R16I),H===e.INT&&(Q=e.R32I)),T===e.RG&&(H===e.FLOAT&&(Q=e.RG32F),H===e.HALF_FLOAT&&(Q=e.RG16F),H===e.UNSIGNED_BYTE&&(Q=e.RG8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RG16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RG16_SNORM_EXT)),T===e.RG_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RG8UI),H===e.UNSIGNED_SHORT&&(Q=e.RG16UI),H===e.UNSIGNED_INT&&(Q=e.RG32UI),H===e.BYTE&&(Q=e.RG8I),H===e.SHORT&&(Q=e.RG16I),H===e.INT&&(Q=e.RG32I)),T===e.RGB_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGB8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGB16UI),H===e.UNSIGNED_INT&&(Q=e.RGB32UI),H===e.BYTE&&(Q=e.RGB8I),H===e.SHORT&&(Q=e.RGB16I),H===e.INT&&(Q=e.RGB32I)),T===e.RGBA_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGBA8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGBA16UI),H===e.UNSIGNED_INT&&(Q=e.RGBA32UI),H===e.BYTE&&(Q=e.RGBA8I),H===e.SHORT&&(Q=e.RGBA16I),H===e.INT&&(Q=e.RGBA32I)),T===e.RGB&&(H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGB16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGB16_SNORM_EXT),H===e.UNSIGNED_INT_5_9_9_9_REV&&(Q=e.RGB9_E5),H===e.UNSIGNED_INT_10F_11F_11F_REV&&(Q=e.R11F_G11F_B10F)),T===e.RGBA){let tt=yt?Wc:ie.getTransfer(nt);H===e.FLOAT&&(Q=e.RGBA32F),H===e.HALF_FLOAT&&(Q=e.RGBA16F),H===e.UNSIGNED_BYTE&&(Q=tt===he?e.SRGB8_ALPHA8:e.RGBA8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGBA16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGBA16_SNORM_EXT),H===e.UNSIGNED_SHORT_4_4_4_4&&(Q=e.RGBA4),H===e.UNSIGNED_SHORT_5_5_5_1&&(Q=e.RGB5_A1)}return(Q===e.R16F||Q===e.R32F||Q===e.RG16F||Q===e.RG32F||Q===e.RGBA16F||Q===e.RGBA32F)&&t.get("EXT_color_buffer_float"),Q}function x(I,T){let H;return I?T===null||T===Ki||T===Yo?H=e.DEPTH24_STENCIL8:T===ji?H=e.DEPTH32F_STENCIL8:T===Rl&&(H=e.DEPTH24_STENCIL8,Ft("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):T===null||T===Ki||T===Yo?H=e.DEPTH_COMPONENT24:T===ji?H=e.DEPTH_COMPONENT32F:T===Rl&&(H=e.DEPTH_COMPONENT16),H}function w(I,T){return M(I)===!0||I.isFramebufferTexture&&I.minFilter!==ln&&I.minFilter!==On?Math.log2(Math.max(T.width,T.height))+1:I.mipmaps.length>0?I.mipmaps.length:I.isCompressedTexture&&Array.isArray(I.image)?T.mipmaps.length:1}function A(I){let T=new WeakRef(I);i.get(I).__ref=T,p.add(T),y.register(I,T,T)}function C(I){let T=i.get(I).__ref;T!==void 0&&(p.delete(T),y.unregister(T))}function R(I){k(I.target)}function D(I){P(I.target)}function k(I){I.removeEventListener("dispose",R),C(I),z(I),I.isVideoTexture&&u.delete(I),I.isHTMLTexture&&h.delete(I)}function P(I){I.removeEventListener("dispose",D),C(I),Z(I)}function L(){for(let I of p){let T=I.deref();T!==void 0&&(T.isRenderTarget===!0?P(T):k(T))}p.clear(),h.clear()}function z(I){let T=i.get(I);if(T.__webglInit===void 0)return;let H=I.source,ut=d.get(H);if(ut){let nt=ut[T.__cacheKey];nt.usedTimes--,nt.usedTimes===0&&U(I),Object.keys(ut).length===0&&d.delete(H)}i.remove(I)}function U(I){let T=i.get(I);e.deleteTexture(T.__webglTexture);let H=I.source,ut=d.get(H);delete ut[T.__cacheKey],o.memory.textures--}function Z(I){let T=i.get(I);T.__depthDisposeCallback&&T.__depthDisposeCallback();let H=I.depthTexture;if(H&&H.renderTarget===I&&k(H),I.isWebGLCubeRenderTarget)for(let nt=0;nt<6;nt++){if(Array.isArray(T.__webglFramebuffer[nt]))for(let yt=0;yt<T.__webglFramebuffer[nt].length;yt++)e.deleteFramebuffer(T.__webglFramebuffer[nt][yt]);else e.deleteFramebuffer(T.__webglFramebuffer[nt]);T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer[nt])}else{if(Array.isArray(T.__webglFramebuffer))for(let nt=0;nt<T.__webglFramebuffer.length;nt++)e.deleteFramebuffer(T.__webglFramebuffer[nt]);else e.deleteFramebuffer(T.__webglFramebuffer);if(T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer),T.__webglMultisampledFramebuffer&&e.deleteFramebuffer(T.__webglMultisampledFramebuffer),T.__webglColorRenderbuffer)for(let nt=0;nt<T.__webglColorRenderbuffer.length;nt++)T.__webglColorRenderbuffer[nt]&&e.deleteRenderbuffer(T.__webglColorRenderbuffer[nt]);T.__webglDepthRenderbuffer&&e.deleteRenderbuffer(T.__webglDepthRenderbuffer)}let ut=I.textures;for(let nt=0,yt=ut.length;nt<yt;nt++){let Mt=i.get(ut[nt]);Mt.__webglTexture&&(e.deleteTexture(Mt.__webglTexture),o.memory.textures--),i.remove(ut[nt])}i.remove(I)}let F=0;function V(){F=0}function q(){return F}function st(I){F=I}function lt(){let I=F;return I>=r.maxTextures&&Ft("WebGLTextures: Trying to use "+(I+1)+" texture units while this GPU supports only "+r.maxTextures),F+=1,I}function $(I){let T=[];return T.push(I.wrapS),T.push(I.wrapT),T.push(I.wrapR||0),T.push(I.magFilter),T.push(I.minFilter),T.push(I.anisotropy),T.push(I.internalFormat),T.push(I.format),T.push(I.type),T.push(I.generateMipmaps),T.push(I.mipmapsAutoUpdate),T.push(I.premultiplyAlpha),T.push(I.flipY),T.push(I.unpackAlignment),T.push(I.colorSpace),T.join()}function at(I,T){let H=i.get(I);if(I.isVideoTexture&&Re(I),I.isRenderTargetTexture===!1&&I.isExternalTexture!==!0&&I.version>0&&H.__version!==I.version){let ut=I.image;if(ut===null)Ft("WebGLRenderer: Texture marked for update but no image data found.");else if(ut.complete===!1)Ft("WebGLRenderer: Texture marked for update but image is incomplete");else{Ht(H,I,T);return}}else I.isExternalTexture&&(H.__webglTexture=I.sourceTexture?I.sourceTexture:null);n.bindTexture(e.TEXTURE_2D,H.__webglTexture,e.TEXTURE0+T)}function ft(I,T){let H=i.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&H.__version!==I.version){Ht(H,I,T);return}else I.isExternalTexture&&(H.__webglTexture=I.sourceTexture?I.sourceTexture:null);n.bindTexture(e.TEXTURE_2D_ARRAY,H.__webglTexture,e.TEXTURE0+T)}function ot(I,T){let H=i.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&H.__version!==I.version){Ht(H,I,T);return}n.bindTexture(e.TEXTURE_3D,H.__webglTexture,e.TEXTURE0+T)}function rt(I,T){let H=i.get(I);if(I.version>0&&H.__version!==I.version){le(H,I,T);return}n.bindTexture(e.TEXTURE_CUBE_MAP,H.__webglTexture,e.TEXTURE0+T)}let J={[pd]:e.REPEAT,[br]:e.CLAMP_TO_EDGE,[md]:e.MIRRORED_REPEAT},gt={[ln]:e.NEAREST,[b2]:e.NEAREST_MIPMAP_NEAREST,[hu]:e.NEAREST_MIPMAP_LINEAR,[On]:e.LINEAR,[$d]:e.LINEAR_MIPMAP_NEAREST,[as]:e.LINEAR_MIPMAP_LINEAR},ct={[T2]:e.NEVER,[A_]:e.ALWAYS,[E2]:e.LESS,[T_]:e.LEQUAL,[A2]:e.EQUAL,[E_]:e.GEQUAL,[C2]:e.GREATER,[R2]:e.NOTEQUAL};function K(I,T){if(T.type===ji&&t.has("OES_texture_float_linear")===!1&&(T.magFilter===On||T.magFilter===$d||T.magFilter===hu||T.magFilter===as||T.minFilter===On||T.minFilter===$d||T.minFilter===hu||T.minFilter===as)&&Ft("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),e.texParameteri(I,e.TEXTURE_WRAP_S,J[T.wrapS]),e.texParameteri(I,e.TEXTURE_WRAP_T,J[T.wrapT]),(I===e.TEXTURE_3D||I===e.TEXTURE_2D_ARRAY)&&e.texParameteri(I,e.TEXTURE_WRAP_R,J[T.wrapR]),e.texParameteri(I,e.TEXTURE_MAG_FILTER,gt[T.magFilter]),e.texParameteri(I,e.TEXTURE_MIN_FILTER,gt[T.minFilter]),T.compareFunction&&(e.texParameteri(I,e.TEXTURE_COMPARE_MODE,e.COMPARE_REF_TO_TEXTURE),e.texParameteri(I,e.TEXTURE_COMPARE_FUNC,ct[T.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(T.magFilter===ln||T.minFilter!==hu&&T.minFilter!==as||T.type===ji&&t.has("OES_texture_float_linear")===!1)return;if(T.anisotropy>1||i.get(T).__currentAnisotropy){let H=t.get("EXT_texture_filter_anisotropic");e.texParameterf(I,H.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(T.anisotropy,r.getMaxAnisotropy())),i.get(T).__currentAnisotropy=T.anisotropy}}}function It(I,T){let H=!1;I.__webglInit===void 0&&(I.__webglInit=!0,T.addEventListener("dispose",R),A(T));let ut=T.source,nt=d.get(ut);nt===void 0&&(nt={},d.set(ut,nt));let yt=$(T);if(yt!==I.__cacheKey){nt[yt]===void 0&&(nt[yt]={texture:e.createTexture(),usedTimes:0},o.memory.textures++,H=!0),nt[yt].usedTimes++;let Mt=nt[I.__cacheKey];Mt!==void 0&&(nt[I.__cacheKey].usedTimes--,Mt.usedTimes===0&&U(T)),I.__cacheKey=yt,I.__webglTexture=nt[yt].texture}return H}function pt(I,T,H){return Math.floor(Math.floor(I/H)/T)}function Ot(I,T,H,ut){let yt=I.updateRanges;if(yt.length===0)n.texSubImage2D(e.TEXTURE_2D,0,0,0,T.width,T.height,H,ut,T.data);else{yt.sort((N,et)=>N.start-et.start);let Mt=0;for(let N=1;N<yt.length;N++){let et=yt[Mt],j=yt[N],vt=et.start+et.count,dt=pt(j.start,T.width,4),xt=pt(et.start,T.width,4);j.start<=vt+1&&dt===xt&&pt(j.start+j.count-1,T.width,4)===dt?et.count=Math.max(et.count,j.start+j.count-et.start):(++Mt,yt[Mt]=j)}yt.length=Mt+1;let Q=n.getParameter(e.UNPACK_ROW_LENGTH),tt=n.getParameter(e.UNPACK_SKIP_PIXELS),_t=n.getParameter(e.UNPACK_SKIP_ROWS);n.pixelStorei(e.UNPACK_ROW_LENGTH,T.width);for(let N=0,et=yt.length;N<et;N++){let j=yt[N],vt=Math.floor(j.start/4),dt=Math.ceil(j.count/4),xt=vt%T.width,Nt=Math.floor(vt/T.width),Kt=dt,ht=1;n.pixelStorei(e.UNPACK_SKIP_PIXELS,xt),n.pixelStorei(e.UNPACK_SKIP_ROWS,Nt),n.texSubImage2D(e.TEXTURE_2D,0,xt,Nt,Kt,ht,H,ut,T.data)}I.clearUpdateRanges(),n.pixelStorei(e.UNPACK_ROW_LENGTH,Q),n.pixelStorei(e.UNPACK_SKIP_PIXELS,tt),n.pixelStorei(e.UNPACK_SKIP_ROWS,_t)}}function Ht(I,T,H){let ut=e.TEXTURE_2D;(T.isDataArrayTexture||T.isCompressedArrayTexture)&&(ut=e.TEXTURE_2D_ARRAY),T.isData3DTexture&&(ut=e.TEXTURE_3D);let nt=It(I,T),yt=T.source;n.bindTexture(ut,I.__webglTexture,e.TEXTURE0+H);let Mt=i.get(yt);if(yt.version!==Mt.__version||nt===!0){if(n.activeTexture(e.TEXTURE0+H),(typeof ImageBitmap<"u"&&T.image instanceof ImageBitmap)===!1){let ht=ie.getPrimaries(ie.workingColorSpace),Ut=T.colorSpace===cs?null:ie.getPrimaries(T.colorSpace),Jt=T.colorSpace===cs||ht===Ut?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,Jt)}n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment);let tt=_(T.image,!1,r.maxTextureSize);tt=Dt(T,tt);let _t=s.convert(T.format,T.colorSpace),N=s.convert(T.type),et=b(T.internalFormat,_t,N,T.normalized,T.colorSpace,T.isVideoTexture);K(ut,T);let j,vt=T.mipmaps,dt=T.isVideoTexture!==!0,xt=Mt.__version===void 0||nt===!0,Nt=yt.dataReady,Kt=w(T,tt);if(T.isDepthTexture)et=x(T.format===ls,T.type),xt&&(dt?n.texStorage2D(e.TEXTURE_2D,1,et,tt.width,tt.height):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,null));else if(T.isDataTexture)if(vt.length>0){dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Kt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data);T.generateMipmaps=!1}else dt?(xt&&n.texStorage2D(e.TEXTURE_2D,Kt,et,tt.width,tt.height),Nt&&Ot(T,tt,_t,N)):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,tt.data);else if(T.isCompressedTexture)if(T.isCompressedArrayTexture){dt&&xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Kt,et,vt[0].width,vt[0].height,tt.depth);for(let ht=0,Ut=vt.length;ht<Ut;ht++)if(j=vt[ht],T.format!==tr)if(_t!==null)if(dt){if(Nt)if(T.layerUpdates.size>0){let Jt=O_(j.width,j.height,T.format,T.type);for(let Et of T.layerUpdates){let pe=j.data.subarray(Et*Jt/j.data.BYTES_PER_ELEMENT,(Et+1)*Jt/j.data.BYTES_PER_ELEMENT);n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,Et,j.width,j.height,1,_t,pe)}}else n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,j.data)}else n.compressedTexImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,j.data,0,0);else Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else dt?Nt&&n.texSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,N,j.data):n.texImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,_t,N,j.data);T.layerUpdates.size>0&&T.clearLayerUpdates()}else{dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Kt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],T.format!==tr?_t!==null?dt?Nt&&n.compressedTexSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,j.data):n.compressedTexImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,j.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data)}else if(T.isDataArrayTexture)if(dt){if(xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Kt,et,tt.width,tt.height,tt.depth),Nt)if(T.layerUpdates.size>0){let ht=O_(tt.width,tt.height,T.format,T.type);for(let Ut of T.layerUpdates){let Jt=tt.data.subarray(Ut*ht/tt.data.BYTES_PER_ELEMENT,(Ut+1)*ht/tt.data.BYTES_PER_ELEMENT);n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,Ut,tt.width,tt.height,1,_t,N,Jt)}T.clearLayerUpdates()}else n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)}else n.texImage3D(e.TEXTURE_2D_ARRAY,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isData3DTexture)dt?(xt&&n.texStorage3D(e.TEXTURE_3D,Kt,et,tt.width,tt.height,tt.depth),Nt&&n.texSubImage3D(e.TEXTURE_3D,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)):n.texImage3D(e.TEXTURE_3D,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isFramebufferTexture){if(xt)if(dt)n.texStorage2D(e.TEXTURE_2D,Kt,et,tt.width,tt.height);else{let ht=tt.width,Ut=tt.height;for(let Jt=0;Jt<Kt;Jt++)n.texImage2D(e.TEXTURE_2D,Jt,et,ht,Ut,0,_t,N,null),ht>>=1,Ut>>=1}}else if(T.isHTMLTexture){if("texElementImage2D"in e){let ht=e.canvas;if(ht.hasAttribute("layoutsubtree")||ht.setAttribute("layoutsubtree","true"),tt.parentNode!==ht){ht.appendChild(tt),h.add(T),ht.onpaint=Ut=>{let Jt=Ut.changedElements;for(let Et of h)Jt.includes(Et.image)&&(Et.needsUpdate=!0)},ht.requestPaint();return}if(e.texElementImage2D.length===3)e.texElementImage2D(e.TEXTURE_2D,e.RGBA8,tt);else{let Jt=e.RGBA,Et=e.RGBA,pe=e.UNSIGNED_BYTE;e.texElementImage2D(e.TEXTURE_2D,0,Jt,Et,pe,tt)}e.texParameteri(e.TEXTURE_2D,e.TEXTURE_MIN_FILTER,e.LINEAR),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_S,e.CLAMP_TO_EDGE),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_T,e.CLAMP_TO_EDGE)}}else if(vt.length>0){if(dt&&xt){let ht=zt(vt[0]);n.texStorage2D(e.TEXTURE_2D,Kt,et,ht.width,ht.height)}for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,_t,N,j):n.texImage2D(e.TEXTURE_2D,ht,et,_t,N,j);T.generateMipmaps=!1}else if(dt){if(xt){let ht=zt(tt);n.texStorage2D(e.TEXTURE_2D,Kt,et,ht.width,ht.height)}Nt&&n.texSubImage2D(e.TEXTURE_2D,0,0,0,_t,N,tt)}else n.texImage2D(e.TEXTURE_2D,0,et,_t,N,tt);M(T)&&T.mipmapsAutoUpdate===!0&&v(ut),Mt.__version=yt.version,T.onUpdate&&T.onUpdate(T)}I.__version=T.version}function le(I,T,H){if(T.image.length!==6)return;let ut=It(I,T),nt=T.source;n.bindTexture(e.TEXTURE_CUBE_MAP,I.__webglTexture,e.TEXTURE0+H);let yt=i.get(nt);if(nt.version!==yt.__version||ut===!0){n.activeTexture(e.TEXTURE0+H);let Mt=ie.getPrimaries(ie.workingColorSpace),Q=T.colorSpace===cs?null:ie.getPrimaries(T.colorSpace),tt=T.colorSpace===cs||Mt===Q?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,tt);let _t=T.isCompressedTexture||T.image[0].isCompressedTexture,N=T.image[0]&&T.image[0].isDataTexture,et=[];for(let Et=0;Et<6;Et++)!_t&&!N?et[Et]=_(T.image[Et],!0,r.maxCubemapSize):et[Et]=N?T.image[Et].image:T.image[Et],et[Et]=Dt(T,et[Et]);let j=et[0],vt=s.convert(T.format,T.colorSpace),dt=s.convert(T.type),xt=b(T.internalFormat,vt,dt,T.normalized,T.colorSpace),Nt=T.isVideoTexture!==!0,Kt=yt.__version===void 0||ut===!0,ht=nt.dataReady,Ut=w(T,j);K(e.TEXTURE_CUBE_MAP,T);let Jt;if(T.isDepthTexture){if(xt=x(T.format===ls,T.type),Kt)if(Nt)n.texStorage2D(e.TEXTURE_CUBE_MAP,1,xt,j.width,j.height);else for(let Et=0;Et<6;Et++)n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,j.width,j.height,0,vt,dt,null)}else if(_t){Nt&&Kt&&n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,j.width,j.height);for(let Et=0;Et<6;Et++){Jt=et[Et].mipmaps;for(let pe=0;pe<Jt.length;pe++){let je=Jt[pe];T.format!==tr?vt!==null?Nt?ht&&n.compressedTexSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,0,0,je.width,je.height,vt,je.data):n.compressedTexImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,xt,je.width,je.height,0,je.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,0,0,je.width,je.height,vt,dt,je.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,xt,je.width,je.height,0,vt,dt,je.data)}}}else{if(Jt=T.mipmaps,Nt&&Kt){Jt.length>0&&Ut++;let Et=zt(et[0]);n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,Et.width,Et.height)}for(let Et=0;Et<6;Et++)if(N){Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,0,0,et[Et].width,et[Et].height,vt,dt,et[Et].data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,et[Et].width,et[Et].height,0,vt,dt,et[Et].data);for(let pe=0;pe<Jt.length;pe++){let us=Jt[pe].image[Et].image;Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,0,0,us.width,us.height,vt,dt,us.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,xt,us.width,us.height,0,vt,dt,us.data)}}else{Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,0,0,vt,dt,et[Et]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,vt,dt,et[Et]);for(let pe=0;pe<Jt.length;pe++){let je=Jt[pe];Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,0,0,vt,dt,je.image[Et]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,xt,vt,dt,je.image[Et])}}}M(T)&&T.mipmapsAutoUpdate===!0&&v(e.TEXTURE_CUBE_MAP),yt.__version=nt.version,T.onUpdate&&T.onUpdate(T)}I.__version=T.version}function oe(I,T,H,ut,nt,yt){let Mt=s.convert(H.format,H.colorSpace),Q=s.convert(H.type),tt=b(H.internalFormat,Mt,Q,H.normalized,H.colorSpace),_t=i.get(T),N=i.get(H);if(N.__renderTarget=T,!_t.__hasExternalTextures){let et=Math.max(1,T.width>>yt),j=Math.max(1,T.height>>yt);nt===e.TEXTURE_3D||nt===e.TEXTURE_2D_ARRAY?n.texImage3D(nt,yt,tt,et,j,T.depth,0,Mt,Q,null):n.texImage2D(nt,yt,tt,et,j,0,Mt,Q,null)}n.bindFramebuffer(e.FRAMEBUFFER,I),mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,ut,nt,N.__webglTexture,0,Me(T)):(nt===e.TEXTURE_2D||nt>=e.TEXTURE_CUBE_MAP_POSITIVE_X&&nt<=e.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&e.framebufferTexture2D(e.FRAMEBUFFER,ut,nt,N.__webglTexture,yt),n.bindFramebuffer(e.FRAMEBUFFER,null)}function Ke(I,T,H){if(e.bindRenderbuffer(e.RENDERBUFFER,I),T.depthBuffer){let ut=T.depthTexture,nt=ut&&ut.isDepthTexture?ut.type:null,yt=x(T.stencilBuffer,nt),Mt=T.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Me(T),yt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Me(T),yt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,yt,T.width,T.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,Mt,e.RENDERBUFFER,I)}else{let ut=T.textures;for(let nt=0;nt<ut.length;nt++){let yt=ut[nt],Mt=s.convert(yt.format,yt.colorSpace),Q=s.convert(yt.type),tt=b(yt.internalFormat,Mt,Q,yt.normalized,yt.colorSpace);mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Me(T),tt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Me(T),tt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,tt,T.width,T.height)}}e.bindRenderbuffer(e.RENDERBUFFER,null)}function Ge(I,T,H){let ut=T.isWebGLCubeRenderTarget===!0;if(n.bindFramebuffer(e.FRAMEBUFFER,I),!(T.depthTexture&&T.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let nt=i.get(T.depthTexture);nt.__renderTarget=T;let yt=ut?T.depthTexture.image[0]:T.depthTexture.image;(!nt.__webglTexture||yt.width!==T.width||yt.height!==T.height)&&(yt.width=T.width,yt.height=T.height,T.depthTexture.needsUpdate=!0),ut?rt(T.depthTexture,0):at(T.depthTexture,0);let Mt=nt.__webglTexture,Q=Me(T),tt=ut?e.TEXTURE_CUBE_MAP_POSITIVE_X+H:e.TEXTURE_2D,_t=T.depthTexture.format===ls?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;if(T.depthTexture.format===es)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else if(T.depthTexture.format===ls)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function zn(I){let T=i.get(I),H=I.isWebGLCubeRenderTarget===!0;if(T.__boundDepthTexture!==I.depthTexture){let ut=I.depthTexture;if(T.__depthDisposeCallback&&T.__depthDisposeCallback(),ut){let nt=()=>{delete T.__boundDepthTexture,delete T.__depthDisposeCallback,ut.removeEventListener("dispose",nt)};ut.addEventListener("dispose",nt),T.__depthDisposeCallback=nt}T.__boundDepthTexture=ut}if(I.depthTexture&&!T.__autoAllocateDepthBuffer)if(H)for(let ut=0;ut<6;ut++)Ge(T.__webglFramebuffer[ut],I,ut);else I.texture.mipmaps.length>0?Ge(T.__webglFramebuffer[0],I,0):Ge(T.__webglFramebuffer,I,0);else if(H){T.__webglDepthbuffer=[];for(let ut=0;ut<6;ut++)if(n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[ut]),T.__webglDepthbuffer[ut]===void 0)T.__webglDepthbuffer[ut]=e.createRenderbuffer(),Ke(T.__webglDepthbuffer[ut],I,!1);else{let nt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer[ut];e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}}else if(I.texture.mipmaps.length>0?n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[0]):n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer),T.__webglDepthbuffer===void 0)T.__webglDepthbuffer=e.createRenderbuffer(),Ke(T.__webglDepthbuffer,I,!1);else{let nt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer;e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}n.bindFramebuffer(e.FRAMEBUFFER,null)}function An(I,T,H){let ut=i.get(I);T!==void 0&&oe(ut.__webglFramebuffer,I,I.texture,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,0),H!==void 0&&zn(I)}function Gn(I){let T=I.texture,H=i.get(I),ut=i.get(T);I.addEventListener("dispose",D),A(I);let nt=I.textures,yt=I.isWebGLCubeRenderTarget===!0,Mt=nt.length>1;if(Mt||(ut.__webglTexture===void 0&&(ut.__webglTexture=e.createTexture()),ut.__version=T.version,o.memory.textures++),yt){H.__webglFramebuffer=[];for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0){H.__webglFramebuffer[Q]=[];for(let tt=0;tt<T.mipmaps.length;tt++)H.__webglFramebuffer[Q][tt]=e.createFramebuffer()}else H.__webglFramebuffer[Q]=e.createFramebuffer()}else{if(T.mipmaps.length>0){H.__webglFramebuffer=[];for(let Q=0;Q<T.mipmaps.length;Q++)H.__webglFramebuffer[Q]=e.createFramebuffer()}else H.__webglFramebuffer=e.createFramebuffer();if(Mt)for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=i.get(nt[Q]);_t.__webglTexture===void 0&&(_t.__webglTexture=e.createTexture(),o.memory.textures++)}if(I.samples>0&&mt(I)===!1){H.__webglMultisampledFramebuffer=e.createFramebuffer(),H.__webglColorRenderbuffer=[],n.bindFramebuffer(e.FRAMEBUFFER,H.__webglMultisampledFramebuffer);for(let Q=0;Q<nt.length;Q++){let tt=nt[Q];H.__webglColorRenderbuffer[Q]=e.createRenderbuffer(),e.bindRenderbuffer(e.RENDERBUFFER,H.__webglColorRenderbuffer[Q]);let _t=s.convert(tt.format,tt.colorSpace),N=s.convert(tt.type),et=b(tt.internalFormat,_t,N,tt.normalized,tt.colorSpace,I.isXRRenderTarget===!0),j=Me(I);e.renderbufferStorageMultisample(e.RENDERBUFFER,j,et,I.width,I.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+Q,e.RENDERBUFFER,H.__webglColorRenderbuffer[Q])}e.bindRenderbuffer(e.RENDERBUFFER,null),I.depthBuffer&&(H.__webglDepthRenderbuffer=e.createRenderbuffer(),Ke(H.__webglDepthRenderbuffer,I,!0)),n.bindFramebuffer(e.FRAMEBUFFER,null)}}if(yt){n.bindTexture(e.TEXTURE_CUBE_MAP,ut.__webglTexture),K(e.TEXTURE_CUBE_MAP,T);for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[Q][tt],I,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,tt);else oe(H.__webglFramebuffer[Q],I,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,0);M(T)?v(e.TEXTURE_CUBE_MAP):T.mipmaps.length>0&&e.texParameteri(e.TEXTURE_CUBE_MAP,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}else if(Mt){for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=nt[Q],N=i.get(_t),et=e.TEXTURE_2D;(I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(et=I.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(et,N.__webglTexture),K(et,_t),oe(H.__webglFramebuffer,I,_t,e.COLOR_ATTACHMENT0+Q,et,0),M(_t)&&v(et)}n.unbindTexture()}else{let Q=e.TEXTURE_2D;if((I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(Q=I.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(Q,ut.__webglTexture),K(Q,T),T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[tt],I,T,e.COLOR_ATTACHMENT0,Q,tt);else oe(H.__webglFramebuffer,I,T,e.COLOR_ATTACHMENT0,Q,0);M(T)?v(Q):T.mipmaps.length>0&&e.texParameteri(Q,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}I.depthBuffer&&zn(I)}function G(I){let T=I.textures;for(let H=0,ut=T.length;H<ut;H++){let nt=T[H];if(M(nt)&&nt.mipmapsAutoUpdate===!0){let yt=S(I),Mt=i.get(nt).__webglTexture;n.bindTexture(yt,Mt),v(yt),n.unbindTexture()}}}let Vn=[];function be(I){if(I.samples>0){if(mt(I)===!1){let T=I.textures,H=I.width,ut=I.height,nt=e.COLOR_BUFFER_BIT,yt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,Mt=i.get(I),Q=T.length>1;if(Q)for(let _t=0;_t<T.length;_t++)n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,null),n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,null,0);n.bindFramebuffer(e.READ_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),I.texture.mipmaps.length>0?n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer[0]):n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer);for(let _t=0;_t<T.length;_t++){if(I.resolveDepthBuffer&&(I.depthBuffer&&(nt|=e.DEPTH_BUFFER_BIT),I.stencilBuffer&&I.resolveStencilBuffer&&(nt|=e.STENCIL_BUFFER_BIT)),Q){e.framebufferRenderbuffer(e.READ_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,N,0)}e.blitFramebuffer(0,0,H,ut,0,0,H,ut,nt,e.NEAREST),l===!0&&(Vn.length=0,Vn.push(e.COLOR_ATTACHMENT0+_t),I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&Vn.push(yt),e.invalidateFramebuffer(e.READ_FRAMEBUFFER,Vn))}if(n.bindFramebuffer(e.READ_FRAMEBUFFER,null),n.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),Q)for(let _t=0;_t<T.length;_t++){n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,N,0)}n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer)}else if(I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&l){let T=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;e.invalidateFramebuffer(e.DRAW_FRAMEBUFFER,[T])}}}function Me(I){return Math.min(r.maxSamples,I.samples)}function mt(I){let T=i.get(I);return I.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&T.__useRenderToTexture!==!1}function Re(I){let T=o.render.frame;u.get(I)!==T&&(u.set(I,T),I.update())}function Dt(I,T){let H=I.colorSpace,ut=I.format,nt=I.type;return I.isCompressedTexture===!0||I.isVideoTexture===!0||H!==Hc&&H!==cs&&(ie.getTransfer(H)===he?(ut!==tr||nt!==Jn)&&Ft("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):Gt("WebGLTextures: Unsupported texture color space:",H)),T}function zt(I){return typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement?(c.width=I.naturalWidth||I.width,c.height=I.naturalHeight||I.height):typeof VideoFrame<"u"&&I instanceof VideoFrame?(c.width=I.displayWidth,c.height=I.displayHeight):(c.width=I.width,c.height=I.height),c}this.allocateTextureUnit=lt,this.resetTextureUnits=V,this.getTextureUnits=q,this.setTextureUnits=st,this.setTexture2D=at,this.setTexture2DArray=ft,this.setTexture3D=ot,this.setTextureCube=rt,this.rebindTextures=An,this.setupRenderTarget=Gn,this.updateRenderTargetMipmap=G,this.updateMultisampleRenderTarget=be,this.setupDepthRenderbuffer=zn,this.setupFrameBufferTexture=oe,this.useMultisampledRTT=mt,this.dispose=L}function z6(e,t){function n(i,r=cs){let s,o=ie.getTransfer(r);if(i===Jn)return e.UNSIGNED_BYTE;if(i===qd)return e.UNSIGNED_SHORT_4_4_4_4;if(i===Yd)return e.UNSIGNED_SHORT_5_5_5_1;if(i===v_)return e.UNSIGNED_INT_5_9_9_9_REV;if(i===b_)return e.UNSIGNED_INT_10F_11F_11F_REV;if(i===x_)return e.BYTE;if(i===__)return e.SHORT;if(i===Rl)return e.UNSIGNED_SHORT;if(i===Xd)return e.INT;if(i===Ki)return e.UNSIGNED_INT;if(i===ji)return e.FLOAT;if(i===Qi)return e.HALF_FLOAT;if(i===M_)return e.ALPHA;if(i===S_)return e.RGB;if(i===tr)return e.RGBA;if(i===es)return e.DEPTH_COMPONENT;if(i===ls)return e.DEPTH_STENCIL;if(i===w_)return e.RED;if(i===Zd)return e.RED_INTEGER;if(i===qs)return e.RG;if(i===Jd)return e.RG_INTEGER;if(i===Kd)return e.RGBA_INTEGER;if(i===du||i===pu||i===mu||i===gu)if(o===he)if(s=t.get("WEBGL_compressed_texture_s3tc_srgb"),s!==null){if(i===du)return s.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(i===pu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(i===mu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(i===gu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(s=t.get("WEBGL_compressed_texture_s3tc"),s!==null){if(i===du)return s.COMPRESSED_RGB_S3TC_DXT1_EXT;if(i===pu)return s.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(i===mu)return s.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(i===gu)return s.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(i===jd||i===Qd||i===tp||i===ep)if(s=t.get("WEBGL_compressed_texture_pvrtc"),s!==null){if(i===jd)return s.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(i===Qd)return s.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(i===tp)return s.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(i===ep)return s.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(i===np||i===ip||i===rp||i===sp||i===op||i===yu||i===ap)if(s=t.get("WEBGL_compressed_texture_etc"),s!==null){if(i===np||i===ip)return o===he?s.COMPRESSED_SRGB8_ETC2:s.COMPRESSED_RGB8_ETC2;if(i===rp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:s.COMPRESSED_RGBA8_ETC2_EAC;if(i===sp)return s.COMPRESSED_R11_EAC;if(i===op)return s.COMPRESSED_SIGNED_R11_EAC;if(i===yu)return s.COMPRESSED_RG11_EAC;if(i===ap)return s.COMPRESSED_SIGNED_RG11_EAC}else return null;if(i===lp||i===cp||i===up||i===fp||i===hp||i===dp||i===pp||i===mp||i===gp||i===yp||i===xp||i===_p||i===vp||i===bp)if(s=t.get("WEBGL_compressed_texture_astc"),s!==null){if(i===lp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:s.COMPRESSED_RGBA_ASTC_4x4_KHR;if(i===cp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:s.COMPRESSED_RGBA_ASTC_5x4_KHR;if(i===up)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:s.COMPRESSED_RGBA_ASTC_5x5_KHR;if(i===fp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:s.COMPRESSED_RGBA_ASTC_6x5_KHR;if(i===hp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:s.COMPRESSED_RGBA_ASTC_6x6_KHR;if(i===dp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:s.COMPRESSED_RGBA_ASTC_8x5_KHR;if(i===pp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:s.COMPRESSED_RGBA_ASTC_8x6_KHR;if(i===mp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:s.COMPRESSED_RGBA_ASTC_8x8_KHR;if(i===gp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:s.COMPRESSED_RGBA_ASTC_10x5_KHR;if(i===yp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:s.COMPRESSED_RGBA_ASTC_10x6_KHR;if(i===xp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:s.COMPRESSED_RGBA_ASTC_10x8_KHR;if(i===_p)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:s.COMPRESSED_RGBA_ASTC_10x10_KHR;if(i===vp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:s.COMPRESSED_RGBA_ASTC_12x10_KHR;if(i===bp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:s.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(i===Mp||i===Sp||i===wp)if(s=t.get("EXT_texture_compression_bptc"),s!==null){if(i===Mp)return o===he?s.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:s.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(i===Sp)return s.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(i===wp)return s.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(i===Tp||i===Ep||i===xu||i===Ap)if(s=t.get("EXT_texture_compression_rgtc"),s!==null){if(i===Tp)return s.COMPRESSED_RED_RGTC1_EXT;if(i===Ep)return s.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(i===xu)return s.COMPRESSED_RED_GREEN_RGTC2_EXT;if(i===Ap)return s.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return i===Yo?e.UNSIGNED_INT_24_8:e[i]!==void 0?e[i]:null}return{convert:n}}var G6=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,V6=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,X_=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,n){if(this.texture===null){let i=new tu(t.texture);(t.depthNear!==n.depthNear||t.depthFar!==n.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=i}}getMesh(t){if(this.texture!==null&&this.mesh===null){let n=t.cameras[0].viewport,i=new Pi({vertexShader:G6,fragmentShader:V6,uniforms:{depthColor:{value:this.texture},depthWidth:{value:n.z},depthHeight:{value:n.w}}});this.mesh=new Tn(new eu(20,20),i)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},q_=class extends qi{constructor(t,n){super();let i=this,r=null,s=1,o=null,a="local-floor",l=1,c=null,u=null,h=null,f=null,d=null,p=null,y=typeof XRWebGLBinding<"u",m=new X_,g={},_=n.getContextAttributes(),M=null,v=null,S=[],b=[],x=new Bt,w=null,A=null,C=new oi;C.viewport=new de;let R=new oi;R.viewport=new de;let D=[C,R],k=new Gd,P=null,L=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function($){let at=S[$];return at===void 0&&(at=new vl,S[$]=at),at.getTargetRaySpace()},this.getControllerGrip=function($){let at=S[$];return at===void 0&&(at=new vl,S[$]=at),at.getGripSpace()},this.getHand=function($){let at=S[$];return at===void 0&&(at=new vl,S[$]=at),at.getHandSpace()};function z($){let at=b.indexOf($.inputSource);if(at===-1)return;let ft=S[at];ft!==void 0&&(ft.update($.inputSource,$.frame,c||o),ft.dispatchEvent({type:$.type,data:$.inputSource}))}function U(){r.removeEventListener("select",z),r.removeEventListener("selectstart",z),r.removeEventListener("selectend",z),r.removeEventListener("squeeze",z),r.removeEventListener("squeezestart",z),r.removeEventListener("squeezeend",z),r.removeEventListener("end",U),r.removeEventListener("inputsourceschange",Z);for(let $=0;$<S.length;$++){let at=b[$];at!==null&&(b[$]=null,S[$].disconnect(at))}P=null,L=null,m.reset();for(let $ in g)delete g[$];if(t.setRenderTarget(M),d=null,f=null,h=null,r=null,v=null,lt.stop(),i.isPresenting=!1,t.setPixelRatio(w),t.setSize(x.width,x.height,!1),A!==null){let $=A.camera;$.fov=A.fov,$.zoom=A.zoom,$.updateProjectionMatrix(),A=null}i.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function($){s=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function($){a=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function($){c=$},this.getBaseLayer=function(){return f!==null?f:d},this.getBinding=function(){return h===null&&y&&(h=new XRWebGLBinding(r,n)),h},this.getFrame=function(){return p},this.getSession=function(){return r},this.setSession=async function($){if(r=$,r!==null){if(M=t.getRenderTarget(),r.addEventListener("select",z),r.addEventListener("selectstart",z),r.addEventListener("selectend",z),r.addEventListener("squeeze",z),r.addEventListener("squeezestart",z),r.addEventListener("squeezeend",z),r.addEventListener("end",U),r.addEventListener("inputsourceschange",Z),_.xrCompatible!==!0&&await n.makeXRCompatible(),w=t.getPixelRatio(),t.getSize(x),y&&"createProjectionLayer"in XRWebGLBinding.prototype){let ft=null,ot=null,rt=null;_.depth&&(rt=_.stencil?n.DEPTH24_STENCIL8:n.DEPTH_COMPONENT24,ft=_.stencil?ls:es,ot=_.stencil?Yo:Ki);let J={colorFormat:n.RGBA8,depthFormat:rt,scaleFactor:s};h=this.getBinding(),f=h.createProjectionLayer(J),r.updateRenderState({layers:[f]}),t.setPixelRatio(1),t.setSize(f.textureWidth,f.textureHeight,!1),v=new li(f.textureWidth,f.textureHeight,{format:tr,type:Jn,depthTexture:new ss(f.textureWidth,f.textureHeight,ot,void 0,void 0,void 0,void 0,void 0,void 0,ft),stencilBuffer:_.stencil,colorSpace:t.outputColorSpace,samples:_.antialias?4:0,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}else{let ft={antialias:_.antialias,alpha:!0,depth:_.depth,stencil:_.stencil,framebufferScaleFactor:s};d=new XRWebGLLayer(r,n,ft),r.updateRenderState({baseLayer:d}),t.setPixelRatio(1),t.setSize(d.framebufferWidth,d.framebufferHeight,!1),v=new li(d.framebufferWidth,d.framebufferHeight,{format:tr,type:Jn,colorSpace:t.outputColorSpace,stencilBuffer:_.stencil,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}v.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await r.requestReferenceSpace(a),lt.setContext(r),lt.start(),i.isPresenting=!0,i.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(r!==null)return r.environmentBlendMode},this.getDepthTexture=function(){return m.getDepthTexture()};function Z($){for(let at=0;at<$.removed.length;at++){let ft=$.removed[at],ot=b.indexOf(ft);ot>=0&&(b[ot]=null,S[ot].disconnect(ft))}for(let at=0;at<$.added.length;at++){let ft=$.added[at],ot=b.indexOf(ft);if(ot===-1){for(let J=0;J<S.length;J++)if(J>=b.length){b.push(ft),ot=J;break}else if(b[J]===null){b[J]=ft,ot=J;break}if(ot===-1)break}let rt=S[ot];rt&&rt.connect(ft)}}function F($,at){at===null?$.matrixWorld.copy($.matrix):$.matrixWorld.multiplyMatrices(at.matrixWorld,$.matrix),$.matrixWorldInverse.copy($.matrixWorld).invert()}this.updateCamera=function($){if(r===null)return;let at=$.near,ft=$.far;m.texture!==null&&(m.depthNear>0&&(at=m.depthNear),m.depthFar>0&&(ft=m.depthFar)),k.near=R.near=C.near=at,k.far=R.far=C.far=ft,(P!==k.near||L!==k.far)&&(r.updateRenderState({depthNear:k.near,depthFar:k.far}),P=k.near,L=k.far),k.layers.mask=$.layers.mask|6,C.layers.mask=k.layers.mask&-5,R.layers.mask=k.layers.mask&-3;let ot=$.parent,rt=k.cameras;F(k,ot);for(let J=0;J<rt.length;J++)F(rt[J],ot);k.projectionMatrix.copy(C.projectionMatrix),k.projectionMatrixInverse.copy(C.projectionMatrixInverse),A===null&&$.isPerspectiveCamera&&(A={camera:$,fov:$.fov,zoom:$.zoom}),V($,k,ot)};function V($,at,ft){ft===null?$.matrix.copy(at.matrixWorld):($.matrix.copy(ft.matrixWorld),$.matrix.invert(),$.matrix.multiply(at.matrixWorld)),$.matrix.decompose($.position,$.quaternion,$.scale),$.updateMatrixWorld(!0),$.projectionMatrix.copy(at.projectionMatrix),$.projectionMatrixInverse.copy(at.projectionMatrixInverse),$.isPerspectiveCamera&&($.fov=xl*2*Math.atan(1/$.projectionMatrix.elements[5]),$.zoom=1)}this.getCamera=function(){return k},this.getFoveation=function(){if(!(f===null&&d===null))return l},this.setFoveation=function($){l=$,f!==null&&(f.fixedFoveation=$),d!==null&&d.fixedFoveation!==void 0&&(d.fixedFoveation=$)},this.hasDepthSensing=function(){return m.texture!==null},this.getDepthSensingMesh=function(){return m.getMesh(k)},this.getCameraTexture=function($){return g[$]};let q=null;function st($,at){if(u=at.getViewerPose(c||o),p=at,u!==null){let ft=u.views;d!==null&&(t.setRenderTargetFramebuffer(v,d.framebuffer),t.setRenderTarget(v));let ot=!1;ft.length!==k.cameras.length&&(k.cameras.length=0,ot=!0);for(let ct=0;ct<ft.length;ct++){let K=ft[ct],It=null;if(d!==null)It=d.getViewport(K);else{let Ot=h.getViewSubImage(f,K);It=Ot.viewport,ct===0&&(t.setRenderTargetTextures(v,Ot.colorTexture,Ot.depthStencilTexture),t.setRenderTarget(v))}let pt=D[ct];pt===void 0&&(pt=new oi,pt.layers.enable(ct),pt.viewport=new de,D[ct]=pt),pt.matrix.fromArray(K.transform.matrix),pt.matrix.decompose(pt.position,pt.quaternion,pt.scale),pt.projectionMatrix.fromArray(K.projectionMatrix),pt.projectionMatrixInverse.copy(pt.projectionMatrix).invert(),pt.viewport.set(It.x,It.y,It.width,It.height),ct===0&&(k.matrix.copy(pt.matrix),k.matrix.decompose(k.position,k.quaternion,k.scale)),ot===!0&&k.cameras.push(pt)}let rt=r.enabledFeatures;if(rt&&rt.includes("depth-sensing")&&r.depthUsage=="gpu-optimized"&&y){h=i.getBinding();let ct=h.getDepthInformation(ft[0]);ct&&ct.isValid&&ct.texture&&m.init(ct,r.renderState)}if(rt&&rt.includes("camera-access")&&y){t.state.unbindTexture(),h=i.getBinding();for(let ct=0;ct<ft.length;ct++){let K=ft[ct].camera;if(K){let It=g[K];It||(It=new tu,g[K]=It);let pt=h.getCameraImage(K);It.sourceTexture=pt}}}}for(let ft=0;ft<S.length;ft++){let ot=b[ft],rt=S[ft];ot!==null&&rt!==void 0&&rt.update(ot,at,c||o)}q&&q($,at),at.detectedPlanes&&i.dispatchEvent({type:"planesdetected",data:at}),p=null}let lt=new r3;lt.setAnimationLoop(st),this.setAnimationLoop=function($){q=$},this.dispose=function(){}}},H6=new ve,p3=new Vt;p3.set(-1,0,0,0,1,0,0,0,1);function W6(e,t){function n(m,g){m.matrixAutoUpdate===!0&&m.updateMatrix(),g.value.copy(m.matrix)}function i(m,g){g.color.getRGB(m.fogColor.value,N_(e)),g.isFog?(m.fogNear.value=g.near,m.fogFar.value=g.far):g.isFogExp2&&(m.fogDensity.value=g.density)}function r(m,g,_,M,v){g.isNodeMaterial?g.uniformsNeedUpdate=!1:g.isMeshBasicMaterial?s(m,g):g.isMeshLambertMaterial?(s(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshToonMaterial?(s(m,g),h(m,g)):g.isMeshPhongMaterial?(s(m,g),u(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshStandardMaterial?(s(m,g),f(m,g),g.isMeshPhysicalMaterial&&d(m,g,v)):g.isMeshMatcapMaterial?(s(m,g),p(m,g)):g.isMeshDepthMaterial?s(m,g):g.isMeshDistanceMaterial?(s(m,g),y(m,g)):g.isMeshNormalMaterial?s(m,g):g.isLineBasicMaterial?(o(m,g),g.isLineDashedMaterial&&a(m,g)):g.isPointsMaterial?l(m,g,_,M):g.isSpriteMaterial?c(m,g):g.isShadowMaterial?(m.color.value.copy(g.color),m.opacity.value=g.opacity):g.isShaderMaterial&&(g.uniformsNeedUpdate=!1)}function s(m,g){m.opacity.value=g.opacity,g.color&&m.diffuse.value.copy(g.color),g.emissive&&m.emissive.value.copy(g.emissive).multiplyScalar(g.emissiveIntensity),g.map&&(m.map.value=g.map,n(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,n(g.alphaMap,m.alphaMapTransform)),g.bumpMap&&(m.bumpMap.value=g.bumpMap,n(g.bumpMap,m.bumpMapTransform),m.bumpScale.value=g.bumpScale,g.side===Bn&&(m.bumpScale.value*=-1)),g.normalMap&&(m.normalMap.value=g.normalMap,n(g.normalMap,m.normalMapTransform),m.normalScale.value.copy(g.normalScale),g.side===Bn&&m.normalScale.value.negate()),g.displacementMap&&(m.displacementMap.value=g.displacementMap,n(g.displacementMap,m.displacementMapTransform),m.displacementScale.value=g.displacementScale,m.displacementBias.value=g.displacementBias),g.emissiveMap&&(m.emissiveMap.value=g.emissiveMap,n(g.emissiveMap,m.emissiveMapTransform)),g.specularMap&&(m.specularMap.value=g.specularMap,n(g.specularMap,m.specularMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest);let _=t.get(g),M=_.envMap,v=_.envMapRotation;M&&(m.envMap.value=M,m.envMapRotation.value.setFromMatrix4(H6.makeRotationFromEuler(v)).transpose(),M.isCubeTexture&&M.isRenderTargetTexture===!1&&m.envMapRotation.value.premultiply(p3),m.reflectivity.value=g.reflectivity,m.ior.value=g.ior,m.refractionRatio.value=g.refractionRatio),g.lightMap&&(m.lightMap.value=g.lightMap,m.lightMapIntensity.value=g.lightMapIntensity,n(g.lightMap,m.lightMapTransform)),g.aoMap&&(m.aoMap.value=g.aoMap,m.aoMapIntensity.value=g.aoMapIntensity,n(g.aoMap,m.aoMapTransform))}function o(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,g.map&&(m.map.value=g.map,n(g.map,m.mapTransform))}function a(m,g){m.dashSize.value=g.dashSize,m.totalSize.value=g.dashSize+g.gapSize,m.scale.value=g.scale}function l(m,g,_,M){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.size.value=g.size*_,m.scale.value=M*.5,g.map&&(m.map.value=g.map,n(g.map,m.uvTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,n(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function c(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.rotation.value=g.rotation,g.map&&(m.map.value=g.map,n(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,n(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function u(m,g){m.specular.value.copy(g.specular),m.shininess.value=Math.max(g.shininess,1e-4)}function h(m,g){g.gradientMap&&(m.gradientMap.value=g.gradientMap)}function f(m,g){m.metalness.value=g.metalness,g.metalnessMap&&(m.metalnessMap.value=g.metalnessMap,n(g.metalnessMap,m.metalnessMapTransform)),m.roughness.value=g.roughness,g.roughnessMap&&(m.roughnessMap.value=g.roughnessMap,n(g.roughnessMap,m.roughnessMapTransform)),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)}function d(m,g,_){m.ior.value=g.ior,g.diffuseRoughness>0&&(m.diffuseRoughness.value=g.diffuseRoughness,g.diffuseRoughnessMap&&(m.diffuseRoughnessMap.value=g.diffuseRoughnessMap,n(g.diffuseRoughnessMap,m.diffuseRoughnessMapTransform))),g.sheen>0&&(m.sheenColor.value.copy(g.sheenColor).multiplyScalar(g.sheen),m.sheenRoughness.value=g.sheenRoughness,g.sheenColorMap&&(m.sheenColorMap.value=g.sheenColorMap,n(g.sheenColorMap,m.sheenColorMapTransform)),g.sheenRoughnessMap&&(m.sheenRoughnessMap.value=g.sheenRoughnessMap,n(g.sheenRoughnessMap,m.sheenRoughnessMapTransform))),g.clearcoat>0&&(m.clearcoat.value=g.clearcoat,m.clearcoatRoughness.value=g.clearcoatRoughness,g.clearcoatMap&&(m.clearcoatMap.value=g.clearcoatMap,n(g.clearcoatMap,m.clearcoatMapTransform)),g.clearcoatRoughnessMap&&(m.clearcoatRoughnessMap.value=g.clearcoatRoughnessMap,n(g.clearcoatRoughnessMap,m.clearcoatRoughnessMapTransform)),g.clearcoatNormalMap&&(m.clearcoatNormalMap.value=g.clearcoatNormalMap,n(g.clearcoatNormalMap,m.clearcoatNormalMapTransform),m.clearcoatNormalScale.value.copy(g.clearcoatNormalScale),g.side===Bn&&m.clearcoatNormalScale.value.negate())),g.dispersion>0&&(m.dispersion.value=g.dispersion),g.retroreflectivity>0&&(m.retroreflectivity.value=g.retroreflectivity),g.iridescence>0&&(m.iridescence.value=g.iridescence,m.iridescenceIOR.value=g.iridescenceIOR,m.iridescenceThicknessMinimum.value=g.iridescenceThicknessMinimum,m.iridescenceThicknessMaximum.value=g.iridescenceThicknessMaximum,g.iridescenceMap&&(m.iridescenceMap.value=g.iridescenceMap,n(g.iridescenceMap,m.iridescenceMapTransform)),g.iridescenceThicknessMap&&(m.iridescenceThicknessMap.value=g.iridescenceThicknessMap,n(g.iridescenceThicknessMap,m.iridescenceThicknessMapTransform))),g.transmission>0&&(m.transmission.value=g.transmission,m.transmissionSamplerMap.value=_.texture,m.transmissionSamplerSize.value.set(_.width,_.height),g.transmissionMap&&(m.transmissionMap.value=g.transmissionMap,n(g.transmissionMap,m.transmissionMapTransform)),m.thickness.value=g.thickness,g.thicknessMap&&(m.thicknessMap.value=g.thicknessMap,n(g.thicknessMap,m.thicknessMapTransform)),m.attenuationDistance.value=g.attenuationDistance,m.attenuationColor.value.copy(g.attenuationColor)),g.anisotropy>0&&(m.anisotropyVector.value.set(g.anisotropy*Math.cos(g.anisotropyRotation),g.anisotropy*Math.sin(g.anisotropyRotation)),g.anisotropyMap&&(m.anisotropyMap.value=g.anisotropyMap,n(g.anisotropyMap,m.anisotropyMapTransform))),m.specularIntensity.value=g.specularIntensity,m.specularColor.value.copy(g.specularColor),g.specularColorMap&&(m.specularColorMap.value=g.specularColorMap,n(g.specularColorMap,m.specularColorMapTransform)),g.specularIntensityMap&&(m.specularIntensityMap.value=g.specularIntensityMap,n(g.specularIntensityMap,m.specularIntensityMapTransform))}function p(m,g){g.matcap&&(m.matcap.value=g.matcap)}function y(m,g){let _=t.get(g).light;m.referencePosition.value.setFromMatrixPosition(_.matrixWorld),m.nearDistance.value=_.shadow.camera.near,m.farDistance.value=_.shadow.camera.far}return{refreshFogUniforms:i,refreshMaterialUniforms:r}}function $6(e,t,n,i){let r={},s={};function o(_,M){let v=M.program;i.uniformBlockBinding(_,v,r[_.id])}function a(_,M){let v=r[_.id];v===void 0&&(p(_),v=l(_),r[_.id]=v,_.addEventListener("dispose",m));let S=M.program;i.updateUBOMapping(_,S);let b=t.render.frame;s[_.id]!==b&&(c(_),s[_.id]=b)}function l(_){let M=e.createBuffer(),v=_.__size,S=_.usage;return e.bindBuffer(e.UNIFORM_BUFFER,M),e.bufferData(e.UNIFORM_BUFFER,v,S),e.bindBuffer(e.UNIFORM_BUFFER,null),M}function c(_){let M=r[_.id],v=_.uniforms,S=_.__cache;e.bindBuffer(e.UNIFORM_BUFFER,M);for(let b=0,x=v.length;b<x;b++){let w=v[b];if(Array.isArray(w))for(let A=0,C=w.length;A<C;A++)u(w[A],b,A,S);else u(w,b,0,S)}e.bindBuffer(e.UNIFORM_BUFFER,null)}function u(_,M,v,S){if(f(_,M,v,S)===!0){let b=_.__offset,x=_.value;if(Array.isArray(x)){let w=0;for(let A=0;A<x.length;A++){let C=x[A],R=y(C,!0);h(C,_.__data,w),w+=R.storage/Float32Array.BYTES_PER_ELEMENT}}else h(x,_.__data,0);e.bufferSubData(e.UNIFORM_BUFFER,b,_.__data)}}function h(_,M,v){typeof _=="number"||typeof _=="boolean"?M[v]=_:_.isMatrix3?(M[v]=_.elements[0],M[v+1]=_.elements[1],M[v+2]=_.elements[2],M[v+3]=0,M[v+4]=_.elements[3],M[v+5]=_.elements[4],M[v+6]=_.elements[5],M[v+7]=0,M[v+8]=_.elements[6],M[v+9]=_.elements[7],M[v+10]=_.elements[8],M[v+11]=0):ArrayBuffer.isView(_)?M.set(_.subarray(0,M.length-v),v):_.toArray(M,v)}function f(_,M,v,S){let b=_.value,x=M+"_"+v;if(Array.isArray(b)){S[x]===void 0&&(S[x]=[]);let w=S[x],A=!1;for(let C=0;C<b.length;C++)d(b[C],w,C)===!0&&(A=!0);return A}return d(b,S,x)}function d(_,M,v){if(M[v]===void 0)return typeof _=="number"||typeof _=="boolean"?M[v]=_:ArrayBuffer.isView(_)?M[v]=_.slice():M[v]=_.clone(),!0;{let S=M[v];if(typeof _=="number"||typeof _=="boolean"){if(S!==_)return M[v]=_,!0}else{if(ArrayBuffer.isView(_))return!0;if(S.equals(_)===!1)return S.copy(_),!0}}return!1}function p(_){let M=_.uniforms,v=0,S=16;for(let x=0,w=M.length;x<w;x++){let A=Array.isArray(M[x])?M[x]:[M[x]];for(let C=0,R=A.length;C<R;C++){let D=A[C],k=Array.isArray(D.value)?D.value:[D.value],P=Array.isArray(M[x])||Array.isArray(D.value),L=v;for(let U=0,Z=k.length;U<Z;U++){let F=k[U],V=y(F,P),q=v%S,st=q%V.boundary,lt=q+st;v+=st,lt!==0&&S-lt<V.storage&&(v+=S-lt),U===0&&(L=v),v+=V.storage}let z=D.type==="int"?Int32Array:D.type==="uint"?Uint32Array:Float32Array;D.__data=new z((v-L)/Float32Array.BYTES_PER_ELEMENT),D.__offset=L}}let b=v%S;return b>0&&(v+=S-b),_.__size=v,_.__cache={},this}function y(_,M){let v={boundary:0,storage:0};return typeof _=="number"||typeof _=="boolean"?(v.boundary=4,v.storage=4):_.isVector2?(v.boundary=8,v.storage=8):_.isVector3||_.isColor?(v.boundary=16,v.storage=12):_.isVector4?(v.boundary=16,v.storage=16):_.isMatrix3?(v.boundary=16,v.storage=48):_.isMatrix4?(v.boundary=16,v.storage=64):_.isTexture?Ft("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(_)?(v.boundary=16,v.storage=_.byteLength):Ft("WebGLRenderer: Unsupported uniform value type.",_),M===!0&&(v.boundary=16,v.storage=Math.ceil(v.storage/16)*16),v}function m(_){let M=_.target;M.removeEventListener("dispose",m),e.deleteBuffer(r[M.id]),delete r[M.id],delete s[M.id]}function g(){for(let _ in r)e.deleteBuffer(r[_]);r={},s={}}return{bind:o,update:a,dispose:g}}var X6=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Sr=null;function q6(){return Sr===null&&(Sr=new Md(X6,16,16,qs,Qi),Sr.name="DFG_LUT",Sr.minFilter=On,Sr.magFilter=On,Sr.wrapS=br,Sr.wrapT=br,Sr.generateMipmaps=!1,Sr.needsUpdate=!0),Sr}var Dp=class{constructor(t={}){let{canvas:n=P2(),context:i=null,depth:r=!0,stencil:s=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:f=!1,outputBufferType:d=Jn}=t;this.isWebGLRenderer=!0;let p;if(i!==null){if(typeof WebGLRenderingContext<"u"&&i instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=i.getContextAttributes().alpha}else p=o;let y=d,m=new Set([Kd,Jd,Zd]),g=new Set([Jn,Ki,Rl,Yo,qd,Yd]),_=new Uint32Array(4),M=new Int32Array(4),v={textures:[],min:[],max:[],resolution:[]},S=null,b=null,x=[],w=[],A=null;this.domElement=n,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Mr,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let C=this,R=!1,D=null,k=null,P=null,L=null;this._outputColorSpace=ri;let z=0,U=0,Z=null,F=-1,V=null,q=new de,st=new de,lt=null,$=new kt(0),at=0,ft=n.width,ot=n.height,rt=1,J=null,gt=null,ct=new de(0,0,ft,ot),K=new de(0,0,ft,ot),It=!1,pt=new ks,Ot=new Sd,Ht=!1,le=!1,oe=new ve,Ke=new B,Ge=new de,zn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},An=!1;function Gn(){return Z===null?rt:1}let G=i;function Vn(E,O){return n.getContext(E,O)}let be,Me,mt,Re,Dt,zt,I,T,H,ut,nt,yt,Mt,Q,tt,_t,N,et,j,vt,dt,xt,Nt;try{let E={alpha:!0,depth:r,stencil:s,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in n&&n.setAttribute("data-engine",`three.js r${"187"}`),n.addEventListener("webglcontextlost",Ut,!1),n.addEventListener("webglcontextrestored",Jt,!1),n.addEventListener("webglcontextcreationerror",Et,!1),G===null){let O="webgl2";if(G=Vn(O,E),G===null)throw Vn(O)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Kt()}catch(E){throw n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Jt,!1),n.removeEventListener("webglcontextcreationerror",Et,!1),Gt("WebGLRenderer: "+E.message),E}function Kt(){be=new rB(G),be.init(),dt=new z6(G,be),Me=new q5(G,be,t,dt),mt=new B6(G,be),Me.reversedDepthBuffer&&f&&mt.buffers.depth.setReversed(!0),k=G.createFramebuffer(),P=G.createFramebuffer(),L=G.createFramebuffer(),Re=new aB(G),Dt=new w6,zt=new k6(G,be,mt,Dt,Me,dt,Re),I=new iB(C),T=new cO(G),xt=new $5(G,T),H=new sB(G,T,Re,xt),ut=new cB(G,H,T,xt,Re),et=new lB(G,Me,zt),tt=new Y5(Dt),nt=new S6(C,I,be,Me,xt,tt),yt=new W6(C,Dt),Mt=new E6,Q=new L6(be),N=new W5(C,I,mt,ut,p,l),_t=new O6(C,ut,Me),Nt=new $6(G,Re,Me,mt),j=new X5(G,be,Re),vt=new oB(G,be,Re),Re.programs=nt.programs,C.capabilities=Me,C.extensions=be,C.properties=Dt,C.renderLists=Mt,C.shadowMap=_t,C.state=mt,C.info=Re}y!==Jn&&(A=new fB(y,n.width,n.height,a,r,s));let ht=new q_(C,G);this.xr=ht,this.getContext=function(){return G},this.getContextAttributes=function(){return G.getContextAttributes()},this.forceContextLoss=function(){let E=be.get("WEBGL_lose_context");E&&E.loseContext()},this.forceContextRestore=function(){let E=be.get("WEBGL_lose_context");E&&E.restoreContext()},this.getPixelRatio=function(){return rt},this.setPixelRatio=function(E){E!==void 0&&(rt=E,this.setSize(ft,ot,!1))},this.getSize=function(E){return E.set(ft,ot)},this.setSize=function(E,O,Y=!0){if(ht.isPresenting){Ft("WebGLRenderer: Can't change size while VR device is presenting.");return}ft=E,ot=O,n.width=Math.floor(E*rt),n.height=Math.floor(O*rt),Y===!0&&(n.style.width=E+"px",n.style.height=O+"px"),A!==null&&A.setSize(n.width,n.height),this.setViewport(0,0,E,O)},this.getDrawingBufferSize=function(E){return E.set(ft*rt,ot*rt).floor()},this.setDrawingBufferSize=function(E,O,Y){ft=E,ot=O,rt=Y,n.width=Math.floor(E*Y),n.height=Math.floor(O*Y),this.setViewport(0,0,E,O)},this.setEffects=function(E){if(y===Jn){Gt("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(E){for(let O=0;O<E.length;O++)if(E[O].isOutputPass===!0){Ft("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}A.setEffects(E||[])},this.getCurrentViewport=function(E){return E.copy(q)},this.getViewport=function(E){return E.copy(ct)},this.setViewport=function(E,O,Y,W){E.isVector4?ct.set(E.x,E.y,E.z,E.w):ct.set(E,O,Y,W),mt.viewport(q.copy(ct).multiplyScalar(Gn()).round())},this.getScissor=function(E){return E.copy(K)},this.setScissor=function(E,O,Y,W){E.isVector4?K.set(E.x,E.y,E.z,E.w):K.set(E,O,Y,W),mt.scissor(st.copy(K).multiplyScalar(Gn()).round())},this.getScissorTest=function(){return It},this.setScissorTest=function(E){mt.setScissorTest(It=E)},this.setOpaqueSort=function(E){J=E},this.setTransparentSort=function(E){gt=E},this.getClearColor=function(E){return E.copy(N.getClearColor())},this.setClearColor=function(){N.setClearColor(...arguments)},this.getClearAlpha=function(){return N.getClearAlpha()},this.setClearAlpha=function(){N.setClearAlpha(...arguments)},this.clear=function(E=!0,O=!0,Y=!0){let W=0;if(E){let X=!1;if(Z!==null){let St=Z.texture.format;X=m.has(St)}if(X){let St=Z.texture.type,Ct=g.has(St),bt=N.getClearColor(),At=N.getClearAlpha(),Lt=bt.r,$t=bt.g,ee=bt.b;Ct?(_[0]=Lt,_[1]=$t,_[2]=ee,_[3]=At,G.clearBufferuiv(G.COLOR,0,_)):(M[0]=Lt,M[1]=$t,M[2]=ee,M[3]=At,G.clearBufferiv(G.COLOR,0,M))}else W|=G.COLOR_BUFFER_BIT}O&&(W|=G.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Y&&(W|=G.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),W!==0&&G.clear(W)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(E){E.setRenderer(this),D=E},this.dispose=function(){n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Jt,!1),n.removeEventListener("webglcontextcreationerror",Et,!1),N.dispose(),Mt.dispose(),Q.dispose(),zt.dispose(),Dt.dispose(),I.dispose(),ut.dispose(),H.dispose(),xt.dispose(),Nt.dispose(),nt.dispose(),ht.dispose(),ht.removeEventListener("sessionstart",ev),ht.removeEventListener("sessionend",nv),Ks.stop()};function Ut(E){E.preventDefault(),Xc("WebGLRenderer: Context Lost."),R=!0}function Jt(){Xc("WebGLRenderer: Context Restored."),R=!1;let E=Re.autoReset,O=_t.enabled,Y=_t.autoUpdate,W=_t.needsUpdate,X=_t.type;Kt(),Re.autoReset=E,_t.enabled=O,_t.autoUpdate=Y,_t.needsUpdate=W,_t.type=X}function Et(E){Gt("WebGLRenderer: A WebGL context could not be created. Reason: ",E.statusMessage)}function pe(E){let O=E.target;O.removeEventListener("dispose",pe),je(O)}function je(E){us(E),Dt.remove(E)}function us(E){let O=Dt.get(E).programs;O!==void 0&&(O.forEach(function(Y){nt.releaseProgram(Y)}),E.isShaderMaterial&&nt.releaseShaderCache(E))}this.renderBufferDirect=function(E,O,Y,W,X,St){O===null&&(O=zn);let Ct=X.isMesh&&X.matrixWorld.determinantAffine()<0,bt=P3(E,O,Y,W,X);mt.setMaterial(W,Ct);let At=Y.index,Lt=1;if(W.wireframe===!0){if(At=H.getWireframeAttribute(Y),At===void 0)return;Lt=2}let $t=Y.drawRange,ee=Y.attributes.position,Rt=$t.start*Lt,ne=($t.start+$t.count)*Lt;St!==null&&(Rt=Math.max(Rt,St.start*Lt),ne=Math.min(ne,(St.start+St.count)*Lt)),At!==null?(Rt=Math.max(Rt,0),ne=Math.min(ne,At.count)):ee!=null&&(Rt=Math.max(Rt,0),ne=Math.min(ne,ee.count));let Ve=ne-Rt;if(Ve<0||Ve===1/0)return;xt.setup(X,W,bt,Y,At);let Se,xe=j;if(At!==null&&(Se=T.get(At),xe=vt,xe.setIndex(Se)),X.isMesh)W.wireframe===!0?(mt.setLineWidth(W.wireframeLinewidth*Gn()),xe.setMode(G.LINES)):xe.setMode(G.TRIANGLES);else if(X.isLine){let yn=W.linewidth;yn===void 0&&(yn=1),mt.setLineWidth(yn*Gn()),X.isLineSegments?xe.setMode(G.LINES):X.isLineLoop?xe.setMode(G.LINE_LOOP):xe.setMode(G.LINE_STRIP)}else X.isPoints?xe.setMode(G.POINTS):X.isSprite&&xe.setMode(G.TRIANGLES);if(X.isBatchedMesh)if(be.get("WEBGL_multi_draw"))xe.renderMultiDraw(X._multiDrawStarts,X._multiDrawCounts,X._multiDrawCount);else{let yn=X._multiDrawStarts,Pt=X._multiDrawCounts,Cn=X._multiDrawCount,ce=At?T.get(At).bytesPerElement:1,js=Dt.get(W).currentProgram.getUniforms();for(let xn=0;xn<Cn;xn++)js.setValue(G,"_gl_DrawID",xn),xe.render(yn[xn]/ce,Pt[xn])}else if(X.isInstancedMesh)xe.renderInstances(Rt,Ve,X.count);else if(Y.isInstancedBufferGeometry){let yn=Y._maxInstanceCount!==void 0?Y._maxInstanceCount:1/0,Pt=Math.min(Y.instanceCount,yn);xe.renderInstances(Rt,Ve,Pt)}else xe.render(Rt,Ve)};function tv(E,O,Y,W){D!==null&&E.isNodeMaterial&&D.setObject(W,E),Ht===!0&&tt.setState(E,Y,!1),E.transparent===!0&&E.side===Ii&&E.forceSinglePass===!1?(E.side=Bn,E.needsUpdate=!0,Dl(E,O,W),E.side=Xs,E.needsUpdate=!0,Dl(E,O,W),E.side=Ii):Dl(E,O,W)}this.compile=function(E,O,Y=null){Y===null&&(Y=E),D!==null&&D.renderStart(E,O,Y),b=Q.get(Y),b.init(O),w.push(b),Y.traverseVisible(function(X){X.isLight&&X.layers.test(O.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),E!==Y&&E.traverseVisible(function(X){X.isLight&&X.layers.test(O.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),b.setupLights(),D!==null&&D.updateLights(b.state.lightsArray),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),Ht===!0&&tt.setGlobalState(this.clippingPlanes,O),D!==null&&_t.render(b.state.shadowsArray,Y,O);let W=new Set;return E.traverse(function(X){if(!(X.isMesh||X.isPoints||X.isLine||X.isSprite))return;let St=X.material;if(St)if(Array.isArray(St))for(let Ct=0;Ct<St.length;Ct++){let bt=St[Ct];tv(bt,Y,O,X),W.add(bt)}else tv(St,Y,O,X),W.add(St)}),b=w.pop(),D!==null&&D.renderEnd(),W},this.compileAsync=function(E,O,Y=null){let W=this.compile(E,O,Y);return new Promise(X=>{function St(){if(W.forEach(function(Ct){let At=Dt.get(Ct).currentProgram;(At===void 0||At.isReady())&&W.delete(Ct)}),W.size===0){X(E);return}setTimeout(St,10)}be.get("KHR_parallel_shader_compile")!==null?St():setTimeout(St,10)})};let Vp=null;function C3(E){Vp&&Vp(E)}function ev(){Ks.stop()}function nv(){Ks.start()}let Ks=new r3;Ks.setAnimationLoop(C3),typeof self<"u"&&Ks.setContext(self),this.setAnimationLoop=function(E){Vp=E,ht.setAnimationLoop(E),E===null?Ks.stop():Ks.start()},ht.addEventListener("sessionstart",ev),ht.addEventListener("sessionend",nv),this.render=function(E,O){if(O!==void 0&&O.isCamera!==!0){Gt("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(R===!0)return;D!==null&&D.renderStart(E,O);let Y=ht.enabled===!0&&ht.isPresenting===!0,W=A!==null&&(Z===null||Y)&&A.begin(C,Z);if(E.matrixWorldAutoUpdate===!0&&E.updateMatrixWorld(),O.parent===null&&O.matrixWorldAutoUpdate===!0&&O.updateMatrixWorld(),ht.enabled===!0&&ht.isPresenting===!0&&(A===null||A.isCompositing()===!1)&&(ht.cameraAutoUpdate===!0&&ht.updateCamera(O),O=ht.getCamera()),E.isScene===!0&&E.onBeforeRender(C,E,O,Z),b=Q.get(E,w.length),b.init(O),b.state.textureUnits=zt.getTextureUnits(),w.push(b),oe.multiplyMatrices(O.projectionMatrix,O.matrixWorldInverse),O.isArrayCamera?Ot.setFromArrayCamera(O):pt.setFromProjectionMatrix(oe,Ri,O.reversedDepth),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),S=Mt.get(E,x.length),S.init(),x.push(S),this.info.render.frame++,ht.enabled===!0&&ht.isPresenting===!0){let Ct=C.xr.getDepthSensingMesh();Ct!==null&&Hp(Ct,O,-1/0,C.sortObjects)}Hp(E,O,0,C.sortObjects),S.finish(),D!==null&&D.updateLights(b.state.lightsArray),C.sortObjects===!0&&S.sort(J,gt),An=ht.enabled===!1||ht.isPresenting===!1||ht.hasDepthSensing()===!1,An&&N.addToRenderList(S,E),this.info.autoReset===!0&&this.info.reset(),Ht===!0&&tt.beginShadows();let X=b.state.shadowsArray;if(_t.render(X,E,O),Ht===!0&&tt.endShadows(),(W&&A.hasRenderPass())===!1){let Ct=S.opaque,bt=S.transmissive;if(b.setupLights(),O.isArrayCamera){let At=O.cameras;if(bt.length>0)for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];rv(Ct,bt,E,ee)}An&&N.render(E);for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];iv(S,E,ee,ee.viewport)}}else bt.length>0&&rv(Ct,bt,E,O),An&&N.render(E),iv(S,E,O)}Z!==null&&U===0&&(zt.updateMultisampleRenderTarget(Z),zt.updateRenderTargetMipmap(Z)),W&&A.end(C),E.isScene===!0&&E.onAfterRender(C,E,O),xt.resetDefaultState(),F=-1,V=null,w.pop(),w.length>0?(b=w[w.length-1],zt.setTextureUnits(b.state.textureUnits),Ht===!0&&tt.setGlobalState(C.clippingPlanes,b.state.camera)):b=null,x.pop(),x.length>0?S=x[x.length-1]:S=null,D!==null&&D.renderEnd()};function Hp(E,O,Y,W){if(E.visible===!1)return;if(E.layers.test(O.layers)){if(E.isGroup)Y=E.renderOrder;else if(E.isLOD)E.autoUpdate===!0&&E.update(O);else if(E.isLight)b.pushLight(E),E.castShadow&&b.pushShadow(E);else if(E.isSprite){let Ct=O.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){W&&Ge.setFromMatrixPosition(E.matrixWorld).applyMatrix4(oe);let bt=ut.update(E),At=E.material;At.visible&&S.push(E,bt,At,Y,Ge.z,null,O)}}else if(E.isMesh||E.isLine||E.isPoints){let Ct=O.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){let bt=ut.update(E),At=E.material;if(W&&(E.boundingSphere!==void 0?(E.boundingSphere===null&&E.computeBoundingSphere(),Ge.copy(E.boundingSphere.center)):(bt.boundingSphere===null&&bt.computeBoundingSphere(),Ge.copy(bt.boundingSphere.center)),Ge.applyMatrix4(E.matrixWorld).applyMatrix4(oe)),Array.isArray(At)){let Lt=bt.groups;for(let $t=0,ee=Lt.length;$t<ee;$t++){let Rt=Lt[$t],ne=At[Rt.materialIndex];ne&&ne.visible&&S.push(E,bt,ne,Y,Ge.z,Rt,O)}}else At.visible&&S.push(E,bt,At,Y,Ge.z,null,O)}}}let St=E.children;for(let Ct=0,bt=St.length;Ct<bt;Ct++)Hp(St[Ct],O,Y,W)}function iv(E,O,Y,W){let{opaque:X,transmissive:St,transparent:Ct}=E;b.setupLightsView(Y),Ht===!0&&tt.setGlobalState(C.clippingPlanes,Y),W&&mt.viewport(q.copy(W)),X.length>0&&Tu(X,O,Y),St.length>0&&Tu(St,O,Y),Ct.length>0&&Tu(Ct,O,Y),mt.buffers.depth.setTest(!0),mt.buffers.depth.setMask(!0),mt.buffers.color.setMask(!0),mt.setPolygonOffset(!1)}function rv(E,O,Y,W){if((Y.isScene===!0?Y.overrideMaterial:null)!==null)return;if(b.state.transmissionRenderTarget[W.id]===void 0){let Rt=be.has("EXT_color_buffer_half_float")||be.has("EXT_color_buffer_float");b.state.transmissionRenderTarget[W.id]=new li(1,1,{generateMipmaps:!0,type:Rt?Qi:Jn,minFilter:as,samples:Math.max(4,Me.samples),stencilBuffer:s,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ie.workingColorSpace})}let St=b.state.transmissionRenderTarget[W.id],Ct=W.viewport||q;St.setSize(Ct.z*C.transmissionResolutionScale,Ct.w*C.transmissionResolutionScale);let bt=C.getRenderTarget(),At=C.getActiveCubeFace(),Lt=C.getActiveMipmapLevel();C.setRenderTarget(St),C.getClearColor($),at=C.getClearAlpha(),at<1&&C.setClearColor(16777215,.5),C.clear(),An&&N.render(Y);let $t=C.toneMapping;C.toneMapping=Mr;let ee=W.viewport;if(W.viewport!==void 0&&(W.viewport=void 0),b.setupLightsView(W),Ht===!0&&tt.setGlobalState(C.clippingPlanes,W),Tu(E,Y,W),zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St),be.has("WEBGL_multisampled_render_to_texture")===!1){let Rt=!1;for(let ne=0,Ve=O.length;ne<Ve;ne++){let Se=O[ne],{object:xe,geometry:yn,material:Pt,group:Cn}=Se;if(Pt.side===Ii&&xe.layers.test(W.layers)){let ce=Pt.side;Pt.side=Bn,Pt.needsUpdate=!0,sv(xe,Y,W,yn,Pt,Cn),Pt.side=ce,Pt.needsUpdate=!0,Rt=!0}}Rt===!0&&(zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St))}C.setRenderTarget(bt,At,Lt),C.setClearColor($,at),ee!==void 0&&(W.viewport=ee),C.toneMapping=$t}function Tu(E,O,Y){let W=O.isScene===!0?O.overrideMaterial:null;for(let X=0,St=E.length;X<St;X++){let Ct=E[X],{object:bt,geometry:At,group:Lt}=Ct,$t=Ct.material;$t.allowOverride===!0&&W!==null&&($t=W),bt.layers.test(Y.layers)&&sv(bt,O,Y,At,$t,Lt)}}function sv(E,O,Y,W,X,St){D!==null&&X.isNodeMaterial&&D.setObject(E,X),E.onBeforeRender(C,O,Y,W,X,St),E.modelViewMatrix.multiplyMatrices(Y.matrixWorldInverse,E.matrixWorld),E.normalMatrix.getNormalMatrix(E.modelViewMatrix),X.onBeforeRender(C,O,Y,W,E,St),X.transparent===!0&&X.side===Ii&&X.forceSinglePass===!1?(X.side=Bn,X.needsUpdate=!0,C.renderBufferDirect(Y,O,W,X,E,St),X.side=Xs,X.needsUpdate=!0,C.renderBufferDirect(Y,O,W,X,E,St),X.side=Ii):C.renderBufferDirect(Y,O,W,X,E,St),E.onAfterRender(C,O,Y,W,X,St)}function ov(E){let O=0;for(let Y of E)Y.texture!==null&&O++;return O}function Dl(E,O,Y){O.isScene!==!0&&(O=zn);let W=Dt.get(E),X=b.state.lights,St=b.state.shadowsArray,Ct=X.state.version,bt=nt.getParameters(E,X.state,St,O,Y,b.state.lightProbeGridArray),At=nt.getProgramCacheKey(bt),Lt=W.programs;W.environment=E.isMeshStandardMaterial||E.isMeshLambertMaterial||E.isMeshPhongMaterial?O.environment:null,W.fog=O.fog;let $t=E.isMeshStandardMaterial||E.isMeshLambertMaterial&&!E.envMap||E.isMeshPhongMaterial&&!E.envMap;W.envMap=I.get(E.envMap||W.environment,$t),W.envMapRotation=W.environment!==null&&E.envMap===null?O.environmentRotation:E.envMapRotation,Lt===void 0&&(E.addEventListener("dispose",pe),Lt=new Map,W.programs=Lt,W.programVariants=new Map);let ee=Lt.get(At);if(ee!==void 0){if(W.currentProgram===ee&&W.lightsStateVersion===Ct)return lv(E,bt),ee}else bt.uniforms=nt.getUniforms(E),D!==null&&E.isNodeMaterial&&D.build(E,Y,bt),E.onBeforeCompile(bt,C),ee=nt.acquireProgram(bt,At),Lt.set(At,ee),W.uniforms=bt.uniforms;let Rt=W.uniforms;return(!E.isShaderMaterial&&!E.isRawShaderMaterial||E.clipping===!0)&&(Rt.clippingPlanes=tt.uniform),lv(E,bt),W.needsLights=L3(E),W.lightsStateVersion=Ct,W.needsLights&&(Rt.ambientLightColor.value=X.state.ambient,Rt.lightProbe.value=X.state.probe,Rt.sunLights.value=X.state.sun,Rt.sunLightShadows.value=X.state.sunShadow,Rt.directionalLights.value=X.state.directional,Rt.directionalLightShadows.value=X.state.directionalShadow,Rt.spotLights.value=X.state.spot,Rt.spotLightShadows.value=X.state.spotShadow,Rt.rectAreaLights.value=X.state.rectArea,Rt.ltc_1.value=X.state.rectAreaLTC1,Rt.ltc_2.value=X.state.rectAreaLTC2,Rt.pointLights.value=X.state.point,Rt.pointLightShadows.value=X.state.pointShadow,Rt.hemisphereLights.value=X.state.hemi,Rt.sunShadowMatrix.value=X.state.sunShadowMatrix,Rt.sunShadowCascade.value=X.state.sunShadowCascade,Rt.directionalShadowMatrix.value=X.state.directionalShadowMatrix,Rt.spotLightMatrix.value=X.state.spotLightMatrix,Rt.spotLightMap.value=X.state.spotLightMap,Rt.pointShadowMatrix.value=X.state.pointShadowMatrix),W.numLightProbeGrids=ov(b.state.lightProbeGridArray),W.currentProgram=ee,W.uniformsList=null,ee}function R3(E,O,Y,W,X){let St=Dt.get(E),Ct=St.currentProgram.id+","+W+","+X,bt=St.programVariants.get(Ct);return bt===void 0?(bt=Dl(E,O,Y),St.programVariants.set(Ct,bt)):(St.currentProgram=bt,St.uniformsList=null,St.outputColorSpace=W,St.toneMapping=X),bt}function av(E){if(E.uniformsList===null){let O=E.currentProgram.getUniforms();E.uniformsList=Pl.seqWithValue(O.seq,E.uniforms)}return E.uniformsList}function lv(E,O){let Y=Dt.get(E);Y.outputColorSpace=O.outputColorSpace,Y.batching=O.batching,Y.batchingColor=O.batchingColor,Y.instancing=O.instancing,Y.instancingColor=O.instancingColor,Y.instancingMorph=O.instancingMorph,Y.skinning=O.skinning,Y.morphTargets=O.morphTargets,Y.morphNormals=O.morphNormals,Y.morphColors=O.morphColors,Y.morphTargetsCount=O.morphTargetsCount,Y.numClippingPlanes=O.numClippingPlanes,Y.numIntersection=O.numClipIntersection,Y.vertexAlphas=O.vertexAlphas,Y.vertexTangents=O.vertexTangents,Y.toneMapping=O.toneMapping}function P3(E,O,Y,W,X){O.isScene!==!0&&(O=zn),zt.resetTextureUnits();let St=O.fog,Ct=W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial?O.environment:null,bt=Z===null?C.outputColorSpace:Z.isXRRenderTarget===!0?Z.texture.colorSpace:ie.workingColorSpace,At=W.isMeshStandardMaterial||W.isMeshLambertMaterial&&!W.envMap||W.isMeshPhongMaterial&&!W.envMap,Lt=I.get(W.envMap||Ct,At),$t=W.vertexColors===!0&&!!Y.attributes.color&&Y.attributes.color.itemSize===4,ee=!!Y.attributes.tangent&&(!!W.normalMap||W.anisotropy>0),Rt=!!Y.morphAttributes.position,ne=!!Y.morphAttributes.normal,Ve=!!Y.morphAttributes.color,Se=Mr;W.toneMapped&&(Z===null||Z.isXRRenderTarget===!0)&&(Se=C.toneMapping);let xe=Y.morphAttributes.position||Y.morphAttributes.normal||Y.morphAttributes.color,yn=xe!==void 0?xe.length:0,Pt=Dt.get(W),Cn=b.state.lights;if(Ht===!0&&(le===!0||E!==V)){let Ce=E===V&&W.id===F;tt.setState(W,E,Ce)}let ce=!1,js=!1;W.version===Pt.__version?Pt.needsLights&&Pt.lightsStateVersion!==Cn.state.version||X.isBatchedMesh&&Pt.batching===!1||!X.isBatchedMesh&&Pt.batching===!0||X.isBatchedMesh&&Pt.batchingColor===!0&&X._colorsTexture===null||X.isBatchedMesh&&Pt.batchingColor===!1&&X._colorsTexture!==null||X.isInstancedMesh&&Pt.instancing===!1||!X.isInstancedMesh&&Pt.instancing===!0||X.isSkinnedMesh&&Pt.skinning===!1||!X.isSkinnedMesh&&Pt.skinning===!0||X.isInstancedMesh&&Pt.instancingColor===!0&&X.instanceColor===null||X.isInstancedMesh&&Pt.instancingColor===!1&&X.instanceColor!==null||X.isInstancedMesh&&Pt.instancingMorph===!0&&X.morphTexture===null||X.isInstancedMesh&&Pt.instancingMorph===!1&&X.morphTexture!==null||Pt.envMap!==Lt||W.fog===!0&&Pt.fog!==St||Pt.numClippingPlanes!==void 0&&(Pt.numClippingPlanes!==tt.numPlanes||Pt.numIntersection!==tt.numIntersection)||Pt.vertexAlphas!==$t||Pt.vertexTangents!==ee||Pt.morphTargets!==Rt||Pt.morphNormals!==ne||Pt.morphColors!==Ve||Pt.morphTargetsCount!==yn||Pt.numLightProbeGrids!==ov(b.state.lightProbeGridArray)?ce=!0:(Pt.outputColorSpace!==bt||Pt.toneMapping!==Se)&&(js=!0):(ce=!0,Pt.__version=W.version);let xn=Pt.currentProgram;(ce===!0||js===!0)&&(xn=js===!0?R3(W,O,X,bt,Se):Dl(W,O,X),D&&W.isNodeMaterial&&D.onUpdateProgram(W,xn,Pt));let Eu=!1,fs=!1,Qs=!1,re=xn.getUniforms(),cn=Pt.uniforms;if(mt.useProgram(xn.program)&&(Eu=!0,fs=!0,Qs=!0),W.id!==F&&(F=W.id,fs=!0),Eu||V!==E){mt.buffers.depth.getReversed()&&E.reversedDepth!==!0&&(E._reversedDepth=!0,E.updateProjectionMatrix()),re.setValue(G,"projectionMatrix",E.projectionMatrix),re.setValue(G,"viewMatrix",E.matrixWorldInverse);let Qe=re.map.cameraPosition;Qe!==void 0&&Qe.setValue(G,Ke.setFromMatrixPosition(E.matrixWorld)),Me.logarithmicDepthBuffer&&re.setValue(G,"logDepthBufFC",2/(Math.log(E.far+1)/Math.LN2)),(W.isMeshPhongMaterial||W.isMeshToonMaterial||W.isMeshLambertMaterial||W.isMeshBasicMaterial||W.isMeshStandardMaterial||W.isShaderMaterial)&&re.setValue(G,"isOrthographic",E.isOrthographicCamera===!0),V!==E&&(V=E,fs=!0,Qs=!0)}if(Pt.needsLights&&(Cn.state.sunShadowMap.length>0&&re.setValue(G,"sunShadowMap",Cn.state.sunShadowMap,zt),Cn.state.directionalShadowMap.length>0&&re.setValue(G,"directionalShadowMap",Cn.state.directionalShadowMap,zt),Cn.state.spotShadowMap.length>0&&re.setValue(G,"spotShadowMap",Cn.state.spotShadowMap,zt),Cn.state.pointShadowMap.length>0&&re.setValue(G,"pointShadowMap",Cn.state.pointShadowMap,zt)),X.isSkinnedMesh){re.setOptional(G,X,"bindMatrix"),re.setOptional(G,X,"bindMatrixInverse");let Ce=X.skeleton;Ce&&(Ce.boneTexture===null&&Ce.computeBoneTexture(),re.setValue(G,"boneTexture",Ce.boneTexture,zt))}X.isBatchedMesh&&(re.setOptional(G,X,"batchingTexture"),re.setValue(G,"batchingTexture",X._matricesTexture,zt),re.setOptional(G,X,"batchingIdTexture"),re.setValue(G,"batchingIdTexture",X._indirectTexture,zt),re.setOptional(G,X,"batchingColorTexture"),X._colorsTexture!==null&&re.setValue(G,"batchingColorTexture",X._colorsTexture,zt));let Li=Y.morphAttributes;if((Li.position!==void 0||Li.normal!==void 0||Li.color!==void 0)&&et.update(X,Y,xn),(fs||Pt.receiveShadow!==X.receiveShadow)&&(Pt.receiveShadow=X.receiveShadow,re.setValue(G,"receiveShadow",X.receiveShadow)),(W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial)&&W.envMap===null&&O.environment!==null&&(cn.envMapIntensity.value=O.environmentIntensity),cn.dfgLUT!==void 0&&(cn.dfgLUT.value=q6()),fs){if(re.setValue(G,"toneMappingExposure",C.toneMappingExposure),Pt.needsLights&&I3(cn,Qs),St&&W.fog===!0&&yt.refreshFogUniforms(cn,St),yt.refreshMaterialUniforms(cn,W,rt,ot,b.state.transmissionRenderTarget[E.id]),Pt.needsLights&&Pt.numLightProbeGrids>0){let Ce=v,Qe=0;for(let Ar of b.state.lightProbeGridArray)Ar.texture!==null&&(Ce.textures[Qe]=Ar.texture,Ce.min[Qe]=Ar.boundingBox.min,Ce.max[Qe]=Ar.boundingBox.max,Ce.resolution[Qe]=Ar.resolution,Qe++);for(let Ar in Ce)Ce[Ar].length=Qe;cn.probesSH.value=Ce.textures,cn.probesMin.value=Ce.min,cn.probesMax.value=Ce.max,cn.probesResolution.value=Ce.resolution}Pl.upload(G,av(Pt),cn,zt)}if(W.isShaderMaterial&&W.uniformsNeedUpdate===!0&&(Pl.upload(G,av(Pt),cn,zt),W.uniformsNeedUpdate=!1),W.isSpriteMaterial&&re.setValue(G,"center",X.center),re.setValue(G,"modelViewMatrix",X.modelViewMatrix),re.setValue(G,"normalMatrix",X.normalMatrix),re.setValue(G,"modelMatrix",X.matrixWorld),W.uniformsGroups!==void 0){let Ce=W.uniformsGroups;for(let Qe=0,Ar=Ce.length;Qe<Ar;Qe++){let uv=Ce[Qe];Nt.update(uv,xn),Nt.bind(uv,xn)}}return xn}function I3(E,O){E.ambientLightColor.needsUpdate=O,E.lightProbe.needsUpdate=O,E.sunLights.needsUpdate=O,E.sunLightShadows.needsUpdate=O,E.directionalLights.needsUpdate=O,E.directionalLightShadows.needsUpdate=O,E.pointLights.needsUpdate=O,E.pointLightShadows.needsUpdate=O,E.spotLights.needsUpdate=O,E.spotLightShadows.needsUpdate=O,E.rectAreaLights.needsUpdate=O,E.hemisphereLights.needsUpdate=O}function L3(E){return E.isMeshLambertMaterial||E.isMeshToonMaterial||E.isMeshPhongMaterial||E.isMeshStandardMaterial||E.isShadowMaterial||E.isShaderMaterial&&E.lights===!0}this.getActiveCubeFace=function(){return z},this.getActiveMipmapLevel=function(){return U},this.getRenderTarget=function(){return Z},this.setRenderTargetTextures=function(E,O,Y){let W=Dt.get(E);W.__autoAllocateDepthBuffer=E.resolveDepthBuffer===!1,W.__autoAllocateDepthBuffer===!1&&(W.__useRenderToTexture=!1),Dt.get(E.texture).__webglTexture=O,Dt.get(E.depthTexture).__webglTexture=W.__autoAllocateDepthBuffer?void 0:Y,W.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(E,O){let Y=Dt.get(E);Y.__webglFramebuffer=O,Y.__useDefaultFramebuffer=O===void 0},this.setRenderTarget=function(E,O=0,Y=0){Z=E,z=O,U=Y;let W=null,X=!1,St=!1;if(E){let bt=Dt.get(E);if(bt.__useDefaultFramebuffer!==void 0){mt.bindFramebuffer(G.FRAMEBUFFER,bt.__webglFramebuffer),q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest,mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),F=-1;return}else if(bt.__webglFramebuffer===void 0)zt.setupRenderTarget(E);else if(bt.__hasExternalTextures)zt.rebindTextures(E,Dt.get(E.texture).__webglTexture,Dt.get(E.depthTexture).__webglTexture);else if(E.depthBuffer){let $t=E.depthTexture;if(bt.__boundDepthTexture!==$t){if($t!==null&&Dt.has($t)&&(E.width!==$t.image.width||E.height!==$t.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");zt.setupDepthRenderbuffer(E)}}let At=E.texture;(At.isData3DTexture||At.isDataArrayTexture||At.isCompressedArrayTexture)&&(St=!0);let Lt=Dt.get(E).__webglFramebuffer;E.isWebGLCubeRenderTarget?(Array.isArray(Lt[O])?W=Lt[O][Y]:W=Lt[O],X=!0):E.samples>0&&zt.useMultisampledRTT(E)===!1?W=Dt.get(E).__webglMultisampledFramebuffer:Array.isArray(Lt)?W=Lt[Y]:W=Lt,q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest}else q.copy(ct).multiplyScalar(rt).floor(),st.copy(K).multiplyScalar(rt).floor(),lt=It;if(Y!==0&&(W=k),mt.bindFramebuffer(G.FRAMEBUFFER,W)&&mt.drawBuffers(E,W),mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),X){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_CUBE_MAP_POSITIVE_X+O,bt.__webglTexture,Y)}else if(St){let bt=O;for(let At=0;At<E.textures.length;At++){let Lt=Dt.get(E.textures[At]);G.framebufferTextureLayer(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0+At,Lt.__webglTexture,Y,bt)}}else if(E!==null&&Y!==0){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,bt.__webglTexture,Y)}F=-1};function cv(E){let O=Dt.get(E);return(O.__readFormat!==E.format||O.__readType!==E.type)&&(O.__readFormat=E.format,O.__readType=E.type,O.__formatReadable=Me.textureFormatReadable(E.format),O.__typeReadable=Me.textureTypeReadable(E.type)),O}this.readRenderTargetPixels=function(E,O,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget)){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At){mt.bindFramebuffer(G.FRAMEBUFFER,At);try{let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=cv(Lt);if(Rt.__formatReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Rt.__typeReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}O>=0&&O<=E.width-W&&Y>=0&&Y<=E.height-X&&G.readPixels(O,Y,W,X,dt.convert($t),dt.convert(ee),St)}finally{let Lt=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Lt)}}},this.readRenderTargetPixelsAsync=async function(E,O,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At)if(O>=0&&O<=E.width-W&&Y>=0&&Y<=E.height-X){mt.bindFramebuffer(G.FRAMEBUFFER,At);let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=cv(Lt);if(Rt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Rt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ne=G.createBuffer();G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.bufferData(G.PIXEL_PACK_BUFFER,St.byteLength,G.STREAM_READ),G.readPixels(O,Y,W,X,dt.convert($t),dt.convert(ee),0),G.bindBuffer(G.PIXEL_PACK_BUFFER,null);let Ve=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Ve);let Se=G.fenceSync(G.SYNC_GPU_COMMANDS_COMPLETE,0);return G.flush(),await L2(G,Se,4),G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.getBufferSubData(G.PIXEL_PACK_BUFFER,0,St),G.bindBuffer(G.PIXEL_PACK_BUFFER,null),G.deleteBuffer(ne),G.deleteSync(Se),St}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(E,O=null,Y=0){let W=Math.pow(2,-Y),X=Math.floor(E.image.width*W),St=Math.floor(E.image.height*W),Ct=O!==null?O.x:0,bt=O!==null?O.y:0;zt.setTexture2D(E,0),G.copyTexSubImage2D(G.TEXTURE_2D,Y,0,0,Ct,bt,X,St),mt.unbindTexture()},this.copyTextureToTexture=function(E,O,Y=null,W=null,X=0,St=0){let Ct,bt,At,Lt,$t,ee,Rt,ne,Ve,Se=E.isCompressedTexture?E.mipmaps[St]:E.image;if(Y!==null)Ct=Y.max.x-Y.min.x,bt=Y.max.y-Y.min.y,At=Y.isBox3?Y.max.z-Y.min.z:1,Lt=Y.min.x,$t=Y.min.y,ee=Y.isBox3?Y.min.z:0;else{let re=Math.pow(2,-X);Ct=Math.floor(Se.width*re),bt=Math.floor(Se.height*re),E.isDataArrayTexture?At=Se.depth:E.isData3DTexture?At=Math.floor(Se.depth*re):At=1,Lt=0,$t=0,ee=0}W!==null?(Rt=W.x,ne=W.y,Ve=W.z):(Rt=0,ne=0,Ve=0);let xe=dt.convert(O.format),yn=dt.convert(O.type),Pt;O.isData3DTexture?(zt.setTexture3D(O,0),Pt=G.TEXTURE_3D):O.isDataArrayTexture||O.isCompressedArrayTexture?(zt.setTexture2DArray(O,0),Pt=G.TEXTURE_2D_ARRAY):(zt.setTexture2D(O,0),Pt=G.TEXTURE_2D),mt.activeTexture(G.TEXTURE0),mt.pixelStorei(G.UNPACK_FLIP_Y_WEBGL,O.flipY),mt.pixelStorei(G.UNPACK_PREMULTIPLY_ALPHA_WEBGL,O.premultiplyAlpha),mt.pixelStorei(G.UNPACK_ALIGNMENT,O.unpackAlignment);let Cn=mt.getParameter(G.UNPACK_ROW_LENGTH),ce=mt.getParameter(G.UNPACK_IMAGE_HEIGHT),js=mt.getParameter(G.UNPACK_SKIP_PIXELS),xn=mt.getParameter(G.UNPACK_SKIP_ROWS),Eu=mt.getParameter(G.UNPACK_SKIP_IMAGES);mt.pixelStorei(G.UNPACK_ROW_LENGTH,Se.width),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,Se.height),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,Lt),mt.pixelStorei(G.UNPACK_SKIP_ROWS,$t),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,ee);let fs=E.isDataArrayTexture||E.isData3DTexture,Qs=O.isDataArrayTexture||O.isData3DTexture;if(E.isDepthTexture){let re=Dt.get(E),cn=Dt.get(O),Li=Dt.get(re.__renderTarget),Ce=Dt.get(cn.__renderTarget);mt.bindFramebuffer(G.READ_FRAMEBUFFER,Li.__webglFramebuffer),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,Ce.__webglFramebuffer);for(let Qe=0;Qe<At;Qe++)fs&&(G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(E).__webglTexture,X,ee+Qe),G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(O).__webglTexture,St,Ve+Qe)),G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.DEPTH_BUFFER_BIT,G.NEAREST);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else if(X!==0||E.isRenderTargetTexture||Dt.has(E)){let re=Dt.get(E),cn=Dt.get(O);mt.bindFramebuffer(G.READ_FRAMEBUFFER,P),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,L);for(let Li=0;Li<At;Li++)fs?G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,re.__webglTexture,X,ee+Li):G.framebufferTexture2D(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,re.__webglTexture,X),Qs?G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,cn.__webglTexture,St,Ve+Li):G.framebufferTexture2D(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,cn.__webglTexture,St),X!==0?G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.COLOR_BUFFER_BIT,G.NEAREST):Qs?G.copyTexSubImage3D(Pt,St,Rt,ne,Ve+Li,Lt,$t,Ct,bt):G.copyTexSubImage2D(Pt,St,Rt,ne,Lt,$t,Ct,bt);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else Qs?E.isDataTexture||E.isData3DTexture?G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,yn,Se.data):O.isCompressedArrayTexture?G.compressedTexSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,Se.data):G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,yn,Se):E.isDataTexture?G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,xe,yn,Se.data):E.isCompressedTexture?G.compressedTexSubImage2D(G.TEXTURE_2D,St,Rt,ne,Se.width,Se.height,xe,Se.data):G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,xe,yn,Se);mt.pixelStorei(G.UNPACK_ROW_LENGTH,Cn),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,ce),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,js),mt.pixelStorei(G.UNPACK_SKIP_ROWS,xn),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,Eu),St===0&&O.generateMipmaps===!0&&O.mipmapsAutoUpdate===!0&&G.generateMipmap(Pt),mt.unbindTexture()},this.initRenderTarget=function(E){Dt.get(E).__webglFramebuffer===void 0&&zt.setupRenderTarget(E)},this.initTexture=function(E){E.isCubeTexture?zt.setTextureCube(E,0):E.isData3DTexture?zt.setTexture3D(E,0):E.isDataArrayTexture||E.isCompressedArrayTexture?zt.setTexture2DArray(E,0):zt.setTexture2D(E,0),mt.unbindTexture()},this.resetState=function(){z=0,U=0,Z=null,mt.reset(),xt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Ri}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let n=this.getContext();n.drawingBufferColorSpace=ie._getDrawingBufferColorSpace(t),n.unpackColorSpace=ie._getUnpackColorSpace()}};var m3={type:"change"},Z_={type:"start"},y3={type:"end"},Fp=new Ho,g3=new si,Y6=Math.cos(70*_u.DEG2RAD),Je=new B,Kn=2*Math.PI,ue={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},Y_=1e-6,Op=class extends uu{constructor(t,n=null){super(t,n),this.state=ue.NONE,this.target=new B,this.cursor=new B,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Ws.ROTATE,MIDDLE:Ws.DOLLY,RIGHT:Ws.PAN},this.touches={ONE:$s.ROTATE,TWO:$s.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new B,this._lastQuaternion=new ai,this._lastTargetPosition=new B,this._quat=new ai().setFromUnitVectors(t.up,new B(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new Tl,this._sphericalDelta=new Tl,this._scale=1,this._panOffset=new B,this._rotateStart=new Bt,this._rotateEnd=new Bt,this._rotateDelta=new Bt,this._panStart=new Bt,this._panEnd=new Bt,this._panDelta=new Bt,this._dollyStart=new Bt,this._dollyEnd=new Bt,this._dollyDelta=new Bt,this._dollyDirection=new B,this._mouse=new Bt,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=J6.bind(this),this._onPointerDown=Z6.bind(this),this._onPointerUp=K6.bind(this),this._onContextMenu=rk.bind(this),this._onMouseWheel=tk.bind(this),this._onKeyDown=ek.bind(this),this._onTouchStart=nk.bind(this),this._onTouchMove=ik.bind(this),this._onMouseDown=j6.bind(this),this._onMouseMove=Q6.bind(this),this._interceptControlDown=sk.bind(this),this._interceptControlUp=ok.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=ue.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(m3),this.update(),this.state=ue.NONE}pan(t,n){this._pan(t,n),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let n=this.object.position;Je.copy(n).sub(this.target),Je.applyQuaternion(this._quat),this._spherical.setFromVector3(Je),this.autoRotate&&this.state===ue.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let i=this.minAzimuthAngle,r=this.maxAzimuthAngle;isFinite(i)&&isFinite(r)&&(i<-Math.PI?i+=Kn:i>Math.PI&&(i-=Kn),r<-Math.PI?r+=Kn:r>Math.PI&&(r-=Kn),i<=r?this._spherical.theta=Math.max(i,Math.min(r,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(i+r)/2?Math.max(i,this._spherical.theta):Math.min(r,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let s=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),s=o!=this._spherical.radius}if(Je.setFromSpherical(this._spherical),Je.applyQuaternion(this._quatInverse),n.copy(this.target).add(Je),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Je.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),s=!!l}else if(this.object.isOrthographicCamera){let a=new B(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),s=l!==this.object.zoom;let c=new B(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Je.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Fp.origin.copy(this.object.position),Fp.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Fp.direction))<Y6?this.object.lookAt(this.target):(g3.setFromNormalAndCoplanarPoint(this.object.up,this.target),Fp.intersectPlane(g3,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),s=!0)}return this._scale=1,this._performCursorZoom=!1,s||this._lastPosition.distanceToSquared(this.object.position)>Y_||8*(1-this._lastQuaternion.dot(this.object.quaternion))>Y_||this._lastTargetPosition.distanceToSquared(this.target)>Y_?(this.dispatchEvent(m3),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Kn/60*this.autoRotateSpeed*t:Kn/60/60*this.autoRotateSpeed}_getZoomScale(t){let n=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*n)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,n){Je.setFromMatrixColumn(n,0),Je.multiplyScalar(-t),this._panOffset.add(Je)}_panUp(t,n){this.screenSpacePanning===!0?Je.setFromMatrixColumn(n,1):(Je.setFromMatrixColumn(n,0),Je.crossVectors(this.object.up,Je)),Je.multiplyScalar(t),this._panOffset.add(Je)}_pan(t,n){let i=this.domElement;if(this.object.isPerspectiveCamera){let r=this.object.position;Je.copy(r).sub(this.target);let s=Je.length();s*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*s/i.clientHeight,this.object.matrix),this._panUp(2*n*s/i.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/i.clientWidth,this.object.matrix),this._panUp(n*(this.object.top-this.object.bottom)/this.object.zoom/i.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,n){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let i=this.domElement.getBoundingClientRect(),r=t-i.left,s=n-i.top,o=i.width,a=i.height;this._mouse.x=r/o*2-1,this._mouse.y=-(s/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/n.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let n=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),n=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),n=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),n=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),n=!0;break}n&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateStart.set(i,r)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panStart.set(i,r)}}_handleTouchStartDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyStart.set(0,s)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let i=this._getSecondPointerPosition(t),r=.5*(t.pageX+i.x),s=.5*(t.pageY+i.y);this._rotateEnd.set(r,s)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/n.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panEnd.set(i,r)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyEnd.set(0,s),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+n.x)*.5,a=(t.pageY+n.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId){this._pointers.splice(n,1);return}}_isTrackingPointer(t){for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId)return!0;return!1}_trackPointer(t){let n=this._pointerPositions[t.pointerId];n===void 0&&(n=new Bt,this._pointerPositions[t.pointerId]=n),n.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let n=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[n]}_customWheelEvent(t){let n=t.deltaMode,i={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(n){case 1:i.deltaY*=16;break;case 2:i.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(i.deltaY*=10),i}};function Z6(e){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(e.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(e)&&(this._addPointer(e),e.pointerType==="touch"?this._onTouchStart(e):this._onMouseDown(e),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function J6(e){this.enabled!==!1&&(e.pointerType==="touch"?this._onTouchMove(e):this._onMouseMove(e))}function K6(e){switch(this._removePointer(e),this._pointers.length){case 0:this.domElement.releasePointerCapture(e.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(y3),this.state=ue.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],n=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:n.x,pageY:n.y});break}}function j6(e){let t;switch(e.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Ws.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(e),this.state=ue.DOLLY;break;case Ws.ROTATE:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}break;case Ws.PAN:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(Z_)}function Q6(e){switch(this.state){case ue.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(e);break;case ue.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(e);break;case ue.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(e);break}}function tk(e){this.enabled===!1||this.enableZoom===!1||this.state!==ue.NONE||(e.preventDefault(),this.dispatchEvent(Z_),this._handleMouseWheel(this._customWheelEvent(e)),this.dispatchEvent(y3))}function ek(e){this.enabled!==!1&&this._handleKeyDown(e)}function nk(e){switch(this._trackPointer(e),this._pointers.length){case 1:switch(this.touches.ONE){case $s.ROTATE:if(this.enableRotate===!1){this.state=ue.NONE;break}this._handleTouchStartRotate(e),this.state=ue.TOUCH_ROTATE;break;case $s.PAN:if(this.enablePan===!1){this.state=ue.NONE;break}this._handleTouchStartPan(e),this.state=ue.TOUCH_PAN;break;default:this.state=ue.NONE}break;case 2:switch(this.touches.TWO){case $s.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(e),this.state=ue.TOUCH_DOLLY_PAN;break;case $s.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(e),this.state=ue.TOUCH_DOLLY_ROTATE;break;default:this.state=ue.NONE}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(Z_)}function ik(e){switch(this._trackPointer(e),this.state){case ue.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(e),this.update();break;case ue.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(e),this.update();break;case ue.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(e),this.update();break;case ue.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(e),this.update();break;default:this.state=ue.NONE}}function rk(e){this.enabled!==!1&&e.preventDefault()}function sk(e){e.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function ok(e){e.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}wt.line={worldUnits:{value:1},linewidth:{value:1},resolution:{value:new Bt},dashOffset:{value:0},dashScale:{value:1},dashSize:{value:1},gapSize:{value:1}};kn.line={uniforms:vu.merge([wt.common,wt.fog,wt.line]),vertexShader:`
		#include <common>
		#include <color_pars_vertex>
		#include <fog_pars_vertex>
		#include <logdepthbuf_pars_vertex>
		#include <clipping_planes_pars_vertex>

		uniform float linewidth;
		uniform vec2 resolution;

		attribute vec3 instanceStart;
		attribute vec3 instanceEnd;

		attribute vec3 instanceColorStart;
		attribute vec3 instanceColorEnd;

		#ifdef WORLD_UNITS

			varying vec4 worldPos;
			varying vec3 worldStart;
			varying vec3 worldEnd;

			#ifdef USE_DASH

				varying vec2 vUv;

			#endif

		#else

			varying vec2 vUv;

		#endif

		#ifdef USE_DASH

			uniform float dashScale;
			attribute float instanceDistanceStart;
			attribute float instanceDistanceEnd;
			varying float vLineDistance;

		#endif

		float trimSegmentAlpha( const in vec4 start, const in vec4 end ) {

			// compute the interpolation factor needed to trim the segment so it terminates
			// between the camera plane and the near plane

			// conservative estimate of the near plane
			float a = projectionMatrix[ 2 ][ 2 ]; // 3nd entry in 3th column
			float b = projectionMatrix[ 3 ][ 2 ]; // 3nd entry in 4th column

			// we need different nearEstimate formula for reversed and default depth buffer
			// a is positive with a reversed depth buffer so it can be used for controlling the code flow
			float nearEstimate = ( a > 0.0 ) ? ( - b / ( a + 1.0 ) ) : ( - 0.5 * b / a );

			return ( nearEstimate - start.z ) / ( end.z - start.z );

		}

		void main() {

			#ifdef USE_COLOR

				vColor.xyz = ( position.y < 0.5 ) ? instanceColorStart : instanceColorEnd;

			#endif

			float aspect = resolution.x / resolution.y;

			// camera space
			vec4 start = modelViewMatrix * vec4( instanceStart, 1.0 );
			vec4 end = modelViewMatrix * vec4( instanceEnd, 1.0 );

			#ifdef USE_DASH

				float lineDistanceStart = dashScale * instanceDistanceStart;
				float lineDistanceEnd = dashScale * instanceDistanceEnd;

			#endif

			#ifdef WORLD_UNITS

				worldStart = start.xyz;
				worldEnd = end.xyz;

			#else

				vUv = uv;

			#endif

			// special case for perspective projection, and segments that terminate either in, or behind, the camera plane
			// clearly the gpu firmware has a way of addressing this issue when projecting into ndc space
			// but we need to perform ndc-space calculations in the shader, so we must address this issue directly
			// perhaps there is a more elegant solution -- WestLangley

			bool perspective = ( projectionMatrix[ 2 ][ 3 ] == - 1.0 ); // 4th entry in the 3rd column

			if ( perspective ) {

				if ( start.z < 0.0 && end.z >= 0.0 ) {

					float alpha = trimSegmentAlpha( start, end );
					end.xyz = mix( start.xyz, end.xyz, alpha );

					#ifdef USE_DASH

						lineDistanceEnd = mix( lineDistanceStart, lineDistanceEnd, alpha );

					#endif

				} else if ( end.z < 0.0 && start.z >= 0.0 ) {

					float alpha = trimSegmentAlpha( end, start );
					start.xyz = mix( end.xyz, start.xyz, alpha );

					#ifdef USE_DASH

						lineDistanceStart = mix( lineDistanceEnd, lineDistanceStart, alpha );

					#endif

				}

			}

			#ifdef USE_DASH

				vLineDistance = ( position.y < 0.5 ) ? lineDistanceStart : lineDistanceEnd;
				vUv = uv;

			#endif

			// clip space
			vec4 clipStart = projectionMatrix * start;
			vec4 clipEnd = projectionMatrix * end;

			// ndc space
			vec3 ndcStart = clipStart.xyz / clipStart.w;
			vec3 ndcEnd = clipEnd.xyz / clipEnd.w;

			// direction
			vec2 dir = ndcEnd.xy - ndcStart.xy;

			// account for clip-space aspect ratio
			dir.x *= aspect;
			dir = normalize( dir );

			#ifdef WORLD_UNITS

				vec3 worldDir = normalize( end.xyz - start.xyz );
				vec3 tmpFwd = perspective ? normalize( mix( start.xyz, end.xyz, 0.5 ) ) : vec3( 0.0, 0.0, - 1.0 );
				vec3 worldUp = normalize( cross( worldDir, tmpFwd ) );
				vec3 worldFwd = cross( worldDir, worldUp );
				worldPos = position.y < 0.5 ? start: end;

				// height offset
				float hw = linewidth * 0.5;
				worldPos.xyz += position.x < 0.0 ? hw * worldUp : - hw * worldUp;

				// don't extend the line if we're rendering dashes because we
				// won't be rendering the endcaps
				#ifndef USE_DASH

					// cap extension
					worldPos.xyz += position.y < 0.5 ? - hw * worldDir : hw * worldDir;

					// add width to the box
					worldPos.xyz += worldFwd * hw;

					// endcaps
					if ( position.y > 1.0 || position.y < 0.0 ) {

						worldPos.xyz -= worldFwd * 2.0 * hw;

					}

				#endif

				// project the worldpos
				vec4 clip = projectionMatrix * worldPos;

				// shift the depth of the projected points so the line
				// segments overlap neatly
				vec3 clipPose = ( position.y < 0.5 ) ? ndcStart : ndcEnd;

				// only shift the depth of vertices in front of the camera (#35137)
				if ( clip.w > 0.0 ) clip.z = clipPose.z * clip.w;

			#else

				vec2 offset = vec2( dir.y, - dir.x );
				// undo aspect ratio adjustment
				dir.x /= aspect;
				offset.x /= aspect;

				// sign flip
				if ( position.x < 0.0 ) offset *= - 1.0;

				// endcaps
				if ( position.y < 0.0 ) {

					offset += - dir;

				} else if ( position.y > 1.0 ) {

					offset += dir;

				}

				// adjust for linewidth
				offset *= linewidth;

				// adjust for clip-space to screen-space conversion // maybe resolution should be based on viewport ...
				offset /= resolution.y;

				// select end
				vec4 clip = ( position.y < 0.5 ) ? clipStart : clipEnd;

				// back to clip space
				offset *= clip.w;

				clip.xy += offset;

			#endif

			gl_Position = clip;

			vec4 mvPosition = ( position.y < 0.5 ) ? start : end; // this is an approximation

			#include <logdepthbuf_vertex>
			#include <clipping_planes_vertex>
			#include <fog_vertex>

		}
		`,fragmentShader:`
		uniform vec3 diffuse;
		uniform float opacity;
		uniform float linewidth;

		#ifdef USE_DASH

			uniform float dashOffset;
			uniform float dashSize;
			uniform float gapSize;

		#endif

		varying float vLineDistance;

		#ifdef WORLD_UNITS

			varying vec4 worldPos;
			varying vec3 worldStart;
			varying vec3 worldEnd;

			#ifdef USE_DASH

				varying vec2 vUv;

			#endif

		#else

			varying vec2 vUv;

		#endif

		#include <common>
		#include <color_pars_fragment>
		#include <fog_pars_fragment>
		#include <logdepthbuf_pars_fragment>
		#include <clipping_planes_pars_fragment>

		vec2 closestLineToLine(vec3 p1, vec3 p2, vec3 p3, vec3 p4) {

			float mua;
			float mub;

			vec3 p13 = p1 - p3;
			vec3 p43 = p4 - p3;

			vec3 p21 = p2 - p1;

			float d1343 = dot( p13, p43 );
			float d4321 = dot( p43, p21 );
			float d1321 = dot( p13, p21 );
			float d4343 = dot( p43, p43 );
			float d2121 = dot( p21, p21 );

			float denom = d2121 * d4343 - d4321 * d4321;

			float numer = d1343 * d4321 - d1321 * d4343;

			mua = numer / denom;
			mua = clamp( mua, 0.0, 1.0 );
			mub = ( d1343 + d4321 * ( mua ) ) / d4343;
			mub = clamp( mub, 0.0, 1.0 );

			return vec2( mua, mub );

		}

		void main() {

			float alpha = opacity;
			vec4 diffuseColor = vec4( diffuse, alpha );

			#include <clipping_planes_fragment>

			#ifdef USE_DASH

				if ( vUv.y < - 1.0 || vUv.y > 1.0 ) discard; // discard endcaps

				if ( mod( vLineDistance + dashOffset, dashSize + gapSize ) > dashSize ) discard; // todo - FIX

			#endif

			#ifdef WORLD_UNITS

				float len;

				if ( isOrthographic ) {

					// View rays are parallel to the z axis so the distance reduces to camera-space XY
					vec2 lineDir = worldEnd.xy - worldStart.xy;
					float t = clamp( dot( worldPos.xy - worldStart.xy, lineDir ) / dot( lineDir, lineDir ), 0.0, 1.0 );
					len = length( worldStart.xy + lineDir * t - worldPos.xy );

				} else {

					// Find the closest points on the view ray and the line segment
					vec3 rayEnd = normalize( worldPos.xyz ) * 1e5;
					vec3 lineDir = worldEnd - worldStart;
					vec2 params = closestLineToLine( worldStart, worldEnd, vec3( 0.0, 0.0, 0.0 ), rayEnd );

					vec3 p1 = worldStart + lineDir * params.x;
					vec3 p2 = rayEnd * params.y;
					vec3 delta = p1 - p2;
					len = length( delta );

				}

				float norm = len / linewidth;

				#ifndef USE_DASH

					#ifdef USE_ALPHA_TO_COVERAGE

						float dnorm = fwidth( norm );
						alpha = 1.0 - smoothstep( 0.5 - dnorm, 0.5 + dnorm, norm );

					#else

						if ( norm > 0.5 ) {

							discard;

						}

					#endif

				#endif

			#else

				#ifdef USE_ALPHA_TO_COVERAGE

					// artifacts appear on some hardware if a derivative is taken within a conditional
					float a = vUv.x;
					float b = ( vUv.y > 0.0 ) ? vUv.y - 1.0 : vUv.y + 1.0;
					float len2 = a * a + b * b;
					float dlen = fwidth( len2 );

					if ( abs( vUv.y ) > 1.0 ) {

						alpha = 1.0 - smoothstep( 1.0 - dlen, 1.0 + dlen, len2 );

					}

				#else

					if ( abs( vUv.y ) > 1.0 ) {

						float a = vUv.x;
						float b = ( vUv.y > 0.0 ) ? vUv.y - 1.0 : vUv.y + 1.0;
						float len2 = a * a + b * b;

						if ( len2 > 1.0 ) discard;

					}

				#endif

			#endif

			#include <logdepthbuf_fragment>
			#include <color_fragment>

			gl_FragColor = vec4( diffuseColor.rgb, alpha );

			#include <tonemapping_fragment>
			#include <colorspace_fragment>
			#include <fog_fragment>
			#include <premultiplied_alpha_fragment>

		}
		`};var Zs=class extends Pi{constructor(t){super({type:"LineMaterial",uniforms:vu.clone(kn.line.uniforms),vertexShader:kn.line.vertexShader,fragmentShader:kn.line.fragmentShader,clipping:!0}),this.isLineMaterial=!0,this.setValues(t)}get color(){return this.uniforms.diffuse.value}set color(t){this.uniforms.diffuse.value=t}get worldUnits(){return"WORLD_UNITS"in this.defines}set worldUnits(t){t===!0!==this.worldUnits&&(this.needsUpdate=!0),t===!0?this.defines.WORLD_UNITS="":delete this.defines.WORLD_UNITS}get linewidth(){return this.uniforms.linewidth.value}set linewidth(t){this.uniforms.linewidth&&(this.uniforms.linewidth.value=t)}get dashed(){return"USE_DASH"in this.defines}set dashed(t){t===!0!==this.dashed&&(this.needsUpdate=!0),t===!0?this.defines.USE_DASH="":delete this.defines.USE_DASH}get dashScale(){return this.uniforms.dashScale.value}set dashScale(t){this.uniforms.dashScale.value=t}get dashSize(){return this.uniforms.dashSize.value}set dashSize(t){this.uniforms.dashSize.value=t}get dashOffset(){return this.uniforms.dashOffset.value}set dashOffset(t){this.uniforms.dashOffset.value=t}get gapSize(){return this.uniforms.gapSize.value}set gapSize(t){this.uniforms.gapSize.value=t}get opacity(){return this.uniforms.opacity.value}set opacity(t){this.uniforms&&(this.uniforms.opacity.value=t)}get resolution(){return this.uniforms.resolution.value}set resolution(t){this.uniforms.resolution.value.copy(t)}get alphaToCoverage(){return"USE_ALPHA_TO_COVERAGE"in this.defines}set alphaToCoverage(t){this.defines&&(t===!0!==this.alphaToCoverage&&(this.needsUpdate=!0),t===!0?this.defines.USE_ALPHA_TO_COVERAGE="":delete this.defines.USE_ALPHA_TO_COVERAGE)}};var x3=new ci,Bp=new B,Js=class extends lu{constructor(){super(),this.isLineSegmentsGeometry=!0,this.type="LineSegmentsGeometry";let t=[-1,2,0,1,2,0,-1,1,0,1,1,0,-1,0,0,1,0,0,-1,-1,0,1,-1,0],n=[-1,2,1,2,-1,1,1,1,-1,-1,1,-1,-1,-2,1,-2],i=[0,2,1,2,3,1,2,4,3,4,5,3,4,6,5,6,7,5];this.setIndex(i),this.setAttribute("position",new qe(t,3)),this.setAttribute("uv",new qe(n,2))}applyMatrix4(t){let n=this.attributes.instanceStart,i=this.attributes.instanceEnd;return n!==void 0&&(n.applyMatrix4(t),i.applyMatrix4(t),n.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this}setPositions(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new Hs(n,6,1);return this.setAttribute("instanceStart",new Zi(i,3,0)),this.setAttribute("instanceEnd",new Zi(i,3,3)),this.instanceCount=this.attributes.instanceStart.count,this.computeBoundingBox(),this.computeBoundingSphere(),this}setColors(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new Hs(n,6,1);return this.setAttribute("instanceColorStart",new Zi(i,3,0)),this.setAttribute("instanceColorEnd",new Zi(i,3,3)),this}fromWireframeGeometry(t){return this.setPositions(t.attributes.position.array),this}fromEdgesGeometry(t){return this.setPositions(t.attributes.position.array),this}fromMesh(t){return this.fromWireframeGeometry(new nu(t.geometry)),this}fromLineSegments(t){let n=t.geometry;return this.setPositions(n.attributes.position.array),this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new ci);let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;t!==void 0&&n!==void 0&&(this.boundingBox.setFromBufferAttribute(t),x3.setFromBufferAttribute(n),this.boundingBox.union(x3))}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Yi),this.boundingBox===null&&this.computeBoundingBox();let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;if(t!==void 0&&n!==void 0){let i=this.boundingSphere.center;this.boundingBox.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)Bp.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared(Bp)),Bp.fromBufferAttribute(n,s),r=Math.max(r,i.distanceToSquared(Bp));this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&console.error("THREE.LineSegmentsGeometry.computeBoundingSphere(): Computed radius is NaN. The instanced position data is likely to have NaN values.",this)}}toJSON(){}};var J_=new de,_3=new B,v3=new B,pn=new de,mn=new de,wr=new de,K_=new B,j_=new ve,gn=new cu,b3=new B,kp=new ci,zp=new Yi,Tr=new de,Er,Jo;function M3(e,t,n){return Tr.set(0,0,-t,1).applyMatrix4(e.projectionMatrix),Tr.multiplyScalar(1/Tr.w),Tr.x=Jo/n.width,Tr.y=Jo/n.height,Tr.applyMatrix4(e.projectionMatrixInverse),Tr.multiplyScalar(1/Tr.w),Math.abs(Math.max(Tr.x,Tr.y))}function ak(e,t){let n=e.matrixWorld,i=e.geometry,r=i.attributes.instanceStart,s=i.attributes.instanceEnd,o=Math.min(i.instanceCount,r.count);for(let a=0,l=o;a<l;a++){gn.start.fromBufferAttribute(r,a),gn.end.fromBufferAttribute(s,a),gn.applyMatrix4(n);let c=new B,u=new B;Er.distanceSqToSegment(gn.start,gn.end,u,c),u.distanceTo(c)<Jo*.5&&t.push({point:u,pointOnLine:c,distance:Er.origin.distanceTo(u),object:e,face:null,faceIndex:a,uv:null,uv1:null})}}function lk(e,t,n){let i=t.projectionMatrix,s=e.material.resolution,o=e.matrixWorld,a=e.geometry,l=a.attributes.instanceStart,c=a.attributes.instanceEnd,u=Math.min(a.instanceCount,l.count),h=-t.near;Er.at(1,wr),wr.w=1,wr.applyMatrix4(t.matrixWorldInverse),wr.applyMatrix4(i),wr.multiplyScalar(1/wr.w),wr.x*=s.x/2,wr.y*=s.y/2,wr.z=0,K_.copy(wr),j_.multiplyMatrices(t.matrixWorldInverse,o);for(let f=0,d=u;f<d;f++){if(pn.fromBufferAttribute(l,f),mn.fromBufferAttribute(c,f),pn.w=1,mn.w=1,pn.applyMatrix4(j_),mn.applyMatrix4(j_),pn.z>h&&mn.z>h)continue;if(pn.z>h){let M=pn.z-mn.z,v=(pn.z-h)/M;pn.lerp(mn,v)}else if(mn.z>h){let M=mn.z-pn.z,v=(mn.z-h)/M;mn.lerp(pn,v)}pn.applyMatrix4(i),mn.applyMatrix4(i),pn.multiplyScalar(1/pn.w),mn.multiplyScalar(1/mn.w),pn.x*=s.x/2,pn.y*=s.y/2,mn.x*=s.x/2,mn.y*=s.y/2,gn.start.copy(pn),gn.start.z=0,gn.end.copy(mn),gn.end.z=0;let y=gn.closestPointToPointParameter(K_,!0);gn.at(y,b3);let m=_u.lerp(pn.z,mn.z,y),g=m>=-1&&m<=1,_=K_.distanceTo(b3)<Jo*.5;if(g&&_){gn.start.fromBufferAttribute(l,f),gn.end.fromBufferAttribute(c,f),gn.start.applyMatrix4(o),gn.end.applyMatrix4(o);let M=new B,v=new B;Er.distanceSqToSegment(gn.start,gn.end,v,M),n.push({point:v,pointOnLine:M,distance:Er.origin.distanceTo(v),object:e,face:null,faceIndex:f,uv:null,uv1:null})}}}var Ll=class extends Tn{constructor(t=new Js,n=new Zs({color:Math.random()*16777215})){super(t,n),this.isLineSegments2=!0,this.type="LineSegments2"}computeLineDistances(){let t=this.geometry,n=t.attributes.instanceStart,i=t.attributes.instanceEnd,r=new Float32Array(2*n.count);for(let o=0,a=0,l=n.count;o<l;o++,a+=2)_3.fromBufferAttribute(n,o),v3.fromBufferAttribute(i,o),r[a]=a===0?0:r[a-1],r[a+1]=r[a]+_3.distanceTo(v3);let s=new Hs(r,2,1);return t.setAttribute("instanceDistanceStart",new Zi(s,1,0)),t.setAttribute("instanceDistanceEnd",new Zi(s,1,1)),this}raycast(t,n){let i=this.material.worldUnits,r=t.camera;if(r===null&&!i&&console.error('LineSegments2: "Raycaster.camera" needs to be set in order to raycast against LineSegments2 while worldUnits is set to false.'),i===!1&&(this.material.resolution.x===0||this.material.resolution.y===0))return;let s=t.params.Line2!==void 0&&t.params.Line2.threshold||0;Er=t.ray;let o=this.matrixWorld,a=this.geometry,l=this.material;Jo=l.linewidth+s,a.boundingSphere===null&&a.computeBoundingSphere(),zp.copy(a.boundingSphere).applyMatrix4(o);let c;if(i)c=Jo*.5;else{let h=Math.max(r.near,zp.distanceToPoint(Er.origin));c=M3(r,h,l.resolution)}if(zp.radius+=c,Er.intersectsSphere(zp)===!1)return;a.boundingBox===null&&a.computeBoundingBox(),kp.copy(a.boundingBox).applyMatrix4(o);let u;if(i)u=Jo*.5;else{let h=Math.max(r.near,kp.distanceToPoint(Er.origin));u=M3(r,h,l.resolution)}kp.expandByScalar(u),Er.intersectsBox(kp)!==!1&&(i?ak(this,n):lk(this,r,n))}onBeforeRender(t){let n=this.material.uniforms;n&&n.resolution&&(t.getViewport(J_),this.material.uniforms.resolution.value.set(J_.z,J_.w))}};var S3=6e4,ck=42,w3=[1,1,.75,.55,.4],uk=45,fk=4,hk=9,Gp=class{constructor(t,n,i,r,s,o,a){this.canvas=t;this.model=n;this.path=i;this.coarse=r;this.columns=s;this.quantity=o;this.shown=a;this.renderer=new Dp({canvas:t,antialias:!0,alpha:!0});let[l,c,u,h]=Ax(n,i),f=n.field?.top??0,d=Math.max(n.field?.thick??0,n.field?.deepest??0,1),p=Math.min(dk(i)-f,Math.max(c-l,h-u)/4);this.box=[new B(l,u,f-d),new B(c,h,f+Math.max(p,0))],this.centre=this.box[0].clone().add(this.box[1]).multiplyScalar(.5),this.radius=Math.max(this.box[0].distanceTo(this.box[1])/2,1),this.camera.up.set(0,0,1),this.controls=new Op(this.camera,t),this.controls.enableZoom=!1,this.controls.addEventListener("change",()=>{this.move(),this.redraw()}),this.controls.addEventListener("start",()=>{this.fitted=null}),t.addEventListener("wheel",m=>this.wheel(m),{passive:!1}),this.scene.add(new au(16777215,1.7));let y=new ou(16777215,1.6);y.position.set(-.6,-.35,1),this.scene.add(y),this.fitted="corner",this.resize(),this.rebuild()}canvas;model;path;coarse;columns;quantity;shown;scene=new Zc;camera=new Wo;renderer;controls;centre;radius;box;drawn=[];lit=null;rows=[];waiting=!1;flight=0;slow={still:[],moving:[]};rest=0;moving=!1;level=0;frames=[];size={width:0,height:0};fitted=null;onDraw=()=>{};set(t,n){this.quantity=t,this.shown=n,this.rebuild()}resize(){let t=this.canvas.clientWidth,n=this.canvas.clientHeight;if(!t||!n)return;this.size={width:t,height:n},this.renderer.setPixelRatio(this.pixels()),this.renderer.setSize(t,n,!1);let i=this.radius*.86,r=t/n,s=r>=1?i*r:i,o=r>=1?i:i/r;Object.assign(this.camera,{left:-s,right:s,top:o,bottom:-o,near:-this.radius*60,far:this.radius*60}),this.camera.updateProjectionMatrix(),this.fitted&&this.look(this.fitted,!1),this.redraw()}look(t,n=!0){let i={corner:[-.55,-1,.95],above:[0,-1e-4,1],front:[0,-1,.02],side:[1,0,.02]}[t],r=new B(...i).normalize().multiplyScalar(this.radius*4);this.fly(this.centre.clone(),this.fitting(r),r,n),this.fitted=t}fitting(t){let n=new B(0,0,1).cross(t).normalize(),i=t.clone().cross(n).normalize(),r=0,s=0;for(let o=0;o<8;o++){let a=new B(this.box[o&1].x,this.box[o>>1&1].y,this.box[o>>2].z).sub(this.centre);r=Math.max(r,Math.abs(a.dot(n))),s=Math.max(s,Math.abs(a.dot(i)))}return .94*Math.min(this.camera.right/Math.max(r,1e-6),this.camera.top/Math.max(s,1e-6))}goTo(t,n){let i=this.middle(t),r=Math.min(40,Math.max(1,this.radius/Math.max(n,this.radius/40)));this.fly(i,r,this.camera.position.clone().sub(this.controls.target),!0)}get target(){let{x:t,y:n,z:i}=this.controls.target;return[t,n,i,this.camera.zoom]}turn(t,n){this.fitted=null;let i=this.camera.position.clone().sub(this.controls.target),r=i.length(),s=Math.atan2(i.y,i.x)+t,o=Math.min(Math.PI/2-1e-4,Math.max(-Math.PI/2+1e-4,Math.asin(i.z/r)+n));i.set(Math.cos(o)*Math.cos(s),Math.cos(o)*Math.sin(s),Math.sin(o)).multiplyScalar(r),this.camera.position.copy(this.controls.target).add(i),this.controls.update(),this.move(),this.redraw()}zoom(t){this.fitted=null,this.camera.zoom=Math.min(400,Math.max(.3,this.camera.zoom*t)),this.camera.updateProjectionMatrix(),this.move(),this.redraw()}light(t){if(this.rows=[...t],this.lit&&(this.scene.remove(this.lit),this.lit.geometry.dispose(),this.lit=null),this.rows.length){let n=new Js().setPositions(this.ends(this.rows)),i=new Zs({color:new kt(Hi("lit")),linewidth:5,depthTest:!1,transparent:!0,opacity:.9});this.lit=new Ll(n,i),this.lit.renderOrder=5,this.scene.add(this.lit)}this.redraw()}pick(t,n){let i=this.canvas.getBoundingClientRect(),r=t-i.left,s=n-i.top;this.camera.updateMatrixWorld();let o=this.camera.projectionMatrix.clone().multiply(this.camera.matrixWorldInverse).elements,{x:a,y:l,z:c,n:u}=this.path,h=i.width/2,f=i.height/2,d=null,p=hk,y=1/0;for(let m=0;m<u;m++){if(!this.visible(m))continue;let g=(o[0]*a[m]+o[4]*l[m]+o[8]*c[m]+o[12]+1)*h-r,_=(1-o[1]*a[m]-o[5]*l[m]-o[9]*c[m]-o[13])*f-s,M=m+1,v=(o[0]*a[M]+o[4]*l[M]+o[8]*c[M]+o[12]+1)*h-r-g,S=(1-o[1]*a[M]-o[5]*l[M]-o[9]*c[M]-o[13])*f-s-_,b=v*v+S*S,x=b>0?Math.min(1,Math.max(0,-(g*v+_*S)/b)):0,w=Math.hypot(g+x*v,_+x*S);if(w>p+1.5)continue;let A=o[2]*a[m]+o[6]*l[m]+o[10]*c[m];(w<p-1.5||A<y)&&(d=m,p=Math.min(p,w),y=A)}return d}project(t){let{x:n,y:i,z:r}=this.middle(t);return this.projectPoint(n,i,r)}projectPoint(t,n,i){this.camera.updateMatrixWorld();let r=new B(t,n,i).project(this.camera);return[(r.x+1)/2*this.size.width,(1-r.y)/2*this.size.height]}rebuild(){for(let t of this.drawn){this.scene.remove(t);let n=t;n.geometry?.dispose(),n.material?.dispose()}this.drawn=[],this.slow={still:[],moving:[]},this.shown.stock&&this.model.field&&this.addStock();for(let t of this.model.keep_out)this.addKeepOut(t.low,t.high);this.addLines(),this.addZero(),this.applyLevel(),this.light(this.rows)}redraw(){clearTimeout(this.rest),this.rest=window.setTimeout(()=>this.settle(),250),!this.waiting&&(this.waiting=!0,requestAnimationFrame(t=>{this.waiting=!1,this.moving&&this.watch(t),this.draw(),this.onDraw()}))}move(){this.moving||(this.moving=!0,this.frames=[],this.applyLevel())}settle(){this.moving&&(this.moving=!1,this.applyLevel(),this.draw())}draw(){this.renderer.render(this.scene,this.camera)}watch(t){if(this.frames.push(t),this.frames.length<5)return;let n=(t-this.frames[0])/(this.frames.length-1);this.frames=[t],!(n<ck||this.level+1>=w3.length)&&(this.level++,this.applyLevel())}applyLevel(){let t=this.moving&&this.level>0;for(let i of this.slow.still)i.visible=!t;for(let i of this.slow.moving)i.visible=t;let n=this.pixels();Math.abs(this.renderer.getPixelRatio()-n)>.001&&this.renderer.setPixelRatio(n)}pixels(){return Math.min(devicePixelRatio||1,2)*(this.moving?w3[this.level]:1)}fly(t,n,i,r){let s=this.controls.target.clone(),o=this.camera.zoom,a=this.camera.position.clone().sub(s),l=performance.now(),c=++this.flight,u=!r||matchMedia("(prefers-reduced-motion: reduce)").matches;this.fitted=null;let h=()=>{if(c!==this.flight)return;let f=u?1:Math.min(1,(performance.now()-l)/350),d=f*f*(3-2*f);this.controls.target.lerpVectors(s,t,d),this.camera.position.copy(this.controls.target).add(a.clone().lerp(i,d).setLength(this.radius*4)),this.camera.zoom=o*Math.pow(n/o,d),f<1&&this.move(),this.camera.updateProjectionMatrix(),this.controls.update(),this.redraw(),f<1&&requestAnimationFrame(h)};h()}wheel(t){document.activeElement!==this.canvas&&!t.ctrlKey||(t.preventDefault(),this.zoom(Math.exp(-t.deltaY*.0015)))}middle(t){let{x:n,y:i,z:r}=this.path;return new B((n[t]+n[t+1])/2,(i[t]+i[t+1])/2,(r[t]+r[t+1])/2)}visible(t){let{kind:n,tool:i}=this.path;return n[t]===4||this.shown.tool!==null&&i[t]!==this.shown.tool?!1:n[t]===0?this.shown.rapids:n[t]===1?this.shown.air:!0}ends(t,n=this.path){let{x:i,y:r,z:s}=n,o=new Float32Array(t.length*6);return t.forEach((a,l)=>o.set([i[a],r[a],s[a],i[a+1],r[a+1],s[a+1]],l*6)),o}addLines(){let t=[[],[],[],[]];for(let i=0;i<this.path.n;i++)this.visible(i)&&t[this.path.kind[i]].push(i);let n=this.radius/45;if(this.addHair(t[0],new Sl({color:new kt(Hi("rapid")),dashSize:n,gapSize:n})),this.addHair(t[1],new Ji({color:new kt(Hi("air"))})),this.addCuts(t[2]),t[3].length){let i=new Js().setPositions(this.ends(t[3])),r=new Zs({color:new kt(Hi("halt")),linewidth:5,dashed:!0,dashSize:n/2,gapSize:n/3});this.add(new Ll(i,r)).computeLineDistances()}}addHair(t,n){if(!t.length)return;let i=new dn().setAttribute("position",new hn(this.ends(t),3)),r=this.add(new rs(i,n));n instanceof Sl&&r.computeLineDistances()}addCuts(t){if(!t.length)return;let n=[];for(let s=0;s<this.coarse.n;s++)this.coarse.kind[s]===2&&(this.shown.tool===null||this.coarse.tool[s]===this.shown.tool)&&n.push(s);if(this.slow.moving.push(this.hairs(n,this.coarse,n.length>S3/20?fk:1)),t.length>S3){this.level=Math.max(this.level,1),this.slow.still.push(this.hairs(t,this.path,1));return}let i=this.colours(t,this.path),r=new Js().setPositions(this.ends(t)).setColors(i);this.slow.still.push(this.add(new Ll(r,new Zs({vertexColors:!0,linewidth:2.5}))))}hairs(t,n,i){let r=[],s=[];for(let l of t){let c=r.length-1;c>=0&&s[c]===l-1&&l-r[c]<i&&n.tool[l]===n.tool[r[c]]?s[c]=l:(r.push(l),s.push(l))}let o=this.ends(r,n);s.forEach((l,c)=>o.set([n.x[l+1],n.y[l+1],n.z[l+1]],c*6+3));let a=new dn().setAttribute("position",new hn(o,3)).setAttribute("color",new hn(this.colours(r,n),3));return this.add(new rs(a,new Ji({vertexColors:!0})))}colours(t,n){let i=Ls(),r=[];for(let a=0;a<256;a++){let l=new kt(Ja(a/255,i));r.push([l.r,l.g,l.b])}let s=new kt(Hi("plain-cut")),o=new Float32Array(t.length*6);return t.forEach((a,l)=>{let c=this.quantity.at(n,a),[u,h,f]=Number.isNaN(c)?[s.r,s.g,s.b]:r[Math.round(Math.min(1,Math.max(0,c))*255)];o.set([u,h,f,u,h,f],l*6)}),o}add(t){return this.scene.add(t),this.drawn.push(t),t}addStock(){let t=this.model.field,n=t.top-(t.thick??Math.max(t.deepest*1.15,this.radius/30)),i=new Ml({color:new kt(Hi("stock")),side:Ii,polygonOffset:!0,polygonOffsetFactor:1.5,polygonOffsetUnits:2});if(t.cut&&t.nx&&t.ny){let l=this.add(new Tn(this.surface(t.nx,t.ny,n,1),i)),c=Math.ceil(Math.max(t.nx,t.ny)/uk);c>1&&Math.min(t.nx,t.ny)>2*c&&(this.slow.still.push(l),this.slow.moving.push(this.add(new Tn(this.surface(t.nx,t.ny,n,c),i.clone()))))}let[r,s,o]=[t.x[1]-t.x[0],t.y[1]-t.y[0],t.top-n],a=new bl(new os(r,s,o));a.translate((t.x[0]+t.x[1])/2,(t.y[0]+t.y[1])/2,(t.top+n)/2),this.add(new rs(a,new Ji({color:new kt(Hi("edge"))})))}surface(t,n,i,r){let s=this.model.field,o=this.columns.numbers(s.cut),a=Math.ceil(t/r),l=Math.ceil(n/r),c=(M,v)=>Math.max(s.top-o[v*r*t+M*r],i),u=M=>s.x[0]+(s.x[1]-s.x[0])*(M/(a-1)),h=M=>s.y[0]+(s.y[1]-s.y[0])*(M/(l-1)),f=new Float32Array(a*l*3),d=[];for(let M=0;M<l;M++)for(let v=0;v<a;v++)f.set([u(v),h(M),c(v,M)],(M*a+v)*3);let p=s.thick===null?-1/0:i+.001;for(let M=0;M+1<l;M++)for(let v=0;v+1<a;v++){let S=M*a+v,b=S+1,x=S+a,w=x+1;Math.max(f[S*3+2],f[b*3+2],f[x*3+2],f[w*3+2])<=p||d.push(S,b,w,S,w,x)}let y=[],m=(M,v,S,b)=>{let x=[u(M),h(v),c(M,v)],w=[u(S),h(b),c(S,b)];y.push(...x,x[0],x[1],i,...w,...w,x[0],x[1],i,w[0],w[1],i)};for(let M=0;M+1<a;M++)m(M,0,M+1,0),m(M,l-1,M+1,l-1);for(let M=0;M+1<l;M++)m(0,M,0,M+1),m(a-1,M,a-1,M+1);let g=new Float32Array(f.length+y.length);g.set(f),g.set(y,f.length);for(let M=f.length/3;M<g.length/3;M++)d.push(M);let _=new dn().setAttribute("position",new hn(g,3));return _.setIndex(d),_.computeVertexNormals(),_}addKeepOut(t,n){let i=new os(n[0]-t[0],n[1]-t[1],n[2]-t[2]);i.translate((t[0]+n[0])/2,(t[1]+n[1])/2,(t[2]+n[2])/2),this.add(new Tn(i,new Ml({color:new kt(Hi("keep-out")),transparent:!0,opacity:.45}))),this.add(new rs(new bl(i),new Ji({color:new kt(Hi("halt"))})))}addZero(){let t=this.radius/9,n=new dn;n.setAttribute("position",new hn(new Float32Array([0,0,0,t,0,0,0,0,0,0,t,0,0,0,0,0,0,t]),3));let i=this.add(new rs(n,new Ji({color:new kt(Hi("ink")),depthTest:!1})));i.renderOrder=4}get axis(){return this.radius/9}};function dk(e){let t=-1/0;for(let n=0;n<e.n;n++)e.kind[n]!==4&&(t=Math.max(t,e.z[n],e.z[n+1]));return t}var T3=60;async function pk(){if(document.documentElement.classList.add("scripted"),vA(),mk(),!document.getElementById("model"))return;let e=new TextDecoder,t=JSON.parse(e.decode(await Ch("model"))),n=new Ah(await Ch("columns")),i=e.decode(await Ch("text")).split(`
`),r=new Q_(t,n,i);Object.assign(window,r.hooks()),document.documentElement.dataset.ready="yes"}function mk(){let e=()=>[...document.querySelectorAll("details:not([open])")],t=[];addEventListener("beforeprint",()=>{t=e();for(let n of t)n.open=!0}),addEventListener("afterprint",()=>{for(let n of t)n.open=!1})}var Q_=class{constructor(t,n,i){this.model=t;this.columns=n;this.fine=n.path(t.paths[0]),this.coarse=n.path(t.paths[1]),this.all=gA(t,this.fine),this.quantity=this.all.find(s=>Sx(s,this.fine)>.3)??this.all[this.all.length-1],t.findings.forEach((s,o)=>{this.findingRows.push(s.rows?n.whole(s.rows):new Int32Array),this.findingLines.push(n.whole(s.lines));for(let a of this.findingLines[o])E3(this.lineFindings,a,o);for(let a of this.findingRows[o])E3(this.rowFindings,a,o)});let r=t.kept?n.whole(t.kept):null;this.listing=new Ph(i,r?s=>r[s]:s=>s+1,t.lines,this.lineFindings,s=>this.toLine(s)),this.buildFigure(),this.buildStrips();for(let s of document.querySelectorAll("[data-show]"))s.addEventListener("click",()=>this.toFinding(Number(s.dataset.show),!0));_A(()=>{this.scene?.rebuild(),this.drawPlan(),this.drawLegend(),this.redrawStrips()})}model;columns;fine;coarse;all;quantity;shown={stock:!0,rapids:!0,air:!0,tool:null};scene=null;plan=null;planBox=Tt("figure",{class:"from-above"});status=Tt("p",{class:"status",role:"status"});legend=Tt("div",{class:"legend"});pins=Tt("div",{class:"pins","aria-hidden":"true"});marks=[];listing;lineFindings=new Map;rowFindings=new Map;findingRows=[];findingLines=[];chosen=null;buildFigure(){let t=document.getElementById("figure-root"),n=Tt("canvas",{tabindex:"0",class:"space",role:"img","aria-describedby":"figure-keys","aria-label":"The path of the tool in space, with the stock as it is left"}),i=Tt("div",{class:"space-box"},n,this.pins);t.append(this.controls(),this.legend,Tt("div",{class:"figures"},Tt("figure",{class:"in-space"},i,this.views(n),Tt("figcaption",{id:"figure-keys"},"Drag to turn; with the figure in focus: arrows turn, + and - or the wheel zoom, 0 shows all. Click the path for its line.")),this.planBox),this.status,Tt("div",{class:"text-box"},Tt("p",{class:"caption"},this.listing.whole?"The text of the program; a line in it leads to its place on the path.":"The text of the program where something points at it; the rest is left out of this page."),this.listing.element));try{this.scene=new Gp(n,this.model,this.fine,this.coarse,this.columns,this.quantity,this.shown)}catch{i.replaceChildren(Tt("p",{class:"aside"},"This browser cannot draw in space (WebGL is off); the drawing from above shows the same path."))}let r=this.scene;r&&(r.onDraw=()=>this.placePins(),this.pins.addEventListener("click",s=>{let o=Number(s.target.dataset.pin??-1);o>=0&&this.toFinding(o,!1)}),new ResizeObserver(()=>r.resize()).observe(n),this.listen(n,r)),this.drawLegend(),this.drawPlan(),this.say(null),new ResizeObserver(()=>this.fitPlan()).observe(this.planBox)}listen(t,n){let i=null;t.addEventListener("pointerdown",r=>{i=[r.clientX,r.clientY],t.focus({preventScroll:!0})}),t.addEventListener("pointerup",r=>{if(!i||Math.hypot(r.clientX-i[0],r.clientY-i[1])>4)return;let s=n.pick(r.clientX,r.clientY);s!==null&&this.toRow(s,!1)}),t.addEventListener("keydown",r=>{let s={ArrowLeft:[-.12,0],ArrowRight:[.12,0],ArrowUp:[0,.1],ArrowDown:[0,-.1]}[r.key];if(s)n.turn(s[0],s[1]);else if(r.key==="+"||r.key==="=")n.zoom(1.25);else if(r.key==="-")n.zoom(.8);else if(r.key==="0"||r.key==="Home")n.look("corner");else return;r.preventDefault()})}controls(){let t=Tt("select",{id:"quantity"});for(let r of this.all){let s=Tt("option",{value:r.key},r.label+(Sx(r,this.fine)>0?"":" (not known)"));s.selected=r===this.quantity,t.append(s)}t.addEventListener("change",()=>{this.quantity=this.all.find(r=>r.key===t.value),this.refresh()});let n=Tt("select",{id:"only-tool"},Tt("option",{value:""},"all tools"));this.model.tools.forEach(r=>n.append(Tt("option",{value:String(r.tool)},r.tool<0?"tool not named":`tool ${r.tool}`))),n.addEventListener("change",()=>{this.shown.tool=n.value===""?null:Number(n.value),this.refresh()});let i=(r,s)=>{let o=Tt("input",{type:"checkbox",id:`show-${r}`});return o.checked=this.shown[r],o.addEventListener("change",()=>{this.shown[r]=o.checked,this.refresh()}),Tt("label",{},o,s)};return Tt("div",{class:"controls"},Tt("label",{},"Coloured by ",t),this.model.tools.length>1?Tt("label",{},"Show ",n):null,i("stock","stock as it is left"),i("rapids","rapids"),i("air","feeds in the air"))}views(t){let n=Tt("div",{class:"views",role:"group","aria-label":"View of the figure"}),i=(r,s)=>{let o=Tt("button",{type:"button"},r);o.addEventListener("click",()=>{this.scene&&s(this.scene)}),n.append(o)};return i("corner",r=>r.look("corner")),i("above",r=>r.look("above")),i("front",r=>r.look("front")),i("right",r=>r.look("side")),i("nearer",r=>r.zoom(1.4)),i("farther",r=>r.zoom(1/1.4)),t.dataset.views="yes",n}refresh(){this.scene?.set(this.quantity,this.shown),this.drawLegend(),this.drawPlan(),this.redrawStrips()}drawLegend(){let t=Ls(),n=[];for(let s=0;s<=16;s++)n.push(Ja(s/16,t));let i=Tt("div",{class:"bar"});i.style.background=`linear-gradient(to right, ${n.join(",")})`;let r=Tt("div",{class:"ticks"});for(let[s,o]of this.quantity.ticks){let a=Tt("span",{},o);a.style.left=`${s*100}%`,s===0&&a.classList.add("first"),s===1&&a.classList.add("last"),r.append(a)}this.legend.replaceChildren(Tt("div",{class:"scale"},Tt("p",{},Tt("b",{},this.quantity.label),`: ${this.quantity.about}`),i,r),Tt("ul",{class:"lines"},Tt("li",{class:"cut"},"cut"),Tt("li",{class:"plain-cut"},"cut, not judged or not known"),Tt("li",{class:"air"},"feed in the air"),Tt("li",{class:"rapid"},"rapid"),this.fine.kind.includes(3)?Tt("li",{class:"crash"},"rapid in material"):null))}drawPlan(){let t=Math.max(240,Math.min(this.planBox.clientWidth||380,620));this.plan=Ex(this.model,this.coarse,this.fine,this.quantity,t,this.shown.tool,!0);let n=this.plan;n.svg.addEventListener("click",r=>{let s=r.target.closest("[data-pin]");if(s){this.toFinding(Number(s.dataset.pin),!1);return}let o=n.toMm(r),a=o&&this.nearest(o[0],o[1],9*n.perPixel());a!==null&&this.toRow(a,!1)});let i=["From above in the blank",this.model.field?"":"; no blank is known",this.model.hidden?`; ${this.model.hidden.toLocaleString("en")} moves are not drawn, as their place in the blank is not known`:"",this.model.off>0?`; drawn to within ${ze(this.model.off*this.model.scale)} ${this.model.unit} of the ${this.model.moves.toLocaleString("en")} moves`:""];this.planBox.dataset.width=String(t),this.planBox.replaceChildren(n.svg,Tt("figcaption",{},`${i.join("")}.`)),this.markPlan()}fitPlan(){let t=Math.max(240,Math.min(this.planBox.clientWidth,620));this.planBox.clientWidth&&Math.abs(t-Number(this.planBox.dataset.width))>20&&this.drawPlan()}nearest(t,n,i){let r=this.fine,s=null,o=i*i,a=-1/0;for(let l=0;l<r.n;l++){if(r.kind[l]>3||r.kind[l]===0&&!this.shown.rapids||this.shown.tool!==null&&r.tool[l]!==this.shown.tool)continue;let c=r.x[l+1]-r.x[l],u=r.y[l+1]-r.y[l],h=c*c+u*u,f=h>0?Math.min(1,Math.max(0,((t-r.x[l])*c+(n-r.y[l])*u)/h)):0,d=(r.x[l]+f*c-t)**2+(r.y[l]+f*u-n)**2,p=r.kind[l]===2?1:0;(d<o*.98||d<=o&&p>=a)&&(s=l,o=Math.max(d,1e-9),a=p)}return s}toFinding(t,n){let i=this.model.findings[t],r=document.querySelector(`[data-finding="${t}"]`);for(let o of document.querySelectorAll(".chosen"))o.classList.remove("chosen");r?.classList.add("chosen"),this.listing.show(i.line,this.findingLines[t]);let s=this.findingRows[t];this.scene?.light(s),i.row!==null&&this.scene?.goTo(i.row,this.span(i.row)),this.choose(i.row),this.say(i.row,t),n&&document.getElementById("path").scrollIntoView({behavior:A3(),block:"start"})}toRow(t,n){let i=this.rowFindings.get(t)??[];for(let s of document.querySelectorAll(".chosen"))s.classList.remove("chosen");for(let s of i)document.querySelector(`[data-finding="${s}"]`)?.classList.add("chosen");let r=this.fine.line[t];this.listing.show(r),this.scene?.light(this.rowsOfLine(r,t)),n&&this.scene?.goTo(t,this.span(t)),this.choose(t),this.say(t)}toLine(t){let n=this.rowOfLine(t),i=this.lineFindings.get(t)??[];for(let r of document.querySelectorAll(".chosen"))r.classList.remove("chosen");for(let r of i)document.querySelector(`[data-finding="${r}"]`)?.classList.add("chosen");this.listing.show(t),this.scene?.light(n===null?[]:this.rowsOfLine(t,n)),n!==null&&this.scene?.goTo(n,this.span(n)),this.choose(n),this.say(n,void 0,t)}span(t){let n=this.model.tools.find(i=>i.tool===this.fine.tool[t]);return Math.max((n?.diameter??6)*6,12)}rowOfLine(t){let{line:n,n:i,x:r,y:s,z:o}=this.fine,a=[],l=[],c=null,u=0;for(let h=0;h<i;h++)n[h]===t&&this.fine.kind[h]!==4?(u+=Math.hypot(r[h+1]-r[h],s[h+1]-s[h],o[h+1]-o[h]),a.push(h),l.push(u)):n[h]<t&&(c===null||n[h]>=n[c])&&(c=h);return a.length?a[l.findIndex(h=>h>=u/2)]:this.model.off>0?c:null}rowsOfLine(t,n){let i=[];for(let r=0;r<this.fine.n&&i.length<4e3;r++)this.fine.line[r]===t&&i.push(r);return i.length?i:[n]}choose(t){this.chosen=t,this.markPlan(),this.placePins()}markPlan(){let t=this.plan?.svg;if(!t||(t.querySelector(".here")?.remove(),this.chosen===null||!this.plan))return;let n=this.chosen,i=this.fine;this.plan.mark((i.x[n]+i.x[n+1])/2,(i.y[n]+i.y[n+1])/2)}say(t,n,i){let r=[];if(t===null&&i===void 0&&n===void 0)r.push("Nothing chosen: pick a finding above, the path or a line below.");else{let s=i??(n!==void 0?this.model.findings[n].line:this.fine.line[t]);r.push(Tt("b",{},`Line ${s.toLocaleString("en")}`)),t===null?r.push(": it moves the tool nowhere that could be drawn"):r.push(`: ${this.facts(t)}`);let o=n!==void 0?[n]:i!==void 0?this.lineFindings.get(i):this.rowFindings.get(t);for(let a of(o??[]).slice(0,6))r.push(" · ",gk(a,this.model.findings[a].rule))}this.status.replaceChildren(...r)}facts(t){let n=this.fine,{most:i,scale:r,unit:s}=this.model,a=[["rapid","feed in the air","cut","rapid in material"][n.kind[t]]??""];n.tool[t]>=0&&a.push(`tool ${n.tool[t]}`);let l=(c,u,h,f)=>{c[t]!==255&&a.push(`${h} ${ze(c[t]/254*u)} ${f}`)};return n.kind[t]===2&&(l(n.chip,i.chip*r,"chip",s),l(n.depth,i.depth*r,"depth",s),l(n.force,i.force,"force to","N"),n.share[t]!==255&&n.share[t]<198&&a.push(`${Math.round(n.share[t]/2)} % of F reached`)),a.push(`to X ${ze(n.x[t+1]*r,5)} Y ${ze(n.y[t+1]*r,5)} Z ${ze(n.z[t+1]*r,4)}`),a.join(", ")}placePins(){let t=this.scene;if(!t)return;let{width:n,height:i}=t.size,r=0,s=(l,c,u,h,f=-1)=>{if(l<-20||c<-20||l>n+20||c>i+20)return;let d=this.marks[r]??(this.marks[r]=this.pins.appendChild(Tt("span")));r++,d.className!==h&&(d.className=h),d.textContent!==u&&(d.textContent=u),d.dataset.pin=String(f),d.style.transform=`translate(${l.toFixed(1)}px, ${c.toFixed(1)}px)`,d.style.zIndex=String(T3+9-r)},o=t.axis*1.15;s(...t.projectPoint(o,0,0),"X","axis"),s(...t.projectPoint(0,o,0),"Y","axis"),s(...t.projectPoint(0,0,o),"Z","axis");let a=new Set;this.model.findings.forEach((l,c)=>{if(l.row===null||r>T3||this.shown.tool!==null&&l.tool!==null&&l.tool!==this.shown.tool)return;let[u,h]=t.project(l.row),f=`${Math.round(u/22)} ${Math.round(h/22)}`;a.has(f)||(a.add(f),s(u,h,String(c+1),`pin g-${l.grade}`,c))}),this.chosen!==null&&s(...t.project(this.chosen),"","target");for(let l of this.marks.splice(r))l.remove()}hooks(){return{gclintView:()=>this.scene?.target??null,gclintSpacePoint:(t,n,i)=>{let r=this.scene.canvas.getBoundingClientRect(),[s,o]=this.scene.projectPoint(t,n,i);return[r.left+s,r.top+o]},gclintPlanPoint:(t,n)=>this.plan.toScreen(t,n)}}buildStrips(){let t=[...document.querySelectorAll("[data-tool]")],n=()=>{let s=t.shift();s&&this.fillStrip(s)},i=()=>{n(),t.length&&setTimeout(i,0)};setTimeout(i,0),addEventListener("beforeprint",()=>{for(;t.length;)n()});let r=0;addEventListener("resize",()=>{clearTimeout(r),r=window.setTimeout(()=>this.redrawStrips(),200)})}redrawStrips(){for(let t of document.querySelectorAll("[data-tool]"))t.childElementCount&&this.fillStrip(t)}fillStrip(t){let n=this.model.tools[Number(t.dataset.tool)],i=Math.max(280,Math.min(t.clientWidth||640,1100)),r=Ex(this.model,this.coarse,this.fine,this.quantity,300,n.tool,!1).svg;t.replaceChildren(...pA(n,this.model,r,i,s=>{this.toRow(s,!0),document.getElementById("path").scrollIntoView({behavior:A3(),block:"start"})}))}};function E3(e,t,n){let i=e.get(t);i?i.push(n):e.set(t,[n])}function gk(e,t){let n=Tt("a",{href:`#finding-${e+1}`},`finding ${e+1}: ${t}`);return n.addEventListener("click",()=>{let i=document.getElementById(`finding-${e+1}`)?.closest("details");i&&(i.open=!0)}),n}function A3(){return matchMedia("(prefers-reduced-motion: reduce)").matches?"instant":"smooth"}pk().catch(e=>{document.getElementById("figure-root")?.append(Tt("p",{class:"aside"},`The figures could not be drawn: ${String(e)}`)),console.error(e)});})();
