"use strict";(()=>{function bn(e,t){return e==null||t==null?NaN:e<t?-1:e>t?1:e>=t?0:NaN}function Lr(e,t){return e==null||t==null?NaN:t<e?-1:t>e?1:t>=e?0:NaN}function oa(e){let t,n,i;e.length!==2?(t=bn,n=(a,l)=>bn(e(a),l),i=(a,l)=>e(a)-l):(t=e===bn||e===Lr?e:j3,n=e,i=e);function r(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<0?c=h+1:u=h}while(c<u)}return c}function s(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<=0?c=h+1:u=h}while(c<u)}return c}function o(a,l,c=0,u=a.length){let h=r(a,l,c,u-1);return h>c&&i(a[h-1],l)>-i(a[h],l)?h-1:h}return{left:r,center:o,right:s}}function j3(){return 0}function Sv(e){return e===null?NaN:+e}function*Q3(e,t){if(t===void 0)for(let n of e)n!=null&&(n=+n)>=n&&(yield n);else{let n=-1;for(let i of e)(i=t(i,++n,e))!=null&&(i=+i)>=i&&(yield i)}}var wv=oa(bn),aa=wv.right,e8=wv.left,n8=oa(Sv).center;var i8=Tv(Ev),r8=Tv(tC);function Tv(e){return function(t,n,i=n){if(!((n=+n)>=0))throw new RangeError("invalid rx");if(!((i=+i)>=0))throw new RangeError("invalid ry");let{data:r,width:s,height:o}=t;if(!((s=Math.floor(s))>=0))throw new RangeError("invalid width");if(!((o=Math.floor(o!==void 0?o:r.length/s))>=0))throw new RangeError("invalid height");if(!s||!o||!n&&!i)return t;let a=n&&e(n),l=i&&e(i),c=r.slice();return a&&l?(na(a,c,r,s,o),na(a,r,c,s,o),na(a,c,r,s,o),ia(l,r,c,s,o),ia(l,c,r,s,o),ia(l,r,c,s,o)):a?(na(a,r,c,s,o),na(a,c,r,s,o),na(a,r,c,s,o)):l&&(ia(l,r,c,s,o),ia(l,c,r,s,o),ia(l,r,c,s,o)),t}}function na(e,t,n,i,r){for(let s=0,o=i*r;s<o;)e(t,n,s,s+=i,1)}function ia(e,t,n,i,r){for(let s=0,o=i*r;s<i;++s)e(t,n,s,s+o,i)}function tC(e){let t=Ev(e);return(n,i,r,s,o)=>{r<<=2,s<<=2,o<<=2,t(n,i,r+0,s+0,o),t(n,i,r+1,s+1,o),t(n,i,r+2,s+2,o),t(n,i,r+3,s+3,o)}}function Ev(e){let t=Math.floor(e);if(t===e)return eC(e);let n=e-t,i=2*e+1;return(r,s,o,a,l)=>{if(!((a-=l)>=o))return;let c=t*s[o],u=l*t,h=u+l;for(let f=o,d=o+u;f<d;f+=l)c+=s[Math.min(a,f)];for(let f=o,d=a;f<=d;f+=l)c+=s[Math.min(a,f+u)],r[f]=(c+n*(s[Math.max(o,f-h)]+s[Math.min(a,f+h)]))/i,c-=s[Math.max(o,f-u)]}}function eC(e){let t=2*e+1;return(n,i,r,s,o)=>{if(!((s-=o)>=r))return;let a=e*i[r],l=o*e;for(let c=r,u=r+l;c<u;c+=o)a+=i[Math.min(s,c)];for(let c=r,u=s;c<=u;c+=o)a+=i[Math.min(s,c+l)],n[c]=a/t,a-=i[Math.max(r,c-l)]}}function jp(e,t){let n=0;if(t===void 0)for(let i of e)i!=null&&(i=+i)>=i&&++n;else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(r=+r)>=r&&++n}return n}function nC(e){return e.length|0}function iC(e){return!(e>0)}function rC(e){return typeof e!="object"||"length"in e?e:Array.from(e)}function sC(e){return t=>e(...t)}function Av(...e){let t=typeof e[e.length-1]=="function"&&sC(e.pop());e=e.map(rC);let n=e.map(nC),i=e.length-1,r=new Array(i+1).fill(0),s=[];if(i<0||n.some(iC))return s;for(;;){s.push(r.map((a,l)=>e[l][a]));let o=i;for(;++r[o]===n[o];){if(o===0)return t?s.map(t):s;r[o--]=0}}}function Cv(e,t){var n=0,i=0;return Float64Array.from(e,t===void 0?r=>n+=+r||0:r=>n+=+t(r,i++,e)||0)}function Qp(e,t){let n=0,i,r=0,s=0;if(t===void 0)for(let o of e)o!=null&&(o=+o)>=o&&(i=o-r,r+=i/++n,s+=i*(o-r));else{let o=-1;for(let a of e)(a=t(a,++o,e))!=null&&(a=+a)>=a&&(i=a-r,r+=i/++n,s+=i*(a-r))}if(n>1)return s/(n-1)}function tm(e,t){let n=Qp(e,t);return n&&Math.sqrt(n)}function pn(e,t){let n,i;if(t===void 0)for(let r of e)r!=null&&(n===void 0?r>=r&&(n=i=r):(n>r&&(n=r),i<r&&(i=r)));else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(n===void 0?s>=s&&(n=i=s):(n>s&&(n=s),i<s&&(i=s)))}return[n,i]}var di=class{constructor(){this._partials=new Float64Array(32),this._n=0}add(t){let n=this._partials,i=0;for(let r=0;r<this._n&&r<32;r++){let s=n[r],o=t+s,a=Math.abs(t)<Math.abs(s)?t-(o-s):s-(o-t);a&&(n[i++]=a),t=o}return n[i]=t,this._n=i+1,this}valueOf(){let t=this._partials,n=this._n,i,r,s,o=0;if(n>0){for(o=t[--n];n>0&&(i=o,r=t[--n],o=i+r,s=r-(o-i),!s););n>0&&(s<0&&t[n-1]<0||s>0&&t[n-1]>0)&&(r=s*2,i=o+r,r==i-o&&(o=i))}return o}};var pi=class extends Map{constructor(t,n=Iv){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let[i,r]of t)this.set(i,r)}get(t){return super.get(Kp(this,t))}has(t){return super.has(Kp(this,t))}set(t,n){return super.set(Rv(this,t),n)}delete(t){return super.delete(Pv(this,t))}},nr=class extends Set{constructor(t,n=Iv){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let i of t)this.add(i)}has(t){return super.has(Kp(this,t))}add(t){return super.add(Rv(this,t))}delete(t){return super.delete(Pv(this,t))}};function Kp({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):n}function Rv({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):(e.set(i,n),n)}function Pv({_intern:e,_key:t},n){let i=t(n);return e.has(i)&&(n=e.get(i),e.delete(i)),n}function Iv(e){return e!==null&&typeof e=="object"?e.valueOf():e}function Jp(e){return e}function so(e,...t){return em(e,Jp,Jp,t)}function Dr(e,t,...n){return em(e,Jp,t,n)}function Lv(e,t,...n){return em(e,Array.from,t,n)}function em(e,t,n,i){return(function r(s,o){if(o>=i.length)return n(s);let a=new pi,l=i[o++],c=-1;for(let u of s){let h=l(u,++c,s),f=a.get(h);f?f.push(u):a.set(h,[u])}for(let[u,h]of a)a.set(u,r(h,o));return t(a)})(e,0)}function oC(e,t){return Array.from(t,n=>e[n])}function ra(e,...t){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");e=Array.from(e);let[n]=t;if(n&&n.length!==2||t.length>1){let i=Uint32Array.from(e,(r,s)=>s);return t.length>1?(t=t.map(r=>e.map(r)),i.sort((r,s)=>{for(let o of t){let a=Pu(o[r],o[s]);if(a)return a}})):(n=e.map(n),i.sort((r,s)=>Pu(n[r],n[s]))),oC(e,i)}return e.sort(Dv(n))}function Dv(e=bn){if(e===bn)return Pu;if(typeof e!="function")throw new TypeError("compare is not a function");return(t,n)=>{let i=e(t,n);return i||i===0?i:(e(n,n)===0)-(e(t,t)===0)}}function Pu(e,t){return(e==null||!(e>=e))-(t==null||!(t>=t))||(e<t?-1:e>t?1:0)}function Lu(e,t,n){return(t.length!==2?ra(Dr(e,t,n),(([i,r],[s,o])=>bn(r,o)||bn(i,s))):ra(so(e,n),(([i,r],[s,o])=>t(r,o)||bn(i,s)))).map(([i])=>i)}var aC=Array.prototype,s8=aC.slice;var lC=Math.sqrt(50),cC=Math.sqrt(10),uC=Math.sqrt(2);function Iu(e,t,n){let i=(t-e)/Math.max(0,n),r=Math.floor(Math.log10(i)),s=i/Math.pow(10,r),o=s>=lC?10:s>=cC?5:s>=uC?2:1,a,l,c;return r<0?(c=Math.pow(10,-r)/o,a=Math.round(e*c),l=Math.round(t*c),a/c<e&&++a,l/c>t&&--l,c=-c):(c=Math.pow(10,r)*o,a=Math.round(e/c),l=Math.round(t/c),a*c<e&&++a,l*c>t&&--l),l<a&&.5<=n&&n<2?Iu(e,t,n*2):[a,l,c]}function gs(e,t,n){if(t=+t,e=+e,n=+n,!(n>0))return[];if(e===t)return[e];let i=t<e,[r,s,o]=i?Iu(t,e,n):Iu(e,t,n);if(!(s>=r))return[];let a=s-r+1,l=new Array(a);if(i)if(o<0)for(let c=0;c<a;++c)l[c]=(s-c)/-o;else for(let c=0;c<a;++c)l[c]=(s-c)*o;else if(o<0)for(let c=0;c<a;++c)l[c]=(r+c)/-o;else for(let c=0;c<a;++c)l[c]=(r+c)*o;return l}function sa(e,t,n){return t=+t,e=+e,n=+n,Iu(e,t,n)[2]}function Bl(e,t,n){t=+t,e=+e,n=+n;let i=t<e,r=i?sa(t,e,n):sa(e,t,n);return(i?-1:1)*(r<0?1/-r:r)}function Nv(e){return Math.max(1,Math.ceil(Math.log(jp(e))/Math.LN2)+1)}function Pn(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n<i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n<r||n===void 0&&r>=r)&&(n=r)}return n}function Uv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);return i}function mi(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n>i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n>r||n===void 0&&r>=r)&&(n=r)}return n}function Fv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);return i}function Ov(e,t,n=0,i=1/0,r){if(t=Math.floor(t),n=Math.floor(Math.max(0,n)),i=Math.floor(Math.min(e.length-1,i)),!(n<=t&&t<=i))return e;for(r=r===void 0?Pu:Dv(r);i>n;){if(i-n>600){let l=i-n+1,c=t-n+1,u=Math.log(l),h=.5*Math.exp(2*u/3),f=.5*Math.sqrt(u*h*(l-h)/l)*(c-l/2<0?-1:1),d=Math.max(n,Math.floor(t-c*h/l+f)),p=Math.min(i,Math.floor(t+(l-c)*h/l+f));Ov(e,t,d,p,r)}let s=e[t],o=n,a=i;for(Ol(e,n,t),r(e[i],s)>0&&Ol(e,n,i);o<a;){for(Ol(e,o,a),++o,--a;r(e[o],s)<0;)++o;for(;r(e[a],s)>0;)--a}r(e[n],s)===0?Ol(e,n,a):(++a,Ol(e,a,i)),a<=t&&(n=a+1),t<=a&&(i=a-1)}return e}function Ol(e,t,n){let i=e[t];e[t]=e[n],e[n]=i}function nm(e,t=bn){let n,i=!1;if(t.length===1){let r;for(let s of e){let o=t(s);(i?bn(o,r)>0:bn(o,o)===0)&&(n=s,r=o,i=!0)}}else for(let r of e)(i?t(r,n)>0:t(r,r)===0)&&(n=r,i=!0);return n}function Ir(e,t,n){if(e=Float64Array.from(Q3(e,n)),!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return mi(e);if(t>=1)return Pn(e);var i,r=(i-1)*t,s=Math.floor(r),o=Pn(Ov(e,s).subarray(0,s+1)),a=mi(e.subarray(s+1));return o+(a-o)*(r-s)}}function Bv(e,t,n=Sv){if(!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return+n(e[0],0,e);if(t>=1)return+n(e[i-1],i-1,e);var i,r=(i-1)*t,s=Math.floor(r),o=+n(e[s],s,e),a=+n(e[s+1],s+1,e);return o+(a-o)*(r-s)}}function kv(e,t,n){let i=jp(e),r=Ir(e,.75)-Ir(e,.25);return i&&r?Math.ceil((n-t)/(2*r*Math.pow(i,-1/3))):1}function im(e,t,n){let i=jp(e),r=tm(e);return i&&r?Math.ceil((n-t)*Math.cbrt(i)/(3.49*r)):1}function zv(e,t){let n=0,i=0;if(t===void 0)for(let r of e)r!=null&&(r=+r)>=r&&(++n,i+=r);else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(s=+s)>=s&&(++n,i+=s)}if(n)return i/n}function kl(e,t){return Ir(e,.5,t)}function*fC(e){for(let t of e)yield*t}function rm(e){return Array.from(fC(e))}function Gv(e,t){let n=new pi;if(t===void 0)for(let s of e)s!=null&&s>=s&&n.set(s,(n.get(s)||0)+1);else{let s=-1;for(let o of e)(o=t(o,++s,e))!=null&&o>=o&&n.set(o,(n.get(o)||0)+1)}let i,r=0;for(let[s,o]of n)o>r&&(r=o,i=s);return i}function Vv(e,t=hC){let n=[],i,r=!1;for(let s of e)r&&n.push(t(i,s)),i=s,r=!0;return n}function hC(e,t){return[e,t]}function la(e,t,n){e=+e,t=+t,n=(r=arguments.length)<2?(t=e,e=0,1):r<3?1:+n;for(var i=-1,r=Math.max(0,Math.ceil((t-e)/n))|0,s=new Array(r);++i<r;)s[i]=e+i*n;return s}var o8=dC(Math.random);function dC(e){return function(n,i=0,r=n.length){let s=r-(i=+i);for(;s;){let o=e()*s--|0,a=n[s+i];n[s+i]=n[o+i],n[o+i]=a}return n}}function Ui(e,t){let n=0;if(t===void 0)for(let i of e)(i=+i)&&(n+=i);else{let i=-1;for(let r of e)(r=+t(r,++i,e))&&(n+=r)}return n}function ca(e){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");return Array.from(e).reverse()}function pC(e){return e}var sm=1,om=2,am=3,Du=4,Hv=1e-6;function mC(e){return"translate("+e+",0)"}function gC(e){return"translate(0,"+e+")"}function yC(e){return t=>+e(t)}function xC(e,t){return t=Math.max(0,e.bandwidth()-t*2)/2,e.round()&&(t=Math.round(t)),n=>+e(n)+t}function _C(){return!this.__axis}function vC(e,t){var n=[],i=null,r=null,s=6,o=6,a=3,l=typeof window<"u"&&window.devicePixelRatio>1?0:.5,c=e===sm||e===Du?-1:1,u=e===Du||e===om?"x":"y",h=e===sm||e===am?mC:gC;function f(d){var p=i??(t.ticks?t.ticks.apply(t,n):t.domain()),y=r??(t.tickFormat?t.tickFormat.apply(t,n):pC),g=Math.max(s,0)+a,m=t.range(),x=+m[0]+l,S=+m[m.length-1]+l,v=(t.bandwidth?xC:yC)(t.copy(),l),M=d.selection?d.selection():d,b=M.selectAll(".domain").data([null]),_=M.selectAll(".tick").data(p,t).order(),w=_.exit(),R=_.enter().append("g").attr("class","tick"),C=_.select("line"),A=_.select("text");b=b.merge(b.enter().insert("path",".tick").attr("class","domain").attr("stroke","currentColor")),_=_.merge(R),C=C.merge(R.append("line").attr("stroke","currentColor").attr(u+"2",c*s)),A=A.merge(R.append("text").attr("fill","currentColor").attr(u,c*g).attr("dy",e===sm?"0em":e===am?"0.71em":"0.32em")),d!==M&&(b=b.transition(d),_=_.transition(d),C=C.transition(d),A=A.transition(d),w=w.transition(d).attr("opacity",Hv).attr("transform",function(L){return isFinite(L=v(L))?h(L+l):this.getAttribute("transform")}),R.attr("opacity",Hv).attr("transform",function(L){var B=this.parentNode.__axis;return h((B&&isFinite(B=B(L))?B:v(L))+l)})),w.remove(),b.attr("d",e===Du||e===om?o?"M"+c*o+","+x+"H"+l+"V"+S+"H"+c*o:"M"+l+","+x+"V"+S:o?"M"+x+","+c*o+"V"+l+"H"+S+"V"+c*o:"M"+x+","+l+"H"+S),_.attr("opacity",1).attr("transform",function(L){return h(v(L)+l)}),C.attr(u+"2",c*s),A.attr(u,c*g).text(y),M.filter(_C).attr("fill","none").attr("font-size",10).attr("font-family","sans-serif").attr("text-anchor",e===om?"start":e===Du?"end":"middle"),M.each(function(){this.__axis=v})}return f.scale=function(d){return arguments.length?(t=d,f):t},f.ticks=function(){return n=Array.from(arguments),f},f.tickArguments=function(d){return arguments.length?(n=d==null?[]:Array.from(d),f):n.slice()},f.tickValues=function(d){return arguments.length?(i=d==null?null:Array.from(d),f):i&&i.slice()},f.tickFormat=function(d){return arguments.length?(r=d,f):r},f.tickSize=function(d){return arguments.length?(s=o=+d,f):s},f.tickSizeInner=function(d){return arguments.length?(s=+d,f):s},f.tickSizeOuter=function(d){return arguments.length?(o=+d,f):o},f.tickPadding=function(d){return arguments.length?(a=+d,f):a},f.offset=function(d){return arguments.length?(l=+d,f):l},f}function Wv(e){return vC(am,e)}var lm="http://www.w3.org/1999/xhtml",ys={svg:"http://www.w3.org/2000/svg",xhtml:lm,xlink:"http://www.w3.org/1999/xlink",xml:"http://www.w3.org/XML/1998/namespace",xmlns:"http://www.w3.org/2000/xmlns/"};function $v(e){var t=e+="",n=t.indexOf(":");return n>=0&&(t=e.slice(0,n))!=="xmlns"&&(e=e.slice(n+1)),ys.hasOwnProperty(t)?{space:ys[t],local:e}:e}function bC(e){return function(){var t=this.ownerDocument,n=this.namespaceURI;return n===lm&&t.documentElement.namespaceURI===lm?t.createElement(e):t.createElementNS(n,e)}}function MC(e){return function(){return this.ownerDocument.createElementNS(e.space,e.local)}}function ua(e){var t=$v(e);return(t.local?MC:bC)(t)}function SC(){}function Xv(e){return e==null?SC:function(){return this.querySelector(e)}}function wC(e){typeof e!="function"&&(e=Xv(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=new Array(o),l,c,u=0;u<o;++u)(l=s[u])&&(c=e.call(l,l.__data__,u,s))&&("__data__"in l&&(c.__data__=l.__data__),a[u]=c);return new ni(i,this._parents)}function TC(e){return e==null?[]:Array.isArray(e)?e:Array.from(e)}function EC(){return[]}function AC(e){return e==null?EC:function(){return this.querySelectorAll(e)}}function CC(e){return function(){return TC(e.apply(this,arguments))}}function RC(e){typeof e=="function"?e=CC(e):e=AC(e);for(var t=this._groups,n=t.length,i=[],r=[],s=0;s<n;++s)for(var o=t[s],a=o.length,l,c=0;c<a;++c)(l=o[c])&&(i.push(e.call(l,l.__data__,c,o)),r.push(l));return new ni(i,r)}function PC(e){return function(){return this.matches(e)}}function qv(e){return function(t){return t.matches(e)}}var IC=Array.prototype.find;function LC(e){return function(){return IC.call(this.children,e)}}function DC(){return this.firstElementChild}function NC(e){return this.select(e==null?DC:LC(typeof e=="function"?e:qv(e)))}var UC=Array.prototype.filter;function FC(){return Array.from(this.children)}function OC(e){return function(){return UC.call(this.children,e)}}function BC(e){return this.selectAll(e==null?FC:OC(typeof e=="function"?e:qv(e)))}function kC(e){typeof e!="function"&&(e=PC(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=[],l,c=0;c<o;++c)(l=s[c])&&e.call(l,l.__data__,c,s)&&a.push(l);return new ni(i,this._parents)}function Yv(e){return new Array(e.length)}function zC(){return new ni(this._enter||this._groups.map(Yv),this._parents)}function Nu(e,t){this.ownerDocument=e.ownerDocument,this.namespaceURI=e.namespaceURI,this._next=null,this._parent=e,this.__data__=t}Nu.prototype={constructor:Nu,appendChild:function(e){return this._parent.insertBefore(e,this._next)},insertBefore:function(e,t){return this._parent.insertBefore(e,t)},querySelector:function(e){return this._parent.querySelector(e)},querySelectorAll:function(e){return this._parent.querySelectorAll(e)}};function GC(e){return function(){return e}}function VC(e,t,n,i,r,s){for(var o=0,a,l=t.length,c=s.length;o<c;++o)(a=t[o])?(a.__data__=s[o],i[o]=a):n[o]=new Nu(e,s[o]);for(;o<l;++o)(a=t[o])&&(r[o]=a)}function HC(e,t,n,i,r,s,o){var a,l,c=new Map,u=t.length,h=s.length,f=new Array(u),d;for(a=0;a<u;++a)(l=t[a])&&(f[a]=d=o.call(l,l.__data__,a,t)+"",c.has(d)?r[a]=l:c.set(d,l));for(a=0;a<h;++a)d=o.call(e,s[a],a,s)+"",(l=c.get(d))?(i[a]=l,l.__data__=s[a],c.delete(d)):n[a]=new Nu(e,s[a]);for(a=0;a<u;++a)(l=t[a])&&c.get(f[a])===l&&(r[a]=l)}function WC(e){return e.__data__}function $C(e,t){if(!arguments.length)return Array.from(this,WC);var n=t?HC:VC,i=this._parents,r=this._groups;typeof e!="function"&&(e=GC(e));for(var s=r.length,o=new Array(s),a=new Array(s),l=new Array(s),c=0;c<s;++c){var u=i[c],h=r[c],f=h.length,d=XC(e.call(u,u&&u.__data__,c,i)),p=d.length,y=a[c]=new Array(p),g=o[c]=new Array(p),m=l[c]=new Array(f);n(u,h,y,g,m,d,t);for(var x=0,S=0,v,M;x<p;++x)if(v=y[x]){for(x>=S&&(S=x+1);!(M=g[S])&&++S<p;);v._next=M||null}}return o=new ni(o,i),o._enter=a,o._exit=l,o}function XC(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function qC(){return new ni(this._exit||this._groups.map(Yv),this._parents)}function YC(e,t,n){var i=this.enter(),r=this,s=this.exit();return typeof e=="function"?(i=e(i),i&&(i=i.selection())):i=i.append(e+""),t!=null&&(r=t(r),r&&(r=r.selection())),n==null?s.remove():n(s),i&&r?i.merge(r).order():r}function ZC(e){for(var t=e.selection?e.selection():e,n=this._groups,i=t._groups,r=n.length,s=i.length,o=Math.min(r,s),a=new Array(r),l=0;l<o;++l)for(var c=n[l],u=i[l],h=c.length,f=a[l]=new Array(h),d,p=0;p<h;++p)(d=c[p]||u[p])&&(f[p]=d);for(;l<r;++l)a[l]=n[l];return new ni(a,this._parents)}function KC(){for(var e=this._groups,t=-1,n=e.length;++t<n;)for(var i=e[t],r=i.length-1,s=i[r],o;--r>=0;)(o=i[r])&&(s&&o.compareDocumentPosition(s)^4&&s.parentNode.insertBefore(o,s),s=o);return this}function JC(e){e||(e=jC);function t(h,f){return h&&f?e(h.__data__,f.__data__):!h-!f}for(var n=this._groups,i=n.length,r=new Array(i),s=0;s<i;++s){for(var o=n[s],a=o.length,l=r[s]=new Array(a),c,u=0;u<a;++u)(c=o[u])&&(l[u]=c);l.sort(t)}return new ni(r,this._parents).order()}function jC(e,t){return e<t?-1:e>t?1:e>=t?0:NaN}function QC(){var e=arguments[0];return arguments[0]=this,e.apply(null,arguments),this}function tR(){return Array.from(this)}function eR(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length;r<s;++r){var o=i[r];if(o)return o}return null}function nR(){let e=0;for(let t of this)++e;return e}function iR(){return!this.node()}function rR(e){for(var t=this._groups,n=0,i=t.length;n<i;++n)for(var r=t[n],s=0,o=r.length,a;s<o;++s)(a=r[s])&&e.call(a,a.__data__,s,r);return this}function sR(e){return function(){this.removeAttribute(e)}}function oR(e){return function(){this.removeAttributeNS(e.space,e.local)}}function aR(e,t){return function(){this.setAttribute(e,t)}}function lR(e,t){return function(){this.setAttributeNS(e.space,e.local,t)}}function cR(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttribute(e):this.setAttribute(e,n)}}function uR(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttributeNS(e.space,e.local):this.setAttributeNS(e.space,e.local,n)}}function fR(e,t){var n=$v(e);if(arguments.length<2){var i=this.node();return n.local?i.getAttributeNS(n.space,n.local):i.getAttribute(n)}return this.each((t==null?n.local?oR:sR:typeof t=="function"?n.local?uR:cR:n.local?lR:aR)(n,t))}function Zv(e){return e.ownerDocument&&e.ownerDocument.defaultView||e.document&&e||e.defaultView}function hR(e){return function(){this.style.removeProperty(e)}}function dR(e,t,n){return function(){this.style.setProperty(e,t,n)}}function pR(e,t,n){return function(){var i=t.apply(this,arguments);i==null?this.style.removeProperty(e):this.style.setProperty(e,i,n)}}function mR(e,t,n){return arguments.length>1?this.each((t==null?hR:typeof t=="function"?pR:dR)(e,t,n??"")):gR(this.node(),e)}function gR(e,t){return e.style.getPropertyValue(t)||Zv(e).getComputedStyle(e,null).getPropertyValue(t)}function yR(e){return function(){delete this[e]}}function xR(e,t){return function(){this[e]=t}}function _R(e,t){return function(){var n=t.apply(this,arguments);n==null?delete this[e]:this[e]=n}}function vR(e,t){return arguments.length>1?this.each((t==null?yR:typeof t=="function"?_R:xR)(e,t)):this.node()[e]}function Kv(e){return e.trim().split(/^|\s+/)}function um(e){return e.classList||new Jv(e)}function Jv(e){this._node=e,this._names=Kv(e.getAttribute("class")||"")}Jv.prototype={add:function(e){var t=this._names.indexOf(e);t<0&&(this._names.push(e),this._node.setAttribute("class",this._names.join(" ")))},remove:function(e){var t=this._names.indexOf(e);t>=0&&(this._names.splice(t,1),this._node.setAttribute("class",this._names.join(" ")))},contains:function(e){return this._names.indexOf(e)>=0}};function jv(e,t){for(var n=um(e),i=-1,r=t.length;++i<r;)n.add(t[i])}function Qv(e,t){for(var n=um(e),i=-1,r=t.length;++i<r;)n.remove(t[i])}function bR(e){return function(){jv(this,e)}}function MR(e){return function(){Qv(this,e)}}function SR(e,t){return function(){(t.apply(this,arguments)?jv:Qv)(this,e)}}function wR(e,t){var n=Kv(e+"");if(arguments.length<2){for(var i=um(this.node()),r=-1,s=n.length;++r<s;)if(!i.contains(n[r]))return!1;return!0}return this.each((typeof t=="function"?SR:t?bR:MR)(n,t))}function TR(){this.textContent=""}function ER(e){return function(){this.textContent=e}}function AR(e){return function(){var t=e.apply(this,arguments);this.textContent=t??""}}function CR(e){return arguments.length?this.each(e==null?TR:(typeof e=="function"?AR:ER)(e)):this.node().textContent}function RR(){this.innerHTML=""}function PR(e){return function(){this.innerHTML=e}}function IR(e){return function(){var t=e.apply(this,arguments);this.innerHTML=t??""}}function LR(e){return arguments.length?this.each(e==null?RR:(typeof e=="function"?IR:PR)(e)):this.node().innerHTML}function DR(){this.nextSibling&&this.parentNode.appendChild(this)}function NR(){return this.each(DR)}function UR(){this.previousSibling&&this.parentNode.insertBefore(this,this.parentNode.firstChild)}function FR(){return this.each(UR)}function OR(e){var t=typeof e=="function"?e:ua(e);return this.select(function(){return this.appendChild(t.apply(this,arguments))})}function BR(){return null}function kR(e,t){var n=typeof e=="function"?e:ua(e),i=t==null?BR:typeof t=="function"?t:Xv(t);return this.select(function(){return this.insertBefore(n.apply(this,arguments),i.apply(this,arguments)||null)})}function zR(){var e=this.parentNode;e&&e.removeChild(this)}function GR(){return this.each(zR)}function VR(){var e=this.cloneNode(!1),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function HR(){var e=this.cloneNode(!0),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function WR(e){return this.select(e?HR:VR)}function $R(e){return arguments.length?this.property("__data__",e):this.node().__data__}function XR(e){return function(t){e.call(this,t,this.__data__)}}function qR(e){return e.trim().split(/^|\s+/).map(function(t){var n="",i=t.indexOf(".");return i>=0&&(n=t.slice(i+1),t=t.slice(0,i)),{type:t,name:n}})}function YR(e){return function(){var t=this.__on;if(t){for(var n=0,i=-1,r=t.length,s;n<r;++n)s=t[n],(!e.type||s.type===e.type)&&s.name===e.name?this.removeEventListener(s.type,s.listener,s.options):t[++i]=s;++i?t.length=i:delete this.__on}}}function ZR(e,t,n){return function(){var i=this.__on,r,s=XR(t);if(i){for(var o=0,a=i.length;o<a;++o)if((r=i[o]).type===e.type&&r.name===e.name){this.removeEventListener(r.type,r.listener,r.options),this.addEventListener(r.type,r.listener=s,r.options=n),r.value=t;return}}this.addEventListener(e.type,s,n),r={type:e.type,name:e.name,value:t,listener:s,options:n},i?i.push(r):this.__on=[r]}}function KR(e,t,n){var i=qR(e+""),r,s=i.length,o;if(arguments.length<2){var a=this.node().__on;if(a){for(var l=0,c=a.length,u;l<c;++l)for(r=0,u=a[l];r<s;++r)if((o=i[r]).type===u.type&&o.name===u.name)return u.value}return}for(a=t?ZR:YR,r=0;r<s;++r)this.each(a(i[r],t,n));return this}function tb(e,t,n){var i=Zv(e),r=i.CustomEvent;typeof r=="function"?r=new r(t,n):(r=i.document.createEvent("Event"),n?(r.initEvent(t,n.bubbles,n.cancelable),r.detail=n.detail):r.initEvent(t,!1,!1)),e.dispatchEvent(r)}function JR(e,t){return function(){return tb(this,e,t)}}function jR(e,t){return function(){return tb(this,e,t.apply(this,arguments))}}function QR(e,t){return this.each((typeof t=="function"?jR:JR)(e,t))}function*tP(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length,o;r<s;++r)(o=i[r])&&(yield o)}var eb=[null];function ni(e,t){this._groups=e,this._parents=t}function eP(){return new ni([[document.documentElement]],eb)}function nP(){return this}ni.prototype=eP.prototype={constructor:ni,select:wC,selectAll:RC,selectChild:NC,selectChildren:BC,filter:kC,data:$C,enter:zC,exit:qC,join:YC,merge:ZC,selection:nP,order:KC,sort:JC,call:QC,nodes:tR,node:eR,size:nR,empty:iR,each:rR,attr:fR,style:mR,property:vR,classed:wR,text:CR,html:LR,raise:NR,lower:FR,append:OR,insert:kR,remove:GR,clone:WR,datum:$R,on:KR,dispatch:QR,[Symbol.iterator]:tP};function Fi(e){return typeof e=="string"?new ni([[document.querySelector(e)]],[document.documentElement]):new ni([[e]],eb)}var iP=0;function rP(){return new cm}function cm(){this._="@"+(++iP).toString(36)}cm.prototype=rP.prototype={constructor:cm,get:function(e){for(var t=this._;!(t in e);)if(!(e=e.parentNode))return;return e[t]},set:function(e,t){return e[this._]=t},remove:function(e){return this._ in e&&delete e[this._]},toString:function(){return this._}};function sP(e){let t;for(;t=e.sourceEvent;)e=t;return e}function nb(e,t){if(e=sP(e),t===void 0&&(t=e.currentTarget),t){var n=t.ownerSVGElement||t;if(n.createSVGPoint){var i=n.createSVGPoint();return i.x=e.clientX,i.y=e.clientY,i=i.matrixTransform(t.getScreenCTM().inverse()),[i.x,i.y]}if(t.getBoundingClientRect){var r=t.getBoundingClientRect();return[e.clientX-r.left-t.clientLeft,e.clientY-r.top-t.clientTop]}}return[e.pageX,e.pageY]}function pa(e,t,n){e.prototype=t.prototype=n,n.constructor=e}function Vl(e,t){var n=Object.create(e.prototype);for(var i in t)n[i]=t[i];return n}function xs(){}var co=.7,da=1/co,fa="\\s*([+-]?\\d+)\\s*",zl="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)\\s*",ir="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)%\\s*",oP=/^#([0-9a-f]{3,8})$/,aP=new RegExp(`^rgb\\(${fa},${fa},${fa}\\)$`),lP=new RegExp(`^rgb\\(${ir},${ir},${ir}\\)$`),cP=new RegExp(`^rgba\\(${fa},${fa},${fa},${zl}\\)$`),uP=new RegExp(`^rgba\\(${ir},${ir},${ir},${zl}\\)$`),fP=new RegExp(`^hsl\\(${zl},${ir},${ir}\\)$`),hP=new RegExp(`^hsla\\(${zl},${ir},${ir},${zl}\\)$`),ib={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074};pa(xs,ma,{copy(e){return Object.assign(new this.constructor,this,e)},displayable(){return this.rgb().displayable()},hex:rb,formatHex:rb,formatHex8:dP,formatHsl:pP,formatRgb:sb,toString:sb});function rb(){return this.rgb().formatHex()}function dP(){return this.rgb().formatHex8()}function pP(){return pb(this).formatHsl()}function sb(){return this.rgb().formatRgb()}function ma(e){var t,n;return e=(e+"").trim().toLowerCase(),(t=oP.exec(e))?(n=t[1].length,t=parseInt(t[1],16),n===6?ob(t):n===3?new rn(t>>8&15|t>>4&240,t>>4&15|t&240,(t&15)<<4|t&15,1):n===8?Uu(t>>24&255,t>>16&255,t>>8&255,(t&255)/255):n===4?Uu(t>>12&15|t>>8&240,t>>8&15|t>>4&240,t>>4&15|t&240,((t&15)<<4|t&15)/255):null):(t=aP.exec(e))?new rn(t[1],t[2],t[3],1):(t=lP.exec(e))?new rn(t[1]*255/100,t[2]*255/100,t[3]*255/100,1):(t=cP.exec(e))?Uu(t[1],t[2],t[3],t[4]):(t=uP.exec(e))?Uu(t[1]*255/100,t[2]*255/100,t[3]*255/100,t[4]):(t=fP.exec(e))?cb(t[1],t[2]/100,t[3]/100,1):(t=hP.exec(e))?cb(t[1],t[2]/100,t[3]/100,t[4]):ib.hasOwnProperty(e)?ob(ib[e]):e==="transparent"?new rn(NaN,NaN,NaN,0):null}function ob(e){return new rn(e>>16&255,e>>8&255,e&255,1)}function Uu(e,t,n,i){return i<=0&&(e=t=n=NaN),new rn(e,t,n,i)}function gm(e){return e instanceof xs||(e=ma(e)),e?(e=e.rgb(),new rn(e.r,e.g,e.b,e.opacity)):new rn}function Bi(e,t,n,i){return arguments.length===1?gm(e):new rn(e,t,n,i??1)}function rn(e,t,n,i){this.r=+e,this.g=+t,this.b=+n,this.opacity=+i}pa(rn,Bi,Vl(xs,{brighter(e){return e=e==null?da:Math.pow(da,e),new rn(this.r*e,this.g*e,this.b*e,this.opacity)},darker(e){return e=e==null?co:Math.pow(co,e),new rn(this.r*e,this.g*e,this.b*e,this.opacity)},rgb(){return this},clamp(){return new rn(ao(this.r),ao(this.g),ao(this.b),Ou(this.opacity))},displayable(){return-.5<=this.r&&this.r<255.5&&-.5<=this.g&&this.g<255.5&&-.5<=this.b&&this.b<255.5&&0<=this.opacity&&this.opacity<=1},hex:ab,formatHex:ab,formatHex8:mP,formatRgb:lb,toString:lb}));function ab(){return`#${oo(this.r)}${oo(this.g)}${oo(this.b)}`}function mP(){return`#${oo(this.r)}${oo(this.g)}${oo(this.b)}${oo((isNaN(this.opacity)?1:this.opacity)*255)}`}function lb(){let e=Ou(this.opacity);return`${e===1?"rgb(":"rgba("}${ao(this.r)}, ${ao(this.g)}, ${ao(this.b)}${e===1?")":`, ${e})`}`}function Ou(e){return isNaN(e)?1:Math.max(0,Math.min(1,e))}function ao(e){return Math.max(0,Math.min(255,Math.round(e)||0))}function oo(e){return e=ao(e),(e<16?"0":"")+e.toString(16)}function cb(e,t,n,i){return i<=0?e=t=n=NaN:n<=0||n>=1?e=t=NaN:t<=0&&(e=NaN),new Oi(e,t,n,i)}function pb(e){if(e instanceof Oi)return new Oi(e.h,e.s,e.l,e.opacity);if(e instanceof xs||(e=ma(e)),!e)return new Oi;if(e instanceof Oi)return e;e=e.rgb();var t=e.r/255,n=e.g/255,i=e.b/255,r=Math.min(t,n,i),s=Math.max(t,n,i),o=NaN,a=s-r,l=(s+r)/2;return a?(t===s?o=(n-i)/a+(n<i)*6:n===s?o=(i-t)/a+2:o=(t-n)/a+4,a/=l<.5?s+r:2-s-r,o*=60):a=l>0&&l<1?0:o,new Oi(o,a,l,e.opacity)}function ku(e,t,n,i){return arguments.length===1?pb(e):new Oi(e,t,n,i??1)}function Oi(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}pa(Oi,ku,Vl(xs,{brighter(e){return e=e==null?da:Math.pow(da,e),new Oi(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?co:Math.pow(co,e),new Oi(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=this.h%360+(this.h<0)*360,t=isNaN(e)||isNaN(this.s)?0:this.s,n=this.l,i=n+(n<.5?n:1-n)*t,r=2*n-i;return new rn(fm(e>=240?e-240:e+120,r,i),fm(e,r,i),fm(e<120?e+240:e-120,r,i),this.opacity)},clamp(){return new Oi(ub(this.h),Fu(this.s),Fu(this.l),Ou(this.opacity))},displayable(){return(0<=this.s&&this.s<=1||isNaN(this.s))&&0<=this.l&&this.l<=1&&0<=this.opacity&&this.opacity<=1},formatHsl(){let e=Ou(this.opacity);return`${e===1?"hsl(":"hsla("}${ub(this.h)}, ${Fu(this.s)*100}%, ${Fu(this.l)*100}%${e===1?")":`, ${e})`}`}}));function ub(e){return e=(e||0)%360,e<0?e+360:e}function Fu(e){return Math.max(0,Math.min(1,e||0))}function fm(e,t,n){return(e<60?t+(n-t)*e/60:e<180?n:e<240?t+(n-t)*(240-e)/60:t)*255}var mb=Math.PI/180,gb=180/Math.PI,Bu=18,yb=.96422,xb=1,_b=.82521,vb=4/29,ha=6/29,bb=3*ha*ha,gP=ha*ha*ha;function Mb(e){if(e instanceof rr)return new rr(e.l,e.a,e.b,e.opacity);if(e instanceof Nr)return Sb(e);e instanceof rn||(e=gm(e));var t=mm(e.r),n=mm(e.g),i=mm(e.b),r=hm((.2225045*t+.7168786*n+.0606169*i)/xb),s,o;return t===n&&n===i?s=o=r:(s=hm((.4360747*t+.3850649*n+.1430804*i)/yb),o=hm((.0139322*t+.0971045*n+.7141733*i)/_b)),new rr(116*r-16,500*(s-r),200*(r-o),e.opacity)}function zu(e,t,n,i){return arguments.length===1?Mb(e):new rr(e,t,n,i??1)}function rr(e,t,n,i){this.l=+e,this.a=+t,this.b=+n,this.opacity=+i}pa(rr,zu,Vl(xs,{brighter(e){return new rr(this.l+Bu*(e??1),this.a,this.b,this.opacity)},darker(e){return new rr(this.l-Bu*(e??1),this.a,this.b,this.opacity)},rgb(){var e=(this.l+16)/116,t=isNaN(this.a)?e:e+this.a/500,n=isNaN(this.b)?e:e-this.b/200;return t=yb*dm(t),e=xb*dm(e),n=_b*dm(n),new rn(pm(3.1338561*t-1.6168667*e-.4906146*n),pm(-.9787684*t+1.9161415*e+.033454*n),pm(.0719453*t-.2289914*e+1.4052427*n),this.opacity)}}));function hm(e){return e>gP?Math.pow(e,1/3):e/bb+vb}function dm(e){return e>ha?e*e*e:bb*(e-vb)}function pm(e){return 255*(e<=.0031308?12.92*e:1.055*Math.pow(e,1/2.4)-.055)}function mm(e){return(e/=255)<=.04045?e/12.92:Math.pow((e+.055)/1.055,2.4)}function yP(e){if(e instanceof Nr)return new Nr(e.h,e.c,e.l,e.opacity);if(e instanceof rr||(e=Mb(e)),e.a===0&&e.b===0)return new Nr(NaN,0<e.l&&e.l<100?0:NaN,e.l,e.opacity);var t=Math.atan2(e.b,e.a)*gb;return new Nr(t<0?t+360:t,Math.sqrt(e.a*e.a+e.b*e.b),e.l,e.opacity)}function Gu(e,t,n,i){return arguments.length===1?yP(e):new Nr(e,t,n,i??1)}function Nr(e,t,n,i){this.h=+e,this.c=+t,this.l=+n,this.opacity=+i}function Sb(e){if(isNaN(e.h))return new rr(e.l,0,0,e.opacity);var t=e.h*mb;return new rr(e.l,Math.cos(t)*e.c,Math.sin(t)*e.c,e.opacity)}pa(Nr,Gu,Vl(xs,{brighter(e){return new Nr(this.h,this.c,this.l+Bu*(e??1),this.opacity)},darker(e){return new Nr(this.h,this.c,this.l-Bu*(e??1),this.opacity)},rgb(){return Sb(this).rgb()}}));var wb=-.14861,ym=1.78277,xm=-.29227,Vu=-.90649,Gl=1.97294,fb=Gl*Vu,hb=Gl*ym,db=ym*xm-Vu*wb;function xP(e){if(e instanceof lo)return new lo(e.h,e.s,e.l,e.opacity);e instanceof rn||(e=gm(e));var t=e.r/255,n=e.g/255,i=e.b/255,r=(db*i+fb*t-hb*n)/(db+fb-hb),s=i-r,o=(Gl*(n-r)-xm*s)/Vu,a=Math.sqrt(o*o+s*s)/(Gl*r*(1-r)),l=a?Math.atan2(o,s)*gb-120:NaN;return new lo(l<0?l+360:l,a,r,e.opacity)}function gi(e,t,n,i){return arguments.length===1?xP(e):new lo(e,t,n,i??1)}function lo(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}pa(lo,gi,Vl(xs,{brighter(e){return e=e==null?da:Math.pow(da,e),new lo(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?co:Math.pow(co,e),new lo(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=isNaN(this.h)?0:(this.h+120)*mb,t=+this.l,n=isNaN(this.s)?0:this.s*t*(1-t),i=Math.cos(e),r=Math.sin(e);return new rn(255*(t+n*(wb*i+ym*r)),255*(t+n*(xm*i+Vu*r)),255*(t+n*(Gl*i)),this.opacity)}}));function Ab(e,t,n,i,r){var s=e*e,o=s*e;return((1-3*e+3*s-o)*t+(4-6*s+3*o)*n+(1+3*e+3*s-3*o)*i+o*r)/6}function _P(e){var t=e.length-1;return function(n){var i=n<=0?n=0:n>=1?(n=1,t-1):Math.floor(n*t),r=e[i],s=e[i+1],o=i>0?e[i-1]:2*r-s,a=i<t-1?e[i+2]:2*s-r;return Ab((n-i/t)*t,o,r,s,a)}}function vP(e){var t=e.length;return function(n){var i=Math.floor(((n%=1)<0?++n:n)*t),r=e[(i+t-1)%t],s=e[i%t],o=e[(i+1)%t],a=e[(i+2)%t];return Ab((n-i/t)*t,r,s,o,a)}}var Wu=e=>()=>e;function Cb(e,t){return function(n){return e+n*t}}function bP(e,t,n){return e=Math.pow(e,n),t=Math.pow(t,n)-e,n=1/n,function(i){return Math.pow(e+i*t,n)}}function Mm(e,t){var n=t-e;return n?Cb(e,n>180||n<-180?n-360*Math.round(n/360):n):Wu(isNaN(e)?t:e)}function MP(e){return(e=+e)==1?sn:function(t,n){return n-t?bP(t,n,e):Wu(isNaN(t)?n:t)}}function sn(e,t){var n=t-e;return n?Cb(e,n):Wu(isNaN(e)?t:e)}var uo=(function e(t){var n=MP(t);function i(r,s){var o=n((r=Bi(r)).r,(s=Bi(s)).r),a=n(r.g,s.g),l=n(r.b,s.b),c=sn(r.opacity,s.opacity);return function(u){return r.r=o(u),r.g=a(u),r.b=l(u),r.opacity=c(u),r+""}}return i.gamma=e,i})(1);function Rb(e){return function(t){var n=t.length,i=new Array(n),r=new Array(n),s=new Array(n),o,a;for(o=0;o<n;++o)a=Bi(t[o]),i[o]=a.r||0,r[o]=a.g||0,s[o]=a.b||0;return i=e(i),r=e(r),s=e(s),a.opacity=1,function(l){return a.r=i(l),a.g=r(l),a.b=s(l),a+""}}}var Pb=Rb(_P),h8=Rb(vP);function SP(e,t){t||(t=[]);var n=e?Math.min(t.length,e.length):0,i=t.slice(),r;return function(s){for(r=0;r<n;++r)i[r]=e[r]*(1-s)+t[r]*s;return i}}function wP(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function TP(e,t){var n=t?t.length:0,i=e?Math.min(n,e.length):0,r=new Array(i),s=new Array(n),o;for(o=0;o<i;++o)r[o]=ga(e[o],t[o]);for(;o<n;++o)s[o]=t[o];return function(a){for(o=0;o<i;++o)s[o]=r[o](a);return s}}function EP(e,t){var n=new Date;return e=+e,t=+t,function(i){return n.setTime(e*(1-i)+t*i),n}}function $e(e,t){return e=+e,t=+t,function(n){return e*(1-n)+t*n}}function AP(e,t){var n={},i={},r;(e===null||typeof e!="object")&&(e={}),(t===null||typeof t!="object")&&(t={});for(r in t)r in e?n[r]=ga(e[r],t[r]):i[r]=t[r];return function(s){for(r in n)i[r]=n[r](s);return i}}var vm=/[-+]?(?:\d+\.?\d*|\.?\d+)(?:[eE][-+]?\d+)?/g,_m=new RegExp(vm.source,"g");function CP(e){return function(){return e}}function RP(e){return function(t){return e(t)+""}}function PP(e,t){var n=vm.lastIndex=_m.lastIndex=0,i,r,s,o=-1,a=[],l=[];for(e=e+"",t=t+"";(i=vm.exec(e))&&(r=_m.exec(t));)(s=r.index)>n&&(s=t.slice(n,s),a[o]?a[o]+=s:a[++o]=s),(i=i[0])===(r=r[0])?a[o]?a[o]+=r:a[++o]=r:(a[++o]=null,l.push({i:o,x:$e(i,r)})),n=_m.lastIndex;return n<t.length&&(s=t.slice(n),a[o]?a[o]+=s:a[++o]=s),a.length<2?l[0]?RP(l[0].x):CP(t):(t=l.length,function(c){for(var u=0,h;u<t;++u)a[(h=l[u]).i]=h.x(c);return a.join("")})}function ga(e,t){var n=typeof t,i;return t==null||n==="boolean"?Wu(t):(n==="number"?$e:n==="string"?(i=ma(t))?(t=i,uo):PP:t instanceof ma?uo:t instanceof Date?EP:wP(t)?SP:Array.isArray(t)?TP:typeof t.valueOf!="function"&&typeof t.toString!="function"||isNaN(t)?AP:$e)(e,t)}function Hl(e,t){return e=+e,t=+t,function(n){return Math.round(e*(1-n)+t*n)}}var Tb=180/Math.PI,bm={translateX:0,translateY:0,rotate:0,skewX:0,scaleX:1,scaleY:1};function Ib(e,t,n,i,r,s){var o,a,l;return(o=Math.sqrt(e*e+t*t))&&(e/=o,t/=o),(l=e*n+t*i)&&(n-=e*l,i-=t*l),(a=Math.sqrt(n*n+i*i))&&(n/=a,i/=a,l/=a),e*i<t*n&&(e=-e,t=-t,l=-l,o=-o),{translateX:r,translateY:s,rotate:Math.atan2(t,e)*Tb,skewX:Math.atan(l)*Tb,scaleX:o,scaleY:a}}var Hu;function IP(e){let t=new(typeof DOMMatrix=="function"?DOMMatrix:WebKitCSSMatrix)(e+"");return t.isIdentity?bm:Ib(t.a,t.b,t.c,t.d,t.e,t.f)}function LP(e){return e==null||(Hu||(Hu=document.createElementNS("http://www.w3.org/2000/svg","g")),Hu.setAttribute("transform",e),!(e=Hu.transform.baseVal.consolidate()))?bm:(e=e.matrix,Ib(e.a,e.b,e.c,e.d,e.e,e.f))}function Lb(e,t,n,i){function r(c){return c.length?c.pop()+" ":""}function s(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push("translate(",null,t,null,n);p.push({i:y-4,x:$e(c,h)},{i:y-2,x:$e(u,f)})}else(h||f)&&d.push("translate("+h+t+f+n)}function o(c,u,h,f){c!==u?(c-u>180?u+=360:u-c>180&&(c+=360),f.push({i:h.push(r(h)+"rotate(",null,i)-2,x:$e(c,u)})):u&&h.push(r(h)+"rotate("+u+i)}function a(c,u,h,f){c!==u?f.push({i:h.push(r(h)+"skewX(",null,i)-2,x:$e(c,u)}):u&&h.push(r(h)+"skewX("+u+i)}function l(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push(r(d)+"scale(",null,",",null,")");p.push({i:y-4,x:$e(c,h)},{i:y-2,x:$e(u,f)})}else(h!==1||f!==1)&&d.push(r(d)+"scale("+h+","+f+")")}return function(c,u){var h=[],f=[];return c=e(c),u=e(u),s(c.translateX,c.translateY,u.translateX,u.translateY,h,f),o(c.rotate,u.rotate,h,f),a(c.skewX,u.skewX,h,f),l(c.scaleX,c.scaleY,u.scaleX,u.scaleY,h,f),c=u=null,function(d){for(var p=-1,y=f.length,g;++p<y;)h[(g=f[p]).i]=g.x(d);return h.join("")}}}var d8=Lb(IP,"px, ","px)","deg)"),p8=Lb(LP,", ",")",")"),DP=1e-12;function Eb(e){return((e=Math.exp(e))+1/e)/2}function NP(e){return((e=Math.exp(e))-1/e)/2}function UP(e){return((e=Math.exp(2*e))-1)/(e+1)}var m8=(function e(t,n,i){function r(s,o){var a=s[0],l=s[1],c=s[2],u=o[0],h=o[1],f=o[2],d=u-a,p=h-l,y=d*d+p*p,g,m;if(y<DP)m=Math.log(f/c)/t,g=function(_){return[a+_*d,l+_*p,c*Math.exp(t*_*m)]};else{var x=Math.sqrt(y),S=(f*f-c*c+i*y)/(2*c*n*x),v=(f*f-c*c-i*y)/(2*f*n*x),M=Math.log(Math.sqrt(S*S+1)-S),b=Math.log(Math.sqrt(v*v+1)-v);m=(b-M)/t,g=function(_){var w=_*m,R=Eb(M),C=c/(n*x)*(R*UP(t*w+M)-NP(M));return[a+C*d,l+C*p,c*R/Eb(t*w+M)]}}return g.duration=Math.abs(m)*1e3*t/Math.SQRT2,g}return r.rho=function(s){var o=Math.max(.001,+s),a=o*o,l=a*a;return e(o,a,l)},r})(Math.SQRT2,2,4);function Db(e){return function(t,n){var i=e((t=ku(t)).h,(n=ku(n)).h),r=sn(t.s,n.s),s=sn(t.l,n.l),o=sn(t.opacity,n.opacity);return function(a){return t.h=i(a),t.s=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Nb=Db(Mm),g8=Db(sn);function Ub(e,t){var n=sn((e=zu(e)).l,(t=zu(t)).l),i=sn(e.a,t.a),r=sn(e.b,t.b),s=sn(e.opacity,t.opacity);return function(o){return e.l=n(o),e.a=i(o),e.b=r(o),e.opacity=s(o),e+""}}function Fb(e){return function(t,n){var i=e((t=Gu(t)).h,(n=Gu(n)).h),r=sn(t.c,n.c),s=sn(t.l,n.l),o=sn(t.opacity,n.opacity);return function(a){return t.h=i(a),t.c=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Ob=Fb(Mm),y8=Fb(sn);function Bb(e){return(function t(n){n=+n;function i(r,s){var o=e((r=gi(r)).h,(s=gi(s)).h),a=sn(r.s,s.s),l=sn(r.l,s.l),c=sn(r.opacity,s.opacity);return function(u){return r.h=o(u),r.s=a(u),r.l=l(Math.pow(u,n)),r.opacity=c(u),r+""}}return i.gamma=t,i})(1)}var x8=Bb(Mm),$u=Bb(sn);function _s(e,t){t===void 0&&(t=e,e=ga);for(var n=0,i=t.length-1,r=t[0],s=new Array(i<0?0:i);n<i;)s[n]=e(r,r=t[++n]);return function(o){var a=Math.max(0,Math.min(i-1,Math.floor(o*=i)));return s[a](o-a)}}function In(e,t){for(var n=new Array(t),i=0;i<t;++i)n[i]=e(i/(t-1));return n}var Wl=Math.PI,Sm=2*Wl,fo=1e-6,FP=Sm-fo;function kb(e){this._+=e[0];for(let t=1,n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function OP(e){let t=Math.floor(e);if(!(t>=0))throw new Error(`invalid digits: ${e}`);if(t>15)return kb;let n=10**t;return function(i){this._+=i[0];for(let r=1,s=i.length;r<s;++r)this._+=Math.round(arguments[r]*n)/n+i[r]}}function zb(e,t,n,i){return e===n&&t===i}function BP(e){let t=Math.floor(e);if(!(t<=15))return zb;let n=10**t,i=function(r){return Math.round(r*n)};return function(r,s,o,a){return i(r)===i(o)&&i(s)===i(a)}}var ho=class{constructor(t){this._x0=this._y0=this._x1=this._y1=null,this._="",this._append=t==null?kb:OP(t),this._equal=t==null?zb:BP(t)}moveTo(t,n){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}`}closePath(){this._x1!==null&&(this._x1=this._x0,this._y1=this._y0,this._append`Z`)}lineTo(t,n){this._append`L${this._x1=+t},${this._y1=+n}`}quadraticCurveTo(t,n,i,r){this._append`Q${+t},${+n},${this._x1=+i},${this._y1=+r}`}bezierCurveTo(t,n,i,r,s,o){this._append`C${+t},${+n},${+i},${+r},${this._x1=+s},${this._y1=+o}`}arcTo(t,n,i,r,s){if(t=+t,n=+n,i=+i,r=+r,s=+s,s<0)throw new Error(`negative radius: ${s}`);let o=this._x1,a=this._y1,l=i-t,c=r-n,u=o-t,h=a-n,f=u*u+h*h;if(this._x1===null)this._append`M${this._x1=t},${this._y1=n}`;else if(f>fo)if(!(Math.abs(h*l-c*u)>fo)||!s)this._append`L${this._x1=t},${this._y1=n}`;else{let d=i-o,p=r-a,y=l*l+c*c,g=d*d+p*p,m=Math.sqrt(y),x=Math.sqrt(f),S=s*Math.tan((Wl-Math.acos((y+f-g)/(2*m*x)))/2),v=S/x,M=S/m;Math.abs(v-1)>fo&&this._append`L${t+v*u},${n+v*h}`,this._append`A${s},${s},0,0,${+(h*d>u*p)},${this._x1=t+M*l},${this._y1=n+M*c}`}}arc(t,n,i,r,s,o){if(t=+t,n=+n,i=+i,o=!!o,i<0)throw new Error(`negative radius: ${i}`);let a=i*Math.cos(r),l=i*Math.sin(r),c=t+a,u=n+l,h=1^o,f=o?r-s:s-r;if(this._x1===null?this._append`M${c},${u}`:(Math.abs(this._x1-c)>fo||Math.abs(this._y1-u)>fo)&&this._append`L${c},${u}`,!!i){if(f<0&&(f=f%Sm+Sm),f>FP)this._append`A${i},${i},0,1,${h},${t-a},${n-l}A${i},${i},0,1,${h},${this._x1=c},${this._y1=u}`;else if(f>fo){let d=t+i*Math.cos(s),p=n+i*Math.sin(s);if(f>=Wl&&this._equal(c,u,d,p)){f/=2;let y=r+f;this._append`A${i},${i},0,${+(f>=Wl)},${h},${t+i*Math.cos(y)},${n+i*Math.sin(y)}`}this._append`A${i},${i},0,${+(f>=Wl)},${h},${this._x1=d},${this._y1=p}`}}}rect(t,n,i,r){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}h${i=+i}v${+r}h${-i}Z`}toString(){return this._}};function kP(){return new ho}kP.prototype=ho.prototype;function yi(e=3){return new ho(+e)}function zP(e){return Math.abs(e=Math.round(e))>=1e21?e.toLocaleString("en").replace(/,/g,""):e.toString(10)}function qu(e,t){if(!isFinite(e)||e===0)return null;var n=(e=t?e.toExponential(t-1):e.toExponential()).indexOf("e"),i=e.slice(0,n);return[i.length>1?i[0]+i.slice(2):i,+e.slice(n+1)]}function ya(e){return e=qu(Math.abs(e)),e?e[1]:NaN}function GP(e,t){return function(n,i){for(var r=n.length,s=[],o=0,a=e[0],l=0;r>0&&a>0&&(l+a+1>i&&(a=Math.max(1,i-l)),s.push(n.substring(r-=a,r+a)),!((l+=a+1)>i));)a=e[o=(o+1)%e.length];return s.reverse().join(t)}}function VP(e){return function(t){return t.replace(/[0-9]/g,function(n){return e[+n]})}}var HP=/^(?:(.)?([<>=^]))?([+\-( ])?([$#])?(0)?(\d+)?(,)?(\.\d+)?(~)?([a-z%])?$/i;function xa(e){if(!(t=HP.exec(e)))throw new Error("invalid format: "+e);var t;return new wm({fill:t[1],align:t[2],sign:t[3],symbol:t[4],zero:t[5],width:t[6],comma:t[7],precision:t[8]&&t[8].slice(1),trim:t[9],type:t[10]})}xa.prototype=wm.prototype;function wm(e){this.fill=e.fill===void 0?" ":e.fill+"",this.align=e.align===void 0?">":e.align+"",this.sign=e.sign===void 0?"-":e.sign+"",this.symbol=e.symbol===void 0?"":e.symbol+"",this.zero=!!e.zero,this.width=e.width===void 0?void 0:+e.width,this.comma=!!e.comma,this.precision=e.precision===void 0?void 0:+e.precision,this.trim=!!e.trim,this.type=e.type===void 0?"":e.type+""}wm.prototype.toString=function(){return this.fill+this.align+this.sign+this.symbol+(this.zero?"0":"")+(this.width===void 0?"":Math.max(1,this.width|0))+(this.comma?",":"")+(this.precision===void 0?"":"."+Math.max(0,this.precision|0))+(this.trim?"~":"")+this.type};function WP(e){t:for(var t=e.length,n=1,i=-1,r;n<t;++n)switch(e[n]){case".":i=r=n;break;case"0":i===0&&(i=n),r=n;break;default:if(!+e[n])break t;i>0&&(i=0);break}return i>0?e.slice(0,i)+e.slice(r+1):e}var Yu;function $P(e,t){var n=qu(e,t);if(!n)return Yu=void 0,e.toPrecision(t);var i=n[0],r=n[1],s=r-(Yu=Math.max(-8,Math.min(8,Math.floor(r/3)))*3)+1,o=i.length;return s===o?i:s>o?i+new Array(s-o+1).join("0"):s>0?i.slice(0,s)+"."+i.slice(s):"0."+new Array(1-s).join("0")+qu(e,Math.max(0,t+s-1))[0]}function Gb(e,t){var n=qu(e,t);if(!n)return e+"";var i=n[0],r=n[1];return r<0?"0."+new Array(-r).join("0")+i:i.length>r+1?i.slice(0,r+1)+"."+i.slice(r+1):i+new Array(r-i.length+2).join("0")}var Vb={"%":(e,t)=>(e*100).toFixed(t),b:e=>Math.round(e).toString(2),c:e=>e+"",d:zP,e:(e,t)=>e.toExponential(t),f:(e,t)=>e.toFixed(t),g:(e,t)=>e.toPrecision(t),o:e=>Math.round(e).toString(8),p:(e,t)=>Gb(e*100,t),r:Gb,s:$P,X:e=>Math.round(e).toString(16).toUpperCase(),x:e=>Math.round(e).toString(16)};function Hb(e){return e}var Wb=Array.prototype.map,$b=["y","z","a","f","p","n","µ","m","","k","M","G","T","P","E","Z","Y"];function XP(e){var t=e.grouping===void 0||e.thousands===void 0?Hb:GP(Wb.call(e.grouping,Number),e.thousands+""),n=e.currency===void 0?"":e.currency[0]+"",i=e.currency===void 0?"":e.currency[1]+"",r=e.decimal===void 0?".":e.decimal+"",s=e.numerals===void 0?Hb:VP(Wb.call(e.numerals,String)),o=e.percent===void 0?"%":e.percent+"",a=e.minus===void 0?"−":e.minus+"",l=e.nan===void 0?"NaN":e.nan+"";function c(h,f){h=xa(h);var d=h.fill,p=h.align,y=h.sign,g=h.symbol,m=h.zero,x=h.width,S=h.comma,v=h.precision,M=h.trim,b=h.type;b==="n"?(S=!0,b="g"):Vb[b]||(v===void 0&&(v=12),M=!0,b="g"),(m||d==="0"&&p==="=")&&(m=!0,d="0",p="=");var _=(f&&f.prefix!==void 0?f.prefix:"")+(g==="$"?n:g==="#"&&/[boxX]/.test(b)?"0"+b.toLowerCase():""),w=(g==="$"?i:/[%p]/.test(b)?o:"")+(f&&f.suffix!==void 0?f.suffix:""),R=Vb[b],C=/[defgprs%]/.test(b);v=v===void 0?6:/[gprs]/.test(b)?Math.max(1,Math.min(21,v)):Math.max(0,Math.min(20,v));function A(L){var B=_,P=w,D,z,U;if(b==="c")P=R(L)+P,L="";else{L=+L;var Z=L<0||1/L<0;if(L=isNaN(L)?l:R(Math.abs(L),v),M&&(L=WP(L)),Z&&+L==0&&y!=="+"&&(Z=!1),B=(Z?y==="("?y:a:y==="-"||y==="("?"":y)+B,P=(b==="s"&&!isNaN(L)&&Yu!==void 0?$b[8+Yu/3]:"")+P+(Z&&y==="("?")":""),C){for(D=-1,z=L.length;++D<z;)if(U=L.charCodeAt(D),48>U||U>57){P=(U===46?r+L.slice(D+1):L.slice(D))+P,L=L.slice(0,D);break}}}S&&!m&&(L=t(L,1/0));var F=B.length+L.length+P.length,V=F<x?new Array(x-F+1).join(d):"";switch(S&&m&&(L=t(V+L,V.length?x-P.length:1/0),V=""),p){case"<":L=B+L+P+V;break;case"=":L=B+V+L+P;break;case"^":L=V.slice(0,F=V.length>>1)+B+L+P+V.slice(F);break;default:L=V+B+L+P;break}return s(L)}return A.toString=function(){return h+""},A}function u(h,f){var d=Math.max(-8,Math.min(8,Math.floor(ya(f)/3)))*3,p=Math.pow(10,-d),y=c((h=xa(h),h.type="f",h),{suffix:$b[8+d/3]});return function(g){return y(p*g)}}return{format:c,formatPrefix:u}}var Xu,sr,Tm;qP({thousands:",",grouping:[3],currency:["$",""]});function qP(e){return Xu=XP(e),sr=Xu.format,Tm=Xu.formatPrefix,Xu}function Xb(e){return Math.max(0,-ya(Math.abs(e)))}function qb(e,t){return Math.max(0,Math.max(-8,Math.min(8,Math.floor(ya(t)/3)))*3-ya(Math.abs(e)))}function Yb(e,t){return e=Math.abs(e),t=Math.abs(t)-e,Math.max(0,ya(t)-ya(e))+1}var qt=1e-6,d1=1e-12,te=Math.PI,Ie=te/2,Zb=te/4,ii=te*2,Ln=180/te,Pe=te/180,fe=Math.abs,Ma=Math.atan,Fr=Math.atan2,Qt=Math.cos;var p1=Math.exp;var ef=Math.log,Em=Math.pow,Yt=Math.sin,_i=Math.sign||function(e){return e>0?1:e<0?-1:0},qn=Math.sqrt,Xm=Math.tan;function m1(e){return e>1?0:e<-1?te:Math.acos(e)}function bi(e){return e>1?Ie:e<-1?-Ie:Math.asin(e)}function vi(){}function nf(e,t){e&&Jb.hasOwnProperty(e.type)&&Jb[e.type](e,t)}var Kb={Feature:function(e,t){nf(e.geometry,t)},FeatureCollection:function(e,t){for(var n=e.features,i=-1,r=n.length;++i<r;)nf(n[i].geometry,t)}},Jb={Sphere:function(e,t){t.sphere()},Point:function(e,t){e=e.coordinates,t.point(e[0],e[1],e[2])},MultiPoint:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)e=n[i],t.point(e[0],e[1],e[2])},LineString:function(e,t){Im(e.coordinates,t,0)},MultiLineString:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)Im(n[i],t,0)},Polygon:function(e,t){jb(e.coordinates,t)},MultiPolygon:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)jb(n[i],t)},GeometryCollection:function(e,t){for(var n=e.geometries,i=-1,r=n.length;++i<r;)nf(n[i],t)}};function Im(e,t,n){var i=-1,r=e.length-n,s;for(t.lineStart();++i<r;)s=e[i],t.point(s[0],s[1],s[2]);t.lineEnd()}function jb(e,t){var n=-1,i=e.length;for(t.polygonStart();++n<i;)Im(e[n],t,1);t.polygonEnd()}function vs(e,t){e&&Kb.hasOwnProperty(e.type)?Kb[e.type](e,t):nf(e,t)}var S8=new di,w8=new di;function Lm(e){return[Fr(e[1],e[0]),bi(e[2])]}function va(e){var t=e[0],n=e[1],i=Qt(n);return[i*Qt(t),i*Yt(t),Yt(n)]}function Zu(e,t){return e[0]*t[0]+e[1]*t[1]+e[2]*t[2]}function rf(e,t){return[e[1]*t[2]-e[2]*t[1],e[2]*t[0]-e[0]*t[2],e[0]*t[1]-e[1]*t[0]]}function Am(e,t){e[0]+=t[0],e[1]+=t[1],e[2]+=t[2]}function Ku(e,t){return[e[0]*t,e[1]*t,e[2]*t]}function Dm(e){var t=qn(e[0]*e[0]+e[1]*e[1]+e[2]*e[2]);e[0]/=t,e[1]/=t,e[2]/=t}function Nm(e,t){function n(i,r){return i=e(i,r),t(i[0],i[1])}return e.invert&&t.invert&&(n.invert=function(i,r){return i=t.invert(i,r),i&&e.invert(i[0],i[1])}),n}function Um(e,t){return fe(e)>te&&(e-=Math.round(e/ii)*ii),[e,t]}Um.invert=Um;function g1(e,t,n){return(e%=ii)?t||n?Nm(t1(e),e1(t,n)):t1(e):t||n?e1(t,n):Um}function Qb(e){return function(t,n){return t+=e,fe(t)>te&&(t-=Math.round(t/ii)*ii),[t,n]}}function t1(e){var t=Qb(e);return t.invert=Qb(-e),t}function e1(e,t){var n=Qt(e),i=Yt(e),r=Qt(t),s=Yt(t);function o(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*n+u*i;return[Fr(h*r-d*s,u*n-f*i),bi(d*r+h*s)]}return o.invert=function(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*r-h*s;return[Fr(h*r+f*s,u*n+d*i),bi(d*n-u*i)]},o}function YP(e){e=g1(e[0]*Pe,e[1]*Pe,e.length>2?e[2]*Pe:0);function t(n){return n=e(n[0]*Pe,n[1]*Pe),n[0]*=Ln,n[1]*=Ln,n}return t.invert=function(n){return n=e.invert(n[0]*Pe,n[1]*Pe),n[0]*=Ln,n[1]*=Ln,n},t}function ZP(e,t,n,i,r,s){if(n){var o=Qt(t),a=Yt(t),l=i*n;r==null?(r=t+i*ii,s=t-l/2):(r=n1(o,r),s=n1(o,s),(i>0?r<s:r>s)&&(r+=i*ii));for(var c,u=r;i>0?u>s:u<s;u-=l)c=Lm([o,-a*Qt(u),-a*Yt(u)]),e.point(c[0],c[1])}}function n1(e,t){t=va(t),t[0]-=e,Dm(t);var n=m1(-t[1]);return((-t[2]<0?-n:n)+ii-qt)%ii}function y1(){var e=[],t;return{point:function(n,i,r){t.push([n,i,r])},lineStart:function(){e.push(t=[])},lineEnd:vi,rejoin:function(){e.length>1&&e.push(e.pop().concat(e.shift()))},result:function(){var n=e;return e=[],t=null,n}}}function tf(e,t){return fe(e[0]-t[0])<qt&&fe(e[1]-t[1])<qt}function Ju(e,t,n,i){this.x=e,this.z=t,this.o=n,this.e=i,this.v=!1,this.n=this.p=null}function x1(e,t,n,i,r){var s=[],o=[],a,l;if(e.forEach(function(p){if(!((y=p.length-1)<=0)){var y,g=p[0],m=p[y],x;if(tf(g,m)){if(!g[2]&&!m[2]){for(r.lineStart(),a=0;a<y;++a)r.point((g=p[a])[0],g[1]);r.lineEnd();return}m[0]+=2*qt}s.push(x=new Ju(g,p,null,!0)),o.push(x.o=new Ju(g,null,x,!1)),s.push(x=new Ju(m,p,null,!1)),o.push(x.o=new Ju(m,null,x,!0))}}),!!s.length){for(o.sort(t),i1(s),i1(o),a=0,l=o.length;a<l;++a)o[a].e=n=!n;for(var c=s[0],u,h;;){for(var f=c,d=!0;f.v;)if((f=f.n)===c)return;u=f.z,r.lineStart();do{if(f.v=f.o.v=!0,f.e){if(d)for(a=0,l=u.length;a<l;++a)r.point((h=u[a])[0],h[1]);else i(f.x,f.n.x,1,r);f=f.n}else{if(d)for(u=f.p.z,a=u.length-1;a>=0;--a)r.point((h=u[a])[0],h[1]);else i(f.x,f.p.x,-1,r);f=f.p}f=f.o,u=f.z,d=!d}while(!f.v);r.lineEnd()}}}function i1(e){if(t=e.length){for(var t,n=0,i=e[0],r;++n<t;)i.n=r=e[n],r.p=i,i=r;i.n=r=e[0],r.p=i}}function Cm(e){return fe(e[0])<=te?e[0]:_i(e[0])*((fe(e[0])+te)%ii-te)}function KP(e,t){var n=Cm(t),i=t[1],r=Yt(i),s=[Yt(n),-Qt(n),0],o=0,a=0,l=new di;r===1?i=Ie+qt:r===-1&&(i=-Ie-qt);for(var c=0,u=e.length;c<u;++c)if(f=(h=e[c]).length)for(var h,f,d=h[f-1],p=Cm(d),y=d[1]/2+Zb,g=Yt(y),m=Qt(y),x=0;x<f;++x,p=v,g=b,m=_,d=S){var S=h[x],v=Cm(S),M=S[1]/2+Zb,b=Yt(M),_=Qt(M),w=v-p,R=w>=0?1:-1,C=R*w,A=C>te,L=g*b;if(l.add(Fr(L*R*Yt(C),m*_+L*Qt(C))),o+=A?w+R*ii:w,A^p>=n^v>=n){var B=rf(va(d),va(S));Dm(B);var P=rf(s,B);Dm(P);var D=(A^w>=0?-1:1)*bi(P[2]);(i>D||i===D&&(B[0]||B[1]))&&(a+=A^w>=0?1:-1)}}return(o<-qt||o<qt&&l<-d1)^a&1}function _1(e,t,n,i){return function(r){var s=t(r),o=y1(),a=t(o),l=!1,c,u,h,f={point:d,lineStart:y,lineEnd:g,polygonStart:function(){f.point=m,f.lineStart=x,f.lineEnd=S,u=[],c=[]},polygonEnd:function(){f.point=d,f.lineStart=y,f.lineEnd=g,u=rm(u);var v=KP(c,i);u.length?(l||(r.polygonStart(),l=!0),x1(u,jP,v,n,r)):v&&(l||(r.polygonStart(),l=!0),r.lineStart(),n(null,null,1,r),r.lineEnd()),l&&(r.polygonEnd(),l=!1),u=c=null},sphere:function(){r.polygonStart(),r.lineStart(),n(null,null,1,r),r.lineEnd(),r.polygonEnd()}};function d(v,M){e(v,M)&&r.point(v,M)}function p(v,M){s.point(v,M)}function y(){f.point=p,s.lineStart()}function g(){f.point=d,s.lineEnd()}function m(v,M){h.push([v,M]),a.point(v,M)}function x(){a.lineStart(),h=[]}function S(){m(h[0][0],h[0][1]),a.lineEnd();var v=a.clean(),M=o.result(),b,_=M.length,w,R,C;if(h.pop(),c.push(h),h=null,!!_){if(v&1){if(R=M[0],(w=R.length-1)>0){for(l||(r.polygonStart(),l=!0),r.lineStart(),b=0;b<w;++b)r.point((C=R[b])[0],C[1]);r.lineEnd()}return}_>1&&v&2&&M.push(M.pop().concat(M.shift())),u.push(M.filter(JP))}}return f}}function JP(e){return e.length>1}function jP(e,t){return((e=e.x)[0]<0?e[1]-Ie-qt:Ie-e[1])-((t=t.x)[0]<0?t[1]-Ie-qt:Ie-t[1])}var r1=_1(function(){return!0},QP,eI,[-te,-Ie]);function QP(e){var t=NaN,n=NaN,i=NaN,r;return{lineStart:function(){e.lineStart(),r=1},point:function(s,o){var a=s>0?te:-te,l=fe(s-t);fe(l-te)<qt?(e.point(t,n=(n+o)/2>0?Ie:-Ie),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),e.point(s,n),r=0):i!==a&&l>=te&&(fe(t-i)<qt&&(t-=i*qt),fe(s-a)<qt&&(s-=a*qt),n=tI(t,n,s,o),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),r=0),e.point(t=s,n=o),i=a},lineEnd:function(){e.lineEnd(),t=n=NaN},clean:function(){return 2-r}}}function tI(e,t,n,i){var r,s,o=Yt(e-n);return fe(o)>qt?Ma((Yt(t)*(s=Qt(i))*Yt(n)-Yt(i)*(r=Qt(t))*Yt(e))/(r*s*o)):(t+i)/2}function eI(e,t,n,i){var r;if(e==null)r=n*Ie,i.point(-te,r),i.point(0,r),i.point(te,r),i.point(te,0),i.point(te,-r),i.point(0,-r),i.point(-te,-r),i.point(-te,0),i.point(-te,r);else if(fe(e[0]-t[0])>qt){var s=e[0]<t[0]?te:-te;r=n*s/2,i.point(-s,r),i.point(0,r),i.point(s,r)}else i.point(t[0],t[1])}function nI(e){var t=Qt(e),n=2*Pe,i=t>0,r=fe(t)>qt;function s(u,h,f,d){ZP(d,e,n,f,u,h)}function o(u,h){return Qt(u)*Qt(h)>t}function a(u){var h,f,d,p,y;return{lineStart:function(){p=d=!1,y=1},point:function(g,m){var x=[g,m],S,v=o(g,m),M=i?v?0:c(g,m):v?c(g+(g<0?te:-te),m):0;if(!h&&(p=d=v)&&u.lineStart(),v!==d&&(S=l(h,x),(!S||tf(h,S)||tf(x,S))&&(x[2]=1)),v!==d)y=0,v?(u.lineStart(),S=l(x,h),u.point(S[0],S[1])):(S=l(h,x),u.point(S[0],S[1],2),u.lineEnd()),h=S;else if(r&&h&&i^v){var b;!(M&f)&&(b=l(x,h,!0))&&(y=0,i?(u.lineStart(),u.point(b[0][0],b[0][1]),u.point(b[1][0],b[1][1]),u.lineEnd()):(u.point(b[1][0],b[1][1]),u.lineEnd(),u.lineStart(),u.point(b[0][0],b[0][1],3)))}v&&(!h||!tf(h,x))&&u.point(x[0],x[1]),h=x,d=v,f=M},lineEnd:function(){d&&u.lineEnd(),h=null},clean:function(){return y|(p&&d)<<1}}}function l(u,h,f){var d=va(u),p=va(h),y=[1,0,0],g=rf(d,p),m=Zu(g,g),x=g[0],S=m-x*x;if(!S)return!f&&u;var v=t*m/S,M=-t*x/S,b=rf(y,g),_=Ku(y,v),w=Ku(g,M);Am(_,w);var R=b,C=Zu(_,R),A=Zu(R,R),L=C*C-A*(Zu(_,_)-1);if(!(L<0)){var B=qn(L),P=Ku(R,(-C-B)/A);if(Am(P,_),P=Lm(P),!f)return P;var D=u[0],z=h[0],U=u[1],Z=h[1],F;z<D&&(F=D,D=z,z=F);var V=z-D,q=fe(V-te)<qt,st=q||V<qt;if(!q&&Z<U&&(F=U,U=Z,Z=F),st?q?U+Z>0^P[1]<(fe(P[0]-D)<qt?U:Z):U<=P[1]&&P[1]<=Z:V>te^(D<=P[0]&&P[0]<=z)){var lt=Ku(R,(-C+B)/A);return Am(lt,_),[P,Lm(lt)]}}}function c(u,h){var f=i?e:te-e,d=0;return u<-f?d|=1:u>f&&(d|=2),h<-f?d|=4:h>f&&(d|=8),d}return _1(o,a,s,i?[0,-e]:[-te,e-te])}function iI(e,t,n,i,r,s){var o=e[0],a=e[1],l=t[0],c=t[1],u=0,h=1,f=l-o,d=c-a,p;if(p=n-o,!(!f&&p>0)){if(p/=f,f<0){if(p<u)return;p<h&&(h=p)}else if(f>0){if(p>h)return;p>u&&(u=p)}if(p=r-o,!(!f&&p<0)){if(p/=f,f<0){if(p>h)return;p>u&&(u=p)}else if(f>0){if(p<u)return;p<h&&(h=p)}if(p=i-a,!(!d&&p>0)){if(p/=d,d<0){if(p<u)return;p<h&&(h=p)}else if(d>0){if(p>h)return;p>u&&(u=p)}if(p=s-a,!(!d&&p<0)){if(p/=d,d<0){if(p>h)return;p>u&&(u=p)}else if(d>0){if(p<u)return;p<h&&(h=p)}return u>0&&(e[0]=o+u*f,e[1]=a+u*d),h<1&&(t[0]=o+h*f,t[1]=a+h*d),!0}}}}}var $l=1e9,ju=-$l;function qm(e,t,n,i){function r(c,u){return e<=c&&c<=n&&t<=u&&u<=i}function s(c,u,h,f){var d=0,p=0;if(c==null||(d=o(c,h))!==(p=o(u,h))||l(c,u)<0^h>0)do f.point(d===0||d===3?e:n,d>1?i:t);while((d=(d+h+4)%4)!==p);else f.point(u[0],u[1])}function o(c,u){return fe(c[0]-e)<qt?u>0?0:3:fe(c[0]-n)<qt?u>0?2:1:fe(c[1]-t)<qt?u>0?1:0:u>0?3:2}function a(c,u){return l(c.x,u.x)}function l(c,u){var h=o(c,1),f=o(u,1);return h!==f?h-f:h===0?u[1]-c[1]:h===1?c[0]-u[0]:h===2?c[1]-u[1]:u[0]-c[0]}return function(c){var u=c,h=y1(),f,d,p,y,g,m,x,S,v,M,b,_={point:w,lineStart:L,lineEnd:B,polygonStart:C,polygonEnd:A};function w(D,z){r(D,z)&&u.point(D,z)}function R(){for(var D=0,z=0,U=d.length;z<U;++z)for(var Z=d[z],F=1,V=Z.length,q=Z[0],st,lt,$=q[0],at=q[1];F<V;++F)st=$,lt=at,q=Z[F],$=q[0],at=q[1],lt<=i?at>i&&($-st)*(i-lt)>(at-lt)*(e-st)&&++D:at<=i&&($-st)*(i-lt)<(at-lt)*(e-st)&&--D;return D}function C(){u=h,f=[],d=[],b=!0}function A(){var D=R(),z=b&&D,U=(f=rm(f)).length;(z||U)&&(c.polygonStart(),z&&(c.lineStart(),s(null,null,1,c),c.lineEnd()),U&&x1(f,a,D,s,c),c.polygonEnd()),u=c,f=d=p=null}function L(){_.point=P,d&&d.push(p=[]),M=!0,v=!1,x=S=NaN}function B(){f&&(P(y,g),m&&v&&h.rejoin(),f.push(h.result())),_.point=w,v&&u.lineEnd()}function P(D,z){var U=r(D,z);if(d&&p.push([D,z]),M)y=D,g=z,m=U,M=!1,U&&(u.lineStart(),u.point(D,z));else if(U&&v)u.point(D,z);else{var Z=[x=Math.max(ju,Math.min($l,x)),S=Math.max(ju,Math.min($l,S))],F=[D=Math.max(ju,Math.min($l,D)),z=Math.max(ju,Math.min($l,z))];iI(Z,F,e,t,n,i)?(v||(u.lineStart(),u.point(Z[0],Z[1])),u.point(F[0],F[1]),U||u.lineEnd(),b=!1):U&&(u.lineStart(),u.point(D,z),b=!1)}x=D,S=z,v=U}return _}}var Fm=e=>e,Rm=new di,Om=new di,v1,b1,Bm,km,Ur={point:vi,lineStart:vi,lineEnd:vi,polygonStart:function(){Ur.lineStart=rI,Ur.lineEnd=oI},polygonEnd:function(){Ur.lineStart=Ur.lineEnd=Ur.point=vi,Rm.add(fe(Om)),Om=new di},result:function(){var e=Rm/2;return Rm=new di,e}};function rI(){Ur.point=sI}function sI(e,t){Ur.point=M1,v1=Bm=e,b1=km=t}function M1(e,t){Om.add(km*e-Bm*t),Bm=e,km=t}function oI(){M1(v1,b1)}var ba=1/0,sf=ba,tc=-ba,of=tc,af={point:aI,lineStart:vi,lineEnd:vi,polygonStart:vi,polygonEnd:vi,result:function(){var e=[[ba,sf],[tc,of]];return tc=of=-(sf=ba=1/0),e}};function aI(e,t){e<ba&&(ba=e),e>tc&&(tc=e),t<sf&&(sf=t),t>of&&(of=t)}var zm=0,Gm=0,Xl=0,lf=0,cf=0,_a=0,Vm=0,Hm=0,ql=0,S1,w1,or,ar,xi={point:po,lineStart:s1,lineEnd:o1,polygonStart:function(){xi.lineStart=uI,xi.lineEnd=fI},polygonEnd:function(){xi.point=po,xi.lineStart=s1,xi.lineEnd=o1},result:function(){var e=ql?[Vm/ql,Hm/ql]:_a?[lf/_a,cf/_a]:Xl?[zm/Xl,Gm/Xl]:[NaN,NaN];return zm=Gm=Xl=lf=cf=_a=Vm=Hm=ql=0,e}};function po(e,t){zm+=e,Gm+=t,++Xl}function s1(){xi.point=lI}function lI(e,t){xi.point=cI,po(or=e,ar=t)}function cI(e,t){var n=e-or,i=t-ar,r=qn(n*n+i*i);lf+=r*(or+e)/2,cf+=r*(ar+t)/2,_a+=r,po(or=e,ar=t)}function o1(){xi.point=po}function uI(){xi.point=hI}function fI(){T1(S1,w1)}function hI(e,t){xi.point=T1,po(S1=or=e,w1=ar=t)}function T1(e,t){var n=e-or,i=t-ar,r=qn(n*n+i*i);lf+=r*(or+e)/2,cf+=r*(ar+t)/2,_a+=r,r=ar*e-or*t,Vm+=r*(or+e),Hm+=r*(ar+t),ql+=r*3,po(or=e,ar=t)}function E1(e){this._context=e}E1.prototype={_radius:4.5,pointRadius:function(e){return this._radius=e,this},polygonStart:function(){this._line=0},polygonEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){this._line===0&&this._context.closePath(),this._point=NaN},point:function(e,t){switch(this._point){case 0:{this._context.moveTo(e,t),this._point=1;break}case 1:{this._context.lineTo(e,t);break}default:{this._context.moveTo(e+this._radius,t),this._context.arc(e,t,this._radius,0,ii);break}}},result:vi};var Wm=new di,Pm,A1,C1,Yl,Zl,ec={point:vi,lineStart:function(){ec.point=dI},lineEnd:function(){Pm&&R1(A1,C1),ec.point=vi},polygonStart:function(){Pm=!0},polygonEnd:function(){Pm=null},result:function(){var e=+Wm;return Wm=new di,e}};function dI(e,t){ec.point=R1,A1=Yl=e,C1=Zl=t}function R1(e,t){Yl-=e,Zl-=t,Wm.add(qn(Yl*Yl+Zl*Zl)),Yl=e,Zl=t}var a1,uf,l1,c1,ff=class{constructor(t){this._append=t==null?P1:pI(t),this._radius=4.5,this._=""}pointRadius(t){return this._radius=+t,this}polygonStart(){this._line=0}polygonEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){this._line===0&&(this._+="Z"),this._point=NaN}point(t,n){switch(this._point){case 0:{this._append`M${t},${n}`,this._point=1;break}case 1:{this._append`L${t},${n}`;break}default:{if(this._append`M${t},${n}`,this._radius!==l1||this._append!==uf){let i=this._radius,r=this._;this._="",this._append`m0,${i}a${i},${i} 0 1,1 0,${-2*i}a${i},${i} 0 1,1 0,${2*i}z`,l1=i,uf=this._append,c1=this._,this._=r}this._+=c1;break}}}result(){let t=this._;return this._="",t.length?t:null}};function P1(e){let t=1;this._+=e[0];for(let n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function pI(e){let t=Math.floor(e);if(!(t>=0))throw new RangeError(`invalid digits: ${e}`);if(t>15)return P1;if(t!==a1){let n=10**t;a1=t,uf=function(r){let s=1;this._+=r[0];for(let o=r.length;s<o;++s)this._+=Math.round(arguments[s]*n)/n+r[s]}}return uf}function ic(e,t){let n=3,i=4.5,r,s;function o(a){return a&&(typeof i=="function"&&s.pointRadius(+i.apply(this,arguments)),vs(a,r(s))),s.result()}return o.area=function(a){return vs(a,r(Ur)),Ur.result()},o.measure=function(a){return vs(a,r(ec)),ec.result()},o.bounds=function(a){return vs(a,r(af)),af.result()},o.centroid=function(a){return vs(a,r(xi)),xi.result()},o.projection=function(a){return arguments.length?(r=a==null?(e=null,Fm):(e=a).stream,o):e},o.context=function(a){return arguments.length?(s=a==null?(t=null,new ff(n)):new E1(t=a),typeof i!="function"&&s.pointRadius(i),o):t},o.pointRadius=function(a){return arguments.length?(i=typeof a=="function"?a:(s.pointRadius(+a),+a),o):i},o.digits=function(a){if(!arguments.length)return n;if(a==null)n=null;else{let l=Math.floor(a);if(!(l>=0))throw new RangeError(`invalid digits: ${a}`);n=l}return t===null&&(s=new ff(n)),o},o.projection(e).digits(n).context(t)}function rc(e){return{stream:pf(e)}}function pf(e){return function(t){var n=new $m;for(var i in e)n[i]=e[i];return n.stream=t,n}}function $m(){}$m.prototype={constructor:$m,point:function(e,t){this.stream.point(e,t)},sphere:function(){this.stream.sphere()},lineStart:function(){this.stream.lineStart()},lineEnd:function(){this.stream.lineEnd()},polygonStart:function(){this.stream.polygonStart()},polygonEnd:function(){this.stream.polygonEnd()}};function Ym(e,t,n){var i=e.clipExtent&&e.clipExtent();return e.scale(150).translate([0,0]),i!=null&&e.clipExtent(null),vs(n,e.stream(af)),t(af.result()),i!=null&&e.clipExtent(i),e}function Zm(e,t,n){return Ym(e,function(i){var r=t[1][0]-t[0][0],s=t[1][1]-t[0][1],o=Math.min(r/(i[1][0]-i[0][0]),s/(i[1][1]-i[0][1])),a=+t[0][0]+(r-o*(i[1][0]+i[0][0]))/2,l=+t[0][1]+(s-o*(i[1][1]+i[0][1]))/2;e.scale(150*o).translate([a,l])},n)}function I1(e,t,n){return Zm(e,[[0,0],t],n)}function L1(e,t,n){return Ym(e,function(i){var r=+t,s=r/(i[1][0]-i[0][0]),o=(r-s*(i[1][0]+i[0][0]))/2,a=-s*i[0][1];e.scale(150*s).translate([o,a])},n)}function D1(e,t,n){return Ym(e,function(i){var r=+t,s=r/(i[1][1]-i[0][1]),o=-s*i[0][0],a=(r-s*(i[1][1]+i[0][1]))/2;e.scale(150*s).translate([o,a])},n)}var u1=16,mI=Qt(30*Pe);function f1(e,t){return+t?yI(e,t):gI(e)}function gI(e){return pf({point:function(t,n){t=e(t,n),this.stream.point(t[0],t[1])}})}function yI(e,t){function n(i,r,s,o,a,l,c,u,h,f,d,p,y,g){var m=c-i,x=u-r,S=m*m+x*x;if(S>4*t&&y--){var v=o+f,M=a+d,b=l+p,_=qn(v*v+M*M+b*b),w=bi(b/=_),R=fe(fe(b)-1)<qt||fe(s-h)<qt?(s+h)/2:Fr(M,v),C=e(R,w),A=C[0],L=C[1],B=A-i,P=L-r,D=x*B-m*P;(D*D/S>t||fe((m*B+x*P)/S-.5)>.3||o*f+a*d+l*p<mI)&&(n(i,r,s,o,a,l,A,L,R,v/=_,M/=_,b,y,g),g.point(A,L),n(A,L,R,v,M,b,c,u,h,f,d,p,y,g))}}return function(i){var r,s,o,a,l,c,u,h,f,d,p,y,g={point:m,lineStart:x,lineEnd:v,polygonStart:function(){i.polygonStart(),g.lineStart=M},polygonEnd:function(){i.polygonEnd(),g.lineStart=x}};function m(w,R){w=e(w,R),i.point(w[0],w[1])}function x(){h=NaN,g.point=S,i.lineStart()}function S(w,R){var C=va([w,R]),A=e(w,R);n(h,f,u,d,p,y,h=A[0],f=A[1],u=w,d=C[0],p=C[1],y=C[2],u1,i),i.point(h,f)}function v(){g.point=m,i.lineEnd()}function M(){x(),g.point=b,g.lineEnd=_}function b(w,R){S(r=w,R),s=h,o=f,a=d,l=p,c=y,g.point=S}function _(){n(h,f,u,d,p,y,s,o,r,a,l,c,u1,i),g.lineEnd=v,v()}return g}}var xI=pf({point:function(e,t){this.stream.point(e*Pe,t*Pe)}});function _I(e){return pf({point:function(t,n){var i=e(t,n);return this.stream.point(i[0],i[1])}})}function vI(e,t,n,i,r){function s(o,a){return o*=i,a*=r,[t+e*o,n-e*a]}return s.invert=function(o,a){return[(o-t)/e*i,(n-a)/e*r]},s}function h1(e,t,n,i,r,s){if(!s)return vI(e,t,n,i,r);var o=Qt(s),a=Yt(s),l=o*e,c=a*e,u=o/e,h=a/e,f=(a*n-o*t)/e,d=(a*t+o*n)/e;function p(y,g){return y*=i,g*=r,[l*y-c*g+t,n-c*y-l*g]}return p.invert=function(y,g){return[i*(u*y-h*g+f),r*(d-h*y-u*g)]},p}function bs(e){return N1(function(){return e})()}function N1(e){var t,n=150,i=480,r=250,s=0,o=0,a=0,l=0,c=0,u,h=0,f=1,d=1,p=null,y=r1,g=null,m,x,S,v=Fm,M=.5,b,_,w,R,C;function A(D){return w(D[0]*Pe,D[1]*Pe)}function L(D){return D=w.invert(D[0],D[1]),D&&[D[0]*Ln,D[1]*Ln]}A.stream=function(D){return R&&C===D?R:R=xI(_I(u)(y(b(v(C=D)))))},A.preclip=function(D){return arguments.length?(y=D,p=void 0,P()):y},A.postclip=function(D){return arguments.length?(v=D,g=m=x=S=null,P()):v},A.clipAngle=function(D){return arguments.length?(y=+D?nI(p=D*Pe):(p=null,r1),P()):p*Ln},A.clipExtent=function(D){return arguments.length?(v=D==null?(g=m=x=S=null,Fm):qm(g=+D[0][0],m=+D[0][1],x=+D[1][0],S=+D[1][1]),P()):g==null?null:[[g,m],[x,S]]},A.scale=function(D){return arguments.length?(n=+D,B()):n},A.translate=function(D){return arguments.length?(i=+D[0],r=+D[1],B()):[i,r]},A.center=function(D){return arguments.length?(s=D[0]%360*Pe,o=D[1]%360*Pe,B()):[s*Ln,o*Ln]},A.rotate=function(D){return arguments.length?(a=D[0]%360*Pe,l=D[1]%360*Pe,c=D.length>2?D[2]%360*Pe:0,B()):[a*Ln,l*Ln,c*Ln]},A.angle=function(D){return arguments.length?(h=D%360*Pe,B()):h*Ln},A.reflectX=function(D){return arguments.length?(f=D?-1:1,B()):f<0},A.reflectY=function(D){return arguments.length?(d=D?-1:1,B()):d<0},A.precision=function(D){return arguments.length?(b=f1(_,M=D*D),P()):qn(M)},A.fitExtent=function(D,z){return Zm(A,D,z)},A.fitSize=function(D,z){return I1(A,D,z)},A.fitWidth=function(D,z){return L1(A,D,z)},A.fitHeight=function(D,z){return D1(A,D,z)};function B(){var D=h1(n,0,0,f,d,h).apply(null,t(s,o)),z=h1(n,i-D[0],r-D[1],f,d,h);return u=g1(a,l,c),_=Nm(t,z),w=Nm(u,_),b=f1(_,M),P()}function P(){return R=C=null,A}return function(){return t=e.apply(this,arguments),A.invert=t.invert&&L,B()}}function Km(e){var t=0,n=te/3,i=N1(e),r=i(t,n);return r.parallels=function(s){return arguments.length?i(t=s[0]*Pe,n=s[1]*Pe):[t*Ln,n*Ln]},r}function bI(e){var t=Qt(e);function n(i,r){return[i*t,Yt(r)/t]}return n.invert=function(i,r){return[i/t,bi(r*t)]},n}function MI(e,t){var n=Yt(e),i=(n+Yt(t))/2;if(fe(i)<qt)return bI(e);var r=1+n*(2*i-n),s=qn(r)/i;function o(a,l){var c=qn(r-2*i*Yt(l))/i;return[c*Yt(a*=i),s-c*Qt(a)]}return o.invert=function(a,l){var c=s-l,u=Fr(a,fe(c))*_i(c);return c*i<0&&(u-=te*_i(a)*_i(c)),[u/i,bi((r-(a*a+c*c)*i*i)/(2*i))]},o}function nc(){return Km(MI).scale(155.424).center([0,33.6442])}function Jm(){return nc().parallels([29.5,45.5]).scale(1070).translate([480,250]).rotate([96,0]).center([-.6,38.7])}function SI(e){var t=e.length;return{point:function(n,i){for(var r=-1;++r<t;)e[r].point(n,i)},sphere:function(){for(var n=-1;++n<t;)e[n].sphere()},lineStart:function(){for(var n=-1;++n<t;)e[n].lineStart()},lineEnd:function(){for(var n=-1;++n<t;)e[n].lineEnd()},polygonStart:function(){for(var n=-1;++n<t;)e[n].polygonStart()},polygonEnd:function(){for(var n=-1;++n<t;)e[n].polygonEnd()}}}function U1(){var e,t,n=Jm(),i,r=nc().rotate([154,0]).center([-2,58.5]).parallels([55,65]),s,o=nc().rotate([157,0]).center([-3,19.9]).parallels([8,18]),a,l,c={point:function(f,d){l=[f,d]}};function u(f){var d=f[0],p=f[1];return l=null,i.point(d,p),l||(s.point(d,p),l)||(a.point(d,p),l)}u.invert=function(f){var d=n.scale(),p=n.translate(),y=(f[0]-p[0])/d,g=(f[1]-p[1])/d;return(g>=.12&&g<.234&&y>=-.425&&y<-.214?r:g>=.166&&g<.234&&y>=-.214&&y<-.115?o:n).invert(f)},u.stream=function(f){return e&&t===f?e:e=SI([n.stream(t=f),r.stream(f),o.stream(f)])},u.precision=function(f){return arguments.length?(n.precision(f),r.precision(f),o.precision(f),h()):n.precision()},u.scale=function(f){return arguments.length?(n.scale(f),r.scale(f*.35),o.scale(f),u.translate(n.translate())):n.scale()},u.translate=function(f){if(!arguments.length)return n.translate();var d=n.scale(),p=+f[0],y=+f[1];return i=n.translate(f).clipExtent([[p-.455*d,y-.238*d],[p+.455*d,y+.238*d]]).stream(c),s=r.translate([p-.307*d,y+.201*d]).clipExtent([[p-.425*d+qt,y+.12*d+qt],[p-.214*d-qt,y+.234*d-qt]]).stream(c),a=o.translate([p-.205*d,y+.212*d]).clipExtent([[p-.214*d+qt,y+.166*d+qt],[p-.115*d-qt,y+.234*d-qt]]).stream(c),h()},u.fitExtent=function(f,d){return Zm(u,f,d)},u.fitSize=function(f,d){return I1(u,f,d)},u.fitWidth=function(f,d){return L1(u,f,d)},u.fitHeight=function(f,d){return D1(u,f,d)};function h(){return e=t=null,u}return u.scale(1070)}function F1(e){return function(t,n){var i=Qt(t),r=Qt(n),s=e(i*r);return s===1/0?[2,0]:[s*r*Yt(t),s*Yt(n)]}}function sc(e){return function(t,n){var i=qn(t*t+n*n),r=e(i),s=Yt(r),o=Qt(r);return[Fr(t*s,i*o),bi(i&&n*s/i)]}}var O1=F1(function(e){return qn(2/(1+e))});O1.invert=sc(function(e){return 2*bi(e/2)});function B1(){return bs(O1).scale(124.75).clipAngle(180-.001)}var k1=F1(function(e){return(e=m1(e))&&e/Yt(e)});k1.invert=sc(function(e){return e});function z1(){return bs(k1).scale(79.4188).clipAngle(180-.001)}function mf(e,t){return[e,ef(Xm((Ie+t)/2))]}mf.invert=function(e,t){return[e,2*Ma(p1(t))-Ie]};function G1(){return V1(mf).scale(961/ii)}function V1(e){var t=bs(e),n=t.center,i=t.scale,r=t.translate,s=t.clipExtent,o=null,a,l,c;t.scale=function(h){return arguments.length?(i(h),u()):i()},t.translate=function(h){return arguments.length?(r(h),u()):r()},t.center=function(h){return arguments.length?(n(h),u()):n()},t.clipExtent=function(h){return arguments.length?(h==null?o=a=l=c=null:(o=+h[0][0],a=+h[0][1],l=+h[1][0],c=+h[1][1]),u()):o==null?null:[[o,a],[l,c]]};function u(){var h=te*i(),f=t(YP(t.rotate()).invert([0,0]));return s(o==null?[[f[0]-h,f[1]-h],[f[0]+h,f[1]+h]]:e===mf?[[Math.max(f[0]-h,o),a],[Math.min(f[0]+h,l),c]]:[[o,Math.max(f[1]-h,a)],[l,Math.min(f[1]+h,c)]])}return u()}function Qu(e){return Xm((Ie+e)/2)}function wI(e,t){var n=Qt(e),i=e===t?Yt(e):ef(n/Qt(t))/ef(Qu(t)/Qu(e)),r=n*Em(Qu(e),i)/i;if(!i)return mf;function s(o,a){r>0?a<-Ie+qt&&(a=-Ie+qt):a>Ie-qt&&(a=Ie-qt);var l=r/Em(Qu(a),i);return[l*Yt(i*o),r-l*Qt(i*o)]}return s.invert=function(o,a){var l=r-a,c=_i(i)*qn(o*o+l*l),u=Fr(o,fe(l))*_i(l);return l*i<0&&(u-=te*_i(o)*_i(l)),[u/i,2*Ma(Em(r/c,1/i))-Ie]},s}function H1(){return Km(wI).scale(109.5).parallels([30,30])}function hf(e,t){return[e,t]}hf.invert=hf;function W1(){return bs(hf).scale(152.63)}function TI(e,t){var n=Qt(e),i=e===t?Yt(e):(n-Qt(t))/(t-e),r=n/i+e;if(fe(i)<qt)return hf;function s(o,a){var l=r-a,c=i*o;return[l*Yt(c),r-l*Qt(c)]}return s.invert=function(o,a){var l=r-a,c=Fr(o,fe(l))*_i(l);return l*i<0&&(c-=te*_i(o)*_i(l)),[c/i,r-_i(i)*qn(o*o+l*l)]},s}function $1(){return Km(TI).scale(131.154).center([0,13.9389])}var Kl=1.340264,Jl=-.081106,jl=893e-6,Ql=.003796,df=qn(3)/2,EI=12;function X1(e,t){var n=bi(df*Yt(t)),i=n*n,r=i*i*i;return[e*Qt(n)/(df*(Kl+3*Jl*i+r*(7*jl+9*Ql*i))),n*(Kl+Jl*i+r*(jl+Ql*i))]}X1.invert=function(e,t){for(var n=t,i=n*n,r=i*i*i,s=0,o,a,l;s<EI&&(a=n*(Kl+Jl*i+r*(jl+Ql*i))-t,l=Kl+3*Jl*i+r*(7*jl+9*Ql*i),n-=o=a/l,i=n*n,r=i*i*i,!(fe(o)<d1));++s);return[df*e*(Kl+3*Jl*i+r*(7*jl+9*Ql*i))/Qt(n),bi(Yt(n)/df)]};function q1(){return bs(X1).scale(177.158)}function Y1(e,t){var n=Qt(t),i=Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}Y1.invert=sc(Ma);function Z1(){return bs(Y1).scale(144.049).clipAngle(60)}function AI(e,t){var n=t*t,i=n*n;return[e*(.8707-.131979*n+i*(-.013791+i*(.003971*n-.001529*i))),t*(1.007226+n*(.015085+i*(-.044475+.028874*n-.005916*i)))]}AI.invert=function(e,t){var n=t,i=25,r;do{var s=n*n,o=s*s;n-=r=(n*(1.007226+s*(.015085+o*(-.044475+.028874*s-.005916*o)))-t)/(1.007226+s*(.015085*3+o*(-.044475*7+.028874*9*s-.005916*11*o)))}while(fe(r)>qt&&--i>0);return[e/(.8707+(s=n*n)*(-.131979+s*(-.013791+s*s*s*(.003971-.001529*s)))),n]};function K1(e,t){return[Qt(t)*Yt(e),Yt(t)]}K1.invert=sc(bi);function J1(){return bs(K1).scale(249.5).clipAngle(90+qt)}function j1(e,t){var n=Qt(t),i=1+Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}j1.invert=sc(function(e){return 2*Ma(e)});function Q1(){return bs(j1).scale(250).clipAngle(142)}function tM(e,t){return[ef(Xm((Ie+t)/2)),-e]}tM.invert=function(e,t){return[-t,2*Ma(p1(e))-Ie]};function eM(){var e=V1(tM),t=e.center,n=e.rotate;return e.center=function(i){return arguments.length?t([-i[1],i[0]]):(i=t(),[i[1],-i[0]])},e.rotate=function(i){return arguments.length?n([i[0],i[1],i.length>2?i[2]+90:90]):(i=n(),[i[0],i[1],i[2]-90])},n([0,0,90]).scale(159.155)}var jm=new Date,Qm=new Date;function Xe(e,t,n,i){function r(s){return e(s=arguments.length===0?new Date:new Date(+s)),s}return r.floor=s=>(e(s=new Date(+s)),s),r.ceil=s=>(e(s=new Date(s-1)),t(s,1),e(s),s),r.round=s=>{let o=r(s),a=r.ceil(s);return s-o<a-s?o:a},r.offset=(s,o)=>(t(s=new Date(+s),o==null?1:Math.floor(o)),s),r.range=(s,o,a)=>{let l=[];if(s=r.ceil(s),a=a==null?1:Math.floor(a),!(s<o)||!(a>0))return l;let c;do l.push(c=new Date(+s)),t(s,a),e(s);while(c<s&&s<o);return l},r.filter=s=>Xe(o=>{if(o>=o)for(;e(o),!s(o);)o.setTime(o-1)},(o,a)=>{if(o>=o)if(a<0)for(;++a<=0;)for(;t(o,-1),!s(o););else for(;--a>=0;)for(;t(o,1),!s(o););}),n&&(r.count=(s,o)=>(jm.setTime(+s),Qm.setTime(+o),e(jm),e(Qm),Math.floor(n(jm,Qm))),r.every=s=>(s=Math.floor(s),!isFinite(s)||!(s>0)?null:s>1?r.filter(i?o=>i(o)%s===0:o=>r.count(0,o)%s===0):r)),r}var gf=Xe(()=>{},(e,t)=>{e.setTime(+e+t)},(e,t)=>t-e);gf.every=e=>(e=Math.floor(e),!isFinite(e)||!(e>0)?null:e>1?Xe(t=>{t.setTime(Math.floor(t/e)*e)},(t,n)=>{t.setTime(+t+n*e)},(t,n)=>(n-t)/e):gf);var A8=gf.range,Or=1e3,Mi=Or*60,Br=Mi*60,kr=Br*24,eg=kr*7,nM=kr*30,tg=kr*365,Dn=Xe(e=>{e.setTime(e-e.getMilliseconds())},(e,t)=>{e.setTime(+e+t*Or)},(e,t)=>(t-e)/Or,e=>e.getUTCSeconds()),C8=Dn.range,mo=Xe(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Or)},(e,t)=>{e.setTime(+e+t*Mi)},(e,t)=>(t-e)/Mi,e=>e.getMinutes()),R8=mo.range,go=Xe(e=>{e.setUTCSeconds(0,0)},(e,t)=>{e.setTime(+e+t*Mi)},(e,t)=>(t-e)/Mi,e=>e.getUTCMinutes()),P8=go.range,yo=Xe(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Or-e.getMinutes()*Mi)},(e,t)=>{e.setTime(+e+t*Br)},(e,t)=>(t-e)/Br,e=>e.getHours()),I8=yo.range,xo=Xe(e=>{e.setUTCMinutes(0,0,0)},(e,t)=>{e.setTime(+e+t*Br)},(e,t)=>(t-e)/Br,e=>e.getUTCHours()),L8=xo.range,lr=Xe(e=>e.setHours(0,0,0,0),(e,t)=>e.setDate(e.getDate()+t),(e,t)=>(t-e-(t.getTimezoneOffset()-e.getTimezoneOffset())*Mi)/kr,e=>e.getDate()-1),D8=lr.range,Sa=Xe(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/kr,e=>e.getUTCDate()-1),N8=Sa.range,oc=Xe(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/kr,e=>Math.floor(e/kr)),U8=oc.range;function _o(e){return Xe(t=>{t.setDate(t.getDate()-(t.getDay()+7-e)%7),t.setHours(0,0,0,0)},(t,n)=>{t.setDate(t.getDate()+n*7)},(t,n)=>(n-t-(n.getTimezoneOffset()-t.getTimezoneOffset())*Mi)/eg)}var cr=_o(0),vo=_o(1),ng=_o(2),ig=_o(3),zr=_o(4),rg=_o(5),sg=_o(6),F8=cr.range,O8=vo.range,B8=ng.range,k8=ig.range,z8=zr.range,G8=rg.range,V8=sg.range;function bo(e){return Xe(t=>{t.setUTCDate(t.getUTCDate()-(t.getUTCDay()+7-e)%7),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCDate(t.getUTCDate()+n*7)},(t,n)=>(n-t)/eg)}var ur=bo(0),Mo=bo(1),og=bo(2),ag=bo(3),Gr=bo(4),lg=bo(5),cg=bo(6),H8=ur.range,W8=Mo.range,$8=og.range,X8=ag.range,q8=Gr.range,Y8=lg.range,Z8=cg.range,So=Xe(e=>{e.setDate(1),e.setHours(0,0,0,0)},(e,t)=>{e.setMonth(e.getMonth()+t)},(e,t)=>t.getMonth()-e.getMonth()+(t.getFullYear()-e.getFullYear())*12,e=>e.getMonth()),K8=So.range,wo=Xe(e=>{e.setUTCDate(1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCMonth(e.getUTCMonth()+t)},(e,t)=>t.getUTCMonth()-e.getUTCMonth()+(t.getUTCFullYear()-e.getUTCFullYear())*12,e=>e.getUTCMonth()),J8=wo.range,Yn=Xe(e=>{e.setMonth(0,1),e.setHours(0,0,0,0)},(e,t)=>{e.setFullYear(e.getFullYear()+t)},(e,t)=>t.getFullYear()-e.getFullYear(),e=>e.getFullYear());Yn.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:Xe(t=>{t.setFullYear(Math.floor(t.getFullYear()/e)*e),t.setMonth(0,1),t.setHours(0,0,0,0)},(t,n)=>{t.setFullYear(t.getFullYear()+n*e)});var j8=Yn.range,Zn=Xe(e=>{e.setUTCMonth(0,1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCFullYear(e.getUTCFullYear()+t)},(e,t)=>t.getUTCFullYear()-e.getUTCFullYear(),e=>e.getUTCFullYear());Zn.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:Xe(t=>{t.setUTCFullYear(Math.floor(t.getUTCFullYear()/e)*e),t.setUTCMonth(0,1),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCFullYear(t.getUTCFullYear()+n*e)});var Q8=Zn.range;function iM(e,t,n,i,r,s){let o=[[Dn,1,Or],[Dn,5,5*Or],[Dn,15,15*Or],[Dn,30,30*Or],[s,1,Mi],[s,5,5*Mi],[s,15,15*Mi],[s,30,30*Mi],[r,1,Br],[r,3,3*Br],[r,6,6*Br],[r,12,12*Br],[i,1,kr],[i,2,2*kr],[n,1,eg],[t,1,nM],[t,3,3*nM],[e,1,tg]];function a(c,u,h){let f=u<c;f&&([c,u]=[u,c]);let d=h&&typeof h.range=="function"?h:l(c,u,h),p=d?d.range(c,+u+1):[];return f?p.reverse():p}function l(c,u,h){let f=Math.abs(u-c)/h,d=oa(([,,g])=>g).right(o,f);if(d===o.length)return e.every(Bl(c/tg,u/tg,h));if(d===0)return gf.every(Math.max(Bl(c,u,h),1));let[p,y]=o[f/o[d-1][2]<o[d][2]/f?d-1:d];return p.every(y)}return[a,l]}var[rM,yf]=iM(Zn,wo,ur,oc,xo,go),[sM,oM]=iM(Yn,So,cr,lr,yo,mo);function ug(e){if(0<=e.y&&e.y<100){var t=new Date(-1,e.m,e.d,e.H,e.M,e.S,e.L);return t.setFullYear(e.y),t}return new Date(e.y,e.m,e.d,e.H,e.M,e.S,e.L)}function fg(e){if(0<=e.y&&e.y<100){var t=new Date(Date.UTC(-1,e.m,e.d,e.H,e.M,e.S,e.L));return t.setUTCFullYear(e.y),t}return new Date(Date.UTC(e.y,e.m,e.d,e.H,e.M,e.S,e.L))}function ac(e,t,n){return{y:e,m:t,d:n,H:0,M:0,S:0,L:0}}function CI(e){var t=e.dateTime,n=e.date,i=e.time,r=e.periods,s=e.days,o=e.shortDays,a=e.months,l=e.shortMonths,c=lc(r),u=cc(r),h=lc(s),f=cc(s),d=lc(o),p=cc(o),y=lc(a),g=cc(a),m=lc(l),x=cc(l),S={a:U,A:Z,b:F,B:V,c:null,d:hM,e:hM,f:JI,g:aL,G:cL,H:YI,I:ZI,j:KI,L:yM,m:jI,M:QI,p:q,q:st,Q:mM,s:gM,S:tL,u:eL,U:nL,V:iL,w:rL,W:sL,x:null,X:null,y:oL,Y:lL,Z:uL,"%":pM},v={a:lt,A:$,b:at,B:ft,c:null,d:dM,e:dM,f:pL,g:wL,G:EL,H:fL,I:hL,j:dL,L:_M,m:mL,M:gL,p:ot,q:rt,Q:mM,s:gM,S:yL,u:xL,U:_L,V:vL,w:bL,W:ML,x:null,X:null,y:SL,Y:TL,Z:AL,"%":pM},M={a:C,A,b:L,B,c:P,d:uM,e:uM,f:WI,g:cM,G:lM,H:fM,I:fM,j:zI,L:HI,m:kI,M:GI,p:R,q:BI,Q:XI,s:qI,S:VI,u:DI,U:NI,V:UI,w:LI,W:FI,x:D,X:z,y:cM,Y:lM,Z:OI,"%":$I};S.x=b(n,S),S.X=b(i,S),S.c=b(t,S),v.x=b(n,v),v.X=b(i,v),v.c=b(t,v);function b(K,gt){return function(ct){var J=[],It=-1,pt=0,Ot=K.length,Ht,le,oe;for(ct instanceof Date||(ct=new Date(+ct));++It<Ot;)K.charCodeAt(It)===37&&(J.push(K.slice(pt,It)),(le=aM[Ht=K.charAt(++It)])!=null?Ht=K.charAt(++It):le=Ht==="e"?" ":"0",(oe=gt[Ht])&&(Ht=oe(ct,le)),J.push(Ht),pt=It+1);return J.push(K.slice(pt,It)),J.join("")}}function _(K,gt){return function(ct){var J=ac(1900,void 0,1),It=w(J,K,ct+="",0),pt,Ot;if(It!=ct.length)return null;if("Q"in J)return new Date(J.Q);if("s"in J)return new Date(J.s*1e3+("L"in J?J.L:0));if(gt&&!("Z"in J)&&(J.Z=0),"p"in J&&(J.H=J.H%12+J.p*12),J.m===void 0&&(J.m="q"in J?J.q:0),"V"in J){if(J.V<1||J.V>53)return null;"w"in J||(J.w=1),"Z"in J?(pt=fg(ac(J.y,0,1)),Ot=pt.getUTCDay(),pt=Ot>4||Ot===0?Mo.ceil(pt):Mo(pt),pt=Sa.offset(pt,(J.V-1)*7),J.y=pt.getUTCFullYear(),J.m=pt.getUTCMonth(),J.d=pt.getUTCDate()+(J.w+6)%7):(pt=ug(ac(J.y,0,1)),Ot=pt.getDay(),pt=Ot>4||Ot===0?vo.ceil(pt):vo(pt),pt=lr.offset(pt,(J.V-1)*7),J.y=pt.getFullYear(),J.m=pt.getMonth(),J.d=pt.getDate()+(J.w+6)%7)}else("W"in J||"U"in J)&&("w"in J||(J.w="u"in J?J.u%7:"W"in J?1:0),Ot="Z"in J?fg(ac(J.y,0,1)).getUTCDay():ug(ac(J.y,0,1)).getDay(),J.m=0,J.d="W"in J?(J.w+6)%7+J.W*7-(Ot+5)%7:J.w+J.U*7-(Ot+6)%7);return"Z"in J?(J.H+=J.Z/100|0,J.M+=J.Z%100,fg(J)):ug(J)}}function w(K,gt,ct,J){for(var It=0,pt=gt.length,Ot=ct.length,Ht,le;It<pt;){if(J>=Ot)return-1;if(Ht=gt.charCodeAt(It++),Ht===37){if(Ht=gt.charAt(It++),le=M[Ht in aM?gt.charAt(It++):Ht],!le||(J=le(K,ct,J))<0)return-1}else if(Ht!=ct.charCodeAt(J++))return-1}return J}function R(K,gt,ct){var J=c.exec(gt.slice(ct));return J?(K.p=u.get(J[0].toLowerCase()),ct+J[0].length):-1}function C(K,gt,ct){var J=d.exec(gt.slice(ct));return J?(K.w=p.get(J[0].toLowerCase()),ct+J[0].length):-1}function A(K,gt,ct){var J=h.exec(gt.slice(ct));return J?(K.w=f.get(J[0].toLowerCase()),ct+J[0].length):-1}function L(K,gt,ct){var J=m.exec(gt.slice(ct));return J?(K.m=x.get(J[0].toLowerCase()),ct+J[0].length):-1}function B(K,gt,ct){var J=y.exec(gt.slice(ct));return J?(K.m=g.get(J[0].toLowerCase()),ct+J[0].length):-1}function P(K,gt,ct){return w(K,t,gt,ct)}function D(K,gt,ct){return w(K,n,gt,ct)}function z(K,gt,ct){return w(K,i,gt,ct)}function U(K){return o[K.getDay()]}function Z(K){return s[K.getDay()]}function F(K){return l[K.getMonth()]}function V(K){return a[K.getMonth()]}function q(K){return r[+(K.getHours()>=12)]}function st(K){return 1+~~(K.getMonth()/3)}function lt(K){return o[K.getUTCDay()]}function $(K){return s[K.getUTCDay()]}function at(K){return l[K.getUTCMonth()]}function ft(K){return a[K.getUTCMonth()]}function ot(K){return r[+(K.getUTCHours()>=12)]}function rt(K){return 1+~~(K.getUTCMonth()/3)}return{format:function(K){var gt=b(K+="",S);return gt.toString=function(){return K},gt},parse:function(K){var gt=_(K+="",!1);return gt.toString=function(){return K},gt},utcFormat:function(K){var gt=b(K+="",v);return gt.toString=function(){return K},gt},utcParse:function(K){var gt=_(K+="",!0);return gt.toString=function(){return K},gt}}}var aM={"-":"",_:" ",0:"0"},on=/^\s*\d+/,RI=/^%/,PI=/[\\^$*+?|[\]().{}]/g;function ae(e,t,n){var i=e<0?"-":"",r=(i?-e:e)+"",s=r.length;return i+(s<n?new Array(n-s+1).join(t)+r:r)}function II(e){return e.replace(PI,"\\$&")}function lc(e){return new RegExp("^(?:"+e.map(II).join("|")+")","i")}function cc(e){return new Map(e.map((t,n)=>[t.toLowerCase(),n]))}function LI(e,t,n){var i=on.exec(t.slice(n,n+1));return i?(e.w=+i[0],n+i[0].length):-1}function DI(e,t,n){var i=on.exec(t.slice(n,n+1));return i?(e.u=+i[0],n+i[0].length):-1}function NI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.U=+i[0],n+i[0].length):-1}function UI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.V=+i[0],n+i[0].length):-1}function FI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.W=+i[0],n+i[0].length):-1}function lM(e,t,n){var i=on.exec(t.slice(n,n+4));return i?(e.y=+i[0],n+i[0].length):-1}function cM(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.y=+i[0]+(+i[0]>68?1900:2e3),n+i[0].length):-1}function OI(e,t,n){var i=/^(Z)|([+-]\d\d)(?::?(\d\d))?/.exec(t.slice(n,n+6));return i?(e.Z=i[1]?0:-(i[2]+(i[3]||"00")),n+i[0].length):-1}function BI(e,t,n){var i=on.exec(t.slice(n,n+1));return i?(e.q=i[0]*3-3,n+i[0].length):-1}function kI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.m=i[0]-1,n+i[0].length):-1}function uM(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.d=+i[0],n+i[0].length):-1}function zI(e,t,n){var i=on.exec(t.slice(n,n+3));return i?(e.m=0,e.d=+i[0],n+i[0].length):-1}function fM(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.H=+i[0],n+i[0].length):-1}function GI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.M=+i[0],n+i[0].length):-1}function VI(e,t,n){var i=on.exec(t.slice(n,n+2));return i?(e.S=+i[0],n+i[0].length):-1}function HI(e,t,n){var i=on.exec(t.slice(n,n+3));return i?(e.L=+i[0],n+i[0].length):-1}function WI(e,t,n){var i=on.exec(t.slice(n,n+6));return i?(e.L=Math.floor(i[0]/1e3),n+i[0].length):-1}function $I(e,t,n){var i=RI.exec(t.slice(n,n+1));return i?n+i[0].length:-1}function XI(e,t,n){var i=on.exec(t.slice(n));return i?(e.Q=+i[0],n+i[0].length):-1}function qI(e,t,n){var i=on.exec(t.slice(n));return i?(e.s=+i[0],n+i[0].length):-1}function hM(e,t){return ae(e.getDate(),t,2)}function YI(e,t){return ae(e.getHours(),t,2)}function ZI(e,t){return ae(e.getHours()%12||12,t,2)}function KI(e,t){return ae(1+lr.count(Yn(e),e),t,3)}function yM(e,t){return ae(e.getMilliseconds(),t,3)}function JI(e,t){return yM(e,t)+"000"}function jI(e,t){return ae(e.getMonth()+1,t,2)}function QI(e,t){return ae(e.getMinutes(),t,2)}function tL(e,t){return ae(e.getSeconds(),t,2)}function eL(e){var t=e.getDay();return t===0?7:t}function nL(e,t){return ae(cr.count(Yn(e)-1,e),t,2)}function xM(e){var t=e.getDay();return t>=4||t===0?zr(e):zr.ceil(e)}function iL(e,t){return e=xM(e),ae(zr.count(Yn(e),e)+(Yn(e).getDay()===4),t,2)}function rL(e){return e.getDay()}function sL(e,t){return ae(vo.count(Yn(e)-1,e),t,2)}function oL(e,t){return ae(e.getFullYear()%100,t,2)}function aL(e,t){return e=xM(e),ae(e.getFullYear()%100,t,2)}function lL(e,t){return ae(e.getFullYear()%1e4,t,4)}function cL(e,t){var n=e.getDay();return e=n>=4||n===0?zr(e):zr.ceil(e),ae(e.getFullYear()%1e4,t,4)}function uL(e){var t=e.getTimezoneOffset();return(t>0?"-":(t*=-1,"+"))+ae(t/60|0,"0",2)+ae(t%60,"0",2)}function dM(e,t){return ae(e.getUTCDate(),t,2)}function fL(e,t){return ae(e.getUTCHours(),t,2)}function hL(e,t){return ae(e.getUTCHours()%12||12,t,2)}function dL(e,t){return ae(1+Sa.count(Zn(e),e),t,3)}function _M(e,t){return ae(e.getUTCMilliseconds(),t,3)}function pL(e,t){return _M(e,t)+"000"}function mL(e,t){return ae(e.getUTCMonth()+1,t,2)}function gL(e,t){return ae(e.getUTCMinutes(),t,2)}function yL(e,t){return ae(e.getUTCSeconds(),t,2)}function xL(e){var t=e.getUTCDay();return t===0?7:t}function _L(e,t){return ae(ur.count(Zn(e)-1,e),t,2)}function vM(e){var t=e.getUTCDay();return t>=4||t===0?Gr(e):Gr.ceil(e)}function vL(e,t){return e=vM(e),ae(Gr.count(Zn(e),e)+(Zn(e).getUTCDay()===4),t,2)}function bL(e){return e.getUTCDay()}function ML(e,t){return ae(Mo.count(Zn(e)-1,e),t,2)}function SL(e,t){return ae(e.getUTCFullYear()%100,t,2)}function wL(e,t){return e=vM(e),ae(e.getUTCFullYear()%100,t,2)}function TL(e,t){return ae(e.getUTCFullYear()%1e4,t,4)}function EL(e,t){var n=e.getUTCDay();return e=n>=4||n===0?Gr(e):Gr.ceil(e),ae(e.getUTCFullYear()%1e4,t,4)}function AL(){return"+0000"}function pM(){return"%"}function mM(e){return+e}function gM(e){return Math.floor(+e/1e3)}var wa,uc,CL,fr,bM;RL({dateTime:"%x, %X",date:"%-m/%-d/%Y",time:"%-I:%M:%S %p",periods:["AM","PM"],days:["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"],shortDays:["Sun","Mon","Tue","Wed","Thu","Fri","Sat"],months:["January","February","March","April","May","June","July","August","September","October","November","December"],shortMonths:["Jan","Feb","Mar","Apr","May","Jun","Jul","Aug","Sep","Oct","Nov","Dec"]});function RL(e){return wa=CI(e),uc=wa.format,CL=wa.parse,fr=wa.utcFormat,bM=wa.utcParse,wa}var MM="%Y-%m-%dT%H:%M:%S.%LZ";function PL(e){return e.toISOString()}var nz=Date.prototype.toISOString?PL:fr(MM);function IL(e){var t=new Date(e);return isNaN(t)?null:t}var iz=+new Date("2000-01-01T00:00:00.000Z")?IL:bM(MM);function hr(e,t){switch(arguments.length){case 0:break;case 1:this.range(e);break;default:this.range(t).domain(e);break}return this}function _f(e,t){switch(arguments.length){case 0:break;case 1:{typeof e=="function"?this.interpolator(e):this.range(e);break}default:{this.domain(e),typeof t=="function"?this.interpolator(t):this.range(t);break}}return this}var xf=Symbol("implicit");function vf(){var e=new pi,t=[],n=[],i=xf;function r(s){let o=e.get(s);if(o===void 0){if(i!==xf)return i;e.set(s,o=t.push(s)-1)}return n[o%n.length]}return r.domain=function(s){if(!arguments.length)return t.slice();t=[],e=new pi;for(let o of s)e.has(o)||e.set(o,t.push(o)-1);return r},r.range=function(s){return arguments.length?(n=Array.from(s),r):n.slice()},r.unknown=function(s){return arguments.length?(i=s,r):i},r.copy=function(){return vf(t,n).unknown(i)},hr.apply(r,arguments),r}function Ta(){var e=vf().unknown(void 0),t=e.domain,n=e.range,i=0,r=1,s,o,a=!1,l=0,c=0,u=.5;delete e.unknown;function h(){var f=t().length,d=r<i,p=d?r:i,y=d?i:r;s=(y-p)/Math.max(1,f-l+c*2),a&&(s=Math.floor(s)),p+=(y-p-s*(f-l))*u,o=s*(1-l),a&&(p=Math.round(p),o=Math.round(o));var g=la(f).map(function(m){return p+s*m});return n(d?g.reverse():g)}return e.domain=function(f){return arguments.length?(t(f),h()):t()},e.range=function(f){return arguments.length?([i,r]=f,i=+i,r=+r,h()):[i,r]},e.rangeRound=function(f){return[i,r]=f,i=+i,r=+r,a=!0,h()},e.bandwidth=function(){return o},e.step=function(){return s},e.round=function(f){return arguments.length?(a=!!f,h()):a},e.padding=function(f){return arguments.length?(l=Math.min(1,c=+f),h()):l},e.paddingInner=function(f){return arguments.length?(l=Math.min(1,f),h()):l},e.paddingOuter=function(f){return arguments.length?(c=+f,h()):c},e.align=function(f){return arguments.length?(u=Math.max(0,Math.min(1,f)),h()):u},e.copy=function(){return Ta(t(),[i,r]).round(a).paddingInner(l).paddingOuter(c).align(u)},hr.apply(h(),arguments)}function PM(e){var t=e.copy;return e.padding=e.paddingOuter,delete e.paddingInner,delete e.paddingOuter,e.copy=function(){return PM(t())},e}function IM(){return PM(Ta.apply(null,arguments).paddingInner(1))}function LL(e){return function(){return e}}function hg(e){return+e}var SM=[0,1];function Si(e){return e}function dg(e,t){return(t-=e=+e)?function(n){return(n-e)/t}:LL(isNaN(t)?NaN:.5)}function DL(e,t){var n;return e>t&&(n=e,e=t,t=n),function(i){return Math.max(e,Math.min(t,i))}}function NL(e,t,n){var i=e[0],r=e[1],s=t[0],o=t[1];return r<i?(i=dg(r,i),s=n(o,s)):(i=dg(i,r),s=n(s,o)),function(a){return s(i(a))}}function UL(e,t,n){var i=Math.min(e.length,t.length)-1,r=new Array(i),s=new Array(i),o=-1;for(e[i]<e[0]&&(e=e.slice().reverse(),t=t.slice().reverse());++o<i;)r[o]=dg(e[o],e[o+1]),s[o]=n(t[o],t[o+1]);return function(a){var l=aa(e,a,1,i)-1;return s[l](r[l](a))}}function fc(e,t){return t.domain(e.domain()).range(e.range()).interpolate(e.interpolate()).clamp(e.clamp()).unknown(e.unknown())}function bf(){var e=SM,t=SM,n=ga,i,r,s,o=Si,a,l,c;function u(){var f=Math.min(e.length,t.length);return o!==Si&&(o=DL(e[0],e[f-1])),a=f>2?UL:NL,l=c=null,h}function h(f){return f==null||isNaN(f=+f)?s:(l||(l=a(e.map(i),t,n)))(i(o(f)))}return h.invert=function(f){return o(r((c||(c=a(t,e.map(i),$e)))(f)))},h.domain=function(f){return arguments.length?(e=Array.from(f,hg),u()):e.slice()},h.range=function(f){return arguments.length?(t=Array.from(f),u()):t.slice()},h.rangeRound=function(f){return t=Array.from(f),n=Hl,u()},h.clamp=function(f){return arguments.length?(o=f?!0:Si,u()):o!==Si},h.interpolate=function(f){return arguments.length?(n=f,u()):n},h.unknown=function(f){return arguments.length?(s=f,h):s},function(f,d){return i=f,r=d,u()}}function LM(){return bf()(Si,Si)}function FL(e,t,n,i){var r=Bl(e,t,n),s;switch(i=xa(i??",f"),i.type){case"s":{var o=Math.max(Math.abs(e),Math.abs(t));return i.precision==null&&!isNaN(s=qb(r,o))&&(i.precision=s),Tm(i,o)}case"":case"e":case"g":case"p":case"r":{i.precision==null&&!isNaN(s=Yb(r,Math.max(Math.abs(e),Math.abs(t))))&&(i.precision=s-(i.type==="e"));break}case"f":case"%":{i.precision==null&&!isNaN(s=Xb(r))&&(i.precision=s-(i.type==="%")*2);break}}return sr(i)}function hc(e){var t=e.domain;return e.ticks=function(n){var i=t();return gs(i[0],i[i.length-1],n??10)},e.tickFormat=function(n,i){var r=t();return FL(r[0],r[r.length-1],n??10,i)},e.nice=function(n){n==null&&(n=10);var i=t(),r=0,s=i.length-1,o=i[r],a=i[s],l,c,u=10;for(a<o&&(c=o,o=a,a=c,c=r,r=s,s=c);u-- >0;){if(c=sa(o,a,n),c===l)return i[r]=o,i[s]=a,t(i);if(c>0)o=Math.floor(o/c)*c,a=Math.ceil(a/c)*c;else if(c<0)o=Math.ceil(o*c)/c,a=Math.floor(a*c)/c;else break;l=c}return e},e}function dc(){var e=LM();return e.copy=function(){return fc(e,dc())},hr.apply(e,arguments),hc(e)}function pg(e){var t;function n(i){return i==null||isNaN(i=+i)?t:i}return n.invert=n,n.domain=n.range=function(i){return arguments.length?(e=Array.from(i,hg),n):e.slice()},n.unknown=function(i){return arguments.length?(t=i,n):t},n.copy=function(){return pg(e).unknown(t)},e=arguments.length?Array.from(e,hg):[0,1],hc(n)}function DM(e,t){e=e.slice();var n=0,i=e.length-1,r=e[n],s=e[i],o;return s<r&&(o=n,n=i,i=o,o=r,r=s,s=o),e[n]=t.floor(r),e[i]=t.ceil(s),e}function wM(e){return Math.log(e)}function TM(e){return Math.exp(e)}function OL(e){return-Math.log(-e)}function BL(e){return-Math.exp(-e)}function kL(e){return isFinite(e)?+("1e"+e):e<0?0:e}function zL(e){return e===10?kL:e===Math.E?Math.exp:t=>Math.pow(e,t)}function GL(e){return e===Math.E?Math.log:e===10&&Math.log10||e===2&&Math.log2||(e=Math.log(e),t=>Math.log(t)/e)}function EM(e){return(t,n)=>-e(-t,n)}function NM(e){let t=e(wM,TM),n=t.domain,i=10,r,s;function o(){return r=GL(i),s=zL(i),n()[0]<0?(r=EM(r),s=EM(s),e(OL,BL)):e(wM,TM),t}return t.base=function(a){return arguments.length?(i=+a,o()):i},t.domain=function(a){return arguments.length?(n(a),o()):n()},t.ticks=a=>{let l=n(),c=l[0],u=l[l.length-1],h=u<c;h&&([c,u]=[u,c]);let f=r(c),d=r(u),p,y,g=a==null?10:+a,m=[];if(!(i%1)&&d-f<g){if(f=Math.floor(f),d=Math.ceil(d),c>0){for(;f<=d;++f)for(p=1;p<i;++p)if(y=f<0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;m.push(y)}}else for(;f<=d;++f)for(p=i-1;p>=1;--p)if(y=f>0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;m.push(y)}m.length*2<g&&(m=gs(c,u,g))}else m=gs(f,d,Math.min(d-f,g)).map(s);return h?m.reverse():m},t.tickFormat=(a,l)=>{if(a==null&&(a=10),l==null&&(l=i===10?"s":","),typeof l!="function"&&(!(i%1)&&(l=xa(l)).precision==null&&(l.trim=!0),l=sr(l)),a===1/0)return l;let c=Math.max(1,i*a/t.ticks().length);return u=>{let h=u/s(Math.round(r(u)));return h*i<i-.5&&(h*=i),h<=c?l(u):""}},t.nice=()=>n(DM(n(),{floor:a=>s(Math.floor(r(a))),ceil:a=>s(Math.ceil(r(a)))})),t}function mg(){let e=NM(bf()).domain([1,10]);return e.copy=()=>fc(e,mg()).base(e.base()),hr.apply(e,arguments),e}function AM(e){return function(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))}}function CM(e){return function(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}function UM(e){var t=1,n=e(AM(t),CM(t));return n.constant=function(i){return arguments.length?e(AM(t=+i),CM(t)):t},hc(n)}function gg(){var e=UM(bf());return e.copy=function(){return fc(e,gg()).constant(e.constant())},hr.apply(e,arguments)}function RM(e){return function(t){return t<0?-Math.pow(-t,e):Math.pow(t,e)}}function VL(e){return e<0?-Math.sqrt(-e):Math.sqrt(e)}function HL(e){return e<0?-e*e:e*e}function FM(e){var t=e(Si,Si),n=1;function i(){return n===1?e(Si,Si):n===.5?e(VL,HL):e(RM(n),RM(1/n))}return t.exponent=function(r){return arguments.length?(n=+r,i()):n},hc(t)}function yg(){var e=FM(bf());return e.copy=function(){return fc(e,yg()).exponent(e.exponent())},hr.apply(e,arguments),e}function xg(){var e=[],t=[],n=[],i;function r(){var o=0,a=Math.max(1,t.length);for(n=new Array(a-1);++o<a;)n[o-1]=Bv(e,o/a);return s}function s(o){return o==null||isNaN(o=+o)?i:t[aa(n,o)]}return s.invertExtent=function(o){var a=t.indexOf(o);return a<0?[NaN,NaN]:[a>0?n[a-1]:e[0],a<n.length?n[a]:e[e.length-1]]},s.domain=function(o){if(!arguments.length)return e.slice();e=[];for(let a of o)a!=null&&!isNaN(a=+a)&&e.push(a);return e.sort(bn),r()},s.range=function(o){return arguments.length?(t=Array.from(o),r()):t.slice()},s.unknown=function(o){return arguments.length?(i=o,s):i},s.quantiles=function(){return n.slice()},s.copy=function(){return xg().domain(e).range(t).unknown(i)},hr.apply(s,arguments)}function _g(){var e=[.5],t=[0,1],n,i=1;function r(s){return s!=null&&s<=s?t[aa(e,s,0,i)]:n}return r.domain=function(s){return arguments.length?(e=Array.from(s),i=Math.min(e.length,t.length-1),r):e.slice()},r.range=function(s){return arguments.length?(t=Array.from(s),i=Math.min(e.length,t.length-1),r):t.slice()},r.invertExtent=function(s){var o=t.indexOf(s);return[e[o-1],e[o]]},r.unknown=function(s){return arguments.length?(n=s,r):n},r.copy=function(){return _g().domain(e).range(t).unknown(n)},hr.apply(r,arguments)}function WL(e){return new Date(e)}function $L(e){return e instanceof Date?+e:Math.round(e)}function vg(e,t,n,i,r,s,o,a,l,c){var u=LM(),h=u.invert,f=u.domain,d=c(".%L"),p=c(":%S"),y=c("%I:%M"),g=c("%I %p"),m=c("%a %d"),x=c("%b %d"),S=c("%B"),v=c("%Y");function M(b){return(l(b)<b?d:a(b)<b?p:o(b)<b?y:s(b)<b?g:i(b)<b?r(b)<b?m:x:n(b)<b?S:v)(b)}return u.invert=function(b){return new Date(Math.round(h(b)))},u.domain=function(b){return arguments.length?f(Array.from(b,$L)):f().map(WL)},u.ticks=function(b){var _=f();return e(_[0],_[_.length-1],b??10)},u.tickFormat=function(b,_){return _==null?M:c(_)},u.nice=function(b){var _=f();return(!b||typeof b.range!="function")&&(b=t(_[0],_[_.length-1],b??10)),b?f(DM(_,b)):u},u.copy=function(){return fc(u,vg(e,t,n,i,r,s,o,a,l,c))},u}function OM(){return hr.apply(vg(sM,oM,Yn,So,cr,lr,yo,mo,Dn,uc).domain([new Date(2e3,0,1),new Date(2e3,0,2)]),arguments)}function BM(){return hr.apply(vg(rM,yf,Zn,wo,ur,Sa,xo,go,Dn,fr).domain([Date.UTC(2e3,0,1),Date.UTC(2e3,0,2)]),arguments)}function Mf(e,t){return t.domain(e.domain()).interpolator(e.interpolator()).clamp(e.clamp()).unknown(e.unknown())}function Sf(){var e=0,t=.5,n=1,i=1,r,s,o,a,l,c=Si,u,h=!1,f;function d(y){return y==null||isNaN(y=+y)?f:(y=.5+((y=+u(y))-s)*(i*y<i*s?a:l),c(h?Math.max(0,Math.min(1,y)):y))}d.domain=function(y){return arguments.length?([e,t,n]=y,r=u(e=+e),s=u(t=+t),o=u(n=+n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d):[e,t,n]},d.clamp=function(y){return arguments.length?(h=!!y,d):h},d.interpolator=function(y){return arguments.length?(c=y,d):c};function p(y){return function(g){var m,x,S;return arguments.length?([m,x,S]=g,c=_s(y,[m,x,S]),d):[c(0),c(.5),c(1)]}}return d.range=p(ga),d.rangeRound=p(Hl),d.unknown=function(y){return arguments.length?(f=y,d):f},function(y){return u=y,r=y(e),s=y(t),o=y(n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d}}function bg(){var e=hc(Sf()(Si));return e.copy=function(){return Mf(e,bg())},_f.apply(e,arguments)}function Mg(){var e=NM(Sf()).domain([.1,1,10]);return e.copy=function(){return Mf(e,Mg()).base(e.base())},_f.apply(e,arguments)}function Sg(){var e=UM(Sf());return e.copy=function(){return Mf(e,Sg()).constant(e.constant())},_f.apply(e,arguments)}function wg(){var e=FM(Sf());return e.copy=function(){return Mf(e,wg()).exponent(e.exponent())},_f.apply(e,arguments)}function Zt(e){for(var t=e.length/6|0,n=new Array(t),i=0;i<t;)n[i]="#"+e.slice(i*6,++i*6);return n}var kM=Zt("1f77b4ff7f0e2ca02cd627289467bd8c564be377c27f7f7fbcbd2217becf"),zM=Zt("7fc97fbeaed4fdc086ffff99386cb0f0027fbf5b17666666"),GM=Zt("1b9e77d95f027570b3e7298a66a61ee6ab02a6761d666666"),VM=Zt("4269d0efb118ff725c6cc5b03ca951ff8ab7a463f297bbf59c6b4e9498a0"),HM=Zt("a6cee31f78b4b2df8a33a02cfb9a99e31a1cfdbf6fff7f00cab2d66a3d9affff99b15928"),WM=Zt("fbb4aeb3cde3ccebc5decbe4fed9a6ffffcce5d8bdfddaecf2f2f2"),$M=Zt("b3e2cdfdcdaccbd5e8f4cae4e6f5c9fff2aef1e2cccccccc"),XM=Zt("e41a1c377eb84daf4a984ea3ff7f00ffff33a65628f781bf999999"),qM=Zt("66c2a5fc8d628da0cbe78ac3a6d854ffd92fe5c494b3b3b3"),YM=Zt("8dd3c7ffffb3bebadafb807280b1d3fdb462b3de69fccde5d9d9d9bc80bdccebc5ffed6f"),ZM=Zt("4e79a7f28e2ce1575976b7b259a14fedc949af7aa1ff9da79c755fbab0ab"),_e=e=>Pb(e[e.length-1]),Tg=new Array(3).concat("d8b365f5f5f55ab4ac","a6611adfc27d80cdc1018571","a6611adfc27df5f5f580cdc1018571","8c510ad8b365f6e8c3c7eae55ab4ac01665e","8c510ad8b365f6e8c3f5f5f5c7eae55ab4ac01665e","8c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e","8c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e","5430058c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e003c30","5430058c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e003c30").map(Zt),Eg=_e(Tg),Ag=new Array(3).concat("af8dc3f7f7f77fbf7b","7b3294c2a5cfa6dba0008837","7b3294c2a5cff7f7f7a6dba0008837","762a83af8dc3e7d4e8d9f0d37fbf7b1b7837","762a83af8dc3e7d4e8f7f7f7d9f0d37fbf7b1b7837","762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b7837","762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b7837","40004b762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b783700441b","40004b762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b783700441b").map(Zt),Cg=_e(Ag),Rg=new Array(3).concat("e9a3c9f7f7f7a1d76a","d01c8bf1b6dab8e1864dac26","d01c8bf1b6daf7f7f7b8e1864dac26","c51b7de9a3c9fde0efe6f5d0a1d76a4d9221","c51b7de9a3c9fde0eff7f7f7e6f5d0a1d76a4d9221","c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221","c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221","8e0152c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221276419","8e0152c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221276419").map(Zt),Pg=_e(Rg),Ig=new Array(3).concat("998ec3f7f7f7f1a340","5e3c99b2abd2fdb863e66101","5e3c99b2abd2f7f7f7fdb863e66101","542788998ec3d8daebfee0b6f1a340b35806","542788998ec3d8daebf7f7f7fee0b6f1a340b35806","5427888073acb2abd2d8daebfee0b6fdb863e08214b35806","5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b35806","2d004b5427888073acb2abd2d8daebfee0b6fdb863e08214b358067f3b08","2d004b5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b358067f3b08").map(Zt),Lg=_e(Ig),Ef=new Array(3).concat("ef8a62f7f7f767a9cf","ca0020f4a58292c5de0571b0","ca0020f4a582f7f7f792c5de0571b0","b2182bef8a62fddbc7d1e5f067a9cf2166ac","b2182bef8a62fddbc7f7f7f7d1e5f067a9cf2166ac","b2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac","b2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac","67001fb2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac053061","67001fb2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac053061").map(Zt),pc=_e(Ef),Dg=new Array(3).concat("ef8a62ffffff999999","ca0020f4a582bababa404040","ca0020f4a582ffffffbababa404040","b2182bef8a62fddbc7e0e0e09999994d4d4d","b2182bef8a62fddbc7ffffffe0e0e09999994d4d4d","b2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d","b2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d","67001fb2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d1a1a1a","67001fb2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d1a1a1a").map(Zt),Ng=_e(Dg),Af=new Array(3).concat("fc8d59ffffbf91bfdb","d7191cfdae61abd9e92c7bb6","d7191cfdae61ffffbfabd9e92c7bb6","d73027fc8d59fee090e0f3f891bfdb4575b4","d73027fc8d59fee090ffffbfe0f3f891bfdb4575b4","d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4","d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4","a50026d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4313695","a50026d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4313695").map(Zt),mc=_e(Af),Ug=new Array(3).concat("fc8d59ffffbf91cf60","d7191cfdae61a6d96a1a9641","d7191cfdae61ffffbfa6d96a1a9641","d73027fc8d59fee08bd9ef8b91cf601a9850","d73027fc8d59fee08bffffbfd9ef8b91cf601a9850","d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850","d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850","a50026d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850006837","a50026d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850006837").map(Zt),Fg=_e(Ug),Og=new Array(3).concat("fc8d59ffffbf99d594","d7191cfdae61abdda42b83ba","d7191cfdae61ffffbfabdda42b83ba","d53e4ffc8d59fee08be6f59899d5943288bd","d53e4ffc8d59fee08bffffbfe6f59899d5943288bd","d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd","d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd","9e0142d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd5e4fa2","9e0142d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd5e4fa2").map(Zt),Bg=_e(Og),kg=new Array(3).concat("e5f5f999d8c92ca25f","edf8fbb2e2e266c2a4238b45","edf8fbb2e2e266c2a42ca25f006d2c","edf8fbccece699d8c966c2a42ca25f006d2c","edf8fbccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45006d2c00441b").map(Zt),zg=_e(kg),Gg=new Array(3).concat("e0ecf49ebcda8856a7","edf8fbb3cde38c96c688419d","edf8fbb3cde38c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d810f7c4d004b").map(Zt),Vg=_e(Gg),Hg=new Array(3).concat("e0f3dba8ddb543a2ca","f0f9e8bae4bc7bccc42b8cbe","f0f9e8bae4bc7bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe0868ac084081").map(Zt),Wg=_e(Hg),$g=new Array(3).concat("fee8c8fdbb84e34a33","fef0d9fdcc8afc8d59d7301f","fef0d9fdcc8afc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301fb300007f0000").map(Zt),Xg=_e($g),qg=new Array(3).concat("ece2f0a6bddb1c9099","f6eff7bdc9e167a9cf02818a","f6eff7bdc9e167a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016c59014636").map(Zt),Yg=_e(qg),Zg=new Array(3).concat("ece7f2a6bddb2b8cbe","f1eef6bdc9e174a9cf0570b0","f1eef6bdc9e174a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0045a8d023858").map(Zt),Kg=_e(Zg),Jg=new Array(3).concat("e7e1efc994c7dd1c77","f1eef6d7b5d8df65b0ce1256","f1eef6d7b5d8df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125698004367001f").map(Zt),jg=_e(Jg),Qg=new Array(3).concat("fde0ddfa9fb5c51b8a","feebe2fbb4b9f768a1ae017e","feebe2fbb4b9f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a017749006a").map(Zt),t0=_e(Qg),e0=new Array(3).concat("edf8b17fcdbb2c7fb8","ffffcca1dab441b6c4225ea8","ffffcca1dab441b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea8253494081d58").map(Zt),n0=_e(e0),i0=new Array(3).concat("f7fcb9addd8e31a354","ffffccc2e69978c679238443","ffffccc2e69978c67931a354006837","ffffccd9f0a3addd8e78c67931a354006837","ffffccd9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443006837004529").map(Zt),r0=_e(i0),s0=new Array(3).concat("fff7bcfec44fd95f0e","ffffd4fed98efe9929cc4c02","ffffd4fed98efe9929d95f0e993404","ffffd4fee391fec44ffe9929d95f0e993404","ffffd4fee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c02993404662506").map(Zt),o0=_e(s0),a0=new Array(3).concat("ffeda0feb24cf03b20","ffffb2fecc5cfd8d3ce31a1c","ffffb2fecc5cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cbd0026800026").map(Zt),l0=_e(a0),c0=new Array(3).concat("deebf79ecae13182bd","eff3ffbdd7e76baed62171b5","eff3ffbdd7e76baed63182bd08519c","eff3ffc6dbef9ecae16baed63182bd08519c","eff3ffc6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b508519c08306b").map(Zt),u0=_e(c0),f0=new Array(3).concat("e5f5e0a1d99b31a354","edf8e9bae4b374c476238b45","edf8e9bae4b374c47631a354006d2c","edf8e9c7e9c0a1d99b74c47631a354006d2c","edf8e9c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45006d2c00441b").map(Zt),h0=_e(f0),d0=new Array(3).concat("f0f0f0bdbdbd636363","f7f7f7cccccc969696525252","f7f7f7cccccc969696636363252525","f7f7f7d9d9d9bdbdbd969696636363252525","f7f7f7d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525000000").map(Zt),p0=_e(d0),m0=new Array(3).concat("efedf5bcbddc756bb1","f2f0f7cbc9e29e9ac86a51a3","f2f0f7cbc9e29e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a354278f3f007d").map(Zt),g0=_e(m0),y0=new Array(3).concat("fee0d2fc9272de2d26","fee5d9fcae91fb6a4acb181d","fee5d9fcae91fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181da50f1567000d").map(Zt),x0=_e(y0),_0=new Array(3).concat("fee6cefdae6be6550d","feeddefdbe85fd8d3cd94701","feeddefdbe85fd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d94801a636037f2704").map(Zt),v0=_e(_0);function b0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(-4.54-e*(35.34-e*(2381.73-e*(6402.7-e*(7024.72-e*2710.57)))))))+", "+Math.max(0,Math.min(255,Math.round(32.49+e*(170.73+e*(52.82-e*(131.46-e*(176.58-e*67.37)))))))+", "+Math.max(0,Math.min(255,Math.round(81.24+e*(442.36-e*(2482.43-e*(6167.24-e*(6614.94-e*2475.67)))))))+")"}var M0=$u(gi(300,.5,0),gi(-240,.5,1)),S0=$u(gi(-100,.75,.35),gi(80,1.5,.8)),w0=$u(gi(260,.75,.35),gi(80,1.5,.8)),wf=gi();function T0(e){(e<0||e>1)&&(e-=Math.floor(e));var t=Math.abs(e-.5);return wf.h=360*e-100,wf.s=1.5-1.5*t,wf.l=.8-.9*t,wf+""}var Tf=Bi(),XL=Math.PI/3,qL=Math.PI*2/3;function E0(e){var t;return e=(.5-e)*Math.PI,Tf.r=255*(t=Math.sin(e))*t,Tf.g=255*(t=Math.sin(e+XL))*t,Tf.b=255*(t=Math.sin(e+qL))*t,Tf+""}function A0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(34.61+e*(1172.33-e*(10793.56-e*(33300.12-e*(38394.49-e*14825.05)))))))+", "+Math.max(0,Math.min(255,Math.round(23.31+e*(557.33+e*(1225.33-e*(3574.96-e*(1073.77+e*707.56)))))))+", "+Math.max(0,Math.min(255,Math.round(27.2+e*(3211.1-e*(15327.97-e*(27814-e*(22569.18-e*6838.66)))))))+")"}function Cf(e){var t=e.length;return function(n){return e[Math.max(0,Math.min(t-1,Math.floor(n*t)))]}}var gc=Cf(Zt("44015444025645045745055946075a46085c460a5d460b5e470d60470e6147106347116447136548146748166848176948186a481a6c481b6d481c6e481d6f481f70482071482173482374482475482576482677482878482979472a7a472c7a472d7b472e7c472f7d46307e46327e46337f463480453581453781453882443983443a83443b84433d84433e85423f854240864241864142874144874045884046883f47883f48893e49893e4a893e4c8a3d4d8a3d4e8a3c4f8a3c508b3b518b3b528b3a538b3a548c39558c39568c38588c38598c375a8c375b8d365c8d365d8d355e8d355f8d34608d34618d33628d33638d32648e32658e31668e31678e31688e30698e306a8e2f6b8e2f6c8e2e6d8e2e6e8e2e6f8e2d708e2d718e2c718e2c728e2c738e2b748e2b758e2a768e2a778e2a788e29798e297a8e297b8e287c8e287d8e277e8e277f8e27808e26818e26828e26828e25838e25848e25858e24868e24878e23888e23898e238a8d228b8d228c8d228d8d218e8d218f8d21908d21918c20928c20928c20938c1f948c1f958b1f968b1f978b1f988b1f998a1f9a8a1e9b8a1e9c891e9d891f9e891f9f881fa0881fa1881fa1871fa28720a38620a48621a58521a68522a78522a88423a98324aa8325ab8225ac8226ad8127ad8128ae8029af7f2ab07f2cb17e2db27d2eb37c2fb47c31b57b32b67a34b67935b77937b87838b9773aba763bbb753dbc743fbc7340bd7242be7144bf7046c06f48c16e4ac16d4cc26c4ec36b50c46a52c56954c56856c66758c7655ac8645cc8635ec96260ca6063cb5f65cb5e67cc5c69cd5b6ccd5a6ece5870cf5773d05675d05477d1537ad1517cd2507fd34e81d34d84d44b86d54989d5488bd6468ed64590d74393d74195d84098d83e9bd93c9dd93ba0da39a2da37a5db36a8db34aadc32addc30b0dd2fb2dd2db5de2bb8de29bade28bddf26c0df25c2df23c5e021c8e020cae11fcde11dd0e11cd2e21bd5e21ad8e219dae319dde318dfe318e2e418e5e419e7e419eae51aece51befe51cf1e51df4e61ef6e620f8e621fbe723fde725")),C0=Cf(Zt("00000401000501010601010802010902020b02020d03030f03031204041405041606051806051a07061c08071e0907200a08220b09240c09260d0a290e0b2b100b2d110c2f120d31130d34140e36150e38160f3b180f3d19103f1a10421c10441d11471e114920114b21114e22115024125325125527125829115a2a115c2c115f2d11612f116331116533106734106936106b38106c390f6e3b0f703d0f713f0f72400f74420f75440f764510774710784910784a10794c117a4e117b4f127b51127c52137c54137d56147d57157e59157e5a167e5c167f5d177f5f187f601880621980641a80651a80671b80681c816a1c816b1d816d1d816e1e81701f81721f817320817521817621817822817922827b23827c23827e24828025828125818326818426818627818827818928818b29818c29818e2a81902a81912b81932b80942c80962c80982d80992d809b2e7f9c2e7f9e2f7fa02f7fa1307ea3307ea5317ea6317da8327daa337dab337cad347cae347bb0357bb2357bb3367ab5367ab73779b83779ba3878bc3978bd3977bf3a77c03a76c23b75c43c75c53c74c73d73c83e73ca3e72cc3f71cd4071cf4070d0416fd2426fd3436ed5446dd6456cd8456cd9466bdb476adc4869de4968df4a68e04c67e24d66e34e65e44f64e55064e75263e85362e95462ea5661eb5760ec5860ed5a5fee5b5eef5d5ef05f5ef1605df2625df2645cf3655cf4675cf4695cf56b5cf66c5cf66e5cf7705cf7725cf8745cf8765cf9785df9795df97b5dfa7d5efa7f5efa815ffb835ffb8560fb8761fc8961fc8a62fc8c63fc8e64fc9065fd9266fd9467fd9668fd9869fd9a6afd9b6bfe9d6cfe9f6dfea16efea36ffea571fea772fea973feaa74feac76feae77feb078feb27afeb47bfeb67cfeb77efeb97ffebb81febd82febf84fec185fec287fec488fec68afec88cfeca8dfecc8ffecd90fecf92fed194fed395fed597fed799fed89afdda9cfddc9efddea0fde0a1fde2a3fde3a5fde5a7fde7a9fde9aafdebacfcecaefceeb0fcf0b2fcf2b4fcf4b6fcf6b8fcf7b9fcf9bbfcfbbdfcfdbf")),R0=Cf(Zt("00000401000501010601010802010a02020c02020e03021004031204031405041706041907051b08051d09061f0a07220b07240c08260d08290e092b10092d110a30120a32140b34150b37160b39180c3c190c3e1b0c411c0c431e0c451f0c48210c4a230c4c240c4f260c51280b53290b552b0b572d0b592f0a5b310a5c320a5e340a5f3609613809623909633b09643d09653e0966400a67420a68440a68450a69470b6a490b6a4a0c6b4c0c6b4d0d6c4f0d6c510e6c520e6d540f6d550f6d57106e59106e5a116e5c126e5d126e5f136e61136e62146e64156e65156e67166e69166e6a176e6c186e6d186e6f196e71196e721a6e741a6e751b6e771c6d781c6d7a1d6d7c1d6d7d1e6d7f1e6c801f6c82206c84206b85216b87216b88226a8a226a8c23698d23698f24699025689225689326679526679727669827669a28659b29649d29649f2a63a02a63a22b62a32c61a52c60a62d60a82e5fa92e5eab2f5ead305dae305cb0315bb1325ab3325ab43359b63458b73557b93556ba3655bc3754bd3853bf3952c03a51c13a50c33b4fc43c4ec63d4dc73e4cc83f4bca404acb4149cc4248ce4347cf4446d04545d24644d34743d44842d54a41d74b3fd84c3ed94d3dda4e3cdb503bdd513ade5238df5337e05536e15635e25734e35933e45a31e55c30e65d2fe75e2ee8602de9612bea632aeb6429eb6628ec6726ed6925ee6a24ef6c23ef6e21f06f20f1711ff1731df2741cf3761bf37819f47918f57b17f57d15f67e14f68013f78212f78410f8850ff8870ef8890cf98b0bf98c0af98e09fa9008fa9207fa9407fb9606fb9706fb9906fb9b06fb9d07fc9f07fca108fca309fca50afca60cfca80dfcaa0ffcac11fcae12fcb014fcb216fcb418fbb61afbb81dfbba1ffbbc21fbbe23fac026fac228fac42afac62df9c72ff9c932f9cb35f8cd37f8cf3af7d13df7d340f6d543f6d746f5d949f5db4cf4dd4ff4df53f4e156f3e35af3e55df2e661f2e865f2ea69f1ec6df1ed71f1ef75f1f179f2f27df2f482f3f586f3f68af4f88ef5f992f6fa96f8fb9af9fc9dfafda1fcffa4")),P0=Cf(Zt("0d088710078813078916078a19068c1b068d1d068e20068f2206902406912605912805922a05932c05942e05952f059631059733059735049837049938049a3a049a3c049b3e049c3f049c41049d43039e44039e46039f48039f4903a04b03a14c02a14e02a25002a25102a35302a35502a45601a45801a45901a55b01a55c01a65e01a66001a66100a76300a76400a76600a76700a86900a86a00a86c00a86e00a86f00a87100a87201a87401a87501a87701a87801a87a02a87b02a87d03a87e03a88004a88104a78305a78405a78606a68707a68808a68a09a58b0aa58d0ba58e0ca48f0da4910ea3920fa39410a29511a19613a19814a099159f9a169f9c179e9d189d9e199da01a9ca11b9ba21d9aa31e9aa51f99a62098a72197a82296aa2395ab2494ac2694ad2793ae2892b02991b12a90b22b8fb32c8eb42e8db52f8cb6308bb7318ab83289ba3388bb3488bc3587bd3786be3885bf3984c03a83c13b82c23c81c33d80c43e7fc5407ec6417dc7427cc8437bc9447aca457acb4679cc4778cc4977cd4a76ce4b75cf4c74d04d73d14e72d24f71d35171d45270d5536fd5546ed6556dd7566cd8576bd9586ada5a6ada5b69db5c68dc5d67dd5e66de5f65de6164df6263e06363e16462e26561e26660e3685fe4695ee56a5de56b5de66c5ce76e5be76f5ae87059e97158e97257ea7457eb7556eb7655ec7754ed7953ed7a52ee7b51ef7c51ef7e50f07f4ff0804ef1814df1834cf2844bf3854bf3874af48849f48948f58b47f58c46f68d45f68f44f79044f79143f79342f89441f89540f9973ff9983ef99a3efa9b3dfa9c3cfa9e3bfb9f3afba139fba238fca338fca537fca636fca835fca934fdab33fdac33fdae32fdaf31fdb130fdb22ffdb42ffdb52efeb72dfeb82cfeba2cfebb2bfebd2afebe2afec029fdc229fdc328fdc527fdc627fdc827fdca26fdcb26fccd25fcce25fcd025fcd225fbd324fbd524fbd724fad824fada24f9dc24f9dd25f8df25f8e125f7e225f7e425f6e626f6e826f5e926f5eb27f4ed27f3ee27f3f027f2f227f1f426f1f525f0f724f0f921"));function an(e){return function(){return e}}var eS=Math.cos;var N0=Math.min,Rf=Math.sin,qe=Math.sqrt,KM=1e-12,yc=Math.PI,mz=yc/2,Nf=2*yc;function nS(e){let t=3;return e.digits=function(n){if(!arguments.length)return t;if(n==null)t=null;else{let i=Math.floor(n);if(!(i>=0))throw new RangeError(`invalid digits: ${n}`);t=i}return e},()=>new ho(t)}var gz=Array.prototype.slice;function iS(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function rS(e){this._context=e}rS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:this._context.lineTo(e,t);break}}};function To(e){return new rS(e)}function sS(e){return e[0]}function oS(e){return e[1]}function U0(e,t){var n=an(!0),i=null,r=To,s=null,o=nS(a);e=typeof e=="function"?e:e===void 0?sS:an(e),t=typeof t=="function"?t:t===void 0?oS:an(t);function a(l){var c,u=(l=iS(l)).length,h,f=!1,d;for(i==null&&(s=r(d=o())),c=0;c<=u;++c)!(c<u&&n(h=l[c],c,l))===f&&((f=!f)?s.lineStart():s.lineEnd()),f&&s.point(+e(h,c,l),+t(h,c,l));if(d)return s=null,d+""||null}return a.x=function(l){return arguments.length?(e=typeof l=="function"?l:an(+l),a):e},a.y=function(l){return arguments.length?(t=typeof l=="function"?l:an(+l),a):t},a.defined=function(l){return arguments.length?(n=typeof l=="function"?l:an(!!l),a):n},a.curve=function(l){return arguments.length?(r=l,i!=null&&(s=r(i)),a):r},a.context=function(l){return arguments.length?(l==null?i=s=null:s=r(i=l),a):i},a}function aS(e,t,n){var i=null,r=an(!0),s=null,o=To,a=null,l=nS(c);e=typeof e=="function"?e:e===void 0?sS:an(+e),t=typeof t=="function"?t:an(t===void 0?0:+t),n=typeof n=="function"?n:n===void 0?oS:an(+n);function c(h){var f,d,p,y=(h=iS(h)).length,g,m=!1,x,S=new Array(y),v=new Array(y);for(s==null&&(a=o(x=l())),f=0;f<=y;++f){if(!(f<y&&r(g=h[f],f,h))===m)if(m=!m)d=f,a.areaStart(),a.lineStart();else{for(a.lineEnd(),a.lineStart(),p=f-1;p>=d;--p)a.point(S[p],v[p]);a.lineEnd(),a.areaEnd()}m&&(S[f]=+e(g,f,h),v[f]=+t(g,f,h),a.point(i?+i(g,f,h):S[f],n?+n(g,f,h):v[f]))}if(x)return a=null,x+""||null}function u(){return U0().defined(r).curve(o).context(s)}return c.x=function(h){return arguments.length?(e=typeof h=="function"?h:an(+h),i=null,c):e},c.x0=function(h){return arguments.length?(e=typeof h=="function"?h:an(+h),c):e},c.x1=function(h){return arguments.length?(i=h==null?null:typeof h=="function"?h:an(+h),c):i},c.y=function(h){return arguments.length?(t=typeof h=="function"?h:an(+h),n=null,c):t},c.y0=function(h){return arguments.length?(t=typeof h=="function"?h:an(+h),c):t},c.y1=function(h){return arguments.length?(n=h==null?null:typeof h=="function"?h:an(+h),c):n},c.lineX0=c.lineY0=function(){return u().x(e).y(t)},c.lineY1=function(){return u().x(e).y(n)},c.lineX1=function(){return u().x(i).y(t)},c.defined=function(h){return arguments.length?(r=typeof h=="function"?h:an(!!h),c):r},c.curve=function(h){return arguments.length?(o=h,s!=null&&(a=o(s)),c):o},c.context=function(h){return arguments.length?(h==null?s=a=null:a=o(s=h),c):s},c}var yz=YL(To);function lS(e){this._curve=e}lS.prototype={areaStart:function(){this._curve.areaStart()},areaEnd:function(){this._curve.areaEnd()},lineStart:function(){this._curve.lineStart()},lineEnd:function(){this._curve.lineEnd()},point:function(e,t){this._curve.point(t*Math.sin(e),t*-Math.cos(e))}};function YL(e){function t(n){return new lS(e(n))}return t._curve=e,t}var Pf=class{constructor(t,n){this._context=t,this._x=n}areaStart(){this._line=0}areaEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line}point(t,n){switch(t=+t,n=+n,this._point){case 0:{this._point=1,this._line?this._context.lineTo(t,n):this._context.moveTo(t,n);break}case 1:this._point=2;default:{this._x?this._context.bezierCurveTo(this._x0=(this._x0+t)/2,this._y0,this._x0,n,t,n):this._context.bezierCurveTo(this._x0,this._y0=(this._y0+n)/2,t,this._y0,t,n);break}}this._x0=t,this._y0=n}};function cS(e){return new Pf(e,!0)}function uS(e){return new Pf(e,!1)}var ZL=qe(3),F0={draw(e,t){let n=qe(t+N0(t/28,.75))*.59436,i=n/2,r=i*ZL;e.moveTo(0,n),e.lineTo(0,-n),e.moveTo(-r,-i),e.lineTo(r,i),e.moveTo(-r,i),e.lineTo(r,-i)}},Eo={draw(e,t){let n=qe(t/yc);e.moveTo(n,0),e.arc(0,0,n,0,Nf)}},O0={draw(e,t){let n=qe(t/5)/2;e.moveTo(-3*n,-n),e.lineTo(-n,-n),e.lineTo(-n,-3*n),e.lineTo(n,-3*n),e.lineTo(n,-n),e.lineTo(3*n,-n),e.lineTo(3*n,n),e.lineTo(n,n),e.lineTo(n,3*n),e.lineTo(-n,3*n),e.lineTo(-n,n),e.lineTo(-3*n,n),e.closePath()}},fS=qe(1/3),KL=fS*2,B0={draw(e,t){let n=qe(t/KL),i=n*fS;e.moveTo(0,-n),e.lineTo(i,0),e.lineTo(0,n),e.lineTo(-i,0),e.closePath()}},k0={draw(e,t){let n=qe(t)*.62625;e.moveTo(0,-n),e.lineTo(n,0),e.lineTo(0,n),e.lineTo(-n,0),e.closePath()}},z0={draw(e,t){let n=qe(t-N0(t/7,2))*.87559;e.moveTo(-n,0),e.lineTo(n,0),e.moveTo(0,n),e.lineTo(0,-n)}},G0={draw(e,t){let n=qe(t),i=-n/2;e.rect(i,i,n,n)}},V0={draw(e,t){let n=qe(t)*.4431;e.moveTo(n,n),e.lineTo(n,-n),e.lineTo(-n,-n),e.lineTo(-n,n),e.closePath()}},JL=.8908130915292852,hS=Rf(yc/10)/Rf(7*yc/10),jL=Rf(Nf/10)*hS,QL=-eS(Nf/10)*hS,H0={draw(e,t){let n=qe(t*JL),i=jL*n,r=QL*n;e.moveTo(0,-n),e.lineTo(i,r);for(let s=1;s<5;++s){let o=Nf*s/5,a=eS(o),l=Rf(o);e.lineTo(l*n,-a*n),e.lineTo(a*i-l*r,l*i+a*r)}e.closePath()}},I0=qe(3),W0={draw(e,t){let n=-qe(t/(I0*3));e.moveTo(0,n*2),e.lineTo(-I0*n,-n),e.lineTo(I0*n,-n),e.closePath()}},tD=qe(3),$0={draw(e,t){let n=qe(t)*.6824,i=n/2,r=n*tD/2;e.moveTo(0,-n),e.lineTo(r,i),e.lineTo(-r,i),e.closePath()}},wi=-.5,Ti=qe(3)/2,D0=1/qe(12),eD=(D0/2+1)*3,X0={draw(e,t){let n=qe(t/eD),i=n/2,r=n*D0,s=i,o=n*D0+n,a=-s,l=o;e.moveTo(i,r),e.lineTo(s,o),e.lineTo(a,l),e.lineTo(wi*i-Ti*r,Ti*i+wi*r),e.lineTo(wi*s-Ti*o,Ti*s+wi*o),e.lineTo(wi*a-Ti*l,Ti*a+wi*l),e.lineTo(wi*i+Ti*r,wi*r-Ti*i),e.lineTo(wi*s+Ti*o,wi*o-Ti*s),e.lineTo(wi*a+Ti*l,wi*l-Ti*a),e.closePath()}},q0={draw(e,t){let n=qe(t-N0(t/6,1.7))*.6189;e.moveTo(-n,-n),e.lineTo(n,n),e.moveTo(-n,n),e.lineTo(n,-n)}},dS=[Eo,O0,B0,G0,H0,W0,X0],pS=[Eo,z0,q0,$0,F0,V0,k0];function Ms(){}function If(e,t,n){e._context.bezierCurveTo((2*e._x0+e._x1)/3,(2*e._y0+e._y1)/3,(e._x0+2*e._x1)/3,(e._y0+2*e._y1)/3,(e._x0+4*e._x1+t)/6,(e._y0+4*e._y1+n)/6)}function Uf(e){this._context=e}Uf.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){switch(this._point){case 3:If(this,this._x1,this._y1);case 2:this._context.lineTo(this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,this._context.lineTo((5*this._x0+this._x1)/6,(5*this._y0+this._y1)/6);default:If(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function mS(e){return new Uf(e)}function gS(e){this._context=e}gS.prototype={areaStart:Ms,areaEnd:Ms,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._y0=this._y1=this._y2=this._y3=this._y4=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x2,this._y2),this._context.closePath();break}case 2:{this._context.moveTo((this._x2+2*this._x3)/3,(this._y2+2*this._y3)/3),this._context.lineTo((this._x3+2*this._x2)/3,(this._y3+2*this._y2)/3),this._context.closePath();break}case 3:{this.point(this._x2,this._y2),this.point(this._x3,this._y3),this.point(this._x4,this._y4);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x2=e,this._y2=t;break;case 1:this._point=2,this._x3=e,this._y3=t;break;case 2:this._point=3,this._x4=e,this._y4=t,this._context.moveTo((this._x0+4*this._x1+e)/6,(this._y0+4*this._y1+t)/6);break;default:If(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function yS(e){return new gS(e)}function xS(e){this._context=e}xS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3;var n=(this._x0+4*this._x1+e)/6,i=(this._y0+4*this._y1+t)/6;this._line?this._context.lineTo(n,i):this._context.moveTo(n,i);break;case 3:this._point=4;default:If(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function _S(e){return new xS(e)}function vS(e,t){this._basis=new Uf(e),this._beta=t}vS.prototype={lineStart:function(){this._x=[],this._y=[],this._basis.lineStart()},lineEnd:function(){var e=this._x,t=this._y,n=e.length-1;if(n>0)for(var i=e[0],r=t[0],s=e[n]-i,o=t[n]-r,a=-1,l;++a<=n;)l=a/n,this._basis.point(this._beta*e[a]+(1-this._beta)*(i+l*s),this._beta*t[a]+(1-this._beta)*(r+l*o));this._x=this._y=null,this._basis.lineEnd()},point:function(e,t){this._x.push(+e),this._y.push(+t)}};var bS=(function e(t){function n(i){return t===1?new Uf(i):new vS(i,t)}return n.beta=function(i){return e(+i)},n})(.85);function Lf(e,t,n){e._context.bezierCurveTo(e._x1+e._k*(e._x2-e._x0),e._y1+e._k*(e._y2-e._y0),e._x2+e._k*(e._x1-t),e._y2+e._k*(e._y1-n),e._x2,e._y2)}function Y0(e,t){this._context=e,this._k=(1-t)/6}Y0.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:Lf(this,this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2,this._x1=e,this._y1=t;break;case 2:this._point=3;default:Lf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var MS=(function e(t){function n(i){return new Y0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function Z0(e,t){this._context=e,this._k=(1-t)/6}Z0.prototype={areaStart:Ms,areaEnd:Ms,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:Lf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var SS=(function e(t){function n(i){return new Z0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function K0(e,t){this._context=e,this._k=(1-t)/6}K0.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:Lf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var wS=(function e(t){function n(i){return new K0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function J0(e,t,n){var i=e._x1,r=e._y1,s=e._x2,o=e._y2;if(e._l01_a>KM){var a=2*e._l01_2a+3*e._l01_a*e._l12_a+e._l12_2a,l=3*e._l01_a*(e._l01_a+e._l12_a);i=(i*a-e._x0*e._l12_2a+e._x2*e._l01_2a)/l,r=(r*a-e._y0*e._l12_2a+e._y2*e._l01_2a)/l}if(e._l23_a>KM){var c=2*e._l23_2a+3*e._l23_a*e._l12_a+e._l12_2a,u=3*e._l23_a*(e._l23_a+e._l12_a);s=(s*c+e._x1*e._l23_2a-t*e._l12_2a)/u,o=(o*c+e._y1*e._l23_2a-n*e._l12_2a)/u}e._context.bezierCurveTo(i,r,s,o,e._x2,e._y2)}function TS(e,t){this._context=e,this._alpha=t}TS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:this.point(this._x2,this._y2);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3;default:J0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var ES=(function e(t){function n(i){return t?new TS(i,t):new Y0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function AS(e,t){this._context=e,this._alpha=t}AS.prototype={areaStart:Ms,areaEnd:Ms,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:J0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var CS=(function e(t){function n(i){return t?new AS(i,t):new Z0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function RS(e,t){this._context=e,this._alpha=t}RS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:J0(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var PS=(function e(t){function n(i){return t?new RS(i,t):new K0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function IS(e){this._context=e}IS.prototype={areaStart:Ms,areaEnd:Ms,lineStart:function(){this._point=0},lineEnd:function(){this._point&&this._context.closePath()},point:function(e,t){e=+e,t=+t,this._point?this._context.lineTo(e,t):(this._point=1,this._context.moveTo(e,t))}};function LS(e){return new IS(e)}function JM(e){return e<0?-1:1}function jM(e,t,n){var i=e._x1-e._x0,r=t-e._x1,s=(e._y1-e._y0)/(i||r<0&&-0),o=(n-e._y1)/(r||i<0&&-0),a=(s*r+o*i)/(i+r);return(JM(s)+JM(o))*Math.min(Math.abs(s),Math.abs(o),.5*Math.abs(a))||0}function QM(e,t){var n=e._x1-e._x0;return n?(3*(e._y1-e._y0)/n-t)/2:t}function L0(e,t,n){var i=e._x0,r=e._y0,s=e._x1,o=e._y1,a=(s-i)/3;e._context.bezierCurveTo(i+a,r+a*t,s-a,o-a*n,s,o)}function Df(e){this._context=e}Df.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=this._t0=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x1,this._y1);break;case 3:L0(this,this._t0,QM(this,this._t0));break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){var n=NaN;if(e=+e,t=+t,!(e===this._x1&&t===this._y1)){switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,L0(this,QM(this,n=jM(this,e,t)),n);break;default:L0(this,this._t0,n=jM(this,e,t));break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t,this._t0=n}}};function DS(e){this._context=new NS(e)}(DS.prototype=Object.create(Df.prototype)).point=function(e,t){Df.prototype.point.call(this,t,e)};function NS(e){this._context=e}NS.prototype={moveTo:function(e,t){this._context.moveTo(t,e)},closePath:function(){this._context.closePath()},lineTo:function(e,t){this._context.lineTo(t,e)},bezierCurveTo:function(e,t,n,i,r,s){this._context.bezierCurveTo(t,e,i,n,s,r)}};function US(e){return new Df(e)}function FS(e){return new DS(e)}function OS(e){this._context=e}OS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=[],this._y=[]},lineEnd:function(){var e=this._x,t=this._y,n=e.length;if(n)if(this._line?this._context.lineTo(e[0],t[0]):this._context.moveTo(e[0],t[0]),n===2)this._context.lineTo(e[1],t[1]);else for(var i=tS(e),r=tS(t),s=0,o=1;o<n;++s,++o)this._context.bezierCurveTo(i[0][s],r[0][s],i[1][s],r[1][s],e[o],t[o]);(this._line||this._line!==0&&n===1)&&this._context.closePath(),this._line=1-this._line,this._x=this._y=null},point:function(e,t){this._x.push(+e),this._y.push(+t)}};function tS(e){var t,n=e.length-1,i,r=new Array(n),s=new Array(n),o=new Array(n);for(r[0]=0,s[0]=2,o[0]=e[0]+2*e[1],t=1;t<n-1;++t)r[t]=1,s[t]=4,o[t]=4*e[t]+2*e[t+1];for(r[n-1]=2,s[n-1]=7,o[n-1]=8*e[n-1]+e[n],t=1;t<n;++t)i=r[t]/s[t-1],s[t]-=i,o[t]-=i*o[t-1];for(r[n-1]=o[n-1]/s[n-1],t=n-2;t>=0;--t)r[t]=(o[t]-r[t+1])/s[t];for(s[n-1]=(e[n]+r[n-1])/2,t=0;t<n-1;++t)s[t]=2*e[t+1]-r[t+1];return[r,s]}function BS(e){return new OS(e)}function Ff(e,t){this._context=e,this._t=t}Ff.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=this._y=NaN,this._point=0},lineEnd:function(){0<this._t&&this._t<1&&this._point===2&&this._context.lineTo(this._x,this._y),(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line>=0&&(this._t=1-this._t,this._line=1-this._line)},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:{if(this._t<=0)this._context.lineTo(this._x,t),this._context.lineTo(e,t);else{var n=this._x*(1-this._t)+e*this._t;this._context.lineTo(n,this._y),this._context.lineTo(n,t)}break}}this._x=e,this._y=t}};function kS(e){return new Ff(e,.5)}function zS(e){return new Ff(e,0)}function GS(e){return new Ff(e,1)}function Ei(e){return e!=null&&!Number.isNaN(e)}function Mn(e,t){return+Ei(t)-+Ei(e)||bn(e,t)}function Ao(e,t){return+Ei(t)-+Ei(e)||Lr(e,t)}function xc(e){return e!=null&&`${e}`!=""}function j0(e){return isFinite(e)?e:NaN}function Co(e){return e>0&&isFinite(e)?e:NaN}function Ea(e){return e<0&&isFinite(e)?e:NaN}function Of(e,t){if(e instanceof Date||(e=new Date(+e)),isNaN(e))return typeof t=="function"?t(e):t;let n=e.getUTCHours(),i=e.getUTCMinutes(),r=e.getUTCSeconds(),s=e.getUTCMilliseconds();return`${nD(e.getUTCFullYear(),4)}-${Vr(e.getUTCMonth()+1,2)}-${Vr(e.getUTCDate(),2)}${n||i||r||s?`T${Vr(n,2)}:${Vr(i,2)}${r||s?`:${Vr(r,2)}${s?`.${Vr(s,3)}`:""}`:""}Z`:""}`}function nD(e){return e<0?`-${Vr(-e,6)}`:e>9999?`+${Vr(e,6)}`:Vr(e,4)}function Vr(e,t){return`${e}`.padStart(t,"0")}var iD=/^(?:[-+]\d{2})?\d{4}(?:-\d{2}(?:-\d{2})?)?(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d{3})?)?(?:Z|[-+]\d{2}:?\d{2})?)?$/;function _c(e,t){return iD.test(e+="")?new Date(e):typeof t=="function"?t(e):t}function Hr(e){if(e==null)return;let t=e[0],n=e[e.length-1];return Lr(t,n)}var Ca=1e3,ws=Ca*60,Ts=ws*60,pr=Ts*24,dr=pr*7,Ro=pr*30,Ss=pr*365,Q0=[["millisecond",1],["2 milliseconds",2],["5 milliseconds",5],["10 milliseconds",10],["20 milliseconds",20],["50 milliseconds",50],["100 milliseconds",100],["200 milliseconds",200],["500 milliseconds",500],["second",Ca],["5 seconds",5*Ca],["15 seconds",15*Ca],["30 seconds",30*Ca],["minute",ws],["5 minutes",5*ws],["15 minutes",15*ws],["30 minutes",30*ws],["hour",Ts],["3 hours",3*Ts],["6 hours",6*Ts],["12 hours",12*Ts],["day",pr],["2 days",2*pr],["week",dr],["2 weeks",2*dr],["month",Ro],["3 months",3*Ro],["6 months",6*Ro],["year",Ss],["2 years",2*Ss],["5 years",5*Ss],["10 years",10*Ss],["20 years",20*Ss],["50 years",50*Ss],["100 years",100*Ss]],ty=new Map([["second",Ca],["minute",ws],["hour",Ts],["day",pr],["monday",dr],["tuesday",dr],["wednesday",dr],["thursday",dr],["friday",dr],["saturday",dr],["sunday",dr],["week",dr],["month",Ro],["year",Ss]]),HS=new Map([["second",Dn],["minute",mo],["hour",yo],["day",lr],["monday",vo],["tuesday",ng],["wednesday",ig],["thursday",zr],["friday",rg],["saturday",sg],["sunday",cr],["week",cr],["month",So],["year",Yn]]),ey=new Map([["second",Dn],["minute",go],["hour",xo],["day",oc],["monday",Mo],["tuesday",og],["wednesday",ag],["thursday",Gr],["friday",lg],["saturday",cg],["sunday",ur],["week",ur],["month",wo],["year",Zn]]),Ra=Symbol("intervalDuration"),kf=Symbol("intervalType");for(let[e,t]of HS)t[Ra]=ty.get(e),t[kf]="time";for(let[e,t]of ey)t[Ra]=ty.get(e),t[kf]="utc";var vc=[["year",Zn,"utc"],["month",wo,"utc"],["day",oc,"utc",6*Ro],["hour",xo,"utc",3*pr],["minute",go,"utc",6*Ts],["second",Dn,"utc",30*ws]],Bf=[["year",Yn,"time"],["month",So,"time"],["day",lr,"time",6*Ro],["hour",yo,"time",3*pr],["minute",mo,"time",6*Ts],["second",Dn,"time",30*ws]],rD=[vc[0],Bf[0],vc[1],Bf[1],vc[2],Bf[2],...vc.slice(3)];function WS(e){let t=`${e}`.toLowerCase();t.endsWith("s")&&(t=t.slice(0,-1));let n=1,i=/^(?:(\d+)\s+)/.exec(t);switch(i&&(t=t.slice(i[0].length),n=+i[1]),t){case"quarter":t="month",n*=3;break;case"half":t="month",n*=6;break}let r=ey.get(t);if(!r)throw new Error(`unknown interval: ${e}`);if(n>1&&!r.every)throw new Error(`non-periodic interval: ${t}`);return[t,n]}function ny(e){return $S(WS(e),"time")}function bc(e){return $S(WS(e),"utc")}function $S([e,t],n){let i=(n==="time"?HS:ey).get(e);return t>1&&(i=i.every(t),i[Ra]=ty.get(e)*t,i[kf]=n),i}function iy(e,t){if(!(t>1))return;let n=e[Ra];if(!Q0.some(([,r])=>r===n)||n%pr===0&&pr<n&&n<Ro)return;let[i]=Q0[oa(([,r])=>Math.log(r)).center(Q0,Math.log(n*t))];return(e[kf]==="time"?ny:bc)(i)}function VS(e,t,n){let i=t==="time"?uc:fr;if(n==null)return i(e==="year"?"%Y":e==="month"?"%Y-%m":e==="day"?"%Y-%m-%d":e==="hour"||e==="minute"?"%Y-%m-%dT%H:%M":e==="second"?"%Y-%m-%dT%H:%M:%S":"%Y-%m-%dT%H:%M:%S.%L");let r=sD(n);switch(e){case"millisecond":return Aa(i(".%L"),i(":%M:%S"),r);case"second":return Aa(i(":%S"),i("%-I:%M"),r);case"minute":return Aa(i("%-I:%M"),i("%p"),r);case"hour":return Aa(i("%-I %p"),i("%b %-d"),r);case"day":return Aa(i("%-d"),i("%b"),r);case"month":return Aa(i("%b"),i("%Y"),r);case"year":return i("%Y")}throw new Error("unable to format time ticks")}function sD(e){return e==="left"||e==="right"?(t,n)=>`
${t}
${n}`:e==="top"?(t,n)=>`${n}
${t}`:(t,n)=>`${t}
${n}`}function oD(e){return e==="time"?Bf:e==="utc"?vc:rD}function XS(e,t,n){let i=Pn(Vv(t,(r,s)=>Math.abs(s-r)));if(i<1e3)return VS("millisecond","utc",n);for(let[r,s,o,a]of oD(e)){if(i>a||r==="hour"&&!i)break;if(t.every(l=>s.floor(l)>=l))return VS(r,o,n)}}function Aa(e,t,n){return(i,r,s)=>{let o=e(i,r),a=t(i,r),l=r-Hr(s);return r!==l&&s[l]!==void 0&&a===t(s[l],l)?o:n(o,a)}}var sy=Object.getPrototypeOf(Uint8Array),aD=Object.prototype.toString;function ki(e){return e instanceof Array||e instanceof sy}function ZS(e){return e instanceof sy&&!lD(e)}function KS(e){return e?.prototype instanceof sy&&!cD(e)}function lD(e){return e instanceof BigInt64Array||e instanceof BigUint64Array}function cD(e){return e===BigInt64Array||e===BigUint64Array}var oy=Symbol("reindex");function Te(e,t,n){let i=typeof t;return i==="string"?pw(e)?ay(e.getChild(t),n):qS(e,ly(t),n):i==="function"?qS(e,t,n):i==="number"||t instanceof Date||i==="boolean"?me(e,ri(t),n):typeof t?.transform=="function"?ry(t.transform(e),n):uD(ry(t,n),e?.[oy])}function uD(e,t){return e!=null&&t?Gf(e,t):e}function qS(e,t,n){return me(e,KS(n)?(i,r)=>cy(t(i,r)):t,n)}function ry(e,t){return t===void 0?mr(e):mw(e)?ay(e,t):e instanceof t?e:t.from(e,KS(t)&&!ZS(e)?cy:void 0)}function ay(e,t){return e==null?e:(t===void 0||t===Array)&&pD(e.type)?uy(YS(e)):ry(YS(e),t)}function YS(e){return e.nullCount?e.toJSON():e.toArray()}var Pa=[null],ly=e=>t=>{let n=t[e];return n===void 0&&t.type==="Feature"?t.properties?.[e]:n},Po={transform:Fn},Ae={transform:e=>e};var JS=()=>1,jS=()=>!0,Fe=e=>e==null?e:`${e}`,Oe=e=>e==null?e:+e;var zf=e=>e?e[0]:void 0,Mc=e=>e?e[1]:void 0;var ri=e=>()=>e;function QS(e){let t=+`${e}`.slice(1)/100;return(n,i)=>Ir(n,t,i)}function Nn(e){return ZS(e)?e:me(e,cy,Float64Array)}function cy(e){return e==null?NaN:Number(e)}function uy(e){return me(e,fy)}function fy(e){return e instanceof Date&&!isNaN(e)?e:typeof e=="string"?_c(e):e==null||isNaN(e=Number(e))?void 0:new Date(e)}function Kn(e,t){return e===void 0&&(e=t),e===null?[void 0,"none"]:Ua(e)?[void 0,e]:[e,void 0]}function Le(e,t){return e===void 0&&(e=t),e===null||typeof e=="number"?[void 0,e]:[e,void 0]}function hy(e,t,n){if(e!=null)return Un(e,t,n)}function Un(e,t,n){let i=`${e}`.toLowerCase();if(!n.includes(i))throw new Error(`invalid ${t}: ${e}`);return i}function Wr(e){return pw(e)?e:mr(e)}function mr(e){if(e==null||ki(e))return e;if(mw(e))return ay(e);if(tw(e))switch(e.type){case"FeatureCollection":return e.features;case"GeometryCollection":return e.geometries;default:return[e]}return Array.from(e)}function tw(e){switch(e?.type){case"FeatureCollection":case"GeometryCollection":case"Feature":case"LineString":case"MultiLineString":case"MultiPoint":case"MultiPolygon":case"Point":case"Polygon":case"Sphere":return!0;default:return!1}}function me(e,t,n=Array){return e==null?e:e instanceof n?e.map(t):n.from(e,t)}function Es(e,t=Array){return e instanceof t?e.slice():t.from(e)}function ew({y:e,y1:t,y2:n}){return e!==void 0||t!==void 0||n!==void 0}function zi(e){return e?.toString===aD}function Ia(e){return zi(e)&&(e.type!==void 0||e.domain!==void 0)}function La(e){return zi(e)&&typeof e.transform!="function"}function As(e){return La(e)&&e.value===void 0&&e.channel===void 0}function nw(e,t,n,i=Ae){return t===void 0&&n===void 0?(t=0,n=e===void 0?i:e):t===void 0?t=e===void 0?0:e:n===void 0&&(n=e===void 0?0:e),[t,n]}function Gi(e,t){return e===void 0&&t===void 0?[zf,Mc]:[e,t]}function Da({z:e,fill:t,stroke:n}={}){return e===void 0&&([e]=Kn(t)),e===void 0&&([e]=Kn(n)),e}function Cs(e){return ki(e)?e.length:e?.numRows}function Fn(e){let t=Cs(e),n=new Uint32Array(t);for(let i=0;i<t;++i)n[i]=i;return n}function Gf(e,t){return ki(e)?me(t,n=>e[n],e.constructor):me(t,n=>e.at(n))}function iw(e,t,n){return e.subarray?e.subarray(t,n):e.slice(t,n)}function Ai(e){return e!==null&&typeof e=="object"?e.valueOf():e}function rw(e,t){if(t[e]!==void 0)return t[e];switch(e){case"x1":case"x2":e="x";break;case"y1":case"y2":e="y";break}return t[e]}function Na(e){let t;return[{transform:()=>t,label:Vi(e)},n=>t=n]}function Ci(e){return e==null?[e]:Na(e)}function Vi(e,t){return typeof e=="string"?e:e&&e.label!==void 0?e.label:t}function Sc(e,t){return{transform(n){let i=e.transform(n),r=t.transform(n);return Ue(i)||Ue(r)?me(i,(s,o)=>new Date((+i[o]+ +r[o])/2)):me(i,(s,o)=>(+i[o]+ +r[o])/2,Float64Array)},label:e.label}}function wc(e,t){let n=dy(t?.interval,t?.type);return n?me(e,n):e}function dy(e,t){let n=Vf(e,t);return n&&(i=>Ei(i)?n.floor(i):i)}function Vf(e,t){if(e!=null){if(typeof e=="number")return fD(e);if(typeof e=="string")return(t==="time"?ny:bc)(e);if(typeof e.floor!="function")throw new Error("invalid interval; missing floor method");if(typeof e.offset!="function")throw new Error("invalid interval; missing offset method");return e}}function fD(e){e=+e,0<e&&e<1&&Number.isInteger(1/e)&&(e=-1/e);let t=Math.abs(e);return e<0?{floor:n=>Math.floor(n*t)/t,offset:(n,i=1)=>(n*t+Math.floor(i))/t,range:(n,i)=>la(Math.ceil(n*t),i*t).map(r=>r/t)}:{floor:n=>Math.floor(n/t)*t,offset:(n,i=1)=>n+t*Math.floor(i),range:(n,i)=>la(Math.ceil(n/t),i/t).map(r=>r*t)}}function gr(e,t){if(e=Vf(e,t),e&&typeof e.range!="function")throw new Error("invalid interval: missing range method");return e}function sw(e,t){if(e=gr(e,t),e&&typeof e.ceil!="function")throw new Error("invalid interval: missing ceil method");return e}function ow(e){return Rs(e)&&typeof e?.floor=="function"&&e.floor()instanceof Date}function Rs(e){return typeof e?.range=="function"}function yr(e){return e===void 0||La(e)?e:{value:e}}function aw(e){return e==null?null:{transform:t=>Te(t,e,Float64Array),label:Vi(e)}}function Jn(e){return e&&typeof e[Symbol.iterator]=="function"}function Hf(e){for(let t of e)if(t!=null)return typeof t!="object"||t instanceof Date}function py(e){for(let t of e){if(t==null)continue;let n=typeof t;return n==="string"||n==="boolean"}}function Ue(e){for(let t of e)if(t!=null)return t instanceof Date}function lw(e){for(let t of e)if(t!=null)return typeof t=="string"&&isNaN(t)&&_c(t)}function cw(e){for(let t of e)if(t!=null){if(typeof t!="string")return!1;if(t.trim())return!isNaN(t)}}function uw(e){for(let t of e)if(t!=null)return typeof t=="number"}function Wf(e,t){let n;for(let i of e)if(i!=null){if(!t(i))return!1;n=!0}return n}var hD=new Set("none,currentcolor,transparent,aliceblue,antiquewhite,aqua,aquamarine,azure,beige,bisque,black,blanchedalmond,blue,blueviolet,brown,burlywood,cadetblue,chartreuse,chocolate,coral,cornflowerblue,cornsilk,crimson,cyan,darkblue,darkcyan,darkgoldenrod,darkgray,darkgreen,darkgrey,darkkhaki,darkmagenta,darkolivegreen,darkorange,darkorchid,darkred,darksalmon,darkseagreen,darkslateblue,darkslategray,darkslategrey,darkturquoise,darkviolet,deeppink,deepskyblue,dimgray,dimgrey,dodgerblue,firebrick,floralwhite,forestgreen,fuchsia,gainsboro,ghostwhite,gold,goldenrod,gray,green,greenyellow,grey,honeydew,hotpink,indianred,indigo,ivory,khaki,lavender,lavenderblush,lawngreen,lemonchiffon,lightblue,lightcoral,lightcyan,lightgoldenrodyellow,lightgray,lightgreen,lightgrey,lightpink,lightsalmon,lightseagreen,lightskyblue,lightslategray,lightslategrey,lightsteelblue,lightyellow,lime,limegreen,linen,magenta,maroon,mediumaquamarine,mediumblue,mediumorchid,mediumpurple,mediumseagreen,mediumslateblue,mediumspringgreen,mediumturquoise,mediumvioletred,midnightblue,mintcream,mistyrose,moccasin,navajowhite,navy,oldlace,olive,olivedrab,orange,orangered,orchid,palegoldenrod,palegreen,paleturquoise,palevioletred,papayawhip,peachpuff,peru,pink,plum,powderblue,purple,rebeccapurple,red,rosybrown,royalblue,saddlebrown,salmon,sandybrown,seagreen,seashell,sienna,silver,skyblue,slateblue,slategray,slategrey,snow,springgreen,steelblue,tan,teal,thistle,tomato,turquoise,violet,wheat,white,whitesmoke,yellow".split(","));function Ua(e){return typeof e!="string"?!1:(e=e.toLowerCase().trim(),/^#[0-9a-f]{3,8}$/.test(e)||/^(?:url|var|rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch|color|color-mix)\(.*\)$/.test(e)||hD.has(e))}function fw(e){return typeof e=="number"&&(0<=e&&e<=1||isNaN(e))}function ln(e){return e==null||Io(e)}function Io(e){return/^\s*none\s*$/i.test(e)}function hw(e){return/^\s*round\s*$/i.test(e)}function $f(e,t){return hy(e,t,["middle","top-left","top","top-right","right","bottom-right","bottom","bottom-left","left"])}function Ps(e="middle"){return $f(e,"frameAnchor")}function dw(e={},...t){let n=e;for(let i of t)for(let r in i)if(n[r]===void 0){let s=i[r];n===e?n={...n,[r]:s}:n[r]=s}return n}function dD(e){console.warn("named iterables are deprecated; please use an object instead");let t=new Set;return Object.fromEntries(Array.from(e,n=>{let{name:i}=n;if(i==null)throw new Error("missing name");let r=`${i}`;if(r==="__proto__")throw new Error(`illegal name: ${r}`);if(t.has(r))throw new Error(`duplicate name: ${r}`);return t.add(r),[i,n]}))}function my(e){return Jn(e)?dD(e):e}function Xf(e){return e===!0?e="frame":e===!1?e=null:!tw(e)&&e!=null&&(e=Un(e,"clip",["frame","sphere"]),e==="sphere"&&(e={type:"Sphere"})),e}function pw(e){return e&&typeof e.getChild=="function"&&typeof e.toArray=="function"&&e.schema&&Array.isArray(e.schema.fields)}function mw(e){return e&&typeof e.toArray=="function"&&e.type}function pD(e){return e&&(e.typeId===8||e.typeId===10)&&e.unit===1}var Ri=Symbol("position"),si=Symbol("color"),Lo=Symbol("radius"),Do=Symbol("length"),No=Symbol("opacity"),Fa=Symbol("symbol"),gw=Symbol("projection"),ge=new Map([["x",Ri],["y",Ri],["fx",Ri],["fy",Ri],["r",Lo],["color",si],["opacity",No],["symbol",Fa],["length",Do],["projection",gw]]);function yw(e){return e===Ri||e===gw}function xw(e){return e===Ri||e===Lo||e===Do||e===No}var mD=Math.sqrt(3),gD=2/mD,yD={draw(e,t){let n=Math.sqrt(t/Math.PI),i=n*gD,r=i/2;e.moveTo(0,i),e.lineTo(n,r),e.lineTo(n,-r),e.lineTo(0,-i),e.lineTo(-n,-r),e.lineTo(-n,r),e.closePath()}},gy=new Map([["asterisk",F0],["circle",Eo],["cross",O0],["diamond",B0],["diamond2",k0],["hexagon",yD],["plus",z0],["square",G0],["square2",V0],["star",H0],["times",q0],["triangle",W0],["triangle2",$0],["wye",X0]]);function yy(e){return e&&typeof e.draw=="function"}function _w(e){return yy(e)?!0:typeof e!="string"?!1:gy.has(e.toLowerCase())}function Oa(e){if(e==null||yy(e))return e;let t=gy.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid symbol: ${e}`)}function vw(e){if(e==null||yy(e))return[void 0,e];if(typeof e=="string"){let t=gy.get(`${e}`.toLowerCase());if(t)return[void 0,t]}return[e,void 0]}function Uo({filter:e,sort:t,reverse:n,transform:i,initializer:r,...s}={},o){if(i===void 0&&(e!=null&&(i=bw(e)),t!=null&&!As(t)&&(i=xy(i,vy(t))),n&&(i=xy(i,Mw))),o!=null&&r!=null)throw new Error("transforms cannot be applied after initializers");return{...s,...(t===null||As(t))&&{sort:t},transform:xy(i,o)}}function $r({filter:e,sort:t,reverse:n,initializer:i,...r}={},s){return i===void 0&&(e!=null&&(i=bw(e)),t!=null&&!As(t)&&(i=_y(i,vy(t))),n&&(i=_y(i,Mw))),{...r,...(t===null||As(t))&&{sort:t},initializer:_y(i,s)}}function xy(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r){return{data:n,facets:i}=e.call(this,n,i,r),t.call(this,Wr(n),i,r)}}function _y(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r,...s){let o,a,l,c,u,h;return{data:a=n,facets:l=i,channels:o}=e.call(this,n,i,r,...s),{data:u=a,facets:h=l,channels:c}=t.call(this,a,l,{...r,...o},...s),{data:u,facets:h,channels:{...o,...c}}}}function xD(e,t){return(e.initializer!=null?$r:Uo)(e,t)}function bw(e){return(t,n)=>{let i=Te(t,e);return{data:t,facets:n.map(r=>r.filter(s=>i[s]))}}}function Mw(e,t){return{data:e,facets:t.map(n=>n.slice().reverse())}}function Sw(e,{sort:t,...n}={}){return{...(La(e)&&e.channel!==void 0?$r:xD)(n,vy(e)),sort:As(t)?t:null}}function vy(e){return(typeof e=="function"&&e.length!==1?_D:vD)(e)}function _D(e){return(t,n)=>{let i=ki(t)?(r,s)=>e(t[r],t[s]):(r,s)=>e(t.get(r),t.get(s));return{data:t,facets:n.map(r=>r.slice().sort(i))}}}function vD(e){let t,n;({channel:t,value:e,order:n}={...yr(e)});let i=t?.startsWith("-");if(i&&(t=t.slice(1)),n===void 0&&(n=i?Ao:Mn),typeof n!="function")switch(`${n}`.toLowerCase()){case"ascending":n=Mn;break;case"descending":n=Ao;break;default:throw new Error(`invalid order: ${n}`)}return(r,s,o)=>{let a;if(t===void 0)a=Te(r,e);else{if(o===void 0)throw new Error("channel sort requires an initializer");if(a=o[t],!a)return{};a=a.value}let l=(c,u)=>n(a[c],a[u]);return{data:r,facets:s.map(c=>c.slice().sort(l))}}}function Ec(e,...t){for(let{name:n}of e)if(t.includes(n))return!0;return!1}function Ew(e,t,n=by){let i=Object.entries(e);return t.title!=null&&e.title===void 0&&i.push(["title",TD]),t.href!=null&&e.href===void 0&&i.push(["href",qf]),i.filter(([,r])=>r!==void 0).map(([r,s])=>s===null?bD(r):n(r,s,t))}function by(e,t,n,i=My){let r;zi(t)&&"reduce"in t&&(r=t.scale,t=t.reduce);let s=i(e,t,n),[o,a]=Na(s.label),l;return{name:e,output:r===void 0?o:{value:o,scale:r},initialize(c){s.initialize(c),l=a([])},scope(c,u){s.scope(c,u)},reduce(c,u){l.push(s.reduce(c,u))}}}function bD(e){return{name:e,initialize(){},scope(){},reduce(){}}}function My(e,t,n,i=Ac){let r=rw(e,n),s=i(t,r),o,a;return{label:Vi(s===Tc?null:r,s.label),initialize(l){o=r===void 0?l:Te(l,r),s.scope==="data"&&(a=s.reduceIndex(Fn(l),o))},scope(l,c){s.scope===l&&(a=s.reduceIndex(c,o))},reduce(l,c){return s.scope==null?s.reduceIndex(l,o,c):s.reduceIndex(l,o,a,c)}}}function Sy(e,t){return t?so(e,n=>t[n]):[[,e]]}function Ac(e,t,n=MD){if(e==null)return n(e);if(typeof e.reduceIndex=="function")return e;if(typeof e.reduce=="function"&&zi(e))return SD(e);if(typeof e=="function")return wD(e);if(/^p\d{2}$/i.test(e))return Xr(QS(e));switch(`${e}`.toLowerCase()){case"first":return qf;case"last":return ED;case"identity":return wy;case"count":return Tc;case"distinct":return AD;case"sum":return t==null?Tc:CD;case"proportion":return Tw(t,"data");case"proportion-facet":return Tw(t,"facet");case"deviation":return Xr(tm);case"min":return Xr(mi);case"min-index":return Xr(Fv);case"max":return Xr(Pn);case"max-index":return Xr(Uv);case"mean":return ww(zv);case"median":return ww(kl);case"variance":return Xr(Qp);case"mode":return Xr(Gv)}return n(e)}function MD(e){throw new Error(`invalid reduce: ${e}`)}function Aw(e,t){for(let n in t){let i=t[n];if(i!==void 0&&!e.some(r=>r.name===n))return i}}function Cw(e,t,n){if(t){let i=t.output.transform(),r=(s,o)=>Mn(i[s],i[o]);e.forEach(s=>s.sort(r))}n&&e.forEach(i=>i.reverse())}function SD(e){return console.warn("deprecated reduce interface; implement reduceIndex instead."),{...e,reduceIndex:e.reduce.bind(e)}}function wD(e){return{reduceIndex(t,n,i){return e(Gf(n,t),i)}}}function Xr(e){return{reduceIndex(t,n){return e(t,i=>n[i])}}}function ww(e){return{reduceIndex(t,n){let i=e(t,r=>n[r]);return Ue(n)?new Date(i):i}}}var wy={reduceIndex(e,t){return Gf(t,e)}},qf={reduceIndex(e,t){return t[e[0]]}},TD={reduceIndex(e,t){let i=ra(Dr(e,s=>s.length,s=>t[s]),Mc),r=i.slice(-5).reverse();if(r.length<i.length){let s=i.slice(0,-4);r[4]=[`… ${s.length.toLocaleString("en-US")} more`,Ui(s,Mc)]}return r.map(([s,o])=>`${s} (${o.toLocaleString("en-US")})`).join(`
`)}},ED={reduceIndex(e,t){return t[e[e.length-1]]}},Tc={label:"Frequency",reduceIndex(e){return e.length}},AD={label:"Distinct",reduceIndex(e,t){let n=new nr;for(let i of e)n.add(t[i]);return n.size}},CD=Xr(Ui);function Tw(e,t){return e==null?{scope:t,label:"Frequency",reduceIndex:(n,i,r=1)=>n.length/r}:{scope:t,reduceIndex:(n,i,r=1)=>Ui(n,s=>i[s])/r}}var Rw={reduceIndex(e,t,{z:n}){return n}};function Ba(e,{scale:t,type:n,value:i,filter:r,hint:s,label:o=Vi(i)},a){return s===void 0&&typeof i?.transform=="function"&&(s=i.hint),Ey(a,{scale:t,type:n,value:Te(e,i),label:o,filter:r,hint:s})}function Iw(e,t){return Object.fromEntries(Object.entries(e).map(([n,i])=>[n,Ba(t,i,n)]))}function Lw(e,t){let n=Object.fromEntries(Object.entries(e).map(([i,{scale:r,value:s}])=>{let o=r==null?null:t[r];return[i,o==null?s:me(s,o)]}));return n.channels=e,n}function Ey(e,t){let{scale:n,value:i}=t;if(n===!0||n==="auto")switch(e){case"fill":case"stroke":case"color":t.scale=n!==!0&&Wf(i,Ua)?null:"color",t.defaultScale="color";break;case"fillOpacity":case"strokeOpacity":case"opacity":t.scale=n!==!0&&Wf(i,fw)?null:"opacity",t.defaultScale="opacity";break;case"symbol":n!==!0&&Wf(i,_w)?(t.scale=null,t.value=me(i,Oa)):t.scale="symbol",t.defaultScale="symbol";break;default:t.scale=ge.has(e)?e:null;break}else if(n===!1)t.scale=null;else if(n!=null&&!ge.has(n))throw new Error(`unknown scale: ${n}`);return t}function Dw(e,t,n,i,r){let{order:s,reverse:o,reduce:a=!0,limit:l}=r;for(let c in r){if(!ge.has(c))continue;let{value:u,order:h=s,reverse:f=o,reduce:d=a,limit:p=l}=yr(r[c]),y=u?.startsWith("-");if(y&&(u=u.slice(1)),h=h===void 0?y!==(u==="width"||u==="height")?Uw:Nw:ID(h),d==null||d===!1)continue;let g=c==="fx"||c==="fy"?PD(t,i[c]):RD(n,c);if(!g)throw new Error(`missing channel for scale: ${c}`);let m=g.value,[x=0,S=1/0]=Jn(p)?p:p<0?[p]:[0,p];if(u==null)g.domain=()=>{let v=Array.from(new nr(m));return f&&(v=v.reverse()),(x!==0||S!==1/0)&&(v=v.slice(x,S)),v};else{let v=u==="data"?e:u==="height"?Pw(n,"y1","y2"):u==="width"?Pw(n,"x1","x2"):Ty(n,u,u==="y"?"y2":u==="x"?"x2":void 0),M=Ac(d===!0?"max":d,v);g.domain=()=>{let b=Lv(Fn(m),_=>M.reduceIndex(_,v),_=>m[_]);return h&&b.sort(h),f&&b.reverse(),(x!==0||S!==1/0)&&(b=b.slice(x,S)),b.map(zf)}}}}function RD(e,t){for(let n in e){let i=e[n];if(i.scale===t)return i}}function PD(e,t){let n=e.original;if(n===e)return t;let i=t.value,r=t.value=[];for(let s=0;s<n.length;++s){let o=i[n[s][0]];for(let a of e[s])r[a]=o}return t}function Pw(e,t,n){let i=Ty(e,t),r=Ty(e,n);return me(r,(s,o)=>Math.abs(s-i[o]),Float64Array)}function Ty(e,t,n){let i=e[t];if(!i&&n!==void 0&&(i=e[n]),i)return i.value;throw new Error(`missing channel: ${t}`)}function ID(e){if(e==null||typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"ascending":return Nw;case"descending":return Uw}throw new Error(`invalid order: ${e}`)}function Nw([e,t],[n,i]){return Mn(t,i)||Mn(e,n)}function Uw([e,t],[n,i]){return Ao(t,i)||Mn(e,n)}function Ay(e,t){let n=e[t];if(n){for(;n.source;)n=n.source;return n.source===null?null:n}}var zw=new Map([["accent",zM],["category10",kM],["dark2",GM],["observable10",VM],["paired",HM],["pastel1",WM],["pastel2",$M],["set1",XM],["set2",qM],["set3",YM],["tableau10",ZM]]);function Gw(e){return e!=null&&zw.has(`${e}`.toLowerCase())}var Fw=new Map([...zw,["brbg",qr(Tg,Eg)],["prgn",qr(Ag,Cg)],["piyg",qr(Rg,Pg)],["puor",qr(Ig,Lg)],["rdbu",qr(Ef,pc)],["rdgy",qr(Dg,Ng)],["rdylbu",qr(Af,mc)],["rdylgn",qr(Ug,Fg)],["spectral",qr(Og,Bg)],["burd",Ow(Ef,pc)],["buylrd",Ow(Af,mc)],["blues",cn(c0,u0)],["greens",cn(f0,h0)],["greys",cn(d0,p0)],["oranges",cn(_0,v0)],["purples",cn(m0,g0)],["reds",cn(y0,x0)],["turbo",Yr(A0)],["viridis",Yr(gc)],["magma",Yr(C0)],["inferno",Yr(R0)],["plasma",Yr(P0)],["cividis",Yr(b0)],["cubehelix",Yr(M0)],["warm",Yr(S0)],["cool",Yr(w0)],["bugn",cn(kg,zg)],["bupu",cn(Gg,Vg)],["gnbu",cn(Hg,Wg)],["orrd",cn($g,Xg)],["pubu",cn(Zg,Kg)],["pubugn",cn(qg,Yg)],["purd",cn(Jg,jg)],["rdpu",cn(Qg,t0)],["ylgn",cn(i0,r0)],["ylgnbu",cn(e0,n0)],["ylorbr",cn(s0,o0)],["ylorrd",cn(a0,l0)],["rainbow",Bw(T0)],["sinebow",Bw(E0)]]);function cn(e,t){return({length:n})=>n===1?[e[3][1]]:n===2?[e[3][1],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>9?In(t,n):e[n])}function qr(e,t){return({length:n})=>n===2?[e[3][0],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>11?In(t,n):e[n])}function Ow(e,t){return({length:n})=>n===2?[e[3][2],e[3][0]]:(n=Math.max(3,Math.floor(n)),n>11?In(i=>t(1-i),n):e[n].slice().reverse())}function Yr(e){return({length:t})=>In(e,Math.max(2,Math.floor(t)))}function Bw(e){return({length:t})=>In(e,Math.floor(t)+1).slice(0,-1)}function Cy(e){let t=`${e}`.toLowerCase();if(!Fw.has(t))throw new Error(`unknown ordinal scheme: ${t}`);return Fw.get(t)}function Cc(e,t){let n=Cy(e),i=typeof n=="function"?n({length:t}):n;return i.length!==t?i.slice(0,t):i}function Vw(e,t="greys"){let n=new Set,[i,r]=Cc(t,2);for(let s of e)if(s!=null)if(s===!0)n.add(r);else if(s===!1)n.add(i);else return;return[...n]}var kw=new Map([["brbg",Eg],["prgn",Cg],["piyg",Pg],["puor",Lg],["rdbu",pc],["rdgy",Ng],["rdylbu",mc],["rdylgn",Fg],["spectral",Bg],["burd",e=>pc(1-e)],["buylrd",e=>mc(1-e)],["blues",u0],["greens",h0],["greys",p0],["purples",g0],["reds",x0],["oranges",v0],["turbo",A0],["viridis",gc],["magma",C0],["inferno",R0],["plasma",P0],["cividis",b0],["cubehelix",M0],["warm",S0],["cool",w0],["bugn",zg],["bupu",Vg],["gnbu",Wg],["orrd",Xg],["pubugn",Yg],["pubu",Kg],["purd",jg],["rdpu",t0],["ylgnbu",n0],["ylgn",r0],["ylorbr",o0],["ylorrd",l0],["rainbow",T0],["sinebow",E0]]);function ka(e){let t=`${e}`.toLowerCase();if(!kw.has(t))throw new Error(`unknown quantitative scheme: ${t}`);return kw.get(t)}var LD=new Set(["brbg","prgn","piyg","puor","rdbu","rdgy","rdylbu","rdylgn","spectral","burd","buylrd"]);function Hw(e){return e!=null&&LD.has(`${e}`.toLowerCase())}var Py=e=>t=>e(1-t),Ry=[0,1],Ww=new Map([["number",$e],["rgb",uo],["hsl",Nb],["hcl",Ob],["lab",Ub]]);function Iy(e){let t=`${e}`.toLowerCase();if(!Ww.has(t))throw new Error(`unknown interpolator: ${t}`);return Ww.get(t)}function Ga(e,t,n,{type:i,nice:r,clamp:s,zero:o,domain:a=Qw(e,n),unknown:l,round:c,scheme:u,interval:h,range:f=ge.get(e)===Lo?FD(n,a):ge.get(e)===Do?OD(n,a):ge.get(e)===No?Ry:void 0,interpolate:d=ge.get(e)===si?u==null&&f!==void 0?uo:ka(u!==void 0?u:i==="cyclical"?"rainbow":"turbo"):c?Hl:$e,reverse:p}){if(a=$w(a),h=gr(h,i),(i==="cyclical"||i==="sequential")&&(i="linear"),typeof d!="function"&&(d=Iy(d)),p=!!p,f!==void 0){let y=a.length,g=(f=$w(f)).length;if(y!==g){if(d.length===1)throw new Error("invalid piecewise interpolator");d=_s(d,f),f=void 0}}if(d.length===1?(p&&(d=Py(d),p=!1),f===void 0&&(f=Float64Array.from(a,(y,g)=>g/(a.length-1)),f.length===2&&(f=Ry)),t.interpolate((f===Ry?ri:Rc)(d))):t.interpolate(d),o){let[y,g]=pn(a);(y>0||g<0)&&(a=Es(a),(Hr(a)||1)===Math.sign(y)?a[0]=0:a[a.length-1]=0)}return p&&(a=ca(a)),t.domain(a).unknown(l),r&&(t.nice(DD(r,i)),a=t.domain()),f!==void 0&&t.range(f),s&&t.clamp(s),{type:i,domain:a,range:f,scale:t,interpolate:d,interval:h}}function $w(e){return e=mr(e),e.length>=2?e:[e[0],e[0]]}function DD(e,t){return e===!0?void 0:typeof e=="number"?e:sw(e,t)}function Xw(e,t,n){return Ga(e,dc(),t,n)}function qw(e,t,n){return Ly(e,t,{...n,exponent:.5})}function Ly(e,t,{exponent:n=1,...i}){return Ga(e,yg().exponent(n),t,{...i,type:"pow"})}function Yw(e,t,{base:n=10,domain:i=BD(t),...r}){return Ga(e,mg().base(n),t,{...r,domain:i})}function Zw(e,t,{constant:n=1,...i}){return Ga(e,gg().constant(n),t,i)}function Kw(e,t,{range:n,quantiles:i=n===void 0?5:(n=[...n]).length,n:r=i,scheme:s="rdylbu",domain:o=kD(t),unknown:a,interpolate:l,reverse:c}){return n===void 0&&(n=l!==void 0?In(l,r):ge.get(e)===si?Cc(s,r):void 0),o.length>0&&(o=xg(o,n===void 0?{length:r}:n).quantiles()),Yf(e,t,{domain:o,range:n,reverse:c,unknown:a})}function Jw(e,t,{range:n,n:i=n===void 0?5:(n=[...n]).length,scheme:r="rdylbu",domain:s=Qw(e,t),unknown:o,interpolate:a,reverse:l}){let[c,u]=pn(s),h;return n===void 0?(h=gs(c,u,i),h[0]<=c&&h.splice(0,1),h[h.length-1]>=u&&h.pop(),i=h.length+1,n=a!==void 0?In(a,i):ge.get(e)===si?Cc(r,i):void 0):(h=In($e(c,u),i+1).slice(1,-1),c instanceof Date&&(h=h.map(f=>new Date(f)))),Hr(mr(s))<0&&h.reverse(),Yf(e,t,{domain:h,range:n,reverse:l,unknown:o})}function Yf(e,t,{domain:n=[0],unknown:i,scheme:r="rdylbu",interpolate:s,range:o=s!==void 0?In(s,n.length+1):ge.get(e)===si?Cc(r,n.length+1):void 0,reverse:a}){n=mr(n);let l=Hr(n);if(!isNaN(l)&&!ND(n,l))throw new Error(`the ${e} scale has a non-monotonic domain`);return a&&(o=ca(o)),{type:"threshold",scale:_g(l<0?ca(n):n,o===void 0?[]:o).unknown(i),domain:n,range:o}}function ND(e,t){for(let n=1,i=e.length,r=e[0];n<i;++n){let s=Lr(r,r=e[n]);if(s!==0&&s!==t)return!1}return!0}function jw(e){return{type:"identity",scale:xw(ge.get(e))?pg():t=>t}}function za(e,t=j0){return e.length?[mi(e,({value:n})=>n===void 0?n:mi(n,t)),Pn(e,({value:n})=>n===void 0?n:Pn(n,t))]:[0,1]}function Qw(e,t){let n=ge.get(e);return(n===Lo||n===No||n===Do?UD:za)(t)}function UD(e){return[0,e.length?Pn(e,({value:t})=>t===void 0?t:Pn(t,j0)):1]}function FD(e,t){let n=e.find(({radius:o})=>o!==void 0);if(n!==void 0)return[0,n.radius];let i=Ir(e,.5,({value:o})=>o===void 0?NaN:Ir(o,.25,Co)),r=t.map(o=>3*Math.sqrt(o/i)),s=30/Pn(r);return s<1?r.map(o=>o*s):r}function OD(e,t){let n=kl(e,({value:s})=>s===void 0?NaN:kl(s,Math.abs)),i=t.map(s=>12*s/n),r=60/Pn(i);return r<1?i.map(s=>s*r):i}function BD(e){for(let{value:t}of e)if(t!==void 0)for(let n of t){if(n>0)return za(e,Co);if(n<0)return za(e,Ea)}return[1,10]}function kD(e){let t=[];for(let{value:n}of e)if(n!==void 0)for(let i of n)t.push(i);return t}function Rc(e){return(t,n)=>i=>e(t+i*(n-t))}var Dy=0,Ny;function tT(){let e=Dy;return Dy=0,Ny=void 0,e}function jn(e){e!==Ny&&(Ny=e,console.warn(e),++Dy)}function Zf(e,t,n,i,{type:r,nice:s,clamp:o,domain:a=za(i),unknown:l,pivot:c=0,scheme:u,range:h,symmetric:f=!0,interpolate:d=ge.get(e)===si?u==null&&h!==void 0?uo:ka(u!==void 0?u:"rdbu"):$e,reverse:p}){c=+c,a=mr(a);let[y,g]=a;if(a.length>2&&jn(`Warning: the diverging ${e} scale domain contains extra elements.`),Lr(y,g)<0&&([y,g]=[g,y],p=!p),y=Math.min(y,c),g=Math.max(g,c),typeof d!="function"&&(d=Iy(d)),h!==void 0&&(d=d.length===1?Rc(d)(...h):_s(d,h)),p&&(d=Py(d)),f){let m=n.apply(c),x=m-n.apply(y),S=n.apply(g)-m;x<S?y=n.invert(m-S):x>S&&(g=n.invert(m+x))}return t.domain([y,c,g]).unknown(l).interpolator(d),o&&t.clamp(o),s&&t.nice(s),{type:r,domain:[y,g],pivot:c,interpolate:d,scale:t}}function eT(e,t,n){return Zf(e,bg(),zD,t,n)}function nT(e,t,n){return Uy(e,t,{...n,exponent:.5})}function Uy(e,t,{exponent:n=1,...i}){return Zf(e,wg().exponent(n=+n),HD(n),t,{...i,type:"diverging-pow"})}function iT(e,t,{base:n=10,pivot:i=1,domain:r=za(t,i<0?Ea:Co),...s}){return Zf(e,Mg().base(n=+n),GD,t,{domain:r,pivot:i,...s})}function rT(e,t,{constant:n=1,...i}){return Zf(e,Sg().constant(n=+n),WD(n),t,i)}var zD={apply(e){return e},invert(e){return e}},GD={apply:Math.log,invert:Math.exp},VD={apply(e){return Math.sign(e)*Math.sqrt(Math.abs(e))},invert(e){return Math.sign(e)*(e*e)}};function HD(e){return e===.5?VD:{apply(t){return Math.sign(t)*Math.pow(Math.abs(t),e)},invert(t){return Math.sign(t)*Math.pow(Math.abs(t),1/e)}}}function WD(e){return{apply(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))},invert(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}}function sT(e,t,n,i){return Ga(e,t,n,i)}function oT(e,t,n){return sT(e,OM(),t,n)}function aT(e,t,n){return sT(e,BM(),t,n)}var Va=Symbol("ordinal");function cT(e,t,n,{type:i,interval:r,domain:s,range:o,reverse:a,hint:l}){return r=gr(r,i),s===void 0&&(s=pT(n,r,e)),(i==="categorical"||i===Va)&&(i="ordinal"),a&&(s=ca(s)),s=t.domain(s).domain(),o!==void 0&&(typeof o=="function"&&(o=o(s)),t.range(o)),{type:i,domain:s,range:o,scale:t,hint:l,interval:r}}function uT(e,t,{type:n,interval:i,domain:r,range:s,scheme:o,unknown:a,...l}){i=gr(i,n),r===void 0&&(r=pT(t,i,e));let c;if(ge.get(e)===Fa)c=$D(t),s=s===void 0?XD(c):me(s,Oa);else if(ge.get(e)===si&&(s===void 0&&(n==="ordinal"||n===Va)&&(s=Vw(r,o),s!==void 0&&(o=void 0)),o===void 0&&s===void 0&&(o=n==="ordinal"?"turbo":"observable10"),o!==void 0))if(s!==void 0){let u=ka(o),h=s[0],f=s[1]-s[0];s=({length:d})=>In(p=>u(h+f*p),d)}else s=Cy(o);if(a===xf)throw new Error(`implicit unknown on ${e} scale is not supported`);return cT(e,vf().unknown(a),t,{...l,type:n,domain:r,range:s,hint:c})}function fT(e,t,{align:n=.5,padding:i=.5,...r}){return dT(IM().align(n).padding(i),t,r,e)}function hT(e,t,{align:n=.5,padding:i=.1,paddingInner:r=i,paddingOuter:s=e==="fx"||e==="fy"?0:i,...o}){return dT(Ta().align(n).paddingInner(r).paddingOuter(s),t,o,e)}function dT(e,t,n,i){let{round:r}=n;return r!==void 0&&e.round(r=!!r),e=cT(i,e,t,n),e.round=r,e}function pT(e,t,n){let i=new nr;for(let{value:r,domain:s}of e){if(s!==void 0)return s();if(r!==void 0)for(let o of r)i.add(o)}if(t!==void 0){let[r,s]=pn(i).map(t.floor,t);return t.range(r,t.offset(s))}if(i.size>1e4&&ge.get(n)===Ri)throw new Error(`implicit ordinal domain of ${n} scale has more than 10,000 values`);return ra(i,Mn)}function lT(e,t){let n;for(let{hint:i}of e){let r=i?.[t];if(r!==void 0){if(n===void 0)n=r;else if(n!==r)return}}return n}function $D(e){return{fill:lT(e,"fill"),stroke:lT(e,"stroke")}}function XD(e){return ln(e.fill)?pS:dS}function Pc(e,{label:t,inset:n=0,insetTop:i=n,insetRight:r=n,insetBottom:s=n,insetLeft:o=n,round:a,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,facet:{label:p=t}={},...y}={}){let g={};for(let[m,x]of e){let S=y[m],v=ZD(m,x,{round:ge.get(m)===Ri?a:void 0,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,...S});if(v){let{label:M=m==="fx"||m==="fy"?p:t,percent:b,transform:_,inset:w,insetTop:R=w!==void 0?w:m==="y"?i:0,insetRight:C=w!==void 0?w:m==="x"?r:0,insetBottom:A=w!==void 0?w:m==="y"?s:0,insetLeft:L=w!==void 0?w:m==="x"?o:0}=S||{};if(_==null)_=void 0;else if(typeof _!="function")throw new Error("invalid scale transform; not a function");v.percent=!!b,v.label=M===void 0?qD(x,v):M,v.transform=_,m==="x"||m==="fx"?(v.insetLeft=+L,v.insetRight=+C):(m==="y"||m==="fy")&&(v.insetTop=+R,v.insetBottom=+A),g[m]=v}}return g}function Oy(e){let t={},n={scales:t};for(let[i,r]of Object.entries(e)){let{scale:s,type:o,interval:a,label:l}=r;t[i]=QD(r),n[i]=s,s.type=o,a!=null&&(s.interval=a),l!=null&&(s.label=l)}return n}function _T(e,t){let{x:n,y:i,fx:r,fy:s}=e,o=r||s?Jf(t):t;r&&mT(r,o),s&&gT(s,o);let a=r||s?By(e,t):t;n&&mT(n,a),i&&gT(i,a)}function qD(e=[],t){let n;for(let{label:i}of e)if(i!==void 0){if(n===void 0)n=i;else if(n!==i)return}if(n!==void 0)return!xr(t)&&t.percent&&(n=`${n} (%)`),{inferred:!0,toString:()=>n}}function vT(e){return Math.sign(Hr(e.domain()))*Math.sign(Hr(e.range()))}function Jf(e){let{marginTop:t,marginRight:n,marginBottom:i,marginLeft:r,width:s,height:o,facet:{marginTop:a,marginRight:l,marginBottom:c,marginLeft:u}}=e;return{marginTop:Math.max(t,a),marginRight:Math.max(n,l),marginBottom:Math.max(i,c),marginLeft:Math.max(r,u),width:s,height:o}}function By({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Jf(n);return{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:e?e.scale.bandwidth()+o+r:a,height:t?t.scale.bandwidth()+i+s:l,facet:{width:a,height:l}}}function mT(e,t){if(e.range===void 0){let{insetLeft:n,insetRight:i}=e,{width:r,marginLeft:s=0,marginRight:o=0}=t,a=s+n,l=r-o-i;e.range=[a,Math.max(a,l)],xr(e)||(e.range=MT(e)),e.scale.range(e.range)}bT(e)}function gT(e,t){if(e.range===void 0){let{insetTop:n,insetBottom:i}=e,{height:r,marginTop:s=0,marginBottom:o=0}=t,a=s+n,l=r-o-i;e.range=[Math.max(a,l),a],xr(e)?e.range.reverse():e.range=MT(e),e.scale.range(e.range)}bT(e)}function bT(e){e.round===void 0&&JD(e)&&YD(e)<=30&&e.scale.round(!0)}function YD({scale:e}){let t=e.domain().length,[n,i]=e.range(),r=e.paddingInner?e.paddingInner():1,s=e.paddingOuter?e.paddingOuter():e.padding(),o=t-r,a=Math.abs(i-n)/Math.max(1,o+s*2);return(a-Math.floor(a))*o}function MT(e){let t=e.scale.domain().length+ky(e);if(!(t>2))return e.range;let[n,i]=e.range;return Array.from({length:t},(r,s)=>n+s/(t-1)*(i-n))}function ZD(e,t=[],n={}){let i=KD(e,t,n);if(n.type===void 0&&n.domain===void 0&&n.range===void 0&&n.interval==null&&e!=="fx"&&e!=="fy"&&xr({type:i})){let r=t.map(({value:s})=>s).filter(s=>s!==void 0);r.some(Ue)?jn(`Warning: some data associated with the ${e} scale are dates. Dates are typically associated with a "utc" or "time" scale rather than a "${Ha(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., d3.utcDay), or you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`):r.some(lw)?jn(`Warning: some data associated with the ${e} scale are strings that appear to be dates (e.g., YYYY-MM-DD). If these strings represent dates, you should parse them to Date objects. Dates are typically associated with a "utc" or "time" scale rather than a "${Ha(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`):r.some(cw)&&jn(`Warning: some data associated with the ${e} scale are strings that appear to be numbers. If these strings represent numbers, you should parse or coerce them to numbers. Numbers are typically associated with a "linear" scale rather than a "${Ha(i)}" scale. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., 1 for integers), or you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`)}switch(n.type=i,i){case"diverging":case"diverging-sqrt":case"diverging-pow":case"diverging-log":case"diverging-symlog":case"cyclical":case"sequential":case"linear":case"sqrt":case"threshold":case"quantile":case"pow":case"log":case"symlog":n=Kf(t,n,Nn);break;case"identity":switch(ge.get(e)){case Ri:n=Kf(t,n,Nn);break;case Fa:n=Kf(t,n,jD);break}break;case"utc":case"time":n=Kf(t,n,uy);break}switch(i){case"diverging":return eT(e,t,n);case"diverging-sqrt":return nT(e,t,n);case"diverging-pow":return Uy(e,t,n);case"diverging-log":return iT(e,t,n);case"diverging-symlog":return rT(e,t,n);case"categorical":case"ordinal":case Va:return uT(e,t,n);case"cyclical":case"sequential":case"linear":return Xw(e,t,n);case"sqrt":return qw(e,t,n);case"threshold":return Yf(e,t,n);case"quantile":return Kw(e,t,n);case"quantize":return Jw(e,t,n);case"pow":return Ly(e,t,n);case"log":return Yw(e,t,n);case"symlog":return Zw(e,t,n);case"utc":return aT(e,t,n);case"time":return oT(e,t,n);case"point":return fT(e,t,n);case"band":return hT(e,t,n);case"identity":return jw(e);case void 0:return;default:throw new Error(`unknown scale type: ${i}`)}}function Ha(e){return typeof e=="symbol"?e.description:e}function yT(e){return typeof e=="string"?`${e}`.toLowerCase():e}var xT={toString:()=>"projection"};function KD(e,t,{type:n,domain:i,range:r,scheme:s,pivot:o,projection:a}){if(n=yT(n),e==="fx"||e==="fy")return"band";(e==="x"||e==="y")&&a!=null&&(n=xT);for(let u of t){let h=yT(u.type);if(h!==void 0){if(n===void 0)n=h;else if(n!==h)throw new Error(`scale incompatible with channel: ${n} !== ${h}`)}}if(n===xT)return;if(n!==void 0)return n;if(i===void 0&&!t.some(({value:u})=>u!==void 0))return;let l=ge.get(e);if(l===Lo)return"sqrt";if(l===No||l===Do)return"linear";if(l===Fa)return"ordinal";let c=(i??r)?.length;if(c<2||c>2)return Fy(l);if(i!==void 0){if(py(i))return Fy(l);if(Ue(i))return"utc"}else{let u=t.map(({value:h})=>h).filter(h=>h!==void 0);if(u.some(py))return Fy(l);if(u.some(Ue))return"utc"}if(l===si){if(o!=null||Hw(s))return"diverging";if(Gw(s))return"categorical"}return"linear"}function Fy(e){switch(e){case Ri:return"point";case si:return Va;default:return"ordinal"}}function xr({type:e}){return e==="ordinal"||e==="point"||e==="band"||e===Va}function ky({type:e}){return e==="threshold"}function JD({type:e}){return e==="point"||e==="band"}function Is(e){if(e===void 0)return!0;let t=e.domain(),n=e(t[0]);for(let i=1,r=t.length;i<r;++i)if(e(t[i])-n)return!1;return!0}function Kf(e,{domain:t,...n},i){for(let r of e)r.value!==void 0&&(t===void 0&&(t=r.value?.domain),r.value=i(r.value));return{domain:t===void 0?t:i(t),...n}}function jD(e){return me(e,Oa)}function ST(e){return t=>{if(!ge.has(t=`${t}`))throw new Error(`unknown scale: ${t}`);return e[t]}}function QD({scale:e,type:t,domain:n,range:i,interpolate:r,interval:s,transform:o,percent:a,pivot:l}){if(t==="identity")return{type:"identity",apply:u=>u,invert:u=>u};let c=e.unknown?e.unknown():void 0;return{type:t,domain:Es(n),...i!==void 0&&{range:Es(i)},...o!==void 0&&{transform:o},...a&&{percent:a},...c!==void 0&&{unknown:c},...s!==void 0&&{interval:s},...r!==void 0&&{interpolate:r},...e.clamp&&{clamp:e.clamp()},...l!==void 0&&{pivot:l,symmetric:!1},...e.base&&{base:e.base()},...e.exponent&&{exponent:e.exponent()},...e.constant&&{constant:e.constant()},...e.align&&{align:e.align(),round:e.round()},...e.padding&&(e.paddingInner?{paddingInner:e.paddingInner(),paddingOuter:e.paddingOuter()}:{padding:e.padding()}),...e.bandwidth&&{bandwidth:e.bandwidth(),step:e.step()},apply:u=>e(u),...e.invert&&{invert:u=>e.invert(u)}}}function TT(e,t){let{fx:n,fy:i}=Pc(e,t),r=n?.scale.domain(),s=i?.scale.domain();return r&&s?Av(r,s).map(([o,a],l)=>({x:o,y:a,i:l})):r?r.map((o,a)=>({x:o,i:a})):s?s.map((o,a)=>({y:o,i:a})):void 0}function ET(e,{x:t,y:n}){return t&&=Wy(t),n&&=Wy(n),e.filter(t&&n?i=>t.has(i.x)&&n.has(i.y):t?i=>t.has(i.x):i=>n.has(i.y)).sort(t&&n?(i,r)=>t.get(i.x)-t.get(r.x)||n.get(i.y)-n.get(r.y):t?(i,r)=>t.get(i.x)-t.get(r.x):(i,r)=>n.get(i.y)-n.get(r.y))}function Qf(e,{fx:t,fy:n}){let i=Fn(e),r=t?.value,s=n?.value;return t&&n?Dr(i,o=>(o.fx=r[o[0]],o.fy=s[o[0]],o),o=>r[o],o=>s[o]):t?Dr(i,o=>(o.fx=r[o[0]],o),o=>r[o]):Dr(i,o=>(o.fy=s[o[0]],o),o=>s[o])}function AT(e,t,{marginTop:n,marginLeft:i}){let r=e?({x:o})=>e(o)-i:()=>0,s=t?({y:o})=>t(o)-n:()=>0;return function(o){this.tagName==="svg"?(this.setAttribute("x",r(o)),this.setAttribute("y",s(o))):this.setAttribute("transform",`translate(${r(o)},${s(o)})`)}}function CT(e){let t=[],n=new Uint32Array(Ui(e,i=>i.length));for(let i of e){let r=0;for(let s of e)i!==s&&(n.set(s,r),r+=s.length);t.push(n.slice(0,r))}return t}var tN=new Map([["top",zy],["right",Hy],["bottom",Gy],["left",Vy],["top-left",jf(zy,Vy)],["top-right",jf(zy,Hy)],["bottom-left",jf(Gy,Vy)],["bottom-right",jf(Gy,Hy)],["top-empty",nN],["right-empty",sN],["bottom-empty",iN],["left-empty",rN],["empty",oN]]);function RT(e){if(e==null)return null;let t=tN.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid facet anchor: ${e}`)}var wT=new WeakMap;function Wy(e){let t=wT.get(e);return t||wT.set(e,t=new pi(me(e,(n,i)=>[n,i]))),t}function Ls(e,t){return Wy(e).get(t)}function eN(e,t,n){return t=Ai(t),n=Ai(n),e.find(i=>Object.is(Ai(i.x),t)&&Object.is(Ai(i.y),n))}function th(e,t,n){return eN(e,t,n)?.empty}function zy(e,{y:t},{y:n}){return t?Ls(t,n)===0:!0}function Gy(e,{y:t},{y:n}){return t?Ls(t,n)===t.length-1:!0}function Vy(e,{x:t},{x:n}){return t?Ls(t,n)===0:!0}function Hy(e,{x:t},{x:n}){return t?Ls(t,n)===t.length-1:!0}function nN(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ls(t,i);if(s>0)return th(e,n,t[s-1])}function iN(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ls(t,i);if(s<t.length-1)return th(e,n,t[s+1])}function rN(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ls(t,n);if(s>0)return th(e,t[s-1],i)}function sN(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ls(t,n);if(s<t.length-1)return th(e,t[s+1],i)}function oN(e,t,{empty:n}){return n}function jf(e,t){return function(){return e.apply(null,arguments)&&t.apply(null,arguments)}}function eh(e,{channels:{fx:t,fy:n},groups:i}){return t&&n?e.map(({x:r,y:s})=>i.get(r)?.get(s)??[]):t?e.map(({x:r})=>i.get(r)??[]):e.map(({y:r})=>i.get(r)??[])}var PT=Math.PI,Zr=2*PT,$y=.618;function IT({projection:e,inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={},o){if(e==null)return;if(typeof e.stream=="function")return e;let a,l,c="frame";if(zi(e)){let M;if({type:e,domain:l,inset:M,insetTop:n=M!==void 0?M:n,insetRight:i=M!==void 0?M:i,insetBottom:r=M!==void 0?M:r,insetLeft:s=M!==void 0?M:s,clip:c=c,...a}=e,e==null)return}typeof e!="function"&&({type:e}=Xy(e));let{width:u,height:h,marginLeft:f,marginRight:d,marginTop:p,marginBottom:y}=o,g=u-f-d-s-i,m=h-p-y-n-r;if(e=e?.({width:g,height:m,clip:c,...a}),e==null)return;c=aN(c,f,p,u-d,h-y);let x=f+s,S=p+n,v;if(l!=null){let[[M,b],[_,w]]=ic(e).bounds(l),R=Math.min(g/(_-M),m/(w-b));R>0?(x-=(R*(M+_)-g)/2,S-=(R*(b+w)-m)/2,v=rc({point(C,A){this.stream.point(C*R+x,A*R+S)}})):jn("Warning: the projection could not be fit to the specified domain; using the default scale.")}return v??=x===0&&S===0?LT():rc({point(M,b){this.stream.point(M+x,b+S)}}),{stream:M=>e.stream(v.stream(c(M)))}}function Xy(e){switch(`${e}`.toLowerCase()){case"albers-usa":return Hi(U1,.7463,.4673);case"albers":return nh(Jm,.7463,.4673);case"azimuthal-equal-area":return Hi(B1,4,4);case"azimuthal-equidistant":return Hi(z1,Zr,Zr);case"conic-conformal":return nh(H1,Zr,Zr);case"conic-equal-area":return nh(nc,6.1702,2.9781);case"conic-equidistant":return nh($1,7.312,3.6282);case"equal-earth":return Hi(q1,5.4133,2.6347);case"equirectangular":return Hi(W1,Zr,PT);case"gnomonic":return Hi(Z1,3.4641,3.4641);case"identity":return{type:LT};case"reflect-y":return{type:lN};case"mercator":return Hi(G1,Zr,Zr);case"orthographic":return Hi(J1,2,2);case"stereographic":return Hi(Q1,2,2);case"transverse-mercator":return Hi(eM,Zr,Zr);default:throw new Error(`unknown projection type: ${e}`)}}function aN(e,t,n,i,r){if(e===!1||e==null||typeof e=="number")return s=>s;if(e===!0&&(e="frame"),`${e}`.toLowerCase()==="frame")return qm(t,n,i,r);throw new Error(`unknown projection clip type: ${e}`)}function Hi(e,t,n){return{type:({width:i,height:r,rotate:s,precision:o=.15,clip:a})=>{let l=e();return o!=null&&l.precision?.(o),s!=null&&l.rotate?.(s),typeof a=="number"&&l.clipAngle?.(a),i!=null&&(l.scale(Math.min(i/t,r/n)),l.translate([i/2,r/2])),l},aspectRatio:n/t}}function nh(e,t,n){let{type:i,aspectRatio:r}=Hi(e,t,n);return{type:s=>{let{parallels:o,domain:a,width:l,height:c}=s,u=i(s);return o!=null&&(u.parallels(o),a===void 0&&l!=null&&u.fitSize([l,c],{type:"Sphere"})),u},aspectRatio:r}}var LT=ri({stream:e=>e}),lN=ri(rc({point(e,t){this.stream.point(e,-t)}}));function DT(e,t,n,i){let r=n[e],s=n[t],o=r.length,a=n[e]=new Float64Array(o).fill(NaN),l=n[t]=new Float64Array(o).fill(NaN),c,u=i.stream({point(h,f){a[c]=h,l[c]=f}});for(c=0;c<o;++c)u.point(r[c],s[c])}function NT({projection:e}={}){return e==null?!1:typeof e.stream=="function"?!0:(zi(e)&&(e=e.type),e!=null)}function UT(e){if(typeof e?.stream=="function")return $y;if(zi(e)){let t,n;if({domain:t,type:e,...n}=e,t!=null&&e!=null){let i=typeof e=="string"?Xy(e).type:e,[[r,s],[o,a]]=ic(i({...n,width:100,height:100})).bounds(t),l=(a-s)/(o-r);return l&&isFinite(l)?l<.2?.2:l>5?5:l:$y}}if(e!=null){if(typeof e!="function"){let{aspectRatio:t}=Xy(e);if(t)return t}return $y}}function FT(e){let t=[],n=[],i={scale:"x",value:t},r={scale:"y",value:n},s={point(o,a){t.push(o),n.push(a)},lineStart(){},lineEnd(){},polygonStart(){},polygonEnd(){},sphere(){}};for(let o of e.value)vs(o,s);return[i,r]}function OT({x:e,y:t}){if(e||t)return e??=n=>n,t??=n=>n,rc({point(n,i){this.stream.point(e(n),t(i))}})}function Wa(e={}){let{document:t=typeof window<"u"?window.document:void 0,clip:n}=e;return{document:t,clip:Xf(n)}}function se(e,{document:t}){return Fi(ua(e).call(t.documentElement))}var ih=Symbol("unset");function rh(e){return(e.length===1?cN:uN)(e)}function cN(e){let t,n=ih;return i=>(Object.is(n,i)||(n=i,t=e(i)),t)}function uN(e){let t,n;return(...i)=>((n?.length!==i.length||n.some((r,s)=>!Object.is(r,i[s])))&&(n=i,t=e(...i)),t)}var fN=rh(e=>new Intl.NumberFormat(e)),c7=rh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{month:t}})),u7=rh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{weekday:t}}));function hN(e="en-US"){let t=fN(e);return n=>n!=null&&!isNaN(n)?t.format(n):void 0}function dN(e){return Of(e,"Invalid Date")}function pN(e="en-US"){let t=hN(e);return n=>(n instanceof Date?dN:typeof n=="number"?t:Fe)(n)}var _r=pN();var mn=(typeof window<"u"?window.devicePixelRatio>1:typeof it>"u")?0:.5,mN=0;function kT(){return`plot-clip-${++mN}`}function zT(e,{title:t,href:n,ariaLabel:i,ariaDescription:r,ariaHidden:s,target:o,fill:a,fillOpacity:l,stroke:c,strokeWidth:u,strokeOpacity:h,strokeLinejoin:f,strokeLinecap:d,strokeMiterlimit:p,strokeDasharray:y,strokeDashoffset:g,opacity:m,mixBlendMode:x,imageFilter:S,paintOrder:v,pointerEvents:M,shapeRendering:b,channels:_},{ariaLabel:w,fill:R="currentColor",fillOpacity:C,stroke:A="none",strokeOpacity:L,strokeWidth:B,strokeLinecap:P,strokeLinejoin:D,strokeMiterlimit:z,paintOrder:U}){R===null&&(a=null,l=null),A===null&&(c=null,h=null),ln(R)?!ln(A)&&(!ln(a)||_?.fill)&&(A="none"):ln(A)&&(!ln(c)||_?.stroke)&&(R="none");let[Z,F]=Kn(a,R),[V,q]=Le(l,C),[st,lt]=Kn(c,A),[$,at]=Le(h,L),[ft,ot]=Le(m);Io(lt)||(u===void 0&&(u=B),d===void 0&&(d=P),f===void 0&&(f=D),p===void 0&&!hw(f)&&(p=z),!Io(F)&&v===void 0&&(v=U));let[rt,K]=Le(u);return R!==null&&(e.fill=De(F,"currentColor"),e.fillOpacity=Ic(q,1)),A!==null&&(e.stroke=De(lt,"none"),e.strokeWidth=Ic(K,1),e.strokeOpacity=Ic(at,1),e.strokeLinejoin=De(f,"miter"),e.strokeLinecap=De(d,"butt"),e.strokeMiterlimit=Ic(p,4),e.strokeDasharray=De(y,"none"),e.strokeDashoffset=De(g,"0")),e.target=Fe(o),e.ariaLabel=Fe(w),e.ariaDescription=Fe(r),e.ariaHidden=Fe(s),e.opacity=Ic(ot,1),e.mixBlendMode=De(x,"normal"),e.imageFilter=De(S,"none"),e.paintOrder=De(v,"normal"),e.pointerEvents=De(M,"auto"),e.shapeRendering=De(b,"auto"),{title:{value:t,optional:!0,filter:null},href:{value:n,optional:!0,filter:null},ariaLabel:{value:i,optional:!0,filter:null},fill:{value:Z,scale:"auto",optional:!0},fillOpacity:{value:V,scale:"auto",optional:!0},stroke:{value:st,scale:"auto",optional:!0},strokeOpacity:{value:$,scale:"auto",optional:!0},strokeWidth:{value:rt,optional:!0},opacity:{value:ft,scale:"auto",optional:!0}}}function gN(e,t){t&&e.filter(n=>xc(t[n])).append("title").call(xN,t)}function yN(e,t){t&&e.filter(([n])=>xc(t[n])).append("title").call(_N,t)}function xN(e,t){t&&e.text(n=>_r(t[n]))}function _N(e,t){t&&e.text(([n])=>_r(t[n]))}function Sn(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",f=>i[f]),s&&Wt(e,"fill",f=>s[f]),o&&Wt(e,"fill-opacity",f=>o[f]),a&&Wt(e,"stroke",f=>a[f]),l&&Wt(e,"stroke-opacity",f=>l[f]),c&&Wt(e,"stroke-width",f=>c[f]),u&&Wt(e,"opacity",f=>u[f]),h&&GT(e,f=>h[f],t),n||gN(e,r)}function sh(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",([f])=>i[f]),s&&Wt(e,"fill",([f])=>s[f]),o&&Wt(e,"fill-opacity",([f])=>o[f]),a&&Wt(e,"stroke",([f])=>a[f]),l&&Wt(e,"stroke-opacity",([f])=>l[f]),c&&Wt(e,"stroke-width",([f])=>c[f]),u&&Wt(e,"opacity",([f])=>u[f]),h&&GT(e,([f])=>h[f],t),n||yN(e,r)}function vN({ariaLabel:e,title:t,fill:n,fillOpacity:i,stroke:r,strokeOpacity:s,strokeWidth:o,opacity:a,href:l},{tip:c}){return[e,c?void 0:t,n,i,r,s,o,a,l].filter(u=>u!==void 0)}function bN(e,t,n){let i=so(e,r=>t[r]);return n===void 0&&i.size>1+e.length>>1&&jn("Warning: the implicit z channel has high cardinality. This may occur when the fill or stroke channel is associated with quantitative data rather than ordinal or categorical data. You can suppress this warning by setting the z option explicitly; if this data represents a single series, set z to null."),i.values()}function*oh(e,t,n,i){let{z:r}=n,{z:s}=i,o=vN(i,n),a=[...t,...o];for(let l of s?bN(e,s,r):[e]){let c,u;t:for(let h of l){for(let f of a)if(!Ei(f[h])){u&&u.push(-1);continue t}if(c===void 0){u&&(yield u),c=o.map(f=>Ai(f[h])),u=[h];continue}u.push(h);for(let f=0;f<o.length;++f)if(Ai(o[f][h])!==c[f]){yield u,c=o.map(p=>Ai(p[h])),u=[h];continue t}}u&&(yield u)}}function MN(e,t,n,i){let r,{clip:s=i.clip}=t;s==="frame"?(e=se("svg:g",i).each(function(){this.appendChild(e.node()),e.node=()=>this}),r=wN(i,n)):s&&(r=EN(s,i)),Wt(e,"aria-label",t.ariaLabel),Wt(e,"aria-description",t.ariaDescription),Wt(e,"aria-hidden",t.ariaHidden),Wt(e,"clip-path",r)}function SN(e){let t=new WeakMap;return(n,i)=>{let r=t.get(n);if(!r){let s=kT();Fi(n.ownerSVGElement).append("clipPath").attr("id",s).call(e,n,i),t.set(n,r=`url(#${s})`)}return r}}var wN=SN((e,t,n)=>{let{width:i,height:r,marginLeft:s,marginRight:o,marginTop:a,marginBottom:l}=n;e.append("rect").attr("x",s).attr("y",a).attr("width",i-o-s).attr("height",r-a-l)}),BT=new WeakMap,TN={type:"Sphere"};function EN(e,t){let n,i;if((n=BT.get(t))||BT.set(t,n=new WeakMap),e.type==="Sphere"&&(e=TN),!(i=n.get(e))){let r=kT();Fi(t.ownerSVGElement).append("clipPath").attr("id",r).append("path").attr("d",t.path()(e)),n.set(e,i=`url(#${r})`)}return i}function Be(e,t,n,i){MN(e,t,n,i),Wt(e,"class",t.className),Wt(e,"fill",t.fill),Wt(e,"fill-opacity",t.fillOpacity),Wt(e,"stroke",t.stroke),Wt(e,"stroke-width",t.strokeWidth),Wt(e,"stroke-opacity",t.strokeOpacity),Wt(e,"stroke-linejoin",t.strokeLinejoin),Wt(e,"stroke-linecap",t.strokeLinecap),Wt(e,"stroke-miterlimit",t.strokeMiterlimit),Wt(e,"stroke-dasharray",t.strokeDasharray),Wt(e,"stroke-dashoffset",t.strokeDashoffset),Wt(e,"shape-rendering",t.shapeRendering),Wt(e,"filter",t.imageFilter),Wt(e,"paint-order",t.paintOrder);let{pointerEvents:r=i.pointerSticky===!1?"none":void 0}=t;Wt(e,"pointer-events",r)}function Ne(e,t){AN(e,"mix-blend-mode",t.mixBlendMode),Wt(e,"opacity",t.opacity)}function GT(e,t,n){e.each(function(i){let r=t(i);if(r!=null){let s=this.ownerDocument.createElementNS(ys.svg,"a");s.setAttribute("fill","inherit"),s.setAttributeNS(ys.xlink,"href",r),n!=null&&s.setAttribute("target",n),this.parentNode.insertBefore(s,this).appendChild(this)}})}function Wt(e,t,n){n!=null&&e.attr(t,n)}function AN(e,t,n){n!=null&&e.style(t,n)}function ke(e,t,{x:n,y:i},r=mn,s=mn){r+=t.dx,s+=t.dy,n?.bandwidth&&(r+=n.bandwidth()/2),i?.bandwidth&&(s+=i.bandwidth()/2),(r||s)&&e.attr("transform",`translate(${r},${s})`)}function De(e,t){if((e=Fe(e))!==t)return e}function Ic(e,t){if((e=Oe(e))!==t)return e}var CN=/^-?([_a-z]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])([_a-z0-9-]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])*$/i;function $a(e){if(e===void 0)return"plot-d6a7b5";if(e=`${e}`,!CN.test(e))throw new Error(`invalid class name: ${e}`);return e}function Xa(e,t){if(typeof t=="string")e.property("style",t);else if(t!=null)for(let n of e)Object.assign(n.style,t)}function vr({frameAnchor:e},{width:t,height:n,marginTop:i,marginRight:r,marginBottom:s,marginLeft:o}){return[/left$/.test(e)?o:/right$/.test(e)?t-r:(o+t-r)/2,/^top/.test(e)?i:/^bottom/.test(e)?n-s:(i+n-s)/2]}var ye=class{constructor(t,n={},i={},r){let{facet:s="auto",facetAnchor:o,fx:a,fy:l,sort:c,dx:u=0,dy:h=0,margin:f=0,marginTop:d=f,marginRight:p=f,marginBottom:y=f,marginLeft:g=f,className:m,clip:x=r?.clip,channels:S,tip:v,render:M}=i;if(this.data=t,this.sort=As(c)?c:null,this.initializer=$r(i).initializer,this.transform=this.initializer?i.transform:Uo(i).transform,s===null||s===!1?this.facet=null:(this.facet=Un(s===!0?"include":s,"facet",["auto","include","exclude","super"]),this.fx=t===Pa&&typeof a=="string"?[a]:a,this.fy=t===Pa&&typeof l=="string"?[l]:l),this.facetAnchor=RT(o),n=my(n),S!==void 0&&(n={...RN(S),...n}),r!==void 0&&(n={...zT(this,i,r),...n}),this.channels=Object.fromEntries(Object.entries(n).map(([b,_])=>{if(La(_.value)){let{value:w,label:R=_.label,scale:C=_.scale}=_.value;_={..._,label:R,scale:C,value:w}}if(t===Pa&&typeof _.value=="string"){let{value:w}=_;_={..._,value:[w]}}return[b,_]}).filter(([b,{value:_,optional:w}])=>{if(_!=null)return!0;if(w)return!1;throw new Error(`missing channel value: ${b}`)})),this.dx=+u,this.dy=+h,this.marginTop=+d,this.marginRight=+p,this.marginBottom=+y,this.marginLeft=+g,this.clip=Xf(x),this.tip=PN(v),this.className=Fe(m),this.facet==="super"){if(a||l)throw new Error("super-faceting cannot use fx or fy");for(let b in this.channels){let{scale:_}=n[b];if(!(_!=="x"&&_!=="y"))throw new Error("super-faceting cannot use x or y")}}M!=null&&(this.render=Yy(M,this.render))}initialize(t,n,i){let r=Wr(this.data);t===void 0&&r!=null&&(t=[Fn(r)]);let s=t;this.transform!=null&&({facets:t,data:r}=this.transform(r,t,i),r=Wr(r)),t!==void 0&&(t.original=s);let o=Iw(this.channels,r);return this.sort!=null&&Dw(r,t,o,n,this.sort),{data:r,facets:t,channels:o}}filter(t,n,i){for(let r in n){let{filter:s=Ei}=n[r];if(s!==null){let o=i[r];t=t.filter(a=>s(o[a]))}}return t}project(t,n,i){for(let r in t)if(t[r].scale==="x"&&/^x|x$/.test(r)){let s=r.replace(/^x|x$/,"y");s in t&&t[s].scale==="y"&&DT(r,s,n,i.projection)}}scale(t,n,i){let r=Lw(t,n);return i.projection&&this.project(t,r,i),r}};function qy(...e){return e.plot=ye.prototype.plot,e}function Yy(e,t){if(e==null)return t===null?void 0:t;if(t==null)return e===null?void 0:e;if(typeof e!="function")throw new TypeError(`invalid render transform: ${e}`);if(typeof t!="function")throw new TypeError(`invalid render transform: ${t}`);return function(n,i,r,s,o,a){return e.call(this,n,i,r,s,o,(l,c,u,h,f)=>t.call(this,l,c,u,h,f,a))}}function RN(e){return Object.fromEntries(Object.entries(my(e)).map(([t,n])=>(n=typeof n=="string"?{value:n,label:t}:yr(n),n.filter===void 0&&n.scale==null&&(n={...n,filter:null}),[t,n])))}function PN(e){return e===!0?"xy":e===!1||e==null?null:typeof e=="string"?Un(e,"tip",["x","y","xy"]):e}function Fo(e,t){return e?.tip===!0?{...e,tip:t}:zi(e?.tip)&&e.tip.pointer===void 0?{...e,tip:{...e.tip,pointer:t}}:e}function HT(e,t,n={}){let i=.5-mn,r=.5+mn,s=.5+mn,o=.5-mn;for(let{marginTop:y,marginRight:g,marginBottom:m,marginLeft:x}of t)y>i&&(i=y),g>r&&(r=g),m>s&&(s=m),x>o&&(o=x);let{margin:a,marginTop:l=a!==void 0?a:i,marginRight:c=a!==void 0?a:r,marginBottom:u=a!==void 0?a:s,marginLeft:h=a!==void 0?a:o}=n;l=+l,c=+c,u=+u,h=+h;let{width:f=640,height:d=IN(e,n,{width:f,marginTopDefault:i,marginRightDefault:r,marginBottomDefault:s,marginLeftDefault:o})+Math.max(0,l-i+u-s)}=n;f=+f,d=+d;let p={width:f,height:d,marginTop:l,marginRight:c,marginBottom:u,marginLeft:h};if(e.fx||e.fy){let{margin:y,marginTop:g=y!==void 0?y:l,marginRight:m=y!==void 0?y:c,marginBottom:x=y!==void 0?y:u,marginLeft:S=y!==void 0?y:h}=n.facet??{};g=+g,m=+m,x=+x,S=+S,p.facet={marginTop:g,marginRight:m,marginBottom:x,marginLeft:S}}return p}function IN({x:e,y:t,fy:n,fx:i},{projection:r,aspectRatio:s},{width:o,marginTopDefault:a,marginRightDefault:l,marginBottomDefault:c,marginLeftDefault:u}){let h=n&&n.scale.domain().length||1,f=UT(r);if(f){let p=i?i.scale.domain().length:1,y=(1.1*h-.1)/(1.1*p-.1)*f,g=Math.max(.1,Math.min(10,y));return Math.round((o-u-l)*g+a+c)}let d=t?xr(t)?t.scale.domain().length||1:Math.max(7,17/h):1;if(s!=null){if(s=+s,!(isFinite(s)&&s>0))throw new Error(`invalid aspectRatio: ${s}`);let p=VT("y",t)/(VT("x",e)*s),y=i?i.scale.bandwidth():1,g=n?n.scale.bandwidth():1,m=y*(o-u-l)-e.insetLeft-e.insetRight;return(p*m+t.insetTop+t.insetBottom)/g+a+c}return!!(t||n)*Math.max(1,Math.min(60,d*h))*20+!!i*30+60}function VT(e,t){if(!t)throw new Error(`aspectRatio requires ${e} scale`);let{type:n,domain:i}=t,r;switch(n){case"linear":case"utc":case"time":r=Number;break;case"pow":{let a=t.scale.exponent();r=l=>Math.pow(l,a);break}case"log":r=Math.log;break;case"point":case"band":return i.length;default:throw new Error(`unsupported ${e} scale for aspectRatio: ${n}`)}let[s,o]=pn(i);return Math.abs(r(o)-r(s))}var WT=new WeakMap;function Zy(e,t,{x:n,y:i,px:r,py:s,maxRadius:o=40,channels:a,render:l,...c}={}){return o=+o,r!=null&&(n??=null,a={...a,px:{value:r,scale:"x"}}),s!=null&&(i??=null,a={...a,py:{value:s,scale:"y"}}),{x:n,y:i,channels:a,...c,render:Yy(function(u,h,f,d,p,y){p={...p,pointerSticky:!1};let g=p.ownerSVGElement,{data:m}=p.getMarkState(this),x=WT.get(g);x||WT.set(g,x={sticky:!1,roots:[],renders:[]});let S=x.renders.push(lt)-1,{x:v,y:M,fx:b,fy:_}=h,w=b?b(u.fx)-d.marginLeft:0,R=_?_(u.fy)-d.marginTop:0;v?.bandwidth&&(w+=v.bandwidth()/2),M?.bandwidth&&(R+=M.bandwidth()/2);let C=u.fi!=null,A;if(C){let ot=x.facetStates;ot||(x.facetStates=ot=new Map),A=ot.get(this),A||ot.set(this,A=new Map)}let[L,B]=vr(this,d),{px:P,py:D}=f,z=P?ot=>P[ot]:Jy(f,L),U=D?ot=>D[ot]:jy(f,B),Z,F,V,q;function st(ot,rt){if(C)if(q&&(q=cancelAnimationFrame(q)),ot==null)A.delete(u.fi);else{A.set(u.fi,rt),q=requestAnimationFrame(()=>{q=null;for(let[K,gt]of A)if(gt<rt||gt===rt&&K<u.fi){ot=null;break}lt(ot)});return}lt(ot)}function lt(ot){if(Z===ot&&V===x.sticky)return;Z=ot,V=p.pointerSticky=x.sticky;let rt=Z==null?[]:[Z];C&&(rt.fx=u.fx,rt.fy=u.fy,rt.fi=u.fi);let K=y(rt,h,f,d,p);if(F){if(C){let gt=F.parentNode,ct=F.getAttribute("transform"),J=K.getAttribute("transform");ct?K.setAttribute("transform",ct):K.removeAttribute("transform"),J?gt.setAttribute("transform",J):gt.removeAttribute("transform"),K.removeAttribute("aria-label"),K.removeAttribute("aria-description"),K.removeAttribute("aria-hidden")}F.replaceWith(K)}if(x.roots[S]=F=K,!(Z==null&&A?.size>1)){let gt=Z==null?null:ki(m)?m[Z]:m.get(Z);p.dispatchValue(gt)}return K}function $(ot){if(x.sticky||ot.pointerType==="mouse"&&ot.buttons===1)return;let[rt,K]=nb(ot);rt-=w,K-=R;let gt=rt<d.marginLeft||rt>d.width-d.marginRight?1:e,ct=K<d.marginTop||K>d.height-d.marginBottom?1:t,J=null,It=o*o;for(let pt of u){let Ot=gt*(z(pt)-rt),Ht=ct*(U(pt)-K),le=Ot*Ot+Ht*Ht;le<=It&&(J=pt,It=le)}if(J!=null&&(e!==1||t!==1)){let pt=z(J)-rt,Ot=U(J)-K;It=pt*pt+Ot*Ot}st(J,It)}function at(ot){ot.pointerType==="mouse"&&Z!=null&&(x.sticky&&x.roots.some(rt=>rt?.contains(ot.target))||(x.sticky?(x.sticky=!1,x.renders.forEach(rt=>rt(null))):(x.sticky=!0,lt(Z)),ot.stopImmediatePropagation()))}function ft(ot){ot.pointerType==="mouse"&&(x.sticky||st(null))}return g.addEventListener("pointerenter",$),g.addEventListener("pointermove",$),g.addEventListener("pointerdown",at),g.addEventListener("pointerleave",ft),lt(null)},l)}}function $T(e){return Zy(1,1,e)}function XT(e){return Zy(1,.01,e)}function Ky(e){return Zy(.01,1,e)}function Jy({x1:e,x2:t,x:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function jy({y1:e,y2:t,y:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function ah(e){return xr(e)&&e.interval===void 0?void 0:"tabular-nums"}function qT(e,t){let{label:n=e.label,tickSize:i=6,width:r=240,height:s=44+i,marginTop:o=18,marginRight:a=0,marginBottom:l=16+i,marginLeft:c=0,style:u,ticks:h=(r-c-a)/64,tickFormat:f,fontVariant:d=ah(e),round:p=!0,opacity:y,className:g}=t,m=Wa(t);g=$a(g),y=Le(y)[1],f===null&&(f=()=>null);let x=se("svg",m).attr("class",`${g}-ramp`).attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("width",r).attr("height",s).attr("viewBox",`0 0 ${r} ${s}`).call(L=>L.append("style").text(`:where(.${g}-ramp) {
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
  overflow: visible;
}
:where(.${g}-ramp text) {
  white-space: pre;
}`)).call(Xa,u),S=L=>L.selectAll(".tick line").attr("y1",o+l-s),v,M=p?(L,B)=>L.rangeRound(B):(L,B)=>L.range(B),{type:b,domain:_,range:w,interpolate:R,scale:C,pivot:A}=e;if(R){let L=w===void 0?R:_s(R.length===1?Rc(R):R,w);v=M(C.copy(),In($e(c,r-a),Math.min(_.length+(A!==void 0),w===void 0?1/0:w.length)));let B=256,P=m.document.createElement("canvas");P.width=B,P.height=1;let D=P.getContext("2d");for(let z=0,U=B-1;z<B;++z)D.fillStyle=L(z/U),D.fillRect(z,0,1,1);x.append("image").attr("opacity",y).attr("x",c).attr("y",o).attr("width",r-c-a).attr("height",s-o-l).attr("preserveAspectRatio","none").attr("xlink:href",P.toDataURL())}else if(b==="threshold"){let L=_,B=f===void 0?P=>P:typeof f=="string"?sr(f):f;v=M(dc().domain([-1,w.length-1]),[c,r-a]),x.append("g").attr("fill-opacity",y).selectAll().data(w).enter().append("rect").attr("x",(P,D)=>v(D-1)).attr("y",o).attr("width",(P,D)=>v(D)-v(D-1)).attr("height",s-o-l).attr("fill",P=>P),h=me(L,(P,D)=>D),f=P=>B(L[P],P)}else v=M(Ta().domain(_),[c,r-a]),x.append("g").attr("fill-opacity",y).selectAll().data(_).enter().append("rect").attr("x",v).attr("y",o).attr("width",Math.max(0,v.bandwidth()-1)).attr("height",s-o-l).attr("fill",C),S=()=>{};return x.append("g").attr("transform",`translate(0,${s-l})`).call(Wv(v).ticks(Array.isArray(h)?null:h,typeof f=="string"?f:void 0).tickFormat(typeof f=="function"?f:void 0).tickSize(i).tickValues(Array.isArray(h)?h:null)).attr("font-size",null).attr("font-family",null).attr("font-variant",De(d,"normal")).call(S).call(L=>L.select(".domain").remove()),n!==void 0&&x.append("text").attr("x",c).attr("y",o-6).attr("fill","currentColor").attr("font-weight","bold").text(n),x.node()}var Qy=Math.PI/180;function Oo(e,{marker:t,markerStart:n=t,markerMid:i=t,markerEnd:r=t}={}){e.markerStart=tx(n),e.markerMid=tx(i),e.markerEnd=tx(r)}function tx(e){if(e==null||e===!1)return null;if(e===!0)return ZT;if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"none":return null;case"arrow":return YT("auto");case"arrow-reverse":return YT("auto-start-reverse");case"dot":return LN;case"circle":case"circle-fill":return ZT;case"circle-stroke":return DN;case"tick":return ex("auto");case"tick-x":return ex(90);case"tick-y":return ex(0)}throw new Error(`invalid marker: ${e}`)}function YT(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("orient",e).attr("fill","none").attr("stroke",t).attr("stroke-width",1.5).attr("stroke-linecap","round").attr("stroke-linejoin","round").call(i=>i.append("path").attr("d","M-1.5,-3l3,3l-3,3")).node()}function LN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","none").call(n=>n.append("circle").attr("r",2.5)).node()}function ZT(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","var(--plot-background)").attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function DN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill","var(--plot-background)").attr("stroke",e).attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function ex(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-3 -3 6 6").attr("markerWidth",6).attr("markerHeight",6).attr("orient",e).attr("stroke",t).call(i=>i.append("path").attr("d","M0,-3v6")).node()}var NN=0;function Lc(e,t,{stroke:n},i){return jT(e,t,n&&(r=>n[r]),null,i)}function KT(e,t,{stroke:n,z:i},r){return jT(e,t,n&&(([s])=>n[s]),i,r)}var nx=1,JT=2;function UN(e,t){let n=new Uint8Array(t.length),i=e.data().filter(s=>s.length>1),r=i.length;for(let s=0,o=ih;s<r;++s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ai(t[l]))&&(n[l]|=nx)}}for(let s=r-1,o=ih;s>=0;--s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ai(t[l]))&&(n[l]|=JT)}}return([s])=>n[s]}function jT(e,{markerStart:t,markerMid:n,markerEnd:i,stroke:r},s=()=>r,o,a){if(!t&&!n&&!i)return;let l=new Map,c=o&&UN(e,o);function u(h,f,d){return function(p){if(d&&!d(p))return;let y=s(p),g=l.get(f);g||l.set(f,g=new Map);let m=g.get(y);if(!m){let x=this.parentNode.insertBefore(f(y,a),this),S=`plot-marker-${++NN}`;x.setAttribute("id",S),g.set(y,m=`url(#${S})`)}this.setAttribute(h,m)}}t&&e.each(u("marker-start",t,c&&(h=>c(h)&nx))),n&&c&&e.each(u("marker-start",n,h=>!(c(h)&nx))),n&&e.each(u("marker-mid",n)),i&&e.each(u("marker-end",i,c&&(h=>c(h)&JT)))}function qa({inset:e,insetLeft:t,insetRight:n,...i}={}){return[t,n]=QT(e,t,n),{inset:e,insetLeft:t,insetRight:n,...i}}function Dc({inset:e,insetTop:t,insetBottom:n,...i}={}){return[t,n]=QT(e,t,n),{inset:e,insetTop:t,insetBottom:n,...i}}function QT(e,t,n){return e===void 0&&t===void 0&&n===void 0?mn?[1,0]:[.5,.5]:[t,n]}function tE(e,{interval:t}){return e={...yr(e)},e.interval=Vf(e.interval===void 0?t:e.interval),e}function lh(e,t,n,i){let{[e]:r,[`${e}1`]:s,[`${e}2`]:o}=n,{value:a,interval:l}=tE(r,n);if(a==null||l==null&&!i)return n;let c=Vi(r);if(l==null){let d,p={transform:y=>d||(d=Te(y,a)),label:c};return{...n,[e]:void 0,[`${e}1`]:s===void 0?p:s,[`${e}2`]:o===void 0&&!(s===o&&i)?p:o}}let u,h;function f(d){return h!==void 0&&d===u?h:h=me(Te(u=d,a),p=>l.floor(p))}return t({...n,[e]:void 0,[`${e}1`]:s===void 0?{transform:f,label:c}:s,[`${e}2`]:o===void 0?{transform:d=>f(d).map(p=>l.offset(p)),label:c}:o})}function eE(e,t,n){let{[e]:i}=n,{value:r,interval:s}=tE(i,n);return r==null||s==null?n:t({...n,[e]:{label:Vi(i),transform:o=>{let a=me(Te(o,r),c=>s.floor(c)),l=a.map(c=>s.offset(c));return a.map(Ue(a)?(c,u)=>c==null||isNaN(c=+c)||(u=l[u],u==null)||isNaN(u=+u)?void 0:new Date((c+u)/2):(c,u)=>c==null||(u=l[u],u==null)?NaN:(+c+ +u)/2)}}})}function nE(e={}){return lh("x",qa,e,!0)}function iE(e={}){return lh("y",Dc,e,!0)}function rE(e={}){return lh("x",qa,e)}function sE(e={}){return lh("y",Dc,e)}function oE(e={}){return eE("x",qa,e)}function aE(e={}){return eE("y",Dc,e)}var lE={ariaLabel:"rule",fill:null,stroke:"currentColor"},ch=class extends ye{constructor(t,n={}){let{x:i,y1:r,y2:s,inset:o=0,insetTop:a=o,insetBottom:l=o}=n;super(t,{x:{value:i,scale:"x",optional:!0},y1:{value:r,scale:"y",optional:!0},y2:{value:s,scale:"y",optional:!0}},Fo(n,"x"),lE),this.insetTop=Oe(a),this.insetBottom=Oe(l),Oo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y1:c,y2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:g}=r,{insetTop:m,insetBottom:x}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o},mn,0).call(S=>S.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",l?v=>l[v]:(y+h-p)/2).attr("x2",l?v=>l[v]:(y+h-p)/2).attr("y1",c&&!Is(a)?v=>c[v]+m:d+m).attr("y2",u&&!Is(a)?a.bandwidth?v=>u[v]+a.bandwidth()-x:v=>u[v]-x:f-g-x).call(Sn,this,i).call(Lc,this,i,s)).node()}},uh=class extends ye{constructor(t,n={}){let{x1:i,x2:r,y:s,inset:o=0,insetRight:a=o,insetLeft:l=o}=n;super(t,{y:{value:s,scale:"y",optional:!0},x1:{value:i,scale:"x",optional:!0},x2:{value:r,scale:"x",optional:!0}},Fo(n,"y"),lE),this.insetRight=Oe(a),this.insetLeft=Oe(l),Oo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{y:l,x1:c,x2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:g}=r,{insetLeft:m,insetRight:x}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{y:l&&a},0,mn).call(S=>S.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",c&&!Is(o)?v=>c[v]+m:y+m).attr("x2",u&&!Is(o)?o.bandwidth?v=>u[v]+o.bandwidth()-x:v=>u[v]-x:h-p-x).attr("y1",l?v=>l[v]:(d+f-g)/2).attr("y2",l?v=>l[v]:(d+f-g)/2).call(Sn,this,i).call(Lc,this,i,s)).node()}};function Nc(e,t){let{x:n=Ae,y:i,y1:r,y2:s,...o}=sE(t);return[r,s]=cE(i,r,s),new ch(e,{...o,x:n,y1:r,y2:s})}function Bo(e,t){let{y:n=Ae,x:i,x1:r,x2:s,...o}=rE(t);return[r,s]=cE(i,r,s),new uh(e,{...o,y:n,x1:r,x2:s})}function cE(e,t,n){if(e==null){if(t===void 0){if(n!==void 0)return[0,n]}else if(n===void 0)return[0,t]}else{if(t===void 0)return n===void 0?[0,e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}function Ya(e,...t){let n=t.length;for(let i=0,r=!0;i<n;++i)typeof t[i]!="function"&&(r&&(e=e.slice(),r=!1),e.splice(i,2,e[i]+t[i]+e[i+1]),t.splice(i,1),--i,--n);return i=>{let r=e[0];for(let s=0;s<n;++s)r+=t[s](i)+e[s+1];return r}}var FN={ariaLabel:"text",strokeLinejoin:"round",strokeWidth:3,paintOrder:"stroke"},pE="­",Za=class extends ye{constructor(t,n={}){let{x:i,y:r,text:s=Jn(t)&&Hf(t)?Ae:Po,frameAnchor:o,textAnchor:a=/right$/i.test(o)?"end":/left$/i.test(o)?"start":"middle",lineAnchor:l=/^top/i.test(o)?"top":/^bottom/i.test(o)?"bottom":"middle",lineHeight:c=1,lineWidth:u=1/0,textOverflow:h,monospace:f,fontFamily:d=f?"ui-monospace, monospace":void 0,fontSize:p,fontStyle:y,fontVariant:g,fontWeight:m,rotate:x}=n,[S,v]=Le(x,0),[M,b]=zN(p);if(super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},fontSize:{value:M,optional:!0},rotate:{value:aw(S),optional:!0},text:{value:s,filter:xc,optional:!0}},n,FN),this.rotate=v,this.textAnchor=De(a,"middle"),this.lineAnchor=Un(l,"lineAnchor",["top","middle","bottom"]),this.lineHeight=+c,this.lineWidth=+u,this.textOverflow=rx(h),this.monospace=!!f,this.fontFamily=Fe(d),this.fontSize=b,this.fontStyle=Fe(y),this.fontVariant=Fe(g),this.fontWeight=Fe(m),this.frameAnchor=Ps(o),!(this.lineWidth>=0))throw new Error(`invalid lineWidth: ${u}`);this.splitLines=lx(this),this.clipLine=cx(this)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,rotate:u,text:h,title:f,fontSize:d}=i,{rotate:p}=this,[y,g]=vr(this,r);return se("svg:g",s).call(Be,this,r,s).call(ax,this,h,r).call(ke,this,{x:l&&o,y:c&&a}).call(m=>m.selectAll().data(t).enter().append("text").call(Ne,this).call(ON,this,h,f).attr("transform",Ya`translate(${l?x=>l[x]:y},${c?x=>c[x]:g})${u?x=>` rotate(${u[x]})`:p?` rotate(${p})`:""}`).call(Wt,"font-size",d&&(x=>d[x])).call(Sn,this,i)).node()}};function rx(e){return e==null?null:Un(e,"textOverflow",["clip","ellipsis","clip-start","clip-end","ellipsis-start","ellipsis-middle","ellipsis-end"]).replace(/^(clip|ellipsis)$/,"$1-end")}function ON(e,t,n,i){if(!n)return;let{lineAnchor:r,lineHeight:s,textOverflow:o,splitLines:a,clipLine:l}=t;e.each(function(c){let u=a(_r(n[c])??"").map(l),h=u.length,f=r==="top"?.71:r==="bottom"?1-h:(164-h*100)/200;if(h>1){let d=0;for(let p=0;p<h;++p){if(++d,!u[p])continue;let y=this.ownerDocument.createElementNS(ys.svg,"tspan");y.setAttribute("x",0),p===d-1?y.setAttribute("y",`${(f+p)*s}em`):y.setAttribute("dy",`${d*s}em`),y.textContent=u[p],this.appendChild(y),d=0}}else f&&this.setAttribute("y",`${f*s}em`),this.textContent=u[0];if(o&&!i&&u[0]!==n[c]){let d=this.ownerDocument.createElementNS(ys.svg,"title");d.textContent=n[c],this.appendChild(d)}})}function Ka(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Gi(t,n)),new Za(e,{...i,x:t,y:n})}function sx(e,{x:t=Ae,...n}={}){return new Za(e,aE({...n,x:t}))}function ox(e,{y:t=Ae,...n}={}){return new Za(e,oE({...n,y:t}))}function ax(e,t,n){Wt(e,"text-anchor",t.textAnchor),Wt(e,"font-family",t.fontFamily),Wt(e,"font-size",t.fontSize),Wt(e,"font-style",t.fontStyle),Wt(e,"font-variant",t.fontVariant===void 0?BN(n):t.fontVariant),Wt(e,"font-weight",t.fontWeight)}function BN(e){return e&&(uw(e)||Ue(e))?"tabular-nums":void 0}var kN=new Set(["inherit","initial","revert","unset","xx-small","x-small","small","medium","large","x-large","xx-large","xxx-large","larger","smaller"]);function zN(e){return e==null||typeof e=="number"?[void 0,e]:typeof e!="string"?[e,void 0]:(e=e.trim().toLowerCase(),kN.has(e)||/^[+-]?\d*\.?\d+(e[+-]?\d+)?(\w*|%)$/.test(e)?[void 0,e]:[e,void 0])}function GN(e,t,n){let i=[],r,s=0;for(let[o,a,l]of VN(e)){if(r===void 0&&(r=o),s>r&&n(e,r,a)>t&&(i.push(e.slice(r,s)+(e[s-1]===pE?"-":"")),r=o),l){i.push(e.slice(r,a)),r=void 0;continue}s=a}return i}function*VN(e){let t=0,n=0,i=e.length;for(;n<i;){let r=1;switch(e[n]){case pE:case"-":++n,yield[t,n,!1],t=n;break;case" ":for(yield[t,n,!1];e[++n]===" ";);t=n;break;case"\r":e[n+1]===`
`&&++r;case`
`:yield[t,n,!0],n+=r,t=n;break;default:++n;break}}yield[t,n,!0]}var uE={a:56,b:63,c:57,d:63,e:58,f:37,g:62,h:60,i:26,j:26,k:55,l:26,m:88,n:60,o:60,p:62,q:62,r:39,s:54,t:38,u:60,v:55,w:79,x:54,y:55,z:55,A:69,B:67,C:73,D:74,E:61,F:58,G:76,H:75,I:28,J:55,K:67,L:58,M:89,N:75,O:78,P:65,Q:78,R:67,S:65,T:65,U:75,V:69,W:98,X:69,Y:67,Z:67,0:64,1:48,2:62,3:64,4:66,5:63,6:65,7:58,8:65,9:65," ":29,"!":32,'"':49,"'":31,"(":39,")":39,",":31,"-":48,".":31,"/":32,":":31,";":31,"?":52,"‘":31,"’":31,"“":47,"”":47,"…":82};function fh(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Ja(e,r))i+=uE[e[r]]??(gE(e,r)?120:uE.e);return i}function hh(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Ja(e,r))i+=gE(e,r)?126:63;return i}function lx({monospace:e,lineWidth:t,textOverflow:n}){if(n!=null||t==1/0)return s=>s.split(/\r\n?|\n/g);let i=e?hh:fh,r=t*100;return s=>GN(s,r,i)}function cx({monospace:e,lineWidth:t,textOverflow:n}){if(n==null||t==1/0)return s=>s;let i=e?hh:fh,r=t*100;switch(n){case"clip-start":return s=>hE(s,r,i,"");case"clip-end":return s=>fE(s,r,i,"");case"ellipsis-start":return s=>hE(s,r,i,ko);case"ellipsis-middle":return s=>HN(s,r,i,ko);case"ellipsis-end":return s=>fE(s,r,i,ko)}}var ko="…";function zo(e,t,n,i){let r=[],s=0;for(let o=0,a=0,l=e.length;o<l;o=a){a=Ja(e,o);let c=n(e,o,a);if(s+c>t){for(s+=i;s>t&&o>0;)a=o,o=r.pop(),s-=n(e,o,a);return[o,t-s]}s+=c,r.push(o)}return[-1,0]}function fE(e,t,n,i){e=e.trim();let r=n(i),[s]=zo(e,t,n,r);return s<0?e:e.slice(0,s).trimEnd()+i}function HN(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i)/2,[o,a]=zo(e,t/2,n,s),[l]=zo(e,r-t/2-a+s,n,-s);return l<0?i:e.slice(0,o).trimEnd()+i+e.slice(Ja(e,l)).trimStart()}function hE(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i),[o]=zo(e,r-t+s,n,-s);return o<0?i:i+e.slice(Ja(e,o)).trimStart()}var ix=/[\p{Combining_Mark}\p{Emoji_Modifier}]+/uy,dE=/\p{Extended_Pictographic}/uy;function Ja(e,t){return t+=WN(e,t)?2:1,XN(e,t)&&(t=ix.lastIndex),$N(e,t)?Ja(e,t+1):t}function mE(e,t){return e.charCodeAt(t)<128}function WN(e,t){let n=e.charCodeAt(t);if(n>=55296&&n<56320){let i=e.charCodeAt(t+1);return i>=56320&&i<57344}return!1}function $N(e,t){return e.charCodeAt(t)===8205}function XN(e,t){return mE(e,t)?!1:(ix.lastIndex=t,ix.test(e))}function gE(e,t){return mE(e,t)?!1:(dE.lastIndex=t,dE.test(e))}var qN={ariaLabel:"vector",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinejoin:"round",strokeLinecap:"round"},yE=3.5,YN=yE*5,xE={draw(e,t,n){let i=t*n/YN;e.moveTo(0,0),e.lineTo(0,-t),e.moveTo(-i,i-t),e.lineTo(0,-t),e.lineTo(i,i-t)}},ZN={draw(e,t,n){e.moveTo(-n,0),e.lineTo(0,-t),e.lineTo(n,0)}},KN=new Map([["arrow",xE],["spike",ZN]]);function JN(e){return e&&typeof e.draw=="function"}function jN(e){if(JN(e))return e;let t=KN.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid shape: ${e}`)}var dh=class extends ye{constructor(t,n={}){let{x:i,y:r,r:s=yE,length:o,rotate:a,shape:l=xE,anchor:c="middle",frameAnchor:u}=n,[h,f]=Le(o,12),[d,p]=Le(a,0);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},length:{value:h,scale:"length",optional:!0},rotate:{value:d,optional:!0}},n,qN),this.r=+s,this.length=f,this.rotate=p,this.shape=jN(l),this.anchor=Un(c,"anchor",["start","middle","end"]),this.frameAnchor=Ps(u)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,length:u,rotate:h}=i,{length:f,rotate:d,anchor:p,shape:y,r:g}=this,[m,x]=vr(this,r);return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(S=>S.selectAll().data(t).enter().append("path").call(Ne,this).attr("transform",Ya`translate(${l?v=>l[v]:m},${c?v=>c[v]:x})${h?v=>` rotate(${h[v]})`:d?` rotate(${d})`:""}${p==="start"?"":p==="end"?u?v=>` translate(0,${u[v]})`:` translate(0,${f})`:u?v=>` translate(0,${u[v]/2})`:` translate(0,${f/2})`}`).attr("d",u?v=>{let M=yi();return y.draw(M,u[v],g),M}:(()=>{let v=yi();return y.draw(v,f,g),v})()).call(Sn,this,i)).node()}};function _E(e,t={}){let{x:n=Ae,...i}=t;return new dh(e,{...i,x:n})}function vE(e,t={}){let{y:n=Ae,...i}=t;return new dh(e,{...i,y:n})}function Ds(e,t){return arguments.length<2&&!Jn(e)&&(t=e,e=null),t===void 0&&(t={}),[e,t]}function ph({anchor:e}={},t){return e===void 0?t[0]:Un(e,"anchor",t)}function bE(e){return ph(e,["left","right"])}function ME(e){return ph(e,["right","left"])}function SE(e){return ph(e,["bottom","top"])}function wE(e){return ph(e,["top","bottom"])}function fx(){let[e,t]=Ds(...arguments);return AE("y",bE(t),e,t)}function TE(){let[e,t]=Ds(...arguments);return AE("fy",ME(t),e,t)}function hx(){let[e,t]=Ds(...arguments);return CE("x",SE(t),e,t)}function EE(){let[e,t]=Ds(...arguments);return CE("fx",wE(t),e,t)}function AE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="y"?6:0,tickPadding:y,tickRotate:g,x:m,margin:x,marginTop:S=x===void 0?20:x,marginRight:v=x===void 0?t==="right"?40:0:x,marginBottom:M=x===void 0?20:x,marginLeft:b=x===void 0?t==="left"?40:0:x,label:_,labelAnchor:w,labelArrow:R,labelOffset:C,ariaLabel:A=`${e}-axis`,...L}){return p=Oe(p),y=Oe(y),g=Oe(g),w!==void 0&&(w=Un(w,"labelAnchor",["center","top","bottom"])),R=zE(R),qy(p&&!ln(s)?QN(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:g,x:m,ariaLabel:A,...L}):null,ln(l)?null:eU(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:g,x:m,marginTop:S,marginRight:v,marginBottom:M,marginLeft:b,ariaLabel:A,...L}),!ln(l)&&_!==null?Ka([],FE({fill:l,fillOpacity:c,...L},function(B,P,D,z,U){let Z=z[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="y"&&U.inset||U,lt=w??(Z.bandwidth?"center":"top"),$=C??(t==="right"?V:st)-3;return lt==="center"?(this.textAnchor=void 0,this.lineAnchor=t==="right"?"bottom":"top",this.frameAnchor=t,this.rotate=-90):(this.textAnchor=t==="right"?"end":"start",this.lineAnchor=lt,this.frameAnchor=`${lt}-${t}`,this.rotate=0),this.dy=lt==="top"?3-F:lt==="bottom"?q-3:0,this.dx=t==="right"?$:-$,this.ariaLabel=`${A} label`,{facets:[[0]],channels:{text:{value:[kE(e,Z,{anchor:t,label:_,labelAnchor:lt,labelArrow:R})]}}}})):null)}function CE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="x"?6:0,tickPadding:y,tickRotate:g,y:m,margin:x,marginTop:S=x===void 0?t==="top"?30:0:x,marginRight:v=x===void 0?20:x,marginBottom:M=x===void 0?t==="bottom"?30:0:x,marginLeft:b=x===void 0?20:x,label:_,labelAnchor:w,labelArrow:R,labelOffset:C,ariaLabel:A=`${e}-axis`,...L}){return p=Oe(p),y=Oe(y),g=Oe(g),w!==void 0&&(w=Un(w,"labelAnchor",["center","left","right"])),R=zE(R),qy(p&&!ln(s)?tU(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:g,y:m,ariaLabel:A,...L}):null,ln(l)?null:nU(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:g,y:m,marginTop:S,marginRight:v,marginBottom:M,marginLeft:b,ariaLabel:A,...L}),!ln(l)&&_!==null?Ka([],FE({fill:l,fillOpacity:c,...L},function(B,P,D,z,U){let Z=z[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="x"&&U.inset||U,lt=w??(Z.bandwidth?"center":"right"),$=C??(t==="top"?F:q)-3;return lt==="center"?(this.frameAnchor=t,this.textAnchor=void 0):(this.frameAnchor=`${t}-${lt}`,this.textAnchor=lt==="right"?"end":"start"),this.lineAnchor=t,this.dy=t==="top"?-$:$,this.dx=lt==="right"?V-3:lt==="left"?3-st:0,this.ariaLabel=`${A} label`,{facets:[[0]],channels:{text:{value:[kE(e,Z,{anchor:t,label:_,labelAnchor:lt,labelArrow:R})]}}}})):null)}function QN(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="y"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetLeft:u=c,insetRight:h=c,dx:f=0,y:d=e==="y"?void 0:null,ariaLabel:p,...y}){return ja(vE,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinecap:r,strokeLinejoin:s,facetAnchor:o,frameAnchor:a,y:d,...y,dx:t==="left"?+f-mn+ +u:+f+mn-h,anchor:"start",length:l,shape:t==="left"?oU:aU})}function tU(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="x"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetTop:u=c,insetBottom:h=c,dy:f=0,x:d=e==="x"?void 0:null,ariaLabel:p,...y}){return ja(_E,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinejoin:s,strokeLinecap:r,facetAnchor:o,frameAnchor:a,x:d,...y,dy:t==="bottom"?+f-mn-h:+f+mn+ +u,anchor:"start",length:l,shape:t==="bottom"?rU:sU})}function eU(e,t,n,{facetAnchor:i=t+(e==="y"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>60?4*Math.cos(o*Qy):0),text:l,textAnchor:c=Math.abs(o)>60?"middle":t==="left"?"end":"start",lineAnchor:u=o>60?"top":o<-60?"bottom":"middle",fontVariant:h,inset:f=0,insetLeft:d=f,insetRight:p=f,dx:y=0,ariaLabel:g,y:m=e==="y"?void 0:null,...x}){return ja(ox,e,n,{ariaLabel:`${g} tick label`},{facetAnchor:i,frameAnchor:r,text:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,y:m,...x,dx:t==="left"?+y-s-a+ +d:+y+ +s+ +a-p},function(S,v,M,b,_){h===void 0&&(this.fontVariant=BE(S)),l===void 0&&(_.text=OE(S,v,M,b,t))})}function nU(e,t,n,{facetAnchor:i=t+(e==="x"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>=10?4*Math.cos(o*Qy):0),text:l,textAnchor:c=Math.abs(o)>=10?o<0^t==="bottom"?"start":"end":"middle",lineAnchor:u=Math.abs(o)>=10?"middle":t==="bottom"?"top":"bottom",fontVariant:h,inset:f=0,insetTop:d=f,insetBottom:p=f,dy:y=0,x:g=e==="x"?void 0:null,ariaLabel:m,...x}){return ja(sx,e,n,{ariaLabel:`${m} tick label`},{facetAnchor:i,frameAnchor:r,text:l===void 0?null:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,x:g,...x,dy:t==="bottom"?+y+ +s+ +a-p:+y-s-a+ +d},function(S,v,M,b,_){h===void 0&&(this.fontVariant=BE(S)),l===void 0&&(_.text=OE(S,v,M,b,t))})}function RE(){let[e,t]=Ds(...arguments);return DE("y",bE(t),e,t)}function PE(){let[e,t]=Ds(...arguments);return DE("fy",ME(t),e,t)}function IE(){let[e,t]=Ds(...arguments);return NE("x",SE(t),e,t)}function LE(){let[e,t]=Ds(...arguments);return NE("fx",wE(t),e,t)}function DE(e,t,n,{y:i=e==="y"?void 0:null,x:r=null,x1:s=t==="left"?r:null,x2:o=t==="right"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return ja(Bo,e,n,{ariaLabel:a,ariaHidden:l},{y:i,x1:s,x2:o,...UE(c)})}function NE(e,t,n,{x:i=e==="x"?void 0:null,y:r=null,y1:s=t==="top"?r:null,y2:o=t==="bottom"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return ja(Nc,e,n,{ariaLabel:a,ariaHidden:l},{x:i,y1:s,y2:o,...UE(c)})}function UE({color:e="currentColor",opacity:t=.1,stroke:n=e,strokeOpacity:i=t,strokeWidth:r=1,...s}){return{stroke:n,strokeOpacity:i,strokeWidth:r,...s}}function FE({fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u=!1},h){return[,e]=Kn(e),[,t]=Le(t),{facet:"super",x:null,y:null,fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u,initializer:h}}function ja(e,t,n,i,r,s){let o;function a(u,h,f,d,p,y){let g=u==null&&(t==="fx"||t==="fy"),{[t]:m}=d;if(!m)throw new Error(`missing scale: ${t}`);let x=m.domain(),{interval:S,ticks:v,tickFormat:M,tickSpacing:b=t==="x"?80:35}=r;if(typeof v=="string"&&GE(m)&&(S=v,v=void 0),v===void 0&&(v=gr(S,m.type)??iU(m,b)),u==null){if(Jn(v))u=mr(v);else if(Rs(v))u=ux(v,...pn(x));else if(m.interval){let w=m.interval;if(m.ticks){let[R,C]=pn(x),A=(C-R)/w[Ra];w=iy(w,A/v)??w,u=ux(w,R,C)}else{u=x;let R=u.length;w=iy(w,R/v)??w,w!==m.interval&&(u=ux(w,...pn(u)))}if(w===m.interval){let R=Math.round(u.length/v);R>1&&(u=u.filter((C,A)=>A%R===0))}}else m.ticks?u=m.ticks(v):u=x;if(!m.ticks&&u.length&&u!==x){let w=new nr(x);u=u.filter(R=>w.has(R)),u.length||jn(`Warning: the ${t}-axis ticks appear to not align with the scale domain, resulting in no ticks. Try different ticks?`)}t==="y"||t==="x"?h=[Fn(u)]:o[t]={scale:t,value:Ae}}s?.call(this,m,u,v,M,o);let _=Object.fromEntries(Object.entries(o).map(([w,R])=>[w,{...R,value:Te(u,R.value)}]));return g&&(h=y.filterFacets(u,_)),{data:u,facets:h,channels:_}}let l=$r(r).initializer,c=e(n,$r({...r,initializer:a},l));return n==null?(o=c.channels,c.channels={}):o={},i!==void 0&&Object.assign(c,i),c.clip===void 0&&(c.clip=!1),c}function iU(e,t){let[n,i]=pn(e.range());return(i-n)/t}function OE(e,t,n,i,r){return{value:Uc(e,t,n,i,r)}}function Uc(e,t,n,i,r){return typeof i=="function"&&!(e.type==="log"&&e.tickFormat)?i:i===void 0&&t&&Ue(t)?XS(e.type,t,r)??_r:e.tickFormat?e.tickFormat(typeof n=="number"?n:null,i):typeof i=="string"&&e.domain().length>0?(Ue(e.domain())?fr:sr)(i):i===void 0?_r:ri(i)}function ux(e,t,n){return e.range(t,e.offset(e.floor(n)))}var rU={draw(e,t){e.moveTo(0,0),e.lineTo(0,t)}},sU={draw(e,t){e.moveTo(0,0),e.lineTo(0,-t)}},oU={draw(e,t){e.moveTo(0,0),e.lineTo(-t,0)}},aU={draw(e,t){e.moveTo(0,0),e.lineTo(t,0)}};function BE(e){return e.bandwidth&&!e.interval?void 0:"tabular-nums"}function kE(e,t,{anchor:n,label:i=t.label,labelAnchor:r,labelArrow:s}={}){if(!(i==null||i.inferred&&GE(t)&&/^(date|time|year)$/i.test(i))){if(i=String(i),s==="auto"&&(s=(!t.bandwidth||t.interval)&&!/[↑↓→←]/.test(i)),!s)return i;if(s===!0){let o=vT(t);o&&(s=/x$/.test(e)||r==="center"?/x$/.test(e)===o<0?"left":"right":o<0?"up":"down")}switch(s){case"left":return`← ${i}`;case"right":return`${i} →`;case"up":return n==="right"?`${i} ↑`:`↑ ${i}`;case"down":return n==="right"?`${i} ↓`:`↓ ${i}`}return i}}function zE(e="auto"){return ln(e)?!1:typeof e=="boolean"?e:Un(e,"labelArrow",["auto","up","right","down","left"])}function GE(e){return Ue(e.domain())}function VE(e,t){if(t==null)return t;let n=e(t);if(!n)throw new Error(`scale not found: ${t}`);return n}function HE(e,{opacity:t,...n}={}){if(!xr(e)&&!ky(e))throw new Error(`swatches legend requires ordinal or threshold color scale (not ${e.type})`);return $E(e,n,(i,r,s,o)=>i.append("svg").attr("width",s).attr("height",o).attr("fill",r.scale).attr("fill-opacity",Le(t)[1]).append("rect").attr("width","100%").attr("height","100%"))}function WE(e,{fill:t=e.hint?.fill!==void 0?e.hint.fill:"none",fillOpacity:n=1,stroke:i=e.hint?.stroke!==void 0?e.hint.stroke:ln(t)?"currentColor":"none",strokeOpacity:r=1,strokeWidth:s=1.5,r:o=4.5,...a}={},l){let[c,u]=Kn(t),[h,f]=Kn(i),d=VE(l,c),p=VE(l,h),y=o*o*Math.PI;return n=Le(n)[1],r=Le(r)[1],s=Le(s)[1],$E(e,a,(g,m,x,S)=>g.append("svg").attr("viewBox","-8 -8 16 16").attr("width",x).attr("height",S).attr("fill",c==="color"?v=>d.scale(v):u).attr("fill-opacity",n).attr("stroke",h==="color"?v=>p.scale(v):f).attr("stroke-opacity",r).attr("stroke-width",s).append("path").attr("d",v=>{let M=yi();return e.scale(v).draw(M,y),M}))}function $E(e,t={},n){let{columns:i,tickFormat:r,fontVariant:s=ah(e),swatchSize:o=15,swatchWidth:a=o,swatchHeight:l=o,marginLeft:c=0,className:u,style:h,width:f}=t,d=Wa(t);u=$a(u),r=Uc(e.scale,e.domain,void 0,r);let p=se("div",d).attr("class",`${u}-swatches ${u}-swatches-${i!=null?"columns":"wrap"}`),y;return i!=null?(y=`:where(.${u}-swatches-columns .${u}-swatch) {
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
}`,p.style("columns",i).selectAll().data(e.domain).enter().append("div").attr("class",`${u}-swatch`).call(n,e,a,l).call(g=>g.append("div").attr("class",`${u}-swatch-label`).attr("title",r).text(r))):(y=`:where(.${u}-swatches-wrap) {
  display: flex;
  align-items: center;
  min-height: 33px;
  flex-wrap: wrap;
}
:where(.${u}-swatches-wrap .${u}-swatch) {
  display: inline-flex;
  align-items: center;
  margin-right: 1em;
}`,p.selectAll().data(e.domain).enter().append("span").attr("class",`${u}-swatch`).call(n,e,a,l).append(function(){return this.ownerDocument.createTextNode(r.apply(this,arguments))})),p.call(g=>g.insert("style","*").text(`:where(.${u}-swatches) {
  font-family: system-ui, sans-serif;
  font-size: 10px;
  margin-bottom: 0.5em;
}
:where(.${u}-swatch > svg) {
  margin-right: 0.5em;
  overflow: visible;
}
${y}`)).style("margin-left",c?`${+c}px`:null).style("width",f===void 0?null:`${+f}px`).style("font-variant",De(s,"normal")).call(Xa,h).node()}var dx=new Map([["symbol",WE],["color",YE],["opacity",lU]]);function XE(e,t,n={}){return(i,r)=>{if(!dx.has(i))throw new Error(`unknown legend type: ${i}`);if(i in e)return dx.get(i)(e[i],qE(t,n[i],r),s=>e[s])}}function qE({className:e,...t},{label:n,ticks:i,tickFormat:r}={},s){return dw(s,{className:e,...t},{label:n,ticks:i,tickFormat:r})}function YE(e,{legend:t=!0,...n}){if(t===!0&&(t=e.type==="ordinal"?"swatches":"ramp"),e.domain!==void 0)switch(`${t}`.toLowerCase()){case"swatches":return HE(e,n);case"ramp":return qT(e,n);default:throw new Error(`unknown legend type: ${t}`)}}function lU({type:e,interpolate:t,...n},{legend:i=!0,color:r=Bi(0,0,0),...s}){if(!t)throw new Error(`${e} opacity scales are not supported`);if(i===!0&&(i="ramp"),`${i}`.toLowerCase()!=="ramp")throw new Error(`${i} opacity legends are not supported`);return YE({type:e,...n,interpolate:cU(r)},{legend:i,...s})}function cU(e){let{r:t,g:n,b:i}=Bi(e)||Bi(0,0,0);return r=>`rgba(${t},${n},${i},${r})`}function ZE(e,t,n){let i=[];for(let[r,s]of dx){let o=n[r];if(o?.legend&&r in e){let a=s(e[r],qE(t,e[r],o),l=>e[l]);a!=null&&i.push(a)}}return i}function KE(e={},t="y"){return ew(e)?e:{...e,[t]:Ae}}function JE(e,t){if(t.length===1)return{data:e,facets:t};let n=Cs(e),i=new Uint8Array(n),r=0;for(let a of t)for(let l of a)i[l]&&++r,i[l]=1;if(r===0)return{data:e,facets:t};e=Es(e);let s=e[oy]=new Uint32Array(n+r);t=t.map(a=>Es(a,Uint32Array));let o=n;i.fill(0);for(let a of t)for(let l=0,c=a.length;l<c;++l){let u=a[l];i[u]?(a[l]=o,e[o]=e[u],s[o]=u,++o):s[u]=u,i[u]=1}return{data:e,facets:t}}function uU(e={},t={}){arguments.length===1&&([e,t]=fU(e));let{x1:n,x:i=n,y:r,...s}=t,[o,a,l,c]=dU(i,r,"x","y",e,s);return{...o,x1:n,x:a,y1:l,y2:c,y:Sc(l,c)}}function tA({y:e,y1:t,y2:n,...i}={}){return i=Fo(i,"x"),t===void 0&&n===void 0?uU({y:e,...i}):([t,n]=nw(e,t,n),{...i,y1:t,y2:n})}function fU(e){let{offset:t,order:n,reverse:i,...r}=e;return[{offset:t,order:n,reverse:i},r]}var hU={length:!0};function dU(e,t=JS,n,i,{offset:r,order:s,reverse:o},a){if(t===null)throw new Error(`stack requires ${i}`);let l=Da(a),[c,u]=Ci(e),[h,f]=Na(t),[d,p]=Na(t);return h.hint=d.hint=hU,r=pU(r),s=yU(s,r,i),[Uo(a,(y,g,m)=>{({data:y,facets:g}=JE(y,g));let x=e==null?void 0:u(wc(Te(y,e),m?.[n])),S=Te(y,t,Float64Array),v=Te(y,l),M=s&&s(y,x,S,v),b=Cs(y),_=f(new Float64Array(b)),w=p(new Float64Array(b)),R=[];for(let C of g){let A=x?Array.from(so(C,L=>x[L]).values()):[C];if(M)for(let L of A)L.sort(M);for(let L of A){let B=0,P=0;o&&L.reverse();for(let D of L){let z=S[D];z<0?B=w[D]=(_[D]=B)+z:z>0?P=w[D]=(_[D]=P)+z:w[D]=_[D]=P}}R.push(A)}return r&&r(R,_,w,v),{data:y,facets:g}}),c,h,d]}function pU(e){if(e!=null){if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"expand":case"normalize":return mU;case"center":case"silhouette":return gU;case"wiggle":return nA}throw new Error(`unknown offset: ${e}`)}}function eA(e,t){let n=0,i=0;for(let r of e){let s=t[r];s<n&&(n=s),s>i&&(i=s)}return[n,i]}function mU(e,t,n){for(let i of e)for(let r of i){let[s,o]=eA(r,n);for(let a of r){let l=1/(o-s||1);t[a]=l*(t[a]-s),n[a]=l*(n[a]-s)}}}function gU(e,t,n){for(let i of e){for(let r of i){let[s,o]=eA(r,n);for(let a of r){let l=(o+s)/2;t[a]-=l,n[a]-=l}}iA(i,t,n)}rA(e,t,n)}function nA(e,t,n,i){for(let r of e){let s=new pi,o=0;for(let a of r){let l=-1,c=a.map(d=>Math.abs(n[d]-t[d])),u=a.map(d=>{l=i?i[d]:++l;let p=n[d]-t[d],y=s.has(l)?p-s.get(l):0;return s.set(l,p),y}),h=[0,...Cv(u)];for(let d of a)t[d]+=o,n[d]+=o;let f=Ui(c);f&&(o-=Ui(c,(d,p)=>(u[p]/2+h[p])*d)/f)}iA(r,t,n)}rA(e,t,n)}function iA(e,t,n){let i=mi(e,r=>mi(r,s=>t[s]));for(let r of e)for(let s of r)t[s]-=i,n[s]-=i}function rA(e,t,n){let i=e.length;if(i===1)return;let r=e.map(a=>a.flat()),s=r.map(a=>(mi(a,l=>t[l])+Pn(a,l=>n[l]))/2),o=mi(s);for(let a=0;a<i;a++){let l=o-s[a];for(let c of r[a])t[c]+=l,n[c]+=l}}function yU(e,t,n){if(e===void 0&&t===nA)return jE(Mn);if(e!=null){if(typeof e=="string"){let i=e.startsWith("-"),r=i?Ao:Mn;switch((i?e.slice(1):e).toLowerCase()){case"value":case n:return xU(r);case"z":return _U(r);case"sum":return vU(r);case"appearance":return bU(r);case"inside-out":return jE(r)}return QE(ly(e))}if(typeof e=="function")return(e.length===1?QE:MU)(e);if(ki(e))return SU(e);throw new Error(`invalid order: ${e}`)}}function xU(e){return(t,n,i)=>(r,s)=>e(i[r],i[s])}function _U(e){return(t,n,i,r)=>(s,o)=>e(r[s],r[o])}function vU(e){return mh(e,(t,n,i,r)=>Lu(Fn(t),s=>Ui(s,o=>i[o]),s=>r[s]))}function bU(e){return mh(e,(t,n,i,r)=>Lu(Fn(t),s=>n[nm(s,o=>i[o])],s=>r[s]))}function jE(e){return mh(e,(t,n,i,r)=>{let s=Fn(t),o=Lu(s,h=>n[nm(h,f=>i[f])],h=>r[h]),a=Dr(s,h=>Ui(h,f=>i[f]),h=>r[h]),l=[],c=[],u=0;for(let h of o)u<0?(u+=a.get(h),l.push(h)):(u-=a.get(h),c.push(h));return c.reverse().concat(l)})}function QE(e){return t=>{let n=Te(t,e);return(i,r)=>Mn(n[i],n[r])}}function MU(e){return t=>ki(t)?(n,i)=>e(t[n],t[i]):(n,i)=>e(t.get(n),t.get(i))}function SU(e){return mh(Mn,()=>e)}function mh(e,t){return(n,i,r,s)=>{if(!s)throw new Error("missing channel: z");let o=new pi(t(n,i,r,s).map((a,l)=>[a,l]));return(a,l)=>e(o.get(s[a]),o.get(s[l]))}}var wU={ariaLabel:"rect"},xh=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o}=n;super(t,{x1:{value:i,scale:"x",type:i!=null&&s==null?"band":void 0,optional:!0},y1:{value:r,scale:"y",type:r!=null&&o==null?"band":void 0,optional:!0},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,wU),px(this,n),mx(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x1:l,y1:c,x2:u,y2:h}=i,{marginTop:f,marginRight:d,marginBottom:p,marginLeft:y,width:g,height:m}=r,{projection:x}=s,{insetTop:S,insetRight:v,insetBottom:M,insetLeft:b}=this,{rx:_,ry:w,rx1y1:R,rx1y2:C,rx2y1:A,rx2y2:L}=this;(l||u)&&!x&&Is(o)&&(l=u=null),(c||h)&&!x&&Is(a)&&(c=h=null);let B=o?.bandwidth?o.bandwidth():0,P=a?.bandwidth?a.bandwidth():0;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{},0,0).call(D=>D.selectAll().data(t).enter().call(R||C||A||L?z=>z.append("path").call(Ne,this).call(gx,l&&u?U=>l[U]+(u[U]<l[U]?-v:b):l?U=>l[U]+b:y+b,c&&h?U=>c[U]+(h[U]<c[U]?-M:S):c?U=>c[U]+S:f+S,l&&u?U=>u[U]-(u[U]<l[U]?-b:v):l?U=>l[U]+B-v:g-d-v,c&&h?U=>h[U]-(h[U]<c[U]?-S:M):c?U=>c[U]+P-M:m-p-M,this).call(Sn,this,i):z=>z.append("rect").call(Ne,this).attr("x",l?u?U=>Math.min(l[U],u[U])+b:U=>l[U]+b:y+b).attr("y",c?h?U=>Math.min(c[U],h[U])+S:U=>c[U]+S:f+S).attr("width",l?u?U=>Math.max(0,Math.abs(u[U]-l[U])+B-b-v):B-b-v:g-d-y-v-b).attr("height",c?h?U=>Math.max(0,Math.abs(c[U]-h[U])+P-S-M):P-S-M:m-f-p-S-M).call(Wt,"rx",_).call(Wt,"ry",w).call(Sn,this,i))).node()}};function px(e,{inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={}){e.insetTop=Oe(n),e.insetRight=Oe(i),e.insetBottom=Oe(r),e.insetLeft=Oe(s)}function mx(e,{r:t,rx:n,ry:i,rx1:r=t,ry1:s=t,rx2:o=t,ry2:a=t,rx1y1:l=r!==void 0?+r:s!==void 0?+s:0,rx1y2:c=r!==void 0?+r:a!==void 0?+a:0,rx2y1:u=o!==void 0?+o:s!==void 0?+s:0,rx2y2:h=o!==void 0?+o:a!==void 0?+a:0}={}){l||c||u||h?(e.rx1y1=l,e.rx1y2=c,e.rx2y1=u,e.rx2y2=h):(e.rx=De(n,"auto"),e.ry=De(i,"auto"))}function gx(e,t,n,i,r,s){let{rx1y1:o,rx1y2:a,rx2y1:l,rx2y2:c}=s;typeof t!="function"&&(t=ri(t)),typeof n!="function"&&(n=ri(n)),typeof i!="function"&&(i=ri(i)),typeof r!="function"&&(r=ri(r));let u=Math.max(Math.abs(o+l),Math.abs(a+c)),h=Math.max(Math.abs(o+a),Math.abs(l+c));e.attr("d",f=>{let d=t(f),p=n(f),y=i(f),g=r(f),m=d>y,x=p>g,S=m?y:d,v=m?d:y,M=x?g:p,b=x?p:g,_=Math.min(1,(v-S)/u,(b-M)/h),w=_*(m?x?c:l:x?a:o),R=_*(m?x?a:o:x?c:l),C=_*(m?x?o:a:x?l:c),A=_*(m?x?l:c:x?o:a);return`M${S},${M+yh(w,A)}A${w},${w} 0 0 ${w<0?0:1} ${S+gh(w,A)},${M}H${v-gh(R,C)}A${R},${R} 0 0 ${R<0?0:1} ${v},${M+yh(R,C)}V${b-yh(C,R)}A${C},${C} 0 0 ${C<0?0:1} ${v-gh(C,R)},${b}H${S+gh(A,w)}A${A},${A} 0 0 ${A<0?0:1} ${S},${b-yh(A,w)}Z`})}function gh(e,t){return t<0?e:Math.abs(e)}function yh(e,t){return t<0?Math.abs(e):e}function _h(e,t){return new xh(e,nE(iE(t)))}var TU={ariaLabel:"frame",fill:"none",stroke:"currentColor",clip:!1},EU={ariaLabel:"frame",fill:null,stroke:"currentColor",strokeLinecap:"square",clip:!1},yx=class extends ye{constructor(t={}){let{anchor:n=null}=t;super(Pa,void 0,t,n==null?TU:EU),this.anchor=hy(n,"anchor",["top","right","bottom","left"]),px(this,t),n||mx(this,t)}render(t,n,i,r,s){let{marginTop:o,marginRight:a,marginBottom:l,marginLeft:c,width:u,height:h}=r,{anchor:f,insetTop:d,insetRight:p,insetBottom:y,insetLeft:g}=this,{rx:m,ry:x,rx1y1:S,rx1y2:v,rx2y1:M,rx2y2:b}=this,_=c+g,w=u-a-p,R=o+d,C=h-l-y;return se(f?"svg:line":S||v||M||b?"svg:path":"svg:rect",s).datum(0).call(Be,this,r,s).call(Ne,this).call(Sn,this,i).call(ke,this,{}).call(f==="left"?A=>A.attr("x1",_).attr("x2",_).attr("y1",R).attr("y2",C):f==="right"?A=>A.attr("x1",w).attr("x2",w).attr("y1",R).attr("y2",C):f==="top"?A=>A.attr("x1",_).attr("x2",w).attr("y1",R).attr("y2",R):f==="bottom"?A=>A.attr("x1",_).attr("x2",w).attr("y1",C).attr("y2",C):S||v||M||b?A=>A.call(gx,_,R,w,C,this):A=>A.attr("x",_).attr("y",R).attr("width",w-_).attr("height",C-R).attr("rx",m).attr("ry",x)).node()}};function sA(e){return new yx(e)}var xx={ariaLabel:"tip",fill:"var(--plot-background)",stroke:"currentColor"},AU=new Set(["geometry","href","src","ariaLabel","scales"]),_x=class extends ye{constructor(t,n={}){n.tip&&(n={...n,tip:!1}),n.title===void 0&&Jn(t)&&Hf(t)&&(n={...n,title:Ae});let{x:i,y:r,x1:s,x2:o,y1:a,y2:l,anchor:c,preferredAnchor:u="bottom",monospace:h,fontFamily:f=h?"ui-monospace, monospace":void 0,fontSize:d,fontStyle:p,fontVariant:y,fontWeight:g,lineHeight:m=1,lineWidth:x=20,frameAnchor:S,format:v,textAnchor:M="start",textOverflow:b,textPadding:_=8,title:w,pointerSize:R=12,pathFilter:C="drop-shadow(0 3px 4px rgba(0,0,0,0.2))"}=n;super(t,{x:{value:s!=null&&o!=null?null:i,scale:"x",optional:!0},y:{value:a!=null&&l!=null?null:r,scale:"y",optional:!0},x1:{value:s,scale:"x",optional:o==null},y1:{value:a,scale:"y",optional:l==null},x2:{value:o,scale:"x",optional:s==null},y2:{value:l,scale:"y",optional:a==null},title:{value:w,optional:!0}},n,xx),this.anchor=$f(c,"anchor"),this.preferredAnchor=$f(u,"preferredAnchor"),this.frameAnchor=Ps(S),this.textAnchor=De(M,"middle"),this.textPadding=+_,this.pointerSize=+R,this.pathFilter=Fe(C),this.lineHeight=+m,this.lineWidth=+x,this.textOverflow=rx(b),this.monospace=!!h,this.fontFamily=Fe(f),this.fontSize=Oe(d),this.fontStyle=Fe(p),this.fontVariant=Fe(y),this.fontWeight=Fe(g);for(let A in xx)A in this.channels&&(this[A]=xx[A]);this.splitLines=lx(this),this.clipLine=cx(this),this.format=typeof v=="string"||typeof v=="function"?{title:v}:{...v}}render(t,n,i,r,s){let o=this,{x:a,y:l,fx:c,fy:u}=n,{ownerSVGElement:h,document:f}=s,{anchor:d,monospace:p,lineHeight:y,lineWidth:g}=this,{textPadding:m,pointerSize:x,pathFilter:S}=this,{marginTop:v,marginLeft:M}=r,{x1:b,y1:_,x2:w,y2:R,x:C=b??w,y:A=_??R}=i,L=c?c(t.fx)-M:0,B=u?u(t.fy)-v:0,[P,D]=vr(this,r),z=Jy(i,P),U=jy(i,D),Z=p?hh:fh,F=Z(ko),V,q;"title"in i?(V=oA.call(this,{title:i.channels.title},n),q=IU):(V=oA.call(this,i.channels,n),q=LU);let st=se("svg:g",s).call(Be,this,r,s).call(ax,this).call(ke,this,{x:C&&a,y:A&&l}).call(at=>at.selectAll().data(t).enter().append("g").attr("transform",ft=>`translate(${Math.round(z(ft))},${Math.round(U(ft))})`).call(Ne,this).call(ft=>ft.append("path").attr("filter",S)).call(ft=>ft.append("text").each(function(ot){let rt=Fi(this);this.setAttribute("fill","currentColor"),this.setAttribute("fill-opacity",1),this.setAttribute("stroke","none");let K=q.call(o,ot,t,V,n,i);if(typeof K=="string")for(let gt of o.splitLines(K))lt(rt,{value:o.clipLine(gt)});else{let gt=new Set;for(let ct of K){let{label:J=""}=ct;J&&gt.has(J)||(gt.add(J),lt(rt,ct))}}})));function lt(at,{label:ft,value:ot,color:rt,opacity:K}){ft??="",ot??="";let gt=rt!=null||K!=null,ct,J=g*100,[It]=zo(ft,J,Z,F);if(It>=0)ft=ft.slice(0,It).trimEnd()+ko,ct=ot.trim(),ot="";else{(ft||!ot&&!gt)&&(ot=" "+ot);let[Ot]=zo(ot,J-Z(ft),Z,F);Ot>=0&&(ct=ot.trim(),ot=ot.slice(0,Ot).trimEnd()+ko)}let pt=at.append("tspan").attr("x",0).attr("dy",`${y}em`).text("​");ft&&pt.append("tspan").attr("font-weight","bold").text(ft),ot&&pt.append(()=>f.createTextNode(ot)),gt&&pt.append("tspan").text(" ■").attr("fill",rt).attr("fill-opacity",K).style("user-select","none"),ct&&pt.append("title").text(ct)}function $(){let{width:at,height:ft}=r.facet??r;st.selectChildren().each(function(ot){let{x:rt,width:K,height:gt}=this.getBBox();K=Math.round(K),gt=Math.round(gt);let ct=d;if(ct===void 0){let pt=z(ot)+L,Ot=U(ot)+B,Ht=pt+K+x+m*2<at,le=pt-K-x-m*2>0,oe=Ot+gt+x+m*2<ft,tn=Ot-gt-x-m*2>0;ct=Ht&&le?oe&&tn?o.preferredAnchor:tn?"bottom":"top":oe&&tn?Ht?"left":"right":(Ht||le)&&(oe||tn)?`${tn?"bottom":"top"}-${Ht?"left":"right"}`:o.preferredAnchor}let J=this.firstChild,It=this.lastChild;if(J.setAttribute("d",PU(ct,x,m,K,gt)),rt)for(let pt of It.childNodes)pt.setAttribute("x",-rt);It.setAttribute("y",`${+CU(ct,It.childNodes.length,y).toFixed(6)}em`),It.setAttribute("transform",`translate(${RU(ct,x,m,K,gt)})`)}),st.attr("visibility",null)}return t.length&&(st.attr("visibility","hidden"),h.isConnected?Promise.resolve().then($):typeof requestAnimationFrame<"u"&&requestAnimationFrame($)),st.node()}};function uA(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Gi(t,n)),new _x(e,{...i,x:t,y:n})}function CU(e,t,n){return/^top(?:-|$)/.test(e)?.94-n:-.29-t*n}function RU(e,t,n,i,r){switch(e){case"middle":return[-i/2,r/2];case"top-left":return[n,t+n];case"top":return[-i/2,t/2+n];case"top-right":return[-i-n,t+n];case"right":return[-t/2-i-n,r/2];case"bottom-left":return[n,-t-n];case"bottom":return[-i/2,-t/2-n];case"bottom-right":return[-i-n,-t-n];case"left":return[n+t/2,r/2]}}function PU(e,t,n,i,r){let s=i+n*2,o=r+n*2;switch(e){case"middle":return`M${-s/2},${-o/2}h${s}v${o}h${-s}z`;case"top-left":return`M0,0l${t},${t}h${s-t}v${o}h${-s}z`;case"top":return`M0,0l${t/2},${t/2}h${(s-t)/2}v${o}h${-s}v${-o}h${(s-t)/2}z`;case"top-right":return`M0,0l${-t},${t}h${t-s}v${o}h${s}z`;case"right":return`M0,0l${-t/2},${-t/2}v${t/2-o/2}h${-s}v${o}h${s}v${t/2-o/2}z`;case"bottom-left":return`M0,0l${t},${-t}h${s-t}v${-o}h${-s}z`;case"bottom":return`M0,0l${t/2},${-t/2}h${(s-t)/2}v${-o}h${-s}v${o}h${(s-t)/2}z`;case"bottom-right":return`M0,0l${-t},${-t}h${t-s}v${-o}h${s}z`;case"left":return`M0,0l${t/2},${-t/2}v${t/2-o/2}h${s}v${o}h${-s}v${t/2-o/2}z`}}function oA(e,t){let n={},i=this.format;i=aA(i,e,"x"),i=aA(i,e,"y"),this.format=i;for(let r in i){let s=i[r];if(!(s===null||s===!1))if(r==="fx"||r==="fy")n[r]=!0;else{let o=Ay(e,r);o&&(n[r]=o)}}for(let r in e){if(r in n||r in i||AU.has(r)||(r==="x"||r==="y")&&e.geometry)continue;let s=Ay(e,r);if(s){if(s.scale==null&&s.defaultScale==="color")continue;n[r]=s}}this.facet&&(t.fx&&!("fx"in i)&&(n.fx=!0),t.fy&&!("fy"in i)&&(n.fy=!0));for(let r in n){let s=this.format[r];if(typeof s=="string"){let o=n[r]?.value??t[r]?.domain()??[];this.format[r]=(Ue(o)?fr:sr)(s)}else if(s===void 0||s===!0){let o=t[r];this.format[r]=o?.bandwidth?Uc(o,o.domain()):_r}}return n}function aA(e,t,n){if(!(n in e))return e;let i=`${n}1`,r=`${n}2`;if((i in e||!(i in t))&&(r in e||!(r in t)))return e;let s=Object.entries(e),o=e[n];return s.splice(s.findIndex(([a])=>a===n)+1,0,[i,o],[r,o]),Object.fromEntries(s)}function IU(e,t,{title:n}){return this.format.title(n.value[e],e)}function*LU(e,t,n,i,r){for(let s in n){if(s==="fx"||s==="fy"){yield{label:vh(i,n,s),value:this.format[s](t[s],e)};continue}if(s==="x1"&&"x2"in n||s==="y1"&&"y2"in n)continue;let o=n[s];if(s==="x2"&&"x1"in n)yield{label:cA(i,n,"x"),value:lA(this.format.x2,n.x1,o,e)};else if(s==="y2"&&"y1"in n)yield{label:cA(i,n,"y"),value:lA(this.format.y2,n.y1,o,e)};else{let a=o.value[e],l=o.scale;if(!Ei(a)&&l==null)continue;yield{label:vh(i,n,s),value:this.format[s](a,e),color:l==="color"?r[s][e]:null,opacity:l==="opacity"?r[s][e]:null}}}}function lA(e,t,n,i){return n.hint?.length?`${e(n.value[i]-t.value[i],i)}`:`${e(t.value[i],i)}–${e(n.value[i],i)}`}function cA(e,t,n){let i=vh(e,t,`${n}1`,n),r=vh(e,t,`${n}2`,n);return i===r?i:`${i}–${r}`}function vh(e,t,n,i=n){let r=t[n],s=e[r?.scale??n];return String(s?.label??r?.label??i)}function Qa(e={}){let{facet:t,style:n,title:i,subtitle:r,caption:s,ariaLabel:o,ariaDescription:a}=e,l=$a(e.className),c=e.marks===void 0?[]:hA(e.marks);c.push(...BU(c));let u=FU(t,e),h=new Map;for(let F of c){let V=dA(F,u,e);V&&h.set(F,V)}let f=new Map;u&&Fc(f,[u],e),Fc(f,h,e);let d=hA(kU(c,f,e));for(let F of d){let V=dA(F,u,e);V&&h.set(F,V)}c.unshift(...d);let p=TT(f,e);if(p!==void 0){let F=u?eh(p,u):void 0;for(let q of c){if(q.facet===null||q.facet==="super")continue;let st=h.get(q);st!==void 0&&(st.facetsIndex=q.fx!=null||q.fy!=null?eh(p,st):F)}let V=new Set;for(let{facetsIndex:q}of h.values())q?.forEach((st,lt)=>{st?.length>0&&V.add(lt)});p.forEach(0<V.size&&V.size<p.length?(q,st)=>q.empty=!V.has(st):q=>q.empty=!1);for(let q of c)if(q.facet==="exclude"){let st=h.get(q);st!==void 0&&(st.facetsIndex=CT(st.facetsIndex))}}for(let F of ge.keys())Ia(e[F])&&F!=="fx"&&F!=="fy"&&f.set(F,[]);let y=new Map;for(let F of c){if(y.has(F))throw new Error("duplicate mark; each mark must be unique");let{facetsIndex:V,channels:q}=h.get(F)??{},{data:st,facets:lt,channels:$}=F.initialize(V,q,e);Mx($,e),y.set(F,{data:st,facets:lt,channels:$})}let g=Pc(Fc(f,y,e),e),m=HT(g,c,e);_T(g,m);let x=Oy(g),{fx:S,fy:v}=x,M=S||v?By(g,m):m,b=S||v?XU(x,m):m,_=Wa(e),w=_.document,R=ua("svg").call(w.documentElement),C=R;_.ownerSVGElement=R,_.className=l,_.projection=IT(e,M),_.path=function(){return ic(this.projection??OT(x))},_.filterFacets=(F,V)=>eh(p,{channels:V,groups:Qf(F,V)}),_.getMarkState=F=>{let V=y.get(F),q=h.get(F);return{...V,channels:{...V.channels,...q?.channels}}},_.dispatchValue=F=>{C.value!==F&&(C.value=F,C.dispatchEvent(new _.document.defaultView.Event("input",{bubbles:!0})))};let A=new Set;for(let[F,V]of y)if(F.initializer!=null){let q=F.facet==="super"?b:M,st=F.initializer(V.data,V.facets,V.channels,x,q,_);if(st.data!==void 0&&(V.data=st.data),st.facets!==void 0&&(V.facets=st.facets),st.channels!==void 0){let{fx:lt,fy:$,...at}=st.channels;UU(at),Object.assign(V.channels,at);for(let ft of Object.values(at)){let{scale:ot}=ft;ot!=null&&!yw(ge.get(ot))&&(gA(ft,e),A.add(ot))}(lt!=null||$!=null)&&h.set(F,!0)}}if(A.size){let F=new Map;Fc(F,y,e,lt=>A.has(lt)),Fc(f,y,e,lt=>A.has(lt));let V=$U(Pc(F,e),g),{scales:q,...st}=Oy(V);Object.assign(g,V),Object.assign(x,st),Object.assign(x.scales,q)}let L,B;p!==void 0&&(L={x:S?.domain(),y:v?.domain()},p=ET(p,L),B=AT(S,v,m));for(let[F,V]of y)V.values=F.scale(V.channels,x,_);let{width:P,height:D}=m;Fi(R).attr("class",l).attr("fill","currentColor").attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("text-anchor","middle").attr("width",P).attr("height",D).attr("viewBox",`0 0 ${P} ${D}`).attr("aria-label",o).attr("aria-description",a).call(F=>F.append("style").text(`:where(.${l}) {
  --plot-background: white;
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
}
:where(.${l} text),
:where(.${l} tspan) {
  white-space: pre;
}`)).call(Xa,n);for(let F of c){let{channels:V,values:q,facets:st}=y.get(F);if(p===void 0||F.facet==="super"){let lt=null;if(st&&(lt=st[0],lt=F.filter(lt,V,q),lt.length===0))continue;let $=F.render(lt,x,q,b,_);if($==null)continue;R.appendChild($)}else{let lt;for(let $ of p){if(!(F.facetAnchor?.(p,L,$)??!$.empty))continue;let at=null;if(st){let ot=h.has(F);if(at=st[ot?$.i:0],at=F.filter(at,V,q),at.length===0)continue;!ot&&at===st[0]&&(at=iw(at)),at.fx=$.x,at.fy=$.y,at.fi=$.i}let ft=F.render(at,x,q,M,_);if(ft!=null){(lt??=Fi(R).append("g")).append(()=>ft).datum($);for(let ot of["aria-label","aria-description","aria-hidden","transform"])ft.hasAttribute(ot)&&(lt.attr(ot,ft.getAttribute(ot)),ft.removeAttribute(ot))}}lt?.selectChildren().each(B)}}let z=ZE(g,_,e),{figure:U=i!=null||r!=null||s!=null||z.length>0}=e;U&&(C=w.createElement("figure"),C.className=`${l}-figure`,C.style.maxWidth="initial",i!=null&&C.append(fA(w,i,"h2")),r!=null&&C.append(fA(w,r,"h3")),C.append(...z,R),s!=null&&C.append(DU(w,s)),"value"in R&&(C.value=R.value,delete R.value)),C.scale=ST(x.scales),C.legend=XE(g,_,e);let Z=tT();return Z>0&&Fi(R).append("text").attr("x",P).attr("y",20).attr("dy","-1em").attr("text-anchor","end").attr("font-family","initial").text("⚠️").append("title").text(`${Z.toLocaleString("en-US")} warning${Z===1?"":"s"}. Please check the console.`),C}function fA(e,t,n){if(t.ownerDocument)return t;let i=e.createElement(n);return i.append(t),i}function DU(e,t){let n=e.createElement("figcaption");return n.append(t),n}function hA(e){return e.flat(1/0).filter(t=>t!=null).map(NU)}function NU(e){return typeof e.render=="function"?e:new bx(e)}var bx=class extends ye{constructor(t){if(typeof t!="function")throw new TypeError("invalid mark; missing render function");super(),this.render=t}render(){}};function Mx(e,t){for(let n in e)gA(e[n],t);return e}function gA(e,t){let{scale:n,transform:i=!0}=e;if(n==null||!i)return;let{type:r,percent:s,interval:o,transform:a=s?l=>l==null?NaN:l*100:dy(o,r)}=t[n]??{};a!=null&&(e.value=me(e.value,a),e.transform=!1)}function UU(e){for(let t in e)Ey(t,e[t])}function Fc(e,t,n,i=jS){for(let{channels:r}of t.values())for(let s in r){let o=r[s],{scale:a}=o;if(a!=null&&i(a))if(a==="projection"){if(!NT(n)){let l=n.x?.domain===void 0,c=n.y?.domain===void 0;if(l||c){let[u,h]=FT(o);l&&vx(e,"x",u),c&&vx(e,"y",h)}}}else vx(e,a,o)}return e}function vx(e,t,n){let i=e.get(t);i!==void 0?i.push(n):e.set(t,[n])}function FU(e,t){if(e==null)return;let{x:n,y:i}=e;if(n==null&&i==null)return;let r=Wr(e.data);if(r==null)throw new Error("missing facet data");let s={};n!=null&&(s.fx=Ba(r,{value:n,scale:"fx"})),i!=null&&(s.fy=Ba(r,{value:i,scale:"fy"})),Mx(s,t);let o=Qf(r,s);return{channels:s,groups:o,data:e.data}}function dA(e,t,n){if(e.facet===null||e.facet==="super")return;let{fx:i,fy:r}=e;if(i!=null||r!=null){let l=Wr(e.data??i??r);if(l===void 0)throw new Error(`missing facet data in ${e.ariaLabel}`);if(l===null)return;let c={};return i!=null&&(c.fx=Ba(l,{value:i,scale:"fx"})),r!=null&&(c.fy=Ba(l,{value:r,scale:"fy"})),Mx(c,n),{channels:c,groups:Qf(l,c)}}if(t===void 0)return;let{channels:s,groups:o,data:a}=t;if(e.facet!=="auto"||e.data===a)return{channels:s,groups:o};a.length>0&&(o.size>1||o.size===1&&s.fx&&s.fy&&[...o][0][1].size>1)&&Cs(Wr(e.data))===Cs(a)&&jn(`Warning: the ${e.ariaLabel} mark appears to use faceted data, but isn’t faceted. The mark data has the same length as the facet data and the mark facet option is "auto", but the mark data and facet data are distinct. If this mark should be faceted, set the mark facet option to true; otherwise, suppress this warning by setting the mark facet option to false.`)}function OU(e,t={}){return $r({...t,x:null,y:null},(n,i,r,s,o,a)=>a.getMarkState(e))}function BU(e){let t=[];for(let n of e){let i=n.tip;if(i){i===!0?i={}:typeof i=="string"&&(i={pointer:i});let{pointer:r,preferredAnchor:s}=i;r=/^x$/i.test(r)?XT:/^y$/i.test(r)?Ky:$T,i=r(OU(n,i)),i.title=null,s===void 0&&(i.preferredAnchor=r===Ky?"left":"bottom");let o=uA(n.data,i);o.facet=n.facet,o.facetAnchor=n.facetAnchor,t.push(o)}}return t}function kU(e,t,n){let{projection:i,x:r={},y:s={},fx:o={},fy:a={},axis:l,grid:c,facet:u={},facet:{axis:h=l,grid:f}=u,x:{axis:d=l,grid:p=d===null?null:c}=r,y:{axis:y=l,grid:g=y===null?null:c}=s,fx:{axis:m=h,grid:x=m===null?null:f}=o,fy:{axis:S=h,grid:v=S===null?null:f}=a}=n;(i||!Ia(r)&&!pA("x",e))&&(d=p=null),(i||!Ia(s)&&!pA("y",e))&&(y=g=null),t.has("fx")||(m=x=null),t.has("fy")||(S=v=null),d===void 0&&(d=!Sh(e,"x")),y===void 0&&(y=!Sh(e,"y")),m===void 0&&(m=!Sh(e,"fx")),S===void 0&&(S=!Sh(e,"fy")),d===!0&&(d="bottom"),y===!0&&(y="left"),m===!0&&(m=d==="top"||d===null?"bottom":"top"),S===!0&&(S=y==="right"||y===null?"left":"right");let M=[];return Mh(M,v,PE,a),bh(M,S,TE,"right","left",u,a),Mh(M,x,LE,o),bh(M,m,EE,"top","bottom",u,o),Mh(M,g,RE,s),bh(M,y,fx,"left","right",n,s),Mh(M,p,IE,r),bh(M,d,hx,"bottom","top",n,r),M}function bh(e,t,n,i,r,s,o){if(!t)return;let a=zU(t);o=GU(a?i:t,s,o);let{line:l}=o;(n===fx||n===hx)&&l&&!Io(l)&&e.push(sA(VU(o))),e.push(n(o)),a&&e.push(n({...o,anchor:r,label:null}))}function Mh(e,t,n,i){!t||Io(t)||e.push(n(HU(t,i)))}function zU(e){return/^\s*both\s*$/i.test(e)}function GU(e,t,{line:n=t.line,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f=t.label,labelAnchor:d,labelArrow:p=t.labelArrow,labelOffset:y}){return{anchor:e,line:n,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f,labelAnchor:d,labelArrow:p,labelOffset:y}}function VU(e){let{anchor:t,line:n}=e;return{anchor:t,facetAnchor:t+"-empty",stroke:n===!0?void 0:n}}function HU(e,{stroke:t=Ua(e)?e:void 0,ticks:n=WU(e)?e:void 0,tickSpacing:i,ariaLabel:r,ariaDescription:s}){return{stroke:t,ticks:n,tickSpacing:i,ariaLabel:r,ariaDescription:s}}function WU(e){switch(typeof e){case"number":return!0;case"string":return!Ua(e)}return Jn(e)||typeof e?.range=="function"}function Sh(e,t){let n=`${t}-axis `;return e.some(i=>i.ariaLabel?.startsWith(n))}function pA(e,t){for(let n of t)for(let i in n.channels){let{scale:r}=n.channels[i];if(r===e||r==="projection")return!0}return!1}function $U(e,t){for(let n in e){let i=e[n],r=t[n];i.label===void 0&&r&&(i.label=r.label)}return e}function XU({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Jf(n),c=e&&mA(e),u=t&&mA(t);return{marginTop:t?u[0]:i,marginRight:e?a-c[1]:r,marginBottom:t?l-u[1]:s,marginLeft:e?c[0]:o,inset:{marginTop:n.marginTop,marginRight:n.marginRight,marginBottom:n.marginBottom,marginLeft:n.marginLeft},width:a,height:l}}function mA(e){let t=e.domain();if(t.length===0)return[0,e.bandwidth()];let n=e(t[0]),i=e(t[t.length-1]);return i<n&&([n,i]=[i,n]),[n,i+e.bandwidth()]}var qU=new Map([["basis",mS],["basis-closed",yS],["basis-open",_S],["bundle",bS],["bump-x",cS],["bump-y",uS],["cardinal",MS],["cardinal-closed",SS],["cardinal-open",wS],["catmull-rom",ES],["catmull-rom-closed",CS],["catmull-rom-open",PS],["linear",To],["linear-closed",LS],["monotone-x",US],["monotone-y",FS],["natural",BS],["step",kS],["step-after",GS],["step-before",zS]]);function Sx(e=To,t){if(typeof e=="function")return e;let n=qU.get(`${e}`.toLowerCase());if(!n)throw new Error(`unknown curve: ${e}`);if(t!==void 0){if("beta"in n)return n.beta(t);if("tension"in n)return n.tension(t);if("alpha"in n)return n.alpha(t)}return n}function wh(e=Ns,t){return typeof e!="function"&&`${e}`.toLowerCase()==="auto"?Ns:Sx(e,t)}function Ns(e){return To(e)}function YU(e={y:"count"},t={}){[e,t]=JU(e,t);let{x:n,y:i}=t;return KU(jU(n,t,Ae),null,null,i,e,qa(t))}function ZU(e,t,n={}){if(n?.interval==null)return n;let{reduce:i=qf}=n,r={filter:null};return n[t]!=null&&(r[t]=i),n[`${t}1`]!=null&&(r[`${t}1`]=i),n[`${t}2`]!=null&&(r[`${t}2`]=i),e(r,n)}function _A(e={}){return ZU(YU,"y",Fo(e,"x"))}function KU(e,t,n,i,{data:r=wy,filter:s=Tc,sort:o,reverse:a,...l}={},c={}){e=yA(e),t=yA(t),l=tF(l,c),r=MA(r,Ae),o=o==null?void 0:vA("sort",o,c),s=s==null?void 0:bA("filter",s,c),n!=null&&Ec(l,"x","x1","x2")&&(n=null),i!=null&&Ec(l,"y","y1","y2")&&(i=null);let[u,h]=Ci(e),[f,d]=Ci(e),[p,y]=Ci(t),[g,m]=Ci(t),[x,S]=n!=null?[n,"x"]:i!=null?[i,"y"]:[],[v,M]=Ci(x),{x:b,y:_,z:w,fill:R,stroke:C,x1:A,x2:L,y1:B,y2:P,domain:D,cumulative:z,thresholds:U,interval:Z,...F}=c,[V,q]=Ci(w),[st]=Kn(R),[lt]=Kn(C),[$,at]=Ci(st),[ft,ot]=Ci(lt);return{..."z"in c&&{z:V||w},..."fill"in c&&{fill:$||R},..."stroke"in c&&{stroke:ft||C},...Uo(F,(rt,K,gt)=>{let ct=wc(Te(rt,x),gt?.[S]),J=Te(rt,w),It=Te(rt,st),pt=Te(rt,lt),Ot=Aw(l,{z:J,fill:It,stroke:pt}),Ht=[],le=[],oe=ct&&M([]),tn=J&&q([]),Ge=It&&at([]),Wn=pt&&ot([]),Cn=e&&h([]),$n=e&&d([]),G=t&&y([]),Xn=t&&m([]),be=iF(e,t,rt),Me=0;for(let mt of l)mt.initialize(rt);o&&o.initialize(rt),s&&s.initialize(rt);for(let mt of K){let Re=[];for(let Dt of l)Dt.scope("facet",mt);o&&o.scope("facet",mt),s&&s.scope("facet",mt);for(let[Dt,zt]of Sy(mt,Ot))for(let[I,T]of Sy(zt,ct))for(let[H,ut]of be(T))if(Ot&&(ut.z=Dt),!(s&&!s.reduce(H,ut))){Re.push(Me++),le.push(r.reduceIndex(H,rt,ut)),ct&&oe.push(I),J&&tn.push(Ot===J?Dt:J[(H.length>0?H:T)[0]]),It&&Ge.push(Ot===It?Dt:It[(H.length>0?H:T)[0]]),pt&&Wn.push(Ot===pt?Dt:pt[(H.length>0?H:T)[0]]),Cn&&(Cn.push(ut.x1),$n.push(ut.x2)),G&&(G.push(ut.y1),Xn.push(ut.y2));for(let nt of l)nt.reduce(H,ut);o&&o.reduce(H,ut)}Ht.push(Re)}return Cw(Ht,o,a),{data:le,facets:Ht}}),...!Ec(l,"x")&&(u?{x1:u,x2:f,x:Sc(u,f)}:{x:b,x1:A,x2:L}),...!Ec(l,"y")&&(p?{y1:p,y2:g,y:Sc(p,g)}:{y:_,y1:B,y2:P}),...v&&{[S]:v},...Object.fromEntries(l.map(({name:rt,output:K})=>[rt,K]))}}function JU({cumulative:e,domain:t,thresholds:n,interval:i,...r},s){return[r,{cumulative:e,domain:t,thresholds:n,interval:i,...s}]}function jU(e,{cumulative:t,domain:n,thresholds:i,interval:r},s){return e={...yr(e)},e.domain===void 0&&(e.domain=n),e.cumulative===void 0&&(e.cumulative=t),e.thresholds===void 0&&(e.thresholds=i),e.interval===void 0&&(e.interval=r),e.value===void 0&&(e.value=s),e.thresholds=QU(e.thresholds,e.interval),e}function yA(e){if(e==null)return;let{value:t,cumulative:n,domain:i=pn,thresholds:r}=e,s=o=>{let a=Te(o,t),l;if(Ue(a)||nF(r)){a=me(a,fy,Float64Array);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Rs(r)?r(a,u,h):r;typeof f=="number"&&(f=yf(u,h,f)),Rs(f)&&(i===pn&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h))),l=f}else{a=Nn(a);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Rs(r)?r(a,u,h):r;if(typeof f=="number")if(i===pn){let d=sa(u,h,f);if(isFinite(d))if(d>0){let p=Math.round(u/d),y=Math.round(h/d);p*d<=u||--p,y*d>h||++y;let g=y-p+1;f=new Float64Array(g);for(let m=0;m<g;++m)f[m]=(p+m)*d}else if(d<0){d=-d;let p=Math.round(u*d),y=Math.round(h*d);p/d<=u||--p,y/d>h||++y;let g=y-p+1;f=new Float64Array(g);for(let m=0;m<g;++m)f[m]=(p+m)/d}else f=[u];else f=[u]}else f=gs(u,h,f);else Rs(f)&&(i===pn&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h)));l=f}let c=[];if(l.length===1)c.push([l[0],l[0]]);else for(let u=1;u<l.length;++u)c.push([l[u-1],l[u]]);return c.bin=(n<0?sF:n>0?rF:wx)(c,l,a),c};return s.label=Vi(t),s}function QU(e,t,n=xA){if(e===void 0)return t===void 0?n:gr(t);if(typeof e=="string"){switch(e.toLowerCase()){case"freedman-diaconis":return kv;case"scott":return im;case"sturges":return Nv;case"auto":return xA}return bc(e)}return e}function tF(e,t){return Ew(e,t,vA)}function vA(e,t,n){return by(e,t,n,bA)}function bA(e,t,n){return My(e,t,n,MA)}function MA(e,t){return Ac(e,t,eF)}function eF(e){switch(`${e}`.toLowerCase()){case"x":return oF;case"x1":return lF;case"x2":return cF;case"y":return aF;case"y1":return uF;case"y2":return fF;case"z":return Rw}throw new Error(`invalid bin reduce: ${e}`)}function xA(e,t,n){return Math.min(200,im(e,t,n))}function nF(e){return ow(e)||Jn(e)&&Ue(e)}function iF(e,t,n){let i=e?.(n),r=t?.(n);return i&&r?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries()){let u=r.bin(o[a]);for(let[h,[f,d]]of r.entries())yield[u[h],{data:n,x1:l,y1:f,x2:c,y2:d}]}}:i?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries())yield[o[a],{data:n,x1:l,x2:c}]}:function*(s){let o=r.bin(s);for(let[a,[l,c]]of r.entries())yield[o[a],{data:n,y1:l,y2:c}]}}function wx(e,t,n){return t=Nn(t),i=>{let r=e.map(()=>[]);for(let s of i)r[aa(t,n[s])-1]?.push(s);return r}}function rF(e,t,n){let i=wx(e,t,n);return r=>{let s=i(r);for(let o=1,a=s.length;o<a;++o){let l=s[o-1],c=s[o];for(let u of l)c.push(u)}return s}}function sF(e,t,n){let i=wx(e,t,n);return r=>{let s=i(r);for(let o=s.length-2;o>=0;--o){let a=s[o+1],l=s[o];for(let c of a)l.push(c)}return s}}function SA(e,t){let n=(+e+ +t)/2;return e instanceof Date?new Date(n):n}var oF={reduceIndex(e,t,{x1:n,x2:i}){return SA(n,i)}},aF={reduceIndex(e,t,{y1:n,y2:i}){return SA(n,i)}},lF={reduceIndex(e,t,{x1:n}){return n}},cF={reduceIndex(e,t,{x2:n}){return n}},uF={reduceIndex(e,t,{y1:n}){return n}},fF={reduceIndex(e,t,{y2:n}){return n}};var hF={ariaLabel:"area",strokeWidth:1,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Th=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,z:a,curve:l,tension:c}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0},z:{value:Da(n),optional:!0}},n,hF),this.z=a,this.curve=Sx(l,c)}filter(t){return t}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n,0,0).call(u=>u.selectAll().data(oh(t,[o,a,l,c],this,i)).enter().append("path").call(Ne,this).call(sh,this,i).attr("d",aS().curve(this.curve).defined(h=>h>=0).x0(h=>o[h]).y0(h=>a[h]).x1(h=>l[h]).y1(h=>c[h]))).node()}};function Tx(e,t){let{x:n=Po,...i}=_A(t);return new Th(e,tA(KE({...i,x1:n,x2:void 0},n===Po?"y2":"y")))}var dF={ariaLabel:"link",fill:"none",stroke:"currentColor",strokeMiterlimit:1},Eh=class extends ye{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,curve:a,tension:l}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,dF),this.curve=wh(a,l),Oo(this,n)}project(t,n,i){this.curve!==Ns&&super.project(t,n,i)}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i,{curve:u}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(h=>h.selectAll().data(t).enter().append("path").call(Ne,this).attr("d",u===Ns&&s.projection?pF(s.path(),o,a,l,c):f=>{let d=yi(),p=u(d);return p.lineStart(),p.point(o[f],a[f]),p.point(l[f],c[f]),p.lineEnd(),d}).call(Sn,this,i).call(Lc,this,i,s)).node()}};function pF(e,t,n,i,r){return t=Nn(t),n=Nn(n),i=Nn(i),r=Nn(r),s=>e({type:"LineString",coordinates:[[t[s],n[s]],[i[s],r[s]]]})}function Ex(e,{x:t,x1:n,x2:i,y:r,y1:s,y2:o,...a}={}){return[n,i]=wA(t,n,i),[s,o]=wA(r,s,o),new Eh(e,{...a,x1:n,x2:i,y1:s,y2:o})}function wA(e,t,n){if(e===void 0){if(t===void 0){if(n!==void 0)return[n]}else if(n===void 0)return[t]}else{if(t===void 0)return n===void 0?[e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}var mF={ariaLabel:"dot",fill:"none",stroke:"currentColor",strokeWidth:1.5};function gF(e){return e.sort===void 0&&e.reverse===void 0?Sw({channel:"-r"},e):e}var Ah=class extends ye{constructor(t,n={}){let{x:i,y:r,r:s,rotate:o,symbol:a=Eo,frameAnchor:l}=n,[c,u]=Le(o,0),[h,f]=vw(a),[d,p]=Le(s,h==null?3:4.5);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},r:{value:d,scale:"r",filter:Co,optional:!0},rotate:{value:c,optional:!0},symbol:{value:h,scale:"auto",optional:!0}},gF(n),mF),this.r=p,this.rotate=u,this.symbol=f,this.frameAnchor=Ps(l);let{channels:y}=this,{symbol:g}=y;if(g){let{fill:m,stroke:x}=y;g.hint={fill:m?m.value===g.value?"color":"currentColor":this.fill??"currentColor",stroke:x?x.value===g.value?"color":"currentColor":this.stroke??"none"}}}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,r:u,rotate:h,symbol:f}=i,{r:d,rotate:p,symbol:y}=this,[g,m]=vr(this,r),x=y===Eo,S=u?void 0:d*d*Math.PI;return Ea(d)&&(t=[]),se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(v=>v.selectAll().data(t).enter().append(x?"circle":"path").call(Ne,this).call(x?M=>{M.attr("cx",l?b=>l[b]:g).attr("cy",c?b=>c[b]:m).attr("r",u?b=>u[b]:d)}:M=>{M.attr("transform",Ya`translate(${l?b=>l[b]:g},${c?b=>c[b]:m})${h?b=>` rotate(${h[b]})`:p?` rotate(${p})`:""}`).attr("d",u&&f?b=>{let _=yi();return f[b].draw(_,u[b]*u[b]*Math.PI),_}:u?b=>{let _=yi();return y.draw(_,u[b]*u[b]*Math.PI),_}:f?b=>{let _=yi();return f[b].draw(_,S),_}:(()=>{let b=yi();return y.draw(b,S),b})())}).call(Sn,this,i)).node()}};function Oc(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Gi(t,n)),new Ah(e,{...i,x:t,y:n})}var yF={ariaLabel:"line",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Ch=class extends ye{constructor(t,n={}){let{x:i,y:r,z:s,curve:o,tension:a}=n;super(t,{x:{value:i,scale:"x"},y:{value:r,scale:"y"},z:{value:Da(n),optional:!0}},n,yF),this.z=s,this.curve=wh(o,a),Oo(this,n)}filter(t){return t}project(t,n,i){this.curve!==Ns&&super.project(t,n,i)}render(t,n,i,r,s){let{x:o,y:a}=i,{curve:l}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(c=>c.selectAll().data(oh(t,[o,a],this,i)).enter().append("path").call(Ne,this).call(sh,this,i).call(KT,this,i,s).attr("d",l===Ns&&s.projection?xF(s.path(),o,a):U0().curve(l).defined(u=>u>=0).x(u=>o[u]).y(u=>a[u]))).node()}};function xF(e,t,n){return t=Nn(t),n=Nn(n),i=>{let r=[],s=[r];for(let o of i)o===-1?(r=[],s.push(r)):r.push([t[o],n[o]]);return e({type:"MultiLineString",coordinates:s})}}function Rh(e,{x:t,y:n,...i}={}){return[t,n]=Gi(t,n),new Ch(e,{...i,x:t,y:n})}ye.prototype.plot=function({marks:e=[],...t}={}){return Qa({...t,marks:[...e,this]})};var vF="http://www.w3.org/2000/svg";function Tt(e,t={},...n){let i=document.createElement(e);for(let[r,s]of Object.entries(t))i.setAttribute(r,s);return i.append(...n.filter(r=>r!==null)),i}function we(e,t,...n){let i=document.createElementNS(vF,e);for(let[r,s]of Object.entries(t))i.setAttribute(r,String(s));return i.append(...n.filter(r=>r!==null)),i}function ze(e,t=3){return String(Number(e.toPrecision(t)))}function EA(e,t,n,i,r){let s=[],o=i>980?Math.min(3,e.pairs.length):i>640?2:1,a=Math.min(520,Math.floor((i-16*(o-1))/o)),l=e.pairs.length===1;return s.push(Tt("div",{class:l?"side-by-side with-window":"side-by-side"},Tt("figure",{class:"small-plan"},n,Tt("figcaption",{},"From above in the blank.")),e.entries.length?MF(e,t,r):Tt("div"),l?TA(e.pairs[0],t,Math.min(380,i)):null)),e.run&&s.push(...bF(e.run,t,i,r)),e.pairs.length>1&&s.push(Tt("div",{class:"pairs"},...e.pairs.map(c=>TA(c,t,a)))),s}function AA(e){for(let t of e.querySelectorAll("style"))t.remove();for(let t of e.querySelectorAll("[aria-label]"))t.removeAttribute("aria-label");return e}function Ax(e,t,n,i,r,s,o){let a=(l,c)=>l&&l[c]!==null?l[c]*s:null;return e.to.map((l,c)=>({from:(c?e.to[c-1]:0)*o,to:l*o,low:a(t,c),high:a(n,c),left:a(i,c),right:a(r,c)}))}function bF(e,t,n,i){let r=t.unit==="mm",s=r?.001:t.scale/12,o=`cut, ${r?"m":"ft"}`,{unit:a,scale:l}=t,c=(f,d,p,y,g,m)=>{let x=Math.max(...p.flatMap(b=>[b.high??0,m?b.right??0:0]),0)||Math.max(...p.map(b=>b.right??0),0),S=g?Math.max(x*1.1,Math.min(Math.max(...p.map(b=>b.right??0)),x*2.2)):x*1.1;if(!(S>0))return null;let v=b=>b.left!==null||b.right!==null,M=AA(Qa({width:n,height:y?128:108,marginLeft:62,marginRight:12,marginTop:8,marginBottom:y?36:18,className:"chart",x:{label:y?o:null,domain:[0,e.to[e.to.length-1]*s],ticks:Math.max(3,n/110),tickFormat:y?void 0:()=>""},y:{label:null,domain:[0,S],ticks:4,grid:!0,clamp:!0},marks:[g?_h(p.filter(v),{x1:"from",x2:"to",y1:b=>b.left??0,y2:b=>b.right??S,className:"band"}):null,_h(p.filter(b=>b.high!==null),{x1:"from",x2:"to",y1:b=>Math.min(b.low??0,b.high),y2:b=>Math.max(b.high,(b.low??0)+S/60),className:"values"}),m?Bo(p.filter(b=>b.right!==null),{x1:"from",x2:"to",y:"right",className:"set-line"}):null,Bo([0])]}));return M.setAttribute("role","img"),M.setAttribute("aria-label",`${f} along the run: ${d}`),M.addEventListener("click",b=>{let _=M.getBoundingClientRect(),w=((b.clientX-_.left)/_.width*n-62)/(n-74),R=e.to[e.to.length-1],C=e.to.findIndex(A=>A>=w*R);C>=0&&w>=0&&i(e.worst[C])}),Tt("figure",{class:"run"},Tt("figcaption",{},Tt("b",{},f),` ${d}`),M)},u=e.chip_high.some(f=>f!==null),h=e.window_low.some(f=>f!==null)||e.window_high.some(f=>f!==null);return[u?c(`Chip, ${a}`,h?"thinnest to thickest; the band is its window":"thinnest to thickest; no window is known",Ax(e,e.chip_low,e.chip_high,e.window_low,e.window_high,l,s),!1,h,!1):null,c(`Feed, ${a}/min`,"what is reached; the line is F",Ax(e,e.feed_low,e.feed_high,null,e.set,l,s),!1,!1,!0),c(`Depth, ${a}`,"deepest cut at once",Ax(e,e.depth.map(f=>f===null?null:0),e.depth,null,null,l,s),!0,!1,!1)].filter(f=>f!==null)}var Cx=200,tl=116,Us=68;function MF(e,t,n){let i=Tt("div",{class:"entries"});for(let r of e.entries){let s=Tt("button",{type:"button",class:"plain script-only","aria-label":`Show line ${r.line} on the path`},`line ${r.line}`);s.addEventListener("click",()=>n(r.row));let o=[r.solid?`${ze(r.solid*t.scale)} ${t.unit} of solid`:null,r.slope!==null&&(r.kind==="ramp"||r.kind==="helix")?`${ze(r.slope)}° below level`:null].filter(Boolean).join(", ");i.append(Tt("figure",{class:"entry"},SF(r,e,e.diameter??3,t),Tt("figcaption",{},Tt("b",{},`${r.words}${r.count>1?` × ${r.count.toLocaleString("en")}`:""}`),o?` ${o} `:" ",s,Tt("span",{class:"print-only"},`line ${r.line}`))))}return i}function SF(e,t,n,i){let[r,s]=e.inside,{travel:o,z:a}=e,l=e.top??Math.max(...a),c=o[r]-n,u=o[s]+n,h=Math.min(...a.slice(r,s+1)),f=Math.min(Math.max(...a.slice(r,s+1)),l+Math.max(n,l-h)),d=Math.max((f-h)*.18,n*.3,.3),p=Cx-Us,y=Math.min(p/(u-c),tl/(f-h+2*d)),g=(c+u)/2,m=w=>Us+p/2+(w-g)*y,x=w=>tl/2-(w-(h+f)/2)*y,S=we("svg",{viewBox:`0 0 ${Cx} ${tl}`,class:"side-view",role:"img","aria-label":`${e.words}, from the side`}),v=`side-${++wF}`;S.append(we("clipPath",{id:v},we("rect",{x:Us,y:0,width:p,height:tl})));let M=we("g",{"clip-path":`url(#${v})`});S.append(M),M.append(we("rect",{x:Us,y:x(l),width:p,height:Math.max(0,tl-x(l)),class:"solid"})),M.append(we("line",{x1:Us,x2:Cx,y1:x(l),y2:x(l),class:"top"}));let b=n*y;M.append(we("path",{d:EF(m(o[s]),x(a[s]),b,t),class:"tool"}));let _=(w,R,C)=>{let A="";for(let L=Math.max(0,w);L<=Math.min(R,a.length-1);L++)A+=`${A?"L":"M"}${m(o[L]).toFixed(1)} ${x(a[L]).toFixed(1)}`;M.append(we("path",{d:A,class:C}))};return _(0,r,"way before"),_(s,a.length-1,"way before"),_(r,s,"way"),M.append(we("circle",{cx:m(o[s]),cy:x(a[s]),r:2.6,class:"tip"})),TF(S,[...e.top!==null&&x(l)>=0?[{at:x(l),text:`top ${ze(l*i.scale,4)}`}]:[],{at:x(a[s]),text:`Z ${ze(a[s]*i.scale,4)}`}]),S}var wF=0;function TF(e,t){t.sort((r,s)=>r.at-s.at);let i=-1/0;for(let r of t){let s=Math.min(tl-3,Math.max(9,r.at+3,i+12));i=s,e.append(we("path",{d:`M${Us-5} ${r.at.toFixed(1)}H${Us}`,class:"top"}),we("text",{x:Us-7,y:s,class:"note","text-anchor":"end"},r.text))}}function EF(e,t,n,i){let r=Math.max(n/2,.8);if(i.angle!==null&&i.angle<180){let o=r/Math.tan(i.angle*Math.PI/360);return`M${e-r} -2V${t-o}L${e} ${t}L${e+r} ${t-o}V-2`}let s=Math.min(i.round===null?0:i.round/(i.diameter??1)*n,r);return`M${e-r} -2V${t-s}A${s} ${s} 0 0 0 ${e-r+s} ${t}H${e+r-s}A${s} ${s} 0 0 0 ${e+r} ${t-s}V-2`}function TA(e,t,n){let{scale:i,unit:r}=t,s=r==="mm",{pairs:o}=e,a=e.speeds.map((M,b)=>({speed:M,low:e.low[b]===null&&e.high[b]===null?null:(e.low[b]??0)*i,high:e.high[b]===null?null:e.high[b]*i})),l=o.map(M=>({speed:M.speed,feed:M.feed*i,inside:M.inside})),c=o.flatMap(M=>M.near?[{from:M.speed,at:M.feed*i,speed:M.near.speed,feed:M.near.feed*i}]:[]),u=[...l,...c].map(M=>M.feed),h=[...l,...c].map(M=>M.speed),f=Math.max(...u)*1.35,d=Math.min(Math.max(f,...a.flatMap(M=>[M.low??0,M.high??0])),f*2.2),p=Math.min(e.speeds[0],...h),y=Math.max(e.speeds.at(-1),...h),g=AA(Qa({width:n,height:250,marginLeft:64,marginRight:16,marginTop:26,marginBottom:38,className:"chart",x:{label:"true speed, rev/min",domain:[p,y],ticks:Math.max(3,n/90)},y:{label:`feed, ${r}/min`,labelAnchor:"center",labelArrow:"none",domain:[0,d],clamp:!0,ticks:5},marks:[Tx(a.map(M=>({...M,high:M.low===null?null:M.high??d})),{x:"speed",y1:"low",y2:"high",className:"band"}),Rh(a,{x:"speed",y:"low",className:"limit"}),Rh(a,{x:"speed",y:"high",className:"limit"}),Nc(e.marks,{x:"speed",className:"mark-line"}),Ka(e.marks,{x:"speed",y:d,text:"mark",dy:-8,className:"mark-text"}),Ex(c,{x1:"from",y1:"at",x2:"speed",y2:"feed",className:"to-near"}),Oc(c,{x:"speed",y:"feed",symbol:"diamond",r:6,className:"near"}),Oc(l.filter(M=>M.inside),{x:"speed",y:"feed",symbol:"circle",r:5,className:"pair inside"}),Oc(l.filter(M=>!M.inside),{x:"speed",y:"feed",symbol:"times",r:6,className:"pair outside"}),Bo([0])]}));g.style.maxWidth=`${n}px`;let m=M=>`F${ze(M*i,4)}`,x=M=>s?`${ze(M*.001)} m`:`${ze(M*i/12)} ft`,S=[];for(let M of o){let{near:b}=M,_=`${ze(M.speed,5)} rev/min`,w=b?`the nearest good pair is ${m(b.feed)} at ${ze(b.speed,5)} rev/min${b.mark?`, dial ${b.mark}`:""}`:"no pair near it is inside",R=M.dial.length>1?`; on the dial ${M.dial.map(L=>`${L.mark} ${m(L.feed)}`).join(", ")}`:"",C=M.inside?"inside every limit that is known":`outside (${M.broken.join(", ")}); ${w}${R}`,A=S.find(L=>L.speed===_&&L.text===C);A?(A.feeds.push(m(M.feed)),A.cut+=M.cut):S.push({feeds:[m(M.feed)],speed:_,cut:M.cut,text:C})}let v=M=>`${M.feeds.join(", ")} at ${M.speed}`;return g.setAttribute("role","img"),g.setAttribute("aria-label",`Operating window: ${S.map(M=>`${v(M)}: ${M.text}`).join(". ")}.`),Tt("figure",{class:"window"},Tt("figcaption",{},Tt("b",{},"Operating window"),": the feeds and speeds at which every limit that is known is kept.",Tt("ul",{class:"pair-words"},...S.map(M=>Tt("li",{},Tt("b",{},v(M)),` (${x(M.cut)}): ${M.text}`)))),g,Tt("ul",{class:"key"},o.some(M=>M.inside)?Tt("li",{class:"key-in"},"in the program, inside"):null,o.some(M=>!M.inside)?Tt("li",{class:"key-out"},"in the program, outside"):null,c.length?Tt("li",{class:"key-near"},"nearest good pair"):null,e.marks.length?Tt("li",{class:"key-mark"},"mark of the dial"):null))}async function Ih(e){let t=document.getElementById(e),n=atob(t.textContent.trim()),i=new Uint8Array(n.length);for(let s=0;s<i.length;s++)i[s]=n.charCodeAt(s);t.textContent="";let r=new Blob([i]).stream().pipeThrough(new DecompressionStream("deflate"));return new Uint8Array(await new Response(r).arrayBuffer())}var Ph=class{constructor(t){this.raw=t}raw;bytes(t){return this.raw.subarray(t.at,t.at+t.length)}whole(t){let n=t.length,i=this.raw,r=new Int32Array(n),s=0;for(let o=0,a=t.at;o<n;o++,a++){let l=i[a]|i[a+n]<<8|i[a+2*n]<<16|i[a+3*n]<<24;s=t.delta?s+l|0:l,r[o]=s}return r}numbers(t){let n=this.whole(t),i=new Float32Array(n.length);for(let r=0;r<i.length;r++)i[r]=n[r]/t.scale;return i}path(t){return{n:t.line.length,x:this.numbers(t.x),y:this.numbers(t.y),z:this.numbers(t.z),line:this.whole(t.line),tool:this.whole(t.tool),kind:this.bytes(t.kind),place:this.bytes(t.place),share:this.bytes(t.share),chip:this.bytes(t.chip),depth:this.bytes(t.depth),force:this.bytes(t.force)}}};function CA(e,t){let{unit:n,scale:i,most:r}=e,s=(u,h=3)=>String(Number((u*i).toPrecision(h))),o=1/0,a=-1/0;for(let u=0;u<t.n;u++)t.kind[u]===2&&(o=Math.min(o,t.z[u+1]),a=Math.max(a,t.z[u+1]));o>a&&(o=a=0),o===a&&(o-=.5,a+=.5);let l=(u,h,f=254)=>u[h]===255?NaN:Math.min(u[h]/f,1),c=(o+a)/2;return[{key:"chip",label:"chip against its window",about:"the slice of one tooth, against what is good",at:(u,h)=>l(u.place,h,240),ticks:[[0,"nothing"],[1/3,"thinnest good"],[2/3,"thickest good"],[1,"twice that"]]},{key:"reached",label:"reached over set feed",about:"how much of F the machine really gets to",at:(u,h)=>l(u.share,h,200),ticks:[[0,"0 %"],[.5,"50 %"],[1,"all of F"]]},{key:"depth",label:"depth of cut",about:"how deep the tool cuts at once",at:(u,h)=>l(u.depth,h),ticks:[[0,"0"],[.5,s(r.depth/2)],[1,`${s(r.depth)} ${n}`]]},{key:"force",label:"force",about:"on the tool, the high end of what it may be",at:(u,h)=>l(u.force,h),ticks:[[0,"0"],[.5,String(Number((r.force/2).toPrecision(2)))],[1,`${Number(r.force.toPrecision(2))} N`]]},{key:"height",label:"height",about:"Z of the tip of the tool",at:(u,h)=>(u.z[h+1]-o)/(a-o),ticks:[[0,s(o)],[.5,s(c)],[1,`${s(a)} ${n}`]]}]}function el(e,t){return gc(t?.18+.82*e:.9*e)}function Rx(e,t){let n=0,i=0;for(let r=0;r<t.n;r++)t.kind[r]===2&&(n++,Number.isNaN(e.at(t,r))||i++);return n?i/n:0}var AF=512,CF=[0,1/1500,1/500,1/200],RF=1/3,PF=(Math.sqrt(5)-1)/2,IF=.12,Dh=class{constructor(t,n){this.fine=t;this.coarse=n;this.at=LF(t,n),this.matters=DF(n)}fine;coarse;at;kept=null;matters;all(t,n,i){let{fine:r}=this,s=[];for(let l=0;l<r.n;l++)r.kind[l]===t&&(n===null||r.tool[l]===n)&&s.push(l);let o=Int32Array.from(s),a=o.map(l=>l+1);return{from:o,to:a,colour:Float32Array.from(s,l=>i.at(r,l))}}few(t,n,i,r,s){let o=this.means(i),a=[];for(let l of CF)if(a=this.merged(t,n,l*s,o),a.length<=r)break;return a.length>r&&(a=this.thinned(a,r,s)),{from:Int32Array.from(a,([l])=>this.at[l]),to:Int32Array.from(a,([,l])=>this.at[l]),colour:Float32Array.from(a,([l,c])=>o(l,c))}}means(t){if(this.kept?.key===t.key)return this.kept.mean;let{fine:n,at:i}=this,{x:r,y:s,z:o}=n,a=new Float64Array(n.n+1),l=new Float64Array(n.n+1);for(let u=0;u<n.n;u++){let h=n.kind[u]===2?t.at(n,u):NaN,f=!Number.isNaN(h),d=f?Math.hypot(r[u+1]-r[u],s[u+1]-s[u],o[u+1]-o[u])+1e-9:0;a[u+1]=a[u]+d,l[u+1]=l[u]+(f?d*h:0)}let c=(u,h)=>(l[i[h]]-l[i[u]])/(a[i[h]]-a[i[u]]);return this.kept={key:t.key,mean:c},c}merged(t,n,i,r){let{coarse:s,matters:o}=this,a=[],l=NaN;for(let c=0;c<s.n;c++){if(s.kind[c]!==t||n!==null&&s.tool[c]!==n)continue;let u=a[a.length-1],h=r(c,c+1),f=Number.isNaN(l)?Number.isNaN(h):Math.abs(l-h)<=IF;u&&u[1]===c&&o[c]<=i&&f?u[1]=c+1:(a.push([c,c+1]),l=h)}return a}thinned(t,n,i){let{x:r,y:s,z:o}=this.coarse,a=t.map(([h,f])=>Math.hypot(r[f]-r[h],s[f]-s[h],o[f]-o[h])>i*RF),l=a.reduce((h,f)=>h+Number(f),0),c=l<=n/2?l:0,u=(n-c)/Math.max(1,t.length-c);return t.filter((h,f)=>c>0&&a[f]||f*PF%1<u)}};function LF(e,t){let n=new Int32Array(t.x.length);for(let i=0,r=0;i<n.length;i++){for(;r+1<e.x.length&&(e.x[r]!==t.x[i]||e.y[r]!==t.y[i]||e.z[r]!==t.z[i]);)r++;n[i]=r}return n}function DF(e){let t=new Float32Array(e.x.length).fill(1/0),n=0;for(let i=1;i<=e.n;i++)i<e.n&&i-n<AF&&e.kind[i]!==4&&e.kind[i]===e.kind[n]&&e.tool[i]===e.tool[n]||(NF(e,t,n,i),n=i);return t}function NF(e,t,n,i){let{x:r,y:s,z:o}=e,a=[[n,i,1/0]];for(let l=a.pop();l;l=a.pop()){let[c,u,h]=l;if(u-c<2)continue;let f=r[u]-r[c],d=s[u]-s[c],p=o[u]-o[c],y=f*f+d*d+p*p,g=-1,m=c+1;for(let x=c+1;x<u;x++){let S=r[x]-r[c],v=s[x]-s[c],M=o[x]-o[c],b=y>0?Math.min(1,Math.max(0,(S*f+v*d+M*p)/y)):0,_=(S-b*f)**2+(v-b*d)**2+(M-b*p)**2;_>g&&(g=_,m=x)}t[m]=Math.min(h,Math.sqrt(g)),a.push([c,m,t[m]],[m,u,t[m]])}}var Jr=22,Px=6e6,Nh=class{constructor(t,n,i,r,s){this.lines=t;this.numbers=n;this.total=i;this.findings=r;this.pick=s;this.rows=Tt("div",{class:"rows",role:"presentation"}),this.inner=Tt("div",{class:"inner",role:"presentation"},this.rows),this.element=Tt("div",{class:"listing",tabindex:"0",role:"listbox","aria-label":"Text of the program"},this.inner),this.inner.style.height=`${Math.min(this.lines.length*Jr,Px)}px`,this.element.addEventListener("scroll",()=>this.refresh()),this.element.addEventListener("keydown",o=>this.key(o)),this.rows.addEventListener("click",o=>{let a=o.target.closest("[data-line]");a&&this.pick(Number(a.dataset.line))}),new ResizeObserver(()=>this.refresh()).observe(this.element),this.refresh()}lines;numbers;total;findings;pick;element;inner;rows;chosen=-1;marked=new Set;show(t,n=[]){this.marked=new Set(n),this.chosen=this.placeOf(t);let i=Math.max(1,Math.floor(this.element.clientHeight/Jr)),r=Math.max(0,this.chosen-Math.floor(i/2));this.element.scrollTop=r*this.scale(i),this.refresh()}scale(t){let n=Math.max(1,this.lines.length-t);return this.lines.length*Jr<=Px?Jr:(Px-t*Jr)/n}placeOf(t){let n=0,i=this.lines.length-1;for(;n<i;){let r=n+i+1>>1;this.numbers(r)<=t?n=r:i=r-1}return n}key(t){let n=Math.max(1,Math.floor(this.element.clientHeight/Jr)-1),i={ArrowDown:1,ArrowUp:-1,PageDown:n,PageUp:-n,Home:-1/0,End:1/0}[t.key];if(i===void 0)return;t.preventDefault();let r=Math.min(this.lines.length-1,Math.max(0,this.chosen+i));this.pick(this.numbers(r))}refresh(){let t=Math.ceil(this.element.clientHeight/Jr)+1,n=this.scale(t),i=Math.max(0,Math.min(this.lines.length-t+1,Math.floor(this.element.scrollTop/n))),r=[];for(let s=i;s<Math.min(this.lines.length,i+t);s++)r.push(this.row(s));this.rows.style.transform=`translateY(${n===Jr?i*Jr:this.element.scrollTop}px)`,this.rows.replaceChildren(...r),this.chosen>=i&&this.chosen<i+t?this.element.setAttribute("aria-activedescendant",`line-${this.numbers(this.chosen)}`):this.element.removeAttribute("aria-activedescendant")}row(t){let n=this.numbers(t),i=t===this.chosen,r=Tt("div",{class:i?"row here":this.marked.has(n)?"row also":"row",role:"option",id:`line-${n}`,"aria-selected":String(i),"data-line":String(n)},Tt("i",{},n.toLocaleString("en")),Tt("code",{},this.lines[t]));t>0&&this.numbers(t-1)!==n-1&&r.classList.add("gap");let o=this.findings.get(n);return o&&r.append(Tt("span",{class:"at"},`finding ${o.slice(0,3).map(a=>a+1).join(", ")}`)),r}get whole(){return this.lines.length===this.total}};var Ys={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Zs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},o2=0,a_=1,a2=2;var du=1,l2=2,Pl=3,Ks=0,Gn=1,Di=2,qo=0,Il=1,l_=2,c_=3,u_=4,c2=5;var Yo=100,u2=101,f2=102,h2=103,d2=104,p2=200,m2=201,g2=202,y2=203,f_=204,h_=205,x2=206,_2=207,v2=208,b2=209,M2=210,S2=211,w2=212,T2=213,E2=214,cd=0,ud=1,fd=2,_l=3,hd=4,dd=5,pd=6,md=7,Hd=0,A2=1,C2=2,wr=0,d_=1,p_=2,m_=3,g_=4,y_=5,x_=6,__=7;var v_=300,Zo=301,Ll=302,Wd=303,$d=304,gd=1e3,Mr=1001,yd=1002,hn=1003,R2=1004;var pu=1005;var kn=1006,Xd=1007;var fs=1008;var ti=1009,b_=1010,M_=1011,Dl=1012,qd=1013,Ji=1014,ji=1015,Qi=1016,Yd=1017,Zd=1018,Ko=1020,S_=35902,w_=35899,T_=1021,E_=1022,tr=1023,ss=1026,hs=1027,A_=1028,Kd=1029,Js=1030,Jd=1031;var jd=1033,mu=33776,gu=33777,yu=33778,xu=33779,Qd=35840,tp=35841,ep=35842,np=35843,ip=36196,rp=37492,sp=37496,op=37488,ap=37489,_u=37490,lp=37491,cp=37808,up=37809,fp=37810,hp=37811,dp=37812,pp=37813,mp=37814,gp=37815,yp=37816,xp=37817,_p=37818,vp=37819,bp=37820,Mp=37821,Sp=36492,wp=36494,Tp=36495,Ep=36283,Ap=36284,vu=36285,Cp=36286;var $c=2300,xd=2301,ad=2302,t_=2303,e_=2400,n_=2401,i_=2402;var P2=3200;var Rp=0,I2=1,ds="",Bn="srgb",Xc="srgb-linear",qc="linear",he="srgb";var ld=7680;var L2=519,D2=512,N2=513,U2=514,C_=515,F2=516,O2=517,R_=518,P_=519,I_=35044;var L_="300 es",Ii=2e3,vl=2001;function UF(e){for(let t=e.length-1;t>=0;--t)if(e[t]>=65535)return!0;return!1}function FF(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function Yc(e){return document.createElementNS("http://www.w3.org/1999/xhtml",e)}function B2(){let e=Yc("canvas");return e.style.display="block",e}var RA={},bl=null;function Zc(...e){let t="THREE."+e.shift();bl?bl("log",t,...e):console.log(t,...e)}function k2(e){let t=e[0];if(typeof t=="string"&&t.startsWith("TSL:")){let n=e[1];n&&n.isStackTrace?e[0]+=" "+n.getLocation():e[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return e}function Ft(...e){e=k2(e);let t="THREE."+e.shift();if(bl)bl("warn",t,...e);else{let n=e[0];n&&n.isStackTrace?console.warn(n.getError(t)):console.warn(t,...e)}}function Gt(...e){e=k2(e);let t="THREE."+e.shift();if(bl)bl("error",t,...e);else{let n=e[0];n&&n.isStackTrace?console.error(n.getError(t)):console.error(t,...e)}}function Hc(...e){let t=e.join(" ");t in RA||(RA[t]=!0,Ft(...e))}function z2(e,t,n){return new Promise(function(i,r){function s(){switch(e.clientWaitSync(t,e.SYNC_FLUSH_COMMANDS_BIT,0)){case e.WAIT_FAILED:r();break;case e.TIMEOUT_EXPIRED:setTimeout(s,n);break;default:i()}}setTimeout(s,n)})}var G2={[cd]:cd,[fd]:pd,[hd]:hd,[_l]:dd,[ud]:ud,[pd]:fd,[md]:md,[dd]:_l},Yi=class{addEventListener(t,n){this._listeners===void 0&&(this._listeners={});let i=this._listeners;i[t]===void 0&&(i[t]=[]),i[t].indexOf(n)===-1&&i[t].push(n)}hasEventListener(t,n){let i=this._listeners;return i===void 0?!1:i[t]!==void 0&&i[t].indexOf(n)!==-1}removeEventListener(t,n){let i=this._listeners;if(i===void 0)return;let r=i[t];if(r!==void 0){let s=r.indexOf(n);s!==-1&&r.splice(s,1)}}dispatchEvent(t){let n=this._listeners;if(n===void 0)return;let i=n[t.type];if(i!==void 0){t.target=this;let r=i.slice(0);for(let s=0,o=r.length;s<o;s++)r[s].call(this,t);t.target=null}}},wn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],PA=1234567,yl=Math.PI/180,Ml=180/Math.PI;function js(){let e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0,i=Math.random()*4294967295|0;return(wn[e&255]+wn[e>>8&255]+wn[e>>16&255]+wn[e>>24&255]+"-"+wn[t&255]+wn[t>>8&255]+"-"+wn[t>>16&15|64]+wn[t>>24&255]+"-"+wn[n&63|128]+wn[n>>8&255]+"-"+wn[n>>16&255]+wn[n>>24&255]+wn[i&255]+wn[i>>8&255]+wn[i>>16&255]+wn[i>>24&255]).toLowerCase()}function Xt(e,t,n){return Math.max(t,Math.min(n,e))}function D_(e,t){return(e%t+t)%t}function OF(e,t,n,i,r){return i+(e-t)*(r-i)/(n-t)}function BF(e,t,n){return e!==t?(n-e)/(t-e):0}function Wc(e,t,n){return(1-n)*e+n*t}function kF(e,t,n,i){return Wc(e,t,1-Math.exp(-n*i))}function zF(e,t=1){return t-Math.abs(D_(e,t*2)-t)}function GF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*(3-2*e))}function VF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*e*(e*(e*6-15)+10))}function HF(e,t){return e+Math.floor(Math.random()*(t-e+1))}function WF(e,t){return e+Math.random()*(t-e)}function $F(e){return e*(.5-Math.random())}function XF(e){e!==void 0&&(PA=e);let t=PA+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function qF(e){return e*yl}function YF(e){return e*Ml}function ZF(e){return e>0&&Number.isInteger(e)&&2**Math.round(Math.log2(e))===e}function KF(e){return Math.pow(2,Math.ceil(Math.log(e)/Math.LN2))}function N_(e){return Math.pow(2,Math.floor(Math.log(e)/Math.LN2))}function JF(e,t,n,i,r){let s=Math.cos,o=Math.sin,a=s(n/2),l=o(n/2),c=s((t+i)/2),u=o((t+i)/2),h=s((t-i)/2),f=o((t-i)/2),d=s((i-t)/2),p=o((i-t)/2);switch(r){case"XYX":e.set(a*u,l*h,l*f,a*c);break;case"YZY":e.set(l*f,a*u,l*h,a*c);break;case"ZXZ":e.set(l*h,l*f,a*u,a*c);break;case"XZX":e.set(a*u,l*p,l*d,a*c);break;case"YXY":e.set(l*d,a*u,l*p,a*c);break;case"ZYZ":e.set(l*p,l*d,a*u,a*c);break;default:Ft("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+r)}}function Pp(e){switch(e.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function U_(e,t){if(t.constructor===Float32Array)return e;let n=Pp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(e/n,-1)}function F_(e,t){if(t.constructor===Float32Array)return e;let n=Pp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(e*n)}var bu={DEG2RAD:yl,RAD2DEG:Ml,generateUUID:js,clamp:Xt,euclideanModulo:D_,mapLinear:OF,inverseLerp:BF,lerp:Wc,damp:kF,pingpong:zF,smoothstep:GF,smootherstep:VF,randInt:HF,randFloat:WF,randFloatSpread:$F,seededRandom:XF,degToRad:qF,radToDeg:YF,isPowerOfTwo:ZF,ceilPowerOfTwo:KF,floorPowerOfTwo:N_,setQuaternionFromProperEuler:JF,normalize:F_,denormalize:U_},Bt=class{static{this.prototype.isVector2=!0}constructor(t=0,n=0){this.x=t,this.y=n}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,n){return this.x=t,this.y=n,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let n=this.x,i=this.y,r=t.elements;return this.x=r[0]*n+r[3]*i+r[6],this.y=r[1]*n+r[4]*i+r[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y;return n*n+i*i}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this}rotateAround(t,n){let i=Math.cos(n),r=Math.sin(n),s=this.x-t.x,o=this.y-t.y;return this.x=s*i-o*r+t.x,this.y=s*r+o*i+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},ui=class{constructor(t=0,n=0,i=0,r=1){this.isQuaternion=!0,this._x=t,this._y=n,this._z=i,this._w=r}static slerpFlat(t,n,i,r,s,o,a){let l=i[r+0],c=i[r+1],u=i[r+2],h=i[r+3],f=s[o+0],d=s[o+1],p=s[o+2],y=s[o+3];if(h!==y||l!==f||c!==d||u!==p){let g=l*f+c*d+u*p+h*y;g<0&&(f=-f,d=-d,p=-p,y=-y,g=-g);let m=1-a;if(g<.9995){let x=Math.acos(g),S=Math.sin(x);m=Math.sin(m*x)/S,a=Math.sin(a*x)/S,l=l*m+f*a,c=c*m+d*a,u=u*m+p*a,h=h*m+y*a}else{l=l*m+f*a,c=c*m+d*a,u=u*m+p*a,h=h*m+y*a;let x=1/Math.sqrt(l*l+c*c+u*u+h*h);l*=x,c*=x,u*=x,h*=x}}t[n]=l,t[n+1]=c,t[n+2]=u,t[n+3]=h}static multiplyQuaternionsFlat(t,n,i,r,s,o){let a=i[r],l=i[r+1],c=i[r+2],u=i[r+3],h=s[o],f=s[o+1],d=s[o+2],p=s[o+3];return t[n]=a*p+u*h+l*d-c*f,t[n+1]=l*p+u*f+c*h-a*d,t[n+2]=c*p+u*d+a*f-l*h,t[n+3]=u*p-a*h-l*f-c*d,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,n,i,r){return this._x=t,this._y=n,this._z=i,this._w=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,n=!0){let i=t._x,r=t._y,s=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(i/2),u=a(r/2),h=a(s/2),f=l(i/2),d=l(r/2),p=l(s/2);switch(o){case"XYZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"YXZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"ZXY":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"ZYX":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"YZX":this._x=f*u*h+c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h-f*d*p;break;case"XZY":this._x=f*u*h-c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h+f*d*p;break;default:Ft("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return n===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,n){let i=n/2,r=Math.sin(i);return this._x=t.x*r,this._y=t.y*r,this._z=t.z*r,this._w=Math.cos(i),this._onChangeCallback(),this}setFromRotationMatrix(t){let n=t.elements,i=n[0],r=n[4],s=n[8],o=n[1],a=n[5],l=n[9],c=n[2],u=n[6],h=n[10],f=i+a+h;if(f>0){let d=.5/Math.sqrt(f+1);this._w=.25/d,this._x=(u-l)*d,this._y=(s-c)*d,this._z=(o-r)*d}else if(i>a&&i>h){let d=2*Math.sqrt(1+i-a-h);this._w=(u-l)/d,this._x=.25*d,this._y=(r+o)/d,this._z=(s+c)/d}else if(a>h){let d=2*Math.sqrt(1+a-i-h);this._w=(s-c)/d,this._x=(r+o)/d,this._y=.25*d,this._z=(l+u)/d}else{let d=2*Math.sqrt(1+h-i-a);this._w=(o-r)/d,this._x=(s+c)/d,this._y=(l+u)/d,this._z=.25*d}return this._onChangeCallback(),this}setFromUnitVectors(t,n){let i=t.dot(n)+1;return i<1e-8?(i=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=i):(this._x=0,this._y=-t.z,this._z=t.y,this._w=i)):(this._x=t.y*n.z-t.z*n.y,this._y=t.z*n.x-t.x*n.z,this._z=t.x*n.y-t.y*n.x,this._w=i),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(Xt(this.dot(t),-1,1)))}rotateTowards(t,n){let i=this.angleTo(t);if(i===0)return this;let r=Math.min(1,n/i);return this.slerp(t,r),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=n._x,l=n._y,c=n._z,u=n._w;return this._x=i*u+o*a+r*c-s*l,this._y=r*u+o*l+s*a-i*c,this._z=s*u+o*c+i*l-r*a,this._w=o*u-i*a-r*l-s*c,this._onChangeCallback(),this}slerp(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=this.dot(t);a<0&&(i=-i,r=-r,s=-s,o=-o,a=-a);let l=1-n;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,n=Math.sin(n*c)/u,this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this._onChangeCallback()}else this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this.normalize();return this}slerpQuaternions(t,n,i){return this.copy(t).slerp(n,i)}random(){let t=2*Math.PI*Math.random(),n=2*Math.PI*Math.random(),i=Math.random(),r=Math.sqrt(1-i),s=Math.sqrt(i);return this.set(r*Math.sin(t),r*Math.cos(t),s*Math.sin(n),s*Math.cos(n))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,n=0){return this._x=t[n],this._y=t[n+1],this._z=t[n+2],this._w=t[n+3],this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._w,t}fromBufferAttribute(t,n){return this._x=t.getX(n),this._y=t.getY(n),this._z=t.getZ(n),this._w=t.getW(n),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},k=class{static{this.prototype.isVector3=!0}constructor(t=0,n=0,i=0){this.x=t,this.y=n,this.z=i}set(t,n,i){return i===void 0&&(i=this.z),this.x=t,this.y=n,this.z=i,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,n){return this.x=t.x*n.x,this.y=t.y*n.y,this.z=t.z*n.z,this}applyEuler(t){return this.applyQuaternion(IA.setFromEuler(t))}applyAxisAngle(t,n){return this.applyQuaternion(IA.setFromAxisAngle(t,n))}applyMatrix3(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[3]*i+s[6]*r,this.y=s[1]*n+s[4]*i+s[7]*r,this.z=s[2]*n+s[5]*i+s[8]*r,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=t.elements,o=1/(s[3]*n+s[7]*i+s[11]*r+s[15]);return this.x=(s[0]*n+s[4]*i+s[8]*r+s[12])*o,this.y=(s[1]*n+s[5]*i+s[9]*r+s[13])*o,this.z=(s[2]*n+s[6]*i+s[10]*r+s[14])*o,this}applyQuaternion(t){let n=this.x,i=this.y,r=this.z,s=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*r-a*i),u=2*(a*n-s*r),h=2*(s*i-o*n);return this.x=n+l*c+o*h-a*u,this.y=i+l*u+a*c-s*h,this.z=r+l*h+s*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[4]*i+s[8]*r,this.y=s[1]*n+s[5]*i+s[9]*r,this.z=s[2]*n+s[6]*i+s[10]*r,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,n){let i=t.x,r=t.y,s=t.z,o=n.x,a=n.y,l=n.z;return this.x=r*l-s*a,this.y=s*o-i*l,this.z=i*a-r*o,this}projectOnVector(t){let n=t.lengthSq();if(n===0)return this.set(0,0,0);let i=t.dot(this)/n;return this.copy(t).multiplyScalar(i)}projectOnPlane(t){return Ix.copy(this).projectOnVector(t),this.sub(Ix)}reflect(t){return this.sub(Ix.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y,r=this.z-t.z;return n*n+i*i+r*r}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,n,i){let r=Math.sin(n)*t;return this.x=r*Math.sin(i),this.y=Math.cos(n)*t,this.z=r*Math.cos(i),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,n,i){return this.x=t*Math.sin(n),this.y=i,this.z=t*Math.cos(n),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this}setFromMatrixScale(t){let n=this.setFromMatrixColumn(t,0).length(),i=this.setFromMatrixColumn(t,1).length(),r=this.setFromMatrixColumn(t,2).length();return this.x=n,this.y=i,this.z=r,this}setFromMatrixColumn(t,n){return this.fromArray(t.elements,n*4)}setFromMatrix3Column(t,n){return this.fromArray(t.elements,n*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,n=Math.random()*2-1,i=Math.sqrt(1-n*n);return this.x=i*Math.cos(t),this.y=n,this.z=i*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Ix=new k,IA=new ui,Vt=class{static{this.prototype.isMatrix3=!0}constructor(t,n,i,r,s,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c)}set(t,n,i,r,s,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=r,u[2]=a,u[3]=n,u[4]=s,u[5]=l,u[6]=i,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],this}extractBasis(t,n,i){return t.setFromMatrix3Column(this,0),n.setFromMatrix3Column(this,1),i.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let n=t.elements;return this.set(n[0],n[4],n[8],n[1],n[5],n[9],n[2],n[6],n[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[3],l=i[6],c=i[1],u=i[4],h=i[7],f=i[2],d=i[5],p=i[8],y=r[0],g=r[3],m=r[6],x=r[1],S=r[4],v=r[7],M=r[2],b=r[5],_=r[8];return s[0]=o*y+a*x+l*M,s[3]=o*g+a*S+l*b,s[6]=o*m+a*v+l*_,s[1]=c*y+u*x+h*M,s[4]=c*g+u*S+h*b,s[7]=c*m+u*v+h*_,s[2]=f*y+d*x+p*M,s[5]=f*g+d*S+p*b,s[8]=f*m+d*v+p*_,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[3]*=t,n[6]*=t,n[1]*=t,n[4]*=t,n[7]*=t,n[2]*=t,n[5]*=t,n[8]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return n*o*u-n*a*c-i*s*u+i*a*l+r*s*c-r*o*l}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=u*o-a*c,f=a*l-u*s,d=c*s-o*l,p=n*h+i*f+r*d;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let y=1/p;return t[0]=h*y,t[1]=(r*c-u*i)*y,t[2]=(a*i-r*o)*y,t[3]=f*y,t[4]=(u*n-r*l)*y,t[5]=(r*s-a*n)*y,t[6]=d*y,t[7]=(i*l-c*n)*y,t[8]=(o*n-i*s)*y,this}transpose(){let t,n=this.elements;return t=n[1],n[1]=n[3],n[3]=t,t=n[2],n[2]=n[6],n[6]=t,t=n[5],n[5]=n[7],n[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let n=this.elements;return t[0]=n[0],t[1]=n[3],t[2]=n[6],t[3]=n[1],t[4]=n[4],t[5]=n[7],t[6]=n[2],t[7]=n[5],t[8]=n[8],this}setUvTransform(t,n,i,r,s,o,a){let l=Math.cos(s),c=Math.sin(s);return this.set(i*l,i*c,-i*(l*o+c*a)+o+t,-r*c,r*l,-r*(-c*o+l*a)+a+n,0,0,1),this}scale(t,n){return Hc("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Lx.makeScale(t,n)),this}rotate(t){return Hc("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Lx.makeRotation(-t)),this}translate(t,n){return Hc("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Lx.makeTranslation(t,n)),this}makeTranslation(t,n){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,n,0,0,1),this}makeRotation(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,i,n,0,0,0,1),this}makeScale(t,n){return this.set(t,0,0,0,n,0,0,0,1),this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<9;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<9;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Lx=new Vt,LA=new Vt().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),DA=new Vt().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function jF(){let e={enabled:!0,workingColorSpace:Xc,spaces:{},convert:function(r,s,o){return this.enabled===!1||s===o||!s||!o||(this.spaces[s].transfer===he&&(r.r=rs(r.r),r.g=rs(r.g),r.b=rs(r.b)),this.spaces[s].primaries!==this.spaces[o].primaries&&(r.applyMatrix3(this.spaces[s].toXYZ),r.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===he&&(r.r=xl(r.r),r.g=xl(r.g),r.b=xl(r.b))),r},workingToColorSpace:function(r,s){return this.convert(r,this.workingColorSpace,s)},colorSpaceToWorking:function(r,s){return this.convert(r,s,this.workingColorSpace)},getPrimaries:function(r){return this.spaces[r].primaries},getTransfer:function(r){return r===ds?qc:this.spaces[r].transfer},getToneMappingMode:function(r){return this.spaces[r].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(r,s=this.workingColorSpace){return r.fromArray(this.spaces[s].luminanceCoefficients)},define:function(r){Object.assign(this.spaces,r)},_getMatrix:function(r,s,o){return r.copy(this.spaces[o].fromXYZ).multiply(this.spaces[s].toXYZ)},_getDrawingBufferColorSpace:function(r){return this.spaces[r].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(r=this.workingColorSpace){return this.spaces[r].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],n=[.2126,.7152,.0722],i=[.3127,.329];return e.define({[Xc]:{primaries:t,whitePoint:i,transfer:qc,toXYZ:LA,fromXYZ:DA,luminanceCoefficients:n,workingColorSpaceConfig:{unpackColorSpace:Bn},outputColorSpaceConfig:{drawingBufferColorSpace:Bn}},[Bn]:{primaries:t,whitePoint:i,transfer:he,toXYZ:LA,fromXYZ:DA,luminanceCoefficients:n,outputColorSpaceConfig:{drawingBufferColorSpace:Bn}}}),e}var ie=jF();function rs(e){return e<.04045?e*.0773993808:Math.pow(e*.9478672986+.0521327014,2.4)}function xl(e){return e<.0031308?e*12.92:1.055*Math.pow(e,.41666)-.055}var nl,_d=class{static getDataURL(t,n="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let i;if(t instanceof HTMLCanvasElement)i=t;else{nl===void 0&&(nl=Yc("canvas")),nl.width=t.width,nl.height=t.height;let r=nl.getContext("2d");t instanceof ImageData?r.putImageData(t,0,0):r.drawImage(t,0,0,t.width,t.height),i=nl}return i.toDataURL(n)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let n=Yc("canvas");n.width=t.width,n.height=t.height;let i=n.getContext("2d");i.drawImage(t,0,0,t.width,t.height);let r=i.getImageData(0,0,t.width,t.height),s=r.data;for(let o=0;o<s.length;o++)s[o]=rs(s[o]/255)*255;return i.putImageData(r,0,0),n}else if(t.data){let n=t.data.slice(0);for(let i=0;i<n.length;i++)n instanceof Uint8Array||n instanceof Uint8ClampedArray?n[i]=Math.floor(rs(n[i]/255)*255):n[i]=rs(n[i]);return{data:n,width:t.width,height:t.height}}else return Ft("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},QF=0,Sl=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:QF++}),this.uuid=js(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let n=this.data;return typeof HTMLVideoElement<"u"&&n instanceof HTMLVideoElement?t.set(n.videoWidth,n.videoHeight,0):typeof VideoFrame<"u"&&n instanceof VideoFrame?t.set(n.displayWidth,n.displayHeight,0):n!==null?t.set(n.width||0,n.height||0,n.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let i={uuid:this.uuid,url:""},r=this.data;if(r!==null){let s;if(Array.isArray(r)){s=[];for(let o=0,a=r.length;o<a;o++)r[o].isDataTexture?s.push(Dx(r[o].image)):s.push(Dx(r[o]))}else s=Dx(r);i.url=s}return n||(t.images[this.uuid]=i),i}};function Dx(e){return typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap?_d.getDataURL(e):e.data?{data:Array.from(e.data),width:e.width,height:e.height,type:e.data.constructor.name}:(Ft("Texture: Unable to serialize Texture."),{})}var tO=0,Nx=new k,Qn=class e extends Yi{constructor(t=e.DEFAULT_IMAGE,n=e.DEFAULT_MAPPING,i=Mr,r=Mr,s=kn,o=fs,a=tr,l=ti,c=e.DEFAULT_ANISOTROPY,u=ds){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:tO++}),this.uuid=js(),this.name="",this.source=new Sl(t),this.mipmaps=[],this.mapping=n,this.channel=0,this.wrapS=i,this.wrapT=r,this.magFilter=s,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new Bt(0,0),this.repeat=new Bt(1,1),this.center=new Bt(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Vt,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Nx).x}get height(){return this.source.getSize(Nx).y}get depth(){return this.source.getSize(Nx).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let n in t){let i=t[n];if(i===void 0){Ft(`Texture.setValues(): parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Texture.setValues(): property '${n}' does not exist.`);continue}r&&i&&r.isVector2&&i.isVector2||r&&i&&r.isVector3&&i.isVector3||r&&i&&r.isMatrix3&&i.isMatrix3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let i={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(i.userData=this.userData),n||(t.textures[this.uuid]=i),i}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==v_)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case gd:t.x=t.x-Math.floor(t.x);break;case Mr:t.x=t.x<0?0:1;break;case yd:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case gd:t.y=t.y-Math.floor(t.y);break;case Mr:t.y=t.y<0?0:1;break;case yd:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Qn.DEFAULT_IMAGE=null;Qn.DEFAULT_MAPPING=v_;Qn.DEFAULT_ANISOTROPY=1;var de=class{static{this.prototype.isVector4=!0}constructor(t=0,n=0,i=0,r=1){this.x=t,this.y=n,this.z=i,this.w=r}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,n,i,r){return this.x=t,this.y=n,this.z=i,this.w=r,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;case 3:this.w=n;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this.w=t.w+n.w,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this.w+=t.w*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this.w=t.w-n.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=this.w,o=t.elements;return this.x=o[0]*n+o[4]*i+o[8]*r+o[12]*s,this.y=o[1]*n+o[5]*i+o[9]*r+o[13]*s,this.z=o[2]*n+o[6]*i+o[10]*r+o[14]*s,this.w=o[3]*n+o[7]*i+o[11]*r+o[15]*s,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let n=Math.sqrt(1-t.w*t.w);return n<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/n,this.y=t.y/n,this.z=t.z/n),this}setAxisAngleFromRotationMatrix(t){let n,i,r,s,l=t.elements,c=l[0],u=l[4],h=l[8],f=l[1],d=l[5],p=l[9],y=l[2],g=l[6],m=l[10];if(Math.abs(u-f)<.01&&Math.abs(h-y)<.01&&Math.abs(p-g)<.01){if(Math.abs(u+f)<.1&&Math.abs(h+y)<.1&&Math.abs(p+g)<.1&&Math.abs(c+d+m-3)<.1)return this.set(1,0,0,0),this;n=Math.PI;let S=(c+1)/2,v=(d+1)/2,M=(m+1)/2,b=(u+f)/4,_=(h+y)/4,w=(p+g)/4;return S>v&&S>M?S<.01?(i=0,r=.707106781,s=.707106781):(i=Math.sqrt(S),r=b/i,s=_/i):v>M?v<.01?(i=.707106781,r=0,s=.707106781):(r=Math.sqrt(v),i=b/r,s=w/r):M<.01?(i=.707106781,r=.707106781,s=0):(s=Math.sqrt(M),i=_/s,r=w/s),this.set(i,r,s,n),this}let x=Math.sqrt((g-p)*(g-p)+(h-y)*(h-y)+(f-u)*(f-u));return Math.abs(x)<.001&&(x=1),this.x=(g-p)/x,this.y=(h-y)/x,this.z=(f-u)/x,this.w=Math.acos((c+d+m-1)/2),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this.w=n[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this.w=Xt(this.w,t.w,n.w),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this.w=Xt(this.w,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this.w+=(t.w-this.w)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this.w=t.w+(n.w-t.w)*i,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this.w=t[n+3],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t[n+3]=this.w,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this.w=t.getW(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},vd=class extends Yi{constructor(t=1,n=1,i={}){super(),i=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:kn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},i),this.isRenderTarget=!0,this.width=t,this.height=n,this.depth=i.depth,this.scissor=new de(0,0,t,n),this.scissorTest=!1,this.viewport=new de(0,0,t,n),this.textures=[];let r=i.count;for(let s=0;s<r;s++)this.textures[s]=new Qn({width:t,height:n,depth:i.depth}),this.textures[s].isRenderTargetTexture=!0,this.textures[s].renderTarget=this;this._setTextureOptions(i),this.depthBuffer=i.depthBuffer,this.stencilBuffer=i.stencilBuffer,this.resolveColorBuffer=i.resolveColorBuffer,this.resolveDepthBuffer=i.resolveDepthBuffer,this.resolveStencilBuffer=i.resolveStencilBuffer,this.storeMultisampledColorBuffer=i.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=i.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=i.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=i.depthTexture,this.samples=i.samples,this.multiview=i.multiview,this.useArrayDepthTexture=i.useArrayDepthTexture}_setTextureOptions(t={}){let n={minFilter:kn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(n.mapping=t.mapping),t.wrapS!==void 0&&(n.wrapS=t.wrapS),t.wrapT!==void 0&&(n.wrapT=t.wrapT),t.wrapR!==void 0&&(n.wrapR=t.wrapR),t.magFilter!==void 0&&(n.magFilter=t.magFilter),t.minFilter!==void 0&&(n.minFilter=t.minFilter),t.format!==void 0&&(n.format=t.format),t.type!==void 0&&(n.type=t.type),t.anisotropy!==void 0&&(n.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(n.colorSpace=t.colorSpace),t.flipY!==void 0&&(n.flipY=t.flipY),t.generateMipmaps!==void 0&&(n.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(n.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(n.internalFormat=t.internalFormat);for(let i=0;i<this.textures.length;i++)this.textures[i].setValues(n)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,n,i=1){if(this.width!==t||this.height!==n||this.depth!==i){this.width=t,this.height=n,this.depth=i;for(let r=0,s=this.textures.length;r<s;r++)this.textures[r].image.width=t,this.textures[r].image.height=n,this.textures[r].image.depth=i,this.textures[r].isData3DTexture!==!0&&(this.textures[r].isArrayTexture=this.textures[r].image.depth>1);this.dispose()}this.viewport.set(0,0,t,n),this.scissor.set(0,0,t,n)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let n=0,i=t.textures.length;n<i;n++){this.textures[n]=t.textures[n].clone(),this.textures[n].isRenderTargetTexture=!0,this.textures[n].renderTarget=this;let r=Object.assign({},t.textures[n].image);this.textures[n].source=new Sl(r)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let n=t.depthTexture.clone();n.renderTarget=null,this.depthTexture=n}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},zn=class extends vd{constructor(t=1,n=1,i={}){super(t,n,i),this.isWebGLRenderTarget=!0}},Kc=class extends Qn{constructor(t=null,n=1,i=1,r=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=hn,this.minFilter=hn,this.wrapR=Mr,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var bd=class extends Qn{constructor(t=null,n=1,i=1,r=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=hn,this.minFilter=hn,this.wrapR=Mr,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var ve=class e{static{this.prototype.isMatrix4=!0}constructor(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g)}set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g){let m=this.elements;return m[0]=t,m[4]=n,m[8]=i,m[12]=r,m[1]=s,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=u,m[10]=h,m[14]=f,m[3]=d,m[7]=p,m[11]=y,m[15]=g,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new e().fromArray(this.elements)}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],n[9]=i[9],n[10]=i[10],n[11]=i[11],n[12]=i[12],n[13]=i[13],n[14]=i[14],n[15]=i[15],this}copyPosition(t){let n=this.elements,i=t.elements;return n[12]=i[12],n[13]=i[13],n[14]=i[14],this}setFromMatrix3(t){let n=t.elements;return this.set(n[0],n[3],n[6],0,n[1],n[4],n[7],0,n[2],n[5],n[8],0,0,0,0,1),this}extractBasis(t,n,i){return this.determinantAffine()===0?(t.set(1,0,0),n.set(0,1,0),i.set(0,0,1),this):(t.setFromMatrixColumn(this,0),n.setFromMatrixColumn(this,1),i.setFromMatrixColumn(this,2),this)}makeBasis(t,n,i){return this.set(t.x,n.x,i.x,0,t.y,n.y,i.y,0,t.z,n.z,i.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let n=this.elements,i=t.elements,r=1/il.setFromMatrixColumn(t,0).length(),s=1/il.setFromMatrixColumn(t,1).length(),o=1/il.setFromMatrixColumn(t,2).length();return n[0]=i[0]*r,n[1]=i[1]*r,n[2]=i[2]*r,n[3]=0,n[4]=i[4]*s,n[5]=i[5]*s,n[6]=i[6]*s,n[7]=0,n[8]=i[8]*o,n[9]=i[9]*o,n[10]=i[10]*o,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromEuler(t){let n=this.elements,i=t.x,r=t.y,s=t.z,o=Math.cos(i),a=Math.sin(i),l=Math.cos(r),c=Math.sin(r),u=Math.cos(s),h=Math.sin(s);if(t.order==="XYZ"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=-l*h,n[8]=c,n[1]=d+p*c,n[5]=f-y*c,n[9]=-a*l,n[2]=y-f*c,n[6]=p+d*c,n[10]=o*l}else if(t.order==="YXZ"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f+y*a,n[4]=p*a-d,n[8]=o*c,n[1]=o*h,n[5]=o*u,n[9]=-a,n[2]=d*a-p,n[6]=y+f*a,n[10]=o*l}else if(t.order==="ZXY"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f-y*a,n[4]=-o*h,n[8]=p+d*a,n[1]=d+p*a,n[5]=o*u,n[9]=y-f*a,n[2]=-o*c,n[6]=a,n[10]=o*l}else if(t.order==="ZYX"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=p*c-d,n[8]=f*c+y,n[1]=l*h,n[5]=y*c+f,n[9]=d*c-p,n[2]=-c,n[6]=a*l,n[10]=o*l}else if(t.order==="YZX"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=y-f*h,n[8]=p*h+d,n[1]=h,n[5]=o*u,n[9]=-a*u,n[2]=-c*u,n[6]=d*h+p,n[10]=f-y*h}else if(t.order==="XZY"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=-h,n[8]=c*u,n[1]=f*h+y,n[5]=o*u,n[9]=d*h-p,n[2]=p*h-d,n[6]=a*u,n[10]=y*h+f}return n[3]=0,n[7]=0,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromQuaternion(t){return this.compose(eO,t,nO)}lookAt(t,n,i){let r=this.elements;return oi.subVectors(t,n),oi.lengthSq()===0&&(oi.z=1),oi.normalize(),Fs.crossVectors(i,oi),Fs.lengthSq()===0&&(Math.abs(i.z)===1?oi.x+=1e-4:oi.z+=1e-4,oi.normalize(),Fs.crossVectors(i,oi)),Fs.normalize(),Uh.crossVectors(oi,Fs),r[0]=Fs.x,r[4]=Uh.x,r[8]=oi.x,r[1]=Fs.y,r[5]=Uh.y,r[9]=oi.y,r[2]=Fs.z,r[6]=Uh.z,r[10]=oi.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[4],l=i[8],c=i[12],u=i[1],h=i[5],f=i[9],d=i[13],p=i[2],y=i[6],g=i[10],m=i[14],x=i[3],S=i[7],v=i[11],M=i[15],b=r[0],_=r[4],w=r[8],R=r[12],C=r[1],A=r[5],L=r[9],B=r[13],P=r[2],D=r[6],z=r[10],U=r[14],Z=r[3],F=r[7],V=r[11],q=r[15];return s[0]=o*b+a*C+l*P+c*Z,s[4]=o*_+a*A+l*D+c*F,s[8]=o*w+a*L+l*z+c*V,s[12]=o*R+a*B+l*U+c*q,s[1]=u*b+h*C+f*P+d*Z,s[5]=u*_+h*A+f*D+d*F,s[9]=u*w+h*L+f*z+d*V,s[13]=u*R+h*B+f*U+d*q,s[2]=p*b+y*C+g*P+m*Z,s[6]=p*_+y*A+g*D+m*F,s[10]=p*w+y*L+g*z+m*V,s[14]=p*R+y*B+g*U+m*q,s[3]=x*b+S*C+v*P+M*Z,s[7]=x*_+S*A+v*D+M*F,s[11]=x*w+S*L+v*z+M*V,s[15]=x*R+S*B+v*U+M*q,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[4]*=t,n[8]*=t,n[12]*=t,n[1]*=t,n[5]*=t,n[9]*=t,n[13]*=t,n[2]*=t,n[6]*=t,n[10]*=t,n[14]*=t,n[3]*=t,n[7]*=t,n[11]*=t,n[15]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],h=t[6],f=t[10],d=t[14],p=t[3],y=t[7],g=t[11],m=t[15],x=l*d-c*f,S=a*d-c*h,v=a*f-l*h,M=o*d-c*u,b=o*f-l*u,_=o*h-a*u;return n*(y*x-g*S+m*v)-i*(p*x-g*M+m*b)+r*(p*S-y*M+m*_)-s*(p*v-y*b+g*_)}determinantAffine(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return n*(o*u-a*c)-i*(s*u-a*l)+r*(s*c-o*l)}transpose(){let t=this.elements,n;return n=t[1],t[1]=t[4],t[4]=n,n=t[2],t[2]=t[8],t[8]=n,n=t[6],t[6]=t[9],t[9]=n,n=t[3],t[3]=t[12],t[12]=n,n=t[7],t[7]=t[13],t[13]=n,n=t[11],t[11]=t[14],t[14]=n,this}setPosition(t,n,i){let r=this.elements;return t.isVector3?(r[12]=t.x,r[13]=t.y,r[14]=t.z):(r[12]=t,r[13]=n,r[14]=i),this}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=t[9],f=t[10],d=t[11],p=t[12],y=t[13],g=t[14],m=t[15],x=n*a-i*o,S=n*l-r*o,v=n*c-s*o,M=i*l-r*a,b=i*c-s*a,_=r*c-s*l,w=u*y-h*p,R=u*g-f*p,C=u*m-d*p,A=h*g-f*y,L=h*m-d*y,B=f*m-d*g,P=x*B-S*L+v*A+M*C-b*R+_*w;if(P===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let D=1/P;return t[0]=(a*B-l*L+c*A)*D,t[1]=(r*L-i*B-s*A)*D,t[2]=(y*_-g*b+m*M)*D,t[3]=(f*b-h*_-d*M)*D,t[4]=(l*C-o*B-c*R)*D,t[5]=(n*B-r*C+s*R)*D,t[6]=(g*v-p*_-m*S)*D,t[7]=(u*_-f*v+d*S)*D,t[8]=(o*L-a*C+c*w)*D,t[9]=(i*C-n*L-s*w)*D,t[10]=(p*b-y*v+m*x)*D,t[11]=(h*v-u*b-d*x)*D,t[12]=(a*R-o*A-l*w)*D,t[13]=(n*A-i*R+r*w)*D,t[14]=(y*S-p*M-g*x)*D,t[15]=(u*M-h*S+f*x)*D,this}scale(t){let n=this.elements,i=t.x,r=t.y,s=t.z;return n[0]*=i,n[4]*=r,n[8]*=s,n[1]*=i,n[5]*=r,n[9]*=s,n[2]*=i,n[6]*=r,n[10]*=s,n[3]*=i,n[7]*=r,n[11]*=s,this}getMaxScaleOnAxis(){let t=this.elements,n=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],i=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],r=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(n,i,r))}makeTranslation(t,n,i){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,n,0,0,1,i,0,0,0,1),this}makeRotationX(t){let n=Math.cos(t),i=Math.sin(t);return this.set(1,0,0,0,0,n,-i,0,0,i,n,0,0,0,0,1),this}makeRotationY(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,0,i,0,0,1,0,0,-i,0,n,0,0,0,0,1),this}makeRotationZ(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,0,i,n,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,n){let i=Math.cos(n),r=Math.sin(n),s=1-i,o=t.x,a=t.y,l=t.z,c=s*o,u=s*a;return this.set(c*o+i,c*a-r*l,c*l+r*a,0,c*a+r*l,u*a+i,u*l-r*o,0,c*l-r*a,u*l+r*o,s*l*l+i,0,0,0,0,1),this}makeScale(t,n,i){return this.set(t,0,0,0,0,n,0,0,0,0,i,0,0,0,0,1),this}makeShear(t,n,i,r,s,o){return this.set(1,i,s,0,t,1,o,0,n,r,1,0,0,0,0,1),this}compose(t,n,i){let r=this.elements,s=n._x,o=n._y,a=n._z,l=n._w,c=s+s,u=o+o,h=a+a,f=s*c,d=s*u,p=s*h,y=o*u,g=o*h,m=a*h,x=l*c,S=l*u,v=l*h,M=i.x,b=i.y,_=i.z;return r[0]=(1-(y+m))*M,r[1]=(d+v)*M,r[2]=(p-S)*M,r[3]=0,r[4]=(d-v)*b,r[5]=(1-(f+m))*b,r[6]=(g+x)*b,r[7]=0,r[8]=(p+S)*_,r[9]=(g-x)*_,r[10]=(1-(f+y))*_,r[11]=0,r[12]=t.x,r[13]=t.y,r[14]=t.z,r[15]=1,this}decompose(t,n,i){let r=this.elements;t.x=r[12],t.y=r[13],t.z=r[14];let s=this.determinantAffine();if(s===0)return i.set(1,1,1),n.identity(),this;let o=il.set(r[0],r[1],r[2]).length(),a=il.set(r[4],r[5],r[6]).length(),l=il.set(r[8],r[9],r[10]).length();s<0&&(o=-o),Wi.copy(this);let c=1/o,u=1/a,h=1/l;return Wi.elements[0]*=c,Wi.elements[1]*=c,Wi.elements[2]*=c,Wi.elements[4]*=u,Wi.elements[5]*=u,Wi.elements[6]*=u,Wi.elements[8]*=h,Wi.elements[9]*=h,Wi.elements[10]*=h,n.setFromRotationMatrix(Wi),i.x=o,i.y=a,i.z=l,this}makePerspective(t,n,i,r,s,o,a=Ii,l=!1){let c=this.elements,u=2*s/(n-t),h=2*s/(i-r),f=(n+t)/(n-t),d=(i+r)/(i-r),p,y;if(l)p=s/(o-s),y=o*s/(o-s);else if(a===Ii)p=-(o+s)/(o-s),y=-2*o*s/(o-s);else if(a===vl)p=-o/(o-s),y=-o*s/(o-s);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=f,c[12]=0,c[1]=0,c[5]=h,c[9]=d,c[13]=0,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,n,i,r,s,o,a=Ii,l=!1){let c=this.elements,u=2/(n-t),h=2/(i-r),f=-(n+t)/(n-t),d=-(i+r)/(i-r),p,y;if(l)p=1/(o-s),y=o/(o-s);else if(a===Ii)p=-2/(o-s),y=-(o+s)/(o-s);else if(a===vl)p=-1/(o-s),y=-s/(o-s);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=f,c[1]=0,c[5]=h,c[9]=0,c[13]=d,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<16;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<16;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t[n+9]=i[9],t[n+10]=i[10],t[n+11]=i[11],t[n+12]=i[12],t[n+13]=i[13],t[n+14]=i[14],t[n+15]=i[15],t}},il=new k,Wi=new ve,eO=new k(0,0,0),nO=new k(1,1,1),Fs=new k,Uh=new k,oi=new k,NA=new ve,UA=new ui,os=class e{constructor(t=0,n=0,i=0,r=e.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=n,this._z=i,this._order=r}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,n,i,r=this._order){return this._x=t,this._y=n,this._z=i,this._order=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,n=this._order,i=!0){let r=t.elements,s=r[0],o=r[4],a=r[8],l=r[1],c=r[5],u=r[9],h=r[2],f=r[6],d=r[10];switch(n){case"XYZ":this._y=Math.asin(Xt(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,d),this._z=Math.atan2(-o,s)):(this._x=Math.atan2(f,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Xt(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,d),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-h,s),this._z=0);break;case"ZXY":this._x=Math.asin(Xt(f,-1,1)),Math.abs(f)<.9999999?(this._y=Math.atan2(-h,d),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,s));break;case"ZYX":this._y=Math.asin(-Xt(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(f,d),this._z=Math.atan2(l,s)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(Xt(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-h,s)):(this._x=0,this._y=Math.atan2(a,d));break;case"XZY":this._z=Math.asin(-Xt(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(f,c),this._y=Math.atan2(a,s)):(this._x=Math.atan2(-u,d),this._y=0);break;default:Ft("Euler: .setFromRotationMatrix() encountered an unknown order: "+n)}return this._order=n,i===!0&&this._onChangeCallback(),this}setFromQuaternion(t,n,i){return NA.makeRotationFromQuaternion(t),this.setFromRotationMatrix(NA,n,i)}setFromVector3(t,n=this._order){return this.set(t.x,t.y,t.z,n)}reorder(t){return UA.setFromEuler(this),this.setFromQuaternion(UA,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};os.DEFAULT_ORDER="XYZ";var Jc=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},iO=0,FA=new k,rl=new ui,jr=new ve,Fh=new k,Bc=new k,rO=new k,sO=new ui,OA=new k(1,0,0),BA=new k(0,1,0),kA=new k(0,0,1),zA={type:"added"},oO={type:"removed"},sl={type:"childadded",child:null},Ux={type:"childremoved",child:null},En=class e extends Yi{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:iO++}),this.uuid=js(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=e.DEFAULT_UP.clone();let t=new k,n=new os,i=new ui,r=new k(1,1,1);function s(){i.setFromEuler(n,!1)}function o(){n.setFromQuaternion(i,void 0,!1)}n._onChange(s),i._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:n},quaternion:{configurable:!0,enumerable:!0,value:i},scale:{configurable:!0,enumerable:!0,value:r},modelViewMatrix:{value:new ve},normalMatrix:{value:new Vt}}),this.matrix=new ve,this.matrixWorld=new ve,this.matrixAutoUpdate=e.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=e.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Jc,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,n){this.quaternion.setFromAxisAngle(t,n)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,n){return rl.setFromAxisAngle(t,n),this.quaternion.multiply(rl),this}rotateOnWorldAxis(t,n){return rl.setFromAxisAngle(t,n),this.quaternion.premultiply(rl),this}rotateX(t){return this.rotateOnAxis(OA,t)}rotateY(t){return this.rotateOnAxis(BA,t)}rotateZ(t){return this.rotateOnAxis(kA,t)}translateOnAxis(t,n){return FA.copy(t).applyQuaternion(this.quaternion),this.position.add(FA.multiplyScalar(n)),this}translateX(t){return this.translateOnAxis(OA,t)}translateY(t){return this.translateOnAxis(BA,t)}translateZ(t){return this.translateOnAxis(kA,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(jr.copy(this.matrixWorld).invert())}lookAt(t,n,i){t.isVector3?Fh.copy(t):Fh.set(t,n,i);let r=this.parent;this.updateWorldMatrix(!0,!1),Bc.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?jr.lookAt(Bc,Fh,this.up):jr.lookAt(Fh,Bc,this.up),this.quaternion.setFromRotationMatrix(jr),r&&(jr.extractRotation(r.matrixWorld),rl.setFromRotationMatrix(jr),this.quaternion.premultiply(rl.invert()))}add(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.add(arguments[n]);return this}return t===this?(Gt("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(zA),sl.child=t,this.dispatchEvent(sl),sl.child=null):Gt("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let i=0;i<arguments.length;i++)this.remove(arguments[i]);return this}let n=this.children.indexOf(t);return n!==-1&&(t.parent=null,this.children.splice(n,1),t.dispatchEvent(oO),Ux.child=t,this.dispatchEvent(Ux),Ux.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),jr.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),jr.multiply(t.parent.matrixWorld)),t.applyMatrix4(jr),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(zA),sl.child=t,this.dispatchEvent(sl),sl.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,n){if(this[t]===n)return this;for(let i=0,r=this.children.length;i<r;i++){let o=this.children[i].getObjectByProperty(t,n);if(o!==void 0)return o}}getObjectsByProperty(t,n,i=[]){this[t]===n&&i.push(this);let r=this.children;for(let s=0,o=r.length;s<o;s++)r[s].getObjectsByProperty(t,n,i);return i}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Bc,t,rO),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Bc,sO,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let n=this.matrixWorld.elements;return t.set(n[8],n[9],n[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverseVisible(t)}traverseAncestors(t){let n=this.parent;n!==null&&(t(n),n.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let n=t.x,i=t.y,r=t.z,s=this.matrix.elements;s[12]+=n-s[0]*n-s[4]*i-s[8]*r,s[13]+=i-s[1]*n-s[5]*i-s[9]*r,s[14]+=r-s[2]*n-s[6]*i-s[10]*r}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].updateMatrixWorld(t)}updateWorldMatrix(t,n,i=!1){let r=this.parent;if(t===!0&&r!==null&&r.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||i)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,i=!0),n===!0){let s=this.children;for(let o=0,a=s.length;o<a;o++)s[o].updateWorldMatrix(!1,!0,i)}}toJSON(t){let n=t===void 0||typeof t=="string",i={};n&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},i.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let r={};r.uuid=this.uuid,r.type=this.type,r.name=this.name,r.castShadow=this.castShadow,r.receiveShadow=this.receiveShadow,r.visible=this.visible,r.frustumCulled=this.frustumCulled,r.renderOrder=this.renderOrder,r.static=this.static,r.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(r.userData=this.userData),r.layers=this.layers.mask,r.matrix=this.matrix.toArray(),r.up=this.up.toArray(),this.pivot!==null&&(r.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(r.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(r.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(r.type="InstancedMesh",r.count=this.count,r.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(r.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(r.type="BatchedMesh",r.perObjectFrustumCulled=this.perObjectFrustumCulled,r.sortObjects=this.sortObjects,r.drawRanges=this._drawRanges,r.reservedRanges=this._reservedRanges,r.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),r.instanceInfo=this._instanceInfo.map(a=>({...a})),r.availableInstanceIds=this._availableInstanceIds.slice(),r.availableGeometryIds=this._availableGeometryIds.slice(),r.nextIndexStart=this._nextIndexStart,r.nextVertexStart=this._nextVertexStart,r.geometryCount=this._geometryCount,r.maxInstanceCount=this._maxInstanceCount,r.maxVertexCount=this._maxVertexCount,r.maxIndexCount=this._maxIndexCount,r.geometryInitialized=this._geometryInitialized,r.matricesTexture=this._matricesTexture.toJSON(t),r.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(r.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(r.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(r.boundingBox=this.boundingBox.toJSON()));function s(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?r.background=this.background.toJSON():this.background.isTexture&&(r.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(r.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){r.geometry=s(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let h=l[c];s(t.shapes,h)}else s(t.shapes,l)}}if(this.isSkinnedMesh&&(r.bindMode=this.bindMode,r.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(s(t.skeletons,this.skeleton),r.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(s(t.materials,this.material[l]));r.material=a}else r.material=s(t.materials,this.material);if(this.children.length>0){r.children=[];for(let a=0;a<this.children.length;a++)r.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){r.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];r.animations.push(s(t.animations,l))}}if(n){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),h=o(t.shapes),f=o(t.skeletons),d=o(t.animations),p=o(t.nodes);a.length>0&&(i.geometries=a),l.length>0&&(i.materials=l),c.length>0&&(i.textures=c),u.length>0&&(i.images=u),h.length>0&&(i.shapes=h),f.length>0&&(i.skeletons=f),d.length>0&&(i.animations=d),p.length>0&&(i.nodes=p)}return i.object=r,i;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,n=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),n===!0)for(let i=0;i<t.children.length;i++){let r=t.children[i];this.add(r.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};En.DEFAULT_UP=new k(0,1,0);En.DEFAULT_MATRIX_AUTO_UPDATE=!0;En.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var qi=class extends En{constructor(){super(),this.isGroup=!0,this.type="Group"}},aO={type:"move"},wl=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new qi,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new qi,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new k,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new k),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new qi,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new k,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new k,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let n=this._hand;if(n)for(let i of t.hand.values())this._getHandJoint(n,i)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,n,i){let r=null,s=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&n.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let y of t.hand.values()){let g=n.getJointPose(y,i),m=this._getHandJoint(c,y);g!==null&&(m.matrix.fromArray(g.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=g.radius),m.visible=g!==null}let u=c.joints["index-finger-tip"],h=c.joints["thumb-tip"],f=u.position.distanceTo(h.position),d=.02,p=.005;c.inputState.pinching&&f>d+p?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&f<=d-p&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(s=n.getPose(t.gripSpace,i),s!==null&&(l.matrix.fromArray(s.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,s.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(s.linearVelocity)):l.hasLinearVelocity=!1,s.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(s.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(r=n.getPose(t.targetRaySpace,i),r===null&&s!==null&&(r=s),r!==null&&(a.matrix.fromArray(r.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,r.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(r.linearVelocity)):a.hasLinearVelocity=!1,r.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(r.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(aO)))}return a!==null&&(a.visible=r!==null),l!==null&&(l.visible=s!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,n){if(t.joints[n.jointName]===void 0){let i=new qi;i.matrixAutoUpdate=!1,i.visible=!1,t.joints[n.jointName]=i,t.add(i)}return t.joints[n.jointName]}},V2={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Os={h:0,s:0,l:0},Oh={h:0,s:0,l:0};function Fx(e,t,n){return n<0&&(n+=1),n>1&&(n-=1),n<1/6?e+(t-e)*6*n:n<1/2?t:n<2/3?e+(t-e)*6*(2/3-n):e}var kt=class{constructor(t,n,i){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,n,i)}set(t,n,i){if(n===void 0&&i===void 0){let r=t;r&&r.isColor?this.copy(r):typeof r=="number"?this.setHex(r):typeof r=="string"&&this.setStyle(r)}else this.setRGB(t,n,i);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,n=Bn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ie.colorSpaceToWorking(this,n),this}setRGB(t,n,i,r=ie.workingColorSpace){return this.r=t,this.g=n,this.b=i,ie.colorSpaceToWorking(this,r),this}setHSL(t,n,i,r=ie.workingColorSpace){if(t=D_(t,1),n=Xt(n,0,1),i=Xt(i,0,1),n===0)this.r=this.g=this.b=i;else{let s=i<=.5?i*(1+n):i+n-i*n,o=2*i-s;this.r=Fx(o,s,t+1/3),this.g=Fx(o,s,t),this.b=Fx(o,s,t-1/3)}return ie.colorSpaceToWorking(this,r),this}setStyle(t,n=Bn){function i(s){s!==void 0&&parseFloat(s)<1&&Ft("Color: Alpha component of "+t+" will be ignored.")}let r;if(r=/^(\w+)\(([^\)]*)\)/.exec(t)){let s,o=r[1],a=r[2];switch(o){case"rgb":case"rgba":if(s=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(255,parseInt(s[1],10))/255,Math.min(255,parseInt(s[2],10))/255,Math.min(255,parseInt(s[3],10))/255,n);if(s=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(100,parseFloat(s[1]))/100,Math.min(100,parseFloat(s[2]))/100,Math.min(100,parseFloat(s[3]))/100,n);break;case"hsl":case"hsla":if(s=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setHSL(parseFloat(s[1])/360,parseFloat(s[2])/100,parseFloat(s[3])/100,n);break;default:Ft("Color: Unknown color model "+t)}}else if(r=/^\#([A-Fa-f\d]+)$/.exec(t)){let s=r[1],o=s.length;if(o===3)return this.setRGB(parseInt(s.charAt(0),16)/15,parseInt(s.charAt(1),16)/15,parseInt(s.charAt(2),16)/15,n);if(o===6)return this.setHex(parseInt(s,16),n);Ft("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,n);return this}setColorName(t,n=Bn){let i=V2[t.toLowerCase()];return i!==void 0?this.setHex(i,n):Ft("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=rs(t.r),this.g=rs(t.g),this.b=rs(t.b),this}copyLinearToSRGB(t){return this.r=xl(t.r),this.g=xl(t.g),this.b=xl(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=Bn){return ie.workingToColorSpace(Tn.copy(this),t),Math.round(Xt(Tn.r*255,0,255))*65536+Math.round(Xt(Tn.g*255,0,255))*256+Math.round(Xt(Tn.b*255,0,255))}getHexString(t=Bn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,n=ie.workingColorSpace){ie.workingToColorSpace(Tn.copy(this),n);let i=Tn.r,r=Tn.g,s=Tn.b,o=Math.max(i,r,s),a=Math.min(i,r,s),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let h=o-a;switch(c=u<=.5?h/(o+a):h/(2-o-a),o){case i:l=(r-s)/h+(r<s?6:0);break;case r:l=(s-i)/h+2;break;case s:l=(i-r)/h+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,n=ie.workingColorSpace){return ie.workingToColorSpace(Tn.copy(this),n),t.r=Tn.r,t.g=Tn.g,t.b=Tn.b,t}getStyle(t=Bn){ie.workingToColorSpace(Tn.copy(this),t);let n=Tn.r,i=Tn.g,r=Tn.b;return t!==Bn?`color(${t} ${n.toFixed(3)} ${i.toFixed(3)} ${r.toFixed(3)})`:`rgb(${Math.round(n*255)},${Math.round(i*255)},${Math.round(r*255)})`}offsetHSL(t,n,i){return this.getHSL(Os),this.setHSL(Os.h+t,Os.s+n,Os.l+i)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,n){return this.r=t.r+n.r,this.g=t.g+n.g,this.b=t.b+n.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,n){return this.r+=(t.r-this.r)*n,this.g+=(t.g-this.g)*n,this.b+=(t.b-this.b)*n,this}lerpColors(t,n,i){return this.r=t.r+(n.r-t.r)*i,this.g=t.g+(n.g-t.g)*i,this.b=t.b+(n.b-t.b)*i,this}lerpHSL(t,n){this.getHSL(Os),t.getHSL(Oh);let i=Wc(Os.h,Oh.h,n),r=Wc(Os.s,Oh.s,n),s=Wc(Os.l,Oh.l,n);return this.setHSL(i,r,s),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let n=this.r,i=this.g,r=this.b,s=t.elements;return this.r=s[0]*n+s[3]*i+s[6]*r,this.g=s[1]*n+s[4]*i+s[7]*r,this.b=s[2]*n+s[5]*i+s[8]*r,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,n=0){return this.r=t[n],this.g=t[n+1],this.b=t[n+2],this}toArray(t=[],n=0){return t[n]=this.r,t[n+1]=this.g,t[n+2]=this.b,t}fromBufferAttribute(t,n){return this.r=t.getX(n),this.g=t.getY(n),this.b=t.getZ(n),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Tn=new kt;kt.NAMES=V2;var Gs=class extends En{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new os,this.environmentIntensity=1,this.environmentRotation=new os,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,n){return super.copy(t,n),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let n=super.toJSON(t);return this.fog!==null&&(n.object.fog=this.fog.toJSON()),n.object.backgroundBlurriness=this.backgroundBlurriness,n.object.backgroundIntensity=this.backgroundIntensity,n.object.backgroundRotation=this.backgroundRotation.toArray(),n.object.environmentIntensity=this.environmentIntensity,n.object.environmentRotation=this.environmentRotation.toArray(),n}},$i=new k,Qr=new k,Ox=new k,ts=new k,ol=new k,al=new k,GA=new k,Bx=new k,kx=new k,zx=new k,Gx=new de,Vx=new de,Hx=new de,is=class e{constructor(t=new k,n=new k,i=new k){this.a=t,this.b=n,this.c=i}static getNormal(t,n,i,r){r.subVectors(i,n),$i.subVectors(t,n),r.cross($i);let s=r.lengthSq();return s>0?r.multiplyScalar(1/Math.sqrt(s)):r.set(0,0,0)}static getBarycoord(t,n,i,r,s){$i.subVectors(r,n),Qr.subVectors(i,n),Ox.subVectors(t,n);let o=$i.dot($i),a=$i.dot(Qr),l=$i.dot(Ox),c=Qr.dot(Qr),u=Qr.dot(Ox),h=o*c-a*a;if(h===0)return s.set(0,0,0),null;let f=1/h,d=(c*l-a*u)*f,p=(o*u-a*l)*f;return s.set(1-d-p,p,d)}static containsPoint(t,n,i,r){return this.getBarycoord(t,n,i,r,ts)===null?!1:ts.x>=0&&ts.y>=0&&ts.x+ts.y<=1}static getInterpolation(t,n,i,r,s,o,a,l){return this.getBarycoord(t,n,i,r,ts)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(s,ts.x),l.addScaledVector(o,ts.y),l.addScaledVector(a,ts.z),l)}static getInterpolatedAttribute(t,n,i,r,s,o){return Gx.setScalar(0),Vx.setScalar(0),Hx.setScalar(0),Gx.fromBufferAttribute(t,n),Vx.fromBufferAttribute(t,i),Hx.fromBufferAttribute(t,r),o.setScalar(0),o.addScaledVector(Gx,s.x),o.addScaledVector(Vx,s.y),o.addScaledVector(Hx,s.z),o}static isFrontFacing(t,n,i,r){return $i.subVectors(i,n),Qr.subVectors(t,n),$i.cross(Qr).dot(r)<0}set(t,n,i){return this.a.copy(t),this.b.copy(n),this.c.copy(i),this}setFromPointsAndIndices(t,n,i,r){return this.a.copy(t[n]),this.b.copy(t[i]),this.c.copy(t[r]),this}setFromAttributeAndIndices(t,n,i,r){return this.a.fromBufferAttribute(t,n),this.b.fromBufferAttribute(t,i),this.c.fromBufferAttribute(t,r),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return $i.subVectors(this.c,this.b),Qr.subVectors(this.a,this.b),$i.cross(Qr).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return e.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,n){return e.getBarycoord(t,this.a,this.b,this.c,n)}getInterpolation(t,n,i,r,s){return e.getInterpolation(t,this.a,this.b,this.c,n,i,r,s)}containsPoint(t){return e.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return e.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,n){let i=this.a,r=this.b,s=this.c,o,a;ol.subVectors(r,i),al.subVectors(s,i),Bx.subVectors(t,i);let l=ol.dot(Bx),c=al.dot(Bx);if(l<=0&&c<=0)return n.copy(i);kx.subVectors(t,r);let u=ol.dot(kx),h=al.dot(kx);if(u>=0&&h<=u)return n.copy(r);let f=l*h-u*c;if(f<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),n.copy(i).addScaledVector(ol,o);zx.subVectors(t,s);let d=ol.dot(zx),p=al.dot(zx);if(p>=0&&d<=p)return n.copy(s);let y=d*c-l*p;if(y<=0&&c>=0&&p<=0)return a=c/(c-p),n.copy(i).addScaledVector(al,a);let g=u*p-d*h;if(g<=0&&h-u>=0&&d-p>=0)return GA.subVectors(s,r),a=(h-u)/(h-u+(d-p)),n.copy(r).addScaledVector(GA,a);let m=1/(g+y+f);return o=y*m,a=f*m,n.copy(i).addScaledVector(ol,o).addScaledVector(al,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},fi=class{constructor(t=new k(1/0,1/0,1/0),n=new k(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=n}set(t,n){return this.min.copy(t),this.max.copy(n),this}setFromArray(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n+=3)this.expandByPoint(Xi.fromArray(t,n));return this}setFromBufferAttribute(t){this.makeEmpty();for(let n=0,i=t.count;n<i;n++)this.expandByPoint(Xi.fromBufferAttribute(t,n));return this}setFromPoints(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n++)this.expandByPoint(t[n]);return this}setFromCenterAndSize(t,n){let i=Xi.copy(n).multiplyScalar(.5);return this.min.copy(t).sub(i),this.max.copy(t).add(i),this}setFromObject(t,n=!1){return this.makeEmpty(),this.expandByObject(t,n)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,n=!1){t.updateWorldMatrix(!1,!1);let i=t.geometry;if(i!==void 0){let s=i.getAttribute("position");if(n===!0&&s!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=s.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Xi):Xi.fromBufferAttribute(s,o),Xi.applyMatrix4(t.matrixWorld),this.expandByPoint(Xi);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Bh.copy(t.boundingBox)):(i.boundingBox===null&&i.computeBoundingBox(),Bh.copy(i.boundingBox)),Bh.applyMatrix4(t.matrixWorld),this.union(Bh)}let r=t.children;for(let s=0,o=r.length;s<o;s++)this.expandByObject(r[s],n);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,n){return n.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Xi),Xi.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let n,i;return t.normal.x>0?(n=t.normal.x*this.min.x,i=t.normal.x*this.max.x):(n=t.normal.x*this.max.x,i=t.normal.x*this.min.x),t.normal.y>0?(n+=t.normal.y*this.min.y,i+=t.normal.y*this.max.y):(n+=t.normal.y*this.max.y,i+=t.normal.y*this.min.y),t.normal.z>0?(n+=t.normal.z*this.min.z,i+=t.normal.z*this.max.z):(n+=t.normal.z*this.max.z,i+=t.normal.z*this.min.z),n<=-t.constant&&i>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(kc),kh.subVectors(this.max,kc),ll.subVectors(t.a,kc),cl.subVectors(t.b,kc),ul.subVectors(t.c,kc),Bs.subVectors(cl,ll),ks.subVectors(ul,cl),Go.subVectors(ll,ul);let n=[0,-Bs.z,Bs.y,0,-ks.z,ks.y,0,-Go.z,Go.y,Bs.z,0,-Bs.x,ks.z,0,-ks.x,Go.z,0,-Go.x,-Bs.y,Bs.x,0,-ks.y,ks.x,0,-Go.y,Go.x,0];return!Wx(n,ll,cl,ul,kh)||(n=[1,0,0,0,1,0,0,0,1],!Wx(n,ll,cl,ul,kh))?!1:(zh.crossVectors(Bs,ks),n=[zh.x,zh.y,zh.z],Wx(n,ll,cl,ul,kh))}clampPoint(t,n){return n.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Xi).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Xi).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(es[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),es[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),es[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),es[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),es[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),es[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),es[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),es[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(es),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},es=[new k,new k,new k,new k,new k,new k,new k,new k],Xi=new k,Bh=new fi,ll=new k,cl=new k,ul=new k,Bs=new k,ks=new k,Go=new k,kc=new k,kh=new k,zh=new k,Vo=new k;function Wx(e,t,n,i,r){for(let s=0,o=e.length-3;s<=o;s+=3){Vo.fromArray(e,s);let a=r.x*Math.abs(Vo.x)+r.y*Math.abs(Vo.y)+r.z*Math.abs(Vo.z),l=t.dot(Vo),c=n.dot(Vo),u=i.dot(Vo);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var He=new k,Gh=new Bt,lO=0,Ye=class extends Yi{constructor(t,n,i=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:lO++}),this.name="",this.array=t,this.itemSize=n,this.count=t!==void 0?t.length/n:0,this.normalized=i,this.usage=I_,this.updateRanges=[],this.gpuType=ji,this.version=0,this._normalizationScale=t!==void 0?Pp(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,n,i){t*=this.itemSize,i*=n.itemSize;for(let r=0,s=this.itemSize;r<s;r++)this.array[t+r]=n.array[i+r];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let n=0,i=this.count;n<i;n++)Gh.fromBufferAttribute(this,n),Gh.applyMatrix3(t),this.setXY(n,Gh.x,Gh.y);else if(this.itemSize===3)for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyMatrix3(t),this.setXYZ(n,He.x,He.y,He.z);return this}applyMatrix4(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyMatrix4(t),this.setXYZ(n,He.x,He.y,He.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.applyNormalMatrix(t),this.setXYZ(n,He.x,He.y,He.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)He.fromBufferAttribute(this,n),He.transformDirection(t),this.setXYZ(n,He.x,He.y,He.z);return this}set(t,n=0){return this.array.set(t,n),this}getComponent(t,n){let i=this.array[t*this.itemSize+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.array[t*this.itemSize+n]=i,this}getX(t){let n=this.array[t*this.itemSize];return this.normalized&&(n=this._denormalize(n)),n}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize]=n,this}getY(t){let n=this.array[t*this.itemSize+1];return this.normalized&&(n=this._denormalize(n)),n}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+1]=n,this}getZ(t){let n=this.array[t*this.itemSize+2];return this.normalized&&(n=this._denormalize(n)),n}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+2]=n,this}getW(t){let n=this.array[t*this.itemSize+3];return this.normalized&&(n=this._denormalize(n)),n}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+3]=n,this}setXY(t,n,i){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.array[t+0]=n,this.array[t+1]=i,this}setXYZ(t,n,i,r){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this.array[t+3]=s,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):U_(t,this.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):F_(t,this.array)}};var jc=class extends Ye{constructor(t,n,i){super(new Uint16Array(t),n,i)}};var Qc=class extends Ye{constructor(t,n,i){super(new Uint32Array(t),n,i)}};var Ze=class extends Ye{constructor(t,n,i){super(new Float32Array(t),n,i)}},cO=new fi,zc=new k,$x=new k,Zi=class{constructor(t=new k,n=-1){this.isSphere=!0,this.center=t,this.radius=n}set(t,n){return this.center.copy(t),this.radius=n,this}setFromPoints(t,n){let i=this.center;n!==void 0?i.copy(n):cO.setFromPoints(t).getCenter(i);let r=0;for(let s=0,o=t.length;s<o;s++)r=Math.max(r,i.distanceToSquared(t[s]));return this.radius=Math.sqrt(r),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let n=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=n*n}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,n){let i=this.center.distanceToSquared(t);return n.copy(t),i>this.radius*this.radius&&(n.sub(this.center).normalize(),n.multiplyScalar(this.radius).add(this.center)),n}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;zc.subVectors(t,this.center);let n=zc.lengthSq();if(n>this.radius*this.radius){let i=Math.sqrt(n),r=(i-this.radius)*.5;this.center.addScaledVector(zc,r/i),this.radius+=r}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):($x.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(zc.copy(t.center).add($x)),this.expandByPoint(zc.copy(t.center).sub($x))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},uO=0,Pi=new ve,Xx=new En,fl=new k,ai=new fi,Gc=new fi,fn=new k,Ke=class e extends Yi{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:uO++}),this.uuid=js(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(UF(t)?Qc:jc)(t,1):this.index=t,this}setIndirect(t,n=0){return this.indirect=t,this.indirectOffset=n,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,n){return this.attributes[t]=n,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,n,i=0){this.groups.push({start:t,count:n,materialIndex:i})}clearGroups(){this.groups=[]}setDrawRange(t,n){this.drawRange.start=t,this.drawRange.count=n}applyMatrix4(t){let n=this.attributes.position;n!==void 0&&(n.applyMatrix4(t),n.needsUpdate=!0);let i=this.attributes.normal;if(i!==void 0){let s=new Vt().getNormalMatrix(t);i.applyNormalMatrix(s),i.needsUpdate=!0}let r=this.attributes.tangent;return r!==void 0&&(r.transformDirection(t),r.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return Pi.makeRotationFromQuaternion(t),this.applyMatrix4(Pi),this}rotateX(t){return Pi.makeRotationX(t),this.applyMatrix4(Pi),this}rotateY(t){return Pi.makeRotationY(t),this.applyMatrix4(Pi),this}rotateZ(t){return Pi.makeRotationZ(t),this.applyMatrix4(Pi),this}translate(t,n,i){return Pi.makeTranslation(t,n,i),this.applyMatrix4(Pi),this}scale(t,n,i){return Pi.makeScale(t,n,i),this.applyMatrix4(Pi),this}lookAt(t){return Xx.lookAt(t),Xx.updateMatrix(),this.applyMatrix4(Xx.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(fl).negate(),this.translate(fl.x,fl.y,fl.z),this}setFromPoints(t){let n=this.getAttribute("position");if(n===void 0){let i=[];for(let r=0,s=t.length;r<s;r++){let o=t[r];i.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Ze(i,3))}else{let i=Math.min(t.length,n.count);for(let r=0;r<i;r++){let s=t[r];n.setXYZ(r,s.x,s.y,s.z||0)}t.length>n.count&&Ft("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),n.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new fi);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new k(-1/0,-1/0,-1/0),new k(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),n)for(let i=0,r=n.length;i<r;i++){let s=n[i];ai.setFromBufferAttribute(s),this.morphTargetsRelative?(fn.addVectors(this.boundingBox.min,ai.min),this.boundingBox.expandByPoint(fn),fn.addVectors(this.boundingBox.max,ai.max),this.boundingBox.expandByPoint(fn)):(this.boundingBox.expandByPoint(ai.min),this.boundingBox.expandByPoint(ai.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&Gt('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Zi);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new k,1/0);return}if(t){let i=this.boundingSphere.center;if(ai.setFromBufferAttribute(t),n)for(let s=0,o=n.length;s<o;s++){let a=n[s];Gc.setFromBufferAttribute(a),this.morphTargetsRelative?(fn.addVectors(ai.min,Gc.min),ai.expandByPoint(fn),fn.addVectors(ai.max,Gc.max),ai.expandByPoint(fn)):(ai.expandByPoint(Gc.min),ai.expandByPoint(Gc.max))}ai.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)fn.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared(fn));if(n)for(let s=0,o=n.length;s<o;s++){let a=n[s],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)fn.fromBufferAttribute(a,c),l&&(fl.fromBufferAttribute(t,c),fn.add(fl)),r=Math.max(r,i.distanceToSquared(fn))}this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&Gt('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,n=this.attributes;if(t===null||n.position===void 0||n.normal===void 0||n.uv===void 0){Gt("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let i=n.position,r=n.normal,s=n.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==i.count)&&(o=new Ye(new Float32Array(4*i.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(i.count);for(let R=0;R<i.count;R++)a[R]=new k,l[R]=new k;let u=new k,h=new k,f=new k,d=new Bt,p=new Bt,y=new Bt,g=new k,m=new k;function x(R,C,A){c[R]=c[C]=c[A]=1,u.fromBufferAttribute(i,R),h.fromBufferAttribute(i,C),f.fromBufferAttribute(i,A),d.fromBufferAttribute(s,R),p.fromBufferAttribute(s,C),y.fromBufferAttribute(s,A),h.sub(u),f.sub(u),p.sub(d),y.sub(d);let L=1/(p.x*y.y-y.x*p.y);isFinite(L)&&(g.copy(h).multiplyScalar(y.y).addScaledVector(f,-p.y).multiplyScalar(L),m.copy(f).multiplyScalar(p.x).addScaledVector(h,-y.x).multiplyScalar(L),a[R].add(g),a[C].add(g),a[A].add(g),l[R].add(m),l[C].add(m),l[A].add(m))}let S=this.groups;S.length===0&&(S=[{start:0,count:t.count}]);for(let R=0,C=S.length;R<C;++R){let A=S[R],L=A.start,B=A.count;for(let P=L,D=L+B;P<D;P+=3)x(t.getX(P+0),t.getX(P+1),t.getX(P+2))}let v=new k,M=new k,b=new k,_=new k;function w(R){b.fromBufferAttribute(r,R),_.copy(b);let C=a[R];v.copy(C),v.sub(b.multiplyScalar(b.dot(C))).normalize(),M.crossVectors(_,C);let L=M.dot(l[R])<0?-1:1;o.setXYZW(R,v.x,v.y,v.z,L)}for(let R=0,C=i.count;R<C;++R)c[R]&&w(R);this._transformed=!0}computeVertexNormals(){let t=this.index,n=this.getAttribute("position");if(n!==void 0){let i=this.getAttribute("normal");if(i===void 0||i.count!==n.count)i=new Ye(new Float32Array(n.count*3),3),this.setAttribute("normal",i);else for(let f=0,d=i.count;f<d;f++)i.setXYZ(f,0,0,0);let r=new k,s=new k,o=new k,a=new k,l=new k,c=new k,u=new k,h=new k;if(t)for(let f=0,d=t.count;f<d;f+=3){let p=t.getX(f+0),y=t.getX(f+1),g=t.getX(f+2);r.fromBufferAttribute(n,p),s.fromBufferAttribute(n,y),o.fromBufferAttribute(n,g),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),a.fromBufferAttribute(i,p),l.fromBufferAttribute(i,y),c.fromBufferAttribute(i,g),a.add(u),l.add(u),c.add(u),i.setXYZ(p,a.x,a.y,a.z),i.setXYZ(y,l.x,l.y,l.z),i.setXYZ(g,c.x,c.y,c.z)}else for(let f=0,d=n.count;f<d;f+=3)r.fromBufferAttribute(n,f+0),s.fromBufferAttribute(n,f+1),o.fromBufferAttribute(n,f+2),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),i.setXYZ(f+0,u.x,u.y,u.z),i.setXYZ(f+1,u.x,u.y,u.z),i.setXYZ(f+2,u.x,u.y,u.z);this.normalizeNormals(),i.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let n=0,i=t.count;n<i;n++)fn.fromBufferAttribute(t,n),fn.normalize(),t.setXYZ(n,fn.x,fn.y,fn.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,h=a.normalized,f=new c.constructor(l.length*u),d=0,p=0;for(let y=0,g=l.length;y<g;y++){a.isInterleavedBufferAttribute?d=l[y]*a.data.stride+a.offset:d=l[y]*u;for(let m=0;m<u;m++)f[p++]=c[d++]}return new Ye(f,u,h)}if(this.index===null)return Ft("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let n=new e,i=this.index.array,r=this.attributes;for(let a in r){let l=r[a],c=t(l,i);n.setAttribute(a,c)}let s=this.morphAttributes;for(let a in s){let l=[],c=s[a];for(let u=0,h=c.length;u<h;u++){let f=c[u],d=t(f,i);l.push(d)}n.morphAttributes[a]=l}n.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];n.addGroup(c.start,c.count,c.materialIndex)}return n}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let n=this.index;n!==null&&(t.data.index={type:n.array.constructor.name,array:Array.prototype.slice.call(n.array)});let i=this.attributes;for(let l in i){let c=i[l];t.data.attributes[l]=c.toJSON(t.data)}let r={},s=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let h=0,f=c.length;h<f;h++){let d=c[h];u.push(d.toJSON(t.data))}u.length>0&&(r[l]=u,s=!0)}s&&(t.data.morphAttributes=r,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let n={};this.name=t.name;let i=t.index;i!==null&&this.setIndex(i.clone());let r=t.attributes;for(let c in r){let u=r[c];this.setAttribute(c,u.clone(n))}let s=t.morphAttributes;for(let c in s){let u=[],h=s[c];for(let f=0,d=h.length;f<d;f++)u.push(h[f].clone(n));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let h=o[c];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}},Md=class{constructor(t,n){this.isInterleavedBuffer=!0,this.array=t,this.stride=n,this.count=t!==void 0?t.length/n:0,this.usage=I_,this.updateRanges=[],this.version=0,this.uuid=js()}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.array=new t.array.constructor(t.array),this.count=t.count,this.stride=t.stride,this.usage=t.usage,this}copyAt(t,n,i){t*=this.stride,i*=n.stride;for(let r=0,s=this.stride;r<s;r++)this.array[t+r]=n.array[i+r];return this}set(t,n=0){return this.array.set(t,n),this}clone(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=VA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=this.array.slice(0).buffer);let i=new this.array.constructor(t.arrayBuffers[n]),r=new this.constructor(i,this.stride);return r.setUsage(this.usage),r}onUpload(t){return this.onUploadCallback=t,this}toJSON(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=VA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=Array.from(new Uint32Array(this.array.slice(0).buffer)));let i={uuid:this.uuid,buffer:n,type:this.array.constructor.name,stride:this.stride};return i.usage=this.usage,i}};function VA(e){return e.buffer._uuid===void 0&&(e.buffer._uuid=js()),e.byteOffset===0&&e.byteLength===e.buffer.byteLength?e.buffer._uuid:e.buffer._uuid+":"+e.byteOffset+":"+e.byteLength}var On=new k,Ki=class e{constructor(t,n,i,r=!1){this.isInterleavedBufferAttribute=!0,this.name="",this.data=t,this.itemSize=n,this.offset=i,this.normalized=r,this._normalizationScale=t!==void 0?Pp(t.array):void 0}get count(){return this.data.count}get array(){return this.data.array}set needsUpdate(t){this.data.needsUpdate=t}applyMatrix4(t){for(let n=0,i=this.data.count;n<i;n++)On.fromBufferAttribute(this,n),On.applyMatrix4(t),this.setXYZ(n,On.x,On.y,On.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)On.fromBufferAttribute(this,n),On.applyNormalMatrix(t),this.setXYZ(n,On.x,On.y,On.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)On.fromBufferAttribute(this,n),On.transformDirection(t),this.setXYZ(n,On.x,On.y,On.z);return this}getComponent(t,n){let i=this.array[t*this.data.stride+this.offset+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.data.array[t*this.data.stride+this.offset+n]=i,this}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset]=n,this}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+1]=n,this}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+2]=n,this}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+3]=n,this}getX(t){let n=this.data.array[t*this.data.stride+this.offset];return this.normalized&&(n=this._denormalize(n)),n}getY(t){let n=this.data.array[t*this.data.stride+this.offset+1];return this.normalized&&(n=this._denormalize(n)),n}getZ(t){let n=this.data.array[t*this.data.stride+this.offset+2];return this.normalized&&(n=this._denormalize(n)),n}getW(t){let n=this.data.array[t*this.data.stride+this.offset+3];return this.normalized&&(n=this._denormalize(n)),n}setXY(t,n,i){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.data.array[t+0]=n,this.data.array[t+1]=i,this}setXYZ(t,n,i,r){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this.data.array[t+3]=s,this}clone(t){if(t===void 0){Zc("InterleavedBufferAttribute.clone(): Cloning an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return new Ye(new this.array.constructor(n),this.itemSize,this.normalized)}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.clone(t)),new e(t.interleavedBuffers[this.data.uuid],this.itemSize,this.offset,this.normalized)}toJSON(t){if(t===void 0){Zc("InterleavedBufferAttribute.toJSON(): Serializing an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return{itemSize:this.itemSize,type:this.array.constructor.name,array:n,normalized:this.normalized}}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.toJSON(t)),{isInterleavedBufferAttribute:!0,itemSize:this.itemSize,data:this.data.uuid,offset:this.offset,normalized:this.normalized}}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):U_(t,this.data.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):F_(t,this.data.array)}},qx=new k,fO=new k,hO=new Vt,li=class{constructor(t=new k(1,0,0),n=0){this.isPlane=!0,this.normal=t,this.constant=n}set(t,n){return this.normal.copy(t),this.constant=n,this}setComponents(t,n,i,r){return this.normal.set(t,n,i),this.constant=r,this}setFromNormalAndCoplanarPoint(t,n){return this.normal.copy(t),this.constant=-n.dot(this.normal),this}setFromCoplanarPoints(t,n,i){let r=qx.subVectors(i,n).cross(fO.subVectors(t,n)).normalize();return this.setFromNormalAndCoplanarPoint(r,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,n){return n.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,n,i=!0){let r=t.delta(qx),s=this.normal.dot(r);if(s===0)return this.distanceToPoint(t.start)===0?n.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/s;return i===!0&&(o<0||o>1)?null:n.copy(t.start).addScaledVector(r,o)}intersectsLine(t){let n=this.distanceToPoint(t.start),i=this.distanceToPoint(t.end);return n<0&&i>0||i<0&&n>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,n){let i=n||hO.getNormalMatrix(t),r=this.coplanarPoint(qx).applyMatrix4(t),s=this.normal.applyMatrix3(i).normalize();return this.constant=-r.dot(s),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},dO=0,as=class extends Yi{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:dO++}),this.uuid=js(),this.name="",this.type="Material",this.blending=Il,this.side=Ks,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=f_,this.blendDst=h_,this.blendEquation=Yo,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new kt(0,0,0),this.blendAlpha=0,this.depthFunc=_l,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=L2,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=ld,this.stencilZFail=ld,this.stencilZPass=ld,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let n in t){let i=t[n];if(i===void 0){Ft(`Material: parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Material: '${n}' is not a property of THREE.${this.type}.`);continue}r&&r.isColor?r.set(i):r&&r.isVector2&&i&&i.isVector2||r&&r.isEuler&&i&&i.isEuler||r&&r.isVector3&&i&&i.isVector3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";n&&(t={textures:{},images:{}});let i={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};i.uuid=this.uuid,i.type=this.type,i.blending=this.blending,i.side=this.side,i.shadowSide=this.shadowSide,i.vertexColors=this.vertexColors,i.opacity=this.opacity,i.transparent=this.transparent,i.blendSrc=this.blendSrc,i.blendDst=this.blendDst,i.blendEquation=this.blendEquation,i.blendSrcAlpha=this.blendSrcAlpha,i.blendDstAlpha=this.blendDstAlpha,i.blendEquationAlpha=this.blendEquationAlpha,i.blendColor=this.blendColor.getHex(),i.blendAlpha=this.blendAlpha,i.depthFunc=this.depthFunc,i.depthTest=this.depthTest,i.depthWrite=this.depthWrite,i.colorWrite=this.colorWrite,i.clipIntersection=this.clipIntersection,i.clipShadows=this.clipShadows,i.stencilWriteMask=this.stencilWriteMask,i.stencilFunc=this.stencilFunc,i.stencilRef=this.stencilRef,i.stencilFuncMask=this.stencilFuncMask,i.stencilFail=this.stencilFail,i.stencilZFail=this.stencilZFail,i.stencilZPass=this.stencilZPass,i.stencilWrite=this.stencilWrite,i.polygonOffset=this.polygonOffset,i.polygonOffsetFactor=this.polygonOffsetFactor,i.polygonOffsetUnits=this.polygonOffsetUnits,i.dithering=this.dithering,i.alphaTest=this.alphaTest,i.alphaHash=this.alphaHash,i.alphaToCoverage=this.alphaToCoverage,i.premultipliedAlpha=this.premultipliedAlpha,i.forceSinglePass=this.forceSinglePass,i.allowOverride=this.allowOverride,i.visible=this.visible,i.toneMapped=this.toneMapped,i.name=this.name,this.color&&this.color.isColor&&(i.color=this.color.getHex()),this.roughness!==void 0&&(i.roughness=this.roughness),this.metalness!==void 0&&(i.metalness=this.metalness),this.sheen!==void 0&&(i.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(i.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(i.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(i.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(i.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(i.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(i.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(i.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(i.shininess=this.shininess),this.clearcoat!==void 0&&(i.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(i.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(i.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(i.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(i.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(i.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(i.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,i.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(i.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(i.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(i.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(i.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(i.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(i.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(i.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(i.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(i.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(i.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(i.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(i.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(i.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(i.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(i.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(i.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(i.lightMap=this.lightMap.toJSON(t).uuid,i.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(i.aoMap=this.aoMap.toJSON(t).uuid,i.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(i.bumpMap=this.bumpMap.toJSON(t).uuid,i.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(i.normalMap=this.normalMap.toJSON(t).uuid,i.normalMapType=this.normalMapType,i.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(i.displacementMap=this.displacementMap.toJSON(t).uuid,i.displacementScale=this.displacementScale,i.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(i.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(i.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(i.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(i.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(i.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(i.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(i.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(i.combine=this.combine)),this.envMapRotation!==void 0&&(i.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(i.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(i.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(i.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(i.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(i.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(i.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(i.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(i.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(i.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(i.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(i.size=this.size),this.sizeAttenuation!==void 0&&(i.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(i.clippingPlanes=this.clippingPlanes.map(s=>s.toJSON())),this.rotation!==void 0&&(i.rotation=this.rotation),this.depthPacking!==void 0&&(i.depthPacking=this.depthPacking),this.linewidth!==void 0&&(i.linewidth=this.linewidth),this.linecap!==void 0&&(i.linecap=this.linecap),this.linejoin!==void 0&&(i.linejoin=this.linejoin),this.dashSize!==void 0&&(i.dashSize=this.dashSize),this.gapSize!==void 0&&(i.gapSize=this.gapSize),this.scale!==void 0&&(i.scale=this.scale),this.wireframe!==void 0&&(i.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(i.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(i.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(i.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(i.flatShading=this.flatShading),this.fog!==void 0&&(i.fog=this.fog),Object.keys(this.userData).length>0&&(i.userData=this.userData);function r(s){let o=[];for(let a in s){let l=s[a];delete l.metadata,o.push(l)}return o}if(n){let s=r(t.textures),o=r(t.images);s.length>0&&(i.textures=s),o.length>0&&(i.images=o)}return i}fromJSON(t,n){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new kt().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(i=>new li().fromJSON(i))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=n[t.map]||null),t.matcap!==void 0&&(this.matcap=n[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=n[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=n[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=n[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let i=t.normalScale;Array.isArray(i)===!1&&(i=[i,i]),this.normalScale=new Bt().fromArray(i)}return t.displacementMap!==void 0&&(this.displacementMap=n[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=n[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=n[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=n[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=n[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=n[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=n[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=n[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=n[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=n[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=n[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=n[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=n[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=n[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new Bt().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=n[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=n[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=n[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=n[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=n[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=n[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=n[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=n[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let n=t.clippingPlanes,i=null;if(n!==null){let r=n.length;i=new Array(r);for(let s=0;s!==r;++s)i[s]=n[s].clone()}return this.clippingPlanes=i,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ns=new k,Yx=new k,Vh=new k,Hh=new k,$o=class{constructor(t=new k,n=new k(0,0,-1)){this.origin=t,this.direction=n}set(t,n){return this.origin.copy(t),this.direction.copy(n),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,n){return n.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ns)),this}closestPointToPoint(t,n){n.subVectors(t,this.origin);let i=n.dot(this.direction);return i<0?n.copy(this.origin):n.copy(this.origin).addScaledVector(this.direction,i)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let n=ns.subVectors(t,this.origin).dot(this.direction);return n<0?this.origin.distanceToSquared(t):(ns.copy(this.origin).addScaledVector(this.direction,n),ns.distanceToSquared(t))}distanceSqToSegment(t,n,i,r){Yx.copy(t).add(n).multiplyScalar(.5),Vh.copy(n).sub(t).normalize(),Hh.copy(this.origin).sub(Yx);let s=t.distanceTo(n)*.5,o=-this.direction.dot(Vh),a=Hh.dot(this.direction),l=-Hh.dot(Vh),c=Hh.lengthSq(),u=Math.abs(1-o*o),h,f,d,p;if(u>0)if(h=o*l-a,f=o*a-l,p=s*u,h>=0)if(f>=-p)if(f<=p){let y=1/u;h*=y,f*=y,d=h*(h+o*f+2*a)+f*(o*h+f+2*l)+c}else f=s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f=-s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f<=-p?(h=Math.max(0,-(-o*s+a)),f=h>0?-s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c):f<=p?(h=0,f=Math.min(Math.max(-s,-l),s),d=f*(f+2*l)+c):(h=Math.max(0,-(o*s+a)),f=h>0?s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c);else f=o>0?-s:s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;return i&&i.copy(this.origin).addScaledVector(this.direction,h),r&&r.copy(Yx).addScaledVector(Vh,f),d}intersectSphere(t,n){if(t.radius<0)return null;ns.subVectors(t.center,this.origin);let i=ns.dot(this.direction),r=ns.dot(ns)-i*i,s=t.radius*t.radius;if(r>s)return null;let o=Math.sqrt(s-r),a=i-o,l=i+o;return l<0?null:a<0?this.at(l,n):this.at(a,n)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let n=t.normal.dot(this.direction);if(n===0)return t.distanceToPoint(this.origin)===0?0:null;let i=-(this.origin.dot(t.normal)+t.constant)/n;return i>=0?i:null}intersectPlane(t,n){let i=this.distanceToPlane(t);return i===null?null:this.at(i,n)}intersectsPlane(t){let n=t.distanceToPoint(this.origin);return n===0||t.normal.dot(this.direction)*n<0}intersectBox(t,n){let i,r,s,o,a,l,c=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,f=this.origin;return c>=0?(i=(t.min.x-f.x)*c,r=(t.max.x-f.x)*c):(i=(t.max.x-f.x)*c,r=(t.min.x-f.x)*c),u>=0?(s=(t.min.y-f.y)*u,o=(t.max.y-f.y)*u):(s=(t.max.y-f.y)*u,o=(t.min.y-f.y)*u),i>o||s>r||((s>i||isNaN(i))&&(i=s),(o<r||isNaN(r))&&(r=o),h>=0?(a=(t.min.z-f.z)*h,l=(t.max.z-f.z)*h):(a=(t.max.z-f.z)*h,l=(t.min.z-f.z)*h),i>l||a>r)||((a>i||i!==i)&&(i=a),(l<r||r!==r)&&(r=l),r<0)?null:this.at(i>=0?i:r,n)}intersectsBox(t){return this.intersectBox(t,ns)!==null}intersectTriangle(t,n,i,r,s){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,h=t.x-o.x,f=t.y-o.y,d=t.z-o.z,p=n.x-o.x,y=n.y-o.y,g=n.z-o.z,m=i.x-o.x,x=i.y-o.y,S=i.z-o.z,v=Math.abs(l),M=Math.abs(c),b=Math.abs(u),_,w,R,C,A,L,B,P,D,z,U,Z;if(v>=M&&v>=b?(R=l,L=h,D=p,Z=m,l>=0?(_=c,w=u,C=f,A=d,B=y,P=g,z=x,U=S):(_=u,w=c,C=d,A=f,B=g,P=y,z=S,U=x)):M>=b?(R=c,L=f,D=y,Z=x,c>=0?(_=u,w=l,C=d,A=h,B=g,P=p,z=S,U=m):(_=l,w=u,C=h,A=d,B=p,P=g,z=m,U=S)):(R=u,L=d,D=g,Z=S,u>=0?(_=l,w=c,C=h,A=f,B=p,P=y,z=m,U=x):(_=c,w=l,C=f,A=h,B=y,P=p,z=x,U=m)),R===0)return null;let F=_/R,V=w/R,q=1/R,st=C-F*L,lt=A-V*L,$=B-F*D,at=P-V*D,ft=z-F*Z,ot=U-V*Z,rt=ft*at-ot*$,K=st*ot-lt*ft,gt=$*lt-at*st;if(r){if(rt<0||K<0||gt<0)return null}else if((rt<0||K<0||gt<0)&&(rt>0||K>0||gt>0))return null;let ct=rt+K+gt;if(ct===0)return null;let J=q*(rt*L+K*D+gt*Z);return(ct>0?J<0:J>0)?null:this.at(J/ct,s)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Tl=class extends as{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new os,this.combine=Hd,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},HA=new ve,Ho=new $o,Wh=new Zi,WA=new k,$h=new k,Xh=new k,qh=new k,Zx=new k,Yh=new k,$A=new k,Zh=new k,We=class extends En{constructor(t=new Ke,n=new Tl){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}getVertexPosition(t,n){let i=this.geometry,r=i.attributes.position,s=i.morphAttributes.position,o=i.morphTargetsRelative;n.fromBufferAttribute(r,t);let a=this.morphTargetInfluences;if(s&&a){Yh.set(0,0,0);for(let l=0,c=s.length;l<c;l++){let u=a[l],h=s[l];u!==0&&(Zx.fromBufferAttribute(h,t),o?Yh.addScaledVector(Zx,u):Yh.addScaledVector(Zx.sub(n),u))}n.add(Yh)}return n}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.material,s=this.matrixWorld;r!==void 0&&(i.boundingSphere===null&&i.computeBoundingSphere(),Wh.copy(i.boundingSphere),Wh.applyMatrix4(s),Ho.copy(t.ray).recast(t.near),!(Wh.containsPoint(Ho.origin)===!1&&(Ho.intersectSphere(Wh,WA)===null||Ho.origin.distanceToSquared(WA)>(t.far-t.near)**2))&&(HA.copy(s).invert(),Ho.copy(t.ray).applyMatrix4(HA),!(i.boundingBox!==null&&Ho.intersectsBox(i.boundingBox)===!1)&&this._computeIntersections(t,n,Ho)))}_computeIntersections(t,n,i){let r,s=this.geometry,o=this.material,a=s.index,l=s.attributes.position,c=s.attributes.uv,u=s.attributes.uv1,h=s.attributes.normal,f=s.groups,d=s.drawRange;if(a!==null)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let g=f[p],m=o[g.materialIndex],x=Math.max(g.start,d.start),S=Math.min(a.count,Math.min(g.start+g.count,d.start+d.count));for(let v=x,M=S;v<M;v+=3){let b=a.getX(v),_=a.getX(v+1),w=a.getX(v+2);r=Kh(this,m,t,i,c,u,h,b,_,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=g.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(a.count,d.start+d.count);for(let g=p,m=y;g<m;g+=3){let x=a.getX(g),S=a.getX(g+1),v=a.getX(g+2);r=Kh(this,o,t,i,c,u,h,x,S,v),r&&(r.faceIndex=Math.floor(g/3),n.push(r))}}else if(l!==void 0)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let g=f[p],m=o[g.materialIndex],x=Math.max(g.start,d.start),S=Math.min(l.count,Math.min(g.start+g.count,d.start+d.count));for(let v=x,M=S;v<M;v+=3){let b=v,_=v+1,w=v+2;r=Kh(this,m,t,i,c,u,h,b,_,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=g.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(l.count,d.start+d.count);for(let g=p,m=y;g<m;g+=3){let x=g,S=g+1,v=g+2;r=Kh(this,o,t,i,c,u,h,x,S,v),r&&(r.faceIndex=Math.floor(g/3),n.push(r))}}}};function pO(e,t,n,i,r,s,o,a){let l;if(t.side===Gn?l=i.intersectTriangle(o,s,r,!0,a):l=i.intersectTriangle(r,s,o,t.side===Ks,a),l===null)return null;Zh.copy(a),Zh.applyMatrix4(e.matrixWorld);let c=n.ray.origin.distanceTo(Zh);return c<n.near||c>n.far?null:{distance:c,point:Zh.clone(),object:e}}function Kh(e,t,n,i,r,s,o,a,l,c){e.getVertexPosition(a,$h),e.getVertexPosition(l,Xh),e.getVertexPosition(c,qh);let u=pO(e,t,n,i,$h,Xh,qh,$A);if(u){let h=new k;is.getBarycoord($A,$h,Xh,qh,h),r&&(u.uv=is.getInterpolatedAttribute(r,a,l,c,h,new Bt)),s&&(u.uv1=is.getInterpolatedAttribute(s,a,l,c,h,new Bt)),o&&(u.normal=is.getInterpolatedAttribute(o,a,l,c,h,new k),u.normal.dot(i.direction)>0&&u.normal.multiplyScalar(-1));let f={a,b:l,c,normal:new k,materialIndex:0};is.getNormal($h,Xh,qh,f.normal),u.face=f,u.barycoord=h}return u}var Sd=class extends Qn{constructor(t=null,n=1,i=1,r,s,o,a,l,c=hn,u=hn,h,f){super(null,o,a,l,c,u,r,s,h,f),this.isDataTexture=!0,this.image={data:t,width:n,height:i},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Wo=new Zi,mO=new Bt(.5,.5),Jh=new k,Vs=class{constructor(t=new li,n=new li,i=new li,r=new li,s=new li,o=new li){this.planes=[t,n,i,r,s,o]}set(t,n,i,r,s,o){let a=this.planes;return a[0].copy(t),a[1].copy(n),a[2].copy(i),a[3].copy(r),a[4].copy(s),a[5].copy(o),this}copy(t){let n=this.planes;for(let i=0;i<6;i++)n[i].copy(t.planes[i]);return this}setFromProjectionMatrix(t,n=Ii,i=!1){let r=this.planes,s=t.elements,o=s[0],a=s[1],l=s[2],c=s[3],u=s[4],h=s[5],f=s[6],d=s[7],p=s[8],y=s[9],g=s[10],m=s[11],x=s[12],S=s[13],v=s[14],M=s[15];if(r[0].setComponents(c-o,d-u,m-p,M-x).normalize(),r[1].setComponents(c+o,d+u,m+p,M+x).normalize(),r[2].setComponents(c+a,d+h,m+y,M+S).normalize(),r[3].setComponents(c-a,d-h,m-y,M-S).normalize(),i)r[4].setComponents(l,f,g,v).normalize(),r[5].setComponents(c-l,d-f,m-g,M-v).normalize();else if(r[4].setComponents(c-l,d-f,m-g,M-v).normalize(),n===Ii)r[5].setComponents(c+l,d+f,m+g,M+v).normalize();else if(n===vl)r[5].setComponents(l,f,g,v).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+n);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),Wo.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let n=t.geometry;n.boundingSphere===null&&n.computeBoundingSphere(),Wo.copy(n.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(Wo)}intersectsSprite(t){Wo.center.set(0,0,0);let n=mO.distanceTo(t.center);return Wo.radius=.7071067811865476+n,Wo.applyMatrix4(t.matrixWorld),this.intersectsSphere(Wo)}intersectsSphere(t){let n=this.planes,i=t.center,r=-t.radius;for(let s=0;s<6;s++)if(n[s].distanceToPoint(i)<r)return!1;return!0}intersectsBox(t){let n=this.planes;for(let i=0;i<6;i++){let r=n[i];if(Jh.x=r.normal.x>0?t.max.x:t.min.x,Jh.y=r.normal.y>0?t.max.y:t.min.y,Jh.z=r.normal.z>0?t.max.z:t.min.z,r.distanceToPoint(Jh)<0)return!1}return!0}containsPoint(t){let n=this.planes;for(let i=0;i<6;i++)if(n[i].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},XA=new ve,wd=class e{constructor(){this.coordinateSystem=Ii,this._frustums=[],this._count=0}setFromArrayCamera(t){let n=t.cameras,i=this._frustums;for(let r=0;r<n.length;r++){let s=n[r];XA.multiplyMatrices(s.projectionMatrix,s.matrixWorldInverse),i[r]===void 0&&(i[r]=new Vs),i[r].setFromProjectionMatrix(XA,s.coordinateSystem,s.reversedDepth)}return this._count=n.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsObject(t))return!0;return!1}intersectsSprite(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSphere(t))return!0;return!1}intersectsBox(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsBox(t))return!0;return!1}containsPoint(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let n=this._frustums,i=t._frustums;for(let r=0;r<t._count;r++)n[r]===void 0&&(n[r]=new Vs),n[r].copy(i[r]);return this._count=t._count,this}clone(){return new e().copy(this)}};var Sr=class extends as{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new kt(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Td=new k,Ed=new k,qA=new ve,Vc=new $o,jh=new Zi,Kx=new k,YA=new k,Ad=class extends En{constructor(t=new Ke,n=new Sr){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[0];for(let r=1,s=n.count;r<s;r++)Td.fromBufferAttribute(n,r-1),Ed.fromBufferAttribute(n,r),i[r]=i[r-1],i[r]+=Td.distanceTo(Ed);t.setAttribute("lineDistance",new Ze(i,1))}else Ft("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.matrixWorld,s=t.params.Line.threshold,o=i.drawRange;if(i.boundingSphere===null&&i.computeBoundingSphere(),jh.copy(i.boundingSphere),jh.applyMatrix4(r),jh.radius+=s,t.ray.intersectsSphere(jh)===!1)return;qA.copy(r).invert(),Vc.copy(t.ray).applyMatrix4(qA);let a=s/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=i.index,f=i.attributes.position;if(u!==null){let d=Math.max(0,o.start),p=Math.min(u.count,o.start+o.count);for(let y=d,g=p-1;y<g;y+=c){let m=u.getX(y),x=u.getX(y+1),S=Qh(this,t,Vc,l,m,x,y);S&&n.push(S)}if(this.isLineLoop){let y=u.getX(p-1),g=u.getX(d),m=Qh(this,t,Vc,l,y,g,p-1);m&&n.push(m)}}else{let d=Math.max(0,o.start),p=Math.min(f.count,o.start+o.count);for(let y=d,g=p-1;y<g;y+=c){let m=Qh(this,t,Vc,l,y,y+1,y);m&&n.push(m)}if(this.isLineLoop){let y=Qh(this,t,Vc,l,p-1,d,p-1);y&&n.push(y)}}}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}};function Qh(e,t,n,i,r,s,o){let a=e.geometry.attributes.position;if(Td.fromBufferAttribute(a,r),Ed.fromBufferAttribute(a,s),n.distanceSqToSegment(Td,Ed,Kx,YA)>i)return;Kx.applyMatrix4(e.matrixWorld);let c=t.ray.origin.distanceTo(Kx);if(!(c<t.near||c>t.far))return{distance:c,point:YA.clone().applyMatrix4(e.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:e}}var ZA=new k,KA=new k,Hs=class extends Ad{constructor(t,n){super(t,n),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[];for(let r=0,s=n.count;r<s;r+=2)ZA.fromBufferAttribute(n,r),KA.fromBufferAttribute(n,r+1),i[r]=r===0?0:i[r-1],i[r+1]=i[r]+ZA.distanceTo(KA);t.setAttribute("lineDistance",new Ze(i,1))}else Ft("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var tu=class extends Qn{constructor(t=[],n=Zo,i,r,s,o,a,l,c,u){super(t,n,i,r,s,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var ls=class extends Qn{constructor(t,n,i=Ji,r,s,o,a=hn,l=hn,c,u=ss,h=1){if(u!==ss&&u!==hs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let f={width:t,height:n,depth:h};super(f,r,s,o,a,l,u,i,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new Sl(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let n=super.toJSON(t);return n.compareFunction=this.compareFunction,n}},eu=class extends ls{constructor(t,n=Ji,i=Zo,r,s,o=hn,a=hn,l,c=ss){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,n,i,r,s,o,a,l,c),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},nu=class extends Qn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},cs=class e extends Ke{constructor(t=1,n=1,i=1,r=1,s=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:n,depth:i,widthSegments:r,heightSegments:s,depthSegments:o};let a=this;r=Math.floor(r),s=Math.floor(s),o=Math.floor(o);let l=[],c=[],u=[],h=[],f=0,d=0;p("z","y","x",-1,-1,i,n,t,o,s,0),p("z","y","x",1,-1,i,n,-t,o,s,1),p("x","z","y",1,1,t,i,n,r,o,2),p("x","z","y",1,-1,t,i,-n,r,o,3),p("x","y","z",1,-1,t,n,i,r,s,4),p("x","y","z",-1,-1,t,n,-i,r,s,5),this.setIndex(l),this.setAttribute("position",new Ze(c,3)),this.setAttribute("normal",new Ze(u,3)),this.setAttribute("uv",new Ze(h,2));function p(y,g,m,x,S,v,M,b,_,w,R){let C=v/_,A=M/w,L=v/2,B=M/2,P=b/2,D=_+1,z=w+1,U=0,Z=0,F=new k;for(let V=0;V<z;V++){let q=V*A-B;for(let st=0;st<D;st++){let lt=st*C-L;F[y]=lt*x,F[g]=q*S,F[m]=P,c.push(F.x,F.y,F.z),F[y]=0,F[g]=0,F[m]=b>0?1:-1,u.push(F.x,F.y,F.z),h.push(st/_),h.push(1-V/w),U+=1}}for(let V=0;V<w;V++)for(let q=0;q<_;q++){let st=f+q+D*V,lt=f+q+D*(V+1),$=f+(q+1)+D*(V+1),at=f+(q+1)+D*V;l.push(st,lt,at),l.push(lt,$,at),Z+=6}a.addGroup(d,Z,R),d+=Z,f+=U}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var td=new k,ed=new k,Jx=new k,nd=new is,El=class extends Ke{constructor(t=null,n=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:n},t!==null){let r=Math.pow(10,4),s=Math.cos(yl*n),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],u=["a","b","c"],h=new Array(3),f=new Map,d=[];for(let p=0;p<l;p+=3){o?(c[0]=o.getX(p),c[1]=o.getX(p+1),c[2]=o.getX(p+2)):(c[0]=p,c[1]=p+1,c[2]=p+2);let{a:y,b:g,c:m}=nd;if(y.fromBufferAttribute(a,c[0]),g.fromBufferAttribute(a,c[1]),m.fromBufferAttribute(a,c[2]),nd.getNormal(Jx),h[0]=`${Math.round(y.x*r)},${Math.round(y.y*r)},${Math.round(y.z*r)}`,h[1]=`${Math.round(g.x*r)},${Math.round(g.y*r)},${Math.round(g.z*r)}`,h[2]=`${Math.round(m.x*r)},${Math.round(m.y*r)},${Math.round(m.z*r)}`,!(h[0]===h[1]||h[1]===h[2]||h[2]===h[0]))for(let x=0;x<3;x++){let S=(x+1)%3,v=h[x],M=h[S],b=nd[u[x]],_=nd[u[S]],w=`${v}_${M}`,R=`${M}_${v}`,C=f.get(R);C?(Jx.dot(C.normal)<=s&&(d.push(b.x,b.y,b.z),d.push(_.x,_.y,_.z)),f.set(R,null)):f.has(w)||f.set(w,{index0:c[x],index1:c[S],normal:Jx.clone()})}}for(let p of f.values())if(p){let{index0:y,index1:g}=p;td.fromBufferAttribute(a,y),ed.fromBufferAttribute(a,g),d.push(td.x,td.y,td.z),d.push(ed.x,ed.y,ed.z)}this.setAttribute("position",new Ze(d,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var Xo=class e extends Ke{constructor(t=1,n=1,i=1,r=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:n,widthSegments:i,heightSegments:r};let s=t/2,o=n/2,a=Math.floor(i),l=Math.floor(r),c=a+1,u=l+1,h=t/a,f=n/l,d=[],p=[],y=[],g=[];for(let m=0;m<u;m++){let x=m*f-o;for(let S=0;S<c;S++){let v=S*h-s;p.push(v,-x,0),y.push(0,0,1),g.push(S/a),g.push(1-m/l)}}for(let m=0;m<l;m++)for(let x=0;x<a;x++){let S=x+c*m,v=x+c*(m+1),M=x+1+c*(m+1),b=x+1+c*m;d.push(S,v,b),d.push(v,M,b)}this.setIndex(d),this.setAttribute("position",new Ze(p,3)),this.setAttribute("normal",new Ze(y,3)),this.setAttribute("uv",new Ze(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.widthSegments,t.heightSegments)}};var iu=class extends Ke{constructor(t=null){if(super(),this.type="WireframeGeometry",this.parameters={geometry:t},t!==null){let n=[],i=new Set,r=new k,s=new k;if(t.index!==null){let o=t.attributes.position,a=t.index,l=t.groups;l.length===0&&(l=[{start:0,count:a.count,materialIndex:0}]);for(let c=0,u=l.length;c<u;++c){let h=l[c],f=h.start,d=h.count;for(let p=f,y=f+d;p<y;p+=3)for(let g=0;g<3;g++){let m=a.getX(p+g),x=a.getX(p+(g+1)%3);r.fromBufferAttribute(o,m),s.fromBufferAttribute(o,x),JA(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}}else{let o=t.attributes.position;for(let a=0,l=o.count/3;a<l;a++)for(let c=0;c<3;c++){let u=3*a+c,h=3*a+(c+1)%3;r.fromBufferAttribute(o,u),s.fromBufferAttribute(o,h),JA(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}this.setAttribute("position",new Ze(n,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};function JA(e,t,n){let i=`${e.x},${e.y},${e.z}-${t.x},${t.y},${t.z}`,r=`${t.x},${t.y},${t.z}-${e.x},${e.y},${e.z}`;return n.has(i)===!0||n.has(r)===!0?!1:(n.add(i),n.add(r),!0)}function Jo(e){let t={};for(let n in e){t[n]={};for(let i in e[n]){let r=e[n][i];if(jA(r))r.isRenderTargetTexture?(Ft("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[n][i]=null):t[n][i]=r.clone();else if(Array.isArray(r))if(jA(r[0])){let s=[];for(let o=0,a=r.length;o<a;o++)s[o]=r[o].clone();t[n][i]=s}else t[n][i]=r.slice();else t[n][i]=r}}return t}function An(e){let t={};for(let n=0;n<e.length;n++){let i=Jo(e[n]);for(let r in i)t[r]=i[r]}return t}function jA(e){return e&&(e.isColor||e.isMatrix3||e.isMatrix4||e.isVector2||e.isVector3||e.isVector4||e.isTexture||e.isQuaternion)}function gO(e){let t=[];for(let n=0;n<e.length;n++)t.push(e[n].clone());return t}function O_(e){let t=e.getRenderTarget();return t===null?e.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ie.workingColorSpace}var Mu={clone:Jo,merge:An},yO=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,xO=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Li=class extends as{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=yO,this.fragmentShader=xO,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=Jo(t.uniforms),this.uniformsGroups=gO(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let n=super.toJSON(t);n.glslVersion=this.glslVersion,n.uniforms={};for(let r in this.uniforms){let o=this.uniforms[r].value;o&&o.isTexture?n.uniforms[r]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?n.uniforms[r]={type:"c",value:o.getHex()}:o&&o.isVector2?n.uniforms[r]={type:"v2",value:o.toArray()}:o&&o.isVector3?n.uniforms[r]={type:"v3",value:o.toArray()}:o&&o.isVector4?n.uniforms[r]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?n.uniforms[r]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?n.uniforms[r]={type:"m4",value:o.toArray()}:n.uniforms[r]={value:o}}Object.keys(this.defines).length>0&&(n.defines=this.defines),n.vertexShader=this.vertexShader,n.fragmentShader=this.fragmentShader,n.lights=this.lights,n.clipping=this.clipping;let i={};for(let r in this.extensions)this.extensions[r]===!0&&(i[r]=!0);return Object.keys(i).length>0&&(n.extensions=i),n}fromJSON(t,n){if(super.fromJSON(t,n),t.uniforms!==void 0)for(let i in t.uniforms){let r=t.uniforms[i];switch(this.uniforms[i]={},r.type){case"t":this.uniforms[i].value=n[r.value]||null;break;case"c":this.uniforms[i].value=new kt().setHex(r.value);break;case"v2":this.uniforms[i].value=new Bt().fromArray(r.value);break;case"v3":this.uniforms[i].value=new k().fromArray(r.value);break;case"v4":this.uniforms[i].value=new de().fromArray(r.value);break;case"m3":this.uniforms[i].value=new Vt().fromArray(r.value);break;case"m4":this.uniforms[i].value=new ve().fromArray(r.value);break;default:this.uniforms[i].value=r.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let i in t.extensions)this.extensions[i]=t.extensions[i];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Cd=class extends Li{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var Al=class extends as{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new kt(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Rp,this.normalScale=new Bt(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new os,this.combine=Hd,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Rd=class extends as{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=P2,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Pd=class extends as{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};var ru=class extends Sr{constructor(t){super(),this.isLineDashedMaterial=!0,this.type="LineDashedMaterial",this.scale=1,this.dashSize=3,this.gapSize=1,this.setValues(t)}copy(t){return super.copy(t),this.scale=t.scale,this.dashSize=t.dashSize,this.gapSize=t.gapSize,this}};function hl(e,t){return!e||e.constructor===t?e:typeof t.BYTES_PER_ELEMENT=="number"?new t(e):Array.prototype.slice.call(e)}function id(e){return e!==void 0&&e.inTangents!==void 0&&e.outTangents!==void 0}var Ws=class{constructor(t,n,i,r){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=r!==void 0?r:new n.constructor(i),this.sampleValues=n,this.valueSize=i,this.settings=null,this.DefaultSettings_={}}evaluate(t){let n=this.parameterPositions,i=this._cachedIndex,r=n[i],s=n[i-1];t:{e:{let o;n:{i:if(!(t<r)){for(let a=i+2;;){if(r===void 0){if(t<s)break i;return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}if(i===a)break;if(s=r,r=n[++i],t<r)break e}o=n.length;break n}if(!(t>=s)){let a=n[1];t<a&&(i=2,s=a);for(let l=i-2;;){if(s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(i===l)break;if(r=s,s=n[--i-1],t>=s)break e}o=i,i=0;break n}break t}for(;i<o;){let a=i+o>>>1;t<n[a]?o=a:i=a+1}if(r=n[i],s=n[i-1],s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(r===void 0)return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}this._cachedIndex=i,this.intervalChanged_(i,s,r)}return this.interpolate_(i,s,t,r)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let n=this.resultBuffer,i=this.sampleValues,r=this.valueSize,s=t*r;for(let o=0;o!==r;++o)n[o]=i[s+o];return n}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Id=class extends Ws{constructor(t,n,i,r){super(t,n,i,r),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:e_,endingEnd:e_}}intervalChanged_(t,n,i){let r=this.parameterPositions,s=t-2,o=t+1,a=r[s],l=r[o];if(a===void 0)switch(this.getSettings_().endingStart){case n_:s=t,a=2*n-i;break;case i_:s=r.length-2,a=n+r[s]-r[s+1];break;default:s=t,a=i}if(l===void 0)switch(this.getSettings_().endingEnd){case n_:o=t,l=2*i-n;break;case i_:o=1,l=i+r[1]-r[0];break;default:o=t-1,l=n}let c=(i-n)*.5,u=this.valueSize;this._weightPrev=c/(n-a),this._weightNext=c/(l-i),this._offsetPrev=s*u,this._offsetNext=o*u}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,h=this._offsetNext,f=this._weightPrev,d=this._weightNext,p=(i-n)/(r-n),y=p*p,g=y*p,m=-f*g+2*f*y-f*p,x=(1+f)*g+(-1.5-2*f)*y+(-.5+f)*p+1,S=(-1-d)*g+(1.5+d)*y+.5*p,v=d*g-d*y;for(let M=0;M!==a;++M)s[M]=m*o[u+M]+x*o[c+M]+S*o[l+M]+v*o[h+M];return s}},Ld=class extends Ws{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(i-n)/(r-n),h=1-u;for(let f=0;f!==a;++f)s[f]=o[c+f]*h+o[l+f]*u;return s}},Dd=class extends Ws{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t){return this.copySampleValue_(t-1)}},Nd=class extends Ws{interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let p=(i-n)/(r-n),y=1-p;for(let g=0;g!==a;++g)s[g]=o[c+g]*y+o[l+g]*p;return s}let f=a*2,d=t-1;for(let p=0;p!==a;++p){let y=o[c+p],g=o[l+p],m=d*f+p*2,x=h[m],S=h[m+1],v=t*f+p*2,M=u[v],b=u[v+1],_=vO(i,n,x,M,r);s[p]=H2(_,y,S,b,g)}return s}};function H2(e,t,n,i,r){let s=1-e;return s*s*s*t+3*s*s*e*n+3*s*e*e*i+e*e*e*r}function _O(e,t,n,i,r){let s=1-e;return 3*s*s*(n-t)+6*s*e*(i-n)+3*e*e*(r-i)}function vO(e,t,n,i,r){let s=(e-t)/(r-t);for(let o=0;o<8;o++){let a=H2(s,t,n,i,r)-e;if(Math.abs(a)<1e-10)break;let l=_O(s,t,n,i,r);if(Math.abs(l)<1e-10)break;s=Math.max(0,Math.min(1,s-a/l))}return s}var hi=class{constructor(t,n,i,r){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(n===void 0||n.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=hl(n,this.TimeBufferType),this.values=hl(i,this.ValueBufferType),this.setInterpolation(r||this.DefaultInterpolation)}static toJSON(t){let n=t.constructor,i;if(n.toJSON!==this.toJSON)i=n.toJSON(t);else{i={name:t.name,times:hl(t.times,Array),values:hl(t.values,Array)};let r=t.getInterpolation();r!==t.DefaultInterpolation&&(i.interpolation=r),id(t.settings)&&(i.settings={inTangents:hl(t.settings.inTangents,Array),outTangents:hl(t.settings.outTangents,Array)})}return i.type=t.ValueTypeName,i}InterpolantFactoryMethodDiscrete(t){return new Dd(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Ld(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Id(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let n=new Nd(this.times,this.values,this.getValueSize(),t);return this.settings&&(n.inTangents=this.settings.inTangents,n.outTangents=this.settings.outTangents),n}setInterpolation(t){let n;switch(t){case $c:n=this.InterpolantFactoryMethodDiscrete;break;case xd:n=this.InterpolantFactoryMethodLinear;break;case ad:n=this.InterpolantFactoryMethodSmooth;break;case t_:n=this.InterpolantFactoryMethodBezier;break}if(n===void 0){let i="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(i);return Ft("KeyframeTrack:",i),this}return this.createInterpolant=n,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return $c;case this.InterpolantFactoryMethodLinear:return xd;case this.InterpolantFactoryMethodSmooth:return ad;case this.InterpolantFactoryMethodBezier:return t_}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]+=t;id(this.settings)&&(QA(this.settings.inTangents,t),QA(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]*=t;id(this.settings)&&(t2(this.settings.inTangents,t),t2(this.settings.outTangents,t))}return this}trim(t,n){let i=this.times,r=i.length,s=0,o=r-1;for(;s!==r&&i[s]<t;)++s;for(;o!==-1&&i[o]>n;)--o;if(++o,s!==0||o!==r){s>=o&&(o=Math.max(o,1),s=o-1);let a=this.getValueSize();this.times=i.slice(s,o),this.values=this.values.slice(s*a,o*a)}return this}validate(){let t=!0,n=this.getValueSize();n-Math.floor(n)!==0&&(Gt("KeyframeTrack: Invalid value size in track.",this),t=!1);let i=this.times,r=this.values,s=i.length;s===0&&(Gt("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==s;a++){let l=i[a];if(typeof l=="number"&&isNaN(l)){Gt("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){Gt("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(r!==void 0&&FF(r))for(let a=0,l=r.length;a!==l;++a){let c=r[a];if(isNaN(c)){Gt("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),n=this.values.slice(),i=this.getValueSize(),r=this.getInterpolation()===ad,s=t.length-1,o=1;for(let a=1;a<s;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(r)l=!0;else{let h=a*i,f=h-i,d=h+i;for(let p=0;p!==i;++p){let y=n[h+p];if(y!==n[f+p]||y!==n[d+p]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let h=a*i,f=o*i;for(let d=0;d!==i;++d)n[f+d]=n[h+d]}++o}}if(s>0){t[o]=t[s];for(let a=s*i,l=o*i,c=0;c!==i;++c)n[l+c]=n[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=n.slice(0,o*i)):(this.times=t,this.values=n),this}clone(){let t=this.times.slice(),n=this.values.slice(),i=this.constructor,r=new i(this.name,t,n);return r.createInterpolant=this.createInterpolant,id(this.settings)&&(r.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),r}};function QA(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]+=t}function t2(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]*=t}hi.prototype.ValueTypeName="";hi.prototype.TimeBufferType=Float32Array;hi.prototype.ValueBufferType=Float32Array;hi.prototype.DefaultInterpolation=xd;var $s=class extends hi{constructor(t,n,i){super(t,n,i)}};$s.prototype.ValueTypeName="bool";$s.prototype.ValueBufferType=Array;$s.prototype.DefaultInterpolation=$c;$s.prototype.InterpolantFactoryMethodLinear=void 0;$s.prototype.InterpolantFactoryMethodSmooth=void 0;var Ud=class extends hi{constructor(t,n,i,r){super(t,n,i,r)}};Ud.prototype.ValueTypeName="color";var Fd=class extends hi{constructor(t,n,i,r){super(t,n,i,r)}};Fd.prototype.ValueTypeName="number";var Od=class extends Ws{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(i-n)/(r-n),c=t*a;for(let u=c+a;c!==u;c+=4)ui.slerpFlat(s,0,o,c-a,o,c,l);return s}},su=class extends hi{constructor(t,n,i,r){super(t,n,i,r)}InterpolantFactoryMethodLinear(t){return new Od(this.times,this.values,this.getValueSize(),t)}};su.prototype.ValueTypeName="quaternion";su.prototype.InterpolantFactoryMethodSmooth=void 0;var Xs=class extends hi{constructor(t,n,i){super(t,n,i)}};Xs.prototype.ValueTypeName="string";Xs.prototype.ValueBufferType=Array;Xs.prototype.DefaultInterpolation=$c;Xs.prototype.InterpolantFactoryMethodLinear=void 0;Xs.prototype.InterpolantFactoryMethodSmooth=void 0;var Bd=class extends hi{constructor(t,n,i,r){super(t,n,i,r)}};Bd.prototype.ValueTypeName="vector";var kd=class{constructor(t,n,i){let r=this,s=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=n,this.onError=i,this._abortController=null,this.itemStart=function(u){a++,s===!1&&r.onStart!==void 0&&r.onStart(u,o,a),s=!0},this.itemEnd=function(u){o++,r.onProgress!==void 0&&r.onProgress(u,o,a),o===a&&(s=!1,r.onLoad!==void 0&&r.onLoad())},this.itemError=function(u){r.onError!==void 0&&r.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,h){return c.push(u,h),this},this.removeHandler=function(u){let h=c.indexOf(u);return h!==-1&&c.splice(h,2),this},this.getHandler=function(u){for(let h=0,f=c.length;h<f;h+=2){let d=c[h],p=c[h+1];if(d.global&&(d.lastIndex=0),d.test(u))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},W2=new kd,zd=class{constructor(t){this.manager=t!==void 0?t:W2,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,n){let i=this;return new Promise(function(r,s){i.load(t,r,n,s)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};zd.DEFAULT_MATERIAL_NAME="__DEFAULT";var ou=class extends En{static registerNode(t){this.prototype._lightNode=t}constructor(t,n=1){super(),this.isLight=!0,this.type="Light",this.color=new kt(t),this.intensity=n}copy(t,n){return super.copy(t,n),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let n=super.toJSON(t);return n.object.color=this.color.getHex(),n.object.intensity=this.intensity,n}};var jx=new ve,e2=new k,n2=new k,Gd=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new Bt(512,512),this.mapType=ti,this.map=null,this.mapPass=null,this.matrix=new ve,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Vs,this._frameExtents=new Bt(1,1),this._viewportCount=1,this._viewports=[new de(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let n=this.camera;e2.setFromMatrixPosition(t.matrixWorld),n.position.copy(e2),n2.setFromMatrixPosition(t.target.matrixWorld),n.lookAt(n2),n.updateMatrixWorld(),this._updateMatrix(n,this.matrix,this._frustum)}_updateMatrix(t,n,i,r){jx.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),i.setFromProjectionMatrix(jx,t.coordinateSystem,t.reversedDepth);let s=this._frameExtents,o=r?r.z/s.x:1,a=r?r.w/s.y:1,l=r?r.x/s.x:0,c=r?r.y/s.y:0;t.coordinateSystem===vl||t.reversedDepth?n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),n.multiply(jx)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},rd=new k,sd=new ui,br=new k,au=class extends En{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new ve,this.projectionMatrix=new ve,this.projectionMatrixInverse=new ve,this.coordinateSystem=Ii,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,n){return super.copy(t,n),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(rd,sd,br),br.x===1&&br.y===1&&br.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(rd,sd,br.set(1,1,1)).invert()}updateWorldMatrix(t,n,i=!1){super.updateWorldMatrix(t,n,i),this.matrixWorld.decompose(rd,sd,br),br.x===1&&br.y===1&&br.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(rd,sd,br.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},zs=new k,i2=new Bt,r2=new Bt,ci=class extends au{constructor(t=50,n=1,i=.1,r=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=i,this.far=r,this.focus=10,this.aspect=n,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let n=.5*this.getFilmHeight()/t;this.fov=Ml*2*Math.atan(n),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(yl*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return Ml*2*Math.atan(Math.tan(yl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,n,i){zs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(zs.x,zs.y).multiplyScalar(-t/zs.z),zs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),i.set(zs.x,zs.y).multiplyScalar(-t/zs.z)}getViewSize(t,n){return this.getViewBounds(t,i2,r2),n.subVectors(r2,i2)}setViewOffset(t,n,i,r,s,o){this.aspect=t/n,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,n=t*Math.tan(yl*.5*this.fov)/this.zoom,i=2*n,r=this.aspect*i,s=-.5*r,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;s+=o.offsetX*r/l,n-=o.offsetY*i/c,r*=o.width/l,i*=o.height/c}let a=this.filmOffset;a!==0&&(s+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(s,s+r,n,n-i,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.fov=this.fov,n.object.zoom=this.zoom,n.object.near=this.near,n.object.far=this.far,n.object.focus=this.focus,n.object.aspect=this.aspect,this.view!==null&&(n.object.view=Object.assign({},this.view)),n.object.filmGauge=this.filmGauge,n.object.filmOffset=this.filmOffset,n}};var us=class extends au{constructor(t=-1,n=1,i=1,r=-1,s=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=n,this.top=i,this.bottom=r,this.near=s,this.far=o,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,n,i,r,s,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),n=(this.top-this.bottom)/(2*this.zoom),i=(this.right+this.left)/2,r=(this.top+this.bottom)/2,s=i-t,o=i+t,a=r+n,l=r-n;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;s+=c*this.view.offsetX,o=s+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(s,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.zoom=this.zoom,n.object.left=this.left,n.object.right=this.right,n.object.top=this.top,n.object.bottom=this.bottom,n.object.near=this.near,n.object.far=this.far,this.view!==null&&(n.object.view=Object.assign({},this.view)),n}},r_=class extends Gd{constructor(){super(new us(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},lu=class extends ou{constructor(t,n){super(t,n),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(En.DEFAULT_UP),this.updateMatrix(),this.target=new En,this.shadow=new r_}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let n=super.toJSON(t);return n.object.shadow=this.shadow.toJSON(),n.object.target=this.target.uuid,n}},cu=class extends ou{constructor(t,n){super(t,n),this.isAmbientLight=!0,this.type="AmbientLight"}};var uu=class extends Ke{constructor(){super(),this.isInstancedBufferGeometry=!0,this.type="InstancedBufferGeometry",this.instanceCount=1/0}copy(t){return super.copy(t),this.instanceCount=t.instanceCount,this}toJSON(){let t=super.toJSON();return t.instanceCount=this.instanceCount,t.isInstancedBufferGeometry=!0,t}};var dl=-90,pl=1,Cl=class extends En{constructor(t,n,i){super(),this.type="CubeCamera",this.renderTarget=i,this.coordinateSystem=null,this.activeMipmapLevel=0;let r=new ci(dl,pl,t,n);r.layers=this.layers,this.add(r);let s=new ci(dl,pl,t,n);s.layers=this.layers,this.add(s);let o=new ci(dl,pl,t,n);o.layers=this.layers,this.add(o);let a=new ci(dl,pl,t,n);a.layers=this.layers,this.add(a);let l=new ci(dl,pl,t,n);l.layers=this.layers,this.add(l);let c=new ci(dl,pl,t,n);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,n=this.children.concat(),[i,r,s,o,a,l]=n;for(let c of n)this.remove(c);if(t===Ii)i.up.set(0,1,0),i.lookAt(1,0,0),r.up.set(0,1,0),r.lookAt(-1,0,0),s.up.set(0,0,-1),s.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===vl)i.up.set(0,-1,0),i.lookAt(-1,0,0),r.up.set(0,-1,0),r.lookAt(1,0,0),s.up.set(0,0,1),s.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of n)this.add(c),c.updateMatrixWorld()}update(t,n){this.parent===null&&this.updateMatrixWorld();let{renderTarget:i,activeMipmapLevel:r}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[s,o,a,l,c,u]=this.children,h=t.getRenderTarget(),f=t.getActiveCubeFace(),d=t.getActiveMipmapLevel(),p=t.xr.enabled;t.xr.enabled=!1;let y=i.texture.mipmapsAutoUpdate;i.texture.mipmapsAutoUpdate=!1;let g=!1;t.isWebGLRenderer===!0?g=t.state.buffers.depth.getReversed():g=t.reversedDepthBuffer,t.setRenderTarget(i,0,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,s),t.setRenderTarget(i,1,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,o),t.setRenderTarget(i,2,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,a),t.setRenderTarget(i,3,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,l),t.setRenderTarget(i,4,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,c),i.texture.mipmapsAutoUpdate=y,t.setRenderTarget(i,5,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,u),t.setRenderTarget(h,f,d),t.xr.enabled=p,i.texture.needsPMREMUpdate=!0}},Vd=class extends ci{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var B_="\\[\\]\\.:\\/",bO=new RegExp("["+B_+"]","g"),k_="[^"+B_+"]",MO="[^"+B_.replace("\\.","")+"]",SO=/((?:WC+[\/:])*)/.source.replace("WC",k_),wO=/(WCOD+)?/.source.replace("WCOD",MO),TO=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",k_),EO=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",k_),AO=new RegExp("^"+SO+wO+TO+EO+"$"),CO=["material","materials","bones","map"],s_=class{constructor(t,n,i){let r=i||Ee.parseTrackName(n);this._targetGroup=t,this._bindings=t.subscribe_(n,r)}getValue(t,n){this.bind();let i=this._targetGroup.nCachedObjects_,r=this._bindings[i];r!==void 0&&r.getValue(t,n)}setValue(t,n){let i=this._bindings;for(let r=this._targetGroup.nCachedObjects_,s=i.length;r!==s;++r)i[r].setValue(t,n)}bind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].bind()}unbind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].unbind()}},Ee=class e{constructor(t,n,i){this.path=n,this.parsedPath=i||e.parseTrackName(n),this.node=e.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,n,i){return t&&t.isAnimationObjectGroup?new e.Composite(t,n,i):new e(t,n,i)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(bO,"")}static parseTrackName(t){let n=AO.exec(t);if(n===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let i={nodeName:n[2],objectName:n[3],objectIndex:n[4],propertyName:n[5],propertyIndex:n[6]},r=i.nodeName&&i.nodeName.lastIndexOf(".");if(r!==void 0&&r!==-1){let s=i.nodeName.substring(r+1);CO.indexOf(s)!==-1&&(i.nodeName=i.nodeName.substring(0,r),i.objectName=s)}if(i.propertyName===null||i.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return i}static findNode(t,n){if(n===void 0||n===""||n==="."||n===-1||n===t.name||n===t.uuid)return t;if(t.skeleton){let i=t.skeleton.getBoneByName(n);if(i!==void 0)return i}if(t.children){let i=function(s){for(let o=0;o<s.length;o++){let a=s[o];if(a.name===n||a.uuid===n)return a;let l=i(a.children);if(l)return l}return null},r=i(t.children);if(r)return r}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,n){t[n]=this.targetObject[this.propertyName]}_getValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)t[n++]=i[r]}_getValue_arrayElement(t,n){t[n]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,n){this.resolvedProperty.toArray(t,n)}_setValue_direct(t,n){this.targetObject[this.propertyName]=t[n]}_setValue_direct_setNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++]}_setValue_array_setNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,n){this.resolvedProperty[this.propertyIndex]=t[n]}_setValue_arrayElement_setNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,n){this.resolvedProperty.fromArray(t,n)}_setValue_fromArray_setNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,n){this.bind(),this.getValue(t,n)}_setValue_unbound(t,n){this.bind(),this.setValue(t,n)}bind(){let t=this.node,n=this.parsedPath,i=n.objectName,r=n.propertyName,s=n.propertyIndex;if(t||(t=e.findNode(this.rootNode,n.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Ft("PropertyBinding: No target node found for track: "+this.path+".");return}if(i){let c=n.objectIndex;switch(i){case"materials":if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){Gt("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){Gt("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){Gt("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[i]===void 0){Gt("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[i]}if(c!==void 0){if(t[c]===void 0){Gt("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[r];if(o===void 0){let c=n.nodeName;Gt("PropertyBinding: Trying to update property for track: "+c+"."+r+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(s!==void 0){if(r==="morphTargetInfluences"){if(!t.geometry){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[s]!==void 0&&(s=t.morphTargetDictionary[s])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=s}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=r;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Ee.Composite=s_;Ee.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Ee.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Ee.prototype.GetterByBindingType=[Ee.prototype._getValue_direct,Ee.prototype._getValue_array,Ee.prototype._getValue_arrayElement,Ee.prototype._getValue_toArray];Ee.prototype.SetterByBindingTypeAndVersioning=[[Ee.prototype._setValue_direct,Ee.prototype._setValue_direct_setNeedsUpdate,Ee.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_array,Ee.prototype._setValue_array_setNeedsUpdate,Ee.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_arrayElement,Ee.prototype._setValue_arrayElement_setNeedsUpdate,Ee.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_fromArray,Ee.prototype._setValue_fromArray_setNeedsUpdate,Ee.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var zW=new Float32Array(1);var qs=class extends Md{constructor(t,n,i=1){super(t,n),this.isInstancedInterleavedBuffer=!0,this.meshPerAttribute=i}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}clone(t){let n=super.clone(t);return n.meshPerAttribute=this.meshPerAttribute,n}toJSON(t){let n=super.toJSON(t);return n.isInstancedInterleavedBuffer=!0,n.meshPerAttribute=this.meshPerAttribute,n}};var Rl=class{constructor(t=1,n=0,i=0){this.radius=t,this.phi=n,this.theta=i}set(t,n,i){return this.radius=t,this.phi=n,this.theta=i,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=Xt(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,n,i){return this.radius=Math.sqrt(t*t+n*n+i*i),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,i),this.phi=Math.acos(Xt(n/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var o_=class{static{this.prototype.isMatrix2=!0}constructor(t,n,i,r){this.elements=[1,0,0,1],t!==void 0&&this.set(t,n,i,r)}identity(){return this.set(1,0,0,1),this}fromArray(t,n=0){for(let i=0;i<4;i++)this.elements[i]=t[i+n];return this}set(t,n,i,r){let s=this.elements;return s[0]=t,s[2]=n,s[1]=i,s[3]=r,this}};var s2=new k,od=new k,ml=new k,gl=new k,Qx=new k,RO=new k,PO=new k,fu=class{constructor(t=new k,n=new k){this.start=t,this.end=n}set(t,n){return this.start.copy(t),this.end.copy(n),this}copy(t){return this.start.copy(t.start),this.end.copy(t.end),this}getCenter(t){return t.addVectors(this.start,this.end).multiplyScalar(.5)}delta(t){return t.subVectors(this.end,this.start)}distanceSq(){return this.start.distanceToSquared(this.end)}distance(){return this.start.distanceTo(this.end)}at(t,n){return this.delta(n).multiplyScalar(t).add(this.start)}closestPointToPointParameter(t,n){s2.subVectors(t,this.start),od.subVectors(this.end,this.start);let i=od.dot(od);if(i===0)return 0;let s=od.dot(s2)/i;return n&&(s=Xt(s,0,1)),s}closestPointToPoint(t,n,i){let r=this.closestPointToPointParameter(t,n);return this.delta(i).multiplyScalar(r).add(this.start)}distanceSqToLine3(t,n=RO,i=PO){let r=10000000000000001e-32,s,o,a=this.start,l=t.start,c=this.end,u=t.end;ml.subVectors(c,a),gl.subVectors(u,l),Qx.subVectors(a,l);let h=ml.dot(ml),f=gl.dot(gl),d=gl.dot(Qx);if(h<=r&&f<=r)return n.copy(a),i.copy(l),n.distanceToSquared(i);if(h<=r)s=0,o=d/f,o=Xt(o,0,1);else{let p=ml.dot(Qx);if(f<=r)o=0,s=Xt(-p/h,0,1);else{let y=ml.dot(gl),g=h*f-y*y;g!==0?s=Xt((y*d-p*f)/g,0,1):s=0,o=(y*s+d)/f,o<0?(o=0,s=Xt(-p/h,0,1)):o>1&&(o=1,s=Xt((y-p)/h,0,1))}}return n.copy(a).addScaledVector(ml,s),i.copy(l).addScaledVector(gl,o),n.distanceToSquared(i)}applyMatrix4(t){return this.start.applyMatrix4(t),this.end.applyMatrix4(t),this}equals(t){return t.start.equals(this.start)&&t.end.equals(this.end)}clone(){return new this.constructor().copy(this)}};var hu=class extends Yi{constructor(t,n=null){super(),this.object=t,this.domElement=n,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function z_(e,t,n,i){let r=IO(i);switch(n){case T_:return e*t;case A_:return e*t/r.components*r.byteLength;case Kd:return e*t/r.components*r.byteLength;case Js:return e*t*2/r.components*r.byteLength;case Jd:return e*t*2/r.components*r.byteLength;case E_:return e*t*3/r.components*r.byteLength;case tr:return e*t*4/r.components*r.byteLength;case jd:return e*t*4/r.components*r.byteLength;case mu:case gu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case yu:case xu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case tp:case np:return Math.max(e,16)*Math.max(t,8)/4;case Qd:case ep:return Math.max(e,8)*Math.max(t,8)/2;case ip:case rp:case op:case ap:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case sp:case _u:case lp:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case cp:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case up:return Math.floor((e+4)/5)*Math.floor((t+3)/4)*16;case fp:return Math.floor((e+4)/5)*Math.floor((t+4)/5)*16;case hp:return Math.floor((e+5)/6)*Math.floor((t+4)/5)*16;case dp:return Math.floor((e+5)/6)*Math.floor((t+5)/6)*16;case pp:return Math.floor((e+7)/8)*Math.floor((t+4)/5)*16;case mp:return Math.floor((e+7)/8)*Math.floor((t+5)/6)*16;case gp:return Math.floor((e+7)/8)*Math.floor((t+7)/8)*16;case yp:return Math.floor((e+9)/10)*Math.floor((t+4)/5)*16;case xp:return Math.floor((e+9)/10)*Math.floor((t+5)/6)*16;case _p:return Math.floor((e+9)/10)*Math.floor((t+7)/8)*16;case vp:return Math.floor((e+9)/10)*Math.floor((t+9)/10)*16;case bp:return Math.floor((e+11)/12)*Math.floor((t+9)/10)*16;case Mp:return Math.floor((e+11)/12)*Math.floor((t+11)/12)*16;case Sp:case wp:case Tp:return Math.ceil(e/4)*Math.ceil(t/4)*16;case Ep:case Ap:return Math.ceil(e/4)*Math.ceil(t/4)*8;case vu:case Cp:return Math.ceil(e/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${n} format.`)}function IO(e){switch(e){case ti:case b_:return{byteLength:1,components:1};case Dl:case M_:case Qi:return{byteLength:2,components:1};case Yd:case Zd:return{byteLength:2,components:4};case Ji:case qd:case ji:return{byteLength:4,components:1};case S_:case w_:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${e}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Ft("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function h3(){let e=null,t=!1,n=null,i=null;function r(s,o){i=e.requestAnimationFrame(r),n(s,o)}return{start:function(){t!==!0&&n!==null&&e!==null&&(i=e.requestAnimationFrame(r),t=!0)},stop:function(){e!==null&&e.cancelAnimationFrame(i),t=!1},setAnimationLoop:function(s){n=s},setContext:function(s){e=s}}}function DO(e){let t=new WeakMap;function n(a,l){let c=a.array,u=a.usage,h=c.byteLength,f=e.createBuffer();e.bindBuffer(l,f),e.bufferData(l,c,u),a.onUploadCallback();let d;if(c instanceof Float32Array)d=e.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)d=e.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?d=e.HALF_FLOAT:d=e.UNSIGNED_SHORT;else if(c instanceof Int16Array)d=e.SHORT;else if(c instanceof Uint32Array)d=e.UNSIGNED_INT;else if(c instanceof Int32Array)d=e.INT;else if(c instanceof Int8Array)d=e.BYTE;else if(c instanceof Uint8Array)d=e.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)d=e.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:f,type:d,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:h}}function i(a,l,c){let u=l.array,h=l.updateRanges;if(e.bindBuffer(c,a),h.length===0)e.bufferSubData(c,0,u);else{h.sort((d,p)=>d.start-p.start);let f=0;for(let d=1;d<h.length;d++){let p=h[f],y=h[d];y.start<=p.start+p.count+1?p.count=Math.max(p.count,y.start+y.count-p.start):(++f,h[f]=y)}h.length=f+1;for(let d=0,p=h.length;d<p;d++){let y=h[d];e.bufferSubData(c,y.start*u.BYTES_PER_ELEMENT,u,y.start,y.count)}l.clearUpdateRanges()}l.onUploadCallback()}function r(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function s(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(e.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,n(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");i(c.buffer,a,l),c.version=a.version}}return{get:r,remove:s,update:o}}var NO=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,UO=`#ifdef USE_ALPHAHASH
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
#endif`,FO=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,OO=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,BO=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,kO=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,zO=`#ifdef USE_AOMAP
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
#endif`,GO=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,VO=`#ifdef USE_BATCHING
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
#endif`,HO=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,WO=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,$O=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,XO=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,qO=`#ifdef USE_IRIDESCENCE
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
#endif`,YO=`#ifdef USE_BUMPMAP
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
#endif`,ZO=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,KO=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,JO=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,jO=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,QO=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,t4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,e4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,n4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,i4=`#define PI 3.141592653589793
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
} // validated`,r4=`vec3 transformedNormal = objectNormal;
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
#endif`,s4=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,o4=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,a4=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,l4=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,c4="gl_FragColor = linearToOutputTexel( gl_FragColor );",u4=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,f4=`#ifdef USE_ENVMAP
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
#endif`,h4=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,d4=`#ifdef USE_ENVMAP
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
#endif`,p4=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,m4=`#ifdef USE_ENVMAP
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
#endif`,g4=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,y4=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,x4=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,_4=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,v4=`#ifdef USE_GRADIENTMAP
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
}`,b4=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,M4=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,S4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,w4=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,T4=`#ifdef USE_ENVMAP
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
#endif`,E4=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,A4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,C4=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,R4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,P4=`PhysicalMaterial material;
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
#endif`,I4=`uniform sampler2D dfgLUT;
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
}`,L4=`
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
#endif`,D4=`#if defined( RE_IndirectDiffuse )
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
#endif`,N4=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,U4=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,F4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,O4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,B4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,k4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,z4=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,G4=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,V4=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,H4=`#if defined( USE_POINTS_UV )
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
#endif`,W4=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,$4=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,X4=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,q4=`#if defined( USE_MORPHCOLORS )
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
#endif`,Y4=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Z4=`#ifdef USE_MORPHTARGETS
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
#endif`,K4=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,J4=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,j4=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,Q4=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,t5=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,e5=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,n5=`#ifdef USE_NORMALMAP
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
#endif`,i5=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,r5=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,s5=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,o5=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,a5=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,l5=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,c5=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,u5=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,f5=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,h5=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,d5=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,p5=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,m5=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,g5=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,y5=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,x5=`float getShadowMask() {
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
}`,_5=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,v5=`#ifdef USE_SKINNING
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
#endif`,b5=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,M5=`#ifdef USE_SKINNING
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
#endif`,S5=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,w5=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,T5=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,E5=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,A5=`#ifdef USE_TRANSMISSION
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
#endif`,C5=`#ifdef USE_TRANSMISSION
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
#endif`,R5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,P5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,I5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,L5=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,D5=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,N5=`uniform sampler2D t2D;
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
}`,U5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,F5=`uniform float backgroundBlurriness;
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
}`,O5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,B5=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,k5=`#include <common>
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
}`,z5=`#if DEPTH_PACKING == 3200
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
}`,G5=`#define DISTANCE
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
}`,V5=`#define DISTANCE
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
}`,H5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,W5=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,$5=`uniform float scale;
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
}`,X5=`uniform vec3 diffuse;
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
}`,q5=`#include <common>
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
}`,Y5=`uniform vec3 diffuse;
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
}`,Z5=`#define LAMBERT
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
}`,K5=`#define LAMBERT
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
}`,J5=`#define MATCAP
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
}`,j5=`#define MATCAP
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
}`,Q5=`#define NORMAL
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
}`,tB=`#define NORMAL
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
}`,eB=`#define PHONG
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
}`,nB=`#define PHONG
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
}`,iB=`#define STANDARD
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
}`,rB=`#define STANDARD
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
}`,sB=`#define TOON
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
}`,oB=`#define TOON
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
}`,aB=`uniform float size;
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
}`,lB=`uniform vec3 diffuse;
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
}`,cB=`#include <common>
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
}`,uB=`uniform vec3 color;
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
}`,fB=`uniform float rotation;
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
}`,hB=`uniform vec3 diffuse;
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
}`,jt={alphahash_fragment:NO,alphahash_pars_fragment:UO,alphamap_fragment:FO,alphamap_pars_fragment:OO,alphatest_fragment:BO,alphatest_pars_fragment:kO,aomap_fragment:zO,aomap_pars_fragment:GO,batching_pars_vertex:VO,batching_vertex:HO,begin_vertex:WO,beginnormal_vertex:$O,bsdfs:XO,iridescence_fragment:qO,bumpmap_pars_fragment:YO,clipping_planes_fragment:ZO,clipping_planes_pars_fragment:KO,clipping_planes_pars_vertex:JO,clipping_planes_vertex:jO,color_fragment:QO,color_pars_fragment:t4,color_pars_vertex:e4,color_vertex:n4,common:i4,defaultnormal_vertex:r4,displacementmap_pars_vertex:s4,displacementmap_vertex:o4,emissivemap_fragment:a4,emissivemap_pars_fragment:l4,colorspace_fragment:c4,colorspace_pars_fragment:u4,envmap_fragment:f4,envmap_common_pars_fragment:h4,envmap_pars_fragment:d4,envmap_pars_vertex:p4,envmap_physical_pars_fragment:T4,envmap_vertex:m4,fog_vertex:g4,fog_pars_vertex:y4,fog_fragment:x4,fog_pars_fragment:_4,gradientmap_pars_fragment:v4,lightmap_pars_fragment:b4,lights_lambert_fragment:M4,lights_lambert_pars_fragment:S4,lights_pars_begin:w4,lights_toon_fragment:E4,lights_toon_pars_fragment:A4,lights_phong_fragment:C4,lights_phong_pars_fragment:R4,lights_physical_fragment:P4,lights_physical_pars_fragment:I4,lights_fragment_begin:L4,lights_fragment_maps:D4,lights_fragment_end:N4,lightprobes_pars_fragment:U4,logdepthbuf_fragment:F4,logdepthbuf_pars_fragment:O4,logdepthbuf_pars_vertex:B4,logdepthbuf_vertex:k4,map_fragment:z4,map_pars_fragment:G4,map_particle_fragment:V4,map_particle_pars_fragment:H4,metalnessmap_fragment:W4,metalnessmap_pars_fragment:$4,morphinstance_vertex:X4,morphcolor_vertex:q4,morphnormal_vertex:Y4,morphtarget_pars_vertex:Z4,morphtarget_vertex:K4,normal_fragment_begin:J4,normal_fragment_maps:j4,normal_pars_fragment:Q4,normal_pars_vertex:t5,normal_vertex:e5,normalmap_pars_fragment:n5,clearcoat_normal_fragment_begin:i5,clearcoat_normal_fragment_maps:r5,clearcoat_pars_fragment:s5,iridescence_pars_fragment:o5,opaque_fragment:a5,packing:l5,premultiplied_alpha_fragment:c5,project_vertex:u5,dithering_fragment:f5,dithering_pars_fragment:h5,roughnessmap_fragment:d5,roughnessmap_pars_fragment:p5,shadowmap_pars_fragment:m5,shadowmap_pars_vertex:g5,shadowmap_vertex:y5,shadowmask_pars_fragment:x5,skinbase_vertex:_5,skinning_pars_vertex:v5,skinning_vertex:b5,skinnormal_vertex:M5,specularmap_fragment:S5,specularmap_pars_fragment:w5,tonemapping_fragment:T5,tonemapping_pars_fragment:E5,transmission_fragment:A5,transmission_pars_fragment:C5,uv_pars_fragment:R5,uv_pars_vertex:P5,uv_vertex:I5,worldpos_vertex:L5,background_vert:D5,background_frag:N5,backgroundCube_vert:U5,backgroundCube_frag:F5,cube_vert:O5,cube_frag:B5,depth_vert:k5,depth_frag:z5,distance_vert:G5,distance_frag:V5,equirect_vert:H5,equirect_frag:W5,linedashed_vert:$5,linedashed_frag:X5,meshbasic_vert:q5,meshbasic_frag:Y5,meshlambert_vert:Z5,meshlambert_frag:K5,meshmatcap_vert:J5,meshmatcap_frag:j5,meshnormal_vert:Q5,meshnormal_frag:tB,meshphong_vert:eB,meshphong_frag:nB,meshphysical_vert:iB,meshphysical_frag:rB,meshtoon_vert:sB,meshtoon_frag:oB,points_vert:aB,points_frag:lB,shadow_vert:cB,shadow_frag:uB,sprite_vert:fB,sprite_frag:hB},wt={common:{diffuse:{value:new kt(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Vt}},envmap:{envMap:{value:null},envMapRotation:{value:new Vt},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Vt}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Vt}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Vt},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Vt},normalScale:{value:new Bt(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Vt},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Vt}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Vt}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Vt}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new kt(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new kt(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0},uvTransform:{value:new Vt}},sprite:{diffuse:{value:new kt(16777215)},opacity:{value:1},center:{value:new Bt(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}}},Vn={basic:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.fog]),vertexShader:jt.meshbasic_vert,fragmentShader:jt.meshbasic_frag},lambert:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},envMapIntensity:{value:1}}]),vertexShader:jt.meshlambert_vert,fragmentShader:jt.meshlambert_frag},phong:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},specular:{value:new kt(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:jt.meshphong_vert,fragmentShader:jt.meshphong_frag},standard:{uniforms:An([wt.common,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.roughnessmap,wt.metalnessmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag},toon:{uniforms:An([wt.common,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.gradientmap,wt.fog,wt.lights,{emissive:{value:new kt(0)}}]),vertexShader:jt.meshtoon_vert,fragmentShader:jt.meshtoon_frag},matcap:{uniforms:An([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,{matcap:{value:null}}]),vertexShader:jt.meshmatcap_vert,fragmentShader:jt.meshmatcap_frag},points:{uniforms:An([wt.points,wt.fog]),vertexShader:jt.points_vert,fragmentShader:jt.points_frag},dashed:{uniforms:An([wt.common,wt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:jt.linedashed_vert,fragmentShader:jt.linedashed_frag},depth:{uniforms:An([wt.common,wt.displacementmap]),vertexShader:jt.depth_vert,fragmentShader:jt.depth_frag},normal:{uniforms:An([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,{opacity:{value:1}}]),vertexShader:jt.meshnormal_vert,fragmentShader:jt.meshnormal_frag},sprite:{uniforms:An([wt.sprite,wt.fog]),vertexShader:jt.sprite_vert,fragmentShader:jt.sprite_frag},background:{uniforms:{uvTransform:{value:new Vt},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:jt.background_vert,fragmentShader:jt.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Vt}},vertexShader:jt.backgroundCube_vert,fragmentShader:jt.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:jt.cube_vert,fragmentShader:jt.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:jt.equirect_vert,fragmentShader:jt.equirect_frag},distance:{uniforms:An([wt.common,wt.displacementmap,{referencePosition:{value:new k},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:jt.distance_vert,fragmentShader:jt.distance_frag},shadow:{uniforms:An([wt.lights,wt.fog,{color:{value:new kt(0)},opacity:{value:1}}]),vertexShader:jt.shadow_vert,fragmentShader:jt.shadow_frag}};Vn.physical={uniforms:An([Vn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Vt},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Vt},clearcoatNormalScale:{value:new Bt(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Vt},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Vt},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Vt},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Vt},sheen:{value:0},sheenColor:{value:new kt(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Vt},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Vt},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Vt},transmissionSamplerSize:{value:new Bt},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Vt},attenuationDistance:{value:0},attenuationColor:{value:new kt(0)},specularColor:{value:new kt(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Vt},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Vt},anisotropyVector:{value:new Bt},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Vt}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag};var Ip={r:0,b:0,g:0},dB=new ve,d3=new Vt;d3.set(-1,0,0,0,1,0,0,0,1);function pB(e,t,n,i,r,s){let o=new kt(0),a=r===!0?0:1,l,c,u=null,h=0,f=null;function d(x){let S=x.isScene===!0?x.background:null;if(S&&S.isTexture){let v=x.backgroundBlurriness>0;S=t.get(S,v)}return S}function p(x){let S=!1,v=d(x);v===null?g(o,a):v&&v.isColor&&(g(v,1),S=!0);let M=e.xr.getEnvironmentBlendMode();M==="additive"?n.buffers.color.setClear(0,0,0,1,s):M==="alpha-blend"&&n.buffers.color.setClear(0,0,0,0,s),(e.autoClear||S)&&(n.buffers.depth.setTest(!0),n.buffers.depth.setMask(!0),n.buffers.color.setMask(!0),e.clear(e.autoClearColor,e.autoClearDepth,e.autoClearStencil))}function y(x,S){let v=d(S);v&&v.isCubeTexture?(c===void 0&&(c=new We(new cs(1,1,1),new Li({name:"BackgroundCubeMaterial",uniforms:Jo(Vn.backgroundCube.uniforms),vertexShader:Vn.backgroundCube.vertexShader,fragmentShader:Vn.backgroundCube.fragmentShader,side:Gn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(M,b,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),i.update(c)),c.material.uniforms.envMap.value=v,c.material.uniforms.backgroundBlurriness.value=S.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=S.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(dB.makeRotationFromEuler(S.backgroundRotation)).transpose(),v.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(d3),c.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,(u!==v||h!==v.version||f!==e.toneMapping)&&(c.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),c.layers.enableAll(),x.unshift(c,c.geometry,c.material,0,0,null)):v&&v.isTexture&&(l===void 0&&(l=new We(new Xo(2,2),new Li({name:"BackgroundMaterial",uniforms:Jo(Vn.background.uniforms),vertexShader:Vn.background.vertexShader,fragmentShader:Vn.background.fragmentShader,side:Ks,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),i.update(l)),l.material.uniforms.t2D.value=v,l.material.uniforms.backgroundIntensity.value=S.backgroundIntensity,l.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,v.matrixAutoUpdate===!0&&v.updateMatrix(),l.material.uniforms.uvTransform.value.copy(v.matrix),(u!==v||h!==v.version||f!==e.toneMapping)&&(l.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),l.layers.enableAll(),x.unshift(l,l.geometry,l.material,0,0,null))}function g(x,S){x.getRGB(Ip,O_(e)),n.buffers.color.setClear(Ip.r,Ip.g,Ip.b,S,s)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(x,S=1){o.set(x),a=S,g(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(x){a=x,g(o,a)},render:p,addToRenderList:y,dispose:m}}function mB(e,t){let n=e.getParameter(e.MAX_VERTEX_ATTRIBS),i={},r=f(null),s=r,o=!1;function a(A,L,B,P,D){let z=!1,U=h(A,P,B,L);s!==U&&(s=U,c(s.object)),z=d(A,P,B,D),z&&p(A,P,B,D),D!==null&&t.update(D,e.ELEMENT_ARRAY_BUFFER),(z||o)&&(o=!1,v(A,L,B,P),D!==null&&e.bindBuffer(e.ELEMENT_ARRAY_BUFFER,t.get(D).buffer))}function l(){return e.createVertexArray()}function c(A){return e.bindVertexArray(A)}function u(A){return e.deleteVertexArray(A)}function h(A,L,B,P){let D=P.wireframe===!0,z=i[L.id];z===void 0&&(z={},i[L.id]=z);let U=A.isInstancedMesh===!0?A.id:0,Z=z[U];Z===void 0&&(Z={},z[U]=Z);let F=Z[B.id];F===void 0&&(F={},Z[B.id]=F);let V=F[D];return V===void 0&&(V=f(l()),F[D]=V),V}function f(A){let L=[],B=[],P=[];for(let D=0;D<n;D++)L[D]=0,B[D]=0,P[D]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:L,enabledAttributes:B,attributeDivisors:P,object:A,attributes:{},index:null}}function d(A,L,B,P){let D=s.attributes,z=L.attributes,U=0,Z=B.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=D[F],st=z[F];if(st===void 0&&(F==="instanceMatrix"&&A.instanceMatrix&&(st=A.instanceMatrix),F==="instanceColor"&&A.instanceColor&&(st=A.instanceColor)),q===void 0||q.attribute!==st||st&&q.data!==st.data)return!0;U++}return s.attributesNum!==U||s.index!==P}function p(A,L,B,P){let D={},z=L.attributes,U=0,Z=B.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=z[F];q===void 0&&(F==="instanceMatrix"&&A.instanceMatrix&&(q=A.instanceMatrix),F==="instanceColor"&&A.instanceColor&&(q=A.instanceColor));let st={};st.attribute=q,q&&q.data&&(st.data=q.data),D[F]=st,U++}s.attributes=D,s.attributesNum=U,s.index=P}function y(){let A=s.newAttributes;for(let L=0,B=A.length;L<B;L++)A[L]=0}function g(A){m(A,0)}function m(A,L){let B=s.newAttributes,P=s.enabledAttributes,D=s.attributeDivisors;B[A]=1,P[A]===0&&(e.enableVertexAttribArray(A),P[A]=1),D[A]!==L&&(e.vertexAttribDivisor(A,L),D[A]=L)}function x(){let A=s.newAttributes,L=s.enabledAttributes;for(let B=0,P=L.length;B<P;B++)L[B]!==A[B]&&(e.disableVertexAttribArray(B),L[B]=0)}function S(A,L,B,P,D,z,U){U===!0?e.vertexAttribIPointer(A,L,B,D,z):e.vertexAttribPointer(A,L,B,P,D,z)}function v(A,L,B,P){y();let D=P.attributes,z=B.getAttributes(),U=L.defaultAttributeValues;for(let Z in z){let F=z[Z];if(F.location>=0){let V=D[Z];if(V===void 0&&(Z==="instanceMatrix"&&A.instanceMatrix&&(V=A.instanceMatrix),Z==="instanceColor"&&A.instanceColor&&(V=A.instanceColor)),V!==void 0){let q=V.normalized,st=V.itemSize,lt=t.get(V);if(lt===void 0)continue;let $=lt.buffer,at=lt.type,ft=lt.bytesPerElement,ot=at===e.INT||at===e.UNSIGNED_INT||V.gpuType===qd;if(V.isInterleavedBufferAttribute){let rt=V.data,K=rt.isInterleavedBuffer===!0?rt.stride:rt.itemSize,gt=V.offset;if(rt.isInstancedInterleavedBuffer||rt.isInstancedBufferAttribute){for(let ct=0;ct<F.locationSize;ct++)m(F.location+ct,rt.meshPerAttribute);A.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=rt.meshPerAttribute*rt.count)}else for(let ct=0;ct<F.locationSize;ct++)g(F.location+ct);e.bindBuffer(e.ARRAY_BUFFER,$);for(let ct=0;ct<F.locationSize;ct++)S(F.location+ct,st/F.locationSize,at,q,K*ft,(gt+st/F.locationSize*ct)*ft,ot)}else{if(V.isInstancedBufferAttribute){for(let rt=0;rt<F.locationSize;rt++)m(F.location+rt,V.meshPerAttribute);A.isInstancedMesh!==!0&&P._maxInstanceCount===void 0&&(P._maxInstanceCount=V.meshPerAttribute*V.count)}else for(let rt=0;rt<F.locationSize;rt++)g(F.location+rt);e.bindBuffer(e.ARRAY_BUFFER,$);for(let rt=0;rt<F.locationSize;rt++)S(F.location+rt,st/F.locationSize,at,q,st*ft,st/F.locationSize*rt*ft,ot)}}else if(U!==void 0){let q=U[Z];if(q!==void 0)switch(q.length){case 2:e.vertexAttrib2fv(F.location,q);break;case 3:e.vertexAttrib3fv(F.location,q);break;case 4:e.vertexAttrib4fv(F.location,q);break;default:e.vertexAttrib1fv(F.location,q)}}}}x()}function M(){R();for(let A in i){let L=i[A];for(let B in L){let P=L[B];for(let D in P){let z=P[D];for(let U in z)u(z[U].object),delete z[U];delete P[D]}}delete i[A]}}function b(A){if(i[A.id]===void 0)return;let L=i[A.id];for(let B in L){let P=L[B];for(let D in P){let z=P[D];for(let U in z)u(z[U].object),delete z[U];delete P[D]}}delete i[A.id]}function _(A){for(let L in i){let B=i[L];for(let P in B){let D=B[P];if(D[A.id]===void 0)continue;let z=D[A.id];for(let U in z)u(z[U].object),delete z[U];delete D[A.id]}}}function w(A){for(let L in i){let B=i[L],P=A.isInstancedMesh===!0?A.id:0,D=B[P];if(D!==void 0){for(let z in D){let U=D[z];for(let Z in U)u(U[Z].object),delete U[Z];delete D[z]}delete B[P],Object.keys(B).length===0&&delete i[L]}}}function R(){C(),o=!0,s!==r&&(s=r,c(s.object))}function C(){r.geometry=null,r.program=null,r.wireframe=!1}return{setup:a,reset:R,resetDefaultState:C,dispose:M,releaseStatesOfGeometry:b,releaseStatesOfObject:w,releaseStatesOfProgram:_,initAttributes:y,enableAttribute:g,disableUnusedAttributes:x}}function gB(e,t,n){let i;function r(l){i=l}function s(l,c){e.drawArrays(i,l,c),n.update(c,i,1)}function o(l,c,u){u!==0&&(e.drawArraysInstanced(i,l,c,u),n.update(c,i,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(i,l,0,c,0,u);let f=0;for(let d=0;d<u;d++)f+=c[d];n.update(f,i,1)}this.setMode=r,this.render=s,this.renderInstances=o,this.renderMultiDraw=a}function yB(e,t,n,i){let r;function s(){if(r!==void 0)return r;if(t.has("EXT_texture_filter_anisotropic")===!0){let _=t.get("EXT_texture_filter_anisotropic");r=e.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else r=0;return r}function o(_){return!(_!==tr&&i.convert(_)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let w=_===Qi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(_!==ti&&_!==ji&&!w&&i.convert(_)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_TYPE))}function l(_){if(_==="highp"){if(e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.HIGH_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.MEDIUM_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=n.precision!==void 0?n.precision:"highp",u=l(c);u!==c&&(Ft("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let h=n.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),f=n.logarithmicDepthBuffer===!0&&h===!1;n.reversedDepthBuffer===!0&&h===!1&&Ft("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),n.logarithmicDepthBuffer===!0&&h===!0&&Ft("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let d=e.getParameter(e.MAX_TEXTURE_IMAGE_UNITS),p=e.getParameter(e.MAX_VERTEX_TEXTURE_IMAGE_UNITS),y=e.getParameter(e.MAX_TEXTURE_SIZE),g=e.getParameter(e.MAX_CUBE_MAP_TEXTURE_SIZE),m=e.getParameter(e.MAX_VERTEX_ATTRIBS),x=e.getParameter(e.MAX_VERTEX_UNIFORM_VECTORS),S=e.getParameter(e.MAX_VARYING_VECTORS),v=e.getParameter(e.MAX_FRAGMENT_UNIFORM_VECTORS),M=e.getParameter(e.MAX_SAMPLES),b=e.getParameter(e.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:s,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:f,reversedDepthBuffer:h,maxTextures:d,maxVertexTextures:p,maxTextureSize:y,maxCubemapSize:g,maxAttributes:m,maxVertexUniforms:x,maxVaryings:S,maxFragmentUniforms:v,maxSamples:M,samples:b}}function xB(e){let t=this,n=null,i=0,r=!1,s=!1,o=new li,a=new Vt,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(h,f){let d=h.length!==0||f||i!==0||r;return r=f,i=h.length,d},this.beginShadows=function(){s=!0,u(null)},this.endShadows=function(){s=!1},this.setGlobalState=function(h,f){n=u(h,f,0)},this.setState=function(h,f,d){let p=h.clippingPlanes,y=h.clipIntersection,g=h.clipShadows,m=e.get(h);if(!r||p===null||p.length===0||s&&!g)s?u(null):c();else{let x=s?0:i,S=x*4,v=m.clippingState||null;l.value=v,v=u(p,f,S,d);for(let M=0;M!==S;++M)v[M]=n[M];m.clippingState=v,this.numIntersection=y?this.numPlanes:0,this.numPlanes+=x}};function c(){l.value!==n&&(l.value=n,l.needsUpdate=i>0),t.numPlanes=i,t.numIntersection=0}function u(h,f,d,p){let y=h!==null?h.length:0,g=null;if(y!==0){if(g=l.value,p!==!0||g===null){let m=d+y*4,x=f.matrixWorldInverse;a.getNormalMatrix(x),(g===null||g.length<m)&&(g=new Float32Array(m));for(let S=0,v=d;S!==y;++S,v+=4)o.copy(h[S]).applyMatrix4(x,a),o.normal.toArray(g,v),g[v+3]=o.constant}l.value=g,l.needsUpdate=!0}return t.numPlanes=y,t.numIntersection=0,g}}var Tu=class extends zn{constructor(t=1,n={}){super(t,t,n),this.isWebGLCubeRenderTarget=!0;let i={width:t,height:t,depth:1},r=[i,i,i,i,i,i];this.texture=new tu(r),this._setTextureOptions(n),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,n){this.texture.type=n.type,this.texture.colorSpace=n.colorSpace,this.texture.generateMipmaps=n.generateMipmaps,this.texture.minFilter=n.minFilter,this.texture.magFilter=n.magFilter;let i={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},r=new cs(5,5,5),s=new Li({name:"CubemapFromEquirect",uniforms:Jo(i.uniforms),vertexShader:i.vertexShader,fragmentShader:i.fragmentShader,side:Gn,blending:qo});s.uniforms.tEquirect.value=n;let o=new We(r,s),a=n.minFilter;return n.minFilter===fs&&(n.minFilter=kn),new Cl(1,10,this).update(t,o),n.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,n=!0,i=!0,r=!0){let s=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(n,i,r);t.setRenderTarget(s)}},$2=256,_B=3,vB=20,p3=256,m3=16,bB=3,MB=new k,SB=new kt,Dp=class e{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Cl(1,10,null),this._boxMesh=new We(new cs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,n=0,i=.1,r=100,s={}){let{size:o=256,position:a=MB}=s,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);n>0&&(u.texture.mipmapsAutoUpdate=!1);let h=l.autoClear,f=l.autoClearColor,d=l.autoClearDepth,p=l.autoClearStencil,y=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,y===null&&(t.background=l.getClearColor(SB));let g=new Cl(i,r,u);return g.position.copy(a),g.update(l,t),l.autoClear=h,l.autoClearColor=f,l.autoClearDepth=d,l.autoClearStencil=p,t.background=y,n>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,n)),this._applyPMREM(c),c}fromEquirectangular(t,n=null){return this._fromTexture(t,n)}fromCubemap(t,n=null){return this._fromTexture(t,n)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Y2(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=q2(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,n){return n>0?1-Math.sqrt(1-t/n):0}_setSize(t){this._cubeSize=Math.max($2,N_(t))}_fromTexture(t,n){t.mapping===Zo||t.mapping===Ll?this._setSize(t.image.length===0?$2:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let i=n||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(i),i}_allocateTarget(){let t=this._cubeSize,n=X2(t,!1,!1),i=Math.log2(t)-_B;for(let r=0;r<=i;r++)n.texture.mipmaps.push({width:t>>r,height:t>>r});return n.texture.name="PMREM",n.texture.isPMREMTexture=!0,n}_getSourceTarget(t=!1){let n=this._cubeSize,i=this._sourceTarget;return(i===null||i.width!==n||t&&i.depthBuffer===!1)&&(i!==null&&i.dispose(),this._sourceTarget=X2(n,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,n,i){let r=this._boxMesh,s=this._cubeCamera;r.material=i,s.renderTarget=t,s.activeMipmapLevel=n;let o=t.width>>n;t.viewport.set(0,0,o,o),s.update(this._renderer,r),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let n;t.mapping===Zo||t.mapping===Ll?(this._cubemapMaterial===null&&(this._cubemapMaterial=Y2()),n=this._cubemapMaterial,n.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=q2()),n=this._equirectMaterial),n.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,n)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=wB(),this._integrationMaterial=TB());let n=this._cubeSize,i=t.texture.mipmaps.length-1,r=this._ggxMaterial.uniforms;r.envMap.value=this._sourceTarget.texture;let s=this._integrationMaterial.uniforms;s.envMap.value=this._sourceTarget.texture,s.sourceLod.value=Math.log2(n/m3);for(let o=0;o<=i;o++){let a=e.lodToRoughness(o,i);if(o>i-bB)s.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(n)+.5*Math.log2(6/(p3*Math.pow(a,4)))+.5:0;r.roughness.value=a,r.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,n){this._blurMaterial===null&&(this._blurMaterial=EB());let i=this._blurMaterial,r=i.uniforms,s=this._sourceTarget;r.sigma.value=Math.min(n,Math.PI)/Math.SQRT2,r.envMap.value=s.texture,this._renderCube(t,0,i),r.envMap.value=t.texture,this._renderCube(s,0,i)}};function X2(e,t,n){return new Tu(e,{minFilter:fs,generateMipmaps:t,type:Qi,colorSpace:Xc,depthBuffer:n})}function Eu(e,t,n){return new Li({name:e,uniforms:t,vertexShader:jt.cube_vert,fragmentShader:n,side:Gn,blending:qo,depthTest:!1,depthWrite:!1})}function wB(){return Eu("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${p3}u

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
	`)}function TB(){return Eu("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:m3}},`

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
	`)}function EB(){return Eu("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${vB}
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
	`)}function q2(){return Eu("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function Y2(){return Eu("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function AB(e){let t=new WeakMap,n=new WeakMap,i=null;function r(f,d=!1){return f==null?null:d?o(f):s(f)}function s(f){if(f&&f.isTexture){let d=f.mapping;if(d===Wd||d===$d)if(t.has(f)){let p=t.get(f).texture;return a(p,f.mapping)}else{let p=f.image;if(p&&p.height>0){let y=new Tu(p.height);return y.fromEquirectangularTexture(e,f),t.set(f,y),f.addEventListener("dispose",c),a(y.texture,f.mapping)}else return null}}return f}function o(f){if(f&&f.isTexture&&f.isPMREMTexture!==!0){let d=f.mapping,p=d===Wd||d===$d,y=d===Zo||d===Ll;if(p||y){let g=n.get(f),m=g!==void 0?g.texture.pmremVersion:0;if(f.isRenderTargetTexture&&f.pmremVersion!==m)return i===null&&(i=new Dp(e)),g=p?i.fromEquirectangular(f,g):i.fromCubemap(f,g),g.texture.pmremVersion=f.pmremVersion,n.set(f,g),g.texture;if(g!==void 0)return g.texture;{let x=f.image;return p&&x&&x.height>0||y&&x&&l(x)?(i===null&&(i=new Dp(e)),g=p?i.fromEquirectangular(f):i.fromCubemap(f),g.texture.pmremVersion=f.pmremVersion,n.set(f,g),f.addEventListener("dispose",u),g.texture):null}}}return f}function a(f,d){return d===Wd?f.mapping=Zo:d===$d&&(f.mapping=Ll),f}function l(f){let d=0,p=6;for(let y=0;y<p;y++)f[y]!==void 0&&d++;return d===p}function c(f){let d=f.target;d.removeEventListener("dispose",c);let p=t.get(d);p!==void 0&&(t.delete(d),p.dispose())}function u(f){let d=f.target;d.removeEventListener("dispose",u);let p=n.get(d);p!==void 0&&(n.delete(d),p.dispose())}function h(){t=new WeakMap,n=new WeakMap,i!==null&&(i.dispose(),i=null)}return{get:r,dispose:h}}function CB(e){let t={};function n(i){if(t[i]!==void 0)return t[i];let r=e.getExtension(i);return t[i]=r,r}return{has:function(i){return n(i)!==null},init:function(){n("EXT_color_buffer_float"),n("WEBGL_clip_cull_distance"),n("OES_texture_float_linear"),n("EXT_color_buffer_half_float"),n("WEBGL_multisampled_render_to_texture"),n("WEBGL_render_shared_exponent")},get:function(i){let r=n(i);return r===null&&Hc("WebGLRenderer: "+i+" extension not supported."),r}}}function RB(e,t,n,i){let r={},s=new WeakMap,o=new FinalizationRegistry(p=>delete r[p]);function a(p){l(p.target)}function l(p){p.index!==null&&t.remove(p.index);for(let g in p.attributes)t.remove(p.attributes[g]);p.removeEventListener("dispose",a),delete r[p.id],o.unregister(p);let y=s.get(p);y&&(t.remove(y),s.delete(p)),i.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,n.memory.geometries--}function c(p,y){return r[y.id]!==void 0||(y.addEventListener("dispose",a),r[y.id]=new WeakRef(y),o.register(y,y.id,y),n.memory.geometries++),y}function u(p){let y=p.attributes;for(let g in y)t.update(y[g],e.ARRAY_BUFFER)}function h(p){let y=p.index,g=p.attributes.position,m=0;if(g===void 0)return;let x=y!==null?y.array.length:g.array.length/3-1,S=g.count>=65535?Qc:jc,v=new S(Math.ceil(x/3)*6,1),M=v.array;if(y!==null){let _=y.array;m=y.version;for(let w=0,R=0;w<x;w+=3){let C=_[w+0],A=_[w+1],L=_[w+2];M[R++]=C,M[R++]=A,M[R++]=A,M[R++]=L,M[R++]=L,M[R++]=C}}else{m=g.version;for(let _=0,w=0;_<x;_+=3){let R=_+0,C=_+1,A=_+2;M[w++]=R,M[w++]=C,M[w++]=C,M[w++]=A,M[w++]=A,M[w++]=R}}v.version=m;let b=s.get(p);b&&t.remove(b),s.set(p,v)}function f(p){let y=s.get(p);if(y){let g=p.index;g!==null&&y.version<g.version&&h(p)}else h(p);return s.get(p)}function d(){for(let p in r){let y=r[p].deref();y!==void 0&&l(y)}}return{get:c,update:u,getWireframeAttribute:f,dispose:d}}function PB(e,t,n){let i;function r(h){i=h}let s,o;function a(h){s=h.type,o=h.bytesPerElement}function l(h,f){e.drawElements(i,f,s,h*o),n.update(f,i,1)}function c(h,f,d){d!==0&&(e.drawElementsInstanced(i,f,s,h*o,d),n.update(f,i,d))}function u(h,f,d){if(d===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(i,f,0,s,h,0,d);let y=0;for(let g=0;g<d;g++)y+=f[g];n.update(y,i,1)}this.setMode=r,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function IB(e){let t={geometries:0,textures:0},n={frame:0,calls:0,triangles:0,points:0,lines:0};function i(s,o,a){switch(n.calls++,o){case e.TRIANGLES:n.triangles+=a*(s/3);break;case e.LINES:n.lines+=a*(s/2);break;case e.LINE_STRIP:n.lines+=a*(s-1);break;case e.LINE_LOOP:n.lines+=a*s;break;case e.POINTS:n.points+=a*s;break;default:Gt("WebGLInfo: Unknown draw mode:",o);break}}function r(){n.calls=0,n.triangles=0,n.points=0,n.lines=0}return{memory:t,render:n,programs:null,autoReset:!0,reset:r,update:i}}function LB(e,t,n){let i=new WeakMap,r=new de;function s(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,f=i.get(a);if(f===void 0||f.count!==h){let R=function(){_.dispose(),i.delete(a),a.removeEventListener("dispose",R)};f!==void 0&&f.texture.dispose();let d=a.morphAttributes.position!==void 0,p=a.morphAttributes.normal!==void 0,y=a.morphAttributes.color!==void 0,g=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],x=a.morphAttributes.color||[],S=0;d===!0&&(S=1),p===!0&&(S=2),y===!0&&(S=3);let v=a.attributes.position.count*S,M=1;v>t.maxTextureSize&&(M=Math.ceil(v/t.maxTextureSize),v=t.maxTextureSize);let b=new Float32Array(v*M*4*h),_=new Kc(b,v,M,h);_.type=ji,_.needsUpdate=!0;let w=S*4;for(let C=0;C<h;C++){let A=g[C],L=m[C],B=x[C],P=v*M*4*C;for(let D=0;D<A.count;D++){let z=D*w;d===!0&&(r.fromBufferAttribute(A,D),b[P+z+0]=r.x,b[P+z+1]=r.y,b[P+z+2]=r.z,b[P+z+3]=0),p===!0&&(r.fromBufferAttribute(L,D),b[P+z+4]=r.x,b[P+z+5]=r.y,b[P+z+6]=r.z,b[P+z+7]=0),y===!0&&(r.fromBufferAttribute(B,D),b[P+z+8]=r.x,b[P+z+9]=r.y,b[P+z+10]=r.z,b[P+z+11]=B.itemSize===4?r.w:1)}}f={count:h,texture:_,size:new Bt(v,M)},i.set(a,f),a.addEventListener("dispose",R)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(e,"morphTexture",o.morphTexture,n);else{let d=0;for(let y=0;y<c.length;y++)d+=c[y];let p=a.morphTargetsRelative?1:1-d;l.getUniforms().setValue(e,"morphTargetBaseInfluence",p),l.getUniforms().setValue(e,"morphTargetInfluences",c)}l.getUniforms().setValue(e,"morphTargetsTexture",f.texture,n),l.getUniforms().setValue(e,"morphTargetsTextureSize",f.size)}return{update:s}}function DB(e,t,n,i,r){let s=new WeakMap;function o(c){let u=r.render.frame,h=c.geometry,f=t.get(c,h);if(s.get(f)!==u&&(t.update(f),s.set(f,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),s.get(c)!==u&&(n.update(c.instanceMatrix,e.ARRAY_BUFFER),c.instanceColor!==null&&n.update(c.instanceColor,e.ARRAY_BUFFER),s.set(c,u))),c.isSkinnedMesh){let d=c.skeleton;s.get(d)!==u&&(d.update(),s.set(d,u))}return f}function a(){s=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),i.releaseStatesOfObject(u),n.remove(u.instanceMatrix),u.instanceColor!==null&&n.remove(u.instanceColor)}return{update:o,dispose:a}}var NB={[d_]:"LINEAR_TONE_MAPPING",[p_]:"REINHARD_TONE_MAPPING",[m_]:"CINEON_TONE_MAPPING",[g_]:"ACES_FILMIC_TONE_MAPPING",[x_]:"AGX_TONE_MAPPING",[__]:"NEUTRAL_TONE_MAPPING",[y_]:"CUSTOM_TONE_MAPPING"};function UB(e,t,n,i,r,s){let o=new zn(t,n,{type:e,depthBuffer:r,stencilBuffer:s,samples:i?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new Ke;u.setAttribute("position",new Ze([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Ze([0,2,0,0,2,0],2));let h=new Cd({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),f=new We(u,h),d=new us(-1,1,1,-1,0,1),p=null,y=null,g=!1,m,x=null,S=[],v=!1;this.setSize=function(M,b){o.setSize(M,b),a!==null&&a.setSize(M,b),l!==null&&l.setSize(M,b);for(let _=0;_<S.length;_++){let w=S[_];w.setSize&&w.setSize(M,b)}},this.setEffects=function(M){S=M,v=S.length>0&&S[0].isRenderPass===!0;let b=o.width,_=o.height;S.length>0&&a===null&&(a=new zn(b,_,{type:Qi,depthBuffer:!1,stencilBuffer:!1}),l=new zn(b,_,{type:Qi,depthBuffer:!1,stencilBuffer:!1}));let w=r===!0&&S.some(R=>R.needsDepthTexture===!0);w!==(o.depthTexture!==null)&&(w===!0&&c===null&&(c=new ls(b,_),s===!0&&(c.format=hs,c.type=Ko)),o.dispose(),o.depthTexture=w?c:null,o.resolveDepthBuffer=w,o.storeMultisampledDepthBuffer=w);for(let R=0;R<S.length;R++){let C=S[R];C.setSize&&C.setSize(b,_),w&&C.needsDepthTexture===!0&&C.setDepthTexture&&C.setDepthTexture(c)}},this.begin=function(M,b){if(g||M.toneMapping===wr&&S.length===0)return!1;if(x=b,b!==null){let _=b.width,w=b.height;(o.width!==_||o.height!==w)&&this.setSize(_,w)}return v===!1&&M.setRenderTarget(o),m=M.toneMapping,M.toneMapping=wr,!0},this.hasRenderPass=function(){return v},this.end=function(M,b){M.toneMapping=m,g=!0;let _=o,w=a;for(let R=0;R<S.length;R++){let C=S[R];C.enabled!==!1&&(C.render(M,w,_,b),C.needsSwap!==!1&&(_=w,w=w===a?l:a))}if(p!==M.outputColorSpace||y!==M.toneMapping){p=M.outputColorSpace,y=M.toneMapping,h.defines={},ie.getTransfer(p)===he&&(h.defines.SRGB_TRANSFER="");let R=NB[y];R&&(h.defines[R]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=_.texture,M.setRenderTarget(x),M.render(f,d),x=null,g=!1},this.isCompositing=function(){return g},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),h.dispose()}}var g3=new Qn,y3=new ls(1,1),x3=new eu(1),_3=new Kc,v3=new bd,b3=new tu,Z2=[],K2=[],J2=new Float32Array(16),j2=new Float32Array(9),Q2=new Float32Array(4);function Ul(e,t,n){let i=e[0];if(i<=0||i>0)return e;let r=t*n,s=Z2[r];if(s===void 0&&(s=new Float32Array(r),Z2[r]=s),t!==0){i.toArray(s,0);for(let o=1,a=0;o!==t;++o)a+=n,e[o].toArray(s,a)}return s}function Je(e,t){if(e.length!==t.length)return!1;for(let n=0,i=e.length;n<i;n++)if(e[n]!==t[n])return!1;return!0}function je(e,t){for(let n=0,i=t.length;n<i;n++)e[n]=t[n]}function Up(e,t){let n=K2[t];n===void 0&&(n=new Int32Array(t),K2[t]=n);for(let i=0;i!==t;++i)n[i]=e.allocateTextureUnit();return n}function FB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1f(this.addr,t),n[0]=t)}function OB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2f(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Je(n,t))return;e.uniform2fv(this.addr,t),je(n,t)}}function BB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3f(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else if(t.r!==void 0)(n[0]!==t.r||n[1]!==t.g||n[2]!==t.b)&&(e.uniform3f(this.addr,t.r,t.g,t.b),n[0]=t.r,n[1]=t.g,n[2]=t.b);else{if(Je(n,t))return;e.uniform3fv(this.addr,t),je(n,t)}}function kB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4f(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Je(n,t))return;e.uniform4fv(this.addr,t),je(n,t)}}function zB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Je(n,t))return;e.uniformMatrix2fv(this.addr,!1,t),je(n,t)}else{if(Je(n,i))return;Q2.set(i),e.uniformMatrix2fv(this.addr,!1,Q2),je(n,i)}}function GB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Je(n,t))return;e.uniformMatrix3fv(this.addr,!1,t),je(n,t)}else{if(Je(n,i))return;j2.set(i),e.uniformMatrix3fv(this.addr,!1,j2),je(n,i)}}function VB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(Je(n,t))return;e.uniformMatrix4fv(this.addr,!1,t),je(n,t)}else{if(Je(n,i))return;J2.set(i),e.uniformMatrix4fv(this.addr,!1,J2),je(n,i)}}function HB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1i(this.addr,t),n[0]=t)}function WB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2i(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Je(n,t))return;e.uniform2iv(this.addr,t),je(n,t)}}function $B(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3i(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(Je(n,t))return;e.uniform3iv(this.addr,t),je(n,t)}}function XB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4i(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Je(n,t))return;e.uniform4iv(this.addr,t),je(n,t)}}function qB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1ui(this.addr,t),n[0]=t)}function YB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2ui(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(Je(n,t))return;e.uniform2uiv(this.addr,t),je(n,t)}}function ZB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3ui(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(Je(n,t))return;e.uniform3uiv(this.addr,t),je(n,t)}}function KB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4ui(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(Je(n,t))return;e.uniform4uiv(this.addr,t),je(n,t)}}function Fp(e){return e.version===0&&(e.compareFunction=P_,e.needsUpdate=!0),e}function JB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_2D_SHADOW?s=Fp(y3):s=g3,n.setTexture2D(t||s,r)}function jB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture3D(t||v3,r)}function QB(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_CUBE_SHADOW?s=Fp(x3):s=b3,n.setTextureCube(t||s,r)}function tk(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture2DArray(t||_3,r)}function ek(e){switch(e){case 5126:return FB;case 35664:return OB;case 35665:return BB;case 35666:return kB;case 35674:return zB;case 35675:return GB;case 35676:return VB;case 5124:case 35670:return HB;case 35667:case 35671:return WB;case 35668:case 35672:return $B;case 35669:case 35673:return XB;case 5125:return qB;case 36294:return YB;case 36295:return ZB;case 36296:return KB;case 35678:case 36198:case 36298:case 36306:case 35682:return JB;case 35679:case 36299:case 36307:return jB;case 35680:case 36300:case 36308:case 36293:return QB;case 36289:case 36303:case 36311:case 36292:return tk}}function nk(e,t){e.uniform1fv(this.addr,t)}function ik(e,t){let n=Ul(t,this.size,2);e.uniform2fv(this.addr,n)}function rk(e,t){let n=Ul(t,this.size,3);e.uniform3fv(this.addr,n)}function sk(e,t){let n=Ul(t,this.size,4);e.uniform4fv(this.addr,n)}function ok(e,t){let n=Ul(t,this.size,4);e.uniformMatrix2fv(this.addr,!1,n)}function ak(e,t){let n=Ul(t,this.size,9);e.uniformMatrix3fv(this.addr,!1,n)}function lk(e,t){let n=Ul(t,this.size,16);e.uniformMatrix4fv(this.addr,!1,n)}function ck(e,t){e.uniform1iv(this.addr,t)}function uk(e,t){e.uniform2iv(this.addr,t)}function fk(e,t){e.uniform3iv(this.addr,t)}function hk(e,t){e.uniform4iv(this.addr,t)}function dk(e,t){e.uniform1uiv(this.addr,t)}function pk(e,t){e.uniform2uiv(this.addr,t)}function mk(e,t){e.uniform3uiv(this.addr,t)}function gk(e,t){e.uniform4uiv(this.addr,t)}function yk(e,t,n){let i=this.cache,r=t.length,s=Up(n,r);Je(i,s)||(e.uniform1iv(this.addr,s),je(i,s));let o;this.type===e.SAMPLER_2D_SHADOW?o=Fp(y3):o=g3;for(let a=0;a!==r;++a)n.setTexture2D(t[a]||o,s[a])}function xk(e,t,n){let i=this.cache,r=t.length,s=Up(n,r);Je(i,s)||(e.uniform1iv(this.addr,s),je(i,s));for(let o=0;o!==r;++o)n.setTexture3D(t[o]||v3,s[o])}function _k(e,t,n){let i=this.cache,r=t.length,s=Up(n,r);Je(i,s)||(e.uniform1iv(this.addr,s),je(i,s));let o;this.type===e.SAMPLER_CUBE_SHADOW?o=Fp(x3):o=b3;for(let a=0;a!==r;++a)n.setTextureCube(t[a]||o,s[a])}function vk(e,t,n){let i=this.cache,r=t.length,s=Up(n,r);Je(i,s)||(e.uniform1iv(this.addr,s),je(i,s));for(let o=0;o!==r;++o)n.setTexture2DArray(t[o]||_3,s[o])}function bk(e){switch(e){case 5126:return nk;case 35664:return ik;case 35665:return rk;case 35666:return sk;case 35674:return ok;case 35675:return ak;case 35676:return lk;case 5124:case 35670:return ck;case 35667:case 35671:return uk;case 35668:case 35672:return fk;case 35669:case 35673:return hk;case 5125:return dk;case 36294:return pk;case 36295:return mk;case 36296:return gk;case 35678:case 36198:case 36298:case 36306:case 35682:return yk;case 35679:case 36299:case 36307:return xk;case 35680:case 36300:case 36308:case 36293:return _k;case 36289:case 36303:case 36311:case 36292:return vk}}var H_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.setValue=ek(n.type)}},W_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.size=n.size,this.setValue=bk(n.type)}},$_=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,n,i){let r=this.seq;for(let s=0,o=r.length;s!==o;++s){let a=r[s];a.setValue(t,n[a.id],i)}}},G_=/(\w+)(\])?(\[|\.)?/g;function t3(e,t){e.seq.push(t),e.map[t.id]=t}function Mk(e,t,n){let i=e.name,r=i.length;for(G_.lastIndex=0;;){let s=G_.exec(i),o=G_.lastIndex,a=s[1],l=s[2]==="]",c=s[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===r){t3(n,c===void 0?new H_(a,e,t):new W_(a,e,t));break}else{let h=n.map[a];h===void 0&&(h=new $_(a),t3(n,h)),n=h}}}var Nl=class{constructor(t,n){this.seq=[],this.map={};let i=t.getProgramParameter(n,t.ACTIVE_UNIFORMS);for(let o=0;o<i;++o){let a=t.getActiveUniform(n,o),l=t.getUniformLocation(n,a.name);Mk(a,l,this)}let r=[],s=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?r.push(o):s.push(o);r.length>0&&(this.seq=r.concat(s))}setValue(t,n,i,r){let s=this.map[n];s!==void 0&&s.setValue(t,i,r)}setOptional(t,n,i){let r=n[i];r!==void 0&&this.setValue(t,i,r)}static upload(t,n,i,r){for(let s=0,o=n.length;s!==o;++s){let a=n[s],l=i[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,r)}}static seqWithValue(t,n){let i=[];for(let r=0,s=t.length;r!==s;++r){let o=t[r];o.id in n&&i.push(o)}return i}};function e3(e,t,n){let i=e.createShader(t);return e.shaderSource(i,n),e.compileShader(i),i}var Sk=37297,wk=0;function Tk(e,t){let n=e.split(`
`),i=[],r=Math.max(t-6,0),s=Math.min(t+6,n.length);for(let o=r;o<s;o++){let a=o+1;i.push(`${a===t?">":" "} ${a}: ${n[o]}`)}return i.join(`
`)}var n3=new Vt;function Ek(e){ie._getMatrix(n3,ie.workingColorSpace,e);let t=`mat3( ${n3.elements.map(n=>n.toFixed(4))} )`;switch(ie.getTransfer(e)){case qc:return[t,"LinearTransferOETF"];case he:return[t,"sRGBTransferOETF"];default:return Ft("WebGLProgram: Unsupported color space: ",e),[t,"LinearTransferOETF"]}}function i3(e,t,n){let i=e.getShaderParameter(t,e.COMPILE_STATUS),s=(e.getShaderInfoLog(t)||"").trim();if(i&&s==="")return"";let o=/ERROR: 0:(\d+)/.exec(s);if(o){let a=parseInt(o[1]);return n.toUpperCase()+`

`+s+`

`+Tk(e.getShaderSource(t),a)}else return s}function Ak(e,t){let n=Ek(t);return[`vec4 ${e}( vec4 value ) {`,`	return ${n[1]}( vec4( ${n[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var Ck={[d_]:"Linear",[p_]:"Reinhard",[m_]:"Cineon",[g_]:"ACESFilmic",[x_]:"AgX",[__]:"Neutral",[y_]:"Custom"};function Rk(e,t){let n=Ck[t];return n===void 0?(Ft("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+e+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+e+"( vec3 color ) { return "+n+"ToneMapping( color ); }"}var Lp=new k;function Pk(){ie.getLuminanceCoefficients(Lp);let e=Lp.x.toFixed(4),t=Lp.y.toFixed(4),n=Lp.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${e}, ${t}, ${n} );`,"	return dot( weights, rgb );","}"].join(`
`)}function Ik(e){return[e.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",e.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(wu).join(`
`)}function Lk(e){let t=[];for(let n in e){let i=e[n];i!==!1&&t.push("#define "+n+" "+i)}return t.join(`
`)}function Dk(e,t){let n={},i=e.getProgramParameter(t,e.ACTIVE_ATTRIBUTES);for(let r=0;r<i;r++){let s=e.getActiveAttrib(t,r),o=s.name,a=1;s.type===e.FLOAT_MAT2&&(a=2),s.type===e.FLOAT_MAT3&&(a=3),s.type===e.FLOAT_MAT4&&(a=4),n[o]={type:s.type,location:e.getAttribLocation(t,o),locationSize:a}}return n}function wu(e){return e!==""}function r3(e,t){let n=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return e.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,n).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function s3(e,t){return e.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var Nk=/^[ \t]*#include +<([\w\d./]+)>/gm;function X_(e){return e.replace(Nk,Uk)}function Uk(e,t){let n=jt[t];if(n===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return X_(n)}var Fk=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function o3(e){return e.replace(Fk,Ok)}function Ok(e,t,n,i){let r="";for(let s=parseInt(t);s<parseInt(n);s++)r+=i.replace(/\[\s*i\s*\]/g,"[ "+s+" ]").replace(/UNROLLED_LOOP_INDEX/g,s);return r}function a3(e){let t=`precision ${e.precision} float;
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
#define LOW_PRECISION`),t}var Bk={[du]:"SHADOWMAP_TYPE_PCF",[Pl]:"SHADOWMAP_TYPE_VSM"};function kk(e){return Bk[e.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var zk={[Ll]:"ENVMAP_MODE_REFRACTION"};function Gk(e){return e.envMap===!1?"ENVMAP_MODE_REFLECTION":zk[e.envMapMode]||"ENVMAP_MODE_REFLECTION"}var Vk={[Hd]:"ENVMAP_BLENDING_MULTIPLY",[A2]:"ENVMAP_BLENDING_MIX",[C2]:"ENVMAP_BLENDING_ADD"};function Hk(e){return e.envMap===!1?"ENVMAP_BLENDING_NONE":Vk[e.combine]||"ENVMAP_BLENDING_NONE"}function Wk(e,t,n,i){let r=e.getContext(),s=n.defines,o=n.vertexShader,a=n.fragmentShader,l=kk(n),c=n.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=Gk(n),h=Hk(n),f=Ik(n),d=Lk(s),p=r.createProgram(),y,g,m=n.glslVersion?"#version "+n.glslVersion+`
`:"";n.isRawShaderMaterial?(y=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(wu).join(`
`),y.length>0&&(y+=`
`),g=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(wu).join(`
`),g.length>0&&(g+=`
`)):(y=[a3(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",n.batching?"#define USE_BATCHING":"",n.batchingColor?"#define USE_BATCHING_COLOR":"",n.instancing?"#define USE_INSTANCING":"",n.instancingColor?"#define USE_INSTANCING_COLOR":"",n.instancingMorph?"#define USE_INSTANCING_MORPH":"",n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.map?"#define USE_MAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+u:"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.displacementMap?"#define USE_DISPLACEMENTMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.mapUv?"#define MAP_UV "+n.mapUv:"",n.alphaMapUv?"#define ALPHAMAP_UV "+n.alphaMapUv:"",n.lightMapUv?"#define LIGHTMAP_UV "+n.lightMapUv:"",n.aoMapUv?"#define AOMAP_UV "+n.aoMapUv:"",n.emissiveMapUv?"#define EMISSIVEMAP_UV "+n.emissiveMapUv:"",n.bumpMapUv?"#define BUMPMAP_UV "+n.bumpMapUv:"",n.normalMapUv?"#define NORMALMAP_UV "+n.normalMapUv:"",n.displacementMapUv?"#define DISPLACEMENTMAP_UV "+n.displacementMapUv:"",n.metalnessMapUv?"#define METALNESSMAP_UV "+n.metalnessMapUv:"",n.roughnessMapUv?"#define ROUGHNESSMAP_UV "+n.roughnessMapUv:"",n.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+n.anisotropyMapUv:"",n.clearcoatMapUv?"#define CLEARCOATMAP_UV "+n.clearcoatMapUv:"",n.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+n.clearcoatNormalMapUv:"",n.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+n.clearcoatRoughnessMapUv:"",n.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+n.diffuseRoughnessMapUv:"",n.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+n.iridescenceMapUv:"",n.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+n.iridescenceThicknessMapUv:"",n.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+n.sheenColorMapUv:"",n.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+n.sheenRoughnessMapUv:"",n.specularMapUv?"#define SPECULARMAP_UV "+n.specularMapUv:"",n.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+n.specularColorMapUv:"",n.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+n.specularIntensityMapUv:"",n.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+n.transmissionMapUv:"",n.thicknessMapUv?"#define THICKNESSMAP_UV "+n.thicknessMapUv:"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexNormals?"#define HAS_NORMAL":"",n.vertexColors?"#define USE_COLOR":"",n.vertexAlphas?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.flatShading?"#define FLAT_SHADED":"",n.skinning?"#define USE_SKINNING":"",n.morphTargets?"#define USE_MORPHTARGETS":"",n.morphNormals&&n.flatShading===!1?"#define USE_MORPHNORMALS":"",n.morphColors?"#define USE_MORPHCOLORS":"",n.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+n.morphTextureStride:"",n.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+n.morphTargetsCount:"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.sizeAttenuation?"#define USE_SIZEATTENUATION":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(wu).join(`
`),g=[a3(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",n.map?"#define USE_MAP":"",n.matcap?"#define USE_MATCAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+c:"",n.envMap?"#define "+u:"",n.envMap?"#define "+h:"",n.envMapPMREM?"#define ENVMAP_MAX_LOD "+n.envMapMaxLod+".0":"",n.envMapPMREM?"#define ENVMAP_SIZE "+n.envMapSize+".0":"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoat?"#define USE_CLEARCOAT":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.dispersion?"#define USE_DISPERSION":"",n.retroreflection?"#define USE_RETROREFLECTION":"",n.iridescence?"#define USE_IRIDESCENCE":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaTest?"#define USE_ALPHATEST":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.sheen?"#define USE_SHEEN":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexColors||n.instancingColor?"#define USE_COLOR":"",n.vertexAlphas||n.batchingColor?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.gradientMap?"#define USE_GRADIENTMAP":"",n.flatShading?"#define FLAT_SHADED":"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",n.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",n.toneMapping!==wr?"#define TONE_MAPPING":"",n.toneMapping!==wr?jt.tonemapping_pars_fragment:"",n.toneMapping!==wr?Rk("toneMapping",n.toneMapping):"",n.dithering?"#define DITHERING":"",n.opaque?"#define OPAQUE":"",jt.colorspace_pars_fragment,Ak("linearToOutputTexel",n.outputColorSpace),Pk(),n.useDepthPacking?"#define DEPTH_PACKING "+n.depthPacking:"",`
`].filter(wu).join(`
`)),o=X_(o),o=r3(o,n),o=s3(o,n),a=X_(a),a=r3(a,n),a=s3(a,n),o=o3(o),a=o3(a),n.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,y=[f,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+y,g=["#define varying in",n.glslVersion===L_?"":"layout(location = 0) out highp vec4 pc_fragColor;",n.glslVersion===L_?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+g);let x=m+y+o,S=m+g+a,v=e3(r,r.VERTEX_SHADER,x),M=e3(r,r.FRAGMENT_SHADER,S);r.attachShader(p,v),r.attachShader(p,M),n.index0AttributeName!==void 0?r.bindAttribLocation(p,0,n.index0AttributeName):n.hasPositionAttribute===!0&&r.bindAttribLocation(p,0,"position"),r.linkProgram(p);function b(C){if(e.debug.checkShaderErrors){let A=r.getProgramInfoLog(p)||"",L=r.getShaderInfoLog(v)||"",B=r.getShaderInfoLog(M)||"",P=A.trim(),D=L.trim(),z=B.trim(),U=!0,Z=!0;if(r.getProgramParameter(p,r.LINK_STATUS)===!1)if(U=!1,typeof e.debug.onShaderError=="function")e.debug.onShaderError(r,p,v,M);else{let F=i3(r,v,"vertex"),V=i3(r,M,"fragment");Gt("WebGLProgram: Shader Error "+r.getError()+" - VALIDATE_STATUS "+r.getProgramParameter(p,r.VALIDATE_STATUS)+`

Material Name: `+C.name+`
Material Type: `+C.type+`

Program Info Log: `+P+`
`+F+`
`+V)}else P!==""?Ft("WebGLProgram: Program Info Log:",P):(D===""||z==="")&&(Z=!1);Z&&(C.diagnostics={runnable:U,programLog:P,vertexShader:{log:D,prefix:y},fragmentShader:{log:z,prefix:g}})}r.deleteShader(v),r.deleteShader(M),_=new Nl(r,p),w=Dk(r,p)}let _;this.getUniforms=function(){return _===void 0&&b(this),_};let w;this.getAttributes=function(){return w===void 0&&b(this),w};let R=n.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return R===!1&&(R=r.getProgramParameter(p,Sk)),R},this.destroy=function(){i.releaseStatesOfProgram(this),r.deleteProgram(p),this.program=void 0},this.type=n.shaderType,this.name=n.shaderName,this.id=wk++,this.cacheKey=t,this.usedTimes=1,this.program=p,this.vertexShader=v,this.fragmentShader=M,this}var $k=0,q_=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,n,i){let r=this._getShaderCacheForMaterial(t);return r.has(n)===!1&&(r.add(n),n.usedTimes++),r.has(i)===!1&&(r.add(i),i.usedTimes++),this}remove(t){let n=this.materialCache.get(t);for(let i of n)i.usedTimes--,i.usedTimes===0&&this.shaderCache.delete(i.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let n=this.materialCache,i=n.get(t);return i===void 0&&(i=new Set,n.set(t,i)),i}_getShaderStage(t){let n=this.shaderCache,i=n.get(t);return i===void 0&&(i=new Y_(t),n.set(t,i)),i}},Y_=class{constructor(t){this.id=$k++,this.code=t,this.usedTimes=0}};function Xk(e){return e===Js||e===_u||e===vu}function qk(e,t,n,i,r,s){let o=new Jc,a=new q_,l=new Set,c=[],u=new Map,h=i.logarithmicDepthBuffer,f={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function d(_){return l.add(_),_===0?"uv":`uv${_}`}function p(_,w,R,C,A,L){let B=C.fog,P=A.geometry,D=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?C.environment:null,z=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,U=t.get(_.envMap||D,z),Z=f[_.type],F=i.precision;_.precision!==null&&(F=i.getMaxPrecision(_.precision),F!==_.precision&&Ft("WebGLProgram.getParameters:",_.precision,"not supported, using",F,"instead."));let V=P.morphAttributes.position||P.morphAttributes.normal||P.morphAttributes.color,q=V!==void 0?V.length:0,st=0;P.morphAttributes.position!==void 0&&(st=1),P.morphAttributes.normal!==void 0&&(st=2),P.morphAttributes.color!==void 0&&(st=3);let lt,$,at,ft;if(Z){let Et=Vn[Z];lt=Et.vertexShader,$=Et.fragmentShader}else{lt=_.vertexShader,$=_.fragmentShader;let Et=a.getVertexShaderStage(_),pe=a.getFragmentShaderStage(_);a.update(_,Et,pe),at=Et.id,ft=pe.id}let ot=e.getRenderTarget(),rt=e.state.buffers.depth.getReversed(),K=A.isInstancedMesh===!0,gt=A.isBatchedMesh===!0,ct=!!_.map,J=!!_.matcap,It=!!U,pt=It&&U.isPMREMTexture===!0,Ot=!!_.aoMap,Ht=!!_.lightMap,le=!!_.bumpMap&&_.wireframe===!1,oe=!!_.normalMap,tn=!!_.displacementMap,Ge=!!_.emissiveMap,Wn=!!_.metalnessMap,Cn=!!_.roughnessMap,$n=_.anisotropy>0,G=_.clearcoat>0,Xn=_.diffuseRoughness>0,be=_.dispersion>0,Me=_.retroreflectivity>0,mt=_.iridescence>0,Re=_.sheen>0,Dt=_.transmission>0,zt=$n&&!!_.anisotropyMap,I=G&&!!_.clearcoatMap,T=G&&!!_.clearcoatNormalMap,H=G&&!!_.clearcoatRoughnessMap,ut=Xn&&!!_.diffuseRoughnessMap,nt=mt&&!!_.iridescenceMap,yt=mt&&!!_.iridescenceThicknessMap,Mt=Re&&!!_.sheenColorMap,Q=Re&&!!_.sheenRoughnessMap,tt=!!_.specularMap,_t=!!_.specularColorMap,N=!!_.specularIntensityMap,et=Dt&&!!_.transmissionMap,j=Dt&&!!_.thicknessMap,vt=!!_.gradientMap,dt=!!_.alphaMap,xt=_.alphaTest>0,Nt=!!_.alphaHash,Jt=!!_.extensions,ht=wr;_.toneMapped&&(ot===null||ot.isXRRenderTarget===!0)&&(ht=e.toneMapping);let Ut=pt?U.isCompressedCubeTexture?U.image[0].mipmaps:U.mipmaps:null,Kt={shaderID:Z,shaderType:_.type,shaderName:_.name,vertexShader:lt,fragmentShader:$,defines:_.defines,customVertexShaderID:at,customFragmentShaderID:ft,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:F,batching:gt,batchingColor:gt&&A._colorsTexture!==null,instancing:K,instancingColor:K&&A.instanceColor!==null,instancingMorph:K&&A.morphTexture!==null,outputColorSpace:ot===null?e.outputColorSpace:ot.isXRRenderTarget===!0?ot.texture.colorSpace:ie.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:ct,matcap:J,envMap:It,envMapMode:It&&U.mapping,envMapPMREM:pt,envMapMaxLod:pt?Ut.length-1:null,envMapSize:pt?Ut[0].width:null,aoMap:Ot,lightMap:Ht,bumpMap:le,normalMap:oe,displacementMap:tn,emissiveMap:Ge,normalMapObjectSpace:oe&&_.normalMapType===I2,normalMapTangentSpace:oe&&_.normalMapType===Rp,packedNormalMap:oe&&_.normalMapType===Rp&&Xk(_.normalMap.format),metalnessMap:Wn,roughnessMap:Cn,anisotropy:$n,anisotropyMap:zt,clearcoat:G,clearcoatMap:I,clearcoatNormalMap:T,clearcoatRoughnessMap:H,diffuseRoughness:Xn,diffuseRoughnessMap:ut,dispersion:be,retroreflection:Me,iridescence:mt,iridescenceMap:nt,iridescenceThicknessMap:yt,sheen:Re,sheenColorMap:Mt,sheenRoughnessMap:Q,specularMap:tt,specularColorMap:_t,specularIntensityMap:N,transmission:Dt,transmissionMap:et,thicknessMap:j,gradientMap:vt,opaque:_.transparent===!1&&_.blending===Il&&_.alphaToCoverage===!1,alphaMap:dt,alphaTest:xt,alphaHash:Nt,combine:_.combine,mapUv:ct&&d(_.map.channel),aoMapUv:Ot&&d(_.aoMap.channel),lightMapUv:Ht&&d(_.lightMap.channel),bumpMapUv:le&&d(_.bumpMap.channel),normalMapUv:oe&&d(_.normalMap.channel),displacementMapUv:tn&&d(_.displacementMap.channel),emissiveMapUv:Ge&&d(_.emissiveMap.channel),metalnessMapUv:Wn&&d(_.metalnessMap.channel),roughnessMapUv:Cn&&d(_.roughnessMap.channel),anisotropyMapUv:zt&&d(_.anisotropyMap.channel),clearcoatMapUv:I&&d(_.clearcoatMap.channel),clearcoatNormalMapUv:T&&d(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:H&&d(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ut&&d(_.diffuseRoughnessMap.channel),iridescenceMapUv:nt&&d(_.iridescenceMap.channel),iridescenceThicknessMapUv:yt&&d(_.iridescenceThicknessMap.channel),sheenColorMapUv:Mt&&d(_.sheenColorMap.channel),sheenRoughnessMapUv:Q&&d(_.sheenRoughnessMap.channel),specularMapUv:tt&&d(_.specularMap.channel),specularColorMapUv:_t&&d(_.specularColorMap.channel),specularIntensityMapUv:N&&d(_.specularIntensityMap.channel),transmissionMapUv:et&&d(_.transmissionMap.channel),thicknessMapUv:j&&d(_.thicknessMap.channel),alphaMapUv:dt&&d(_.alphaMap.channel),vertexTangents:!!P.attributes.tangent&&(oe||$n),vertexNormals:!!P.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!P.attributes.color&&P.attributes.color.itemSize===4,pointsUvs:A.isPoints===!0&&!!P.attributes.uv&&(ct||dt),fog:!!B,useFog:_.fog===!0,fogExp2:!!B&&B.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||P.attributes.normal===void 0&&oe===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:rt,skinning:A.isSkinnedMesh===!0,hasPositionAttribute:P.attributes.position!==void 0,morphTargets:P.morphAttributes.position!==void 0,morphNormals:P.morphAttributes.normal!==void 0,morphColors:P.morphAttributes.color!==void 0,morphTargetsCount:q,morphTextureStride:st,numSunLights:w.sun.length,numDirLights:w.directional.length,numPointLights:w.point.length,numSpotLights:w.spot.length,numSpotLightMaps:w.spotLightMap.length,numRectAreaLights:w.rectArea.length,numHemiLights:w.hemi.length,numSunLightShadows:w.sunShadowMap.length,numDirLightShadows:w.directionalShadowMap.length,numPointLightShadows:w.pointShadowMap.length,numSpotLightShadows:w.spotShadowMap.length,numSpotLightShadowsWithMaps:w.numSpotLightShadowsWithMaps,numLightProbes:w.numLightProbes,numLightProbeGrids:L.filter(Et=>Et.texture!==null).length,numClippingPlanes:s.numPlanes,numClipIntersection:s.numIntersection,dithering:_.dithering,shadowMapEnabled:e.shadowMap.enabled&&R.length>0,shadowMapType:e.shadowMap.type,toneMapping:ht,decodeVideoTexture:ct&&_.map.isVideoTexture===!0&&ie.getTransfer(_.map.colorSpace)===he,decodeVideoTextureEmissive:Ge&&_.emissiveMap.isVideoTexture===!0&&ie.getTransfer(_.emissiveMap.colorSpace)===he,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===Di,flipSided:_.side===Gn,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:Jt&&_.extensions.clipCullDistance===!0&&n.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Jt&&_.extensions.multiDraw===!0||gt)&&n.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:n.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return Kt.vertexUv1s=l.has(1),Kt.vertexUv2s=l.has(2),Kt.vertexUv3s=l.has(3),l.clear(),Kt}function y(_){let w=[];if(_.shaderID?w.push(_.shaderID):(w.push(_.customVertexShaderID),w.push(_.customFragmentShaderID)),_.defines!==void 0)for(let R in _.defines)w.push(R),w.push(_.defines[R]);return _.isRawShaderMaterial===!1&&(g(w,_),m(w,_),w.push(e.outputColorSpace)),w.push(_.customProgramCacheKey),w.join()}function g(_,w){_.push(w.precision),_.push(w.outputColorSpace),_.push(w.envMapMode),_.push(w.envMapPMREM),_.push(w.envMapMaxLod),_.push(w.envMapSize),_.push(w.mapUv),_.push(w.alphaMapUv),_.push(w.lightMapUv),_.push(w.aoMapUv),_.push(w.bumpMapUv),_.push(w.normalMapUv),_.push(w.displacementMapUv),_.push(w.emissiveMapUv),_.push(w.metalnessMapUv),_.push(w.roughnessMapUv),_.push(w.anisotropyMapUv),_.push(w.clearcoatMapUv),_.push(w.clearcoatNormalMapUv),_.push(w.clearcoatRoughnessMapUv),_.push(w.diffuseRoughnessMapUv),_.push(w.iridescenceMapUv),_.push(w.iridescenceThicknessMapUv),_.push(w.sheenColorMapUv),_.push(w.sheenRoughnessMapUv),_.push(w.specularMapUv),_.push(w.specularColorMapUv),_.push(w.specularIntensityMapUv),_.push(w.transmissionMapUv),_.push(w.thicknessMapUv),_.push(w.combine),_.push(w.fogExp2),_.push(w.sizeAttenuation),_.push(w.morphTargetsCount),_.push(w.numSunLights),_.push(w.numDirLights),_.push(w.numPointLights),_.push(w.numSpotLights),_.push(w.numSpotLightMaps),_.push(w.numHemiLights),_.push(w.numRectAreaLights),_.push(w.numSunLightShadows),_.push(w.numDirLightShadows),_.push(w.numPointLightShadows),_.push(w.numSpotLightShadows),_.push(w.numSpotLightShadowsWithMaps),_.push(w.numLightProbes),_.push(w.numLightProbeGrids),_.push(w.shadowMapType),_.push(w.toneMapping),_.push(w.numClippingPlanes),_.push(w.numClipIntersection),_.push(w.depthPacking)}function m(_,w){o.disableAll(),w.instancing&&o.enable(0),w.instancingColor&&o.enable(1),w.instancingMorph&&o.enable(2),w.matcap&&o.enable(3),w.envMap&&o.enable(4),w.normalMapObjectSpace&&o.enable(5),w.normalMapTangentSpace&&o.enable(6),w.clearcoat&&o.enable(7),w.iridescence&&o.enable(8),w.alphaTest&&o.enable(9),w.vertexColors&&o.enable(10),w.vertexAlphas&&o.enable(11),w.vertexUv1s&&o.enable(12),w.vertexUv2s&&o.enable(13),w.vertexUv3s&&o.enable(14),w.vertexTangents&&o.enable(15),w.anisotropy&&o.enable(16),w.alphaHash&&o.enable(17),w.batching&&o.enable(18),w.dispersion&&o.enable(19),w.retroreflection&&o.enable(24),w.diffuseRoughness&&o.enable(25),w.batchingColor&&o.enable(20),w.gradientMap&&o.enable(21),w.packedNormalMap&&o.enable(22),w.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),w.fog&&o.enable(0),w.useFog&&o.enable(1),w.flatShading&&o.enable(2),w.logarithmicDepthBuffer&&o.enable(3),w.reversedDepthBuffer&&o.enable(4),w.skinning&&o.enable(5),w.morphTargets&&o.enable(6),w.morphNormals&&o.enable(7),w.morphColors&&o.enable(8),w.premultipliedAlpha&&o.enable(9),w.shadowMapEnabled&&o.enable(10),w.doubleSided&&o.enable(11),w.flipSided&&o.enable(12),w.useDepthPacking&&o.enable(13),w.dithering&&o.enable(14),w.transmission&&o.enable(15),w.sheen&&o.enable(16),w.opaque&&o.enable(17),w.pointsUvs&&o.enable(18),w.decodeVideoTexture&&o.enable(19),w.decodeVideoTextureEmissive&&o.enable(20),w.alphaToCoverage&&o.enable(21),w.numLightProbeGrids>0&&o.enable(22),w.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function x(_){let w=f[_.type],R;if(w){let C=Vn[w];R=Mu.clone(C.uniforms)}else R=_.uniforms;return R}function S(_,w){let R=u.get(w);return R!==void 0?++R.usedTimes:(R=new Wk(e,w,_,r),c.push(R),u.set(w,R)),R}function v(_){if(--_.usedTimes===0){let w=c.indexOf(_);c[w]=c[c.length-1],c.pop(),u.delete(_.cacheKey),_.destroy()}}function M(_){a.remove(_)}function b(){a.dispose()}return{getParameters:p,getProgramCacheKey:y,getUniforms:x,acquireProgram:S,releaseProgram:v,releaseShaderCache:M,programs:c,dispose:b}}function Yk(){let e=new WeakMap;function t(o){return e.has(o)}function n(o){let a=e.get(o);return a===void 0&&(a={},e.set(o,a)),a}function i(o){e.delete(o)}function r(o,a,l){e.get(o)[a]=l}function s(){e=new WeakMap}return{has:t,get:n,remove:i,update:r,dispose:s}}function Zk(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.material.id!==t.material.id?e.material.id-t.material.id:e.materialVariant!==t.materialVariant?e.materialVariant-t.materialVariant:e.z!==t.z?e.z-t.z:e.id-t.id}function l3(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.z!==t.z?t.z-e.z:e.id-t.id}function c3(){let e=[],t=0,n=[],i=[],r=[];function s(){t=0,n.length=0,i.length=0,r.length=0}function o(f){let d=0;return f.isInstancedMesh&&(d+=2),f.isSkinnedMesh&&(d+=1),d}function a(f,d,p,y,g,m){let x=e[t];return x===void 0?(x={id:f.id,object:f,geometry:d,material:p,materialVariant:o(f),groupOrder:y,renderOrder:f.renderOrder,z:g,group:m},e[t]=x):(x.id=f.id,x.object=f,x.geometry=d,x.material=p,x.materialVariant=o(f),x.groupOrder=y,x.renderOrder=f.renderOrder,x.z=g,x.group=m),t++,x}function l(f,d,p,y,g,m,x){x.reversedDepth===!0&&(g=-g);let S=a(f,d,p,y,g,m);p.transmission>0?i.push(S):p.transparent===!0?r.push(S):n.push(S)}function c(f,d,p,y,g,m){let x=a(f,d,p,y,g,m);p.transmission>0?i.unshift(x):p.transparent===!0?r.unshift(x):n.unshift(x)}function u(f,d){n.length>1&&n.sort(f||Zk),i.length>1&&i.sort(d||l3),r.length>1&&r.sort(d||l3)}function h(){for(let f=t,d=e.length;f<d;f++){let p=e[f];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:n,transmissive:i,transparent:r,init:s,push:l,unshift:c,finish:h,sort:u}}function Kk(){let e=new WeakMap;function t(i,r){let s=e.get(i),o;return s===void 0?(o=new c3,e.set(i,[o])):r>=s.length?(o=new c3,s.push(o)):o=s[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}function Jk(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={direction:new k,color:new kt};break;case"SpotLight":n={position:new k,direction:new k,color:new kt,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":n={position:new k,color:new kt,distance:0,decay:0};break;case"HemisphereLight":n={direction:new k,skyColor:new kt,groundColor:new kt};break;case"RectAreaLight":n={color:new kt,position:new k,halfWidth:new k,halfHeight:new k};break}return e[t.id]=n,n}}}function jk(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"SpotLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"PointLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt,shadowCameraNear:1,shadowCameraFar:1e3};break}return e[t.id]=n,n}}}var Qk=0;function t6(e,t){return(t.castShadow?2:0)-(e.castShadow?2:0)+(t.map?1:0)-(e.map?1:0)}function e6(e){let t=new Jk,n=jk(),i={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)i.probe.push(new k);let r=new k,s=new ve,o=new ve;function a(c){let u=0,h=0,f=0;for(let L=0;L<9;L++)i.probe[L].set(0,0,0);let d=0,p=0,y=0,g=0,m=0,x=0,S=0,v=0,M=0,b=0,_=0,w=0,R=0,C=0;c.sort(t6);for(let L=0,B=c.length;L<B;L++){let P=c[L],D=P.color,z=P.intensity,U=P.distance,Z=null;if(P.shadow&&P.shadow.map&&(P.shadow.map.texture.format===Js?Z=P.shadow.map.texture:Z=P.shadow.map.depthTexture||P.shadow.map.texture),P.isAmbientLight)u+=D.r*z,h+=D.g*z,f+=D.b*z;else if(P.isLightProbe){for(let F=0;F<9;F++)i.probe[F].addScaledVector(P.sh.coefficients[F],z);C++}else if(P.isSunLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize.copy(V.mapSize).multiply(V.getFrameExtents()),i.sunShadow[p]=q,i.sunShadowMap[p]=Z;let st=V.getViewportCount();for(let lt=0;lt<st;lt++)i.sunShadowMatrix[y+lt]=V.getMatrix(lt),i.sunShadowCascade[y+lt]=V._cascadeData[lt];y+=st,p++}i.sun[d]=F,d++}else if(P.isDirectionalLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.directionalShadow[g]=q,i.directionalShadowMap[g]=Z,i.directionalShadowMatrix[g]=P.shadow.matrix,M++}i.directional[g]=F,g++}else if(P.isSpotLight){let F=t.get(P);F.position.setFromMatrixPosition(P.matrixWorld),F.color.copy(D).multiplyScalar(z),F.distance=U,F.coneCos=Math.cos(P.angle),F.penumbraCos=Math.cos(P.angle*(1-P.penumbra)),F.decay=P.decay,i.spot[x]=F;let V=P.shadow;if(P.map&&(i.spotLightMap[w]=P.map,w++,V.updateMatrices(P),P.castShadow&&R++),i.spotLightMatrix[x]=V.matrix,P.castShadow){let q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.spotShadow[x]=q,i.spotShadowMap[x]=Z,_++}x++}else if(P.isRectAreaLight){let F=t.get(P);F.color.copy(D).multiplyScalar(z),F.halfWidth.set(P.width*.5,0,0),F.halfHeight.set(0,P.height*.5,0),i.rectArea[S]=F,S++}else if(P.isPointLight){let F=t.get(P);if(F.color.copy(P.color).multiplyScalar(P.intensity),F.distance=P.distance,F.decay=P.decay,P.castShadow){let V=P.shadow,q=n.get(P);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,q.shadowCameraNear=V.camera.near,q.shadowCameraFar=V.camera.far,i.pointShadow[m]=q,i.pointShadowMap[m]=Z,i.pointShadowMatrix[m]=P.shadow.matrix,b++}i.point[m]=F,m++}else if(P.isHemisphereLight){let F=t.get(P);F.skyColor.copy(P.color).multiplyScalar(z),F.groundColor.copy(P.groundColor).multiplyScalar(z),i.hemi[v]=F,v++}}S>0&&(e.has("OES_texture_float_linear")===!0?(i.rectAreaLTC1=wt.LTC_FLOAT_1,i.rectAreaLTC2=wt.LTC_FLOAT_2):(i.rectAreaLTC1=wt.LTC_HALF_1,i.rectAreaLTC2=wt.LTC_HALF_2)),i.ambient[0]=u,i.ambient[1]=h,i.ambient[2]=f;let A=i.hash;(A.sunLength!==d||A.directionalLength!==g||A.pointLength!==m||A.spotLength!==x||A.rectAreaLength!==S||A.hemiLength!==v||A.numSunShadows!==p||A.numDirectionalShadows!==M||A.numPointShadows!==b||A.numSpotShadows!==_||A.numSpotMaps!==w||A.numLightProbes!==C)&&(i.sun.length=d,i.directional.length=g,i.spot.length=x,i.rectArea.length=S,i.point.length=m,i.hemi.length=v,i.sunShadow.length=p,i.sunShadowMap.length=p,i.sunShadowMatrix.length=y,i.sunShadowCascade.length=y,i.directionalShadow.length=M,i.directionalShadowMap.length=M,i.directionalShadowMatrix.length=M,i.pointShadow.length=b,i.pointShadowMap.length=b,i.pointShadowMatrix.length=b,i.spotShadow.length=_,i.spotShadowMap.length=_,i.spotLightMatrix.length=_+w-R,i.spotLightMap.length=w,i.numSpotLightShadowsWithMaps=R,i.numLightProbes=C,A.sunLength=d,A.directionalLength=g,A.pointLength=m,A.spotLength=x,A.rectAreaLength=S,A.hemiLength=v,A.numSunShadows=p,A.numDirectionalShadows=M,A.numPointShadows=b,A.numSpotShadows=_,A.numSpotMaps=w,A.numLightProbes=C,i.version=Qk++)}function l(c,u){let h=0,f=0,d=0,p=0,y=0,g=0,m=u.matrixWorldInverse;for(let x=0,S=c.length;x<S;x++){let v=c[x];if(v.isSunLight){let M=i.sun[h];M.direction.setFromMatrixPosition(v.matrixWorld),M.direction.transformDirection(m),h++}else if(v.isDirectionalLight){let M=i.directional[f];M.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),M.direction.sub(r),M.direction.transformDirection(m),f++}else if(v.isSpotLight){let M=i.spot[p];M.position.setFromMatrixPosition(v.matrixWorld),M.position.applyMatrix4(m),M.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),M.direction.sub(r),M.direction.transformDirection(m),p++}else if(v.isRectAreaLight){let M=i.rectArea[y];M.position.setFromMatrixPosition(v.matrixWorld),M.position.applyMatrix4(m),o.identity(),s.copy(v.matrixWorld),s.premultiply(m),o.extractRotation(s),M.halfWidth.set(v.width*.5,0,0),M.halfHeight.set(0,v.height*.5,0),M.halfWidth.applyMatrix4(o),M.halfHeight.applyMatrix4(o),y++}else if(v.isPointLight){let M=i.point[d];M.position.setFromMatrixPosition(v.matrixWorld),M.position.applyMatrix4(m),d++}else if(v.isHemisphereLight){let M=i.hemi[g];M.direction.setFromMatrixPosition(v.matrixWorld),M.direction.transformDirection(m),g++}}}return{setup:a,setupView:l,state:i}}function u3(e){let t=new e6(e),n=[],i=[],r=[];function s(h){u.camera=h,n.length=0,i.length=0,r.length=0}function o(h){h.isLightProbeGrid?r.push(h):n.push(h)}function a(h){i.push(h)}function l(){t.setup(n),r.sort((h,f)=>h.priority-f.priority||h.id-f.id)}function c(h){t.setupView(n,h)}let u={lightsArray:n,shadowsArray:i,lightProbeGridArray:r,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:s,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function n6(e){let t=new WeakMap;function n(r,s=0){let o=t.get(r),a;return o===void 0?(a=new u3(e),t.set(r,[a])):s>=o.length?(a=new u3(e),o.push(a)):a=o[s],a}function i(){t=new WeakMap}return{get:n,dispose:i}}var i6=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,r6=`uniform sampler2D shadow_pass;
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
}`,s6=[new k(1,0,0),new k(-1,0,0),new k(0,1,0),new k(0,-1,0),new k(0,0,1),new k(0,0,-1)],o6=[new k(0,-1,0),new k(0,-1,0),new k(0,0,1),new k(0,0,-1),new k(0,-1,0),new k(0,-1,0)],f3=new ve,Su=new k,V_=new k;function a6(e,t,n){let i=new Vs,r=new Bt,s=new Bt,o=new de,a=new Rd,l=new Pd,c={},u=n.maxTextureSize,h={[Ks]:Gn,[Gn]:Ks,[Di]:Di},f=new Li({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new Bt},radius:{value:4}},vertexShader:i6,fragmentShader:r6}),d=f.clone();d.defines.HORIZONTAL_PASS=1;let p=new Ke;p.setAttribute("position",new Ye(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let y=new We(p,f),g=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=du;let m=this.type;this.render=function(b,_,w){if(g.enabled===!1||g.autoUpdate===!1&&g.needsUpdate===!1||b.length===0)return;this.type===l2&&(Ft("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=du);let R=e.getRenderTarget(),C=e.getActiveCubeFace(),A=e.getActiveMipmapLevel(),L=e.state;L.setBlending(qo),L.buffers.depth.getReversed()===!0?L.buffers.color.setClear(0,0,0,0):L.buffers.color.setClear(1,1,1,1),L.buffers.depth.setTest(!0),L.setScissorTest(!1);let B=m!==this.type;B&&_.traverse(function(P){P.material&&(Array.isArray(P.material)?P.material.forEach(D=>D.needsUpdate=!0):P.material.needsUpdate=!0)});for(let P=0,D=b.length;P<D;P++){let z=b[P],U=z.shadow;if(U===void 0){Ft("WebGLShadowMap:",z,"has no shadow.");continue}if(U.autoUpdate===!1&&U.needsUpdate===!1)continue;r.copy(U.mapSize);let Z=U.getFrameExtents();r.multiply(Z),s.copy(U.mapSize),(r.x>u||r.y>u)&&(r.x>u&&(s.x=Math.floor(u/Z.x),r.x=s.x*Z.x,U.mapSize.x=s.x),r.y>u&&(s.y=Math.floor(u/Z.y),r.y=s.y*Z.y,U.mapSize.y=s.y));let F=e.state.buffers.depth.getReversed();if(U.camera._reversedDepth=F,U.map===null||B===!0){if(U.map!==null&&(U.map.depthTexture!==null&&(U.map.depthTexture.dispose(),U.map.depthTexture=null),U.map.dispose()),this.type===Pl){if(z.isPointLight){Ft("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}U.map=new zn(r.x,r.y,{format:Js,type:Qi,minFilter:kn,magFilter:kn,generateMipmaps:!1}),U.map.texture.name=z.name+".shadowMap",U.map.depthTexture=new ls(r.x,r.y,ji),U.map.depthTexture.name=z.name+".shadowMapDepth",U.map.depthTexture.format=ss,U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=hn,U.map.depthTexture.magFilter=hn}else z.isPointLight?(U.map=new Tu(r.x),U.map.depthTexture=new eu(r.x,Ji)):(U.map=new zn(r.x,r.y),U.map.depthTexture=new ls(r.x,r.y,Ji)),U.map.depthTexture.name=z.name+".shadowMap",U.map.depthTexture.format=ss,this.type===du?(U.map.depthTexture.compareFunction=F?R_:C_,U.map.depthTexture.minFilter=kn,U.map.depthTexture.magFilter=kn):(U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=hn,U.map.depthTexture.magFilter=hn);U.camera.updateProjectionMatrix()}U.map.isWebGLCubeRenderTarget!==!0&&(U.map.width!==r.x||U.map.height!==r.y)&&U.map.setSize(r.x,r.y);let V=U.map.isWebGLCubeRenderTarget?6:U.getViewportCount();z.isPointLight!==!0&&U.updateMatrices(z,w);let q=(U.camera.layers.mask&4294967294)!==0?U.camera.layers:w.layers;for(let st=0;st<V;st++){let lt=U.getCamera(st);if(z.isPointLight){let $=U.camera,at=U.matrix,ft=z.distance||$.far;ft!==$.far&&($.far=ft,$.updateProjectionMatrix()),Su.setFromMatrixPosition(z.matrixWorld),$.position.copy(Su),V_.copy($.position),V_.add(s6[st]),$.up.copy(o6[st]),$.lookAt(V_),$.updateMatrixWorld(),at.makeTranslation(-Su.x,-Su.y,-Su.z),f3.multiplyMatrices($.projectionMatrix,$.matrixWorldInverse),U._frustum.setFromProjectionMatrix(f3,$.coordinateSystem,$.reversedDepth)}if(U.map.isWebGLCubeRenderTarget)e.setRenderTarget(U.map,st),e.clear();else{st===0&&(e.setRenderTarget(U.map),e.clear());let $=U.getViewport(st);o.set(s.x*$.x,s.y*$.y,s.x*$.z,s.y*$.w),L.viewport(o)}i=U.getFrustum(st),v(_,w,lt,z,q,this.type)}U.isPointLightShadow!==!0&&this.type===Pl&&x(U,w),U.needsUpdate=!1}m=this.type,g.needsUpdate=!1,e.setRenderTarget(R,C,A)};function x(b,_){let w=t.update(y);f.defines.VSM_SAMPLES!==b.blurSamples&&(f.defines.VSM_SAMPLES=b.blurSamples,d.defines.VSM_SAMPLES=b.blurSamples,f.needsUpdate=!0,d.needsUpdate=!0),b.mapPass===null?b.mapPass=new zn(r.x,r.y,{format:Js,type:Qi}):(b.mapPass.width!==b.map.width||b.mapPass.height!==b.map.height)&&b.mapPass.setSize(b.map.width,b.map.height),f.uniforms.shadow_pass.value=b.map.depthTexture,f.uniforms.resolution.value.set(b.map.width,b.map.height),f.uniforms.radius.value=b.radius,e.setRenderTarget(b.mapPass),e.clear(),e.renderBufferDirect(_,null,w,f,y,null),d.uniforms.shadow_pass.value=b.mapPass.texture,d.uniforms.resolution.value.set(b.map.width,b.map.height),d.uniforms.radius.value=b.radius,e.setRenderTarget(b.map),e.clear(),e.renderBufferDirect(_,null,w,d,y,null)}function S(b,_,w,R){let C=null,A=w.isPointLight===!0?b.customDistanceMaterial:b.customDepthMaterial;if(A!==void 0)C=A;else if(C=w.isPointLight===!0?l:a,e.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let L=C.uuid,B=_.uuid,P=c[L];P===void 0&&(P={},c[L]=P);let D=P[B];D===void 0&&(D=C.clone(),P[B]=D,_.addEventListener("dispose",M)),C=D}if(C.visible=_.visible,C.wireframe=_.wireframe,R===Pl?C.side=_.shadowSide!==null?_.shadowSide:_.side:C.side=_.shadowSide!==null?_.shadowSide:h[_.side],C.alphaMap=_.alphaMap,C.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,C.map=_.map,C.clipShadows=_.clipShadows,C.clippingPlanes=_.clippingPlanes,C.clipIntersection=_.clipIntersection,C.displacementMap=_.displacementMap,C.displacementScale=_.displacementScale,C.displacementBias=_.displacementBias,C.wireframeLinewidth=_.wireframeLinewidth,C.linewidth=_.linewidth,w.isPointLight===!0&&C.isMeshDistanceMaterial===!0){let L=e.properties.get(C);L.light=w}return C}function v(b,_,w,R,C,A){if(b.visible===!1)return;if(b.layers.test(C)&&(b.isMesh||b.isLine||b.isPoints)&&(b.castShadow||b.receiveShadow&&A===Pl)&&(!b.frustumCulled||b.intersectsFrustum(i))){b.modelViewMatrix.multiplyMatrices(w.matrixWorldInverse,b.matrixWorld);let P=t.update(b),D=b.material;if(Array.isArray(D)){let z=P.groups;for(let U=0,Z=z.length;U<Z;U++){let F=z[U],V=D[F.materialIndex];if(V&&V.visible){let q=S(b,V,R,A);b.onBeforeShadow(e,b,_,w,P,q,F),e.renderBufferDirect(w,null,P,q,b,F),b.onAfterShadow(e,b,_,w,P,q,F)}}}else if(D.visible){let z=S(b,D,R,A);b.onBeforeShadow(e,b,_,w,P,z,null),e.renderBufferDirect(w,null,P,z,b,null),b.onAfterShadow(e,b,_,w,P,z,null)}}let B=b.children;for(let P=0,D=B.length;P<D;P++)v(B[P],_,w,R,C,A)}function M(b){b.target.removeEventListener("dispose",M);for(let w in c){let R=c[w],C=b.target.uuid;C in R&&(R[C].dispose(),delete R[C])}}}function l6(e,t){function n(){let N=!1,et=new de,j=null,vt=new de(0,0,0,0);return{setMask:function(dt){j!==dt&&!N&&(e.colorMask(dt,dt,dt,dt),j=dt)},setLocked:function(dt){N=dt},setClear:function(dt,xt,Nt,Jt,ht){ht===!0&&(dt*=Jt,xt*=Jt,Nt*=Jt),et.set(dt,xt,Nt,Jt),vt.equals(et)===!1&&(e.clearColor(dt,xt,Nt,Jt),vt.copy(et))},reset:function(){N=!1,j=null,vt.set(-1,0,0,0)}}}function i(){let N=!1,et=!1,j=null,vt=null,dt=null;return{setReversed:function(xt){if(et!==xt){let Nt=t.get("EXT_clip_control");xt?Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.ZERO_TO_ONE_EXT):Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.NEGATIVE_ONE_TO_ONE_EXT),et=xt;let Jt=dt;dt=null,this.setClear(Jt)}},getReversed:function(){return et},setTest:function(xt){xt?rt(e.DEPTH_TEST):K(e.DEPTH_TEST)},setMask:function(xt){j!==xt&&!N&&(e.depthMask(xt),j=xt)},setFunc:function(xt){if(et&&(xt=G2[xt]),vt!==xt){switch(xt){case cd:e.depthFunc(e.NEVER);break;case ud:e.depthFunc(e.ALWAYS);break;case fd:e.depthFunc(e.LESS);break;case _l:e.depthFunc(e.LEQUAL);break;case hd:e.depthFunc(e.EQUAL);break;case dd:e.depthFunc(e.GEQUAL);break;case pd:e.depthFunc(e.GREATER);break;case md:e.depthFunc(e.NOTEQUAL);break;default:e.depthFunc(e.LEQUAL)}vt=xt}},setLocked:function(xt){N=xt},setClear:function(xt){dt!==xt&&(dt=xt,et&&(xt=1-xt),e.clearDepth(xt))},reset:function(){N=!1,j=null,vt=null,dt=null,et=!1}}}function r(){let N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Jt=null,ht=null;return{setTest:function(Ut){N||(Ut?rt(e.STENCIL_TEST):K(e.STENCIL_TEST))},setMask:function(Ut){et!==Ut&&!N&&(e.stencilMask(Ut),et=Ut)},setFunc:function(Ut,Kt,Et){(j!==Ut||vt!==Kt||dt!==Et)&&(e.stencilFunc(Ut,Kt,Et),j=Ut,vt=Kt,dt=Et)},setOp:function(Ut,Kt,Et){(xt!==Ut||Nt!==Kt||Jt!==Et)&&(e.stencilOp(Ut,Kt,Et),xt=Ut,Nt=Kt,Jt=Et)},setLocked:function(Ut){N=Ut},setClear:function(Ut){ht!==Ut&&(e.clearStencil(Ut),ht=Ut)},reset:function(){N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Jt=null,ht=null}}}let s=new n,o=new i,a=new r,l={},c=new WeakMap,u={},h={},f={},d=new WeakMap,p=[],y=null,g=!1,m=null,x=null,S=null,v=null,M=null,b=null,_=null,w=new kt(0,0,0),R=0,C=!1,A=null,L=null,B=null,P=null,D=null,z=e.getParameter(e.MAX_COMBINED_TEXTURE_IMAGE_UNITS),U=!1,Z=0,F=e.getParameter(e.VERSION);F.indexOf("WebGL")!==-1?(Z=parseFloat(/^WebGL (\d)/.exec(F)[1]),U=Z>=1):F.indexOf("OpenGL ES")!==-1&&(Z=parseFloat(/^OpenGL ES (\d)/.exec(F)[1]),U=Z>=2);let V=null,q={},st=e.getParameter(e.SCISSOR_BOX),lt=e.getParameter(e.VIEWPORT),$=new de().fromArray(st),at=new de().fromArray(lt);function ft(N,et,j,vt){let dt=new Uint8Array(4),xt=e.createTexture();e.bindTexture(N,xt),e.texParameteri(N,e.TEXTURE_MIN_FILTER,e.NEAREST),e.texParameteri(N,e.TEXTURE_MAG_FILTER,e.NEAREST);for(let Nt=0;Nt<j;Nt++)N===e.TEXTURE_3D||N===e.TEXTURE_2D_ARRAY?e.texImage3D(et,0,e.RGBA,1,1,vt,0,e.RGBA,e.UNSIGNED_BYTE,dt):e.texImage2D(et+Nt,0,e.RGBA,1,1,0,e.RGBA,e.UNSIGNED_BYTE,dt);return xt}let ot={};ot[e.TEXTURE_2D]=ft(e.TEXTURE_2D,e.TEXTURE_2D,1),ot[e.TEXTURE_CUBE_MAP]=ft(e.TEXTURE_CUBE_MAP,e.TEXTURE_CUBE_MAP_POSITIVE_X,6),ot[e.TEXTURE_2D_ARRAY]=ft(e.TEXTURE_2D_ARRAY,e.TEXTURE_2D_ARRAY,1,1),ot[e.TEXTURE_3D]=ft(e.TEXTURE_3D,e.TEXTURE_3D,1,1),s.setClear(0,0,0,1),o.setClear(1),a.setClear(0),rt(e.DEPTH_TEST),o.setFunc(_l),le(!1),oe(a_),rt(e.CULL_FACE),Ot(qo);function rt(N){u[N]!==!0&&(e.enable(N),u[N]=!0)}function K(N){u[N]!==!1&&(e.disable(N),u[N]=!1)}function gt(N,et){return f[N]!==et?(e.bindFramebuffer(N,et),f[N]=et,N===e.DRAW_FRAMEBUFFER&&(f[e.FRAMEBUFFER]=et),N===e.FRAMEBUFFER&&(f[e.DRAW_FRAMEBUFFER]=et),!0):!1}function ct(N,et){let j=p,vt=!1;if(N){j=d.get(et),j===void 0&&(j=[],d.set(et,j));let dt=N.textures;if(j.length!==dt.length||j[0]!==e.COLOR_ATTACHMENT0){for(let xt=0,Nt=dt.length;xt<Nt;xt++)j[xt]=e.COLOR_ATTACHMENT0+xt;j.length=dt.length,vt=!0}}else j[0]!==e.BACK&&(j[0]=e.BACK,vt=!0);vt&&e.drawBuffers(j)}function J(N){return y!==N?(e.useProgram(N),y=N,!0):!1}let It={[Yo]:e.FUNC_ADD,[u2]:e.FUNC_SUBTRACT,[f2]:e.FUNC_REVERSE_SUBTRACT};It[h2]=e.MIN,It[d2]=e.MAX;let pt={[p2]:e.ZERO,[m2]:e.ONE,[g2]:e.SRC_COLOR,[f_]:e.SRC_ALPHA,[M2]:e.SRC_ALPHA_SATURATE,[v2]:e.DST_COLOR,[x2]:e.DST_ALPHA,[y2]:e.ONE_MINUS_SRC_COLOR,[h_]:e.ONE_MINUS_SRC_ALPHA,[b2]:e.ONE_MINUS_DST_COLOR,[_2]:e.ONE_MINUS_DST_ALPHA,[S2]:e.CONSTANT_COLOR,[w2]:e.ONE_MINUS_CONSTANT_COLOR,[T2]:e.CONSTANT_ALPHA,[E2]:e.ONE_MINUS_CONSTANT_ALPHA};function Ot(N,et,j,vt,dt,xt,Nt,Jt,ht,Ut){if(N===qo){g===!0&&(K(e.BLEND),g=!1);return}if(g===!1&&(rt(e.BLEND),g=!0),N!==c2){if(N!==m||Ut!==C){if((x!==Yo||M!==Yo)&&(e.blendEquation(e.FUNC_ADD),x=Yo,M=Yo),Ut)switch(N){case Il:e.blendFuncSeparate(e.ONE,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case l_:e.blendFunc(e.ONE,e.ONE);break;case c_:e.blendFuncSeparate(e.ZERO,e.ONE_MINUS_SRC_COLOR,e.ZERO,e.ONE);break;case u_:e.blendFuncSeparate(e.DST_COLOR,e.ONE_MINUS_SRC_ALPHA,e.ZERO,e.ONE);break;default:Gt("WebGLState: Invalid blending: ",N);break}else switch(N){case Il:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case l_:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE,e.ONE,e.ONE);break;case c_:Gt("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case u_:Gt("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:Gt("WebGLState: Invalid blending: ",N);break}S=null,v=null,b=null,_=null,w.set(0,0,0),R=0,m=N,C=Ut}return}dt=dt||et,xt=xt||j,Nt=Nt||vt,(et!==x||dt!==M)&&(e.blendEquationSeparate(It[et],It[dt]),x=et,M=dt),(j!==S||vt!==v||xt!==b||Nt!==_)&&(e.blendFuncSeparate(pt[j],pt[vt],pt[xt],pt[Nt]),S=j,v=vt,b=xt,_=Nt),(Jt.equals(w)===!1||ht!==R)&&(e.blendColor(Jt.r,Jt.g,Jt.b,ht),w.copy(Jt),R=ht),m=N,C=!1}function Ht(N,et){N.side===Di?K(e.CULL_FACE):rt(e.CULL_FACE);let j=N.side===Gn;et&&(j=!j),le(j),N.blending===Il&&N.transparent===!1?Ot(qo):Ot(N.blending,N.blendEquation,N.blendSrc,N.blendDst,N.blendEquationAlpha,N.blendSrcAlpha,N.blendDstAlpha,N.blendColor,N.blendAlpha,N.premultipliedAlpha),o.setFunc(N.depthFunc),o.setTest(N.depthTest),o.setMask(N.depthWrite),s.setMask(N.colorWrite);let vt=N.stencilWrite;a.setTest(vt),vt&&(a.setMask(N.stencilWriteMask),a.setFunc(N.stencilFunc,N.stencilRef,N.stencilFuncMask),a.setOp(N.stencilFail,N.stencilZFail,N.stencilZPass)),Ge(N.polygonOffset,N.polygonOffsetFactor,N.polygonOffsetUnits),N.alphaToCoverage===!0?rt(e.SAMPLE_ALPHA_TO_COVERAGE):K(e.SAMPLE_ALPHA_TO_COVERAGE)}function le(N){A!==N&&(N?e.frontFace(e.CW):e.frontFace(e.CCW),A=N)}function oe(N){N!==o2?(rt(e.CULL_FACE),N!==L&&(N===a_?e.cullFace(e.BACK):N===a2?e.cullFace(e.FRONT):e.cullFace(e.FRONT_AND_BACK))):K(e.CULL_FACE),L=N}function tn(N){N!==B&&(U&&e.lineWidth(N),B=N)}function Ge(N,et,j){N?(rt(e.POLYGON_OFFSET_FILL),(P!==et||D!==j)&&(P=et,D=j,o.getReversed()&&(et=-et,j=-j),e.polygonOffset(et,j))):K(e.POLYGON_OFFSET_FILL)}function Wn(N){N?rt(e.SCISSOR_TEST):K(e.SCISSOR_TEST)}function Cn(N){N===void 0&&(N=e.TEXTURE0+z-1),V!==N&&(e.activeTexture(N),V=N)}function $n(N,et,j){j===void 0&&(V===null?j=e.TEXTURE0+z-1:j=V);let vt=q[j];vt===void 0&&(vt={type:void 0,texture:void 0},q[j]=vt),(vt.type!==N||vt.texture!==et)&&(V!==j&&(e.activeTexture(j),V=j),e.bindTexture(N,et||ot[N]),vt.type=N,vt.texture=et)}function G(){let N=q[V];N!==void 0&&N.type!==void 0&&(e.bindTexture(N.type,null),N.type=void 0,N.texture=void 0)}function Xn(){try{e.compressedTexImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function be(){try{e.compressedTexImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Me(){try{e.texSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function mt(){try{e.texSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Re(){try{e.compressedTexSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Dt(){try{e.compressedTexSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function zt(){try{e.texStorage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function I(){try{e.texStorage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function T(){try{e.texImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function H(){try{e.texImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function ut(N){return h[N]!==void 0?h[N]:e.getParameter(N)}function nt(N,et){h[N]!==et&&(e.pixelStorei(N,et),h[N]=et)}function yt(N){$.equals(N)===!1&&(e.scissor(N.x,N.y,N.z,N.w),$.copy(N))}function Mt(N){at.equals(N)===!1&&(e.viewport(N.x,N.y,N.z,N.w),at.copy(N))}function Q(N,et){let j=c.get(et);j===void 0&&(j=new WeakMap,c.set(et,j));let vt=j.get(N);vt===void 0&&(vt=e.getUniformBlockIndex(et,N.name),e.uniformBlockBinding(et,vt,vt),j.set(N,vt))}function tt(N,et,j){let dt=c.get(et).get(N);l[dt]!==j&&(e.bindBufferBase(e.UNIFORM_BUFFER,dt,j),l[dt]=j)}function _t(){e.disable(e.BLEND),e.disable(e.CULL_FACE),e.disable(e.DEPTH_TEST),e.disable(e.POLYGON_OFFSET_FILL),e.disable(e.SCISSOR_TEST),e.disable(e.STENCIL_TEST),e.disable(e.SAMPLE_ALPHA_TO_COVERAGE),e.blendEquation(e.FUNC_ADD),e.blendFunc(e.ONE,e.ZERO),e.blendFuncSeparate(e.ONE,e.ZERO,e.ONE,e.ZERO),e.blendColor(0,0,0,0),e.colorMask(!0,!0,!0,!0),e.clearColor(0,0,0,0),e.depthMask(!0),e.depthFunc(e.LESS),o.setReversed(!1),e.clearDepth(1),e.stencilMask(4294967295),e.stencilFunc(e.ALWAYS,0,4294967295),e.stencilOp(e.KEEP,e.KEEP,e.KEEP),e.clearStencil(0),e.cullFace(e.BACK),e.frontFace(e.CCW),e.polygonOffset(0,0),e.activeTexture(e.TEXTURE0),e.bindFramebuffer(e.FRAMEBUFFER,null),e.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),e.bindFramebuffer(e.READ_FRAMEBUFFER,null),e.useProgram(null),e.lineWidth(1),e.scissor(0,0,e.canvas.width,e.canvas.height),e.viewport(0,0,e.canvas.width,e.canvas.height),e.pixelStorei(e.PACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,!1),e.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),e.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,e.BROWSER_DEFAULT_WEBGL),e.pixelStorei(e.PACK_ROW_LENGTH,0),e.pixelStorei(e.PACK_SKIP_PIXELS,0),e.pixelStorei(e.PACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_ROW_LENGTH,0),e.pixelStorei(e.UNPACK_IMAGE_HEIGHT,0),e.pixelStorei(e.UNPACK_SKIP_PIXELS,0),e.pixelStorei(e.UNPACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_SKIP_IMAGES,0),u={},h={},V=null,q={},f={},l={},d=new WeakMap,p=[],y=null,g=!1,m=null,x=null,S=null,v=null,M=null,b=null,_=null,w=new kt(0,0,0),R=0,C=!1,A=null,L=null,B=null,P=null,D=null,$.set(0,0,e.canvas.width,e.canvas.height),at.set(0,0,e.canvas.width,e.canvas.height),s.reset(),o.reset(),a.reset()}return{buffers:{color:s,depth:o,stencil:a},enable:rt,disable:K,bindFramebuffer:gt,drawBuffers:ct,useProgram:J,setBlending:Ot,setMaterial:Ht,setFlipSided:le,setCullFace:oe,setLineWidth:tn,setPolygonOffset:Ge,setScissorTest:Wn,activeTexture:Cn,bindTexture:$n,unbindTexture:G,compressedTexImage2D:Xn,compressedTexImage3D:be,texImage2D:T,texImage3D:H,pixelStorei:nt,getParameter:ut,updateUBOMapping:Q,uniformBlockBinding:tt,texStorage2D:zt,texStorage3D:I,texSubImage2D:Me,texSubImage3D:mt,compressedTexSubImage2D:Re,compressedTexSubImage3D:Dt,scissor:yt,viewport:Mt,reset:_t}}function c6(e,t,n,i,r,s,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new Bt,u=new WeakMap,h=new Set,f,d=new WeakMap,p=new Set,y=new FinalizationRegistry(I=>p.delete(I)),g=!1;try{g=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(I,T){return g?new OffscreenCanvas(I,T):Yc("canvas")}function x(I,T,H){let ut=1,nt=zt(I);if((nt.width>H||nt.height>H)&&(ut=H/Math.max(nt.width,nt.height)),ut<1)if(typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&I instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&I instanceof ImageBitmap||typeof VideoFrame<"u"&&I instanceof VideoFrame){let yt=Math.floor(ut*nt.width),Mt=Math.floor(ut*nt.height);f===void 0&&(f=m(yt,Mt));let Q=T?m(yt,Mt):f;return Q.width=yt,Q.height=Mt,Q.getContext("2d").drawImage(I,0,0,yt,Mt),Ft("WebGLRenderer: Texture has been resized from ("+nt.width+"x"+nt.height+") to ("+yt+"x"+Mt+")."),Q}else return"data"in I&&Ft("WebGLRenderer: Image in DataTexture is too big ("+nt.width+"x"+nt.height+")."),I;return I}function S(I){return I.generateMipmaps}function v(I){e.generateMipmap(I)}function M(I){return I.isWebGLCubeRenderTarget?e.TEXTURE_CUBE_MAP:I.isWebGL3DRenderTarget?e.TEXTURE_3D:I.isWebGLArrayRenderTarget||I.isCompressedArrayTexture?e.TEXTURE_2D_ARRAY:e.TEXTURE_2D}function b(I,T,H,ut,nt,yt=!1){if(I!==null){if(e[I]!==void 0)return e[I];Ft("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+I+"'")}let Mt;ut&&(Mt=t.get("EXT_texture_norm16"),Mt||Ft("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let Q=T;if(T===e.RED&&(H===e.FLOAT&&(Q=e.R32F),H===e.HALF_FLOAT&&(Q=e.R16F),H===e.UNSIGNED_BYTE&&(Q=e.R8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.R16_EXT),H===e.SHORT&&Mt&&(Q=Mt.R16_SNORM_EXT)),T===e.RED_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.R8UI),H===e.UNSIGNED_SHORT&&(Q=e.R16UI),H===e.UNSIGNED_INT&&(Q=e.R32UI),H===e.BYTE&&(Q=e.R8I),H===e.SHORT&&(Q=e.R16I),H===e.INT&&(Q=e.R32I)),T===e.RG&&(H===e.FLOAT&&(Q=e.RG32F),H===e.HALF_FLOAT&&(Q=e.RG16F),H===e.UNSIGNED_BYTE&&(Q=e.RG8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RG16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RG16_SNORM_EXT)),T===e.RG_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RG8UI),H===e.UNSIGNED_SHORT&&(Q=e.RG16UI),H===e.UNSIGNED_INT&&(Q=e.RG32UI),H===e.BYTE&&(Q=e.RG8I),H===e.SHORT&&(Q=e.RG16I),H===e.INT&&(Q=e.RG32I)),T===e.RGB_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGB8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGB16UI),H===e.UNSIGNED_INT&&(Q=e.RGB32UI),H===e.BYTE&&(Q=e.RGB8I),H===e.SHORT&&(Q=e.RGB16I),H===e.INT&&(Q=e.RGB32I)),T===e.RGBA_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGBA8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGBA16UI),H===e.UNSIGNED_INT&&(Q=e.RGBA32UI),H===e.BYTE&&(Q=e.RGBA8I),H===e.SHORT&&(Q=e.RGBA16I),H===e.INT&&(Q=e.RGBA32I)),T===e.RGB&&(H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGB16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGB16_SNORM_EXT),H===e.UNSIGNED_INT_5_9_9_9_REV&&(Q=e.RGB9_E5),H===e.UNSIGNED_INT_10F_11F_11F_REV&&(Q=e.R11F_G11F_B10F)),T===e.RGBA){let tt=yt?qc:ie.getTransfer(nt);H===e.FLOAT&&(Q=e.RGBA32F),H===e.HALF_FLOAT&&(Q=e.RGBA16F),H===e.UNSIGNED_BYTE&&(Q=tt===he?e.SRGB8_ALPHA8:e.RGBA8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGBA16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGBA16_SNORM_EXT),H===e.UNSIGNED_SHORT_4_4_4_4&&(Q=e.RGBA4),H===e.UNSIGNED_SHORT_5_5_5_1&&(Q=e.RGB5_A1)}return(Q===e.R16F||Q===e.R32F||Q===e.RG16F||Q===e.RG32F||Q===e.RGBA16F||Q===e.RGBA32F)&&t.get("EXT_color_buffer_float"),Q}function _(I,T){let H;return I?T===null||T===Ji||T===Ko?H=e.DEPTH24_STENCIL8:T===ji?H=e.DEPTH32F_STENCIL8:T===Dl&&(H=e.DEPTH24_STENCIL8,Ft("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):T===null||T===Ji||T===Ko?H=e.DEPTH_COMPONENT24:T===ji?H=e.DEPTH_COMPONENT32F:T===Dl&&(H=e.DEPTH_COMPONENT16),H}function w(I,T){return S(I)===!0||I.isFramebufferTexture&&I.minFilter!==hn&&I.minFilter!==kn?Math.log2(Math.max(T.width,T.height))+1:I.mipmaps.length>0?I.mipmaps.length:I.isCompressedTexture&&Array.isArray(I.image)?T.mipmaps.length:1}function R(I){let T=new WeakRef(I);i.get(I).__ref=T,p.add(T),y.register(I,T,T)}function C(I){let T=i.get(I).__ref;T!==void 0&&(p.delete(T),y.unregister(T))}function A(I){B(I.target)}function L(I){P(I.target)}function B(I){I.removeEventListener("dispose",A),C(I),z(I),I.isVideoTexture&&u.delete(I),I.isHTMLTexture&&h.delete(I)}function P(I){I.removeEventListener("dispose",L),C(I),Z(I)}function D(){for(let I of p){let T=I.deref();T!==void 0&&(T.isRenderTarget===!0?P(T):B(T))}p.clear(),h.clear()}function z(I){let T=i.get(I);if(T.__webglInit===void 0)return;let H=I.source,ut=d.get(H);if(ut){let nt=ut[T.__cacheKey];nt.usedTimes--,nt.usedTimes===0&&U(I),Object.keys(ut).length===0&&d.delete(H)}i.remove(I)}function U(I){let T=i.get(I);e.deleteTexture(T.__webglTexture);let H=I.source,ut=d.get(H);delete ut[T.__cacheKey],o.memory.textures--}function Z(I){let T=i.get(I);T.__depthDisposeCallback&&T.__depthDisposeCallback();let H=I.depthTexture;if(H&&H.renderTarget===I&&B(H),I.isWebGLCubeRenderTarget)for(let nt=0;nt<6;nt++){if(Array.isArray(T.__webglFramebuffer[nt]))for(let yt=0;yt<T.__webglFramebuffer[nt].length;yt++)e.deleteFramebuffer(T.__webglFramebuffer[nt][yt]);else e.deleteFramebuffer(T.__webglFramebuffer[nt]);T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer[nt])}else{if(Array.isArray(T.__webglFramebuffer))for(let nt=0;nt<T.__webglFramebuffer.length;nt++)e.deleteFramebuffer(T.__webglFramebuffer[nt]);else e.deleteFramebuffer(T.__webglFramebuffer);if(T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer),T.__webglMultisampledFramebuffer&&e.deleteFramebuffer(T.__webglMultisampledFramebuffer),T.__webglColorRenderbuffer)for(let nt=0;nt<T.__webglColorRenderbuffer.length;nt++)T.__webglColorRenderbuffer[nt]&&e.deleteRenderbuffer(T.__webglColorRenderbuffer[nt]);T.__webglDepthRenderbuffer&&e.deleteRenderbuffer(T.__webglDepthRenderbuffer)}let ut=I.textures;for(let nt=0,yt=ut.length;nt<yt;nt++){let Mt=i.get(ut[nt]);Mt.__webglTexture&&(e.deleteTexture(Mt.__webglTexture),o.memory.textures--),i.remove(ut[nt])}i.remove(I)}let F=0;function V(){F=0}function q(){return F}function st(I){F=I}function lt(){let I=F;return I>=r.maxTextures&&Ft("WebGLTextures: Trying to use "+(I+1)+" texture units while this GPU supports only "+r.maxTextures),F+=1,I}function $(I){let T=[];return T.push(I.wrapS),T.push(I.wrapT),T.push(I.wrapR||0),T.push(I.magFilter),T.push(I.minFilter),T.push(I.anisotropy),T.push(I.internalFormat),T.push(I.format),T.push(I.type),T.push(I.generateMipmaps),T.push(I.mipmapsAutoUpdate),T.push(I.premultiplyAlpha),T.push(I.flipY),T.push(I.unpackAlignment),T.push(I.colorSpace),T.join()}function at(I,T){let H=i.get(I);if(I.isVideoTexture&&Re(I),I.isRenderTargetTexture===!1&&I.isExternalTexture!==!0&&I.version>0&&H.__version!==I.version){let ut=I.image;if(ut===null)Ft("WebGLRenderer: Texture marked for update but no image data found.");else if(ut.complete===!1)Ft("WebGLRenderer: Texture marked for update but image is incomplete");else{Ht(H,I,T);return}}else I.isExternalTexture&&(H.__webglTexture=I.sourceTexture?I.sourceTexture:null);n.bindTexture(e.TEXTURE_2D,H.__webglTexture,e.TEXTURE0+T)}function ft(I,T){let H=i.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&H.__version!==I.version){Ht(H,I,T);return}else I.isExternalTexture&&(H.__webglTexture=I.sourceTexture?I.sourceTexture:null);n.bindTexture(e.TEXTURE_2D_ARRAY,H.__webglTexture,e.TEXTURE0+T)}function ot(I,T){let H=i.get(I);if(I.isRenderTargetTexture===!1&&I.version>0&&H.__version!==I.version){Ht(H,I,T);return}n.bindTexture(e.TEXTURE_3D,H.__webglTexture,e.TEXTURE0+T)}function rt(I,T){let H=i.get(I);if(I.version>0&&H.__version!==I.version){le(H,I,T);return}n.bindTexture(e.TEXTURE_CUBE_MAP,H.__webglTexture,e.TEXTURE0+T)}let K={[gd]:e.REPEAT,[Mr]:e.CLAMP_TO_EDGE,[yd]:e.MIRRORED_REPEAT},gt={[hn]:e.NEAREST,[R2]:e.NEAREST_MIPMAP_NEAREST,[pu]:e.NEAREST_MIPMAP_LINEAR,[kn]:e.LINEAR,[Xd]:e.LINEAR_MIPMAP_NEAREST,[fs]:e.LINEAR_MIPMAP_LINEAR},ct={[D2]:e.NEVER,[P_]:e.ALWAYS,[N2]:e.LESS,[C_]:e.LEQUAL,[U2]:e.EQUAL,[R_]:e.GEQUAL,[F2]:e.GREATER,[O2]:e.NOTEQUAL};function J(I,T){if(T.type===ji&&t.has("OES_texture_float_linear")===!1&&(T.magFilter===kn||T.magFilter===Xd||T.magFilter===pu||T.magFilter===fs||T.minFilter===kn||T.minFilter===Xd||T.minFilter===pu||T.minFilter===fs)&&Ft("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),e.texParameteri(I,e.TEXTURE_WRAP_S,K[T.wrapS]),e.texParameteri(I,e.TEXTURE_WRAP_T,K[T.wrapT]),(I===e.TEXTURE_3D||I===e.TEXTURE_2D_ARRAY)&&e.texParameteri(I,e.TEXTURE_WRAP_R,K[T.wrapR]),e.texParameteri(I,e.TEXTURE_MAG_FILTER,gt[T.magFilter]),e.texParameteri(I,e.TEXTURE_MIN_FILTER,gt[T.minFilter]),T.compareFunction&&(e.texParameteri(I,e.TEXTURE_COMPARE_MODE,e.COMPARE_REF_TO_TEXTURE),e.texParameteri(I,e.TEXTURE_COMPARE_FUNC,ct[T.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(T.magFilter===hn||T.minFilter!==pu&&T.minFilter!==fs||T.type===ji&&t.has("OES_texture_float_linear")===!1)return;if(T.anisotropy>1||i.get(T).__currentAnisotropy){let H=t.get("EXT_texture_filter_anisotropic");e.texParameterf(I,H.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(T.anisotropy,r.getMaxAnisotropy())),i.get(T).__currentAnisotropy=T.anisotropy}}}function It(I,T){let H=!1;I.__webglInit===void 0&&(I.__webglInit=!0,T.addEventListener("dispose",A),R(T));let ut=T.source,nt=d.get(ut);nt===void 0&&(nt={},d.set(ut,nt));let yt=$(T);if(yt!==I.__cacheKey){nt[yt]===void 0&&(nt[yt]={texture:e.createTexture(),usedTimes:0},o.memory.textures++,H=!0),nt[yt].usedTimes++;let Mt=nt[I.__cacheKey];Mt!==void 0&&(nt[I.__cacheKey].usedTimes--,Mt.usedTimes===0&&U(T)),I.__cacheKey=yt,I.__webglTexture=nt[yt].texture}return H}function pt(I,T,H){return Math.floor(Math.floor(I/H)/T)}function Ot(I,T,H,ut){let yt=I.updateRanges;if(yt.length===0)n.texSubImage2D(e.TEXTURE_2D,0,0,0,T.width,T.height,H,ut,T.data);else{yt.sort((N,et)=>N.start-et.start);let Mt=0;for(let N=1;N<yt.length;N++){let et=yt[Mt],j=yt[N],vt=et.start+et.count,dt=pt(j.start,T.width,4),xt=pt(et.start,T.width,4);j.start<=vt+1&&dt===xt&&pt(j.start+j.count-1,T.width,4)===dt?et.count=Math.max(et.count,j.start+j.count-et.start):(++Mt,yt[Mt]=j)}yt.length=Mt+1;let Q=n.getParameter(e.UNPACK_ROW_LENGTH),tt=n.getParameter(e.UNPACK_SKIP_PIXELS),_t=n.getParameter(e.UNPACK_SKIP_ROWS);n.pixelStorei(e.UNPACK_ROW_LENGTH,T.width);for(let N=0,et=yt.length;N<et;N++){let j=yt[N],vt=Math.floor(j.start/4),dt=Math.ceil(j.count/4),xt=vt%T.width,Nt=Math.floor(vt/T.width),Jt=dt,ht=1;n.pixelStorei(e.UNPACK_SKIP_PIXELS,xt),n.pixelStorei(e.UNPACK_SKIP_ROWS,Nt),n.texSubImage2D(e.TEXTURE_2D,0,xt,Nt,Jt,ht,H,ut,T.data)}I.clearUpdateRanges(),n.pixelStorei(e.UNPACK_ROW_LENGTH,Q),n.pixelStorei(e.UNPACK_SKIP_PIXELS,tt),n.pixelStorei(e.UNPACK_SKIP_ROWS,_t)}}function Ht(I,T,H){let ut=e.TEXTURE_2D;(T.isDataArrayTexture||T.isCompressedArrayTexture)&&(ut=e.TEXTURE_2D_ARRAY),T.isData3DTexture&&(ut=e.TEXTURE_3D);let nt=It(I,T),yt=T.source;n.bindTexture(ut,I.__webglTexture,e.TEXTURE0+H);let Mt=i.get(yt);if(yt.version!==Mt.__version||nt===!0){if(n.activeTexture(e.TEXTURE0+H),(typeof ImageBitmap<"u"&&T.image instanceof ImageBitmap)===!1){let ht=ie.getPrimaries(ie.workingColorSpace),Ut=T.colorSpace===ds?null:ie.getPrimaries(T.colorSpace),Kt=T.colorSpace===ds||ht===Ut?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,Kt)}n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment);let tt=x(T.image,!1,r.maxTextureSize);tt=Dt(T,tt);let _t=s.convert(T.format,T.colorSpace),N=s.convert(T.type),et=b(T.internalFormat,_t,N,T.normalized,T.colorSpace,T.isVideoTexture);J(ut,T);let j,vt=T.mipmaps,dt=T.isVideoTexture!==!0,xt=Mt.__version===void 0||nt===!0,Nt=yt.dataReady,Jt=w(T,tt);if(T.isDepthTexture)et=_(T.format===hs,T.type),xt&&(dt?n.texStorage2D(e.TEXTURE_2D,1,et,tt.width,tt.height):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,null));else if(T.isDataTexture)if(vt.length>0){dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data);T.generateMipmaps=!1}else dt?(xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,tt.width,tt.height),Nt&&Ot(T,tt,_t,N)):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,tt.data);else if(T.isCompressedTexture)if(T.isCompressedArrayTexture){dt&&xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Jt,et,vt[0].width,vt[0].height,tt.depth);for(let ht=0,Ut=vt.length;ht<Ut;ht++)if(j=vt[ht],T.format!==tr)if(_t!==null)if(dt){if(Nt)if(T.layerUpdates.size>0){let Kt=z_(j.width,j.height,T.format,T.type);for(let Et of T.layerUpdates){let pe=j.data.subarray(Et*Kt/j.data.BYTES_PER_ELEMENT,(Et+1)*Kt/j.data.BYTES_PER_ELEMENT);n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,Et,j.width,j.height,1,_t,pe)}}else n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,j.data)}else n.compressedTexImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,j.data,0,0);else Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else dt?Nt&&n.texSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,N,j.data):n.texImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,_t,N,j.data);T.layerUpdates.size>0&&T.clearLayerUpdates()}else{dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],T.format!==tr?_t!==null?dt?Nt&&n.compressedTexSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,j.data):n.compressedTexImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,j.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data)}else if(T.isDataArrayTexture)if(dt){if(xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Jt,et,tt.width,tt.height,tt.depth),Nt)if(T.layerUpdates.size>0){let ht=z_(tt.width,tt.height,T.format,T.type);for(let Ut of T.layerUpdates){let Kt=tt.data.subarray(Ut*ht/tt.data.BYTES_PER_ELEMENT,(Ut+1)*ht/tt.data.BYTES_PER_ELEMENT);n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,Ut,tt.width,tt.height,1,_t,N,Kt)}T.clearLayerUpdates()}else n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)}else n.texImage3D(e.TEXTURE_2D_ARRAY,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isData3DTexture)dt?(xt&&n.texStorage3D(e.TEXTURE_3D,Jt,et,tt.width,tt.height,tt.depth),Nt&&n.texSubImage3D(e.TEXTURE_3D,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)):n.texImage3D(e.TEXTURE_3D,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isFramebufferTexture){if(xt)if(dt)n.texStorage2D(e.TEXTURE_2D,Jt,et,tt.width,tt.height);else{let ht=tt.width,Ut=tt.height;for(let Kt=0;Kt<Jt;Kt++)n.texImage2D(e.TEXTURE_2D,Kt,et,ht,Ut,0,_t,N,null),ht>>=1,Ut>>=1}}else if(T.isHTMLTexture){if("texElementImage2D"in e){let ht=e.canvas;if(ht.hasAttribute("layoutsubtree")||ht.setAttribute("layoutsubtree","true"),tt.parentNode!==ht){ht.appendChild(tt),h.add(T),ht.onpaint=Ut=>{let Kt=Ut.changedElements;for(let Et of h)Kt.includes(Et.image)&&(Et.needsUpdate=!0)},ht.requestPaint();return}if(e.texElementImage2D.length===3)e.texElementImage2D(e.TEXTURE_2D,e.RGBA8,tt);else{let Kt=e.RGBA,Et=e.RGBA,pe=e.UNSIGNED_BYTE;e.texElementImage2D(e.TEXTURE_2D,0,Kt,Et,pe,tt)}e.texParameteri(e.TEXTURE_2D,e.TEXTURE_MIN_FILTER,e.LINEAR),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_S,e.CLAMP_TO_EDGE),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_T,e.CLAMP_TO_EDGE)}}else if(vt.length>0){if(dt&&xt){let ht=zt(vt[0]);n.texStorage2D(e.TEXTURE_2D,Jt,et,ht.width,ht.height)}for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,_t,N,j):n.texImage2D(e.TEXTURE_2D,ht,et,_t,N,j);T.generateMipmaps=!1}else if(dt){if(xt){let ht=zt(tt);n.texStorage2D(e.TEXTURE_2D,Jt,et,ht.width,ht.height)}Nt&&n.texSubImage2D(e.TEXTURE_2D,0,0,0,_t,N,tt)}else n.texImage2D(e.TEXTURE_2D,0,et,_t,N,tt);S(T)&&T.mipmapsAutoUpdate===!0&&v(ut),Mt.__version=yt.version,T.onUpdate&&T.onUpdate(T)}I.__version=T.version}function le(I,T,H){if(T.image.length!==6)return;let ut=It(I,T),nt=T.source;n.bindTexture(e.TEXTURE_CUBE_MAP,I.__webglTexture,e.TEXTURE0+H);let yt=i.get(nt);if(nt.version!==yt.__version||ut===!0){n.activeTexture(e.TEXTURE0+H);let Mt=ie.getPrimaries(ie.workingColorSpace),Q=T.colorSpace===ds?null:ie.getPrimaries(T.colorSpace),tt=T.colorSpace===ds||Mt===Q?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,tt);let _t=T.isCompressedTexture||T.image[0].isCompressedTexture,N=T.image[0]&&T.image[0].isDataTexture,et=[];for(let Et=0;Et<6;Et++)!_t&&!N?et[Et]=x(T.image[Et],!0,r.maxCubemapSize):et[Et]=N?T.image[Et].image:T.image[Et],et[Et]=Dt(T,et[Et]);let j=et[0],vt=s.convert(T.format,T.colorSpace),dt=s.convert(T.type),xt=b(T.internalFormat,vt,dt,T.normalized,T.colorSpace),Nt=T.isVideoTexture!==!0,Jt=yt.__version===void 0||ut===!0,ht=nt.dataReady,Ut=w(T,j);J(e.TEXTURE_CUBE_MAP,T);let Kt;if(T.isDepthTexture){if(xt=_(T.format===hs,T.type),Jt)if(Nt)n.texStorage2D(e.TEXTURE_CUBE_MAP,1,xt,j.width,j.height);else for(let Et=0;Et<6;Et++)n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,j.width,j.height,0,vt,dt,null)}else if(_t){Nt&&Jt&&n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,j.width,j.height);for(let Et=0;Et<6;Et++){Kt=et[Et].mipmaps;for(let pe=0;pe<Kt.length;pe++){let en=Kt[pe];T.format!==tr?vt!==null?Nt?ht&&n.compressedTexSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,0,0,en.width,en.height,vt,en.data):n.compressedTexImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,xt,en.width,en.height,0,en.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,0,0,en.width,en.height,vt,dt,en.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe,xt,en.width,en.height,0,vt,dt,en.data)}}}else{if(Kt=T.mipmaps,Nt&&Jt){Kt.length>0&&Ut++;let Et=zt(et[0]);n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,Et.width,Et.height)}for(let Et=0;Et<6;Et++)if(N){Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,0,0,et[Et].width,et[Et].height,vt,dt,et[Et].data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,et[Et].width,et[Et].height,0,vt,dt,et[Et].data);for(let pe=0;pe<Kt.length;pe++){let ps=Kt[pe].image[Et].image;Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,0,0,ps.width,ps.height,vt,dt,ps.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,xt,ps.width,ps.height,0,vt,dt,ps.data)}}else{Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,0,0,vt,dt,et[Et]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,0,xt,vt,dt,et[Et]);for(let pe=0;pe<Kt.length;pe++){let en=Kt[pe];Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,0,0,vt,dt,en.image[Et]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Et,pe+1,xt,vt,dt,en.image[Et])}}}S(T)&&T.mipmapsAutoUpdate===!0&&v(e.TEXTURE_CUBE_MAP),yt.__version=nt.version,T.onUpdate&&T.onUpdate(T)}I.__version=T.version}function oe(I,T,H,ut,nt,yt){let Mt=s.convert(H.format,H.colorSpace),Q=s.convert(H.type),tt=b(H.internalFormat,Mt,Q,H.normalized,H.colorSpace),_t=i.get(T),N=i.get(H);if(N.__renderTarget=T,!_t.__hasExternalTextures){let et=Math.max(1,T.width>>yt),j=Math.max(1,T.height>>yt);nt===e.TEXTURE_3D||nt===e.TEXTURE_2D_ARRAY?n.texImage3D(nt,yt,tt,et,j,T.depth,0,Mt,Q,null):n.texImage2D(nt,yt,tt,et,j,0,Mt,Q,null)}n.bindFramebuffer(e.FRAMEBUFFER,I),mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,ut,nt,N.__webglTexture,0,Me(T)):(nt===e.TEXTURE_2D||nt>=e.TEXTURE_CUBE_MAP_POSITIVE_X&&nt<=e.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&e.framebufferTexture2D(e.FRAMEBUFFER,ut,nt,N.__webglTexture,yt),n.bindFramebuffer(e.FRAMEBUFFER,null)}function tn(I,T,H){if(e.bindRenderbuffer(e.RENDERBUFFER,I),T.depthBuffer){let ut=T.depthTexture,nt=ut&&ut.isDepthTexture?ut.type:null,yt=_(T.stencilBuffer,nt),Mt=T.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Me(T),yt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Me(T),yt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,yt,T.width,T.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,Mt,e.RENDERBUFFER,I)}else{let ut=T.textures;for(let nt=0;nt<ut.length;nt++){let yt=ut[nt],Mt=s.convert(yt.format,yt.colorSpace),Q=s.convert(yt.type),tt=b(yt.internalFormat,Mt,Q,yt.normalized,yt.colorSpace);mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Me(T),tt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Me(T),tt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,tt,T.width,T.height)}}e.bindRenderbuffer(e.RENDERBUFFER,null)}function Ge(I,T,H){let ut=T.isWebGLCubeRenderTarget===!0;if(n.bindFramebuffer(e.FRAMEBUFFER,I),!(T.depthTexture&&T.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let nt=i.get(T.depthTexture);nt.__renderTarget=T;let yt=ut?T.depthTexture.image[0]:T.depthTexture.image;(!nt.__webglTexture||yt.width!==T.width||yt.height!==T.height)&&(yt.width=T.width,yt.height=T.height,T.depthTexture.needsUpdate=!0),ut?rt(T.depthTexture,0):at(T.depthTexture,0);let Mt=nt.__webglTexture,Q=Me(T),tt=ut?e.TEXTURE_CUBE_MAP_POSITIVE_X+H:e.TEXTURE_2D,_t=T.depthTexture.format===hs?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;if(T.depthTexture.format===ss)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else if(T.depthTexture.format===hs)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Wn(I){let T=i.get(I),H=I.isWebGLCubeRenderTarget===!0;if(T.__boundDepthTexture!==I.depthTexture){let ut=I.depthTexture;if(T.__depthDisposeCallback&&T.__depthDisposeCallback(),ut){let nt=()=>{delete T.__boundDepthTexture,delete T.__depthDisposeCallback,ut.removeEventListener("dispose",nt)};ut.addEventListener("dispose",nt),T.__depthDisposeCallback=nt}T.__boundDepthTexture=ut}if(I.depthTexture&&!T.__autoAllocateDepthBuffer)if(H)for(let ut=0;ut<6;ut++)Ge(T.__webglFramebuffer[ut],I,ut);else I.texture.mipmaps.length>0?Ge(T.__webglFramebuffer[0],I,0):Ge(T.__webglFramebuffer,I,0);else if(H){T.__webglDepthbuffer=[];for(let ut=0;ut<6;ut++)if(n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[ut]),T.__webglDepthbuffer[ut]===void 0)T.__webglDepthbuffer[ut]=e.createRenderbuffer(),tn(T.__webglDepthbuffer[ut],I,!1);else{let nt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer[ut];e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}}else if(I.texture.mipmaps.length>0?n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[0]):n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer),T.__webglDepthbuffer===void 0)T.__webglDepthbuffer=e.createRenderbuffer(),tn(T.__webglDepthbuffer,I,!1);else{let nt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer;e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}n.bindFramebuffer(e.FRAMEBUFFER,null)}function Cn(I,T,H){let ut=i.get(I);T!==void 0&&oe(ut.__webglFramebuffer,I,I.texture,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,0),H!==void 0&&Wn(I)}function $n(I){let T=I.texture,H=i.get(I),ut=i.get(T);I.addEventListener("dispose",L),R(I);let nt=I.textures,yt=I.isWebGLCubeRenderTarget===!0,Mt=nt.length>1;if(Mt||(ut.__webglTexture===void 0&&(ut.__webglTexture=e.createTexture()),ut.__version=T.version,o.memory.textures++),yt){H.__webglFramebuffer=[];for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0){H.__webglFramebuffer[Q]=[];for(let tt=0;tt<T.mipmaps.length;tt++)H.__webglFramebuffer[Q][tt]=e.createFramebuffer()}else H.__webglFramebuffer[Q]=e.createFramebuffer()}else{if(T.mipmaps.length>0){H.__webglFramebuffer=[];for(let Q=0;Q<T.mipmaps.length;Q++)H.__webglFramebuffer[Q]=e.createFramebuffer()}else H.__webglFramebuffer=e.createFramebuffer();if(Mt)for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=i.get(nt[Q]);_t.__webglTexture===void 0&&(_t.__webglTexture=e.createTexture(),o.memory.textures++)}if(I.samples>0&&mt(I)===!1){H.__webglMultisampledFramebuffer=e.createFramebuffer(),H.__webglColorRenderbuffer=[],n.bindFramebuffer(e.FRAMEBUFFER,H.__webglMultisampledFramebuffer);for(let Q=0;Q<nt.length;Q++){let tt=nt[Q];H.__webglColorRenderbuffer[Q]=e.createRenderbuffer(),e.bindRenderbuffer(e.RENDERBUFFER,H.__webglColorRenderbuffer[Q]);let _t=s.convert(tt.format,tt.colorSpace),N=s.convert(tt.type),et=b(tt.internalFormat,_t,N,tt.normalized,tt.colorSpace,I.isXRRenderTarget===!0),j=Me(I);e.renderbufferStorageMultisample(e.RENDERBUFFER,j,et,I.width,I.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+Q,e.RENDERBUFFER,H.__webglColorRenderbuffer[Q])}e.bindRenderbuffer(e.RENDERBUFFER,null),I.depthBuffer&&(H.__webglDepthRenderbuffer=e.createRenderbuffer(),tn(H.__webglDepthRenderbuffer,I,!0)),n.bindFramebuffer(e.FRAMEBUFFER,null)}}if(yt){n.bindTexture(e.TEXTURE_CUBE_MAP,ut.__webglTexture),J(e.TEXTURE_CUBE_MAP,T);for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[Q][tt],I,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,tt);else oe(H.__webglFramebuffer[Q],I,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,0);S(T)?v(e.TEXTURE_CUBE_MAP):T.mipmaps.length>0&&e.texParameteri(e.TEXTURE_CUBE_MAP,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}else if(Mt){for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=nt[Q],N=i.get(_t),et=e.TEXTURE_2D;(I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(et=I.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(et,N.__webglTexture),J(et,_t),oe(H.__webglFramebuffer,I,_t,e.COLOR_ATTACHMENT0+Q,et,0),S(_t)&&v(et)}n.unbindTexture()}else{let Q=e.TEXTURE_2D;if((I.isWebGL3DRenderTarget||I.isWebGLArrayRenderTarget)&&(Q=I.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(Q,ut.__webglTexture),J(Q,T),T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[tt],I,T,e.COLOR_ATTACHMENT0,Q,tt);else oe(H.__webglFramebuffer,I,T,e.COLOR_ATTACHMENT0,Q,0);S(T)?v(Q):T.mipmaps.length>0&&e.texParameteri(Q,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}I.depthBuffer&&Wn(I)}function G(I){let T=I.textures;for(let H=0,ut=T.length;H<ut;H++){let nt=T[H];if(S(nt)&&nt.mipmapsAutoUpdate===!0){let yt=M(I),Mt=i.get(nt).__webglTexture;n.bindTexture(yt,Mt),v(yt),n.unbindTexture()}}}let Xn=[];function be(I){if(I.samples>0){if(mt(I)===!1){let T=I.textures,H=I.width,ut=I.height,nt=e.COLOR_BUFFER_BIT,yt=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,Mt=i.get(I),Q=T.length>1;if(Q)for(let _t=0;_t<T.length;_t++)n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,null),n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,null,0);n.bindFramebuffer(e.READ_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),I.texture.mipmaps.length>0?n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer[0]):n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer);for(let _t=0;_t<T.length;_t++){if(I.resolveDepthBuffer&&(I.depthBuffer&&(nt|=e.DEPTH_BUFFER_BIT),I.stencilBuffer&&I.resolveStencilBuffer&&(nt|=e.STENCIL_BUFFER_BIT)),Q){e.framebufferRenderbuffer(e.READ_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,N,0)}e.blitFramebuffer(0,0,H,ut,0,0,H,ut,nt,e.NEAREST),l===!0&&(Xn.length=0,Xn.push(e.COLOR_ATTACHMENT0+_t),I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&Xn.push(yt),e.invalidateFramebuffer(e.READ_FRAMEBUFFER,Xn))}if(n.bindFramebuffer(e.READ_FRAMEBUFFER,null),n.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),Q)for(let _t=0;_t<T.length;_t++){n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,N,0)}n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer)}else if(I.depthBuffer&&I.storeMultisampledDepthBuffer===!1&&l){let T=I.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;e.invalidateFramebuffer(e.DRAW_FRAMEBUFFER,[T])}}}function Me(I){return Math.min(r.maxSamples,I.samples)}function mt(I){let T=i.get(I);return I.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&T.__useRenderToTexture!==!1}function Re(I){let T=o.render.frame;u.get(I)!==T&&(u.set(I,T),I.update())}function Dt(I,T){let H=I.colorSpace,ut=I.format,nt=I.type;return I.isCompressedTexture===!0||I.isVideoTexture===!0||H!==Xc&&H!==ds&&(ie.getTransfer(H)===he?(ut!==tr||nt!==ti)&&Ft("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):Gt("WebGLTextures: Unsupported texture color space:",H)),T}function zt(I){return typeof HTMLImageElement<"u"&&I instanceof HTMLImageElement?(c.width=I.naturalWidth||I.width,c.height=I.naturalHeight||I.height):typeof VideoFrame<"u"&&I instanceof VideoFrame?(c.width=I.displayWidth,c.height=I.displayHeight):(c.width=I.width,c.height=I.height),c}this.allocateTextureUnit=lt,this.resetTextureUnits=V,this.getTextureUnits=q,this.setTextureUnits=st,this.setTexture2D=at,this.setTexture2DArray=ft,this.setTexture3D=ot,this.setTextureCube=rt,this.rebindTextures=Cn,this.setupRenderTarget=$n,this.updateRenderTargetMipmap=G,this.updateMultisampleRenderTarget=be,this.setupDepthRenderbuffer=Wn,this.setupFrameBufferTexture=oe,this.useMultisampledRTT=mt,this.dispose=D}function u6(e,t){function n(i,r=ds){let s,o=ie.getTransfer(r);if(i===ti)return e.UNSIGNED_BYTE;if(i===Yd)return e.UNSIGNED_SHORT_4_4_4_4;if(i===Zd)return e.UNSIGNED_SHORT_5_5_5_1;if(i===S_)return e.UNSIGNED_INT_5_9_9_9_REV;if(i===w_)return e.UNSIGNED_INT_10F_11F_11F_REV;if(i===b_)return e.BYTE;if(i===M_)return e.SHORT;if(i===Dl)return e.UNSIGNED_SHORT;if(i===qd)return e.INT;if(i===Ji)return e.UNSIGNED_INT;if(i===ji)return e.FLOAT;if(i===Qi)return e.HALF_FLOAT;if(i===T_)return e.ALPHA;if(i===E_)return e.RGB;if(i===tr)return e.RGBA;if(i===ss)return e.DEPTH_COMPONENT;if(i===hs)return e.DEPTH_STENCIL;if(i===A_)return e.RED;if(i===Kd)return e.RED_INTEGER;if(i===Js)return e.RG;if(i===Jd)return e.RG_INTEGER;if(i===jd)return e.RGBA_INTEGER;if(i===mu||i===gu||i===yu||i===xu)if(o===he)if(s=t.get("WEBGL_compressed_texture_s3tc_srgb"),s!==null){if(i===mu)return s.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(i===gu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(i===yu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(i===xu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(s=t.get("WEBGL_compressed_texture_s3tc"),s!==null){if(i===mu)return s.COMPRESSED_RGB_S3TC_DXT1_EXT;if(i===gu)return s.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(i===yu)return s.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(i===xu)return s.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(i===Qd||i===tp||i===ep||i===np)if(s=t.get("WEBGL_compressed_texture_pvrtc"),s!==null){if(i===Qd)return s.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(i===tp)return s.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(i===ep)return s.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(i===np)return s.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(i===ip||i===rp||i===sp||i===op||i===ap||i===_u||i===lp)if(s=t.get("WEBGL_compressed_texture_etc"),s!==null){if(i===ip||i===rp)return o===he?s.COMPRESSED_SRGB8_ETC2:s.COMPRESSED_RGB8_ETC2;if(i===sp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:s.COMPRESSED_RGBA8_ETC2_EAC;if(i===op)return s.COMPRESSED_R11_EAC;if(i===ap)return s.COMPRESSED_SIGNED_R11_EAC;if(i===_u)return s.COMPRESSED_RG11_EAC;if(i===lp)return s.COMPRESSED_SIGNED_RG11_EAC}else return null;if(i===cp||i===up||i===fp||i===hp||i===dp||i===pp||i===mp||i===gp||i===yp||i===xp||i===_p||i===vp||i===bp||i===Mp)if(s=t.get("WEBGL_compressed_texture_astc"),s!==null){if(i===cp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:s.COMPRESSED_RGBA_ASTC_4x4_KHR;if(i===up)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:s.COMPRESSED_RGBA_ASTC_5x4_KHR;if(i===fp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:s.COMPRESSED_RGBA_ASTC_5x5_KHR;if(i===hp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:s.COMPRESSED_RGBA_ASTC_6x5_KHR;if(i===dp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:s.COMPRESSED_RGBA_ASTC_6x6_KHR;if(i===pp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:s.COMPRESSED_RGBA_ASTC_8x5_KHR;if(i===mp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:s.COMPRESSED_RGBA_ASTC_8x6_KHR;if(i===gp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:s.COMPRESSED_RGBA_ASTC_8x8_KHR;if(i===yp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:s.COMPRESSED_RGBA_ASTC_10x5_KHR;if(i===xp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:s.COMPRESSED_RGBA_ASTC_10x6_KHR;if(i===_p)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:s.COMPRESSED_RGBA_ASTC_10x8_KHR;if(i===vp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:s.COMPRESSED_RGBA_ASTC_10x10_KHR;if(i===bp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:s.COMPRESSED_RGBA_ASTC_12x10_KHR;if(i===Mp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:s.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(i===Sp||i===wp||i===Tp)if(s=t.get("EXT_texture_compression_bptc"),s!==null){if(i===Sp)return o===he?s.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:s.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(i===wp)return s.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(i===Tp)return s.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(i===Ep||i===Ap||i===vu||i===Cp)if(s=t.get("EXT_texture_compression_rgtc"),s!==null){if(i===Ep)return s.COMPRESSED_RED_RGTC1_EXT;if(i===Ap)return s.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(i===vu)return s.COMPRESSED_RED_GREEN_RGTC2_EXT;if(i===Cp)return s.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return i===Ko?e.UNSIGNED_INT_24_8:e[i]!==void 0?e[i]:null}return{convert:n}}var f6=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,h6=`
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

}`,Z_=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,n){if(this.texture===null){let i=new nu(t.texture);(t.depthNear!==n.depthNear||t.depthFar!==n.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=i}}getMesh(t){if(this.texture!==null&&this.mesh===null){let n=t.cameras[0].viewport,i=new Li({vertexShader:f6,fragmentShader:h6,uniforms:{depthColor:{value:this.texture},depthWidth:{value:n.z},depthHeight:{value:n.w}}});this.mesh=new We(new Xo(20,20),i)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},K_=class extends Yi{constructor(t,n){super();let i=this,r=null,s=1,o=null,a="local-floor",l=1,c=null,u=null,h=null,f=null,d=null,p=null,y=typeof XRWebGLBinding<"u",g=new Z_,m={},x=n.getContextAttributes(),S=null,v=null,M=[],b=[],_=new Bt,w=null,R=null,C=new ci;C.viewport=new de;let A=new ci;A.viewport=new de;let L=[C,A],B=new Vd,P=null,D=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function($){let at=M[$];return at===void 0&&(at=new wl,M[$]=at),at.getTargetRaySpace()},this.getControllerGrip=function($){let at=M[$];return at===void 0&&(at=new wl,M[$]=at),at.getGripSpace()},this.getHand=function($){let at=M[$];return at===void 0&&(at=new wl,M[$]=at),at.getHandSpace()};function z($){let at=b.indexOf($.inputSource);if(at===-1)return;let ft=M[at];ft!==void 0&&(ft.update($.inputSource,$.frame,c||o),ft.dispatchEvent({type:$.type,data:$.inputSource}))}function U(){r.removeEventListener("select",z),r.removeEventListener("selectstart",z),r.removeEventListener("selectend",z),r.removeEventListener("squeeze",z),r.removeEventListener("squeezestart",z),r.removeEventListener("squeezeend",z),r.removeEventListener("end",U),r.removeEventListener("inputsourceschange",Z);for(let $=0;$<M.length;$++){let at=b[$];at!==null&&(b[$]=null,M[$].disconnect(at))}P=null,D=null,g.reset();for(let $ in m)delete m[$];if(t.setRenderTarget(S),d=null,f=null,h=null,r=null,v=null,lt.stop(),i.isPresenting=!1,t.setPixelRatio(w),t.setSize(_.width,_.height,!1),R!==null){let $=R.camera;$.fov=R.fov,$.zoom=R.zoom,$.updateProjectionMatrix(),R=null}i.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function($){s=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function($){a=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function($){c=$},this.getBaseLayer=function(){return f!==null?f:d},this.getBinding=function(){return h===null&&y&&(h=new XRWebGLBinding(r,n)),h},this.getFrame=function(){return p},this.getSession=function(){return r},this.setSession=async function($){if(r=$,r!==null){if(S=t.getRenderTarget(),r.addEventListener("select",z),r.addEventListener("selectstart",z),r.addEventListener("selectend",z),r.addEventListener("squeeze",z),r.addEventListener("squeezestart",z),r.addEventListener("squeezeend",z),r.addEventListener("end",U),r.addEventListener("inputsourceschange",Z),x.xrCompatible!==!0&&await n.makeXRCompatible(),w=t.getPixelRatio(),t.getSize(_),y&&"createProjectionLayer"in XRWebGLBinding.prototype){let ft=null,ot=null,rt=null;x.depth&&(rt=x.stencil?n.DEPTH24_STENCIL8:n.DEPTH_COMPONENT24,ft=x.stencil?hs:ss,ot=x.stencil?Ko:Ji);let K={colorFormat:n.RGBA8,depthFormat:rt,scaleFactor:s};h=this.getBinding(),f=h.createProjectionLayer(K),r.updateRenderState({layers:[f]}),t.setPixelRatio(1),t.setSize(f.textureWidth,f.textureHeight,!1),v=new zn(f.textureWidth,f.textureHeight,{format:tr,type:ti,depthTexture:new ls(f.textureWidth,f.textureHeight,ot,void 0,void 0,void 0,void 0,void 0,void 0,ft),stencilBuffer:x.stencil,colorSpace:t.outputColorSpace,samples:x.antialias?4:0,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}else{let ft={antialias:x.antialias,alpha:!0,depth:x.depth,stencil:x.stencil,framebufferScaleFactor:s};d=new XRWebGLLayer(r,n,ft),r.updateRenderState({baseLayer:d}),t.setPixelRatio(1),t.setSize(d.framebufferWidth,d.framebufferHeight,!1),v=new zn(d.framebufferWidth,d.framebufferHeight,{format:tr,type:ti,colorSpace:t.outputColorSpace,stencilBuffer:x.stencil,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}v.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await r.requestReferenceSpace(a),lt.setContext(r),lt.start(),i.isPresenting=!0,i.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(r!==null)return r.environmentBlendMode},this.getDepthTexture=function(){return g.getDepthTexture()};function Z($){for(let at=0;at<$.removed.length;at++){let ft=$.removed[at],ot=b.indexOf(ft);ot>=0&&(b[ot]=null,M[ot].disconnect(ft))}for(let at=0;at<$.added.length;at++){let ft=$.added[at],ot=b.indexOf(ft);if(ot===-1){for(let K=0;K<M.length;K++)if(K>=b.length){b.push(ft),ot=K;break}else if(b[K]===null){b[K]=ft,ot=K;break}if(ot===-1)break}let rt=M[ot];rt&&rt.connect(ft)}}function F($,at){at===null?$.matrixWorld.copy($.matrix):$.matrixWorld.multiplyMatrices(at.matrixWorld,$.matrix),$.matrixWorldInverse.copy($.matrixWorld).invert()}this.updateCamera=function($){if(r===null)return;let at=$.near,ft=$.far;g.texture!==null&&(g.depthNear>0&&(at=g.depthNear),g.depthFar>0&&(ft=g.depthFar)),B.near=A.near=C.near=at,B.far=A.far=C.far=ft,(P!==B.near||D!==B.far)&&(r.updateRenderState({depthNear:B.near,depthFar:B.far}),P=B.near,D=B.far),B.layers.mask=$.layers.mask|6,C.layers.mask=B.layers.mask&-5,A.layers.mask=B.layers.mask&-3;let ot=$.parent,rt=B.cameras;F(B,ot);for(let K=0;K<rt.length;K++)F(rt[K],ot);B.projectionMatrix.copy(C.projectionMatrix),B.projectionMatrixInverse.copy(C.projectionMatrixInverse),R===null&&$.isPerspectiveCamera&&(R={camera:$,fov:$.fov,zoom:$.zoom}),V($,B,ot)};function V($,at,ft){ft===null?$.matrix.copy(at.matrixWorld):($.matrix.copy(ft.matrixWorld),$.matrix.invert(),$.matrix.multiply(at.matrixWorld)),$.matrix.decompose($.position,$.quaternion,$.scale),$.updateMatrixWorld(!0),$.projectionMatrix.copy(at.projectionMatrix),$.projectionMatrixInverse.copy(at.projectionMatrixInverse),$.isPerspectiveCamera&&($.fov=Ml*2*Math.atan(1/$.projectionMatrix.elements[5]),$.zoom=1)}this.getCamera=function(){return B},this.getFoveation=function(){if(!(f===null&&d===null))return l},this.setFoveation=function($){l=$,f!==null&&(f.fixedFoveation=$),d!==null&&d.fixedFoveation!==void 0&&(d.fixedFoveation=$)},this.hasDepthSensing=function(){return g.texture!==null},this.getDepthSensingMesh=function(){return g.getMesh(B)},this.getCameraTexture=function($){return m[$]};let q=null;function st($,at){if(u=at.getViewerPose(c||o),p=at,u!==null){let ft=u.views;d!==null&&(t.setRenderTargetFramebuffer(v,d.framebuffer),t.setRenderTarget(v));let ot=!1;ft.length!==B.cameras.length&&(B.cameras.length=0,ot=!0);for(let ct=0;ct<ft.length;ct++){let J=ft[ct],It=null;if(d!==null)It=d.getViewport(J);else{let Ot=h.getViewSubImage(f,J);It=Ot.viewport,ct===0&&(t.setRenderTargetTextures(v,Ot.colorTexture,Ot.depthStencilTexture),t.setRenderTarget(v))}let pt=L[ct];pt===void 0&&(pt=new ci,pt.layers.enable(ct),pt.viewport=new de,L[ct]=pt),pt.matrix.fromArray(J.transform.matrix),pt.matrix.decompose(pt.position,pt.quaternion,pt.scale),pt.projectionMatrix.fromArray(J.projectionMatrix),pt.projectionMatrixInverse.copy(pt.projectionMatrix).invert(),pt.viewport.set(It.x,It.y,It.width,It.height),ct===0&&(B.matrix.copy(pt.matrix),B.matrix.decompose(B.position,B.quaternion,B.scale)),ot===!0&&B.cameras.push(pt)}let rt=r.enabledFeatures;if(rt&&rt.includes("depth-sensing")&&r.depthUsage=="gpu-optimized"&&y){h=i.getBinding();let ct=h.getDepthInformation(ft[0]);ct&&ct.isValid&&ct.texture&&g.init(ct,r.renderState)}if(rt&&rt.includes("camera-access")&&y){t.state.unbindTexture(),h=i.getBinding();for(let ct=0;ct<ft.length;ct++){let J=ft[ct].camera;if(J){let It=m[J];It||(It=new nu,m[J]=It);let pt=h.getCameraImage(J);It.sourceTexture=pt}}}}for(let ft=0;ft<M.length;ft++){let ot=b[ft],rt=M[ft];ot!==null&&rt!==void 0&&rt.update(ot,at,c||o)}q&&q($,at),at.detectedPlanes&&i.dispatchEvent({type:"planesdetected",data:at}),p=null}let lt=new h3;lt.setAnimationLoop(st),this.setAnimationLoop=function($){q=$},this.dispose=function(){}}},d6=new ve,M3=new Vt;M3.set(-1,0,0,0,1,0,0,0,1);function p6(e,t){function n(g,m){g.matrixAutoUpdate===!0&&g.updateMatrix(),m.value.copy(g.matrix)}function i(g,m){m.color.getRGB(g.fogColor.value,O_(e)),m.isFog?(g.fogNear.value=m.near,g.fogFar.value=m.far):m.isFogExp2&&(g.fogDensity.value=m.density)}function r(g,m,x,S,v){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?s(g,m):m.isMeshLambertMaterial?(s(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(s(g,m),h(g,m)):m.isMeshPhongMaterial?(s(g,m),u(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(s(g,m),f(g,m),m.isMeshPhysicalMaterial&&d(g,m,v)):m.isMeshMatcapMaterial?(s(g,m),p(g,m)):m.isMeshDepthMaterial?s(g,m):m.isMeshDistanceMaterial?(s(g,m),y(g,m)):m.isMeshNormalMaterial?s(g,m):m.isLineBasicMaterial?(o(g,m),m.isLineDashedMaterial&&a(g,m)):m.isPointsMaterial?l(g,m,x,S):m.isSpriteMaterial?c(g,m):m.isShadowMaterial?(g.color.value.copy(m.color),g.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function s(g,m){g.opacity.value=m.opacity,m.color&&g.diffuse.value.copy(m.color),m.emissive&&g.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(g.map.value=m.map,n(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.bumpMap&&(g.bumpMap.value=m.bumpMap,n(m.bumpMap,g.bumpMapTransform),g.bumpScale.value=m.bumpScale,m.side===Gn&&(g.bumpScale.value*=-1)),m.normalMap&&(g.normalMap.value=m.normalMap,n(m.normalMap,g.normalMapTransform),g.normalScale.value.copy(m.normalScale),m.side===Gn&&g.normalScale.value.negate()),m.displacementMap&&(g.displacementMap.value=m.displacementMap,n(m.displacementMap,g.displacementMapTransform),g.displacementScale.value=m.displacementScale,g.displacementBias.value=m.displacementBias),m.emissiveMap&&(g.emissiveMap.value=m.emissiveMap,n(m.emissiveMap,g.emissiveMapTransform)),m.specularMap&&(g.specularMap.value=m.specularMap,n(m.specularMap,g.specularMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest);let x=t.get(m),S=x.envMap,v=x.envMapRotation;S&&(g.envMap.value=S,g.envMapRotation.value.setFromMatrix4(d6.makeRotationFromEuler(v)).transpose(),S.isCubeTexture&&S.isRenderTargetTexture===!1&&g.envMapRotation.value.premultiply(M3),g.reflectivity.value=m.reflectivity,g.ior.value=m.ior,g.refractionRatio.value=m.refractionRatio),m.lightMap&&(g.lightMap.value=m.lightMap,g.lightMapIntensity.value=m.lightMapIntensity,n(m.lightMap,g.lightMapTransform)),m.aoMap&&(g.aoMap.value=m.aoMap,g.aoMapIntensity.value=m.aoMapIntensity,n(m.aoMap,g.aoMapTransform))}function o(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,m.map&&(g.map.value=m.map,n(m.map,g.mapTransform))}function a(g,m){g.dashSize.value=m.dashSize,g.totalSize.value=m.dashSize+m.gapSize,g.scale.value=m.scale}function l(g,m,x,S){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.size.value=m.size*x,g.scale.value=S*.5,m.map&&(g.map.value=m.map,n(m.map,g.uvTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function c(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.rotation.value=m.rotation,m.map&&(g.map.value=m.map,n(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function u(g,m){g.specular.value.copy(m.specular),g.shininess.value=Math.max(m.shininess,1e-4)}function h(g,m){m.gradientMap&&(g.gradientMap.value=m.gradientMap)}function f(g,m){g.metalness.value=m.metalness,m.metalnessMap&&(g.metalnessMap.value=m.metalnessMap,n(m.metalnessMap,g.metalnessMapTransform)),g.roughness.value=m.roughness,m.roughnessMap&&(g.roughnessMap.value=m.roughnessMap,n(m.roughnessMap,g.roughnessMapTransform)),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)}function d(g,m,x){g.ior.value=m.ior,m.diffuseRoughness>0&&(g.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(g.diffuseRoughnessMap.value=m.diffuseRoughnessMap,n(m.diffuseRoughnessMap,g.diffuseRoughnessMapTransform))),m.sheen>0&&(g.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),g.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(g.sheenColorMap.value=m.sheenColorMap,n(m.sheenColorMap,g.sheenColorMapTransform)),m.sheenRoughnessMap&&(g.sheenRoughnessMap.value=m.sheenRoughnessMap,n(m.sheenRoughnessMap,g.sheenRoughnessMapTransform))),m.clearcoat>0&&(g.clearcoat.value=m.clearcoat,g.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(g.clearcoatMap.value=m.clearcoatMap,n(m.clearcoatMap,g.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(g.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,n(m.clearcoatRoughnessMap,g.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(g.clearcoatNormalMap.value=m.clearcoatNormalMap,n(m.clearcoatNormalMap,g.clearcoatNormalMapTransform),g.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===Gn&&g.clearcoatNormalScale.value.negate())),m.dispersion>0&&(g.dispersion.value=m.dispersion),m.retroreflectivity>0&&(g.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(g.iridescence.value=m.iridescence,g.iridescenceIOR.value=m.iridescenceIOR,g.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,g.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(g.iridescenceMap.value=m.iridescenceMap,n(m.iridescenceMap,g.iridescenceMapTransform)),m.iridescenceThicknessMap&&(g.iridescenceThicknessMap.value=m.iridescenceThicknessMap,n(m.iridescenceThicknessMap,g.iridescenceThicknessMapTransform))),m.transmission>0&&(g.transmission.value=m.transmission,g.transmissionSamplerMap.value=x.texture,g.transmissionSamplerSize.value.set(x.width,x.height),m.transmissionMap&&(g.transmissionMap.value=m.transmissionMap,n(m.transmissionMap,g.transmissionMapTransform)),g.thickness.value=m.thickness,m.thicknessMap&&(g.thicknessMap.value=m.thicknessMap,n(m.thicknessMap,g.thicknessMapTransform)),g.attenuationDistance.value=m.attenuationDistance,g.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(g.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(g.anisotropyMap.value=m.anisotropyMap,n(m.anisotropyMap,g.anisotropyMapTransform))),g.specularIntensity.value=m.specularIntensity,g.specularColor.value.copy(m.specularColor),m.specularColorMap&&(g.specularColorMap.value=m.specularColorMap,n(m.specularColorMap,g.specularColorMapTransform)),m.specularIntensityMap&&(g.specularIntensityMap.value=m.specularIntensityMap,n(m.specularIntensityMap,g.specularIntensityMapTransform))}function p(g,m){m.matcap&&(g.matcap.value=m.matcap)}function y(g,m){let x=t.get(m).light;g.referencePosition.value.setFromMatrixPosition(x.matrixWorld),g.nearDistance.value=x.shadow.camera.near,g.farDistance.value=x.shadow.camera.far}return{refreshFogUniforms:i,refreshMaterialUniforms:r}}function m6(e,t,n,i){let r={},s={};function o(x,S){let v=S.program;i.uniformBlockBinding(x,v,r[x.id])}function a(x,S){let v=r[x.id];v===void 0&&(p(x),v=l(x),r[x.id]=v,x.addEventListener("dispose",g));let M=S.program;i.updateUBOMapping(x,M);let b=t.render.frame;s[x.id]!==b&&(c(x),s[x.id]=b)}function l(x){let S=e.createBuffer(),v=x.__size,M=x.usage;return e.bindBuffer(e.UNIFORM_BUFFER,S),e.bufferData(e.UNIFORM_BUFFER,v,M),e.bindBuffer(e.UNIFORM_BUFFER,null),S}function c(x){let S=r[x.id],v=x.uniforms,M=x.__cache;e.bindBuffer(e.UNIFORM_BUFFER,S);for(let b=0,_=v.length;b<_;b++){let w=v[b];if(Array.isArray(w))for(let R=0,C=w.length;R<C;R++)u(w[R],b,R,M);else u(w,b,0,M)}e.bindBuffer(e.UNIFORM_BUFFER,null)}function u(x,S,v,M){if(f(x,S,v,M)===!0){let b=x.__offset,_=x.value;if(Array.isArray(_)){let w=0;for(let R=0;R<_.length;R++){let C=_[R],A=y(C,!0);h(C,x.__data,w),w+=A.storage/Float32Array.BYTES_PER_ELEMENT}}else h(_,x.__data,0);e.bufferSubData(e.UNIFORM_BUFFER,b,x.__data)}}function h(x,S,v){typeof x=="number"||typeof x=="boolean"?S[v]=x:x.isMatrix3?(S[v]=x.elements[0],S[v+1]=x.elements[1],S[v+2]=x.elements[2],S[v+3]=0,S[v+4]=x.elements[3],S[v+5]=x.elements[4],S[v+6]=x.elements[5],S[v+7]=0,S[v+8]=x.elements[6],S[v+9]=x.elements[7],S[v+10]=x.elements[8],S[v+11]=0):ArrayBuffer.isView(x)?S.set(x.subarray(0,S.length-v),v):x.toArray(S,v)}function f(x,S,v,M){let b=x.value,_=S+"_"+v;if(Array.isArray(b)){M[_]===void 0&&(M[_]=[]);let w=M[_],R=!1;for(let C=0;C<b.length;C++)d(b[C],w,C)===!0&&(R=!0);return R}return d(b,M,_)}function d(x,S,v){if(S[v]===void 0)return typeof x=="number"||typeof x=="boolean"?S[v]=x:ArrayBuffer.isView(x)?S[v]=x.slice():S[v]=x.clone(),!0;{let M=S[v];if(typeof x=="number"||typeof x=="boolean"){if(M!==x)return S[v]=x,!0}else{if(ArrayBuffer.isView(x))return!0;if(M.equals(x)===!1)return M.copy(x),!0}}return!1}function p(x){let S=x.uniforms,v=0,M=16;for(let _=0,w=S.length;_<w;_++){let R=Array.isArray(S[_])?S[_]:[S[_]];for(let C=0,A=R.length;C<A;C++){let L=R[C],B=Array.isArray(L.value)?L.value:[L.value],P=Array.isArray(S[_])||Array.isArray(L.value),D=v;for(let U=0,Z=B.length;U<Z;U++){let F=B[U],V=y(F,P),q=v%M,st=q%V.boundary,lt=q+st;v+=st,lt!==0&&M-lt<V.storage&&(v+=M-lt),U===0&&(D=v),v+=V.storage}let z=L.type==="int"?Int32Array:L.type==="uint"?Uint32Array:Float32Array;L.__data=new z((v-D)/Float32Array.BYTES_PER_ELEMENT),L.__offset=D}}let b=v%M;return b>0&&(v+=M-b),x.__size=v,x.__cache={},this}function y(x,S){let v={boundary:0,storage:0};return typeof x=="number"||typeof x=="boolean"?(v.boundary=4,v.storage=4):x.isVector2?(v.boundary=8,v.storage=8):x.isVector3||x.isColor?(v.boundary=16,v.storage=12):x.isVector4?(v.boundary=16,v.storage=16):x.isMatrix3?(v.boundary=16,v.storage=48):x.isMatrix4?(v.boundary=16,v.storage=64):x.isTexture?Ft("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(x)?(v.boundary=16,v.storage=x.byteLength):Ft("WebGLRenderer: Unsupported uniform value type.",x),S===!0&&(v.boundary=16,v.storage=Math.ceil(v.storage/16)*16),v}function g(x){let S=x.target;S.removeEventListener("dispose",g),e.deleteBuffer(r[S.id]),delete r[S.id],delete s[S.id]}function m(){for(let x in r)e.deleteBuffer(r[x]);r={},s={}}return{bind:o,update:a,dispose:m}}var g6=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Tr=null;function y6(){return Tr===null&&(Tr=new Sd(g6,16,16,Js,Qi),Tr.name="DFG_LUT",Tr.minFilter=kn,Tr.magFilter=kn,Tr.wrapS=Mr,Tr.wrapT=Mr,Tr.generateMipmaps=!1,Tr.needsUpdate=!0),Tr}var Np=class{constructor(t={}){let{canvas:n=B2(),context:i=null,depth:r=!0,stencil:s=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:f=!1,outputBufferType:d=ti}=t;this.isWebGLRenderer=!0;let p;if(i!==null){if(typeof WebGLRenderingContext<"u"&&i instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=i.getContextAttributes().alpha}else p=o;let y=d,g=new Set([jd,Jd,Kd]),m=new Set([ti,Ji,Dl,Ko,Yd,Zd]),x=new Uint32Array(4),S=new Int32Array(4),v={textures:[],min:[],max:[],resolution:[]},M=null,b=null,_=[],w=[],R=null;this.domElement=n,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=wr,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let C=this,A=!1,L=null,B=null,P=null,D=null;this._outputColorSpace=Bn;let z=0,U=0,Z=null,F=-1,V=null,q=new de,st=new de,lt=null,$=new kt(0),at=0,ft=n.width,ot=n.height,rt=1,K=null,gt=null,ct=new de(0,0,ft,ot),J=new de(0,0,ft,ot),It=!1,pt=new Vs,Ot=new wd,Ht=!1,le=!1,oe=new ve,tn=new k,Ge=new de,Wn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Cn=!1;function $n(){return Z===null?rt:1}let G=i;function Xn(E,O){return n.getContext(E,O)}let be,Me,mt,Re,Dt,zt,I,T,H,ut,nt,yt,Mt,Q,tt,_t,N,et,j,vt,dt,xt,Nt;try{let E={alpha:!0,depth:r,stencil:s,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in n&&n.setAttribute("data-engine",`three.js r${"187"}`),n.addEventListener("webglcontextlost",Ut,!1),n.addEventListener("webglcontextrestored",Kt,!1),n.addEventListener("webglcontextcreationerror",Et,!1),G===null){let O="webgl2";if(G=Xn(O,E),G===null)throw Xn(O)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Jt()}catch(E){throw n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Kt,!1),n.removeEventListener("webglcontextcreationerror",Et,!1),Gt("WebGLRenderer: "+E.message),E}function Jt(){be=new CB(G),be.init(),dt=new u6(G,be),Me=new yB(G,be,t,dt),mt=new l6(G,be),Me.reversedDepthBuffer&&f&&mt.buffers.depth.setReversed(!0),B=G.createFramebuffer(),P=G.createFramebuffer(),D=G.createFramebuffer(),Re=new IB(G),Dt=new Yk,zt=new c6(G,be,mt,Dt,Me,dt,Re),I=new AB(C),T=new DO(G),xt=new mB(G,T),H=new RB(G,T,Re,xt),ut=new DB(G,H,T,xt,Re),et=new LB(G,Me,zt),tt=new xB(Dt),nt=new qk(C,I,be,Me,xt,tt),yt=new p6(C,Dt),Mt=new Kk,Q=new n6(be),N=new pB(C,I,mt,ut,p,l),_t=new a6(C,ut,Me),Nt=new m6(G,Re,Me,mt),j=new gB(G,be,Re),vt=new PB(G,be,Re),Re.programs=nt.programs,C.capabilities=Me,C.extensions=be,C.properties=Dt,C.renderLists=Mt,C.shadowMap=_t,C.state=mt,C.info=Re}y!==ti&&(R=new UB(y,n.width,n.height,a,r,s));let ht=new K_(C,G);this.xr=ht,this.getContext=function(){return G},this.getContextAttributes=function(){return G.getContextAttributes()},this.forceContextLoss=function(){let E=be.get("WEBGL_lose_context");E&&E.loseContext()},this.forceContextRestore=function(){let E=be.get("WEBGL_lose_context");E&&E.restoreContext()},this.getPixelRatio=function(){return rt},this.setPixelRatio=function(E){E!==void 0&&(rt=E,this.setSize(ft,ot,!1))},this.getSize=function(E){return E.set(ft,ot)},this.setSize=function(E,O,Y=!0){if(ht.isPresenting){Ft("WebGLRenderer: Can't change size while VR device is presenting.");return}ft=E,ot=O,n.width=Math.floor(E*rt),n.height=Math.floor(O*rt),Y===!0&&(n.style.width=E+"px",n.style.height=O+"px"),R!==null&&R.setSize(n.width,n.height),this.setViewport(0,0,E,O)},this.getDrawingBufferSize=function(E){return E.set(ft*rt,ot*rt).floor()},this.setDrawingBufferSize=function(E,O,Y){ft=E,ot=O,rt=Y,n.width=Math.floor(E*Y),n.height=Math.floor(O*Y),this.setViewport(0,0,E,O)},this.setEffects=function(E){if(y===ti){Gt("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(E){for(let O=0;O<E.length;O++)if(E[O].isOutputPass===!0){Ft("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}R.setEffects(E||[])},this.getCurrentViewport=function(E){return E.copy(q)},this.getViewport=function(E){return E.copy(ct)},this.setViewport=function(E,O,Y,W){E.isVector4?ct.set(E.x,E.y,E.z,E.w):ct.set(E,O,Y,W),mt.viewport(q.copy(ct).multiplyScalar($n()).round())},this.getScissor=function(E){return E.copy(J)},this.setScissor=function(E,O,Y,W){E.isVector4?J.set(E.x,E.y,E.z,E.w):J.set(E,O,Y,W),mt.scissor(st.copy(J).multiplyScalar($n()).round())},this.getScissorTest=function(){return It},this.setScissorTest=function(E){mt.setScissorTest(It=E)},this.setOpaqueSort=function(E){K=E},this.setTransparentSort=function(E){gt=E},this.getClearColor=function(E){return E.copy(N.getClearColor())},this.setClearColor=function(){N.setClearColor(...arguments)},this.getClearAlpha=function(){return N.getClearAlpha()},this.setClearAlpha=function(){N.setClearAlpha(...arguments)},this.clear=function(E=!0,O=!0,Y=!0){let W=0;if(E){let X=!1;if(Z!==null){let St=Z.texture.format;X=g.has(St)}if(X){let St=Z.texture.type,Ct=m.has(St),bt=N.getClearColor(),At=N.getClearAlpha(),Lt=bt.r,$t=bt.g,ee=bt.b;Ct?(x[0]=Lt,x[1]=$t,x[2]=ee,x[3]=At,G.clearBufferuiv(G.COLOR,0,x)):(S[0]=Lt,S[1]=$t,S[2]=ee,S[3]=At,G.clearBufferiv(G.COLOR,0,S))}else W|=G.COLOR_BUFFER_BIT}O&&(W|=G.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Y&&(W|=G.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),W!==0&&G.clear(W)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(E){E.setRenderer(this),L=E},this.dispose=function(){n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Kt,!1),n.removeEventListener("webglcontextcreationerror",Et,!1),N.dispose(),Mt.dispose(),Q.dispose(),zt.dispose(),Dt.dispose(),I.dispose(),ut.dispose(),H.dispose(),xt.dispose(),Nt.dispose(),nt.dispose(),ht.dispose(),ht.removeEventListener("sessionstart",dv),ht.removeEventListener("sessionend",pv),no.stop()};function Ut(E){E.preventDefault(),Zc("WebGLRenderer: Context Lost."),A=!0}function Kt(){Zc("WebGLRenderer: Context Restored."),A=!1;let E=Re.autoReset,O=_t.enabled,Y=_t.autoUpdate,W=_t.needsUpdate,X=_t.type;Jt(),Re.autoReset=E,_t.enabled=O,_t.autoUpdate=Y,_t.needsUpdate=W,_t.type=X}function Et(E){Gt("WebGLRenderer: A WebGL context could not be created. Reason: ",E.statusMessage)}function pe(E){let O=E.target;O.removeEventListener("dispose",pe),en(O)}function en(E){ps(E),Dt.remove(E)}function ps(E){let O=Dt.get(E).programs;O!==void 0&&(O.forEach(function(Y){nt.releaseProgram(Y)}),E.isShaderMaterial&&nt.releaseShaderCache(E))}this.renderBufferDirect=function(E,O,Y,W,X,St){O===null&&(O=Wn);let Ct=X.isMesh&&X.matrixWorld.determinantAffine()<0,bt=Z3(E,O,Y,W,X);mt.setMaterial(W,Ct);let At=Y.index,Lt=1;if(W.wireframe===!0){if(At=H.getWireframeAttribute(Y),At===void 0)return;Lt=2}let $t=Y.drawRange,ee=Y.attributes.position,Rt=$t.start*Lt,ne=($t.start+$t.count)*Lt;St!==null&&(Rt=Math.max(Rt,St.start*Lt),ne=Math.min(ne,(St.start+St.count)*Lt)),At!==null?(Rt=Math.max(Rt,0),ne=Math.min(ne,At.count)):ee!=null&&(Rt=Math.max(Rt,0),ne=Math.min(ne,ee.count));let Ve=ne-Rt;if(Ve<0||Ve===1/0)return;xt.setup(X,W,bt,Y,At);let Se,xe=j;if(At!==null&&(Se=T.get(At),xe=vt,xe.setIndex(Se)),X.isMesh)W.wireframe===!0?(mt.setLineWidth(W.wireframeLinewidth*$n()),xe.setMode(G.LINES)):xe.setMode(G.TRIANGLES);else if(X.isLine){let _n=W.linewidth;_n===void 0&&(_n=1),mt.setLineWidth(_n*$n()),X.isLineSegments?xe.setMode(G.LINES):X.isLineLoop?xe.setMode(G.LINE_LOOP):xe.setMode(G.LINE_STRIP)}else X.isPoints?xe.setMode(G.POINTS):X.isSprite&&xe.setMode(G.TRIANGLES);if(X.isBatchedMesh)if(be.get("WEBGL_multi_draw"))xe.renderMultiDraw(X._multiDrawStarts,X._multiDrawCounts,X._multiDrawCount);else{let _n=X._multiDrawStarts,Pt=X._multiDrawCounts,Rn=X._multiDrawCount,ce=At?T.get(At).bytesPerElement:1,io=Dt.get(W).currentProgram.getUniforms();for(let vn=0;vn<Rn;vn++)io.setValue(G,"_gl_DrawID",vn),xe.render(_n[vn]/ce,Pt[vn])}else if(X.isInstancedMesh)xe.renderInstances(Rt,Ve,X.count);else if(Y.isInstancedBufferGeometry){let _n=Y._maxInstanceCount!==void 0?Y._maxInstanceCount:1/0,Pt=Math.min(Y.instanceCount,_n);xe.renderInstances(Rt,Ve,Pt)}else xe.render(Rt,Ve)};function hv(E,O,Y,W){L!==null&&E.isNodeMaterial&&L.setObject(W,E),Ht===!0&&tt.setState(E,Y,!1),E.transparent===!0&&E.side===Di&&E.forceSinglePass===!1?(E.side=Gn,E.needsUpdate=!0,Fl(E,O,W),E.side=Ks,E.needsUpdate=!0,Fl(E,O,W),E.side=Di):Fl(E,O,W)}this.compile=function(E,O,Y=null){Y===null&&(Y=E),L!==null&&L.renderStart(E,O,Y),b=Q.get(Y),b.init(O),w.push(b),Y.traverseVisible(function(X){X.isLight&&X.layers.test(O.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),E!==Y&&E.traverseVisible(function(X){X.isLight&&X.layers.test(O.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),b.setupLights(),L!==null&&L.updateLights(b.state.lightsArray),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),Ht===!0&&tt.setGlobalState(this.clippingPlanes,O),L!==null&&_t.render(b.state.shadowsArray,Y,O);let W=new Set;return E.traverse(function(X){if(!(X.isMesh||X.isPoints||X.isLine||X.isSprite))return;let St=X.material;if(St)if(Array.isArray(St))for(let Ct=0;Ct<St.length;Ct++){let bt=St[Ct];hv(bt,Y,O,X),W.add(bt)}else hv(St,Y,O,X),W.add(St)}),b=w.pop(),L!==null&&L.renderEnd(),W},this.compileAsync=function(E,O,Y=null){let W=this.compile(E,O,Y);return new Promise(X=>{function St(){if(W.forEach(function(Ct){let At=Dt.get(Ct).currentProgram;(At===void 0||At.isReady())&&W.delete(Ct)}),W.size===0){X(E);return}setTimeout(St,10)}be.get("KHR_parallel_shader_compile")!==null?St():setTimeout(St,10)})};let Yp=null;function q3(E){Yp&&Yp(E)}function dv(){no.stop()}function pv(){no.start()}let no=new h3;no.setAnimationLoop(q3),typeof self<"u"&&no.setContext(self),this.setAnimationLoop=function(E){Yp=E,ht.setAnimationLoop(E),E===null?no.stop():no.start()},ht.addEventListener("sessionstart",dv),ht.addEventListener("sessionend",pv),this.render=function(E,O){if(O!==void 0&&O.isCamera!==!0){Gt("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(A===!0)return;L!==null&&L.renderStart(E,O);let Y=ht.enabled===!0&&ht.isPresenting===!0,W=R!==null&&(Z===null||Y)&&R.begin(C,Z);if(E.matrixWorldAutoUpdate===!0&&E.updateMatrixWorld(),O.parent===null&&O.matrixWorldAutoUpdate===!0&&O.updateMatrixWorld(),ht.enabled===!0&&ht.isPresenting===!0&&(R===null||R.isCompositing()===!1)&&(ht.cameraAutoUpdate===!0&&ht.updateCamera(O),O=ht.getCamera()),E.isScene===!0&&E.onBeforeRender(C,E,O,Z),b=Q.get(E,w.length),b.init(O),b.state.textureUnits=zt.getTextureUnits(),w.push(b),oe.multiplyMatrices(O.projectionMatrix,O.matrixWorldInverse),O.isArrayCamera?Ot.setFromArrayCamera(O):pt.setFromProjectionMatrix(oe,Ii,O.reversedDepth),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),M=Mt.get(E,_.length),M.init(),_.push(M),this.info.render.frame++,ht.enabled===!0&&ht.isPresenting===!0){let Ct=C.xr.getDepthSensingMesh();Ct!==null&&Zp(Ct,O,-1/0,C.sortObjects)}Zp(E,O,0,C.sortObjects),M.finish(),L!==null&&L.updateLights(b.state.lightsArray),C.sortObjects===!0&&M.sort(K,gt),Cn=ht.enabled===!1||ht.isPresenting===!1||ht.hasDepthSensing()===!1,Cn&&N.addToRenderList(M,E),this.info.autoReset===!0&&this.info.reset(),Ht===!0&&tt.beginShadows();let X=b.state.shadowsArray;if(_t.render(X,E,O),Ht===!0&&tt.endShadows(),(W&&R.hasRenderPass())===!1){let Ct=M.opaque,bt=M.transmissive;if(b.setupLights(),O.isArrayCamera){let At=O.cameras;if(bt.length>0)for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];gv(Ct,bt,E,ee)}Cn&&N.render(E);for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];mv(M,E,ee,ee.viewport)}}else bt.length>0&&gv(Ct,bt,E,O),Cn&&N.render(E),mv(M,E,O)}Z!==null&&U===0&&(zt.updateMultisampleRenderTarget(Z),zt.updateRenderTargetMipmap(Z)),W&&R.end(C),E.isScene===!0&&E.onAfterRender(C,E,O),xt.resetDefaultState(),F=-1,V=null,w.pop(),w.length>0?(b=w[w.length-1],zt.setTextureUnits(b.state.textureUnits),Ht===!0&&tt.setGlobalState(C.clippingPlanes,b.state.camera)):b=null,_.pop(),_.length>0?M=_[_.length-1]:M=null,L!==null&&L.renderEnd()};function Zp(E,O,Y,W){if(E.visible===!1)return;if(E.layers.test(O.layers)){if(E.isGroup)Y=E.renderOrder;else if(E.isLOD)E.autoUpdate===!0&&E.update(O);else if(E.isLight)b.pushLight(E),E.castShadow&&b.pushShadow(E);else if(E.isSprite){let Ct=O.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){W&&Ge.setFromMatrixPosition(E.matrixWorld).applyMatrix4(oe);let bt=ut.update(E),At=E.material;At.visible&&M.push(E,bt,At,Y,Ge.z,null,O)}}else if(E.isMesh||E.isLine||E.isPoints){let Ct=O.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){let bt=ut.update(E),At=E.material;if(W&&(E.boundingSphere!==void 0?(E.boundingSphere===null&&E.computeBoundingSphere(),Ge.copy(E.boundingSphere.center)):(bt.boundingSphere===null&&bt.computeBoundingSphere(),Ge.copy(bt.boundingSphere.center)),Ge.applyMatrix4(E.matrixWorld).applyMatrix4(oe)),Array.isArray(At)){let Lt=bt.groups;for(let $t=0,ee=Lt.length;$t<ee;$t++){let Rt=Lt[$t],ne=At[Rt.materialIndex];ne&&ne.visible&&M.push(E,bt,ne,Y,Ge.z,Rt,O)}}else At.visible&&M.push(E,bt,At,Y,Ge.z,null,O)}}}let St=E.children;for(let Ct=0,bt=St.length;Ct<bt;Ct++)Zp(St[Ct],O,Y,W)}function mv(E,O,Y,W){let{opaque:X,transmissive:St,transparent:Ct}=E;b.setupLightsView(Y),Ht===!0&&tt.setGlobalState(C.clippingPlanes,Y),W&&mt.viewport(q.copy(W)),X.length>0&&Cu(X,O,Y),St.length>0&&Cu(St,O,Y),Ct.length>0&&Cu(Ct,O,Y),mt.buffers.depth.setTest(!0),mt.buffers.depth.setMask(!0),mt.buffers.color.setMask(!0),mt.setPolygonOffset(!1)}function gv(E,O,Y,W){if((Y.isScene===!0?Y.overrideMaterial:null)!==null)return;if(b.state.transmissionRenderTarget[W.id]===void 0){let Rt=be.has("EXT_color_buffer_half_float")||be.has("EXT_color_buffer_float");b.state.transmissionRenderTarget[W.id]=new zn(1,1,{generateMipmaps:!0,type:Rt?Qi:ti,minFilter:fs,samples:Math.max(4,Me.samples),stencilBuffer:s,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ie.workingColorSpace})}let St=b.state.transmissionRenderTarget[W.id],Ct=W.viewport||q;St.setSize(Ct.z*C.transmissionResolutionScale,Ct.w*C.transmissionResolutionScale);let bt=C.getRenderTarget(),At=C.getActiveCubeFace(),Lt=C.getActiveMipmapLevel();C.setRenderTarget(St),C.getClearColor($),at=C.getClearAlpha(),at<1&&C.setClearColor(16777215,.5),C.clear(),Cn&&N.render(Y);let $t=C.toneMapping;C.toneMapping=wr;let ee=W.viewport;if(W.viewport!==void 0&&(W.viewport=void 0),b.setupLightsView(W),Ht===!0&&tt.setGlobalState(C.clippingPlanes,W),Cu(E,Y,W),zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St),be.has("WEBGL_multisampled_render_to_texture")===!1){let Rt=!1;for(let ne=0,Ve=O.length;ne<Ve;ne++){let Se=O[ne],{object:xe,geometry:_n,material:Pt,group:Rn}=Se;if(Pt.side===Di&&xe.layers.test(W.layers)){let ce=Pt.side;Pt.side=Gn,Pt.needsUpdate=!0,yv(xe,Y,W,_n,Pt,Rn),Pt.side=ce,Pt.needsUpdate=!0,Rt=!0}}Rt===!0&&(zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St))}C.setRenderTarget(bt,At,Lt),C.setClearColor($,at),ee!==void 0&&(W.viewport=ee),C.toneMapping=$t}function Cu(E,O,Y){let W=O.isScene===!0?O.overrideMaterial:null;for(let X=0,St=E.length;X<St;X++){let Ct=E[X],{object:bt,geometry:At,group:Lt}=Ct,$t=Ct.material;$t.allowOverride===!0&&W!==null&&($t=W),bt.layers.test(Y.layers)&&yv(bt,O,Y,At,$t,Lt)}}function yv(E,O,Y,W,X,St){L!==null&&X.isNodeMaterial&&L.setObject(E,X),E.onBeforeRender(C,O,Y,W,X,St),E.modelViewMatrix.multiplyMatrices(Y.matrixWorldInverse,E.matrixWorld),E.normalMatrix.getNormalMatrix(E.modelViewMatrix),X.onBeforeRender(C,O,Y,W,E,St),X.transparent===!0&&X.side===Di&&X.forceSinglePass===!1?(X.side=Gn,X.needsUpdate=!0,C.renderBufferDirect(Y,O,W,X,E,St),X.side=Ks,X.needsUpdate=!0,C.renderBufferDirect(Y,O,W,X,E,St),X.side=Di):C.renderBufferDirect(Y,O,W,X,E,St),E.onAfterRender(C,O,Y,W,X,St)}function xv(E){let O=0;for(let Y of E)Y.texture!==null&&O++;return O}function Fl(E,O,Y){O.isScene!==!0&&(O=Wn);let W=Dt.get(E),X=b.state.lights,St=b.state.shadowsArray,Ct=X.state.version,bt=nt.getParameters(E,X.state,St,O,Y,b.state.lightProbeGridArray),At=nt.getProgramCacheKey(bt),Lt=W.programs;W.environment=E.isMeshStandardMaterial||E.isMeshLambertMaterial||E.isMeshPhongMaterial?O.environment:null,W.fog=O.fog;let $t=E.isMeshStandardMaterial||E.isMeshLambertMaterial&&!E.envMap||E.isMeshPhongMaterial&&!E.envMap;W.envMap=I.get(E.envMap||W.environment,$t),W.envMapRotation=W.environment!==null&&E.envMap===null?O.environmentRotation:E.envMapRotation,Lt===void 0&&(E.addEventListener("dispose",pe),Lt=new Map,W.programs=Lt,W.programVariants=new Map);let ee=Lt.get(At);if(ee!==void 0){if(W.currentProgram===ee&&W.lightsStateVersion===Ct)return vv(E,bt),ee}else bt.uniforms=nt.getUniforms(E),L!==null&&E.isNodeMaterial&&L.build(E,Y,bt),E.onBeforeCompile(bt,C),ee=nt.acquireProgram(bt,At),Lt.set(At,ee),W.uniforms=bt.uniforms;let Rt=W.uniforms;return(!E.isShaderMaterial&&!E.isRawShaderMaterial||E.clipping===!0)&&(Rt.clippingPlanes=tt.uniform),vv(E,bt),W.needsLights=J3(E),W.lightsStateVersion=Ct,W.needsLights&&(Rt.ambientLightColor.value=X.state.ambient,Rt.lightProbe.value=X.state.probe,Rt.sunLights.value=X.state.sun,Rt.sunLightShadows.value=X.state.sunShadow,Rt.directionalLights.value=X.state.directional,Rt.directionalLightShadows.value=X.state.directionalShadow,Rt.spotLights.value=X.state.spot,Rt.spotLightShadows.value=X.state.spotShadow,Rt.rectAreaLights.value=X.state.rectArea,Rt.ltc_1.value=X.state.rectAreaLTC1,Rt.ltc_2.value=X.state.rectAreaLTC2,Rt.pointLights.value=X.state.point,Rt.pointLightShadows.value=X.state.pointShadow,Rt.hemisphereLights.value=X.state.hemi,Rt.sunShadowMatrix.value=X.state.sunShadowMatrix,Rt.sunShadowCascade.value=X.state.sunShadowCascade,Rt.directionalShadowMatrix.value=X.state.directionalShadowMatrix,Rt.spotLightMatrix.value=X.state.spotLightMatrix,Rt.spotLightMap.value=X.state.spotLightMap,Rt.pointShadowMatrix.value=X.state.pointShadowMatrix),W.numLightProbeGrids=xv(b.state.lightProbeGridArray),W.currentProgram=ee,W.uniformsList=null,ee}function Y3(E,O,Y,W,X){let St=Dt.get(E),Ct=St.currentProgram.id+","+W+","+X,bt=St.programVariants.get(Ct);return bt===void 0?(bt=Fl(E,O,Y),St.programVariants.set(Ct,bt)):(St.currentProgram=bt,St.uniformsList=null,St.outputColorSpace=W,St.toneMapping=X),bt}function _v(E){if(E.uniformsList===null){let O=E.currentProgram.getUniforms();E.uniformsList=Nl.seqWithValue(O.seq,E.uniforms)}return E.uniformsList}function vv(E,O){let Y=Dt.get(E);Y.outputColorSpace=O.outputColorSpace,Y.batching=O.batching,Y.batchingColor=O.batchingColor,Y.instancing=O.instancing,Y.instancingColor=O.instancingColor,Y.instancingMorph=O.instancingMorph,Y.skinning=O.skinning,Y.morphTargets=O.morphTargets,Y.morphNormals=O.morphNormals,Y.morphColors=O.morphColors,Y.morphTargetsCount=O.morphTargetsCount,Y.numClippingPlanes=O.numClippingPlanes,Y.numIntersection=O.numClipIntersection,Y.vertexAlphas=O.vertexAlphas,Y.vertexTangents=O.vertexTangents,Y.toneMapping=O.toneMapping}function Z3(E,O,Y,W,X){O.isScene!==!0&&(O=Wn),zt.resetTextureUnits();let St=O.fog,Ct=W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial?O.environment:null,bt=Z===null?C.outputColorSpace:Z.isXRRenderTarget===!0?Z.texture.colorSpace:ie.workingColorSpace,At=W.isMeshStandardMaterial||W.isMeshLambertMaterial&&!W.envMap||W.isMeshPhongMaterial&&!W.envMap,Lt=I.get(W.envMap||Ct,At),$t=W.vertexColors===!0&&!!Y.attributes.color&&Y.attributes.color.itemSize===4,ee=!!Y.attributes.tangent&&(!!W.normalMap||W.anisotropy>0),Rt=!!Y.morphAttributes.position,ne=!!Y.morphAttributes.normal,Ve=!!Y.morphAttributes.color,Se=wr;W.toneMapped&&(Z===null||Z.isXRRenderTarget===!0)&&(Se=C.toneMapping);let xe=Y.morphAttributes.position||Y.morphAttributes.normal||Y.morphAttributes.color,_n=xe!==void 0?xe.length:0,Pt=Dt.get(W),Rn=b.state.lights;if(Ht===!0&&(le===!0||E!==V)){let Ce=E===V&&W.id===F;tt.setState(W,E,Ce)}let ce=!1,io=!1;W.version===Pt.__version?Pt.needsLights&&Pt.lightsStateVersion!==Rn.state.version||X.isBatchedMesh&&Pt.batching===!1||!X.isBatchedMesh&&Pt.batching===!0||X.isBatchedMesh&&Pt.batchingColor===!0&&X._colorsTexture===null||X.isBatchedMesh&&Pt.batchingColor===!1&&X._colorsTexture!==null||X.isInstancedMesh&&Pt.instancing===!1||!X.isInstancedMesh&&Pt.instancing===!0||X.isSkinnedMesh&&Pt.skinning===!1||!X.isSkinnedMesh&&Pt.skinning===!0||X.isInstancedMesh&&Pt.instancingColor===!0&&X.instanceColor===null||X.isInstancedMesh&&Pt.instancingColor===!1&&X.instanceColor!==null||X.isInstancedMesh&&Pt.instancingMorph===!0&&X.morphTexture===null||X.isInstancedMesh&&Pt.instancingMorph===!1&&X.morphTexture!==null||Pt.envMap!==Lt||W.fog===!0&&Pt.fog!==St||Pt.numClippingPlanes!==void 0&&(Pt.numClippingPlanes!==tt.numPlanes||Pt.numIntersection!==tt.numIntersection)||Pt.vertexAlphas!==$t||Pt.vertexTangents!==ee||Pt.morphTargets!==Rt||Pt.morphNormals!==ne||Pt.morphColors!==Ve||Pt.morphTargetsCount!==_n||Pt.numLightProbeGrids!==xv(b.state.lightProbeGridArray)?ce=!0:(Pt.outputColorSpace!==bt||Pt.toneMapping!==Se)&&(io=!0):(ce=!0,Pt.__version=W.version);let vn=Pt.currentProgram;(ce===!0||io===!0)&&(vn=io===!0?Y3(W,O,X,bt,Se):Fl(W,O,X),L&&W.isNodeMaterial&&L.onUpdateProgram(W,vn,Pt));let Ru=!1,ms=!1,ro=!1,re=vn.getUniforms(),dn=Pt.uniforms;if(mt.useProgram(vn.program)&&(Ru=!0,ms=!0,ro=!0),W.id!==F&&(F=W.id,ms=!0),Ru||V!==E){mt.buffers.depth.getReversed()&&E.reversedDepth!==!0&&(E._reversedDepth=!0,E.updateProjectionMatrix()),re.setValue(G,"projectionMatrix",E.projectionMatrix),re.setValue(G,"viewMatrix",E.matrixWorldInverse);let nn=re.map.cameraPosition;nn!==void 0&&nn.setValue(G,tn.setFromMatrixPosition(E.matrixWorld)),Me.logarithmicDepthBuffer&&re.setValue(G,"logDepthBufFC",2/(Math.log(E.far+1)/Math.LN2)),(W.isMeshPhongMaterial||W.isMeshToonMaterial||W.isMeshLambertMaterial||W.isMeshBasicMaterial||W.isMeshStandardMaterial||W.isShaderMaterial)&&re.setValue(G,"isOrthographic",E.isOrthographicCamera===!0),V!==E&&(V=E,ms=!0,ro=!0)}if(Pt.needsLights&&(Rn.state.sunShadowMap.length>0&&re.setValue(G,"sunShadowMap",Rn.state.sunShadowMap,zt),Rn.state.directionalShadowMap.length>0&&re.setValue(G,"directionalShadowMap",Rn.state.directionalShadowMap,zt),Rn.state.spotShadowMap.length>0&&re.setValue(G,"spotShadowMap",Rn.state.spotShadowMap,zt),Rn.state.pointShadowMap.length>0&&re.setValue(G,"pointShadowMap",Rn.state.pointShadowMap,zt)),X.isSkinnedMesh){re.setOptional(G,X,"bindMatrix"),re.setOptional(G,X,"bindMatrixInverse");let Ce=X.skeleton;Ce&&(Ce.boneTexture===null&&Ce.computeBoneTexture(),re.setValue(G,"boneTexture",Ce.boneTexture,zt))}X.isBatchedMesh&&(re.setOptional(G,X,"batchingTexture"),re.setValue(G,"batchingTexture",X._matricesTexture,zt),re.setOptional(G,X,"batchingIdTexture"),re.setValue(G,"batchingIdTexture",X._indirectTexture,zt),re.setOptional(G,X,"batchingColorTexture"),X._colorsTexture!==null&&re.setValue(G,"batchingColorTexture",X._colorsTexture,zt));let Ni=Y.morphAttributes;if((Ni.position!==void 0||Ni.normal!==void 0||Ni.color!==void 0)&&et.update(X,Y,vn),(ms||Pt.receiveShadow!==X.receiveShadow)&&(Pt.receiveShadow=X.receiveShadow,re.setValue(G,"receiveShadow",X.receiveShadow)),(W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial)&&W.envMap===null&&O.environment!==null&&(dn.envMapIntensity.value=O.environmentIntensity),dn.dfgLUT!==void 0&&(dn.dfgLUT.value=y6()),ms){if(re.setValue(G,"toneMappingExposure",C.toneMappingExposure),Pt.needsLights&&K3(dn,ro),St&&W.fog===!0&&yt.refreshFogUniforms(dn,St),yt.refreshMaterialUniforms(dn,W,rt,ot,b.state.transmissionRenderTarget[E.id]),Pt.needsLights&&Pt.numLightProbeGrids>0){let Ce=v,nn=0;for(let Pr of b.state.lightProbeGridArray)Pr.texture!==null&&(Ce.textures[nn]=Pr.texture,Ce.min[nn]=Pr.boundingBox.min,Ce.max[nn]=Pr.boundingBox.max,Ce.resolution[nn]=Pr.resolution,nn++);for(let Pr in Ce)Ce[Pr].length=nn;dn.probesSH.value=Ce.textures,dn.probesMin.value=Ce.min,dn.probesMax.value=Ce.max,dn.probesResolution.value=Ce.resolution}Nl.upload(G,_v(Pt),dn,zt)}if(W.isShaderMaterial&&W.uniformsNeedUpdate===!0&&(Nl.upload(G,_v(Pt),dn,zt),W.uniformsNeedUpdate=!1),W.isSpriteMaterial&&re.setValue(G,"center",X.center),re.setValue(G,"modelViewMatrix",X.modelViewMatrix),re.setValue(G,"normalMatrix",X.normalMatrix),re.setValue(G,"modelMatrix",X.matrixWorld),W.uniformsGroups!==void 0){let Ce=W.uniformsGroups;for(let nn=0,Pr=Ce.length;nn<Pr;nn++){let Mv=Ce[nn];Nt.update(Mv,vn),Nt.bind(Mv,vn)}}return vn}function K3(E,O){E.ambientLightColor.needsUpdate=O,E.lightProbe.needsUpdate=O,E.sunLights.needsUpdate=O,E.sunLightShadows.needsUpdate=O,E.directionalLights.needsUpdate=O,E.directionalLightShadows.needsUpdate=O,E.pointLights.needsUpdate=O,E.pointLightShadows.needsUpdate=O,E.spotLights.needsUpdate=O,E.spotLightShadows.needsUpdate=O,E.rectAreaLights.needsUpdate=O,E.hemisphereLights.needsUpdate=O}function J3(E){return E.isMeshLambertMaterial||E.isMeshToonMaterial||E.isMeshPhongMaterial||E.isMeshStandardMaterial||E.isShadowMaterial||E.isShaderMaterial&&E.lights===!0}this.getActiveCubeFace=function(){return z},this.getActiveMipmapLevel=function(){return U},this.getRenderTarget=function(){return Z},this.setRenderTargetTextures=function(E,O,Y){let W=Dt.get(E);W.__autoAllocateDepthBuffer=E.resolveDepthBuffer===!1,W.__autoAllocateDepthBuffer===!1&&(W.__useRenderToTexture=!1),Dt.get(E.texture).__webglTexture=O,Dt.get(E.depthTexture).__webglTexture=W.__autoAllocateDepthBuffer?void 0:Y,W.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(E,O){let Y=Dt.get(E);Y.__webglFramebuffer=O,Y.__useDefaultFramebuffer=O===void 0},this.setRenderTarget=function(E,O=0,Y=0){Z=E,z=O,U=Y;let W=null,X=!1,St=!1;if(E){let bt=Dt.get(E);if(bt.__useDefaultFramebuffer!==void 0){mt.bindFramebuffer(G.FRAMEBUFFER,bt.__webglFramebuffer),q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest,mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),F=-1;return}else if(bt.__webglFramebuffer===void 0)zt.setupRenderTarget(E);else if(bt.__hasExternalTextures)zt.rebindTextures(E,Dt.get(E.texture).__webglTexture,Dt.get(E.depthTexture).__webglTexture);else if(E.depthBuffer){let $t=E.depthTexture;if(bt.__boundDepthTexture!==$t){if($t!==null&&Dt.has($t)&&(E.width!==$t.image.width||E.height!==$t.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");zt.setupDepthRenderbuffer(E)}}let At=E.texture;(At.isData3DTexture||At.isDataArrayTexture||At.isCompressedArrayTexture)&&(St=!0);let Lt=Dt.get(E).__webglFramebuffer;E.isWebGLCubeRenderTarget?(Array.isArray(Lt[O])?W=Lt[O][Y]:W=Lt[O],X=!0):E.samples>0&&zt.useMultisampledRTT(E)===!1?W=Dt.get(E).__webglMultisampledFramebuffer:Array.isArray(Lt)?W=Lt[Y]:W=Lt,q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest}else q.copy(ct).multiplyScalar(rt).floor(),st.copy(J).multiplyScalar(rt).floor(),lt=It;if(Y!==0&&(W=B),mt.bindFramebuffer(G.FRAMEBUFFER,W)&&mt.drawBuffers(E,W),mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),X){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_CUBE_MAP_POSITIVE_X+O,bt.__webglTexture,Y)}else if(St){let bt=O;for(let At=0;At<E.textures.length;At++){let Lt=Dt.get(E.textures[At]);G.framebufferTextureLayer(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0+At,Lt.__webglTexture,Y,bt)}}else if(E!==null&&Y!==0){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,bt.__webglTexture,Y)}F=-1};function bv(E){let O=Dt.get(E);return(O.__readFormat!==E.format||O.__readType!==E.type)&&(O.__readFormat=E.format,O.__readType=E.type,O.__formatReadable=Me.textureFormatReadable(E.format),O.__typeReadable=Me.textureTypeReadable(E.type)),O}this.readRenderTargetPixels=function(E,O,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget)){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At){mt.bindFramebuffer(G.FRAMEBUFFER,At);try{let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=bv(Lt);if(Rt.__formatReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Rt.__typeReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}O>=0&&O<=E.width-W&&Y>=0&&Y<=E.height-X&&G.readPixels(O,Y,W,X,dt.convert($t),dt.convert(ee),St)}finally{let Lt=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Lt)}}},this.readRenderTargetPixelsAsync=async function(E,O,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At)if(O>=0&&O<=E.width-W&&Y>=0&&Y<=E.height-X){mt.bindFramebuffer(G.FRAMEBUFFER,At);let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=bv(Lt);if(Rt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Rt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ne=G.createBuffer();G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.bufferData(G.PIXEL_PACK_BUFFER,St.byteLength,G.STREAM_READ),G.readPixels(O,Y,W,X,dt.convert($t),dt.convert(ee),0),G.bindBuffer(G.PIXEL_PACK_BUFFER,null);let Ve=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Ve);let Se=G.fenceSync(G.SYNC_GPU_COMMANDS_COMPLETE,0);return G.flush(),await z2(G,Se,4),G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.getBufferSubData(G.PIXEL_PACK_BUFFER,0,St),G.bindBuffer(G.PIXEL_PACK_BUFFER,null),G.deleteBuffer(ne),G.deleteSync(Se),St}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(E,O=null,Y=0){let W=Math.pow(2,-Y),X=Math.floor(E.image.width*W),St=Math.floor(E.image.height*W),Ct=O!==null?O.x:0,bt=O!==null?O.y:0;zt.setTexture2D(E,0),G.copyTexSubImage2D(G.TEXTURE_2D,Y,0,0,Ct,bt,X,St),mt.unbindTexture()},this.copyTextureToTexture=function(E,O,Y=null,W=null,X=0,St=0){let Ct,bt,At,Lt,$t,ee,Rt,ne,Ve,Se=E.isCompressedTexture?E.mipmaps[St]:E.image;if(Y!==null)Ct=Y.max.x-Y.min.x,bt=Y.max.y-Y.min.y,At=Y.isBox3?Y.max.z-Y.min.z:1,Lt=Y.min.x,$t=Y.min.y,ee=Y.isBox3?Y.min.z:0;else{let re=Math.pow(2,-X);Ct=Math.floor(Se.width*re),bt=Math.floor(Se.height*re),E.isDataArrayTexture?At=Se.depth:E.isData3DTexture?At=Math.floor(Se.depth*re):At=1,Lt=0,$t=0,ee=0}W!==null?(Rt=W.x,ne=W.y,Ve=W.z):(Rt=0,ne=0,Ve=0);let xe=dt.convert(O.format),_n=dt.convert(O.type),Pt;O.isData3DTexture?(zt.setTexture3D(O,0),Pt=G.TEXTURE_3D):O.isDataArrayTexture||O.isCompressedArrayTexture?(zt.setTexture2DArray(O,0),Pt=G.TEXTURE_2D_ARRAY):(zt.setTexture2D(O,0),Pt=G.TEXTURE_2D),mt.activeTexture(G.TEXTURE0),mt.pixelStorei(G.UNPACK_FLIP_Y_WEBGL,O.flipY),mt.pixelStorei(G.UNPACK_PREMULTIPLY_ALPHA_WEBGL,O.premultiplyAlpha),mt.pixelStorei(G.UNPACK_ALIGNMENT,O.unpackAlignment);let Rn=mt.getParameter(G.UNPACK_ROW_LENGTH),ce=mt.getParameter(G.UNPACK_IMAGE_HEIGHT),io=mt.getParameter(G.UNPACK_SKIP_PIXELS),vn=mt.getParameter(G.UNPACK_SKIP_ROWS),Ru=mt.getParameter(G.UNPACK_SKIP_IMAGES);mt.pixelStorei(G.UNPACK_ROW_LENGTH,Se.width),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,Se.height),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,Lt),mt.pixelStorei(G.UNPACK_SKIP_ROWS,$t),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,ee);let ms=E.isDataArrayTexture||E.isData3DTexture,ro=O.isDataArrayTexture||O.isData3DTexture;if(E.isDepthTexture){let re=Dt.get(E),dn=Dt.get(O),Ni=Dt.get(re.__renderTarget),Ce=Dt.get(dn.__renderTarget);mt.bindFramebuffer(G.READ_FRAMEBUFFER,Ni.__webglFramebuffer),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,Ce.__webglFramebuffer);for(let nn=0;nn<At;nn++)ms&&(G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(E).__webglTexture,X,ee+nn),G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(O).__webglTexture,St,Ve+nn)),G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.DEPTH_BUFFER_BIT,G.NEAREST);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else if(X!==0||E.isRenderTargetTexture||Dt.has(E)){let re=Dt.get(E),dn=Dt.get(O);mt.bindFramebuffer(G.READ_FRAMEBUFFER,P),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,D);for(let Ni=0;Ni<At;Ni++)ms?G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,re.__webglTexture,X,ee+Ni):G.framebufferTexture2D(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,re.__webglTexture,X),ro?G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,dn.__webglTexture,St,Ve+Ni):G.framebufferTexture2D(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,dn.__webglTexture,St),X!==0?G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.COLOR_BUFFER_BIT,G.NEAREST):ro?G.copyTexSubImage3D(Pt,St,Rt,ne,Ve+Ni,Lt,$t,Ct,bt):G.copyTexSubImage2D(Pt,St,Rt,ne,Lt,$t,Ct,bt);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else ro?E.isDataTexture||E.isData3DTexture?G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,_n,Se.data):O.isCompressedArrayTexture?G.compressedTexSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,Se.data):G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,xe,_n,Se):E.isDataTexture?G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,xe,_n,Se.data):E.isCompressedTexture?G.compressedTexSubImage2D(G.TEXTURE_2D,St,Rt,ne,Se.width,Se.height,xe,Se.data):G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,xe,_n,Se);mt.pixelStorei(G.UNPACK_ROW_LENGTH,Rn),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,ce),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,io),mt.pixelStorei(G.UNPACK_SKIP_ROWS,vn),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,Ru),St===0&&O.generateMipmaps===!0&&O.mipmapsAutoUpdate===!0&&G.generateMipmap(Pt),mt.unbindTexture()},this.initRenderTarget=function(E){Dt.get(E).__webglFramebuffer===void 0&&zt.setupRenderTarget(E)},this.initTexture=function(E){E.isCubeTexture?zt.setTextureCube(E,0):E.isData3DTexture?zt.setTexture3D(E,0):E.isDataArrayTexture||E.isCompressedArrayTexture?zt.setTexture2DArray(E,0):zt.setTexture2D(E,0),mt.unbindTexture()},this.resetState=function(){z=0,U=0,Z=null,mt.reset(),xt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Ii}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let n=this.getContext();n.drawingBufferColorSpace=ie._getDrawingBufferColorSpace(t),n.unpackColorSpace=ie._getUnpackColorSpace()}};var x6=2,_6=3,Op=class{renderer;whole=new zn(1,1,{colorSpace:Bn});sheet=new Gs;flat=new us(-1,1,1,-1,0,1);constructor(t){this.renderer=new Np({canvas:t,antialias:!1,alpha:!1}),this.renderer.capabilities.getMaxAnisotropy(),this.renderer.initRenderTarget(this.whole);let n=new Tl({map:this.whole.texture,depthTest:!1,depthWrite:!1});this.sheet.add(new We(new Xo(2,2),n))}size(t,n){let i=Math.min(J_()*x6,_6);this.renderer.setSize(t,n,!1),this.whole.setSize(Math.max(1,Math.floor(t*i)),Math.max(1,Math.floor(n*i)))}ground(t){this.renderer.setClearColor(new kt(t),1)}atOnce(t,n){this.pixels(Math.min(J_(),1)),t.forEach((i,r)=>this.render(i,n,r===0))}async ready(t,n){this.renderer.setRenderTarget(this.whole),this.renderer.compile(t,n),this.renderer.setRenderTarget(null),await this.drawn()}slice(t,n,i){this.renderer.setRenderTarget(this.whole),this.render(t,n,i),this.renderer.setRenderTarget(null)}show(t,n){this.pixels(J_()),this.render(this.sheet,this.flat,!0),this.render(t,n,!1)}async drawn(){let t=this.renderer.getContext(),n=t.fenceSync(t.SYNC_GPU_COMMANDS_COMPLETE,0);if(n){t.flush();do await new Promise(i=>setTimeout(i,0));while(t.clientWaitSync(n,0,0)===t.TIMEOUT_EXPIRED);t.deleteSync(n)}}render(t,n,i){this.renderer.autoClear=i,this.renderer.render(t,n)}pixels(t){Math.abs(this.renderer.getPixelRatio()-t)>.001&&this.renderer.setPixelRatio(t)}};function J_(){return Math.min(devicePixelRatio||1,2)}var Bp=[],S3=matchMedia("(prefers-color-scheme: dark)"),j_=!1;function Q_(){return j_}function Qs(){if(j_)return!1;let e=document.documentElement.dataset.theme;return e?e==="dark":S3.matches}function w3(e){Bp.push(e)}function Er(e){return getComputedStyle(document.documentElement).getPropertyValue(`--${e}`).trim()}function T3(){let e=document.getElementById("theme"),t=i=>{i?document.documentElement.dataset.theme=i:delete document.documentElement.dataset.theme;for(let r of Bp)r(!0)},n="";try{n=localStorage.getItem("gclint-theme")??""}catch{}e&&(n==="light"||n==="dark")&&(e.value=n,t(n)),e?.addEventListener("change",()=>{t(e.value);try{localStorage.setItem("gclint-theme",e.value)}catch{}});for(let i of[!0,!1])addEventListener(i?"beforeprint":"afterprint",()=>{let r=Qs();j_=i;for(let s of Bp)s(Qs()!==r)});S3.addEventListener("change",()=>{for(let i of Bp)i(!0)})}var tv=12,to=26;function ev(e,t,n,i,r,s,o){let a=t.coarse,l=t.means(i),[c,u,h,f]=nv(e,a),d=Math.min((r-2*to)/(u-c),(r*1.05-2*to)/(f-h)),p=(u-c)*d+2*to,y=(f-h)*d+2*to,g=Math.max(0,(r-p)/2),m=A=>(A-c)*d+to+g,x=A=>y-to-(A-h)*d,S=(A,L)=>`${m(A).toFixed(1)} ${x(L).toFixed(1)}`,v=we("svg",{viewBox:`0 0 ${r} ${y.toFixed(0)}`,class:"plan",role:"img","aria-label":"The path from above in the blank"}),M=e.field;M&&v.append(we("rect",{x:m(M.x[0]),y:x(M.y[1]),width:(M.x[1]-M.x[0])*d,height:(M.y[1]-M.y[0])*d,class:M.declared&&M.placed?"blank":"blank assumed"}));for(let A of e.keep_out)v.append(we("rect",{x:m(A.low[0]),y:x(A.high[1]),width:Math.max(1,(A.high[0]-A.low[0])*d),height:Math.max(1,(A.high[1]-A.low[1])*d),class:"keep-out"},we("title",{},A.name)));let b=new Map,_="",w=-1,R=0;for(let A=0;A<a.n;A++){if(a.kind[A]===4||s!==null&&a.tool[A]!==s)continue;let L=v6(a,A,l),B=b.get(L);B||b.set(L,B=[]),a.kind[A]===2&&(R+=Math.hypot(a.x[A+1]-a.x[A],a.y[A+1]-a.y[A])*d),(w!==A||_!==L)&&B.push(`M${S(a.x[A],a.y[A])}`),B.push(`L${S(a.x[A+1],a.y[A+1])}`),_=L,w=A+1}let C=Math.min(1.6,Math.max(.3,.3*(u-c)*(f-h)*d*d/Math.max(R,1)));for(let A of[...b.keys()].sort()){let L=we("path",{d:b.get(A).join(""),class:`line ${A.split(" ")[1]}`});A.includes("cut")&&(L.style.strokeWidth=`${C.toFixed(2)}px`);let B=Number(A.split(" ")[2]??-1);B>=0&&(L.style.stroke=el((B+.5)/tv,Qs())),v.append(L)}return m(0)>0&&m(0)<r&&x(0)>0&&x(0)<y&&v.append(we("path",{d:`M${m(0)-7} ${x(0)}h14M${m(0)} ${x(0)-7}v14`,class:"zero"}),we("circle",{cx:m(0),cy:x(0),r:3.5,class:"zero"},we("title",{},"work zero"))),M&&b6(v,e,m,x,y),o&&M6(v,e,n,m,x),{svg:v,toMm:A=>{let L=v.getScreenCTM();if(!L)return null;let B=new DOMPoint(A.clientX,A.clientY).matrixTransform(L.inverse());return[(B.x-to-g)/d+c,(y-to-B.y)/d+h]},mark:(A,L)=>v.append(we("circle",{cx:m(A),cy:x(L),r:11,class:"here"})),toScreen:(A,L)=>{let B=v.getScreenCTM();if(!B)return null;let P=new DOMPoint(m(A),x(L)).matrixTransform(B);return[P.x,P.y]},perPixel:()=>1/(d*(v.getScreenCTM()?.a||1))}}function v6(e,t,n){let i=e.kind[t];if(i===0)return"0 rapid";if(i===1)return"1 air";if(i===3)return"9 crash";let r=n(t,t+1);return Number.isNaN(r)?"2 cut":`3 cut ${String(Math.min(tv-1,Math.floor(r*tv))).padStart(2,"0")}`}function nv(e,t){let[n,i,r,s]=[1/0,-1/0,1/0,-1/0];e.field&&([n,i,r,s]=[...e.field.x,...e.field.y]);for(let a=0;a<t.n;a++)if(!(t.kind[a]!==2&&(e.field||t.kind[a]===4)))for(let l of[a,a+1])n=Math.min(n,t.x[l]),i=Math.max(i,t.x[l]),r=Math.min(r,t.y[l]),s=Math.max(s,t.y[l]);if(!(i>=n))return[-10,10,-10,10];let o=Math.max(i-n,s-r,1)*.04;return[n-o,i+o,r-o,s+o]}function b6(e,t,n,i,r){let s=t.field,o=t.scale,a=(l,c,u,h)=>e.append(we("text",{x:l,y:c,class:"side","text-anchor":h},u));a(n(s.x[0]),r-6,`X ${ze(s.x[0]*o,4)}`,"start"),a(n(s.x[1]),r-6,`X ${ze(s.x[1]*o,4)} ${t.unit}`,"end"),a(n(s.x[0]),i(s.y[1])-5,`Y ${ze(s.y[1]*o,4)}`,"start"),a(n(s.x[1]),i(s.y[0])+12,`Y ${ze(s.y[0]*o,4)}`,"end")}function M6(e,t,n,i,r){let s=t.findings.length>25?6.5:8,o=new Set;t.findings.forEach((a,l)=>{if(a.row===null)return;let c=a.row,u=i((n.x[c]+n.x[c+1])/2),h=r((n.y[c]+n.y[c+1])/2),f=`${Math.round(u/14)} ${Math.round(h/14)}`;o.has(f)||(o.add(f),e.append(we("g",{class:`pin g-${a.grade}`,"data-pin":l},we("circle",{cx:u,cy:h,r:s}),we("text",{x:u,y:h+3.2,"text-anchor":"middle"},String(l+1)))))})}var E3={type:"change"},rv={type:"start"},C3={type:"end"},kp=new $o,A3=new li,S6=Math.cos(70*bu.DEG2RAD),Qe=new k,ei=2*Math.PI,ue={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},iv=1e-6,zp=class extends hu{constructor(t,n=null){super(t,n),this.state=ue.NONE,this.target=new k,this.cursor=new k,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Ys.ROTATE,MIDDLE:Ys.DOLLY,RIGHT:Ys.PAN},this.touches={ONE:Zs.ROTATE,TWO:Zs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new k,this._lastQuaternion=new ui,this._lastTargetPosition=new k,this._quat=new ui().setFromUnitVectors(t.up,new k(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new Rl,this._sphericalDelta=new Rl,this._scale=1,this._panOffset=new k,this._rotateStart=new Bt,this._rotateEnd=new Bt,this._rotateDelta=new Bt,this._panStart=new Bt,this._panEnd=new Bt,this._panDelta=new Bt,this._dollyStart=new Bt,this._dollyEnd=new Bt,this._dollyDelta=new Bt,this._dollyDirection=new k,this._mouse=new Bt,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=T6.bind(this),this._onPointerDown=w6.bind(this),this._onPointerUp=E6.bind(this),this._onContextMenu=D6.bind(this),this._onMouseWheel=R6.bind(this),this._onKeyDown=P6.bind(this),this._onTouchStart=I6.bind(this),this._onTouchMove=L6.bind(this),this._onMouseDown=A6.bind(this),this._onMouseMove=C6.bind(this),this._interceptControlDown=N6.bind(this),this._interceptControlUp=U6.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=ue.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(E3),this.update(),this.state=ue.NONE}pan(t,n){this._pan(t,n),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let n=this.object.position;Qe.copy(n).sub(this.target),Qe.applyQuaternion(this._quat),this._spherical.setFromVector3(Qe),this.autoRotate&&this.state===ue.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let i=this.minAzimuthAngle,r=this.maxAzimuthAngle;isFinite(i)&&isFinite(r)&&(i<-Math.PI?i+=ei:i>Math.PI&&(i-=ei),r<-Math.PI?r+=ei:r>Math.PI&&(r-=ei),i<=r?this._spherical.theta=Math.max(i,Math.min(r,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(i+r)/2?Math.max(i,this._spherical.theta):Math.min(r,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let s=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),s=o!=this._spherical.radius}if(Qe.setFromSpherical(this._spherical),Qe.applyQuaternion(this._quatInverse),n.copy(this.target).add(Qe),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=Qe.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),s=!!l}else if(this.object.isOrthographicCamera){let a=new k(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),s=l!==this.object.zoom;let c=new k(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=Qe.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(kp.origin.copy(this.object.position),kp.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(kp.direction))<S6?this.object.lookAt(this.target):(A3.setFromNormalAndCoplanarPoint(this.object.up,this.target),kp.intersectPlane(A3,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),s=!0)}return this._scale=1,this._performCursorZoom=!1,s||this._lastPosition.distanceToSquared(this.object.position)>iv||8*(1-this._lastQuaternion.dot(this.object.quaternion))>iv||this._lastTargetPosition.distanceToSquared(this.target)>iv?(this.dispatchEvent(E3),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?ei/60*this.autoRotateSpeed*t:ei/60/60*this.autoRotateSpeed}_getZoomScale(t){let n=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*n)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,n){Qe.setFromMatrixColumn(n,0),Qe.multiplyScalar(-t),this._panOffset.add(Qe)}_panUp(t,n){this.screenSpacePanning===!0?Qe.setFromMatrixColumn(n,1):(Qe.setFromMatrixColumn(n,0),Qe.crossVectors(this.object.up,Qe)),Qe.multiplyScalar(t),this._panOffset.add(Qe)}_pan(t,n){let i=this.domElement;if(this.object.isPerspectiveCamera){let r=this.object.position;Qe.copy(r).sub(this.target);let s=Qe.length();s*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*s/i.clientHeight,this.object.matrix),this._panUp(2*n*s/i.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/i.clientWidth,this.object.matrix),this._panUp(n*(this.object.top-this.object.bottom)/this.object.zoom/i.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,n){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let i=this.domElement.getBoundingClientRect(),r=t-i.left,s=n-i.top,o=i.width,a=i.height;this._mouse.x=r/o*2-1,this._mouse.y=-(s/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/n.clientHeight),this._rotateUp(ei*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let n=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),n=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),n=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),n=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),n=!0;break}n&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateStart.set(i,r)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panStart.set(i,r)}}_handleTouchStartDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyStart.set(0,s)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let i=this._getSecondPointerPosition(t),r=.5*(t.pageX+i.x),s=.5*(t.pageY+i.y);this._rotateEnd.set(r,s)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/n.clientHeight),this._rotateUp(ei*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panEnd.set(i,r)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyEnd.set(0,s),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+n.x)*.5,a=(t.pageY+n.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId){this._pointers.splice(n,1);return}}_isTrackingPointer(t){for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId)return!0;return!1}_trackPointer(t){let n=this._pointerPositions[t.pointerId];n===void 0&&(n=new Bt,this._pointerPositions[t.pointerId]=n),n.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let n=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[n]}_customWheelEvent(t){let n=t.deltaMode,i={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(n){case 1:i.deltaY*=16;break;case 2:i.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(i.deltaY*=10),i}};function w6(e){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(e.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(e)&&(this._addPointer(e),e.pointerType==="touch"?this._onTouchStart(e):this._onMouseDown(e),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function T6(e){this.enabled!==!1&&(e.pointerType==="touch"?this._onTouchMove(e):this._onMouseMove(e))}function E6(e){switch(this._removePointer(e),this._pointers.length){case 0:this.domElement.releasePointerCapture(e.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(C3),this.state=ue.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],n=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:n.x,pageY:n.y});break}}function A6(e){let t;switch(e.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Ys.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(e),this.state=ue.DOLLY;break;case Ys.ROTATE:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}break;case Ys.PAN:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(rv)}function C6(e){switch(this.state){case ue.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(e);break;case ue.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(e);break;case ue.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(e);break}}function R6(e){this.enabled===!1||this.enableZoom===!1||this.state!==ue.NONE||(e.preventDefault(),this.dispatchEvent(rv),this._handleMouseWheel(this._customWheelEvent(e)),this.dispatchEvent(C3))}function P6(e){this.enabled!==!1&&this._handleKeyDown(e)}function I6(e){switch(this._trackPointer(e),this._pointers.length){case 1:switch(this.touches.ONE){case Zs.ROTATE:if(this.enableRotate===!1){this.state=ue.NONE;break}this._handleTouchStartRotate(e),this.state=ue.TOUCH_ROTATE;break;case Zs.PAN:if(this.enablePan===!1){this.state=ue.NONE;break}this._handleTouchStartPan(e),this.state=ue.TOUCH_PAN;break;default:this.state=ue.NONE}break;case 2:switch(this.touches.TWO){case Zs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(e),this.state=ue.TOUCH_DOLLY_PAN;break;case Zs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(e),this.state=ue.TOUCH_DOLLY_ROTATE;break;default:this.state=ue.NONE}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(rv)}function L6(e){switch(this._trackPointer(e),this.state){case ue.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(e),this.update();break;case ue.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(e),this.update();break;case ue.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(e),this.update();break;case ue.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(e),this.update();break;default:this.state=ue.NONE}}function D6(e){this.enabled!==!1&&e.preventDefault()}function N6(e){e.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function U6(e){e.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}wt.line={worldUnits:{value:1},linewidth:{value:1},resolution:{value:new Bt},dashOffset:{value:0},dashScale:{value:1},dashSize:{value:1},gapSize:{value:1}};Vn.line={uniforms:Mu.merge([wt.common,wt.fog,wt.line]),vertexShader:`
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
		`};var jo=class extends Li{constructor(t){super({type:"LineMaterial",uniforms:Mu.clone(Vn.line.uniforms),vertexShader:Vn.line.vertexShader,fragmentShader:Vn.line.fragmentShader,clipping:!0}),this.isLineMaterial=!0,this.setValues(t)}get color(){return this.uniforms.diffuse.value}set color(t){this.uniforms.diffuse.value=t}get worldUnits(){return"WORLD_UNITS"in this.defines}set worldUnits(t){t===!0!==this.worldUnits&&(this.needsUpdate=!0),t===!0?this.defines.WORLD_UNITS="":delete this.defines.WORLD_UNITS}get linewidth(){return this.uniforms.linewidth.value}set linewidth(t){this.uniforms.linewidth&&(this.uniforms.linewidth.value=t)}get dashed(){return"USE_DASH"in this.defines}set dashed(t){t===!0!==this.dashed&&(this.needsUpdate=!0),t===!0?this.defines.USE_DASH="":delete this.defines.USE_DASH}get dashScale(){return this.uniforms.dashScale.value}set dashScale(t){this.uniforms.dashScale.value=t}get dashSize(){return this.uniforms.dashSize.value}set dashSize(t){this.uniforms.dashSize.value=t}get dashOffset(){return this.uniforms.dashOffset.value}set dashOffset(t){this.uniforms.dashOffset.value=t}get gapSize(){return this.uniforms.gapSize.value}set gapSize(t){this.uniforms.gapSize.value=t}get opacity(){return this.uniforms.opacity.value}set opacity(t){this.uniforms&&(this.uniforms.opacity.value=t)}get resolution(){return this.uniforms.resolution.value}set resolution(t){this.uniforms.resolution.value.copy(t)}get alphaToCoverage(){return"USE_ALPHA_TO_COVERAGE"in this.defines}set alphaToCoverage(t){this.defines&&(t===!0!==this.alphaToCoverage&&(this.needsUpdate=!0),t===!0?this.defines.USE_ALPHA_TO_COVERAGE="":delete this.defines.USE_ALPHA_TO_COVERAGE)}};var R3=new fi,Gp=new k,Qo=class extends uu{constructor(){super(),this.isLineSegmentsGeometry=!0,this.type="LineSegmentsGeometry";let t=[-1,2,0,1,2,0,-1,1,0,1,1,0,-1,0,0,1,0,0,-1,-1,0,1,-1,0],n=[-1,2,1,2,-1,1,1,1,-1,-1,1,-1,-1,-2,1,-2],i=[0,2,1,2,3,1,2,4,3,4,5,3,4,6,5,6,7,5];this.setIndex(i),this.setAttribute("position",new Ze(t,3)),this.setAttribute("uv",new Ze(n,2))}applyMatrix4(t){let n=this.attributes.instanceStart,i=this.attributes.instanceEnd;return n!==void 0&&(n.applyMatrix4(t),i.applyMatrix4(t),n.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this}setPositions(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new qs(n,6,1);return this.setAttribute("instanceStart",new Ki(i,3,0)),this.setAttribute("instanceEnd",new Ki(i,3,3)),this.instanceCount=this.attributes.instanceStart.count,this.computeBoundingBox(),this.computeBoundingSphere(),this}setColors(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new qs(n,6,1);return this.setAttribute("instanceColorStart",new Ki(i,3,0)),this.setAttribute("instanceColorEnd",new Ki(i,3,3)),this}fromWireframeGeometry(t){return this.setPositions(t.attributes.position.array),this}fromEdgesGeometry(t){return this.setPositions(t.attributes.position.array),this}fromMesh(t){return this.fromWireframeGeometry(new iu(t.geometry)),this}fromLineSegments(t){let n=t.geometry;return this.setPositions(n.attributes.position.array),this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new fi);let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;t!==void 0&&n!==void 0&&(this.boundingBox.setFromBufferAttribute(t),R3.setFromBufferAttribute(n),this.boundingBox.union(R3))}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Zi),this.boundingBox===null&&this.computeBoundingBox();let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;if(t!==void 0&&n!==void 0){let i=this.boundingSphere.center;this.boundingBox.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)Gp.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared(Gp)),Gp.fromBufferAttribute(n,s),r=Math.max(r,i.distanceToSquared(Gp));this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&console.error("THREE.LineSegmentsGeometry.computeBoundingSphere(): Computed radius is NaN. The instanced position data is likely to have NaN values.",this)}}toJSON(){}};var sv=new de,P3=new k,I3=new k,gn=new de,yn=new de,Ar=new de,ov=new k,av=new ve,xn=new fu,L3=new k,Vp=new fi,Hp=new Zi,Cr=new de,Rr,ta;function D3(e,t,n){return Cr.set(0,0,-t,1).applyMatrix4(e.projectionMatrix),Cr.multiplyScalar(1/Cr.w),Cr.x=ta/n.width,Cr.y=ta/n.height,Cr.applyMatrix4(e.projectionMatrixInverse),Cr.multiplyScalar(1/Cr.w),Math.abs(Math.max(Cr.x,Cr.y))}function F6(e,t){let n=e.matrixWorld,i=e.geometry,r=i.attributes.instanceStart,s=i.attributes.instanceEnd,o=Math.min(i.instanceCount,r.count);for(let a=0,l=o;a<l;a++){xn.start.fromBufferAttribute(r,a),xn.end.fromBufferAttribute(s,a),xn.applyMatrix4(n);let c=new k,u=new k;Rr.distanceSqToSegment(xn.start,xn.end,u,c),u.distanceTo(c)<ta*.5&&t.push({point:u,pointOnLine:c,distance:Rr.origin.distanceTo(u),object:e,face:null,faceIndex:a,uv:null,uv1:null})}}function O6(e,t,n){let i=t.projectionMatrix,s=e.material.resolution,o=e.matrixWorld,a=e.geometry,l=a.attributes.instanceStart,c=a.attributes.instanceEnd,u=Math.min(a.instanceCount,l.count),h=-t.near;Rr.at(1,Ar),Ar.w=1,Ar.applyMatrix4(t.matrixWorldInverse),Ar.applyMatrix4(i),Ar.multiplyScalar(1/Ar.w),Ar.x*=s.x/2,Ar.y*=s.y/2,Ar.z=0,ov.copy(Ar),av.multiplyMatrices(t.matrixWorldInverse,o);for(let f=0,d=u;f<d;f++){if(gn.fromBufferAttribute(l,f),yn.fromBufferAttribute(c,f),gn.w=1,yn.w=1,gn.applyMatrix4(av),yn.applyMatrix4(av),gn.z>h&&yn.z>h)continue;if(gn.z>h){let S=gn.z-yn.z,v=(gn.z-h)/S;gn.lerp(yn,v)}else if(yn.z>h){let S=yn.z-gn.z,v=(yn.z-h)/S;yn.lerp(gn,v)}gn.applyMatrix4(i),yn.applyMatrix4(i),gn.multiplyScalar(1/gn.w),yn.multiplyScalar(1/yn.w),gn.x*=s.x/2,gn.y*=s.y/2,yn.x*=s.x/2,yn.y*=s.y/2,xn.start.copy(gn),xn.start.z=0,xn.end.copy(yn),xn.end.z=0;let y=xn.closestPointToPointParameter(ov,!0);xn.at(y,L3);let g=bu.lerp(gn.z,yn.z,y),m=g>=-1&&g<=1,x=ov.distanceTo(L3)<ta*.5;if(m&&x){xn.start.fromBufferAttribute(l,f),xn.end.fromBufferAttribute(c,f),xn.start.applyMatrix4(o),xn.end.applyMatrix4(o);let S=new k,v=new k;Rr.distanceSqToSegment(xn.start,xn.end,v,S),n.push({point:v,pointOnLine:S,distance:Rr.origin.distanceTo(v),object:e,face:null,faceIndex:f,uv:null,uv1:null})}}}var Au=class extends We{constructor(t=new Qo,n=new jo({color:Math.random()*16777215})){super(t,n),this.isLineSegments2=!0,this.type="LineSegments2"}computeLineDistances(){let t=this.geometry,n=t.attributes.instanceStart,i=t.attributes.instanceEnd,r=new Float32Array(2*n.count);for(let o=0,a=0,l=n.count;o<l;o++,a+=2)P3.fromBufferAttribute(n,o),I3.fromBufferAttribute(i,o),r[a]=a===0?0:r[a-1],r[a+1]=r[a]+P3.distanceTo(I3);let s=new qs(r,2,1);return t.setAttribute("instanceDistanceStart",new Ki(s,1,0)),t.setAttribute("instanceDistanceEnd",new Ki(s,1,1)),this}raycast(t,n){let i=this.material.worldUnits,r=t.camera;if(r===null&&!i&&console.error('LineSegments2: "Raycaster.camera" needs to be set in order to raycast against LineSegments2 while worldUnits is set to false.'),i===!1&&(this.material.resolution.x===0||this.material.resolution.y===0))return;let s=t.params.Line2!==void 0&&t.params.Line2.threshold||0;Rr=t.ray;let o=this.matrixWorld,a=this.geometry,l=this.material;ta=l.linewidth+s,a.boundingSphere===null&&a.computeBoundingSphere(),Hp.copy(a.boundingSphere).applyMatrix4(o);let c;if(i)c=ta*.5;else{let h=Math.max(r.near,Hp.distanceToPoint(Rr.origin));c=D3(r,h,l.resolution)}if(Hp.radius+=c,Rr.intersectsSphere(Hp)===!1)return;a.boundingBox===null&&a.computeBoundingBox(),Vp.copy(a.boundingBox).applyMatrix4(o);let u;if(i)u=ta*.5;else{let h=Math.max(r.near,Vp.distanceToPoint(Rr.origin));u=D3(r,h,l.resolution)}Vp.expandByScalar(u),Rr.intersectsBox(Vp)!==!1&&(i?F6(this,n):O6(this,r,n))}onBeforeRender(t){let n=this.material.uniforms;n&&n.resolution&&(t.getViewport(sv),this.material.uniforms.resolution.value.set(sv.z,sv.w))}};var N3=[3e3,6e3,12e3,24e3,48e3,96e3],B6=30,U3=36,k6=20,Wp=4,z6=3,lv=60,G6=16e3,V6=8e3,F3=14,$p=class{cost=0;slice=G6;level=2;budgets=[];times=[];pictures=0;longest=0;spent={cost:0,ms:0};known=!1;each=0;whole(t){this.cost=t,this.budgets=N3.filter((n,i)=>i===0||N3[i-1]<t),this.level=Math.min(this.level,this.budgets.length)}get budget(){return this.budgets[this.level]??null}get some(){return this.budget??this.budgets[this.budgets.length-1]}get quick(){return this.known&&this.cost*this.each<=2*F3}starts(){this.pictures>=Wp&&this.longest<k6&&this.level<this.budgets.length&&this.level++,this.times=[],this.pictures=this.longest=0}took(t){if(this.times.push(t),this.times.length<Wp)return;let n=this.times.reduce((i,r)=>i+r,0)/Wp;this.times=[],this.pictures+=Wp,this.longest=Math.max(this.longest,n),n>U3&&this.level>0&&(this.level-=n>2*U3&&this.level>1?2:1)}sliced(t,n){if(n>1.5*lv?this.slice=Math.max(V6,this.slice*(lv/n)):n<lv/2&&t>this.slice/2&&(this.slice*=2),this.known||(this.spent.cost+=t,this.spent.ms+=n,this.spent.cost<this.cost))return;this.known=!0,this.each=this.spent.ms/Math.max(this.spent.cost,1);let i=B6/2/this.each*z6;this.level=this.each*this.cost<=F3?this.budgets.length:Math.max(0,this.budgets.filter(r=>r<=i).length-1)}};function O3(e,t){let n=1;for(;2*Math.ceil(e.nx/n)*Math.ceil(e.ny/n)>t&&Math.min(e.nx,e.ny)>2*n;)n++;return n}function B3(e){let t=e.nx-1,n=e.ny-1;return 2*t*n+4*t+4*n}function k3(e){return(e.index?.count??0)/3}function cv(e,t,n,i){let r=e.nx,s=e.ny,o=Math.ceil(r/i),a=Math.ceil(s/i),l=new Float32Array(o*a);for(let m=0;m<s;m++)for(let x=0;x<r;x++){let S=Math.floor(m/i)*o+Math.floor(x/i);l[S]=Math.max(l[S],t[m*r+x])}let c=2*(o-1)+2*(a-1),u=new Float32Array((o*a+c*6)*3),h=new Uint32Array((o-1)*(a-1)*6+c*6);for(let m=0;m<a;m++)for(let x=0;x<o;x++){let S=m*o+x;u[S*3]=e.x[0]+(e.x[1]-e.x[0])*(x/(o-1)),u[S*3+1]=e.y[0]+(e.y[1]-e.y[0])*(m/(a-1)),u[S*3+2]=Math.max(e.top-l[S],n)}let f=e.thick===null?-1/0:n+.001,d=0,p=o*a;for(let m=0;m+1<a;m++)for(let x=0;x+1<o;x++){let S=m*o+x,v=S+1,M=S+o,b=M+1;Math.max(u[S*3+2],u[v*3+2],u[M*3+2],u[b*3+2])<=f||(h.set([S,v,b,S,b,M],d),d+=6)}let y=(m,x)=>{let[S,v,M]=u.subarray(m*3,m*3+3),[b,_,w]=u.subarray(x*3,x*3+3);u.set([S,v,M,S,v,n,b,_,w,b,_,w,S,v,n,b,_,n],p*3);for(let R=0;R<6;R++)h[d++]=p++};for(let m=0;m+1<o;m++)y(m,m+1),y((a-1)*o+m,(a-1)*o+m+1);for(let m=0;m+1<a;m++)y(m*o,(m+1)*o),y(m*o+o-1,(m+1)*o+o-1);let g=new Ke().setAttribute("position",new Ye(u,3));return g.setIndex(new Ye(h.subarray(0,d),1)),g.computeVertexNormals(),g.computeBoundingSphere(),g}function z3(e,t){let n=e.index.array,i=[];for(let r=0;r<n.length;r+=t*3){let s=new Ke;for(let o of["position","normal"])s.setAttribute(o,e.attributes[o]);s.setIndex(new Ye(n.slice(r,r+t*3),1)),s.boundingSphere=e.boundingSphere,i.push(s)}return i}var H6=6e4,W6={0:1.3,1:1.1,2:2.5,3:5},G3=2,uv=8,Xp=4e3,$6=200,X6=200,q6=9,V3=.45,Y6=[[3,.15],[0,.2],[1,.15],[2,.5]],qp=class{constructor(t,n,i,r,s,o,a,l){this.canvas=t;this.painter=n;this.model=i;this.path=r;this.levels=s;this.quantity=a;this.shown=l;let[c,u,h,f]=nv(i,r),d=i.field?.top??0,p=Math.max(i.field?.thick??0,i.field?.deepest??0,1),y=Math.min(Z6(r)-d,Math.max(u-c,f-h)/4);this.box=[new k(c,h,d-p),new k(u,f,d+Math.max(y,0))],this.centre=this.box[0].clone().add(this.box[1]).multiplyScalar(.5),this.radius=Math.max(this.box[0].distanceTo(this.box[1])/2,1);let g=i.field?.nx&&i.field.ny?i.field:null;this.left=g?.cut?o.numbers(g.cut):null,this.found=g?.start?o.numbers(g.start):null,this.camera.up.set(0,0,1),this.controls=new zp(this.camera,t),this.controls.enableZoom=!1,this.controls.addEventListener("change",()=>{this.move(),this.redraw()}),this.controls.addEventListener("start",()=>{this.fitted=null,this.complete||(this.move(),this.redraw())}),t.addEventListener("wheel",x=>this.wheel(x),{passive:!1});let m=new lu(16777215,1.6);m.position.set(-.6,-.35,1),this.scene.add(new cu(16777215,1.7),m,this.always,this.whole),this.fitted="corner",this.resize(),this.rebuild()}canvas;painter;model;path;levels;quantity;shown;scene=new Gs;camera=new us;pace=new $p;controls;centre;radius;box;left;found;over=new Gs;always=new qi;whole=new qi;parts=[];ready=new Set;few=new Map;shownFew=null;shownMay=0;lit=null;rows=[];asked=!1;complete=!1;waiting=!1;drawnAt=0;flight=0;run=0;rest=0;moving=!1;size={width:0,height:0};fitted=null;onDraw=()=>{};set(t,n){this.quantity=t,this.shown=n,this.rebuild()}resize(){let t=this.canvas.clientWidth,n=this.canvas.clientHeight;if(!t||!n)return;this.size={width:t,height:n},this.painter.size(t,n);let i=this.radius*.86,r=t/n,s=r>=1?i*r:i,o=r>=1?i:i/r;Object.assign(this.camera,{left:-s,right:s,top:o,bottom:-o,near:-this.radius*60,far:this.radius*60}),this.camera.updateProjectionMatrix(),this.fitted&&this.look(this.fitted,!1),this.redraw()}look(t,n=!0){let i={corner:[-.55,-1,.95],above:[0,-1e-4,1],front:[0,-1,.02],side:[1,0,.02]}[t],r=new k(...i).normalize().multiplyScalar(this.radius*4);this.fly(this.centre.clone(),this.fitting(r),r,n),this.fitted=t}fitting(t){let n=new k(0,0,1).cross(t).normalize(),i=t.clone().cross(n).normalize(),r=0,s=0;for(let o=0;o<8;o++){let a=new k(this.box[o&1].x,this.box[o>>1&1].y,this.box[o>>2].z).sub(this.centre);r=Math.max(r,Math.abs(a.dot(n))),s=Math.max(s,Math.abs(a.dot(i)))}return .94*Math.min(this.camera.right/Math.max(r,1e-6),this.camera.top/Math.max(s,1e-6))}goTo(t,n){let i=this.middle(t),r=Math.min(40,Math.max(1,this.radius/Math.max(n,this.radius/40)));this.fly(i,r,this.camera.position.clone().sub(this.controls.target),!0)}get target(){let{x:t,y:n,z:i}=this.controls.target;return[t,n,i,this.camera.zoom]}turn(t,n){this.fitted=null;let i=this.camera.position.clone().sub(this.controls.target),r=i.length(),s=Math.atan2(i.y,i.x)+t,o=Math.min(Math.PI/2-1e-4,Math.max(-Math.PI/2+1e-4,Math.asin(i.z/r)+n));i.set(Math.cos(o)*Math.cos(s),Math.cos(o)*Math.sin(s),Math.sin(o)).multiplyScalar(r),this.camera.position.copy(this.controls.target).add(i),this.controls.update(),this.move(),this.redraw()}zoom(t){this.fitted=null,this.camera.zoom=Math.min(400,Math.max(.3,this.camera.zoom*t)),this.camera.updateProjectionMatrix(),this.move(),this.redraw()}light(t){this.rows=[...t];for(let n of this.lit?[this.lit.all,this.lit.few]:[])this.over.remove(n),H3(n);if(this.lit=null,this.rows.length){let n=Math.ceil(this.rows.length/X6),i=r=>{let s=new Qo().setPositions(this.ends(r,r.map(a=>a+1))),o=new Au(s,new jo({color:new kt(Er("lit")),linewidth:5,depthTest:!1,transparent:!0,opacity:.9}));return this.over.add(o),o};this.lit={all:i(this.rows),few:i(this.rows.filter((r,s)=>s%n===0))}}this.next()}pick(t,n){let i=this.canvas.getBoundingClientRect(),r=t-i.left,s=n-i.top;this.camera.updateMatrixWorld();let o=this.camera.projectionMatrix.clone().multiply(this.camera.matrixWorldInverse).elements,{x:a,y:l,z:c,n:u}=this.path,h=i.width/2,f=i.height/2,d=null,p=q6,y=1/0,g=(m,x)=>{let S=(o[0]*a[m]+o[4]*l[m]+o[8]*c[m]+o[12]+1)*h-r,v=(1-o[1]*a[m]-o[5]*l[m]-o[9]*c[m]-o[13])*f-s,M=(o[0]*a[x]+o[4]*l[x]+o[8]*c[x]+o[12]+1)*h-r-S,b=(1-o[1]*a[x]-o[5]*l[x]-o[9]*c[x]-o[13])*f-s-v,_=M*M+b*b,w=_>0?Math.min(1,Math.max(0,-(S*M+v*b)/_)):0,R=Math.hypot(S+w*M,v+w*b);if(R>p+1.5)return;let C=o[2]*a[m]+o[6]*l[m]+o[10]*c[m];(R<p-1.5||C<y)&&(d=[m,x],p=Math.min(p,R),y=C)};if(this.shownFew){for(let{from:x,to:S}of this.shownFew)for(let v=0;v<x.length;v++)g(x[v],S[v]);let m=d;if(d=null,p=1/0,y=1/0,m)for(let x=m[0];x<m[1];x++)g(x,x+1)}else for(let m=0;m<u;m++)this.visible(m)&&g(m,m+1);return d?d[0]:null}project(t){let{x:n,y:i,z:r}=this.middle(t);return this.projectPoint(n,i,r)}projectPoint(t,n,i){this.camera.updateMatrixWorld();let r=new k(t,n,i).project(this.camera);return[(r.x+1)/2*this.size.width,(1-r.y)/2*this.size.height]}rebuild(){for(let t of[this.over,this.always,this.whole,...[...this.few.values()].map(n=>n.group)])for(let n of[...t.children])t.remove(n),H3(n);for(let{group:t}of this.few.values())this.scene.remove(t);this.few.clear(),this.lit=null,this.painter.ground(Er("figure")),this.shown.stock&&this.model.field&&this.addEdges();for(let t of this.model.keep_out)this.addKeepOut(t.low,t.high);this.addZero(),this.parts=[...this.stockParts(),...this.lineParts()],this.pace.whole(this.parts.reduce((t,n)=>t+n.cost,0)),this.light(this.rows),this.redraw()}redraw(){this.asked=!0,this.complete=!1,this.run++,clearTimeout(this.rest),this.rest=window.setTimeout(()=>{this.settle()},this.moving?$6:0),this.next()}move(){this.moving||(this.moving=!0,this.pace.starts())}next(){this.waiting||(this.waiting=!0,requestAnimationFrame(t=>{if(this.waiting=!1,this.drawnAt&&this.moving&&this.pace.took(t-this.drawnAt),this.drawnAt=0,this.asked){this.asked=!1;let n=this.pace.budget;if(this.whole.children.length===this.parts.length&&(n===null||!this.moving&&this.pace.quick)?this.drawWhole():this.drawFew(this.pace.some),this.onDraw(),!this.moving)return;this.drawnAt=t,this.next()}else this.complete?this.present():this.shownFew&&this.drawFew(this.shownMay)}))}drawFew(t){let{group:n,drawn:i}=this.fewFor(t);this.show(n),this.painter.atOnce([this.scene,this.over],this.camera),this.shownMay=t,this.tell(i,t)}drawWhole(){this.show(this.whole),this.painter.slice(this.scene,this.camera,!0),this.present()}present(){this.complete=!0;let t=this.whole.children.filter((n,i)=>this.parts[i].form==="stock");this.canvas.dataset.faces=String(t.reduce((n,i)=>n+k3(i.geometry),0)),this.show(this.whole),this.painter.show(this.over,this.camera),this.tell(null,this.pace.cost)}async settle(){let t=this.run,{parts:n,whole:i}=this;if(this.moving=!1,!this.complete)for(let r=0,s=!0;r<n.length||s;s=!1){let o=performance.now(),a=r,l=0;do r>=i.children.length&&r<n.length&&this.make(r),l+=n[r]?.cost??0;while(++r<n.length&&l+n[r].cost<=this.pace.slice&&performance.now()-o<40);let c=n.slice(a,r).map(u=>u.form).filter(u=>!this.ready.has(u));c.length&&await this.painter.ready(this.scene,this.camera);for(let u of c)this.ready.add(u);if(t!==this.run)return;this.show(i,r>=n.length),i.children.forEach((u,h)=>{u.visible=h>=a&&h<r}),this.painter.slice(this.scene,this.camera,s);for(let u of i.children)u.visible=!0;if(r>=n.length&&(this.present(),this.onDraw()),await this.painter.drawn(),t!==this.run)return;this.pace.sliced(l,performance.now()-o)}}make(t){this.whole.add(this.parts[t].make())}show(t,n=!0){this.whole.visible=t===this.whole;for(let i of this.few.values())i.group.visible=i.group===t;this.always.visible=n,this.lit&&(this.lit.all.visible=this.whole.visible,this.lit.few.visible=!this.whole.visible)}tell(t,n){this.shownFew=t,this.canvas.dataset.drawn=t?"few":"all",this.canvas.dataset.cost=String(Math.round(n))}fly(t,n,i,r){let s=this.controls.target.clone(),o=this.camera.zoom,a=this.camera.position.clone().sub(s),l=performance.now(),c=++this.flight,u=!r||matchMedia("(prefers-reduced-motion: reduce)").matches;this.fitted=null;let h=()=>{if(c!==this.flight)return;let f=u?1:Math.min(1,(performance.now()-l)/350),d=f*f*(3-2*f);this.controls.target.lerpVectors(s,t,d),this.camera.position.copy(this.controls.target).add(a.clone().lerp(i,d).setLength(this.radius*4)),this.camera.zoom=o*Math.pow(n/o,d),f<1&&this.move(),this.camera.updateProjectionMatrix(),this.controls.update(),this.redraw(),f<1&&requestAnimationFrame(h)};h()}wheel(t){document.activeElement!==this.canvas&&!t.ctrlKey||(t.preventDefault(),this.zoom(Math.exp(-t.deltaY*.0015)))}middle(t){let{x:n,y:i,z:r}=this.path;return new k((n[t]+n[t+1])/2,(i[t]+i[t+1])/2,(r[t]+r[t+1])/2)}visible(t){let{kind:n,tool:i}=this.path;return n[t]===4||this.shown.tool!==null&&i[t]!==this.shown.tool?!1:n[t]===0?this.shown.rapids:n[t]===1?this.shown.air:!0}ends(t,n){let{x:i,y:r,z:s}=this.path,o=new Float32Array(t.length*6);for(let a=0,l=0;a<t.length;a++){let c=t[a],u=n[a];o[l++]=i[c],o[l++]=r[c],o[l++]=s[c],o[l++]=i[u],o[l++]=r[u],o[l++]=s[u]}return o}get cut(){return this.shown.before&&this.found?this.found:this.left}shows(t){return t===0?this.shown.rapids:t===1?this.shown.air:!0}stockParts(){let{field:t}=this.model;if(!this.shown.stock||!t)return[];if(!this.cut)return[{cost:12,form:"stock",make:()=>new We(this.block(),this.ground())}];let n=this.ground(),i=null;return Array.from({length:Math.ceil(B3(t)/Xp)},(r,s)=>({cost:Xp,form:"stock",make:()=>(i??=z3(cv(t,this.cut,this.bottom(),1),Xp),new We(i[s]??new Ke,n))}))}lineParts(){let t=[];for(let n of[0,1,2,3].filter(i=>this.shows(i))){let i=this.levels.all(n,this.shown.tool,this.quantity),r=i.from.length,s=n===3||r<=H6,o=s?uv:G3,a=Math.floor(Xp/o);for(let l=0;l<r;l+=a){let c=Math.min(r,l+a);t.push({cost:(c-l)*o,form:`${n} ${s}`,make:()=>this.lines(n,{from:i.from.subarray(l,c),to:i.to.subarray(l,c),colour:i.colour.subarray(l,c)},s)})}}return t}fewFor(t){let n=this.few.get(t);if(n)return n;let i=new qi,r=[],{field:s}=this.model,o=t;this.shown.stock&&s&&!this.cut&&i.add(new We(this.block(),this.ground())),this.shown.stock&&s&&this.cut&&(i.add(new We(cv(s,this.cut,this.bottom(),O3(s,t*V3)),this.ground())),o-=t*V3);for(let[a,l]of Y6.filter(([c])=>this.shows(c))){let c=this.levels.few(a,this.shown.tool,this.quantity,Math.floor(o*l/(a===3?uv:G3)),this.radius);c.from.length&&(r.push(c),i.add(this.lines(a,c,a===3||c.from.length*uv<=o*l)))}return this.scene.add(i),this.few.set(t,{group:i,drawn:r}),this.few.get(t)}lines(t,n,i){let r=this.ends(n.from,n.to),s=this.radius/(t===3?110:45),o=t===0||t===3,a=new kt(t===2?16777215:Er(t===0?"rapid":t===1?"air":"halt")),l=t===2?this.colours(n.colour):null,c=t===2;if(i){let f=new Qo().setPositions(r);l&&f.setColors(l);let d=new Au(f,new jo({color:a,vertexColors:c,linewidth:W6[t],dashed:o,dashSize:s,gapSize:s,depthTest:t!==3}));return d.renderOrder=t===3?3:0,o?d.computeLineDistances():d}let u=new Ke().setAttribute("position",new Ye(r,3));l&&u.setAttribute("color",new Ye(l,3));let h=new Hs(u,o?new ru({color:a,dashSize:s,gapSize:s}):new Sr({color:a,vertexColors:c}));return o?h.computeLineDistances():h}colours(t){let n=Qs(),i=[],r=new kt(Er("plain-cut")),s=new Float32Array(t.length*6);for(let o=0;o<256;o++)i.push(new kt(el(o/255,n)));for(let o=0,a=0;o<t.length;o++){let l=t[o],{r:c,g:u,b:h}=Number.isNaN(l)?r:i[Math.round(Math.min(1,Math.max(0,l))*255)];s[a++]=c,s[a++]=u,s[a++]=h,s[a++]=c,s[a++]=u,s[a++]=h}return s}add(t){return this.always.add(t),t}bottom(){let t=this.model.field;return t.top-(t.thick??Math.max(t.deepest*1.15,this.radius/30))}ground(){return new Al({color:new kt(Er("stock")),side:Di,polygonOffset:!0,polygonOffsetFactor:1.5,polygonOffsetUnits:2})}block(){let t=this.model.field,n=this.bottom();return new cs(t.x[1]-t.x[0],t.y[1]-t.y[0],t.top-n).translate((t.x[0]+t.x[1])/2,(t.y[0]+t.y[1])/2,(t.top+n)/2)}addEdges(){this.add(new Hs(new El(this.block()),new Sr({color:new kt(Er("edge"))})))}addKeepOut(t,n){let i=new cs(n[0]-t[0],n[1]-t[1],n[2]-t[2]);i.translate((t[0]+n[0])/2,(t[1]+n[1])/2,(t[2]+n[2])/2),this.add(new We(i,new Al({color:new kt(Er("keep-out")),transparent:!0,opacity:.45}))),this.add(new Hs(new El(i),new Sr({color:new kt(Er("halt"))})))}addZero(){let t=this.radius/9,n=new Ke;n.setAttribute("position",new Ye(new Float32Array([0,0,0,t,0,0,0,0,0,0,t,0,0,0,0,0,0,t]),3));let i=this.add(new Hs(n,new Sr({color:new kt(Er("ink")),depthTest:!1})));i.renderOrder=4}get axis(){return this.radius/9}};function Z6(e){let t=-1/0;for(let n=0;n<e.n;n++)e.kind[n]!==4&&(t=Math.max(t,e.z[n],e.z[n+1]));return t}function H3(e){let{geometry:t,material:n}=e;t?.dispose(),n?.dispose()}var W3=60,K6=660,J6=380;async function j6(){if(document.documentElement.classList.add("scripted"),T3(),Q6(),!document.getElementById("model"))return;await ea(!0);let e=new TextDecoder,t=JSON.parse(e.decode(await Ih("model"))),n=new Ph(await Ih("columns"));await ea();let i=e.decode(await Ih("text")).split(`
`);await ea();let r=new fv(t,n,i);await r.build(),Object.assign(window,r.hooks()),document.documentElement.dataset.ready="yes"}function ea(e=!1){return new Promise(t=>{if(!e){setTimeout(t,0);return}requestAnimationFrame(()=>setTimeout(t,0)),setTimeout(t,300)})}function Q6(){let e=()=>[...document.querySelectorAll("details:not([open])")],t=[];addEventListener("beforeprint",()=>{t=e();for(let n of t)n.open=!0}),addEventListener("afterprint",()=>{for(let n of t)n.open=!1})}var fv=class{constructor(t,n,i){this.model=t;this.columns=n;this.fine=n.path(t.paths[0]),this.coarse=n.path(t.paths[1]),this.levels=new Dh(this.fine,this.coarse),this.all=CA(t,this.fine),this.quantity=this.all.find(s=>Rx(s,this.coarse)>.3)??this.all[this.all.length-1],t.findings.forEach((s,o)=>{this.findingRows.push(s.rows?n.whole(s.rows):new Int32Array),this.findingLines.push(n.whole(s.lines));for(let a of this.findingLines[o])$3(this.lineFindings,a,o);for(let a of this.findingRows[o])$3(this.rowFindings,a,o)});let r=t.kept?n.whole(t.kept):null;this.listing=new Nh(i,r?s=>r[s]:s=>s+1,t.lines,this.lineFindings,s=>this.toLine(s));for(let s of document.querySelectorAll("[data-show]"))s.addEventListener("click",()=>this.toFinding(Number(s.dataset.show),!0));w3(s=>{s&&(this.scene?.rebuild(),this.drawLegend()),this.drawPlan(),this.redrawStrips()})}model;columns;fine;coarse;levels;all;quantity;shown={stock:!0,before:!1,rapids:!0,air:!0,tool:null};scene=null;plan=null;planBox=Tt("figure",{class:"from-above"});status=Tt("p",{class:"status",role:"status"});legend=Tt("div",{class:"legend"});pins=Tt("div",{class:"pins","aria-hidden":"true"});marks=[];listing;lineFindings=new Map;rowFindings=new Map;findingRows=[];findingLines=[];chosen=null;async build(){await ea();let t=this.buildFigure();await ea();let n=this.painter(t);await ea(),n&&this.buildScene(t,n),await ea(),this.drawPlan(),this.buildStrips()}buildFigure(){let t=document.getElementById("figure-root"),n=Tt("canvas",{tabindex:"0",class:"space",role:"img","aria-describedby":"figure-keys","aria-label":"The path of the tool in space, with the stock as it is left"}),i=Tt("div",{class:"space-box"},n,this.pins);return t.append(this.controls(),this.legend,Tt("div",{class:"figures"},Tt("figure",{class:"in-space"},i,this.views(n),Tt("figcaption",{id:"figure-keys"},"Drag to turn; with the figure in focus: arrows turn, + and - or the wheel zoom, 0 shows all. Click the path for its line.")),this.planBox),this.status,Tt("div",{class:"text-box"},Tt("p",{class:"caption"},this.listing.whole?"The text of the program; a line in it leads to its place on the path.":"The text of the program where something points at it; the rest is left out of this page."),this.listing.element)),this.drawLegend(),this.say(null),new ResizeObserver(()=>this.fitPlan()).observe(this.planBox),n}painter(t){try{return new Op(t)}catch{return t.parentElement.replaceChildren(Tt("p",{class:"aside"},"This browser cannot draw in space (WebGL is off); the drawing from above shows the same path.")),null}}buildScene(t,n){let i=this.scene=new qp(t,n,this.model,this.fine,this.levels,this.columns,this.quantity,this.shown);i.onDraw=()=>this.placePins(),this.pins.addEventListener("click",r=>{let s=Number(r.target.dataset.pin??-1);s>=0&&this.toFinding(s,!1)}),new ResizeObserver(()=>i.resize()).observe(t),this.listen(t,i)}listen(t,n){let i=null;t.addEventListener("pointerdown",r=>{i=[r.clientX,r.clientY],t.focus({preventScroll:!0})}),t.addEventListener("pointerup",r=>{if(!i||Math.hypot(r.clientX-i[0],r.clientY-i[1])>4)return;let s=n.pick(r.clientX,r.clientY);s!==null&&this.toRow(s,!1)}),t.addEventListener("keydown",r=>{let s={ArrowLeft:[-.12,0],ArrowRight:[.12,0],ArrowUp:[0,.1],ArrowDown:[0,-.1]}[r.key];if(s)n.turn(s[0],s[1]);else if(r.key==="+"||r.key==="=")n.zoom(1.25);else if(r.key==="-")n.zoom(.8);else if(r.key==="0"||r.key==="Home")n.look("corner");else return;r.preventDefault()})}controls(){let t=Tt("select",{id:"quantity"});for(let r of this.all){let s=Tt("option",{value:r.key},r.label+(Rx(r,this.coarse)>0?"":" (not known)"));s.selected=r===this.quantity,t.append(s)}t.addEventListener("change",()=>{this.quantity=this.all.find(r=>r.key===t.value),this.refresh()});let n=Tt("select",{id:"only-tool"},Tt("option",{value:""},"all tools"));this.model.tools.forEach(r=>n.append(Tt("option",{value:String(r.tool)},r.tool<0?"tool not named":`tool ${r.tool}`))),n.addEventListener("change",()=>{this.shown.tool=n.value===""?null:Number(n.value),this.refresh()});let i=(r,s)=>{let o=Tt("input",{type:"checkbox",id:`show-${r}`});return o.checked=this.shown[r],o.addEventListener("change",()=>{this.shown[r]=o.checked,this.refresh()}),Tt("label",{},o,s)};return Tt("div",{class:"controls"},Tt("label",{},"Coloured by ",t),this.model.tools.length>1?Tt("label",{},"Show ",n):null,i("stock","stock as it is left"),this.model.field?.start?i("before","stock as earlier programs left it"):null,i("rapids","rapids"),i("air","feeds in the air"))}views(t){let n=Tt("div",{class:"views",role:"group","aria-label":"View of the figure"}),i=(r,s)=>{let o=Tt("button",{type:"button"},r);o.addEventListener("click",()=>{this.scene&&s(this.scene)}),n.append(o)};return i("corner",r=>r.look("corner")),i("above",r=>r.look("above")),i("front",r=>r.look("front")),i("right",r=>r.look("side")),i("nearer",r=>r.zoom(1.4)),i("farther",r=>r.zoom(1/1.4)),t.dataset.views="yes",n}refresh(){this.scene?.set(this.quantity,this.shown),this.drawLegend(),this.drawPlan(),this.redrawStrips()}drawLegend(){let t=Qs(),n=[];for(let o=0;o<=16;o++)n.push(el(o/16,t));let i=Tt("div",{class:"bar"});i.style.background=`linear-gradient(to right, ${n.join(",")})`;let r=Tt("div",{class:"ticks"});for(let[o,a]of this.quantity.ticks){let l=Tt("span",{},a);l.style.left=`${o*100}%`,o===0&&l.classList.add("first"),o===1&&l.classList.add("last"),r.append(l)}let s=this.fine.kind.includes(2);this.legend.replaceChildren(s?Tt("div",{class:"scale"},Tt("p",{},Tt("b",{},this.quantity.label),`: ${this.quantity.about}`),i,r):Tt("p",{},"No cut is known, so nothing has a colour."),Tt("ul",{class:"lines"},s?Tt("li",{class:"cut"},"cut"):null,s?Tt("li",{class:"plain-cut"},"cut, not judged or not known"):null,Tt("li",{class:"air"},"feed in the air"),Tt("li",{class:"rapid"},"rapid"),this.fine.kind.includes(3)?Tt("li",{class:"crash"},"rapid in material"):null))}drawPlan(){let t=Q_()?J6:Math.max(240,Math.min(this.planBox.clientWidth||380,620));this.plan=ev(this.model,this.levels,this.fine,this.quantity,t,this.shown.tool,!0);let n=this.plan;n.svg.addEventListener("click",r=>{let s=r.target.closest("[data-pin]");if(s){this.toFinding(Number(s.dataset.pin),!1);return}let o=n.toMm(r),a=o&&this.nearest(o[0],o[1],9*n.perPixel());a!==null&&this.toRow(a,!1)});let i=["From above in the blank",this.model.field?"":"; no blank is known",this.model.hidden?`; ${this.model.hidden===1?"1 move is not drawn, as its":`${this.model.hidden.toLocaleString("en")} moves are not drawn, as their`} place in the blank is not known`:"",this.model.off>0?`; drawn to within ${ze(this.model.off*this.model.scale)} ${this.model.unit} of the ${this.model.moves.toLocaleString("en")} moves`:""];this.planBox.dataset.width=String(t),this.planBox.replaceChildren(n.svg,Tt("figcaption",{},`${i.join("")}.`)),this.markPlan()}fitPlan(){let t=Math.max(240,Math.min(this.planBox.clientWidth,620));this.planBox.clientWidth&&Math.abs(t-Number(this.planBox.dataset.width))>20&&this.drawPlan()}nearest(t,n,i){let r=this.fine,s=null,o=i*i,a=-1/0;for(let l=0;l<r.n;l++){if(r.kind[l]>3||r.kind[l]===0&&!this.shown.rapids||this.shown.tool!==null&&r.tool[l]!==this.shown.tool)continue;let c=r.x[l+1]-r.x[l],u=r.y[l+1]-r.y[l],h=c*c+u*u,f=h>0?Math.min(1,Math.max(0,((t-r.x[l])*c+(n-r.y[l])*u)/h)):0,d=(r.x[l]+f*c-t)**2+(r.y[l]+f*u-n)**2,p=r.kind[l]===2?1:0;(d<o*.98||d<=o&&p>=a)&&(s=l,o=Math.max(d,1e-9),a=p)}return s}toFinding(t,n){let i=this.model.findings[t],r=document.querySelector(`[data-finding="${t}"]`);for(let o of document.querySelectorAll(".chosen"))o.classList.remove("chosen");r?.classList.add("chosen"),this.listing.show(i.line,this.findingLines[t]);let s=this.findingRows[t];this.scene?.light(s),i.row!==null&&this.scene?.goTo(i.row,this.span(i.row)),this.choose(i.row),this.say(i.row,t),n&&document.getElementById("path").scrollIntoView({behavior:X3(),block:"start"})}toRow(t,n){let i=this.rowFindings.get(t)??[];for(let s of document.querySelectorAll(".chosen"))s.classList.remove("chosen");for(let s of i)document.querySelector(`[data-finding="${s}"]`)?.classList.add("chosen");let r=this.fine.line[t];this.listing.show(r),this.scene?.light(this.rowsOfLine(r,t)),n&&this.scene?.goTo(t,this.span(t)),this.choose(t),this.say(t)}toLine(t){let n=this.rowOfLine(t),i=this.lineFindings.get(t)??[];for(let r of document.querySelectorAll(".chosen"))r.classList.remove("chosen");for(let r of i)document.querySelector(`[data-finding="${r}"]`)?.classList.add("chosen");this.listing.show(t),this.scene?.light(n===null?[]:this.rowsOfLine(t,n)),n!==null&&this.scene?.goTo(n,this.span(n)),this.choose(n),this.say(n,void 0,t)}span(t){let n=this.model.tools.find(i=>i.tool===this.fine.tool[t]);return Math.max((n?.diameter??6)*6,12)}rowOfLine(t){let{line:n,n:i,x:r,y:s,z:o}=this.fine,a=[],l=[],c=null,u=0;for(let h=0;h<i;h++)n[h]===t&&this.fine.kind[h]!==4?(u+=Math.hypot(r[h+1]-r[h],s[h+1]-s[h],o[h+1]-o[h]),a.push(h),l.push(u)):n[h]<t&&(c===null||n[h]>=n[c])&&(c=h);return a.length?a[l.findIndex(h=>h>=u/2)]:this.model.off>0?c:null}rowsOfLine(t,n){let i=[];for(let r=0;r<this.fine.n&&i.length<4e3;r++)this.fine.line[r]===t&&i.push(r);return i.length?i:[n]}choose(t){this.chosen=t,this.markPlan(),this.placePins()}markPlan(){let t=this.plan?.svg;if(!t||(t.querySelector(".here")?.remove(),this.chosen===null||!this.plan))return;let n=this.chosen,i=this.fine;this.plan.mark((i.x[n]+i.x[n+1])/2,(i.y[n]+i.y[n+1])/2)}say(t,n,i){let r=[];if(t===null&&i===void 0&&n===void 0)r.push("Nothing chosen: pick a finding above, the path or a line below.");else{let s=i??(n!==void 0?this.model.findings[n].line:this.fine.line[t]);r.push(Tt("b",{},`Line ${s.toLocaleString("en")}`)),t===null?r.push(": it moves the tool nowhere that could be drawn"):r.push(`: ${this.facts(t)}`);let o=n!==void 0?[n]:i!==void 0?this.lineFindings.get(i):this.rowFindings.get(t);for(let a of(o??[]).slice(0,6))r.push(" · ",t8(a,this.model.findings[a].rule))}this.status.replaceChildren(...r)}facts(t){let n=this.fine,{most:i,scale:r,unit:s}=this.model,a=[["rapid","feed in the air","cut","rapid in material"][n.kind[t]]??""];n.tool[t]>=0&&a.push(`tool ${n.tool[t]}`);let l=(c,u,h,f)=>{c[t]!==255&&a.push(`${h} ${ze(c[t]/254*u)} ${f}`)};return n.kind[t]===2&&(l(n.chip,i.chip*r,"chip",s),l(n.depth,i.depth*r,"depth",s),l(n.force,i.force,"force to","N"),n.share[t]!==255&&n.share[t]<198&&a.push(`${Math.round(n.share[t]/2)} % of F reached`)),a.push(`to X ${ze(n.x[t+1]*r,5)} Y ${ze(n.y[t+1]*r,5)} Z ${ze(n.z[t+1]*r,4)}`),a.join(", ")}placePins(){let t=this.scene;if(!t)return;let{width:n,height:i}=t.size,r=0,s=(l,c,u,h,f=-1)=>{if(l<-20||c<-20||l>n+20||c>i+20)return;let d=this.marks[r]??(this.marks[r]=this.pins.appendChild(Tt("span")));r++,d.className!==h&&(d.className=h),d.textContent!==u&&(d.textContent=u),d.dataset.pin=String(f),d.style.transform=`translate(${l.toFixed(1)}px, ${c.toFixed(1)}px)`,d.style.zIndex=String(W3+9-r)},o=t.axis*1.15;s(...t.projectPoint(o,0,0),"X","axis"),s(...t.projectPoint(0,o,0),"Y","axis"),s(...t.projectPoint(0,0,o),"Z","axis");let a=new Set;this.model.findings.forEach((l,c)=>{if(l.row===null||r>W3||this.shown.tool!==null&&l.tool!==null&&l.tool!==this.shown.tool)return;let[u,h]=t.project(l.row),f=`${Math.round(u/22)} ${Math.round(h/22)}`;a.has(f)||(a.add(f),s(u,h,String(c+1),`pin g-${l.grade}`,c))}),this.chosen!==null&&s(...t.project(this.chosen),"","target");for(let l of this.marks.splice(r))l.remove()}hooks(){return{gclintView:()=>this.scene?.target??null,gclintSpacePoint:(t,n,i)=>{let r=this.scene.canvas.getBoundingClientRect(),[s,o]=this.scene.projectPoint(t,n,i);return[r.left+s,r.top+o]},gclintPlanPoint:(t,n)=>this.plan.toScreen(t,n)}}buildStrips(){let t=[...document.querySelectorAll("[data-tool]")],n=()=>{let s=t.shift();s&&this.fillStrip(s)},i=()=>{n(),t.length&&setTimeout(i,0)};setTimeout(i,0),addEventListener("beforeprint",()=>{for(;t.length;)n()});let r=0;addEventListener("resize",()=>{clearTimeout(r),r=window.setTimeout(()=>this.redrawStrips(),200)})}redrawStrips(){for(let t of document.querySelectorAll("[data-tool]"))t.childElementCount&&this.fillStrip(t)}fillStrip(t){let n=this.model.tools[Number(t.dataset.tool)],i=Q_()?K6:Math.max(280,Math.min(t.clientWidth||640,1100)),r=ev(this.model,this.levels,this.fine,this.quantity,300,n.tool,!1).svg;t.replaceChildren(...EA(n,this.model,r,i,s=>{this.toRow(s,!0),document.getElementById("path").scrollIntoView({behavior:X3(),block:"start"})}))}};function $3(e,t,n){let i=e.get(t);i?i.push(n):e.set(t,[n])}function t8(e,t){let n=Tt("a",{href:`#finding-${e+1}`},`finding ${e+1}: ${t}`);return n.addEventListener("click",()=>{let i=document.getElementById(`finding-${e+1}`)?.closest("details");i&&(i.open=!0)}),n}function X3(){return matchMedia("(prefers-reduced-motion: reduce)").matches?"instant":"smooth"}j6().catch(e=>{document.getElementById("figure-root")?.append(Tt("p",{class:"aside"},`The figures could not be drawn: ${String(e)}`)),console.error(e)});})();
