"use strict";(()=>{function bn(e,t){return e==null||t==null?NaN:e<t?-1:e>t?1:e>=t?0:NaN}function Lr(e,t){return e==null||t==null?NaN:t<e?-1:t>e?1:t>=e?0:NaN}function oa(e){let t,n,i;e.length!==2?(t=bn,n=(a,l)=>bn(e(a),l),i=(a,l)=>e(a)-l):(t=e===bn||e===Lr?e:rC,n=e,i=e);function r(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<0?c=h+1:u=h}while(c<u)}return c}function s(a,l,c=0,u=a.length){if(c<u){if(t(l,l)!==0)return u;do{let h=c+u>>>1;n(a[h],l)<=0?c=h+1:u=h}while(c<u)}return c}function o(a,l,c=0,u=a.length){let h=r(a,l,c,u-1);return h>c&&i(a[h-1],l)>-i(a[h],l)?h-1:h}return{left:r,center:o,right:s}}function rC(){return 0}function Av(e){return e===null?NaN:+e}function*sC(e,t){if(t===void 0)for(let n of e)n!=null&&(n=+n)>=n&&(yield n);else{let n=-1;for(let i of e)(i=t(i,++n,e))!=null&&(i=+i)>=i&&(yield i)}}var Cv=oa(bn),aa=Cv.right,w8=Cv.left,T8=oa(Av).center;var E8=Rv(Pv),A8=Rv(oC);function Rv(e){return function(t,n,i=n){if(!((n=+n)>=0))throw new RangeError("invalid rx");if(!((i=+i)>=0))throw new RangeError("invalid ry");let{data:r,width:s,height:o}=t;if(!((s=Math.floor(s))>=0))throw new RangeError("invalid width");if(!((o=Math.floor(o!==void 0?o:r.length/s))>=0))throw new RangeError("invalid height");if(!s||!o||!n&&!i)return t;let a=n&&e(n),l=i&&e(i),c=r.slice();return a&&l?(na(a,c,r,s,o),na(a,r,c,s,o),na(a,c,r,s,o),ia(l,r,c,s,o),ia(l,c,r,s,o),ia(l,r,c,s,o)):a?(na(a,r,c,s,o),na(a,c,r,s,o),na(a,r,c,s,o)):l&&(ia(l,r,c,s,o),ia(l,c,r,s,o),ia(l,r,c,s,o)),t}}function na(e,t,n,i,r){for(let s=0,o=i*r;s<o;)e(t,n,s,s+=i,1)}function ia(e,t,n,i,r){for(let s=0,o=i*r;s<i;++s)e(t,n,s,s+o,i)}function oC(e){let t=Pv(e);return(n,i,r,s,o)=>{r<<=2,s<<=2,o<<=2,t(n,i,r+0,s+0,o),t(n,i,r+1,s+1,o),t(n,i,r+2,s+2,o),t(n,i,r+3,s+3,o)}}function Pv(e){let t=Math.floor(e);if(t===e)return aC(e);let n=e-t,i=2*e+1;return(r,s,o,a,l)=>{if(!((a-=l)>=o))return;let c=t*s[o],u=l*t,h=u+l;for(let f=o,d=o+u;f<d;f+=l)c+=s[Math.min(a,f)];for(let f=o,d=a;f<=d;f+=l)c+=s[Math.min(a,f+u)],r[f]=(c+n*(s[Math.max(o,f-h)]+s[Math.min(a,f+h)]))/i,c-=s[Math.max(o,f-u)]}}function aC(e){let t=2*e+1;return(n,i,r,s,o)=>{if(!((s-=o)>=r))return;let a=e*i[r],l=o*e;for(let c=r,u=r+l;c<u;c+=o)a+=i[Math.min(s,c)];for(let c=r,u=s;c<=u;c+=o)a+=i[Math.min(s,c+l)],n[c]=a/t,a-=i[Math.max(r,c-l)]}}function nm(e,t){let n=0;if(t===void 0)for(let i of e)i!=null&&(i=+i)>=i&&++n;else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(r=+r)>=r&&++n}return n}function lC(e){return e.length|0}function cC(e){return!(e>0)}function uC(e){return typeof e!="object"||"length"in e?e:Array.from(e)}function fC(e){return t=>e(...t)}function Iv(...e){let t=typeof e[e.length-1]=="function"&&fC(e.pop());e=e.map(uC);let n=e.map(lC),i=e.length-1,r=new Array(i+1).fill(0),s=[];if(i<0||n.some(cC))return s;for(;;){s.push(r.map((a,l)=>e[l][a]));let o=i;for(;++r[o]===n[o];){if(o===0)return t?s.map(t):s;r[o--]=0}}}function Lv(e,t){var n=0,i=0;return Float64Array.from(e,t===void 0?r=>n+=+r||0:r=>n+=+t(r,i++,e)||0)}function im(e,t){let n=0,i,r=0,s=0;if(t===void 0)for(let o of e)o!=null&&(o=+o)>=o&&(i=o-r,r+=i/++n,s+=i*(o-r));else{let o=-1;for(let a of e)(a=t(a,++o,e))!=null&&(a=+a)>=a&&(i=a-r,r+=i/++n,s+=i*(a-r))}if(n>1)return s/(n-1)}function rm(e,t){let n=im(e,t);return n&&Math.sqrt(n)}function pn(e,t){let n,i;if(t===void 0)for(let r of e)r!=null&&(n===void 0?r>=r&&(n=i=r):(n>r&&(n=r),i<r&&(i=r)));else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(n===void 0?s>=s&&(n=i=s):(n>s&&(n=s),i<s&&(i=s)))}return[n,i]}var pi=class{constructor(){this._partials=new Float64Array(32),this._n=0}add(t){let n=this._partials,i=0;for(let r=0;r<this._n&&r<32;r++){let s=n[r],o=t+s,a=Math.abs(t)<Math.abs(s)?t-(o-s):s-(o-t);a&&(n[i++]=a),t=o}return n[i]=t,this._n=i+1,this}valueOf(){let t=this._partials,n=this._n,i,r,s,o=0;if(n>0){for(o=t[--n];n>0&&(i=o,r=t[--n],o=i+r,s=r-(o-i),!s););n>0&&(s<0&&t[n-1]<0||s>0&&t[n-1]>0)&&(r=s*2,i=o+r,r==i-o&&(o=i))}return o}};var mi=class extends Map{constructor(t,n=Uv){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let[i,r]of t)this.set(i,r)}get(t){return super.get(tm(this,t))}has(t){return super.has(tm(this,t))}set(t,n){return super.set(Dv(this,t),n)}delete(t){return super.delete(Nv(this,t))}},nr=class extends Set{constructor(t,n=Uv){if(super(),Object.defineProperties(this,{_intern:{value:new Map},_key:{value:n}}),t!=null)for(let i of t)this.add(i)}has(t){return super.has(tm(this,t))}add(t){return super.add(Dv(this,t))}delete(t){return super.delete(Nv(this,t))}};function tm({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):n}function Dv({_intern:e,_key:t},n){let i=t(n);return e.has(i)?e.get(i):(e.set(i,n),n)}function Nv({_intern:e,_key:t},n){let i=t(n);return e.has(i)&&(n=e.get(i),e.delete(i)),n}function Uv(e){return e!==null&&typeof e=="object"?e.valueOf():e}function em(e){return e}function lo(e,...t){return sm(e,em,em,t)}function Dr(e,t,...n){return sm(e,em,t,n)}function Fv(e,t,...n){return sm(e,Array.from,t,n)}function sm(e,t,n,i){return(function r(s,o){if(o>=i.length)return n(s);let a=new mi,l=i[o++],c=-1;for(let u of s){let h=l(u,++c,s),f=a.get(h);f?f.push(u):a.set(h,[u])}for(let[u,h]of a)a.set(u,r(h,o));return t(a)})(e,0)}function hC(e,t){return Array.from(t,n=>e[n])}function ra(e,...t){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");e=Array.from(e);let[n]=t;if(n&&n.length!==2||t.length>1){let i=Uint32Array.from(e,(r,s)=>s);return t.length>1?(t=t.map(r=>e.map(r)),i.sort((r,s)=>{for(let o of t){let a=Lu(o[r],o[s]);if(a)return a}})):(n=e.map(n),i.sort((r,s)=>Lu(n[r],n[s]))),hC(e,i)}return e.sort(Ov(n))}function Ov(e=bn){if(e===bn)return Lu;if(typeof e!="function")throw new TypeError("compare is not a function");return(t,n)=>{let i=e(t,n);return i||i===0?i:(e(n,n)===0)-(e(t,t)===0)}}function Lu(e,t){return(e==null||!(e>=e))-(t==null||!(t>=t))||(e<t?-1:e>t?1:0)}function Nu(e,t,n){return(t.length!==2?ra(Dr(e,t,n),(([i,r],[s,o])=>bn(r,o)||bn(i,s))):ra(lo(e,n),(([i,r],[s,o])=>t(r,o)||bn(i,s)))).map(([i])=>i)}var dC=Array.prototype,C8=dC.slice;var pC=Math.sqrt(50),mC=Math.sqrt(10),gC=Math.sqrt(2);function Du(e,t,n){let i=(t-e)/Math.max(0,n),r=Math.floor(Math.log10(i)),s=i/Math.pow(10,r),o=s>=pC?10:s>=mC?5:s>=gC?2:1,a,l,c;return r<0?(c=Math.pow(10,-r)/o,a=Math.round(e*c),l=Math.round(t*c),a/c<e&&++a,l/c>t&&--l,c=-c):(c=Math.pow(10,r)*o,a=Math.round(e/c),l=Math.round(t/c),a*c<e&&++a,l*c>t&&--l),l<a&&.5<=n&&n<2?Du(e,t,n*2):[a,l,c]}function ys(e,t,n){if(t=+t,e=+e,n=+n,!(n>0))return[];if(e===t)return[e];let i=t<e,[r,s,o]=i?Du(t,e,n):Du(e,t,n);if(!(s>=r))return[];let a=s-r+1,l=new Array(a);if(i)if(o<0)for(let c=0;c<a;++c)l[c]=(s-c)/-o;else for(let c=0;c<a;++c)l[c]=(s-c)*o;else if(o<0)for(let c=0;c<a;++c)l[c]=(r+c)/-o;else for(let c=0;c<a;++c)l[c]=(r+c)*o;return l}function sa(e,t,n){return t=+t,e=+e,n=+n,Du(e,t,n)[2]}function kl(e,t,n){t=+t,e=+e,n=+n;let i=t<e,r=i?sa(t,e,n):sa(e,t,n);return(i?-1:1)*(r<0?1/-r:r)}function Bv(e){return Math.max(1,Math.ceil(Math.log(nm(e))/Math.LN2)+1)}function Pn(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n<i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n<r||n===void 0&&r>=r)&&(n=r)}return n}function kv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n<s||n===void 0&&s>=s)&&(n=s,i=r);return i}function gi(e,t){let n;if(t===void 0)for(let i of e)i!=null&&(n>i||n===void 0&&i>=i)&&(n=i);else{let i=-1;for(let r of e)(r=t(r,++i,e))!=null&&(n>r||n===void 0&&r>=r)&&(n=r)}return n}function zv(e,t){let n,i=-1,r=-1;if(t===void 0)for(let s of e)++r,s!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);else for(let s of e)(s=t(s,++r,e))!=null&&(n>s||n===void 0&&s>=s)&&(n=s,i=r);return i}function Gv(e,t,n=0,i=1/0,r){if(t=Math.floor(t),n=Math.floor(Math.max(0,n)),i=Math.floor(Math.min(e.length-1,i)),!(n<=t&&t<=i))return e;for(r=r===void 0?Lu:Ov(r);i>n;){if(i-n>600){let l=i-n+1,c=t-n+1,u=Math.log(l),h=.5*Math.exp(2*u/3),f=.5*Math.sqrt(u*h*(l-h)/l)*(c-l/2<0?-1:1),d=Math.max(n,Math.floor(t-c*h/l+f)),p=Math.min(i,Math.floor(t+(l-c)*h/l+f));Gv(e,t,d,p,r)}let s=e[t],o=n,a=i;for(Bl(e,n,t),r(e[i],s)>0&&Bl(e,n,i);o<a;){for(Bl(e,o,a),++o,--a;r(e[o],s)<0;)++o;for(;r(e[a],s)>0;)--a}r(e[n],s)===0?Bl(e,n,a):(++a,Bl(e,a,i)),a<=t&&(n=a+1),t<=a&&(i=a-1)}return e}function Bl(e,t,n){let i=e[t];e[t]=e[n],e[n]=i}function om(e,t=bn){let n,i=!1;if(t.length===1){let r;for(let s of e){let o=t(s);(i?bn(o,r)>0:bn(o,o)===0)&&(n=s,r=o,i=!0)}}else for(let r of e)(i?t(r,n)>0:t(r,r)===0)&&(n=r,i=!0);return n}function Ir(e,t,n){if(e=Float64Array.from(sC(e,n)),!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return gi(e);if(t>=1)return Pn(e);var i,r=(i-1)*t,s=Math.floor(r),o=Pn(Gv(e,s).subarray(0,s+1)),a=gi(e.subarray(s+1));return o+(a-o)*(r-s)}}function Vv(e,t,n=Av){if(!(!(i=e.length)||isNaN(t=+t))){if(t<=0||i<2)return+n(e[0],0,e);if(t>=1)return+n(e[i-1],i-1,e);var i,r=(i-1)*t,s=Math.floor(r),o=+n(e[s],s,e),a=+n(e[s+1],s+1,e);return o+(a-o)*(r-s)}}function Hv(e,t,n){let i=nm(e),r=Ir(e,.75)-Ir(e,.25);return i&&r?Math.ceil((n-t)/(2*r*Math.pow(i,-1/3))):1}function am(e,t,n){let i=nm(e),r=rm(e);return i&&r?Math.ceil((n-t)*Math.cbrt(i)/(3.49*r)):1}function Wv(e,t){let n=0,i=0;if(t===void 0)for(let r of e)r!=null&&(r=+r)>=r&&(++n,i+=r);else{let r=-1;for(let s of e)(s=t(s,++r,e))!=null&&(s=+s)>=s&&(++n,i+=s)}if(n)return i/n}function zl(e,t){return Ir(e,.5,t)}function*yC(e){for(let t of e)yield*t}function lm(e){return Array.from(yC(e))}function $v(e,t){let n=new mi;if(t===void 0)for(let s of e)s!=null&&s>=s&&n.set(s,(n.get(s)||0)+1);else{let s=-1;for(let o of e)(o=t(o,++s,e))!=null&&o>=o&&n.set(o,(n.get(o)||0)+1)}let i,r=0;for(let[s,o]of n)o>r&&(r=o,i=s);return i}function Xv(e,t=xC){let n=[],i,r=!1;for(let s of e)r&&n.push(t(i,s)),i=s,r=!0;return n}function xC(e,t){return[e,t]}function la(e,t,n){e=+e,t=+t,n=(r=arguments.length)<2?(t=e,e=0,1):r<3?1:+n;for(var i=-1,r=Math.max(0,Math.ceil((t-e)/n))|0,s=new Array(r);++i<r;)s[i]=e+i*n;return s}var R8=_C(Math.random);function _C(e){return function(n,i=0,r=n.length){let s=r-(i=+i);for(;s;){let o=e()*s--|0,a=n[s+i];n[s+i]=n[o+i],n[o+i]=a}return n}}function Fi(e,t){let n=0;if(t===void 0)for(let i of e)(i=+i)&&(n+=i);else{let i=-1;for(let r of e)(r=+t(r,++i,e))&&(n+=r)}return n}function ca(e){if(typeof e[Symbol.iterator]!="function")throw new TypeError("values is not iterable");return Array.from(e).reverse()}function vC(e){return e}var cm=1,um=2,fm=3,Uu=4,qv=1e-6;function bC(e){return"translate("+e+",0)"}function MC(e){return"translate(0,"+e+")"}function SC(e){return t=>+e(t)}function wC(e,t){return t=Math.max(0,e.bandwidth()-t*2)/2,e.round()&&(t=Math.round(t)),n=>+e(n)+t}function TC(){return!this.__axis}function EC(e,t){var n=[],i=null,r=null,s=6,o=6,a=3,l=typeof window<"u"&&window.devicePixelRatio>1?0:.5,c=e===cm||e===Uu?-1:1,u=e===Uu||e===um?"x":"y",h=e===cm||e===fm?bC:MC;function f(d){var p=i??(t.ticks?t.ticks.apply(t,n):t.domain()),y=r??(t.tickFormat?t.tickFormat.apply(t,n):vC),g=Math.max(s,0)+a,m=t.range(),x=+m[0]+l,M=+m[m.length-1]+l,v=(t.bandwidth?wC:SC)(t.copy(),l),S=d.selection?d.selection():d,b=S.selectAll(".domain").data([null]),_=S.selectAll(".tick").data(p,t).order(),w=_.exit(),R=_.enter().append("g").attr("class","tick"),A=_.select("line"),C=_.select("text");b=b.merge(b.enter().insert("path",".tick").attr("class","domain").attr("stroke","currentColor")),_=_.merge(R),A=A.merge(R.append("line").attr("stroke","currentColor").attr(u+"2",c*s)),C=C.merge(R.append("text").attr("fill","currentColor").attr(u,c*g).attr("dy",e===cm?"0em":e===fm?"0.71em":"0.32em")),d!==S&&(b=b.transition(d),_=_.transition(d),A=A.transition(d),C=C.transition(d),w=w.transition(d).attr("opacity",qv).attr("transform",function(P){return isFinite(P=v(P))?h(P+l):this.getAttribute("transform")}),R.attr("opacity",qv).attr("transform",function(P){var O=this.parentNode.__axis;return h((O&&isFinite(O=O(P))?O:v(P))+l)})),w.remove(),b.attr("d",e===Uu||e===um?o?"M"+c*o+","+x+"H"+l+"V"+M+"H"+c*o:"M"+l+","+x+"V"+M:o?"M"+x+","+c*o+"V"+l+"H"+M+"V"+c*o:"M"+x+","+l+"H"+M),_.attr("opacity",1).attr("transform",function(P){return h(v(P)+l)}),A.attr(u+"2",c*s),C.attr(u,c*g).text(y),S.filter(TC).attr("fill","none").attr("font-size",10).attr("font-family","sans-serif").attr("text-anchor",e===um?"start":e===Uu?"end":"middle"),S.each(function(){this.__axis=v})}return f.scale=function(d){return arguments.length?(t=d,f):t},f.ticks=function(){return n=Array.from(arguments),f},f.tickArguments=function(d){return arguments.length?(n=d==null?[]:Array.from(d),f):n.slice()},f.tickValues=function(d){return arguments.length?(i=d==null?null:Array.from(d),f):i&&i.slice()},f.tickFormat=function(d){return arguments.length?(r=d,f):r},f.tickSize=function(d){return arguments.length?(s=o=+d,f):s},f.tickSizeInner=function(d){return arguments.length?(s=+d,f):s},f.tickSizeOuter=function(d){return arguments.length?(o=+d,f):o},f.tickPadding=function(d){return arguments.length?(a=+d,f):a},f.offset=function(d){return arguments.length?(l=+d,f):l},f}function Yv(e){return EC(fm,e)}var hm="http://www.w3.org/1999/xhtml",xs={svg:"http://www.w3.org/2000/svg",xhtml:hm,xlink:"http://www.w3.org/1999/xlink",xml:"http://www.w3.org/XML/1998/namespace",xmlns:"http://www.w3.org/2000/xmlns/"};function Zv(e){var t=e+="",n=t.indexOf(":");return n>=0&&(t=e.slice(0,n))!=="xmlns"&&(e=e.slice(n+1)),xs.hasOwnProperty(t)?{space:xs[t],local:e}:e}function AC(e){return function(){var t=this.ownerDocument,n=this.namespaceURI;return n===hm&&t.documentElement.namespaceURI===hm?t.createElement(e):t.createElementNS(n,e)}}function CC(e){return function(){return this.ownerDocument.createElementNS(e.space,e.local)}}function ua(e){var t=Zv(e);return(t.local?CC:AC)(t)}function RC(){}function Kv(e){return e==null?RC:function(){return this.querySelector(e)}}function PC(e){typeof e!="function"&&(e=Kv(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=new Array(o),l,c,u=0;u<o;++u)(l=s[u])&&(c=e.call(l,l.__data__,u,s))&&("__data__"in l&&(c.__data__=l.__data__),a[u]=c);return new ni(i,this._parents)}function IC(e){return e==null?[]:Array.isArray(e)?e:Array.from(e)}function LC(){return[]}function DC(e){return e==null?LC:function(){return this.querySelectorAll(e)}}function NC(e){return function(){return IC(e.apply(this,arguments))}}function UC(e){typeof e=="function"?e=NC(e):e=DC(e);for(var t=this._groups,n=t.length,i=[],r=[],s=0;s<n;++s)for(var o=t[s],a=o.length,l,c=0;c<a;++c)(l=o[c])&&(i.push(e.call(l,l.__data__,c,o)),r.push(l));return new ni(i,r)}function FC(e){return function(){return this.matches(e)}}function Jv(e){return function(t){return t.matches(e)}}var OC=Array.prototype.find;function BC(e){return function(){return OC.call(this.children,e)}}function kC(){return this.firstElementChild}function zC(e){return this.select(e==null?kC:BC(typeof e=="function"?e:Jv(e)))}var GC=Array.prototype.filter;function VC(){return Array.from(this.children)}function HC(e){return function(){return GC.call(this.children,e)}}function WC(e){return this.selectAll(e==null?VC:HC(typeof e=="function"?e:Jv(e)))}function $C(e){typeof e!="function"&&(e=FC(e));for(var t=this._groups,n=t.length,i=new Array(n),r=0;r<n;++r)for(var s=t[r],o=s.length,a=i[r]=[],l,c=0;c<o;++c)(l=s[c])&&e.call(l,l.__data__,c,s)&&a.push(l);return new ni(i,this._parents)}function jv(e){return new Array(e.length)}function XC(){return new ni(this._enter||this._groups.map(jv),this._parents)}function Fu(e,t){this.ownerDocument=e.ownerDocument,this.namespaceURI=e.namespaceURI,this._next=null,this._parent=e,this.__data__=t}Fu.prototype={constructor:Fu,appendChild:function(e){return this._parent.insertBefore(e,this._next)},insertBefore:function(e,t){return this._parent.insertBefore(e,t)},querySelector:function(e){return this._parent.querySelector(e)},querySelectorAll:function(e){return this._parent.querySelectorAll(e)}};function qC(e){return function(){return e}}function YC(e,t,n,i,r,s){for(var o=0,a,l=t.length,c=s.length;o<c;++o)(a=t[o])?(a.__data__=s[o],i[o]=a):n[o]=new Fu(e,s[o]);for(;o<l;++o)(a=t[o])&&(r[o]=a)}function ZC(e,t,n,i,r,s,o){var a,l,c=new Map,u=t.length,h=s.length,f=new Array(u),d;for(a=0;a<u;++a)(l=t[a])&&(f[a]=d=o.call(l,l.__data__,a,t)+"",c.has(d)?r[a]=l:c.set(d,l));for(a=0;a<h;++a)d=o.call(e,s[a],a,s)+"",(l=c.get(d))?(i[a]=l,l.__data__=s[a],c.delete(d)):n[a]=new Fu(e,s[a]);for(a=0;a<u;++a)(l=t[a])&&c.get(f[a])===l&&(r[a]=l)}function KC(e){return e.__data__}function JC(e,t){if(!arguments.length)return Array.from(this,KC);var n=t?ZC:YC,i=this._parents,r=this._groups;typeof e!="function"&&(e=qC(e));for(var s=r.length,o=new Array(s),a=new Array(s),l=new Array(s),c=0;c<s;++c){var u=i[c],h=r[c],f=h.length,d=jC(e.call(u,u&&u.__data__,c,i)),p=d.length,y=a[c]=new Array(p),g=o[c]=new Array(p),m=l[c]=new Array(f);n(u,h,y,g,m,d,t);for(var x=0,M=0,v,S;x<p;++x)if(v=y[x]){for(x>=M&&(M=x+1);!(S=g[M])&&++M<p;);v._next=S||null}}return o=new ni(o,i),o._enter=a,o._exit=l,o}function jC(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function QC(){return new ni(this._exit||this._groups.map(jv),this._parents)}function tR(e,t,n){var i=this.enter(),r=this,s=this.exit();return typeof e=="function"?(i=e(i),i&&(i=i.selection())):i=i.append(e+""),t!=null&&(r=t(r),r&&(r=r.selection())),n==null?s.remove():n(s),i&&r?i.merge(r).order():r}function eR(e){for(var t=e.selection?e.selection():e,n=this._groups,i=t._groups,r=n.length,s=i.length,o=Math.min(r,s),a=new Array(r),l=0;l<o;++l)for(var c=n[l],u=i[l],h=c.length,f=a[l]=new Array(h),d,p=0;p<h;++p)(d=c[p]||u[p])&&(f[p]=d);for(;l<r;++l)a[l]=n[l];return new ni(a,this._parents)}function nR(){for(var e=this._groups,t=-1,n=e.length;++t<n;)for(var i=e[t],r=i.length-1,s=i[r],o;--r>=0;)(o=i[r])&&(s&&o.compareDocumentPosition(s)^4&&s.parentNode.insertBefore(o,s),s=o);return this}function iR(e){e||(e=rR);function t(h,f){return h&&f?e(h.__data__,f.__data__):!h-!f}for(var n=this._groups,i=n.length,r=new Array(i),s=0;s<i;++s){for(var o=n[s],a=o.length,l=r[s]=new Array(a),c,u=0;u<a;++u)(c=o[u])&&(l[u]=c);l.sort(t)}return new ni(r,this._parents).order()}function rR(e,t){return e<t?-1:e>t?1:e>=t?0:NaN}function sR(){var e=arguments[0];return arguments[0]=this,e.apply(null,arguments),this}function oR(){return Array.from(this)}function aR(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length;r<s;++r){var o=i[r];if(o)return o}return null}function lR(){let e=0;for(let t of this)++e;return e}function cR(){return!this.node()}function uR(e){for(var t=this._groups,n=0,i=t.length;n<i;++n)for(var r=t[n],s=0,o=r.length,a;s<o;++s)(a=r[s])&&e.call(a,a.__data__,s,r);return this}function fR(e){return function(){this.removeAttribute(e)}}function hR(e){return function(){this.removeAttributeNS(e.space,e.local)}}function dR(e,t){return function(){this.setAttribute(e,t)}}function pR(e,t){return function(){this.setAttributeNS(e.space,e.local,t)}}function mR(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttribute(e):this.setAttribute(e,n)}}function gR(e,t){return function(){var n=t.apply(this,arguments);n==null?this.removeAttributeNS(e.space,e.local):this.setAttributeNS(e.space,e.local,n)}}function yR(e,t){var n=Zv(e);if(arguments.length<2){var i=this.node();return n.local?i.getAttributeNS(n.space,n.local):i.getAttribute(n)}return this.each((t==null?n.local?hR:fR:typeof t=="function"?n.local?gR:mR:n.local?pR:dR)(n,t))}function Qv(e){return e.ownerDocument&&e.ownerDocument.defaultView||e.document&&e||e.defaultView}function xR(e){return function(){this.style.removeProperty(e)}}function _R(e,t,n){return function(){this.style.setProperty(e,t,n)}}function vR(e,t,n){return function(){var i=t.apply(this,arguments);i==null?this.style.removeProperty(e):this.style.setProperty(e,i,n)}}function bR(e,t,n){return arguments.length>1?this.each((t==null?xR:typeof t=="function"?vR:_R)(e,t,n??"")):MR(this.node(),e)}function MR(e,t){return e.style.getPropertyValue(t)||Qv(e).getComputedStyle(e,null).getPropertyValue(t)}function SR(e){return function(){delete this[e]}}function wR(e,t){return function(){this[e]=t}}function TR(e,t){return function(){var n=t.apply(this,arguments);n==null?delete this[e]:this[e]=n}}function ER(e,t){return arguments.length>1?this.each((t==null?SR:typeof t=="function"?TR:wR)(e,t)):this.node()[e]}function tb(e){return e.trim().split(/^|\s+/)}function pm(e){return e.classList||new eb(e)}function eb(e){this._node=e,this._names=tb(e.getAttribute("class")||"")}eb.prototype={add:function(e){var t=this._names.indexOf(e);t<0&&(this._names.push(e),this._node.setAttribute("class",this._names.join(" ")))},remove:function(e){var t=this._names.indexOf(e);t>=0&&(this._names.splice(t,1),this._node.setAttribute("class",this._names.join(" ")))},contains:function(e){return this._names.indexOf(e)>=0}};function nb(e,t){for(var n=pm(e),i=-1,r=t.length;++i<r;)n.add(t[i])}function ib(e,t){for(var n=pm(e),i=-1,r=t.length;++i<r;)n.remove(t[i])}function AR(e){return function(){nb(this,e)}}function CR(e){return function(){ib(this,e)}}function RR(e,t){return function(){(t.apply(this,arguments)?nb:ib)(this,e)}}function PR(e,t){var n=tb(e+"");if(arguments.length<2){for(var i=pm(this.node()),r=-1,s=n.length;++r<s;)if(!i.contains(n[r]))return!1;return!0}return this.each((typeof t=="function"?RR:t?AR:CR)(n,t))}function IR(){this.textContent=""}function LR(e){return function(){this.textContent=e}}function DR(e){return function(){var t=e.apply(this,arguments);this.textContent=t??""}}function NR(e){return arguments.length?this.each(e==null?IR:(typeof e=="function"?DR:LR)(e)):this.node().textContent}function UR(){this.innerHTML=""}function FR(e){return function(){this.innerHTML=e}}function OR(e){return function(){var t=e.apply(this,arguments);this.innerHTML=t??""}}function BR(e){return arguments.length?this.each(e==null?UR:(typeof e=="function"?OR:FR)(e)):this.node().innerHTML}function kR(){this.nextSibling&&this.parentNode.appendChild(this)}function zR(){return this.each(kR)}function GR(){this.previousSibling&&this.parentNode.insertBefore(this,this.parentNode.firstChild)}function VR(){return this.each(GR)}function HR(e){var t=typeof e=="function"?e:ua(e);return this.select(function(){return this.appendChild(t.apply(this,arguments))})}function WR(){return null}function $R(e,t){var n=typeof e=="function"?e:ua(e),i=t==null?WR:typeof t=="function"?t:Kv(t);return this.select(function(){return this.insertBefore(n.apply(this,arguments),i.apply(this,arguments)||null)})}function XR(){var e=this.parentNode;e&&e.removeChild(this)}function qR(){return this.each(XR)}function YR(){var e=this.cloneNode(!1),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function ZR(){var e=this.cloneNode(!0),t=this.parentNode;return t?t.insertBefore(e,this.nextSibling):e}function KR(e){return this.select(e?ZR:YR)}function JR(e){return arguments.length?this.property("__data__",e):this.node().__data__}function jR(e){return function(t){e.call(this,t,this.__data__)}}function QR(e){return e.trim().split(/^|\s+/).map(function(t){var n="",i=t.indexOf(".");return i>=0&&(n=t.slice(i+1),t=t.slice(0,i)),{type:t,name:n}})}function tP(e){return function(){var t=this.__on;if(t){for(var n=0,i=-1,r=t.length,s;n<r;++n)s=t[n],(!e.type||s.type===e.type)&&s.name===e.name?this.removeEventListener(s.type,s.listener,s.options):t[++i]=s;++i?t.length=i:delete this.__on}}}function eP(e,t,n){return function(){var i=this.__on,r,s=jR(t);if(i){for(var o=0,a=i.length;o<a;++o)if((r=i[o]).type===e.type&&r.name===e.name){this.removeEventListener(r.type,r.listener,r.options),this.addEventListener(r.type,r.listener=s,r.options=n),r.value=t;return}}this.addEventListener(e.type,s,n),r={type:e.type,name:e.name,value:t,listener:s,options:n},i?i.push(r):this.__on=[r]}}function nP(e,t,n){var i=QR(e+""),r,s=i.length,o;if(arguments.length<2){var a=this.node().__on;if(a){for(var l=0,c=a.length,u;l<c;++l)for(r=0,u=a[l];r<s;++r)if((o=i[r]).type===u.type&&o.name===u.name)return u.value}return}for(a=t?eP:tP,r=0;r<s;++r)this.each(a(i[r],t,n));return this}function rb(e,t,n){var i=Qv(e),r=i.CustomEvent;typeof r=="function"?r=new r(t,n):(r=i.document.createEvent("Event"),n?(r.initEvent(t,n.bubbles,n.cancelable),r.detail=n.detail):r.initEvent(t,!1,!1)),e.dispatchEvent(r)}function iP(e,t){return function(){return rb(this,e,t)}}function rP(e,t){return function(){return rb(this,e,t.apply(this,arguments))}}function sP(e,t){return this.each((typeof t=="function"?rP:iP)(e,t))}function*oP(){for(var e=this._groups,t=0,n=e.length;t<n;++t)for(var i=e[t],r=0,s=i.length,o;r<s;++r)(o=i[r])&&(yield o)}var sb=[null];function ni(e,t){this._groups=e,this._parents=t}function aP(){return new ni([[document.documentElement]],sb)}function lP(){return this}ni.prototype=aP.prototype={constructor:ni,select:PC,selectAll:UC,selectChild:zC,selectChildren:WC,filter:$C,data:JC,enter:XC,exit:QC,join:tR,merge:eR,selection:lP,order:nR,sort:iR,call:sR,nodes:oR,node:aR,size:lR,empty:cR,each:uR,attr:yR,style:bR,property:ER,classed:PR,text:NR,html:BR,raise:zR,lower:VR,append:HR,insert:$R,remove:qR,clone:KR,datum:JR,on:nP,dispatch:sP,[Symbol.iterator]:oP};function Oi(e){return typeof e=="string"?new ni([[document.querySelector(e)]],[document.documentElement]):new ni([[e]],sb)}var cP=0;function uP(){return new dm}function dm(){this._="@"+(++cP).toString(36)}dm.prototype=uP.prototype={constructor:dm,get:function(e){for(var t=this._;!(t in e);)if(!(e=e.parentNode))return;return e[t]},set:function(e,t){return e[this._]=t},remove:function(e){return this._ in e&&delete e[this._]},toString:function(){return this._}};function fP(e){let t;for(;t=e.sourceEvent;)e=t;return e}function ob(e,t){if(e=fP(e),t===void 0&&(t=e.currentTarget),t){var n=t.ownerSVGElement||t;if(n.createSVGPoint){var i=n.createSVGPoint();return i.x=e.clientX,i.y=e.clientY,i=i.matrixTransform(t.getScreenCTM().inverse()),[i.x,i.y]}if(t.getBoundingClientRect){var r=t.getBoundingClientRect();return[e.clientX-r.left-t.clientLeft,e.clientY-r.top-t.clientTop]}}return[e.pageX,e.pageY]}function pa(e,t,n){e.prototype=t.prototype=n,n.constructor=e}function Hl(e,t){var n=Object.create(e.prototype);for(var i in t)n[i]=t[i];return n}function _s(){}var ho=.7,da=1/ho,fa="\\s*([+-]?\\d+)\\s*",Gl="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)\\s*",ir="\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)%\\s*",hP=/^#([0-9a-f]{3,8})$/,dP=new RegExp(`^rgb\\(${fa},${fa},${fa}\\)$`),pP=new RegExp(`^rgb\\(${ir},${ir},${ir}\\)$`),mP=new RegExp(`^rgba\\(${fa},${fa},${fa},${Gl}\\)$`),gP=new RegExp(`^rgba\\(${ir},${ir},${ir},${Gl}\\)$`),yP=new RegExp(`^hsl\\(${Gl},${ir},${ir}\\)$`),xP=new RegExp(`^hsla\\(${Gl},${ir},${ir},${Gl}\\)$`),ab={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074};pa(_s,ma,{copy(e){return Object.assign(new this.constructor,this,e)},displayable(){return this.rgb().displayable()},hex:lb,formatHex:lb,formatHex8:_P,formatHsl:vP,formatRgb:cb,toString:cb});function lb(){return this.rgb().formatHex()}function _P(){return this.rgb().formatHex8()}function vP(){return xb(this).formatHsl()}function cb(){return this.rgb().formatRgb()}function ma(e){var t,n;return e=(e+"").trim().toLowerCase(),(t=hP.exec(e))?(n=t[1].length,t=parseInt(t[1],16),n===6?ub(t):n===3?new sn(t>>8&15|t>>4&240,t>>4&15|t&240,(t&15)<<4|t&15,1):n===8?Ou(t>>24&255,t>>16&255,t>>8&255,(t&255)/255):n===4?Ou(t>>12&15|t>>8&240,t>>8&15|t>>4&240,t>>4&15|t&240,((t&15)<<4|t&15)/255):null):(t=dP.exec(e))?new sn(t[1],t[2],t[3],1):(t=pP.exec(e))?new sn(t[1]*255/100,t[2]*255/100,t[3]*255/100,1):(t=mP.exec(e))?Ou(t[1],t[2],t[3],t[4]):(t=gP.exec(e))?Ou(t[1]*255/100,t[2]*255/100,t[3]*255/100,t[4]):(t=yP.exec(e))?db(t[1],t[2]/100,t[3]/100,1):(t=xP.exec(e))?db(t[1],t[2]/100,t[3]/100,t[4]):ab.hasOwnProperty(e)?ub(ab[e]):e==="transparent"?new sn(NaN,NaN,NaN,0):null}function ub(e){return new sn(e>>16&255,e>>8&255,e&255,1)}function Ou(e,t,n,i){return i<=0&&(e=t=n=NaN),new sn(e,t,n,i)}function vm(e){return e instanceof _s||(e=ma(e)),e?(e=e.rgb(),new sn(e.r,e.g,e.b,e.opacity)):new sn}function ki(e,t,n,i){return arguments.length===1?vm(e):new sn(e,t,n,i??1)}function sn(e,t,n,i){this.r=+e,this.g=+t,this.b=+n,this.opacity=+i}pa(sn,ki,Hl(_s,{brighter(e){return e=e==null?da:Math.pow(da,e),new sn(this.r*e,this.g*e,this.b*e,this.opacity)},darker(e){return e=e==null?ho:Math.pow(ho,e),new sn(this.r*e,this.g*e,this.b*e,this.opacity)},rgb(){return this},clamp(){return new sn(uo(this.r),uo(this.g),uo(this.b),ku(this.opacity))},displayable(){return-.5<=this.r&&this.r<255.5&&-.5<=this.g&&this.g<255.5&&-.5<=this.b&&this.b<255.5&&0<=this.opacity&&this.opacity<=1},hex:fb,formatHex:fb,formatHex8:bP,formatRgb:hb,toString:hb}));function fb(){return`#${co(this.r)}${co(this.g)}${co(this.b)}`}function bP(){return`#${co(this.r)}${co(this.g)}${co(this.b)}${co((isNaN(this.opacity)?1:this.opacity)*255)}`}function hb(){let e=ku(this.opacity);return`${e===1?"rgb(":"rgba("}${uo(this.r)}, ${uo(this.g)}, ${uo(this.b)}${e===1?")":`, ${e})`}`}function ku(e){return isNaN(e)?1:Math.max(0,Math.min(1,e))}function uo(e){return Math.max(0,Math.min(255,Math.round(e)||0))}function co(e){return e=uo(e),(e<16?"0":"")+e.toString(16)}function db(e,t,n,i){return i<=0?e=t=n=NaN:n<=0||n>=1?e=t=NaN:t<=0&&(e=NaN),new Bi(e,t,n,i)}function xb(e){if(e instanceof Bi)return new Bi(e.h,e.s,e.l,e.opacity);if(e instanceof _s||(e=ma(e)),!e)return new Bi;if(e instanceof Bi)return e;e=e.rgb();var t=e.r/255,n=e.g/255,i=e.b/255,r=Math.min(t,n,i),s=Math.max(t,n,i),o=NaN,a=s-r,l=(s+r)/2;return a?(t===s?o=(n-i)/a+(n<i)*6:n===s?o=(i-t)/a+2:o=(t-n)/a+4,a/=l<.5?s+r:2-s-r,o*=60):a=l>0&&l<1?0:o,new Bi(o,a,l,e.opacity)}function Gu(e,t,n,i){return arguments.length===1?xb(e):new Bi(e,t,n,i??1)}function Bi(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}pa(Bi,Gu,Hl(_s,{brighter(e){return e=e==null?da:Math.pow(da,e),new Bi(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?ho:Math.pow(ho,e),new Bi(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=this.h%360+(this.h<0)*360,t=isNaN(e)||isNaN(this.s)?0:this.s,n=this.l,i=n+(n<.5?n:1-n)*t,r=2*n-i;return new sn(mm(e>=240?e-240:e+120,r,i),mm(e,r,i),mm(e<120?e+240:e-120,r,i),this.opacity)},clamp(){return new Bi(pb(this.h),Bu(this.s),Bu(this.l),ku(this.opacity))},displayable(){return(0<=this.s&&this.s<=1||isNaN(this.s))&&0<=this.l&&this.l<=1&&0<=this.opacity&&this.opacity<=1},formatHsl(){let e=ku(this.opacity);return`${e===1?"hsl(":"hsla("}${pb(this.h)}, ${Bu(this.s)*100}%, ${Bu(this.l)*100}%${e===1?")":`, ${e})`}`}}));function pb(e){return e=(e||0)%360,e<0?e+360:e}function Bu(e){return Math.max(0,Math.min(1,e||0))}function mm(e,t,n){return(e<60?t+(n-t)*e/60:e<180?n:e<240?t+(n-t)*(240-e)/60:t)*255}var _b=Math.PI/180,vb=180/Math.PI,zu=18,bb=.96422,Mb=1,Sb=.82521,wb=4/29,ha=6/29,Tb=3*ha*ha,MP=ha*ha*ha;function Eb(e){if(e instanceof rr)return new rr(e.l,e.a,e.b,e.opacity);if(e instanceof Nr)return Ab(e);e instanceof sn||(e=vm(e));var t=_m(e.r),n=_m(e.g),i=_m(e.b),r=gm((.2225045*t+.7168786*n+.0606169*i)/Mb),s,o;return t===n&&n===i?s=o=r:(s=gm((.4360747*t+.3850649*n+.1430804*i)/bb),o=gm((.0139322*t+.0971045*n+.7141733*i)/Sb)),new rr(116*r-16,500*(s-r),200*(r-o),e.opacity)}function Vu(e,t,n,i){return arguments.length===1?Eb(e):new rr(e,t,n,i??1)}function rr(e,t,n,i){this.l=+e,this.a=+t,this.b=+n,this.opacity=+i}pa(rr,Vu,Hl(_s,{brighter(e){return new rr(this.l+zu*(e??1),this.a,this.b,this.opacity)},darker(e){return new rr(this.l-zu*(e??1),this.a,this.b,this.opacity)},rgb(){var e=(this.l+16)/116,t=isNaN(this.a)?e:e+this.a/500,n=isNaN(this.b)?e:e-this.b/200;return t=bb*ym(t),e=Mb*ym(e),n=Sb*ym(n),new sn(xm(3.1338561*t-1.6168667*e-.4906146*n),xm(-.9787684*t+1.9161415*e+.033454*n),xm(.0719453*t-.2289914*e+1.4052427*n),this.opacity)}}));function gm(e){return e>MP?Math.pow(e,1/3):e/Tb+wb}function ym(e){return e>ha?e*e*e:Tb*(e-wb)}function xm(e){return 255*(e<=.0031308?12.92*e:1.055*Math.pow(e,1/2.4)-.055)}function _m(e){return(e/=255)<=.04045?e/12.92:Math.pow((e+.055)/1.055,2.4)}function SP(e){if(e instanceof Nr)return new Nr(e.h,e.c,e.l,e.opacity);if(e instanceof rr||(e=Eb(e)),e.a===0&&e.b===0)return new Nr(NaN,0<e.l&&e.l<100?0:NaN,e.l,e.opacity);var t=Math.atan2(e.b,e.a)*vb;return new Nr(t<0?t+360:t,Math.sqrt(e.a*e.a+e.b*e.b),e.l,e.opacity)}function Hu(e,t,n,i){return arguments.length===1?SP(e):new Nr(e,t,n,i??1)}function Nr(e,t,n,i){this.h=+e,this.c=+t,this.l=+n,this.opacity=+i}function Ab(e){if(isNaN(e.h))return new rr(e.l,0,0,e.opacity);var t=e.h*_b;return new rr(e.l,Math.cos(t)*e.c,Math.sin(t)*e.c,e.opacity)}pa(Nr,Hu,Hl(_s,{brighter(e){return new Nr(this.h,this.c,this.l+zu*(e??1),this.opacity)},darker(e){return new Nr(this.h,this.c,this.l-zu*(e??1),this.opacity)},rgb(){return Ab(this).rgb()}}));var Cb=-.14861,bm=1.78277,Mm=-.29227,Wu=-.90649,Vl=1.97294,mb=Vl*Wu,gb=Vl*bm,yb=bm*Mm-Wu*Cb;function wP(e){if(e instanceof fo)return new fo(e.h,e.s,e.l,e.opacity);e instanceof sn||(e=vm(e));var t=e.r/255,n=e.g/255,i=e.b/255,r=(yb*i+mb*t-gb*n)/(yb+mb-gb),s=i-r,o=(Vl*(n-r)-Mm*s)/Wu,a=Math.sqrt(o*o+s*s)/(Vl*r*(1-r)),l=a?Math.atan2(o,s)*vb-120:NaN;return new fo(l<0?l+360:l,a,r,e.opacity)}function yi(e,t,n,i){return arguments.length===1?wP(e):new fo(e,t,n,i??1)}function fo(e,t,n,i){this.h=+e,this.s=+t,this.l=+n,this.opacity=+i}pa(fo,yi,Hl(_s,{brighter(e){return e=e==null?da:Math.pow(da,e),new fo(this.h,this.s,this.l*e,this.opacity)},darker(e){return e=e==null?ho:Math.pow(ho,e),new fo(this.h,this.s,this.l*e,this.opacity)},rgb(){var e=isNaN(this.h)?0:(this.h+120)*_b,t=+this.l,n=isNaN(this.s)?0:this.s*t*(1-t),i=Math.cos(e),r=Math.sin(e);return new sn(255*(t+n*(Cb*i+bm*r)),255*(t+n*(Mm*i+Wu*r)),255*(t+n*(Vl*i)),this.opacity)}}));function Ib(e,t,n,i,r){var s=e*e,o=s*e;return((1-3*e+3*s-o)*t+(4-6*s+3*o)*n+(1+3*e+3*s-3*o)*i+o*r)/6}function TP(e){var t=e.length-1;return function(n){var i=n<=0?n=0:n>=1?(n=1,t-1):Math.floor(n*t),r=e[i],s=e[i+1],o=i>0?e[i-1]:2*r-s,a=i<t-1?e[i+2]:2*s-r;return Ib((n-i/t)*t,o,r,s,a)}}function EP(e){var t=e.length;return function(n){var i=Math.floor(((n%=1)<0?++n:n)*t),r=e[(i+t-1)%t],s=e[i%t],o=e[(i+1)%t],a=e[(i+2)%t];return Ib((n-i/t)*t,r,s,o,a)}}var Xu=e=>()=>e;function Lb(e,t){return function(n){return e+n*t}}function AP(e,t,n){return e=Math.pow(e,n),t=Math.pow(t,n)-e,n=1/n,function(i){return Math.pow(e+i*t,n)}}function Em(e,t){var n=t-e;return n?Lb(e,n>180||n<-180?n-360*Math.round(n/360):n):Xu(isNaN(e)?t:e)}function CP(e){return(e=+e)==1?on:function(t,n){return n-t?AP(t,n,e):Xu(isNaN(t)?n:t)}}function on(e,t){var n=t-e;return n?Lb(e,n):Xu(isNaN(e)?t:e)}var po=(function e(t){var n=CP(t);function i(r,s){var o=n((r=ki(r)).r,(s=ki(s)).r),a=n(r.g,s.g),l=n(r.b,s.b),c=on(r.opacity,s.opacity);return function(u){return r.r=o(u),r.g=a(u),r.b=l(u),r.opacity=c(u),r+""}}return i.gamma=e,i})(1);function Db(e){return function(t){var n=t.length,i=new Array(n),r=new Array(n),s=new Array(n),o,a;for(o=0;o<n;++o)a=ki(t[o]),i[o]=a.r||0,r[o]=a.g||0,s[o]=a.b||0;return i=e(i),r=e(r),s=e(s),a.opacity=1,function(l){return a.r=i(l),a.g=r(l),a.b=s(l),a+""}}}var Nb=Db(TP),U8=Db(EP);function RP(e,t){t||(t=[]);var n=e?Math.min(t.length,e.length):0,i=t.slice(),r;return function(s){for(r=0;r<n;++r)i[r]=e[r]*(1-s)+t[r]*s;return i}}function PP(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function IP(e,t){var n=t?t.length:0,i=e?Math.min(n,e.length):0,r=new Array(i),s=new Array(n),o;for(o=0;o<i;++o)r[o]=ga(e[o],t[o]);for(;o<n;++o)s[o]=t[o];return function(a){for(o=0;o<i;++o)s[o]=r[o](a);return s}}function LP(e,t){var n=new Date;return e=+e,t=+t,function(i){return n.setTime(e*(1-i)+t*i),n}}function Xe(e,t){return e=+e,t=+t,function(n){return e*(1-n)+t*n}}function DP(e,t){var n={},i={},r;(e===null||typeof e!="object")&&(e={}),(t===null||typeof t!="object")&&(t={});for(r in t)r in e?n[r]=ga(e[r],t[r]):i[r]=t[r];return function(s){for(r in n)i[r]=n[r](s);return i}}var wm=/[-+]?(?:\d+\.?\d*|\.?\d+)(?:[eE][-+]?\d+)?/g,Sm=new RegExp(wm.source,"g");function NP(e){return function(){return e}}function UP(e){return function(t){return e(t)+""}}function FP(e,t){var n=wm.lastIndex=Sm.lastIndex=0,i,r,s,o=-1,a=[],l=[];for(e=e+"",t=t+"";(i=wm.exec(e))&&(r=Sm.exec(t));)(s=r.index)>n&&(s=t.slice(n,s),a[o]?a[o]+=s:a[++o]=s),(i=i[0])===(r=r[0])?a[o]?a[o]+=r:a[++o]=r:(a[++o]=null,l.push({i:o,x:Xe(i,r)})),n=Sm.lastIndex;return n<t.length&&(s=t.slice(n),a[o]?a[o]+=s:a[++o]=s),a.length<2?l[0]?UP(l[0].x):NP(t):(t=l.length,function(c){for(var u=0,h;u<t;++u)a[(h=l[u]).i]=h.x(c);return a.join("")})}function ga(e,t){var n=typeof t,i;return t==null||n==="boolean"?Xu(t):(n==="number"?Xe:n==="string"?(i=ma(t))?(t=i,po):FP:t instanceof ma?po:t instanceof Date?LP:PP(t)?RP:Array.isArray(t)?IP:typeof t.valueOf!="function"&&typeof t.toString!="function"||isNaN(t)?DP:Xe)(e,t)}function Wl(e,t){return e=+e,t=+t,function(n){return Math.round(e*(1-n)+t*n)}}var Rb=180/Math.PI,Tm={translateX:0,translateY:0,rotate:0,skewX:0,scaleX:1,scaleY:1};function Ub(e,t,n,i,r,s){var o,a,l;return(o=Math.sqrt(e*e+t*t))&&(e/=o,t/=o),(l=e*n+t*i)&&(n-=e*l,i-=t*l),(a=Math.sqrt(n*n+i*i))&&(n/=a,i/=a,l/=a),e*i<t*n&&(e=-e,t=-t,l=-l,o=-o),{translateX:r,translateY:s,rotate:Math.atan2(t,e)*Rb,skewX:Math.atan(l)*Rb,scaleX:o,scaleY:a}}var $u;function OP(e){let t=new(typeof DOMMatrix=="function"?DOMMatrix:WebKitCSSMatrix)(e+"");return t.isIdentity?Tm:Ub(t.a,t.b,t.c,t.d,t.e,t.f)}function BP(e){return e==null||($u||($u=document.createElementNS("http://www.w3.org/2000/svg","g")),$u.setAttribute("transform",e),!(e=$u.transform.baseVal.consolidate()))?Tm:(e=e.matrix,Ub(e.a,e.b,e.c,e.d,e.e,e.f))}function Fb(e,t,n,i){function r(c){return c.length?c.pop()+" ":""}function s(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push("translate(",null,t,null,n);p.push({i:y-4,x:Xe(c,h)},{i:y-2,x:Xe(u,f)})}else(h||f)&&d.push("translate("+h+t+f+n)}function o(c,u,h,f){c!==u?(c-u>180?u+=360:u-c>180&&(c+=360),f.push({i:h.push(r(h)+"rotate(",null,i)-2,x:Xe(c,u)})):u&&h.push(r(h)+"rotate("+u+i)}function a(c,u,h,f){c!==u?f.push({i:h.push(r(h)+"skewX(",null,i)-2,x:Xe(c,u)}):u&&h.push(r(h)+"skewX("+u+i)}function l(c,u,h,f,d,p){if(c!==h||u!==f){var y=d.push(r(d)+"scale(",null,",",null,")");p.push({i:y-4,x:Xe(c,h)},{i:y-2,x:Xe(u,f)})}else(h!==1||f!==1)&&d.push(r(d)+"scale("+h+","+f+")")}return function(c,u){var h=[],f=[];return c=e(c),u=e(u),s(c.translateX,c.translateY,u.translateX,u.translateY,h,f),o(c.rotate,u.rotate,h,f),a(c.skewX,u.skewX,h,f),l(c.scaleX,c.scaleY,u.scaleX,u.scaleY,h,f),c=u=null,function(d){for(var p=-1,y=f.length,g;++p<y;)h[(g=f[p]).i]=g.x(d);return h.join("")}}}var F8=Fb(OP,"px, ","px)","deg)"),O8=Fb(BP,", ",")",")"),kP=1e-12;function Pb(e){return((e=Math.exp(e))+1/e)/2}function zP(e){return((e=Math.exp(e))-1/e)/2}function GP(e){return((e=Math.exp(2*e))-1)/(e+1)}var B8=(function e(t,n,i){function r(s,o){var a=s[0],l=s[1],c=s[2],u=o[0],h=o[1],f=o[2],d=u-a,p=h-l,y=d*d+p*p,g,m;if(y<kP)m=Math.log(f/c)/t,g=function(_){return[a+_*d,l+_*p,c*Math.exp(t*_*m)]};else{var x=Math.sqrt(y),M=(f*f-c*c+i*y)/(2*c*n*x),v=(f*f-c*c-i*y)/(2*f*n*x),S=Math.log(Math.sqrt(M*M+1)-M),b=Math.log(Math.sqrt(v*v+1)-v);m=(b-S)/t,g=function(_){var w=_*m,R=Pb(S),A=c/(n*x)*(R*GP(t*w+S)-zP(S));return[a+A*d,l+A*p,c*R/Pb(t*w+S)]}}return g.duration=Math.abs(m)*1e3*t/Math.SQRT2,g}return r.rho=function(s){var o=Math.max(.001,+s),a=o*o,l=a*a;return e(o,a,l)},r})(Math.SQRT2,2,4);function Ob(e){return function(t,n){var i=e((t=Gu(t)).h,(n=Gu(n)).h),r=on(t.s,n.s),s=on(t.l,n.l),o=on(t.opacity,n.opacity);return function(a){return t.h=i(a),t.s=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Bb=Ob(Em),k8=Ob(on);function kb(e,t){var n=on((e=Vu(e)).l,(t=Vu(t)).l),i=on(e.a,t.a),r=on(e.b,t.b),s=on(e.opacity,t.opacity);return function(o){return e.l=n(o),e.a=i(o),e.b=r(o),e.opacity=s(o),e+""}}function zb(e){return function(t,n){var i=e((t=Hu(t)).h,(n=Hu(n)).h),r=on(t.c,n.c),s=on(t.l,n.l),o=on(t.opacity,n.opacity);return function(a){return t.h=i(a),t.c=r(a),t.l=s(a),t.opacity=o(a),t+""}}}var Gb=zb(Em),z8=zb(on);function Vb(e){return(function t(n){n=+n;function i(r,s){var o=e((r=yi(r)).h,(s=yi(s)).h),a=on(r.s,s.s),l=on(r.l,s.l),c=on(r.opacity,s.opacity);return function(u){return r.h=o(u),r.s=a(u),r.l=l(Math.pow(u,n)),r.opacity=c(u),r+""}}return i.gamma=t,i})(1)}var G8=Vb(Em),qu=Vb(on);function vs(e,t){t===void 0&&(t=e,e=ga);for(var n=0,i=t.length-1,r=t[0],s=new Array(i<0?0:i);n<i;)s[n]=e(r,r=t[++n]);return function(o){var a=Math.max(0,Math.min(i-1,Math.floor(o*=i)));return s[a](o-a)}}function In(e,t){for(var n=new Array(t),i=0;i<t;++i)n[i]=e(i/(t-1));return n}var $l=Math.PI,Am=2*$l,mo=1e-6,VP=Am-mo;function Hb(e){this._+=e[0];for(let t=1,n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function HP(e){let t=Math.floor(e);if(!(t>=0))throw new Error(`invalid digits: ${e}`);if(t>15)return Hb;let n=10**t;return function(i){this._+=i[0];for(let r=1,s=i.length;r<s;++r)this._+=Math.round(arguments[r]*n)/n+i[r]}}function Wb(e,t,n,i){return e===n&&t===i}function WP(e){let t=Math.floor(e);if(!(t<=15))return Wb;let n=10**t,i=function(r){return Math.round(r*n)};return function(r,s,o,a){return i(r)===i(o)&&i(s)===i(a)}}var go=class{constructor(t){this._x0=this._y0=this._x1=this._y1=null,this._="",this._append=t==null?Hb:HP(t),this._equal=t==null?Wb:WP(t)}moveTo(t,n){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}`}closePath(){this._x1!==null&&(this._x1=this._x0,this._y1=this._y0,this._append`Z`)}lineTo(t,n){this._append`L${this._x1=+t},${this._y1=+n}`}quadraticCurveTo(t,n,i,r){this._append`Q${+t},${+n},${this._x1=+i},${this._y1=+r}`}bezierCurveTo(t,n,i,r,s,o){this._append`C${+t},${+n},${+i},${+r},${this._x1=+s},${this._y1=+o}`}arcTo(t,n,i,r,s){if(t=+t,n=+n,i=+i,r=+r,s=+s,s<0)throw new Error(`negative radius: ${s}`);let o=this._x1,a=this._y1,l=i-t,c=r-n,u=o-t,h=a-n,f=u*u+h*h;if(this._x1===null)this._append`M${this._x1=t},${this._y1=n}`;else if(f>mo)if(!(Math.abs(h*l-c*u)>mo)||!s)this._append`L${this._x1=t},${this._y1=n}`;else{let d=i-o,p=r-a,y=l*l+c*c,g=d*d+p*p,m=Math.sqrt(y),x=Math.sqrt(f),M=s*Math.tan(($l-Math.acos((y+f-g)/(2*m*x)))/2),v=M/x,S=M/m;Math.abs(v-1)>mo&&this._append`L${t+v*u},${n+v*h}`,this._append`A${s},${s},0,0,${+(h*d>u*p)},${this._x1=t+S*l},${this._y1=n+S*c}`}}arc(t,n,i,r,s,o){if(t=+t,n=+n,i=+i,o=!!o,i<0)throw new Error(`negative radius: ${i}`);let a=i*Math.cos(r),l=i*Math.sin(r),c=t+a,u=n+l,h=1^o,f=o?r-s:s-r;if(this._x1===null?this._append`M${c},${u}`:(Math.abs(this._x1-c)>mo||Math.abs(this._y1-u)>mo)&&this._append`L${c},${u}`,!!i){if(f<0&&(f=f%Am+Am),f>VP)this._append`A${i},${i},0,1,${h},${t-a},${n-l}A${i},${i},0,1,${h},${this._x1=c},${this._y1=u}`;else if(f>mo){let d=t+i*Math.cos(s),p=n+i*Math.sin(s);if(f>=$l&&this._equal(c,u,d,p)){f/=2;let y=r+f;this._append`A${i},${i},0,${+(f>=$l)},${h},${t+i*Math.cos(y)},${n+i*Math.sin(y)}`}this._append`A${i},${i},0,${+(f>=$l)},${h},${this._x1=d},${this._y1=p}`}}}rect(t,n,i,r){this._append`M${this._x0=this._x1=+t},${this._y0=this._y1=+n}h${i=+i}v${+r}h${-i}Z`}toString(){return this._}};function $P(){return new go}$P.prototype=go.prototype;function xi(e=3){return new go(+e)}function XP(e){return Math.abs(e=Math.round(e))>=1e21?e.toLocaleString("en").replace(/,/g,""):e.toString(10)}function Zu(e,t){if(!isFinite(e)||e===0)return null;var n=(e=t?e.toExponential(t-1):e.toExponential()).indexOf("e"),i=e.slice(0,n);return[i.length>1?i[0]+i.slice(2):i,+e.slice(n+1)]}function ya(e){return e=Zu(Math.abs(e)),e?e[1]:NaN}function qP(e,t){return function(n,i){for(var r=n.length,s=[],o=0,a=e[0],l=0;r>0&&a>0&&(l+a+1>i&&(a=Math.max(1,i-l)),s.push(n.substring(r-=a,r+a)),!((l+=a+1)>i));)a=e[o=(o+1)%e.length];return s.reverse().join(t)}}function YP(e){return function(t){return t.replace(/[0-9]/g,function(n){return e[+n]})}}var ZP=/^(?:(.)?([<>=^]))?([+\-( ])?([$#])?(0)?(\d+)?(,)?(\.\d+)?(~)?([a-z%])?$/i;function xa(e){if(!(t=ZP.exec(e)))throw new Error("invalid format: "+e);var t;return new Cm({fill:t[1],align:t[2],sign:t[3],symbol:t[4],zero:t[5],width:t[6],comma:t[7],precision:t[8]&&t[8].slice(1),trim:t[9],type:t[10]})}xa.prototype=Cm.prototype;function Cm(e){this.fill=e.fill===void 0?" ":e.fill+"",this.align=e.align===void 0?">":e.align+"",this.sign=e.sign===void 0?"-":e.sign+"",this.symbol=e.symbol===void 0?"":e.symbol+"",this.zero=!!e.zero,this.width=e.width===void 0?void 0:+e.width,this.comma=!!e.comma,this.precision=e.precision===void 0?void 0:+e.precision,this.trim=!!e.trim,this.type=e.type===void 0?"":e.type+""}Cm.prototype.toString=function(){return this.fill+this.align+this.sign+this.symbol+(this.zero?"0":"")+(this.width===void 0?"":Math.max(1,this.width|0))+(this.comma?",":"")+(this.precision===void 0?"":"."+Math.max(0,this.precision|0))+(this.trim?"~":"")+this.type};function KP(e){t:for(var t=e.length,n=1,i=-1,r;n<t;++n)switch(e[n]){case".":i=r=n;break;case"0":i===0&&(i=n),r=n;break;default:if(!+e[n])break t;i>0&&(i=0);break}return i>0?e.slice(0,i)+e.slice(r+1):e}var Ku;function JP(e,t){var n=Zu(e,t);if(!n)return Ku=void 0,e.toPrecision(t);var i=n[0],r=n[1],s=r-(Ku=Math.max(-8,Math.min(8,Math.floor(r/3)))*3)+1,o=i.length;return s===o?i:s>o?i+new Array(s-o+1).join("0"):s>0?i.slice(0,s)+"."+i.slice(s):"0."+new Array(1-s).join("0")+Zu(e,Math.max(0,t+s-1))[0]}function $b(e,t){var n=Zu(e,t);if(!n)return e+"";var i=n[0],r=n[1];return r<0?"0."+new Array(-r).join("0")+i:i.length>r+1?i.slice(0,r+1)+"."+i.slice(r+1):i+new Array(r-i.length+2).join("0")}var Xb={"%":(e,t)=>(e*100).toFixed(t),b:e=>Math.round(e).toString(2),c:e=>e+"",d:XP,e:(e,t)=>e.toExponential(t),f:(e,t)=>e.toFixed(t),g:(e,t)=>e.toPrecision(t),o:e=>Math.round(e).toString(8),p:(e,t)=>$b(e*100,t),r:$b,s:JP,X:e=>Math.round(e).toString(16).toUpperCase(),x:e=>Math.round(e).toString(16)};function qb(e){return e}var Yb=Array.prototype.map,Zb=["y","z","a","f","p","n","µ","m","","k","M","G","T","P","E","Z","Y"];function jP(e){var t=e.grouping===void 0||e.thousands===void 0?qb:qP(Yb.call(e.grouping,Number),e.thousands+""),n=e.currency===void 0?"":e.currency[0]+"",i=e.currency===void 0?"":e.currency[1]+"",r=e.decimal===void 0?".":e.decimal+"",s=e.numerals===void 0?qb:YP(Yb.call(e.numerals,String)),o=e.percent===void 0?"%":e.percent+"",a=e.minus===void 0?"−":e.minus+"",l=e.nan===void 0?"NaN":e.nan+"";function c(h,f){h=xa(h);var d=h.fill,p=h.align,y=h.sign,g=h.symbol,m=h.zero,x=h.width,M=h.comma,v=h.precision,S=h.trim,b=h.type;b==="n"?(M=!0,b="g"):Xb[b]||(v===void 0&&(v=12),S=!0,b="g"),(m||d==="0"&&p==="=")&&(m=!0,d="0",p="=");var _=(f&&f.prefix!==void 0?f.prefix:"")+(g==="$"?n:g==="#"&&/[boxX]/.test(b)?"0"+b.toLowerCase():""),w=(g==="$"?i:/[%p]/.test(b)?o:"")+(f&&f.suffix!==void 0?f.suffix:""),R=Xb[b],A=/[defgprs%]/.test(b);v=v===void 0?6:/[gprs]/.test(b)?Math.max(1,Math.min(21,v)):Math.max(0,Math.min(20,v));function C(P){var O=_,I=w,D,k,U;if(b==="c")I=R(P)+I,P="";else{P=+P;var Z=P<0||1/P<0;if(P=isNaN(P)?l:R(Math.abs(P),v),S&&(P=KP(P)),Z&&+P==0&&y!=="+"&&(Z=!1),O=(Z?y==="("?y:a:y==="-"||y==="("?"":y)+O,I=(b==="s"&&!isNaN(P)&&Ku!==void 0?Zb[8+Ku/3]:"")+I+(Z&&y==="("?")":""),A){for(D=-1,k=P.length;++D<k;)if(U=P.charCodeAt(D),48>U||U>57){I=(U===46?r+P.slice(D+1):P.slice(D))+I,P=P.slice(0,D);break}}}M&&!m&&(P=t(P,1/0));var F=O.length+P.length+I.length,V=F<x?new Array(x-F+1).join(d):"";switch(M&&m&&(P=t(V+P,V.length?x-I.length:1/0),V=""),p){case"<":P=O+P+I+V;break;case"=":P=O+V+P+I;break;case"^":P=V.slice(0,F=V.length>>1)+O+P+I+V.slice(F);break;default:P=V+O+P+I;break}return s(P)}return C.toString=function(){return h+""},C}function u(h,f){var d=Math.max(-8,Math.min(8,Math.floor(ya(f)/3)))*3,p=Math.pow(10,-d),y=c((h=xa(h),h.type="f",h),{suffix:Zb[8+d/3]});return function(g){return y(p*g)}}return{format:c,formatPrefix:u}}var Yu,sr,Rm;QP({thousands:",",grouping:[3],currency:["$",""]});function QP(e){return Yu=jP(e),sr=Yu.format,Rm=Yu.formatPrefix,Yu}function Kb(e){return Math.max(0,-ya(Math.abs(e)))}function Jb(e,t){return Math.max(0,Math.max(-8,Math.min(8,Math.floor(ya(t)/3)))*3-ya(Math.abs(e)))}function jb(e,t){return e=Math.abs(e),t=Math.abs(t)-e,Math.max(0,ya(t)-ya(e))+1}var qt=1e-6,y1=1e-12,te=Math.PI,Ie=te/2,Qb=te/4,ii=te*2,Ln=180/te,Pe=te/180,fe=Math.abs,Ma=Math.atan,Fr=Math.atan2,Qt=Math.cos;var x1=Math.exp;var rf=Math.log,Pm=Math.pow,Yt=Math.sin,vi=Math.sign||function(e){return e>0?1:e<0?-1:0},qn=Math.sqrt,Km=Math.tan;function _1(e){return e>1?0:e<-1?te:Math.acos(e)}function Mi(e){return e>1?Ie:e<-1?-Ie:Math.asin(e)}function bi(){}function sf(e,t){e&&e1.hasOwnProperty(e.type)&&e1[e.type](e,t)}var t1={Feature:function(e,t){sf(e.geometry,t)},FeatureCollection:function(e,t){for(var n=e.features,i=-1,r=n.length;++i<r;)sf(n[i].geometry,t)}},e1={Sphere:function(e,t){t.sphere()},Point:function(e,t){e=e.coordinates,t.point(e[0],e[1],e[2])},MultiPoint:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)e=n[i],t.point(e[0],e[1],e[2])},LineString:function(e,t){Um(e.coordinates,t,0)},MultiLineString:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)Um(n[i],t,0)},Polygon:function(e,t){n1(e.coordinates,t)},MultiPolygon:function(e,t){for(var n=e.coordinates,i=-1,r=n.length;++i<r;)n1(n[i],t)},GeometryCollection:function(e,t){for(var n=e.geometries,i=-1,r=n.length;++i<r;)sf(n[i],t)}};function Um(e,t,n){var i=-1,r=e.length-n,s;for(t.lineStart();++i<r;)s=e[i],t.point(s[0],s[1],s[2]);t.lineEnd()}function n1(e,t){var n=-1,i=e.length;for(t.polygonStart();++n<i;)Um(e[n],t,1);t.polygonEnd()}function bs(e,t){e&&t1.hasOwnProperty(e.type)?t1[e.type](e,t):sf(e,t)}var X8=new pi,q8=new pi;function Fm(e){return[Fr(e[1],e[0]),Mi(e[2])]}function va(e){var t=e[0],n=e[1],i=Qt(n);return[i*Qt(t),i*Yt(t),Yt(n)]}function Ju(e,t){return e[0]*t[0]+e[1]*t[1]+e[2]*t[2]}function of(e,t){return[e[1]*t[2]-e[2]*t[1],e[2]*t[0]-e[0]*t[2],e[0]*t[1]-e[1]*t[0]]}function Im(e,t){e[0]+=t[0],e[1]+=t[1],e[2]+=t[2]}function ju(e,t){return[e[0]*t,e[1]*t,e[2]*t]}function Om(e){var t=qn(e[0]*e[0]+e[1]*e[1]+e[2]*e[2]);e[0]/=t,e[1]/=t,e[2]/=t}function Bm(e,t){function n(i,r){return i=e(i,r),t(i[0],i[1])}return e.invert&&t.invert&&(n.invert=function(i,r){return i=t.invert(i,r),i&&e.invert(i[0],i[1])}),n}function km(e,t){return fe(e)>te&&(e-=Math.round(e/ii)*ii),[e,t]}km.invert=km;function v1(e,t,n){return(e%=ii)?t||n?Bm(r1(e),s1(t,n)):r1(e):t||n?s1(t,n):km}function i1(e){return function(t,n){return t+=e,fe(t)>te&&(t-=Math.round(t/ii)*ii),[t,n]}}function r1(e){var t=i1(e);return t.invert=i1(-e),t}function s1(e,t){var n=Qt(e),i=Yt(e),r=Qt(t),s=Yt(t);function o(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*n+u*i;return[Fr(h*r-d*s,u*n-f*i),Mi(d*r+h*s)]}return o.invert=function(a,l){var c=Qt(l),u=Qt(a)*c,h=Yt(a)*c,f=Yt(l),d=f*r-h*s;return[Fr(h*r+f*s,u*n+d*i),Mi(d*n-u*i)]},o}function tI(e){e=v1(e[0]*Pe,e[1]*Pe,e.length>2?e[2]*Pe:0);function t(n){return n=e(n[0]*Pe,n[1]*Pe),n[0]*=Ln,n[1]*=Ln,n}return t.invert=function(n){return n=e.invert(n[0]*Pe,n[1]*Pe),n[0]*=Ln,n[1]*=Ln,n},t}function eI(e,t,n,i,r,s){if(n){var o=Qt(t),a=Yt(t),l=i*n;r==null?(r=t+i*ii,s=t-l/2):(r=o1(o,r),s=o1(o,s),(i>0?r<s:r>s)&&(r+=i*ii));for(var c,u=r;i>0?u>s:u<s;u-=l)c=Fm([o,-a*Qt(u),-a*Yt(u)]),e.point(c[0],c[1])}}function o1(e,t){t=va(t),t[0]-=e,Om(t);var n=_1(-t[1]);return((-t[2]<0?-n:n)+ii-qt)%ii}function b1(){var e=[],t;return{point:function(n,i,r){t.push([n,i,r])},lineStart:function(){e.push(t=[])},lineEnd:bi,rejoin:function(){e.length>1&&e.push(e.pop().concat(e.shift()))},result:function(){var n=e;return e=[],t=null,n}}}function nf(e,t){return fe(e[0]-t[0])<qt&&fe(e[1]-t[1])<qt}function Qu(e,t,n,i){this.x=e,this.z=t,this.o=n,this.e=i,this.v=!1,this.n=this.p=null}function M1(e,t,n,i,r){var s=[],o=[],a,l;if(e.forEach(function(p){if(!((y=p.length-1)<=0)){var y,g=p[0],m=p[y],x;if(nf(g,m)){if(!g[2]&&!m[2]){for(r.lineStart(),a=0;a<y;++a)r.point((g=p[a])[0],g[1]);r.lineEnd();return}m[0]+=2*qt}s.push(x=new Qu(g,p,null,!0)),o.push(x.o=new Qu(g,null,x,!1)),s.push(x=new Qu(m,p,null,!1)),o.push(x.o=new Qu(m,null,x,!0))}}),!!s.length){for(o.sort(t),a1(s),a1(o),a=0,l=o.length;a<l;++a)o[a].e=n=!n;for(var c=s[0],u,h;;){for(var f=c,d=!0;f.v;)if((f=f.n)===c)return;u=f.z,r.lineStart();do{if(f.v=f.o.v=!0,f.e){if(d)for(a=0,l=u.length;a<l;++a)r.point((h=u[a])[0],h[1]);else i(f.x,f.n.x,1,r);f=f.n}else{if(d)for(u=f.p.z,a=u.length-1;a>=0;--a)r.point((h=u[a])[0],h[1]);else i(f.x,f.p.x,-1,r);f=f.p}f=f.o,u=f.z,d=!d}while(!f.v);r.lineEnd()}}}function a1(e){if(t=e.length){for(var t,n=0,i=e[0],r;++n<t;)i.n=r=e[n],r.p=i,i=r;i.n=r=e[0],r.p=i}}function Lm(e){return fe(e[0])<=te?e[0]:vi(e[0])*((fe(e[0])+te)%ii-te)}function nI(e,t){var n=Lm(t),i=t[1],r=Yt(i),s=[Yt(n),-Qt(n),0],o=0,a=0,l=new pi;r===1?i=Ie+qt:r===-1&&(i=-Ie-qt);for(var c=0,u=e.length;c<u;++c)if(f=(h=e[c]).length)for(var h,f,d=h[f-1],p=Lm(d),y=d[1]/2+Qb,g=Yt(y),m=Qt(y),x=0;x<f;++x,p=v,g=b,m=_,d=M){var M=h[x],v=Lm(M),S=M[1]/2+Qb,b=Yt(S),_=Qt(S),w=v-p,R=w>=0?1:-1,A=R*w,C=A>te,P=g*b;if(l.add(Fr(P*R*Yt(A),m*_+P*Qt(A))),o+=C?w+R*ii:w,C^p>=n^v>=n){var O=of(va(d),va(M));Om(O);var I=of(s,O);Om(I);var D=(C^w>=0?-1:1)*Mi(I[2]);(i>D||i===D&&(O[0]||O[1]))&&(a+=C^w>=0?1:-1)}}return(o<-qt||o<qt&&l<-y1)^a&1}function S1(e,t,n,i){return function(r){var s=t(r),o=b1(),a=t(o),l=!1,c,u,h,f={point:d,lineStart:y,lineEnd:g,polygonStart:function(){f.point=m,f.lineStart=x,f.lineEnd=M,u=[],c=[]},polygonEnd:function(){f.point=d,f.lineStart=y,f.lineEnd=g,u=lm(u);var v=nI(c,i);u.length?(l||(r.polygonStart(),l=!0),M1(u,rI,v,n,r)):v&&(l||(r.polygonStart(),l=!0),r.lineStart(),n(null,null,1,r),r.lineEnd()),l&&(r.polygonEnd(),l=!1),u=c=null},sphere:function(){r.polygonStart(),r.lineStart(),n(null,null,1,r),r.lineEnd(),r.polygonEnd()}};function d(v,S){e(v,S)&&r.point(v,S)}function p(v,S){s.point(v,S)}function y(){f.point=p,s.lineStart()}function g(){f.point=d,s.lineEnd()}function m(v,S){h.push([v,S]),a.point(v,S)}function x(){a.lineStart(),h=[]}function M(){m(h[0][0],h[0][1]),a.lineEnd();var v=a.clean(),S=o.result(),b,_=S.length,w,R,A;if(h.pop(),c.push(h),h=null,!!_){if(v&1){if(R=S[0],(w=R.length-1)>0){for(l||(r.polygonStart(),l=!0),r.lineStart(),b=0;b<w;++b)r.point((A=R[b])[0],A[1]);r.lineEnd()}return}_>1&&v&2&&S.push(S.pop().concat(S.shift())),u.push(S.filter(iI))}}return f}}function iI(e){return e.length>1}function rI(e,t){return((e=e.x)[0]<0?e[1]-Ie-qt:Ie-e[1])-((t=t.x)[0]<0?t[1]-Ie-qt:Ie-t[1])}var l1=S1(function(){return!0},sI,aI,[-te,-Ie]);function sI(e){var t=NaN,n=NaN,i=NaN,r;return{lineStart:function(){e.lineStart(),r=1},point:function(s,o){var a=s>0?te:-te,l=fe(s-t);fe(l-te)<qt?(e.point(t,n=(n+o)/2>0?Ie:-Ie),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),e.point(s,n),r=0):i!==a&&l>=te&&(fe(t-i)<qt&&(t-=i*qt),fe(s-a)<qt&&(s-=a*qt),n=oI(t,n,s,o),e.point(i,n),e.lineEnd(),e.lineStart(),e.point(a,n),r=0),e.point(t=s,n=o),i=a},lineEnd:function(){e.lineEnd(),t=n=NaN},clean:function(){return 2-r}}}function oI(e,t,n,i){var r,s,o=Yt(e-n);return fe(o)>qt?Ma((Yt(t)*(s=Qt(i))*Yt(n)-Yt(i)*(r=Qt(t))*Yt(e))/(r*s*o)):(t+i)/2}function aI(e,t,n,i){var r;if(e==null)r=n*Ie,i.point(-te,r),i.point(0,r),i.point(te,r),i.point(te,0),i.point(te,-r),i.point(0,-r),i.point(-te,-r),i.point(-te,0),i.point(-te,r);else if(fe(e[0]-t[0])>qt){var s=e[0]<t[0]?te:-te;r=n*s/2,i.point(-s,r),i.point(0,r),i.point(s,r)}else i.point(t[0],t[1])}function lI(e){var t=Qt(e),n=2*Pe,i=t>0,r=fe(t)>qt;function s(u,h,f,d){eI(d,e,n,f,u,h)}function o(u,h){return Qt(u)*Qt(h)>t}function a(u){var h,f,d,p,y;return{lineStart:function(){p=d=!1,y=1},point:function(g,m){var x=[g,m],M,v=o(g,m),S=i?v?0:c(g,m):v?c(g+(g<0?te:-te),m):0;if(!h&&(p=d=v)&&u.lineStart(),v!==d&&(M=l(h,x),(!M||nf(h,M)||nf(x,M))&&(x[2]=1)),v!==d)y=0,v?(u.lineStart(),M=l(x,h),u.point(M[0],M[1])):(M=l(h,x),u.point(M[0],M[1],2),u.lineEnd()),h=M;else if(r&&h&&i^v){var b;!(S&f)&&(b=l(x,h,!0))&&(y=0,i?(u.lineStart(),u.point(b[0][0],b[0][1]),u.point(b[1][0],b[1][1]),u.lineEnd()):(u.point(b[1][0],b[1][1]),u.lineEnd(),u.lineStart(),u.point(b[0][0],b[0][1],3)))}v&&(!h||!nf(h,x))&&u.point(x[0],x[1]),h=x,d=v,f=S},lineEnd:function(){d&&u.lineEnd(),h=null},clean:function(){return y|(p&&d)<<1}}}function l(u,h,f){var d=va(u),p=va(h),y=[1,0,0],g=of(d,p),m=Ju(g,g),x=g[0],M=m-x*x;if(!M)return!f&&u;var v=t*m/M,S=-t*x/M,b=of(y,g),_=ju(y,v),w=ju(g,S);Im(_,w);var R=b,A=Ju(_,R),C=Ju(R,R),P=A*A-C*(Ju(_,_)-1);if(!(P<0)){var O=qn(P),I=ju(R,(-A-O)/C);if(Im(I,_),I=Fm(I),!f)return I;var D=u[0],k=h[0],U=u[1],Z=h[1],F;k<D&&(F=D,D=k,k=F);var V=k-D,q=fe(V-te)<qt,st=q||V<qt;if(!q&&Z<U&&(F=U,U=Z,Z=F),st?q?U+Z>0^I[1]<(fe(I[0]-D)<qt?U:Z):U<=I[1]&&I[1]<=Z:V>te^(D<=I[0]&&I[0]<=k)){var lt=ju(R,(-A+O)/C);return Im(lt,_),[I,Fm(lt)]}}}function c(u,h){var f=i?e:te-e,d=0;return u<-f?d|=1:u>f&&(d|=2),h<-f?d|=4:h>f&&(d|=8),d}return S1(o,a,s,i?[0,-e]:[-te,e-te])}function cI(e,t,n,i,r,s){var o=e[0],a=e[1],l=t[0],c=t[1],u=0,h=1,f=l-o,d=c-a,p;if(p=n-o,!(!f&&p>0)){if(p/=f,f<0){if(p<u)return;p<h&&(h=p)}else if(f>0){if(p>h)return;p>u&&(u=p)}if(p=r-o,!(!f&&p<0)){if(p/=f,f<0){if(p>h)return;p>u&&(u=p)}else if(f>0){if(p<u)return;p<h&&(h=p)}if(p=i-a,!(!d&&p>0)){if(p/=d,d<0){if(p<u)return;p<h&&(h=p)}else if(d>0){if(p>h)return;p>u&&(u=p)}if(p=s-a,!(!d&&p<0)){if(p/=d,d<0){if(p>h)return;p>u&&(u=p)}else if(d>0){if(p<u)return;p<h&&(h=p)}return u>0&&(e[0]=o+u*f,e[1]=a+u*d),h<1&&(t[0]=o+h*f,t[1]=a+h*d),!0}}}}}var Xl=1e9,tf=-Xl;function Jm(e,t,n,i){function r(c,u){return e<=c&&c<=n&&t<=u&&u<=i}function s(c,u,h,f){var d=0,p=0;if(c==null||(d=o(c,h))!==(p=o(u,h))||l(c,u)<0^h>0)do f.point(d===0||d===3?e:n,d>1?i:t);while((d=(d+h+4)%4)!==p);else f.point(u[0],u[1])}function o(c,u){return fe(c[0]-e)<qt?u>0?0:3:fe(c[0]-n)<qt?u>0?2:1:fe(c[1]-t)<qt?u>0?1:0:u>0?3:2}function a(c,u){return l(c.x,u.x)}function l(c,u){var h=o(c,1),f=o(u,1);return h!==f?h-f:h===0?u[1]-c[1]:h===1?c[0]-u[0]:h===2?c[1]-u[1]:u[0]-c[0]}return function(c){var u=c,h=b1(),f,d,p,y,g,m,x,M,v,S,b,_={point:w,lineStart:P,lineEnd:O,polygonStart:A,polygonEnd:C};function w(D,k){r(D,k)&&u.point(D,k)}function R(){for(var D=0,k=0,U=d.length;k<U;++k)for(var Z=d[k],F=1,V=Z.length,q=Z[0],st,lt,$=q[0],at=q[1];F<V;++F)st=$,lt=at,q=Z[F],$=q[0],at=q[1],lt<=i?at>i&&($-st)*(i-lt)>(at-lt)*(e-st)&&++D:at<=i&&($-st)*(i-lt)<(at-lt)*(e-st)&&--D;return D}function A(){u=h,f=[],d=[],b=!0}function C(){var D=R(),k=b&&D,U=(f=lm(f)).length;(k||U)&&(c.polygonStart(),k&&(c.lineStart(),s(null,null,1,c),c.lineEnd()),U&&M1(f,a,D,s,c),c.polygonEnd()),u=c,f=d=p=null}function P(){_.point=I,d&&d.push(p=[]),S=!0,v=!1,x=M=NaN}function O(){f&&(I(y,g),m&&v&&h.rejoin(),f.push(h.result())),_.point=w,v&&u.lineEnd()}function I(D,k){var U=r(D,k);if(d&&p.push([D,k]),S)y=D,g=k,m=U,S=!1,U&&(u.lineStart(),u.point(D,k));else if(U&&v)u.point(D,k);else{var Z=[x=Math.max(tf,Math.min(Xl,x)),M=Math.max(tf,Math.min(Xl,M))],F=[D=Math.max(tf,Math.min(Xl,D)),k=Math.max(tf,Math.min(Xl,k))];cI(Z,F,e,t,n,i)?(v||(u.lineStart(),u.point(Z[0],Z[1])),u.point(F[0],F[1]),U||u.lineEnd(),b=!1):U&&(u.lineStart(),u.point(D,k),b=!1)}x=D,M=k,v=U}return _}}var zm=e=>e,Dm=new pi,Gm=new pi,w1,T1,Vm,Hm,Ur={point:bi,lineStart:bi,lineEnd:bi,polygonStart:function(){Ur.lineStart=uI,Ur.lineEnd=hI},polygonEnd:function(){Ur.lineStart=Ur.lineEnd=Ur.point=bi,Dm.add(fe(Gm)),Gm=new pi},result:function(){var e=Dm/2;return Dm=new pi,e}};function uI(){Ur.point=fI}function fI(e,t){Ur.point=E1,w1=Vm=e,T1=Hm=t}function E1(e,t){Gm.add(Hm*e-Vm*t),Vm=e,Hm=t}function hI(){E1(w1,T1)}var ba=1/0,af=ba,ec=-ba,lf=ec,cf={point:dI,lineStart:bi,lineEnd:bi,polygonStart:bi,polygonEnd:bi,result:function(){var e=[[ba,af],[ec,lf]];return ec=lf=-(af=ba=1/0),e}};function dI(e,t){e<ba&&(ba=e),e>ec&&(ec=e),t<af&&(af=t),t>lf&&(lf=t)}var Wm=0,$m=0,ql=0,uf=0,ff=0,_a=0,Xm=0,qm=0,Yl=0,A1,C1,or,ar,_i={point:yo,lineStart:c1,lineEnd:u1,polygonStart:function(){_i.lineStart=gI,_i.lineEnd=yI},polygonEnd:function(){_i.point=yo,_i.lineStart=c1,_i.lineEnd=u1},result:function(){var e=Yl?[Xm/Yl,qm/Yl]:_a?[uf/_a,ff/_a]:ql?[Wm/ql,$m/ql]:[NaN,NaN];return Wm=$m=ql=uf=ff=_a=Xm=qm=Yl=0,e}};function yo(e,t){Wm+=e,$m+=t,++ql}function c1(){_i.point=pI}function pI(e,t){_i.point=mI,yo(or=e,ar=t)}function mI(e,t){var n=e-or,i=t-ar,r=qn(n*n+i*i);uf+=r*(or+e)/2,ff+=r*(ar+t)/2,_a+=r,yo(or=e,ar=t)}function u1(){_i.point=yo}function gI(){_i.point=xI}function yI(){R1(A1,C1)}function xI(e,t){_i.point=R1,yo(A1=or=e,C1=ar=t)}function R1(e,t){var n=e-or,i=t-ar,r=qn(n*n+i*i);uf+=r*(or+e)/2,ff+=r*(ar+t)/2,_a+=r,r=ar*e-or*t,Xm+=r*(or+e),qm+=r*(ar+t),Yl+=r*3,yo(or=e,ar=t)}function P1(e){this._context=e}P1.prototype={_radius:4.5,pointRadius:function(e){return this._radius=e,this},polygonStart:function(){this._line=0},polygonEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){this._line===0&&this._context.closePath(),this._point=NaN},point:function(e,t){switch(this._point){case 0:{this._context.moveTo(e,t),this._point=1;break}case 1:{this._context.lineTo(e,t);break}default:{this._context.moveTo(e+this._radius,t),this._context.arc(e,t,this._radius,0,ii);break}}},result:bi};var Ym=new pi,Nm,I1,L1,Zl,Kl,nc={point:bi,lineStart:function(){nc.point=_I},lineEnd:function(){Nm&&D1(I1,L1),nc.point=bi},polygonStart:function(){Nm=!0},polygonEnd:function(){Nm=null},result:function(){var e=+Ym;return Ym=new pi,e}};function _I(e,t){nc.point=D1,I1=Zl=e,L1=Kl=t}function D1(e,t){Zl-=e,Kl-=t,Ym.add(qn(Zl*Zl+Kl*Kl)),Zl=e,Kl=t}var f1,hf,h1,d1,df=class{constructor(t){this._append=t==null?N1:vI(t),this._radius=4.5,this._=""}pointRadius(t){return this._radius=+t,this}polygonStart(){this._line=0}polygonEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){this._line===0&&(this._+="Z"),this._point=NaN}point(t,n){switch(this._point){case 0:{this._append`M${t},${n}`,this._point=1;break}case 1:{this._append`L${t},${n}`;break}default:{if(this._append`M${t},${n}`,this._radius!==h1||this._append!==hf){let i=this._radius,r=this._;this._="",this._append`m0,${i}a${i},${i} 0 1,1 0,${-2*i}a${i},${i} 0 1,1 0,${2*i}z`,h1=i,hf=this._append,d1=this._,this._=r}this._+=d1;break}}}result(){let t=this._;return this._="",t.length?t:null}};function N1(e){let t=1;this._+=e[0];for(let n=e.length;t<n;++t)this._+=arguments[t]+e[t]}function vI(e){let t=Math.floor(e);if(!(t>=0))throw new RangeError(`invalid digits: ${e}`);if(t>15)return N1;if(t!==f1){let n=10**t;f1=t,hf=function(r){let s=1;this._+=r[0];for(let o=r.length;s<o;++s)this._+=Math.round(arguments[s]*n)/n+r[s]}}return hf}function rc(e,t){let n=3,i=4.5,r,s;function o(a){return a&&(typeof i=="function"&&s.pointRadius(+i.apply(this,arguments)),bs(a,r(s))),s.result()}return o.area=function(a){return bs(a,r(Ur)),Ur.result()},o.measure=function(a){return bs(a,r(nc)),nc.result()},o.bounds=function(a){return bs(a,r(cf)),cf.result()},o.centroid=function(a){return bs(a,r(_i)),_i.result()},o.projection=function(a){return arguments.length?(r=a==null?(e=null,zm):(e=a).stream,o):e},o.context=function(a){return arguments.length?(s=a==null?(t=null,new df(n)):new P1(t=a),typeof i!="function"&&s.pointRadius(i),o):t},o.pointRadius=function(a){return arguments.length?(i=typeof a=="function"?a:(s.pointRadius(+a),+a),o):i},o.digits=function(a){if(!arguments.length)return n;if(a==null)n=null;else{let l=Math.floor(a);if(!(l>=0))throw new RangeError(`invalid digits: ${a}`);n=l}return t===null&&(s=new df(n)),o},o.projection(e).digits(n).context(t)}function sc(e){return{stream:gf(e)}}function gf(e){return function(t){var n=new Zm;for(var i in e)n[i]=e[i];return n.stream=t,n}}function Zm(){}Zm.prototype={constructor:Zm,point:function(e,t){this.stream.point(e,t)},sphere:function(){this.stream.sphere()},lineStart:function(){this.stream.lineStart()},lineEnd:function(){this.stream.lineEnd()},polygonStart:function(){this.stream.polygonStart()},polygonEnd:function(){this.stream.polygonEnd()}};function jm(e,t,n){var i=e.clipExtent&&e.clipExtent();return e.scale(150).translate([0,0]),i!=null&&e.clipExtent(null),bs(n,e.stream(cf)),t(cf.result()),i!=null&&e.clipExtent(i),e}function Qm(e,t,n){return jm(e,function(i){var r=t[1][0]-t[0][0],s=t[1][1]-t[0][1],o=Math.min(r/(i[1][0]-i[0][0]),s/(i[1][1]-i[0][1])),a=+t[0][0]+(r-o*(i[1][0]+i[0][0]))/2,l=+t[0][1]+(s-o*(i[1][1]+i[0][1]))/2;e.scale(150*o).translate([a,l])},n)}function U1(e,t,n){return Qm(e,[[0,0],t],n)}function F1(e,t,n){return jm(e,function(i){var r=+t,s=r/(i[1][0]-i[0][0]),o=(r-s*(i[1][0]+i[0][0]))/2,a=-s*i[0][1];e.scale(150*s).translate([o,a])},n)}function O1(e,t,n){return jm(e,function(i){var r=+t,s=r/(i[1][1]-i[0][1]),o=-s*i[0][0],a=(r-s*(i[1][1]+i[0][1]))/2;e.scale(150*s).translate([o,a])},n)}var p1=16,bI=Qt(30*Pe);function m1(e,t){return+t?SI(e,t):MI(e)}function MI(e){return gf({point:function(t,n){t=e(t,n),this.stream.point(t[0],t[1])}})}function SI(e,t){function n(i,r,s,o,a,l,c,u,h,f,d,p,y,g){var m=c-i,x=u-r,M=m*m+x*x;if(M>4*t&&y--){var v=o+f,S=a+d,b=l+p,_=qn(v*v+S*S+b*b),w=Mi(b/=_),R=fe(fe(b)-1)<qt||fe(s-h)<qt?(s+h)/2:Fr(S,v),A=e(R,w),C=A[0],P=A[1],O=C-i,I=P-r,D=x*O-m*I;(D*D/M>t||fe((m*O+x*I)/M-.5)>.3||o*f+a*d+l*p<bI)&&(n(i,r,s,o,a,l,C,P,R,v/=_,S/=_,b,y,g),g.point(C,P),n(C,P,R,v,S,b,c,u,h,f,d,p,y,g))}}return function(i){var r,s,o,a,l,c,u,h,f,d,p,y,g={point:m,lineStart:x,lineEnd:v,polygonStart:function(){i.polygonStart(),g.lineStart=S},polygonEnd:function(){i.polygonEnd(),g.lineStart=x}};function m(w,R){w=e(w,R),i.point(w[0],w[1])}function x(){h=NaN,g.point=M,i.lineStart()}function M(w,R){var A=va([w,R]),C=e(w,R);n(h,f,u,d,p,y,h=C[0],f=C[1],u=w,d=A[0],p=A[1],y=A[2],p1,i),i.point(h,f)}function v(){g.point=m,i.lineEnd()}function S(){x(),g.point=b,g.lineEnd=_}function b(w,R){M(r=w,R),s=h,o=f,a=d,l=p,c=y,g.point=M}function _(){n(h,f,u,d,p,y,s,o,r,a,l,c,p1,i),g.lineEnd=v,v()}return g}}var wI=gf({point:function(e,t){this.stream.point(e*Pe,t*Pe)}});function TI(e){return gf({point:function(t,n){var i=e(t,n);return this.stream.point(i[0],i[1])}})}function EI(e,t,n,i,r){function s(o,a){return o*=i,a*=r,[t+e*o,n-e*a]}return s.invert=function(o,a){return[(o-t)/e*i,(n-a)/e*r]},s}function g1(e,t,n,i,r,s){if(!s)return EI(e,t,n,i,r);var o=Qt(s),a=Yt(s),l=o*e,c=a*e,u=o/e,h=a/e,f=(a*n-o*t)/e,d=(a*t+o*n)/e;function p(y,g){return y*=i,g*=r,[l*y-c*g+t,n-c*y-l*g]}return p.invert=function(y,g){return[i*(u*y-h*g+f),r*(d-h*y-u*g)]},p}function Ms(e){return B1(function(){return e})()}function B1(e){var t,n=150,i=480,r=250,s=0,o=0,a=0,l=0,c=0,u,h=0,f=1,d=1,p=null,y=l1,g=null,m,x,M,v=zm,S=.5,b,_,w,R,A;function C(D){return w(D[0]*Pe,D[1]*Pe)}function P(D){return D=w.invert(D[0],D[1]),D&&[D[0]*Ln,D[1]*Ln]}C.stream=function(D){return R&&A===D?R:R=wI(TI(u)(y(b(v(A=D)))))},C.preclip=function(D){return arguments.length?(y=D,p=void 0,I()):y},C.postclip=function(D){return arguments.length?(v=D,g=m=x=M=null,I()):v},C.clipAngle=function(D){return arguments.length?(y=+D?lI(p=D*Pe):(p=null,l1),I()):p*Ln},C.clipExtent=function(D){return arguments.length?(v=D==null?(g=m=x=M=null,zm):Jm(g=+D[0][0],m=+D[0][1],x=+D[1][0],M=+D[1][1]),I()):g==null?null:[[g,m],[x,M]]},C.scale=function(D){return arguments.length?(n=+D,O()):n},C.translate=function(D){return arguments.length?(i=+D[0],r=+D[1],O()):[i,r]},C.center=function(D){return arguments.length?(s=D[0]%360*Pe,o=D[1]%360*Pe,O()):[s*Ln,o*Ln]},C.rotate=function(D){return arguments.length?(a=D[0]%360*Pe,l=D[1]%360*Pe,c=D.length>2?D[2]%360*Pe:0,O()):[a*Ln,l*Ln,c*Ln]},C.angle=function(D){return arguments.length?(h=D%360*Pe,O()):h*Ln},C.reflectX=function(D){return arguments.length?(f=D?-1:1,O()):f<0},C.reflectY=function(D){return arguments.length?(d=D?-1:1,O()):d<0},C.precision=function(D){return arguments.length?(b=m1(_,S=D*D),I()):qn(S)},C.fitExtent=function(D,k){return Qm(C,D,k)},C.fitSize=function(D,k){return U1(C,D,k)},C.fitWidth=function(D,k){return F1(C,D,k)},C.fitHeight=function(D,k){return O1(C,D,k)};function O(){var D=g1(n,0,0,f,d,h).apply(null,t(s,o)),k=g1(n,i-D[0],r-D[1],f,d,h);return u=v1(a,l,c),_=Bm(t,k),w=Bm(u,_),b=m1(_,S),I()}function I(){return R=A=null,C}return function(){return t=e.apply(this,arguments),C.invert=t.invert&&P,O()}}function tg(e){var t=0,n=te/3,i=B1(e),r=i(t,n);return r.parallels=function(s){return arguments.length?i(t=s[0]*Pe,n=s[1]*Pe):[t*Ln,n*Ln]},r}function AI(e){var t=Qt(e);function n(i,r){return[i*t,Yt(r)/t]}return n.invert=function(i,r){return[i/t,Mi(r*t)]},n}function CI(e,t){var n=Yt(e),i=(n+Yt(t))/2;if(fe(i)<qt)return AI(e);var r=1+n*(2*i-n),s=qn(r)/i;function o(a,l){var c=qn(r-2*i*Yt(l))/i;return[c*Yt(a*=i),s-c*Qt(a)]}return o.invert=function(a,l){var c=s-l,u=Fr(a,fe(c))*vi(c);return c*i<0&&(u-=te*vi(a)*vi(c)),[u/i,Mi((r-(a*a+c*c)*i*i)/(2*i))]},o}function ic(){return tg(CI).scale(155.424).center([0,33.6442])}function eg(){return ic().parallels([29.5,45.5]).scale(1070).translate([480,250]).rotate([96,0]).center([-.6,38.7])}function RI(e){var t=e.length;return{point:function(n,i){for(var r=-1;++r<t;)e[r].point(n,i)},sphere:function(){for(var n=-1;++n<t;)e[n].sphere()},lineStart:function(){for(var n=-1;++n<t;)e[n].lineStart()},lineEnd:function(){for(var n=-1;++n<t;)e[n].lineEnd()},polygonStart:function(){for(var n=-1;++n<t;)e[n].polygonStart()},polygonEnd:function(){for(var n=-1;++n<t;)e[n].polygonEnd()}}}function k1(){var e,t,n=eg(),i,r=ic().rotate([154,0]).center([-2,58.5]).parallels([55,65]),s,o=ic().rotate([157,0]).center([-3,19.9]).parallels([8,18]),a,l,c={point:function(f,d){l=[f,d]}};function u(f){var d=f[0],p=f[1];return l=null,i.point(d,p),l||(s.point(d,p),l)||(a.point(d,p),l)}u.invert=function(f){var d=n.scale(),p=n.translate(),y=(f[0]-p[0])/d,g=(f[1]-p[1])/d;return(g>=.12&&g<.234&&y>=-.425&&y<-.214?r:g>=.166&&g<.234&&y>=-.214&&y<-.115?o:n).invert(f)},u.stream=function(f){return e&&t===f?e:e=RI([n.stream(t=f),r.stream(f),o.stream(f)])},u.precision=function(f){return arguments.length?(n.precision(f),r.precision(f),o.precision(f),h()):n.precision()},u.scale=function(f){return arguments.length?(n.scale(f),r.scale(f*.35),o.scale(f),u.translate(n.translate())):n.scale()},u.translate=function(f){if(!arguments.length)return n.translate();var d=n.scale(),p=+f[0],y=+f[1];return i=n.translate(f).clipExtent([[p-.455*d,y-.238*d],[p+.455*d,y+.238*d]]).stream(c),s=r.translate([p-.307*d,y+.201*d]).clipExtent([[p-.425*d+qt,y+.12*d+qt],[p-.214*d-qt,y+.234*d-qt]]).stream(c),a=o.translate([p-.205*d,y+.212*d]).clipExtent([[p-.214*d+qt,y+.166*d+qt],[p-.115*d-qt,y+.234*d-qt]]).stream(c),h()},u.fitExtent=function(f,d){return Qm(u,f,d)},u.fitSize=function(f,d){return U1(u,f,d)},u.fitWidth=function(f,d){return F1(u,f,d)},u.fitHeight=function(f,d){return O1(u,f,d)};function h(){return e=t=null,u}return u.scale(1070)}function z1(e){return function(t,n){var i=Qt(t),r=Qt(n),s=e(i*r);return s===1/0?[2,0]:[s*r*Yt(t),s*Yt(n)]}}function oc(e){return function(t,n){var i=qn(t*t+n*n),r=e(i),s=Yt(r),o=Qt(r);return[Fr(t*s,i*o),Mi(i&&n*s/i)]}}var G1=z1(function(e){return qn(2/(1+e))});G1.invert=oc(function(e){return 2*Mi(e/2)});function V1(){return Ms(G1).scale(124.75).clipAngle(180-.001)}var H1=z1(function(e){return(e=_1(e))&&e/Yt(e)});H1.invert=oc(function(e){return e});function W1(){return Ms(H1).scale(79.4188).clipAngle(180-.001)}function yf(e,t){return[e,rf(Km((Ie+t)/2))]}yf.invert=function(e,t){return[e,2*Ma(x1(t))-Ie]};function $1(){return X1(yf).scale(961/ii)}function X1(e){var t=Ms(e),n=t.center,i=t.scale,r=t.translate,s=t.clipExtent,o=null,a,l,c;t.scale=function(h){return arguments.length?(i(h),u()):i()},t.translate=function(h){return arguments.length?(r(h),u()):r()},t.center=function(h){return arguments.length?(n(h),u()):n()},t.clipExtent=function(h){return arguments.length?(h==null?o=a=l=c=null:(o=+h[0][0],a=+h[0][1],l=+h[1][0],c=+h[1][1]),u()):o==null?null:[[o,a],[l,c]]};function u(){var h=te*i(),f=t(tI(t.rotate()).invert([0,0]));return s(o==null?[[f[0]-h,f[1]-h],[f[0]+h,f[1]+h]]:e===yf?[[Math.max(f[0]-h,o),a],[Math.min(f[0]+h,l),c]]:[[o,Math.max(f[1]-h,a)],[l,Math.min(f[1]+h,c)]])}return u()}function ef(e){return Km((Ie+e)/2)}function PI(e,t){var n=Qt(e),i=e===t?Yt(e):rf(n/Qt(t))/rf(ef(t)/ef(e)),r=n*Pm(ef(e),i)/i;if(!i)return yf;function s(o,a){r>0?a<-Ie+qt&&(a=-Ie+qt):a>Ie-qt&&(a=Ie-qt);var l=r/Pm(ef(a),i);return[l*Yt(i*o),r-l*Qt(i*o)]}return s.invert=function(o,a){var l=r-a,c=vi(i)*qn(o*o+l*l),u=Fr(o,fe(l))*vi(l);return l*i<0&&(u-=te*vi(o)*vi(l)),[u/i,2*Ma(Pm(r/c,1/i))-Ie]},s}function q1(){return tg(PI).scale(109.5).parallels([30,30])}function pf(e,t){return[e,t]}pf.invert=pf;function Y1(){return Ms(pf).scale(152.63)}function II(e,t){var n=Qt(e),i=e===t?Yt(e):(n-Qt(t))/(t-e),r=n/i+e;if(fe(i)<qt)return pf;function s(o,a){var l=r-a,c=i*o;return[l*Yt(c),r-l*Qt(c)]}return s.invert=function(o,a){var l=r-a,c=Fr(o,fe(l))*vi(l);return l*i<0&&(c-=te*vi(o)*vi(l)),[c/i,r-vi(i)*qn(o*o+l*l)]},s}function Z1(){return tg(II).scale(131.154).center([0,13.9389])}var Jl=1.340264,jl=-.081106,Ql=893e-6,tc=.003796,mf=qn(3)/2,LI=12;function K1(e,t){var n=Mi(mf*Yt(t)),i=n*n,r=i*i*i;return[e*Qt(n)/(mf*(Jl+3*jl*i+r*(7*Ql+9*tc*i))),n*(Jl+jl*i+r*(Ql+tc*i))]}K1.invert=function(e,t){for(var n=t,i=n*n,r=i*i*i,s=0,o,a,l;s<LI&&(a=n*(Jl+jl*i+r*(Ql+tc*i))-t,l=Jl+3*jl*i+r*(7*Ql+9*tc*i),n-=o=a/l,i=n*n,r=i*i*i,!(fe(o)<y1));++s);return[mf*e*(Jl+3*jl*i+r*(7*Ql+9*tc*i))/Qt(n),Mi(Yt(n)/mf)]};function J1(){return Ms(K1).scale(177.158)}function j1(e,t){var n=Qt(t),i=Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}j1.invert=oc(Ma);function Q1(){return Ms(j1).scale(144.049).clipAngle(60)}function DI(e,t){var n=t*t,i=n*n;return[e*(.8707-.131979*n+i*(-.013791+i*(.003971*n-.001529*i))),t*(1.007226+n*(.015085+i*(-.044475+.028874*n-.005916*i)))]}DI.invert=function(e,t){var n=t,i=25,r;do{var s=n*n,o=s*s;n-=r=(n*(1.007226+s*(.015085+o*(-.044475+.028874*s-.005916*o)))-t)/(1.007226+s*(.015085*3+o*(-.044475*7+.028874*9*s-.005916*11*o)))}while(fe(r)>qt&&--i>0);return[e/(.8707+(s=n*n)*(-.131979+s*(-.013791+s*s*s*(.003971-.001529*s)))),n]};function tM(e,t){return[Qt(t)*Yt(e),Yt(t)]}tM.invert=oc(Mi);function eM(){return Ms(tM).scale(249.5).clipAngle(90+qt)}function nM(e,t){var n=Qt(t),i=1+Qt(e)*n;return[n*Yt(e)/i,Yt(t)/i]}nM.invert=oc(function(e){return 2*Ma(e)});function iM(){return Ms(nM).scale(250).clipAngle(142)}function rM(e,t){return[rf(Km((Ie+t)/2)),-e]}rM.invert=function(e,t){return[-t,2*Ma(x1(e))-Ie]};function sM(){var e=X1(rM),t=e.center,n=e.rotate;return e.center=function(i){return arguments.length?t([-i[1],i[0]]):(i=t(),[i[1],-i[0]])},e.rotate=function(i){return arguments.length?n([i[0],i[1],i.length>2?i[2]+90:90]):(i=n(),[i[0],i[1],i[2]-90])},n([0,0,90]).scale(159.155)}var ng=new Date,ig=new Date;function qe(e,t,n,i){function r(s){return e(s=arguments.length===0?new Date:new Date(+s)),s}return r.floor=s=>(e(s=new Date(+s)),s),r.ceil=s=>(e(s=new Date(s-1)),t(s,1),e(s),s),r.round=s=>{let o=r(s),a=r.ceil(s);return s-o<a-s?o:a},r.offset=(s,o)=>(t(s=new Date(+s),o==null?1:Math.floor(o)),s),r.range=(s,o,a)=>{let l=[];if(s=r.ceil(s),a=a==null?1:Math.floor(a),!(s<o)||!(a>0))return l;let c;do l.push(c=new Date(+s)),t(s,a),e(s);while(c<s&&s<o);return l},r.filter=s=>qe(o=>{if(o>=o)for(;e(o),!s(o);)o.setTime(o-1)},(o,a)=>{if(o>=o)if(a<0)for(;++a<=0;)for(;t(o,-1),!s(o););else for(;--a>=0;)for(;t(o,1),!s(o););}),n&&(r.count=(s,o)=>(ng.setTime(+s),ig.setTime(+o),e(ng),e(ig),Math.floor(n(ng,ig))),r.every=s=>(s=Math.floor(s),!isFinite(s)||!(s>0)?null:s>1?r.filter(i?o=>i(o)%s===0:o=>r.count(0,o)%s===0):r)),r}var xf=qe(()=>{},(e,t)=>{e.setTime(+e+t)},(e,t)=>t-e);xf.every=e=>(e=Math.floor(e),!isFinite(e)||!(e>0)?null:e>1?qe(t=>{t.setTime(Math.floor(t/e)*e)},(t,n)=>{t.setTime(+t+n*e)},(t,n)=>(n-t)/e):xf);var K8=xf.range,Or=1e3,Si=Or*60,Br=Si*60,kr=Br*24,sg=kr*7,oM=kr*30,rg=kr*365,Dn=qe(e=>{e.setTime(e-e.getMilliseconds())},(e,t)=>{e.setTime(+e+t*Or)},(e,t)=>(t-e)/Or,e=>e.getUTCSeconds()),J8=Dn.range,xo=qe(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Or)},(e,t)=>{e.setTime(+e+t*Si)},(e,t)=>(t-e)/Si,e=>e.getMinutes()),j8=xo.range,_o=qe(e=>{e.setUTCSeconds(0,0)},(e,t)=>{e.setTime(+e+t*Si)},(e,t)=>(t-e)/Si,e=>e.getUTCMinutes()),Q8=_o.range,vo=qe(e=>{e.setTime(e-e.getMilliseconds()-e.getSeconds()*Or-e.getMinutes()*Si)},(e,t)=>{e.setTime(+e+t*Br)},(e,t)=>(t-e)/Br,e=>e.getHours()),tz=vo.range,bo=qe(e=>{e.setUTCMinutes(0,0,0)},(e,t)=>{e.setTime(+e+t*Br)},(e,t)=>(t-e)/Br,e=>e.getUTCHours()),ez=bo.range,lr=qe(e=>e.setHours(0,0,0,0),(e,t)=>e.setDate(e.getDate()+t),(e,t)=>(t-e-(t.getTimezoneOffset()-e.getTimezoneOffset())*Si)/kr,e=>e.getDate()-1),nz=lr.range,Sa=qe(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/kr,e=>e.getUTCDate()-1),iz=Sa.range,ac=qe(e=>{e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCDate(e.getUTCDate()+t)},(e,t)=>(t-e)/kr,e=>Math.floor(e/kr)),rz=ac.range;function Mo(e){return qe(t=>{t.setDate(t.getDate()-(t.getDay()+7-e)%7),t.setHours(0,0,0,0)},(t,n)=>{t.setDate(t.getDate()+n*7)},(t,n)=>(n-t-(n.getTimezoneOffset()-t.getTimezoneOffset())*Si)/sg)}var cr=Mo(0),So=Mo(1),og=Mo(2),ag=Mo(3),zr=Mo(4),lg=Mo(5),cg=Mo(6),sz=cr.range,oz=So.range,az=og.range,lz=ag.range,cz=zr.range,uz=lg.range,fz=cg.range;function wo(e){return qe(t=>{t.setUTCDate(t.getUTCDate()-(t.getUTCDay()+7-e)%7),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCDate(t.getUTCDate()+n*7)},(t,n)=>(n-t)/sg)}var ur=wo(0),To=wo(1),ug=wo(2),fg=wo(3),Gr=wo(4),hg=wo(5),dg=wo(6),hz=ur.range,dz=To.range,pz=ug.range,mz=fg.range,gz=Gr.range,yz=hg.range,xz=dg.range,Eo=qe(e=>{e.setDate(1),e.setHours(0,0,0,0)},(e,t)=>{e.setMonth(e.getMonth()+t)},(e,t)=>t.getMonth()-e.getMonth()+(t.getFullYear()-e.getFullYear())*12,e=>e.getMonth()),_z=Eo.range,Ao=qe(e=>{e.setUTCDate(1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCMonth(e.getUTCMonth()+t)},(e,t)=>t.getUTCMonth()-e.getUTCMonth()+(t.getUTCFullYear()-e.getUTCFullYear())*12,e=>e.getUTCMonth()),vz=Ao.range,Yn=qe(e=>{e.setMonth(0,1),e.setHours(0,0,0,0)},(e,t)=>{e.setFullYear(e.getFullYear()+t)},(e,t)=>t.getFullYear()-e.getFullYear(),e=>e.getFullYear());Yn.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:qe(t=>{t.setFullYear(Math.floor(t.getFullYear()/e)*e),t.setMonth(0,1),t.setHours(0,0,0,0)},(t,n)=>{t.setFullYear(t.getFullYear()+n*e)});var bz=Yn.range,Zn=qe(e=>{e.setUTCMonth(0,1),e.setUTCHours(0,0,0,0)},(e,t)=>{e.setUTCFullYear(e.getUTCFullYear()+t)},(e,t)=>t.getUTCFullYear()-e.getUTCFullYear(),e=>e.getUTCFullYear());Zn.every=e=>!isFinite(e=Math.floor(e))||!(e>0)?null:qe(t=>{t.setUTCFullYear(Math.floor(t.getUTCFullYear()/e)*e),t.setUTCMonth(0,1),t.setUTCHours(0,0,0,0)},(t,n)=>{t.setUTCFullYear(t.getUTCFullYear()+n*e)});var Mz=Zn.range;function aM(e,t,n,i,r,s){let o=[[Dn,1,Or],[Dn,5,5*Or],[Dn,15,15*Or],[Dn,30,30*Or],[s,1,Si],[s,5,5*Si],[s,15,15*Si],[s,30,30*Si],[r,1,Br],[r,3,3*Br],[r,6,6*Br],[r,12,12*Br],[i,1,kr],[i,2,2*kr],[n,1,sg],[t,1,oM],[t,3,3*oM],[e,1,rg]];function a(c,u,h){let f=u<c;f&&([c,u]=[u,c]);let d=h&&typeof h.range=="function"?h:l(c,u,h),p=d?d.range(c,+u+1):[];return f?p.reverse():p}function l(c,u,h){let f=Math.abs(u-c)/h,d=oa(([,,g])=>g).right(o,f);if(d===o.length)return e.every(kl(c/rg,u/rg,h));if(d===0)return xf.every(Math.max(kl(c,u,h),1));let[p,y]=o[f/o[d-1][2]<o[d][2]/f?d-1:d];return p.every(y)}return[a,l]}var[lM,_f]=aM(Zn,Ao,ur,ac,bo,_o),[cM,uM]=aM(Yn,Eo,cr,lr,vo,xo);function pg(e){if(0<=e.y&&e.y<100){var t=new Date(-1,e.m,e.d,e.H,e.M,e.S,e.L);return t.setFullYear(e.y),t}return new Date(e.y,e.m,e.d,e.H,e.M,e.S,e.L)}function mg(e){if(0<=e.y&&e.y<100){var t=new Date(Date.UTC(-1,e.m,e.d,e.H,e.M,e.S,e.L));return t.setUTCFullYear(e.y),t}return new Date(Date.UTC(e.y,e.m,e.d,e.H,e.M,e.S,e.L))}function lc(e,t,n){return{y:e,m:t,d:n,H:0,M:0,S:0,L:0}}function NI(e){var t=e.dateTime,n=e.date,i=e.time,r=e.periods,s=e.days,o=e.shortDays,a=e.months,l=e.shortMonths,c=cc(r),u=uc(r),h=cc(s),f=uc(s),d=cc(o),p=uc(o),y=cc(a),g=uc(a),m=cc(l),x=uc(l),M={a:U,A:Z,b:F,B:V,c:null,d:gM,e:gM,f:iL,g:dL,G:mL,H:tL,I:eL,j:nL,L:bM,m:rL,M:sL,p:q,q:st,Q:_M,s:vM,S:oL,u:aL,U:lL,V:cL,w:uL,W:fL,x:null,X:null,y:hL,Y:pL,Z:gL,"%":xM},v={a:lt,A:$,b:at,B:ft,c:null,d:yM,e:yM,f:vL,g:PL,G:LL,H:yL,I:xL,j:_L,L:SM,m:bL,M:ML,p:ot,q:rt,Q:_M,s:vM,S:SL,u:wL,U:TL,V:EL,w:AL,W:CL,x:null,X:null,y:RL,Y:IL,Z:DL,"%":xM},S={a:A,A:C,b:P,B:O,c:I,d:pM,e:pM,f:KI,g:dM,G:hM,H:mM,I:mM,j:XI,L:ZI,m:$I,M:qI,p:R,q:WI,Q:jI,s:QI,S:YI,u:kI,U:zI,V:GI,w:BI,W:VI,x:D,X:k,y:dM,Y:hM,Z:HI,"%":JI};M.x=b(n,M),M.X=b(i,M),M.c=b(t,M),v.x=b(n,v),v.X=b(i,v),v.c=b(t,v);function b(K,gt){return function(ct){var J=[],It=-1,pt=0,Ot=K.length,Ht,le,oe;for(ct instanceof Date||(ct=new Date(+ct));++It<Ot;)K.charCodeAt(It)===37&&(J.push(K.slice(pt,It)),(le=fM[Ht=K.charAt(++It)])!=null?Ht=K.charAt(++It):le=Ht==="e"?" ":"0",(oe=gt[Ht])&&(Ht=oe(ct,le)),J.push(Ht),pt=It+1);return J.push(K.slice(pt,It)),J.join("")}}function _(K,gt){return function(ct){var J=lc(1900,void 0,1),It=w(J,K,ct+="",0),pt,Ot;if(It!=ct.length)return null;if("Q"in J)return new Date(J.Q);if("s"in J)return new Date(J.s*1e3+("L"in J?J.L:0));if(gt&&!("Z"in J)&&(J.Z=0),"p"in J&&(J.H=J.H%12+J.p*12),J.m===void 0&&(J.m="q"in J?J.q:0),"V"in J){if(J.V<1||J.V>53)return null;"w"in J||(J.w=1),"Z"in J?(pt=mg(lc(J.y,0,1)),Ot=pt.getUTCDay(),pt=Ot>4||Ot===0?To.ceil(pt):To(pt),pt=Sa.offset(pt,(J.V-1)*7),J.y=pt.getUTCFullYear(),J.m=pt.getUTCMonth(),J.d=pt.getUTCDate()+(J.w+6)%7):(pt=pg(lc(J.y,0,1)),Ot=pt.getDay(),pt=Ot>4||Ot===0?So.ceil(pt):So(pt),pt=lr.offset(pt,(J.V-1)*7),J.y=pt.getFullYear(),J.m=pt.getMonth(),J.d=pt.getDate()+(J.w+6)%7)}else("W"in J||"U"in J)&&("w"in J||(J.w="u"in J?J.u%7:"W"in J?1:0),Ot="Z"in J?mg(lc(J.y,0,1)).getUTCDay():pg(lc(J.y,0,1)).getDay(),J.m=0,J.d="W"in J?(J.w+6)%7+J.W*7-(Ot+5)%7:J.w+J.U*7-(Ot+6)%7);return"Z"in J?(J.H+=J.Z/100|0,J.M+=J.Z%100,mg(J)):pg(J)}}function w(K,gt,ct,J){for(var It=0,pt=gt.length,Ot=ct.length,Ht,le;It<pt;){if(J>=Ot)return-1;if(Ht=gt.charCodeAt(It++),Ht===37){if(Ht=gt.charAt(It++),le=S[Ht in fM?gt.charAt(It++):Ht],!le||(J=le(K,ct,J))<0)return-1}else if(Ht!=ct.charCodeAt(J++))return-1}return J}function R(K,gt,ct){var J=c.exec(gt.slice(ct));return J?(K.p=u.get(J[0].toLowerCase()),ct+J[0].length):-1}function A(K,gt,ct){var J=d.exec(gt.slice(ct));return J?(K.w=p.get(J[0].toLowerCase()),ct+J[0].length):-1}function C(K,gt,ct){var J=h.exec(gt.slice(ct));return J?(K.w=f.get(J[0].toLowerCase()),ct+J[0].length):-1}function P(K,gt,ct){var J=m.exec(gt.slice(ct));return J?(K.m=x.get(J[0].toLowerCase()),ct+J[0].length):-1}function O(K,gt,ct){var J=y.exec(gt.slice(ct));return J?(K.m=g.get(J[0].toLowerCase()),ct+J[0].length):-1}function I(K,gt,ct){return w(K,t,gt,ct)}function D(K,gt,ct){return w(K,n,gt,ct)}function k(K,gt,ct){return w(K,i,gt,ct)}function U(K){return o[K.getDay()]}function Z(K){return s[K.getDay()]}function F(K){return l[K.getMonth()]}function V(K){return a[K.getMonth()]}function q(K){return r[+(K.getHours()>=12)]}function st(K){return 1+~~(K.getMonth()/3)}function lt(K){return o[K.getUTCDay()]}function $(K){return s[K.getUTCDay()]}function at(K){return l[K.getUTCMonth()]}function ft(K){return a[K.getUTCMonth()]}function ot(K){return r[+(K.getUTCHours()>=12)]}function rt(K){return 1+~~(K.getUTCMonth()/3)}return{format:function(K){var gt=b(K+="",M);return gt.toString=function(){return K},gt},parse:function(K){var gt=_(K+="",!1);return gt.toString=function(){return K},gt},utcFormat:function(K){var gt=b(K+="",v);return gt.toString=function(){return K},gt},utcParse:function(K){var gt=_(K+="",!0);return gt.toString=function(){return K},gt}}}var fM={"-":"",_:" ",0:"0"},an=/^\s*\d+/,UI=/^%/,FI=/[\\^$*+?|[\]().{}]/g;function ae(e,t,n){var i=e<0?"-":"",r=(i?-e:e)+"",s=r.length;return i+(s<n?new Array(n-s+1).join(t)+r:r)}function OI(e){return e.replace(FI,"\\$&")}function cc(e){return new RegExp("^(?:"+e.map(OI).join("|")+")","i")}function uc(e){return new Map(e.map((t,n)=>[t.toLowerCase(),n]))}function BI(e,t,n){var i=an.exec(t.slice(n,n+1));return i?(e.w=+i[0],n+i[0].length):-1}function kI(e,t,n){var i=an.exec(t.slice(n,n+1));return i?(e.u=+i[0],n+i[0].length):-1}function zI(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.U=+i[0],n+i[0].length):-1}function GI(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.V=+i[0],n+i[0].length):-1}function VI(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.W=+i[0],n+i[0].length):-1}function hM(e,t,n){var i=an.exec(t.slice(n,n+4));return i?(e.y=+i[0],n+i[0].length):-1}function dM(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.y=+i[0]+(+i[0]>68?1900:2e3),n+i[0].length):-1}function HI(e,t,n){var i=/^(Z)|([+-]\d\d)(?::?(\d\d))?/.exec(t.slice(n,n+6));return i?(e.Z=i[1]?0:-(i[2]+(i[3]||"00")),n+i[0].length):-1}function WI(e,t,n){var i=an.exec(t.slice(n,n+1));return i?(e.q=i[0]*3-3,n+i[0].length):-1}function $I(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.m=i[0]-1,n+i[0].length):-1}function pM(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.d=+i[0],n+i[0].length):-1}function XI(e,t,n){var i=an.exec(t.slice(n,n+3));return i?(e.m=0,e.d=+i[0],n+i[0].length):-1}function mM(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.H=+i[0],n+i[0].length):-1}function qI(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.M=+i[0],n+i[0].length):-1}function YI(e,t,n){var i=an.exec(t.slice(n,n+2));return i?(e.S=+i[0],n+i[0].length):-1}function ZI(e,t,n){var i=an.exec(t.slice(n,n+3));return i?(e.L=+i[0],n+i[0].length):-1}function KI(e,t,n){var i=an.exec(t.slice(n,n+6));return i?(e.L=Math.floor(i[0]/1e3),n+i[0].length):-1}function JI(e,t,n){var i=UI.exec(t.slice(n,n+1));return i?n+i[0].length:-1}function jI(e,t,n){var i=an.exec(t.slice(n));return i?(e.Q=+i[0],n+i[0].length):-1}function QI(e,t,n){var i=an.exec(t.slice(n));return i?(e.s=+i[0],n+i[0].length):-1}function gM(e,t){return ae(e.getDate(),t,2)}function tL(e,t){return ae(e.getHours(),t,2)}function eL(e,t){return ae(e.getHours()%12||12,t,2)}function nL(e,t){return ae(1+lr.count(Yn(e),e),t,3)}function bM(e,t){return ae(e.getMilliseconds(),t,3)}function iL(e,t){return bM(e,t)+"000"}function rL(e,t){return ae(e.getMonth()+1,t,2)}function sL(e,t){return ae(e.getMinutes(),t,2)}function oL(e,t){return ae(e.getSeconds(),t,2)}function aL(e){var t=e.getDay();return t===0?7:t}function lL(e,t){return ae(cr.count(Yn(e)-1,e),t,2)}function MM(e){var t=e.getDay();return t>=4||t===0?zr(e):zr.ceil(e)}function cL(e,t){return e=MM(e),ae(zr.count(Yn(e),e)+(Yn(e).getDay()===4),t,2)}function uL(e){return e.getDay()}function fL(e,t){return ae(So.count(Yn(e)-1,e),t,2)}function hL(e,t){return ae(e.getFullYear()%100,t,2)}function dL(e,t){return e=MM(e),ae(e.getFullYear()%100,t,2)}function pL(e,t){return ae(e.getFullYear()%1e4,t,4)}function mL(e,t){var n=e.getDay();return e=n>=4||n===0?zr(e):zr.ceil(e),ae(e.getFullYear()%1e4,t,4)}function gL(e){var t=e.getTimezoneOffset();return(t>0?"-":(t*=-1,"+"))+ae(t/60|0,"0",2)+ae(t%60,"0",2)}function yM(e,t){return ae(e.getUTCDate(),t,2)}function yL(e,t){return ae(e.getUTCHours(),t,2)}function xL(e,t){return ae(e.getUTCHours()%12||12,t,2)}function _L(e,t){return ae(1+Sa.count(Zn(e),e),t,3)}function SM(e,t){return ae(e.getUTCMilliseconds(),t,3)}function vL(e,t){return SM(e,t)+"000"}function bL(e,t){return ae(e.getUTCMonth()+1,t,2)}function ML(e,t){return ae(e.getUTCMinutes(),t,2)}function SL(e,t){return ae(e.getUTCSeconds(),t,2)}function wL(e){var t=e.getUTCDay();return t===0?7:t}function TL(e,t){return ae(ur.count(Zn(e)-1,e),t,2)}function wM(e){var t=e.getUTCDay();return t>=4||t===0?Gr(e):Gr.ceil(e)}function EL(e,t){return e=wM(e),ae(Gr.count(Zn(e),e)+(Zn(e).getUTCDay()===4),t,2)}function AL(e){return e.getUTCDay()}function CL(e,t){return ae(To.count(Zn(e)-1,e),t,2)}function RL(e,t){return ae(e.getUTCFullYear()%100,t,2)}function PL(e,t){return e=wM(e),ae(e.getUTCFullYear()%100,t,2)}function IL(e,t){return ae(e.getUTCFullYear()%1e4,t,4)}function LL(e,t){var n=e.getUTCDay();return e=n>=4||n===0?Gr(e):Gr.ceil(e),ae(e.getUTCFullYear()%1e4,t,4)}function DL(){return"+0000"}function xM(){return"%"}function _M(e){return+e}function vM(e){return Math.floor(+e/1e3)}var wa,fc,NL,fr,TM;UL({dateTime:"%x, %X",date:"%-m/%-d/%Y",time:"%-I:%M:%S %p",periods:["AM","PM"],days:["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"],shortDays:["Sun","Mon","Tue","Wed","Thu","Fri","Sat"],months:["January","February","March","April","May","June","July","August","September","October","November","December"],shortMonths:["Jan","Feb","Mar","Apr","May","Jun","Jul","Aug","Sep","Oct","Nov","Dec"]});function UL(e){return wa=NI(e),fc=wa.format,NL=wa.parse,fr=wa.utcFormat,TM=wa.utcParse,wa}var EM="%Y-%m-%dT%H:%M:%S.%LZ";function FL(e){return e.toISOString()}var Tz=Date.prototype.toISOString?FL:fr(EM);function OL(e){var t=new Date(e);return isNaN(t)?null:t}var Ez=+new Date("2000-01-01T00:00:00.000Z")?OL:TM(EM);function hr(e,t){switch(arguments.length){case 0:break;case 1:this.range(e);break;default:this.range(t).domain(e);break}return this}function bf(e,t){switch(arguments.length){case 0:break;case 1:{typeof e=="function"?this.interpolator(e):this.range(e);break}default:{this.domain(e),typeof t=="function"?this.interpolator(t):this.range(t);break}}return this}var vf=Symbol("implicit");function Mf(){var e=new mi,t=[],n=[],i=vf;function r(s){let o=e.get(s);if(o===void 0){if(i!==vf)return i;e.set(s,o=t.push(s)-1)}return n[o%n.length]}return r.domain=function(s){if(!arguments.length)return t.slice();t=[],e=new mi;for(let o of s)e.has(o)||e.set(o,t.push(o)-1);return r},r.range=function(s){return arguments.length?(n=Array.from(s),r):n.slice()},r.unknown=function(s){return arguments.length?(i=s,r):i},r.copy=function(){return Mf(t,n).unknown(i)},hr.apply(r,arguments),r}function Ta(){var e=Mf().unknown(void 0),t=e.domain,n=e.range,i=0,r=1,s,o,a=!1,l=0,c=0,u=.5;delete e.unknown;function h(){var f=t().length,d=r<i,p=d?r:i,y=d?i:r;s=(y-p)/Math.max(1,f-l+c*2),a&&(s=Math.floor(s)),p+=(y-p-s*(f-l))*u,o=s*(1-l),a&&(p=Math.round(p),o=Math.round(o));var g=la(f).map(function(m){return p+s*m});return n(d?g.reverse():g)}return e.domain=function(f){return arguments.length?(t(f),h()):t()},e.range=function(f){return arguments.length?([i,r]=f,i=+i,r=+r,h()):[i,r]},e.rangeRound=function(f){return[i,r]=f,i=+i,r=+r,a=!0,h()},e.bandwidth=function(){return o},e.step=function(){return s},e.round=function(f){return arguments.length?(a=!!f,h()):a},e.padding=function(f){return arguments.length?(l=Math.min(1,c=+f),h()):l},e.paddingInner=function(f){return arguments.length?(l=Math.min(1,f),h()):l},e.paddingOuter=function(f){return arguments.length?(c=+f,h()):c},e.align=function(f){return arguments.length?(u=Math.max(0,Math.min(1,f)),h()):u},e.copy=function(){return Ta(t(),[i,r]).round(a).paddingInner(l).paddingOuter(c).align(u)},hr.apply(h(),arguments)}function NM(e){var t=e.copy;return e.padding=e.paddingOuter,delete e.paddingInner,delete e.paddingOuter,e.copy=function(){return NM(t())},e}function UM(){return NM(Ta.apply(null,arguments).paddingInner(1))}function BL(e){return function(){return e}}function gg(e){return+e}var AM=[0,1];function wi(e){return e}function yg(e,t){return(t-=e=+e)?function(n){return(n-e)/t}:BL(isNaN(t)?NaN:.5)}function kL(e,t){var n;return e>t&&(n=e,e=t,t=n),function(i){return Math.max(e,Math.min(t,i))}}function zL(e,t,n){var i=e[0],r=e[1],s=t[0],o=t[1];return r<i?(i=yg(r,i),s=n(o,s)):(i=yg(i,r),s=n(s,o)),function(a){return s(i(a))}}function GL(e,t,n){var i=Math.min(e.length,t.length)-1,r=new Array(i),s=new Array(i),o=-1;for(e[i]<e[0]&&(e=e.slice().reverse(),t=t.slice().reverse());++o<i;)r[o]=yg(e[o],e[o+1]),s[o]=n(t[o],t[o+1]);return function(a){var l=aa(e,a,1,i)-1;return s[l](r[l](a))}}function hc(e,t){return t.domain(e.domain()).range(e.range()).interpolate(e.interpolate()).clamp(e.clamp()).unknown(e.unknown())}function Sf(){var e=AM,t=AM,n=ga,i,r,s,o=wi,a,l,c;function u(){var f=Math.min(e.length,t.length);return o!==wi&&(o=kL(e[0],e[f-1])),a=f>2?GL:zL,l=c=null,h}function h(f){return f==null||isNaN(f=+f)?s:(l||(l=a(e.map(i),t,n)))(i(o(f)))}return h.invert=function(f){return o(r((c||(c=a(t,e.map(i),Xe)))(f)))},h.domain=function(f){return arguments.length?(e=Array.from(f,gg),u()):e.slice()},h.range=function(f){return arguments.length?(t=Array.from(f),u()):t.slice()},h.rangeRound=function(f){return t=Array.from(f),n=Wl,u()},h.clamp=function(f){return arguments.length?(o=f?!0:wi,u()):o!==wi},h.interpolate=function(f){return arguments.length?(n=f,u()):n},h.unknown=function(f){return arguments.length?(s=f,h):s},function(f,d){return i=f,r=d,u()}}function FM(){return Sf()(wi,wi)}function VL(e,t,n,i){var r=kl(e,t,n),s;switch(i=xa(i??",f"),i.type){case"s":{var o=Math.max(Math.abs(e),Math.abs(t));return i.precision==null&&!isNaN(s=Jb(r,o))&&(i.precision=s),Rm(i,o)}case"":case"e":case"g":case"p":case"r":{i.precision==null&&!isNaN(s=jb(r,Math.max(Math.abs(e),Math.abs(t))))&&(i.precision=s-(i.type==="e"));break}case"f":case"%":{i.precision==null&&!isNaN(s=Kb(r))&&(i.precision=s-(i.type==="%")*2);break}}return sr(i)}function dc(e){var t=e.domain;return e.ticks=function(n){var i=t();return ys(i[0],i[i.length-1],n??10)},e.tickFormat=function(n,i){var r=t();return VL(r[0],r[r.length-1],n??10,i)},e.nice=function(n){n==null&&(n=10);var i=t(),r=0,s=i.length-1,o=i[r],a=i[s],l,c,u=10;for(a<o&&(c=o,o=a,a=c,c=r,r=s,s=c);u-- >0;){if(c=sa(o,a,n),c===l)return i[r]=o,i[s]=a,t(i);if(c>0)o=Math.floor(o/c)*c,a=Math.ceil(a/c)*c;else if(c<0)o=Math.ceil(o*c)/c,a=Math.floor(a*c)/c;else break;l=c}return e},e}function pc(){var e=FM();return e.copy=function(){return hc(e,pc())},hr.apply(e,arguments),dc(e)}function xg(e){var t;function n(i){return i==null||isNaN(i=+i)?t:i}return n.invert=n,n.domain=n.range=function(i){return arguments.length?(e=Array.from(i,gg),n):e.slice()},n.unknown=function(i){return arguments.length?(t=i,n):t},n.copy=function(){return xg(e).unknown(t)},e=arguments.length?Array.from(e,gg):[0,1],dc(n)}function OM(e,t){e=e.slice();var n=0,i=e.length-1,r=e[n],s=e[i],o;return s<r&&(o=n,n=i,i=o,o=r,r=s,s=o),e[n]=t.floor(r),e[i]=t.ceil(s),e}function CM(e){return Math.log(e)}function RM(e){return Math.exp(e)}function HL(e){return-Math.log(-e)}function WL(e){return-Math.exp(-e)}function $L(e){return isFinite(e)?+("1e"+e):e<0?0:e}function XL(e){return e===10?$L:e===Math.E?Math.exp:t=>Math.pow(e,t)}function qL(e){return e===Math.E?Math.log:e===10&&Math.log10||e===2&&Math.log2||(e=Math.log(e),t=>Math.log(t)/e)}function PM(e){return(t,n)=>-e(-t,n)}function BM(e){let t=e(CM,RM),n=t.domain,i=10,r,s;function o(){return r=qL(i),s=XL(i),n()[0]<0?(r=PM(r),s=PM(s),e(HL,WL)):e(CM,RM),t}return t.base=function(a){return arguments.length?(i=+a,o()):i},t.domain=function(a){return arguments.length?(n(a),o()):n()},t.ticks=a=>{let l=n(),c=l[0],u=l[l.length-1],h=u<c;h&&([c,u]=[u,c]);let f=r(c),d=r(u),p,y,g=a==null?10:+a,m=[];if(!(i%1)&&d-f<g){if(f=Math.floor(f),d=Math.ceil(d),c>0){for(;f<=d;++f)for(p=1;p<i;++p)if(y=f<0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;m.push(y)}}else for(;f<=d;++f)for(p=i-1;p>=1;--p)if(y=f>0?p/s(-f):p*s(f),!(y<c)){if(y>u)break;m.push(y)}m.length*2<g&&(m=ys(c,u,g))}else m=ys(f,d,Math.min(d-f,g)).map(s);return h?m.reverse():m},t.tickFormat=(a,l)=>{if(a==null&&(a=10),l==null&&(l=i===10?"s":","),typeof l!="function"&&(!(i%1)&&(l=xa(l)).precision==null&&(l.trim=!0),l=sr(l)),a===1/0)return l;let c=Math.max(1,i*a/t.ticks().length);return u=>{let h=u/s(Math.round(r(u)));return h*i<i-.5&&(h*=i),h<=c?l(u):""}},t.nice=()=>n(OM(n(),{floor:a=>s(Math.floor(r(a))),ceil:a=>s(Math.ceil(r(a)))})),t}function _g(){let e=BM(Sf()).domain([1,10]);return e.copy=()=>hc(e,_g()).base(e.base()),hr.apply(e,arguments),e}function IM(e){return function(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))}}function LM(e){return function(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}function kM(e){var t=1,n=e(IM(t),LM(t));return n.constant=function(i){return arguments.length?e(IM(t=+i),LM(t)):t},dc(n)}function vg(){var e=kM(Sf());return e.copy=function(){return hc(e,vg()).constant(e.constant())},hr.apply(e,arguments)}function DM(e){return function(t){return t<0?-Math.pow(-t,e):Math.pow(t,e)}}function YL(e){return e<0?-Math.sqrt(-e):Math.sqrt(e)}function ZL(e){return e<0?-e*e:e*e}function zM(e){var t=e(wi,wi),n=1;function i(){return n===1?e(wi,wi):n===.5?e(YL,ZL):e(DM(n),DM(1/n))}return t.exponent=function(r){return arguments.length?(n=+r,i()):n},dc(t)}function bg(){var e=zM(Sf());return e.copy=function(){return hc(e,bg()).exponent(e.exponent())},hr.apply(e,arguments),e}function Mg(){var e=[],t=[],n=[],i;function r(){var o=0,a=Math.max(1,t.length);for(n=new Array(a-1);++o<a;)n[o-1]=Vv(e,o/a);return s}function s(o){return o==null||isNaN(o=+o)?i:t[aa(n,o)]}return s.invertExtent=function(o){var a=t.indexOf(o);return a<0?[NaN,NaN]:[a>0?n[a-1]:e[0],a<n.length?n[a]:e[e.length-1]]},s.domain=function(o){if(!arguments.length)return e.slice();e=[];for(let a of o)a!=null&&!isNaN(a=+a)&&e.push(a);return e.sort(bn),r()},s.range=function(o){return arguments.length?(t=Array.from(o),r()):t.slice()},s.unknown=function(o){return arguments.length?(i=o,s):i},s.quantiles=function(){return n.slice()},s.copy=function(){return Mg().domain(e).range(t).unknown(i)},hr.apply(s,arguments)}function Sg(){var e=[.5],t=[0,1],n,i=1;function r(s){return s!=null&&s<=s?t[aa(e,s,0,i)]:n}return r.domain=function(s){return arguments.length?(e=Array.from(s),i=Math.min(e.length,t.length-1),r):e.slice()},r.range=function(s){return arguments.length?(t=Array.from(s),i=Math.min(e.length,t.length-1),r):t.slice()},r.invertExtent=function(s){var o=t.indexOf(s);return[e[o-1],e[o]]},r.unknown=function(s){return arguments.length?(n=s,r):n},r.copy=function(){return Sg().domain(e).range(t).unknown(n)},hr.apply(r,arguments)}function KL(e){return new Date(e)}function JL(e){return e instanceof Date?+e:Math.round(e)}function wg(e,t,n,i,r,s,o,a,l,c){var u=FM(),h=u.invert,f=u.domain,d=c(".%L"),p=c(":%S"),y=c("%I:%M"),g=c("%I %p"),m=c("%a %d"),x=c("%b %d"),M=c("%B"),v=c("%Y");function S(b){return(l(b)<b?d:a(b)<b?p:o(b)<b?y:s(b)<b?g:i(b)<b?r(b)<b?m:x:n(b)<b?M:v)(b)}return u.invert=function(b){return new Date(Math.round(h(b)))},u.domain=function(b){return arguments.length?f(Array.from(b,JL)):f().map(KL)},u.ticks=function(b){var _=f();return e(_[0],_[_.length-1],b??10)},u.tickFormat=function(b,_){return _==null?S:c(_)},u.nice=function(b){var _=f();return(!b||typeof b.range!="function")&&(b=t(_[0],_[_.length-1],b??10)),b?f(OM(_,b)):u},u.copy=function(){return hc(u,wg(e,t,n,i,r,s,o,a,l,c))},u}function GM(){return hr.apply(wg(cM,uM,Yn,Eo,cr,lr,vo,xo,Dn,fc).domain([new Date(2e3,0,1),new Date(2e3,0,2)]),arguments)}function VM(){return hr.apply(wg(lM,_f,Zn,Ao,ur,Sa,bo,_o,Dn,fr).domain([Date.UTC(2e3,0,1),Date.UTC(2e3,0,2)]),arguments)}function wf(e,t){return t.domain(e.domain()).interpolator(e.interpolator()).clamp(e.clamp()).unknown(e.unknown())}function Tf(){var e=0,t=.5,n=1,i=1,r,s,o,a,l,c=wi,u,h=!1,f;function d(y){return y==null||isNaN(y=+y)?f:(y=.5+((y=+u(y))-s)*(i*y<i*s?a:l),c(h?Math.max(0,Math.min(1,y)):y))}d.domain=function(y){return arguments.length?([e,t,n]=y,r=u(e=+e),s=u(t=+t),o=u(n=+n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d):[e,t,n]},d.clamp=function(y){return arguments.length?(h=!!y,d):h},d.interpolator=function(y){return arguments.length?(c=y,d):c};function p(y){return function(g){var m,x,M;return arguments.length?([m,x,M]=g,c=vs(y,[m,x,M]),d):[c(0),c(.5),c(1)]}}return d.range=p(ga),d.rangeRound=p(Wl),d.unknown=function(y){return arguments.length?(f=y,d):f},function(y){return u=y,r=y(e),s=y(t),o=y(n),a=r===s?0:.5/(s-r),l=s===o?0:.5/(o-s),i=s<r?-1:1,d}}function Tg(){var e=dc(Tf()(wi));return e.copy=function(){return wf(e,Tg())},bf.apply(e,arguments)}function Eg(){var e=BM(Tf()).domain([.1,1,10]);return e.copy=function(){return wf(e,Eg()).base(e.base())},bf.apply(e,arguments)}function Ag(){var e=kM(Tf());return e.copy=function(){return wf(e,Ag()).constant(e.constant())},bf.apply(e,arguments)}function Cg(){var e=zM(Tf());return e.copy=function(){return wf(e,Cg()).exponent(e.exponent())},bf.apply(e,arguments)}function Zt(e){for(var t=e.length/6|0,n=new Array(t),i=0;i<t;)n[i]="#"+e.slice(i*6,++i*6);return n}var HM=Zt("1f77b4ff7f0e2ca02cd627289467bd8c564be377c27f7f7fbcbd2217becf"),WM=Zt("7fc97fbeaed4fdc086ffff99386cb0f0027fbf5b17666666"),$M=Zt("1b9e77d95f027570b3e7298a66a61ee6ab02a6761d666666"),XM=Zt("4269d0efb118ff725c6cc5b03ca951ff8ab7a463f297bbf59c6b4e9498a0"),qM=Zt("a6cee31f78b4b2df8a33a02cfb9a99e31a1cfdbf6fff7f00cab2d66a3d9affff99b15928"),YM=Zt("fbb4aeb3cde3ccebc5decbe4fed9a6ffffcce5d8bdfddaecf2f2f2"),ZM=Zt("b3e2cdfdcdaccbd5e8f4cae4e6f5c9fff2aef1e2cccccccc"),KM=Zt("e41a1c377eb84daf4a984ea3ff7f00ffff33a65628f781bf999999"),JM=Zt("66c2a5fc8d628da0cbe78ac3a6d854ffd92fe5c494b3b3b3"),jM=Zt("8dd3c7ffffb3bebadafb807280b1d3fdb462b3de69fccde5d9d9d9bc80bdccebc5ffed6f"),QM=Zt("4e79a7f28e2ce1575976b7b259a14fedc949af7aa1ff9da79c755fbab0ab"),ve=e=>Nb(e[e.length-1]),Rg=new Array(3).concat("d8b365f5f5f55ab4ac","a6611adfc27d80cdc1018571","a6611adfc27df5f5f580cdc1018571","8c510ad8b365f6e8c3c7eae55ab4ac01665e","8c510ad8b365f6e8c3f5f5f5c7eae55ab4ac01665e","8c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e","8c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e","5430058c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e003c30","5430058c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e003c30").map(Zt),Pg=ve(Rg),Ig=new Array(3).concat("af8dc3f7f7f77fbf7b","7b3294c2a5cfa6dba0008837","7b3294c2a5cff7f7f7a6dba0008837","762a83af8dc3e7d4e8d9f0d37fbf7b1b7837","762a83af8dc3e7d4e8f7f7f7d9f0d37fbf7b1b7837","762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b7837","762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b7837","40004b762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b783700441b","40004b762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b783700441b").map(Zt),Lg=ve(Ig),Dg=new Array(3).concat("e9a3c9f7f7f7a1d76a","d01c8bf1b6dab8e1864dac26","d01c8bf1b6daf7f7f7b8e1864dac26","c51b7de9a3c9fde0efe6f5d0a1d76a4d9221","c51b7de9a3c9fde0eff7f7f7e6f5d0a1d76a4d9221","c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221","c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221","8e0152c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221276419","8e0152c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221276419").map(Zt),Ng=ve(Dg),Ug=new Array(3).concat("998ec3f7f7f7f1a340","5e3c99b2abd2fdb863e66101","5e3c99b2abd2f7f7f7fdb863e66101","542788998ec3d8daebfee0b6f1a340b35806","542788998ec3d8daebf7f7f7fee0b6f1a340b35806","5427888073acb2abd2d8daebfee0b6fdb863e08214b35806","5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b35806","2d004b5427888073acb2abd2d8daebfee0b6fdb863e08214b358067f3b08","2d004b5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b358067f3b08").map(Zt),Fg=ve(Ug),Cf=new Array(3).concat("ef8a62f7f7f767a9cf","ca0020f4a58292c5de0571b0","ca0020f4a582f7f7f792c5de0571b0","b2182bef8a62fddbc7d1e5f067a9cf2166ac","b2182bef8a62fddbc7f7f7f7d1e5f067a9cf2166ac","b2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac","b2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac","67001fb2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac053061","67001fb2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac053061").map(Zt),mc=ve(Cf),Og=new Array(3).concat("ef8a62ffffff999999","ca0020f4a582bababa404040","ca0020f4a582ffffffbababa404040","b2182bef8a62fddbc7e0e0e09999994d4d4d","b2182bef8a62fddbc7ffffffe0e0e09999994d4d4d","b2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d","b2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d","67001fb2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d1a1a1a","67001fb2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d1a1a1a").map(Zt),Bg=ve(Og),Rf=new Array(3).concat("fc8d59ffffbf91bfdb","d7191cfdae61abd9e92c7bb6","d7191cfdae61ffffbfabd9e92c7bb6","d73027fc8d59fee090e0f3f891bfdb4575b4","d73027fc8d59fee090ffffbfe0f3f891bfdb4575b4","d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4","d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4","a50026d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4313695","a50026d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4313695").map(Zt),gc=ve(Rf),kg=new Array(3).concat("fc8d59ffffbf91cf60","d7191cfdae61a6d96a1a9641","d7191cfdae61ffffbfa6d96a1a9641","d73027fc8d59fee08bd9ef8b91cf601a9850","d73027fc8d59fee08bffffbfd9ef8b91cf601a9850","d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850","d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850","a50026d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850006837","a50026d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850006837").map(Zt),zg=ve(kg),Gg=new Array(3).concat("fc8d59ffffbf99d594","d7191cfdae61abdda42b83ba","d7191cfdae61ffffbfabdda42b83ba","d53e4ffc8d59fee08be6f59899d5943288bd","d53e4ffc8d59fee08bffffbfe6f59899d5943288bd","d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd","d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd","9e0142d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd5e4fa2","9e0142d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd5e4fa2").map(Zt),Vg=ve(Gg),Hg=new Array(3).concat("e5f5f999d8c92ca25f","edf8fbb2e2e266c2a4238b45","edf8fbb2e2e266c2a42ca25f006d2c","edf8fbccece699d8c966c2a42ca25f006d2c","edf8fbccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45005824","f7fcfde5f5f9ccece699d8c966c2a441ae76238b45006d2c00441b").map(Zt),Wg=ve(Hg),$g=new Array(3).concat("e0ecf49ebcda8856a7","edf8fbb3cde38c96c688419d","edf8fbb3cde38c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68856a7810f7c","edf8fbbfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d6e016b","f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d810f7c4d004b").map(Zt),Xg=ve($g),qg=new Array(3).concat("e0f3dba8ddb543a2ca","f0f9e8bae4bc7bccc42b8cbe","f0f9e8bae4bc7bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc443a2ca0868ac","f0f9e8ccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe08589e","f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe0868ac084081").map(Zt),Yg=ve(qg),Zg=new Array(3).concat("fee8c8fdbb84e34a33","fef0d9fdcc8afc8d59d7301f","fef0d9fdcc8afc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59e34a33b30000","fef0d9fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301f990000","fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301fb300007f0000").map(Zt),Kg=ve(Zg),Jg=new Array(3).concat("ece2f0a6bddb1c9099","f6eff7bdc9e167a9cf02818a","f6eff7bdc9e167a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf1c9099016c59","f6eff7d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016450","fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016c59014636").map(Zt),jg=ve(Jg),Qg=new Array(3).concat("ece7f2a6bddb2b8cbe","f1eef6bdc9e174a9cf0570b0","f1eef6bdc9e174a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf2b8cbe045a8d","f1eef6d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0034e7b","fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0045a8d023858").map(Zt),t0=ve(Qg),e0=new Array(3).concat("e7e1efc994c7dd1c77","f1eef6d7b5d8df65b0ce1256","f1eef6d7b5d8df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0dd1c77980043","f1eef6d4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125691003f","f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125698004367001f").map(Zt),n0=ve(e0),i0=new Array(3).concat("fde0ddfa9fb5c51b8a","feebe2fbb4b9f768a1ae017e","feebe2fbb4b9f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1c51b8a7a0177","feebe2fcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a0177","fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a017749006a").map(Zt),r0=ve(i0),s0=new Array(3).concat("edf8b17fcdbb2c7fb8","ffffcca1dab441b6c4225ea8","ffffcca1dab441b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c42c7fb8253494","ffffccc7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea80c2c84","ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea8253494081d58").map(Zt),o0=ve(s0),a0=new Array(3).concat("f7fcb9addd8e31a354","ffffccc2e69978c679238443","ffffccc2e69978c67931a354006837","ffffccd9f0a3addd8e78c67931a354006837","ffffccd9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443005a32","ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443006837004529").map(Zt),l0=ve(a0),c0=new Array(3).concat("fff7bcfec44fd95f0e","ffffd4fed98efe9929cc4c02","ffffd4fed98efe9929d95f0e993404","ffffd4fee391fec44ffe9929d95f0e993404","ffffd4fee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c028c2d04","ffffe5fff7bcfee391fec44ffe9929ec7014cc4c02993404662506").map(Zt),u0=ve(c0),f0=new Array(3).concat("ffeda0feb24cf03b20","ffffb2fecc5cfd8d3ce31a1c","ffffb2fecc5cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cf03b20bd0026","ffffb2fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cb10026","ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cbd0026800026").map(Zt),h0=ve(f0),d0=new Array(3).concat("deebf79ecae13182bd","eff3ffbdd7e76baed62171b5","eff3ffbdd7e76baed63182bd08519c","eff3ffc6dbef9ecae16baed63182bd08519c","eff3ffc6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b5084594","f7fbffdeebf7c6dbef9ecae16baed64292c62171b508519c08306b").map(Zt),p0=ve(d0),m0=new Array(3).concat("e5f5e0a1d99b31a354","edf8e9bae4b374c476238b45","edf8e9bae4b374c47631a354006d2c","edf8e9c7e9c0a1d99b74c47631a354006d2c","edf8e9c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45005a32","f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45006d2c00441b").map(Zt),g0=ve(m0),y0=new Array(3).concat("f0f0f0bdbdbd636363","f7f7f7cccccc969696525252","f7f7f7cccccc969696636363252525","f7f7f7d9d9d9bdbdbd969696636363252525","f7f7f7d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525","fffffff0f0f0d9d9d9bdbdbd969696737373525252252525000000").map(Zt),x0=ve(y0),_0=new Array(3).concat("efedf5bcbddc756bb1","f2f0f7cbc9e29e9ac86a51a3","f2f0f7cbc9e29e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8756bb154278f","f2f0f7dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a34a1486","fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a354278f3f007d").map(Zt),v0=ve(_0),b0=new Array(3).concat("fee0d2fc9272de2d26","fee5d9fcae91fb6a4acb181d","fee5d9fcae91fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4ade2d26a50f15","fee5d9fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181d99000d","fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181da50f1567000d").map(Zt),M0=ve(b0),S0=new Array(3).concat("fee6cefdae6be6550d","feeddefdbe85fd8d3cd94701","feeddefdbe85fd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3ce6550da63603","feeddefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d948018c2d04","fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d94801a636037f2704").map(Zt),w0=ve(S0);function T0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(-4.54-e*(35.34-e*(2381.73-e*(6402.7-e*(7024.72-e*2710.57)))))))+", "+Math.max(0,Math.min(255,Math.round(32.49+e*(170.73+e*(52.82-e*(131.46-e*(176.58-e*67.37)))))))+", "+Math.max(0,Math.min(255,Math.round(81.24+e*(442.36-e*(2482.43-e*(6167.24-e*(6614.94-e*2475.67)))))))+")"}var E0=qu(yi(300,.5,0),yi(-240,.5,1)),A0=qu(yi(-100,.75,.35),yi(80,1.5,.8)),C0=qu(yi(260,.75,.35),yi(80,1.5,.8)),Ef=yi();function R0(e){(e<0||e>1)&&(e-=Math.floor(e));var t=Math.abs(e-.5);return Ef.h=360*e-100,Ef.s=1.5-1.5*t,Ef.l=.8-.9*t,Ef+""}var Af=ki(),jL=Math.PI/3,QL=Math.PI*2/3;function P0(e){var t;return e=(.5-e)*Math.PI,Af.r=255*(t=Math.sin(e))*t,Af.g=255*(t=Math.sin(e+jL))*t,Af.b=255*(t=Math.sin(e+QL))*t,Af+""}function I0(e){return e=Math.max(0,Math.min(1,e)),"rgb("+Math.max(0,Math.min(255,Math.round(34.61+e*(1172.33-e*(10793.56-e*(33300.12-e*(38394.49-e*14825.05)))))))+", "+Math.max(0,Math.min(255,Math.round(23.31+e*(557.33+e*(1225.33-e*(3574.96-e*(1073.77+e*707.56)))))))+", "+Math.max(0,Math.min(255,Math.round(27.2+e*(3211.1-e*(15327.97-e*(27814-e*(22569.18-e*6838.66)))))))+")"}function Pf(e){var t=e.length;return function(n){return e[Math.max(0,Math.min(t-1,Math.floor(n*t)))]}}var L0=Pf(Zt("44015444025645045745055946075a46085c460a5d460b5e470d60470e6147106347116447136548146748166848176948186a481a6c481b6d481c6e481d6f481f70482071482173482374482475482576482677482878482979472a7a472c7a472d7b472e7c472f7d46307e46327e46337f463480453581453781453882443983443a83443b84433d84433e85423f854240864241864142874144874045884046883f47883f48893e49893e4a893e4c8a3d4d8a3d4e8a3c4f8a3c508b3b518b3b528b3a538b3a548c39558c39568c38588c38598c375a8c375b8d365c8d365d8d355e8d355f8d34608d34618d33628d33638d32648e32658e31668e31678e31688e30698e306a8e2f6b8e2f6c8e2e6d8e2e6e8e2e6f8e2d708e2d718e2c718e2c728e2c738e2b748e2b758e2a768e2a778e2a788e29798e297a8e297b8e287c8e287d8e277e8e277f8e27808e26818e26828e26828e25838e25848e25858e24868e24878e23888e23898e238a8d228b8d228c8d228d8d218e8d218f8d21908d21918c20928c20928c20938c1f948c1f958b1f968b1f978b1f988b1f998a1f9a8a1e9b8a1e9c891e9d891f9e891f9f881fa0881fa1881fa1871fa28720a38620a48621a58521a68522a78522a88423a98324aa8325ab8225ac8226ad8127ad8128ae8029af7f2ab07f2cb17e2db27d2eb37c2fb47c31b57b32b67a34b67935b77937b87838b9773aba763bbb753dbc743fbc7340bd7242be7144bf7046c06f48c16e4ac16d4cc26c4ec36b50c46a52c56954c56856c66758c7655ac8645cc8635ec96260ca6063cb5f65cb5e67cc5c69cd5b6ccd5a6ece5870cf5773d05675d05477d1537ad1517cd2507fd34e81d34d84d44b86d54989d5488bd6468ed64590d74393d74195d84098d83e9bd93c9dd93ba0da39a2da37a5db36a8db34aadc32addc30b0dd2fb2dd2db5de2bb8de29bade28bddf26c0df25c2df23c5e021c8e020cae11fcde11dd0e11cd2e21bd5e21ad8e219dae319dde318dfe318e2e418e5e419e7e419eae51aece51befe51cf1e51df4e61ef6e620f8e621fbe723fde725")),D0=Pf(Zt("00000401000501010601010802010902020b02020d03030f03031204041405041606051806051a07061c08071e0907200a08220b09240c09260d0a290e0b2b100b2d110c2f120d31130d34140e36150e38160f3b180f3d19103f1a10421c10441d11471e114920114b21114e22115024125325125527125829115a2a115c2c115f2d11612f116331116533106734106936106b38106c390f6e3b0f703d0f713f0f72400f74420f75440f764510774710784910784a10794c117a4e117b4f127b51127c52137c54137d56147d57157e59157e5a167e5c167f5d177f5f187f601880621980641a80651a80671b80681c816a1c816b1d816d1d816e1e81701f81721f817320817521817621817822817922827b23827c23827e24828025828125818326818426818627818827818928818b29818c29818e2a81902a81912b81932b80942c80962c80982d80992d809b2e7f9c2e7f9e2f7fa02f7fa1307ea3307ea5317ea6317da8327daa337dab337cad347cae347bb0357bb2357bb3367ab5367ab73779b83779ba3878bc3978bd3977bf3a77c03a76c23b75c43c75c53c74c73d73c83e73ca3e72cc3f71cd4071cf4070d0416fd2426fd3436ed5446dd6456cd8456cd9466bdb476adc4869de4968df4a68e04c67e24d66e34e65e44f64e55064e75263e85362e95462ea5661eb5760ec5860ed5a5fee5b5eef5d5ef05f5ef1605df2625df2645cf3655cf4675cf4695cf56b5cf66c5cf66e5cf7705cf7725cf8745cf8765cf9785df9795df97b5dfa7d5efa7f5efa815ffb835ffb8560fb8761fc8961fc8a62fc8c63fc8e64fc9065fd9266fd9467fd9668fd9869fd9a6afd9b6bfe9d6cfe9f6dfea16efea36ffea571fea772fea973feaa74feac76feae77feb078feb27afeb47bfeb67cfeb77efeb97ffebb81febd82febf84fec185fec287fec488fec68afec88cfeca8dfecc8ffecd90fecf92fed194fed395fed597fed799fed89afdda9cfddc9efddea0fde0a1fde2a3fde3a5fde5a7fde7a9fde9aafdebacfcecaefceeb0fcf0b2fcf2b4fcf4b6fcf6b8fcf7b9fcf9bbfcfbbdfcfdbf")),N0=Pf(Zt("00000401000501010601010802010a02020c02020e03021004031204031405041706041907051b08051d09061f0a07220b07240c08260d08290e092b10092d110a30120a32140b34150b37160b39180c3c190c3e1b0c411c0c431e0c451f0c48210c4a230c4c240c4f260c51280b53290b552b0b572d0b592f0a5b310a5c320a5e340a5f3609613809623909633b09643d09653e0966400a67420a68440a68450a69470b6a490b6a4a0c6b4c0c6b4d0d6c4f0d6c510e6c520e6d540f6d550f6d57106e59106e5a116e5c126e5d126e5f136e61136e62146e64156e65156e67166e69166e6a176e6c186e6d186e6f196e71196e721a6e741a6e751b6e771c6d781c6d7a1d6d7c1d6d7d1e6d7f1e6c801f6c82206c84206b85216b87216b88226a8a226a8c23698d23698f24699025689225689326679526679727669827669a28659b29649d29649f2a63a02a63a22b62a32c61a52c60a62d60a82e5fa92e5eab2f5ead305dae305cb0315bb1325ab3325ab43359b63458b73557b93556ba3655bc3754bd3853bf3952c03a51c13a50c33b4fc43c4ec63d4dc73e4cc83f4bca404acb4149cc4248ce4347cf4446d04545d24644d34743d44842d54a41d74b3fd84c3ed94d3dda4e3cdb503bdd513ade5238df5337e05536e15635e25734e35933e45a31e55c30e65d2fe75e2ee8602de9612bea632aeb6429eb6628ec6726ed6925ee6a24ef6c23ef6e21f06f20f1711ff1731df2741cf3761bf37819f47918f57b17f57d15f67e14f68013f78212f78410f8850ff8870ef8890cf98b0bf98c0af98e09fa9008fa9207fa9407fb9606fb9706fb9906fb9b06fb9d07fc9f07fca108fca309fca50afca60cfca80dfcaa0ffcac11fcae12fcb014fcb216fcb418fbb61afbb81dfbba1ffbbc21fbbe23fac026fac228fac42afac62df9c72ff9c932f9cb35f8cd37f8cf3af7d13df7d340f6d543f6d746f5d949f5db4cf4dd4ff4df53f4e156f3e35af3e55df2e661f2e865f2ea69f1ec6df1ed71f1ef75f1f179f2f27df2f482f3f586f3f68af4f88ef5f992f6fa96f8fb9af9fc9dfafda1fcffa4")),yc=Pf(Zt("0d088710078813078916078a19068c1b068d1d068e20068f2206902406912605912805922a05932c05942e05952f059631059733059735049837049938049a3a049a3c049b3e049c3f049c41049d43039e44039e46039f48039f4903a04b03a14c02a14e02a25002a25102a35302a35502a45601a45801a45901a55b01a55c01a65e01a66001a66100a76300a76400a76600a76700a86900a86a00a86c00a86e00a86f00a87100a87201a87401a87501a87701a87801a87a02a87b02a87d03a87e03a88004a88104a78305a78405a78606a68707a68808a68a09a58b0aa58d0ba58e0ca48f0da4910ea3920fa39410a29511a19613a19814a099159f9a169f9c179e9d189d9e199da01a9ca11b9ba21d9aa31e9aa51f99a62098a72197a82296aa2395ab2494ac2694ad2793ae2892b02991b12a90b22b8fb32c8eb42e8db52f8cb6308bb7318ab83289ba3388bb3488bc3587bd3786be3885bf3984c03a83c13b82c23c81c33d80c43e7fc5407ec6417dc7427cc8437bc9447aca457acb4679cc4778cc4977cd4a76ce4b75cf4c74d04d73d14e72d24f71d35171d45270d5536fd5546ed6556dd7566cd8576bd9586ada5a6ada5b69db5c68dc5d67dd5e66de5f65de6164df6263e06363e16462e26561e26660e3685fe4695ee56a5de56b5de66c5ce76e5be76f5ae87059e97158e97257ea7457eb7556eb7655ec7754ed7953ed7a52ee7b51ef7c51ef7e50f07f4ff0804ef1814df1834cf2844bf3854bf3874af48849f48948f58b47f58c46f68d45f68f44f79044f79143f79342f89441f89540f9973ff9983ef99a3efa9b3dfa9c3cfa9e3bfb9f3afba139fba238fca338fca537fca636fca835fca934fdab33fdac33fdae32fdaf31fdb130fdb22ffdb42ffdb52efeb72dfeb82cfeba2cfebb2bfebd2afebe2afec029fdc229fdc328fdc527fdc627fdc827fdca26fdcb26fccd25fcce25fcd025fcd225fbd324fbd524fbd724fad824fada24f9dc24f9dd25f8df25f8e125f7e225f7e425f6e626f6e826f5e926f5eb27f4ed27f3ee27f3f027f2f227f1f426f1f525f0f724f0f921"));function ln(e){return function(){return e}}var sS=Math.cos;var B0=Math.min,If=Math.sin,Ye=Math.sqrt,tS=1e-12,xc=Math.PI,Bz=xc/2,Ff=2*xc;function oS(e){let t=3;return e.digits=function(n){if(!arguments.length)return t;if(n==null)t=null;else{let i=Math.floor(n);if(!(i>=0))throw new RangeError(`invalid digits: ${n}`);t=i}return e},()=>new go(t)}var kz=Array.prototype.slice;function aS(e){return typeof e=="object"&&"length"in e?e:Array.from(e)}function lS(e){this._context=e}lS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:this._context.lineTo(e,t);break}}};function Co(e){return new lS(e)}function cS(e){return e[0]}function uS(e){return e[1]}function k0(e,t){var n=ln(!0),i=null,r=Co,s=null,o=oS(a);e=typeof e=="function"?e:e===void 0?cS:ln(e),t=typeof t=="function"?t:t===void 0?uS:ln(t);function a(l){var c,u=(l=aS(l)).length,h,f=!1,d;for(i==null&&(s=r(d=o())),c=0;c<=u;++c)!(c<u&&n(h=l[c],c,l))===f&&((f=!f)?s.lineStart():s.lineEnd()),f&&s.point(+e(h,c,l),+t(h,c,l));if(d)return s=null,d+""||null}return a.x=function(l){return arguments.length?(e=typeof l=="function"?l:ln(+l),a):e},a.y=function(l){return arguments.length?(t=typeof l=="function"?l:ln(+l),a):t},a.defined=function(l){return arguments.length?(n=typeof l=="function"?l:ln(!!l),a):n},a.curve=function(l){return arguments.length?(r=l,i!=null&&(s=r(i)),a):r},a.context=function(l){return arguments.length?(l==null?i=s=null:s=r(i=l),a):i},a}function fS(e,t,n){var i=null,r=ln(!0),s=null,o=Co,a=null,l=oS(c);e=typeof e=="function"?e:e===void 0?cS:ln(+e),t=typeof t=="function"?t:ln(t===void 0?0:+t),n=typeof n=="function"?n:n===void 0?uS:ln(+n);function c(h){var f,d,p,y=(h=aS(h)).length,g,m=!1,x,M=new Array(y),v=new Array(y);for(s==null&&(a=o(x=l())),f=0;f<=y;++f){if(!(f<y&&r(g=h[f],f,h))===m)if(m=!m)d=f,a.areaStart(),a.lineStart();else{for(a.lineEnd(),a.lineStart(),p=f-1;p>=d;--p)a.point(M[p],v[p]);a.lineEnd(),a.areaEnd()}m&&(M[f]=+e(g,f,h),v[f]=+t(g,f,h),a.point(i?+i(g,f,h):M[f],n?+n(g,f,h):v[f]))}if(x)return a=null,x+""||null}function u(){return k0().defined(r).curve(o).context(s)}return c.x=function(h){return arguments.length?(e=typeof h=="function"?h:ln(+h),i=null,c):e},c.x0=function(h){return arguments.length?(e=typeof h=="function"?h:ln(+h),c):e},c.x1=function(h){return arguments.length?(i=h==null?null:typeof h=="function"?h:ln(+h),c):i},c.y=function(h){return arguments.length?(t=typeof h=="function"?h:ln(+h),n=null,c):t},c.y0=function(h){return arguments.length?(t=typeof h=="function"?h:ln(+h),c):t},c.y1=function(h){return arguments.length?(n=h==null?null:typeof h=="function"?h:ln(+h),c):n},c.lineX0=c.lineY0=function(){return u().x(e).y(t)},c.lineY1=function(){return u().x(e).y(n)},c.lineX1=function(){return u().x(i).y(t)},c.defined=function(h){return arguments.length?(r=typeof h=="function"?h:ln(!!h),c):r},c.curve=function(h){return arguments.length?(o=h,s!=null&&(a=o(s)),c):o},c.context=function(h){return arguments.length?(h==null?s=a=null:a=o(s=h),c):s},c}var zz=tD(Co);function hS(e){this._curve=e}hS.prototype={areaStart:function(){this._curve.areaStart()},areaEnd:function(){this._curve.areaEnd()},lineStart:function(){this._curve.lineStart()},lineEnd:function(){this._curve.lineEnd()},point:function(e,t){this._curve.point(t*Math.sin(e),t*-Math.cos(e))}};function tD(e){function t(n){return new hS(e(n))}return t._curve=e,t}var Lf=class{constructor(t,n){this._context=t,this._x=n}areaStart(){this._line=0}areaEnd(){this._line=NaN}lineStart(){this._point=0}lineEnd(){(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line}point(t,n){switch(t=+t,n=+n,this._point){case 0:{this._point=1,this._line?this._context.lineTo(t,n):this._context.moveTo(t,n);break}case 1:this._point=2;default:{this._x?this._context.bezierCurveTo(this._x0=(this._x0+t)/2,this._y0,this._x0,n,t,n):this._context.bezierCurveTo(this._x0,this._y0=(this._y0+n)/2,t,this._y0,t,n);break}}this._x0=t,this._y0=n}};function dS(e){return new Lf(e,!0)}function pS(e){return new Lf(e,!1)}var eD=Ye(3),z0={draw(e,t){let n=Ye(t+B0(t/28,.75))*.59436,i=n/2,r=i*eD;e.moveTo(0,n),e.lineTo(0,-n),e.moveTo(-r,-i),e.lineTo(r,i),e.moveTo(-r,i),e.lineTo(r,-i)}},Ro={draw(e,t){let n=Ye(t/xc);e.moveTo(n,0),e.arc(0,0,n,0,Ff)}},G0={draw(e,t){let n=Ye(t/5)/2;e.moveTo(-3*n,-n),e.lineTo(-n,-n),e.lineTo(-n,-3*n),e.lineTo(n,-3*n),e.lineTo(n,-n),e.lineTo(3*n,-n),e.lineTo(3*n,n),e.lineTo(n,n),e.lineTo(n,3*n),e.lineTo(-n,3*n),e.lineTo(-n,n),e.lineTo(-3*n,n),e.closePath()}},mS=Ye(1/3),nD=mS*2,V0={draw(e,t){let n=Ye(t/nD),i=n*mS;e.moveTo(0,-n),e.lineTo(i,0),e.lineTo(0,n),e.lineTo(-i,0),e.closePath()}},H0={draw(e,t){let n=Ye(t)*.62625;e.moveTo(0,-n),e.lineTo(n,0),e.lineTo(0,n),e.lineTo(-n,0),e.closePath()}},W0={draw(e,t){let n=Ye(t-B0(t/7,2))*.87559;e.moveTo(-n,0),e.lineTo(n,0),e.moveTo(0,n),e.lineTo(0,-n)}},$0={draw(e,t){let n=Ye(t),i=-n/2;e.rect(i,i,n,n)}},X0={draw(e,t){let n=Ye(t)*.4431;e.moveTo(n,n),e.lineTo(n,-n),e.lineTo(-n,-n),e.lineTo(-n,n),e.closePath()}},iD=.8908130915292852,gS=If(xc/10)/If(7*xc/10),rD=If(Ff/10)*gS,sD=-sS(Ff/10)*gS,q0={draw(e,t){let n=Ye(t*iD),i=rD*n,r=sD*n;e.moveTo(0,-n),e.lineTo(i,r);for(let s=1;s<5;++s){let o=Ff*s/5,a=sS(o),l=If(o);e.lineTo(l*n,-a*n),e.lineTo(a*i-l*r,l*i+a*r)}e.closePath()}},U0=Ye(3),Y0={draw(e,t){let n=-Ye(t/(U0*3));e.moveTo(0,n*2),e.lineTo(-U0*n,-n),e.lineTo(U0*n,-n),e.closePath()}},oD=Ye(3),Z0={draw(e,t){let n=Ye(t)*.6824,i=n/2,r=n*oD/2;e.moveTo(0,-n),e.lineTo(r,i),e.lineTo(-r,i),e.closePath()}},Ti=-.5,Ei=Ye(3)/2,O0=1/Ye(12),aD=(O0/2+1)*3,K0={draw(e,t){let n=Ye(t/aD),i=n/2,r=n*O0,s=i,o=n*O0+n,a=-s,l=o;e.moveTo(i,r),e.lineTo(s,o),e.lineTo(a,l),e.lineTo(Ti*i-Ei*r,Ei*i+Ti*r),e.lineTo(Ti*s-Ei*o,Ei*s+Ti*o),e.lineTo(Ti*a-Ei*l,Ei*a+Ti*l),e.lineTo(Ti*i+Ei*r,Ti*r-Ei*i),e.lineTo(Ti*s+Ei*o,Ti*o-Ei*s),e.lineTo(Ti*a+Ei*l,Ti*l-Ei*a),e.closePath()}},J0={draw(e,t){let n=Ye(t-B0(t/6,1.7))*.6189;e.moveTo(-n,-n),e.lineTo(n,n),e.moveTo(-n,n),e.lineTo(n,-n)}},yS=[Ro,G0,V0,$0,q0,Y0,K0],xS=[Ro,W0,J0,Z0,z0,X0,H0];function Ss(){}function Df(e,t,n){e._context.bezierCurveTo((2*e._x0+e._x1)/3,(2*e._y0+e._y1)/3,(e._x0+2*e._x1)/3,(e._y0+2*e._y1)/3,(e._x0+4*e._x1+t)/6,(e._y0+4*e._y1+n)/6)}function Of(e){this._context=e}Of.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){switch(this._point){case 3:Df(this,this._x1,this._y1);case 2:this._context.lineTo(this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,this._context.lineTo((5*this._x0+this._x1)/6,(5*this._y0+this._y1)/6);default:Df(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function _S(e){return new Of(e)}function vS(e){this._context=e}vS.prototype={areaStart:Ss,areaEnd:Ss,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._y0=this._y1=this._y2=this._y3=this._y4=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x2,this._y2),this._context.closePath();break}case 2:{this._context.moveTo((this._x2+2*this._x3)/3,(this._y2+2*this._y3)/3),this._context.lineTo((this._x3+2*this._x2)/3,(this._y3+2*this._y2)/3),this._context.closePath();break}case 3:{this.point(this._x2,this._y2),this.point(this._x3,this._y3),this.point(this._x4,this._y4);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x2=e,this._y2=t;break;case 1:this._point=2,this._x3=e,this._y3=t;break;case 2:this._point=3,this._x4=e,this._y4=t,this._context.moveTo((this._x0+4*this._x1+e)/6,(this._y0+4*this._y1+t)/6);break;default:Df(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function bS(e){return new vS(e)}function MS(e){this._context=e}MS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3;var n=(this._x0+4*this._x1+e)/6,i=(this._y0+4*this._y1+t)/6;this._line?this._context.lineTo(n,i):this._context.moveTo(n,i);break;case 3:this._point=4;default:Df(this,e,t);break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t}};function SS(e){return new MS(e)}function wS(e,t){this._basis=new Of(e),this._beta=t}wS.prototype={lineStart:function(){this._x=[],this._y=[],this._basis.lineStart()},lineEnd:function(){var e=this._x,t=this._y,n=e.length-1;if(n>0)for(var i=e[0],r=t[0],s=e[n]-i,o=t[n]-r,a=-1,l;++a<=n;)l=a/n,this._basis.point(this._beta*e[a]+(1-this._beta)*(i+l*s),this._beta*t[a]+(1-this._beta)*(r+l*o));this._x=this._y=null,this._basis.lineEnd()},point:function(e,t){this._x.push(+e),this._y.push(+t)}};var TS=(function e(t){function n(i){return t===1?new Of(i):new wS(i,t)}return n.beta=function(i){return e(+i)},n})(.85);function Nf(e,t,n){e._context.bezierCurveTo(e._x1+e._k*(e._x2-e._x0),e._y1+e._k*(e._y2-e._y0),e._x2+e._k*(e._x1-t),e._y2+e._k*(e._y1-n),e._x2,e._y2)}function j0(e,t){this._context=e,this._k=(1-t)/6}j0.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:Nf(this,this._x1,this._y1);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2,this._x1=e,this._y1=t;break;case 2:this._point=3;default:Nf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var ES=(function e(t){function n(i){return new j0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function Q0(e,t){this._context=e,this._k=(1-t)/6}Q0.prototype={areaStart:Ss,areaEnd:Ss,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:Nf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var AS=(function e(t){function n(i){return new Q0(i,t)}return n.tension=function(i){return e(+i)},n})(0);function ty(e,t){this._context=e,this._k=(1-t)/6}ty.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:Nf(this,e,t);break}this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var CS=(function e(t){function n(i){return new ty(i,t)}return n.tension=function(i){return e(+i)},n})(0);function ey(e,t,n){var i=e._x1,r=e._y1,s=e._x2,o=e._y2;if(e._l01_a>tS){var a=2*e._l01_2a+3*e._l01_a*e._l12_a+e._l12_2a,l=3*e._l01_a*(e._l01_a+e._l12_a);i=(i*a-e._x0*e._l12_2a+e._x2*e._l01_2a)/l,r=(r*a-e._y0*e._l12_2a+e._y2*e._l01_2a)/l}if(e._l23_a>tS){var c=2*e._l23_2a+3*e._l23_a*e._l12_a+e._l12_2a,u=3*e._l23_a*(e._l23_a+e._l12_a);s=(s*c+e._x1*e._l23_2a-t*e._l12_2a)/u,o=(o*c+e._y1*e._l23_2a-n*e._l12_2a)/u}e._context.bezierCurveTo(i,r,s,o,e._x2,e._y2)}function RS(e,t){this._context=e,this._alpha=t}RS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x2,this._y2);break;case 3:this.point(this._x2,this._y2);break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3;default:ey(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var PS=(function e(t){function n(i){return t?new RS(i,t):new j0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function IS(e,t){this._context=e,this._alpha=t}IS.prototype={areaStart:Ss,areaEnd:Ss,lineStart:function(){this._x0=this._x1=this._x2=this._x3=this._x4=this._x5=this._y0=this._y1=this._y2=this._y3=this._y4=this._y5=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){switch(this._point){case 1:{this._context.moveTo(this._x3,this._y3),this._context.closePath();break}case 2:{this._context.lineTo(this._x3,this._y3),this._context.closePath();break}case 3:{this.point(this._x3,this._y3),this.point(this._x4,this._y4),this.point(this._x5,this._y5);break}}},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1,this._x3=e,this._y3=t;break;case 1:this._point=2,this._context.moveTo(this._x4=e,this._y4=t);break;case 2:this._point=3,this._x5=e,this._y5=t;break;default:ey(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var LS=(function e(t){function n(i){return t?new IS(i,t):new Q0(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function DS(e,t){this._context=e,this._alpha=t}DS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._x2=this._y0=this._y1=this._y2=NaN,this._l01_a=this._l12_a=this._l23_a=this._l01_2a=this._l12_2a=this._l23_2a=this._point=0},lineEnd:function(){(this._line||this._line!==0&&this._point===3)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){if(e=+e,t=+t,this._point){var n=this._x2-e,i=this._y2-t;this._l23_a=Math.sqrt(this._l23_2a=Math.pow(n*n+i*i,this._alpha))}switch(this._point){case 0:this._point=1;break;case 1:this._point=2;break;case 2:this._point=3,this._line?this._context.lineTo(this._x2,this._y2):this._context.moveTo(this._x2,this._y2);break;case 3:this._point=4;default:ey(this,e,t);break}this._l01_a=this._l12_a,this._l12_a=this._l23_a,this._l01_2a=this._l12_2a,this._l12_2a=this._l23_2a,this._x0=this._x1,this._x1=this._x2,this._x2=e,this._y0=this._y1,this._y1=this._y2,this._y2=t}};var NS=(function e(t){function n(i){return t?new DS(i,t):new ty(i,0)}return n.alpha=function(i){return e(+i)},n})(.5);function US(e){this._context=e}US.prototype={areaStart:Ss,areaEnd:Ss,lineStart:function(){this._point=0},lineEnd:function(){this._point&&this._context.closePath()},point:function(e,t){e=+e,t=+t,this._point?this._context.lineTo(e,t):(this._point=1,this._context.moveTo(e,t))}};function FS(e){return new US(e)}function eS(e){return e<0?-1:1}function nS(e,t,n){var i=e._x1-e._x0,r=t-e._x1,s=(e._y1-e._y0)/(i||r<0&&-0),o=(n-e._y1)/(r||i<0&&-0),a=(s*r+o*i)/(i+r);return(eS(s)+eS(o))*Math.min(Math.abs(s),Math.abs(o),.5*Math.abs(a))||0}function iS(e,t){var n=e._x1-e._x0;return n?(3*(e._y1-e._y0)/n-t)/2:t}function F0(e,t,n){var i=e._x0,r=e._y0,s=e._x1,o=e._y1,a=(s-i)/3;e._context.bezierCurveTo(i+a,r+a*t,s-a,o-a*n,s,o)}function Uf(e){this._context=e}Uf.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x0=this._x1=this._y0=this._y1=this._t0=NaN,this._point=0},lineEnd:function(){switch(this._point){case 2:this._context.lineTo(this._x1,this._y1);break;case 3:F0(this,this._t0,iS(this,this._t0));break}(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line=1-this._line},point:function(e,t){var n=NaN;if(e=+e,t=+t,!(e===this._x1&&t===this._y1)){switch(this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;break;case 2:this._point=3,F0(this,iS(this,n=nS(this,e,t)),n);break;default:F0(this,this._t0,n=nS(this,e,t));break}this._x0=this._x1,this._x1=e,this._y0=this._y1,this._y1=t,this._t0=n}}};function OS(e){this._context=new BS(e)}(OS.prototype=Object.create(Uf.prototype)).point=function(e,t){Uf.prototype.point.call(this,t,e)};function BS(e){this._context=e}BS.prototype={moveTo:function(e,t){this._context.moveTo(t,e)},closePath:function(){this._context.closePath()},lineTo:function(e,t){this._context.lineTo(t,e)},bezierCurveTo:function(e,t,n,i,r,s){this._context.bezierCurveTo(t,e,i,n,s,r)}};function kS(e){return new Uf(e)}function zS(e){return new OS(e)}function GS(e){this._context=e}GS.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=[],this._y=[]},lineEnd:function(){var e=this._x,t=this._y,n=e.length;if(n)if(this._line?this._context.lineTo(e[0],t[0]):this._context.moveTo(e[0],t[0]),n===2)this._context.lineTo(e[1],t[1]);else for(var i=rS(e),r=rS(t),s=0,o=1;o<n;++s,++o)this._context.bezierCurveTo(i[0][s],r[0][s],i[1][s],r[1][s],e[o],t[o]);(this._line||this._line!==0&&n===1)&&this._context.closePath(),this._line=1-this._line,this._x=this._y=null},point:function(e,t){this._x.push(+e),this._y.push(+t)}};function rS(e){var t,n=e.length-1,i,r=new Array(n),s=new Array(n),o=new Array(n);for(r[0]=0,s[0]=2,o[0]=e[0]+2*e[1],t=1;t<n-1;++t)r[t]=1,s[t]=4,o[t]=4*e[t]+2*e[t+1];for(r[n-1]=2,s[n-1]=7,o[n-1]=8*e[n-1]+e[n],t=1;t<n;++t)i=r[t]/s[t-1],s[t]-=i,o[t]-=i*o[t-1];for(r[n-1]=o[n-1]/s[n-1],t=n-2;t>=0;--t)r[t]=(o[t]-r[t+1])/s[t];for(s[n-1]=(e[n]+r[n-1])/2,t=0;t<n-1;++t)s[t]=2*e[t+1]-r[t+1];return[r,s]}function VS(e){return new GS(e)}function Bf(e,t){this._context=e,this._t=t}Bf.prototype={areaStart:function(){this._line=0},areaEnd:function(){this._line=NaN},lineStart:function(){this._x=this._y=NaN,this._point=0},lineEnd:function(){0<this._t&&this._t<1&&this._point===2&&this._context.lineTo(this._x,this._y),(this._line||this._line!==0&&this._point===1)&&this._context.closePath(),this._line>=0&&(this._t=1-this._t,this._line=1-this._line)},point:function(e,t){switch(e=+e,t=+t,this._point){case 0:this._point=1,this._line?this._context.lineTo(e,t):this._context.moveTo(e,t);break;case 1:this._point=2;default:{if(this._t<=0)this._context.lineTo(this._x,t),this._context.lineTo(e,t);else{var n=this._x*(1-this._t)+e*this._t;this._context.lineTo(n,this._y),this._context.lineTo(n,t)}break}}this._x=e,this._y=t}};function HS(e){return new Bf(e,.5)}function WS(e){return new Bf(e,0)}function $S(e){return new Bf(e,1)}function Ai(e){return e!=null&&!Number.isNaN(e)}function Mn(e,t){return+Ai(t)-+Ai(e)||bn(e,t)}function Po(e,t){return+Ai(t)-+Ai(e)||Lr(e,t)}function _c(e){return e!=null&&`${e}`!=""}function ny(e){return isFinite(e)?e:NaN}function Io(e){return e>0&&isFinite(e)?e:NaN}function Ea(e){return e<0&&isFinite(e)?e:NaN}function kf(e,t){if(e instanceof Date||(e=new Date(+e)),isNaN(e))return typeof t=="function"?t(e):t;let n=e.getUTCHours(),i=e.getUTCMinutes(),r=e.getUTCSeconds(),s=e.getUTCMilliseconds();return`${lD(e.getUTCFullYear(),4)}-${Vr(e.getUTCMonth()+1,2)}-${Vr(e.getUTCDate(),2)}${n||i||r||s?`T${Vr(n,2)}:${Vr(i,2)}${r||s?`:${Vr(r,2)}${s?`.${Vr(s,3)}`:""}`:""}Z`:""}`}function lD(e){return e<0?`-${Vr(-e,6)}`:e>9999?`+${Vr(e,6)}`:Vr(e,4)}function Vr(e,t){return`${e}`.padStart(t,"0")}var cD=/^(?:[-+]\d{2})?\d{4}(?:-\d{2}(?:-\d{2})?)?(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d{3})?)?(?:Z|[-+]\d{2}:?\d{2})?)?$/;function vc(e,t){return cD.test(e+="")?new Date(e):typeof t=="function"?t(e):t}function Hr(e){if(e==null)return;let t=e[0],n=e[e.length-1];return Lr(t,n)}var Ca=1e3,Ts=Ca*60,Es=Ts*60,pr=Es*24,dr=pr*7,Lo=pr*30,ws=pr*365,iy=[["millisecond",1],["2 milliseconds",2],["5 milliseconds",5],["10 milliseconds",10],["20 milliseconds",20],["50 milliseconds",50],["100 milliseconds",100],["200 milliseconds",200],["500 milliseconds",500],["second",Ca],["5 seconds",5*Ca],["15 seconds",15*Ca],["30 seconds",30*Ca],["minute",Ts],["5 minutes",5*Ts],["15 minutes",15*Ts],["30 minutes",30*Ts],["hour",Es],["3 hours",3*Es],["6 hours",6*Es],["12 hours",12*Es],["day",pr],["2 days",2*pr],["week",dr],["2 weeks",2*dr],["month",Lo],["3 months",3*Lo],["6 months",6*Lo],["year",ws],["2 years",2*ws],["5 years",5*ws],["10 years",10*ws],["20 years",20*ws],["50 years",50*ws],["100 years",100*ws]],ry=new Map([["second",Ca],["minute",Ts],["hour",Es],["day",pr],["monday",dr],["tuesday",dr],["wednesday",dr],["thursday",dr],["friday",dr],["saturday",dr],["sunday",dr],["week",dr],["month",Lo],["year",ws]]),qS=new Map([["second",Dn],["minute",xo],["hour",vo],["day",lr],["monday",So],["tuesday",og],["wednesday",ag],["thursday",zr],["friday",lg],["saturday",cg],["sunday",cr],["week",cr],["month",Eo],["year",Yn]]),sy=new Map([["second",Dn],["minute",_o],["hour",bo],["day",ac],["monday",To],["tuesday",ug],["wednesday",fg],["thursday",Gr],["friday",hg],["saturday",dg],["sunday",ur],["week",ur],["month",Ao],["year",Zn]]),Ra=Symbol("intervalDuration"),Gf=Symbol("intervalType");for(let[e,t]of qS)t[Ra]=ry.get(e),t[Gf]="time";for(let[e,t]of sy)t[Ra]=ry.get(e),t[Gf]="utc";var bc=[["year",Zn,"utc"],["month",Ao,"utc"],["day",ac,"utc",6*Lo],["hour",bo,"utc",3*pr],["minute",_o,"utc",6*Es],["second",Dn,"utc",30*Ts]],zf=[["year",Yn,"time"],["month",Eo,"time"],["day",lr,"time",6*Lo],["hour",vo,"time",3*pr],["minute",xo,"time",6*Es],["second",Dn,"time",30*Ts]],uD=[bc[0],zf[0],bc[1],zf[1],bc[2],zf[2],...bc.slice(3)];function YS(e){let t=`${e}`.toLowerCase();t.endsWith("s")&&(t=t.slice(0,-1));let n=1,i=/^(?:(\d+)\s+)/.exec(t);switch(i&&(t=t.slice(i[0].length),n=+i[1]),t){case"quarter":t="month",n*=3;break;case"half":t="month",n*=6;break}let r=sy.get(t);if(!r)throw new Error(`unknown interval: ${e}`);if(n>1&&!r.every)throw new Error(`non-periodic interval: ${t}`);return[t,n]}function oy(e){return ZS(YS(e),"time")}function Mc(e){return ZS(YS(e),"utc")}function ZS([e,t],n){let i=(n==="time"?qS:sy).get(e);return t>1&&(i=i.every(t),i[Ra]=ry.get(e)*t,i[Gf]=n),i}function ay(e,t){if(!(t>1))return;let n=e[Ra];if(!iy.some(([,r])=>r===n)||n%pr===0&&pr<n&&n<Lo)return;let[i]=iy[oa(([,r])=>Math.log(r)).center(iy,Math.log(n*t))];return(e[Gf]==="time"?oy:Mc)(i)}function XS(e,t,n){let i=t==="time"?fc:fr;if(n==null)return i(e==="year"?"%Y":e==="month"?"%Y-%m":e==="day"?"%Y-%m-%d":e==="hour"||e==="minute"?"%Y-%m-%dT%H:%M":e==="second"?"%Y-%m-%dT%H:%M:%S":"%Y-%m-%dT%H:%M:%S.%L");let r=fD(n);switch(e){case"millisecond":return Aa(i(".%L"),i(":%M:%S"),r);case"second":return Aa(i(":%S"),i("%-I:%M"),r);case"minute":return Aa(i("%-I:%M"),i("%p"),r);case"hour":return Aa(i("%-I %p"),i("%b %-d"),r);case"day":return Aa(i("%-d"),i("%b"),r);case"month":return Aa(i("%b"),i("%Y"),r);case"year":return i("%Y")}throw new Error("unable to format time ticks")}function fD(e){return e==="left"||e==="right"?(t,n)=>`
${t}
${n}`:e==="top"?(t,n)=>`${n}
${t}`:(t,n)=>`${t}
${n}`}function hD(e){return e==="time"?zf:e==="utc"?bc:uD}function KS(e,t,n){let i=Pn(Xv(t,(r,s)=>Math.abs(s-r)));if(i<1e3)return XS("millisecond","utc",n);for(let[r,s,o,a]of hD(e)){if(i>a||r==="hour"&&!i)break;if(t.every(l=>s.floor(l)>=l))return XS(r,o,n)}}function Aa(e,t,n){return(i,r,s)=>{let o=e(i,r),a=t(i,r),l=r-Hr(s);return r!==l&&s[l]!==void 0&&a===t(s[l],l)?o:n(o,a)}}var cy=Object.getPrototypeOf(Uint8Array),dD=Object.prototype.toString;function zi(e){return e instanceof Array||e instanceof cy}function QS(e){return e instanceof cy&&!pD(e)}function tw(e){return e?.prototype instanceof cy&&!mD(e)}function pD(e){return e instanceof BigInt64Array||e instanceof BigUint64Array}function mD(e){return e===BigInt64Array||e===BigUint64Array}var uy=Symbol("reindex");function Te(e,t,n){let i=typeof t;return i==="string"?xw(e)?fy(e.getChild(t),n):JS(e,hy(t),n):i==="function"?JS(e,t,n):i==="number"||t instanceof Date||i==="boolean"?ge(e,ri(t),n):typeof t?.transform=="function"?ly(t.transform(e),n):gD(ly(t,n),e?.[uy])}function gD(e,t){return e!=null&&t?Hf(e,t):e}function JS(e,t,n){return ge(e,tw(n)?(i,r)=>dy(t(i,r)):t,n)}function ly(e,t){return t===void 0?mr(e):_w(e)?fy(e,t):e instanceof t?e:t.from(e,tw(t)&&!QS(e)?dy:void 0)}function fy(e,t){return e==null?e:(t===void 0||t===Array)&&vD(e.type)?py(jS(e)):ly(jS(e),t)}function jS(e){return e.nullCount?e.toJSON():e.toArray()}var Pa=[null],hy=e=>t=>{let n=t[e];return n===void 0&&t.type==="Feature"?t.properties?.[e]:n},Do={transform:Fn},Ae={transform:e=>e};var ew=()=>1,nw=()=>!0,Fe=e=>e==null?e:`${e}`,Oe=e=>e==null?e:+e;var Vf=e=>e?e[0]:void 0,Sc=e=>e?e[1]:void 0;var ri=e=>()=>e;function iw(e){let t=+`${e}`.slice(1)/100;return(n,i)=>Ir(n,t,i)}function Nn(e){return QS(e)?e:ge(e,dy,Float64Array)}function dy(e){return e==null?NaN:Number(e)}function py(e){return ge(e,my)}function my(e){return e instanceof Date&&!isNaN(e)?e:typeof e=="string"?vc(e):e==null||isNaN(e=Number(e))?void 0:new Date(e)}function Kn(e,t){return e===void 0&&(e=t),e===null?[void 0,"none"]:Ua(e)?[void 0,e]:[e,void 0]}function Le(e,t){return e===void 0&&(e=t),e===null||typeof e=="number"?[void 0,e]:[e,void 0]}function gy(e,t,n){if(e!=null)return Un(e,t,n)}function Un(e,t,n){let i=`${e}`.toLowerCase();if(!n.includes(i))throw new Error(`invalid ${t}: ${e}`);return i}function Wr(e){return xw(e)?e:mr(e)}function mr(e){if(e==null||zi(e))return e;if(_w(e))return fy(e);if(rw(e))switch(e.type){case"FeatureCollection":return e.features;case"GeometryCollection":return e.geometries;default:return[e]}return Array.from(e)}function rw(e){switch(e?.type){case"FeatureCollection":case"GeometryCollection":case"Feature":case"LineString":case"MultiLineString":case"MultiPoint":case"MultiPolygon":case"Point":case"Polygon":case"Sphere":return!0;default:return!1}}function ge(e,t,n=Array){return e==null?e:e instanceof n?e.map(t):n.from(e,t)}function As(e,t=Array){return e instanceof t?e.slice():t.from(e)}function sw({y:e,y1:t,y2:n}){return e!==void 0||t!==void 0||n!==void 0}function Gi(e){return e?.toString===dD}function Ia(e){return Gi(e)&&(e.type!==void 0||e.domain!==void 0)}function La(e){return Gi(e)&&typeof e.transform!="function"}function Cs(e){return La(e)&&e.value===void 0&&e.channel===void 0}function ow(e,t,n,i=Ae){return t===void 0&&n===void 0?(t=0,n=e===void 0?i:e):t===void 0?t=e===void 0?0:e:n===void 0&&(n=e===void 0?0:e),[t,n]}function Vi(e,t){return e===void 0&&t===void 0?[Vf,Sc]:[e,t]}function Da({z:e,fill:t,stroke:n}={}){return e===void 0&&([e]=Kn(t)),e===void 0&&([e]=Kn(n)),e}function Rs(e){return zi(e)?e.length:e?.numRows}function Fn(e){let t=Rs(e),n=new Uint32Array(t);for(let i=0;i<t;++i)n[i]=i;return n}function Hf(e,t){return zi(e)?ge(t,n=>e[n],e.constructor):ge(t,n=>e.at(n))}function aw(e,t,n){return e.subarray?e.subarray(t,n):e.slice(t,n)}function Ci(e){return e!==null&&typeof e=="object"?e.valueOf():e}function lw(e,t){if(t[e]!==void 0)return t[e];switch(e){case"x1":case"x2":e="x";break;case"y1":case"y2":e="y";break}return t[e]}function Na(e){let t;return[{transform:()=>t,label:Hi(e)},n=>t=n]}function Ri(e){return e==null?[e]:Na(e)}function Hi(e,t){return typeof e=="string"?e:e&&e.label!==void 0?e.label:t}function wc(e,t){return{transform(n){let i=e.transform(n),r=t.transform(n);return Ue(i)||Ue(r)?ge(i,(s,o)=>new Date((+i[o]+ +r[o])/2)):ge(i,(s,o)=>(+i[o]+ +r[o])/2,Float64Array)},label:e.label}}function Tc(e,t){let n=yy(t?.interval,t?.type);return n?ge(e,n):e}function yy(e,t){let n=Wf(e,t);return n&&(i=>Ai(i)?n.floor(i):i)}function Wf(e,t){if(e!=null){if(typeof e=="number")return yD(e);if(typeof e=="string")return(t==="time"?oy:Mc)(e);if(typeof e.floor!="function")throw new Error("invalid interval; missing floor method");if(typeof e.offset!="function")throw new Error("invalid interval; missing offset method");return e}}function yD(e){e=+e,0<e&&e<1&&Number.isInteger(1/e)&&(e=-1/e);let t=Math.abs(e);return e<0?{floor:n=>Math.floor(n*t)/t,offset:(n,i=1)=>(n*t+Math.floor(i))/t,range:(n,i)=>la(Math.ceil(n*t),i*t).map(r=>r/t)}:{floor:n=>Math.floor(n/t)*t,offset:(n,i=1)=>n+t*Math.floor(i),range:(n,i)=>la(Math.ceil(n/t),i/t).map(r=>r*t)}}function gr(e,t){if(e=Wf(e,t),e&&typeof e.range!="function")throw new Error("invalid interval: missing range method");return e}function cw(e,t){if(e=gr(e,t),e&&typeof e.ceil!="function")throw new Error("invalid interval: missing ceil method");return e}function uw(e){return Ps(e)&&typeof e?.floor=="function"&&e.floor()instanceof Date}function Ps(e){return typeof e?.range=="function"}function yr(e){return e===void 0||La(e)?e:{value:e}}function fw(e){return e==null?null:{transform:t=>Te(t,e,Float64Array),label:Hi(e)}}function Jn(e){return e&&typeof e[Symbol.iterator]=="function"}function $f(e){for(let t of e)if(t!=null)return typeof t!="object"||t instanceof Date}function xy(e){for(let t of e){if(t==null)continue;let n=typeof t;return n==="string"||n==="boolean"}}function Ue(e){for(let t of e)if(t!=null)return t instanceof Date}function hw(e){for(let t of e)if(t!=null)return typeof t=="string"&&isNaN(t)&&vc(t)}function dw(e){for(let t of e)if(t!=null){if(typeof t!="string")return!1;if(t.trim())return!isNaN(t)}}function pw(e){for(let t of e)if(t!=null)return typeof t=="number"}function Xf(e,t){let n;for(let i of e)if(i!=null){if(!t(i))return!1;n=!0}return n}var xD=new Set("none,currentcolor,transparent,aliceblue,antiquewhite,aqua,aquamarine,azure,beige,bisque,black,blanchedalmond,blue,blueviolet,brown,burlywood,cadetblue,chartreuse,chocolate,coral,cornflowerblue,cornsilk,crimson,cyan,darkblue,darkcyan,darkgoldenrod,darkgray,darkgreen,darkgrey,darkkhaki,darkmagenta,darkolivegreen,darkorange,darkorchid,darkred,darksalmon,darkseagreen,darkslateblue,darkslategray,darkslategrey,darkturquoise,darkviolet,deeppink,deepskyblue,dimgray,dimgrey,dodgerblue,firebrick,floralwhite,forestgreen,fuchsia,gainsboro,ghostwhite,gold,goldenrod,gray,green,greenyellow,grey,honeydew,hotpink,indianred,indigo,ivory,khaki,lavender,lavenderblush,lawngreen,lemonchiffon,lightblue,lightcoral,lightcyan,lightgoldenrodyellow,lightgray,lightgreen,lightgrey,lightpink,lightsalmon,lightseagreen,lightskyblue,lightslategray,lightslategrey,lightsteelblue,lightyellow,lime,limegreen,linen,magenta,maroon,mediumaquamarine,mediumblue,mediumorchid,mediumpurple,mediumseagreen,mediumslateblue,mediumspringgreen,mediumturquoise,mediumvioletred,midnightblue,mintcream,mistyrose,moccasin,navajowhite,navy,oldlace,olive,olivedrab,orange,orangered,orchid,palegoldenrod,palegreen,paleturquoise,palevioletred,papayawhip,peachpuff,peru,pink,plum,powderblue,purple,rebeccapurple,red,rosybrown,royalblue,saddlebrown,salmon,sandybrown,seagreen,seashell,sienna,silver,skyblue,slateblue,slategray,slategrey,snow,springgreen,steelblue,tan,teal,thistle,tomato,turquoise,violet,wheat,white,whitesmoke,yellow".split(","));function Ua(e){return typeof e!="string"?!1:(e=e.toLowerCase().trim(),/^#[0-9a-f]{3,8}$/.test(e)||/^(?:url|var|rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch|color|color-mix)\(.*\)$/.test(e)||xD.has(e))}function mw(e){return typeof e=="number"&&(0<=e&&e<=1||isNaN(e))}function cn(e){return e==null||No(e)}function No(e){return/^\s*none\s*$/i.test(e)}function gw(e){return/^\s*round\s*$/i.test(e)}function qf(e,t){return gy(e,t,["middle","top-left","top","top-right","right","bottom-right","bottom","bottom-left","left"])}function Is(e="middle"){return qf(e,"frameAnchor")}function yw(e={},...t){let n=e;for(let i of t)for(let r in i)if(n[r]===void 0){let s=i[r];n===e?n={...n,[r]:s}:n[r]=s}return n}function _D(e){console.warn("named iterables are deprecated; please use an object instead");let t=new Set;return Object.fromEntries(Array.from(e,n=>{let{name:i}=n;if(i==null)throw new Error("missing name");let r=`${i}`;if(r==="__proto__")throw new Error(`illegal name: ${r}`);if(t.has(r))throw new Error(`duplicate name: ${r}`);return t.add(r),[i,n]}))}function _y(e){return Jn(e)?_D(e):e}function Yf(e){return e===!0?e="frame":e===!1?e=null:!rw(e)&&e!=null&&(e=Un(e,"clip",["frame","sphere"]),e==="sphere"&&(e={type:"Sphere"})),e}function xw(e){return e&&typeof e.getChild=="function"&&typeof e.toArray=="function"&&e.schema&&Array.isArray(e.schema.fields)}function _w(e){return e&&typeof e.toArray=="function"&&e.type}function vD(e){return e&&(e.typeId===8||e.typeId===10)&&e.unit===1}var Pi=Symbol("position"),si=Symbol("color"),Uo=Symbol("radius"),Fo=Symbol("length"),Oo=Symbol("opacity"),Fa=Symbol("symbol"),vw=Symbol("projection"),ye=new Map([["x",Pi],["y",Pi],["fx",Pi],["fy",Pi],["r",Uo],["color",si],["opacity",Oo],["symbol",Fa],["length",Fo],["projection",vw]]);function bw(e){return e===Pi||e===vw}function Mw(e){return e===Pi||e===Uo||e===Fo||e===Oo}var bD=Math.sqrt(3),MD=2/bD,SD={draw(e,t){let n=Math.sqrt(t/Math.PI),i=n*MD,r=i/2;e.moveTo(0,i),e.lineTo(n,r),e.lineTo(n,-r),e.lineTo(0,-i),e.lineTo(-n,-r),e.lineTo(-n,r),e.closePath()}},vy=new Map([["asterisk",z0],["circle",Ro],["cross",G0],["diamond",V0],["diamond2",H0],["hexagon",SD],["plus",W0],["square",$0],["square2",X0],["star",q0],["times",J0],["triangle",Y0],["triangle2",Z0],["wye",K0]]);function by(e){return e&&typeof e.draw=="function"}function Sw(e){return by(e)?!0:typeof e!="string"?!1:vy.has(e.toLowerCase())}function Oa(e){if(e==null||by(e))return e;let t=vy.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid symbol: ${e}`)}function ww(e){if(e==null||by(e))return[void 0,e];if(typeof e=="string"){let t=vy.get(`${e}`.toLowerCase());if(t)return[void 0,t]}return[e,void 0]}function Bo({filter:e,sort:t,reverse:n,transform:i,initializer:r,...s}={},o){if(i===void 0&&(e!=null&&(i=Tw(e)),t!=null&&!Cs(t)&&(i=My(i,wy(t))),n&&(i=My(i,Ew))),o!=null&&r!=null)throw new Error("transforms cannot be applied after initializers");return{...s,...(t===null||Cs(t))&&{sort:t},transform:My(i,o)}}function $r({filter:e,sort:t,reverse:n,initializer:i,...r}={},s){return i===void 0&&(e!=null&&(i=Tw(e)),t!=null&&!Cs(t)&&(i=Sy(i,wy(t))),n&&(i=Sy(i,Ew))),{...r,...(t===null||Cs(t))&&{sort:t},initializer:Sy(i,s)}}function My(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r){return{data:n,facets:i}=e.call(this,n,i,r),t.call(this,Wr(n),i,r)}}function Sy(e,t){return e==null?t===null?void 0:t:t==null?e===null?void 0:e:function(n,i,r,...s){let o,a,l,c,u,h;return{data:a=n,facets:l=i,channels:o}=e.call(this,n,i,r,...s),{data:u=a,facets:h=l,channels:c}=t.call(this,a,l,{...r,...o},...s),{data:u,facets:h,channels:{...o,...c}}}}function wD(e,t){return(e.initializer!=null?$r:Bo)(e,t)}function Tw(e){return(t,n)=>{let i=Te(t,e);return{data:t,facets:n.map(r=>r.filter(s=>i[s]))}}}function Ew(e,t){return{data:e,facets:t.map(n=>n.slice().reverse())}}function Aw(e,{sort:t,...n}={}){return{...(La(e)&&e.channel!==void 0?$r:wD)(n,wy(e)),sort:Cs(t)?t:null}}function wy(e){return(typeof e=="function"&&e.length!==1?TD:ED)(e)}function TD(e){return(t,n)=>{let i=zi(t)?(r,s)=>e(t[r],t[s]):(r,s)=>e(t.get(r),t.get(s));return{data:t,facets:n.map(r=>r.slice().sort(i))}}}function ED(e){let t,n;({channel:t,value:e,order:n}={...yr(e)});let i=t?.startsWith("-");if(i&&(t=t.slice(1)),n===void 0&&(n=i?Po:Mn),typeof n!="function")switch(`${n}`.toLowerCase()){case"ascending":n=Mn;break;case"descending":n=Po;break;default:throw new Error(`invalid order: ${n}`)}return(r,s,o)=>{let a;if(t===void 0)a=Te(r,e);else{if(o===void 0)throw new Error("channel sort requires an initializer");if(a=o[t],!a)return{};a=a.value}let l=(c,u)=>n(a[c],a[u]);return{data:r,facets:s.map(c=>c.slice().sort(l))}}}function Ac(e,...t){for(let{name:n}of e)if(t.includes(n))return!0;return!1}function Pw(e,t,n=Ty){let i=Object.entries(e);return t.title!=null&&e.title===void 0&&i.push(["title",ID]),t.href!=null&&e.href===void 0&&i.push(["href",Zf]),i.filter(([,r])=>r!==void 0).map(([r,s])=>s===null?AD(r):n(r,s,t))}function Ty(e,t,n,i=Ey){let r;Gi(t)&&"reduce"in t&&(r=t.scale,t=t.reduce);let s=i(e,t,n),[o,a]=Na(s.label),l;return{name:e,output:r===void 0?o:{value:o,scale:r},initialize(c){s.initialize(c),l=a([])},scope(c,u){s.scope(c,u)},reduce(c,u){l.push(s.reduce(c,u))}}}function AD(e){return{name:e,initialize(){},scope(){},reduce(){}}}function Ey(e,t,n,i=Cc){let r=lw(e,n),s=i(t,r),o,a;return{label:Hi(s===Ec?null:r,s.label),initialize(l){o=r===void 0?l:Te(l,r),s.scope==="data"&&(a=s.reduceIndex(Fn(l),o))},scope(l,c){s.scope===l&&(a=s.reduceIndex(c,o))},reduce(l,c){return s.scope==null?s.reduceIndex(l,o,c):s.reduceIndex(l,o,a,c)}}}function Ay(e,t){return t?lo(e,n=>t[n]):[[,e]]}function Cc(e,t,n=CD){if(e==null)return n(e);if(typeof e.reduceIndex=="function")return e;if(typeof e.reduce=="function"&&Gi(e))return RD(e);if(typeof e=="function")return PD(e);if(/^p\d{2}$/i.test(e))return Xr(iw(e));switch(`${e}`.toLowerCase()){case"first":return Zf;case"last":return LD;case"identity":return Cy;case"count":return Ec;case"distinct":return DD;case"sum":return t==null?Ec:ND;case"proportion":return Rw(t,"data");case"proportion-facet":return Rw(t,"facet");case"deviation":return Xr(rm);case"min":return Xr(gi);case"min-index":return Xr(zv);case"max":return Xr(Pn);case"max-index":return Xr(kv);case"mean":return Cw(Wv);case"median":return Cw(zl);case"variance":return Xr(im);case"mode":return Xr($v)}return n(e)}function CD(e){throw new Error(`invalid reduce: ${e}`)}function Iw(e,t){for(let n in t){let i=t[n];if(i!==void 0&&!e.some(r=>r.name===n))return i}}function Lw(e,t,n){if(t){let i=t.output.transform(),r=(s,o)=>Mn(i[s],i[o]);e.forEach(s=>s.sort(r))}n&&e.forEach(i=>i.reverse())}function RD(e){return console.warn("deprecated reduce interface; implement reduceIndex instead."),{...e,reduceIndex:e.reduce.bind(e)}}function PD(e){return{reduceIndex(t,n,i){return e(Hf(n,t),i)}}}function Xr(e){return{reduceIndex(t,n){return e(t,i=>n[i])}}}function Cw(e){return{reduceIndex(t,n){let i=e(t,r=>n[r]);return Ue(n)?new Date(i):i}}}var Cy={reduceIndex(e,t){return Hf(t,e)}},Zf={reduceIndex(e,t){return t[e[0]]}},ID={reduceIndex(e,t){let i=ra(Dr(e,s=>s.length,s=>t[s]),Sc),r=i.slice(-5).reverse();if(r.length<i.length){let s=i.slice(0,-4);r[4]=[`… ${s.length.toLocaleString("en-US")} more`,Fi(s,Sc)]}return r.map(([s,o])=>`${s} (${o.toLocaleString("en-US")})`).join(`
`)}},LD={reduceIndex(e,t){return t[e[e.length-1]]}},Ec={label:"Frequency",reduceIndex(e){return e.length}},DD={label:"Distinct",reduceIndex(e,t){let n=new nr;for(let i of e)n.add(t[i]);return n.size}},ND=Xr(Fi);function Rw(e,t){return e==null?{scope:t,label:"Frequency",reduceIndex:(n,i,r=1)=>n.length/r}:{scope:t,reduceIndex:(n,i,r=1)=>Fi(n,s=>i[s])/r}}var Dw={reduceIndex(e,t,{z:n}){return n}};function Ba(e,{scale:t,type:n,value:i,filter:r,hint:s,label:o=Hi(i)},a){return s===void 0&&typeof i?.transform=="function"&&(s=i.hint),Py(a,{scale:t,type:n,value:Te(e,i),label:o,filter:r,hint:s})}function Uw(e,t){return Object.fromEntries(Object.entries(e).map(([n,i])=>[n,Ba(t,i,n)]))}function Fw(e,t){let n=Object.fromEntries(Object.entries(e).map(([i,{scale:r,value:s}])=>{let o=r==null?null:t[r];return[i,o==null?s:ge(s,o)]}));return n.channels=e,n}function Py(e,t){let{scale:n,value:i}=t;if(n===!0||n==="auto")switch(e){case"fill":case"stroke":case"color":t.scale=n!==!0&&Xf(i,Ua)?null:"color",t.defaultScale="color";break;case"fillOpacity":case"strokeOpacity":case"opacity":t.scale=n!==!0&&Xf(i,mw)?null:"opacity",t.defaultScale="opacity";break;case"symbol":n!==!0&&Xf(i,Sw)?(t.scale=null,t.value=ge(i,Oa)):t.scale="symbol",t.defaultScale="symbol";break;default:t.scale=ye.has(e)?e:null;break}else if(n===!1)t.scale=null;else if(n!=null&&!ye.has(n))throw new Error(`unknown scale: ${n}`);return t}function Ow(e,t,n,i,r){let{order:s,reverse:o,reduce:a=!0,limit:l}=r;for(let c in r){if(!ye.has(c))continue;let{value:u,order:h=s,reverse:f=o,reduce:d=a,limit:p=l}=yr(r[c]),y=u?.startsWith("-");if(y&&(u=u.slice(1)),h=h===void 0?y!==(u==="width"||u==="height")?kw:Bw:OD(h),d==null||d===!1)continue;let g=c==="fx"||c==="fy"?FD(t,i[c]):UD(n,c);if(!g)throw new Error(`missing channel for scale: ${c}`);let m=g.value,[x=0,M=1/0]=Jn(p)?p:p<0?[p]:[0,p];if(u==null)g.domain=()=>{let v=Array.from(new nr(m));return f&&(v=v.reverse()),(x!==0||M!==1/0)&&(v=v.slice(x,M)),v};else{let v=u==="data"?e:u==="height"?Nw(n,"y1","y2"):u==="width"?Nw(n,"x1","x2"):Ry(n,u,u==="y"?"y2":u==="x"?"x2":void 0),S=Cc(d===!0?"max":d,v);g.domain=()=>{let b=Fv(Fn(m),_=>S.reduceIndex(_,v),_=>m[_]);return h&&b.sort(h),f&&b.reverse(),(x!==0||M!==1/0)&&(b=b.slice(x,M)),b.map(Vf)}}}}function UD(e,t){for(let n in e){let i=e[n];if(i.scale===t)return i}}function FD(e,t){let n=e.original;if(n===e)return t;let i=t.value,r=t.value=[];for(let s=0;s<n.length;++s){let o=i[n[s][0]];for(let a of e[s])r[a]=o}return t}function Nw(e,t,n){let i=Ry(e,t),r=Ry(e,n);return ge(r,(s,o)=>Math.abs(s-i[o]),Float64Array)}function Ry(e,t,n){let i=e[t];if(!i&&n!==void 0&&(i=e[n]),i)return i.value;throw new Error(`missing channel: ${t}`)}function OD(e){if(e==null||typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"ascending":return Bw;case"descending":return kw}throw new Error(`invalid order: ${e}`)}function Bw([e,t],[n,i]){return Mn(t,i)||Mn(e,n)}function kw([e,t],[n,i]){return Po(t,i)||Mn(e,n)}function Iy(e,t){let n=e[t];if(n){for(;n.source;)n=n.source;return n.source===null?null:n}}var Ww=new Map([["accent",WM],["category10",HM],["dark2",$M],["observable10",XM],["paired",qM],["pastel1",YM],["pastel2",ZM],["set1",KM],["set2",JM],["set3",jM],["tableau10",QM]]);function $w(e){return e!=null&&Ww.has(`${e}`.toLowerCase())}var zw=new Map([...Ww,["brbg",qr(Rg,Pg)],["prgn",qr(Ig,Lg)],["piyg",qr(Dg,Ng)],["puor",qr(Ug,Fg)],["rdbu",qr(Cf,mc)],["rdgy",qr(Og,Bg)],["rdylbu",qr(Rf,gc)],["rdylgn",qr(kg,zg)],["spectral",qr(Gg,Vg)],["burd",Gw(Cf,mc)],["buylrd",Gw(Rf,gc)],["blues",un(d0,p0)],["greens",un(m0,g0)],["greys",un(y0,x0)],["oranges",un(S0,w0)],["purples",un(_0,v0)],["reds",un(b0,M0)],["turbo",Yr(I0)],["viridis",Yr(L0)],["magma",Yr(D0)],["inferno",Yr(N0)],["plasma",Yr(yc)],["cividis",Yr(T0)],["cubehelix",Yr(E0)],["warm",Yr(A0)],["cool",Yr(C0)],["bugn",un(Hg,Wg)],["bupu",un($g,Xg)],["gnbu",un(qg,Yg)],["orrd",un(Zg,Kg)],["pubu",un(Qg,t0)],["pubugn",un(Jg,jg)],["purd",un(e0,n0)],["rdpu",un(i0,r0)],["ylgn",un(a0,l0)],["ylgnbu",un(s0,o0)],["ylorbr",un(c0,u0)],["ylorrd",un(f0,h0)],["rainbow",Vw(R0)],["sinebow",Vw(P0)]]);function un(e,t){return({length:n})=>n===1?[e[3][1]]:n===2?[e[3][1],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>9?In(t,n):e[n])}function qr(e,t){return({length:n})=>n===2?[e[3][0],e[3][2]]:(n=Math.max(3,Math.floor(n)),n>11?In(t,n):e[n])}function Gw(e,t){return({length:n})=>n===2?[e[3][2],e[3][0]]:(n=Math.max(3,Math.floor(n)),n>11?In(i=>t(1-i),n):e[n].slice().reverse())}function Yr(e){return({length:t})=>In(e,Math.max(2,Math.floor(t)))}function Vw(e){return({length:t})=>In(e,Math.floor(t)+1).slice(0,-1)}function Ly(e){let t=`${e}`.toLowerCase();if(!zw.has(t))throw new Error(`unknown ordinal scheme: ${t}`);return zw.get(t)}function Rc(e,t){let n=Ly(e),i=typeof n=="function"?n({length:t}):n;return i.length!==t?i.slice(0,t):i}function Xw(e,t="greys"){let n=new Set,[i,r]=Rc(t,2);for(let s of e)if(s!=null)if(s===!0)n.add(r);else if(s===!1)n.add(i);else return;return[...n]}var Hw=new Map([["brbg",Pg],["prgn",Lg],["piyg",Ng],["puor",Fg],["rdbu",mc],["rdgy",Bg],["rdylbu",gc],["rdylgn",zg],["spectral",Vg],["burd",e=>mc(1-e)],["buylrd",e=>gc(1-e)],["blues",p0],["greens",g0],["greys",x0],["purples",v0],["reds",M0],["oranges",w0],["turbo",I0],["viridis",L0],["magma",D0],["inferno",N0],["plasma",yc],["cividis",T0],["cubehelix",E0],["warm",A0],["cool",C0],["bugn",Wg],["bupu",Xg],["gnbu",Yg],["orrd",Kg],["pubugn",jg],["pubu",t0],["purd",n0],["rdpu",r0],["ylgnbu",o0],["ylgn",l0],["ylorbr",u0],["ylorrd",h0],["rainbow",R0],["sinebow",P0]]);function ka(e){let t=`${e}`.toLowerCase();if(!Hw.has(t))throw new Error(`unknown quantitative scheme: ${t}`);return Hw.get(t)}var BD=new Set(["brbg","prgn","piyg","puor","rdbu","rdgy","rdylbu","rdylgn","spectral","burd","buylrd"]);function qw(e){return e!=null&&BD.has(`${e}`.toLowerCase())}var Ny=e=>t=>e(1-t),Dy=[0,1],Yw=new Map([["number",Xe],["rgb",po],["hsl",Bb],["hcl",Gb],["lab",kb]]);function Uy(e){let t=`${e}`.toLowerCase();if(!Yw.has(t))throw new Error(`unknown interpolator: ${t}`);return Yw.get(t)}function Ga(e,t,n,{type:i,nice:r,clamp:s,zero:o,domain:a=iT(e,n),unknown:l,round:c,scheme:u,interval:h,range:f=ye.get(e)===Uo?VD(n,a):ye.get(e)===Fo?HD(n,a):ye.get(e)===Oo?Dy:void 0,interpolate:d=ye.get(e)===si?u==null&&f!==void 0?po:ka(u!==void 0?u:i==="cyclical"?"rainbow":"turbo"):c?Wl:Xe,reverse:p}){if(a=Zw(a),h=gr(h,i),(i==="cyclical"||i==="sequential")&&(i="linear"),typeof d!="function"&&(d=Uy(d)),p=!!p,f!==void 0){let y=a.length,g=(f=Zw(f)).length;if(y!==g){if(d.length===1)throw new Error("invalid piecewise interpolator");d=vs(d,f),f=void 0}}if(d.length===1?(p&&(d=Ny(d),p=!1),f===void 0&&(f=Float64Array.from(a,(y,g)=>g/(a.length-1)),f.length===2&&(f=Dy)),t.interpolate((f===Dy?ri:Pc)(d))):t.interpolate(d),o){let[y,g]=pn(a);(y>0||g<0)&&(a=As(a),(Hr(a)||1)===Math.sign(y)?a[0]=0:a[a.length-1]=0)}return p&&(a=ca(a)),t.domain(a).unknown(l),r&&(t.nice(kD(r,i)),a=t.domain()),f!==void 0&&t.range(f),s&&t.clamp(s),{type:i,domain:a,range:f,scale:t,interpolate:d,interval:h}}function Zw(e){return e=mr(e),e.length>=2?e:[e[0],e[0]]}function kD(e,t){return e===!0?void 0:typeof e=="number"?e:cw(e,t)}function Kw(e,t,n){return Ga(e,pc(),t,n)}function Jw(e,t,n){return Fy(e,t,{...n,exponent:.5})}function Fy(e,t,{exponent:n=1,...i}){return Ga(e,bg().exponent(n),t,{...i,type:"pow"})}function jw(e,t,{base:n=10,domain:i=WD(t),...r}){return Ga(e,_g().base(n),t,{...r,domain:i})}function Qw(e,t,{constant:n=1,...i}){return Ga(e,vg().constant(n),t,i)}function tT(e,t,{range:n,quantiles:i=n===void 0?5:(n=[...n]).length,n:r=i,scheme:s="rdylbu",domain:o=$D(t),unknown:a,interpolate:l,reverse:c}){return n===void 0&&(n=l!==void 0?In(l,r):ye.get(e)===si?Rc(s,r):void 0),o.length>0&&(o=Mg(o,n===void 0?{length:r}:n).quantiles()),Kf(e,t,{domain:o,range:n,reverse:c,unknown:a})}function eT(e,t,{range:n,n:i=n===void 0?5:(n=[...n]).length,scheme:r="rdylbu",domain:s=iT(e,t),unknown:o,interpolate:a,reverse:l}){let[c,u]=pn(s),h;return n===void 0?(h=ys(c,u,i),h[0]<=c&&h.splice(0,1),h[h.length-1]>=u&&h.pop(),i=h.length+1,n=a!==void 0?In(a,i):ye.get(e)===si?Rc(r,i):void 0):(h=In(Xe(c,u),i+1).slice(1,-1),c instanceof Date&&(h=h.map(f=>new Date(f)))),Hr(mr(s))<0&&h.reverse(),Kf(e,t,{domain:h,range:n,reverse:l,unknown:o})}function Kf(e,t,{domain:n=[0],unknown:i,scheme:r="rdylbu",interpolate:s,range:o=s!==void 0?In(s,n.length+1):ye.get(e)===si?Rc(r,n.length+1):void 0,reverse:a}){n=mr(n);let l=Hr(n);if(!isNaN(l)&&!zD(n,l))throw new Error(`the ${e} scale has a non-monotonic domain`);return a&&(o=ca(o)),{type:"threshold",scale:Sg(l<0?ca(n):n,o===void 0?[]:o).unknown(i),domain:n,range:o}}function zD(e,t){for(let n=1,i=e.length,r=e[0];n<i;++n){let s=Lr(r,r=e[n]);if(s!==0&&s!==t)return!1}return!0}function nT(e){return{type:"identity",scale:Mw(ye.get(e))?xg():t=>t}}function za(e,t=ny){return e.length?[gi(e,({value:n})=>n===void 0?n:gi(n,t)),Pn(e,({value:n})=>n===void 0?n:Pn(n,t))]:[0,1]}function iT(e,t){let n=ye.get(e);return(n===Uo||n===Oo||n===Fo?GD:za)(t)}function GD(e){return[0,e.length?Pn(e,({value:t})=>t===void 0?t:Pn(t,ny)):1]}function VD(e,t){let n=e.find(({radius:o})=>o!==void 0);if(n!==void 0)return[0,n.radius];let i=Ir(e,.5,({value:o})=>o===void 0?NaN:Ir(o,.25,Io)),r=t.map(o=>3*Math.sqrt(o/i)),s=30/Pn(r);return s<1?r.map(o=>o*s):r}function HD(e,t){let n=zl(e,({value:s})=>s===void 0?NaN:zl(s,Math.abs)),i=t.map(s=>12*s/n),r=60/Pn(i);return r<1?i.map(s=>s*r):i}function WD(e){for(let{value:t}of e)if(t!==void 0)for(let n of t){if(n>0)return za(e,Io);if(n<0)return za(e,Ea)}return[1,10]}function $D(e){let t=[];for(let{value:n}of e)if(n!==void 0)for(let i of n)t.push(i);return t}function Pc(e){return(t,n)=>i=>e(t+i*(n-t))}var Oy=0,By;function rT(){let e=Oy;return Oy=0,By=void 0,e}function jn(e){e!==By&&(By=e,console.warn(e),++Oy)}function Jf(e,t,n,i,{type:r,nice:s,clamp:o,domain:a=za(i),unknown:l,pivot:c=0,scheme:u,range:h,symmetric:f=!0,interpolate:d=ye.get(e)===si?u==null&&h!==void 0?po:ka(u!==void 0?u:"rdbu"):Xe,reverse:p}){c=+c,a=mr(a);let[y,g]=a;if(a.length>2&&jn(`Warning: the diverging ${e} scale domain contains extra elements.`),Lr(y,g)<0&&([y,g]=[g,y],p=!p),y=Math.min(y,c),g=Math.max(g,c),typeof d!="function"&&(d=Uy(d)),h!==void 0&&(d=d.length===1?Pc(d)(...h):vs(d,h)),p&&(d=Ny(d)),f){let m=n.apply(c),x=m-n.apply(y),M=n.apply(g)-m;x<M?y=n.invert(m-M):x>M&&(g=n.invert(m+x))}return t.domain([y,c,g]).unknown(l).interpolator(d),o&&t.clamp(o),s&&t.nice(s),{type:r,domain:[y,g],pivot:c,interpolate:d,scale:t}}function sT(e,t,n){return Jf(e,Tg(),XD,t,n)}function oT(e,t,n){return ky(e,t,{...n,exponent:.5})}function ky(e,t,{exponent:n=1,...i}){return Jf(e,Cg().exponent(n=+n),ZD(n),t,{...i,type:"diverging-pow"})}function aT(e,t,{base:n=10,pivot:i=1,domain:r=za(t,i<0?Ea:Io),...s}){return Jf(e,Eg().base(n=+n),qD,t,{domain:r,pivot:i,...s})}function lT(e,t,{constant:n=1,...i}){return Jf(e,Ag().constant(n=+n),KD(n),t,i)}var XD={apply(e){return e},invert(e){return e}},qD={apply:Math.log,invert:Math.exp},YD={apply(e){return Math.sign(e)*Math.sqrt(Math.abs(e))},invert(e){return Math.sign(e)*(e*e)}};function ZD(e){return e===.5?YD:{apply(t){return Math.sign(t)*Math.pow(Math.abs(t),e)},invert(t){return Math.sign(t)*Math.pow(Math.abs(t),1/e)}}}function KD(e){return{apply(t){return Math.sign(t)*Math.log1p(Math.abs(t/e))},invert(t){return Math.sign(t)*Math.expm1(Math.abs(t))*e}}}function cT(e,t,n,i){return Ga(e,t,n,i)}function uT(e,t,n){return cT(e,GM(),t,n)}function fT(e,t,n){return cT(e,VM(),t,n)}var Va=Symbol("ordinal");function dT(e,t,n,{type:i,interval:r,domain:s,range:o,reverse:a,hint:l}){return r=gr(r,i),s===void 0&&(s=xT(n,r,e)),(i==="categorical"||i===Va)&&(i="ordinal"),a&&(s=ca(s)),s=t.domain(s).domain(),o!==void 0&&(typeof o=="function"&&(o=o(s)),t.range(o)),{type:i,domain:s,range:o,scale:t,hint:l,interval:r}}function pT(e,t,{type:n,interval:i,domain:r,range:s,scheme:o,unknown:a,...l}){i=gr(i,n),r===void 0&&(r=xT(t,i,e));let c;if(ye.get(e)===Fa)c=JD(t),s=s===void 0?jD(c):ge(s,Oa);else if(ye.get(e)===si&&(s===void 0&&(n==="ordinal"||n===Va)&&(s=Xw(r,o),s!==void 0&&(o=void 0)),o===void 0&&s===void 0&&(o=n==="ordinal"?"turbo":"observable10"),o!==void 0))if(s!==void 0){let u=ka(o),h=s[0],f=s[1]-s[0];s=({length:d})=>In(p=>u(h+f*p),d)}else s=Ly(o);if(a===vf)throw new Error(`implicit unknown on ${e} scale is not supported`);return dT(e,Mf().unknown(a),t,{...l,type:n,domain:r,range:s,hint:c})}function mT(e,t,{align:n=.5,padding:i=.5,...r}){return yT(UM().align(n).padding(i),t,r,e)}function gT(e,t,{align:n=.5,padding:i=.1,paddingInner:r=i,paddingOuter:s=e==="fx"||e==="fy"?0:i,...o}){return yT(Ta().align(n).paddingInner(r).paddingOuter(s),t,o,e)}function yT(e,t,n,i){let{round:r}=n;return r!==void 0&&e.round(r=!!r),e=dT(i,e,t,n),e.round=r,e}function xT(e,t,n){let i=new nr;for(let{value:r,domain:s}of e){if(s!==void 0)return s();if(r!==void 0)for(let o of r)i.add(o)}if(t!==void 0){let[r,s]=pn(i).map(t.floor,t);return t.range(r,t.offset(s))}if(i.size>1e4&&ye.get(n)===Pi)throw new Error(`implicit ordinal domain of ${n} scale has more than 10,000 values`);return ra(i,Mn)}function hT(e,t){let n;for(let{hint:i}of e){let r=i?.[t];if(r!==void 0){if(n===void 0)n=r;else if(n!==r)return}}return n}function JD(e){return{fill:hT(e,"fill"),stroke:hT(e,"stroke")}}function jD(e){return cn(e.fill)?xS:yS}function Ic(e,{label:t,inset:n=0,insetTop:i=n,insetRight:r=n,insetBottom:s=n,insetLeft:o=n,round:a,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,facet:{label:p=t}={},...y}={}){let g={};for(let[m,x]of e){let M=y[m],v=eN(m,x,{round:ye.get(m)===Pi?a:void 0,nice:l,clamp:c,zero:u,align:h,padding:f,projection:d,...M});if(v){let{label:S=m==="fx"||m==="fy"?p:t,percent:b,transform:_,inset:w,insetTop:R=w!==void 0?w:m==="y"?i:0,insetRight:A=w!==void 0?w:m==="x"?r:0,insetBottom:C=w!==void 0?w:m==="y"?s:0,insetLeft:P=w!==void 0?w:m==="x"?o:0}=M||{};if(_==null)_=void 0;else if(typeof _!="function")throw new Error("invalid scale transform; not a function");v.percent=!!b,v.label=S===void 0?QD(x,v):S,v.transform=_,m==="x"||m==="fx"?(v.insetLeft=+P,v.insetRight=+A):(m==="y"||m==="fy")&&(v.insetTop=+R,v.insetBottom=+C),g[m]=v}}return g}function Gy(e){let t={},n={scales:t};for(let[i,r]of Object.entries(e)){let{scale:s,type:o,interval:a,label:l}=r;t[i]=sN(r),n[i]=s,s.type=o,a!=null&&(s.interval=a),l!=null&&(s.label=l)}return n}function ST(e,t){let{x:n,y:i,fx:r,fy:s}=e,o=r||s?Qf(t):t;r&&_T(r,o),s&&vT(s,o);let a=r||s?Vy(e,t):t;n&&_T(n,a),i&&vT(i,a)}function QD(e=[],t){let n;for(let{label:i}of e)if(i!==void 0){if(n===void 0)n=i;else if(n!==i)return}if(n!==void 0)return!xr(t)&&t.percent&&(n=`${n} (%)`),{inferred:!0,toString:()=>n}}function wT(e){return Math.sign(Hr(e.domain()))*Math.sign(Hr(e.range()))}function Qf(e){let{marginTop:t,marginRight:n,marginBottom:i,marginLeft:r,width:s,height:o,facet:{marginTop:a,marginRight:l,marginBottom:c,marginLeft:u}}=e;return{marginTop:Math.max(t,a),marginRight:Math.max(n,l),marginBottom:Math.max(i,c),marginLeft:Math.max(r,u),width:s,height:o}}function Vy({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Qf(n);return{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:e?e.scale.bandwidth()+o+r:a,height:t?t.scale.bandwidth()+i+s:l,facet:{width:a,height:l}}}function _T(e,t){if(e.range===void 0){let{insetLeft:n,insetRight:i}=e,{width:r,marginLeft:s=0,marginRight:o=0}=t,a=s+n,l=r-o-i;e.range=[a,Math.max(a,l)],xr(e)||(e.range=ET(e)),e.scale.range(e.range)}TT(e)}function vT(e,t){if(e.range===void 0){let{insetTop:n,insetBottom:i}=e,{height:r,marginTop:s=0,marginBottom:o=0}=t,a=s+n,l=r-o-i;e.range=[Math.max(a,l),a],xr(e)?e.range.reverse():e.range=ET(e),e.scale.range(e.range)}TT(e)}function TT(e){e.round===void 0&&iN(e)&&tN(e)<=30&&e.scale.round(!0)}function tN({scale:e}){let t=e.domain().length,[n,i]=e.range(),r=e.paddingInner?e.paddingInner():1,s=e.paddingOuter?e.paddingOuter():e.padding(),o=t-r,a=Math.abs(i-n)/Math.max(1,o+s*2);return(a-Math.floor(a))*o}function ET(e){let t=e.scale.domain().length+Hy(e);if(!(t>2))return e.range;let[n,i]=e.range;return Array.from({length:t},(r,s)=>n+s/(t-1)*(i-n))}function eN(e,t=[],n={}){let i=nN(e,t,n);if(n.type===void 0&&n.domain===void 0&&n.range===void 0&&n.interval==null&&e!=="fx"&&e!=="fy"&&xr({type:i})){let r=t.map(({value:s})=>s).filter(s=>s!==void 0);r.some(Ue)?jn(`Warning: some data associated with the ${e} scale are dates. Dates are typically associated with a "utc" or "time" scale rather than a "${Ha(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., d3.utcDay), or you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`):r.some(hw)?jn(`Warning: some data associated with the ${e} scale are strings that appear to be dates (e.g., YYYY-MM-DD). If these strings represent dates, you should parse them to Date objects. Dates are typically associated with a "utc" or "time" scale rather than a "${Ha(i)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`):r.some(dw)&&jn(`Warning: some data associated with the ${e} scale are strings that appear to be numbers. If these strings represent numbers, you should parse or coerce them to numbers. Numbers are typically associated with a "linear" scale rather than a "${Ha(i)}" scale. If you want to treat this data as ordinal, you can specify the interval of the ${e} scale (e.g., 1 for integers), or you can suppress this warning by setting the type of the ${e} scale to "${Ha(i)}".`)}switch(n.type=i,i){case"diverging":case"diverging-sqrt":case"diverging-pow":case"diverging-log":case"diverging-symlog":case"cyclical":case"sequential":case"linear":case"sqrt":case"threshold":case"quantile":case"pow":case"log":case"symlog":n=jf(t,n,Nn);break;case"identity":switch(ye.get(e)){case Pi:n=jf(t,n,Nn);break;case Fa:n=jf(t,n,rN);break}break;case"utc":case"time":n=jf(t,n,py);break}switch(i){case"diverging":return sT(e,t,n);case"diverging-sqrt":return oT(e,t,n);case"diverging-pow":return ky(e,t,n);case"diverging-log":return aT(e,t,n);case"diverging-symlog":return lT(e,t,n);case"categorical":case"ordinal":case Va:return pT(e,t,n);case"cyclical":case"sequential":case"linear":return Kw(e,t,n);case"sqrt":return Jw(e,t,n);case"threshold":return Kf(e,t,n);case"quantile":return tT(e,t,n);case"quantize":return eT(e,t,n);case"pow":return Fy(e,t,n);case"log":return jw(e,t,n);case"symlog":return Qw(e,t,n);case"utc":return fT(e,t,n);case"time":return uT(e,t,n);case"point":return mT(e,t,n);case"band":return gT(e,t,n);case"identity":return nT(e);case void 0:return;default:throw new Error(`unknown scale type: ${i}`)}}function Ha(e){return typeof e=="symbol"?e.description:e}function bT(e){return typeof e=="string"?`${e}`.toLowerCase():e}var MT={toString:()=>"projection"};function nN(e,t,{type:n,domain:i,range:r,scheme:s,pivot:o,projection:a}){if(n=bT(n),e==="fx"||e==="fy")return"band";(e==="x"||e==="y")&&a!=null&&(n=MT);for(let u of t){let h=bT(u.type);if(h!==void 0){if(n===void 0)n=h;else if(n!==h)throw new Error(`scale incompatible with channel: ${n} !== ${h}`)}}if(n===MT)return;if(n!==void 0)return n;if(i===void 0&&!t.some(({value:u})=>u!==void 0))return;let l=ye.get(e);if(l===Uo)return"sqrt";if(l===Oo||l===Fo)return"linear";if(l===Fa)return"ordinal";let c=(i??r)?.length;if(c<2||c>2)return zy(l);if(i!==void 0){if(xy(i))return zy(l);if(Ue(i))return"utc"}else{let u=t.map(({value:h})=>h).filter(h=>h!==void 0);if(u.some(xy))return zy(l);if(u.some(Ue))return"utc"}if(l===si){if(o!=null||qw(s))return"diverging";if($w(s))return"categorical"}return"linear"}function zy(e){switch(e){case Pi:return"point";case si:return Va;default:return"ordinal"}}function xr({type:e}){return e==="ordinal"||e==="point"||e==="band"||e===Va}function Hy({type:e}){return e==="threshold"}function iN({type:e}){return e==="point"||e==="band"}function Ls(e){if(e===void 0)return!0;let t=e.domain(),n=e(t[0]);for(let i=1,r=t.length;i<r;++i)if(e(t[i])-n)return!1;return!0}function jf(e,{domain:t,...n},i){for(let r of e)r.value!==void 0&&(t===void 0&&(t=r.value?.domain),r.value=i(r.value));return{domain:t===void 0?t:i(t),...n}}function rN(e){return ge(e,Oa)}function AT(e){return t=>{if(!ye.has(t=`${t}`))throw new Error(`unknown scale: ${t}`);return e[t]}}function sN({scale:e,type:t,domain:n,range:i,interpolate:r,interval:s,transform:o,percent:a,pivot:l}){if(t==="identity")return{type:"identity",apply:u=>u,invert:u=>u};let c=e.unknown?e.unknown():void 0;return{type:t,domain:As(n),...i!==void 0&&{range:As(i)},...o!==void 0&&{transform:o},...a&&{percent:a},...c!==void 0&&{unknown:c},...s!==void 0&&{interval:s},...r!==void 0&&{interpolate:r},...e.clamp&&{clamp:e.clamp()},...l!==void 0&&{pivot:l,symmetric:!1},...e.base&&{base:e.base()},...e.exponent&&{exponent:e.exponent()},...e.constant&&{constant:e.constant()},...e.align&&{align:e.align(),round:e.round()},...e.padding&&(e.paddingInner?{paddingInner:e.paddingInner(),paddingOuter:e.paddingOuter()}:{padding:e.padding()}),...e.bandwidth&&{bandwidth:e.bandwidth(),step:e.step()},apply:u=>e(u),...e.invert&&{invert:u=>e.invert(u)}}}function RT(e,t){let{fx:n,fy:i}=Ic(e,t),r=n?.scale.domain(),s=i?.scale.domain();return r&&s?Iv(r,s).map(([o,a],l)=>({x:o,y:a,i:l})):r?r.map((o,a)=>({x:o,i:a})):s?s.map((o,a)=>({y:o,i:a})):void 0}function PT(e,{x:t,y:n}){return t&&=Yy(t),n&&=Yy(n),e.filter(t&&n?i=>t.has(i.x)&&n.has(i.y):t?i=>t.has(i.x):i=>n.has(i.y)).sort(t&&n?(i,r)=>t.get(i.x)-t.get(r.x)||n.get(i.y)-n.get(r.y):t?(i,r)=>t.get(i.x)-t.get(r.x):(i,r)=>n.get(i.y)-n.get(r.y))}function eh(e,{fx:t,fy:n}){let i=Fn(e),r=t?.value,s=n?.value;return t&&n?Dr(i,o=>(o.fx=r[o[0]],o.fy=s[o[0]],o),o=>r[o],o=>s[o]):t?Dr(i,o=>(o.fx=r[o[0]],o),o=>r[o]):Dr(i,o=>(o.fy=s[o[0]],o),o=>s[o])}function IT(e,t,{marginTop:n,marginLeft:i}){let r=e?({x:o})=>e(o)-i:()=>0,s=t?({y:o})=>t(o)-n:()=>0;return function(o){this.tagName==="svg"?(this.setAttribute("x",r(o)),this.setAttribute("y",s(o))):this.setAttribute("transform",`translate(${r(o)},${s(o)})`)}}function LT(e){let t=[],n=new Uint32Array(Fi(e,i=>i.length));for(let i of e){let r=0;for(let s of e)i!==s&&(n.set(s,r),r+=s.length);t.push(n.slice(0,r))}return t}var oN=new Map([["top",Wy],["right",qy],["bottom",$y],["left",Xy],["top-left",th(Wy,Xy)],["top-right",th(Wy,qy)],["bottom-left",th($y,Xy)],["bottom-right",th($y,qy)],["top-empty",lN],["right-empty",fN],["bottom-empty",cN],["left-empty",uN],["empty",hN]]);function DT(e){if(e==null)return null;let t=oN.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid facet anchor: ${e}`)}var CT=new WeakMap;function Yy(e){let t=CT.get(e);return t||CT.set(e,t=new mi(ge(e,(n,i)=>[n,i]))),t}function Ds(e,t){return Yy(e).get(t)}function aN(e,t,n){return t=Ci(t),n=Ci(n),e.find(i=>Object.is(Ci(i.x),t)&&Object.is(Ci(i.y),n))}function nh(e,t,n){return aN(e,t,n)?.empty}function Wy(e,{y:t},{y:n}){return t?Ds(t,n)===0:!0}function $y(e,{y:t},{y:n}){return t?Ds(t,n)===t.length-1:!0}function Xy(e,{x:t},{x:n}){return t?Ds(t,n)===0:!0}function qy(e,{x:t},{x:n}){return t?Ds(t,n)===t.length-1:!0}function lN(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ds(t,i);if(s>0)return nh(e,n,t[s-1])}function cN(e,{y:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ds(t,i);if(s<t.length-1)return nh(e,n,t[s+1])}function uN(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ds(t,n);if(s>0)return nh(e,t[s-1],i)}function fN(e,{x:t},{x:n,y:i,empty:r}){if(r)return!1;if(!t)return;let s=Ds(t,n);if(s<t.length-1)return nh(e,t[s+1],i)}function hN(e,t,{empty:n}){return n}function th(e,t){return function(){return e.apply(null,arguments)&&t.apply(null,arguments)}}function ih(e,{channels:{fx:t,fy:n},groups:i}){return t&&n?e.map(({x:r,y:s})=>i.get(r)?.get(s)??[]):t?e.map(({x:r})=>i.get(r)??[]):e.map(({y:r})=>i.get(r)??[])}var NT=Math.PI,Zr=2*NT,Zy=.618;function UT({projection:e,inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={},o){if(e==null)return;if(typeof e.stream=="function")return e;let a,l,c="frame";if(Gi(e)){let S;if({type:e,domain:l,inset:S,insetTop:n=S!==void 0?S:n,insetRight:i=S!==void 0?S:i,insetBottom:r=S!==void 0?S:r,insetLeft:s=S!==void 0?S:s,clip:c=c,...a}=e,e==null)return}typeof e!="function"&&({type:e}=Ky(e));let{width:u,height:h,marginLeft:f,marginRight:d,marginTop:p,marginBottom:y}=o,g=u-f-d-s-i,m=h-p-y-n-r;if(e=e?.({width:g,height:m,clip:c,...a}),e==null)return;c=dN(c,f,p,u-d,h-y);let x=f+s,M=p+n,v;if(l!=null){let[[S,b],[_,w]]=rc(e).bounds(l),R=Math.min(g/(_-S),m/(w-b));R>0?(x-=(R*(S+_)-g)/2,M-=(R*(b+w)-m)/2,v=sc({point(A,C){this.stream.point(A*R+x,C*R+M)}})):jn("Warning: the projection could not be fit to the specified domain; using the default scale.")}return v??=x===0&&M===0?FT():sc({point(S,b){this.stream.point(S+x,b+M)}}),{stream:S=>e.stream(v.stream(c(S)))}}function Ky(e){switch(`${e}`.toLowerCase()){case"albers-usa":return Wi(k1,.7463,.4673);case"albers":return rh(eg,.7463,.4673);case"azimuthal-equal-area":return Wi(V1,4,4);case"azimuthal-equidistant":return Wi(W1,Zr,Zr);case"conic-conformal":return rh(q1,Zr,Zr);case"conic-equal-area":return rh(ic,6.1702,2.9781);case"conic-equidistant":return rh(Z1,7.312,3.6282);case"equal-earth":return Wi(J1,5.4133,2.6347);case"equirectangular":return Wi(Y1,Zr,NT);case"gnomonic":return Wi(Q1,3.4641,3.4641);case"identity":return{type:FT};case"reflect-y":return{type:pN};case"mercator":return Wi($1,Zr,Zr);case"orthographic":return Wi(eM,2,2);case"stereographic":return Wi(iM,2,2);case"transverse-mercator":return Wi(sM,Zr,Zr);default:throw new Error(`unknown projection type: ${e}`)}}function dN(e,t,n,i,r){if(e===!1||e==null||typeof e=="number")return s=>s;if(e===!0&&(e="frame"),`${e}`.toLowerCase()==="frame")return Jm(t,n,i,r);throw new Error(`unknown projection clip type: ${e}`)}function Wi(e,t,n){return{type:({width:i,height:r,rotate:s,precision:o=.15,clip:a})=>{let l=e();return o!=null&&l.precision?.(o),s!=null&&l.rotate?.(s),typeof a=="number"&&l.clipAngle?.(a),i!=null&&(l.scale(Math.min(i/t,r/n)),l.translate([i/2,r/2])),l},aspectRatio:n/t}}function rh(e,t,n){let{type:i,aspectRatio:r}=Wi(e,t,n);return{type:s=>{let{parallels:o,domain:a,width:l,height:c}=s,u=i(s);return o!=null&&(u.parallels(o),a===void 0&&l!=null&&u.fitSize([l,c],{type:"Sphere"})),u},aspectRatio:r}}var FT=ri({stream:e=>e}),pN=ri(sc({point(e,t){this.stream.point(e,-t)}}));function OT(e,t,n,i){let r=n[e],s=n[t],o=r.length,a=n[e]=new Float64Array(o).fill(NaN),l=n[t]=new Float64Array(o).fill(NaN),c,u=i.stream({point(h,f){a[c]=h,l[c]=f}});for(c=0;c<o;++c)u.point(r[c],s[c])}function BT({projection:e}={}){return e==null?!1:typeof e.stream=="function"?!0:(Gi(e)&&(e=e.type),e!=null)}function kT(e){if(typeof e?.stream=="function")return Zy;if(Gi(e)){let t,n;if({domain:t,type:e,...n}=e,t!=null&&e!=null){let i=typeof e=="string"?Ky(e).type:e,[[r,s],[o,a]]=rc(i({...n,width:100,height:100})).bounds(t),l=(a-s)/(o-r);return l&&isFinite(l)?l<.2?.2:l>5?5:l:Zy}}if(e!=null){if(typeof e!="function"){let{aspectRatio:t}=Ky(e);if(t)return t}return Zy}}function zT(e){let t=[],n=[],i={scale:"x",value:t},r={scale:"y",value:n},s={point(o,a){t.push(o),n.push(a)},lineStart(){},lineEnd(){},polygonStart(){},polygonEnd(){},sphere(){}};for(let o of e.value)bs(o,s);return[i,r]}function GT({x:e,y:t}){if(e||t)return e??=n=>n,t??=n=>n,sc({point(n,i){this.stream.point(e(n),t(i))}})}function Wa(e={}){let{document:t=typeof window<"u"?window.document:void 0,clip:n}=e;return{document:t,clip:Yf(n)}}function se(e,{document:t}){return Oi(ua(e).call(t.documentElement))}var sh=Symbol("unset");function oh(e){return(e.length===1?mN:gN)(e)}function mN(e){let t,n=sh;return i=>(Object.is(n,i)||(n=i,t=e(i)),t)}function gN(e){let t,n;return(...i)=>((n?.length!==i.length||n.some((r,s)=>!Object.is(r,i[s])))&&(n=i,t=e(...i)),t)}var yN=oh(e=>new Intl.NumberFormat(e)),L7=oh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{month:t}})),D7=oh((e,t)=>new Intl.DateTimeFormat(e,{timeZone:"UTC",...t&&{weekday:t}}));function xN(e="en-US"){let t=yN(e);return n=>n!=null&&!isNaN(n)?t.format(n):void 0}function _N(e){return kf(e,"Invalid Date")}function vN(e="en-US"){let t=xN(e);return n=>(n instanceof Date?_N:typeof n=="number"?t:Fe)(n)}var _r=vN();var mn=(typeof window<"u"?window.devicePixelRatio>1:typeof it>"u")?0:.5,bN=0;function HT(){return`plot-clip-${++bN}`}function WT(e,{title:t,href:n,ariaLabel:i,ariaDescription:r,ariaHidden:s,target:o,fill:a,fillOpacity:l,stroke:c,strokeWidth:u,strokeOpacity:h,strokeLinejoin:f,strokeLinecap:d,strokeMiterlimit:p,strokeDasharray:y,strokeDashoffset:g,opacity:m,mixBlendMode:x,imageFilter:M,paintOrder:v,pointerEvents:S,shapeRendering:b,channels:_},{ariaLabel:w,fill:R="currentColor",fillOpacity:A,stroke:C="none",strokeOpacity:P,strokeWidth:O,strokeLinecap:I,strokeLinejoin:D,strokeMiterlimit:k,paintOrder:U}){R===null&&(a=null,l=null),C===null&&(c=null,h=null),cn(R)?!cn(C)&&(!cn(a)||_?.fill)&&(C="none"):cn(C)&&(!cn(c)||_?.stroke)&&(R="none");let[Z,F]=Kn(a,R),[V,q]=Le(l,A),[st,lt]=Kn(c,C),[$,at]=Le(h,P),[ft,ot]=Le(m);No(lt)||(u===void 0&&(u=O),d===void 0&&(d=I),f===void 0&&(f=D),p===void 0&&!gw(f)&&(p=k),!No(F)&&v===void 0&&(v=U));let[rt,K]=Le(u);return R!==null&&(e.fill=De(F,"currentColor"),e.fillOpacity=Lc(q,1)),C!==null&&(e.stroke=De(lt,"none"),e.strokeWidth=Lc(K,1),e.strokeOpacity=Lc(at,1),e.strokeLinejoin=De(f,"miter"),e.strokeLinecap=De(d,"butt"),e.strokeMiterlimit=Lc(p,4),e.strokeDasharray=De(y,"none"),e.strokeDashoffset=De(g,"0")),e.target=Fe(o),e.ariaLabel=Fe(w),e.ariaDescription=Fe(r),e.ariaHidden=Fe(s),e.opacity=Lc(ot,1),e.mixBlendMode=De(x,"normal"),e.imageFilter=De(M,"none"),e.paintOrder=De(v,"normal"),e.pointerEvents=De(S,"auto"),e.shapeRendering=De(b,"auto"),{title:{value:t,optional:!0,filter:null},href:{value:n,optional:!0,filter:null},ariaLabel:{value:i,optional:!0,filter:null},fill:{value:Z,scale:"auto",optional:!0},fillOpacity:{value:V,scale:"auto",optional:!0},stroke:{value:st,scale:"auto",optional:!0},strokeOpacity:{value:$,scale:"auto",optional:!0},strokeWidth:{value:rt,optional:!0},opacity:{value:ft,scale:"auto",optional:!0}}}function MN(e,t){t&&e.filter(n=>_c(t[n])).append("title").call(wN,t)}function SN(e,t){t&&e.filter(([n])=>_c(t[n])).append("title").call(TN,t)}function wN(e,t){t&&e.text(n=>_r(t[n]))}function TN(e,t){t&&e.text(([n])=>_r(t[n]))}function Sn(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",f=>i[f]),s&&Wt(e,"fill",f=>s[f]),o&&Wt(e,"fill-opacity",f=>o[f]),a&&Wt(e,"stroke",f=>a[f]),l&&Wt(e,"stroke-opacity",f=>l[f]),c&&Wt(e,"stroke-width",f=>c[f]),u&&Wt(e,"opacity",f=>u[f]),h&&$T(e,f=>h[f],t),n||MN(e,r)}function ah(e,{target:t,tip:n},{ariaLabel:i,title:r,fill:s,fillOpacity:o,stroke:a,strokeOpacity:l,strokeWidth:c,opacity:u,href:h}){i&&Wt(e,"aria-label",([f])=>i[f]),s&&Wt(e,"fill",([f])=>s[f]),o&&Wt(e,"fill-opacity",([f])=>o[f]),a&&Wt(e,"stroke",([f])=>a[f]),l&&Wt(e,"stroke-opacity",([f])=>l[f]),c&&Wt(e,"stroke-width",([f])=>c[f]),u&&Wt(e,"opacity",([f])=>u[f]),h&&$T(e,([f])=>h[f],t),n||SN(e,r)}function EN({ariaLabel:e,title:t,fill:n,fillOpacity:i,stroke:r,strokeOpacity:s,strokeWidth:o,opacity:a,href:l},{tip:c}){return[e,c?void 0:t,n,i,r,s,o,a,l].filter(u=>u!==void 0)}function AN(e,t,n){let i=lo(e,r=>t[r]);return n===void 0&&i.size>1+e.length>>1&&jn("Warning: the implicit z channel has high cardinality. This may occur when the fill or stroke channel is associated with quantitative data rather than ordinal or categorical data. You can suppress this warning by setting the z option explicitly; if this data represents a single series, set z to null."),i.values()}function*lh(e,t,n,i){let{z:r}=n,{z:s}=i,o=EN(i,n),a=[...t,...o];for(let l of s?AN(e,s,r):[e]){let c,u;t:for(let h of l){for(let f of a)if(!Ai(f[h])){u&&u.push(-1);continue t}if(c===void 0){u&&(yield u),c=o.map(f=>Ci(f[h])),u=[h];continue}u.push(h);for(let f=0;f<o.length;++f)if(Ci(o[f][h])!==c[f]){yield u,c=o.map(p=>Ci(p[h])),u=[h];continue t}}u&&(yield u)}}function CN(e,t,n,i){let r,{clip:s=i.clip}=t;s==="frame"?(e=se("svg:g",i).each(function(){this.appendChild(e.node()),e.node=()=>this}),r=PN(i,n)):s&&(r=LN(s,i)),Wt(e,"aria-label",t.ariaLabel),Wt(e,"aria-description",t.ariaDescription),Wt(e,"aria-hidden",t.ariaHidden),Wt(e,"clip-path",r)}function RN(e){let t=new WeakMap;return(n,i)=>{let r=t.get(n);if(!r){let s=HT();Oi(n.ownerSVGElement).append("clipPath").attr("id",s).call(e,n,i),t.set(n,r=`url(#${s})`)}return r}}var PN=RN((e,t,n)=>{let{width:i,height:r,marginLeft:s,marginRight:o,marginTop:a,marginBottom:l}=n;e.append("rect").attr("x",s).attr("y",a).attr("width",i-o-s).attr("height",r-a-l)}),VT=new WeakMap,IN={type:"Sphere"};function LN(e,t){let n,i;if((n=VT.get(t))||VT.set(t,n=new WeakMap),e.type==="Sphere"&&(e=IN),!(i=n.get(e))){let r=HT();Oi(t.ownerSVGElement).append("clipPath").attr("id",r).append("path").attr("d",t.path()(e)),n.set(e,i=`url(#${r})`)}return i}function Be(e,t,n,i){CN(e,t,n,i),Wt(e,"class",t.className),Wt(e,"fill",t.fill),Wt(e,"fill-opacity",t.fillOpacity),Wt(e,"stroke",t.stroke),Wt(e,"stroke-width",t.strokeWidth),Wt(e,"stroke-opacity",t.strokeOpacity),Wt(e,"stroke-linejoin",t.strokeLinejoin),Wt(e,"stroke-linecap",t.strokeLinecap),Wt(e,"stroke-miterlimit",t.strokeMiterlimit),Wt(e,"stroke-dasharray",t.strokeDasharray),Wt(e,"stroke-dashoffset",t.strokeDashoffset),Wt(e,"shape-rendering",t.shapeRendering),Wt(e,"filter",t.imageFilter),Wt(e,"paint-order",t.paintOrder);let{pointerEvents:r=i.pointerSticky===!1?"none":void 0}=t;Wt(e,"pointer-events",r)}function Ne(e,t){DN(e,"mix-blend-mode",t.mixBlendMode),Wt(e,"opacity",t.opacity)}function $T(e,t,n){e.each(function(i){let r=t(i);if(r!=null){let s=this.ownerDocument.createElementNS(xs.svg,"a");s.setAttribute("fill","inherit"),s.setAttributeNS(xs.xlink,"href",r),n!=null&&s.setAttribute("target",n),this.parentNode.insertBefore(s,this).appendChild(this)}})}function Wt(e,t,n){n!=null&&e.attr(t,n)}function DN(e,t,n){n!=null&&e.style(t,n)}function ke(e,t,{x:n,y:i},r=mn,s=mn){r+=t.dx,s+=t.dy,n?.bandwidth&&(r+=n.bandwidth()/2),i?.bandwidth&&(s+=i.bandwidth()/2),(r||s)&&e.attr("transform",`translate(${r},${s})`)}function De(e,t){if((e=Fe(e))!==t)return e}function Lc(e,t){if((e=Oe(e))!==t)return e}var NN=/^-?([_a-z]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])([_a-z0-9-]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])*$/i;function $a(e){if(e===void 0)return"plot-d6a7b5";if(e=`${e}`,!NN.test(e))throw new Error(`invalid class name: ${e}`);return e}function Xa(e,t){if(typeof t=="string")e.property("style",t);else if(t!=null)for(let n of e)Object.assign(n.style,t)}function vr({frameAnchor:e},{width:t,height:n,marginTop:i,marginRight:r,marginBottom:s,marginLeft:o}){return[/left$/.test(e)?o:/right$/.test(e)?t-r:(o+t-r)/2,/^top/.test(e)?i:/^bottom/.test(e)?n-s:(i+n-s)/2]}var xe=class{constructor(t,n={},i={},r){let{facet:s="auto",facetAnchor:o,fx:a,fy:l,sort:c,dx:u=0,dy:h=0,margin:f=0,marginTop:d=f,marginRight:p=f,marginBottom:y=f,marginLeft:g=f,className:m,clip:x=r?.clip,channels:M,tip:v,render:S}=i;if(this.data=t,this.sort=Cs(c)?c:null,this.initializer=$r(i).initializer,this.transform=this.initializer?i.transform:Bo(i).transform,s===null||s===!1?this.facet=null:(this.facet=Un(s===!0?"include":s,"facet",["auto","include","exclude","super"]),this.fx=t===Pa&&typeof a=="string"?[a]:a,this.fy=t===Pa&&typeof l=="string"?[l]:l),this.facetAnchor=DT(o),n=_y(n),M!==void 0&&(n={...UN(M),...n}),r!==void 0&&(n={...WT(this,i,r),...n}),this.channels=Object.fromEntries(Object.entries(n).map(([b,_])=>{if(La(_.value)){let{value:w,label:R=_.label,scale:A=_.scale}=_.value;_={..._,label:R,scale:A,value:w}}if(t===Pa&&typeof _.value=="string"){let{value:w}=_;_={..._,value:[w]}}return[b,_]}).filter(([b,{value:_,optional:w}])=>{if(_!=null)return!0;if(w)return!1;throw new Error(`missing channel value: ${b}`)})),this.dx=+u,this.dy=+h,this.marginTop=+d,this.marginRight=+p,this.marginBottom=+y,this.marginLeft=+g,this.clip=Yf(x),this.tip=FN(v),this.className=Fe(m),this.facet==="super"){if(a||l)throw new Error("super-faceting cannot use fx or fy");for(let b in this.channels){let{scale:_}=n[b];if(!(_!=="x"&&_!=="y"))throw new Error("super-faceting cannot use x or y")}}S!=null&&(this.render=jy(S,this.render))}initialize(t,n,i){let r=Wr(this.data);t===void 0&&r!=null&&(t=[Fn(r)]);let s=t;this.transform!=null&&({facets:t,data:r}=this.transform(r,t,i),r=Wr(r)),t!==void 0&&(t.original=s);let o=Uw(this.channels,r);return this.sort!=null&&Ow(r,t,o,n,this.sort),{data:r,facets:t,channels:o}}filter(t,n,i){for(let r in n){let{filter:s=Ai}=n[r];if(s!==null){let o=i[r];t=t.filter(a=>s(o[a]))}}return t}project(t,n,i){for(let r in t)if(t[r].scale==="x"&&/^x|x$/.test(r)){let s=r.replace(/^x|x$/,"y");s in t&&t[s].scale==="y"&&OT(r,s,n,i.projection)}}scale(t,n,i){let r=Fw(t,n);return i.projection&&this.project(t,r,i),r}};function Jy(...e){return e.plot=xe.prototype.plot,e}function jy(e,t){if(e==null)return t===null?void 0:t;if(t==null)return e===null?void 0:e;if(typeof e!="function")throw new TypeError(`invalid render transform: ${e}`);if(typeof t!="function")throw new TypeError(`invalid render transform: ${t}`);return function(n,i,r,s,o,a){return e.call(this,n,i,r,s,o,(l,c,u,h,f)=>t.call(this,l,c,u,h,f,a))}}function UN(e){return Object.fromEntries(Object.entries(_y(e)).map(([t,n])=>(n=typeof n=="string"?{value:n,label:t}:yr(n),n.filter===void 0&&n.scale==null&&(n={...n,filter:null}),[t,n])))}function FN(e){return e===!0?"xy":e===!1||e==null?null:typeof e=="string"?Un(e,"tip",["x","y","xy"]):e}function ko(e,t){return e?.tip===!0?{...e,tip:t}:Gi(e?.tip)&&e.tip.pointer===void 0?{...e,tip:{...e.tip,pointer:t}}:e}function qT(e,t,n={}){let i=.5-mn,r=.5+mn,s=.5+mn,o=.5-mn;for(let{marginTop:y,marginRight:g,marginBottom:m,marginLeft:x}of t)y>i&&(i=y),g>r&&(r=g),m>s&&(s=m),x>o&&(o=x);let{margin:a,marginTop:l=a!==void 0?a:i,marginRight:c=a!==void 0?a:r,marginBottom:u=a!==void 0?a:s,marginLeft:h=a!==void 0?a:o}=n;l=+l,c=+c,u=+u,h=+h;let{width:f=640,height:d=ON(e,n,{width:f,marginTopDefault:i,marginRightDefault:r,marginBottomDefault:s,marginLeftDefault:o})+Math.max(0,l-i+u-s)}=n;f=+f,d=+d;let p={width:f,height:d,marginTop:l,marginRight:c,marginBottom:u,marginLeft:h};if(e.fx||e.fy){let{margin:y,marginTop:g=y!==void 0?y:l,marginRight:m=y!==void 0?y:c,marginBottom:x=y!==void 0?y:u,marginLeft:M=y!==void 0?y:h}=n.facet??{};g=+g,m=+m,x=+x,M=+M,p.facet={marginTop:g,marginRight:m,marginBottom:x,marginLeft:M}}return p}function ON({x:e,y:t,fy:n,fx:i},{projection:r,aspectRatio:s},{width:o,marginTopDefault:a,marginRightDefault:l,marginBottomDefault:c,marginLeftDefault:u}){let h=n&&n.scale.domain().length||1,f=kT(r);if(f){let p=i?i.scale.domain().length:1,y=(1.1*h-.1)/(1.1*p-.1)*f,g=Math.max(.1,Math.min(10,y));return Math.round((o-u-l)*g+a+c)}let d=t?xr(t)?t.scale.domain().length||1:Math.max(7,17/h):1;if(s!=null){if(s=+s,!(isFinite(s)&&s>0))throw new Error(`invalid aspectRatio: ${s}`);let p=XT("y",t)/(XT("x",e)*s),y=i?i.scale.bandwidth():1,g=n?n.scale.bandwidth():1,m=y*(o-u-l)-e.insetLeft-e.insetRight;return(p*m+t.insetTop+t.insetBottom)/g+a+c}return!!(t||n)*Math.max(1,Math.min(60,d*h))*20+!!i*30+60}function XT(e,t){if(!t)throw new Error(`aspectRatio requires ${e} scale`);let{type:n,domain:i}=t,r;switch(n){case"linear":case"utc":case"time":r=Number;break;case"pow":{let a=t.scale.exponent();r=l=>Math.pow(l,a);break}case"log":r=Math.log;break;case"point":case"band":return i.length;default:throw new Error(`unsupported ${e} scale for aspectRatio: ${n}`)}let[s,o]=pn(i);return Math.abs(r(o)-r(s))}var YT=new WeakMap;function Qy(e,t,{x:n,y:i,px:r,py:s,maxRadius:o=40,channels:a,render:l,...c}={}){return o=+o,r!=null&&(n??=null,a={...a,px:{value:r,scale:"x"}}),s!=null&&(i??=null,a={...a,py:{value:s,scale:"y"}}),{x:n,y:i,channels:a,...c,render:jy(function(u,h,f,d,p,y){p={...p,pointerSticky:!1};let g=p.ownerSVGElement,{data:m}=p.getMarkState(this),x=YT.get(g);x||YT.set(g,x={sticky:!1,roots:[],renders:[]});let M=x.renders.push(lt)-1,{x:v,y:S,fx:b,fy:_}=h,w=b?b(u.fx)-d.marginLeft:0,R=_?_(u.fy)-d.marginTop:0;v?.bandwidth&&(w+=v.bandwidth()/2),S?.bandwidth&&(R+=S.bandwidth()/2);let A=u.fi!=null,C;if(A){let ot=x.facetStates;ot||(x.facetStates=ot=new Map),C=ot.get(this),C||ot.set(this,C=new Map)}let[P,O]=vr(this,d),{px:I,py:D}=f,k=I?ot=>I[ot]:ex(f,P),U=D?ot=>D[ot]:nx(f,O),Z,F,V,q;function st(ot,rt){if(A)if(q&&(q=cancelAnimationFrame(q)),ot==null)C.delete(u.fi);else{C.set(u.fi,rt),q=requestAnimationFrame(()=>{q=null;for(let[K,gt]of C)if(gt<rt||gt===rt&&K<u.fi){ot=null;break}lt(ot)});return}lt(ot)}function lt(ot){if(Z===ot&&V===x.sticky)return;Z=ot,V=p.pointerSticky=x.sticky;let rt=Z==null?[]:[Z];A&&(rt.fx=u.fx,rt.fy=u.fy,rt.fi=u.fi);let K=y(rt,h,f,d,p);if(F){if(A){let gt=F.parentNode,ct=F.getAttribute("transform"),J=K.getAttribute("transform");ct?K.setAttribute("transform",ct):K.removeAttribute("transform"),J?gt.setAttribute("transform",J):gt.removeAttribute("transform"),K.removeAttribute("aria-label"),K.removeAttribute("aria-description"),K.removeAttribute("aria-hidden")}F.replaceWith(K)}if(x.roots[M]=F=K,!(Z==null&&C?.size>1)){let gt=Z==null?null:zi(m)?m[Z]:m.get(Z);p.dispatchValue(gt)}return K}function $(ot){if(x.sticky||ot.pointerType==="mouse"&&ot.buttons===1)return;let[rt,K]=ob(ot);rt-=w,K-=R;let gt=rt<d.marginLeft||rt>d.width-d.marginRight?1:e,ct=K<d.marginTop||K>d.height-d.marginBottom?1:t,J=null,It=o*o;for(let pt of u){let Ot=gt*(k(pt)-rt),Ht=ct*(U(pt)-K),le=Ot*Ot+Ht*Ht;le<=It&&(J=pt,It=le)}if(J!=null&&(e!==1||t!==1)){let pt=k(J)-rt,Ot=U(J)-K;It=pt*pt+Ot*Ot}st(J,It)}function at(ot){ot.pointerType==="mouse"&&Z!=null&&(x.sticky&&x.roots.some(rt=>rt?.contains(ot.target))||(x.sticky?(x.sticky=!1,x.renders.forEach(rt=>rt(null))):(x.sticky=!0,lt(Z)),ot.stopImmediatePropagation()))}function ft(ot){ot.pointerType==="mouse"&&(x.sticky||st(null))}return g.addEventListener("pointerenter",$),g.addEventListener("pointermove",$),g.addEventListener("pointerdown",at),g.addEventListener("pointerleave",ft),lt(null)},l)}}function ZT(e){return Qy(1,1,e)}function KT(e){return Qy(1,.01,e)}function tx(e){return Qy(.01,1,e)}function ex({x1:e,x2:t,x:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function nx({y1:e,y2:t,y:n=e},i){return e&&t?r=>(e[r]+t[r])/2:n?r=>n[r]:()=>i}function ch(e){return xr(e)&&e.interval===void 0?void 0:"tabular-nums"}function JT(e,t){let{label:n=e.label,tickSize:i=6,width:r=240,height:s=44+i,marginTop:o=18,marginRight:a=0,marginBottom:l=16+i,marginLeft:c=0,style:u,ticks:h=(r-c-a)/64,tickFormat:f,fontVariant:d=ch(e),round:p=!0,opacity:y,className:g}=t,m=Wa(t);g=$a(g),y=Le(y)[1],f===null&&(f=()=>null);let x=se("svg",m).attr("class",`${g}-ramp`).attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("width",r).attr("height",s).attr("viewBox",`0 0 ${r} ${s}`).call(P=>P.append("style").text(`:where(.${g}-ramp) {
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
  overflow: visible;
}
:where(.${g}-ramp text) {
  white-space: pre;
}`)).call(Xa,u),M=P=>P.selectAll(".tick line").attr("y1",o+l-s),v,S=p?(P,O)=>P.rangeRound(O):(P,O)=>P.range(O),{type:b,domain:_,range:w,interpolate:R,scale:A,pivot:C}=e;if(R){let P=w===void 0?R:vs(R.length===1?Pc(R):R,w);v=S(A.copy(),In(Xe(c,r-a),Math.min(_.length+(C!==void 0),w===void 0?1/0:w.length)));let O=256,I=m.document.createElement("canvas");I.width=O,I.height=1;let D=I.getContext("2d");for(let k=0,U=O-1;k<O;++k)D.fillStyle=P(k/U),D.fillRect(k,0,1,1);x.append("image").attr("opacity",y).attr("x",c).attr("y",o).attr("width",r-c-a).attr("height",s-o-l).attr("preserveAspectRatio","none").attr("xlink:href",I.toDataURL())}else if(b==="threshold"){let P=_,O=f===void 0?I=>I:typeof f=="string"?sr(f):f;v=S(pc().domain([-1,w.length-1]),[c,r-a]),x.append("g").attr("fill-opacity",y).selectAll().data(w).enter().append("rect").attr("x",(I,D)=>v(D-1)).attr("y",o).attr("width",(I,D)=>v(D)-v(D-1)).attr("height",s-o-l).attr("fill",I=>I),h=ge(P,(I,D)=>D),f=I=>O(P[I],I)}else v=S(Ta().domain(_),[c,r-a]),x.append("g").attr("fill-opacity",y).selectAll().data(_).enter().append("rect").attr("x",v).attr("y",o).attr("width",Math.max(0,v.bandwidth()-1)).attr("height",s-o-l).attr("fill",A),M=()=>{};return x.append("g").attr("transform",`translate(0,${s-l})`).call(Yv(v).ticks(Array.isArray(h)?null:h,typeof f=="string"?f:void 0).tickFormat(typeof f=="function"?f:void 0).tickSize(i).tickValues(Array.isArray(h)?h:null)).attr("font-size",null).attr("font-family",null).attr("font-variant",De(d,"normal")).call(M).call(P=>P.select(".domain").remove()),n!==void 0&&x.append("text").attr("x",c).attr("y",o-6).attr("fill","currentColor").attr("font-weight","bold").text(n),x.node()}var ix=Math.PI/180;function zo(e,{marker:t,markerStart:n=t,markerMid:i=t,markerEnd:r=t}={}){e.markerStart=rx(n),e.markerMid=rx(i),e.markerEnd=rx(r)}function rx(e){if(e==null||e===!1)return null;if(e===!0)return QT;if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"none":return null;case"arrow":return jT("auto");case"arrow-reverse":return jT("auto-start-reverse");case"dot":return BN;case"circle":case"circle-fill":return QT;case"circle-stroke":return kN;case"tick":return sx("auto");case"tick-x":return sx(90);case"tick-y":return sx(0)}throw new Error(`invalid marker: ${e}`)}function jT(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("orient",e).attr("fill","none").attr("stroke",t).attr("stroke-width",1.5).attr("stroke-linecap","round").attr("stroke-linejoin","round").call(i=>i.append("path").attr("d","M-1.5,-3l3,3l-3,3")).node()}function BN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","none").call(n=>n.append("circle").attr("r",2.5)).node()}function QT(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill",e).attr("stroke","var(--plot-background)").attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function kN(e,t){return se("svg:marker",t).attr("viewBox","-5 -5 10 10").attr("markerWidth",6.67).attr("markerHeight",6.67).attr("fill","var(--plot-background)").attr("stroke",e).attr("stroke-width",1.5).call(n=>n.append("circle").attr("r",3)).node()}function sx(e){return(t,n)=>se("svg:marker",n).attr("viewBox","-3 -3 6 6").attr("markerWidth",6).attr("markerHeight",6).attr("orient",e).attr("stroke",t).call(i=>i.append("path").attr("d","M0,-3v6")).node()}var zN=0;function Dc(e,t,{stroke:n},i){return nE(e,t,n&&(r=>n[r]),null,i)}function tE(e,t,{stroke:n,z:i},r){return nE(e,t,n&&(([s])=>n[s]),i,r)}var ox=1,eE=2;function GN(e,t){let n=new Uint8Array(t.length),i=e.data().filter(s=>s.length>1),r=i.length;for(let s=0,o=sh;s<r;++s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ci(t[l]))&&(n[l]|=ox)}}for(let s=r-1,o=sh;s>=0;--s){let a=i[s];if(a.length>1){let l=a[0];o!==(o=Ci(t[l]))&&(n[l]|=eE)}}return([s])=>n[s]}function nE(e,{markerStart:t,markerMid:n,markerEnd:i,stroke:r},s=()=>r,o,a){if(!t&&!n&&!i)return;let l=new Map,c=o&&GN(e,o);function u(h,f,d){return function(p){if(d&&!d(p))return;let y=s(p),g=l.get(f);g||l.set(f,g=new Map);let m=g.get(y);if(!m){let x=this.parentNode.insertBefore(f(y,a),this),M=`plot-marker-${++zN}`;x.setAttribute("id",M),g.set(y,m=`url(#${M})`)}this.setAttribute(h,m)}}t&&e.each(u("marker-start",t,c&&(h=>c(h)&ox))),n&&c&&e.each(u("marker-start",n,h=>!(c(h)&ox))),n&&e.each(u("marker-mid",n)),i&&e.each(u("marker-end",i,c&&(h=>c(h)&eE)))}function qa({inset:e,insetLeft:t,insetRight:n,...i}={}){return[t,n]=iE(e,t,n),{inset:e,insetLeft:t,insetRight:n,...i}}function Nc({inset:e,insetTop:t,insetBottom:n,...i}={}){return[t,n]=iE(e,t,n),{inset:e,insetTop:t,insetBottom:n,...i}}function iE(e,t,n){return e===void 0&&t===void 0&&n===void 0?mn?[1,0]:[.5,.5]:[t,n]}function rE(e,{interval:t}){return e={...yr(e)},e.interval=Wf(e.interval===void 0?t:e.interval),e}function uh(e,t,n,i){let{[e]:r,[`${e}1`]:s,[`${e}2`]:o}=n,{value:a,interval:l}=rE(r,n);if(a==null||l==null&&!i)return n;let c=Hi(r);if(l==null){let d,p={transform:y=>d||(d=Te(y,a)),label:c};return{...n,[e]:void 0,[`${e}1`]:s===void 0?p:s,[`${e}2`]:o===void 0&&!(s===o&&i)?p:o}}let u,h;function f(d){return h!==void 0&&d===u?h:h=ge(Te(u=d,a),p=>l.floor(p))}return t({...n,[e]:void 0,[`${e}1`]:s===void 0?{transform:f,label:c}:s,[`${e}2`]:o===void 0?{transform:d=>f(d).map(p=>l.offset(p)),label:c}:o})}function sE(e,t,n){let{[e]:i}=n,{value:r,interval:s}=rE(i,n);return r==null||s==null?n:t({...n,[e]:{label:Hi(i),transform:o=>{let a=ge(Te(o,r),c=>s.floor(c)),l=a.map(c=>s.offset(c));return a.map(Ue(a)?(c,u)=>c==null||isNaN(c=+c)||(u=l[u],u==null)||isNaN(u=+u)?void 0:new Date((c+u)/2):(c,u)=>c==null||(u=l[u],u==null)?NaN:(+c+ +u)/2)}}})}function oE(e={}){return uh("x",qa,e,!0)}function aE(e={}){return uh("y",Nc,e,!0)}function lE(e={}){return uh("x",qa,e)}function cE(e={}){return uh("y",Nc,e)}function uE(e={}){return sE("x",qa,e)}function fE(e={}){return sE("y",Nc,e)}var hE={ariaLabel:"rule",fill:null,stroke:"currentColor"},fh=class extends xe{constructor(t,n={}){let{x:i,y1:r,y2:s,inset:o=0,insetTop:a=o,insetBottom:l=o}=n;super(t,{x:{value:i,scale:"x",optional:!0},y1:{value:r,scale:"y",optional:!0},y2:{value:s,scale:"y",optional:!0}},ko(n,"x"),hE),this.insetTop=Oe(a),this.insetBottom=Oe(l),zo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y1:c,y2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:g}=r,{insetTop:m,insetBottom:x}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o},mn,0).call(M=>M.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",l?v=>l[v]:(y+h-p)/2).attr("x2",l?v=>l[v]:(y+h-p)/2).attr("y1",c&&!Ls(a)?v=>c[v]+m:d+m).attr("y2",u&&!Ls(a)?a.bandwidth?v=>u[v]+a.bandwidth()-x:v=>u[v]-x:f-g-x).call(Sn,this,i).call(Dc,this,i,s)).node()}},hh=class extends xe{constructor(t,n={}){let{x1:i,x2:r,y:s,inset:o=0,insetRight:a=o,insetLeft:l=o}=n;super(t,{y:{value:s,scale:"y",optional:!0},x1:{value:i,scale:"x",optional:!0},x2:{value:r,scale:"x",optional:!0}},ko(n,"y"),hE),this.insetRight=Oe(a),this.insetLeft=Oe(l),zo(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{y:l,x1:c,x2:u}=i,{width:h,height:f,marginTop:d,marginRight:p,marginLeft:y,marginBottom:g}=r,{insetLeft:m,insetRight:x}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{y:l&&a},0,mn).call(M=>M.selectAll().data(t).enter().append("line").call(Ne,this).attr("x1",c&&!Ls(o)?v=>c[v]+m:y+m).attr("x2",u&&!Ls(o)?o.bandwidth?v=>u[v]+o.bandwidth()-x:v=>u[v]-x:h-p-x).attr("y1",l?v=>l[v]:(d+f-g)/2).attr("y2",l?v=>l[v]:(d+f-g)/2).call(Sn,this,i).call(Dc,this,i,s)).node()}};function Uc(e,t){let{x:n=Ae,y:i,y1:r,y2:s,...o}=cE(t);return[r,s]=dE(i,r,s),new fh(e,{...o,x:n,y1:r,y2:s})}function Ns(e,t){let{y:n=Ae,x:i,x1:r,x2:s,...o}=lE(t);return[r,s]=dE(i,r,s),new hh(e,{...o,y:n,x1:r,x2:s})}function dE(e,t,n){if(e==null){if(t===void 0){if(n!==void 0)return[0,n]}else if(n===void 0)return[0,t]}else{if(t===void 0)return n===void 0?[0,e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}function Ya(e,...t){let n=t.length;for(let i=0,r=!0;i<n;++i)typeof t[i]!="function"&&(r&&(e=e.slice(),r=!1),e.splice(i,2,e[i]+t[i]+e[i+1]),t.splice(i,1),--i,--n);return i=>{let r=e[0];for(let s=0;s<n;++s)r+=t[s](i)+e[s+1];return r}}var VN={ariaLabel:"text",strokeLinejoin:"round",strokeWidth:3,paintOrder:"stroke"},xE="­",Za=class extends xe{constructor(t,n={}){let{x:i,y:r,text:s=Jn(t)&&$f(t)?Ae:Do,frameAnchor:o,textAnchor:a=/right$/i.test(o)?"end":/left$/i.test(o)?"start":"middle",lineAnchor:l=/^top/i.test(o)?"top":/^bottom/i.test(o)?"bottom":"middle",lineHeight:c=1,lineWidth:u=1/0,textOverflow:h,monospace:f,fontFamily:d=f?"ui-monospace, monospace":void 0,fontSize:p,fontStyle:y,fontVariant:g,fontWeight:m,rotate:x}=n,[M,v]=Le(x,0),[S,b]=XN(p);if(super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},fontSize:{value:S,optional:!0},rotate:{value:fw(M),optional:!0},text:{value:s,filter:_c,optional:!0}},n,VN),this.rotate=v,this.textAnchor=De(a,"middle"),this.lineAnchor=Un(l,"lineAnchor",["top","middle","bottom"]),this.lineHeight=+c,this.lineWidth=+u,this.textOverflow=lx(h),this.monospace=!!f,this.fontFamily=Fe(d),this.fontSize=b,this.fontStyle=Fe(y),this.fontVariant=Fe(g),this.fontWeight=Fe(m),this.frameAnchor=Is(o),!(this.lineWidth>=0))throw new Error(`invalid lineWidth: ${u}`);this.splitLines=hx(this),this.clipLine=dx(this)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,rotate:u,text:h,title:f,fontSize:d}=i,{rotate:p}=this,[y,g]=vr(this,r);return se("svg:g",s).call(Be,this,r,s).call(fx,this,h,r).call(ke,this,{x:l&&o,y:c&&a}).call(m=>m.selectAll().data(t).enter().append("text").call(Ne,this).call(HN,this,h,f).attr("transform",Ya`translate(${l?x=>l[x]:y},${c?x=>c[x]:g})${u?x=>` rotate(${u[x]})`:p?` rotate(${p})`:""}`).call(Wt,"font-size",d&&(x=>d[x])).call(Sn,this,i)).node()}};function lx(e){return e==null?null:Un(e,"textOverflow",["clip","ellipsis","clip-start","clip-end","ellipsis-start","ellipsis-middle","ellipsis-end"]).replace(/^(clip|ellipsis)$/,"$1-end")}function HN(e,t,n,i){if(!n)return;let{lineAnchor:r,lineHeight:s,textOverflow:o,splitLines:a,clipLine:l}=t;e.each(function(c){let u=a(_r(n[c])??"").map(l),h=u.length,f=r==="top"?.71:r==="bottom"?1-h:(164-h*100)/200;if(h>1){let d=0;for(let p=0;p<h;++p){if(++d,!u[p])continue;let y=this.ownerDocument.createElementNS(xs.svg,"tspan");y.setAttribute("x",0),p===d-1?y.setAttribute("y",`${(f+p)*s}em`):y.setAttribute("dy",`${d*s}em`),y.textContent=u[p],this.appendChild(y),d=0}}else f&&this.setAttribute("y",`${f*s}em`),this.textContent=u[0];if(o&&!i&&u[0]!==n[c]){let d=this.ownerDocument.createElementNS(xs.svg,"title");d.textContent=n[c],this.appendChild(d)}})}function Ka(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Vi(t,n)),new Za(e,{...i,x:t,y:n})}function cx(e,{x:t=Ae,...n}={}){return new Za(e,fE({...n,x:t}))}function ux(e,{y:t=Ae,...n}={}){return new Za(e,uE({...n,y:t}))}function fx(e,t,n){Wt(e,"text-anchor",t.textAnchor),Wt(e,"font-family",t.fontFamily),Wt(e,"font-size",t.fontSize),Wt(e,"font-style",t.fontStyle),Wt(e,"font-variant",t.fontVariant===void 0?WN(n):t.fontVariant),Wt(e,"font-weight",t.fontWeight)}function WN(e){return e&&(pw(e)||Ue(e))?"tabular-nums":void 0}var $N=new Set(["inherit","initial","revert","unset","xx-small","x-small","small","medium","large","x-large","xx-large","xxx-large","larger","smaller"]);function XN(e){return e==null||typeof e=="number"?[void 0,e]:typeof e!="string"?[e,void 0]:(e=e.trim().toLowerCase(),$N.has(e)||/^[+-]?\d*\.?\d+(e[+-]?\d+)?(\w*|%)$/.test(e)?[void 0,e]:[e,void 0])}function qN(e,t,n){let i=[],r,s=0;for(let[o,a,l]of YN(e)){if(r===void 0&&(r=o),s>r&&n(e,r,a)>t&&(i.push(e.slice(r,s)+(e[s-1]===xE?"-":"")),r=o),l){i.push(e.slice(r,a)),r=void 0;continue}s=a}return i}function*YN(e){let t=0,n=0,i=e.length;for(;n<i;){let r=1;switch(e[n]){case xE:case"-":++n,yield[t,n,!1],t=n;break;case" ":for(yield[t,n,!1];e[++n]===" ";);t=n;break;case"\r":e[n+1]===`
`&&++r;case`
`:yield[t,n,!0],n+=r,t=n;break;default:++n;break}}yield[t,n,!0]}var pE={a:56,b:63,c:57,d:63,e:58,f:37,g:62,h:60,i:26,j:26,k:55,l:26,m:88,n:60,o:60,p:62,q:62,r:39,s:54,t:38,u:60,v:55,w:79,x:54,y:55,z:55,A:69,B:67,C:73,D:74,E:61,F:58,G:76,H:75,I:28,J:55,K:67,L:58,M:89,N:75,O:78,P:65,Q:78,R:67,S:65,T:65,U:75,V:69,W:98,X:69,Y:67,Z:67,0:64,1:48,2:62,3:64,4:66,5:63,6:65,7:58,8:65,9:65," ":29,"!":32,'"':49,"'":31,"(":39,")":39,",":31,"-":48,".":31,"/":32,":":31,";":31,"?":52,"‘":31,"’":31,"“":47,"”":47,"…":82};function dh(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Ja(e,r))i+=pE[e[r]]??(vE(e,r)?120:pE.e);return i}function ph(e,t=0,n=e.length){let i=0;for(let r=t;r<n;r=Ja(e,r))i+=vE(e,r)?126:63;return i}function hx({monospace:e,lineWidth:t,textOverflow:n}){if(n!=null||t==1/0)return s=>s.split(/\r\n?|\n/g);let i=e?ph:dh,r=t*100;return s=>qN(s,r,i)}function dx({monospace:e,lineWidth:t,textOverflow:n}){if(n==null||t==1/0)return s=>s;let i=e?ph:dh,r=t*100;switch(n){case"clip-start":return s=>gE(s,r,i,"");case"clip-end":return s=>mE(s,r,i,"");case"ellipsis-start":return s=>gE(s,r,i,Go);case"ellipsis-middle":return s=>ZN(s,r,i,Go);case"ellipsis-end":return s=>mE(s,r,i,Go)}}var Go="…";function Vo(e,t,n,i){let r=[],s=0;for(let o=0,a=0,l=e.length;o<l;o=a){a=Ja(e,o);let c=n(e,o,a);if(s+c>t){for(s+=i;s>t&&o>0;)a=o,o=r.pop(),s-=n(e,o,a);return[o,t-s]}s+=c,r.push(o)}return[-1,0]}function mE(e,t,n,i){e=e.trim();let r=n(i),[s]=Vo(e,t,n,r);return s<0?e:e.slice(0,s).trimEnd()+i}function ZN(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i)/2,[o,a]=Vo(e,t/2,n,s),[l]=Vo(e,r-t/2-a+s,n,-s);return l<0?i:e.slice(0,o).trimEnd()+i+e.slice(Ja(e,l)).trimStart()}function gE(e,t,n,i){e=e.trim();let r=n(e);if(r<=t)return e;let s=n(i),[o]=Vo(e,r-t+s,n,-s);return o<0?i:i+e.slice(Ja(e,o)).trimStart()}var ax=/[\p{Combining_Mark}\p{Emoji_Modifier}]+/uy,yE=/\p{Extended_Pictographic}/uy;function Ja(e,t){return t+=KN(e,t)?2:1,jN(e,t)&&(t=ax.lastIndex),JN(e,t)?Ja(e,t+1):t}function _E(e,t){return e.charCodeAt(t)<128}function KN(e,t){let n=e.charCodeAt(t);if(n>=55296&&n<56320){let i=e.charCodeAt(t+1);return i>=56320&&i<57344}return!1}function JN(e,t){return e.charCodeAt(t)===8205}function jN(e,t){return _E(e,t)?!1:(ax.lastIndex=t,ax.test(e))}function vE(e,t){return _E(e,t)?!1:(yE.lastIndex=t,yE.test(e))}var QN={ariaLabel:"vector",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinejoin:"round",strokeLinecap:"round"},bE=3.5,tU=bE*5,ME={draw(e,t,n){let i=t*n/tU;e.moveTo(0,0),e.lineTo(0,-t),e.moveTo(-i,i-t),e.lineTo(0,-t),e.lineTo(i,i-t)}},eU={draw(e,t,n){e.moveTo(-n,0),e.lineTo(0,-t),e.lineTo(n,0)}},nU=new Map([["arrow",ME],["spike",eU]]);function iU(e){return e&&typeof e.draw=="function"}function rU(e){if(iU(e))return e;let t=nU.get(`${e}`.toLowerCase());if(t)return t;throw new Error(`invalid shape: ${e}`)}var mh=class extends xe{constructor(t,n={}){let{x:i,y:r,r:s=bE,length:o,rotate:a,shape:l=ME,anchor:c="middle",frameAnchor:u}=n,[h,f]=Le(o,12),[d,p]=Le(a,0);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},length:{value:h,scale:"length",optional:!0},rotate:{value:d,optional:!0}},n,QN),this.r=+s,this.length=f,this.rotate=p,this.shape=rU(l),this.anchor=Un(c,"anchor",["start","middle","end"]),this.frameAnchor=Is(u)}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,length:u,rotate:h}=i,{length:f,rotate:d,anchor:p,shape:y,r:g}=this,[m,x]=vr(this,r);return se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(M=>M.selectAll().data(t).enter().append("path").call(Ne,this).attr("transform",Ya`translate(${l?v=>l[v]:m},${c?v=>c[v]:x})${h?v=>` rotate(${h[v]})`:d?` rotate(${d})`:""}${p==="start"?"":p==="end"?u?v=>` translate(0,${u[v]})`:` translate(0,${f})`:u?v=>` translate(0,${u[v]/2})`:` translate(0,${f/2})`}`).attr("d",u?v=>{let S=xi();return y.draw(S,u[v],g),S}:(()=>{let v=xi();return y.draw(v,f,g),v})()).call(Sn,this,i)).node()}};function SE(e,t={}){let{x:n=Ae,...i}=t;return new mh(e,{...i,x:n})}function wE(e,t={}){let{y:n=Ae,...i}=t;return new mh(e,{...i,y:n})}function Us(e,t){return arguments.length<2&&!Jn(e)&&(t=e,e=null),t===void 0&&(t={}),[e,t]}function gh({anchor:e}={},t){return e===void 0?t[0]:Un(e,"anchor",t)}function TE(e){return gh(e,["left","right"])}function EE(e){return gh(e,["right","left"])}function AE(e){return gh(e,["bottom","top"])}function CE(e){return gh(e,["top","bottom"])}function mx(){let[e,t]=Us(...arguments);return IE("y",TE(t),e,t)}function RE(){let[e,t]=Us(...arguments);return IE("fy",EE(t),e,t)}function gx(){let[e,t]=Us(...arguments);return LE("x",AE(t),e,t)}function PE(){let[e,t]=Us(...arguments);return LE("fx",CE(t),e,t)}function IE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="y"?6:0,tickPadding:y,tickRotate:g,x:m,margin:x,marginTop:M=x===void 0?20:x,marginRight:v=x===void 0?t==="right"?40:0:x,marginBottom:S=x===void 0?20:x,marginLeft:b=x===void 0?t==="left"?40:0:x,label:_,labelAnchor:w,labelArrow:R,labelOffset:A,ariaLabel:C=`${e}-axis`,...P}){return p=Oe(p),y=Oe(y),g=Oe(g),w!==void 0&&(w=Un(w,"labelAnchor",["center","top","bottom"])),R=WE(R),Jy(p&&!cn(s)?sU(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:g,x:m,ariaLabel:C,...P}):null,cn(l)?null:aU(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:g,x:m,marginTop:M,marginRight:v,marginBottom:S,marginLeft:b,ariaLabel:C,...P}),!cn(l)&&_!==null?Ka([],zE({fill:l,fillOpacity:c,...P},function(O,I,D,k,U){let Z=k[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="y"&&U.inset||U,lt=w??(Z.bandwidth?"center":"top"),$=A??(t==="right"?V:st)-3;return lt==="center"?(this.textAnchor=void 0,this.lineAnchor=t==="right"?"bottom":"top",this.frameAnchor=t,this.rotate=-90):(this.textAnchor=t==="right"?"end":"start",this.lineAnchor=lt,this.frameAnchor=`${lt}-${t}`,this.rotate=0),this.dy=lt==="top"?3-F:lt==="bottom"?q-3:0,this.dx=t==="right"?$:-$,this.ariaLabel=`${C} label`,{facets:[[0]],channels:{text:{value:[HE(e,Z,{anchor:t,label:_,labelAnchor:lt,labelArrow:R})]}}}})):null)}function LE(e,t,n,{color:i="currentColor",opacity:r=1,stroke:s=i,strokeOpacity:o=r,strokeWidth:a=1,fill:l=i,fillOpacity:c=r,textAnchor:u,textStroke:h,textStrokeOpacity:f,textStrokeWidth:d,tickSize:p=e==="x"?6:0,tickPadding:y,tickRotate:g,y:m,margin:x,marginTop:M=x===void 0?t==="top"?30:0:x,marginRight:v=x===void 0?20:x,marginBottom:S=x===void 0?t==="bottom"?30:0:x,marginLeft:b=x===void 0?20:x,label:_,labelAnchor:w,labelArrow:R,labelOffset:A,ariaLabel:C=`${e}-axis`,...P}){return p=Oe(p),y=Oe(y),g=Oe(g),w!==void 0&&(w=Un(w,"labelAnchor",["center","left","right"])),R=WE(R),Jy(p&&!cn(s)?oU(e,t,n,{stroke:s,strokeOpacity:o,strokeWidth:a,tickSize:p,tickPadding:y,tickRotate:g,y:m,ariaLabel:C,...P}):null,cn(l)?null:lU(e,t,n,{fill:l,fillOpacity:c,stroke:h,strokeOpacity:f,strokeWidth:d,textAnchor:u,tickSize:p,tickPadding:y,tickRotate:g,y:m,marginTop:M,marginRight:v,marginBottom:S,marginLeft:b,ariaLabel:C,...P}),!cn(l)&&_!==null?Ka([],zE({fill:l,fillOpacity:c,...P},function(O,I,D,k,U){let Z=k[e],{marginTop:F,marginRight:V,marginBottom:q,marginLeft:st}=e==="x"&&U.inset||U,lt=w??(Z.bandwidth?"center":"right"),$=A??(t==="top"?F:q)-3;return lt==="center"?(this.frameAnchor=t,this.textAnchor=void 0):(this.frameAnchor=`${t}-${lt}`,this.textAnchor=lt==="right"?"end":"start"),this.lineAnchor=t,this.dy=t==="top"?-$:$,this.dx=lt==="right"?V-3:lt==="left"?3-st:0,this.ariaLabel=`${C} label`,{facets:[[0]],channels:{text:{value:[HE(e,Z,{anchor:t,label:_,labelAnchor:lt,labelArrow:R})]}}}})):null)}function sU(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="y"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetLeft:u=c,insetRight:h=c,dx:f=0,y:d=e==="y"?void 0:null,ariaLabel:p,...y}){return ja(wE,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinecap:r,strokeLinejoin:s,facetAnchor:o,frameAnchor:a,y:d,...y,dx:t==="left"?+f-mn+ +u:+f+mn-h,anchor:"start",length:l,shape:t==="left"?hU:dU})}function oU(e,t,n,{strokeWidth:i=1,strokeLinecap:r=null,strokeLinejoin:s=null,facetAnchor:o=t+(e==="x"?"-empty":""),frameAnchor:a=t,tickSize:l,inset:c=0,insetTop:u=c,insetBottom:h=c,dy:f=0,x:d=e==="x"?void 0:null,ariaLabel:p,...y}){return ja(SE,e,n,{ariaLabel:`${p} tick`,ariaHidden:!0},{strokeWidth:i,strokeLinejoin:s,strokeLinecap:r,facetAnchor:o,frameAnchor:a,x:d,...y,dy:t==="bottom"?+f-mn-h:+f+mn+ +u,anchor:"start",length:l,shape:t==="bottom"?uU:fU})}function aU(e,t,n,{facetAnchor:i=t+(e==="y"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>60?4*Math.cos(o*ix):0),text:l,textAnchor:c=Math.abs(o)>60?"middle":t==="left"?"end":"start",lineAnchor:u=o>60?"top":o<-60?"bottom":"middle",fontVariant:h,inset:f=0,insetLeft:d=f,insetRight:p=f,dx:y=0,ariaLabel:g,y:m=e==="y"?void 0:null,...x}){return ja(ux,e,n,{ariaLabel:`${g} tick label`},{facetAnchor:i,frameAnchor:r,text:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,y:m,...x,dx:t==="left"?+y-s-a+ +d:+y+ +s+ +a-p},function(M,v,S,b,_){h===void 0&&(this.fontVariant=VE(M)),l===void 0&&(_.text=GE(M,v,S,b,t))})}function lU(e,t,n,{facetAnchor:i=t+(e==="x"?"-empty":""),frameAnchor:r=t,tickSize:s,tickRotate:o=0,tickPadding:a=Math.max(3,9-s)+(Math.abs(o)>=10?4*Math.cos(o*ix):0),text:l,textAnchor:c=Math.abs(o)>=10?o<0^t==="bottom"?"start":"end":"middle",lineAnchor:u=Math.abs(o)>=10?"middle":t==="bottom"?"top":"bottom",fontVariant:h,inset:f=0,insetTop:d=f,insetBottom:p=f,dy:y=0,x:g=e==="x"?void 0:null,ariaLabel:m,...x}){return ja(cx,e,n,{ariaLabel:`${m} tick label`},{facetAnchor:i,frameAnchor:r,text:l===void 0?null:l,textAnchor:c,lineAnchor:u,fontVariant:h,rotate:o,x:g,...x,dy:t==="bottom"?+y+ +s+ +a-p:+y-s-a+ +d},function(M,v,S,b,_){h===void 0&&(this.fontVariant=VE(M)),l===void 0&&(_.text=GE(M,v,S,b,t))})}function DE(){let[e,t]=Us(...arguments);return OE("y",TE(t),e,t)}function NE(){let[e,t]=Us(...arguments);return OE("fy",EE(t),e,t)}function UE(){let[e,t]=Us(...arguments);return BE("x",AE(t),e,t)}function FE(){let[e,t]=Us(...arguments);return BE("fx",CE(t),e,t)}function OE(e,t,n,{y:i=e==="y"?void 0:null,x:r=null,x1:s=t==="left"?r:null,x2:o=t==="right"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return ja(Ns,e,n,{ariaLabel:a,ariaHidden:l},{y:i,x1:s,x2:o,...kE(c)})}function BE(e,t,n,{x:i=e==="x"?void 0:null,y:r=null,y1:s=t==="top"?r:null,y2:o=t==="bottom"?r:null,ariaLabel:a=`${e}-grid`,ariaHidden:l=!0,...c}){return ja(Uc,e,n,{ariaLabel:a,ariaHidden:l},{x:i,y1:s,y2:o,...kE(c)})}function kE({color:e="currentColor",opacity:t=.1,stroke:n=e,strokeOpacity:i=t,strokeWidth:r=1,...s}){return{stroke:n,strokeOpacity:i,strokeWidth:r,...s}}function zE({fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u=!1},h){return[,e]=Kn(e),[,t]=Le(t),{facet:"super",x:null,y:null,fill:e,fillOpacity:t,fontFamily:n,fontSize:i,fontStyle:r,fontVariant:s,fontWeight:o,monospace:a,pointerEvents:l,shapeRendering:c,clip:u,initializer:h}}function ja(e,t,n,i,r,s){let o;function a(u,h,f,d,p,y){let g=u==null&&(t==="fx"||t==="fy"),{[t]:m}=d;if(!m)throw new Error(`missing scale: ${t}`);let x=m.domain(),{interval:M,ticks:v,tickFormat:S,tickSpacing:b=t==="x"?80:35}=r;if(typeof v=="string"&&$E(m)&&(M=v,v=void 0),v===void 0&&(v=gr(M,m.type)??cU(m,b)),u==null){if(Jn(v))u=mr(v);else if(Ps(v))u=px(v,...pn(x));else if(m.interval){let w=m.interval;if(m.ticks){let[R,A]=pn(x),C=(A-R)/w[Ra];w=ay(w,C/v)??w,u=px(w,R,A)}else{u=x;let R=u.length;w=ay(w,R/v)??w,w!==m.interval&&(u=px(w,...pn(u)))}if(w===m.interval){let R=Math.round(u.length/v);R>1&&(u=u.filter((A,C)=>C%R===0))}}else m.ticks?u=m.ticks(v):u=x;if(!m.ticks&&u.length&&u!==x){let w=new nr(x);u=u.filter(R=>w.has(R)),u.length||jn(`Warning: the ${t}-axis ticks appear to not align with the scale domain, resulting in no ticks. Try different ticks?`)}t==="y"||t==="x"?h=[Fn(u)]:o[t]={scale:t,value:Ae}}s?.call(this,m,u,v,S,o);let _=Object.fromEntries(Object.entries(o).map(([w,R])=>[w,{...R,value:Te(u,R.value)}]));return g&&(h=y.filterFacets(u,_)),{data:u,facets:h,channels:_}}let l=$r(r).initializer,c=e(n,$r({...r,initializer:a},l));return n==null?(o=c.channels,c.channels={}):o={},i!==void 0&&Object.assign(c,i),c.clip===void 0&&(c.clip=!1),c}function cU(e,t){let[n,i]=pn(e.range());return(i-n)/t}function GE(e,t,n,i,r){return{value:Fc(e,t,n,i,r)}}function Fc(e,t,n,i,r){return typeof i=="function"&&!(e.type==="log"&&e.tickFormat)?i:i===void 0&&t&&Ue(t)?KS(e.type,t,r)??_r:e.tickFormat?e.tickFormat(typeof n=="number"?n:null,i):typeof i=="string"&&e.domain().length>0?(Ue(e.domain())?fr:sr)(i):i===void 0?_r:ri(i)}function px(e,t,n){return e.range(t,e.offset(e.floor(n)))}var uU={draw(e,t){e.moveTo(0,0),e.lineTo(0,t)}},fU={draw(e,t){e.moveTo(0,0),e.lineTo(0,-t)}},hU={draw(e,t){e.moveTo(0,0),e.lineTo(-t,0)}},dU={draw(e,t){e.moveTo(0,0),e.lineTo(t,0)}};function VE(e){return e.bandwidth&&!e.interval?void 0:"tabular-nums"}function HE(e,t,{anchor:n,label:i=t.label,labelAnchor:r,labelArrow:s}={}){if(!(i==null||i.inferred&&$E(t)&&/^(date|time|year)$/i.test(i))){if(i=String(i),s==="auto"&&(s=(!t.bandwidth||t.interval)&&!/[↑↓→←]/.test(i)),!s)return i;if(s===!0){let o=wT(t);o&&(s=/x$/.test(e)||r==="center"?/x$/.test(e)===o<0?"left":"right":o<0?"up":"down")}switch(s){case"left":return`← ${i}`;case"right":return`${i} →`;case"up":return n==="right"?`${i} ↑`:`↑ ${i}`;case"down":return n==="right"?`${i} ↓`:`↓ ${i}`}return i}}function WE(e="auto"){return cn(e)?!1:typeof e=="boolean"?e:Un(e,"labelArrow",["auto","up","right","down","left"])}function $E(e){return Ue(e.domain())}function XE(e,t){if(t==null)return t;let n=e(t);if(!n)throw new Error(`scale not found: ${t}`);return n}function qE(e,{opacity:t,...n}={}){if(!xr(e)&&!Hy(e))throw new Error(`swatches legend requires ordinal or threshold color scale (not ${e.type})`);return ZE(e,n,(i,r,s,o)=>i.append("svg").attr("width",s).attr("height",o).attr("fill",r.scale).attr("fill-opacity",Le(t)[1]).append("rect").attr("width","100%").attr("height","100%"))}function YE(e,{fill:t=e.hint?.fill!==void 0?e.hint.fill:"none",fillOpacity:n=1,stroke:i=e.hint?.stroke!==void 0?e.hint.stroke:cn(t)?"currentColor":"none",strokeOpacity:r=1,strokeWidth:s=1.5,r:o=4.5,...a}={},l){let[c,u]=Kn(t),[h,f]=Kn(i),d=XE(l,c),p=XE(l,h),y=o*o*Math.PI;return n=Le(n)[1],r=Le(r)[1],s=Le(s)[1],ZE(e,a,(g,m,x,M)=>g.append("svg").attr("viewBox","-8 -8 16 16").attr("width",x).attr("height",M).attr("fill",c==="color"?v=>d.scale(v):u).attr("fill-opacity",n).attr("stroke",h==="color"?v=>p.scale(v):f).attr("stroke-opacity",r).attr("stroke-width",s).append("path").attr("d",v=>{let S=xi();return e.scale(v).draw(S,y),S}))}function ZE(e,t={},n){let{columns:i,tickFormat:r,fontVariant:s=ch(e),swatchSize:o=15,swatchWidth:a=o,swatchHeight:l=o,marginLeft:c=0,className:u,style:h,width:f}=t,d=Wa(t);u=$a(u),r=Fc(e.scale,e.domain,void 0,r);let p=se("div",d).attr("class",`${u}-swatches ${u}-swatches-${i!=null?"columns":"wrap"}`),y;return i!=null?(y=`:where(.${u}-swatches-columns .${u}-swatch) {
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
${y}`)).style("margin-left",c?`${+c}px`:null).style("width",f===void 0?null:`${+f}px`).style("font-variant",De(s,"normal")).call(Xa,h).node()}var yx=new Map([["symbol",YE],["color",jE],["opacity",pU]]);function KE(e,t,n={}){return(i,r)=>{if(!yx.has(i))throw new Error(`unknown legend type: ${i}`);if(i in e)return yx.get(i)(e[i],JE(t,n[i],r),s=>e[s])}}function JE({className:e,...t},{label:n,ticks:i,tickFormat:r}={},s){return yw(s,{className:e,...t},{label:n,ticks:i,tickFormat:r})}function jE(e,{legend:t=!0,...n}){if(t===!0&&(t=e.type==="ordinal"?"swatches":"ramp"),e.domain!==void 0)switch(`${t}`.toLowerCase()){case"swatches":return qE(e,n);case"ramp":return JT(e,n);default:throw new Error(`unknown legend type: ${t}`)}}function pU({type:e,interpolate:t,...n},{legend:i=!0,color:r=ki(0,0,0),...s}){if(!t)throw new Error(`${e} opacity scales are not supported`);if(i===!0&&(i="ramp"),`${i}`.toLowerCase()!=="ramp")throw new Error(`${i} opacity legends are not supported`);return jE({type:e,...n,interpolate:mU(r)},{legend:i,...s})}function mU(e){let{r:t,g:n,b:i}=ki(e)||ki(0,0,0);return r=>`rgba(${t},${n},${i},${r})`}function QE(e,t,n){let i=[];for(let[r,s]of yx){let o=n[r];if(o?.legend&&r in e){let a=s(e[r],JE(t,e[r],o),l=>e[l]);a!=null&&i.push(a)}}return i}function tA(e={},t="y"){return sw(e)?e:{...e,[t]:Ae}}function eA(e,t){if(t.length===1)return{data:e,facets:t};let n=Rs(e),i=new Uint8Array(n),r=0;for(let a of t)for(let l of a)i[l]&&++r,i[l]=1;if(r===0)return{data:e,facets:t};e=As(e);let s=e[uy]=new Uint32Array(n+r);t=t.map(a=>As(a,Uint32Array));let o=n;i.fill(0);for(let a of t)for(let l=0,c=a.length;l<c;++l){let u=a[l];i[u]?(a[l]=o,e[o]=e[u],s[o]=u,++o):s[u]=u,i[u]=1}return{data:e,facets:t}}function gU(e={},t={}){arguments.length===1&&([e,t]=yU(e));let{x1:n,x:i=n,y:r,...s}=t,[o,a,l,c]=_U(i,r,"x","y",e,s);return{...o,x1:n,x:a,y1:l,y2:c,y:wc(l,c)}}function rA({y:e,y1:t,y2:n,...i}={}){return i=ko(i,"x"),t===void 0&&n===void 0?gU({y:e,...i}):([t,n]=ow(e,t,n),{...i,y1:t,y2:n})}function yU(e){let{offset:t,order:n,reverse:i,...r}=e;return[{offset:t,order:n,reverse:i},r]}var xU={length:!0};function _U(e,t=ew,n,i,{offset:r,order:s,reverse:o},a){if(t===null)throw new Error(`stack requires ${i}`);let l=Da(a),[c,u]=Ri(e),[h,f]=Na(t),[d,p]=Na(t);return h.hint=d.hint=xU,r=vU(r),s=SU(s,r,i),[Bo(a,(y,g,m)=>{({data:y,facets:g}=eA(y,g));let x=e==null?void 0:u(Tc(Te(y,e),m?.[n])),M=Te(y,t,Float64Array),v=Te(y,l),S=s&&s(y,x,M,v),b=Rs(y),_=f(new Float64Array(b)),w=p(new Float64Array(b)),R=[];for(let A of g){let C=x?Array.from(lo(A,P=>x[P]).values()):[A];if(S)for(let P of C)P.sort(S);for(let P of C){let O=0,I=0;o&&P.reverse();for(let D of P){let k=M[D];k<0?O=w[D]=(_[D]=O)+k:k>0?I=w[D]=(_[D]=I)+k:w[D]=_[D]=I}}R.push(C)}return r&&r(R,_,w,v),{data:y,facets:g}}),c,h,d]}function vU(e){if(e!=null){if(typeof e=="function")return e;switch(`${e}`.toLowerCase()){case"expand":case"normalize":return bU;case"center":case"silhouette":return MU;case"wiggle":return oA}throw new Error(`unknown offset: ${e}`)}}function sA(e,t){let n=0,i=0;for(let r of e){let s=t[r];s<n&&(n=s),s>i&&(i=s)}return[n,i]}function bU(e,t,n){for(let i of e)for(let r of i){let[s,o]=sA(r,n);for(let a of r){let l=1/(o-s||1);t[a]=l*(t[a]-s),n[a]=l*(n[a]-s)}}}function MU(e,t,n){for(let i of e){for(let r of i){let[s,o]=sA(r,n);for(let a of r){let l=(o+s)/2;t[a]-=l,n[a]-=l}}aA(i,t,n)}lA(e,t,n)}function oA(e,t,n,i){for(let r of e){let s=new mi,o=0;for(let a of r){let l=-1,c=a.map(d=>Math.abs(n[d]-t[d])),u=a.map(d=>{l=i?i[d]:++l;let p=n[d]-t[d],y=s.has(l)?p-s.get(l):0;return s.set(l,p),y}),h=[0,...Lv(u)];for(let d of a)t[d]+=o,n[d]+=o;let f=Fi(c);f&&(o-=Fi(c,(d,p)=>(u[p]/2+h[p])*d)/f)}aA(r,t,n)}lA(e,t,n)}function aA(e,t,n){let i=gi(e,r=>gi(r,s=>t[s]));for(let r of e)for(let s of r)t[s]-=i,n[s]-=i}function lA(e,t,n){let i=e.length;if(i===1)return;let r=e.map(a=>a.flat()),s=r.map(a=>(gi(a,l=>t[l])+Pn(a,l=>n[l]))/2),o=gi(s);for(let a=0;a<i;a++){let l=o-s[a];for(let c of r[a])t[c]+=l,n[c]+=l}}function SU(e,t,n){if(e===void 0&&t===oA)return nA(Mn);if(e!=null){if(typeof e=="string"){let i=e.startsWith("-"),r=i?Po:Mn;switch((i?e.slice(1):e).toLowerCase()){case"value":case n:return wU(r);case"z":return TU(r);case"sum":return EU(r);case"appearance":return AU(r);case"inside-out":return nA(r)}return iA(hy(e))}if(typeof e=="function")return(e.length===1?iA:CU)(e);if(zi(e))return RU(e);throw new Error(`invalid order: ${e}`)}}function wU(e){return(t,n,i)=>(r,s)=>e(i[r],i[s])}function TU(e){return(t,n,i,r)=>(s,o)=>e(r[s],r[o])}function EU(e){return yh(e,(t,n,i,r)=>Nu(Fn(t),s=>Fi(s,o=>i[o]),s=>r[s]))}function AU(e){return yh(e,(t,n,i,r)=>Nu(Fn(t),s=>n[om(s,o=>i[o])],s=>r[s]))}function nA(e){return yh(e,(t,n,i,r)=>{let s=Fn(t),o=Nu(s,h=>n[om(h,f=>i[f])],h=>r[h]),a=Dr(s,h=>Fi(h,f=>i[f]),h=>r[h]),l=[],c=[],u=0;for(let h of o)u<0?(u+=a.get(h),l.push(h)):(u-=a.get(h),c.push(h));return c.reverse().concat(l)})}function iA(e){return t=>{let n=Te(t,e);return(i,r)=>Mn(n[i],n[r])}}function CU(e){return t=>zi(t)?(n,i)=>e(t[n],t[i]):(n,i)=>e(t.get(n),t.get(i))}function RU(e){return yh(Mn,()=>e)}function yh(e,t){return(n,i,r,s)=>{if(!s)throw new Error("missing channel: z");let o=new mi(t(n,i,r,s).map((a,l)=>[a,l]));return(a,l)=>e(o.get(s[a]),o.get(s[l]))}}var PU={ariaLabel:"rect"},vh=class extends xe{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o}=n;super(t,{x1:{value:i,scale:"x",type:i!=null&&s==null?"band":void 0,optional:!0},y1:{value:r,scale:"y",type:r!=null&&o==null?"band":void 0,optional:!0},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,PU),xx(this,n),_x(this,n)}render(t,n,i,r,s){let{x:o,y:a}=n,{x1:l,y1:c,x2:u,y2:h}=i,{marginTop:f,marginRight:d,marginBottom:p,marginLeft:y,width:g,height:m}=r,{projection:x}=s,{insetTop:M,insetRight:v,insetBottom:S,insetLeft:b}=this,{rx:_,ry:w,rx1y1:R,rx1y2:A,rx2y1:C,rx2y2:P}=this;(l||u)&&!x&&Ls(o)&&(l=u=null),(c||h)&&!x&&Ls(a)&&(c=h=null);let O=o?.bandwidth?o.bandwidth():0,I=a?.bandwidth?a.bandwidth():0;return se("svg:g",s).call(Be,this,r,s).call(ke,this,{},0,0).call(D=>D.selectAll().data(t).enter().call(R||A||C||P?k=>k.append("path").call(Ne,this).call(vx,l&&u?U=>l[U]+(u[U]<l[U]?-v:b):l?U=>l[U]+b:y+b,c&&h?U=>c[U]+(h[U]<c[U]?-S:M):c?U=>c[U]+M:f+M,l&&u?U=>u[U]-(u[U]<l[U]?-b:v):l?U=>l[U]+O-v:g-d-v,c&&h?U=>h[U]-(h[U]<c[U]?-M:S):c?U=>c[U]+I-S:m-p-S,this).call(Sn,this,i):k=>k.append("rect").call(Ne,this).attr("x",l?u?U=>Math.min(l[U],u[U])+b:U=>l[U]+b:y+b).attr("y",c?h?U=>Math.min(c[U],h[U])+M:U=>c[U]+M:f+M).attr("width",l?u?U=>Math.max(0,Math.abs(u[U]-l[U])+O-b-v):O-b-v:g-d-y-v-b).attr("height",c?h?U=>Math.max(0,Math.abs(c[U]-h[U])+I-M-S):I-M-S:m-f-p-M-S).call(Wt,"rx",_).call(Wt,"ry",w).call(Sn,this,i))).node()}};function xx(e,{inset:t=0,insetTop:n=t,insetRight:i=t,insetBottom:r=t,insetLeft:s=t}={}){e.insetTop=Oe(n),e.insetRight=Oe(i),e.insetBottom=Oe(r),e.insetLeft=Oe(s)}function _x(e,{r:t,rx:n,ry:i,rx1:r=t,ry1:s=t,rx2:o=t,ry2:a=t,rx1y1:l=r!==void 0?+r:s!==void 0?+s:0,rx1y2:c=r!==void 0?+r:a!==void 0?+a:0,rx2y1:u=o!==void 0?+o:s!==void 0?+s:0,rx2y2:h=o!==void 0?+o:a!==void 0?+a:0}={}){l||c||u||h?(e.rx1y1=l,e.rx1y2=c,e.rx2y1=u,e.rx2y2=h):(e.rx=De(n,"auto"),e.ry=De(i,"auto"))}function vx(e,t,n,i,r,s){let{rx1y1:o,rx1y2:a,rx2y1:l,rx2y2:c}=s;typeof t!="function"&&(t=ri(t)),typeof n!="function"&&(n=ri(n)),typeof i!="function"&&(i=ri(i)),typeof r!="function"&&(r=ri(r));let u=Math.max(Math.abs(o+l),Math.abs(a+c)),h=Math.max(Math.abs(o+a),Math.abs(l+c));e.attr("d",f=>{let d=t(f),p=n(f),y=i(f),g=r(f),m=d>y,x=p>g,M=m?y:d,v=m?d:y,S=x?g:p,b=x?p:g,_=Math.min(1,(v-M)/u,(b-S)/h),w=_*(m?x?c:l:x?a:o),R=_*(m?x?a:o:x?c:l),A=_*(m?x?o:a:x?l:c),C=_*(m?x?l:c:x?o:a);return`M${M},${S+_h(w,C)}A${w},${w} 0 0 ${w<0?0:1} ${M+xh(w,C)},${S}H${v-xh(R,A)}A${R},${R} 0 0 ${R<0?0:1} ${v},${S+_h(R,A)}V${b-_h(A,R)}A${A},${A} 0 0 ${A<0?0:1} ${v-xh(A,R)},${b}H${M+xh(C,w)}A${C},${C} 0 0 ${C<0?0:1} ${M},${b-_h(C,w)}Z`})}function xh(e,t){return t<0?e:Math.abs(e)}function _h(e,t){return t<0?Math.abs(e):e}function bh(e,t){return new vh(e,oE(aE(t)))}var IU={ariaLabel:"frame",fill:"none",stroke:"currentColor",clip:!1},LU={ariaLabel:"frame",fill:null,stroke:"currentColor",strokeLinecap:"square",clip:!1},bx=class extends xe{constructor(t={}){let{anchor:n=null}=t;super(Pa,void 0,t,n==null?IU:LU),this.anchor=gy(n,"anchor",["top","right","bottom","left"]),xx(this,t),n||_x(this,t)}render(t,n,i,r,s){let{marginTop:o,marginRight:a,marginBottom:l,marginLeft:c,width:u,height:h}=r,{anchor:f,insetTop:d,insetRight:p,insetBottom:y,insetLeft:g}=this,{rx:m,ry:x,rx1y1:M,rx1y2:v,rx2y1:S,rx2y2:b}=this,_=c+g,w=u-a-p,R=o+d,A=h-l-y;return se(f?"svg:line":M||v||S||b?"svg:path":"svg:rect",s).datum(0).call(Be,this,r,s).call(Ne,this).call(Sn,this,i).call(ke,this,{}).call(f==="left"?C=>C.attr("x1",_).attr("x2",_).attr("y1",R).attr("y2",A):f==="right"?C=>C.attr("x1",w).attr("x2",w).attr("y1",R).attr("y2",A):f==="top"?C=>C.attr("x1",_).attr("x2",w).attr("y1",R).attr("y2",R):f==="bottom"?C=>C.attr("x1",_).attr("x2",w).attr("y1",A).attr("y2",A):M||v||S||b?C=>C.call(vx,_,R,w,A,this):C=>C.attr("x",_).attr("y",R).attr("width",w-_).attr("height",A-R).attr("rx",m).attr("ry",x)).node()}};function cA(e){return new bx(e)}var Mx={ariaLabel:"tip",fill:"var(--plot-background)",stroke:"currentColor"},DU=new Set(["geometry","href","src","ariaLabel","scales"]),Sx=class extends xe{constructor(t,n={}){n.tip&&(n={...n,tip:!1}),n.title===void 0&&Jn(t)&&$f(t)&&(n={...n,title:Ae});let{x:i,y:r,x1:s,x2:o,y1:a,y2:l,anchor:c,preferredAnchor:u="bottom",monospace:h,fontFamily:f=h?"ui-monospace, monospace":void 0,fontSize:d,fontStyle:p,fontVariant:y,fontWeight:g,lineHeight:m=1,lineWidth:x=20,frameAnchor:M,format:v,textAnchor:S="start",textOverflow:b,textPadding:_=8,title:w,pointerSize:R=12,pathFilter:A="drop-shadow(0 3px 4px rgba(0,0,0,0.2))"}=n;super(t,{x:{value:s!=null&&o!=null?null:i,scale:"x",optional:!0},y:{value:a!=null&&l!=null?null:r,scale:"y",optional:!0},x1:{value:s,scale:"x",optional:o==null},y1:{value:a,scale:"y",optional:l==null},x2:{value:o,scale:"x",optional:s==null},y2:{value:l,scale:"y",optional:a==null},title:{value:w,optional:!0}},n,Mx),this.anchor=qf(c,"anchor"),this.preferredAnchor=qf(u,"preferredAnchor"),this.frameAnchor=Is(M),this.textAnchor=De(S,"middle"),this.textPadding=+_,this.pointerSize=+R,this.pathFilter=Fe(A),this.lineHeight=+m,this.lineWidth=+x,this.textOverflow=lx(b),this.monospace=!!h,this.fontFamily=Fe(f),this.fontSize=Oe(d),this.fontStyle=Fe(p),this.fontVariant=Fe(y),this.fontWeight=Fe(g);for(let C in Mx)C in this.channels&&(this[C]=Mx[C]);this.splitLines=hx(this),this.clipLine=dx(this),this.format=typeof v=="string"||typeof v=="function"?{title:v}:{...v}}render(t,n,i,r,s){let o=this,{x:a,y:l,fx:c,fy:u}=n,{ownerSVGElement:h,document:f}=s,{anchor:d,monospace:p,lineHeight:y,lineWidth:g}=this,{textPadding:m,pointerSize:x,pathFilter:M}=this,{marginTop:v,marginLeft:S}=r,{x1:b,y1:_,x2:w,y2:R,x:A=b??w,y:C=_??R}=i,P=c?c(t.fx)-S:0,O=u?u(t.fy)-v:0,[I,D]=vr(this,r),k=ex(i,I),U=nx(i,D),Z=p?ph:dh,F=Z(Go),V,q;"title"in i?(V=uA.call(this,{title:i.channels.title},n),q=OU):(V=uA.call(this,i.channels,n),q=BU);let st=se("svg:g",s).call(Be,this,r,s).call(fx,this).call(ke,this,{x:A&&a,y:C&&l}).call(at=>at.selectAll().data(t).enter().append("g").attr("transform",ft=>`translate(${Math.round(k(ft))},${Math.round(U(ft))})`).call(Ne,this).call(ft=>ft.append("path").attr("filter",M)).call(ft=>ft.append("text").each(function(ot){let rt=Oi(this);this.setAttribute("fill","currentColor"),this.setAttribute("fill-opacity",1),this.setAttribute("stroke","none");let K=q.call(o,ot,t,V,n,i);if(typeof K=="string")for(let gt of o.splitLines(K))lt(rt,{value:o.clipLine(gt)});else{let gt=new Set;for(let ct of K){let{label:J=""}=ct;J&&gt.has(J)||(gt.add(J),lt(rt,ct))}}})));function lt(at,{label:ft,value:ot,color:rt,opacity:K}){ft??="",ot??="";let gt=rt!=null||K!=null,ct,J=g*100,[It]=Vo(ft,J,Z,F);if(It>=0)ft=ft.slice(0,It).trimEnd()+Go,ct=ot.trim(),ot="";else{(ft||!ot&&!gt)&&(ot=" "+ot);let[Ot]=Vo(ot,J-Z(ft),Z,F);Ot>=0&&(ct=ot.trim(),ot=ot.slice(0,Ot).trimEnd()+Go)}let pt=at.append("tspan").attr("x",0).attr("dy",`${y}em`).text("​");ft&&pt.append("tspan").attr("font-weight","bold").text(ft),ot&&pt.append(()=>f.createTextNode(ot)),gt&&pt.append("tspan").text(" ■").attr("fill",rt).attr("fill-opacity",K).style("user-select","none"),ct&&pt.append("title").text(ct)}function $(){let{width:at,height:ft}=r.facet??r;st.selectChildren().each(function(ot){let{x:rt,width:K,height:gt}=this.getBBox();K=Math.round(K),gt=Math.round(gt);let ct=d;if(ct===void 0){let pt=k(ot)+P,Ot=U(ot)+O,Ht=pt+K+x+m*2<at,le=pt-K-x-m*2>0,oe=Ot+gt+x+m*2<ft,en=Ot-gt-x-m*2>0;ct=Ht&&le?oe&&en?o.preferredAnchor:en?"bottom":"top":oe&&en?Ht?"left":"right":(Ht||le)&&(oe||en)?`${en?"bottom":"top"}-${Ht?"left":"right"}`:o.preferredAnchor}let J=this.firstChild,It=this.lastChild;if(J.setAttribute("d",FU(ct,x,m,K,gt)),rt)for(let pt of It.childNodes)pt.setAttribute("x",-rt);It.setAttribute("y",`${+NU(ct,It.childNodes.length,y).toFixed(6)}em`),It.setAttribute("transform",`translate(${UU(ct,x,m,K,gt)})`)}),st.attr("visibility",null)}return t.length&&(st.attr("visibility","hidden"),h.isConnected?Promise.resolve().then($):typeof requestAnimationFrame<"u"&&requestAnimationFrame($)),st.node()}};function pA(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Vi(t,n)),new Sx(e,{...i,x:t,y:n})}function NU(e,t,n){return/^top(?:-|$)/.test(e)?.94-n:-.29-t*n}function UU(e,t,n,i,r){switch(e){case"middle":return[-i/2,r/2];case"top-left":return[n,t+n];case"top":return[-i/2,t/2+n];case"top-right":return[-i-n,t+n];case"right":return[-t/2-i-n,r/2];case"bottom-left":return[n,-t-n];case"bottom":return[-i/2,-t/2-n];case"bottom-right":return[-i-n,-t-n];case"left":return[n+t/2,r/2]}}function FU(e,t,n,i,r){let s=i+n*2,o=r+n*2;switch(e){case"middle":return`M${-s/2},${-o/2}h${s}v${o}h${-s}z`;case"top-left":return`M0,0l${t},${t}h${s-t}v${o}h${-s}z`;case"top":return`M0,0l${t/2},${t/2}h${(s-t)/2}v${o}h${-s}v${-o}h${(s-t)/2}z`;case"top-right":return`M0,0l${-t},${t}h${t-s}v${o}h${s}z`;case"right":return`M0,0l${-t/2},${-t/2}v${t/2-o/2}h${-s}v${o}h${s}v${t/2-o/2}z`;case"bottom-left":return`M0,0l${t},${-t}h${s-t}v${-o}h${-s}z`;case"bottom":return`M0,0l${t/2},${-t/2}h${(s-t)/2}v${-o}h${-s}v${o}h${(s-t)/2}z`;case"bottom-right":return`M0,0l${-t},${-t}h${t-s}v${-o}h${s}z`;case"left":return`M0,0l${t/2},${-t/2}v${t/2-o/2}h${s}v${o}h${-s}v${t/2-o/2}z`}}function uA(e,t){let n={},i=this.format;i=fA(i,e,"x"),i=fA(i,e,"y"),this.format=i;for(let r in i){let s=i[r];if(!(s===null||s===!1))if(r==="fx"||r==="fy")n[r]=!0;else{let o=Iy(e,r);o&&(n[r]=o)}}for(let r in e){if(r in n||r in i||DU.has(r)||(r==="x"||r==="y")&&e.geometry)continue;let s=Iy(e,r);if(s){if(s.scale==null&&s.defaultScale==="color")continue;n[r]=s}}this.facet&&(t.fx&&!("fx"in i)&&(n.fx=!0),t.fy&&!("fy"in i)&&(n.fy=!0));for(let r in n){let s=this.format[r];if(typeof s=="string"){let o=n[r]?.value??t[r]?.domain()??[];this.format[r]=(Ue(o)?fr:sr)(s)}else if(s===void 0||s===!0){let o=t[r];this.format[r]=o?.bandwidth?Fc(o,o.domain()):_r}}return n}function fA(e,t,n){if(!(n in e))return e;let i=`${n}1`,r=`${n}2`;if((i in e||!(i in t))&&(r in e||!(r in t)))return e;let s=Object.entries(e),o=e[n];return s.splice(s.findIndex(([a])=>a===n)+1,0,[i,o],[r,o]),Object.fromEntries(s)}function OU(e,t,{title:n}){return this.format.title(n.value[e],e)}function*BU(e,t,n,i,r){for(let s in n){if(s==="fx"||s==="fy"){yield{label:Mh(i,n,s),value:this.format[s](t[s],e)};continue}if(s==="x1"&&"x2"in n||s==="y1"&&"y2"in n)continue;let o=n[s];if(s==="x2"&&"x1"in n)yield{label:dA(i,n,"x"),value:hA(this.format.x2,n.x1,o,e)};else if(s==="y2"&&"y1"in n)yield{label:dA(i,n,"y"),value:hA(this.format.y2,n.y1,o,e)};else{let a=o.value[e],l=o.scale;if(!Ai(a)&&l==null)continue;yield{label:Mh(i,n,s),value:this.format[s](a,e),color:l==="color"?r[s][e]:null,opacity:l==="opacity"?r[s][e]:null}}}}function hA(e,t,n,i){return n.hint?.length?`${e(n.value[i]-t.value[i],i)}`:`${e(t.value[i],i)}–${e(n.value[i],i)}`}function dA(e,t,n){let i=Mh(e,t,`${n}1`,n),r=Mh(e,t,`${n}2`,n);return i===r?i:`${i}–${r}`}function Mh(e,t,n,i=n){let r=t[n],s=e[r?.scale??n];return String(s?.label??r?.label??i)}function Qa(e={}){let{facet:t,style:n,title:i,subtitle:r,caption:s,ariaLabel:o,ariaDescription:a}=e,l=$a(e.className),c=e.marks===void 0?[]:gA(e.marks);c.push(...WU(c));let u=VU(t,e),h=new Map;for(let F of c){let V=yA(F,u,e);V&&h.set(F,V)}let f=new Map;u&&Oc(f,[u],e),Oc(f,h,e);let d=gA($U(c,f,e));for(let F of d){let V=yA(F,u,e);V&&h.set(F,V)}c.unshift(...d);let p=RT(f,e);if(p!==void 0){let F=u?ih(p,u):void 0;for(let q of c){if(q.facet===null||q.facet==="super")continue;let st=h.get(q);st!==void 0&&(st.facetsIndex=q.fx!=null||q.fy!=null?ih(p,st):F)}let V=new Set;for(let{facetsIndex:q}of h.values())q?.forEach((st,lt)=>{st?.length>0&&V.add(lt)});p.forEach(0<V.size&&V.size<p.length?(q,st)=>q.empty=!V.has(st):q=>q.empty=!1);for(let q of c)if(q.facet==="exclude"){let st=h.get(q);st!==void 0&&(st.facetsIndex=LT(st.facetsIndex))}}for(let F of ye.keys())Ia(e[F])&&F!=="fx"&&F!=="fy"&&f.set(F,[]);let y=new Map;for(let F of c){if(y.has(F))throw new Error("duplicate mark; each mark must be unique");let{facetsIndex:V,channels:q}=h.get(F)??{},{data:st,facets:lt,channels:$}=F.initialize(V,q,e);Ex($,e),y.set(F,{data:st,facets:lt,channels:$})}let g=Ic(Oc(f,y,e),e),m=qT(g,c,e);ST(g,m);let x=Gy(g),{fx:M,fy:v}=x,S=M||v?Vy(g,m):m,b=M||v?jU(x,m):m,_=Wa(e),w=_.document,R=ua("svg").call(w.documentElement),A=R;_.ownerSVGElement=R,_.className=l,_.projection=UT(e,S),_.path=function(){return rc(this.projection??GT(x))},_.filterFacets=(F,V)=>ih(p,{channels:V,groups:eh(F,V)}),_.getMarkState=F=>{let V=y.get(F),q=h.get(F);return{...V,channels:{...V.channels,...q?.channels}}},_.dispatchValue=F=>{A.value!==F&&(A.value=F,A.dispatchEvent(new _.document.defaultView.Event("input",{bubbles:!0})))};let C=new Set;for(let[F,V]of y)if(F.initializer!=null){let q=F.facet==="super"?b:S,st=F.initializer(V.data,V.facets,V.channels,x,q,_);if(st.data!==void 0&&(V.data=st.data),st.facets!==void 0&&(V.facets=st.facets),st.channels!==void 0){let{fx:lt,fy:$,...at}=st.channels;GU(at),Object.assign(V.channels,at);for(let ft of Object.values(at)){let{scale:ot}=ft;ot!=null&&!bw(ye.get(ot))&&(vA(ft,e),C.add(ot))}(lt!=null||$!=null)&&h.set(F,!0)}}if(C.size){let F=new Map;Oc(F,y,e,lt=>C.has(lt)),Oc(f,y,e,lt=>C.has(lt));let V=JU(Ic(F,e),g),{scales:q,...st}=Gy(V);Object.assign(g,V),Object.assign(x,st),Object.assign(x.scales,q)}let P,O;p!==void 0&&(P={x:M?.domain(),y:v?.domain()},p=PT(p,P),O=IT(M,v,m));for(let[F,V]of y)V.values=F.scale(V.channels,x,_);let{width:I,height:D}=m;Oi(R).attr("class",l).attr("fill","currentColor").attr("font-family","system-ui, sans-serif").attr("font-size",10).attr("text-anchor","middle").attr("width",I).attr("height",D).attr("viewBox",`0 0 ${I} ${D}`).attr("aria-label",o).attr("aria-description",a).call(F=>F.append("style").text(`:where(.${l}) {
  --plot-background: white;
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
}
:where(.${l} text),
:where(.${l} tspan) {
  white-space: pre;
}`)).call(Xa,n);for(let F of c){let{channels:V,values:q,facets:st}=y.get(F);if(p===void 0||F.facet==="super"){let lt=null;if(st&&(lt=st[0],lt=F.filter(lt,V,q),lt.length===0))continue;let $=F.render(lt,x,q,b,_);if($==null)continue;R.appendChild($)}else{let lt;for(let $ of p){if(!(F.facetAnchor?.(p,P,$)??!$.empty))continue;let at=null;if(st){let ot=h.has(F);if(at=st[ot?$.i:0],at=F.filter(at,V,q),at.length===0)continue;!ot&&at===st[0]&&(at=aw(at)),at.fx=$.x,at.fy=$.y,at.fi=$.i}let ft=F.render(at,x,q,S,_);if(ft!=null){(lt??=Oi(R).append("g")).append(()=>ft).datum($);for(let ot of["aria-label","aria-description","aria-hidden","transform"])ft.hasAttribute(ot)&&(lt.attr(ot,ft.getAttribute(ot)),ft.removeAttribute(ot))}}lt?.selectChildren().each(O)}}let k=QE(g,_,e),{figure:U=i!=null||r!=null||s!=null||k.length>0}=e;U&&(A=w.createElement("figure"),A.className=`${l}-figure`,A.style.maxWidth="initial",i!=null&&A.append(mA(w,i,"h2")),r!=null&&A.append(mA(w,r,"h3")),A.append(...k,R),s!=null&&A.append(kU(w,s)),"value"in R&&(A.value=R.value,delete R.value)),A.scale=AT(x.scales),A.legend=KE(g,_,e);let Z=rT();return Z>0&&Oi(R).append("text").attr("x",I).attr("y",20).attr("dy","-1em").attr("text-anchor","end").attr("font-family","initial").text("⚠️").append("title").text(`${Z.toLocaleString("en-US")} warning${Z===1?"":"s"}. Please check the console.`),A}function mA(e,t,n){if(t.ownerDocument)return t;let i=e.createElement(n);return i.append(t),i}function kU(e,t){let n=e.createElement("figcaption");return n.append(t),n}function gA(e){return e.flat(1/0).filter(t=>t!=null).map(zU)}function zU(e){return typeof e.render=="function"?e:new Tx(e)}var Tx=class extends xe{constructor(t){if(typeof t!="function")throw new TypeError("invalid mark; missing render function");super(),this.render=t}render(){}};function Ex(e,t){for(let n in e)vA(e[n],t);return e}function vA(e,t){let{scale:n,transform:i=!0}=e;if(n==null||!i)return;let{type:r,percent:s,interval:o,transform:a=s?l=>l==null?NaN:l*100:yy(o,r)}=t[n]??{};a!=null&&(e.value=ge(e.value,a),e.transform=!1)}function GU(e){for(let t in e)Py(t,e[t])}function Oc(e,t,n,i=nw){for(let{channels:r}of t.values())for(let s in r){let o=r[s],{scale:a}=o;if(a!=null&&i(a))if(a==="projection"){if(!BT(n)){let l=n.x?.domain===void 0,c=n.y?.domain===void 0;if(l||c){let[u,h]=zT(o);l&&wx(e,"x",u),c&&wx(e,"y",h)}}}else wx(e,a,o)}return e}function wx(e,t,n){let i=e.get(t);i!==void 0?i.push(n):e.set(t,[n])}function VU(e,t){if(e==null)return;let{x:n,y:i}=e;if(n==null&&i==null)return;let r=Wr(e.data);if(r==null)throw new Error("missing facet data");let s={};n!=null&&(s.fx=Ba(r,{value:n,scale:"fx"})),i!=null&&(s.fy=Ba(r,{value:i,scale:"fy"})),Ex(s,t);let o=eh(r,s);return{channels:s,groups:o,data:e.data}}function yA(e,t,n){if(e.facet===null||e.facet==="super")return;let{fx:i,fy:r}=e;if(i!=null||r!=null){let l=Wr(e.data??i??r);if(l===void 0)throw new Error(`missing facet data in ${e.ariaLabel}`);if(l===null)return;let c={};return i!=null&&(c.fx=Ba(l,{value:i,scale:"fx"})),r!=null&&(c.fy=Ba(l,{value:r,scale:"fy"})),Ex(c,n),{channels:c,groups:eh(l,c)}}if(t===void 0)return;let{channels:s,groups:o,data:a}=t;if(e.facet!=="auto"||e.data===a)return{channels:s,groups:o};a.length>0&&(o.size>1||o.size===1&&s.fx&&s.fy&&[...o][0][1].size>1)&&Rs(Wr(e.data))===Rs(a)&&jn(`Warning: the ${e.ariaLabel} mark appears to use faceted data, but isn’t faceted. The mark data has the same length as the facet data and the mark facet option is "auto", but the mark data and facet data are distinct. If this mark should be faceted, set the mark facet option to true; otherwise, suppress this warning by setting the mark facet option to false.`)}function HU(e,t={}){return $r({...t,x:null,y:null},(n,i,r,s,o,a)=>a.getMarkState(e))}function WU(e){let t=[];for(let n of e){let i=n.tip;if(i){i===!0?i={}:typeof i=="string"&&(i={pointer:i});let{pointer:r,preferredAnchor:s}=i;r=/^x$/i.test(r)?KT:/^y$/i.test(r)?tx:ZT,i=r(HU(n,i)),i.title=null,s===void 0&&(i.preferredAnchor=r===tx?"left":"bottom");let o=pA(n.data,i);o.facet=n.facet,o.facetAnchor=n.facetAnchor,t.push(o)}}return t}function $U(e,t,n){let{projection:i,x:r={},y:s={},fx:o={},fy:a={},axis:l,grid:c,facet:u={},facet:{axis:h=l,grid:f}=u,x:{axis:d=l,grid:p=d===null?null:c}=r,y:{axis:y=l,grid:g=y===null?null:c}=s,fx:{axis:m=h,grid:x=m===null?null:f}=o,fy:{axis:M=h,grid:v=M===null?null:f}=a}=n;(i||!Ia(r)&&!xA("x",e))&&(d=p=null),(i||!Ia(s)&&!xA("y",e))&&(y=g=null),t.has("fx")||(m=x=null),t.has("fy")||(M=v=null),d===void 0&&(d=!Th(e,"x")),y===void 0&&(y=!Th(e,"y")),m===void 0&&(m=!Th(e,"fx")),M===void 0&&(M=!Th(e,"fy")),d===!0&&(d="bottom"),y===!0&&(y="left"),m===!0&&(m=d==="top"||d===null?"bottom":"top"),M===!0&&(M=y==="right"||y===null?"left":"right");let S=[];return wh(S,v,NE,a),Sh(S,M,RE,"right","left",u,a),wh(S,x,FE,o),Sh(S,m,PE,"top","bottom",u,o),wh(S,g,DE,s),Sh(S,y,mx,"left","right",n,s),wh(S,p,UE,r),Sh(S,d,gx,"bottom","top",n,r),S}function Sh(e,t,n,i,r,s,o){if(!t)return;let a=XU(t);o=qU(a?i:t,s,o);let{line:l}=o;(n===mx||n===gx)&&l&&!No(l)&&e.push(cA(YU(o))),e.push(n(o)),a&&e.push(n({...o,anchor:r,label:null}))}function wh(e,t,n,i){!t||No(t)||e.push(n(ZU(t,i)))}function XU(e){return/^\s*both\s*$/i.test(e)}function qU(e,t,{line:n=t.line,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f=t.label,labelAnchor:d,labelArrow:p=t.labelArrow,labelOffset:y}){return{anchor:e,line:n,ticks:i,tickSize:r,tickSpacing:s,tickPadding:o,tickFormat:a,tickRotate:l,fontVariant:c,ariaLabel:u,ariaDescription:h,label:f,labelAnchor:d,labelArrow:p,labelOffset:y}}function YU(e){let{anchor:t,line:n}=e;return{anchor:t,facetAnchor:t+"-empty",stroke:n===!0?void 0:n}}function ZU(e,{stroke:t=Ua(e)?e:void 0,ticks:n=KU(e)?e:void 0,tickSpacing:i,ariaLabel:r,ariaDescription:s}){return{stroke:t,ticks:n,tickSpacing:i,ariaLabel:r,ariaDescription:s}}function KU(e){switch(typeof e){case"number":return!0;case"string":return!Ua(e)}return Jn(e)||typeof e?.range=="function"}function Th(e,t){let n=`${t}-axis `;return e.some(i=>i.ariaLabel?.startsWith(n))}function xA(e,t){for(let n of t)for(let i in n.channels){let{scale:r}=n.channels[i];if(r===e||r==="projection")return!0}return!1}function JU(e,t){for(let n in e){let i=e[n],r=t[n];i.label===void 0&&r&&(i.label=r.label)}return e}function jU({fx:e,fy:t},n){let{marginTop:i,marginRight:r,marginBottom:s,marginLeft:o,width:a,height:l}=Qf(n),c=e&&_A(e),u=t&&_A(t);return{marginTop:t?u[0]:i,marginRight:e?a-c[1]:r,marginBottom:t?l-u[1]:s,marginLeft:e?c[0]:o,inset:{marginTop:n.marginTop,marginRight:n.marginRight,marginBottom:n.marginBottom,marginLeft:n.marginLeft},width:a,height:l}}function _A(e){let t=e.domain();if(t.length===0)return[0,e.bandwidth()];let n=e(t[0]),i=e(t[t.length-1]);return i<n&&([n,i]=[i,n]),[n,i+e.bandwidth()]}var QU=new Map([["basis",_S],["basis-closed",bS],["basis-open",SS],["bundle",TS],["bump-x",dS],["bump-y",pS],["cardinal",ES],["cardinal-closed",AS],["cardinal-open",CS],["catmull-rom",PS],["catmull-rom-closed",LS],["catmull-rom-open",NS],["linear",Co],["linear-closed",FS],["monotone-x",kS],["monotone-y",zS],["natural",VS],["step",HS],["step-after",$S],["step-before",WS]]);function Ax(e=Co,t){if(typeof e=="function")return e;let n=QU.get(`${e}`.toLowerCase());if(!n)throw new Error(`unknown curve: ${e}`);if(t!==void 0){if("beta"in n)return n.beta(t);if("tension"in n)return n.tension(t);if("alpha"in n)return n.alpha(t)}return n}function Eh(e=Fs,t){return typeof e!="function"&&`${e}`.toLowerCase()==="auto"?Fs:Ax(e,t)}function Fs(e){return Co(e)}function tF(e={y:"count"},t={}){[e,t]=iF(e,t);let{x:n,y:i}=t;return nF(rF(n,t,Ae),null,null,i,e,qa(t))}function eF(e,t,n={}){if(n?.interval==null)return n;let{reduce:i=Zf}=n,r={filter:null};return n[t]!=null&&(r[t]=i),n[`${t}1`]!=null&&(r[`${t}1`]=i),n[`${t}2`]!=null&&(r[`${t}2`]=i),e(r,n)}function SA(e={}){return eF(tF,"y",ko(e,"x"))}function nF(e,t,n,i,{data:r=Cy,filter:s=Ec,sort:o,reverse:a,...l}={},c={}){e=bA(e),t=bA(t),l=oF(l,c),r=EA(r,Ae),o=o==null?void 0:wA("sort",o,c),s=s==null?void 0:TA("filter",s,c),n!=null&&Ac(l,"x","x1","x2")&&(n=null),i!=null&&Ac(l,"y","y1","y2")&&(i=null);let[u,h]=Ri(e),[f,d]=Ri(e),[p,y]=Ri(t),[g,m]=Ri(t),[x,M]=n!=null?[n,"x"]:i!=null?[i,"y"]:[],[v,S]=Ri(x),{x:b,y:_,z:w,fill:R,stroke:A,x1:C,x2:P,y1:O,y2:I,domain:D,cumulative:k,thresholds:U,interval:Z,...F}=c,[V,q]=Ri(w),[st]=Kn(R),[lt]=Kn(A),[$,at]=Ri(st),[ft,ot]=Ri(lt);return{..."z"in c&&{z:V||w},..."fill"in c&&{fill:$||R},..."stroke"in c&&{stroke:ft||A},...Bo(F,(rt,K,gt)=>{let ct=Tc(Te(rt,x),gt?.[M]),J=Te(rt,w),It=Te(rt,st),pt=Te(rt,lt),Ot=Iw(l,{z:J,fill:It,stroke:pt}),Ht=[],le=[],oe=ct&&S([]),en=J&&q([]),Ge=It&&at([]),Wn=pt&&ot([]),Cn=e&&h([]),$n=e&&d([]),G=t&&y([]),Xn=t&&m([]),Me=cF(e,t,rt),Se=0;for(let mt of l)mt.initialize(rt);o&&o.initialize(rt),s&&s.initialize(rt);for(let mt of K){let Re=[];for(let Dt of l)Dt.scope("facet",mt);o&&o.scope("facet",mt),s&&s.scope("facet",mt);for(let[Dt,zt]of Ay(mt,Ot))for(let[L,T]of Ay(zt,ct))for(let[H,ut]of Me(T))if(Ot&&(ut.z=Dt),!(s&&!s.reduce(H,ut))){Re.push(Se++),le.push(r.reduceIndex(H,rt,ut)),ct&&oe.push(L),J&&en.push(Ot===J?Dt:J[(H.length>0?H:T)[0]]),It&&Ge.push(Ot===It?Dt:It[(H.length>0?H:T)[0]]),pt&&Wn.push(Ot===pt?Dt:pt[(H.length>0?H:T)[0]]),Cn&&(Cn.push(ut.x1),$n.push(ut.x2)),G&&(G.push(ut.y1),Xn.push(ut.y2));for(let nt of l)nt.reduce(H,ut);o&&o.reduce(H,ut)}Ht.push(Re)}return Lw(Ht,o,a),{data:le,facets:Ht}}),...!Ac(l,"x")&&(u?{x1:u,x2:f,x:wc(u,f)}:{x:b,x1:C,x2:P}),...!Ac(l,"y")&&(p?{y1:p,y2:g,y:wc(p,g)}:{y:_,y1:O,y2:I}),...v&&{[M]:v},...Object.fromEntries(l.map(({name:rt,output:K})=>[rt,K]))}}function iF({cumulative:e,domain:t,thresholds:n,interval:i,...r},s){return[r,{cumulative:e,domain:t,thresholds:n,interval:i,...s}]}function rF(e,{cumulative:t,domain:n,thresholds:i,interval:r},s){return e={...yr(e)},e.domain===void 0&&(e.domain=n),e.cumulative===void 0&&(e.cumulative=t),e.thresholds===void 0&&(e.thresholds=i),e.interval===void 0&&(e.interval=r),e.value===void 0&&(e.value=s),e.thresholds=sF(e.thresholds,e.interval),e}function bA(e){if(e==null)return;let{value:t,cumulative:n,domain:i=pn,thresholds:r}=e,s=o=>{let a=Te(o,t),l;if(Ue(a)||lF(r)){a=ge(a,my,Float64Array);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Ps(r)?r(a,u,h):r;typeof f=="number"&&(f=_f(u,h,f)),Ps(f)&&(i===pn&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h))),l=f}else{a=Nn(a);let[u,h]=typeof i=="function"?i(a):i,f=typeof r=="function"&&!Ps(r)?r(a,u,h):r;if(typeof f=="number")if(i===pn){let d=sa(u,h,f);if(isFinite(d))if(d>0){let p=Math.round(u/d),y=Math.round(h/d);p*d<=u||--p,y*d>h||++y;let g=y-p+1;f=new Float64Array(g);for(let m=0;m<g;++m)f[m]=(p+m)*d}else if(d<0){d=-d;let p=Math.round(u*d),y=Math.round(h*d);p/d<=u||--p,y/d>h||++y;let g=y-p+1;f=new Float64Array(g);for(let m=0;m<g;++m)f[m]=(p+m)/d}else f=[u];else f=[u]}else f=ys(u,h,f);else Ps(f)&&(i===pn&&(u=f.floor(u),h=f.offset(f.floor(h))),f=f.range(u,f.offset(h)));l=f}let c=[];if(l.length===1)c.push([l[0],l[0]]);else for(let u=1;u<l.length;++u)c.push([l[u-1],l[u]]);return c.bin=(n<0?fF:n>0?uF:Cx)(c,l,a),c};return s.label=Hi(t),s}function sF(e,t,n=MA){if(e===void 0)return t===void 0?n:gr(t);if(typeof e=="string"){switch(e.toLowerCase()){case"freedman-diaconis":return Hv;case"scott":return am;case"sturges":return Bv;case"auto":return MA}return Mc(e)}return e}function oF(e,t){return Pw(e,t,wA)}function wA(e,t,n){return Ty(e,t,n,TA)}function TA(e,t,n){return Ey(e,t,n,EA)}function EA(e,t){return Cc(e,t,aF)}function aF(e){switch(`${e}`.toLowerCase()){case"x":return hF;case"x1":return pF;case"x2":return mF;case"y":return dF;case"y1":return gF;case"y2":return yF;case"z":return Dw}throw new Error(`invalid bin reduce: ${e}`)}function MA(e,t,n){return Math.min(200,am(e,t,n))}function lF(e){return uw(e)||Jn(e)&&Ue(e)}function cF(e,t,n){let i=e?.(n),r=t?.(n);return i&&r?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries()){let u=r.bin(o[a]);for(let[h,[f,d]]of r.entries())yield[u[h],{data:n,x1:l,y1:f,x2:c,y2:d}]}}:i?function*(s){let o=i.bin(s);for(let[a,[l,c]]of i.entries())yield[o[a],{data:n,x1:l,x2:c}]}:function*(s){let o=r.bin(s);for(let[a,[l,c]]of r.entries())yield[o[a],{data:n,y1:l,y2:c}]}}function Cx(e,t,n){return t=Nn(t),i=>{let r=e.map(()=>[]);for(let s of i)r[aa(t,n[s])-1]?.push(s);return r}}function uF(e,t,n){let i=Cx(e,t,n);return r=>{let s=i(r);for(let o=1,a=s.length;o<a;++o){let l=s[o-1],c=s[o];for(let u of l)c.push(u)}return s}}function fF(e,t,n){let i=Cx(e,t,n);return r=>{let s=i(r);for(let o=s.length-2;o>=0;--o){let a=s[o+1],l=s[o];for(let c of a)l.push(c)}return s}}function AA(e,t){let n=(+e+ +t)/2;return e instanceof Date?new Date(n):n}var hF={reduceIndex(e,t,{x1:n,x2:i}){return AA(n,i)}},dF={reduceIndex(e,t,{y1:n,y2:i}){return AA(n,i)}},pF={reduceIndex(e,t,{x1:n}){return n}},mF={reduceIndex(e,t,{x2:n}){return n}},gF={reduceIndex(e,t,{y1:n}){return n}},yF={reduceIndex(e,t,{y2:n}){return n}};var xF={ariaLabel:"area",strokeWidth:1,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Ah=class extends xe{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,z:a,curve:l,tension:c}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0},z:{value:Da(n),optional:!0}},n,xF),this.z=a,this.curve=Ax(l,c)}filter(t){return t}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n,0,0).call(u=>u.selectAll().data(lh(t,[o,a,l,c],this,i)).enter().append("path").call(Ne,this).call(ah,this,i).attr("d",fS().curve(this.curve).defined(h=>h>=0).x0(h=>o[h]).y0(h=>a[h]).x1(h=>l[h]).y1(h=>c[h]))).node()}};function Rx(e,t){let{x:n=Do,...i}=SA(t);return new Ah(e,rA(tA({...i,x1:n,x2:void 0},n===Do?"y2":"y")))}var _F={ariaLabel:"link",fill:"none",stroke:"currentColor",strokeMiterlimit:1},Ch=class extends xe{constructor(t,n={}){let{x1:i,y1:r,x2:s,y2:o,curve:a,tension:l}=n;super(t,{x1:{value:i,scale:"x"},y1:{value:r,scale:"y"},x2:{value:s,scale:"x",optional:!0},y2:{value:o,scale:"y",optional:!0}},n,_F),this.curve=Eh(a,l),zo(this,n)}project(t,n,i){this.curve!==Fs&&super.project(t,n,i)}render(t,n,i,r,s){let{x1:o,y1:a,x2:l=o,y2:c=a}=i,{curve:u}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(h=>h.selectAll().data(t).enter().append("path").call(Ne,this).attr("d",u===Fs&&s.projection?vF(s.path(),o,a,l,c):f=>{let d=xi(),p=u(d);return p.lineStart(),p.point(o[f],a[f]),p.point(l[f],c[f]),p.lineEnd(),d}).call(Sn,this,i).call(Dc,this,i,s)).node()}};function vF(e,t,n,i,r){return t=Nn(t),n=Nn(n),i=Nn(i),r=Nn(r),s=>e({type:"LineString",coordinates:[[t[s],n[s]],[i[s],r[s]]]})}function Px(e,{x:t,x1:n,x2:i,y:r,y1:s,y2:o,...a}={}){return[n,i]=CA(t,n,i),[s,o]=CA(r,s,o),new Ch(e,{...a,x1:n,x2:i,y1:s,y2:o})}function CA(e,t,n){if(e===void 0){if(t===void 0){if(n!==void 0)return[n]}else if(n===void 0)return[t]}else{if(t===void 0)return n===void 0?[e]:[e,n];if(n===void 0)return[e,t]}return[t,n]}var bF={ariaLabel:"dot",fill:"none",stroke:"currentColor",strokeWidth:1.5};function MF(e){return e.sort===void 0&&e.reverse===void 0?Aw({channel:"-r"},e):e}var Rh=class extends xe{constructor(t,n={}){let{x:i,y:r,r:s,rotate:o,symbol:a=Ro,frameAnchor:l}=n,[c,u]=Le(o,0),[h,f]=ww(a),[d,p]=Le(s,h==null?3:4.5);super(t,{x:{value:i,scale:"x",optional:!0},y:{value:r,scale:"y",optional:!0},r:{value:d,scale:"r",filter:Io,optional:!0},rotate:{value:c,optional:!0},symbol:{value:h,scale:"auto",optional:!0}},MF(n),bF),this.r=p,this.rotate=u,this.symbol=f,this.frameAnchor=Is(l);let{channels:y}=this,{symbol:g}=y;if(g){let{fill:m,stroke:x}=y;g.hint={fill:m?m.value===g.value?"color":"currentColor":this.fill??"currentColor",stroke:x?x.value===g.value?"color":"currentColor":this.stroke??"none"}}}render(t,n,i,r,s){let{x:o,y:a}=n,{x:l,y:c,r:u,rotate:h,symbol:f}=i,{r:d,rotate:p,symbol:y}=this,[g,m]=vr(this,r),x=y===Ro,M=u?void 0:d*d*Math.PI;return Ea(d)&&(t=[]),se("svg:g",s).call(Be,this,r,s).call(ke,this,{x:l&&o,y:c&&a}).call(v=>v.selectAll().data(t).enter().append(x?"circle":"path").call(Ne,this).call(x?S=>{S.attr("cx",l?b=>l[b]:g).attr("cy",c?b=>c[b]:m).attr("r",u?b=>u[b]:d)}:S=>{S.attr("transform",Ya`translate(${l?b=>l[b]:g},${c?b=>c[b]:m})${h?b=>` rotate(${h[b]})`:p?` rotate(${p})`:""}`).attr("d",u&&f?b=>{let _=xi();return f[b].draw(_,u[b]*u[b]*Math.PI),_}:u?b=>{let _=xi();return y.draw(_,u[b]*u[b]*Math.PI),_}:f?b=>{let _=xi();return f[b].draw(_,M),_}:(()=>{let b=xi();return y.draw(b,M),b})())}).call(Sn,this,i)).node()}};function Bc(e,{x:t,y:n,...i}={}){return i.frameAnchor===void 0&&([t,n]=Vi(t,n)),new Rh(e,{...i,x:t,y:n})}var SF={ariaLabel:"line",fill:"none",stroke:"currentColor",strokeWidth:1.5,strokeLinecap:"round",strokeLinejoin:"round",strokeMiterlimit:1},Ph=class extends xe{constructor(t,n={}){let{x:i,y:r,z:s,curve:o,tension:a}=n;super(t,{x:{value:i,scale:"x"},y:{value:r,scale:"y"},z:{value:Da(n),optional:!0}},n,SF),this.z=s,this.curve=Eh(o,a),zo(this,n)}filter(t){return t}project(t,n,i){this.curve!==Fs&&super.project(t,n,i)}render(t,n,i,r,s){let{x:o,y:a}=i,{curve:l}=this;return se("svg:g",s).call(Be,this,r,s).call(ke,this,n).call(c=>c.selectAll().data(lh(t,[o,a],this,i)).enter().append("path").call(Ne,this).call(ah,this,i).call(tE,this,i,s).attr("d",l===Fs&&s.projection?wF(s.path(),o,a):k0().curve(l).defined(u=>u>=0).x(u=>o[u]).y(u=>a[u]))).node()}};function wF(e,t,n){return t=Nn(t),n=Nn(n),i=>{let r=[],s=[r];for(let o of i)o===-1?(r=[],s.push(r)):r.push([t[o],n[o]]);return e({type:"MultiLineString",coordinates:s})}}function Ih(e,{x:t,y:n,...i}={}){return[t,n]=Vi(t,n),new Ph(e,{...i,x:t,y:n})}xe.prototype.plot=function({marks:e=[],...t}={}){return Qa({...t,marks:[...e,this]})};var EF="http://www.w3.org/2000/svg";function Et(e,t={},...n){let i=document.createElement(e);for(let[r,s]of Object.entries(t))i.setAttribute(r,s);return i.append(...n.filter(r=>r!==null)),i}function me(e,t,...n){let i=document.createElementNS(EF,e);for(let[r,s]of Object.entries(t))i.setAttribute(r,String(s));return i.append(...n.filter(r=>r!==null)),i}function ze(e,t=3){return String(Number(e.toPrecision(t)))}function PA(e,t,n,i,r){let s=[],o=i>980?Math.min(3,e.pairs.length):i>640?2:1,a=Math.min(520,Math.floor((i-16*(o-1))/o)),l=e.pairs.length===1;return s.push(Et("div",{class:l?"side-by-side with-window":"side-by-side"},Et("figure",{class:"small-plan"},n,Et("figcaption",{},"From above in the blank.")),e.entries.length?CF(e,t,r):Et("div"),l?RA(e.pairs[0],t,Math.min(380,i)):null)),e.run&&s.push(...AF(e.run,t,i,r)),e.pairs.length>1&&s.push(Et("div",{class:"pairs"},...e.pairs.map(c=>RA(c,t,a)))),s}function IA(e){for(let t of e.querySelectorAll("style"))t.remove();for(let t of e.querySelectorAll("[aria-label]"))t.removeAttribute("aria-label");return e}function Ix(e,t,n,i,r,s,o){let a=(l,c)=>l&&l[c]!==null?l[c]*s:null;return e.to.map((l,c)=>({from:(c?e.to[c-1]:0)*o,to:l*o,low:a(t,c),high:a(n,c),left:a(i,c),right:a(r,c)}))}function AF(e,t,n,i){let r=t.unit==="mm",s=r?.001:t.scale/12,o=`cut, ${r?"m":"ft"}`,{unit:a,scale:l}=t,c=(f,d,p,y,g,m)=>{let x=Math.max(...p.flatMap(b=>[b.high??0,m?b.right??0:0]),0)||Math.max(...p.map(b=>b.right??0),0),M=g?Math.max(x*1.1,Math.min(Math.max(...p.map(b=>b.right??0)),x*2.2)):x*1.1;if(!(M>0))return null;let v=b=>b.left!==null||b.right!==null,S=IA(Qa({width:n,height:y?128:108,marginLeft:62,marginRight:12,marginTop:8,marginBottom:y?36:18,className:"chart",x:{label:y?o:null,domain:[0,e.to[e.to.length-1]*s],ticks:Math.max(3,n/110),tickFormat:y?void 0:()=>""},y:{label:null,domain:[0,M],ticks:4,grid:!0,clamp:!0},marks:[g?bh(p.filter(v),{x1:"from",x2:"to",y1:b=>b.left??0,y2:b=>b.right??M,className:"band"}):null,...g?["left","right"].map(b=>Ns(p.filter(_=>_[b]!==null),{x1:"from",x2:"to",y:b,className:"limit"})):[],bh(p.filter(b=>b.high!==null),{x1:"from",x2:"to",y1:b=>Math.min(b.low??0,b.high),y2:b=>Math.max(b.high,(b.low??0)+M/60),className:"values"}),m?Ns(p.filter(b=>b.right!==null),{x1:"from",x2:"to",y:"right",className:"set-line"}):null,Ns([0])]}));return S.setAttribute("role","img"),S.setAttribute("aria-label",`${f} along the run: ${d}`),S.addEventListener("click",b=>{let _=S.getBoundingClientRect(),w=((b.clientX-_.left)/_.width*n-62)/(n-74),R=e.to[e.to.length-1],A=e.to.findIndex(C=>C>=w*R);A>=0&&w>=0&&i(e.worst[A])}),Et("figure",{class:"run"},Et("figcaption",{},Et("b",{},f),` ${d}`),S)},u=e.chip_high.some(f=>f!==null),h=e.window_low.some(f=>f!==null)||e.window_high.some(f=>f!==null);return[u?c(`Chip, ${a}`,h?"thinnest to thickest; the band is its window":"thinnest to thickest; no window is known",Ix(e,e.chip_low,e.chip_high,e.window_low,e.window_high,l,s),!1,h,!1):null,c(`Feed, ${a}/min`,"what is reached; the line is F",Ix(e,e.feed_low,e.feed_high,null,e.set,l,s),!1,!1,!0),c(`Depth, ${a}`,"deepest cut at once",Ix(e,e.depth.map(f=>f===null?null:0),e.depth,null,null,l,s),!0,!1,!1)].filter(f=>f!==null)}var Lx=200,tl=116,Os=68;function CF(e,t,n){let i=Et("div",{class:"entries"});for(let r of e.entries){let s=Et("button",{type:"button",class:"plain script-only","aria-label":`Show line ${r.line} on the path`},`line ${r.line}`);s.addEventListener("click",()=>n(r.row));let o=[r.solid?`${ze(r.solid*t.scale)} ${t.unit} of solid`:null,r.slope!==null&&(r.kind==="ramp"||r.kind==="helix")?`${ze(r.slope)}° below level`:null].filter(Boolean).join(", ");i.append(Et("figure",{class:"entry"},RF(r,e,e.diameter??3,t),Et("figcaption",{},Et("b",{},`${r.words}${r.count>1?` × ${r.count.toLocaleString("en")}`:""}`),o?` ${o} `:" ",s,Et("span",{class:"print-only"},`line ${r.line}`))))}return i}function RF(e,t,n,i){let[r,s]=e.inside,{travel:o,z:a}=e,l=e.top??Math.max(...a),c=o[r]-n,u=o[s]+n,h=Math.min(...a.slice(r,s+1)),f=Math.min(Math.max(...a.slice(r,s+1)),l+Math.max(n,l-h)),d=Math.max((f-h)*.18,n*.3,.3),p=Lx-Os,y=Math.min(p/(u-c),tl/(f-h+2*d)),g=(c+u)/2,m=w=>Os+p/2+(w-g)*y,x=w=>tl/2-(w-(h+f)/2)*y,M=me("svg",{viewBox:`0 0 ${Lx} ${tl}`,class:"side-view",role:"img","aria-label":`${e.words}, from the side`}),v=`side-${++PF}`;M.append(me("clipPath",{id:v},me("rect",{x:Os,y:0,width:p,height:tl})));let S=me("g",{"clip-path":`url(#${v})`});M.append(S),S.append(me("rect",{x:Os,y:x(l),width:p,height:Math.max(0,tl-x(l)),class:"solid"})),S.append(me("line",{x1:Os,x2:Lx,y1:x(l),y2:x(l),class:"top"}));let b=n*y;S.append(me("path",{d:LF(m(o[s]),x(a[s]),b,t),class:"tool"}));let _=(w,R,A)=>{let C="";for(let P=Math.max(0,w);P<=Math.min(R,a.length-1);P++)C+=`${C?"L":"M"}${m(o[P]).toFixed(1)} ${x(a[P]).toFixed(1)}`;S.append(me("path",{d:C,class:A}))};return _(0,r,"way before"),_(s,a.length-1,"way before"),_(r,s,"way"),S.append(me("circle",{cx:m(o[s]),cy:x(a[s]),r:2.6,class:"tip"})),IF(M,[...e.top!==null&&x(l)>=0?[{at:x(l),text:`top ${ze(l*i.scale,4)}`}]:[],{at:x(a[s]),text:`Z ${ze(a[s]*i.scale,4)}`}]),M}var PF=0;function IF(e,t){t.sort((r,s)=>r.at-s.at);let i=-1/0;for(let r of t){let s=Math.min(tl-3,Math.max(9,r.at+3,i+12));i=s,e.append(me("path",{d:`M${Os-5} ${r.at.toFixed(1)}H${Os}`,class:"top"}),me("text",{x:Os-7,y:s,class:"note","text-anchor":"end"},r.text))}}function LF(e,t,n,i){let r=Math.max(n/2,.8);if(i.angle!==null&&i.angle<180){let o=r/Math.tan(i.angle*Math.PI/360);return`M${e-r} -2V${t-o}L${e} ${t}L${e+r} ${t-o}V-2`}let s=Math.min(i.round===null?0:i.round/(i.diameter??1)*n,r);return`M${e-r} -2V${t-s}A${s} ${s} 0 0 0 ${e-r+s} ${t}H${e+r-s}A${s} ${s} 0 0 0 ${e+r} ${t-s}V-2`}function RA(e,t,n){let{scale:i,unit:r}=t,s=r==="mm",{pairs:o}=e,a=e.speeds.map((S,b)=>({speed:S,low:e.low[b]===null&&e.high[b]===null?null:(e.low[b]??0)*i,high:e.high[b]===null?null:e.high[b]*i})),l=o.map(S=>({speed:S.speed,feed:S.feed*i,inside:S.inside})),c=o.flatMap(S=>S.near?[{from:S.speed,at:S.feed*i,speed:S.near.speed,feed:S.near.feed*i}]:[]),u=[...l,...c].map(S=>S.feed),h=[...l,...c].map(S=>S.speed),f=Math.max(...u)*1.35,d=Math.min(Math.max(f,...a.flatMap(S=>[S.low??0,S.high??0])),f*2.2),p=Math.min(e.speeds[0],...h),y=Math.max(e.speeds.at(-1),...h),g=IA(Qa({width:n,height:250,marginLeft:64,marginRight:16,marginTop:26,marginBottom:38,className:"chart",x:{label:"true speed, rev/min",domain:[p,y],ticks:Math.max(3,n/90)},y:{label:`feed, ${r}/min`,labelAnchor:"center",labelArrow:"none",domain:[0,d],clamp:!0,ticks:5},marks:[Rx(a.map(S=>({...S,high:S.low===null?null:S.high??d})),{x:"speed",y1:"low",y2:"high",className:"band"}),Ih(a,{x:"speed",y:"low",className:"limit"}),Ih(a,{x:"speed",y:"high",className:"limit"}),Uc(e.marks,{x:"speed",className:"mark-line"}),Ka(e.marks,{x:"speed",y:d,text:"mark",dy:-8,className:"mark-text"}),Px(c,{x1:"from",y1:"at",x2:"speed",y2:"feed",className:"to-near"}),Bc(c,{x:"speed",y:"feed",symbol:"diamond",r:6,className:"near"}),Bc(l.filter(S=>S.inside),{x:"speed",y:"feed",symbol:"circle",r:5,className:"pair inside"}),Bc(l.filter(S=>!S.inside),{x:"speed",y:"feed",symbol:"times",r:6,className:"pair outside"}),Ns([0])]}));g.style.maxWidth=`${n}px`;let m=S=>`F${ze(S*i,4)}`,x=S=>s?`${ze(S*.001)} m`:`${ze(S*i/12)} ft`,M=[];for(let S of o){let{near:b}=S,_=`${ze(S.speed,5)} rev/min`,w=b?`the nearest good pair is ${m(b.feed)} at ${ze(b.speed,5)} rev/min${b.mark?`, dial ${b.mark}`:""}`:"no pair near it is inside",R=S.dial.length>1?`; on the dial ${S.dial.map(P=>`${P.mark} ${m(P.feed)}`).join(", ")}`:"",A=S.inside?"inside every limit that is known":`outside (${S.broken.join(", ")}); ${w}${R}`,C=M.find(P=>P.speed===_&&P.text===A);C?(C.feeds.push(m(S.feed)),C.cut+=S.cut):M.push({feeds:[m(S.feed)],speed:_,cut:S.cut,text:A})}let v=S=>`${S.feeds.join(", ")} at ${S.speed}`;return g.setAttribute("role","img"),g.setAttribute("aria-label",`Operating window: ${M.map(S=>`${v(S)}: ${S.text}`).join(". ")}.`),Et("figure",{class:"window"},Et("figcaption",{},Et("b",{},"Operating window"),": the feeds and speeds at which every limit that is known is kept.",Et("ul",{class:"pair-words"},...M.map(S=>Et("li",{},Et("b",{},v(S)),` (${x(S.cut)}): ${S.text}`)))),g,Et("ul",{class:"key"},o.some(S=>S.inside)?Et("li",{class:"key-in"},"in the program, inside"):null,o.some(S=>!S.inside)?Et("li",{class:"key-out"},"in the program, outside"):null,c.length?Et("li",{class:"key-near"},"nearest good pair"):null,e.marks.length?Et("li",{class:"key-mark"},"mark of the dial"):null))}async function Dh(e){let t=document.getElementById(e),n=atob(t.textContent.trim()),i=new Uint8Array(n.length);for(let s=0;s<i.length;s++)i[s]=n.charCodeAt(s);t.textContent="";let r=new Blob([i]).stream().pipeThrough(new DecompressionStream("deflate"));return new Uint8Array(await new Response(r).arrayBuffer())}var Lh=class{constructor(t){this.raw=t}raw;bytes(t){return this.raw.subarray(t.at,t.at+t.length)}whole(t){let n=t.length,i=this.raw,r=new Int32Array(n),s=0;for(let o=0,a=t.at;o<n;o++,a++){let l=i[a]|i[a+n]<<8|i[a+2*n]<<16|i[a+3*n]<<24;s=t.delta?s+l|0:l,r[o]=s}return r}numbers(t){let n=this.whole(t),i=new Float32Array(n.length);for(let r=0;r<i.length;r++)i[r]=n[r]/t.scale;return i}path(t){return{n:t.line.length,x:this.numbers(t.x),y:this.numbers(t.y),z:this.numbers(t.z),line:this.whole(t.line),tool:this.whole(t.tool),kind:this.bytes(t.kind),place:this.bytes(t.place),share:this.bytes(t.share),chip:this.bytes(t.chip),depth:this.bytes(t.depth),force:this.bytes(t.force)}}};var DF={light:["#0a2f86","#2b62c4","#766e60","#a8480f","#6b1405"],dark:["#bcd8ff","#6aa9f5","#968d7e","#f08a45","#ffc48f"]},NF={light:[0,.48],dark:[.6,1]},Nh=1/3,kc=2/3;function DA(e,t){let{unit:n,scale:i,most:r}=e,s=(h,f=3)=>String(Number((h*i).toPrecision(f))),o=1/0,a=-1/0;for(let h=0;h<t.n;h++)t.kind[h]===2&&(o=Math.min(o,t.z[h+1]),a=Math.max(a,t.z[h+1]));o>a&&(o=a=0),o===a&&(o-=.5,a+=.5);let l=(h,f,d=254)=>h[f]===255?NaN:Math.min(h[f]/d,1),c=(o+a)/2,u={shade:UF,limits:null};return[{key:"chip",label:"chip against its window",about:"the slice of one tooth, against what is good",at:(h,f)=>l(h.place,f,240),shade:FF,limits:[Nh,kc],ticks:[[0,"nothing"],[Nh,"thinnest good"],[kc,"thickest good"],[1,"twice that"]]},{...u,key:"reached",label:"reached over set feed",about:"how much of F the machine really gets to",at:(h,f)=>l(h.share,f,200),ticks:[[0,"0 %"],[.5,"50 %"],[1,"all of F"]]},{...u,key:"depth",label:"depth of cut",about:"how deep the tool cuts at once",at:(h,f)=>l(h.depth,f),ticks:[[0,"0"],[.5,s(r.depth/2)],[1,`${s(r.depth)} ${n}`]]},{...u,key:"force",label:"force",about:"on the tool, the high end of what it may be",at:(h,f)=>l(h.force,f),ticks:[[0,"0"],[.5,String(Number((r.force/2).toPrecision(2)))],[1,`${Number(r.force.toPrecision(2))} N`]]},{...u,key:"height",label:"height",about:"Z of the tip of the tool",at:(h,f)=>(h.z[f+1]-o)/(a-o),ticks:[[0,s(o)],[.5,s(c)],[1,`${s(a)} ${n}`]]}]}function el(e,t){return Number.isNaN(t)?3:e.limits?t<e.limits[0]-.003?1:t>e.limits[1]+.003?2:0:0}function UF(e,t){let[n,i]=NF[t?"dark":"light"];return yc(n+(i-n)*e)}function FF(e,t){let[n,i,r,s,o]=DF[t?"dark":"light"];return e<Nh-.003?LA(n,i,e/Nh):e>kc+.003?LA(s,o,(e-kc)/(1-kc)):r}function LA(e,t,n){let i=(r,s)=>parseInt(r.slice(1+2*s,3+2*s),16);return`#${[0,1,2].map(r=>Math.round(i(e,r)+(i(t,r)-i(e,r))*n).toString(16).padStart(2,"0")).join("")}`}function Dx(e,t){let n=0,i=0;for(let r=0;r<t.n;r++)t.kind[r]===2&&(n++,Number.isNaN(e.at(t,r))||i++);return n?i/n:0}var OF=512,BF=[0,1/1500,1/500,1/200],kF=1/3,zF=(Math.sqrt(5)-1)/2,GF=.1,VF=.12,Fh=class{constructor(t,n){this.fine=t;this.coarse=n;this.at=HF(t,n),this.matters=WF(n)}fine;coarse;at;kept=null;matters;all(t,n,i){let{fine:r}=this,s=[];for(let l=0;l<r.n;l++)r.kind[l]===t&&(n===null||r.tool[l]===n)&&s.push(l);let o=Int32Array.from(s),a=o.map(l=>l+1);return{from:o,to:a,colour:Float32Array.from(s,l=>i.at(r,l))}}few(t,n,i,r,s){let o=this.means(i),a=[];for(let l of BF)if(a=this.merged(t,n,l*s,o),a.length<=r)break;return a.length>r&&(a=this.thinned(a,r,s)),{from:Int32Array.from(a,([l])=>this.at[l]),to:Int32Array.from(a,([,l])=>this.at[l]),colour:Float32Array.from(a,([l,c])=>o(l,c))}}means(t){if(this.kept?.key===t.key)return this.kept.mean;let{fine:n,at:i}=this,{x:r,y:s,z:o}=n,a=3,l=Array.from({length:a},()=>new Float64Array(n.n+1)),c=l.map(()=>new Float64Array(n.n+1));for(let h=0;h<n.n;h++){let f=n.kind[h]===2?t.at(n,h):NaN,d=el(t,f),p=Math.hypot(r[h+1]-r[h],s[h+1]-s[h],o[h+1]-o[h])+1e-9;for(let y=0;y<a;y++){let g=d===y?p:0;l[y][h+1]=l[y][h]+g,c[y][h+1]=c[y][h]+(g?p*f:0)}}let u=(h,f)=>{let d=l.map(m=>m[i[f]]-m[i[h]]),p=d.reduce((m,x)=>m+x,0),y=d[2]>d[1]?2:1,g=d[y]>=GF*p&&d[y]>0?y:0;return(c[g][i[f]]-c[g][i[h]])/d[g]};return this.kept={key:t.key,mean:u},u}merged(t,n,i,r){let{coarse:s,matters:o}=this,a=[],l=NaN;for(let c=0;c<s.n;c++){if(s.kind[c]!==t||n!==null&&s.tool[c]!==n)continue;let u=a[a.length-1],h=r(c,c+1),f=Number.isNaN(l)?Number.isNaN(h):Math.abs(l-h)<=VF;u&&u[1]===c&&o[c]<=i&&f?u[1]=c+1:(a.push([c,c+1]),l=h)}return a}thinned(t,n,i){let{x:r,y:s,z:o}=this.coarse,a=t.map(([h,f])=>Math.hypot(r[f]-r[h],s[f]-s[h],o[f]-o[h])>i*kF),l=a.reduce((h,f)=>h+Number(f),0),c=l<=n/2?l:0,u=(n-c)/Math.max(1,t.length-c);return t.filter((h,f)=>c>0&&a[f]||f*zF%1<u)}};function HF(e,t){let n=new Int32Array(t.x.length);for(let i=0,r=0;i<n.length;i++){for(;r+1<e.x.length&&(e.x[r]!==t.x[i]||e.y[r]!==t.y[i]||e.z[r]!==t.z[i]);)r++;n[i]=r}return n}function WF(e){let t=new Float32Array(e.x.length).fill(1/0),n=0;for(let i=1;i<=e.n;i++)i<e.n&&i-n<OF&&e.kind[i]!==4&&e.kind[i]===e.kind[n]&&e.tool[i]===e.tool[n]||($F(e,t,n,i),n=i);return t}function $F(e,t,n,i){let{x:r,y:s,z:o}=e,a=[[n,i,1/0]];for(let l=a.pop();l;l=a.pop()){let[c,u,h]=l;if(u-c<2)continue;let f=r[u]-r[c],d=s[u]-s[c],p=o[u]-o[c],y=f*f+d*d+p*p,g=-1,m=c+1;for(let x=c+1;x<u;x++){let M=r[x]-r[c],v=s[x]-s[c],S=o[x]-o[c],b=y>0?Math.min(1,Math.max(0,(M*f+v*d+S*p)/y)):0,_=(M-b*f)**2+(v-b*d)**2+(S-b*p)**2;_>g&&(g=_,m=x)}t[m]=Math.min(h,Math.sqrt(g)),a.push([c,m,t[m]],[m,u,t[m]])}}var Jr=22,Nx=6e6,Oh=class{constructor(t,n,i,r,s){this.lines=t;this.numbers=n;this.total=i;this.findings=r;this.pick=s;this.rows=Et("div",{class:"rows",role:"presentation"}),this.inner=Et("div",{class:"inner",role:"presentation"},this.rows),this.element=Et("div",{class:"listing",tabindex:"0",role:"listbox","aria-label":"Text of the program"},this.inner),this.inner.style.height=`${Math.min(this.lines.length*Jr,Nx)}px`,this.element.addEventListener("scroll",()=>this.refresh()),this.element.addEventListener("keydown",o=>this.key(o)),this.rows.addEventListener("click",o=>{let a=o.target.closest("[data-line]");a&&this.pick(Number(a.dataset.line))}),new ResizeObserver(()=>this.refresh()).observe(this.element),this.refresh()}lines;numbers;total;findings;pick;element;inner;rows;chosen=-1;marked=new Set;show(t,n=[]){this.marked=new Set(n),this.chosen=this.placeOf(t);let i=Math.max(1,Math.floor(this.element.clientHeight/Jr)),r=Math.max(0,this.chosen-Math.floor(i/2));this.element.scrollTop=r*this.scale(i),this.refresh()}scale(t){let n=Math.max(1,this.lines.length-t);return this.lines.length*Jr<=Nx?Jr:(Nx-t*Jr)/n}placeOf(t){let n=0,i=this.lines.length-1;for(;n<i;){let r=n+i+1>>1;this.numbers(r)<=t?n=r:i=r-1}return n}key(t){let n=Math.max(1,Math.floor(this.element.clientHeight/Jr)-1),i={ArrowDown:1,ArrowUp:-1,PageDown:n,PageUp:-n,Home:-1/0,End:1/0}[t.key];if(i===void 0)return;t.preventDefault();let r=Math.min(this.lines.length-1,Math.max(0,this.chosen+i));this.pick(this.numbers(r))}refresh(){let t=Math.ceil(this.element.clientHeight/Jr)+1,n=this.scale(t),i=Math.max(0,Math.min(this.lines.length-t+1,Math.floor(this.element.scrollTop/n))),r=[];for(let s=i;s<Math.min(this.lines.length,i+t);s++)r.push(this.row(s));this.rows.style.transform=`translateY(${n===Jr?i*Jr:this.element.scrollTop}px)`,this.rows.replaceChildren(...r),this.chosen>=i&&this.chosen<i+t?this.element.setAttribute("aria-activedescendant",`line-${this.numbers(this.chosen)}`):this.element.removeAttribute("aria-activedescendant")}row(t){let n=this.numbers(t),i=t===this.chosen,r=Et("div",{class:i?"row here":this.marked.has(n)?"row also":"row",role:"option",id:`line-${n}`,"aria-selected":String(i),"data-line":String(n)},Et("i",{},n.toLocaleString("en")),Et("code",{},this.lines[t]));t>0&&this.numbers(t-1)!==n-1&&r.classList.add("gap");let o=this.findings.get(n);return o&&r.append(Et("span",{class:"at"},`finding ${o.slice(0,3).map(a=>a+1).join(", ")}`)),r}get whole(){return this.lines.length===this.total}};var Ks={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Js={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},h2=0,f_=1,d2=2;var mu=1,p2=2,Pl=3,js=0,Gn=1,Ni=2,Zo=0,Il=1,h_=2,d_=3,p_=4,m2=5;var Ko=100,g2=101,y2=102,x2=103,_2=104,v2=200,b2=201,M2=202,S2=203,m_=204,g_=205,w2=206,T2=207,E2=208,A2=209,C2=210,R2=211,P2=212,I2=213,L2=214,hd=0,dd=1,pd=2,_l=3,md=4,gd=5,yd=6,xd=7,Xd=0,D2=1,N2=2,wr=0,y_=1,x_=2,__=3,v_=4,b_=5,M_=6,S_=7;var w_=300,Jo=301,Ll=302,qd=303,Yd=304,_d=1e3,Mr=1001,vd=1002,hn=1003,U2=1004;var gu=1005;var kn=1006,Zd=1007;var fs=1008;var ti=1009,T_=1010,E_=1011,Dl=1012,Kd=1013,Ji=1014,ji=1015,Qi=1016,Jd=1017,jd=1018,jo=1020,A_=35902,C_=35899,R_=1021,P_=1022,tr=1023,ss=1026,hs=1027,I_=1028,Qd=1029,Qs=1030,tp=1031;var ep=1033,yu=33776,xu=33777,_u=33778,vu=33779,np=35840,ip=35841,rp=35842,sp=35843,op=36196,ap=37492,lp=37496,cp=37488,up=37489,bu=37490,fp=37491,hp=37808,dp=37809,pp=37810,mp=37811,gp=37812,yp=37813,xp=37814,_p=37815,vp=37816,bp=37817,Mp=37818,Sp=37819,wp=37820,Tp=37821,Ep=36492,Ap=36494,Cp=36495,Rp=36283,Pp=36284,Mu=36285,Ip=36286;var qc=2300,bd=2301,ud=2302,r_=2303,s_=2400,o_=2401,a_=2402;var F2=3200;var Lp=0,O2=1,ds="",Bn="srgb",Yc="srgb-linear",Zc="linear",he="srgb";var fd=7680;var B2=519,k2=512,z2=513,G2=514,L_=515,V2=516,H2=517,D_=518,N_=519,U_=35044;var F_="300 es",Li=2e3,vl=2001;function XF(e){for(let t=e.length-1;t>=0;--t)if(e[t]>=65535)return!0;return!1}function qF(e){return ArrayBuffer.isView(e)&&!(e instanceof DataView)}function Kc(e){return document.createElementNS("http://www.w3.org/1999/xhtml",e)}function W2(){let e=Kc("canvas");return e.style.display="block",e}var UA={},bl=null;function Jc(...e){let t="THREE."+e.shift();bl?bl("log",t,...e):console.log(t,...e)}function $2(e){let t=e[0];if(typeof t=="string"&&t.startsWith("TSL:")){let n=e[1];n&&n.isStackTrace?e[0]+=" "+n.getLocation():e[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return e}function Ft(...e){e=$2(e);let t="THREE."+e.shift();if(bl)bl("warn",t,...e);else{let n=e[0];n&&n.isStackTrace?console.warn(n.getError(t)):console.warn(t,...e)}}function Gt(...e){e=$2(e);let t="THREE."+e.shift();if(bl)bl("error",t,...e);else{let n=e[0];n&&n.isStackTrace?console.error(n.getError(t)):console.error(t,...e)}}function $c(...e){let t=e.join(" ");t in UA||(UA[t]=!0,Ft(...e))}function X2(e,t,n){return new Promise(function(i,r){function s(){switch(e.clientWaitSync(t,e.SYNC_FLUSH_COMMANDS_BIT,0)){case e.WAIT_FAILED:r();break;case e.TIMEOUT_EXPIRED:setTimeout(s,n);break;default:i()}}setTimeout(s,n)})}var q2={[hd]:hd,[pd]:yd,[md]:md,[_l]:gd,[dd]:dd,[yd]:pd,[xd]:xd,[gd]:_l},Yi=class{addEventListener(t,n){this._listeners===void 0&&(this._listeners={});let i=this._listeners;i[t]===void 0&&(i[t]=[]),i[t].indexOf(n)===-1&&i[t].push(n)}hasEventListener(t,n){let i=this._listeners;return i===void 0?!1:i[t]!==void 0&&i[t].indexOf(n)!==-1}removeEventListener(t,n){let i=this._listeners;if(i===void 0)return;let r=i[t];if(r!==void 0){let s=r.indexOf(n);s!==-1&&r.splice(s,1)}}dispatchEvent(t){let n=this._listeners;if(n===void 0)return;let i=n[t.type];if(i!==void 0){t.target=this;let r=i.slice(0);for(let s=0,o=r.length;s<o;s++)r[s].call(this,t);t.target=null}}},wn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],FA=1234567,yl=Math.PI/180,Ml=180/Math.PI;function to(){let e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0,i=Math.random()*4294967295|0;return(wn[e&255]+wn[e>>8&255]+wn[e>>16&255]+wn[e>>24&255]+"-"+wn[t&255]+wn[t>>8&255]+"-"+wn[t>>16&15|64]+wn[t>>24&255]+"-"+wn[n&63|128]+wn[n>>8&255]+"-"+wn[n>>16&255]+wn[n>>24&255]+wn[i&255]+wn[i>>8&255]+wn[i>>16&255]+wn[i>>24&255]).toLowerCase()}function Xt(e,t,n){return Math.max(t,Math.min(n,e))}function O_(e,t){return(e%t+t)%t}function YF(e,t,n,i,r){return i+(e-t)*(r-i)/(n-t)}function ZF(e,t,n){return e!==t?(n-e)/(t-e):0}function Xc(e,t,n){return(1-n)*e+n*t}function KF(e,t,n,i){return Xc(e,t,1-Math.exp(-n*i))}function JF(e,t=1){return t-Math.abs(O_(e,t*2)-t)}function jF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*(3-2*e))}function QF(e,t,n){return e<=t?0:e>=n?1:(e=(e-t)/(n-t),e*e*e*(e*(e*6-15)+10))}function tO(e,t){return e+Math.floor(Math.random()*(t-e+1))}function eO(e,t){return e+Math.random()*(t-e)}function nO(e){return e*(.5-Math.random())}function iO(e){e!==void 0&&(FA=e);let t=FA+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function rO(e){return e*yl}function sO(e){return e*Ml}function oO(e){return e>0&&Number.isInteger(e)&&2**Math.round(Math.log2(e))===e}function aO(e){return Math.pow(2,Math.ceil(Math.log(e)/Math.LN2))}function B_(e){return Math.pow(2,Math.floor(Math.log(e)/Math.LN2))}function lO(e,t,n,i,r){let s=Math.cos,o=Math.sin,a=s(n/2),l=o(n/2),c=s((t+i)/2),u=o((t+i)/2),h=s((t-i)/2),f=o((t-i)/2),d=s((i-t)/2),p=o((i-t)/2);switch(r){case"XYX":e.set(a*u,l*h,l*f,a*c);break;case"YZY":e.set(l*f,a*u,l*h,a*c);break;case"ZXZ":e.set(l*h,l*f,a*u,a*c);break;case"XZX":e.set(a*u,l*p,l*d,a*c);break;case"YXY":e.set(l*d,a*u,l*p,a*c);break;case"ZYZ":e.set(l*p,l*d,a*u,a*c);break;default:Ft("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+r)}}function Dp(e){switch(e.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function k_(e,t){if(t.constructor===Float32Array)return e;let n=Dp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(e/n,-1)}function z_(e,t){if(t.constructor===Float32Array)return e;let n=Dp(t);if(n===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(e*n)}var Su={DEG2RAD:yl,RAD2DEG:Ml,generateUUID:to,clamp:Xt,euclideanModulo:O_,mapLinear:YF,inverseLerp:ZF,lerp:Xc,damp:KF,pingpong:JF,smoothstep:jF,smootherstep:QF,randInt:tO,randFloat:eO,randFloatSpread:nO,seededRandom:iO,degToRad:rO,radToDeg:sO,isPowerOfTwo:oO,ceilPowerOfTwo:aO,floorPowerOfTwo:B_,setQuaternionFromProperEuler:lO,normalize:z_,denormalize:k_},Bt=class{static{this.prototype.isVector2=!0}constructor(t=0,n=0){this.x=t,this.y=n}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,n){return this.x=t,this.y=n,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let n=this.x,i=this.y,r=t.elements;return this.x=r[0]*n+r[3]*i+r[6],this.y=r[1]*n+r[4]*i+r[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y;return n*n+i*i}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this}rotateAround(t,n){let i=Math.cos(n),r=Math.sin(n),s=this.x-t.x,o=this.y-t.y;return this.x=s*i-o*r+t.x,this.y=s*r+o*i+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},fi=class{constructor(t=0,n=0,i=0,r=1){this.isQuaternion=!0,this._x=t,this._y=n,this._z=i,this._w=r}static slerpFlat(t,n,i,r,s,o,a){let l=i[r+0],c=i[r+1],u=i[r+2],h=i[r+3],f=s[o+0],d=s[o+1],p=s[o+2],y=s[o+3];if(h!==y||l!==f||c!==d||u!==p){let g=l*f+c*d+u*p+h*y;g<0&&(f=-f,d=-d,p=-p,y=-y,g=-g);let m=1-a;if(g<.9995){let x=Math.acos(g),M=Math.sin(x);m=Math.sin(m*x)/M,a=Math.sin(a*x)/M,l=l*m+f*a,c=c*m+d*a,u=u*m+p*a,h=h*m+y*a}else{l=l*m+f*a,c=c*m+d*a,u=u*m+p*a,h=h*m+y*a;let x=1/Math.sqrt(l*l+c*c+u*u+h*h);l*=x,c*=x,u*=x,h*=x}}t[n]=l,t[n+1]=c,t[n+2]=u,t[n+3]=h}static multiplyQuaternionsFlat(t,n,i,r,s,o){let a=i[r],l=i[r+1],c=i[r+2],u=i[r+3],h=s[o],f=s[o+1],d=s[o+2],p=s[o+3];return t[n]=a*p+u*h+l*d-c*f,t[n+1]=l*p+u*f+c*h-a*d,t[n+2]=c*p+u*d+a*f-l*h,t[n+3]=u*p-a*h-l*f-c*d,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,n,i,r){return this._x=t,this._y=n,this._z=i,this._w=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,n=!0){let i=t._x,r=t._y,s=t._z,o=t._order,a=Math.cos,l=Math.sin,c=a(i/2),u=a(r/2),h=a(s/2),f=l(i/2),d=l(r/2),p=l(s/2);switch(o){case"XYZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"YXZ":this._x=f*u*h+c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"ZXY":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h-f*d*p;break;case"ZYX":this._x=f*u*h-c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h+f*d*p;break;case"YZX":this._x=f*u*h+c*d*p,this._y=c*d*h+f*u*p,this._z=c*u*p-f*d*h,this._w=c*u*h-f*d*p;break;case"XZY":this._x=f*u*h-c*d*p,this._y=c*d*h-f*u*p,this._z=c*u*p+f*d*h,this._w=c*u*h+f*d*p;break;default:Ft("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return n===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,n){let i=n/2,r=Math.sin(i);return this._x=t.x*r,this._y=t.y*r,this._z=t.z*r,this._w=Math.cos(i),this._onChangeCallback(),this}setFromRotationMatrix(t){let n=t.elements,i=n[0],r=n[4],s=n[8],o=n[1],a=n[5],l=n[9],c=n[2],u=n[6],h=n[10],f=i+a+h;if(f>0){let d=.5/Math.sqrt(f+1);this._w=.25/d,this._x=(u-l)*d,this._y=(s-c)*d,this._z=(o-r)*d}else if(i>a&&i>h){let d=2*Math.sqrt(1+i-a-h);this._w=(u-l)/d,this._x=.25*d,this._y=(r+o)/d,this._z=(s+c)/d}else if(a>h){let d=2*Math.sqrt(1+a-i-h);this._w=(s-c)/d,this._x=(r+o)/d,this._y=.25*d,this._z=(l+u)/d}else{let d=2*Math.sqrt(1+h-i-a);this._w=(o-r)/d,this._x=(s+c)/d,this._y=(l+u)/d,this._z=.25*d}return this._onChangeCallback(),this}setFromUnitVectors(t,n){let i=t.dot(n)+1;return i<1e-8?(i=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=i):(this._x=0,this._y=-t.z,this._z=t.y,this._w=i)):(this._x=t.y*n.z-t.z*n.y,this._y=t.z*n.x-t.x*n.z,this._z=t.x*n.y-t.y*n.x,this._w=i),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(Xt(this.dot(t),-1,1)))}rotateTowards(t,n){let i=this.angleTo(t);if(i===0)return this;let r=Math.min(1,n/i);return this.slerp(t,r),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=n._x,l=n._y,c=n._z,u=n._w;return this._x=i*u+o*a+r*c-s*l,this._y=r*u+o*l+s*a-i*c,this._z=s*u+o*c+i*l-r*a,this._w=o*u-i*a-r*l-s*c,this._onChangeCallback(),this}slerp(t,n){let i=t._x,r=t._y,s=t._z,o=t._w,a=this.dot(t);a<0&&(i=-i,r=-r,s=-s,o=-o,a=-a);let l=1-n;if(a<.9995){let c=Math.acos(a),u=Math.sin(c);l=Math.sin(l*c)/u,n=Math.sin(n*c)/u,this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this._onChangeCallback()}else this._x=this._x*l+i*n,this._y=this._y*l+r*n,this._z=this._z*l+s*n,this._w=this._w*l+o*n,this.normalize();return this}slerpQuaternions(t,n,i){return this.copy(t).slerp(n,i)}random(){let t=2*Math.PI*Math.random(),n=2*Math.PI*Math.random(),i=Math.random(),r=Math.sqrt(1-i),s=Math.sqrt(i);return this.set(r*Math.sin(t),r*Math.cos(t),s*Math.sin(n),s*Math.cos(n))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,n=0){return this._x=t[n],this._y=t[n+1],this._z=t[n+2],this._w=t[n+3],this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._w,t}fromBufferAttribute(t,n){return this._x=t.getX(n),this._y=t.getY(n),this._z=t.getZ(n),this._w=t.getW(n),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},z=class{static{this.prototype.isVector3=!0}constructor(t=0,n=0,i=0){this.x=t,this.y=n,this.z=i}set(t,n,i){return i===void 0&&(i=this.z),this.x=t,this.y=n,this.z=i,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,n){return this.x=t.x*n.x,this.y=t.y*n.y,this.z=t.z*n.z,this}applyEuler(t){return this.applyQuaternion(OA.setFromEuler(t))}applyAxisAngle(t,n){return this.applyQuaternion(OA.setFromAxisAngle(t,n))}applyMatrix3(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[3]*i+s[6]*r,this.y=s[1]*n+s[4]*i+s[7]*r,this.z=s[2]*n+s[5]*i+s[8]*r,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=t.elements,o=1/(s[3]*n+s[7]*i+s[11]*r+s[15]);return this.x=(s[0]*n+s[4]*i+s[8]*r+s[12])*o,this.y=(s[1]*n+s[5]*i+s[9]*r+s[13])*o,this.z=(s[2]*n+s[6]*i+s[10]*r+s[14])*o,this}applyQuaternion(t){let n=this.x,i=this.y,r=this.z,s=t.x,o=t.y,a=t.z,l=t.w,c=2*(o*r-a*i),u=2*(a*n-s*r),h=2*(s*i-o*n);return this.x=n+l*c+o*h-a*u,this.y=i+l*u+a*c-s*h,this.z=r+l*h+s*u-o*c,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let n=this.x,i=this.y,r=this.z,s=t.elements;return this.x=s[0]*n+s[4]*i+s[8]*r,this.y=s[1]*n+s[5]*i+s[9]*r,this.z=s[2]*n+s[6]*i+s[10]*r,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,n){let i=t.x,r=t.y,s=t.z,o=n.x,a=n.y,l=n.z;return this.x=r*l-s*a,this.y=s*o-i*l,this.z=i*a-r*o,this}projectOnVector(t){let n=t.lengthSq();if(n===0)return this.set(0,0,0);let i=t.dot(this)/n;return this.copy(t).multiplyScalar(i)}projectOnPlane(t){return Ux.copy(this).projectOnVector(t),this.sub(Ux)}reflect(t){return this.sub(Ux.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let n=Math.sqrt(this.lengthSq()*t.lengthSq());if(n===0)return Math.PI/2;let i=this.dot(t)/n;return Math.acos(Xt(i,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let n=this.x-t.x,i=this.y-t.y,r=this.z-t.z;return n*n+i*i+r*r}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,n,i){let r=Math.sin(n)*t;return this.x=r*Math.sin(i),this.y=Math.cos(n)*t,this.z=r*Math.cos(i),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,n,i){return this.x=t*Math.sin(n),this.y=i,this.z=t*Math.cos(n),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this}setFromMatrixScale(t){let n=this.setFromMatrixColumn(t,0).length(),i=this.setFromMatrixColumn(t,1).length(),r=this.setFromMatrixColumn(t,2).length();return this.x=n,this.y=i,this.z=r,this}setFromMatrixColumn(t,n){return this.fromArray(t.elements,n*4)}setFromMatrix3Column(t,n){return this.fromArray(t.elements,n*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,n=Math.random()*2-1,i=Math.sqrt(1-n*n);return this.x=i*Math.cos(t),this.y=n,this.z=i*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Ux=new z,OA=new fi,Vt=class{static{this.prototype.isMatrix3=!0}constructor(t,n,i,r,s,o,a,l,c){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c)}set(t,n,i,r,s,o,a,l,c){let u=this.elements;return u[0]=t,u[1]=r,u[2]=a,u[3]=n,u[4]=s,u[5]=l,u[6]=i,u[7]=o,u[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],this}extractBasis(t,n,i){return t.setFromMatrix3Column(this,0),n.setFromMatrix3Column(this,1),i.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let n=t.elements;return this.set(n[0],n[4],n[8],n[1],n[5],n[9],n[2],n[6],n[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[3],l=i[6],c=i[1],u=i[4],h=i[7],f=i[2],d=i[5],p=i[8],y=r[0],g=r[3],m=r[6],x=r[1],M=r[4],v=r[7],S=r[2],b=r[5],_=r[8];return s[0]=o*y+a*x+l*S,s[3]=o*g+a*M+l*b,s[6]=o*m+a*v+l*_,s[1]=c*y+u*x+h*S,s[4]=c*g+u*M+h*b,s[7]=c*m+u*v+h*_,s[2]=f*y+d*x+p*S,s[5]=f*g+d*M+p*b,s[8]=f*m+d*v+p*_,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[3]*=t,n[6]*=t,n[1]*=t,n[4]*=t,n[7]*=t,n[2]*=t,n[5]*=t,n[8]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8];return n*o*u-n*a*c-i*s*u+i*a*l+r*s*c-r*o*l}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=u*o-a*c,f=a*l-u*s,d=c*s-o*l,p=n*h+i*f+r*d;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let y=1/p;return t[0]=h*y,t[1]=(r*c-u*i)*y,t[2]=(a*i-r*o)*y,t[3]=f*y,t[4]=(u*n-r*l)*y,t[5]=(r*s-a*n)*y,t[6]=d*y,t[7]=(i*l-c*n)*y,t[8]=(o*n-i*s)*y,this}transpose(){let t,n=this.elements;return t=n[1],n[1]=n[3],n[3]=t,t=n[2],n[2]=n[6],n[6]=t,t=n[5],n[5]=n[7],n[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let n=this.elements;return t[0]=n[0],t[1]=n[3],t[2]=n[6],t[3]=n[1],t[4]=n[4],t[5]=n[7],t[6]=n[2],t[7]=n[5],t[8]=n[8],this}setUvTransform(t,n,i,r,s,o,a){let l=Math.cos(s),c=Math.sin(s);return this.set(i*l,i*c,-i*(l*o+c*a)+o+t,-r*c,r*l,-r*(-c*o+l*a)+a+n,0,0,1),this}scale(t,n){return $c("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Fx.makeScale(t,n)),this}rotate(t){return $c("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Fx.makeRotation(-t)),this}translate(t,n){return $c("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Fx.makeTranslation(t,n)),this}makeTranslation(t,n){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,n,0,0,1),this}makeRotation(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,i,n,0,0,0,1),this}makeScale(t,n){return this.set(t,0,0,0,n,0,0,0,1),this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<9;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<9;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t}clone(){return new this.constructor().fromArray(this.elements)}},Fx=new Vt,BA=new Vt().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),kA=new Vt().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function cO(){let e={enabled:!0,workingColorSpace:Yc,spaces:{},convert:function(r,s,o){return this.enabled===!1||s===o||!s||!o||(this.spaces[s].transfer===he&&(r.r=rs(r.r),r.g=rs(r.g),r.b=rs(r.b)),this.spaces[s].primaries!==this.spaces[o].primaries&&(r.applyMatrix3(this.spaces[s].toXYZ),r.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===he&&(r.r=xl(r.r),r.g=xl(r.g),r.b=xl(r.b))),r},workingToColorSpace:function(r,s){return this.convert(r,this.workingColorSpace,s)},colorSpaceToWorking:function(r,s){return this.convert(r,s,this.workingColorSpace)},getPrimaries:function(r){return this.spaces[r].primaries},getTransfer:function(r){return r===ds?Zc:this.spaces[r].transfer},getToneMappingMode:function(r){return this.spaces[r].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(r,s=this.workingColorSpace){return r.fromArray(this.spaces[s].luminanceCoefficients)},define:function(r){Object.assign(this.spaces,r)},_getMatrix:function(r,s,o){return r.copy(this.spaces[o].fromXYZ).multiply(this.spaces[s].toXYZ)},_getDrawingBufferColorSpace:function(r){return this.spaces[r].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(r=this.workingColorSpace){return this.spaces[r].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],n=[.2126,.7152,.0722],i=[.3127,.329];return e.define({[Yc]:{primaries:t,whitePoint:i,transfer:Zc,toXYZ:BA,fromXYZ:kA,luminanceCoefficients:n,workingColorSpaceConfig:{unpackColorSpace:Bn},outputColorSpaceConfig:{drawingBufferColorSpace:Bn}},[Bn]:{primaries:t,whitePoint:i,transfer:he,toXYZ:BA,fromXYZ:kA,luminanceCoefficients:n,outputColorSpaceConfig:{drawingBufferColorSpace:Bn}}}),e}var ie=cO();function rs(e){return e<.04045?e*.0773993808:Math.pow(e*.9478672986+.0521327014,2.4)}function xl(e){return e<.0031308?e*12.92:1.055*Math.pow(e,.41666)-.055}var nl,Md=class{static getDataURL(t,n="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let i;if(t instanceof HTMLCanvasElement)i=t;else{nl===void 0&&(nl=Kc("canvas")),nl.width=t.width,nl.height=t.height;let r=nl.getContext("2d");t instanceof ImageData?r.putImageData(t,0,0):r.drawImage(t,0,0,t.width,t.height),i=nl}return i.toDataURL(n)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let n=Kc("canvas");n.width=t.width,n.height=t.height;let i=n.getContext("2d");i.drawImage(t,0,0,t.width,t.height);let r=i.getImageData(0,0,t.width,t.height),s=r.data;for(let o=0;o<s.length;o++)s[o]=rs(s[o]/255)*255;return i.putImageData(r,0,0),n}else if(t.data){let n=t.data.slice(0);for(let i=0;i<n.length;i++)n instanceof Uint8Array||n instanceof Uint8ClampedArray?n[i]=Math.floor(rs(n[i]/255)*255):n[i]=rs(n[i]);return{data:n,width:t.width,height:t.height}}else return Ft("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},uO=0,Sl=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:uO++}),this.uuid=to(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let n=this.data;return typeof HTMLVideoElement<"u"&&n instanceof HTMLVideoElement?t.set(n.videoWidth,n.videoHeight,0):typeof VideoFrame<"u"&&n instanceof VideoFrame?t.set(n.displayWidth,n.displayHeight,0):n!==null?t.set(n.width||0,n.height||0,n.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let i={uuid:this.uuid,url:""},r=this.data;if(r!==null){let s;if(Array.isArray(r)){s=[];for(let o=0,a=r.length;o<a;o++)r[o].isDataTexture?s.push(Ox(r[o].image)):s.push(Ox(r[o]))}else s=Ox(r);i.url=s}return n||(t.images[this.uuid]=i),i}};function Ox(e){return typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap?Md.getDataURL(e):e.data?{data:Array.from(e.data),width:e.width,height:e.height,type:e.data.constructor.name}:(Ft("Texture: Unable to serialize Texture."),{})}var fO=0,Bx=new z,Qn=class e extends Yi{constructor(t=e.DEFAULT_IMAGE,n=e.DEFAULT_MAPPING,i=Mr,r=Mr,s=kn,o=fs,a=tr,l=ti,c=e.DEFAULT_ANISOTROPY,u=ds){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:fO++}),this.uuid=to(),this.name="",this.source=new Sl(t),this.mipmaps=[],this.mapping=n,this.channel=0,this.wrapS=i,this.wrapT=r,this.magFilter=s,this.minFilter=o,this.anisotropy=c,this.format=a,this.internalFormat=null,this.type=l,this.offset=new Bt(0,0),this.repeat=new Bt(1,1),this.center=new Bt(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Vt,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Bx).x}get height(){return this.source.getSize(Bx).y}get depth(){return this.source.getSize(Bx).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let n in t){let i=t[n];if(i===void 0){Ft(`Texture.setValues(): parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Texture.setValues(): property '${n}' does not exist.`);continue}r&&i&&r.isVector2&&i.isVector2||r&&i&&r.isVector3&&i.isVector3||r&&i&&r.isMatrix3&&i.isMatrix3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";if(!n&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let i={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(i.userData=this.userData),n||(t.textures[this.uuid]=i),i}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==w_)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case _d:t.x=t.x-Math.floor(t.x);break;case Mr:t.x=t.x<0?0:1;break;case vd:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case _d:t.y=t.y-Math.floor(t.y);break;case Mr:t.y=t.y<0?0:1;break;case vd:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Qn.DEFAULT_IMAGE=null;Qn.DEFAULT_MAPPING=w_;Qn.DEFAULT_ANISOTROPY=1;var de=class{static{this.prototype.isVector4=!0}constructor(t=0,n=0,i=0,r=1){this.x=t,this.y=n,this.z=i,this.w=r}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,n,i,r){return this.x=t,this.y=n,this.z=i,this.w=r,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,n){switch(t){case 0:this.x=n;break;case 1:this.y=n;break;case 2:this.z=n;break;case 3:this.w=n;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,n){return this.x=t.x+n.x,this.y=t.y+n.y,this.z=t.z+n.z,this.w=t.w+n.w,this}addScaledVector(t,n){return this.x+=t.x*n,this.y+=t.y*n,this.z+=t.z*n,this.w+=t.w*n,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,n){return this.x=t.x-n.x,this.y=t.y-n.y,this.z=t.z-n.z,this.w=t.w-n.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let n=this.x,i=this.y,r=this.z,s=this.w,o=t.elements;return this.x=o[0]*n+o[4]*i+o[8]*r+o[12]*s,this.y=o[1]*n+o[5]*i+o[9]*r+o[13]*s,this.z=o[2]*n+o[6]*i+o[10]*r+o[14]*s,this.w=o[3]*n+o[7]*i+o[11]*r+o[15]*s,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let n=Math.sqrt(1-t.w*t.w);return n<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/n,this.y=t.y/n,this.z=t.z/n),this}setAxisAngleFromRotationMatrix(t){let n,i,r,s,l=t.elements,c=l[0],u=l[4],h=l[8],f=l[1],d=l[5],p=l[9],y=l[2],g=l[6],m=l[10];if(Math.abs(u-f)<.01&&Math.abs(h-y)<.01&&Math.abs(p-g)<.01){if(Math.abs(u+f)<.1&&Math.abs(h+y)<.1&&Math.abs(p+g)<.1&&Math.abs(c+d+m-3)<.1)return this.set(1,0,0,0),this;n=Math.PI;let M=(c+1)/2,v=(d+1)/2,S=(m+1)/2,b=(u+f)/4,_=(h+y)/4,w=(p+g)/4;return M>v&&M>S?M<.01?(i=0,r=.707106781,s=.707106781):(i=Math.sqrt(M),r=b/i,s=_/i):v>S?v<.01?(i=.707106781,r=0,s=.707106781):(r=Math.sqrt(v),i=b/r,s=w/r):S<.01?(i=.707106781,r=.707106781,s=0):(s=Math.sqrt(S),i=_/s,r=w/s),this.set(i,r,s,n),this}let x=Math.sqrt((g-p)*(g-p)+(h-y)*(h-y)+(f-u)*(f-u));return Math.abs(x)<.001&&(x=1),this.x=(g-p)/x,this.y=(h-y)/x,this.z=(f-u)/x,this.w=Math.acos((c+d+m-1)/2),this}setFromMatrixPosition(t){let n=t.elements;return this.x=n[12],this.y=n[13],this.z=n[14],this.w=n[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,n){return this.x=Xt(this.x,t.x,n.x),this.y=Xt(this.y,t.y,n.y),this.z=Xt(this.z,t.z,n.z),this.w=Xt(this.w,t.w,n.w),this}clampScalar(t,n){return this.x=Xt(this.x,t,n),this.y=Xt(this.y,t,n),this.z=Xt(this.z,t,n),this.w=Xt(this.w,t,n),this}clampLength(t,n){let i=this.length();return this.divideScalar(i||1).multiplyScalar(Xt(i,t,n))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,n){return this.x+=(t.x-this.x)*n,this.y+=(t.y-this.y)*n,this.z+=(t.z-this.z)*n,this.w+=(t.w-this.w)*n,this}lerpVectors(t,n,i){return this.x=t.x+(n.x-t.x)*i,this.y=t.y+(n.y-t.y)*i,this.z=t.z+(n.z-t.z)*i,this.w=t.w+(n.w-t.w)*i,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,n=0){return this.x=t[n],this.y=t[n+1],this.z=t[n+2],this.w=t[n+3],this}toArray(t=[],n=0){return t[n]=this.x,t[n+1]=this.y,t[n+2]=this.z,t[n+3]=this.w,t}fromBufferAttribute(t,n){return this.x=t.getX(n),this.y=t.getY(n),this.z=t.getZ(n),this.w=t.getW(n),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Sd=class extends Yi{constructor(t=1,n=1,i={}){super(),i=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:kn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},i),this.isRenderTarget=!0,this.width=t,this.height=n,this.depth=i.depth,this.scissor=new de(0,0,t,n),this.scissorTest=!1,this.viewport=new de(0,0,t,n),this.textures=[];let r=i.count;for(let s=0;s<r;s++)this.textures[s]=new Qn({width:t,height:n,depth:i.depth}),this.textures[s].isRenderTargetTexture=!0,this.textures[s].renderTarget=this;this._setTextureOptions(i),this.depthBuffer=i.depthBuffer,this.stencilBuffer=i.stencilBuffer,this.resolveColorBuffer=i.resolveColorBuffer,this.resolveDepthBuffer=i.resolveDepthBuffer,this.resolveStencilBuffer=i.resolveStencilBuffer,this.storeMultisampledColorBuffer=i.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=i.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=i.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=i.depthTexture,this.samples=i.samples,this.multiview=i.multiview,this.useArrayDepthTexture=i.useArrayDepthTexture}_setTextureOptions(t={}){let n={minFilter:kn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(n.mapping=t.mapping),t.wrapS!==void 0&&(n.wrapS=t.wrapS),t.wrapT!==void 0&&(n.wrapT=t.wrapT),t.wrapR!==void 0&&(n.wrapR=t.wrapR),t.magFilter!==void 0&&(n.magFilter=t.magFilter),t.minFilter!==void 0&&(n.minFilter=t.minFilter),t.format!==void 0&&(n.format=t.format),t.type!==void 0&&(n.type=t.type),t.anisotropy!==void 0&&(n.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(n.colorSpace=t.colorSpace),t.flipY!==void 0&&(n.flipY=t.flipY),t.generateMipmaps!==void 0&&(n.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(n.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(n.internalFormat=t.internalFormat);for(let i=0;i<this.textures.length;i++)this.textures[i].setValues(n)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,n,i=1){if(this.width!==t||this.height!==n||this.depth!==i){this.width=t,this.height=n,this.depth=i;for(let r=0,s=this.textures.length;r<s;r++)this.textures[r].image.width=t,this.textures[r].image.height=n,this.textures[r].image.depth=i,this.textures[r].isData3DTexture!==!0&&(this.textures[r].isArrayTexture=this.textures[r].image.depth>1);this.dispose()}this.viewport.set(0,0,t,n),this.scissor.set(0,0,t,n)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let n=0,i=t.textures.length;n<i;n++){this.textures[n]=t.textures[n].clone(),this.textures[n].isRenderTargetTexture=!0,this.textures[n].renderTarget=this;let r=Object.assign({},t.textures[n].image);this.textures[n].source=new Sl(r)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let n=t.depthTexture.clone();n.renderTarget=null,this.depthTexture=n}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},zn=class extends Sd{constructor(t=1,n=1,i={}){super(t,n,i),this.isWebGLRenderTarget=!0}},jc=class extends Qn{constructor(t=null,n=1,i=1,r=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=hn,this.minFilter=hn,this.wrapR=Mr,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var wd=class extends Qn{constructor(t=null,n=1,i=1,r=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:n,height:i,depth:r},this.magFilter=hn,this.minFilter=hn,this.wrapR=Mr,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var be=class e{static{this.prototype.isMatrix4=!0}constructor(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g)}set(t,n,i,r,s,o,a,l,c,u,h,f,d,p,y,g){let m=this.elements;return m[0]=t,m[4]=n,m[8]=i,m[12]=r,m[1]=s,m[5]=o,m[9]=a,m[13]=l,m[2]=c,m[6]=u,m[10]=h,m[14]=f,m[3]=d,m[7]=p,m[11]=y,m[15]=g,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new e().fromArray(this.elements)}copy(t){let n=this.elements,i=t.elements;return n[0]=i[0],n[1]=i[1],n[2]=i[2],n[3]=i[3],n[4]=i[4],n[5]=i[5],n[6]=i[6],n[7]=i[7],n[8]=i[8],n[9]=i[9],n[10]=i[10],n[11]=i[11],n[12]=i[12],n[13]=i[13],n[14]=i[14],n[15]=i[15],this}copyPosition(t){let n=this.elements,i=t.elements;return n[12]=i[12],n[13]=i[13],n[14]=i[14],this}setFromMatrix3(t){let n=t.elements;return this.set(n[0],n[3],n[6],0,n[1],n[4],n[7],0,n[2],n[5],n[8],0,0,0,0,1),this}extractBasis(t,n,i){return this.determinantAffine()===0?(t.set(1,0,0),n.set(0,1,0),i.set(0,0,1),this):(t.setFromMatrixColumn(this,0),n.setFromMatrixColumn(this,1),i.setFromMatrixColumn(this,2),this)}makeBasis(t,n,i){return this.set(t.x,n.x,i.x,0,t.y,n.y,i.y,0,t.z,n.z,i.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let n=this.elements,i=t.elements,r=1/il.setFromMatrixColumn(t,0).length(),s=1/il.setFromMatrixColumn(t,1).length(),o=1/il.setFromMatrixColumn(t,2).length();return n[0]=i[0]*r,n[1]=i[1]*r,n[2]=i[2]*r,n[3]=0,n[4]=i[4]*s,n[5]=i[5]*s,n[6]=i[6]*s,n[7]=0,n[8]=i[8]*o,n[9]=i[9]*o,n[10]=i[10]*o,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromEuler(t){let n=this.elements,i=t.x,r=t.y,s=t.z,o=Math.cos(i),a=Math.sin(i),l=Math.cos(r),c=Math.sin(r),u=Math.cos(s),h=Math.sin(s);if(t.order==="XYZ"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=-l*h,n[8]=c,n[1]=d+p*c,n[5]=f-y*c,n[9]=-a*l,n[2]=y-f*c,n[6]=p+d*c,n[10]=o*l}else if(t.order==="YXZ"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f+y*a,n[4]=p*a-d,n[8]=o*c,n[1]=o*h,n[5]=o*u,n[9]=-a,n[2]=d*a-p,n[6]=y+f*a,n[10]=o*l}else if(t.order==="ZXY"){let f=l*u,d=l*h,p=c*u,y=c*h;n[0]=f-y*a,n[4]=-o*h,n[8]=p+d*a,n[1]=d+p*a,n[5]=o*u,n[9]=y-f*a,n[2]=-o*c,n[6]=a,n[10]=o*l}else if(t.order==="ZYX"){let f=o*u,d=o*h,p=a*u,y=a*h;n[0]=l*u,n[4]=p*c-d,n[8]=f*c+y,n[1]=l*h,n[5]=y*c+f,n[9]=d*c-p,n[2]=-c,n[6]=a*l,n[10]=o*l}else if(t.order==="YZX"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=y-f*h,n[8]=p*h+d,n[1]=h,n[5]=o*u,n[9]=-a*u,n[2]=-c*u,n[6]=d*h+p,n[10]=f-y*h}else if(t.order==="XZY"){let f=o*l,d=o*c,p=a*l,y=a*c;n[0]=l*u,n[4]=-h,n[8]=c*u,n[1]=f*h+y,n[5]=o*u,n[9]=d*h-p,n[2]=p*h-d,n[6]=a*u,n[10]=y*h+f}return n[3]=0,n[7]=0,n[11]=0,n[12]=0,n[13]=0,n[14]=0,n[15]=1,this}makeRotationFromQuaternion(t){return this.compose(hO,t,dO)}lookAt(t,n,i){let r=this.elements;return oi.subVectors(t,n),oi.lengthSq()===0&&(oi.z=1),oi.normalize(),Bs.crossVectors(i,oi),Bs.lengthSq()===0&&(Math.abs(i.z)===1?oi.x+=1e-4:oi.z+=1e-4,oi.normalize(),Bs.crossVectors(i,oi)),Bs.normalize(),Bh.crossVectors(oi,Bs),r[0]=Bs.x,r[4]=Bh.x,r[8]=oi.x,r[1]=Bs.y,r[5]=Bh.y,r[9]=oi.y,r[2]=Bs.z,r[6]=Bh.z,r[10]=oi.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,n){let i=t.elements,r=n.elements,s=this.elements,o=i[0],a=i[4],l=i[8],c=i[12],u=i[1],h=i[5],f=i[9],d=i[13],p=i[2],y=i[6],g=i[10],m=i[14],x=i[3],M=i[7],v=i[11],S=i[15],b=r[0],_=r[4],w=r[8],R=r[12],A=r[1],C=r[5],P=r[9],O=r[13],I=r[2],D=r[6],k=r[10],U=r[14],Z=r[3],F=r[7],V=r[11],q=r[15];return s[0]=o*b+a*A+l*I+c*Z,s[4]=o*_+a*C+l*D+c*F,s[8]=o*w+a*P+l*k+c*V,s[12]=o*R+a*O+l*U+c*q,s[1]=u*b+h*A+f*I+d*Z,s[5]=u*_+h*C+f*D+d*F,s[9]=u*w+h*P+f*k+d*V,s[13]=u*R+h*O+f*U+d*q,s[2]=p*b+y*A+g*I+m*Z,s[6]=p*_+y*C+g*D+m*F,s[10]=p*w+y*P+g*k+m*V,s[14]=p*R+y*O+g*U+m*q,s[3]=x*b+M*A+v*I+S*Z,s[7]=x*_+M*C+v*D+S*F,s[11]=x*w+M*P+v*k+S*V,s[15]=x*R+M*O+v*U+S*q,this}multiplyScalar(t){let n=this.elements;return n[0]*=t,n[4]*=t,n[8]*=t,n[12]*=t,n[1]*=t,n[5]*=t,n[9]*=t,n[13]*=t,n[2]*=t,n[6]*=t,n[10]*=t,n[14]*=t,n[3]*=t,n[7]*=t,n[11]*=t,n[15]*=t,this}determinant(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[12],o=t[1],a=t[5],l=t[9],c=t[13],u=t[2],h=t[6],f=t[10],d=t[14],p=t[3],y=t[7],g=t[11],m=t[15],x=l*d-c*f,M=a*d-c*h,v=a*f-l*h,S=o*d-c*u,b=o*f-l*u,_=o*h-a*u;return n*(y*x-g*M+m*v)-i*(p*x-g*S+m*b)+r*(p*M-y*S+m*_)-s*(p*v-y*b+g*_)}determinantAffine(){let t=this.elements,n=t[0],i=t[4],r=t[8],s=t[1],o=t[5],a=t[9],l=t[2],c=t[6],u=t[10];return n*(o*u-a*c)-i*(s*u-a*l)+r*(s*c-o*l)}transpose(){let t=this.elements,n;return n=t[1],t[1]=t[4],t[4]=n,n=t[2],t[2]=t[8],t[8]=n,n=t[6],t[6]=t[9],t[9]=n,n=t[3],t[3]=t[12],t[12]=n,n=t[7],t[7]=t[13],t[13]=n,n=t[11],t[11]=t[14],t[14]=n,this}setPosition(t,n,i){let r=this.elements;return t.isVector3?(r[12]=t.x,r[13]=t.y,r[14]=t.z):(r[12]=t,r[13]=n,r[14]=i),this}invert(){let t=this.elements,n=t[0],i=t[1],r=t[2],s=t[3],o=t[4],a=t[5],l=t[6],c=t[7],u=t[8],h=t[9],f=t[10],d=t[11],p=t[12],y=t[13],g=t[14],m=t[15],x=n*a-i*o,M=n*l-r*o,v=n*c-s*o,S=i*l-r*a,b=i*c-s*a,_=r*c-s*l,w=u*y-h*p,R=u*g-f*p,A=u*m-d*p,C=h*g-f*y,P=h*m-d*y,O=f*m-d*g,I=x*O-M*P+v*C+S*A-b*R+_*w;if(I===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let D=1/I;return t[0]=(a*O-l*P+c*C)*D,t[1]=(r*P-i*O-s*C)*D,t[2]=(y*_-g*b+m*S)*D,t[3]=(f*b-h*_-d*S)*D,t[4]=(l*A-o*O-c*R)*D,t[5]=(n*O-r*A+s*R)*D,t[6]=(g*v-p*_-m*M)*D,t[7]=(u*_-f*v+d*M)*D,t[8]=(o*P-a*A+c*w)*D,t[9]=(i*A-n*P-s*w)*D,t[10]=(p*b-y*v+m*x)*D,t[11]=(h*v-u*b-d*x)*D,t[12]=(a*R-o*C-l*w)*D,t[13]=(n*C-i*R+r*w)*D,t[14]=(y*M-p*S-g*x)*D,t[15]=(u*S-h*M+f*x)*D,this}scale(t){let n=this.elements,i=t.x,r=t.y,s=t.z;return n[0]*=i,n[4]*=r,n[8]*=s,n[1]*=i,n[5]*=r,n[9]*=s,n[2]*=i,n[6]*=r,n[10]*=s,n[3]*=i,n[7]*=r,n[11]*=s,this}getMaxScaleOnAxis(){let t=this.elements,n=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],i=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],r=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(n,i,r))}makeTranslation(t,n,i){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,n,0,0,1,i,0,0,0,1),this}makeRotationX(t){let n=Math.cos(t),i=Math.sin(t);return this.set(1,0,0,0,0,n,-i,0,0,i,n,0,0,0,0,1),this}makeRotationY(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,0,i,0,0,1,0,0,-i,0,n,0,0,0,0,1),this}makeRotationZ(t){let n=Math.cos(t),i=Math.sin(t);return this.set(n,-i,0,0,i,n,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,n){let i=Math.cos(n),r=Math.sin(n),s=1-i,o=t.x,a=t.y,l=t.z,c=s*o,u=s*a;return this.set(c*o+i,c*a-r*l,c*l+r*a,0,c*a+r*l,u*a+i,u*l-r*o,0,c*l-r*a,u*l+r*o,s*l*l+i,0,0,0,0,1),this}makeScale(t,n,i){return this.set(t,0,0,0,0,n,0,0,0,0,i,0,0,0,0,1),this}makeShear(t,n,i,r,s,o){return this.set(1,i,s,0,t,1,o,0,n,r,1,0,0,0,0,1),this}compose(t,n,i){let r=this.elements,s=n._x,o=n._y,a=n._z,l=n._w,c=s+s,u=o+o,h=a+a,f=s*c,d=s*u,p=s*h,y=o*u,g=o*h,m=a*h,x=l*c,M=l*u,v=l*h,S=i.x,b=i.y,_=i.z;return r[0]=(1-(y+m))*S,r[1]=(d+v)*S,r[2]=(p-M)*S,r[3]=0,r[4]=(d-v)*b,r[5]=(1-(f+m))*b,r[6]=(g+x)*b,r[7]=0,r[8]=(p+M)*_,r[9]=(g-x)*_,r[10]=(1-(f+y))*_,r[11]=0,r[12]=t.x,r[13]=t.y,r[14]=t.z,r[15]=1,this}decompose(t,n,i){let r=this.elements;t.x=r[12],t.y=r[13],t.z=r[14];let s=this.determinantAffine();if(s===0)return i.set(1,1,1),n.identity(),this;let o=il.set(r[0],r[1],r[2]).length(),a=il.set(r[4],r[5],r[6]).length(),l=il.set(r[8],r[9],r[10]).length();s<0&&(o=-o),$i.copy(this);let c=1/o,u=1/a,h=1/l;return $i.elements[0]*=c,$i.elements[1]*=c,$i.elements[2]*=c,$i.elements[4]*=u,$i.elements[5]*=u,$i.elements[6]*=u,$i.elements[8]*=h,$i.elements[9]*=h,$i.elements[10]*=h,n.setFromRotationMatrix($i),i.x=o,i.y=a,i.z=l,this}makePerspective(t,n,i,r,s,o,a=Li,l=!1){let c=this.elements,u=2*s/(n-t),h=2*s/(i-r),f=(n+t)/(n-t),d=(i+r)/(i-r),p,y;if(l)p=s/(o-s),y=o*s/(o-s);else if(a===Li)p=-(o+s)/(o-s),y=-2*o*s/(o-s);else if(a===vl)p=-o/(o-s),y=-o*s/(o-s);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=f,c[12]=0,c[1]=0,c[5]=h,c[9]=d,c[13]=0,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(t,n,i,r,s,o,a=Li,l=!1){let c=this.elements,u=2/(n-t),h=2/(i-r),f=-(n+t)/(n-t),d=-(i+r)/(i-r),p,y;if(l)p=1/(o-s),y=o/(o-s);else if(a===Li)p=-2/(o-s),y=-(o+s)/(o-s);else if(a===vl)p=-1/(o-s),y=-s/(o-s);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return c[0]=u,c[4]=0,c[8]=0,c[12]=f,c[1]=0,c[5]=h,c[9]=0,c[13]=d,c[2]=0,c[6]=0,c[10]=p,c[14]=y,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(t){let n=this.elements,i=t.elements;for(let r=0;r<16;r++)if(n[r]!==i[r])return!1;return!0}fromArray(t,n=0){for(let i=0;i<16;i++)this.elements[i]=t[i+n];return this}toArray(t=[],n=0){let i=this.elements;return t[n]=i[0],t[n+1]=i[1],t[n+2]=i[2],t[n+3]=i[3],t[n+4]=i[4],t[n+5]=i[5],t[n+6]=i[6],t[n+7]=i[7],t[n+8]=i[8],t[n+9]=i[9],t[n+10]=i[10],t[n+11]=i[11],t[n+12]=i[12],t[n+13]=i[13],t[n+14]=i[14],t[n+15]=i[15],t}},il=new z,$i=new be,hO=new z(0,0,0),dO=new z(1,1,1),Bs=new z,Bh=new z,oi=new z,zA=new be,GA=new fi,os=class e{constructor(t=0,n=0,i=0,r=e.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=n,this._z=i,this._order=r}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,n,i,r=this._order){return this._x=t,this._y=n,this._z=i,this._order=r,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,n=this._order,i=!0){let r=t.elements,s=r[0],o=r[4],a=r[8],l=r[1],c=r[5],u=r[9],h=r[2],f=r[6],d=r[10];switch(n){case"XYZ":this._y=Math.asin(Xt(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,d),this._z=Math.atan2(-o,s)):(this._x=Math.atan2(f,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Xt(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,d),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-h,s),this._z=0);break;case"ZXY":this._x=Math.asin(Xt(f,-1,1)),Math.abs(f)<.9999999?(this._y=Math.atan2(-h,d),this._z=Math.atan2(-o,c)):(this._y=0,this._z=Math.atan2(l,s));break;case"ZYX":this._y=Math.asin(-Xt(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(f,d),this._z=Math.atan2(l,s)):(this._x=0,this._z=Math.atan2(-o,c));break;case"YZX":this._z=Math.asin(Xt(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-u,c),this._y=Math.atan2(-h,s)):(this._x=0,this._y=Math.atan2(a,d));break;case"XZY":this._z=Math.asin(-Xt(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(f,c),this._y=Math.atan2(a,s)):(this._x=Math.atan2(-u,d),this._y=0);break;default:Ft("Euler: .setFromRotationMatrix() encountered an unknown order: "+n)}return this._order=n,i===!0&&this._onChangeCallback(),this}setFromQuaternion(t,n,i){return zA.makeRotationFromQuaternion(t),this.setFromRotationMatrix(zA,n,i)}setFromVector3(t,n=this._order){return this.set(t.x,t.y,t.z,n)}reorder(t){return GA.setFromEuler(this),this.setFromQuaternion(GA,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],n=0){return t[n]=this._x,t[n+1]=this._y,t[n+2]=this._z,t[n+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};os.DEFAULT_ORDER="XYZ";var Qc=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},pO=0,VA=new z,rl=new fi,jr=new be,kh=new z,zc=new z,mO=new z,gO=new fi,HA=new z(1,0,0),WA=new z(0,1,0),$A=new z(0,0,1),XA={type:"added"},yO={type:"removed"},sl={type:"childadded",child:null},kx={type:"childremoved",child:null},En=class e extends Yi{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:pO++}),this.uuid=to(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=e.DEFAULT_UP.clone();let t=new z,n=new os,i=new fi,r=new z(1,1,1);function s(){i.setFromEuler(n,!1)}function o(){n.setFromQuaternion(i,void 0,!1)}n._onChange(s),i._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:n},quaternion:{configurable:!0,enumerable:!0,value:i},scale:{configurable:!0,enumerable:!0,value:r},modelViewMatrix:{value:new be},normalMatrix:{value:new Vt}}),this.matrix=new be,this.matrixWorld=new be,this.matrixAutoUpdate=e.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=e.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Qc,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,n){this.quaternion.setFromAxisAngle(t,n)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,n){return rl.setFromAxisAngle(t,n),this.quaternion.multiply(rl),this}rotateOnWorldAxis(t,n){return rl.setFromAxisAngle(t,n),this.quaternion.premultiply(rl),this}rotateX(t){return this.rotateOnAxis(HA,t)}rotateY(t){return this.rotateOnAxis(WA,t)}rotateZ(t){return this.rotateOnAxis($A,t)}translateOnAxis(t,n){return VA.copy(t).applyQuaternion(this.quaternion),this.position.add(VA.multiplyScalar(n)),this}translateX(t){return this.translateOnAxis(HA,t)}translateY(t){return this.translateOnAxis(WA,t)}translateZ(t){return this.translateOnAxis($A,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(jr.copy(this.matrixWorld).invert())}lookAt(t,n,i){t.isVector3?kh.copy(t):kh.set(t,n,i);let r=this.parent;this.updateWorldMatrix(!0,!1),zc.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?jr.lookAt(zc,kh,this.up):jr.lookAt(kh,zc,this.up),this.quaternion.setFromRotationMatrix(jr),r&&(jr.extractRotation(r.matrixWorld),rl.setFromRotationMatrix(jr),this.quaternion.premultiply(rl.invert()))}add(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.add(arguments[n]);return this}return t===this?(Gt("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(XA),sl.child=t,this.dispatchEvent(sl),sl.child=null):Gt("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let i=0;i<arguments.length;i++)this.remove(arguments[i]);return this}let n=this.children.indexOf(t);return n!==-1&&(t.parent=null,this.children.splice(n,1),t.dispatchEvent(yO),kx.child=t,this.dispatchEvent(kx),kx.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),jr.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),jr.multiply(t.parent.matrixWorld)),t.applyMatrix4(jr),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(XA),sl.child=t,this.dispatchEvent(sl),sl.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,n){if(this[t]===n)return this;for(let i=0,r=this.children.length;i<r;i++){let o=this.children[i].getObjectByProperty(t,n);if(o!==void 0)return o}}getObjectsByProperty(t,n,i=[]){this[t]===n&&i.push(this);let r=this.children;for(let s=0,o=r.length;s<o;s++)r[s].getObjectsByProperty(t,n,i);return i}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(zc,t,mO),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(zc,gO,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let n=this.matrixWorld.elements;return t.set(n[8],n[9],n[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].traverseVisible(t)}traverseAncestors(t){let n=this.parent;n!==null&&(t(n),n.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let n=t.x,i=t.y,r=t.z,s=this.matrix.elements;s[12]+=n-s[0]*n-s[4]*i-s[8]*r,s[13]+=i-s[1]*n-s[5]*i-s[9]*r,s[14]+=r-s[2]*n-s[6]*i-s[10]*r}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let n=this.children;for(let i=0,r=n.length;i<r;i++)n[i].updateMatrixWorld(t)}updateWorldMatrix(t,n,i=!1){let r=this.parent;if(t===!0&&r!==null&&r.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||i)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,i=!0),n===!0){let s=this.children;for(let o=0,a=s.length;o<a;o++)s[o].updateWorldMatrix(!1,!0,i)}}toJSON(t){let n=t===void 0||typeof t=="string",i={};n&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},i.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let r={};r.uuid=this.uuid,r.type=this.type,r.name=this.name,r.castShadow=this.castShadow,r.receiveShadow=this.receiveShadow,r.visible=this.visible,r.frustumCulled=this.frustumCulled,r.renderOrder=this.renderOrder,r.static=this.static,r.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(r.userData=this.userData),r.layers=this.layers.mask,r.matrix=this.matrix.toArray(),r.up=this.up.toArray(),this.pivot!==null&&(r.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(r.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(r.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(r.type="InstancedMesh",r.count=this.count,r.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(r.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(r.type="BatchedMesh",r.perObjectFrustumCulled=this.perObjectFrustumCulled,r.sortObjects=this.sortObjects,r.drawRanges=this._drawRanges,r.reservedRanges=this._reservedRanges,r.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),r.instanceInfo=this._instanceInfo.map(a=>({...a})),r.availableInstanceIds=this._availableInstanceIds.slice(),r.availableGeometryIds=this._availableGeometryIds.slice(),r.nextIndexStart=this._nextIndexStart,r.nextVertexStart=this._nextVertexStart,r.geometryCount=this._geometryCount,r.maxInstanceCount=this._maxInstanceCount,r.maxVertexCount=this._maxVertexCount,r.maxIndexCount=this._maxIndexCount,r.geometryInitialized=this._geometryInitialized,r.matricesTexture=this._matricesTexture.toJSON(t),r.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(r.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(r.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(r.boundingBox=this.boundingBox.toJSON()));function s(a,l){return a[l.uuid]===void 0&&(a[l.uuid]=l.toJSON(t)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?r.background=this.background.toJSON():this.background.isTexture&&(r.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(r.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){r.geometry=s(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let l=a.shapes;if(Array.isArray(l))for(let c=0,u=l.length;c<u;c++){let h=l[c];s(t.shapes,h)}else s(t.shapes,l)}}if(this.isSkinnedMesh&&(r.bindMode=this.bindMode,r.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(s(t.skeletons,this.skeleton),r.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let l=0,c=this.material.length;l<c;l++)a.push(s(t.materials,this.material[l]));r.material=a}else r.material=s(t.materials,this.material);if(this.children.length>0){r.children=[];for(let a=0;a<this.children.length;a++)r.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){r.animations=[];for(let a=0;a<this.animations.length;a++){let l=this.animations[a];r.animations.push(s(t.animations,l))}}if(n){let a=o(t.geometries),l=o(t.materials),c=o(t.textures),u=o(t.images),h=o(t.shapes),f=o(t.skeletons),d=o(t.animations),p=o(t.nodes);a.length>0&&(i.geometries=a),l.length>0&&(i.materials=l),c.length>0&&(i.textures=c),u.length>0&&(i.images=u),h.length>0&&(i.shapes=h),f.length>0&&(i.skeletons=f),d.length>0&&(i.animations=d),p.length>0&&(i.nodes=p)}return i.object=r,i;function o(a){let l=[];for(let c in a){let u=a[c];delete u.metadata,l.push(u)}return l}}clone(t){return new this.constructor().copy(this,t)}copy(t,n=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),n===!0)for(let i=0;i<t.children.length;i++){let r=t.children[i];this.add(r.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};En.DEFAULT_UP=new z(0,1,0);En.DEFAULT_MATRIX_AUTO_UPDATE=!0;En.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var ui=class extends En{constructor(){super(),this.isGroup=!0,this.type="Group"}},xO={type:"move"},wl=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new ui,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new ui,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new z,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new z),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new ui,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new z,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new z,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let n=this._hand;if(n)for(let i of t.hand.values())this._getHandJoint(n,i)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,n,i){let r=null,s=null,o=null,a=this._targetRay,l=this._grip,c=this._hand;if(t&&n.session.visibilityState!=="visible-blurred"){if(c&&t.hand){o=!0;for(let y of t.hand.values()){let g=n.getJointPose(y,i),m=this._getHandJoint(c,y);g!==null&&(m.matrix.fromArray(g.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=g.radius),m.visible=g!==null}let u=c.joints["index-finger-tip"],h=c.joints["thumb-tip"],f=u.position.distanceTo(h.position),d=.02,p=.005;c.inputState.pinching&&f>d+p?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!c.inputState.pinching&&f<=d-p&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else l!==null&&t.gripSpace&&(s=n.getPose(t.gripSpace,i),s!==null&&(l.matrix.fromArray(s.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,s.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(s.linearVelocity)):l.hasLinearVelocity=!1,s.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(s.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(r=n.getPose(t.targetRaySpace,i),r===null&&s!==null&&(r=s),r!==null&&(a.matrix.fromArray(r.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,r.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(r.linearVelocity)):a.hasLinearVelocity=!1,r.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(r.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(xO)))}return a!==null&&(a.visible=r!==null),l!==null&&(l.visible=s!==null),c!==null&&(c.visible=o!==null),this}_getHandJoint(t,n){if(t.joints[n.jointName]===void 0){let i=new ui;i.matrixAutoUpdate=!1,i.visible=!1,t.joints[n.jointName]=i,t.add(i)}return t.joints[n.jointName]}},Y2={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},ks={h:0,s:0,l:0},zh={h:0,s:0,l:0};function zx(e,t,n){return n<0&&(n+=1),n>1&&(n-=1),n<1/6?e+(t-e)*6*n:n<1/2?t:n<2/3?e+(t-e)*6*(2/3-n):e}var kt=class{constructor(t,n,i){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,n,i)}set(t,n,i){if(n===void 0&&i===void 0){let r=t;r&&r.isColor?this.copy(r):typeof r=="number"?this.setHex(r):typeof r=="string"&&this.setStyle(r)}else this.setRGB(t,n,i);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,n=Bn){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ie.colorSpaceToWorking(this,n),this}setRGB(t,n,i,r=ie.workingColorSpace){return this.r=t,this.g=n,this.b=i,ie.colorSpaceToWorking(this,r),this}setHSL(t,n,i,r=ie.workingColorSpace){if(t=O_(t,1),n=Xt(n,0,1),i=Xt(i,0,1),n===0)this.r=this.g=this.b=i;else{let s=i<=.5?i*(1+n):i+n-i*n,o=2*i-s;this.r=zx(o,s,t+1/3),this.g=zx(o,s,t),this.b=zx(o,s,t-1/3)}return ie.colorSpaceToWorking(this,r),this}setStyle(t,n=Bn){function i(s){s!==void 0&&parseFloat(s)<1&&Ft("Color: Alpha component of "+t+" will be ignored.")}let r;if(r=/^(\w+)\(([^\)]*)\)/.exec(t)){let s,o=r[1],a=r[2];switch(o){case"rgb":case"rgba":if(s=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(255,parseInt(s[1],10))/255,Math.min(255,parseInt(s[2],10))/255,Math.min(255,parseInt(s[3],10))/255,n);if(s=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setRGB(Math.min(100,parseFloat(s[1]))/100,Math.min(100,parseFloat(s[2]))/100,Math.min(100,parseFloat(s[3]))/100,n);break;case"hsl":case"hsla":if(s=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return i(s[4]),this.setHSL(parseFloat(s[1])/360,parseFloat(s[2])/100,parseFloat(s[3])/100,n);break;default:Ft("Color: Unknown color model "+t)}}else if(r=/^\#([A-Fa-f\d]+)$/.exec(t)){let s=r[1],o=s.length;if(o===3)return this.setRGB(parseInt(s.charAt(0),16)/15,parseInt(s.charAt(1),16)/15,parseInt(s.charAt(2),16)/15,n);if(o===6)return this.setHex(parseInt(s,16),n);Ft("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,n);return this}setColorName(t,n=Bn){let i=Y2[t.toLowerCase()];return i!==void 0?this.setHex(i,n):Ft("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=rs(t.r),this.g=rs(t.g),this.b=rs(t.b),this}copyLinearToSRGB(t){return this.r=xl(t.r),this.g=xl(t.g),this.b=xl(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=Bn){return ie.workingToColorSpace(Tn.copy(this),t),Math.round(Xt(Tn.r*255,0,255))*65536+Math.round(Xt(Tn.g*255,0,255))*256+Math.round(Xt(Tn.b*255,0,255))}getHexString(t=Bn){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,n=ie.workingColorSpace){ie.workingToColorSpace(Tn.copy(this),n);let i=Tn.r,r=Tn.g,s=Tn.b,o=Math.max(i,r,s),a=Math.min(i,r,s),l,c,u=(a+o)/2;if(a===o)l=0,c=0;else{let h=o-a;switch(c=u<=.5?h/(o+a):h/(2-o-a),o){case i:l=(r-s)/h+(r<s?6:0);break;case r:l=(s-i)/h+2;break;case s:l=(i-r)/h+4;break}l/=6}return t.h=l,t.s=c,t.l=u,t}getRGB(t,n=ie.workingColorSpace){return ie.workingToColorSpace(Tn.copy(this),n),t.r=Tn.r,t.g=Tn.g,t.b=Tn.b,t}getStyle(t=Bn){ie.workingToColorSpace(Tn.copy(this),t);let n=Tn.r,i=Tn.g,r=Tn.b;return t!==Bn?`color(${t} ${n.toFixed(3)} ${i.toFixed(3)} ${r.toFixed(3)})`:`rgb(${Math.round(n*255)},${Math.round(i*255)},${Math.round(r*255)})`}offsetHSL(t,n,i){return this.getHSL(ks),this.setHSL(ks.h+t,ks.s+n,ks.l+i)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,n){return this.r=t.r+n.r,this.g=t.g+n.g,this.b=t.b+n.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,n){return this.r+=(t.r-this.r)*n,this.g+=(t.g-this.g)*n,this.b+=(t.b-this.b)*n,this}lerpColors(t,n,i){return this.r=t.r+(n.r-t.r)*i,this.g=t.g+(n.g-t.g)*i,this.b=t.b+(n.b-t.b)*i,this}lerpHSL(t,n){this.getHSL(ks),t.getHSL(zh);let i=Xc(ks.h,zh.h,n),r=Xc(ks.s,zh.s,n),s=Xc(ks.l,zh.l,n);return this.setHSL(i,r,s),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let n=this.r,i=this.g,r=this.b,s=t.elements;return this.r=s[0]*n+s[3]*i+s[6]*r,this.g=s[1]*n+s[4]*i+s[7]*r,this.b=s[2]*n+s[5]*i+s[8]*r,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,n=0){return this.r=t[n],this.g=t[n+1],this.b=t[n+2],this}toArray(t=[],n=0){return t[n]=this.r,t[n+1]=this.g,t[n+2]=this.b,t}fromBufferAttribute(t,n){return this.r=t.getX(n),this.g=t.getY(n),this.b=t.getZ(n),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Tn=new kt;kt.NAMES=Y2;var Hs=class extends En{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new os,this.environmentIntensity=1,this.environmentRotation=new os,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,n){return super.copy(t,n),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let n=super.toJSON(t);return this.fog!==null&&(n.object.fog=this.fog.toJSON()),n.object.backgroundBlurriness=this.backgroundBlurriness,n.object.backgroundIntensity=this.backgroundIntensity,n.object.backgroundRotation=this.backgroundRotation.toArray(),n.object.environmentIntensity=this.environmentIntensity,n.object.environmentRotation=this.environmentRotation.toArray(),n}},Xi=new z,Qr=new z,Gx=new z,ts=new z,ol=new z,al=new z,qA=new z,Vx=new z,Hx=new z,Wx=new z,$x=new de,Xx=new de,qx=new de,is=class e{constructor(t=new z,n=new z,i=new z){this.a=t,this.b=n,this.c=i}static getNormal(t,n,i,r){r.subVectors(i,n),Xi.subVectors(t,n),r.cross(Xi);let s=r.lengthSq();return s>0?r.multiplyScalar(1/Math.sqrt(s)):r.set(0,0,0)}static getBarycoord(t,n,i,r,s){Xi.subVectors(r,n),Qr.subVectors(i,n),Gx.subVectors(t,n);let o=Xi.dot(Xi),a=Xi.dot(Qr),l=Xi.dot(Gx),c=Qr.dot(Qr),u=Qr.dot(Gx),h=o*c-a*a;if(h===0)return s.set(0,0,0),null;let f=1/h,d=(c*l-a*u)*f,p=(o*u-a*l)*f;return s.set(1-d-p,p,d)}static containsPoint(t,n,i,r){return this.getBarycoord(t,n,i,r,ts)===null?!1:ts.x>=0&&ts.y>=0&&ts.x+ts.y<=1}static getInterpolation(t,n,i,r,s,o,a,l){return this.getBarycoord(t,n,i,r,ts)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(s,ts.x),l.addScaledVector(o,ts.y),l.addScaledVector(a,ts.z),l)}static getInterpolatedAttribute(t,n,i,r,s,o){return $x.setScalar(0),Xx.setScalar(0),qx.setScalar(0),$x.fromBufferAttribute(t,n),Xx.fromBufferAttribute(t,i),qx.fromBufferAttribute(t,r),o.setScalar(0),o.addScaledVector($x,s.x),o.addScaledVector(Xx,s.y),o.addScaledVector(qx,s.z),o}static isFrontFacing(t,n,i,r){return Xi.subVectors(i,n),Qr.subVectors(t,n),Xi.cross(Qr).dot(r)<0}set(t,n,i){return this.a.copy(t),this.b.copy(n),this.c.copy(i),this}setFromPointsAndIndices(t,n,i,r){return this.a.copy(t[n]),this.b.copy(t[i]),this.c.copy(t[r]),this}setFromAttributeAndIndices(t,n,i,r){return this.a.fromBufferAttribute(t,n),this.b.fromBufferAttribute(t,i),this.c.fromBufferAttribute(t,r),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return Xi.subVectors(this.c,this.b),Qr.subVectors(this.a,this.b),Xi.cross(Qr).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return e.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,n){return e.getBarycoord(t,this.a,this.b,this.c,n)}getInterpolation(t,n,i,r,s){return e.getInterpolation(t,this.a,this.b,this.c,n,i,r,s)}containsPoint(t){return e.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return e.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,n){let i=this.a,r=this.b,s=this.c,o,a;ol.subVectors(r,i),al.subVectors(s,i),Vx.subVectors(t,i);let l=ol.dot(Vx),c=al.dot(Vx);if(l<=0&&c<=0)return n.copy(i);Hx.subVectors(t,r);let u=ol.dot(Hx),h=al.dot(Hx);if(u>=0&&h<=u)return n.copy(r);let f=l*h-u*c;if(f<=0&&l>=0&&u<=0&&l-u>0)return o=l/(l-u),n.copy(i).addScaledVector(ol,o);Wx.subVectors(t,s);let d=ol.dot(Wx),p=al.dot(Wx);if(p>=0&&d<=p)return n.copy(s);let y=d*c-l*p;if(y<=0&&c>=0&&p<=0)return a=c/(c-p),n.copy(i).addScaledVector(al,a);let g=u*p-d*h;if(g<=0&&h-u>=0&&d-p>=0)return qA.subVectors(s,r),a=(h-u)/(h-u+(d-p)),n.copy(r).addScaledVector(qA,a);let m=1/(g+y+f);return o=y*m,a=f*m,n.copy(i).addScaledVector(ol,o).addScaledVector(al,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},hi=class{constructor(t=new z(1/0,1/0,1/0),n=new z(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=n}set(t,n){return this.min.copy(t),this.max.copy(n),this}setFromArray(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n+=3)this.expandByPoint(qi.fromArray(t,n));return this}setFromBufferAttribute(t){this.makeEmpty();for(let n=0,i=t.count;n<i;n++)this.expandByPoint(qi.fromBufferAttribute(t,n));return this}setFromPoints(t){this.makeEmpty();for(let n=0,i=t.length;n<i;n++)this.expandByPoint(t[n]);return this}setFromCenterAndSize(t,n){let i=qi.copy(n).multiplyScalar(.5);return this.min.copy(t).sub(i),this.max.copy(t).add(i),this}setFromObject(t,n=!1){return this.makeEmpty(),this.expandByObject(t,n)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,n=!1){t.updateWorldMatrix(!1,!1);let i=t.geometry;if(i!==void 0){let s=i.getAttribute("position");if(n===!0&&s!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=s.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,qi):qi.fromBufferAttribute(s,o),qi.applyMatrix4(t.matrixWorld),this.expandByPoint(qi);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Gh.copy(t.boundingBox)):(i.boundingBox===null&&i.computeBoundingBox(),Gh.copy(i.boundingBox)),Gh.applyMatrix4(t.matrixWorld),this.union(Gh)}let r=t.children;for(let s=0,o=r.length;s<o;s++)this.expandByObject(r[s],n);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,n){return n.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,qi),qi.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let n,i;return t.normal.x>0?(n=t.normal.x*this.min.x,i=t.normal.x*this.max.x):(n=t.normal.x*this.max.x,i=t.normal.x*this.min.x),t.normal.y>0?(n+=t.normal.y*this.min.y,i+=t.normal.y*this.max.y):(n+=t.normal.y*this.max.y,i+=t.normal.y*this.min.y),t.normal.z>0?(n+=t.normal.z*this.min.z,i+=t.normal.z*this.max.z):(n+=t.normal.z*this.max.z,i+=t.normal.z*this.min.z),n<=-t.constant&&i>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Gc),Vh.subVectors(this.max,Gc),ll.subVectors(t.a,Gc),cl.subVectors(t.b,Gc),ul.subVectors(t.c,Gc),zs.subVectors(cl,ll),Gs.subVectors(ul,cl),Ho.subVectors(ll,ul);let n=[0,-zs.z,zs.y,0,-Gs.z,Gs.y,0,-Ho.z,Ho.y,zs.z,0,-zs.x,Gs.z,0,-Gs.x,Ho.z,0,-Ho.x,-zs.y,zs.x,0,-Gs.y,Gs.x,0,-Ho.y,Ho.x,0];return!Yx(n,ll,cl,ul,Vh)||(n=[1,0,0,0,1,0,0,0,1],!Yx(n,ll,cl,ul,Vh))?!1:(Hh.crossVectors(zs,Gs),n=[Hh.x,Hh.y,Hh.z],Yx(n,ll,cl,ul,Vh))}clampPoint(t,n){return n.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,qi).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(qi).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(es[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),es[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),es[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),es[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),es[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),es[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),es[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),es[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(es),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},es=[new z,new z,new z,new z,new z,new z,new z,new z],qi=new z,Gh=new hi,ll=new z,cl=new z,ul=new z,zs=new z,Gs=new z,Ho=new z,Gc=new z,Vh=new z,Hh=new z,Wo=new z;function Yx(e,t,n,i,r){for(let s=0,o=e.length-3;s<=o;s+=3){Wo.fromArray(e,s);let a=r.x*Math.abs(Wo.x)+r.y*Math.abs(Wo.y)+r.z*Math.abs(Wo.z),l=t.dot(Wo),c=n.dot(Wo),u=i.dot(Wo);if(Math.max(-Math.max(l,c,u),Math.min(l,c,u))>a)return!1}return!0}var We=new z,Wh=new Bt,_O=0,Ze=class extends Yi{constructor(t,n,i=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:_O++}),this.name="",this.array=t,this.itemSize=n,this.count=t!==void 0?t.length/n:0,this.normalized=i,this.usage=U_,this.updateRanges=[],this.gpuType=ji,this.version=0,this._normalizationScale=t!==void 0?Dp(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,n,i){t*=this.itemSize,i*=n.itemSize;for(let r=0,s=this.itemSize;r<s;r++)this.array[t+r]=n.array[i+r];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let n=0,i=this.count;n<i;n++)Wh.fromBufferAttribute(this,n),Wh.applyMatrix3(t),this.setXY(n,Wh.x,Wh.y);else if(this.itemSize===3)for(let n=0,i=this.count;n<i;n++)We.fromBufferAttribute(this,n),We.applyMatrix3(t),this.setXYZ(n,We.x,We.y,We.z);return this}applyMatrix4(t){for(let n=0,i=this.count;n<i;n++)We.fromBufferAttribute(this,n),We.applyMatrix4(t),this.setXYZ(n,We.x,We.y,We.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)We.fromBufferAttribute(this,n),We.applyNormalMatrix(t),this.setXYZ(n,We.x,We.y,We.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)We.fromBufferAttribute(this,n),We.transformDirection(t),this.setXYZ(n,We.x,We.y,We.z);return this}set(t,n=0){return this.array.set(t,n),this}getComponent(t,n){let i=this.array[t*this.itemSize+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.array[t*this.itemSize+n]=i,this}getX(t){let n=this.array[t*this.itemSize];return this.normalized&&(n=this._denormalize(n)),n}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize]=n,this}getY(t){let n=this.array[t*this.itemSize+1];return this.normalized&&(n=this._denormalize(n)),n}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+1]=n,this}getZ(t){let n=this.array[t*this.itemSize+2];return this.normalized&&(n=this._denormalize(n)),n}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+2]=n,this}getW(t){let n=this.array[t*this.itemSize+3];return this.normalized&&(n=this._denormalize(n)),n}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+3]=n,this}setXY(t,n,i){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.array[t+0]=n,this.array[t+1]=i,this}setXYZ(t,n,i,r){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t*=this.itemSize,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.array[t+0]=n,this.array[t+1]=i,this.array[t+2]=r,this.array[t+3]=s,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):k_(t,this.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):z_(t,this.array)}};var tu=class extends Ze{constructor(t,n,i){super(new Uint16Array(t),n,i)}};var eu=class extends Ze{constructor(t,n,i){super(new Uint32Array(t),n,i)}};var Ke=class extends Ze{constructor(t,n,i){super(new Float32Array(t),n,i)}},vO=new hi,Vc=new z,Zx=new z,Zi=class{constructor(t=new z,n=-1){this.isSphere=!0,this.center=t,this.radius=n}set(t,n){return this.center.copy(t),this.radius=n,this}setFromPoints(t,n){let i=this.center;n!==void 0?i.copy(n):vO.setFromPoints(t).getCenter(i);let r=0;for(let s=0,o=t.length;s<o;s++)r=Math.max(r,i.distanceToSquared(t[s]));return this.radius=Math.sqrt(r),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let n=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=n*n}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,n){let i=this.center.distanceToSquared(t);return n.copy(t),i>this.radius*this.radius&&(n.sub(this.center).normalize(),n.multiplyScalar(this.radius).add(this.center)),n}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Vc.subVectors(t,this.center);let n=Vc.lengthSq();if(n>this.radius*this.radius){let i=Math.sqrt(n),r=(i-this.radius)*.5;this.center.addScaledVector(Vc,r/i),this.radius+=r}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(Zx.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Vc.copy(t.center).add(Zx)),this.expandByPoint(Vc.copy(t.center).sub(Zx))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},bO=0,Ii=new be,Kx=new En,fl=new z,ai=new hi,Hc=new hi,fn=new z,Je=class e extends Yi{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:bO++}),this.uuid=to(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(XF(t)?eu:tu)(t,1):this.index=t,this}setIndirect(t,n=0){return this.indirect=t,this.indirectOffset=n,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,n){return this.attributes[t]=n,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,n,i=0){this.groups.push({start:t,count:n,materialIndex:i})}clearGroups(){this.groups=[]}setDrawRange(t,n){this.drawRange.start=t,this.drawRange.count=n}applyMatrix4(t){let n=this.attributes.position;n!==void 0&&(n.applyMatrix4(t),n.needsUpdate=!0);let i=this.attributes.normal;if(i!==void 0){let s=new Vt().getNormalMatrix(t);i.applyNormalMatrix(s),i.needsUpdate=!0}let r=this.attributes.tangent;return r!==void 0&&(r.transformDirection(t),r.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return Ii.makeRotationFromQuaternion(t),this.applyMatrix4(Ii),this}rotateX(t){return Ii.makeRotationX(t),this.applyMatrix4(Ii),this}rotateY(t){return Ii.makeRotationY(t),this.applyMatrix4(Ii),this}rotateZ(t){return Ii.makeRotationZ(t),this.applyMatrix4(Ii),this}translate(t,n,i){return Ii.makeTranslation(t,n,i),this.applyMatrix4(Ii),this}scale(t,n,i){return Ii.makeScale(t,n,i),this.applyMatrix4(Ii),this}lookAt(t){return Kx.lookAt(t),Kx.updateMatrix(),this.applyMatrix4(Kx.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(fl).negate(),this.translate(fl.x,fl.y,fl.z),this}setFromPoints(t){let n=this.getAttribute("position");if(n===void 0){let i=[];for(let r=0,s=t.length;r<s;r++){let o=t[r];i.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Ke(i,3))}else{let i=Math.min(t.length,n.count);for(let r=0;r<i;r++){let s=t[r];n.setXYZ(r,s.x,s.y,s.z||0)}t.length>n.count&&Ft("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),n.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new hi);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new z(-1/0,-1/0,-1/0),new z(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),n)for(let i=0,r=n.length;i<r;i++){let s=n[i];ai.setFromBufferAttribute(s),this.morphTargetsRelative?(fn.addVectors(this.boundingBox.min,ai.min),this.boundingBox.expandByPoint(fn),fn.addVectors(this.boundingBox.max,ai.max),this.boundingBox.expandByPoint(fn)):(this.boundingBox.expandByPoint(ai.min),this.boundingBox.expandByPoint(ai.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&Gt('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Zi);let t=this.attributes.position,n=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){Gt("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new z,1/0);return}if(t){let i=this.boundingSphere.center;if(ai.setFromBufferAttribute(t),n)for(let s=0,o=n.length;s<o;s++){let a=n[s];Hc.setFromBufferAttribute(a),this.morphTargetsRelative?(fn.addVectors(ai.min,Hc.min),ai.expandByPoint(fn),fn.addVectors(ai.max,Hc.max),ai.expandByPoint(fn)):(ai.expandByPoint(Hc.min),ai.expandByPoint(Hc.max))}ai.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)fn.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared(fn));if(n)for(let s=0,o=n.length;s<o;s++){let a=n[s],l=this.morphTargetsRelative;for(let c=0,u=a.count;c<u;c++)fn.fromBufferAttribute(a,c),l&&(fl.fromBufferAttribute(t,c),fn.add(fl)),r=Math.max(r,i.distanceToSquared(fn))}this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&Gt('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,n=this.attributes;if(t===null||n.position===void 0||n.normal===void 0||n.uv===void 0){Gt("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let i=n.position,r=n.normal,s=n.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==i.count)&&(o=new Ze(new Float32Array(4*i.count),4),this.setAttribute("tangent",o));let a=[],l=[],c=new Uint8Array(i.count);for(let R=0;R<i.count;R++)a[R]=new z,l[R]=new z;let u=new z,h=new z,f=new z,d=new Bt,p=new Bt,y=new Bt,g=new z,m=new z;function x(R,A,C){c[R]=c[A]=c[C]=1,u.fromBufferAttribute(i,R),h.fromBufferAttribute(i,A),f.fromBufferAttribute(i,C),d.fromBufferAttribute(s,R),p.fromBufferAttribute(s,A),y.fromBufferAttribute(s,C),h.sub(u),f.sub(u),p.sub(d),y.sub(d);let P=1/(p.x*y.y-y.x*p.y);isFinite(P)&&(g.copy(h).multiplyScalar(y.y).addScaledVector(f,-p.y).multiplyScalar(P),m.copy(f).multiplyScalar(p.x).addScaledVector(h,-y.x).multiplyScalar(P),a[R].add(g),a[A].add(g),a[C].add(g),l[R].add(m),l[A].add(m),l[C].add(m))}let M=this.groups;M.length===0&&(M=[{start:0,count:t.count}]);for(let R=0,A=M.length;R<A;++R){let C=M[R],P=C.start,O=C.count;for(let I=P,D=P+O;I<D;I+=3)x(t.getX(I+0),t.getX(I+1),t.getX(I+2))}let v=new z,S=new z,b=new z,_=new z;function w(R){b.fromBufferAttribute(r,R),_.copy(b);let A=a[R];v.copy(A),v.sub(b.multiplyScalar(b.dot(A))).normalize(),S.crossVectors(_,A);let P=S.dot(l[R])<0?-1:1;o.setXYZW(R,v.x,v.y,v.z,P)}for(let R=0,A=i.count;R<A;++R)c[R]&&w(R);this._transformed=!0}computeVertexNormals(){let t=this.index,n=this.getAttribute("position");if(n!==void 0){let i=this.getAttribute("normal");if(i===void 0||i.count!==n.count)i=new Ze(new Float32Array(n.count*3),3),this.setAttribute("normal",i);else for(let f=0,d=i.count;f<d;f++)i.setXYZ(f,0,0,0);let r=new z,s=new z,o=new z,a=new z,l=new z,c=new z,u=new z,h=new z;if(t)for(let f=0,d=t.count;f<d;f+=3){let p=t.getX(f+0),y=t.getX(f+1),g=t.getX(f+2);r.fromBufferAttribute(n,p),s.fromBufferAttribute(n,y),o.fromBufferAttribute(n,g),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),a.fromBufferAttribute(i,p),l.fromBufferAttribute(i,y),c.fromBufferAttribute(i,g),a.add(u),l.add(u),c.add(u),i.setXYZ(p,a.x,a.y,a.z),i.setXYZ(y,l.x,l.y,l.z),i.setXYZ(g,c.x,c.y,c.z)}else for(let f=0,d=n.count;f<d;f+=3)r.fromBufferAttribute(n,f+0),s.fromBufferAttribute(n,f+1),o.fromBufferAttribute(n,f+2),u.subVectors(o,s),h.subVectors(r,s),u.cross(h),i.setXYZ(f+0,u.x,u.y,u.z),i.setXYZ(f+1,u.x,u.y,u.z),i.setXYZ(f+2,u.x,u.y,u.z);this.normalizeNormals(),i.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let n=0,i=t.count;n<i;n++)fn.fromBufferAttribute(t,n),fn.normalize(),t.setXYZ(n,fn.x,fn.y,fn.z)}toNonIndexed(){function t(a,l){let c=a.array,u=a.itemSize,h=a.normalized,f=new c.constructor(l.length*u),d=0,p=0;for(let y=0,g=l.length;y<g;y++){a.isInterleavedBufferAttribute?d=l[y]*a.data.stride+a.offset:d=l[y]*u;for(let m=0;m<u;m++)f[p++]=c[d++]}return new Ze(f,u,h)}if(this.index===null)return Ft("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let n=new e,i=this.index.array,r=this.attributes;for(let a in r){let l=r[a],c=t(l,i);n.setAttribute(a,c)}let s=this.morphAttributes;for(let a in s){let l=[],c=s[a];for(let u=0,h=c.length;u<h;u++){let f=c[u],d=t(f,i);l.push(d)}n.morphAttributes[a]=l}n.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,l=o.length;a<l;a++){let c=o[a];n.addGroup(c.start,c.count,c.materialIndex)}return n}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(t[c]=l[c]);return t}t.data={attributes:{}};let n=this.index;n!==null&&(t.data.index={type:n.array.constructor.name,array:Array.prototype.slice.call(n.array)});let i=this.attributes;for(let l in i){let c=i[l];t.data.attributes[l]=c.toJSON(t.data)}let r={},s=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],u=[];for(let h=0,f=c.length;h<f;h++){let d=c[h];u.push(d.toJSON(t.data))}u.length>0&&(r[l]=u,s=!0)}s&&(t.data.morphAttributes=r,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let n={};this.name=t.name;let i=t.index;i!==null&&this.setIndex(i.clone());let r=t.attributes;for(let c in r){let u=r[c];this.setAttribute(c,u.clone(n))}let s=t.morphAttributes;for(let c in s){let u=[],h=s[c];for(let f=0,d=h.length;f<d;f++)u.push(h[f].clone(n));this.morphAttributes[c]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let c=0,u=o.length;c<u;c++){let h=o[c];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let l=t.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}},Td=class{constructor(t,n){this.isInterleavedBuffer=!0,this.array=t,this.stride=n,this.count=t!==void 0?t.length/n:0,this.usage=U_,this.updateRanges=[],this.version=0,this.uuid=to()}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,n){this.updateRanges.push({start:t,count:n})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.array=new t.array.constructor(t.array),this.count=t.count,this.stride=t.stride,this.usage=t.usage,this}copyAt(t,n,i){t*=this.stride,i*=n.stride;for(let r=0,s=this.stride;r<s;r++)this.array[t+r]=n.array[i+r];return this}set(t,n=0){return this.array.set(t,n),this}clone(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=YA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=this.array.slice(0).buffer);let i=new this.array.constructor(t.arrayBuffers[n]),r=new this.constructor(i,this.stride);return r.setUsage(this.usage),r}onUpload(t){return this.onUploadCallback=t,this}toJSON(t){t.arrayBuffers===void 0&&(t.arrayBuffers={});let n=YA(this.array);t.arrayBuffers[n]===void 0&&(t.arrayBuffers[n]=Array.from(new Uint32Array(this.array.slice(0).buffer)));let i={uuid:this.uuid,buffer:n,type:this.array.constructor.name,stride:this.stride};return i.usage=this.usage,i}};function YA(e){return e.buffer._uuid===void 0&&(e.buffer._uuid=to()),e.byteOffset===0&&e.byteLength===e.buffer.byteLength?e.buffer._uuid:e.buffer._uuid+":"+e.byteOffset+":"+e.byteLength}var On=new z,Ki=class e{constructor(t,n,i,r=!1){this.isInterleavedBufferAttribute=!0,this.name="",this.data=t,this.itemSize=n,this.offset=i,this.normalized=r,this._normalizationScale=t!==void 0?Dp(t.array):void 0}get count(){return this.data.count}get array(){return this.data.array}set needsUpdate(t){this.data.needsUpdate=t}applyMatrix4(t){for(let n=0,i=this.data.count;n<i;n++)On.fromBufferAttribute(this,n),On.applyMatrix4(t),this.setXYZ(n,On.x,On.y,On.z);return this}applyNormalMatrix(t){for(let n=0,i=this.count;n<i;n++)On.fromBufferAttribute(this,n),On.applyNormalMatrix(t),this.setXYZ(n,On.x,On.y,On.z);return this}transformDirection(t){for(let n=0,i=this.count;n<i;n++)On.fromBufferAttribute(this,n),On.transformDirection(t),this.setXYZ(n,On.x,On.y,On.z);return this}getComponent(t,n){let i=this.array[t*this.data.stride+this.offset+n];return this.normalized&&(i=this._denormalize(i)),i}setComponent(t,n,i){return this.normalized&&(i=this._normalize(i)),this.data.array[t*this.data.stride+this.offset+n]=i,this}setX(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset]=n,this}setY(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+1]=n,this}setZ(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+2]=n,this}setW(t,n){return this.normalized&&(n=this._normalize(n)),this.data.array[t*this.data.stride+this.offset+3]=n,this}getX(t){let n=this.data.array[t*this.data.stride+this.offset];return this.normalized&&(n=this._denormalize(n)),n}getY(t){let n=this.data.array[t*this.data.stride+this.offset+1];return this.normalized&&(n=this._denormalize(n)),n}getZ(t){let n=this.data.array[t*this.data.stride+this.offset+2];return this.normalized&&(n=this._denormalize(n)),n}getW(t){let n=this.data.array[t*this.data.stride+this.offset+3];return this.normalized&&(n=this._denormalize(n)),n}setXY(t,n,i){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i)),this.data.array[t+0]=n,this.data.array[t+1]=i,this}setXYZ(t,n,i,r){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this}setXYZW(t,n,i,r,s){return t=t*this.data.stride+this.offset,this.normalized&&(n=this._normalize(n),i=this._normalize(i),r=this._normalize(r),s=this._normalize(s)),this.data.array[t+0]=n,this.data.array[t+1]=i,this.data.array[t+2]=r,this.data.array[t+3]=s,this}clone(t){if(t===void 0){Jc("InterleavedBufferAttribute.clone(): Cloning an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return new Ze(new this.array.constructor(n),this.itemSize,this.normalized)}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.clone(t)),new e(t.interleavedBuffers[this.data.uuid],this.itemSize,this.offset,this.normalized)}toJSON(t){if(t===void 0){Jc("InterleavedBufferAttribute.toJSON(): Serializing an interleaved buffer attribute will de-interleave buffer data.");let n=[];for(let i=0;i<this.count;i++){let r=i*this.data.stride+this.offset;for(let s=0;s<this.itemSize;s++)n.push(this.data.array[r+s])}return{itemSize:this.itemSize,type:this.array.constructor.name,array:n,normalized:this.normalized}}else return t.interleavedBuffers===void 0&&(t.interleavedBuffers={}),t.interleavedBuffers[this.data.uuid]===void 0&&(t.interleavedBuffers[this.data.uuid]=this.data.toJSON(t)),{isInterleavedBufferAttribute:!0,itemSize:this.itemSize,data:this.data.uuid,offset:this.offset,normalized:this.normalized}}_denormalize(t){let n=this._normalizationScale;return n!==void 0?Math.max(t/n,-1):k_(t,this.data.array)}_normalize(t){let n=this._normalizationScale;return n!==void 0?Math.round(t*n):z_(t,this.data.array)}},Jx=new z,MO=new z,SO=new Vt,li=class{constructor(t=new z(1,0,0),n=0){this.isPlane=!0,this.normal=t,this.constant=n}set(t,n){return this.normal.copy(t),this.constant=n,this}setComponents(t,n,i,r){return this.normal.set(t,n,i),this.constant=r,this}setFromNormalAndCoplanarPoint(t,n){return this.normal.copy(t),this.constant=-n.dot(this.normal),this}setFromCoplanarPoints(t,n,i){let r=Jx.subVectors(i,n).cross(MO.subVectors(t,n)).normalize();return this.setFromNormalAndCoplanarPoint(r,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,n){return n.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,n,i=!0){let r=t.delta(Jx),s=this.normal.dot(r);if(s===0)return this.distanceToPoint(t.start)===0?n.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/s;return i===!0&&(o<0||o>1)?null:n.copy(t.start).addScaledVector(r,o)}intersectsLine(t){let n=this.distanceToPoint(t.start),i=this.distanceToPoint(t.end);return n<0&&i>0||i<0&&n>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,n){let i=n||SO.getNormalMatrix(t),r=this.coplanarPoint(Jx).applyMatrix4(t),s=this.normal.applyMatrix3(i).normalize();return this.constant=-r.dot(s),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},wO=0,as=class extends Yi{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:wO++}),this.uuid=to(),this.name="",this.type="Material",this.blending=Il,this.side=js,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=m_,this.blendDst=g_,this.blendEquation=Ko,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new kt(0,0,0),this.blendAlpha=0,this.depthFunc=_l,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=B2,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=fd,this.stencilZFail=fd,this.stencilZPass=fd,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let n in t){let i=t[n];if(i===void 0){Ft(`Material: parameter '${n}' has value of undefined.`);continue}let r=this[n];if(r===void 0){Ft(`Material: '${n}' is not a property of THREE.${this.type}.`);continue}r&&r.isColor?r.set(i):r&&r.isVector2&&i&&i.isVector2||r&&r.isEuler&&i&&i.isEuler||r&&r.isVector3&&i&&i.isVector3?r.copy(i):this[n]=i}}toJSON(t){let n=t===void 0||typeof t=="string";n&&(t={textures:{},images:{}});let i={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};i.uuid=this.uuid,i.type=this.type,i.blending=this.blending,i.side=this.side,i.shadowSide=this.shadowSide,i.vertexColors=this.vertexColors,i.opacity=this.opacity,i.transparent=this.transparent,i.blendSrc=this.blendSrc,i.blendDst=this.blendDst,i.blendEquation=this.blendEquation,i.blendSrcAlpha=this.blendSrcAlpha,i.blendDstAlpha=this.blendDstAlpha,i.blendEquationAlpha=this.blendEquationAlpha,i.blendColor=this.blendColor.getHex(),i.blendAlpha=this.blendAlpha,i.depthFunc=this.depthFunc,i.depthTest=this.depthTest,i.depthWrite=this.depthWrite,i.colorWrite=this.colorWrite,i.clipIntersection=this.clipIntersection,i.clipShadows=this.clipShadows,i.stencilWriteMask=this.stencilWriteMask,i.stencilFunc=this.stencilFunc,i.stencilRef=this.stencilRef,i.stencilFuncMask=this.stencilFuncMask,i.stencilFail=this.stencilFail,i.stencilZFail=this.stencilZFail,i.stencilZPass=this.stencilZPass,i.stencilWrite=this.stencilWrite,i.polygonOffset=this.polygonOffset,i.polygonOffsetFactor=this.polygonOffsetFactor,i.polygonOffsetUnits=this.polygonOffsetUnits,i.dithering=this.dithering,i.alphaTest=this.alphaTest,i.alphaHash=this.alphaHash,i.alphaToCoverage=this.alphaToCoverage,i.premultipliedAlpha=this.premultipliedAlpha,i.forceSinglePass=this.forceSinglePass,i.allowOverride=this.allowOverride,i.visible=this.visible,i.toneMapped=this.toneMapped,i.name=this.name,this.color&&this.color.isColor&&(i.color=this.color.getHex()),this.roughness!==void 0&&(i.roughness=this.roughness),this.metalness!==void 0&&(i.metalness=this.metalness),this.sheen!==void 0&&(i.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(i.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(i.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(i.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(i.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(i.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(i.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(i.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(i.shininess=this.shininess),this.clearcoat!==void 0&&(i.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(i.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(i.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(i.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(i.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(i.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(i.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,i.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(i.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(i.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(i.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(i.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(i.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(i.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(i.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(i.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(i.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(i.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(i.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(i.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(i.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(i.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(i.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(i.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(i.lightMap=this.lightMap.toJSON(t).uuid,i.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(i.aoMap=this.aoMap.toJSON(t).uuid,i.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(i.bumpMap=this.bumpMap.toJSON(t).uuid,i.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(i.normalMap=this.normalMap.toJSON(t).uuid,i.normalMapType=this.normalMapType,i.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(i.displacementMap=this.displacementMap.toJSON(t).uuid,i.displacementScale=this.displacementScale,i.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(i.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(i.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(i.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(i.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(i.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(i.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(i.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(i.combine=this.combine)),this.envMapRotation!==void 0&&(i.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(i.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(i.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(i.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(i.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(i.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(i.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(i.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(i.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(i.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(i.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(i.size=this.size),this.sizeAttenuation!==void 0&&(i.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(i.clippingPlanes=this.clippingPlanes.map(s=>s.toJSON())),this.rotation!==void 0&&(i.rotation=this.rotation),this.depthPacking!==void 0&&(i.depthPacking=this.depthPacking),this.linewidth!==void 0&&(i.linewidth=this.linewidth),this.linecap!==void 0&&(i.linecap=this.linecap),this.linejoin!==void 0&&(i.linejoin=this.linejoin),this.dashSize!==void 0&&(i.dashSize=this.dashSize),this.gapSize!==void 0&&(i.gapSize=this.gapSize),this.scale!==void 0&&(i.scale=this.scale),this.wireframe!==void 0&&(i.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(i.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(i.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(i.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(i.flatShading=this.flatShading),this.fog!==void 0&&(i.fog=this.fog),Object.keys(this.userData).length>0&&(i.userData=this.userData);function r(s){let o=[];for(let a in s){let l=s[a];delete l.metadata,o.push(l)}return o}if(n){let s=r(t.textures),o=r(t.images);s.length>0&&(i.textures=s),o.length>0&&(i.images=o)}return i}fromJSON(t,n){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new kt().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(i=>new li().fromJSON(i))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=n[t.map]||null),t.matcap!==void 0&&(this.matcap=n[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=n[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=n[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=n[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let i=t.normalScale;Array.isArray(i)===!1&&(i=[i,i]),this.normalScale=new Bt().fromArray(i)}return t.displacementMap!==void 0&&(this.displacementMap=n[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=n[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=n[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=n[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=n[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=n[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=n[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=n[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=n[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=n[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=n[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=n[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=n[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=n[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new Bt().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=n[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=n[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=n[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=n[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=n[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=n[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=n[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=n[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let n=t.clippingPlanes,i=null;if(n!==null){let r=n.length;i=new Array(r);for(let s=0;s!==r;++s)i[s]=n[s].clone()}return this.clippingPlanes=i,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var ns=new z,jx=new z,$h=new z,Xh=new z,qo=class{constructor(t=new z,n=new z(0,0,-1)){this.origin=t,this.direction=n}set(t,n){return this.origin.copy(t),this.direction.copy(n),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,n){return n.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,ns)),this}closestPointToPoint(t,n){n.subVectors(t,this.origin);let i=n.dot(this.direction);return i<0?n.copy(this.origin):n.copy(this.origin).addScaledVector(this.direction,i)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let n=ns.subVectors(t,this.origin).dot(this.direction);return n<0?this.origin.distanceToSquared(t):(ns.copy(this.origin).addScaledVector(this.direction,n),ns.distanceToSquared(t))}distanceSqToSegment(t,n,i,r){jx.copy(t).add(n).multiplyScalar(.5),$h.copy(n).sub(t).normalize(),Xh.copy(this.origin).sub(jx);let s=t.distanceTo(n)*.5,o=-this.direction.dot($h),a=Xh.dot(this.direction),l=-Xh.dot($h),c=Xh.lengthSq(),u=Math.abs(1-o*o),h,f,d,p;if(u>0)if(h=o*l-a,f=o*a-l,p=s*u,h>=0)if(f>=-p)if(f<=p){let y=1/u;h*=y,f*=y,d=h*(h+o*f+2*a)+f*(o*h+f+2*l)+c}else f=s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f=-s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;else f<=-p?(h=Math.max(0,-(-o*s+a)),f=h>0?-s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c):f<=p?(h=0,f=Math.min(Math.max(-s,-l),s),d=f*(f+2*l)+c):(h=Math.max(0,-(o*s+a)),f=h>0?s:Math.min(Math.max(-s,-l),s),d=-h*h+f*(f+2*l)+c);else f=o>0?-s:s,h=Math.max(0,-(o*f+a)),d=-h*h+f*(f+2*l)+c;return i&&i.copy(this.origin).addScaledVector(this.direction,h),r&&r.copy(jx).addScaledVector($h,f),d}intersectSphere(t,n){if(t.radius<0)return null;ns.subVectors(t.center,this.origin);let i=ns.dot(this.direction),r=ns.dot(ns)-i*i,s=t.radius*t.radius;if(r>s)return null;let o=Math.sqrt(s-r),a=i-o,l=i+o;return l<0?null:a<0?this.at(l,n):this.at(a,n)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let n=t.normal.dot(this.direction);if(n===0)return t.distanceToPoint(this.origin)===0?0:null;let i=-(this.origin.dot(t.normal)+t.constant)/n;return i>=0?i:null}intersectPlane(t,n){let i=this.distanceToPlane(t);return i===null?null:this.at(i,n)}intersectsPlane(t){let n=t.distanceToPoint(this.origin);return n===0||t.normal.dot(this.direction)*n<0}intersectBox(t,n){let i,r,s,o,a,l,c=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,f=this.origin;return c>=0?(i=(t.min.x-f.x)*c,r=(t.max.x-f.x)*c):(i=(t.max.x-f.x)*c,r=(t.min.x-f.x)*c),u>=0?(s=(t.min.y-f.y)*u,o=(t.max.y-f.y)*u):(s=(t.max.y-f.y)*u,o=(t.min.y-f.y)*u),i>o||s>r||((s>i||isNaN(i))&&(i=s),(o<r||isNaN(r))&&(r=o),h>=0?(a=(t.min.z-f.z)*h,l=(t.max.z-f.z)*h):(a=(t.max.z-f.z)*h,l=(t.min.z-f.z)*h),i>l||a>r)||((a>i||i!==i)&&(i=a),(l<r||r!==r)&&(r=l),r<0)?null:this.at(i>=0?i:r,n)}intersectsBox(t){return this.intersectBox(t,ns)!==null}intersectTriangle(t,n,i,r,s){let o=this.origin,a=this.direction,l=a.x,c=a.y,u=a.z,h=t.x-o.x,f=t.y-o.y,d=t.z-o.z,p=n.x-o.x,y=n.y-o.y,g=n.z-o.z,m=i.x-o.x,x=i.y-o.y,M=i.z-o.z,v=Math.abs(l),S=Math.abs(c),b=Math.abs(u),_,w,R,A,C,P,O,I,D,k,U,Z;if(v>=S&&v>=b?(R=l,P=h,D=p,Z=m,l>=0?(_=c,w=u,A=f,C=d,O=y,I=g,k=x,U=M):(_=u,w=c,A=d,C=f,O=g,I=y,k=M,U=x)):S>=b?(R=c,P=f,D=y,Z=x,c>=0?(_=u,w=l,A=d,C=h,O=g,I=p,k=M,U=m):(_=l,w=u,A=h,C=d,O=p,I=g,k=m,U=M)):(R=u,P=d,D=g,Z=M,u>=0?(_=l,w=c,A=h,C=f,O=p,I=y,k=m,U=x):(_=c,w=l,A=f,C=h,O=y,I=p,k=x,U=m)),R===0)return null;let F=_/R,V=w/R,q=1/R,st=A-F*P,lt=C-V*P,$=O-F*D,at=I-V*D,ft=k-F*Z,ot=U-V*Z,rt=ft*at-ot*$,K=st*ot-lt*ft,gt=$*lt-at*st;if(r){if(rt<0||K<0||gt<0)return null}else if((rt<0||K<0||gt<0)&&(rt>0||K>0||gt>0))return null;let ct=rt+K+gt;if(ct===0)return null;let J=q*(rt*P+K*D+gt*Z);return(ct>0?J<0:J>0)?null:this.at(J/ct,s)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Tl=class extends as{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new os,this.combine=Xd,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},ZA=new be,$o=new qo,qh=new Zi,KA=new z,Yh=new z,Zh=new z,Kh=new z,Qx=new z,Jh=new z,JA=new z,jh=new z,$e=class extends En{constructor(t=new Je,n=new Tl){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}getVertexPosition(t,n){let i=this.geometry,r=i.attributes.position,s=i.morphAttributes.position,o=i.morphTargetsRelative;n.fromBufferAttribute(r,t);let a=this.morphTargetInfluences;if(s&&a){Jh.set(0,0,0);for(let l=0,c=s.length;l<c;l++){let u=a[l],h=s[l];u!==0&&(Qx.fromBufferAttribute(h,t),o?Jh.addScaledVector(Qx,u):Jh.addScaledVector(Qx.sub(n),u))}n.add(Jh)}return n}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.material,s=this.matrixWorld;r!==void 0&&(i.boundingSphere===null&&i.computeBoundingSphere(),qh.copy(i.boundingSphere),qh.applyMatrix4(s),$o.copy(t.ray).recast(t.near),!(qh.containsPoint($o.origin)===!1&&($o.intersectSphere(qh,KA)===null||$o.origin.distanceToSquared(KA)>(t.far-t.near)**2))&&(ZA.copy(s).invert(),$o.copy(t.ray).applyMatrix4(ZA),!(i.boundingBox!==null&&$o.intersectsBox(i.boundingBox)===!1)&&this._computeIntersections(t,n,$o)))}_computeIntersections(t,n,i){let r,s=this.geometry,o=this.material,a=s.index,l=s.attributes.position,c=s.attributes.uv,u=s.attributes.uv1,h=s.attributes.normal,f=s.groups,d=s.drawRange;if(a!==null)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let g=f[p],m=o[g.materialIndex],x=Math.max(g.start,d.start),M=Math.min(a.count,Math.min(g.start+g.count,d.start+d.count));for(let v=x,S=M;v<S;v+=3){let b=a.getX(v),_=a.getX(v+1),w=a.getX(v+2);r=Qh(this,m,t,i,c,u,h,b,_,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=g.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(a.count,d.start+d.count);for(let g=p,m=y;g<m;g+=3){let x=a.getX(g),M=a.getX(g+1),v=a.getX(g+2);r=Qh(this,o,t,i,c,u,h,x,M,v),r&&(r.faceIndex=Math.floor(g/3),n.push(r))}}else if(l!==void 0)if(Array.isArray(o))for(let p=0,y=f.length;p<y;p++){let g=f[p],m=o[g.materialIndex],x=Math.max(g.start,d.start),M=Math.min(l.count,Math.min(g.start+g.count,d.start+d.count));for(let v=x,S=M;v<S;v+=3){let b=v,_=v+1,w=v+2;r=Qh(this,m,t,i,c,u,h,b,_,w),r&&(r.faceIndex=Math.floor(v/3),r.face.materialIndex=g.materialIndex,n.push(r))}}else{let p=Math.max(0,d.start),y=Math.min(l.count,d.start+d.count);for(let g=p,m=y;g<m;g+=3){let x=g,M=g+1,v=g+2;r=Qh(this,o,t,i,c,u,h,x,M,v),r&&(r.faceIndex=Math.floor(g/3),n.push(r))}}}};function TO(e,t,n,i,r,s,o,a){let l;if(t.side===Gn?l=i.intersectTriangle(o,s,r,!0,a):l=i.intersectTriangle(r,s,o,t.side===js,a),l===null)return null;jh.copy(a),jh.applyMatrix4(e.matrixWorld);let c=n.ray.origin.distanceTo(jh);return c<n.near||c>n.far?null:{distance:c,point:jh.clone(),object:e}}function Qh(e,t,n,i,r,s,o,a,l,c){e.getVertexPosition(a,Yh),e.getVertexPosition(l,Zh),e.getVertexPosition(c,Kh);let u=TO(e,t,n,i,Yh,Zh,Kh,JA);if(u){let h=new z;is.getBarycoord(JA,Yh,Zh,Kh,h),r&&(u.uv=is.getInterpolatedAttribute(r,a,l,c,h,new Bt)),s&&(u.uv1=is.getInterpolatedAttribute(s,a,l,c,h,new Bt)),o&&(u.normal=is.getInterpolatedAttribute(o,a,l,c,h,new z),u.normal.dot(i.direction)>0&&u.normal.multiplyScalar(-1));let f={a,b:l,c,normal:new z,materialIndex:0};is.getNormal(Yh,Zh,Kh,f.normal),u.face=f,u.barycoord=h}return u}var Ed=class extends Qn{constructor(t=null,n=1,i=1,r,s,o,a,l,c=hn,u=hn,h,f){super(null,o,a,l,c,u,r,s,h,f),this.isDataTexture=!0,this.image={data:t,width:n,height:i},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Xo=new Zi,EO=new Bt(.5,.5),td=new z,Ws=class{constructor(t=new li,n=new li,i=new li,r=new li,s=new li,o=new li){this.planes=[t,n,i,r,s,o]}set(t,n,i,r,s,o){let a=this.planes;return a[0].copy(t),a[1].copy(n),a[2].copy(i),a[3].copy(r),a[4].copy(s),a[5].copy(o),this}copy(t){let n=this.planes;for(let i=0;i<6;i++)n[i].copy(t.planes[i]);return this}setFromProjectionMatrix(t,n=Li,i=!1){let r=this.planes,s=t.elements,o=s[0],a=s[1],l=s[2],c=s[3],u=s[4],h=s[5],f=s[6],d=s[7],p=s[8],y=s[9],g=s[10],m=s[11],x=s[12],M=s[13],v=s[14],S=s[15];if(r[0].setComponents(c-o,d-u,m-p,S-x).normalize(),r[1].setComponents(c+o,d+u,m+p,S+x).normalize(),r[2].setComponents(c+a,d+h,m+y,S+M).normalize(),r[3].setComponents(c-a,d-h,m-y,S-M).normalize(),i)r[4].setComponents(l,f,g,v).normalize(),r[5].setComponents(c-l,d-f,m-g,S-v).normalize();else if(r[4].setComponents(c-l,d-f,m-g,S-v).normalize(),n===Li)r[5].setComponents(c+l,d+f,m+g,S+v).normalize();else if(n===vl)r[5].setComponents(l,f,g,v).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+n);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),Xo.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let n=t.geometry;n.boundingSphere===null&&n.computeBoundingSphere(),Xo.copy(n.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(Xo)}intersectsSprite(t){Xo.center.set(0,0,0);let n=EO.distanceTo(t.center);return Xo.radius=.7071067811865476+n,Xo.applyMatrix4(t.matrixWorld),this.intersectsSphere(Xo)}intersectsSphere(t){let n=this.planes,i=t.center,r=-t.radius;for(let s=0;s<6;s++)if(n[s].distanceToPoint(i)<r)return!1;return!0}intersectsBox(t){let n=this.planes;for(let i=0;i<6;i++){let r=n[i];if(td.x=r.normal.x>0?t.max.x:t.min.x,td.y=r.normal.y>0?t.max.y:t.min.y,td.z=r.normal.z>0?t.max.z:t.min.z,r.distanceToPoint(td)<0)return!1}return!0}containsPoint(t){let n=this.planes;for(let i=0;i<6;i++)if(n[i].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},jA=new be,Ad=class e{constructor(){this.coordinateSystem=Li,this._frustums=[],this._count=0}setFromArrayCamera(t){let n=t.cameras,i=this._frustums;for(let r=0;r<n.length;r++){let s=n[r];jA.multiplyMatrices(s.projectionMatrix,s.matrixWorldInverse),i[r]===void 0&&(i[r]=new Ws),i[r].setFromProjectionMatrix(jA,s.coordinateSystem,s.reversedDepth)}return this._count=n.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsObject(t))return!0;return!1}intersectsSprite(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsSphere(t))return!0;return!1}intersectsBox(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].intersectsBox(t))return!0;return!1}containsPoint(t){let n=this._frustums;for(let i=0;i<this._count;i++)if(n[i].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let n=this._frustums,i=t._frustums;for(let r=0;r<t._count;r++)n[r]===void 0&&(n[r]=new Ws),n[r].copy(i[r]);return this._count=t._count,this}clone(){return new e().copy(this)}};var Sr=class extends as{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new kt(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Cd=new z,Rd=new z,QA=new be,Wc=new qo,ed=new Zi,t_=new z,t2=new z,Pd=class extends En{constructor(t=new Je,n=new Sr){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=n,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,n){return super.copy(t,n),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[0];for(let r=1,s=n.count;r<s;r++)Cd.fromBufferAttribute(n,r-1),Rd.fromBufferAttribute(n,r),i[r]=i[r-1],i[r]+=Cd.distanceTo(Rd);t.setAttribute("lineDistance",new Ke(i,1))}else Ft("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,n){let i=this.geometry,r=this.matrixWorld,s=t.params.Line.threshold,o=i.drawRange;if(i.boundingSphere===null&&i.computeBoundingSphere(),ed.copy(i.boundingSphere),ed.applyMatrix4(r),ed.radius+=s,t.ray.intersectsSphere(ed)===!1)return;QA.copy(r).invert(),Wc.copy(t.ray).applyMatrix4(QA);let a=s/((this.scale.x+this.scale.y+this.scale.z)/3),l=a*a,c=this.isLineSegments?2:1,u=i.index,f=i.attributes.position;if(u!==null){let d=Math.max(0,o.start),p=Math.min(u.count,o.start+o.count);for(let y=d,g=p-1;y<g;y+=c){let m=u.getX(y),x=u.getX(y+1),M=nd(this,t,Wc,l,m,x,y);M&&n.push(M)}if(this.isLineLoop){let y=u.getX(p-1),g=u.getX(d),m=nd(this,t,Wc,l,y,g,p-1);m&&n.push(m)}}else{let d=Math.max(0,o.start),p=Math.min(f.count,o.start+o.count);for(let y=d,g=p-1;y<g;y+=c){let m=nd(this,t,Wc,l,y,y+1,y);m&&n.push(m)}if(this.isLineLoop){let y=nd(this,t,Wc,l,p-1,d,p-1);y&&n.push(y)}}}updateMorphTargets(){let n=this.geometry.morphAttributes,i=Object.keys(n);if(i.length>0){let r=n[i[0]];if(r!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let s=0,o=r.length;s<o;s++){let a=r[s].name||String(s);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=s}}}}};function nd(e,t,n,i,r,s,o){let a=e.geometry.attributes.position;if(Cd.fromBufferAttribute(a,r),Rd.fromBufferAttribute(a,s),n.distanceSqToSegment(Cd,Rd,t_,t2)>i)return;t_.applyMatrix4(e.matrixWorld);let c=t.ray.origin.distanceTo(t_);if(!(c<t.near||c>t.far))return{distance:c,point:t2.clone().applyMatrix4(e.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:e}}var e2=new z,n2=new z,$s=class extends Pd{constructor(t,n){super(t,n),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let n=t.attributes.position,i=[];for(let r=0,s=n.count;r<s;r+=2)e2.fromBufferAttribute(n,r),n2.fromBufferAttribute(n,r+1),i[r]=r===0?0:i[r-1],i[r+1]=i[r]+e2.distanceTo(n2);t.setAttribute("lineDistance",new Ke(i,1))}else Ft("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var nu=class extends Qn{constructor(t=[],n=Jo,i,r,s,o,a,l,c,u){super(t,n,i,r,s,o,a,l,c,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var ls=class extends Qn{constructor(t,n,i=Ji,r,s,o,a=hn,l=hn,c,u=ss,h=1){if(u!==ss&&u!==hs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let f={width:t,height:n,depth:h};super(f,r,s,o,a,l,u,i,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new Sl(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let n=super.toJSON(t);return n.compareFunction=this.compareFunction,n}},iu=class extends ls{constructor(t,n=Ji,i=Jo,r,s,o=hn,a=hn,l,c=ss){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,n,i,r,s,o,a,l,c),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},ru=class extends Qn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},cs=class e extends Je{constructor(t=1,n=1,i=1,r=1,s=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:n,depth:i,widthSegments:r,heightSegments:s,depthSegments:o};let a=this;r=Math.floor(r),s=Math.floor(s),o=Math.floor(o);let l=[],c=[],u=[],h=[],f=0,d=0;p("z","y","x",-1,-1,i,n,t,o,s,0),p("z","y","x",1,-1,i,n,-t,o,s,1),p("x","z","y",1,1,t,i,n,r,o,2),p("x","z","y",1,-1,t,i,-n,r,o,3),p("x","y","z",1,-1,t,n,i,r,s,4),p("x","y","z",-1,-1,t,n,-i,r,s,5),this.setIndex(l),this.setAttribute("position",new Ke(c,3)),this.setAttribute("normal",new Ke(u,3)),this.setAttribute("uv",new Ke(h,2));function p(y,g,m,x,M,v,S,b,_,w,R){let A=v/_,C=S/w,P=v/2,O=S/2,I=b/2,D=_+1,k=w+1,U=0,Z=0,F=new z;for(let V=0;V<k;V++){let q=V*C-O;for(let st=0;st<D;st++){let lt=st*A-P;F[y]=lt*x,F[g]=q*M,F[m]=I,c.push(F.x,F.y,F.z),F[y]=0,F[g]=0,F[m]=b>0?1:-1,u.push(F.x,F.y,F.z),h.push(st/_),h.push(1-V/w),U+=1}}for(let V=0;V<w;V++)for(let q=0;q<_;q++){let st=f+q+D*V,lt=f+q+D*(V+1),$=f+(q+1)+D*(V+1),at=f+(q+1)+D*V;l.push(st,lt,at),l.push(lt,$,at),Z+=6}a.addGroup(d,Z,R),d+=Z,f+=U}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var id=new z,rd=new z,e_=new z,sd=new is,El=class extends Je{constructor(t=null,n=1){if(super(),this.type="EdgesGeometry",this.parameters={geometry:t,thresholdAngle:n},t!==null){let r=Math.pow(10,4),s=Math.cos(yl*n),o=t.getIndex(),a=t.getAttribute("position"),l=o?o.count:a.count,c=[0,0,0],u=["a","b","c"],h=new Array(3),f=new Map,d=[];for(let p=0;p<l;p+=3){o?(c[0]=o.getX(p),c[1]=o.getX(p+1),c[2]=o.getX(p+2)):(c[0]=p,c[1]=p+1,c[2]=p+2);let{a:y,b:g,c:m}=sd;if(y.fromBufferAttribute(a,c[0]),g.fromBufferAttribute(a,c[1]),m.fromBufferAttribute(a,c[2]),sd.getNormal(e_),h[0]=`${Math.round(y.x*r)},${Math.round(y.y*r)},${Math.round(y.z*r)}`,h[1]=`${Math.round(g.x*r)},${Math.round(g.y*r)},${Math.round(g.z*r)}`,h[2]=`${Math.round(m.x*r)},${Math.round(m.y*r)},${Math.round(m.z*r)}`,!(h[0]===h[1]||h[1]===h[2]||h[2]===h[0]))for(let x=0;x<3;x++){let M=(x+1)%3,v=h[x],S=h[M],b=sd[u[x]],_=sd[u[M]],w=`${v}_${S}`,R=`${S}_${v}`,A=f.get(R);A?(e_.dot(A.normal)<=s&&(d.push(b.x,b.y,b.z),d.push(_.x,_.y,_.z)),f.set(R,null)):f.has(w)||f.set(w,{index0:c[x],index1:c[M],normal:e_.clone()})}}for(let p of f.values())if(p){let{index0:y,index1:g}=p;id.fromBufferAttribute(a,y),rd.fromBufferAttribute(a,g),d.push(id.x,id.y,id.z),d.push(rd.x,rd.y,rd.z)}this.setAttribute("position",new Ke(d,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};var Yo=class e extends Je{constructor(t=1,n=1,i=1,r=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:n,widthSegments:i,heightSegments:r};let s=t/2,o=n/2,a=Math.floor(i),l=Math.floor(r),c=a+1,u=l+1,h=t/a,f=n/l,d=[],p=[],y=[],g=[];for(let m=0;m<u;m++){let x=m*f-o;for(let M=0;M<c;M++){let v=M*h-s;p.push(v,-x,0),y.push(0,0,1),g.push(M/a),g.push(1-m/l)}}for(let m=0;m<l;m++)for(let x=0;x<a;x++){let M=x+c*m,v=x+c*(m+1),S=x+1+c*(m+1),b=x+1+c*m;d.push(M,v,b),d.push(v,S,b)}this.setIndex(d),this.setAttribute("position",new Ke(p,3)),this.setAttribute("normal",new Ke(y,3)),this.setAttribute("uv",new Ke(g,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new e(t.width,t.height,t.widthSegments,t.heightSegments)}};var su=class extends Je{constructor(t=null){if(super(),this.type="WireframeGeometry",this.parameters={geometry:t},t!==null){let n=[],i=new Set,r=new z,s=new z;if(t.index!==null){let o=t.attributes.position,a=t.index,l=t.groups;l.length===0&&(l=[{start:0,count:a.count,materialIndex:0}]);for(let c=0,u=l.length;c<u;++c){let h=l[c],f=h.start,d=h.count;for(let p=f,y=f+d;p<y;p+=3)for(let g=0;g<3;g++){let m=a.getX(p+g),x=a.getX(p+(g+1)%3);r.fromBufferAttribute(o,m),s.fromBufferAttribute(o,x),i2(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}}else{let o=t.attributes.position;for(let a=0,l=o.count/3;a<l;a++)for(let c=0;c<3;c++){let u=3*a+c,h=3*a+(c+1)%3;r.fromBufferAttribute(o,u),s.fromBufferAttribute(o,h),i2(r,s,i)===!0&&(n.push(r.x,r.y,r.z),n.push(s.x,s.y,s.z))}}this.setAttribute("position",new Ke(n,3))}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}};function i2(e,t,n){let i=`${e.x},${e.y},${e.z}-${t.x},${t.y},${t.z}`,r=`${t.x},${t.y},${t.z}-${e.x},${e.y},${e.z}`;return n.has(i)===!0||n.has(r)===!0?!1:(n.add(i),n.add(r),!0)}function Qo(e){let t={};for(let n in e){t[n]={};for(let i in e[n]){let r=e[n][i];if(r2(r))r.isRenderTargetTexture?(Ft("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[n][i]=null):t[n][i]=r.clone();else if(Array.isArray(r))if(r2(r[0])){let s=[];for(let o=0,a=r.length;o<a;o++)s[o]=r[o].clone();t[n][i]=s}else t[n][i]=r.slice();else t[n][i]=r}}return t}function An(e){let t={};for(let n=0;n<e.length;n++){let i=Qo(e[n]);for(let r in i)t[r]=i[r]}return t}function r2(e){return e&&(e.isColor||e.isMatrix3||e.isMatrix4||e.isVector2||e.isVector3||e.isVector4||e.isTexture||e.isQuaternion)}function AO(e){let t=[];for(let n=0;n<e.length;n++)t.push(e[n].clone());return t}function G_(e){let t=e.getRenderTarget();return t===null?e.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ie.workingColorSpace}var wu={clone:Qo,merge:An},CO=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,RO=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Di=class extends as{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=CO,this.fragmentShader=RO,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=Qo(t.uniforms),this.uniformsGroups=AO(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let n=super.toJSON(t);n.glslVersion=this.glslVersion,n.uniforms={};for(let r in this.uniforms){let o=this.uniforms[r].value;o&&o.isTexture?n.uniforms[r]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?n.uniforms[r]={type:"c",value:o.getHex()}:o&&o.isVector2?n.uniforms[r]={type:"v2",value:o.toArray()}:o&&o.isVector3?n.uniforms[r]={type:"v3",value:o.toArray()}:o&&o.isVector4?n.uniforms[r]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?n.uniforms[r]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?n.uniforms[r]={type:"m4",value:o.toArray()}:n.uniforms[r]={value:o}}Object.keys(this.defines).length>0&&(n.defines=this.defines),n.vertexShader=this.vertexShader,n.fragmentShader=this.fragmentShader,n.lights=this.lights,n.clipping=this.clipping;let i={};for(let r in this.extensions)this.extensions[r]===!0&&(i[r]=!0);return Object.keys(i).length>0&&(n.extensions=i),n}fromJSON(t,n){if(super.fromJSON(t,n),t.uniforms!==void 0)for(let i in t.uniforms){let r=t.uniforms[i];switch(this.uniforms[i]={},r.type){case"t":this.uniforms[i].value=n[r.value]||null;break;case"c":this.uniforms[i].value=new kt().setHex(r.value);break;case"v2":this.uniforms[i].value=new Bt().fromArray(r.value);break;case"v3":this.uniforms[i].value=new z().fromArray(r.value);break;case"v4":this.uniforms[i].value=new de().fromArray(r.value);break;case"m3":this.uniforms[i].value=new Vt().fromArray(r.value);break;case"m4":this.uniforms[i].value=new be().fromArray(r.value);break;default:this.uniforms[i].value=r.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let i in t.extensions)this.extensions[i]=t.extensions[i];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Id=class extends Di{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var Al=class extends as{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new kt(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new kt(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Lp,this.normalScale=new Bt(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new os,this.combine=Xd,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Ld=class extends as{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=F2,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Dd=class extends as{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};var ou=class extends Sr{constructor(t){super(),this.isLineDashedMaterial=!0,this.type="LineDashedMaterial",this.scale=1,this.dashSize=3,this.gapSize=1,this.setValues(t)}copy(t){return super.copy(t),this.scale=t.scale,this.dashSize=t.dashSize,this.gapSize=t.gapSize,this}};function hl(e,t){return!e||e.constructor===t?e:typeof t.BYTES_PER_ELEMENT=="number"?new t(e):Array.prototype.slice.call(e)}function od(e){return e!==void 0&&e.inTangents!==void 0&&e.outTangents!==void 0}var Xs=class{constructor(t,n,i,r){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=r!==void 0?r:new n.constructor(i),this.sampleValues=n,this.valueSize=i,this.settings=null,this.DefaultSettings_={}}evaluate(t){let n=this.parameterPositions,i=this._cachedIndex,r=n[i],s=n[i-1];t:{e:{let o;n:{i:if(!(t<r)){for(let a=i+2;;){if(r===void 0){if(t<s)break i;return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}if(i===a)break;if(s=r,r=n[++i],t<r)break e}o=n.length;break n}if(!(t>=s)){let a=n[1];t<a&&(i=2,s=a);for(let l=i-2;;){if(s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(i===l)break;if(r=s,s=n[--i-1],t>=s)break e}o=i,i=0;break n}break t}for(;i<o;){let a=i+o>>>1;t<n[a]?o=a:i=a+1}if(r=n[i],s=n[i-1],s===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(r===void 0)return i=n.length,this._cachedIndex=i,this.copySampleValue_(i-1)}this._cachedIndex=i,this.intervalChanged_(i,s,r)}return this.interpolate_(i,s,t,r)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let n=this.resultBuffer,i=this.sampleValues,r=this.valueSize,s=t*r;for(let o=0;o!==r;++o)n[o]=i[s+o];return n}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Nd=class extends Xs{constructor(t,n,i,r){super(t,n,i,r),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:s_,endingEnd:s_}}intervalChanged_(t,n,i){let r=this.parameterPositions,s=t-2,o=t+1,a=r[s],l=r[o];if(a===void 0)switch(this.getSettings_().endingStart){case o_:s=t,a=2*n-i;break;case a_:s=r.length-2,a=n+r[s]-r[s+1];break;default:s=t,a=i}if(l===void 0)switch(this.getSettings_().endingEnd){case o_:o=t,l=2*i-n;break;case a_:o=1,l=i+r[1]-r[0];break;default:o=t-1,l=n}let c=(i-n)*.5,u=this.valueSize;this._weightPrev=c/(n-a),this._weightNext=c/(l-i),this._offsetPrev=s*u,this._offsetNext=o*u}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this._offsetPrev,h=this._offsetNext,f=this._weightPrev,d=this._weightNext,p=(i-n)/(r-n),y=p*p,g=y*p,m=-f*g+2*f*y-f*p,x=(1+f)*g+(-1.5-2*f)*y+(-.5+f)*p+1,M=(-1-d)*g+(1.5+d)*y+.5*p,v=d*g-d*y;for(let S=0;S!==a;++S)s[S]=m*o[u+S]+x*o[c+S]+M*o[l+S]+v*o[h+S];return s}},Ud=class extends Xs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=(i-n)/(r-n),h=1-u;for(let f=0;f!==a;++f)s[f]=o[c+f]*h+o[l+f]*u;return s}},Fd=class extends Xs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t){return this.copySampleValue_(t-1)}},Od=class extends Xs{interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=t*a,c=l-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let p=(i-n)/(r-n),y=1-p;for(let g=0;g!==a;++g)s[g]=o[c+g]*y+o[l+g]*p;return s}let f=a*2,d=t-1;for(let p=0;p!==a;++p){let y=o[c+p],g=o[l+p],m=d*f+p*2,x=h[m],M=h[m+1],v=t*f+p*2,S=u[v],b=u[v+1],_=IO(i,n,x,S,r);s[p]=Z2(_,y,M,b,g)}return s}};function Z2(e,t,n,i,r){let s=1-e;return s*s*s*t+3*s*s*e*n+3*s*e*e*i+e*e*e*r}function PO(e,t,n,i,r){let s=1-e;return 3*s*s*(n-t)+6*s*e*(i-n)+3*e*e*(r-i)}function IO(e,t,n,i,r){let s=(e-t)/(r-t);for(let o=0;o<8;o++){let a=Z2(s,t,n,i,r)-e;if(Math.abs(a)<1e-10)break;let l=PO(s,t,n,i,r);if(Math.abs(l)<1e-10)break;s=Math.max(0,Math.min(1,s-a/l))}return s}var di=class{constructor(t,n,i,r){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(n===void 0||n.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=hl(n,this.TimeBufferType),this.values=hl(i,this.ValueBufferType),this.setInterpolation(r||this.DefaultInterpolation)}static toJSON(t){let n=t.constructor,i;if(n.toJSON!==this.toJSON)i=n.toJSON(t);else{i={name:t.name,times:hl(t.times,Array),values:hl(t.values,Array)};let r=t.getInterpolation();r!==t.DefaultInterpolation&&(i.interpolation=r),od(t.settings)&&(i.settings={inTangents:hl(t.settings.inTangents,Array),outTangents:hl(t.settings.outTangents,Array)})}return i.type=t.ValueTypeName,i}InterpolantFactoryMethodDiscrete(t){return new Fd(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Ud(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Nd(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let n=new Od(this.times,this.values,this.getValueSize(),t);return this.settings&&(n.inTangents=this.settings.inTangents,n.outTangents=this.settings.outTangents),n}setInterpolation(t){let n;switch(t){case qc:n=this.InterpolantFactoryMethodDiscrete;break;case bd:n=this.InterpolantFactoryMethodLinear;break;case ud:n=this.InterpolantFactoryMethodSmooth;break;case r_:n=this.InterpolantFactoryMethodBezier;break}if(n===void 0){let i="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(i);return Ft("KeyframeTrack:",i),this}return this.createInterpolant=n,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return qc;case this.InterpolantFactoryMethodLinear:return bd;case this.InterpolantFactoryMethodSmooth:return ud;case this.InterpolantFactoryMethodBezier:return r_}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]+=t;od(this.settings)&&(s2(this.settings.inTangents,t),s2(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let n=this.times;for(let i=0,r=n.length;i!==r;++i)n[i]*=t;od(this.settings)&&(o2(this.settings.inTangents,t),o2(this.settings.outTangents,t))}return this}trim(t,n){let i=this.times,r=i.length,s=0,o=r-1;for(;s!==r&&i[s]<t;)++s;for(;o!==-1&&i[o]>n;)--o;if(++o,s!==0||o!==r){s>=o&&(o=Math.max(o,1),s=o-1);let a=this.getValueSize();this.times=i.slice(s,o),this.values=this.values.slice(s*a,o*a)}return this}validate(){let t=!0,n=this.getValueSize();n-Math.floor(n)!==0&&(Gt("KeyframeTrack: Invalid value size in track.",this),t=!1);let i=this.times,r=this.values,s=i.length;s===0&&(Gt("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==s;a++){let l=i[a];if(typeof l=="number"&&isNaN(l)){Gt("KeyframeTrack: Time is not a valid number.",this,a,l),t=!1;break}if(o!==null&&o>l){Gt("KeyframeTrack: Out of order keys.",this,a,l,o),t=!1;break}o=l}if(r!==void 0&&qF(r))for(let a=0,l=r.length;a!==l;++a){let c=r[a];if(isNaN(c)){Gt("KeyframeTrack: Value is not a valid number.",this,a,c),t=!1;break}}return t}optimize(){let t=this.times.slice(),n=this.values.slice(),i=this.getValueSize(),r=this.getInterpolation()===ud,s=t.length-1,o=1;for(let a=1;a<s;++a){let l=!1,c=t[a],u=t[a+1];if(c!==u&&(a!==1||c!==t[0]))if(r)l=!0;else{let h=a*i,f=h-i,d=h+i;for(let p=0;p!==i;++p){let y=n[h+p];if(y!==n[f+p]||y!==n[d+p]){l=!0;break}}}if(l){if(a!==o){t[o]=t[a];let h=a*i,f=o*i;for(let d=0;d!==i;++d)n[f+d]=n[h+d]}++o}}if(s>0){t[o]=t[s];for(let a=s*i,l=o*i,c=0;c!==i;++c)n[l+c]=n[a+c];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=n.slice(0,o*i)):(this.times=t,this.values=n),this}clone(){let t=this.times.slice(),n=this.values.slice(),i=this.constructor,r=new i(this.name,t,n);return r.createInterpolant=this.createInterpolant,od(this.settings)&&(r.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),r}};function s2(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]+=t}function o2(e,t){for(let n=0,i=e.length;n!==i;n+=2)e[n]*=t}di.prototype.ValueTypeName="";di.prototype.TimeBufferType=Float32Array;di.prototype.ValueBufferType=Float32Array;di.prototype.DefaultInterpolation=bd;var qs=class extends di{constructor(t,n,i){super(t,n,i)}};qs.prototype.ValueTypeName="bool";qs.prototype.ValueBufferType=Array;qs.prototype.DefaultInterpolation=qc;qs.prototype.InterpolantFactoryMethodLinear=void 0;qs.prototype.InterpolantFactoryMethodSmooth=void 0;var Bd=class extends di{constructor(t,n,i,r){super(t,n,i,r)}};Bd.prototype.ValueTypeName="color";var kd=class extends di{constructor(t,n,i,r){super(t,n,i,r)}};kd.prototype.ValueTypeName="number";var zd=class extends Xs{constructor(t,n,i,r){super(t,n,i,r)}interpolate_(t,n,i,r){let s=this.resultBuffer,o=this.sampleValues,a=this.valueSize,l=(i-n)/(r-n),c=t*a;for(let u=c+a;c!==u;c+=4)fi.slerpFlat(s,0,o,c-a,o,c,l);return s}},au=class extends di{constructor(t,n,i,r){super(t,n,i,r)}InterpolantFactoryMethodLinear(t){return new zd(this.times,this.values,this.getValueSize(),t)}};au.prototype.ValueTypeName="quaternion";au.prototype.InterpolantFactoryMethodSmooth=void 0;var Ys=class extends di{constructor(t,n,i){super(t,n,i)}};Ys.prototype.ValueTypeName="string";Ys.prototype.ValueBufferType=Array;Ys.prototype.DefaultInterpolation=qc;Ys.prototype.InterpolantFactoryMethodLinear=void 0;Ys.prototype.InterpolantFactoryMethodSmooth=void 0;var Gd=class extends di{constructor(t,n,i,r){super(t,n,i,r)}};Gd.prototype.ValueTypeName="vector";var Vd=class{constructor(t,n,i){let r=this,s=!1,o=0,a=0,l,c=[];this.onStart=void 0,this.onLoad=t,this.onProgress=n,this.onError=i,this._abortController=null,this.itemStart=function(u){a++,s===!1&&r.onStart!==void 0&&r.onStart(u,o,a),s=!0},this.itemEnd=function(u){o++,r.onProgress!==void 0&&r.onProgress(u,o,a),o===a&&(s=!1,r.onLoad!==void 0&&r.onLoad())},this.itemError=function(u){r.onError!==void 0&&r.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),l?l(u):u},this.setURLModifier=function(u){return l=u,this},this.addHandler=function(u,h){return c.push(u,h),this},this.removeHandler=function(u){let h=c.indexOf(u);return h!==-1&&c.splice(h,2),this},this.getHandler=function(u){for(let h=0,f=c.length;h<f;h+=2){let d=c[h],p=c[h+1];if(d.global&&(d.lastIndex=0),d.test(u))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},K2=new Vd,Hd=class{constructor(t){this.manager=t!==void 0?t:K2,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,n){let i=this;return new Promise(function(r,s){i.load(t,r,n,s)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};Hd.DEFAULT_MATERIAL_NAME="__DEFAULT";var lu=class extends En{static registerNode(t){this.prototype._lightNode=t}constructor(t,n=1){super(),this.isLight=!0,this.type="Light",this.color=new kt(t),this.intensity=n}copy(t,n){return super.copy(t,n),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let n=super.toJSON(t);return n.object.color=this.color.getHex(),n.object.intensity=this.intensity,n}};var n_=new be,a2=new z,l2=new z,Wd=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new Bt(512,512),this.mapType=ti,this.map=null,this.mapPass=null,this.matrix=new be,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Ws,this._frameExtents=new Bt(1,1),this._viewportCount=1,this._viewports=[new de(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let n=this.camera;a2.setFromMatrixPosition(t.matrixWorld),n.position.copy(a2),l2.setFromMatrixPosition(t.target.matrixWorld),n.lookAt(l2),n.updateMatrixWorld(),this._updateMatrix(n,this.matrix,this._frustum)}_updateMatrix(t,n,i,r){n_.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),i.setFromProjectionMatrix(n_,t.coordinateSystem,t.reversedDepth);let s=this._frameExtents,o=r?r.z/s.x:1,a=r?r.w/s.y:1,l=r?r.x/s.x:0,c=r?r.y/s.y:0;t.coordinateSystem===vl||t.reversedDepth?n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,1,0,0,0,0,1):n.set(.5*o,0,0,.5*o+l,0,.5*a,0,.5*a+c,0,0,.5,.5,0,0,0,1),n.multiply(n_)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},ad=new z,ld=new fi,br=new z,cu=class extends En{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new be,this.projectionMatrix=new be,this.projectionMatrixInverse=new be,this.coordinateSystem=Li,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,n){return super.copy(t,n),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(ad,ld,br),br.x===1&&br.y===1&&br.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ad,ld,br.set(1,1,1)).invert()}updateWorldMatrix(t,n,i=!1){super.updateWorldMatrix(t,n,i),this.matrixWorld.decompose(ad,ld,br),br.x===1&&br.y===1&&br.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ad,ld,br.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Vs=new z,c2=new Bt,u2=new Bt,ci=class extends cu{constructor(t=50,n=1,i=.1,r=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=i,this.far=r,this.focus=10,this.aspect=n,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let n=.5*this.getFilmHeight()/t;this.fov=Ml*2*Math.atan(n),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(yl*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return Ml*2*Math.atan(Math.tan(yl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,n,i){Vs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Vs.x,Vs.y).multiplyScalar(-t/Vs.z),Vs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),i.set(Vs.x,Vs.y).multiplyScalar(-t/Vs.z)}getViewSize(t,n){return this.getViewBounds(t,c2,u2),n.subVectors(u2,c2)}setViewOffset(t,n,i,r,s,o){this.aspect=t/n,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,n=t*Math.tan(yl*.5*this.fov)/this.zoom,i=2*n,r=this.aspect*i,s=-.5*r,o=this.view;if(this.view!==null&&this.view.enabled){let l=o.fullWidth,c=o.fullHeight;s+=o.offsetX*r/l,n-=o.offsetY*i/c,r*=o.width/l,i*=o.height/c}let a=this.filmOffset;a!==0&&(s+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(s,s+r,n,n-i,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.fov=this.fov,n.object.zoom=this.zoom,n.object.near=this.near,n.object.far=this.far,n.object.focus=this.focus,n.object.aspect=this.aspect,this.view!==null&&(n.object.view=Object.assign({},this.view)),n.object.filmGauge=this.filmGauge,n.object.filmOffset=this.filmOffset,n}};var us=class extends cu{constructor(t=-1,n=1,i=1,r=-1,s=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=n,this.top=i,this.bottom=r,this.near=s,this.far=o,this.updateProjectionMatrix()}copy(t,n){return super.copy(t,n),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,n,i,r,s,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=n,this.view.offsetX=i,this.view.offsetY=r,this.view.width=s,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),n=(this.top-this.bottom)/(2*this.zoom),i=(this.right+this.left)/2,r=(this.top+this.bottom)/2,s=i-t,o=i+t,a=r+n,l=r-n;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;s+=c*this.view.offsetX,o=s+c*this.view.width,a-=u*this.view.offsetY,l=a-u*this.view.height}this.projectionMatrix.makeOrthographic(s,o,a,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let n=super.toJSON(t);return n.object.zoom=this.zoom,n.object.left=this.left,n.object.right=this.right,n.object.top=this.top,n.object.bottom=this.bottom,n.object.near=this.near,n.object.far=this.far,this.view!==null&&(n.object.view=Object.assign({},this.view)),n}},l_=class extends Wd{constructor(){super(new us(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},uu=class extends lu{constructor(t,n){super(t,n),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(En.DEFAULT_UP),this.updateMatrix(),this.target=new En,this.shadow=new l_}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let n=super.toJSON(t);return n.object.shadow=this.shadow.toJSON(),n.object.target=this.target.uuid,n}},fu=class extends lu{constructor(t,n){super(t,n),this.isAmbientLight=!0,this.type="AmbientLight"}};var hu=class extends Je{constructor(){super(),this.isInstancedBufferGeometry=!0,this.type="InstancedBufferGeometry",this.instanceCount=1/0}copy(t){return super.copy(t),this.instanceCount=t.instanceCount,this}toJSON(){let t=super.toJSON();return t.instanceCount=this.instanceCount,t.isInstancedBufferGeometry=!0,t}};var dl=-90,pl=1,Cl=class extends En{constructor(t,n,i){super(),this.type="CubeCamera",this.renderTarget=i,this.coordinateSystem=null,this.activeMipmapLevel=0;let r=new ci(dl,pl,t,n);r.layers=this.layers,this.add(r);let s=new ci(dl,pl,t,n);s.layers=this.layers,this.add(s);let o=new ci(dl,pl,t,n);o.layers=this.layers,this.add(o);let a=new ci(dl,pl,t,n);a.layers=this.layers,this.add(a);let l=new ci(dl,pl,t,n);l.layers=this.layers,this.add(l);let c=new ci(dl,pl,t,n);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let t=this.coordinateSystem,n=this.children.concat(),[i,r,s,o,a,l]=n;for(let c of n)this.remove(c);if(t===Li)i.up.set(0,1,0),i.lookAt(1,0,0),r.up.set(0,1,0),r.lookAt(-1,0,0),s.up.set(0,0,-1),s.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(t===vl)i.up.set(0,-1,0),i.lookAt(-1,0,0),r.up.set(0,-1,0),r.lookAt(1,0,0),s.up.set(0,0,1),s.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let c of n)this.add(c),c.updateMatrixWorld()}update(t,n){this.parent===null&&this.updateMatrixWorld();let{renderTarget:i,activeMipmapLevel:r}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[s,o,a,l,c,u]=this.children,h=t.getRenderTarget(),f=t.getActiveCubeFace(),d=t.getActiveMipmapLevel(),p=t.xr.enabled;t.xr.enabled=!1;let y=i.texture.mipmapsAutoUpdate;i.texture.mipmapsAutoUpdate=!1;let g=!1;t.isWebGLRenderer===!0?g=t.state.buffers.depth.getReversed():g=t.reversedDepthBuffer,t.setRenderTarget(i,0,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,s),t.setRenderTarget(i,1,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,o),t.setRenderTarget(i,2,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,a),t.setRenderTarget(i,3,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,l),t.setRenderTarget(i,4,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,c),i.texture.mipmapsAutoUpdate=y,t.setRenderTarget(i,5,r),g&&t.autoClear===!1&&t.clearDepth(),t.render(n,u),t.setRenderTarget(h,f,d),t.xr.enabled=p,i.texture.needsPMREMUpdate=!0}},$d=class extends ci{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var V_="\\[\\]\\.:\\/",LO=new RegExp("["+V_+"]","g"),H_="[^"+V_+"]",DO="[^"+V_.replace("\\.","")+"]",NO=/((?:WC+[\/:])*)/.source.replace("WC",H_),UO=/(WCOD+)?/.source.replace("WCOD",DO),FO=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",H_),OO=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",H_),BO=new RegExp("^"+NO+UO+FO+OO+"$"),kO=["material","materials","bones","map"],c_=class{constructor(t,n,i){let r=i||Ee.parseTrackName(n);this._targetGroup=t,this._bindings=t.subscribe_(n,r)}getValue(t,n){this.bind();let i=this._targetGroup.nCachedObjects_,r=this._bindings[i];r!==void 0&&r.getValue(t,n)}setValue(t,n){let i=this._bindings;for(let r=this._targetGroup.nCachedObjects_,s=i.length;r!==s;++r)i[r].setValue(t,n)}bind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].bind()}unbind(){let t=this._bindings;for(let n=this._targetGroup.nCachedObjects_,i=t.length;n!==i;++n)t[n].unbind()}},Ee=class e{constructor(t,n,i){this.path=n,this.parsedPath=i||e.parseTrackName(n),this.node=e.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,n,i){return t&&t.isAnimationObjectGroup?new e.Composite(t,n,i):new e(t,n,i)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(LO,"")}static parseTrackName(t){let n=BO.exec(t);if(n===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let i={nodeName:n[2],objectName:n[3],objectIndex:n[4],propertyName:n[5],propertyIndex:n[6]},r=i.nodeName&&i.nodeName.lastIndexOf(".");if(r!==void 0&&r!==-1){let s=i.nodeName.substring(r+1);kO.indexOf(s)!==-1&&(i.nodeName=i.nodeName.substring(0,r),i.objectName=s)}if(i.propertyName===null||i.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return i}static findNode(t,n){if(n===void 0||n===""||n==="."||n===-1||n===t.name||n===t.uuid)return t;if(t.skeleton){let i=t.skeleton.getBoneByName(n);if(i!==void 0)return i}if(t.children){let i=function(s){for(let o=0;o<s.length;o++){let a=s[o];if(a.name===n||a.uuid===n)return a;let l=i(a.children);if(l)return l}return null},r=i(t.children);if(r)return r}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,n){t[n]=this.targetObject[this.propertyName]}_getValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)t[n++]=i[r]}_getValue_arrayElement(t,n){t[n]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,n){this.resolvedProperty.toArray(t,n)}_setValue_direct(t,n){this.targetObject[this.propertyName]=t[n]}_setValue_direct_setNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,n){this.targetObject[this.propertyName]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++]}_setValue_array_setNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,n){let i=this.resolvedProperty;for(let r=0,s=i.length;r!==s;++r)i[r]=t[n++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,n){this.resolvedProperty[this.propertyIndex]=t[n]}_setValue_arrayElement_setNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty[this.propertyIndex]=t[n],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,n){this.resolvedProperty.fromArray(t,n)}_setValue_fromArray_setNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,n){this.resolvedProperty.fromArray(t,n),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,n){this.bind(),this.getValue(t,n)}_setValue_unbound(t,n){this.bind(),this.setValue(t,n)}bind(){let t=this.node,n=this.parsedPath,i=n.objectName,r=n.propertyName,s=n.propertyIndex;if(t||(t=e.findNode(this.rootNode,n.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Ft("PropertyBinding: No target node found for track: "+this.path+".");return}if(i){let c=n.objectIndex;switch(i){case"materials":if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){Gt("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){Gt("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===c){c=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){Gt("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){Gt("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[i]===void 0){Gt("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[i]}if(c!==void 0){if(t[c]===void 0){Gt("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[c]}}let o=t[r];if(o===void 0){let c=n.nodeName;Gt("PropertyBinding: Trying to update property for track: "+c+"."+r+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(s!==void 0){if(r==="morphTargetInfluences"){if(!t.geometry){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){Gt("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[s]!==void 0&&(s=t.morphTargetDictionary[s])}l=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=s}else o.fromArray!==void 0&&o.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(l=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=r;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};Ee.Composite=c_;Ee.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};Ee.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};Ee.prototype.GetterByBindingType=[Ee.prototype._getValue_direct,Ee.prototype._getValue_array,Ee.prototype._getValue_arrayElement,Ee.prototype._getValue_toArray];Ee.prototype.SetterByBindingTypeAndVersioning=[[Ee.prototype._setValue_direct,Ee.prototype._setValue_direct_setNeedsUpdate,Ee.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_array,Ee.prototype._setValue_array_setNeedsUpdate,Ee.prototype._setValue_array_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_arrayElement,Ee.prototype._setValue_arrayElement_setNeedsUpdate,Ee.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[Ee.prototype._setValue_fromArray,Ee.prototype._setValue_fromArray_setNeedsUpdate,Ee.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var u$=new Float32Array(1);var Zs=class extends Td{constructor(t,n,i=1){super(t,n),this.isInstancedInterleavedBuffer=!0,this.meshPerAttribute=i}copy(t){return super.copy(t),this.meshPerAttribute=t.meshPerAttribute,this}clone(t){let n=super.clone(t);return n.meshPerAttribute=this.meshPerAttribute,n}toJSON(t){let n=super.toJSON(t);return n.isInstancedInterleavedBuffer=!0,n.meshPerAttribute=this.meshPerAttribute,n}};var Rl=class{constructor(t=1,n=0,i=0){this.radius=t,this.phi=n,this.theta=i}set(t,n,i){return this.radius=t,this.phi=n,this.theta=i,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=Xt(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,n,i){return this.radius=Math.sqrt(t*t+n*n+i*i),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,i),this.phi=Math.acos(Xt(n/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var u_=class{static{this.prototype.isMatrix2=!0}constructor(t,n,i,r){this.elements=[1,0,0,1],t!==void 0&&this.set(t,n,i,r)}identity(){return this.set(1,0,0,1),this}fromArray(t,n=0){for(let i=0;i<4;i++)this.elements[i]=t[i+n];return this}set(t,n,i,r){let s=this.elements;return s[0]=t,s[2]=n,s[1]=i,s[3]=r,this}};var f2=new z,cd=new z,ml=new z,gl=new z,i_=new z,zO=new z,GO=new z,du=class{constructor(t=new z,n=new z){this.start=t,this.end=n}set(t,n){return this.start.copy(t),this.end.copy(n),this}copy(t){return this.start.copy(t.start),this.end.copy(t.end),this}getCenter(t){return t.addVectors(this.start,this.end).multiplyScalar(.5)}delta(t){return t.subVectors(this.end,this.start)}distanceSq(){return this.start.distanceToSquared(this.end)}distance(){return this.start.distanceTo(this.end)}at(t,n){return this.delta(n).multiplyScalar(t).add(this.start)}closestPointToPointParameter(t,n){f2.subVectors(t,this.start),cd.subVectors(this.end,this.start);let i=cd.dot(cd);if(i===0)return 0;let s=cd.dot(f2)/i;return n&&(s=Xt(s,0,1)),s}closestPointToPoint(t,n,i){let r=this.closestPointToPointParameter(t,n);return this.delta(i).multiplyScalar(r).add(this.start)}distanceSqToLine3(t,n=zO,i=GO){let r=10000000000000001e-32,s,o,a=this.start,l=t.start,c=this.end,u=t.end;ml.subVectors(c,a),gl.subVectors(u,l),i_.subVectors(a,l);let h=ml.dot(ml),f=gl.dot(gl),d=gl.dot(i_);if(h<=r&&f<=r)return n.copy(a),i.copy(l),n.distanceToSquared(i);if(h<=r)s=0,o=d/f,o=Xt(o,0,1);else{let p=ml.dot(i_);if(f<=r)o=0,s=Xt(-p/h,0,1);else{let y=ml.dot(gl),g=h*f-y*y;g!==0?s=Xt((y*d-p*f)/g,0,1):s=0,o=(y*s+d)/f,o<0?(o=0,s=Xt(-p/h,0,1)):o>1&&(o=1,s=Xt((y-p)/h,0,1))}}return n.copy(a).addScaledVector(ml,s),i.copy(l).addScaledVector(gl,o),n.distanceToSquared(i)}applyMatrix4(t){return this.start.applyMatrix4(t),this.end.applyMatrix4(t),this}equals(t){return t.start.equals(this.start)&&t.end.equals(this.end)}clone(){return new this.constructor().copy(this)}};var pu=class extends Yi{constructor(t,n=null){super(),this.object=t,this.domElement=n,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function W_(e,t,n,i){let r=VO(i);switch(n){case R_:return e*t;case I_:return e*t/r.components*r.byteLength;case Qd:return e*t/r.components*r.byteLength;case Qs:return e*t*2/r.components*r.byteLength;case tp:return e*t*2/r.components*r.byteLength;case P_:return e*t*3/r.components*r.byteLength;case tr:return e*t*4/r.components*r.byteLength;case ep:return e*t*4/r.components*r.byteLength;case yu:case xu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case _u:case vu:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case ip:case sp:return Math.max(e,16)*Math.max(t,8)/4;case np:case rp:return Math.max(e,8)*Math.max(t,8)/2;case op:case ap:case cp:case up:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*8;case lp:case bu:case fp:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case hp:return Math.floor((e+3)/4)*Math.floor((t+3)/4)*16;case dp:return Math.floor((e+4)/5)*Math.floor((t+3)/4)*16;case pp:return Math.floor((e+4)/5)*Math.floor((t+4)/5)*16;case mp:return Math.floor((e+5)/6)*Math.floor((t+4)/5)*16;case gp:return Math.floor((e+5)/6)*Math.floor((t+5)/6)*16;case yp:return Math.floor((e+7)/8)*Math.floor((t+4)/5)*16;case xp:return Math.floor((e+7)/8)*Math.floor((t+5)/6)*16;case _p:return Math.floor((e+7)/8)*Math.floor((t+7)/8)*16;case vp:return Math.floor((e+9)/10)*Math.floor((t+4)/5)*16;case bp:return Math.floor((e+9)/10)*Math.floor((t+5)/6)*16;case Mp:return Math.floor((e+9)/10)*Math.floor((t+7)/8)*16;case Sp:return Math.floor((e+9)/10)*Math.floor((t+9)/10)*16;case wp:return Math.floor((e+11)/12)*Math.floor((t+9)/10)*16;case Tp:return Math.floor((e+11)/12)*Math.floor((t+11)/12)*16;case Ep:case Ap:case Cp:return Math.ceil(e/4)*Math.ceil(t/4)*16;case Rp:case Pp:return Math.ceil(e/4)*Math.ceil(t/4)*8;case Mu:case Ip:return Math.ceil(e/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${n} format.`)}function VO(e){switch(e){case ti:case T_:return{byteLength:1,components:1};case Dl:case E_:case Qi:return{byteLength:2,components:1};case Jd:case jd:return{byteLength:2,components:4};case Ji:case Kd:case ji:return{byteLength:4,components:1};case A_:case C_:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${e}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Ft("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function x3(){let e=null,t=!1,n=null,i=null;function r(s,o){i=e.requestAnimationFrame(r),n(s,o)}return{start:function(){t!==!0&&n!==null&&e!==null&&(i=e.requestAnimationFrame(r),t=!0)},stop:function(){e!==null&&e.cancelAnimationFrame(i),t=!1},setAnimationLoop:function(s){n=s},setContext:function(s){e=s}}}function WO(e){let t=new WeakMap;function n(a,l){let c=a.array,u=a.usage,h=c.byteLength,f=e.createBuffer();e.bindBuffer(l,f),e.bufferData(l,c,u),a.onUploadCallback();let d;if(c instanceof Float32Array)d=e.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)d=e.HALF_FLOAT;else if(c instanceof Uint16Array)a.isFloat16BufferAttribute?d=e.HALF_FLOAT:d=e.UNSIGNED_SHORT;else if(c instanceof Int16Array)d=e.SHORT;else if(c instanceof Uint32Array)d=e.UNSIGNED_INT;else if(c instanceof Int32Array)d=e.INT;else if(c instanceof Int8Array)d=e.BYTE;else if(c instanceof Uint8Array)d=e.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)d=e.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:f,type:d,bytesPerElement:c.BYTES_PER_ELEMENT,version:a.version,size:h}}function i(a,l,c){let u=l.array,h=l.updateRanges;if(e.bindBuffer(c,a),h.length===0)e.bufferSubData(c,0,u);else{h.sort((d,p)=>d.start-p.start);let f=0;for(let d=1;d<h.length;d++){let p=h[f],y=h[d];y.start<=p.start+p.count+1?p.count=Math.max(p.count,y.start+y.count-p.start):(++f,h[f]=y)}h.length=f+1;for(let d=0,p=h.length;d<p;d++){let y=h[d];e.bufferSubData(c,y.start*u.BYTES_PER_ELEMENT,u,y.start,y.count)}l.clearUpdateRanges()}l.onUploadCallback()}function r(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function s(a){a.isInterleavedBufferAttribute&&(a=a.data);let l=t.get(a);l&&(e.deleteBuffer(l.buffer),t.delete(a))}function o(a,l){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let c=t.get(a);if(c===void 0)t.set(a,n(a,l));else if(c.version<a.version){if(c.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");i(c.buffer,a,l),c.version=a.version}}return{get:r,remove:s,update:o}}var $O=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,XO=`#ifdef USE_ALPHAHASH
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
#endif`,qO=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,YO=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,ZO=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,KO=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,JO=`#ifdef USE_AOMAP
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
#endif`,jO=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,QO=`#ifdef USE_BATCHING
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
#endif`,t4=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,e4=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,n4=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,i4=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,r4=`#ifdef USE_IRIDESCENCE
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
#endif`,s4=`#ifdef USE_BUMPMAP
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
#endif`,o4=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,a4=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,l4=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,c4=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,u4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,f4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,h4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,d4=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,p4=`#define PI 3.141592653589793
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
} // validated`,m4=`vec3 transformedNormal = objectNormal;
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
#endif`,g4=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,y4=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,x4=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,_4=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,v4="gl_FragColor = linearToOutputTexel( gl_FragColor );",b4=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,M4=`#ifdef USE_ENVMAP
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
#endif`,S4=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,w4=`#ifdef USE_ENVMAP
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
#endif`,T4=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,E4=`#ifdef USE_ENVMAP
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
#endif`,A4=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,C4=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,R4=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,P4=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,I4=`#ifdef USE_GRADIENTMAP
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
}`,L4=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,D4=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,N4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,U4=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,F4=`#ifdef USE_ENVMAP
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
#endif`,O4=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,B4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,k4=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,z4=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,G4=`PhysicalMaterial material;
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
#endif`,V4=`uniform sampler2D dfgLUT;
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
}`,H4=`
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
#endif`,W4=`#if defined( RE_IndirectDiffuse )
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
#endif`,$4=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,X4=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,q4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Y4=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Z4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,K4=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,J4=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,j4=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,Q4=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,t5=`#if defined( USE_POINTS_UV )
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
#endif`,e5=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,n5=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,i5=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,r5=`#if defined( USE_MORPHCOLORS )
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
#endif`,s5=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,o5=`#ifdef USE_MORPHTARGETS
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
#endif`,a5=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,l5=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,c5=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,u5=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,f5=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,h5=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,d5=`#ifdef USE_NORMALMAP
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
#endif`,p5=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,m5=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,g5=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,y5=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,x5=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,_5=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,v5=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,b5=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,M5=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,S5=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,w5=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,T5=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,E5=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,A5=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,C5=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,R5=`float getShadowMask() {
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
}`,P5=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,I5=`#ifdef USE_SKINNING
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
#endif`,L5=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,D5=`#ifdef USE_SKINNING
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
#endif`,N5=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,U5=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,F5=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,O5=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,B5=`#ifdef USE_TRANSMISSION
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
#endif`,k5=`#ifdef USE_TRANSMISSION
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
#endif`,z5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,G5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,V5=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,H5=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,W5=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,$5=`uniform sampler2D t2D;
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
}`,X5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,q5=`uniform float backgroundBlurriness;
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
}`,Y5=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,Z5=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,K5=`#include <common>
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
}`,J5=`#if DEPTH_PACKING == 3200
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
}`,j5=`#define DISTANCE
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
}`,Q5=`#define DISTANCE
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
}`,tB=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,eB=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,nB=`uniform float scale;
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
}`,iB=`uniform vec3 diffuse;
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
}`,rB=`#include <common>
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
}`,sB=`uniform vec3 diffuse;
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
}`,oB=`#define LAMBERT
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
}`,aB=`#define LAMBERT
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
}`,lB=`#define MATCAP
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
}`,cB=`#define MATCAP
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
}`,uB=`#define NORMAL
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
}`,fB=`#define NORMAL
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
}`,hB=`#define PHONG
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
}`,dB=`#define PHONG
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
}`,pB=`#define STANDARD
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
}`,mB=`#define STANDARD
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
}`,gB=`#define TOON
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
}`,yB=`#define TOON
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
}`,xB=`uniform float size;
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
}`,_B=`uniform vec3 diffuse;
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
}`,vB=`#include <common>
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
}`,bB=`uniform vec3 color;
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
}`,MB=`uniform float rotation;
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
}`,SB=`uniform vec3 diffuse;
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
}`,jt={alphahash_fragment:$O,alphahash_pars_fragment:XO,alphamap_fragment:qO,alphamap_pars_fragment:YO,alphatest_fragment:ZO,alphatest_pars_fragment:KO,aomap_fragment:JO,aomap_pars_fragment:jO,batching_pars_vertex:QO,batching_vertex:t4,begin_vertex:e4,beginnormal_vertex:n4,bsdfs:i4,iridescence_fragment:r4,bumpmap_pars_fragment:s4,clipping_planes_fragment:o4,clipping_planes_pars_fragment:a4,clipping_planes_pars_vertex:l4,clipping_planes_vertex:c4,color_fragment:u4,color_pars_fragment:f4,color_pars_vertex:h4,color_vertex:d4,common:p4,defaultnormal_vertex:m4,displacementmap_pars_vertex:g4,displacementmap_vertex:y4,emissivemap_fragment:x4,emissivemap_pars_fragment:_4,colorspace_fragment:v4,colorspace_pars_fragment:b4,envmap_fragment:M4,envmap_common_pars_fragment:S4,envmap_pars_fragment:w4,envmap_pars_vertex:T4,envmap_physical_pars_fragment:F4,envmap_vertex:E4,fog_vertex:A4,fog_pars_vertex:C4,fog_fragment:R4,fog_pars_fragment:P4,gradientmap_pars_fragment:I4,lightmap_pars_fragment:L4,lights_lambert_fragment:D4,lights_lambert_pars_fragment:N4,lights_pars_begin:U4,lights_toon_fragment:O4,lights_toon_pars_fragment:B4,lights_phong_fragment:k4,lights_phong_pars_fragment:z4,lights_physical_fragment:G4,lights_physical_pars_fragment:V4,lights_fragment_begin:H4,lights_fragment_maps:W4,lights_fragment_end:$4,lightprobes_pars_fragment:X4,logdepthbuf_fragment:q4,logdepthbuf_pars_fragment:Y4,logdepthbuf_pars_vertex:Z4,logdepthbuf_vertex:K4,map_fragment:J4,map_pars_fragment:j4,map_particle_fragment:Q4,map_particle_pars_fragment:t5,metalnessmap_fragment:e5,metalnessmap_pars_fragment:n5,morphinstance_vertex:i5,morphcolor_vertex:r5,morphnormal_vertex:s5,morphtarget_pars_vertex:o5,morphtarget_vertex:a5,normal_fragment_begin:l5,normal_fragment_maps:c5,normal_pars_fragment:u5,normal_pars_vertex:f5,normal_vertex:h5,normalmap_pars_fragment:d5,clearcoat_normal_fragment_begin:p5,clearcoat_normal_fragment_maps:m5,clearcoat_pars_fragment:g5,iridescence_pars_fragment:y5,opaque_fragment:x5,packing:_5,premultiplied_alpha_fragment:v5,project_vertex:b5,dithering_fragment:M5,dithering_pars_fragment:S5,roughnessmap_fragment:w5,roughnessmap_pars_fragment:T5,shadowmap_pars_fragment:E5,shadowmap_pars_vertex:A5,shadowmap_vertex:C5,shadowmask_pars_fragment:R5,skinbase_vertex:P5,skinning_pars_vertex:I5,skinning_vertex:L5,skinnormal_vertex:D5,specularmap_fragment:N5,specularmap_pars_fragment:U5,tonemapping_fragment:F5,tonemapping_pars_fragment:O5,transmission_fragment:B5,transmission_pars_fragment:k5,uv_pars_fragment:z5,uv_pars_vertex:G5,uv_vertex:V5,worldpos_vertex:H5,background_vert:W5,background_frag:$5,backgroundCube_vert:X5,backgroundCube_frag:q5,cube_vert:Y5,cube_frag:Z5,depth_vert:K5,depth_frag:J5,distance_vert:j5,distance_frag:Q5,equirect_vert:tB,equirect_frag:eB,linedashed_vert:nB,linedashed_frag:iB,meshbasic_vert:rB,meshbasic_frag:sB,meshlambert_vert:oB,meshlambert_frag:aB,meshmatcap_vert:lB,meshmatcap_frag:cB,meshnormal_vert:uB,meshnormal_frag:fB,meshphong_vert:hB,meshphong_frag:dB,meshphysical_vert:pB,meshphysical_frag:mB,meshtoon_vert:gB,meshtoon_frag:yB,points_vert:xB,points_frag:_B,shadow_vert:vB,shadow_frag:bB,sprite_vert:MB,sprite_frag:SB},wt={common:{diffuse:{value:new kt(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Vt}},envmap:{envMap:{value:null},envMapRotation:{value:new Vt},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Vt}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Vt}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Vt},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Vt},normalScale:{value:new Bt(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Vt},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Vt}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Vt}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Vt}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new kt(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new kt(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0},uvTransform:{value:new Vt}},sprite:{diffuse:{value:new kt(16777215)},opacity:{value:1},center:{value:new Bt(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Vt},alphaMap:{value:null},alphaMapTransform:{value:new Vt},alphaTest:{value:0}}},Vn={basic:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.fog]),vertexShader:jt.meshbasic_vert,fragmentShader:jt.meshbasic_frag},lambert:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},envMapIntensity:{value:1}}]),vertexShader:jt.meshlambert_vert,fragmentShader:jt.meshlambert_frag},phong:{uniforms:An([wt.common,wt.specularmap,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},specular:{value:new kt(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:jt.meshphong_vert,fragmentShader:jt.meshphong_frag},standard:{uniforms:An([wt.common,wt.envmap,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.roughnessmap,wt.metalnessmap,wt.fog,wt.lights,{emissive:{value:new kt(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag},toon:{uniforms:An([wt.common,wt.aomap,wt.lightmap,wt.emissivemap,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.gradientmap,wt.fog,wt.lights,{emissive:{value:new kt(0)}}]),vertexShader:jt.meshtoon_vert,fragmentShader:jt.meshtoon_frag},matcap:{uniforms:An([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,wt.fog,{matcap:{value:null}}]),vertexShader:jt.meshmatcap_vert,fragmentShader:jt.meshmatcap_frag},points:{uniforms:An([wt.points,wt.fog]),vertexShader:jt.points_vert,fragmentShader:jt.points_frag},dashed:{uniforms:An([wt.common,wt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:jt.linedashed_vert,fragmentShader:jt.linedashed_frag},depth:{uniforms:An([wt.common,wt.displacementmap]),vertexShader:jt.depth_vert,fragmentShader:jt.depth_frag},normal:{uniforms:An([wt.common,wt.bumpmap,wt.normalmap,wt.displacementmap,{opacity:{value:1}}]),vertexShader:jt.meshnormal_vert,fragmentShader:jt.meshnormal_frag},sprite:{uniforms:An([wt.sprite,wt.fog]),vertexShader:jt.sprite_vert,fragmentShader:jt.sprite_frag},background:{uniforms:{uvTransform:{value:new Vt},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:jt.background_vert,fragmentShader:jt.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Vt}},vertexShader:jt.backgroundCube_vert,fragmentShader:jt.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:jt.cube_vert,fragmentShader:jt.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:jt.equirect_vert,fragmentShader:jt.equirect_frag},distance:{uniforms:An([wt.common,wt.displacementmap,{referencePosition:{value:new z},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:jt.distance_vert,fragmentShader:jt.distance_frag},shadow:{uniforms:An([wt.lights,wt.fog,{color:{value:new kt(0)},opacity:{value:1}}]),vertexShader:jt.shadow_vert,fragmentShader:jt.shadow_frag}};Vn.physical={uniforms:An([Vn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Vt},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Vt},clearcoatNormalScale:{value:new Bt(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Vt},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Vt},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Vt},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Vt},sheen:{value:0},sheenColor:{value:new kt(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Vt},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Vt},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Vt},transmissionSamplerSize:{value:new Bt},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Vt},attenuationDistance:{value:0},attenuationColor:{value:new kt(0)},specularColor:{value:new kt(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Vt},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Vt},anisotropyVector:{value:new Bt},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Vt}}]),vertexShader:jt.meshphysical_vert,fragmentShader:jt.meshphysical_frag};var Np={r:0,b:0,g:0},wB=new be,_3=new Vt;_3.set(-1,0,0,0,1,0,0,0,1);function TB(e,t,n,i,r,s){let o=new kt(0),a=r===!0?0:1,l,c,u=null,h=0,f=null;function d(x){let M=x.isScene===!0?x.background:null;if(M&&M.isTexture){let v=x.backgroundBlurriness>0;M=t.get(M,v)}return M}function p(x){let M=!1,v=d(x);v===null?g(o,a):v&&v.isColor&&(g(v,1),M=!0);let S=e.xr.getEnvironmentBlendMode();S==="additive"?n.buffers.color.setClear(0,0,0,1,s):S==="alpha-blend"&&n.buffers.color.setClear(0,0,0,0,s),(e.autoClear||M)&&(n.buffers.depth.setTest(!0),n.buffers.depth.setMask(!0),n.buffers.color.setMask(!0),e.clear(e.autoClearColor,e.autoClearDepth,e.autoClearStencil))}function y(x,M){let v=d(M);v&&v.isCubeTexture?(c===void 0&&(c=new $e(new cs(1,1,1),new Di({name:"BackgroundCubeMaterial",uniforms:Qo(Vn.backgroundCube.uniforms),vertexShader:Vn.backgroundCube.vertexShader,fragmentShader:Vn.backgroundCube.fragmentShader,side:Gn,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(S,b,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),i.update(c)),c.material.uniforms.envMap.value=v,c.material.uniforms.backgroundBlurriness.value=M.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(wB.makeRotationFromEuler(M.backgroundRotation)).transpose(),v.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(_3),c.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,(u!==v||h!==v.version||f!==e.toneMapping)&&(c.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),c.layers.enableAll(),x.unshift(c,c.geometry,c.material,0,0,null)):v&&v.isTexture&&(l===void 0&&(l=new $e(new Yo(2,2),new Di({name:"BackgroundMaterial",uniforms:Qo(Vn.background.uniforms),vertexShader:Vn.background.vertexShader,fragmentShader:Vn.background.fragmentShader,side:js,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),i.update(l)),l.material.uniforms.t2D.value=v,l.material.uniforms.backgroundIntensity.value=M.backgroundIntensity,l.material.toneMapped=ie.getTransfer(v.colorSpace)!==he,v.matrixAutoUpdate===!0&&v.updateMatrix(),l.material.uniforms.uvTransform.value.copy(v.matrix),(u!==v||h!==v.version||f!==e.toneMapping)&&(l.material.needsUpdate=!0,u=v,h=v.version,f=e.toneMapping),l.layers.enableAll(),x.unshift(l,l.geometry,l.material,0,0,null))}function g(x,M){x.getRGB(Np,G_(e)),n.buffers.color.setClear(Np.r,Np.g,Np.b,M,s)}function m(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return o},setClearColor:function(x,M=1){o.set(x),a=M,g(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(x){a=x,g(o,a)},render:p,addToRenderList:y,dispose:m}}function EB(e,t){let n=e.getParameter(e.MAX_VERTEX_ATTRIBS),i={},r=f(null),s=r,o=!1;function a(C,P,O,I,D){let k=!1,U=h(C,I,O,P);s!==U&&(s=U,c(s.object)),k=d(C,I,O,D),k&&p(C,I,O,D),D!==null&&t.update(D,e.ELEMENT_ARRAY_BUFFER),(k||o)&&(o=!1,v(C,P,O,I),D!==null&&e.bindBuffer(e.ELEMENT_ARRAY_BUFFER,t.get(D).buffer))}function l(){return e.createVertexArray()}function c(C){return e.bindVertexArray(C)}function u(C){return e.deleteVertexArray(C)}function h(C,P,O,I){let D=I.wireframe===!0,k=i[P.id];k===void 0&&(k={},i[P.id]=k);let U=C.isInstancedMesh===!0?C.id:0,Z=k[U];Z===void 0&&(Z={},k[U]=Z);let F=Z[O.id];F===void 0&&(F={},Z[O.id]=F);let V=F[D];return V===void 0&&(V=f(l()),F[D]=V),V}function f(C){let P=[],O=[],I=[];for(let D=0;D<n;D++)P[D]=0,O[D]=0,I[D]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:P,enabledAttributes:O,attributeDivisors:I,object:C,attributes:{},index:null}}function d(C,P,O,I){let D=s.attributes,k=P.attributes,U=0,Z=O.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=D[F],st=k[F];if(st===void 0&&(F==="instanceMatrix"&&C.instanceMatrix&&(st=C.instanceMatrix),F==="instanceColor"&&C.instanceColor&&(st=C.instanceColor)),q===void 0||q.attribute!==st||st&&q.data!==st.data)return!0;U++}return s.attributesNum!==U||s.index!==I}function p(C,P,O,I){let D={},k=P.attributes,U=0,Z=O.getAttributes();for(let F in Z)if(Z[F].location>=0){let q=k[F];q===void 0&&(F==="instanceMatrix"&&C.instanceMatrix&&(q=C.instanceMatrix),F==="instanceColor"&&C.instanceColor&&(q=C.instanceColor));let st={};st.attribute=q,q&&q.data&&(st.data=q.data),D[F]=st,U++}s.attributes=D,s.attributesNum=U,s.index=I}function y(){let C=s.newAttributes;for(let P=0,O=C.length;P<O;P++)C[P]=0}function g(C){m(C,0)}function m(C,P){let O=s.newAttributes,I=s.enabledAttributes,D=s.attributeDivisors;O[C]=1,I[C]===0&&(e.enableVertexAttribArray(C),I[C]=1),D[C]!==P&&(e.vertexAttribDivisor(C,P),D[C]=P)}function x(){let C=s.newAttributes,P=s.enabledAttributes;for(let O=0,I=P.length;O<I;O++)P[O]!==C[O]&&(e.disableVertexAttribArray(O),P[O]=0)}function M(C,P,O,I,D,k,U){U===!0?e.vertexAttribIPointer(C,P,O,D,k):e.vertexAttribPointer(C,P,O,I,D,k)}function v(C,P,O,I){y();let D=I.attributes,k=O.getAttributes(),U=P.defaultAttributeValues;for(let Z in k){let F=k[Z];if(F.location>=0){let V=D[Z];if(V===void 0&&(Z==="instanceMatrix"&&C.instanceMatrix&&(V=C.instanceMatrix),Z==="instanceColor"&&C.instanceColor&&(V=C.instanceColor)),V!==void 0){let q=V.normalized,st=V.itemSize,lt=t.get(V);if(lt===void 0)continue;let $=lt.buffer,at=lt.type,ft=lt.bytesPerElement,ot=at===e.INT||at===e.UNSIGNED_INT||V.gpuType===Kd;if(V.isInterleavedBufferAttribute){let rt=V.data,K=rt.isInterleavedBuffer===!0?rt.stride:rt.itemSize,gt=V.offset;if(rt.isInstancedInterleavedBuffer||rt.isInstancedBufferAttribute){for(let ct=0;ct<F.locationSize;ct++)m(F.location+ct,rt.meshPerAttribute);C.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=rt.meshPerAttribute*rt.count)}else for(let ct=0;ct<F.locationSize;ct++)g(F.location+ct);e.bindBuffer(e.ARRAY_BUFFER,$);for(let ct=0;ct<F.locationSize;ct++)M(F.location+ct,st/F.locationSize,at,q,K*ft,(gt+st/F.locationSize*ct)*ft,ot)}else{if(V.isInstancedBufferAttribute){for(let rt=0;rt<F.locationSize;rt++)m(F.location+rt,V.meshPerAttribute);C.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=V.meshPerAttribute*V.count)}else for(let rt=0;rt<F.locationSize;rt++)g(F.location+rt);e.bindBuffer(e.ARRAY_BUFFER,$);for(let rt=0;rt<F.locationSize;rt++)M(F.location+rt,st/F.locationSize,at,q,st*ft,st/F.locationSize*rt*ft,ot)}}else if(U!==void 0){let q=U[Z];if(q!==void 0)switch(q.length){case 2:e.vertexAttrib2fv(F.location,q);break;case 3:e.vertexAttrib3fv(F.location,q);break;case 4:e.vertexAttrib4fv(F.location,q);break;default:e.vertexAttrib1fv(F.location,q)}}}}x()}function S(){R();for(let C in i){let P=i[C];for(let O in P){let I=P[O];for(let D in I){let k=I[D];for(let U in k)u(k[U].object),delete k[U];delete I[D]}}delete i[C]}}function b(C){if(i[C.id]===void 0)return;let P=i[C.id];for(let O in P){let I=P[O];for(let D in I){let k=I[D];for(let U in k)u(k[U].object),delete k[U];delete I[D]}}delete i[C.id]}function _(C){for(let P in i){let O=i[P];for(let I in O){let D=O[I];if(D[C.id]===void 0)continue;let k=D[C.id];for(let U in k)u(k[U].object),delete k[U];delete D[C.id]}}}function w(C){for(let P in i){let O=i[P],I=C.isInstancedMesh===!0?C.id:0,D=O[I];if(D!==void 0){for(let k in D){let U=D[k];for(let Z in U)u(U[Z].object),delete U[Z];delete D[k]}delete O[I],Object.keys(O).length===0&&delete i[P]}}}function R(){A(),o=!0,s!==r&&(s=r,c(s.object))}function A(){r.geometry=null,r.program=null,r.wireframe=!1}return{setup:a,reset:R,resetDefaultState:A,dispose:S,releaseStatesOfGeometry:b,releaseStatesOfObject:w,releaseStatesOfProgram:_,initAttributes:y,enableAttribute:g,disableUnusedAttributes:x}}function AB(e,t,n){let i;function r(l){i=l}function s(l,c){e.drawArrays(i,l,c),n.update(c,i,1)}function o(l,c,u){u!==0&&(e.drawArraysInstanced(i,l,c,u),n.update(c,i,u))}function a(l,c,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(i,l,0,c,0,u);let f=0;for(let d=0;d<u;d++)f+=c[d];n.update(f,i,1)}this.setMode=r,this.render=s,this.renderInstances=o,this.renderMultiDraw=a}function CB(e,t,n,i){let r;function s(){if(r!==void 0)return r;if(t.has("EXT_texture_filter_anisotropic")===!0){let _=t.get("EXT_texture_filter_anisotropic");r=e.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else r=0;return r}function o(_){return!(_!==tr&&i.convert(_)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let w=_===Qi&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(_!==ti&&_!==ji&&!w&&i.convert(_)!==e.getParameter(e.IMPLEMENTATION_COLOR_READ_TYPE))}function l(_){if(_==="highp"){if(e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.HIGH_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&e.getShaderPrecisionFormat(e.VERTEX_SHADER,e.MEDIUM_FLOAT).precision>0&&e.getShaderPrecisionFormat(e.FRAGMENT_SHADER,e.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=n.precision!==void 0?n.precision:"highp",u=l(c);u!==c&&(Ft("WebGLRenderer:",c,"not supported, using",u,"instead."),c=u);let h=n.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),f=n.logarithmicDepthBuffer===!0&&h===!1;n.reversedDepthBuffer===!0&&h===!1&&Ft("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),n.logarithmicDepthBuffer===!0&&h===!0&&Ft("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let d=e.getParameter(e.MAX_TEXTURE_IMAGE_UNITS),p=e.getParameter(e.MAX_VERTEX_TEXTURE_IMAGE_UNITS),y=e.getParameter(e.MAX_TEXTURE_SIZE),g=e.getParameter(e.MAX_CUBE_MAP_TEXTURE_SIZE),m=e.getParameter(e.MAX_VERTEX_ATTRIBS),x=e.getParameter(e.MAX_VERTEX_UNIFORM_VECTORS),M=e.getParameter(e.MAX_VARYING_VECTORS),v=e.getParameter(e.MAX_FRAGMENT_UNIFORM_VECTORS),S=e.getParameter(e.MAX_SAMPLES),b=e.getParameter(e.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:s,getMaxPrecision:l,textureFormatReadable:o,textureTypeReadable:a,precision:c,logarithmicDepthBuffer:f,reversedDepthBuffer:h,maxTextures:d,maxVertexTextures:p,maxTextureSize:y,maxCubemapSize:g,maxAttributes:m,maxVertexUniforms:x,maxVaryings:M,maxFragmentUniforms:v,maxSamples:S,samples:b}}function RB(e){let t=this,n=null,i=0,r=!1,s=!1,o=new li,a=new Vt,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(h,f){let d=h.length!==0||f||i!==0||r;return r=f,i=h.length,d},this.beginShadows=function(){s=!0,u(null)},this.endShadows=function(){s=!1},this.setGlobalState=function(h,f){n=u(h,f,0)},this.setState=function(h,f,d){let p=h.clippingPlanes,y=h.clipIntersection,g=h.clipShadows,m=e.get(h);if(!r||p===null||p.length===0||s&&!g)s?u(null):c();else{let x=s?0:i,M=x*4,v=m.clippingState||null;l.value=v,v=u(p,f,M,d);for(let S=0;S!==M;++S)v[S]=n[S];m.clippingState=v,this.numIntersection=y?this.numPlanes:0,this.numPlanes+=x}};function c(){l.value!==n&&(l.value=n,l.needsUpdate=i>0),t.numPlanes=i,t.numIntersection=0}function u(h,f,d,p){let y=h!==null?h.length:0,g=null;if(y!==0){if(g=l.value,p!==!0||g===null){let m=d+y*4,x=f.matrixWorldInverse;a.getNormalMatrix(x),(g===null||g.length<m)&&(g=new Float32Array(m));for(let M=0,v=d;M!==y;++M,v+=4)o.copy(h[M]).applyMatrix4(x,a),o.normal.toArray(g,v),g[v+3]=o.constant}l.value=g,l.needsUpdate=!0}return t.numPlanes=y,t.numIntersection=0,g}}var Au=class extends zn{constructor(t=1,n={}){super(t,t,n),this.isWebGLCubeRenderTarget=!0;let i={width:t,height:t,depth:1},r=[i,i,i,i,i,i];this.texture=new nu(r),this._setTextureOptions(n),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,n){this.texture.type=n.type,this.texture.colorSpace=n.colorSpace,this.texture.generateMipmaps=n.generateMipmaps,this.texture.minFilter=n.minFilter,this.texture.magFilter=n.magFilter;let i={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},r=new cs(5,5,5),s=new Di({name:"CubemapFromEquirect",uniforms:Qo(i.uniforms),vertexShader:i.vertexShader,fragmentShader:i.fragmentShader,side:Gn,blending:Zo});s.uniforms.tEquirect.value=n;let o=new $e(r,s),a=n.minFilter;return n.minFilter===fs&&(n.minFilter=kn),new Cl(1,10,this).update(t,o),n.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,n=!0,i=!0,r=!0){let s=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(n,i,r);t.setRenderTarget(s)}},J2=256,PB=3,IB=20,v3=256,b3=16,LB=3,DB=new z,NB=new kt,Fp=class e{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Cl(1,10,null),this._boxMesh=new $e(new cs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,n=0,i=.1,r=100,s={}){let{size:o=256,position:a=DB}=s,l=this._renderer;this._setSize(o);let c=this._allocateTarget(),u=this._getSourceTarget(!0);n>0&&(u.texture.mipmapsAutoUpdate=!1);let h=l.autoClear,f=l.autoClearColor,d=l.autoClearDepth,p=l.autoClearStencil,y=t.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,y===null&&(t.background=l.getClearColor(NB));let g=new Cl(i,r,u);return g.position.copy(a),g.update(l,t),l.autoClear=h,l.autoClearColor=f,l.autoClearDepth=d,l.autoClearStencil=p,t.background=y,n>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(c,n)),this._applyPMREM(c),c}fromEquirectangular(t,n=null){return this._fromTexture(t,n)}fromCubemap(t,n=null){return this._fromTexture(t,n)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=t3(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Q2(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,n){return n>0?1-Math.sqrt(1-t/n):0}_setSize(t){this._cubeSize=Math.max(J2,B_(t))}_fromTexture(t,n){t.mapping===Jo||t.mapping===Ll?this._setSize(t.image.length===0?J2:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let i=n||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(i),i}_allocateTarget(){let t=this._cubeSize,n=j2(t,!1,!1),i=Math.log2(t)-PB;for(let r=0;r<=i;r++)n.texture.mipmaps.push({width:t>>r,height:t>>r});return n.texture.name="PMREM",n.texture.isPMREMTexture=!0,n}_getSourceTarget(t=!1){let n=this._cubeSize,i=this._sourceTarget;return(i===null||i.width!==n||t&&i.depthBuffer===!1)&&(i!==null&&i.dispose(),this._sourceTarget=j2(n,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,n,i){let r=this._boxMesh,s=this._cubeCamera;r.material=i,s.renderTarget=t,s.activeMipmapLevel=n;let o=t.width>>n;t.viewport.set(0,0,o,o),s.update(this._renderer,r),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let n;t.mapping===Jo||t.mapping===Ll?(this._cubemapMaterial===null&&(this._cubemapMaterial=t3()),n=this._cubemapMaterial,n.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Q2()),n=this._equirectMaterial),n.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,n)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=UB(),this._integrationMaterial=FB());let n=this._cubeSize,i=t.texture.mipmaps.length-1,r=this._ggxMaterial.uniforms;r.envMap.value=this._sourceTarget.texture;let s=this._integrationMaterial.uniforms;s.envMap.value=this._sourceTarget.texture,s.sourceLod.value=Math.log2(n/b3);for(let o=0;o<=i;o++){let a=e.lodToRoughness(o,i);if(o>i-LB)s.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let l=a>0?Math.log2(n)+.5*Math.log2(6/(v3*Math.pow(a,4)))+.5:0;r.roughness.value=a,r.lodBias.value=l,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,n){this._blurMaterial===null&&(this._blurMaterial=OB());let i=this._blurMaterial,r=i.uniforms,s=this._sourceTarget;r.sigma.value=Math.min(n,Math.PI)/Math.SQRT2,r.envMap.value=s.texture,this._renderCube(t,0,i),r.envMap.value=t.texture,this._renderCube(s,0,i)}};function j2(e,t,n){return new Au(e,{minFilter:fs,generateMipmaps:t,type:Qi,colorSpace:Yc,depthBuffer:n})}function Cu(e,t,n){return new Di({name:e,uniforms:t,vertexShader:jt.cube_vert,fragmentShader:n,side:Gn,blending:Zo,depthTest:!1,depthWrite:!1})}function UB(){return Cu("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${v3}u

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
	`)}function FB(){return Cu("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:b3}},`

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
	`)}function OB(){return Cu("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${IB}
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
	`)}function Q2(){return Cu("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function t3(){return Cu("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function BB(e){let t=new WeakMap,n=new WeakMap,i=null;function r(f,d=!1){return f==null?null:d?o(f):s(f)}function s(f){if(f&&f.isTexture){let d=f.mapping;if(d===qd||d===Yd)if(t.has(f)){let p=t.get(f).texture;return a(p,f.mapping)}else{let p=f.image;if(p&&p.height>0){let y=new Au(p.height);return y.fromEquirectangularTexture(e,f),t.set(f,y),f.addEventListener("dispose",c),a(y.texture,f.mapping)}else return null}}return f}function o(f){if(f&&f.isTexture&&f.isPMREMTexture!==!0){let d=f.mapping,p=d===qd||d===Yd,y=d===Jo||d===Ll;if(p||y){let g=n.get(f),m=g!==void 0?g.texture.pmremVersion:0;if(f.isRenderTargetTexture&&f.pmremVersion!==m)return i===null&&(i=new Fp(e)),g=p?i.fromEquirectangular(f,g):i.fromCubemap(f,g),g.texture.pmremVersion=f.pmremVersion,n.set(f,g),g.texture;if(g!==void 0)return g.texture;{let x=f.image;return p&&x&&x.height>0||y&&x&&l(x)?(i===null&&(i=new Fp(e)),g=p?i.fromEquirectangular(f):i.fromCubemap(f),g.texture.pmremVersion=f.pmremVersion,n.set(f,g),f.addEventListener("dispose",u),g.texture):null}}}return f}function a(f,d){return d===qd?f.mapping=Jo:d===Yd&&(f.mapping=Ll),f}function l(f){let d=0,p=6;for(let y=0;y<p;y++)f[y]!==void 0&&d++;return d===p}function c(f){let d=f.target;d.removeEventListener("dispose",c);let p=t.get(d);p!==void 0&&(t.delete(d),p.dispose())}function u(f){let d=f.target;d.removeEventListener("dispose",u);let p=n.get(d);p!==void 0&&(n.delete(d),p.dispose())}function h(){t=new WeakMap,n=new WeakMap,i!==null&&(i.dispose(),i=null)}return{get:r,dispose:h}}function kB(e){let t={};function n(i){if(t[i]!==void 0)return t[i];let r=e.getExtension(i);return t[i]=r,r}return{has:function(i){return n(i)!==null},init:function(){n("EXT_color_buffer_float"),n("WEBGL_clip_cull_distance"),n("OES_texture_float_linear"),n("EXT_color_buffer_half_float"),n("WEBGL_multisampled_render_to_texture"),n("WEBGL_render_shared_exponent")},get:function(i){let r=n(i);return r===null&&$c("WebGLRenderer: "+i+" extension not supported."),r}}}function zB(e,t,n,i){let r={},s=new WeakMap,o=new FinalizationRegistry(p=>delete r[p]);function a(p){l(p.target)}function l(p){p.index!==null&&t.remove(p.index);for(let g in p.attributes)t.remove(p.attributes[g]);p.removeEventListener("dispose",a),delete r[p.id],o.unregister(p);let y=s.get(p);y&&(t.remove(y),s.delete(p)),i.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,n.memory.geometries--}function c(p,y){return r[y.id]!==void 0||(y.addEventListener("dispose",a),r[y.id]=new WeakRef(y),o.register(y,y.id,y),n.memory.geometries++),y}function u(p){let y=p.attributes;for(let g in y)t.update(y[g],e.ARRAY_BUFFER)}function h(p){let y=p.index,g=p.attributes.position,m=0;if(g===void 0)return;let x=y!==null?y.array.length:g.array.length/3-1,M=g.count>=65535?eu:tu,v=new M(Math.ceil(x/3)*6,1),S=v.array;if(y!==null){let _=y.array;m=y.version;for(let w=0,R=0;w<x;w+=3){let A=_[w+0],C=_[w+1],P=_[w+2];S[R++]=A,S[R++]=C,S[R++]=C,S[R++]=P,S[R++]=P,S[R++]=A}}else{m=g.version;for(let _=0,w=0;_<x;_+=3){let R=_+0,A=_+1,C=_+2;S[w++]=R,S[w++]=A,S[w++]=A,S[w++]=C,S[w++]=C,S[w++]=R}}v.version=m;let b=s.get(p);b&&t.remove(b),s.set(p,v)}function f(p){let y=s.get(p);if(y){let g=p.index;g!==null&&y.version<g.version&&h(p)}else h(p);return s.get(p)}function d(){for(let p in r){let y=r[p].deref();y!==void 0&&l(y)}}return{get:c,update:u,getWireframeAttribute:f,dispose:d}}function GB(e,t,n){let i;function r(h){i=h}let s,o;function a(h){s=h.type,o=h.bytesPerElement}function l(h,f){e.drawElements(i,f,s,h*o),n.update(f,i,1)}function c(h,f,d){d!==0&&(e.drawElementsInstanced(i,f,s,h*o,d),n.update(f,i,d))}function u(h,f,d){if(d===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(i,f,0,s,h,0,d);let y=0;for(let g=0;g<d;g++)y+=f[g];n.update(y,i,1)}this.setMode=r,this.setIndex=a,this.render=l,this.renderInstances=c,this.renderMultiDraw=u}function VB(e){let t={geometries:0,textures:0},n={frame:0,calls:0,triangles:0,points:0,lines:0};function i(s,o,a){switch(n.calls++,o){case e.TRIANGLES:n.triangles+=a*(s/3);break;case e.LINES:n.lines+=a*(s/2);break;case e.LINE_STRIP:n.lines+=a*(s-1);break;case e.LINE_LOOP:n.lines+=a*s;break;case e.POINTS:n.points+=a*s;break;default:Gt("WebGLInfo: Unknown draw mode:",o);break}}function r(){n.calls=0,n.triangles=0,n.points=0,n.lines=0}return{memory:t,render:n,programs:null,autoReset:!0,reset:r,update:i}}function HB(e,t,n){let i=new WeakMap,r=new de;function s(o,a,l){let c=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,f=i.get(a);if(f===void 0||f.count!==h){let R=function(){_.dispose(),i.delete(a),a.removeEventListener("dispose",R)};f!==void 0&&f.texture.dispose();let d=a.morphAttributes.position!==void 0,p=a.morphAttributes.normal!==void 0,y=a.morphAttributes.color!==void 0,g=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],x=a.morphAttributes.color||[],M=0;d===!0&&(M=1),p===!0&&(M=2),y===!0&&(M=3);let v=a.attributes.position.count*M,S=1;v>t.maxTextureSize&&(S=Math.ceil(v/t.maxTextureSize),v=t.maxTextureSize);let b=new Float32Array(v*S*4*h),_=new jc(b,v,S,h);_.type=ji,_.needsUpdate=!0;let w=M*4;for(let A=0;A<h;A++){let C=g[A],P=m[A],O=x[A],I=v*S*4*A;for(let D=0;D<C.count;D++){let k=D*w;d===!0&&(r.fromBufferAttribute(C,D),b[I+k+0]=r.x,b[I+k+1]=r.y,b[I+k+2]=r.z,b[I+k+3]=0),p===!0&&(r.fromBufferAttribute(P,D),b[I+k+4]=r.x,b[I+k+5]=r.y,b[I+k+6]=r.z,b[I+k+7]=0),y===!0&&(r.fromBufferAttribute(O,D),b[I+k+8]=r.x,b[I+k+9]=r.y,b[I+k+10]=r.z,b[I+k+11]=O.itemSize===4?r.w:1)}}f={count:h,texture:_,size:new Bt(v,S)},i.set(a,f),a.addEventListener("dispose",R)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)l.getUniforms().setValue(e,"morphTexture",o.morphTexture,n);else{let d=0;for(let y=0;y<c.length;y++)d+=c[y];let p=a.morphTargetsRelative?1:1-d;l.getUniforms().setValue(e,"morphTargetBaseInfluence",p),l.getUniforms().setValue(e,"morphTargetInfluences",c)}l.getUniforms().setValue(e,"morphTargetsTexture",f.texture,n),l.getUniforms().setValue(e,"morphTargetsTextureSize",f.size)}return{update:s}}function WB(e,t,n,i,r){let s=new WeakMap;function o(c){let u=r.render.frame,h=c.geometry,f=t.get(c,h);if(s.get(f)!==u&&(t.update(f),s.set(f,u)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),s.get(c)!==u&&(n.update(c.instanceMatrix,e.ARRAY_BUFFER),c.instanceColor!==null&&n.update(c.instanceColor,e.ARRAY_BUFFER),s.set(c,u))),c.isSkinnedMesh){let d=c.skeleton;s.get(d)!==u&&(d.update(),s.set(d,u))}return f}function a(){s=new WeakMap}function l(c){let u=c.target;u.removeEventListener("dispose",l),i.releaseStatesOfObject(u),n.remove(u.instanceMatrix),u.instanceColor!==null&&n.remove(u.instanceColor)}return{update:o,dispose:a}}var $B={[y_]:"LINEAR_TONE_MAPPING",[x_]:"REINHARD_TONE_MAPPING",[__]:"CINEON_TONE_MAPPING",[v_]:"ACES_FILMIC_TONE_MAPPING",[M_]:"AGX_TONE_MAPPING",[S_]:"NEUTRAL_TONE_MAPPING",[b_]:"CUSTOM_TONE_MAPPING"};function XB(e,t,n,i,r,s){let o=new zn(t,n,{type:e,depthBuffer:r,stencilBuffer:s,samples:i?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,l=null,c=null,u=new Je;u.setAttribute("position",new Ke([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Ke([0,2,0,0,2,0],2));let h=new Id({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),f=new $e(u,h),d=new us(-1,1,1,-1,0,1),p=null,y=null,g=!1,m,x=null,M=[],v=!1;this.setSize=function(S,b){o.setSize(S,b),a!==null&&a.setSize(S,b),l!==null&&l.setSize(S,b);for(let _=0;_<M.length;_++){let w=M[_];w.setSize&&w.setSize(S,b)}},this.setEffects=function(S){M=S,v=M.length>0&&M[0].isRenderPass===!0;let b=o.width,_=o.height;M.length>0&&a===null&&(a=new zn(b,_,{type:Qi,depthBuffer:!1,stencilBuffer:!1}),l=new zn(b,_,{type:Qi,depthBuffer:!1,stencilBuffer:!1}));let w=r===!0&&M.some(R=>R.needsDepthTexture===!0);w!==(o.depthTexture!==null)&&(w===!0&&c===null&&(c=new ls(b,_),s===!0&&(c.format=hs,c.type=jo)),o.dispose(),o.depthTexture=w?c:null,o.resolveDepthBuffer=w,o.storeMultisampledDepthBuffer=w);for(let R=0;R<M.length;R++){let A=M[R];A.setSize&&A.setSize(b,_),w&&A.needsDepthTexture===!0&&A.setDepthTexture&&A.setDepthTexture(c)}},this.begin=function(S,b){if(g||S.toneMapping===wr&&M.length===0)return!1;if(x=b,b!==null){let _=b.width,w=b.height;(o.width!==_||o.height!==w)&&this.setSize(_,w)}return v===!1&&S.setRenderTarget(o),m=S.toneMapping,S.toneMapping=wr,!0},this.hasRenderPass=function(){return v},this.end=function(S,b){S.toneMapping=m,g=!0;let _=o,w=a;for(let R=0;R<M.length;R++){let A=M[R];A.enabled!==!1&&(A.render(S,w,_,b),A.needsSwap!==!1&&(_=w,w=w===a?l:a))}if(p!==S.outputColorSpace||y!==S.toneMapping){p=S.outputColorSpace,y=S.toneMapping,h.defines={},ie.getTransfer(p)===he&&(h.defines.SRGB_TRANSFER="");let R=$B[y];R&&(h.defines[R]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=_.texture,S.setRenderTarget(x),S.render(f,d),x=null,g=!1},this.isCompositing=function(){return g},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),l!==null&&l.dispose(),u.dispose(),h.dispose()}}var M3=new Qn,S3=new ls(1,1),w3=new iu(1),T3=new jc,E3=new wd,A3=new nu,e3=[],n3=[],i3=new Float32Array(16),r3=new Float32Array(9),s3=new Float32Array(4);function Ul(e,t,n){let i=e[0];if(i<=0||i>0)return e;let r=t*n,s=e3[r];if(s===void 0&&(s=new Float32Array(r),e3[r]=s),t!==0){i.toArray(s,0);for(let o=1,a=0;o!==t;++o)a+=n,e[o].toArray(s,a)}return s}function je(e,t){if(e.length!==t.length)return!1;for(let n=0,i=e.length;n<i;n++)if(e[n]!==t[n])return!1;return!0}function Qe(e,t){for(let n=0,i=t.length;n<i;n++)e[n]=t[n]}function Bp(e,t){let n=n3[t];n===void 0&&(n=new Int32Array(t),n3[t]=n);for(let i=0;i!==t;++i)n[i]=e.allocateTextureUnit();return n}function qB(e,t){let n=this.cache;n[0]!==t&&(e.uniform1f(this.addr,t),n[0]=t)}function YB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2f(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(je(n,t))return;e.uniform2fv(this.addr,t),Qe(n,t)}}function ZB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3f(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else if(t.r!==void 0)(n[0]!==t.r||n[1]!==t.g||n[2]!==t.b)&&(e.uniform3f(this.addr,t.r,t.g,t.b),n[0]=t.r,n[1]=t.g,n[2]=t.b);else{if(je(n,t))return;e.uniform3fv(this.addr,t),Qe(n,t)}}function KB(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4f(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(je(n,t))return;e.uniform4fv(this.addr,t),Qe(n,t)}}function JB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(je(n,t))return;e.uniformMatrix2fv(this.addr,!1,t),Qe(n,t)}else{if(je(n,i))return;s3.set(i),e.uniformMatrix2fv(this.addr,!1,s3),Qe(n,i)}}function jB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(je(n,t))return;e.uniformMatrix3fv(this.addr,!1,t),Qe(n,t)}else{if(je(n,i))return;r3.set(i),e.uniformMatrix3fv(this.addr,!1,r3),Qe(n,i)}}function QB(e,t){let n=this.cache,i=t.elements;if(i===void 0){if(je(n,t))return;e.uniformMatrix4fv(this.addr,!1,t),Qe(n,t)}else{if(je(n,i))return;i3.set(i),e.uniformMatrix4fv(this.addr,!1,i3),Qe(n,i)}}function tk(e,t){let n=this.cache;n[0]!==t&&(e.uniform1i(this.addr,t),n[0]=t)}function ek(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2i(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(je(n,t))return;e.uniform2iv(this.addr,t),Qe(n,t)}}function nk(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3i(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(je(n,t))return;e.uniform3iv(this.addr,t),Qe(n,t)}}function ik(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4i(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(je(n,t))return;e.uniform4iv(this.addr,t),Qe(n,t)}}function rk(e,t){let n=this.cache;n[0]!==t&&(e.uniform1ui(this.addr,t),n[0]=t)}function sk(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y)&&(e.uniform2ui(this.addr,t.x,t.y),n[0]=t.x,n[1]=t.y);else{if(je(n,t))return;e.uniform2uiv(this.addr,t),Qe(n,t)}}function ok(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z)&&(e.uniform3ui(this.addr,t.x,t.y,t.z),n[0]=t.x,n[1]=t.y,n[2]=t.z);else{if(je(n,t))return;e.uniform3uiv(this.addr,t),Qe(n,t)}}function ak(e,t){let n=this.cache;if(t.x!==void 0)(n[0]!==t.x||n[1]!==t.y||n[2]!==t.z||n[3]!==t.w)&&(e.uniform4ui(this.addr,t.x,t.y,t.z,t.w),n[0]=t.x,n[1]=t.y,n[2]=t.z,n[3]=t.w);else{if(je(n,t))return;e.uniform4uiv(this.addr,t),Qe(n,t)}}function kp(e){return e.version===0&&(e.compareFunction=N_,e.needsUpdate=!0),e}function lk(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_2D_SHADOW?s=kp(S3):s=M3,n.setTexture2D(t||s,r)}function ck(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture3D(t||E3,r)}function uk(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r);let s;this.type===e.SAMPLER_CUBE_SHADOW?s=kp(w3):s=A3,n.setTextureCube(t||s,r)}function fk(e,t,n){let i=this.cache,r=n.allocateTextureUnit();i[0]!==r&&(e.uniform1i(this.addr,r),i[0]=r),n.setTexture2DArray(t||T3,r)}function hk(e){switch(e){case 5126:return qB;case 35664:return YB;case 35665:return ZB;case 35666:return KB;case 35674:return JB;case 35675:return jB;case 35676:return QB;case 5124:case 35670:return tk;case 35667:case 35671:return ek;case 35668:case 35672:return nk;case 35669:case 35673:return ik;case 5125:return rk;case 36294:return sk;case 36295:return ok;case 36296:return ak;case 35678:case 36198:case 36298:case 36306:case 35682:return lk;case 35679:case 36299:case 36307:return ck;case 35680:case 36300:case 36308:case 36293:return uk;case 36289:case 36303:case 36311:case 36292:return fk}}function dk(e,t){e.uniform1fv(this.addr,t)}function pk(e,t){let n=Ul(t,this.size,2);e.uniform2fv(this.addr,n)}function mk(e,t){let n=Ul(t,this.size,3);e.uniform3fv(this.addr,n)}function gk(e,t){let n=Ul(t,this.size,4);e.uniform4fv(this.addr,n)}function yk(e,t){let n=Ul(t,this.size,4);e.uniformMatrix2fv(this.addr,!1,n)}function xk(e,t){let n=Ul(t,this.size,9);e.uniformMatrix3fv(this.addr,!1,n)}function _k(e,t){let n=Ul(t,this.size,16);e.uniformMatrix4fv(this.addr,!1,n)}function vk(e,t){e.uniform1iv(this.addr,t)}function bk(e,t){e.uniform2iv(this.addr,t)}function Mk(e,t){e.uniform3iv(this.addr,t)}function Sk(e,t){e.uniform4iv(this.addr,t)}function wk(e,t){e.uniform1uiv(this.addr,t)}function Tk(e,t){e.uniform2uiv(this.addr,t)}function Ek(e,t){e.uniform3uiv(this.addr,t)}function Ak(e,t){e.uniform4uiv(this.addr,t)}function Ck(e,t,n){let i=this.cache,r=t.length,s=Bp(n,r);je(i,s)||(e.uniform1iv(this.addr,s),Qe(i,s));let o;this.type===e.SAMPLER_2D_SHADOW?o=kp(S3):o=M3;for(let a=0;a!==r;++a)n.setTexture2D(t[a]||o,s[a])}function Rk(e,t,n){let i=this.cache,r=t.length,s=Bp(n,r);je(i,s)||(e.uniform1iv(this.addr,s),Qe(i,s));for(let o=0;o!==r;++o)n.setTexture3D(t[o]||E3,s[o])}function Pk(e,t,n){let i=this.cache,r=t.length,s=Bp(n,r);je(i,s)||(e.uniform1iv(this.addr,s),Qe(i,s));let o;this.type===e.SAMPLER_CUBE_SHADOW?o=kp(w3):o=A3;for(let a=0;a!==r;++a)n.setTextureCube(t[a]||o,s[a])}function Ik(e,t,n){let i=this.cache,r=t.length,s=Bp(n,r);je(i,s)||(e.uniform1iv(this.addr,s),Qe(i,s));for(let o=0;o!==r;++o)n.setTexture2DArray(t[o]||T3,s[o])}function Lk(e){switch(e){case 5126:return dk;case 35664:return pk;case 35665:return mk;case 35666:return gk;case 35674:return yk;case 35675:return xk;case 35676:return _k;case 5124:case 35670:return vk;case 35667:case 35671:return bk;case 35668:case 35672:return Mk;case 35669:case 35673:return Sk;case 5125:return wk;case 36294:return Tk;case 36295:return Ek;case 36296:return Ak;case 35678:case 36198:case 36298:case 36306:case 35682:return Ck;case 35679:case 36299:case 36307:return Rk;case 35680:case 36300:case 36308:case 36293:return Pk;case 36289:case 36303:case 36311:case 36292:return Ik}}var q_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.setValue=hk(n.type)}},Y_=class{constructor(t,n,i){this.id=t,this.addr=i,this.cache=[],this.type=n.type,this.size=n.size,this.setValue=Lk(n.type)}},Z_=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,n,i){let r=this.seq;for(let s=0,o=r.length;s!==o;++s){let a=r[s];a.setValue(t,n[a.id],i)}}},$_=/(\w+)(\])?(\[|\.)?/g;function o3(e,t){e.seq.push(t),e.map[t.id]=t}function Dk(e,t,n){let i=e.name,r=i.length;for($_.lastIndex=0;;){let s=$_.exec(i),o=$_.lastIndex,a=s[1],l=s[2]==="]",c=s[3];if(l&&(a=a|0),c===void 0||c==="["&&o+2===r){o3(n,c===void 0?new q_(a,e,t):new Y_(a,e,t));break}else{let h=n.map[a];h===void 0&&(h=new Z_(a),o3(n,h)),n=h}}}var Nl=class{constructor(t,n){this.seq=[],this.map={};let i=t.getProgramParameter(n,t.ACTIVE_UNIFORMS);for(let o=0;o<i;++o){let a=t.getActiveUniform(n,o),l=t.getUniformLocation(n,a.name);Dk(a,l,this)}let r=[],s=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?r.push(o):s.push(o);r.length>0&&(this.seq=r.concat(s))}setValue(t,n,i,r){let s=this.map[n];s!==void 0&&s.setValue(t,i,r)}setOptional(t,n,i){let r=n[i];r!==void 0&&this.setValue(t,i,r)}static upload(t,n,i,r){for(let s=0,o=n.length;s!==o;++s){let a=n[s],l=i[a.id];l.needsUpdate!==!1&&a.setValue(t,l.value,r)}}static seqWithValue(t,n){let i=[];for(let r=0,s=t.length;r!==s;++r){let o=t[r];o.id in n&&i.push(o)}return i}};function a3(e,t,n){let i=e.createShader(t);return e.shaderSource(i,n),e.compileShader(i),i}var Nk=37297,Uk=0;function Fk(e,t){let n=e.split(`
`),i=[],r=Math.max(t-6,0),s=Math.min(t+6,n.length);for(let o=r;o<s;o++){let a=o+1;i.push(`${a===t?">":" "} ${a}: ${n[o]}`)}return i.join(`
`)}var l3=new Vt;function Ok(e){ie._getMatrix(l3,ie.workingColorSpace,e);let t=`mat3( ${l3.elements.map(n=>n.toFixed(4))} )`;switch(ie.getTransfer(e)){case Zc:return[t,"LinearTransferOETF"];case he:return[t,"sRGBTransferOETF"];default:return Ft("WebGLProgram: Unsupported color space: ",e),[t,"LinearTransferOETF"]}}function c3(e,t,n){let i=e.getShaderParameter(t,e.COMPILE_STATUS),s=(e.getShaderInfoLog(t)||"").trim();if(i&&s==="")return"";let o=/ERROR: 0:(\d+)/.exec(s);if(o){let a=parseInt(o[1]);return n.toUpperCase()+`

`+s+`

`+Fk(e.getShaderSource(t),a)}else return s}function Bk(e,t){let n=Ok(t);return[`vec4 ${e}( vec4 value ) {`,`	return ${n[1]}( vec4( ${n[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var kk={[y_]:"Linear",[x_]:"Reinhard",[__]:"Cineon",[v_]:"ACESFilmic",[M_]:"AgX",[S_]:"Neutral",[b_]:"Custom"};function zk(e,t){let n=kk[t];return n===void 0?(Ft("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+e+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+e+"( vec3 color ) { return "+n+"ToneMapping( color ); }"}var Up=new z;function Gk(){ie.getLuminanceCoefficients(Up);let e=Up.x.toFixed(4),t=Up.y.toFixed(4),n=Up.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${e}, ${t}, ${n} );`,"	return dot( weights, rgb );","}"].join(`
`)}function Vk(e){return[e.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",e.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Eu).join(`
`)}function Hk(e){let t=[];for(let n in e){let i=e[n];i!==!1&&t.push("#define "+n+" "+i)}return t.join(`
`)}function Wk(e,t){let n={},i=e.getProgramParameter(t,e.ACTIVE_ATTRIBUTES);for(let r=0;r<i;r++){let s=e.getActiveAttrib(t,r),o=s.name,a=1;s.type===e.FLOAT_MAT2&&(a=2),s.type===e.FLOAT_MAT3&&(a=3),s.type===e.FLOAT_MAT4&&(a=4),n[o]={type:s.type,location:e.getAttribLocation(t,o),locationSize:a}}return n}function Eu(e){return e!==""}function u3(e,t){let n=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return e.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,n).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function f3(e,t){return e.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var $k=/^[ \t]*#include +<([\w\d./]+)>/gm;function K_(e){return e.replace($k,Xk)}function Xk(e,t){let n=jt[t];if(n===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return K_(n)}var qk=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function h3(e){return e.replace(qk,Yk)}function Yk(e,t,n,i){let r="";for(let s=parseInt(t);s<parseInt(n);s++)r+=i.replace(/\[\s*i\s*\]/g,"[ "+s+" ]").replace(/UNROLLED_LOOP_INDEX/g,s);return r}function d3(e){let t=`precision ${e.precision} float;
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
#define LOW_PRECISION`),t}var Zk={[mu]:"SHADOWMAP_TYPE_PCF",[Pl]:"SHADOWMAP_TYPE_VSM"};function Kk(e){return Zk[e.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var Jk={[Ll]:"ENVMAP_MODE_REFRACTION"};function jk(e){return e.envMap===!1?"ENVMAP_MODE_REFLECTION":Jk[e.envMapMode]||"ENVMAP_MODE_REFLECTION"}var Qk={[Xd]:"ENVMAP_BLENDING_MULTIPLY",[D2]:"ENVMAP_BLENDING_MIX",[N2]:"ENVMAP_BLENDING_ADD"};function t6(e){return e.envMap===!1?"ENVMAP_BLENDING_NONE":Qk[e.combine]||"ENVMAP_BLENDING_NONE"}function e6(e,t,n,i){let r=e.getContext(),s=n.defines,o=n.vertexShader,a=n.fragmentShader,l=Kk(n),c=n.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=jk(n),h=t6(n),f=Vk(n),d=Hk(s),p=r.createProgram(),y,g,m=n.glslVersion?"#version "+n.glslVersion+`
`:"";n.isRawShaderMaterial?(y=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(Eu).join(`
`),y.length>0&&(y+=`
`),g=["#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d].filter(Eu).join(`
`),g.length>0&&(g+=`
`)):(y=[d3(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",n.batching?"#define USE_BATCHING":"",n.batchingColor?"#define USE_BATCHING_COLOR":"",n.instancing?"#define USE_INSTANCING":"",n.instancingColor?"#define USE_INSTANCING_COLOR":"",n.instancingMorph?"#define USE_INSTANCING_MORPH":"",n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.map?"#define USE_MAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+u:"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.displacementMap?"#define USE_DISPLACEMENTMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.mapUv?"#define MAP_UV "+n.mapUv:"",n.alphaMapUv?"#define ALPHAMAP_UV "+n.alphaMapUv:"",n.lightMapUv?"#define LIGHTMAP_UV "+n.lightMapUv:"",n.aoMapUv?"#define AOMAP_UV "+n.aoMapUv:"",n.emissiveMapUv?"#define EMISSIVEMAP_UV "+n.emissiveMapUv:"",n.bumpMapUv?"#define BUMPMAP_UV "+n.bumpMapUv:"",n.normalMapUv?"#define NORMALMAP_UV "+n.normalMapUv:"",n.displacementMapUv?"#define DISPLACEMENTMAP_UV "+n.displacementMapUv:"",n.metalnessMapUv?"#define METALNESSMAP_UV "+n.metalnessMapUv:"",n.roughnessMapUv?"#define ROUGHNESSMAP_UV "+n.roughnessMapUv:"",n.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+n.anisotropyMapUv:"",n.clearcoatMapUv?"#define CLEARCOATMAP_UV "+n.clearcoatMapUv:"",n.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+n.clearcoatNormalMapUv:"",n.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+n.clearcoatRoughnessMapUv:"",n.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+n.diffuseRoughnessMapUv:"",n.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+n.iridescenceMapUv:"",n.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+n.iridescenceThicknessMapUv:"",n.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+n.sheenColorMapUv:"",n.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+n.sheenRoughnessMapUv:"",n.specularMapUv?"#define SPECULARMAP_UV "+n.specularMapUv:"",n.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+n.specularColorMapUv:"",n.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+n.specularIntensityMapUv:"",n.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+n.transmissionMapUv:"",n.thicknessMapUv?"#define THICKNESSMAP_UV "+n.thicknessMapUv:"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexNormals?"#define HAS_NORMAL":"",n.vertexColors?"#define USE_COLOR":"",n.vertexAlphas?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.flatShading?"#define FLAT_SHADED":"",n.skinning?"#define USE_SKINNING":"",n.morphTargets?"#define USE_MORPHTARGETS":"",n.morphNormals&&n.flatShading===!1?"#define USE_MORPHNORMALS":"",n.morphColors?"#define USE_MORPHCOLORS":"",n.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+n.morphTextureStride:"",n.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+n.morphTargetsCount:"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.sizeAttenuation?"#define USE_SIZEATTENUATION":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Eu).join(`
`),g=[d3(n),"#define SHADER_TYPE "+n.shaderType,"#define SHADER_NAME "+n.shaderName,d,n.useFog&&n.fog?"#define USE_FOG":"",n.useFog&&n.fogExp2?"#define FOG_EXP2":"",n.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",n.map?"#define USE_MAP":"",n.matcap?"#define USE_MATCAP":"",n.envMap?"#define USE_ENVMAP":"",n.envMap?"#define "+c:"",n.envMap?"#define "+u:"",n.envMap?"#define "+h:"",n.envMapPMREM?"#define ENVMAP_MAX_LOD "+n.envMapMaxLod+".0":"",n.envMapPMREM?"#define ENVMAP_SIZE "+n.envMapSize+".0":"",n.lightMap?"#define USE_LIGHTMAP":"",n.aoMap?"#define USE_AOMAP":"",n.bumpMap?"#define USE_BUMPMAP":"",n.normalMap?"#define USE_NORMALMAP":"",n.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",n.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",n.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",n.emissiveMap?"#define USE_EMISSIVEMAP":"",n.anisotropy?"#define USE_ANISOTROPY":"",n.anisotropyMap?"#define USE_ANISOTROPYMAP":"",n.clearcoat?"#define USE_CLEARCOAT":"",n.clearcoatMap?"#define USE_CLEARCOATMAP":"",n.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",n.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",n.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",n.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",n.dispersion?"#define USE_DISPERSION":"",n.retroreflection?"#define USE_RETROREFLECTION":"",n.iridescence?"#define USE_IRIDESCENCE":"",n.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",n.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",n.specularMap?"#define USE_SPECULARMAP":"",n.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",n.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",n.roughnessMap?"#define USE_ROUGHNESSMAP":"",n.metalnessMap?"#define USE_METALNESSMAP":"",n.alphaMap?"#define USE_ALPHAMAP":"",n.alphaTest?"#define USE_ALPHATEST":"",n.alphaHash?"#define USE_ALPHAHASH":"",n.sheen?"#define USE_SHEEN":"",n.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",n.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",n.transmission?"#define USE_TRANSMISSION":"",n.transmissionMap?"#define USE_TRANSMISSIONMAP":"",n.thicknessMap?"#define USE_THICKNESSMAP":"",n.vertexTangents&&n.flatShading===!1?"#define USE_TANGENT":"",n.vertexColors||n.instancingColor?"#define USE_COLOR":"",n.vertexAlphas||n.batchingColor?"#define USE_COLOR_ALPHA":"",n.vertexUv1s?"#define USE_UV1":"",n.vertexUv2s?"#define USE_UV2":"",n.vertexUv3s?"#define USE_UV3":"",n.pointsUvs?"#define USE_POINTS_UV":"",n.gradientMap?"#define USE_GRADIENTMAP":"",n.flatShading?"#define FLAT_SHADED":"",n.doubleSided?"#define DOUBLE_SIDED":"",n.flipSided?"#define FLIP_SIDED":"",n.shadowMapEnabled?"#define USE_SHADOWMAP":"",n.shadowMapEnabled?"#define "+l:"",n.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",n.numLightProbes>0?"#define USE_LIGHT_PROBES":"",n.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",n.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",n.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",n.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",n.toneMapping!==wr?"#define TONE_MAPPING":"",n.toneMapping!==wr?jt.tonemapping_pars_fragment:"",n.toneMapping!==wr?zk("toneMapping",n.toneMapping):"",n.dithering?"#define DITHERING":"",n.opaque?"#define OPAQUE":"",jt.colorspace_pars_fragment,Bk("linearToOutputTexel",n.outputColorSpace),Gk(),n.useDepthPacking?"#define DEPTH_PACKING "+n.depthPacking:"",`
`].filter(Eu).join(`
`)),o=K_(o),o=u3(o,n),o=f3(o,n),a=K_(a),a=u3(a,n),a=f3(a,n),o=h3(o),a=h3(a),n.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,y=[f,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+y,g=["#define varying in",n.glslVersion===F_?"":"layout(location = 0) out highp vec4 pc_fragColor;",n.glslVersion===F_?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+g);let x=m+y+o,M=m+g+a,v=a3(r,r.VERTEX_SHADER,x),S=a3(r,r.FRAGMENT_SHADER,M);r.attachShader(p,v),r.attachShader(p,S),n.index0AttributeName!==void 0?r.bindAttribLocation(p,0,n.index0AttributeName):n.hasPositionAttribute===!0&&r.bindAttribLocation(p,0,"position"),r.linkProgram(p);function b(A){if(e.debug.checkShaderErrors){let C=r.getProgramInfoLog(p)||"",P=r.getShaderInfoLog(v)||"",O=r.getShaderInfoLog(S)||"",I=C.trim(),D=P.trim(),k=O.trim(),U=!0,Z=!0;if(r.getProgramParameter(p,r.LINK_STATUS)===!1)if(U=!1,typeof e.debug.onShaderError=="function")e.debug.onShaderError(r,p,v,S);else{let F=c3(r,v,"vertex"),V=c3(r,S,"fragment");Gt("WebGLProgram: Shader Error "+r.getError()+" - VALIDATE_STATUS "+r.getProgramParameter(p,r.VALIDATE_STATUS)+`

Material Name: `+A.name+`
Material Type: `+A.type+`

Program Info Log: `+I+`
`+F+`
`+V)}else I!==""?Ft("WebGLProgram: Program Info Log:",I):(D===""||k==="")&&(Z=!1);Z&&(A.diagnostics={runnable:U,programLog:I,vertexShader:{log:D,prefix:y},fragmentShader:{log:k,prefix:g}})}r.deleteShader(v),r.deleteShader(S),_=new Nl(r,p),w=Wk(r,p)}let _;this.getUniforms=function(){return _===void 0&&b(this),_};let w;this.getAttributes=function(){return w===void 0&&b(this),w};let R=n.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return R===!1&&(R=r.getProgramParameter(p,Nk)),R},this.destroy=function(){i.releaseStatesOfProgram(this),r.deleteProgram(p),this.program=void 0},this.type=n.shaderType,this.name=n.shaderName,this.id=Uk++,this.cacheKey=t,this.usedTimes=1,this.program=p,this.vertexShader=v,this.fragmentShader=S,this}var n6=0,J_=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,n,i){let r=this._getShaderCacheForMaterial(t);return r.has(n)===!1&&(r.add(n),n.usedTimes++),r.has(i)===!1&&(r.add(i),i.usedTimes++),this}remove(t){let n=this.materialCache.get(t);for(let i of n)i.usedTimes--,i.usedTimes===0&&this.shaderCache.delete(i.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let n=this.materialCache,i=n.get(t);return i===void 0&&(i=new Set,n.set(t,i)),i}_getShaderStage(t){let n=this.shaderCache,i=n.get(t);return i===void 0&&(i=new j_(t),n.set(t,i)),i}},j_=class{constructor(t){this.id=n6++,this.code=t,this.usedTimes=0}};function i6(e){return e===Qs||e===bu||e===Mu}function r6(e,t,n,i,r,s){let o=new Qc,a=new J_,l=new Set,c=[],u=new Map,h=i.logarithmicDepthBuffer,f={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function d(_){return l.add(_),_===0?"uv":`uv${_}`}function p(_,w,R,A,C,P){let O=A.fog,I=C.geometry,D=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?A.environment:null,k=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,U=t.get(_.envMap||D,k),Z=f[_.type],F=i.precision;_.precision!==null&&(F=i.getMaxPrecision(_.precision),F!==_.precision&&Ft("WebGLProgram.getParameters:",_.precision,"not supported, using",F,"instead."));let V=I.morphAttributes.position||I.morphAttributes.normal||I.morphAttributes.color,q=V!==void 0?V.length:0,st=0;I.morphAttributes.position!==void 0&&(st=1),I.morphAttributes.normal!==void 0&&(st=2),I.morphAttributes.color!==void 0&&(st=3);let lt,$,at,ft;if(Z){let Tt=Vn[Z];lt=Tt.vertexShader,$=Tt.fragmentShader}else{lt=_.vertexShader,$=_.fragmentShader;let Tt=a.getVertexShaderStage(_),pe=a.getFragmentShaderStage(_);a.update(_,Tt,pe),at=Tt.id,ft=pe.id}let ot=e.getRenderTarget(),rt=e.state.buffers.depth.getReversed(),K=C.isInstancedMesh===!0,gt=C.isBatchedMesh===!0,ct=!!_.map,J=!!_.matcap,It=!!U,pt=It&&U.isPMREMTexture===!0,Ot=!!_.aoMap,Ht=!!_.lightMap,le=!!_.bumpMap&&_.wireframe===!1,oe=!!_.normalMap,en=!!_.displacementMap,Ge=!!_.emissiveMap,Wn=!!_.metalnessMap,Cn=!!_.roughnessMap,$n=_.anisotropy>0,G=_.clearcoat>0,Xn=_.diffuseRoughness>0,Me=_.dispersion>0,Se=_.retroreflectivity>0,mt=_.iridescence>0,Re=_.sheen>0,Dt=_.transmission>0,zt=$n&&!!_.anisotropyMap,L=G&&!!_.clearcoatMap,T=G&&!!_.clearcoatNormalMap,H=G&&!!_.clearcoatRoughnessMap,ut=Xn&&!!_.diffuseRoughnessMap,nt=mt&&!!_.iridescenceMap,yt=mt&&!!_.iridescenceThicknessMap,Mt=Re&&!!_.sheenColorMap,Q=Re&&!!_.sheenRoughnessMap,tt=!!_.specularMap,_t=!!_.specularColorMap,N=!!_.specularIntensityMap,et=Dt&&!!_.transmissionMap,j=Dt&&!!_.thicknessMap,vt=!!_.gradientMap,dt=!!_.alphaMap,xt=_.alphaTest>0,Nt=!!_.alphaHash,Jt=!!_.extensions,ht=wr;_.toneMapped&&(ot===null||ot.isXRRenderTarget===!0)&&(ht=e.toneMapping);let Ut=pt?U.isCompressedCubeTexture?U.image[0].mipmaps:U.mipmaps:null,Kt={shaderID:Z,shaderType:_.type,shaderName:_.name,vertexShader:lt,fragmentShader:$,defines:_.defines,customVertexShaderID:at,customFragmentShaderID:ft,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:F,batching:gt,batchingColor:gt&&C._colorsTexture!==null,instancing:K,instancingColor:K&&C.instanceColor!==null,instancingMorph:K&&C.morphTexture!==null,outputColorSpace:ot===null?e.outputColorSpace:ot.isXRRenderTarget===!0?ot.texture.colorSpace:ie.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:ct,matcap:J,envMap:It,envMapMode:It&&U.mapping,envMapPMREM:pt,envMapMaxLod:pt?Ut.length-1:null,envMapSize:pt?Ut[0].width:null,aoMap:Ot,lightMap:Ht,bumpMap:le,normalMap:oe,displacementMap:en,emissiveMap:Ge,normalMapObjectSpace:oe&&_.normalMapType===O2,normalMapTangentSpace:oe&&_.normalMapType===Lp,packedNormalMap:oe&&_.normalMapType===Lp&&i6(_.normalMap.format),metalnessMap:Wn,roughnessMap:Cn,anisotropy:$n,anisotropyMap:zt,clearcoat:G,clearcoatMap:L,clearcoatNormalMap:T,clearcoatRoughnessMap:H,diffuseRoughness:Xn,diffuseRoughnessMap:ut,dispersion:Me,retroreflection:Se,iridescence:mt,iridescenceMap:nt,iridescenceThicknessMap:yt,sheen:Re,sheenColorMap:Mt,sheenRoughnessMap:Q,specularMap:tt,specularColorMap:_t,specularIntensityMap:N,transmission:Dt,transmissionMap:et,thicknessMap:j,gradientMap:vt,opaque:_.transparent===!1&&_.blending===Il&&_.alphaToCoverage===!1,alphaMap:dt,alphaTest:xt,alphaHash:Nt,combine:_.combine,mapUv:ct&&d(_.map.channel),aoMapUv:Ot&&d(_.aoMap.channel),lightMapUv:Ht&&d(_.lightMap.channel),bumpMapUv:le&&d(_.bumpMap.channel),normalMapUv:oe&&d(_.normalMap.channel),displacementMapUv:en&&d(_.displacementMap.channel),emissiveMapUv:Ge&&d(_.emissiveMap.channel),metalnessMapUv:Wn&&d(_.metalnessMap.channel),roughnessMapUv:Cn&&d(_.roughnessMap.channel),anisotropyMapUv:zt&&d(_.anisotropyMap.channel),clearcoatMapUv:L&&d(_.clearcoatMap.channel),clearcoatNormalMapUv:T&&d(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:H&&d(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ut&&d(_.diffuseRoughnessMap.channel),iridescenceMapUv:nt&&d(_.iridescenceMap.channel),iridescenceThicknessMapUv:yt&&d(_.iridescenceThicknessMap.channel),sheenColorMapUv:Mt&&d(_.sheenColorMap.channel),sheenRoughnessMapUv:Q&&d(_.sheenRoughnessMap.channel),specularMapUv:tt&&d(_.specularMap.channel),specularColorMapUv:_t&&d(_.specularColorMap.channel),specularIntensityMapUv:N&&d(_.specularIntensityMap.channel),transmissionMapUv:et&&d(_.transmissionMap.channel),thicknessMapUv:j&&d(_.thicknessMap.channel),alphaMapUv:dt&&d(_.alphaMap.channel),vertexTangents:!!I.attributes.tangent&&(oe||$n),vertexNormals:!!I.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!I.attributes.color&&I.attributes.color.itemSize===4,pointsUvs:C.isPoints===!0&&!!I.attributes.uv&&(ct||dt),fog:!!O,useFog:_.fog===!0,fogExp2:!!O&&O.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||I.attributes.normal===void 0&&oe===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:rt,skinning:C.isSkinnedMesh===!0,hasPositionAttribute:I.attributes.position!==void 0,morphTargets:I.morphAttributes.position!==void 0,morphNormals:I.morphAttributes.normal!==void 0,morphColors:I.morphAttributes.color!==void 0,morphTargetsCount:q,morphTextureStride:st,numSunLights:w.sun.length,numDirLights:w.directional.length,numPointLights:w.point.length,numSpotLights:w.spot.length,numSpotLightMaps:w.spotLightMap.length,numRectAreaLights:w.rectArea.length,numHemiLights:w.hemi.length,numSunLightShadows:w.sunShadowMap.length,numDirLightShadows:w.directionalShadowMap.length,numPointLightShadows:w.pointShadowMap.length,numSpotLightShadows:w.spotShadowMap.length,numSpotLightShadowsWithMaps:w.numSpotLightShadowsWithMaps,numLightProbes:w.numLightProbes,numLightProbeGrids:P.filter(Tt=>Tt.texture!==null).length,numClippingPlanes:s.numPlanes,numClipIntersection:s.numIntersection,dithering:_.dithering,shadowMapEnabled:e.shadowMap.enabled&&R.length>0,shadowMapType:e.shadowMap.type,toneMapping:ht,decodeVideoTexture:ct&&_.map.isVideoTexture===!0&&ie.getTransfer(_.map.colorSpace)===he,decodeVideoTextureEmissive:Ge&&_.emissiveMap.isVideoTexture===!0&&ie.getTransfer(_.emissiveMap.colorSpace)===he,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===Ni,flipSided:_.side===Gn,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:Jt&&_.extensions.clipCullDistance===!0&&n.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Jt&&_.extensions.multiDraw===!0||gt)&&n.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:n.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return Kt.vertexUv1s=l.has(1),Kt.vertexUv2s=l.has(2),Kt.vertexUv3s=l.has(3),l.clear(),Kt}function y(_){let w=[];if(_.shaderID?w.push(_.shaderID):(w.push(_.customVertexShaderID),w.push(_.customFragmentShaderID)),_.defines!==void 0)for(let R in _.defines)w.push(R),w.push(_.defines[R]);return _.isRawShaderMaterial===!1&&(g(w,_),m(w,_),w.push(e.outputColorSpace)),w.push(_.customProgramCacheKey),w.join()}function g(_,w){_.push(w.precision),_.push(w.outputColorSpace),_.push(w.envMapMode),_.push(w.envMapPMREM),_.push(w.envMapMaxLod),_.push(w.envMapSize),_.push(w.mapUv),_.push(w.alphaMapUv),_.push(w.lightMapUv),_.push(w.aoMapUv),_.push(w.bumpMapUv),_.push(w.normalMapUv),_.push(w.displacementMapUv),_.push(w.emissiveMapUv),_.push(w.metalnessMapUv),_.push(w.roughnessMapUv),_.push(w.anisotropyMapUv),_.push(w.clearcoatMapUv),_.push(w.clearcoatNormalMapUv),_.push(w.clearcoatRoughnessMapUv),_.push(w.diffuseRoughnessMapUv),_.push(w.iridescenceMapUv),_.push(w.iridescenceThicknessMapUv),_.push(w.sheenColorMapUv),_.push(w.sheenRoughnessMapUv),_.push(w.specularMapUv),_.push(w.specularColorMapUv),_.push(w.specularIntensityMapUv),_.push(w.transmissionMapUv),_.push(w.thicknessMapUv),_.push(w.combine),_.push(w.fogExp2),_.push(w.sizeAttenuation),_.push(w.morphTargetsCount),_.push(w.numSunLights),_.push(w.numDirLights),_.push(w.numPointLights),_.push(w.numSpotLights),_.push(w.numSpotLightMaps),_.push(w.numHemiLights),_.push(w.numRectAreaLights),_.push(w.numSunLightShadows),_.push(w.numDirLightShadows),_.push(w.numPointLightShadows),_.push(w.numSpotLightShadows),_.push(w.numSpotLightShadowsWithMaps),_.push(w.numLightProbes),_.push(w.numLightProbeGrids),_.push(w.shadowMapType),_.push(w.toneMapping),_.push(w.numClippingPlanes),_.push(w.numClipIntersection),_.push(w.depthPacking)}function m(_,w){o.disableAll(),w.instancing&&o.enable(0),w.instancingColor&&o.enable(1),w.instancingMorph&&o.enable(2),w.matcap&&o.enable(3),w.envMap&&o.enable(4),w.normalMapObjectSpace&&o.enable(5),w.normalMapTangentSpace&&o.enable(6),w.clearcoat&&o.enable(7),w.iridescence&&o.enable(8),w.alphaTest&&o.enable(9),w.vertexColors&&o.enable(10),w.vertexAlphas&&o.enable(11),w.vertexUv1s&&o.enable(12),w.vertexUv2s&&o.enable(13),w.vertexUv3s&&o.enable(14),w.vertexTangents&&o.enable(15),w.anisotropy&&o.enable(16),w.alphaHash&&o.enable(17),w.batching&&o.enable(18),w.dispersion&&o.enable(19),w.retroreflection&&o.enable(24),w.diffuseRoughness&&o.enable(25),w.batchingColor&&o.enable(20),w.gradientMap&&o.enable(21),w.packedNormalMap&&o.enable(22),w.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),w.fog&&o.enable(0),w.useFog&&o.enable(1),w.flatShading&&o.enable(2),w.logarithmicDepthBuffer&&o.enable(3),w.reversedDepthBuffer&&o.enable(4),w.skinning&&o.enable(5),w.morphTargets&&o.enable(6),w.morphNormals&&o.enable(7),w.morphColors&&o.enable(8),w.premultipliedAlpha&&o.enable(9),w.shadowMapEnabled&&o.enable(10),w.doubleSided&&o.enable(11),w.flipSided&&o.enable(12),w.useDepthPacking&&o.enable(13),w.dithering&&o.enable(14),w.transmission&&o.enable(15),w.sheen&&o.enable(16),w.opaque&&o.enable(17),w.pointsUvs&&o.enable(18),w.decodeVideoTexture&&o.enable(19),w.decodeVideoTextureEmissive&&o.enable(20),w.alphaToCoverage&&o.enable(21),w.numLightProbeGrids>0&&o.enable(22),w.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function x(_){let w=f[_.type],R;if(w){let A=Vn[w];R=wu.clone(A.uniforms)}else R=_.uniforms;return R}function M(_,w){let R=u.get(w);return R!==void 0?++R.usedTimes:(R=new e6(e,w,_,r),c.push(R),u.set(w,R)),R}function v(_){if(--_.usedTimes===0){let w=c.indexOf(_);c[w]=c[c.length-1],c.pop(),u.delete(_.cacheKey),_.destroy()}}function S(_){a.remove(_)}function b(){a.dispose()}return{getParameters:p,getProgramCacheKey:y,getUniforms:x,acquireProgram:M,releaseProgram:v,releaseShaderCache:S,programs:c,dispose:b}}function s6(){let e=new WeakMap;function t(o){return e.has(o)}function n(o){let a=e.get(o);return a===void 0&&(a={},e.set(o,a)),a}function i(o){e.delete(o)}function r(o,a,l){e.get(o)[a]=l}function s(){e=new WeakMap}return{has:t,get:n,remove:i,update:r,dispose:s}}function o6(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.material.id!==t.material.id?e.material.id-t.material.id:e.materialVariant!==t.materialVariant?e.materialVariant-t.materialVariant:e.z!==t.z?e.z-t.z:e.id-t.id}function p3(e,t){return e.groupOrder!==t.groupOrder?e.groupOrder-t.groupOrder:e.renderOrder!==t.renderOrder?e.renderOrder-t.renderOrder:e.z!==t.z?t.z-e.z:e.id-t.id}function m3(){let e=[],t=0,n=[],i=[],r=[];function s(){t=0,n.length=0,i.length=0,r.length=0}function o(f){let d=0;return f.isInstancedMesh&&(d+=2),f.isSkinnedMesh&&(d+=1),d}function a(f,d,p,y,g,m){let x=e[t];return x===void 0?(x={id:f.id,object:f,geometry:d,material:p,materialVariant:o(f),groupOrder:y,renderOrder:f.renderOrder,z:g,group:m},e[t]=x):(x.id=f.id,x.object=f,x.geometry=d,x.material=p,x.materialVariant=o(f),x.groupOrder=y,x.renderOrder=f.renderOrder,x.z=g,x.group=m),t++,x}function l(f,d,p,y,g,m,x){x.reversedDepth===!0&&(g=-g);let M=a(f,d,p,y,g,m);p.transmission>0?i.push(M):p.transparent===!0?r.push(M):n.push(M)}function c(f,d,p,y,g,m){let x=a(f,d,p,y,g,m);p.transmission>0?i.unshift(x):p.transparent===!0?r.unshift(x):n.unshift(x)}function u(f,d){n.length>1&&n.sort(f||o6),i.length>1&&i.sort(d||p3),r.length>1&&r.sort(d||p3)}function h(){for(let f=t,d=e.length;f<d;f++){let p=e[f];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:n,transmissive:i,transparent:r,init:s,push:l,unshift:c,finish:h,sort:u}}function a6(){let e=new WeakMap;function t(i,r){let s=e.get(i),o;return s===void 0?(o=new m3,e.set(i,[o])):r>=s.length?(o=new m3,s.push(o)):o=s[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}function l6(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={direction:new z,color:new kt};break;case"SpotLight":n={position:new z,direction:new z,color:new kt,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":n={position:new z,color:new kt,distance:0,decay:0};break;case"HemisphereLight":n={direction:new z,skyColor:new kt,groundColor:new kt};break;case"RectAreaLight":n={color:new kt,position:new z,halfWidth:new z,halfHeight:new z};break}return e[t.id]=n,n}}}function c6(){let e={};return{get:function(t){if(e[t.id]!==void 0)return e[t.id];let n;switch(t.type){case"SunLight":case"DirectionalLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"SpotLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt};break;case"PointLight":n={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new Bt,shadowCameraNear:1,shadowCameraFar:1e3};break}return e[t.id]=n,n}}}var u6=0;function f6(e,t){return(t.castShadow?2:0)-(e.castShadow?2:0)+(t.map?1:0)-(e.map?1:0)}function h6(e){let t=new l6,n=c6(),i={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)i.probe.push(new z);let r=new z,s=new be,o=new be;function a(c){let u=0,h=0,f=0;for(let P=0;P<9;P++)i.probe[P].set(0,0,0);let d=0,p=0,y=0,g=0,m=0,x=0,M=0,v=0,S=0,b=0,_=0,w=0,R=0,A=0;c.sort(f6);for(let P=0,O=c.length;P<O;P++){let I=c[P],D=I.color,k=I.intensity,U=I.distance,Z=null;if(I.shadow&&I.shadow.map&&(I.shadow.map.texture.format===Qs?Z=I.shadow.map.texture:Z=I.shadow.map.depthTexture||I.shadow.map.texture),I.isAmbientLight)u+=D.r*k,h+=D.g*k,f+=D.b*k;else if(I.isLightProbe){for(let F=0;F<9;F++)i.probe[F].addScaledVector(I.sh.coefficients[F],k);A++}else if(I.isSunLight){let F=t.get(I);if(F.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let V=I.shadow,q=n.get(I);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize.copy(V.mapSize).multiply(V.getFrameExtents()),i.sunShadow[p]=q,i.sunShadowMap[p]=Z;let st=V.getViewportCount();for(let lt=0;lt<st;lt++)i.sunShadowMatrix[y+lt]=V.getMatrix(lt),i.sunShadowCascade[y+lt]=V._cascadeData[lt];y+=st,p++}i.sun[d]=F,d++}else if(I.isDirectionalLight){let F=t.get(I);if(F.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let V=I.shadow,q=n.get(I);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.directionalShadow[g]=q,i.directionalShadowMap[g]=Z,i.directionalShadowMatrix[g]=I.shadow.matrix,S++}i.directional[g]=F,g++}else if(I.isSpotLight){let F=t.get(I);F.position.setFromMatrixPosition(I.matrixWorld),F.color.copy(D).multiplyScalar(k),F.distance=U,F.coneCos=Math.cos(I.angle),F.penumbraCos=Math.cos(I.angle*(1-I.penumbra)),F.decay=I.decay,i.spot[x]=F;let V=I.shadow;if(I.map&&(i.spotLightMap[w]=I.map,w++,V.updateMatrices(I),I.castShadow&&R++),i.spotLightMatrix[x]=V.matrix,I.castShadow){let q=n.get(I);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,i.spotShadow[x]=q,i.spotShadowMap[x]=Z,_++}x++}else if(I.isRectAreaLight){let F=t.get(I);F.color.copy(D).multiplyScalar(k),F.halfWidth.set(I.width*.5,0,0),F.halfHeight.set(0,I.height*.5,0),i.rectArea[M]=F,M++}else if(I.isPointLight){let F=t.get(I);if(F.color.copy(I.color).multiplyScalar(I.intensity),F.distance=I.distance,F.decay=I.decay,I.castShadow){let V=I.shadow,q=n.get(I);q.shadowIntensity=V.intensity,q.shadowBias=V.bias,q.shadowNormalBias=V.normalBias,q.shadowRadius=V.radius,q.shadowMapSize=V.mapSize,q.shadowCameraNear=V.camera.near,q.shadowCameraFar=V.camera.far,i.pointShadow[m]=q,i.pointShadowMap[m]=Z,i.pointShadowMatrix[m]=I.shadow.matrix,b++}i.point[m]=F,m++}else if(I.isHemisphereLight){let F=t.get(I);F.skyColor.copy(I.color).multiplyScalar(k),F.groundColor.copy(I.groundColor).multiplyScalar(k),i.hemi[v]=F,v++}}M>0&&(e.has("OES_texture_float_linear")===!0?(i.rectAreaLTC1=wt.LTC_FLOAT_1,i.rectAreaLTC2=wt.LTC_FLOAT_2):(i.rectAreaLTC1=wt.LTC_HALF_1,i.rectAreaLTC2=wt.LTC_HALF_2)),i.ambient[0]=u,i.ambient[1]=h,i.ambient[2]=f;let C=i.hash;(C.sunLength!==d||C.directionalLength!==g||C.pointLength!==m||C.spotLength!==x||C.rectAreaLength!==M||C.hemiLength!==v||C.numSunShadows!==p||C.numDirectionalShadows!==S||C.numPointShadows!==b||C.numSpotShadows!==_||C.numSpotMaps!==w||C.numLightProbes!==A)&&(i.sun.length=d,i.directional.length=g,i.spot.length=x,i.rectArea.length=M,i.point.length=m,i.hemi.length=v,i.sunShadow.length=p,i.sunShadowMap.length=p,i.sunShadowMatrix.length=y,i.sunShadowCascade.length=y,i.directionalShadow.length=S,i.directionalShadowMap.length=S,i.directionalShadowMatrix.length=S,i.pointShadow.length=b,i.pointShadowMap.length=b,i.pointShadowMatrix.length=b,i.spotShadow.length=_,i.spotShadowMap.length=_,i.spotLightMatrix.length=_+w-R,i.spotLightMap.length=w,i.numSpotLightShadowsWithMaps=R,i.numLightProbes=A,C.sunLength=d,C.directionalLength=g,C.pointLength=m,C.spotLength=x,C.rectAreaLength=M,C.hemiLength=v,C.numSunShadows=p,C.numDirectionalShadows=S,C.numPointShadows=b,C.numSpotShadows=_,C.numSpotMaps=w,C.numLightProbes=A,i.version=u6++)}function l(c,u){let h=0,f=0,d=0,p=0,y=0,g=0,m=u.matrixWorldInverse;for(let x=0,M=c.length;x<M;x++){let v=c[x];if(v.isSunLight){let S=i.sun[h];S.direction.setFromMatrixPosition(v.matrixWorld),S.direction.transformDirection(m),h++}else if(v.isDirectionalLight){let S=i.directional[f];S.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),S.direction.sub(r),S.direction.transformDirection(m),f++}else if(v.isSpotLight){let S=i.spot[p];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(m),S.direction.setFromMatrixPosition(v.matrixWorld),r.setFromMatrixPosition(v.target.matrixWorld),S.direction.sub(r),S.direction.transformDirection(m),p++}else if(v.isRectAreaLight){let S=i.rectArea[y];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(m),o.identity(),s.copy(v.matrixWorld),s.premultiply(m),o.extractRotation(s),S.halfWidth.set(v.width*.5,0,0),S.halfHeight.set(0,v.height*.5,0),S.halfWidth.applyMatrix4(o),S.halfHeight.applyMatrix4(o),y++}else if(v.isPointLight){let S=i.point[d];S.position.setFromMatrixPosition(v.matrixWorld),S.position.applyMatrix4(m),d++}else if(v.isHemisphereLight){let S=i.hemi[g];S.direction.setFromMatrixPosition(v.matrixWorld),S.direction.transformDirection(m),g++}}}return{setup:a,setupView:l,state:i}}function g3(e){let t=new h6(e),n=[],i=[],r=[];function s(h){u.camera=h,n.length=0,i.length=0,r.length=0}function o(h){h.isLightProbeGrid?r.push(h):n.push(h)}function a(h){i.push(h)}function l(){t.setup(n),r.sort((h,f)=>h.priority-f.priority||h.id-f.id)}function c(h){t.setupView(n,h)}let u={lightsArray:n,shadowsArray:i,lightProbeGridArray:r,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:s,state:u,setupLights:l,setupLightsView:c,pushLight:o,pushShadow:a}}function d6(e){let t=new WeakMap;function n(r,s=0){let o=t.get(r),a;return o===void 0?(a=new g3(e),t.set(r,[a])):s>=o.length?(a=new g3(e),o.push(a)):a=o[s],a}function i(){t=new WeakMap}return{get:n,dispose:i}}var p6=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,m6=`uniform sampler2D shadow_pass;
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
}`,g6=[new z(1,0,0),new z(-1,0,0),new z(0,1,0),new z(0,-1,0),new z(0,0,1),new z(0,0,-1)],y6=[new z(0,-1,0),new z(0,-1,0),new z(0,0,1),new z(0,0,-1),new z(0,-1,0),new z(0,-1,0)],y3=new be,Tu=new z,X_=new z;function x6(e,t,n){let i=new Ws,r=new Bt,s=new Bt,o=new de,a=new Ld,l=new Dd,c={},u=n.maxTextureSize,h={[js]:Gn,[Gn]:js,[Ni]:Ni},f=new Di({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new Bt},radius:{value:4}},vertexShader:p6,fragmentShader:m6}),d=f.clone();d.defines.HORIZONTAL_PASS=1;let p=new Je;p.setAttribute("position",new Ze(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let y=new $e(p,f),g=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=mu;let m=this.type;this.render=function(b,_,w){if(g.enabled===!1||g.autoUpdate===!1&&g.needsUpdate===!1||b.length===0)return;this.type===p2&&(Ft("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=mu);let R=e.getRenderTarget(),A=e.getActiveCubeFace(),C=e.getActiveMipmapLevel(),P=e.state;P.setBlending(Zo),P.buffers.depth.getReversed()===!0?P.buffers.color.setClear(0,0,0,0):P.buffers.color.setClear(1,1,1,1),P.buffers.depth.setTest(!0),P.setScissorTest(!1);let O=m!==this.type;O&&_.traverse(function(I){I.material&&(Array.isArray(I.material)?I.material.forEach(D=>D.needsUpdate=!0):I.material.needsUpdate=!0)});for(let I=0,D=b.length;I<D;I++){let k=b[I],U=k.shadow;if(U===void 0){Ft("WebGLShadowMap:",k,"has no shadow.");continue}if(U.autoUpdate===!1&&U.needsUpdate===!1)continue;r.copy(U.mapSize);let Z=U.getFrameExtents();r.multiply(Z),s.copy(U.mapSize),(r.x>u||r.y>u)&&(r.x>u&&(s.x=Math.floor(u/Z.x),r.x=s.x*Z.x,U.mapSize.x=s.x),r.y>u&&(s.y=Math.floor(u/Z.y),r.y=s.y*Z.y,U.mapSize.y=s.y));let F=e.state.buffers.depth.getReversed();if(U.camera._reversedDepth=F,U.map===null||O===!0){if(U.map!==null&&(U.map.depthTexture!==null&&(U.map.depthTexture.dispose(),U.map.depthTexture=null),U.map.dispose()),this.type===Pl){if(k.isPointLight){Ft("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}U.map=new zn(r.x,r.y,{format:Qs,type:Qi,minFilter:kn,magFilter:kn,generateMipmaps:!1}),U.map.texture.name=k.name+".shadowMap",U.map.depthTexture=new ls(r.x,r.y,ji),U.map.depthTexture.name=k.name+".shadowMapDepth",U.map.depthTexture.format=ss,U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=hn,U.map.depthTexture.magFilter=hn}else k.isPointLight?(U.map=new Au(r.x),U.map.depthTexture=new iu(r.x,Ji)):(U.map=new zn(r.x,r.y),U.map.depthTexture=new ls(r.x,r.y,Ji)),U.map.depthTexture.name=k.name+".shadowMap",U.map.depthTexture.format=ss,this.type===mu?(U.map.depthTexture.compareFunction=F?D_:L_,U.map.depthTexture.minFilter=kn,U.map.depthTexture.magFilter=kn):(U.map.depthTexture.compareFunction=null,U.map.depthTexture.minFilter=hn,U.map.depthTexture.magFilter=hn);U.camera.updateProjectionMatrix()}U.map.isWebGLCubeRenderTarget!==!0&&(U.map.width!==r.x||U.map.height!==r.y)&&U.map.setSize(r.x,r.y);let V=U.map.isWebGLCubeRenderTarget?6:U.getViewportCount();k.isPointLight!==!0&&U.updateMatrices(k,w);let q=(U.camera.layers.mask&4294967294)!==0?U.camera.layers:w.layers;for(let st=0;st<V;st++){let lt=U.getCamera(st);if(k.isPointLight){let $=U.camera,at=U.matrix,ft=k.distance||$.far;ft!==$.far&&($.far=ft,$.updateProjectionMatrix()),Tu.setFromMatrixPosition(k.matrixWorld),$.position.copy(Tu),X_.copy($.position),X_.add(g6[st]),$.up.copy(y6[st]),$.lookAt(X_),$.updateMatrixWorld(),at.makeTranslation(-Tu.x,-Tu.y,-Tu.z),y3.multiplyMatrices($.projectionMatrix,$.matrixWorldInverse),U._frustum.setFromProjectionMatrix(y3,$.coordinateSystem,$.reversedDepth)}if(U.map.isWebGLCubeRenderTarget)e.setRenderTarget(U.map,st),e.clear();else{st===0&&(e.setRenderTarget(U.map),e.clear());let $=U.getViewport(st);o.set(s.x*$.x,s.y*$.y,s.x*$.z,s.y*$.w),P.viewport(o)}i=U.getFrustum(st),v(_,w,lt,k,q,this.type)}U.isPointLightShadow!==!0&&this.type===Pl&&x(U,w),U.needsUpdate=!1}m=this.type,g.needsUpdate=!1,e.setRenderTarget(R,A,C)};function x(b,_){let w=t.update(y);f.defines.VSM_SAMPLES!==b.blurSamples&&(f.defines.VSM_SAMPLES=b.blurSamples,d.defines.VSM_SAMPLES=b.blurSamples,f.needsUpdate=!0,d.needsUpdate=!0),b.mapPass===null?b.mapPass=new zn(r.x,r.y,{format:Qs,type:Qi}):(b.mapPass.width!==b.map.width||b.mapPass.height!==b.map.height)&&b.mapPass.setSize(b.map.width,b.map.height),f.uniforms.shadow_pass.value=b.map.depthTexture,f.uniforms.resolution.value.set(b.map.width,b.map.height),f.uniforms.radius.value=b.radius,e.setRenderTarget(b.mapPass),e.clear(),e.renderBufferDirect(_,null,w,f,y,null),d.uniforms.shadow_pass.value=b.mapPass.texture,d.uniforms.resolution.value.set(b.map.width,b.map.height),d.uniforms.radius.value=b.radius,e.setRenderTarget(b.map),e.clear(),e.renderBufferDirect(_,null,w,d,y,null)}function M(b,_,w,R){let A=null,C=w.isPointLight===!0?b.customDistanceMaterial:b.customDepthMaterial;if(C!==void 0)A=C;else if(A=w.isPointLight===!0?l:a,e.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let P=A.uuid,O=_.uuid,I=c[P];I===void 0&&(I={},c[P]=I);let D=I[O];D===void 0&&(D=A.clone(),I[O]=D,_.addEventListener("dispose",S)),A=D}if(A.visible=_.visible,A.wireframe=_.wireframe,R===Pl?A.side=_.shadowSide!==null?_.shadowSide:_.side:A.side=_.shadowSide!==null?_.shadowSide:h[_.side],A.alphaMap=_.alphaMap,A.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,A.map=_.map,A.clipShadows=_.clipShadows,A.clippingPlanes=_.clippingPlanes,A.clipIntersection=_.clipIntersection,A.displacementMap=_.displacementMap,A.displacementScale=_.displacementScale,A.displacementBias=_.displacementBias,A.wireframeLinewidth=_.wireframeLinewidth,A.linewidth=_.linewidth,w.isPointLight===!0&&A.isMeshDistanceMaterial===!0){let P=e.properties.get(A);P.light=w}return A}function v(b,_,w,R,A,C){if(b.visible===!1)return;if(b.layers.test(A)&&(b.isMesh||b.isLine||b.isPoints)&&(b.castShadow||b.receiveShadow&&C===Pl)&&(!b.frustumCulled||b.intersectsFrustum(i))){b.modelViewMatrix.multiplyMatrices(w.matrixWorldInverse,b.matrixWorld);let I=t.update(b),D=b.material;if(Array.isArray(D)){let k=I.groups;for(let U=0,Z=k.length;U<Z;U++){let F=k[U],V=D[F.materialIndex];if(V&&V.visible){let q=M(b,V,R,C);b.onBeforeShadow(e,b,_,w,I,q,F),e.renderBufferDirect(w,null,I,q,b,F),b.onAfterShadow(e,b,_,w,I,q,F)}}}else if(D.visible){let k=M(b,D,R,C);b.onBeforeShadow(e,b,_,w,I,k,null),e.renderBufferDirect(w,null,I,k,b,null),b.onAfterShadow(e,b,_,w,I,k,null)}}let O=b.children;for(let I=0,D=O.length;I<D;I++)v(O[I],_,w,R,A,C)}function S(b){b.target.removeEventListener("dispose",S);for(let w in c){let R=c[w],A=b.target.uuid;A in R&&(R[A].dispose(),delete R[A])}}}function _6(e,t){function n(){let N=!1,et=new de,j=null,vt=new de(0,0,0,0);return{setMask:function(dt){j!==dt&&!N&&(e.colorMask(dt,dt,dt,dt),j=dt)},setLocked:function(dt){N=dt},setClear:function(dt,xt,Nt,Jt,ht){ht===!0&&(dt*=Jt,xt*=Jt,Nt*=Jt),et.set(dt,xt,Nt,Jt),vt.equals(et)===!1&&(e.clearColor(dt,xt,Nt,Jt),vt.copy(et))},reset:function(){N=!1,j=null,vt.set(-1,0,0,0)}}}function i(){let N=!1,et=!1,j=null,vt=null,dt=null;return{setReversed:function(xt){if(et!==xt){let Nt=t.get("EXT_clip_control");xt?Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.ZERO_TO_ONE_EXT):Nt.clipControlEXT(Nt.LOWER_LEFT_EXT,Nt.NEGATIVE_ONE_TO_ONE_EXT),et=xt;let Jt=dt;dt=null,this.setClear(Jt)}},getReversed:function(){return et},setTest:function(xt){xt?rt(e.DEPTH_TEST):K(e.DEPTH_TEST)},setMask:function(xt){j!==xt&&!N&&(e.depthMask(xt),j=xt)},setFunc:function(xt){if(et&&(xt=q2[xt]),vt!==xt){switch(xt){case hd:e.depthFunc(e.NEVER);break;case dd:e.depthFunc(e.ALWAYS);break;case pd:e.depthFunc(e.LESS);break;case _l:e.depthFunc(e.LEQUAL);break;case md:e.depthFunc(e.EQUAL);break;case gd:e.depthFunc(e.GEQUAL);break;case yd:e.depthFunc(e.GREATER);break;case xd:e.depthFunc(e.NOTEQUAL);break;default:e.depthFunc(e.LEQUAL)}vt=xt}},setLocked:function(xt){N=xt},setClear:function(xt){dt!==xt&&(dt=xt,et&&(xt=1-xt),e.clearDepth(xt))},reset:function(){N=!1,j=null,vt=null,dt=null,et=!1}}}function r(){let N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Jt=null,ht=null;return{setTest:function(Ut){N||(Ut?rt(e.STENCIL_TEST):K(e.STENCIL_TEST))},setMask:function(Ut){et!==Ut&&!N&&(e.stencilMask(Ut),et=Ut)},setFunc:function(Ut,Kt,Tt){(j!==Ut||vt!==Kt||dt!==Tt)&&(e.stencilFunc(Ut,Kt,Tt),j=Ut,vt=Kt,dt=Tt)},setOp:function(Ut,Kt,Tt){(xt!==Ut||Nt!==Kt||Jt!==Tt)&&(e.stencilOp(Ut,Kt,Tt),xt=Ut,Nt=Kt,Jt=Tt)},setLocked:function(Ut){N=Ut},setClear:function(Ut){ht!==Ut&&(e.clearStencil(Ut),ht=Ut)},reset:function(){N=!1,et=null,j=null,vt=null,dt=null,xt=null,Nt=null,Jt=null,ht=null}}}let s=new n,o=new i,a=new r,l={},c=new WeakMap,u={},h={},f={},d=new WeakMap,p=[],y=null,g=!1,m=null,x=null,M=null,v=null,S=null,b=null,_=null,w=new kt(0,0,0),R=0,A=!1,C=null,P=null,O=null,I=null,D=null,k=e.getParameter(e.MAX_COMBINED_TEXTURE_IMAGE_UNITS),U=!1,Z=0,F=e.getParameter(e.VERSION);F.indexOf("WebGL")!==-1?(Z=parseFloat(/^WebGL (\d)/.exec(F)[1]),U=Z>=1):F.indexOf("OpenGL ES")!==-1&&(Z=parseFloat(/^OpenGL ES (\d)/.exec(F)[1]),U=Z>=2);let V=null,q={},st=e.getParameter(e.SCISSOR_BOX),lt=e.getParameter(e.VIEWPORT),$=new de().fromArray(st),at=new de().fromArray(lt);function ft(N,et,j,vt){let dt=new Uint8Array(4),xt=e.createTexture();e.bindTexture(N,xt),e.texParameteri(N,e.TEXTURE_MIN_FILTER,e.NEAREST),e.texParameteri(N,e.TEXTURE_MAG_FILTER,e.NEAREST);for(let Nt=0;Nt<j;Nt++)N===e.TEXTURE_3D||N===e.TEXTURE_2D_ARRAY?e.texImage3D(et,0,e.RGBA,1,1,vt,0,e.RGBA,e.UNSIGNED_BYTE,dt):e.texImage2D(et+Nt,0,e.RGBA,1,1,0,e.RGBA,e.UNSIGNED_BYTE,dt);return xt}let ot={};ot[e.TEXTURE_2D]=ft(e.TEXTURE_2D,e.TEXTURE_2D,1),ot[e.TEXTURE_CUBE_MAP]=ft(e.TEXTURE_CUBE_MAP,e.TEXTURE_CUBE_MAP_POSITIVE_X,6),ot[e.TEXTURE_2D_ARRAY]=ft(e.TEXTURE_2D_ARRAY,e.TEXTURE_2D_ARRAY,1,1),ot[e.TEXTURE_3D]=ft(e.TEXTURE_3D,e.TEXTURE_3D,1,1),s.setClear(0,0,0,1),o.setClear(1),a.setClear(0),rt(e.DEPTH_TEST),o.setFunc(_l),le(!1),oe(f_),rt(e.CULL_FACE),Ot(Zo);function rt(N){u[N]!==!0&&(e.enable(N),u[N]=!0)}function K(N){u[N]!==!1&&(e.disable(N),u[N]=!1)}function gt(N,et){return f[N]!==et?(e.bindFramebuffer(N,et),f[N]=et,N===e.DRAW_FRAMEBUFFER&&(f[e.FRAMEBUFFER]=et),N===e.FRAMEBUFFER&&(f[e.DRAW_FRAMEBUFFER]=et),!0):!1}function ct(N,et){let j=p,vt=!1;if(N){j=d.get(et),j===void 0&&(j=[],d.set(et,j));let dt=N.textures;if(j.length!==dt.length||j[0]!==e.COLOR_ATTACHMENT0){for(let xt=0,Nt=dt.length;xt<Nt;xt++)j[xt]=e.COLOR_ATTACHMENT0+xt;j.length=dt.length,vt=!0}}else j[0]!==e.BACK&&(j[0]=e.BACK,vt=!0);vt&&e.drawBuffers(j)}function J(N){return y!==N?(e.useProgram(N),y=N,!0):!1}let It={[Ko]:e.FUNC_ADD,[g2]:e.FUNC_SUBTRACT,[y2]:e.FUNC_REVERSE_SUBTRACT};It[x2]=e.MIN,It[_2]=e.MAX;let pt={[v2]:e.ZERO,[b2]:e.ONE,[M2]:e.SRC_COLOR,[m_]:e.SRC_ALPHA,[C2]:e.SRC_ALPHA_SATURATE,[E2]:e.DST_COLOR,[w2]:e.DST_ALPHA,[S2]:e.ONE_MINUS_SRC_COLOR,[g_]:e.ONE_MINUS_SRC_ALPHA,[A2]:e.ONE_MINUS_DST_COLOR,[T2]:e.ONE_MINUS_DST_ALPHA,[R2]:e.CONSTANT_COLOR,[P2]:e.ONE_MINUS_CONSTANT_COLOR,[I2]:e.CONSTANT_ALPHA,[L2]:e.ONE_MINUS_CONSTANT_ALPHA};function Ot(N,et,j,vt,dt,xt,Nt,Jt,ht,Ut){if(N===Zo){g===!0&&(K(e.BLEND),g=!1);return}if(g===!1&&(rt(e.BLEND),g=!0),N!==m2){if(N!==m||Ut!==A){if((x!==Ko||S!==Ko)&&(e.blendEquation(e.FUNC_ADD),x=Ko,S=Ko),Ut)switch(N){case Il:e.blendFuncSeparate(e.ONE,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case h_:e.blendFunc(e.ONE,e.ONE);break;case d_:e.blendFuncSeparate(e.ZERO,e.ONE_MINUS_SRC_COLOR,e.ZERO,e.ONE);break;case p_:e.blendFuncSeparate(e.DST_COLOR,e.ONE_MINUS_SRC_ALPHA,e.ZERO,e.ONE);break;default:Gt("WebGLState: Invalid blending: ",N);break}else switch(N){case Il:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE_MINUS_SRC_ALPHA,e.ONE,e.ONE_MINUS_SRC_ALPHA);break;case h_:e.blendFuncSeparate(e.SRC_ALPHA,e.ONE,e.ONE,e.ONE);break;case d_:Gt("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case p_:Gt("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:Gt("WebGLState: Invalid blending: ",N);break}M=null,v=null,b=null,_=null,w.set(0,0,0),R=0,m=N,A=Ut}return}dt=dt||et,xt=xt||j,Nt=Nt||vt,(et!==x||dt!==S)&&(e.blendEquationSeparate(It[et],It[dt]),x=et,S=dt),(j!==M||vt!==v||xt!==b||Nt!==_)&&(e.blendFuncSeparate(pt[j],pt[vt],pt[xt],pt[Nt]),M=j,v=vt,b=xt,_=Nt),(Jt.equals(w)===!1||ht!==R)&&(e.blendColor(Jt.r,Jt.g,Jt.b,ht),w.copy(Jt),R=ht),m=N,A=!1}function Ht(N,et){N.side===Ni?K(e.CULL_FACE):rt(e.CULL_FACE);let j=N.side===Gn;et&&(j=!j),le(j),N.blending===Il&&N.transparent===!1?Ot(Zo):Ot(N.blending,N.blendEquation,N.blendSrc,N.blendDst,N.blendEquationAlpha,N.blendSrcAlpha,N.blendDstAlpha,N.blendColor,N.blendAlpha,N.premultipliedAlpha),o.setFunc(N.depthFunc),o.setTest(N.depthTest),o.setMask(N.depthWrite),s.setMask(N.colorWrite);let vt=N.stencilWrite;a.setTest(vt),vt&&(a.setMask(N.stencilWriteMask),a.setFunc(N.stencilFunc,N.stencilRef,N.stencilFuncMask),a.setOp(N.stencilFail,N.stencilZFail,N.stencilZPass)),Ge(N.polygonOffset,N.polygonOffsetFactor,N.polygonOffsetUnits),N.alphaToCoverage===!0?rt(e.SAMPLE_ALPHA_TO_COVERAGE):K(e.SAMPLE_ALPHA_TO_COVERAGE)}function le(N){C!==N&&(N?e.frontFace(e.CW):e.frontFace(e.CCW),C=N)}function oe(N){N!==h2?(rt(e.CULL_FACE),N!==P&&(N===f_?e.cullFace(e.BACK):N===d2?e.cullFace(e.FRONT):e.cullFace(e.FRONT_AND_BACK))):K(e.CULL_FACE),P=N}function en(N){N!==O&&(U&&e.lineWidth(N),O=N)}function Ge(N,et,j){N?(rt(e.POLYGON_OFFSET_FILL),(I!==et||D!==j)&&(I=et,D=j,o.getReversed()&&(et=-et,j=-j),e.polygonOffset(et,j))):K(e.POLYGON_OFFSET_FILL)}function Wn(N){N?rt(e.SCISSOR_TEST):K(e.SCISSOR_TEST)}function Cn(N){N===void 0&&(N=e.TEXTURE0+k-1),V!==N&&(e.activeTexture(N),V=N)}function $n(N,et,j){j===void 0&&(V===null?j=e.TEXTURE0+k-1:j=V);let vt=q[j];vt===void 0&&(vt={type:void 0,texture:void 0},q[j]=vt),(vt.type!==N||vt.texture!==et)&&(V!==j&&(e.activeTexture(j),V=j),e.bindTexture(N,et||ot[N]),vt.type=N,vt.texture=et)}function G(){let N=q[V];N!==void 0&&N.type!==void 0&&(e.bindTexture(N.type,null),N.type=void 0,N.texture=void 0)}function Xn(){try{e.compressedTexImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Me(){try{e.compressedTexImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Se(){try{e.texSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function mt(){try{e.texSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Re(){try{e.compressedTexSubImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function Dt(){try{e.compressedTexSubImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function zt(){try{e.texStorage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function L(){try{e.texStorage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function T(){try{e.texImage2D(...arguments)}catch(N){Gt("WebGLState:",N)}}function H(){try{e.texImage3D(...arguments)}catch(N){Gt("WebGLState:",N)}}function ut(N){return h[N]!==void 0?h[N]:e.getParameter(N)}function nt(N,et){h[N]!==et&&(e.pixelStorei(N,et),h[N]=et)}function yt(N){$.equals(N)===!1&&(e.scissor(N.x,N.y,N.z,N.w),$.copy(N))}function Mt(N){at.equals(N)===!1&&(e.viewport(N.x,N.y,N.z,N.w),at.copy(N))}function Q(N,et){let j=c.get(et);j===void 0&&(j=new WeakMap,c.set(et,j));let vt=j.get(N);vt===void 0&&(vt=e.getUniformBlockIndex(et,N.name),e.uniformBlockBinding(et,vt,vt),j.set(N,vt))}function tt(N,et,j){let dt=c.get(et).get(N);l[dt]!==j&&(e.bindBufferBase(e.UNIFORM_BUFFER,dt,j),l[dt]=j)}function _t(){e.disable(e.BLEND),e.disable(e.CULL_FACE),e.disable(e.DEPTH_TEST),e.disable(e.POLYGON_OFFSET_FILL),e.disable(e.SCISSOR_TEST),e.disable(e.STENCIL_TEST),e.disable(e.SAMPLE_ALPHA_TO_COVERAGE),e.blendEquation(e.FUNC_ADD),e.blendFunc(e.ONE,e.ZERO),e.blendFuncSeparate(e.ONE,e.ZERO,e.ONE,e.ZERO),e.blendColor(0,0,0,0),e.colorMask(!0,!0,!0,!0),e.clearColor(0,0,0,0),e.depthMask(!0),e.depthFunc(e.LESS),o.setReversed(!1),e.clearDepth(1),e.stencilMask(4294967295),e.stencilFunc(e.ALWAYS,0,4294967295),e.stencilOp(e.KEEP,e.KEEP,e.KEEP),e.clearStencil(0),e.cullFace(e.BACK),e.frontFace(e.CCW),e.polygonOffset(0,0),e.activeTexture(e.TEXTURE0),e.bindFramebuffer(e.FRAMEBUFFER,null),e.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),e.bindFramebuffer(e.READ_FRAMEBUFFER,null),e.useProgram(null),e.lineWidth(1),e.scissor(0,0,e.canvas.width,e.canvas.height),e.viewport(0,0,e.canvas.width,e.canvas.height),e.pixelStorei(e.PACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_ALIGNMENT,4),e.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,!1),e.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),e.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,e.BROWSER_DEFAULT_WEBGL),e.pixelStorei(e.PACK_ROW_LENGTH,0),e.pixelStorei(e.PACK_SKIP_PIXELS,0),e.pixelStorei(e.PACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_ROW_LENGTH,0),e.pixelStorei(e.UNPACK_IMAGE_HEIGHT,0),e.pixelStorei(e.UNPACK_SKIP_PIXELS,0),e.pixelStorei(e.UNPACK_SKIP_ROWS,0),e.pixelStorei(e.UNPACK_SKIP_IMAGES,0),u={},h={},V=null,q={},f={},l={},d=new WeakMap,p=[],y=null,g=!1,m=null,x=null,M=null,v=null,S=null,b=null,_=null,w=new kt(0,0,0),R=0,A=!1,C=null,P=null,O=null,I=null,D=null,$.set(0,0,e.canvas.width,e.canvas.height),at.set(0,0,e.canvas.width,e.canvas.height),s.reset(),o.reset(),a.reset()}return{buffers:{color:s,depth:o,stencil:a},enable:rt,disable:K,bindFramebuffer:gt,drawBuffers:ct,useProgram:J,setBlending:Ot,setMaterial:Ht,setFlipSided:le,setCullFace:oe,setLineWidth:en,setPolygonOffset:Ge,setScissorTest:Wn,activeTexture:Cn,bindTexture:$n,unbindTexture:G,compressedTexImage2D:Xn,compressedTexImage3D:Me,texImage2D:T,texImage3D:H,pixelStorei:nt,getParameter:ut,updateUBOMapping:Q,uniformBlockBinding:tt,texStorage2D:zt,texStorage3D:L,texSubImage2D:Se,texSubImage3D:mt,compressedTexSubImage2D:Re,compressedTexSubImage3D:Dt,scissor:yt,viewport:Mt,reset:_t}}function v6(e,t,n,i,r,s,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new Bt,u=new WeakMap,h=new Set,f,d=new WeakMap,p=new Set,y=new FinalizationRegistry(L=>p.delete(L)),g=!1;try{g=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(L,T){return g?new OffscreenCanvas(L,T):Kc("canvas")}function x(L,T,H){let ut=1,nt=zt(L);if((nt.width>H||nt.height>H)&&(ut=H/Math.max(nt.width,nt.height)),ut<1)if(typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&L instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&L instanceof ImageBitmap||typeof VideoFrame<"u"&&L instanceof VideoFrame){let yt=Math.floor(ut*nt.width),Mt=Math.floor(ut*nt.height);f===void 0&&(f=m(yt,Mt));let Q=T?m(yt,Mt):f;return Q.width=yt,Q.height=Mt,Q.getContext("2d").drawImage(L,0,0,yt,Mt),Ft("WebGLRenderer: Texture has been resized from ("+nt.width+"x"+nt.height+") to ("+yt+"x"+Mt+")."),Q}else return"data"in L&&Ft("WebGLRenderer: Image in DataTexture is too big ("+nt.width+"x"+nt.height+")."),L;return L}function M(L){return L.generateMipmaps}function v(L){e.generateMipmap(L)}function S(L){return L.isWebGLCubeRenderTarget?e.TEXTURE_CUBE_MAP:L.isWebGL3DRenderTarget?e.TEXTURE_3D:L.isWebGLArrayRenderTarget||L.isCompressedArrayTexture?e.TEXTURE_2D_ARRAY:e.TEXTURE_2D}function b(L,T,H,ut,nt,yt=!1){if(L!==null){if(e[L]!==void 0)return e[L];Ft("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+L+"'")}let Mt;ut&&(Mt=t.get("EXT_texture_norm16"),Mt||Ft("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let Q=T;if(T===e.RED&&(H===e.FLOAT&&(Q=e.R32F),H===e.HALF_FLOAT&&(Q=e.R16F),H===e.UNSIGNED_BYTE&&(Q=e.R8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.R16_EXT),H===e.SHORT&&Mt&&(Q=Mt.R16_SNORM_EXT)),T===e.RED_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.R8UI),H===e.UNSIGNED_SHORT&&(Q=e.R16UI),H===e.UNSIGNED_INT&&(Q=e.R32UI),H===e.BYTE&&(Q=e.R8I),H===e.SHORT&&(Q=e.R16I),H===e.INT&&(Q=e.R32I)),T===e.RG&&(H===e.FLOAT&&(Q=e.RG32F),H===e.HALF_FLOAT&&(Q=e.RG16F),H===e.UNSIGNED_BYTE&&(Q=e.RG8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RG16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RG16_SNORM_EXT)),T===e.RG_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RG8UI),H===e.UNSIGNED_SHORT&&(Q=e.RG16UI),H===e.UNSIGNED_INT&&(Q=e.RG32UI),H===e.BYTE&&(Q=e.RG8I),H===e.SHORT&&(Q=e.RG16I),H===e.INT&&(Q=e.RG32I)),T===e.RGB_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGB8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGB16UI),H===e.UNSIGNED_INT&&(Q=e.RGB32UI),H===e.BYTE&&(Q=e.RGB8I),H===e.SHORT&&(Q=e.RGB16I),H===e.INT&&(Q=e.RGB32I)),T===e.RGBA_INTEGER&&(H===e.UNSIGNED_BYTE&&(Q=e.RGBA8UI),H===e.UNSIGNED_SHORT&&(Q=e.RGBA16UI),H===e.UNSIGNED_INT&&(Q=e.RGBA32UI),H===e.BYTE&&(Q=e.RGBA8I),H===e.SHORT&&(Q=e.RGBA16I),H===e.INT&&(Q=e.RGBA32I)),T===e.RGB&&(H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGB16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGB16_SNORM_EXT),H===e.UNSIGNED_INT_5_9_9_9_REV&&(Q=e.RGB9_E5),H===e.UNSIGNED_INT_10F_11F_11F_REV&&(Q=e.R11F_G11F_B10F)),T===e.RGBA){let tt=yt?Zc:ie.getTransfer(nt);H===e.FLOAT&&(Q=e.RGBA32F),H===e.HALF_FLOAT&&(Q=e.RGBA16F),H===e.UNSIGNED_BYTE&&(Q=tt===he?e.SRGB8_ALPHA8:e.RGBA8),H===e.UNSIGNED_SHORT&&Mt&&(Q=Mt.RGBA16_EXT),H===e.SHORT&&Mt&&(Q=Mt.RGBA16_SNORM_EXT),H===e.UNSIGNED_SHORT_4_4_4_4&&(Q=e.RGBA4),H===e.UNSIGNED_SHORT_5_5_5_1&&(Q=e.RGB5_A1)}return(Q===e.R16F||Q===e.R32F||Q===e.RG16F||Q===e.RG32F||Q===e.RGBA16F||Q===e.RGBA32F)&&t.get("EXT_color_buffer_float"),Q}function _(L,T){let H;return L?T===null||T===Ji||T===jo?H=e.DEPTH24_STENCIL8:T===ji?H=e.DEPTH32F_STENCIL8:T===Dl&&(H=e.DEPTH24_STENCIL8,Ft("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):T===null||T===Ji||T===jo?H=e.DEPTH_COMPONENT24:T===ji?H=e.DEPTH_COMPONENT32F:T===Dl&&(H=e.DEPTH_COMPONENT16),H}function w(L,T){return M(L)===!0||L.isFramebufferTexture&&L.minFilter!==hn&&L.minFilter!==kn?Math.log2(Math.max(T.width,T.height))+1:L.mipmaps.length>0?L.mipmaps.length:L.isCompressedTexture&&Array.isArray(L.image)?T.mipmaps.length:1}function R(L){let T=new WeakRef(L);i.get(L).__ref=T,p.add(T),y.register(L,T,T)}function A(L){let T=i.get(L).__ref;T!==void 0&&(p.delete(T),y.unregister(T))}function C(L){O(L.target)}function P(L){I(L.target)}function O(L){L.removeEventListener("dispose",C),A(L),k(L),L.isVideoTexture&&u.delete(L),L.isHTMLTexture&&h.delete(L)}function I(L){L.removeEventListener("dispose",P),A(L),Z(L)}function D(){for(let L of p){let T=L.deref();T!==void 0&&(T.isRenderTarget===!0?I(T):O(T))}p.clear(),h.clear()}function k(L){let T=i.get(L);if(T.__webglInit===void 0)return;let H=L.source,ut=d.get(H);if(ut){let nt=ut[T.__cacheKey];nt.usedTimes--,nt.usedTimes===0&&U(L),Object.keys(ut).length===0&&d.delete(H)}i.remove(L)}function U(L){let T=i.get(L);e.deleteTexture(T.__webglTexture);let H=L.source,ut=d.get(H);delete ut[T.__cacheKey],o.memory.textures--}function Z(L){let T=i.get(L);T.__depthDisposeCallback&&T.__depthDisposeCallback();let H=L.depthTexture;if(H&&H.renderTarget===L&&O(H),L.isWebGLCubeRenderTarget)for(let nt=0;nt<6;nt++){if(Array.isArray(T.__webglFramebuffer[nt]))for(let yt=0;yt<T.__webglFramebuffer[nt].length;yt++)e.deleteFramebuffer(T.__webglFramebuffer[nt][yt]);else e.deleteFramebuffer(T.__webglFramebuffer[nt]);T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer[nt])}else{if(Array.isArray(T.__webglFramebuffer))for(let nt=0;nt<T.__webglFramebuffer.length;nt++)e.deleteFramebuffer(T.__webglFramebuffer[nt]);else e.deleteFramebuffer(T.__webglFramebuffer);if(T.__webglDepthbuffer&&e.deleteRenderbuffer(T.__webglDepthbuffer),T.__webglMultisampledFramebuffer&&e.deleteFramebuffer(T.__webglMultisampledFramebuffer),T.__webglColorRenderbuffer)for(let nt=0;nt<T.__webglColorRenderbuffer.length;nt++)T.__webglColorRenderbuffer[nt]&&e.deleteRenderbuffer(T.__webglColorRenderbuffer[nt]);T.__webglDepthRenderbuffer&&e.deleteRenderbuffer(T.__webglDepthRenderbuffer)}let ut=L.textures;for(let nt=0,yt=ut.length;nt<yt;nt++){let Mt=i.get(ut[nt]);Mt.__webglTexture&&(e.deleteTexture(Mt.__webglTexture),o.memory.textures--),i.remove(ut[nt])}i.remove(L)}let F=0;function V(){F=0}function q(){return F}function st(L){F=L}function lt(){let L=F;return L>=r.maxTextures&&Ft("WebGLTextures: Trying to use "+(L+1)+" texture units while this GPU supports only "+r.maxTextures),F+=1,L}function $(L){let T=[];return T.push(L.wrapS),T.push(L.wrapT),T.push(L.wrapR||0),T.push(L.magFilter),T.push(L.minFilter),T.push(L.anisotropy),T.push(L.internalFormat),T.push(L.format),T.push(L.type),T.push(L.generateMipmaps),T.push(L.mipmapsAutoUpdate),T.push(L.premultiplyAlpha),T.push(L.flipY),T.push(L.unpackAlignment),T.push(L.colorSpace),T.join()}function at(L,T){let H=i.get(L);if(L.isVideoTexture&&Re(L),L.isRenderTargetTexture===!1&&L.isExternalTexture!==!0&&L.version>0&&H.__version!==L.version){let ut=L.image;if(ut===null)Ft("WebGLRenderer: Texture marked for update but no image data found.");else if(ut.complete===!1)Ft("WebGLRenderer: Texture marked for update but image is incomplete");else{Ht(H,L,T);return}}else L.isExternalTexture&&(H.__webglTexture=L.sourceTexture?L.sourceTexture:null);n.bindTexture(e.TEXTURE_2D,H.__webglTexture,e.TEXTURE0+T)}function ft(L,T){let H=i.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&H.__version!==L.version){Ht(H,L,T);return}else L.isExternalTexture&&(H.__webglTexture=L.sourceTexture?L.sourceTexture:null);n.bindTexture(e.TEXTURE_2D_ARRAY,H.__webglTexture,e.TEXTURE0+T)}function ot(L,T){let H=i.get(L);if(L.isRenderTargetTexture===!1&&L.version>0&&H.__version!==L.version){Ht(H,L,T);return}n.bindTexture(e.TEXTURE_3D,H.__webglTexture,e.TEXTURE0+T)}function rt(L,T){let H=i.get(L);if(L.version>0&&H.__version!==L.version){le(H,L,T);return}n.bindTexture(e.TEXTURE_CUBE_MAP,H.__webglTexture,e.TEXTURE0+T)}let K={[_d]:e.REPEAT,[Mr]:e.CLAMP_TO_EDGE,[vd]:e.MIRRORED_REPEAT},gt={[hn]:e.NEAREST,[U2]:e.NEAREST_MIPMAP_NEAREST,[gu]:e.NEAREST_MIPMAP_LINEAR,[kn]:e.LINEAR,[Zd]:e.LINEAR_MIPMAP_NEAREST,[fs]:e.LINEAR_MIPMAP_LINEAR},ct={[k2]:e.NEVER,[N_]:e.ALWAYS,[z2]:e.LESS,[L_]:e.LEQUAL,[G2]:e.EQUAL,[D_]:e.GEQUAL,[V2]:e.GREATER,[H2]:e.NOTEQUAL};function J(L,T){if(T.type===ji&&t.has("OES_texture_float_linear")===!1&&(T.magFilter===kn||T.magFilter===Zd||T.magFilter===gu||T.magFilter===fs||T.minFilter===kn||T.minFilter===Zd||T.minFilter===gu||T.minFilter===fs)&&Ft("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),e.texParameteri(L,e.TEXTURE_WRAP_S,K[T.wrapS]),e.texParameteri(L,e.TEXTURE_WRAP_T,K[T.wrapT]),(L===e.TEXTURE_3D||L===e.TEXTURE_2D_ARRAY)&&e.texParameteri(L,e.TEXTURE_WRAP_R,K[T.wrapR]),e.texParameteri(L,e.TEXTURE_MAG_FILTER,gt[T.magFilter]),e.texParameteri(L,e.TEXTURE_MIN_FILTER,gt[T.minFilter]),T.compareFunction&&(e.texParameteri(L,e.TEXTURE_COMPARE_MODE,e.COMPARE_REF_TO_TEXTURE),e.texParameteri(L,e.TEXTURE_COMPARE_FUNC,ct[T.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(T.magFilter===hn||T.minFilter!==gu&&T.minFilter!==fs||T.type===ji&&t.has("OES_texture_float_linear")===!1)return;if(T.anisotropy>1||i.get(T).__currentAnisotropy){let H=t.get("EXT_texture_filter_anisotropic");e.texParameterf(L,H.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(T.anisotropy,r.getMaxAnisotropy())),i.get(T).__currentAnisotropy=T.anisotropy}}}function It(L,T){let H=!1;L.__webglInit===void 0&&(L.__webglInit=!0,T.addEventListener("dispose",C),R(T));let ut=T.source,nt=d.get(ut);nt===void 0&&(nt={},d.set(ut,nt));let yt=$(T);if(yt!==L.__cacheKey){nt[yt]===void 0&&(nt[yt]={texture:e.createTexture(),usedTimes:0},o.memory.textures++,H=!0),nt[yt].usedTimes++;let Mt=nt[L.__cacheKey];Mt!==void 0&&(nt[L.__cacheKey].usedTimes--,Mt.usedTimes===0&&U(T)),L.__cacheKey=yt,L.__webglTexture=nt[yt].texture}return H}function pt(L,T,H){return Math.floor(Math.floor(L/H)/T)}function Ot(L,T,H,ut){let yt=L.updateRanges;if(yt.length===0)n.texSubImage2D(e.TEXTURE_2D,0,0,0,T.width,T.height,H,ut,T.data);else{yt.sort((N,et)=>N.start-et.start);let Mt=0;for(let N=1;N<yt.length;N++){let et=yt[Mt],j=yt[N],vt=et.start+et.count,dt=pt(j.start,T.width,4),xt=pt(et.start,T.width,4);j.start<=vt+1&&dt===xt&&pt(j.start+j.count-1,T.width,4)===dt?et.count=Math.max(et.count,j.start+j.count-et.start):(++Mt,yt[Mt]=j)}yt.length=Mt+1;let Q=n.getParameter(e.UNPACK_ROW_LENGTH),tt=n.getParameter(e.UNPACK_SKIP_PIXELS),_t=n.getParameter(e.UNPACK_SKIP_ROWS);n.pixelStorei(e.UNPACK_ROW_LENGTH,T.width);for(let N=0,et=yt.length;N<et;N++){let j=yt[N],vt=Math.floor(j.start/4),dt=Math.ceil(j.count/4),xt=vt%T.width,Nt=Math.floor(vt/T.width),Jt=dt,ht=1;n.pixelStorei(e.UNPACK_SKIP_PIXELS,xt),n.pixelStorei(e.UNPACK_SKIP_ROWS,Nt),n.texSubImage2D(e.TEXTURE_2D,0,xt,Nt,Jt,ht,H,ut,T.data)}L.clearUpdateRanges(),n.pixelStorei(e.UNPACK_ROW_LENGTH,Q),n.pixelStorei(e.UNPACK_SKIP_PIXELS,tt),n.pixelStorei(e.UNPACK_SKIP_ROWS,_t)}}function Ht(L,T,H){let ut=e.TEXTURE_2D;(T.isDataArrayTexture||T.isCompressedArrayTexture)&&(ut=e.TEXTURE_2D_ARRAY),T.isData3DTexture&&(ut=e.TEXTURE_3D);let nt=It(L,T),yt=T.source;n.bindTexture(ut,L.__webglTexture,e.TEXTURE0+H);let Mt=i.get(yt);if(yt.version!==Mt.__version||nt===!0){if(n.activeTexture(e.TEXTURE0+H),(typeof ImageBitmap<"u"&&T.image instanceof ImageBitmap)===!1){let ht=ie.getPrimaries(ie.workingColorSpace),Ut=T.colorSpace===ds?null:ie.getPrimaries(T.colorSpace),Kt=T.colorSpace===ds||ht===Ut?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,Kt)}n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment);let tt=x(T.image,!1,r.maxTextureSize);tt=Dt(T,tt);let _t=s.convert(T.format,T.colorSpace),N=s.convert(T.type),et=b(T.internalFormat,_t,N,T.normalized,T.colorSpace,T.isVideoTexture);J(ut,T);let j,vt=T.mipmaps,dt=T.isVideoTexture!==!0,xt=Mt.__version===void 0||nt===!0,Nt=yt.dataReady,Jt=w(T,tt);if(T.isDepthTexture)et=_(T.format===hs,T.type),xt&&(dt?n.texStorage2D(e.TEXTURE_2D,1,et,tt.width,tt.height):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,null));else if(T.isDataTexture)if(vt.length>0){dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data);T.generateMipmaps=!1}else dt?(xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,tt.width,tt.height),Nt&&Ot(T,tt,_t,N)):n.texImage2D(e.TEXTURE_2D,0,et,tt.width,tt.height,0,_t,N,tt.data);else if(T.isCompressedTexture)if(T.isCompressedArrayTexture){dt&&xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Jt,et,vt[0].width,vt[0].height,tt.depth);for(let ht=0,Ut=vt.length;ht<Ut;ht++)if(j=vt[ht],T.format!==tr)if(_t!==null)if(dt){if(Nt)if(T.layerUpdates.size>0){let Kt=W_(j.width,j.height,T.format,T.type);for(let Tt of T.layerUpdates){let pe=j.data.subarray(Tt*Kt/j.data.BYTES_PER_ELEMENT,(Tt+1)*Kt/j.data.BYTES_PER_ELEMENT);n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,Tt,j.width,j.height,1,_t,pe)}}else n.compressedTexSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,j.data)}else n.compressedTexImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,j.data,0,0);else Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else dt?Nt&&n.texSubImage3D(e.TEXTURE_2D_ARRAY,ht,0,0,0,j.width,j.height,tt.depth,_t,N,j.data):n.texImage3D(e.TEXTURE_2D_ARRAY,ht,et,j.width,j.height,tt.depth,0,_t,N,j.data);T.layerUpdates.size>0&&T.clearLayerUpdates()}else{dt&&xt&&n.texStorage2D(e.TEXTURE_2D,Jt,et,vt[0].width,vt[0].height);for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],T.format!==tr?_t!==null?dt?Nt&&n.compressedTexSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,j.data):n.compressedTexImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,j.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,j.width,j.height,_t,N,j.data):n.texImage2D(e.TEXTURE_2D,ht,et,j.width,j.height,0,_t,N,j.data)}else if(T.isDataArrayTexture)if(dt){if(xt&&n.texStorage3D(e.TEXTURE_2D_ARRAY,Jt,et,tt.width,tt.height,tt.depth),Nt)if(T.layerUpdates.size>0){let ht=W_(tt.width,tt.height,T.format,T.type);for(let Ut of T.layerUpdates){let Kt=tt.data.subarray(Ut*ht/tt.data.BYTES_PER_ELEMENT,(Ut+1)*ht/tt.data.BYTES_PER_ELEMENT);n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,Ut,tt.width,tt.height,1,_t,N,Kt)}T.clearLayerUpdates()}else n.texSubImage3D(e.TEXTURE_2D_ARRAY,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)}else n.texImage3D(e.TEXTURE_2D_ARRAY,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isData3DTexture)dt?(xt&&n.texStorage3D(e.TEXTURE_3D,Jt,et,tt.width,tt.height,tt.depth),Nt&&n.texSubImage3D(e.TEXTURE_3D,0,0,0,0,tt.width,tt.height,tt.depth,_t,N,tt.data)):n.texImage3D(e.TEXTURE_3D,0,et,tt.width,tt.height,tt.depth,0,_t,N,tt.data);else if(T.isFramebufferTexture){if(xt)if(dt)n.texStorage2D(e.TEXTURE_2D,Jt,et,tt.width,tt.height);else{let ht=tt.width,Ut=tt.height;for(let Kt=0;Kt<Jt;Kt++)n.texImage2D(e.TEXTURE_2D,Kt,et,ht,Ut,0,_t,N,null),ht>>=1,Ut>>=1}}else if(T.isHTMLTexture){if("texElementImage2D"in e){let ht=e.canvas;if(ht.hasAttribute("layoutsubtree")||ht.setAttribute("layoutsubtree","true"),tt.parentNode!==ht){ht.appendChild(tt),h.add(T),ht.onpaint=Ut=>{let Kt=Ut.changedElements;for(let Tt of h)Kt.includes(Tt.image)&&(Tt.needsUpdate=!0)},ht.requestPaint();return}if(e.texElementImage2D.length===3)e.texElementImage2D(e.TEXTURE_2D,e.RGBA8,tt);else{let Kt=e.RGBA,Tt=e.RGBA,pe=e.UNSIGNED_BYTE;e.texElementImage2D(e.TEXTURE_2D,0,Kt,Tt,pe,tt)}e.texParameteri(e.TEXTURE_2D,e.TEXTURE_MIN_FILTER,e.LINEAR),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_S,e.CLAMP_TO_EDGE),e.texParameteri(e.TEXTURE_2D,e.TEXTURE_WRAP_T,e.CLAMP_TO_EDGE)}}else if(vt.length>0){if(dt&&xt){let ht=zt(vt[0]);n.texStorage2D(e.TEXTURE_2D,Jt,et,ht.width,ht.height)}for(let ht=0,Ut=vt.length;ht<Ut;ht++)j=vt[ht],dt?Nt&&n.texSubImage2D(e.TEXTURE_2D,ht,0,0,_t,N,j):n.texImage2D(e.TEXTURE_2D,ht,et,_t,N,j);T.generateMipmaps=!1}else if(dt){if(xt){let ht=zt(tt);n.texStorage2D(e.TEXTURE_2D,Jt,et,ht.width,ht.height)}Nt&&n.texSubImage2D(e.TEXTURE_2D,0,0,0,_t,N,tt)}else n.texImage2D(e.TEXTURE_2D,0,et,_t,N,tt);M(T)&&T.mipmapsAutoUpdate===!0&&v(ut),Mt.__version=yt.version,T.onUpdate&&T.onUpdate(T)}L.__version=T.version}function le(L,T,H){if(T.image.length!==6)return;let ut=It(L,T),nt=T.source;n.bindTexture(e.TEXTURE_CUBE_MAP,L.__webglTexture,e.TEXTURE0+H);let yt=i.get(nt);if(nt.version!==yt.__version||ut===!0){n.activeTexture(e.TEXTURE0+H);let Mt=ie.getPrimaries(ie.workingColorSpace),Q=T.colorSpace===ds?null:ie.getPrimaries(T.colorSpace),tt=T.colorSpace===ds||Mt===Q?e.NONE:e.BROWSER_DEFAULT_WEBGL;n.pixelStorei(e.UNPACK_FLIP_Y_WEBGL,T.flipY),n.pixelStorei(e.UNPACK_PREMULTIPLY_ALPHA_WEBGL,T.premultiplyAlpha),n.pixelStorei(e.UNPACK_ALIGNMENT,T.unpackAlignment),n.pixelStorei(e.UNPACK_COLORSPACE_CONVERSION_WEBGL,tt);let _t=T.isCompressedTexture||T.image[0].isCompressedTexture,N=T.image[0]&&T.image[0].isDataTexture,et=[];for(let Tt=0;Tt<6;Tt++)!_t&&!N?et[Tt]=x(T.image[Tt],!0,r.maxCubemapSize):et[Tt]=N?T.image[Tt].image:T.image[Tt],et[Tt]=Dt(T,et[Tt]);let j=et[0],vt=s.convert(T.format,T.colorSpace),dt=s.convert(T.type),xt=b(T.internalFormat,vt,dt,T.normalized,T.colorSpace),Nt=T.isVideoTexture!==!0,Jt=yt.__version===void 0||ut===!0,ht=nt.dataReady,Ut=w(T,j);J(e.TEXTURE_CUBE_MAP,T);let Kt;if(T.isDepthTexture){if(xt=_(T.format===hs,T.type),Jt)if(Nt)n.texStorage2D(e.TEXTURE_CUBE_MAP,1,xt,j.width,j.height);else for(let Tt=0;Tt<6;Tt++)n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,0,xt,j.width,j.height,0,vt,dt,null)}else if(_t){Nt&&Jt&&n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,j.width,j.height);for(let Tt=0;Tt<6;Tt++){Kt=et[Tt].mipmaps;for(let pe=0;pe<Kt.length;pe++){let nn=Kt[pe];T.format!==tr?vt!==null?Nt?ht&&n.compressedTexSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe,0,0,nn.width,nn.height,vt,nn.data):n.compressedTexImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe,xt,nn.width,nn.height,0,nn.data):Ft("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe,0,0,nn.width,nn.height,vt,dt,nn.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe,xt,nn.width,nn.height,0,vt,dt,nn.data)}}}else{if(Kt=T.mipmaps,Nt&&Jt){Kt.length>0&&Ut++;let Tt=zt(et[0]);n.texStorage2D(e.TEXTURE_CUBE_MAP,Ut,xt,Tt.width,Tt.height)}for(let Tt=0;Tt<6;Tt++)if(N){Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,0,0,0,et[Tt].width,et[Tt].height,vt,dt,et[Tt].data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,0,xt,et[Tt].width,et[Tt].height,0,vt,dt,et[Tt].data);for(let pe=0;pe<Kt.length;pe++){let ms=Kt[pe].image[Tt].image;Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe+1,0,0,ms.width,ms.height,vt,dt,ms.data):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe+1,xt,ms.width,ms.height,0,vt,dt,ms.data)}}else{Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,0,0,0,vt,dt,et[Tt]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,0,xt,vt,dt,et[Tt]);for(let pe=0;pe<Kt.length;pe++){let nn=Kt[pe];Nt?ht&&n.texSubImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe+1,0,0,vt,dt,nn.image[Tt]):n.texImage2D(e.TEXTURE_CUBE_MAP_POSITIVE_X+Tt,pe+1,xt,vt,dt,nn.image[Tt])}}}M(T)&&T.mipmapsAutoUpdate===!0&&v(e.TEXTURE_CUBE_MAP),yt.__version=nt.version,T.onUpdate&&T.onUpdate(T)}L.__version=T.version}function oe(L,T,H,ut,nt,yt){let Mt=s.convert(H.format,H.colorSpace),Q=s.convert(H.type),tt=b(H.internalFormat,Mt,Q,H.normalized,H.colorSpace),_t=i.get(T),N=i.get(H);if(N.__renderTarget=T,!_t.__hasExternalTextures){let et=Math.max(1,T.width>>yt),j=Math.max(1,T.height>>yt);nt===e.TEXTURE_3D||nt===e.TEXTURE_2D_ARRAY?n.texImage3D(nt,yt,tt,et,j,T.depth,0,Mt,Q,null):n.texImage2D(nt,yt,tt,et,j,0,Mt,Q,null)}n.bindFramebuffer(e.FRAMEBUFFER,L),mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,ut,nt,N.__webglTexture,0,Se(T)):(nt===e.TEXTURE_2D||nt>=e.TEXTURE_CUBE_MAP_POSITIVE_X&&nt<=e.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&e.framebufferTexture2D(e.FRAMEBUFFER,ut,nt,N.__webglTexture,yt),n.bindFramebuffer(e.FRAMEBUFFER,null)}function en(L,T,H){if(e.bindRenderbuffer(e.RENDERBUFFER,L),T.depthBuffer){let ut=T.depthTexture,nt=ut&&ut.isDepthTexture?ut.type:null,yt=_(T.stencilBuffer,nt),Mt=T.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Se(T),yt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Se(T),yt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,yt,T.width,T.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,Mt,e.RENDERBUFFER,L)}else{let ut=T.textures;for(let nt=0;nt<ut.length;nt++){let yt=ut[nt],Mt=s.convert(yt.format,yt.colorSpace),Q=s.convert(yt.type),tt=b(yt.internalFormat,Mt,Q,yt.normalized,yt.colorSpace);mt(T)?a.renderbufferStorageMultisampleEXT(e.RENDERBUFFER,Se(T),tt,T.width,T.height):H?e.renderbufferStorageMultisample(e.RENDERBUFFER,Se(T),tt,T.width,T.height):e.renderbufferStorage(e.RENDERBUFFER,tt,T.width,T.height)}}e.bindRenderbuffer(e.RENDERBUFFER,null)}function Ge(L,T,H){let ut=T.isWebGLCubeRenderTarget===!0;if(n.bindFramebuffer(e.FRAMEBUFFER,L),!(T.depthTexture&&T.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let nt=i.get(T.depthTexture);nt.__renderTarget=T;let yt=ut?T.depthTexture.image[0]:T.depthTexture.image;(!nt.__webglTexture||yt.width!==T.width||yt.height!==T.height)&&(yt.width=T.width,yt.height=T.height,T.depthTexture.needsUpdate=!0),ut?rt(T.depthTexture,0):at(T.depthTexture,0);let Mt=nt.__webglTexture,Q=Se(T),tt=ut?e.TEXTURE_CUBE_MAP_POSITIVE_X+H:e.TEXTURE_2D,_t=T.depthTexture.format===hs?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;if(T.depthTexture.format===ss)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else if(T.depthTexture.format===hs)mt(T)?a.framebufferTexture2DMultisampleEXT(e.FRAMEBUFFER,_t,tt,Mt,0,Q):e.framebufferTexture2D(e.FRAMEBUFFER,_t,tt,Mt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function Wn(L){let T=i.get(L),H=L.isWebGLCubeRenderTarget===!0;if(T.__boundDepthTexture!==L.depthTexture){let ut=L.depthTexture;if(T.__depthDisposeCallback&&T.__depthDisposeCallback(),ut){let nt=()=>{delete T.__boundDepthTexture,delete T.__depthDisposeCallback,ut.removeEventListener("dispose",nt)};ut.addEventListener("dispose",nt),T.__depthDisposeCallback=nt}T.__boundDepthTexture=ut}if(L.depthTexture&&!T.__autoAllocateDepthBuffer)if(H)for(let ut=0;ut<6;ut++)Ge(T.__webglFramebuffer[ut],L,ut);else L.texture.mipmaps.length>0?Ge(T.__webglFramebuffer[0],L,0):Ge(T.__webglFramebuffer,L,0);else if(H){T.__webglDepthbuffer=[];for(let ut=0;ut<6;ut++)if(n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[ut]),T.__webglDepthbuffer[ut]===void 0)T.__webglDepthbuffer[ut]=e.createRenderbuffer(),en(T.__webglDepthbuffer[ut],L,!1);else{let nt=L.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer[ut];e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}}else if(L.texture.mipmaps.length>0?n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer[0]):n.bindFramebuffer(e.FRAMEBUFFER,T.__webglFramebuffer),T.__webglDepthbuffer===void 0)T.__webglDepthbuffer=e.createRenderbuffer(),en(T.__webglDepthbuffer,L,!1);else{let nt=L.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,yt=T.__webglDepthbuffer;e.bindRenderbuffer(e.RENDERBUFFER,yt),e.framebufferRenderbuffer(e.FRAMEBUFFER,nt,e.RENDERBUFFER,yt)}n.bindFramebuffer(e.FRAMEBUFFER,null)}function Cn(L,T,H){let ut=i.get(L);T!==void 0&&oe(ut.__webglFramebuffer,L,L.texture,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,0),H!==void 0&&Wn(L)}function $n(L){let T=L.texture,H=i.get(L),ut=i.get(T);L.addEventListener("dispose",P),R(L);let nt=L.textures,yt=L.isWebGLCubeRenderTarget===!0,Mt=nt.length>1;if(Mt||(ut.__webglTexture===void 0&&(ut.__webglTexture=e.createTexture()),ut.__version=T.version,o.memory.textures++),yt){H.__webglFramebuffer=[];for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0){H.__webglFramebuffer[Q]=[];for(let tt=0;tt<T.mipmaps.length;tt++)H.__webglFramebuffer[Q][tt]=e.createFramebuffer()}else H.__webglFramebuffer[Q]=e.createFramebuffer()}else{if(T.mipmaps.length>0){H.__webglFramebuffer=[];for(let Q=0;Q<T.mipmaps.length;Q++)H.__webglFramebuffer[Q]=e.createFramebuffer()}else H.__webglFramebuffer=e.createFramebuffer();if(Mt)for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=i.get(nt[Q]);_t.__webglTexture===void 0&&(_t.__webglTexture=e.createTexture(),o.memory.textures++)}if(L.samples>0&&mt(L)===!1){H.__webglMultisampledFramebuffer=e.createFramebuffer(),H.__webglColorRenderbuffer=[],n.bindFramebuffer(e.FRAMEBUFFER,H.__webglMultisampledFramebuffer);for(let Q=0;Q<nt.length;Q++){let tt=nt[Q];H.__webglColorRenderbuffer[Q]=e.createRenderbuffer(),e.bindRenderbuffer(e.RENDERBUFFER,H.__webglColorRenderbuffer[Q]);let _t=s.convert(tt.format,tt.colorSpace),N=s.convert(tt.type),et=b(tt.internalFormat,_t,N,tt.normalized,tt.colorSpace,L.isXRRenderTarget===!0),j=Se(L);e.renderbufferStorageMultisample(e.RENDERBUFFER,j,et,L.width,L.height),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+Q,e.RENDERBUFFER,H.__webglColorRenderbuffer[Q])}e.bindRenderbuffer(e.RENDERBUFFER,null),L.depthBuffer&&(H.__webglDepthRenderbuffer=e.createRenderbuffer(),en(H.__webglDepthRenderbuffer,L,!0)),n.bindFramebuffer(e.FRAMEBUFFER,null)}}if(yt){n.bindTexture(e.TEXTURE_CUBE_MAP,ut.__webglTexture),J(e.TEXTURE_CUBE_MAP,T);for(let Q=0;Q<6;Q++)if(T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[Q][tt],L,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,tt);else oe(H.__webglFramebuffer[Q],L,T,e.COLOR_ATTACHMENT0,e.TEXTURE_CUBE_MAP_POSITIVE_X+Q,0);M(T)?v(e.TEXTURE_CUBE_MAP):T.mipmaps.length>0&&e.texParameteri(e.TEXTURE_CUBE_MAP,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}else if(Mt){for(let Q=0,tt=nt.length;Q<tt;Q++){let _t=nt[Q],N=i.get(_t),et=e.TEXTURE_2D;(L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(et=L.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(et,N.__webglTexture),J(et,_t),oe(H.__webglFramebuffer,L,_t,e.COLOR_ATTACHMENT0+Q,et,0),M(_t)&&v(et)}n.unbindTexture()}else{let Q=e.TEXTURE_2D;if((L.isWebGL3DRenderTarget||L.isWebGLArrayRenderTarget)&&(Q=L.isWebGL3DRenderTarget?e.TEXTURE_3D:e.TEXTURE_2D_ARRAY),n.bindTexture(Q,ut.__webglTexture),J(Q,T),T.mipmaps.length>0)for(let tt=0;tt<T.mipmaps.length;tt++)oe(H.__webglFramebuffer[tt],L,T,e.COLOR_ATTACHMENT0,Q,tt);else oe(H.__webglFramebuffer,L,T,e.COLOR_ATTACHMENT0,Q,0);M(T)?v(Q):T.mipmaps.length>0&&e.texParameteri(Q,e.TEXTURE_MAX_LEVEL,T.mipmaps.length-1),n.unbindTexture()}L.depthBuffer&&Wn(L)}function G(L){let T=L.textures;for(let H=0,ut=T.length;H<ut;H++){let nt=T[H];if(M(nt)&&nt.mipmapsAutoUpdate===!0){let yt=S(L),Mt=i.get(nt).__webglTexture;n.bindTexture(yt,Mt),v(yt),n.unbindTexture()}}}let Xn=[];function Me(L){if(L.samples>0){if(mt(L)===!1){let T=L.textures,H=L.width,ut=L.height,nt=e.COLOR_BUFFER_BIT,yt=L.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT,Mt=i.get(L),Q=T.length>1;if(Q)for(let _t=0;_t<T.length;_t++)n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,null),n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,null,0);n.bindFramebuffer(e.READ_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),L.texture.mipmaps.length>0?n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer[0]):n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer);for(let _t=0;_t<T.length;_t++){if(L.resolveDepthBuffer&&(L.depthBuffer&&(nt|=e.DEPTH_BUFFER_BIT),L.stencilBuffer&&L.resolveStencilBuffer&&(nt|=e.STENCIL_BUFFER_BIT)),Q){e.framebufferRenderbuffer(e.READ_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0,e.TEXTURE_2D,N,0)}e.blitFramebuffer(0,0,H,ut,0,0,H,ut,nt,e.NEAREST),l===!0&&(Xn.length=0,Xn.push(e.COLOR_ATTACHMENT0+_t),L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&Xn.push(yt),e.invalidateFramebuffer(e.READ_FRAMEBUFFER,Xn))}if(n.bindFramebuffer(e.READ_FRAMEBUFFER,null),n.bindFramebuffer(e.DRAW_FRAMEBUFFER,null),Q)for(let _t=0;_t<T.length;_t++){n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),e.framebufferRenderbuffer(e.FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.RENDERBUFFER,Mt.__webglColorRenderbuffer[_t]);let N=i.get(T[_t]).__webglTexture;n.bindFramebuffer(e.FRAMEBUFFER,Mt.__webglFramebuffer),e.framebufferTexture2D(e.DRAW_FRAMEBUFFER,e.COLOR_ATTACHMENT0+_t,e.TEXTURE_2D,N,0)}n.bindFramebuffer(e.DRAW_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer)}else if(L.depthBuffer&&L.storeMultisampledDepthBuffer===!1&&l){let T=L.stencilBuffer?e.DEPTH_STENCIL_ATTACHMENT:e.DEPTH_ATTACHMENT;e.invalidateFramebuffer(e.DRAW_FRAMEBUFFER,[T])}}}function Se(L){return Math.min(r.maxSamples,L.samples)}function mt(L){let T=i.get(L);return L.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&T.__useRenderToTexture!==!1}function Re(L){let T=o.render.frame;u.get(L)!==T&&(u.set(L,T),L.update())}function Dt(L,T){let H=L.colorSpace,ut=L.format,nt=L.type;return L.isCompressedTexture===!0||L.isVideoTexture===!0||H!==Yc&&H!==ds&&(ie.getTransfer(H)===he?(ut!==tr||nt!==ti)&&Ft("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):Gt("WebGLTextures: Unsupported texture color space:",H)),T}function zt(L){return typeof HTMLImageElement<"u"&&L instanceof HTMLImageElement?(c.width=L.naturalWidth||L.width,c.height=L.naturalHeight||L.height):typeof VideoFrame<"u"&&L instanceof VideoFrame?(c.width=L.displayWidth,c.height=L.displayHeight):(c.width=L.width,c.height=L.height),c}this.allocateTextureUnit=lt,this.resetTextureUnits=V,this.getTextureUnits=q,this.setTextureUnits=st,this.setTexture2D=at,this.setTexture2DArray=ft,this.setTexture3D=ot,this.setTextureCube=rt,this.rebindTextures=Cn,this.setupRenderTarget=$n,this.updateRenderTargetMipmap=G,this.updateMultisampleRenderTarget=Me,this.setupDepthRenderbuffer=Wn,this.setupFrameBufferTexture=oe,this.useMultisampledRTT=mt,this.dispose=D}function b6(e,t){function n(i,r=ds){let s,o=ie.getTransfer(r);if(i===ti)return e.UNSIGNED_BYTE;if(i===Jd)return e.UNSIGNED_SHORT_4_4_4_4;if(i===jd)return e.UNSIGNED_SHORT_5_5_5_1;if(i===A_)return e.UNSIGNED_INT_5_9_9_9_REV;if(i===C_)return e.UNSIGNED_INT_10F_11F_11F_REV;if(i===T_)return e.BYTE;if(i===E_)return e.SHORT;if(i===Dl)return e.UNSIGNED_SHORT;if(i===Kd)return e.INT;if(i===Ji)return e.UNSIGNED_INT;if(i===ji)return e.FLOAT;if(i===Qi)return e.HALF_FLOAT;if(i===R_)return e.ALPHA;if(i===P_)return e.RGB;if(i===tr)return e.RGBA;if(i===ss)return e.DEPTH_COMPONENT;if(i===hs)return e.DEPTH_STENCIL;if(i===I_)return e.RED;if(i===Qd)return e.RED_INTEGER;if(i===Qs)return e.RG;if(i===tp)return e.RG_INTEGER;if(i===ep)return e.RGBA_INTEGER;if(i===yu||i===xu||i===_u||i===vu)if(o===he)if(s=t.get("WEBGL_compressed_texture_s3tc_srgb"),s!==null){if(i===yu)return s.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(i===xu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(i===_u)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(i===vu)return s.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(s=t.get("WEBGL_compressed_texture_s3tc"),s!==null){if(i===yu)return s.COMPRESSED_RGB_S3TC_DXT1_EXT;if(i===xu)return s.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(i===_u)return s.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(i===vu)return s.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(i===np||i===ip||i===rp||i===sp)if(s=t.get("WEBGL_compressed_texture_pvrtc"),s!==null){if(i===np)return s.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(i===ip)return s.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(i===rp)return s.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(i===sp)return s.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(i===op||i===ap||i===lp||i===cp||i===up||i===bu||i===fp)if(s=t.get("WEBGL_compressed_texture_etc"),s!==null){if(i===op||i===ap)return o===he?s.COMPRESSED_SRGB8_ETC2:s.COMPRESSED_RGB8_ETC2;if(i===lp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:s.COMPRESSED_RGBA8_ETC2_EAC;if(i===cp)return s.COMPRESSED_R11_EAC;if(i===up)return s.COMPRESSED_SIGNED_R11_EAC;if(i===bu)return s.COMPRESSED_RG11_EAC;if(i===fp)return s.COMPRESSED_SIGNED_RG11_EAC}else return null;if(i===hp||i===dp||i===pp||i===mp||i===gp||i===yp||i===xp||i===_p||i===vp||i===bp||i===Mp||i===Sp||i===wp||i===Tp)if(s=t.get("WEBGL_compressed_texture_astc"),s!==null){if(i===hp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:s.COMPRESSED_RGBA_ASTC_4x4_KHR;if(i===dp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:s.COMPRESSED_RGBA_ASTC_5x4_KHR;if(i===pp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:s.COMPRESSED_RGBA_ASTC_5x5_KHR;if(i===mp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:s.COMPRESSED_RGBA_ASTC_6x5_KHR;if(i===gp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:s.COMPRESSED_RGBA_ASTC_6x6_KHR;if(i===yp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:s.COMPRESSED_RGBA_ASTC_8x5_KHR;if(i===xp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:s.COMPRESSED_RGBA_ASTC_8x6_KHR;if(i===_p)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:s.COMPRESSED_RGBA_ASTC_8x8_KHR;if(i===vp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:s.COMPRESSED_RGBA_ASTC_10x5_KHR;if(i===bp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:s.COMPRESSED_RGBA_ASTC_10x6_KHR;if(i===Mp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:s.COMPRESSED_RGBA_ASTC_10x8_KHR;if(i===Sp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:s.COMPRESSED_RGBA_ASTC_10x10_KHR;if(i===wp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:s.COMPRESSED_RGBA_ASTC_12x10_KHR;if(i===Tp)return o===he?s.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:s.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(i===Ep||i===Ap||i===Cp)if(s=t.get("EXT_texture_compression_bptc"),s!==null){if(i===Ep)return o===he?s.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:s.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(i===Ap)return s.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(i===Cp)return s.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(i===Rp||i===Pp||i===Mu||i===Ip)if(s=t.get("EXT_texture_compression_rgtc"),s!==null){if(i===Rp)return s.COMPRESSED_RED_RGTC1_EXT;if(i===Pp)return s.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(i===Mu)return s.COMPRESSED_RED_GREEN_RGTC2_EXT;if(i===Ip)return s.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return i===jo?e.UNSIGNED_INT_24_8:e[i]!==void 0?e[i]:null}return{convert:n}}var M6=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,S6=`
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

}`,Q_=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,n){if(this.texture===null){let i=new ru(t.texture);(t.depthNear!==n.depthNear||t.depthFar!==n.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=i}}getMesh(t){if(this.texture!==null&&this.mesh===null){let n=t.cameras[0].viewport,i=new Di({vertexShader:M6,fragmentShader:S6,uniforms:{depthColor:{value:this.texture},depthWidth:{value:n.z},depthHeight:{value:n.w}}});this.mesh=new $e(new Yo(20,20),i)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},tv=class extends Yi{constructor(t,n){super();let i=this,r=null,s=1,o=null,a="local-floor",l=1,c=null,u=null,h=null,f=null,d=null,p=null,y=typeof XRWebGLBinding<"u",g=new Q_,m={},x=n.getContextAttributes(),M=null,v=null,S=[],b=[],_=new Bt,w=null,R=null,A=new ci;A.viewport=new de;let C=new ci;C.viewport=new de;let P=[A,C],O=new $d,I=null,D=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function($){let at=S[$];return at===void 0&&(at=new wl,S[$]=at),at.getTargetRaySpace()},this.getControllerGrip=function($){let at=S[$];return at===void 0&&(at=new wl,S[$]=at),at.getGripSpace()},this.getHand=function($){let at=S[$];return at===void 0&&(at=new wl,S[$]=at),at.getHandSpace()};function k($){let at=b.indexOf($.inputSource);if(at===-1)return;let ft=S[at];ft!==void 0&&(ft.update($.inputSource,$.frame,c||o),ft.dispatchEvent({type:$.type,data:$.inputSource}))}function U(){r.removeEventListener("select",k),r.removeEventListener("selectstart",k),r.removeEventListener("selectend",k),r.removeEventListener("squeeze",k),r.removeEventListener("squeezestart",k),r.removeEventListener("squeezeend",k),r.removeEventListener("end",U),r.removeEventListener("inputsourceschange",Z);for(let $=0;$<S.length;$++){let at=b[$];at!==null&&(b[$]=null,S[$].disconnect(at))}I=null,D=null,g.reset();for(let $ in m)delete m[$];if(t.setRenderTarget(M),d=null,f=null,h=null,r=null,v=null,lt.stop(),i.isPresenting=!1,t.setPixelRatio(w),t.setSize(_.width,_.height,!1),R!==null){let $=R.camera;$.fov=R.fov,$.zoom=R.zoom,$.updateProjectionMatrix(),R=null}i.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function($){s=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function($){a=$,i.isPresenting===!0&&Ft("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||o},this.setReferenceSpace=function($){c=$},this.getBaseLayer=function(){return f!==null?f:d},this.getBinding=function(){return h===null&&y&&(h=new XRWebGLBinding(r,n)),h},this.getFrame=function(){return p},this.getSession=function(){return r},this.setSession=async function($){if(r=$,r!==null){if(M=t.getRenderTarget(),r.addEventListener("select",k),r.addEventListener("selectstart",k),r.addEventListener("selectend",k),r.addEventListener("squeeze",k),r.addEventListener("squeezestart",k),r.addEventListener("squeezeend",k),r.addEventListener("end",U),r.addEventListener("inputsourceschange",Z),x.xrCompatible!==!0&&await n.makeXRCompatible(),w=t.getPixelRatio(),t.getSize(_),y&&"createProjectionLayer"in XRWebGLBinding.prototype){let ft=null,ot=null,rt=null;x.depth&&(rt=x.stencil?n.DEPTH24_STENCIL8:n.DEPTH_COMPONENT24,ft=x.stencil?hs:ss,ot=x.stencil?jo:Ji);let K={colorFormat:n.RGBA8,depthFormat:rt,scaleFactor:s};h=this.getBinding(),f=h.createProjectionLayer(K),r.updateRenderState({layers:[f]}),t.setPixelRatio(1),t.setSize(f.textureWidth,f.textureHeight,!1),v=new zn(f.textureWidth,f.textureHeight,{format:tr,type:ti,depthTexture:new ls(f.textureWidth,f.textureHeight,ot,void 0,void 0,void 0,void 0,void 0,void 0,ft),stencilBuffer:x.stencil,colorSpace:t.outputColorSpace,samples:x.antialias?4:0,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}else{let ft={antialias:x.antialias,alpha:!0,depth:x.depth,stencil:x.stencil,framebufferScaleFactor:s};d=new XRWebGLLayer(r,n,ft),r.updateRenderState({baseLayer:d}),t.setPixelRatio(1),t.setSize(d.framebufferWidth,d.framebufferHeight,!1),v=new zn(d.framebufferWidth,d.framebufferHeight,{format:tr,type:ti,colorSpace:t.outputColorSpace,stencilBuffer:x.stencil,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}v.isXRRenderTarget=!0,this.setFoveation(l),c=null,o=await r.requestReferenceSpace(a),lt.setContext(r),lt.start(),i.isPresenting=!0,i.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(r!==null)return r.environmentBlendMode},this.getDepthTexture=function(){return g.getDepthTexture()};function Z($){for(let at=0;at<$.removed.length;at++){let ft=$.removed[at],ot=b.indexOf(ft);ot>=0&&(b[ot]=null,S[ot].disconnect(ft))}for(let at=0;at<$.added.length;at++){let ft=$.added[at],ot=b.indexOf(ft);if(ot===-1){for(let K=0;K<S.length;K++)if(K>=b.length){b.push(ft),ot=K;break}else if(b[K]===null){b[K]=ft,ot=K;break}if(ot===-1)break}let rt=S[ot];rt&&rt.connect(ft)}}function F($,at){at===null?$.matrixWorld.copy($.matrix):$.matrixWorld.multiplyMatrices(at.matrixWorld,$.matrix),$.matrixWorldInverse.copy($.matrixWorld).invert()}this.updateCamera=function($){if(r===null)return;let at=$.near,ft=$.far;g.texture!==null&&(g.depthNear>0&&(at=g.depthNear),g.depthFar>0&&(ft=g.depthFar)),O.near=C.near=A.near=at,O.far=C.far=A.far=ft,(I!==O.near||D!==O.far)&&(r.updateRenderState({depthNear:O.near,depthFar:O.far}),I=O.near,D=O.far),O.layers.mask=$.layers.mask|6,A.layers.mask=O.layers.mask&-5,C.layers.mask=O.layers.mask&-3;let ot=$.parent,rt=O.cameras;F(O,ot);for(let K=0;K<rt.length;K++)F(rt[K],ot);O.projectionMatrix.copy(A.projectionMatrix),O.projectionMatrixInverse.copy(A.projectionMatrixInverse),R===null&&$.isPerspectiveCamera&&(R={camera:$,fov:$.fov,zoom:$.zoom}),V($,O,ot)};function V($,at,ft){ft===null?$.matrix.copy(at.matrixWorld):($.matrix.copy(ft.matrixWorld),$.matrix.invert(),$.matrix.multiply(at.matrixWorld)),$.matrix.decompose($.position,$.quaternion,$.scale),$.updateMatrixWorld(!0),$.projectionMatrix.copy(at.projectionMatrix),$.projectionMatrixInverse.copy(at.projectionMatrixInverse),$.isPerspectiveCamera&&($.fov=Ml*2*Math.atan(1/$.projectionMatrix.elements[5]),$.zoom=1)}this.getCamera=function(){return O},this.getFoveation=function(){if(!(f===null&&d===null))return l},this.setFoveation=function($){l=$,f!==null&&(f.fixedFoveation=$),d!==null&&d.fixedFoveation!==void 0&&(d.fixedFoveation=$)},this.hasDepthSensing=function(){return g.texture!==null},this.getDepthSensingMesh=function(){return g.getMesh(O)},this.getCameraTexture=function($){return m[$]};let q=null;function st($,at){if(u=at.getViewerPose(c||o),p=at,u!==null){let ft=u.views;d!==null&&(t.setRenderTargetFramebuffer(v,d.framebuffer),t.setRenderTarget(v));let ot=!1;ft.length!==O.cameras.length&&(O.cameras.length=0,ot=!0);for(let ct=0;ct<ft.length;ct++){let J=ft[ct],It=null;if(d!==null)It=d.getViewport(J);else{let Ot=h.getViewSubImage(f,J);It=Ot.viewport,ct===0&&(t.setRenderTargetTextures(v,Ot.colorTexture,Ot.depthStencilTexture),t.setRenderTarget(v))}let pt=P[ct];pt===void 0&&(pt=new ci,pt.layers.enable(ct),pt.viewport=new de,P[ct]=pt),pt.matrix.fromArray(J.transform.matrix),pt.matrix.decompose(pt.position,pt.quaternion,pt.scale),pt.projectionMatrix.fromArray(J.projectionMatrix),pt.projectionMatrixInverse.copy(pt.projectionMatrix).invert(),pt.viewport.set(It.x,It.y,It.width,It.height),ct===0&&(O.matrix.copy(pt.matrix),O.matrix.decompose(O.position,O.quaternion,O.scale)),ot===!0&&O.cameras.push(pt)}let rt=r.enabledFeatures;if(rt&&rt.includes("depth-sensing")&&r.depthUsage=="gpu-optimized"&&y){h=i.getBinding();let ct=h.getDepthInformation(ft[0]);ct&&ct.isValid&&ct.texture&&g.init(ct,r.renderState)}if(rt&&rt.includes("camera-access")&&y){t.state.unbindTexture(),h=i.getBinding();for(let ct=0;ct<ft.length;ct++){let J=ft[ct].camera;if(J){let It=m[J];It||(It=new ru,m[J]=It);let pt=h.getCameraImage(J);It.sourceTexture=pt}}}}for(let ft=0;ft<S.length;ft++){let ot=b[ft],rt=S[ft];ot!==null&&rt!==void 0&&rt.update(ot,at,c||o)}q&&q($,at),at.detectedPlanes&&i.dispatchEvent({type:"planesdetected",data:at}),p=null}let lt=new x3;lt.setAnimationLoop(st),this.setAnimationLoop=function($){q=$},this.dispose=function(){}}},w6=new be,C3=new Vt;C3.set(-1,0,0,0,1,0,0,0,1);function T6(e,t){function n(g,m){g.matrixAutoUpdate===!0&&g.updateMatrix(),m.value.copy(g.matrix)}function i(g,m){m.color.getRGB(g.fogColor.value,G_(e)),m.isFog?(g.fogNear.value=m.near,g.fogFar.value=m.far):m.isFogExp2&&(g.fogDensity.value=m.density)}function r(g,m,x,M,v){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?s(g,m):m.isMeshLambertMaterial?(s(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(s(g,m),h(g,m)):m.isMeshPhongMaterial?(s(g,m),u(g,m),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(s(g,m),f(g,m),m.isMeshPhysicalMaterial&&d(g,m,v)):m.isMeshMatcapMaterial?(s(g,m),p(g,m)):m.isMeshDepthMaterial?s(g,m):m.isMeshDistanceMaterial?(s(g,m),y(g,m)):m.isMeshNormalMaterial?s(g,m):m.isLineBasicMaterial?(o(g,m),m.isLineDashedMaterial&&a(g,m)):m.isPointsMaterial?l(g,m,x,M):m.isSpriteMaterial?c(g,m):m.isShadowMaterial?(g.color.value.copy(m.color),g.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function s(g,m){g.opacity.value=m.opacity,m.color&&g.diffuse.value.copy(m.color),m.emissive&&g.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(g.map.value=m.map,n(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.bumpMap&&(g.bumpMap.value=m.bumpMap,n(m.bumpMap,g.bumpMapTransform),g.bumpScale.value=m.bumpScale,m.side===Gn&&(g.bumpScale.value*=-1)),m.normalMap&&(g.normalMap.value=m.normalMap,n(m.normalMap,g.normalMapTransform),g.normalScale.value.copy(m.normalScale),m.side===Gn&&g.normalScale.value.negate()),m.displacementMap&&(g.displacementMap.value=m.displacementMap,n(m.displacementMap,g.displacementMapTransform),g.displacementScale.value=m.displacementScale,g.displacementBias.value=m.displacementBias),m.emissiveMap&&(g.emissiveMap.value=m.emissiveMap,n(m.emissiveMap,g.emissiveMapTransform)),m.specularMap&&(g.specularMap.value=m.specularMap,n(m.specularMap,g.specularMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest);let x=t.get(m),M=x.envMap,v=x.envMapRotation;M&&(g.envMap.value=M,g.envMapRotation.value.setFromMatrix4(w6.makeRotationFromEuler(v)).transpose(),M.isCubeTexture&&M.isRenderTargetTexture===!1&&g.envMapRotation.value.premultiply(C3),g.reflectivity.value=m.reflectivity,g.ior.value=m.ior,g.refractionRatio.value=m.refractionRatio),m.lightMap&&(g.lightMap.value=m.lightMap,g.lightMapIntensity.value=m.lightMapIntensity,n(m.lightMap,g.lightMapTransform)),m.aoMap&&(g.aoMap.value=m.aoMap,g.aoMapIntensity.value=m.aoMapIntensity,n(m.aoMap,g.aoMapTransform))}function o(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,m.map&&(g.map.value=m.map,n(m.map,g.mapTransform))}function a(g,m){g.dashSize.value=m.dashSize,g.totalSize.value=m.dashSize+m.gapSize,g.scale.value=m.scale}function l(g,m,x,M){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.size.value=m.size*x,g.scale.value=M*.5,m.map&&(g.map.value=m.map,n(m.map,g.uvTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function c(g,m){g.diffuse.value.copy(m.color),g.opacity.value=m.opacity,g.rotation.value=m.rotation,m.map&&(g.map.value=m.map,n(m.map,g.mapTransform)),m.alphaMap&&(g.alphaMap.value=m.alphaMap,n(m.alphaMap,g.alphaMapTransform)),m.alphaTest>0&&(g.alphaTest.value=m.alphaTest)}function u(g,m){g.specular.value.copy(m.specular),g.shininess.value=Math.max(m.shininess,1e-4)}function h(g,m){m.gradientMap&&(g.gradientMap.value=m.gradientMap)}function f(g,m){g.metalness.value=m.metalness,m.metalnessMap&&(g.metalnessMap.value=m.metalnessMap,n(m.metalnessMap,g.metalnessMapTransform)),g.roughness.value=m.roughness,m.roughnessMap&&(g.roughnessMap.value=m.roughnessMap,n(m.roughnessMap,g.roughnessMapTransform)),m.envMap&&(g.envMapIntensity.value=m.envMapIntensity)}function d(g,m,x){g.ior.value=m.ior,m.diffuseRoughness>0&&(g.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(g.diffuseRoughnessMap.value=m.diffuseRoughnessMap,n(m.diffuseRoughnessMap,g.diffuseRoughnessMapTransform))),m.sheen>0&&(g.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),g.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(g.sheenColorMap.value=m.sheenColorMap,n(m.sheenColorMap,g.sheenColorMapTransform)),m.sheenRoughnessMap&&(g.sheenRoughnessMap.value=m.sheenRoughnessMap,n(m.sheenRoughnessMap,g.sheenRoughnessMapTransform))),m.clearcoat>0&&(g.clearcoat.value=m.clearcoat,g.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(g.clearcoatMap.value=m.clearcoatMap,n(m.clearcoatMap,g.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(g.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,n(m.clearcoatRoughnessMap,g.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(g.clearcoatNormalMap.value=m.clearcoatNormalMap,n(m.clearcoatNormalMap,g.clearcoatNormalMapTransform),g.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===Gn&&g.clearcoatNormalScale.value.negate())),m.dispersion>0&&(g.dispersion.value=m.dispersion),m.retroreflectivity>0&&(g.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(g.iridescence.value=m.iridescence,g.iridescenceIOR.value=m.iridescenceIOR,g.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,g.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(g.iridescenceMap.value=m.iridescenceMap,n(m.iridescenceMap,g.iridescenceMapTransform)),m.iridescenceThicknessMap&&(g.iridescenceThicknessMap.value=m.iridescenceThicknessMap,n(m.iridescenceThicknessMap,g.iridescenceThicknessMapTransform))),m.transmission>0&&(g.transmission.value=m.transmission,g.transmissionSamplerMap.value=x.texture,g.transmissionSamplerSize.value.set(x.width,x.height),m.transmissionMap&&(g.transmissionMap.value=m.transmissionMap,n(m.transmissionMap,g.transmissionMapTransform)),g.thickness.value=m.thickness,m.thicknessMap&&(g.thicknessMap.value=m.thicknessMap,n(m.thicknessMap,g.thicknessMapTransform)),g.attenuationDistance.value=m.attenuationDistance,g.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(g.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(g.anisotropyMap.value=m.anisotropyMap,n(m.anisotropyMap,g.anisotropyMapTransform))),g.specularIntensity.value=m.specularIntensity,g.specularColor.value.copy(m.specularColor),m.specularColorMap&&(g.specularColorMap.value=m.specularColorMap,n(m.specularColorMap,g.specularColorMapTransform)),m.specularIntensityMap&&(g.specularIntensityMap.value=m.specularIntensityMap,n(m.specularIntensityMap,g.specularIntensityMapTransform))}function p(g,m){m.matcap&&(g.matcap.value=m.matcap)}function y(g,m){let x=t.get(m).light;g.referencePosition.value.setFromMatrixPosition(x.matrixWorld),g.nearDistance.value=x.shadow.camera.near,g.farDistance.value=x.shadow.camera.far}return{refreshFogUniforms:i,refreshMaterialUniforms:r}}function E6(e,t,n,i){let r={},s={};function o(x,M){let v=M.program;i.uniformBlockBinding(x,v,r[x.id])}function a(x,M){let v=r[x.id];v===void 0&&(p(x),v=l(x),r[x.id]=v,x.addEventListener("dispose",g));let S=M.program;i.updateUBOMapping(x,S);let b=t.render.frame;s[x.id]!==b&&(c(x),s[x.id]=b)}function l(x){let M=e.createBuffer(),v=x.__size,S=x.usage;return e.bindBuffer(e.UNIFORM_BUFFER,M),e.bufferData(e.UNIFORM_BUFFER,v,S),e.bindBuffer(e.UNIFORM_BUFFER,null),M}function c(x){let M=r[x.id],v=x.uniforms,S=x.__cache;e.bindBuffer(e.UNIFORM_BUFFER,M);for(let b=0,_=v.length;b<_;b++){let w=v[b];if(Array.isArray(w))for(let R=0,A=w.length;R<A;R++)u(w[R],b,R,S);else u(w,b,0,S)}e.bindBuffer(e.UNIFORM_BUFFER,null)}function u(x,M,v,S){if(f(x,M,v,S)===!0){let b=x.__offset,_=x.value;if(Array.isArray(_)){let w=0;for(let R=0;R<_.length;R++){let A=_[R],C=y(A,!0);h(A,x.__data,w),w+=C.storage/Float32Array.BYTES_PER_ELEMENT}}else h(_,x.__data,0);e.bufferSubData(e.UNIFORM_BUFFER,b,x.__data)}}function h(x,M,v){typeof x=="number"||typeof x=="boolean"?M[v]=x:x.isMatrix3?(M[v]=x.elements[0],M[v+1]=x.elements[1],M[v+2]=x.elements[2],M[v+3]=0,M[v+4]=x.elements[3],M[v+5]=x.elements[4],M[v+6]=x.elements[5],M[v+7]=0,M[v+8]=x.elements[6],M[v+9]=x.elements[7],M[v+10]=x.elements[8],M[v+11]=0):ArrayBuffer.isView(x)?M.set(x.subarray(0,M.length-v),v):x.toArray(M,v)}function f(x,M,v,S){let b=x.value,_=M+"_"+v;if(Array.isArray(b)){S[_]===void 0&&(S[_]=[]);let w=S[_],R=!1;for(let A=0;A<b.length;A++)d(b[A],w,A)===!0&&(R=!0);return R}return d(b,S,_)}function d(x,M,v){if(M[v]===void 0)return typeof x=="number"||typeof x=="boolean"?M[v]=x:ArrayBuffer.isView(x)?M[v]=x.slice():M[v]=x.clone(),!0;{let S=M[v];if(typeof x=="number"||typeof x=="boolean"){if(S!==x)return M[v]=x,!0}else{if(ArrayBuffer.isView(x))return!0;if(S.equals(x)===!1)return S.copy(x),!0}}return!1}function p(x){let M=x.uniforms,v=0,S=16;for(let _=0,w=M.length;_<w;_++){let R=Array.isArray(M[_])?M[_]:[M[_]];for(let A=0,C=R.length;A<C;A++){let P=R[A],O=Array.isArray(P.value)?P.value:[P.value],I=Array.isArray(M[_])||Array.isArray(P.value),D=v;for(let U=0,Z=O.length;U<Z;U++){let F=O[U],V=y(F,I),q=v%S,st=q%V.boundary,lt=q+st;v+=st,lt!==0&&S-lt<V.storage&&(v+=S-lt),U===0&&(D=v),v+=V.storage}let k=P.type==="int"?Int32Array:P.type==="uint"?Uint32Array:Float32Array;P.__data=new k((v-D)/Float32Array.BYTES_PER_ELEMENT),P.__offset=D}}let b=v%S;return b>0&&(v+=S-b),x.__size=v,x.__cache={},this}function y(x,M){let v={boundary:0,storage:0};return typeof x=="number"||typeof x=="boolean"?(v.boundary=4,v.storage=4):x.isVector2?(v.boundary=8,v.storage=8):x.isVector3||x.isColor?(v.boundary=16,v.storage=12):x.isVector4?(v.boundary=16,v.storage=16):x.isMatrix3?(v.boundary=16,v.storage=48):x.isMatrix4?(v.boundary=16,v.storage=64):x.isTexture?Ft("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(x)?(v.boundary=16,v.storage=x.byteLength):Ft("WebGLRenderer: Unsupported uniform value type.",x),M===!0&&(v.boundary=16,v.storage=Math.ceil(v.storage/16)*16),v}function g(x){let M=x.target;M.removeEventListener("dispose",g),e.deleteBuffer(r[M.id]),delete r[M.id],delete s[M.id]}function m(){for(let x in r)e.deleteBuffer(r[x]);r={},s={}}return{bind:o,update:a,dispose:m}}var A6=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Tr=null;function C6(){return Tr===null&&(Tr=new Ed(A6,16,16,Qs,Qi),Tr.name="DFG_LUT",Tr.minFilter=kn,Tr.magFilter=kn,Tr.wrapS=Mr,Tr.wrapT=Mr,Tr.generateMipmaps=!1,Tr.needsUpdate=!0),Tr}var Op=class{constructor(t={}){let{canvas:n=W2(),context:i=null,depth:r=!0,stencil:s=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:f=!1,outputBufferType:d=ti}=t;this.isWebGLRenderer=!0;let p;if(i!==null){if(typeof WebGLRenderingContext<"u"&&i instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=i.getContextAttributes().alpha}else p=o;let y=d,g=new Set([ep,tp,Qd]),m=new Set([ti,Ji,Dl,jo,Jd,jd]),x=new Uint32Array(4),M=new Int32Array(4),v={textures:[],min:[],max:[],resolution:[]},S=null,b=null,_=[],w=[],R=null;this.domElement=n,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=wr,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let A=this,C=!1,P=null,O=null,I=null,D=null;this._outputColorSpace=Bn;let k=0,U=0,Z=null,F=-1,V=null,q=new de,st=new de,lt=null,$=new kt(0),at=0,ft=n.width,ot=n.height,rt=1,K=null,gt=null,ct=new de(0,0,ft,ot),J=new de(0,0,ft,ot),It=!1,pt=new Ws,Ot=new Ad,Ht=!1,le=!1,oe=new be,en=new z,Ge=new de,Wn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Cn=!1;function $n(){return Z===null?rt:1}let G=i;function Xn(E,B){return n.getContext(E,B)}let Me,Se,mt,Re,Dt,zt,L,T,H,ut,nt,yt,Mt,Q,tt,_t,N,et,j,vt,dt,xt,Nt;try{let E={alpha:!0,depth:r,stencil:s,antialias:a,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in n&&n.setAttribute("data-engine",`three.js r${"187"}`),n.addEventListener("webglcontextlost",Ut,!1),n.addEventListener("webglcontextrestored",Kt,!1),n.addEventListener("webglcontextcreationerror",Tt,!1),G===null){let B="webgl2";if(G=Xn(B,E),G===null)throw Xn(B)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Jt()}catch(E){throw n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Kt,!1),n.removeEventListener("webglcontextcreationerror",Tt,!1),Gt("WebGLRenderer: "+E.message),E}function Jt(){Me=new kB(G),Me.init(),dt=new b6(G,Me),Se=new CB(G,Me,t,dt),mt=new _6(G,Me),Se.reversedDepthBuffer&&f&&mt.buffers.depth.setReversed(!0),O=G.createFramebuffer(),I=G.createFramebuffer(),D=G.createFramebuffer(),Re=new VB(G),Dt=new s6,zt=new v6(G,Me,mt,Dt,Se,dt,Re),L=new BB(A),T=new WO(G),xt=new EB(G,T),H=new zB(G,T,Re,xt),ut=new WB(G,H,T,xt,Re),et=new HB(G,Se,zt),tt=new RB(Dt),nt=new r6(A,L,Me,Se,xt,tt),yt=new T6(A,Dt),Mt=new a6,Q=new d6(Me),N=new TB(A,L,mt,ut,p,l),_t=new x6(A,ut,Se),Nt=new E6(G,Re,Se,mt),j=new AB(G,Me,Re),vt=new GB(G,Me,Re),Re.programs=nt.programs,A.capabilities=Se,A.extensions=Me,A.properties=Dt,A.renderLists=Mt,A.shadowMap=_t,A.state=mt,A.info=Re}y!==ti&&(R=new XB(y,n.width,n.height,a,r,s));let ht=new tv(A,G);this.xr=ht,this.getContext=function(){return G},this.getContextAttributes=function(){return G.getContextAttributes()},this.forceContextLoss=function(){let E=Me.get("WEBGL_lose_context");E&&E.loseContext()},this.forceContextRestore=function(){let E=Me.get("WEBGL_lose_context");E&&E.restoreContext()},this.getPixelRatio=function(){return rt},this.setPixelRatio=function(E){E!==void 0&&(rt=E,this.setSize(ft,ot,!1))},this.getSize=function(E){return E.set(ft,ot)},this.setSize=function(E,B,Y=!0){if(ht.isPresenting){Ft("WebGLRenderer: Can't change size while VR device is presenting.");return}ft=E,ot=B,n.width=Math.floor(E*rt),n.height=Math.floor(B*rt),Y===!0&&(n.style.width=E+"px",n.style.height=B+"px"),R!==null&&R.setSize(n.width,n.height),this.setViewport(0,0,E,B)},this.getDrawingBufferSize=function(E){return E.set(ft*rt,ot*rt).floor()},this.setDrawingBufferSize=function(E,B,Y){ft=E,ot=B,rt=Y,n.width=Math.floor(E*Y),n.height=Math.floor(B*Y),this.setViewport(0,0,E,B)},this.setEffects=function(E){if(y===ti){Gt("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(E){for(let B=0;B<E.length;B++)if(E[B].isOutputPass===!0){Ft("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}R.setEffects(E||[])},this.getCurrentViewport=function(E){return E.copy(q)},this.getViewport=function(E){return E.copy(ct)},this.setViewport=function(E,B,Y,W){E.isVector4?ct.set(E.x,E.y,E.z,E.w):ct.set(E,B,Y,W),mt.viewport(q.copy(ct).multiplyScalar($n()).round())},this.getScissor=function(E){return E.copy(J)},this.setScissor=function(E,B,Y,W){E.isVector4?J.set(E.x,E.y,E.z,E.w):J.set(E,B,Y,W),mt.scissor(st.copy(J).multiplyScalar($n()).round())},this.getScissorTest=function(){return It},this.setScissorTest=function(E){mt.setScissorTest(It=E)},this.setOpaqueSort=function(E){K=E},this.setTransparentSort=function(E){gt=E},this.getClearColor=function(E){return E.copy(N.getClearColor())},this.setClearColor=function(){N.setClearColor(...arguments)},this.getClearAlpha=function(){return N.getClearAlpha()},this.setClearAlpha=function(){N.setClearAlpha(...arguments)},this.clear=function(E=!0,B=!0,Y=!0){let W=0;if(E){let X=!1;if(Z!==null){let St=Z.texture.format;X=g.has(St)}if(X){let St=Z.texture.type,Ct=m.has(St),bt=N.getClearColor(),At=N.getClearAlpha(),Lt=bt.r,$t=bt.g,ee=bt.b;Ct?(x[0]=Lt,x[1]=$t,x[2]=ee,x[3]=At,G.clearBufferuiv(G.COLOR,0,x)):(M[0]=Lt,M[1]=$t,M[2]=ee,M[3]=At,G.clearBufferiv(G.COLOR,0,M))}else W|=G.COLOR_BUFFER_BIT}B&&(W|=G.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Y&&(W|=G.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),W!==0&&G.clear(W)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(E){E.setRenderer(this),P=E},this.dispose=function(){n.removeEventListener("webglcontextlost",Ut,!1),n.removeEventListener("webglcontextrestored",Kt,!1),n.removeEventListener("webglcontextcreationerror",Tt,!1),N.dispose(),Mt.dispose(),Q.dispose(),zt.dispose(),Dt.dispose(),L.dispose(),ut.dispose(),H.dispose(),xt.dispose(),Nt.dispose(),nt.dispose(),ht.dispose(),ht.removeEventListener("sessionstart",yv),ht.removeEventListener("sessionend",xv),so.stop()};function Ut(E){E.preventDefault(),Jc("WebGLRenderer: Context Lost."),C=!0}function Kt(){Jc("WebGLRenderer: Context Restored."),C=!1;let E=Re.autoReset,B=_t.enabled,Y=_t.autoUpdate,W=_t.needsUpdate,X=_t.type;Jt(),Re.autoReset=E,_t.enabled=B,_t.autoUpdate=Y,_t.needsUpdate=W,_t.type=X}function Tt(E){Gt("WebGLRenderer: A WebGL context could not be created. Reason: ",E.statusMessage)}function pe(E){let B=E.target;B.removeEventListener("dispose",pe),nn(B)}function nn(E){ms(E),Dt.remove(E)}function ms(E){let B=Dt.get(E).programs;B!==void 0&&(B.forEach(function(Y){nt.releaseProgram(Y)}),E.isShaderMaterial&&nt.releaseShaderCache(E))}this.renderBufferDirect=function(E,B,Y,W,X,St){B===null&&(B=Wn);let Ct=X.isMesh&&X.matrixWorld.determinantAffine()<0,bt=eC(E,B,Y,W,X);mt.setMaterial(W,Ct);let At=Y.index,Lt=1;if(W.wireframe===!0){if(At=H.getWireframeAttribute(Y),At===void 0)return;Lt=2}let $t=Y.drawRange,ee=Y.attributes.position,Rt=$t.start*Lt,ne=($t.start+$t.count)*Lt;St!==null&&(Rt=Math.max(Rt,St.start*Lt),ne=Math.min(ne,(St.start+St.count)*Lt)),At!==null?(Rt=Math.max(Rt,0),ne=Math.min(ne,At.count)):ee!=null&&(Rt=Math.max(Rt,0),ne=Math.min(ne,ee.count));let Ve=ne-Rt;if(Ve<0||Ve===1/0)return;xt.setup(X,W,bt,Y,At);let we,_e=j;if(At!==null&&(we=T.get(At),_e=vt,_e.setIndex(we)),X.isMesh)W.wireframe===!0?(mt.setLineWidth(W.wireframeLinewidth*$n()),_e.setMode(G.LINES)):_e.setMode(G.TRIANGLES);else if(X.isLine){let _n=W.linewidth;_n===void 0&&(_n=1),mt.setLineWidth(_n*$n()),X.isLineSegments?_e.setMode(G.LINES):X.isLineLoop?_e.setMode(G.LINE_LOOP):_e.setMode(G.LINE_STRIP)}else X.isPoints?_e.setMode(G.POINTS):X.isSprite&&_e.setMode(G.TRIANGLES);if(X.isBatchedMesh)if(Me.get("WEBGL_multi_draw"))_e.renderMultiDraw(X._multiDrawStarts,X._multiDrawCounts,X._multiDrawCount);else{let _n=X._multiDrawStarts,Pt=X._multiDrawCounts,Rn=X._multiDrawCount,ce=At?T.get(At).bytesPerElement:1,oo=Dt.get(W).currentProgram.getUniforms();for(let vn=0;vn<Rn;vn++)oo.setValue(G,"_gl_DrawID",vn),_e.render(_n[vn]/ce,Pt[vn])}else if(X.isInstancedMesh)_e.renderInstances(Rt,Ve,X.count);else if(Y.isInstancedBufferGeometry){let _n=Y._maxInstanceCount!==void 0?Y._maxInstanceCount:1/0,Pt=Math.min(Y.instanceCount,_n);_e.renderInstances(Rt,Ve,Pt)}else _e.render(Rt,Ve)};function gv(E,B,Y,W){P!==null&&E.isNodeMaterial&&P.setObject(W,E),Ht===!0&&tt.setState(E,Y,!1),E.transparent===!0&&E.side===Ni&&E.forceSinglePass===!1?(E.side=Gn,E.needsUpdate=!0,Ol(E,B,W),E.side=js,E.needsUpdate=!0,Ol(E,B,W),E.side=Ni):Ol(E,B,W)}this.compile=function(E,B,Y=null){Y===null&&(Y=E),P!==null&&P.renderStart(E,B,Y),b=Q.get(Y),b.init(B),w.push(b),Y.traverseVisible(function(X){X.isLight&&X.layers.test(B.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),E!==Y&&E.traverseVisible(function(X){X.isLight&&X.layers.test(B.layers)&&(b.pushLight(X),X.castShadow&&b.pushShadow(X))}),b.setupLights(),P!==null&&P.updateLights(b.state.lightsArray),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),Ht===!0&&tt.setGlobalState(this.clippingPlanes,B),P!==null&&_t.render(b.state.shadowsArray,Y,B);let W=new Set;return E.traverse(function(X){if(!(X.isMesh||X.isPoints||X.isLine||X.isSprite))return;let St=X.material;if(St)if(Array.isArray(St))for(let Ct=0;Ct<St.length;Ct++){let bt=St[Ct];gv(bt,Y,B,X),W.add(bt)}else gv(St,Y,B,X),W.add(St)}),b=w.pop(),P!==null&&P.renderEnd(),W},this.compileAsync=function(E,B,Y=null){let W=this.compile(E,B,Y);return new Promise(X=>{function St(){if(W.forEach(function(Ct){let At=Dt.get(Ct).currentProgram;(At===void 0||At.isReady())&&W.delete(Ct)}),W.size===0){X(E);return}setTimeout(St,10)}Me.get("KHR_parallel_shader_compile")!==null?St():setTimeout(St,10)})};let jp=null;function Q3(E){jp&&jp(E)}function yv(){so.stop()}function xv(){so.start()}let so=new x3;so.setAnimationLoop(Q3),typeof self<"u"&&so.setContext(self),this.setAnimationLoop=function(E){jp=E,ht.setAnimationLoop(E),E===null?so.stop():so.start()},ht.addEventListener("sessionstart",yv),ht.addEventListener("sessionend",xv),this.render=function(E,B){if(B!==void 0&&B.isCamera!==!0){Gt("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(C===!0)return;P!==null&&P.renderStart(E,B);let Y=ht.enabled===!0&&ht.isPresenting===!0,W=R!==null&&(Z===null||Y)&&R.begin(A,Z);if(E.matrixWorldAutoUpdate===!0&&E.updateMatrixWorld(),B.parent===null&&B.matrixWorldAutoUpdate===!0&&B.updateMatrixWorld(),ht.enabled===!0&&ht.isPresenting===!0&&(R===null||R.isCompositing()===!1)&&(ht.cameraAutoUpdate===!0&&ht.updateCamera(B),B=ht.getCamera()),E.isScene===!0&&E.onBeforeRender(A,E,B,Z),b=Q.get(E,w.length),b.init(B),b.state.textureUnits=zt.getTextureUnits(),w.push(b),oe.multiplyMatrices(B.projectionMatrix,B.matrixWorldInverse),B.isArrayCamera?Ot.setFromArrayCamera(B):pt.setFromProjectionMatrix(oe,Li,B.reversedDepth),le=this.localClippingEnabled,Ht=tt.init(this.clippingPlanes,le),S=Mt.get(E,_.length),S.init(),_.push(S),this.info.render.frame++,ht.enabled===!0&&ht.isPresenting===!0){let Ct=A.xr.getDepthSensingMesh();Ct!==null&&Qp(Ct,B,-1/0,A.sortObjects)}Qp(E,B,0,A.sortObjects),S.finish(),P!==null&&P.updateLights(b.state.lightsArray),A.sortObjects===!0&&S.sort(K,gt),Cn=ht.enabled===!1||ht.isPresenting===!1||ht.hasDepthSensing()===!1,Cn&&N.addToRenderList(S,E),this.info.autoReset===!0&&this.info.reset(),Ht===!0&&tt.beginShadows();let X=b.state.shadowsArray;if(_t.render(X,E,B),Ht===!0&&tt.endShadows(),(W&&R.hasRenderPass())===!1){let Ct=S.opaque,bt=S.transmissive;if(b.setupLights(),B.isArrayCamera){let At=B.cameras;if(bt.length>0)for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];vv(Ct,bt,E,ee)}Cn&&N.render(E);for(let Lt=0,$t=At.length;Lt<$t;Lt++){let ee=At[Lt];_v(S,E,ee,ee.viewport)}}else bt.length>0&&vv(Ct,bt,E,B),Cn&&N.render(E),_v(S,E,B)}Z!==null&&U===0&&(zt.updateMultisampleRenderTarget(Z),zt.updateRenderTargetMipmap(Z)),W&&R.end(A),E.isScene===!0&&E.onAfterRender(A,E,B),xt.resetDefaultState(),F=-1,V=null,w.pop(),w.length>0?(b=w[w.length-1],zt.setTextureUnits(b.state.textureUnits),Ht===!0&&tt.setGlobalState(A.clippingPlanes,b.state.camera)):b=null,_.pop(),_.length>0?S=_[_.length-1]:S=null,P!==null&&P.renderEnd()};function Qp(E,B,Y,W){if(E.visible===!1)return;if(E.layers.test(B.layers)){if(E.isGroup)Y=E.renderOrder;else if(E.isLOD)E.autoUpdate===!0&&E.update(B);else if(E.isLight)b.pushLight(E),E.castShadow&&b.pushShadow(E);else if(E.isSprite){let Ct=B.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){W&&Ge.setFromMatrixPosition(E.matrixWorld).applyMatrix4(oe);let bt=ut.update(E),At=E.material;At.visible&&S.push(E,bt,At,Y,Ge.z,null,B)}}else if(E.isMesh||E.isLine||E.isPoints){let Ct=B.isArrayCamera?Ot:pt;if(!E.frustumCulled||E.intersectsFrustum(Ct)){let bt=ut.update(E),At=E.material;if(W&&(E.boundingSphere!==void 0?(E.boundingSphere===null&&E.computeBoundingSphere(),Ge.copy(E.boundingSphere.center)):(bt.boundingSphere===null&&bt.computeBoundingSphere(),Ge.copy(bt.boundingSphere.center)),Ge.applyMatrix4(E.matrixWorld).applyMatrix4(oe)),Array.isArray(At)){let Lt=bt.groups;for(let $t=0,ee=Lt.length;$t<ee;$t++){let Rt=Lt[$t],ne=At[Rt.materialIndex];ne&&ne.visible&&S.push(E,bt,ne,Y,Ge.z,Rt,B)}}else At.visible&&S.push(E,bt,At,Y,Ge.z,null,B)}}}let St=E.children;for(let Ct=0,bt=St.length;Ct<bt;Ct++)Qp(St[Ct],B,Y,W)}function _v(E,B,Y,W){let{opaque:X,transmissive:St,transparent:Ct}=E;b.setupLightsView(Y),Ht===!0&&tt.setGlobalState(A.clippingPlanes,Y),W&&mt.viewport(q.copy(W)),X.length>0&&Pu(X,B,Y),St.length>0&&Pu(St,B,Y),Ct.length>0&&Pu(Ct,B,Y),mt.buffers.depth.setTest(!0),mt.buffers.depth.setMask(!0),mt.buffers.color.setMask(!0),mt.setPolygonOffset(!1)}function vv(E,B,Y,W){if((Y.isScene===!0?Y.overrideMaterial:null)!==null)return;if(b.state.transmissionRenderTarget[W.id]===void 0){let Rt=Me.has("EXT_color_buffer_half_float")||Me.has("EXT_color_buffer_float");b.state.transmissionRenderTarget[W.id]=new zn(1,1,{generateMipmaps:!0,type:Rt?Qi:ti,minFilter:fs,samples:Math.max(4,Se.samples),stencilBuffer:s,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ie.workingColorSpace})}let St=b.state.transmissionRenderTarget[W.id],Ct=W.viewport||q;St.setSize(Ct.z*A.transmissionResolutionScale,Ct.w*A.transmissionResolutionScale);let bt=A.getRenderTarget(),At=A.getActiveCubeFace(),Lt=A.getActiveMipmapLevel();A.setRenderTarget(St),A.getClearColor($),at=A.getClearAlpha(),at<1&&A.setClearColor(16777215,.5),A.clear(),Cn&&N.render(Y);let $t=A.toneMapping;A.toneMapping=wr;let ee=W.viewport;if(W.viewport!==void 0&&(W.viewport=void 0),b.setupLightsView(W),Ht===!0&&tt.setGlobalState(A.clippingPlanes,W),Pu(E,Y,W),zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St),Me.has("WEBGL_multisampled_render_to_texture")===!1){let Rt=!1;for(let ne=0,Ve=B.length;ne<Ve;ne++){let we=B[ne],{object:_e,geometry:_n,material:Pt,group:Rn}=we;if(Pt.side===Ni&&_e.layers.test(W.layers)){let ce=Pt.side;Pt.side=Gn,Pt.needsUpdate=!0,bv(_e,Y,W,_n,Pt,Rn),Pt.side=ce,Pt.needsUpdate=!0,Rt=!0}}Rt===!0&&(zt.updateMultisampleRenderTarget(St),zt.updateRenderTargetMipmap(St))}A.setRenderTarget(bt,At,Lt),A.setClearColor($,at),ee!==void 0&&(W.viewport=ee),A.toneMapping=$t}function Pu(E,B,Y){let W=B.isScene===!0?B.overrideMaterial:null;for(let X=0,St=E.length;X<St;X++){let Ct=E[X],{object:bt,geometry:At,group:Lt}=Ct,$t=Ct.material;$t.allowOverride===!0&&W!==null&&($t=W),bt.layers.test(Y.layers)&&bv(bt,B,Y,At,$t,Lt)}}function bv(E,B,Y,W,X,St){P!==null&&X.isNodeMaterial&&P.setObject(E,X),E.onBeforeRender(A,B,Y,W,X,St),E.modelViewMatrix.multiplyMatrices(Y.matrixWorldInverse,E.matrixWorld),E.normalMatrix.getNormalMatrix(E.modelViewMatrix),X.onBeforeRender(A,B,Y,W,E,St),X.transparent===!0&&X.side===Ni&&X.forceSinglePass===!1?(X.side=Gn,X.needsUpdate=!0,A.renderBufferDirect(Y,B,W,X,E,St),X.side=js,X.needsUpdate=!0,A.renderBufferDirect(Y,B,W,X,E,St),X.side=Ni):A.renderBufferDirect(Y,B,W,X,E,St),E.onAfterRender(A,B,Y,W,X,St)}function Mv(E){let B=0;for(let Y of E)Y.texture!==null&&B++;return B}function Ol(E,B,Y){B.isScene!==!0&&(B=Wn);let W=Dt.get(E),X=b.state.lights,St=b.state.shadowsArray,Ct=X.state.version,bt=nt.getParameters(E,X.state,St,B,Y,b.state.lightProbeGridArray),At=nt.getProgramCacheKey(bt),Lt=W.programs;W.environment=E.isMeshStandardMaterial||E.isMeshLambertMaterial||E.isMeshPhongMaterial?B.environment:null,W.fog=B.fog;let $t=E.isMeshStandardMaterial||E.isMeshLambertMaterial&&!E.envMap||E.isMeshPhongMaterial&&!E.envMap;W.envMap=L.get(E.envMap||W.environment,$t),W.envMapRotation=W.environment!==null&&E.envMap===null?B.environmentRotation:E.envMapRotation,Lt===void 0&&(E.addEventListener("dispose",pe),Lt=new Map,W.programs=Lt,W.programVariants=new Map);let ee=Lt.get(At);if(ee!==void 0){if(W.currentProgram===ee&&W.lightsStateVersion===Ct)return wv(E,bt),ee}else bt.uniforms=nt.getUniforms(E),P!==null&&E.isNodeMaterial&&P.build(E,Y,bt),E.onBeforeCompile(bt,A),ee=nt.acquireProgram(bt,At),Lt.set(At,ee),W.uniforms=bt.uniforms;let Rt=W.uniforms;return(!E.isShaderMaterial&&!E.isRawShaderMaterial||E.clipping===!0)&&(Rt.clippingPlanes=tt.uniform),wv(E,bt),W.needsLights=iC(E),W.lightsStateVersion=Ct,W.needsLights&&(Rt.ambientLightColor.value=X.state.ambient,Rt.lightProbe.value=X.state.probe,Rt.sunLights.value=X.state.sun,Rt.sunLightShadows.value=X.state.sunShadow,Rt.directionalLights.value=X.state.directional,Rt.directionalLightShadows.value=X.state.directionalShadow,Rt.spotLights.value=X.state.spot,Rt.spotLightShadows.value=X.state.spotShadow,Rt.rectAreaLights.value=X.state.rectArea,Rt.ltc_1.value=X.state.rectAreaLTC1,Rt.ltc_2.value=X.state.rectAreaLTC2,Rt.pointLights.value=X.state.point,Rt.pointLightShadows.value=X.state.pointShadow,Rt.hemisphereLights.value=X.state.hemi,Rt.sunShadowMatrix.value=X.state.sunShadowMatrix,Rt.sunShadowCascade.value=X.state.sunShadowCascade,Rt.directionalShadowMatrix.value=X.state.directionalShadowMatrix,Rt.spotLightMatrix.value=X.state.spotLightMatrix,Rt.spotLightMap.value=X.state.spotLightMap,Rt.pointShadowMatrix.value=X.state.pointShadowMatrix),W.numLightProbeGrids=Mv(b.state.lightProbeGridArray),W.currentProgram=ee,W.uniformsList=null,ee}function tC(E,B,Y,W,X){let St=Dt.get(E),Ct=St.currentProgram.id+","+W+","+X,bt=St.programVariants.get(Ct);return bt===void 0?(bt=Ol(E,B,Y),St.programVariants.set(Ct,bt)):(St.currentProgram=bt,St.uniformsList=null,St.outputColorSpace=W,St.toneMapping=X),bt}function Sv(E){if(E.uniformsList===null){let B=E.currentProgram.getUniforms();E.uniformsList=Nl.seqWithValue(B.seq,E.uniforms)}return E.uniformsList}function wv(E,B){let Y=Dt.get(E);Y.outputColorSpace=B.outputColorSpace,Y.batching=B.batching,Y.batchingColor=B.batchingColor,Y.instancing=B.instancing,Y.instancingColor=B.instancingColor,Y.instancingMorph=B.instancingMorph,Y.skinning=B.skinning,Y.morphTargets=B.morphTargets,Y.morphNormals=B.morphNormals,Y.morphColors=B.morphColors,Y.morphTargetsCount=B.morphTargetsCount,Y.numClippingPlanes=B.numClippingPlanes,Y.numIntersection=B.numClipIntersection,Y.vertexAlphas=B.vertexAlphas,Y.vertexTangents=B.vertexTangents,Y.toneMapping=B.toneMapping}function eC(E,B,Y,W,X){B.isScene!==!0&&(B=Wn),zt.resetTextureUnits();let St=B.fog,Ct=W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial?B.environment:null,bt=Z===null?A.outputColorSpace:Z.isXRRenderTarget===!0?Z.texture.colorSpace:ie.workingColorSpace,At=W.isMeshStandardMaterial||W.isMeshLambertMaterial&&!W.envMap||W.isMeshPhongMaterial&&!W.envMap,Lt=L.get(W.envMap||Ct,At),$t=W.vertexColors===!0&&!!Y.attributes.color&&Y.attributes.color.itemSize===4,ee=!!Y.attributes.tangent&&(!!W.normalMap||W.anisotropy>0),Rt=!!Y.morphAttributes.position,ne=!!Y.morphAttributes.normal,Ve=!!Y.morphAttributes.color,we=wr;W.toneMapped&&(Z===null||Z.isXRRenderTarget===!0)&&(we=A.toneMapping);let _e=Y.morphAttributes.position||Y.morphAttributes.normal||Y.morphAttributes.color,_n=_e!==void 0?_e.length:0,Pt=Dt.get(W),Rn=b.state.lights;if(Ht===!0&&(le===!0||E!==V)){let Ce=E===V&&W.id===F;tt.setState(W,E,Ce)}let ce=!1,oo=!1;W.version===Pt.__version?Pt.needsLights&&Pt.lightsStateVersion!==Rn.state.version||X.isBatchedMesh&&Pt.batching===!1||!X.isBatchedMesh&&Pt.batching===!0||X.isBatchedMesh&&Pt.batchingColor===!0&&X._colorsTexture===null||X.isBatchedMesh&&Pt.batchingColor===!1&&X._colorsTexture!==null||X.isInstancedMesh&&Pt.instancing===!1||!X.isInstancedMesh&&Pt.instancing===!0||X.isSkinnedMesh&&Pt.skinning===!1||!X.isSkinnedMesh&&Pt.skinning===!0||X.isInstancedMesh&&Pt.instancingColor===!0&&X.instanceColor===null||X.isInstancedMesh&&Pt.instancingColor===!1&&X.instanceColor!==null||X.isInstancedMesh&&Pt.instancingMorph===!0&&X.morphTexture===null||X.isInstancedMesh&&Pt.instancingMorph===!1&&X.morphTexture!==null||Pt.envMap!==Lt||W.fog===!0&&Pt.fog!==St||Pt.numClippingPlanes!==void 0&&(Pt.numClippingPlanes!==tt.numPlanes||Pt.numIntersection!==tt.numIntersection)||Pt.vertexAlphas!==$t||Pt.vertexTangents!==ee||Pt.morphTargets!==Rt||Pt.morphNormals!==ne||Pt.morphColors!==Ve||Pt.morphTargetsCount!==_n||Pt.numLightProbeGrids!==Mv(b.state.lightProbeGridArray)?ce=!0:(Pt.outputColorSpace!==bt||Pt.toneMapping!==we)&&(oo=!0):(ce=!0,Pt.__version=W.version);let vn=Pt.currentProgram;(ce===!0||oo===!0)&&(vn=oo===!0?tC(W,B,X,bt,we):Ol(W,B,X),P&&W.isNodeMaterial&&P.onUpdateProgram(W,vn,Pt));let Iu=!1,gs=!1,ao=!1,re=vn.getUniforms(),dn=Pt.uniforms;if(mt.useProgram(vn.program)&&(Iu=!0,gs=!0,ao=!0),W.id!==F&&(F=W.id,gs=!0),Iu||V!==E){mt.buffers.depth.getReversed()&&E.reversedDepth!==!0&&(E._reversedDepth=!0,E.updateProjectionMatrix()),re.setValue(G,"projectionMatrix",E.projectionMatrix),re.setValue(G,"viewMatrix",E.matrixWorldInverse);let rn=re.map.cameraPosition;rn!==void 0&&rn.setValue(G,en.setFromMatrixPosition(E.matrixWorld)),Se.logarithmicDepthBuffer&&re.setValue(G,"logDepthBufFC",2/(Math.log(E.far+1)/Math.LN2)),(W.isMeshPhongMaterial||W.isMeshToonMaterial||W.isMeshLambertMaterial||W.isMeshBasicMaterial||W.isMeshStandardMaterial||W.isShaderMaterial)&&re.setValue(G,"isOrthographic",E.isOrthographicCamera===!0),V!==E&&(V=E,gs=!0,ao=!0)}if(Pt.needsLights&&(Rn.state.sunShadowMap.length>0&&re.setValue(G,"sunShadowMap",Rn.state.sunShadowMap,zt),Rn.state.directionalShadowMap.length>0&&re.setValue(G,"directionalShadowMap",Rn.state.directionalShadowMap,zt),Rn.state.spotShadowMap.length>0&&re.setValue(G,"spotShadowMap",Rn.state.spotShadowMap,zt),Rn.state.pointShadowMap.length>0&&re.setValue(G,"pointShadowMap",Rn.state.pointShadowMap,zt)),X.isSkinnedMesh){re.setOptional(G,X,"bindMatrix"),re.setOptional(G,X,"bindMatrixInverse");let Ce=X.skeleton;Ce&&(Ce.boneTexture===null&&Ce.computeBoneTexture(),re.setValue(G,"boneTexture",Ce.boneTexture,zt))}X.isBatchedMesh&&(re.setOptional(G,X,"batchingTexture"),re.setValue(G,"batchingTexture",X._matricesTexture,zt),re.setOptional(G,X,"batchingIdTexture"),re.setValue(G,"batchingIdTexture",X._indirectTexture,zt),re.setOptional(G,X,"batchingColorTexture"),X._colorsTexture!==null&&re.setValue(G,"batchingColorTexture",X._colorsTexture,zt));let Ui=Y.morphAttributes;if((Ui.position!==void 0||Ui.normal!==void 0||Ui.color!==void 0)&&et.update(X,Y,vn),(gs||Pt.receiveShadow!==X.receiveShadow)&&(Pt.receiveShadow=X.receiveShadow,re.setValue(G,"receiveShadow",X.receiveShadow)),(W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial)&&W.envMap===null&&B.environment!==null&&(dn.envMapIntensity.value=B.environmentIntensity),dn.dfgLUT!==void 0&&(dn.dfgLUT.value=C6()),gs){if(re.setValue(G,"toneMappingExposure",A.toneMappingExposure),Pt.needsLights&&nC(dn,ao),St&&W.fog===!0&&yt.refreshFogUniforms(dn,St),yt.refreshMaterialUniforms(dn,W,rt,ot,b.state.transmissionRenderTarget[E.id]),Pt.needsLights&&Pt.numLightProbeGrids>0){let Ce=v,rn=0;for(let Pr of b.state.lightProbeGridArray)Pr.texture!==null&&(Ce.textures[rn]=Pr.texture,Ce.min[rn]=Pr.boundingBox.min,Ce.max[rn]=Pr.boundingBox.max,Ce.resolution[rn]=Pr.resolution,rn++);for(let Pr in Ce)Ce[Pr].length=rn;dn.probesSH.value=Ce.textures,dn.probesMin.value=Ce.min,dn.probesMax.value=Ce.max,dn.probesResolution.value=Ce.resolution}Nl.upload(G,Sv(Pt),dn,zt)}if(W.isShaderMaterial&&W.uniformsNeedUpdate===!0&&(Nl.upload(G,Sv(Pt),dn,zt),W.uniformsNeedUpdate=!1),W.isSpriteMaterial&&re.setValue(G,"center",X.center),re.setValue(G,"modelViewMatrix",X.modelViewMatrix),re.setValue(G,"normalMatrix",X.normalMatrix),re.setValue(G,"modelMatrix",X.matrixWorld),W.uniformsGroups!==void 0){let Ce=W.uniformsGroups;for(let rn=0,Pr=Ce.length;rn<Pr;rn++){let Ev=Ce[rn];Nt.update(Ev,vn),Nt.bind(Ev,vn)}}return vn}function nC(E,B){E.ambientLightColor.needsUpdate=B,E.lightProbe.needsUpdate=B,E.sunLights.needsUpdate=B,E.sunLightShadows.needsUpdate=B,E.directionalLights.needsUpdate=B,E.directionalLightShadows.needsUpdate=B,E.pointLights.needsUpdate=B,E.pointLightShadows.needsUpdate=B,E.spotLights.needsUpdate=B,E.spotLightShadows.needsUpdate=B,E.rectAreaLights.needsUpdate=B,E.hemisphereLights.needsUpdate=B}function iC(E){return E.isMeshLambertMaterial||E.isMeshToonMaterial||E.isMeshPhongMaterial||E.isMeshStandardMaterial||E.isShadowMaterial||E.isShaderMaterial&&E.lights===!0}this.getActiveCubeFace=function(){return k},this.getActiveMipmapLevel=function(){return U},this.getRenderTarget=function(){return Z},this.setRenderTargetTextures=function(E,B,Y){let W=Dt.get(E);W.__autoAllocateDepthBuffer=E.resolveDepthBuffer===!1,W.__autoAllocateDepthBuffer===!1&&(W.__useRenderToTexture=!1),Dt.get(E.texture).__webglTexture=B,Dt.get(E.depthTexture).__webglTexture=W.__autoAllocateDepthBuffer?void 0:Y,W.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(E,B){let Y=Dt.get(E);Y.__webglFramebuffer=B,Y.__useDefaultFramebuffer=B===void 0},this.setRenderTarget=function(E,B=0,Y=0){Z=E,k=B,U=Y;let W=null,X=!1,St=!1;if(E){let bt=Dt.get(E);if(bt.__useDefaultFramebuffer!==void 0){mt.bindFramebuffer(G.FRAMEBUFFER,bt.__webglFramebuffer),q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest,mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),F=-1;return}else if(bt.__webglFramebuffer===void 0)zt.setupRenderTarget(E);else if(bt.__hasExternalTextures)zt.rebindTextures(E,Dt.get(E.texture).__webglTexture,Dt.get(E.depthTexture).__webglTexture);else if(E.depthBuffer){let $t=E.depthTexture;if(bt.__boundDepthTexture!==$t){if($t!==null&&Dt.has($t)&&(E.width!==$t.image.width||E.height!==$t.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");zt.setupDepthRenderbuffer(E)}}let At=E.texture;(At.isData3DTexture||At.isDataArrayTexture||At.isCompressedArrayTexture)&&(St=!0);let Lt=Dt.get(E).__webglFramebuffer;E.isWebGLCubeRenderTarget?(Array.isArray(Lt[B])?W=Lt[B][Y]:W=Lt[B],X=!0):E.samples>0&&zt.useMultisampledRTT(E)===!1?W=Dt.get(E).__webglMultisampledFramebuffer:Array.isArray(Lt)?W=Lt[Y]:W=Lt,q.copy(E.viewport),st.copy(E.scissor),lt=E.scissorTest}else q.copy(ct).multiplyScalar(rt).floor(),st.copy(J).multiplyScalar(rt).floor(),lt=It;if(Y!==0&&(W=O),mt.bindFramebuffer(G.FRAMEBUFFER,W)&&mt.drawBuffers(E,W),mt.viewport(q),mt.scissor(st),mt.setScissorTest(lt),X){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_CUBE_MAP_POSITIVE_X+B,bt.__webglTexture,Y)}else if(St){let bt=B;for(let At=0;At<E.textures.length;At++){let Lt=Dt.get(E.textures[At]);G.framebufferTextureLayer(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0+At,Lt.__webglTexture,Y,bt)}}else if(E!==null&&Y!==0){let bt=Dt.get(E.texture);G.framebufferTexture2D(G.FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,bt.__webglTexture,Y)}F=-1};function Tv(E){let B=Dt.get(E);return(B.__readFormat!==E.format||B.__readType!==E.type)&&(B.__readFormat=E.format,B.__readType=E.type,B.__formatReadable=Se.textureFormatReadable(E.format),B.__typeReadable=Se.textureTypeReadable(E.type)),B}this.readRenderTargetPixels=function(E,B,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget)){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At){mt.bindFramebuffer(G.FRAMEBUFFER,At);try{let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=Tv(Lt);if(Rt.__formatReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Rt.__typeReadable===!1){Gt("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}B>=0&&B<=E.width-W&&Y>=0&&Y<=E.height-X&&G.readPixels(B,Y,W,X,dt.convert($t),dt.convert(ee),St)}finally{let Lt=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Lt)}}},this.readRenderTargetPixelsAsync=async function(E,B,Y,W,X,St,Ct,bt=0){if(!(E&&E.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let At=Dt.get(E).__webglFramebuffer;if(E.isWebGLCubeRenderTarget&&Ct!==void 0&&(At=At[Ct],Array.isArray(At)&&(At=At[0])),At)if(B>=0&&B<=E.width-W&&Y>=0&&Y<=E.height-X){mt.bindFramebuffer(G.FRAMEBUFFER,At);let Lt=E.textures[bt],$t=Lt.format,ee=Lt.type;E.textures.length>1&&G.readBuffer(G.COLOR_ATTACHMENT0+bt);let Rt=Tv(Lt);if(Rt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Rt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let ne=G.createBuffer();G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.bufferData(G.PIXEL_PACK_BUFFER,St.byteLength,G.STREAM_READ),G.readPixels(B,Y,W,X,dt.convert($t),dt.convert(ee),0),G.bindBuffer(G.PIXEL_PACK_BUFFER,null);let Ve=Z!==null?Dt.get(Z).__webglFramebuffer:null;mt.bindFramebuffer(G.FRAMEBUFFER,Ve);let we=G.fenceSync(G.SYNC_GPU_COMMANDS_COMPLETE,0);return G.flush(),await X2(G,we,4),G.bindBuffer(G.PIXEL_PACK_BUFFER,ne),G.getBufferSubData(G.PIXEL_PACK_BUFFER,0,St),G.bindBuffer(G.PIXEL_PACK_BUFFER,null),G.deleteBuffer(ne),G.deleteSync(we),St}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(E,B=null,Y=0){let W=Math.pow(2,-Y),X=Math.floor(E.image.width*W),St=Math.floor(E.image.height*W),Ct=B!==null?B.x:0,bt=B!==null?B.y:0;zt.setTexture2D(E,0),G.copyTexSubImage2D(G.TEXTURE_2D,Y,0,0,Ct,bt,X,St),mt.unbindTexture()},this.copyTextureToTexture=function(E,B,Y=null,W=null,X=0,St=0){let Ct,bt,At,Lt,$t,ee,Rt,ne,Ve,we=E.isCompressedTexture?E.mipmaps[St]:E.image;if(Y!==null)Ct=Y.max.x-Y.min.x,bt=Y.max.y-Y.min.y,At=Y.isBox3?Y.max.z-Y.min.z:1,Lt=Y.min.x,$t=Y.min.y,ee=Y.isBox3?Y.min.z:0;else{let re=Math.pow(2,-X);Ct=Math.floor(we.width*re),bt=Math.floor(we.height*re),E.isDataArrayTexture?At=we.depth:E.isData3DTexture?At=Math.floor(we.depth*re):At=1,Lt=0,$t=0,ee=0}W!==null?(Rt=W.x,ne=W.y,Ve=W.z):(Rt=0,ne=0,Ve=0);let _e=dt.convert(B.format),_n=dt.convert(B.type),Pt;B.isData3DTexture?(zt.setTexture3D(B,0),Pt=G.TEXTURE_3D):B.isDataArrayTexture||B.isCompressedArrayTexture?(zt.setTexture2DArray(B,0),Pt=G.TEXTURE_2D_ARRAY):(zt.setTexture2D(B,0),Pt=G.TEXTURE_2D),mt.activeTexture(G.TEXTURE0),mt.pixelStorei(G.UNPACK_FLIP_Y_WEBGL,B.flipY),mt.pixelStorei(G.UNPACK_PREMULTIPLY_ALPHA_WEBGL,B.premultiplyAlpha),mt.pixelStorei(G.UNPACK_ALIGNMENT,B.unpackAlignment);let Rn=mt.getParameter(G.UNPACK_ROW_LENGTH),ce=mt.getParameter(G.UNPACK_IMAGE_HEIGHT),oo=mt.getParameter(G.UNPACK_SKIP_PIXELS),vn=mt.getParameter(G.UNPACK_SKIP_ROWS),Iu=mt.getParameter(G.UNPACK_SKIP_IMAGES);mt.pixelStorei(G.UNPACK_ROW_LENGTH,we.width),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,we.height),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,Lt),mt.pixelStorei(G.UNPACK_SKIP_ROWS,$t),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,ee);let gs=E.isDataArrayTexture||E.isData3DTexture,ao=B.isDataArrayTexture||B.isData3DTexture;if(E.isDepthTexture){let re=Dt.get(E),dn=Dt.get(B),Ui=Dt.get(re.__renderTarget),Ce=Dt.get(dn.__renderTarget);mt.bindFramebuffer(G.READ_FRAMEBUFFER,Ui.__webglFramebuffer),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,Ce.__webglFramebuffer);for(let rn=0;rn<At;rn++)gs&&(G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(E).__webglTexture,X,ee+rn),G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,Dt.get(B).__webglTexture,St,Ve+rn)),G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.DEPTH_BUFFER_BIT,G.NEAREST);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else if(X!==0||E.isRenderTargetTexture||Dt.has(E)){let re=Dt.get(E),dn=Dt.get(B);mt.bindFramebuffer(G.READ_FRAMEBUFFER,I),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,D);for(let Ui=0;Ui<At;Ui++)gs?G.framebufferTextureLayer(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,re.__webglTexture,X,ee+Ui):G.framebufferTexture2D(G.READ_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,re.__webglTexture,X),ao?G.framebufferTextureLayer(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,dn.__webglTexture,St,Ve+Ui):G.framebufferTexture2D(G.DRAW_FRAMEBUFFER,G.COLOR_ATTACHMENT0,G.TEXTURE_2D,dn.__webglTexture,St),X!==0?G.blitFramebuffer(Lt,$t,Lt+Ct,$t+bt,Rt,ne,Rt+Ct,ne+bt,G.COLOR_BUFFER_BIT,G.NEAREST):ao?G.copyTexSubImage3D(Pt,St,Rt,ne,Ve+Ui,Lt,$t,Ct,bt):G.copyTexSubImage2D(Pt,St,Rt,ne,Lt,$t,Ct,bt);mt.bindFramebuffer(G.READ_FRAMEBUFFER,null),mt.bindFramebuffer(G.DRAW_FRAMEBUFFER,null)}else ao?E.isDataTexture||E.isData3DTexture?G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,_e,_n,we.data):B.isCompressedArrayTexture?G.compressedTexSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,_e,we.data):G.texSubImage3D(Pt,St,Rt,ne,Ve,Ct,bt,At,_e,_n,we):E.isDataTexture?G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,_e,_n,we.data):E.isCompressedTexture?G.compressedTexSubImage2D(G.TEXTURE_2D,St,Rt,ne,we.width,we.height,_e,we.data):G.texSubImage2D(G.TEXTURE_2D,St,Rt,ne,Ct,bt,_e,_n,we);mt.pixelStorei(G.UNPACK_ROW_LENGTH,Rn),mt.pixelStorei(G.UNPACK_IMAGE_HEIGHT,ce),mt.pixelStorei(G.UNPACK_SKIP_PIXELS,oo),mt.pixelStorei(G.UNPACK_SKIP_ROWS,vn),mt.pixelStorei(G.UNPACK_SKIP_IMAGES,Iu),St===0&&B.generateMipmaps===!0&&B.mipmapsAutoUpdate===!0&&G.generateMipmap(Pt),mt.unbindTexture()},this.initRenderTarget=function(E){Dt.get(E).__webglFramebuffer===void 0&&zt.setupRenderTarget(E)},this.initTexture=function(E){E.isCubeTexture?zt.setTextureCube(E,0):E.isData3DTexture?zt.setTexture3D(E,0):E.isDataArrayTexture||E.isCompressedArrayTexture?zt.setTexture2DArray(E,0):zt.setTexture2D(E,0),mt.unbindTexture()},this.resetState=function(){k=0,U=0,Z=null,mt.reset(),xt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Li}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let n=this.getContext();n.drawingBufferColorSpace=ie._getDrawingBufferColorSpace(t),n.unpackColorSpace=ie._getUnpackColorSpace()}};var R6=2,P6=3,zp=class{renderer;whole=new zn(1,1,{colorSpace:Bn});sheet=new Hs;flat=new us(-1,1,1,-1,0,1);constructor(t){this.renderer=new Op({canvas:t,antialias:!1,alpha:!1}),this.renderer.capabilities.getMaxAnisotropy(),this.renderer.initRenderTarget(this.whole);let n=new Tl({map:this.whole.texture,depthTest:!1,depthWrite:!1});this.sheet.add(new $e(new Yo(2,2),n))}size(t,n){let i=Math.min(ev()*R6,P6);this.renderer.setSize(t,n,!1),this.whole.setSize(Math.max(1,Math.floor(t*i)),Math.max(1,Math.floor(n*i)))}ground(t){this.renderer.setClearColor(new kt(t),1)}atOnce(t,n){this.pixels(Math.min(ev(),1)),t.forEach((i,r)=>this.render(i,n,r===0))}async ready(t,n){this.renderer.setRenderTarget(this.whole),this.renderer.compile(t,n),this.renderer.setRenderTarget(null),await this.drawn()}slice(t,n,i){this.renderer.setRenderTarget(this.whole),this.render(t,n,i),this.renderer.setRenderTarget(null)}show(t,n){this.pixels(ev()),this.render(this.sheet,this.flat,!0),this.render(t,n,!1)}async drawn(){let t=this.renderer.getContext(),n=t.fenceSync(t.SYNC_GPU_COMMANDS_COMPLETE,0);if(n){t.flush();do await new Promise(i=>setTimeout(i,0));while(t.clientWaitSync(n,0,0)===t.TIMEOUT_EXPIRED);t.deleteSync(n)}}render(t,n,i){this.renderer.autoClear=i,this.renderer.render(t,n)}pixels(t){Math.abs(this.renderer.getPixelRatio()-t)>.001&&this.renderer.setPixelRatio(t)}};function ev(){return Math.min(devicePixelRatio||1,2)}var Gp=[],R3=matchMedia("(prefers-color-scheme: dark)"),nv=!1;function Ru(){return nv}function eo(){if(nv)return!1;let e=document.documentElement.dataset.theme;return e?e==="dark":R3.matches}function P3(e){Gp.push(e)}function Er(e){return getComputedStyle(document.documentElement).getPropertyValue(`--${e}`).trim()}function I3(){let e=document.getElementById("theme"),t=i=>{i?document.documentElement.dataset.theme=i:delete document.documentElement.dataset.theme;for(let r of Gp)r(!0)},n="";try{n=localStorage.getItem("gclint-theme")??""}catch{}e&&(n==="light"||n==="dark")&&(e.value=n,t(n)),e?.addEventListener("change",()=>{t(e.value);try{localStorage.setItem("gclint-theme",e.value)}catch{}});for(let i of[!0,!1])addEventListener(i?"beforeprint":"afterprint",()=>{let r=eo();nv=i;for(let s of Gp)s(eo()!==r)});R3.addEventListener("change",()=>{for(let i of Gp)i(!0)})}var iv=12,I6={plain:1,thin:2,thick:2,unknown:.7},no=26;function Vp(e,t,n,i,r,s,o,a=r*1.05){let l=t.coarse,c=t.means(i),[u,h,f,d]=rv(e,l),p=Math.min((r-2*no)/(h-u),(a-2*no)/(d-f)),y=(h-u)*p+2*no,g=(d-f)*p+2*no,m=Math.max(0,(r-y)/2),x=P=>(P-u)*p+no+m,M=P=>g-no-(P-f)*p,v=(P,O)=>`${x(P).toFixed(1)} ${M(O).toFixed(1)}`,S=me("svg",{viewBox:`0 0 ${r} ${g.toFixed(0)}`,class:"plan",role:"img","aria-label":"The path from above in the blank"}),b=e.field;b&&S.append(me("rect",{x:x(b.x[0]),y:M(b.y[1]),width:(b.x[1]-b.x[0])*p,height:(b.y[1]-b.y[0])*p,class:b.declared&&b.placed?"blank":"blank assumed"}));for(let P of e.keep_out)S.append(me("rect",{x:x(P.low[0]),y:M(P.high[1]),width:Math.max(1,(P.high[0]-P.low[0])*p),height:Math.max(1,(P.high[1]-P.low[1])*p),class:"keep-out"},me("title",{},P.name)));let _=new Map,w="",R=-1,A=0;for(let P=0;P<l.n;P++){if(l.kind[P]===4||s!==null&&l.tool[P]!==s)continue;let O=L6(l,P,c,i),I=_.get(O);I||_.set(O,I=[]),l.kind[P]===2&&(A+=Math.hypot(l.x[P+1]-l.x[P],l.y[P+1]-l.y[P])*p),(R!==P||w!==O)&&I.push(`M${v(l.x[P],l.y[P])}`),I.push(`L${v(l.x[P+1],l.y[P+1])}`),w=O,R=P+1}let C=Math.min(1.8,Math.max(.3,.3*(h-u)*(d-f)*p*p/Math.max(A,1)));for(let P of[..._.keys()].sort()){let[,O,I,D]=P.split(" "),k=me("path",{d:_.get(P).join(""),class:`line ${O} ${D??""}`.trim()});O==="cut"&&(k.style.strokeWidth=`${(C*I6[D??"unknown"]).toFixed(2)}px`),I&&(k.style.stroke=i.shade((Number(I)+.5)/iv,eo())),S.append(k)}return x(0)>0&&x(0)<r&&M(0)>0&&M(0)<g&&S.append(me("circle",{cx:x(0),cy:M(0),r:7,class:"zero-ground"}),me("path",{d:`M${x(0)} ${M(0)}h6a6 6 0 0 1 -6 6zM${x(0)} ${M(0)}h-6a6 6 0 0 1 6 -6z`,class:"zero-part"}),me("circle",{cx:x(0),cy:M(0),r:6,class:"zero"},me("title",{},"work zero"))),b&&D6(S,e,x,M,g),o&&N6(S,e,n,x,M),{svg:S,toMm:P=>{let O=S.getScreenCTM();if(!O)return null;let I=new DOMPoint(P.clientX,P.clientY).matrixTransform(O.inverse());return[(I.x-no-m)/p+u,(g-no-I.y)/p+f]},mark:(P,O)=>S.append(me("g",{class:"here"},me("circle",{cx:x(P),cy:M(O),r:15,class:"halo"}),me("circle",{cx:x(P),cy:M(O),r:15}))),toScreen:(P,O)=>{let I=S.getScreenCTM();if(!I)return null;let D=new DOMPoint(x(P),M(O)).matrixTransform(I);return[D.x,D.y]},perPixel:()=>1/(p*(S.getScreenCTM()?.a||1))}}function L6(e,t,n,i){let r=e.kind[t];if(r===0)return"0 rapid";if(r===1)return"1 air";if(r===3)return"9 crash";let s=n(t,t+1),o=el(i,s);if(o===3)return"2 cut";let a=Math.min(iv-1,Math.floor(s*iv));return`${o===0?3:4} cut ${String(a).padStart(2,"0")} ${["plain","thin","thick"][o]}`}function rv(e,t){let[n,i,r,s]=[1/0,-1/0,1/0,-1/0];e.field&&([n,i,r,s]=[...e.field.x,...e.field.y]);for(let l=0;l<t.n;l++)if(t.kind[l]!==4)for(let c of[l,l+1])n=Math.min(n,t.x[c]),i=Math.max(i,t.x[c]),r=Math.min(r,t.y[c]),s=Math.max(s,t.y[c]);if(!(i>=n))return[-10,10,-10,10];let o=Math.max(i-n,s-r);n-o<0&&i+o>0&&r-o<0&&s+o>0&&(n=Math.min(n,0),i=Math.max(i,0),r=Math.min(r,0),s=Math.max(s,0));let a=Math.max(i-n,s-r,1)*.04;return[n-a,i+a,r-a,s+a]}function D6(e,t,n,i,r){let s=t.field,o=t.scale,a=(l,c,u,h)=>e.append(me("text",{x:l,y:c,class:"side","text-anchor":h},u));a(n(s.x[0]),r-6,`X ${ze(s.x[0]*o,4)}`,"start"),a(n(s.x[1]),r-6,`X ${ze(s.x[1]*o,4)} ${t.unit}`,"end"),a(n(s.x[0]),i(s.y[1])-5,`Y ${ze(s.y[1]*o,4)}`,"start"),a(n(s.x[1]),i(s.y[0])+12,`Y ${ze(s.y[0]*o,4)}`,"end")}function N6(e,t,n,i,r){let s=t.findings.length>25?7.5:9,o=new Set;t.findings.forEach((a,l)=>{if(a.row===null)return;let c=a.row,u=i((n.x[c]+n.x[c+1])/2),h=r((n.y[c]+n.y[c+1])/2),f=`${Math.round(u/16)} ${Math.round(h/16)}`;o.has(f)||(o.add(f),e.append(me("g",{class:`pin g-${a.grade}`,"data-pin":l},me("path",{d:U6(a.grade,u,h,s)}),me("text",{x:u,y:h+3.4,"text-anchor":"middle"},String(l+1)))))})}function U6(e,t,n,i){return e==="halt"?`M${t-i} ${n-i}h${2*i}v${2*i}h${-2*i}z`:e==="change"?`M${t-1.5*i} ${n}l${.8*i} ${-i}h${1.4*i}l${.8*i} ${i}l${-.8*i} ${i}h${-1.4*i}z`:`M${t-i} ${n}a${i} ${i} 0 1 0 ${2*i} 0a${i} ${i} 0 1 0 ${-2*i} 0z`}var L3={type:"change"},ov={type:"start"},N3={type:"end"},Hp=new qo,D3=new li,F6=Math.cos(70*Su.DEG2RAD),tn=new z,ei=2*Math.PI,ue={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},sv=1e-6,Wp=class extends pu{constructor(t,n=null){super(t,n),this.state=ue.NONE,this.target=new z,this.cursor=new z,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Ks.ROTATE,MIDDLE:Ks.DOLLY,RIGHT:Ks.PAN},this.touches={ONE:Js.ROTATE,TWO:Js.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new z,this._lastQuaternion=new fi,this._lastTargetPosition=new z,this._quat=new fi().setFromUnitVectors(t.up,new z(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new Rl,this._sphericalDelta=new Rl,this._scale=1,this._panOffset=new z,this._rotateStart=new Bt,this._rotateEnd=new Bt,this._rotateDelta=new Bt,this._panStart=new Bt,this._panEnd=new Bt,this._panDelta=new Bt,this._dollyStart=new Bt,this._dollyEnd=new Bt,this._dollyDelta=new Bt,this._dollyDirection=new z,this._mouse=new Bt,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=B6.bind(this),this._onPointerDown=O6.bind(this),this._onPointerUp=k6.bind(this),this._onContextMenu=X6.bind(this),this._onMouseWheel=V6.bind(this),this._onKeyDown=H6.bind(this),this._onTouchStart=W6.bind(this),this._onTouchMove=$6.bind(this),this._onMouseDown=z6.bind(this),this._onMouseMove=G6.bind(this),this._interceptControlDown=q6.bind(this),this._interceptControlUp=Y6.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=ue.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(L3),this.update(),this.state=ue.NONE}pan(t,n){this._pan(t,n),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let n=this.object.position;tn.copy(n).sub(this.target),tn.applyQuaternion(this._quat),this._spherical.setFromVector3(tn),this.autoRotate&&this.state===ue.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let i=this.minAzimuthAngle,r=this.maxAzimuthAngle;isFinite(i)&&isFinite(r)&&(i<-Math.PI?i+=ei:i>Math.PI&&(i-=ei),r<-Math.PI?r+=ei:r>Math.PI&&(r-=ei),i<=r?this._spherical.theta=Math.max(i,Math.min(r,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(i+r)/2?Math.max(i,this._spherical.theta):Math.min(r,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let s=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),s=o!=this._spherical.radius}if(tn.setFromSpherical(this._spherical),tn.applyQuaternion(this._quatInverse),n.copy(this.target).add(tn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=tn.length();o=this._clampDistance(a*this._scale);let l=a-o;this.object.position.addScaledVector(this._dollyDirection,l),this.object.updateMatrixWorld(),s=!!l}else if(this.object.isOrthographicCamera){let a=new z(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let l=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),s=l!==this.object.zoom;let c=new z(this._mouse.x,this._mouse.y,0);c.unproject(this.object),this.object.position.sub(c).add(a),this.object.updateMatrixWorld(),o=tn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Hp.origin.copy(this.object.position),Hp.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Hp.direction))<F6?this.object.lookAt(this.target):(D3.setFromNormalAndCoplanarPoint(this.object.up,this.target),Hp.intersectPlane(D3,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),s=!0)}return this._scale=1,this._performCursorZoom=!1,s||this._lastPosition.distanceToSquared(this.object.position)>sv||8*(1-this._lastQuaternion.dot(this.object.quaternion))>sv||this._lastTargetPosition.distanceToSquared(this.target)>sv?(this.dispatchEvent(L3),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?ei/60*this.autoRotateSpeed*t:ei/60/60*this.autoRotateSpeed}_getZoomScale(t){let n=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*n)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,n){tn.setFromMatrixColumn(n,0),tn.multiplyScalar(-t),this._panOffset.add(tn)}_panUp(t,n){this.screenSpacePanning===!0?tn.setFromMatrixColumn(n,1):(tn.setFromMatrixColumn(n,0),tn.crossVectors(this.object.up,tn)),tn.multiplyScalar(t),this._panOffset.add(tn)}_pan(t,n){let i=this.domElement;if(this.object.isPerspectiveCamera){let r=this.object.position;tn.copy(r).sub(this.target);let s=tn.length();s*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*s/i.clientHeight,this.object.matrix),this._panUp(2*n*s/i.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/i.clientWidth,this.object.matrix),this._panUp(n*(this.object.top-this.object.bottom)/this.object.zoom/i.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,n){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let i=this.domElement.getBoundingClientRect(),r=t-i.left,s=n-i.top,o=i.width,a=i.height;this._mouse.x=r/o*2-1,this._mouse.y=-(s/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/n.clientHeight),this._rotateUp(ei*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let n=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),n=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),n=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),n=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-ei*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),n=!0;break}n&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateStart.set(i,r)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panStart.set(i,r)}}_handleTouchStartDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyStart.set(0,s)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let i=this._getSecondPointerPosition(t),r=.5*(t.pageX+i.x),s=.5*(t.pageY+i.y);this._rotateEnd.set(r,s)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let n=this.domElement;this._rotateLeft(ei*this._rotateDelta.x/n.clientHeight),this._rotateUp(ei*this._rotateDelta.y/n.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),i=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._panEnd.set(i,r)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let n=this._getSecondPointerPosition(t),i=t.pageX-n.x,r=t.pageY-n.y,s=Math.sqrt(i*i+r*r);this._dollyEnd.set(0,s),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+n.x)*.5,a=(t.pageY+n.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId){this._pointers.splice(n,1);return}}_isTrackingPointer(t){for(let n=0;n<this._pointers.length;n++)if(this._pointers[n]==t.pointerId)return!0;return!1}_trackPointer(t){let n=this._pointerPositions[t.pointerId];n===void 0&&(n=new Bt,this._pointerPositions[t.pointerId]=n),n.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let n=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[n]}_customWheelEvent(t){let n=t.deltaMode,i={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(n){case 1:i.deltaY*=16;break;case 2:i.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(i.deltaY*=10),i}};function O6(e){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(e.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(e)&&(this._addPointer(e),e.pointerType==="touch"?this._onTouchStart(e):this._onMouseDown(e),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function B6(e){this.enabled!==!1&&(e.pointerType==="touch"?this._onTouchMove(e):this._onMouseMove(e))}function k6(e){switch(this._removePointer(e),this._pointers.length){case 0:this.domElement.releasePointerCapture(e.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(N3),this.state=ue.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],n=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:n.x,pageY:n.y});break}}function z6(e){let t;switch(e.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Ks.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(e),this.state=ue.DOLLY;break;case Ks.ROTATE:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}break;case Ks.PAN:if(e.ctrlKey||e.metaKey||e.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(e),this.state=ue.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(e),this.state=ue.PAN}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(ov)}function G6(e){switch(this.state){case ue.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(e);break;case ue.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(e);break;case ue.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(e);break}}function V6(e){this.enabled===!1||this.enableZoom===!1||this.state!==ue.NONE||(e.preventDefault(),this.dispatchEvent(ov),this._handleMouseWheel(this._customWheelEvent(e)),this.dispatchEvent(N3))}function H6(e){this.enabled!==!1&&this._handleKeyDown(e)}function W6(e){switch(this._trackPointer(e),this._pointers.length){case 1:switch(this.touches.ONE){case Js.ROTATE:if(this.enableRotate===!1){this.state=ue.NONE;break}this._handleTouchStartRotate(e),this.state=ue.TOUCH_ROTATE;break;case Js.PAN:if(this.enablePan===!1){this.state=ue.NONE;break}this._handleTouchStartPan(e),this.state=ue.TOUCH_PAN;break;default:this.state=ue.NONE}break;case 2:switch(this.touches.TWO){case Js.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(e),this.state=ue.TOUCH_DOLLY_PAN;break;case Js.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(e),this.state=ue.TOUCH_DOLLY_ROTATE;break;default:this.state=ue.NONE}break;default:this.state=ue.NONE}this.state!==ue.NONE&&this.dispatchEvent(ov)}function $6(e){switch(this._trackPointer(e),this.state){case ue.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(e),this.update();break;case ue.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(e),this.update();break;case ue.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(e),this.update();break;case ue.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(e),this.update();break;default:this.state=ue.NONE}}function X6(e){this.enabled!==!1&&e.preventDefault()}function q6(e){e.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function Y6(e){e.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}wt.line={worldUnits:{value:1},linewidth:{value:1},resolution:{value:new Bt},dashOffset:{value:0},dashScale:{value:1},dashSize:{value:1},gapSize:{value:1}};Vn.line={uniforms:wu.merge([wt.common,wt.fog,wt.line]),vertexShader:`
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
		`};var ro=class extends Di{constructor(t){super({type:"LineMaterial",uniforms:wu.clone(Vn.line.uniforms),vertexShader:Vn.line.vertexShader,fragmentShader:Vn.line.fragmentShader,clipping:!0}),this.isLineMaterial=!0,this.setValues(t)}get color(){return this.uniforms.diffuse.value}set color(t){this.uniforms.diffuse.value=t}get worldUnits(){return"WORLD_UNITS"in this.defines}set worldUnits(t){t===!0!==this.worldUnits&&(this.needsUpdate=!0),t===!0?this.defines.WORLD_UNITS="":delete this.defines.WORLD_UNITS}get linewidth(){return this.uniforms.linewidth.value}set linewidth(t){this.uniforms.linewidth&&(this.uniforms.linewidth.value=t)}get dashed(){return"USE_DASH"in this.defines}set dashed(t){t===!0!==this.dashed&&(this.needsUpdate=!0),t===!0?this.defines.USE_DASH="":delete this.defines.USE_DASH}get dashScale(){return this.uniforms.dashScale.value}set dashScale(t){this.uniforms.dashScale.value=t}get dashSize(){return this.uniforms.dashSize.value}set dashSize(t){this.uniforms.dashSize.value=t}get dashOffset(){return this.uniforms.dashOffset.value}set dashOffset(t){this.uniforms.dashOffset.value=t}get gapSize(){return this.uniforms.gapSize.value}set gapSize(t){this.uniforms.gapSize.value=t}get opacity(){return this.uniforms.opacity.value}set opacity(t){this.uniforms&&(this.uniforms.opacity.value=t)}get resolution(){return this.uniforms.resolution.value}set resolution(t){this.uniforms.resolution.value.copy(t)}get alphaToCoverage(){return"USE_ALPHA_TO_COVERAGE"in this.defines}set alphaToCoverage(t){this.defines&&(t===!0!==this.alphaToCoverage&&(this.needsUpdate=!0),t===!0?this.defines.USE_ALPHA_TO_COVERAGE="":delete this.defines.USE_ALPHA_TO_COVERAGE)}};var U3=new hi,$p=new z,ps=class extends hu{constructor(){super(),this.isLineSegmentsGeometry=!0,this.type="LineSegmentsGeometry";let t=[-1,2,0,1,2,0,-1,1,0,1,1,0,-1,0,0,1,0,0,-1,-1,0,1,-1,0],n=[-1,2,1,2,-1,1,1,1,-1,-1,1,-1,-1,-2,1,-2],i=[0,2,1,2,3,1,2,4,3,4,5,3,4,6,5,6,7,5];this.setIndex(i),this.setAttribute("position",new Ke(t,3)),this.setAttribute("uv",new Ke(n,2))}applyMatrix4(t){let n=this.attributes.instanceStart,i=this.attributes.instanceEnd;return n!==void 0&&(n.applyMatrix4(t),i.applyMatrix4(t),n.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this}setPositions(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new Zs(n,6,1);return this.setAttribute("instanceStart",new Ki(i,3,0)),this.setAttribute("instanceEnd",new Ki(i,3,3)),this.instanceCount=this.attributes.instanceStart.count,this.computeBoundingBox(),this.computeBoundingSphere(),this}setColors(t){let n;t instanceof Float32Array?n=t:Array.isArray(t)&&(n=new Float32Array(t));let i=new Zs(n,6,1);return this.setAttribute("instanceColorStart",new Ki(i,3,0)),this.setAttribute("instanceColorEnd",new Ki(i,3,3)),this}fromWireframeGeometry(t){return this.setPositions(t.attributes.position.array),this}fromEdgesGeometry(t){return this.setPositions(t.attributes.position.array),this}fromMesh(t){return this.fromWireframeGeometry(new su(t.geometry)),this}fromLineSegments(t){let n=t.geometry;return this.setPositions(n.attributes.position.array),this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new hi);let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;t!==void 0&&n!==void 0&&(this.boundingBox.setFromBufferAttribute(t),U3.setFromBufferAttribute(n),this.boundingBox.union(U3))}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new Zi),this.boundingBox===null&&this.computeBoundingBox();let t=this.attributes.instanceStart,n=this.attributes.instanceEnd;if(t!==void 0&&n!==void 0){let i=this.boundingSphere.center;this.boundingBox.getCenter(i);let r=0;for(let s=0,o=t.count;s<o;s++)$p.fromBufferAttribute(t,s),r=Math.max(r,i.distanceToSquared($p)),$p.fromBufferAttribute(n,s),r=Math.max(r,i.distanceToSquared($p));this.boundingSphere.radius=Math.sqrt(r),isNaN(this.boundingSphere.radius)&&console.error("THREE.LineSegmentsGeometry.computeBoundingSphere(): Computed radius is NaN. The instanced position data is likely to have NaN values.",this)}}toJSON(){}};var av=new de,F3=new z,O3=new z,gn=new de,yn=new de,Ar=new de,lv=new z,cv=new be,xn=new du,B3=new z,Xp=new hi,qp=new Zi,Cr=new de,Rr,ta;function k3(e,t,n){return Cr.set(0,0,-t,1).applyMatrix4(e.projectionMatrix),Cr.multiplyScalar(1/Cr.w),Cr.x=ta/n.width,Cr.y=ta/n.height,Cr.applyMatrix4(e.projectionMatrixInverse),Cr.multiplyScalar(1/Cr.w),Math.abs(Math.max(Cr.x,Cr.y))}function Z6(e,t){let n=e.matrixWorld,i=e.geometry,r=i.attributes.instanceStart,s=i.attributes.instanceEnd,o=Math.min(i.instanceCount,r.count);for(let a=0,l=o;a<l;a++){xn.start.fromBufferAttribute(r,a),xn.end.fromBufferAttribute(s,a),xn.applyMatrix4(n);let c=new z,u=new z;Rr.distanceSqToSegment(xn.start,xn.end,u,c),u.distanceTo(c)<ta*.5&&t.push({point:u,pointOnLine:c,distance:Rr.origin.distanceTo(u),object:e,face:null,faceIndex:a,uv:null,uv1:null})}}function K6(e,t,n){let i=t.projectionMatrix,s=e.material.resolution,o=e.matrixWorld,a=e.geometry,l=a.attributes.instanceStart,c=a.attributes.instanceEnd,u=Math.min(a.instanceCount,l.count),h=-t.near;Rr.at(1,Ar),Ar.w=1,Ar.applyMatrix4(t.matrixWorldInverse),Ar.applyMatrix4(i),Ar.multiplyScalar(1/Ar.w),Ar.x*=s.x/2,Ar.y*=s.y/2,Ar.z=0,lv.copy(Ar),cv.multiplyMatrices(t.matrixWorldInverse,o);for(let f=0,d=u;f<d;f++){if(gn.fromBufferAttribute(l,f),yn.fromBufferAttribute(c,f),gn.w=1,yn.w=1,gn.applyMatrix4(cv),yn.applyMatrix4(cv),gn.z>h&&yn.z>h)continue;if(gn.z>h){let M=gn.z-yn.z,v=(gn.z-h)/M;gn.lerp(yn,v)}else if(yn.z>h){let M=yn.z-gn.z,v=(yn.z-h)/M;yn.lerp(gn,v)}gn.applyMatrix4(i),yn.applyMatrix4(i),gn.multiplyScalar(1/gn.w),yn.multiplyScalar(1/yn.w),gn.x*=s.x/2,gn.y*=s.y/2,yn.x*=s.x/2,yn.y*=s.y/2,xn.start.copy(gn),xn.start.z=0,xn.end.copy(yn),xn.end.z=0;let y=xn.closestPointToPointParameter(lv,!0);xn.at(y,B3);let g=Su.lerp(gn.z,yn.z,y),m=g>=-1&&g<=1,x=lv.distanceTo(B3)<ta*.5;if(m&&x){xn.start.fromBufferAttribute(l,f),xn.end.fromBufferAttribute(c,f),xn.start.applyMatrix4(o),xn.end.applyMatrix4(o);let M=new z,v=new z;Rr.distanceSqToSegment(xn.start,xn.end,v,M),n.push({point:v,pointOnLine:M,distance:Rr.origin.distanceTo(v),object:e,face:null,faceIndex:f,uv:null,uv1:null})}}}var Fl=class extends $e{constructor(t=new ps,n=new ro({color:Math.random()*16777215})){super(t,n),this.isLineSegments2=!0,this.type="LineSegments2"}computeLineDistances(){let t=this.geometry,n=t.attributes.instanceStart,i=t.attributes.instanceEnd,r=new Float32Array(2*n.count);for(let o=0,a=0,l=n.count;o<l;o++,a+=2)F3.fromBufferAttribute(n,o),O3.fromBufferAttribute(i,o),r[a]=a===0?0:r[a-1],r[a+1]=r[a]+F3.distanceTo(O3);let s=new Zs(r,2,1);return t.setAttribute("instanceDistanceStart",new Ki(s,1,0)),t.setAttribute("instanceDistanceEnd",new Ki(s,1,1)),this}raycast(t,n){let i=this.material.worldUnits,r=t.camera;if(r===null&&!i&&console.error('LineSegments2: "Raycaster.camera" needs to be set in order to raycast against LineSegments2 while worldUnits is set to false.'),i===!1&&(this.material.resolution.x===0||this.material.resolution.y===0))return;let s=t.params.Line2!==void 0&&t.params.Line2.threshold||0;Rr=t.ray;let o=this.matrixWorld,a=this.geometry,l=this.material;ta=l.linewidth+s,a.boundingSphere===null&&a.computeBoundingSphere(),qp.copy(a.boundingSphere).applyMatrix4(o);let c;if(i)c=ta*.5;else{let h=Math.max(r.near,qp.distanceToPoint(Rr.origin));c=k3(r,h,l.resolution)}if(qp.radius+=c,Rr.intersectsSphere(qp)===!1)return;a.boundingBox===null&&a.computeBoundingBox(),Xp.copy(a.boundingBox).applyMatrix4(o);let u;if(i)u=ta*.5;else{let h=Math.max(r.near,Xp.distanceToPoint(Rr.origin));u=k3(r,h,l.resolution)}Xp.expandByScalar(u),Rr.intersectsBox(Xp)!==!1&&(i?Z6(this,n):K6(this,r,n))}onBeforeRender(t){let n=this.material.uniforms;n&&n.resolution&&(t.getViewport(av),this.material.uniforms.resolution.value.set(av.z,av.w))}};var z3=[3e3,6e3,12e3,24e3,48e3,96e3],J6=30,G3=36,j6=20,Yp=4,Q6=3,uv=60,t8=16e3,e8=8e3,V3=14,Zp=class{cost=0;slice=t8;level=2;budgets=[];times=[];pictures=0;longest=0;spent={cost:0,ms:0};known=!1;each=0;whole(t){this.cost=t,this.budgets=z3.filter((n,i)=>i===0||z3[i-1]<t),this.level=Math.min(this.level,this.budgets.length)}get budget(){return this.budgets[this.level]??null}get some(){return this.budget??this.budgets[this.budgets.length-1]}get quick(){return this.known&&this.cost*this.each<=2*V3}starts(){this.pictures>=Yp&&this.longest<j6&&this.level<this.budgets.length&&this.level++,this.times=[],this.pictures=this.longest=0}took(t){if(this.times.push(t),this.times.length<Yp)return;let n=this.times.reduce((i,r)=>i+r,0)/Yp;this.times=[],this.pictures+=Yp,this.longest=Math.max(this.longest,n),n>G3&&this.level>0&&(this.level-=n>2*G3&&this.level>1?2:1)}sliced(t,n){if(n>1.5*uv?this.slice=Math.max(e8,this.slice*(uv/n)):n<uv/2&&t>this.slice/2&&(this.slice*=2),this.known||(this.spent.cost+=t,this.spent.ms+=n,this.spent.cost<this.cost))return;this.known=!0,this.each=this.spent.ms/Math.max(this.spent.cost,1);let i=J6/2/this.each*Q6;this.level=this.each*this.cost<=V3?this.budgets.length:Math.max(0,this.budgets.filter(r=>r<=i).length-1)}};var H3=[[1,0],[-1,0],[0,1],[0,-1]],n8=[...H3,[1,1],[1,-1],[-1,1],[-1,-1]];function W3(e,t){let n=1;for(;2*Math.ceil(e.nx/n)*Math.ceil(e.ny/n)>t&&Math.min(e.nx,e.ny)>2*n;)n++;return n}function $3(e){let t=e.nx-1,n=e.ny-1;return 2*t*n+4*t+4*n}function X3(e){return(e.index?.count??0)/3}function fv(e,t,n,i){let r=e.nx,s=e.ny,o=Math.ceil(r/i),a=Math.ceil(s/i),l=new Float32Array(o*a);for(let m=0;m<s;m++)for(let x=0;x<r;x++){let M=Math.floor(m/i)*o+Math.floor(x/i);l[M]=Math.max(l[M],t[m*r+x])}let c=2*(o-1)+2*(a-1),u=new Float32Array((o*a+c*6)*3),h=new Uint32Array((o-1)*(a-1)*6+c*6);for(let m=0;m<a;m++)for(let x=0;x<o;x++){let M=m*o+x;u[M*3]=e.x[0]+(e.x[1]-e.x[0])*(x/(o-1)),u[M*3+1]=e.y[0]+(e.y[1]-e.y[0])*(m/(a-1)),u[M*3+2]=Math.max(e.top-l[M],n)}i===1&&i8(u,o,a,e);let f=e.thick===null?-1/0:n+.001,d=0,p=o*a;for(let m=0;m+1<a;m++)for(let x=0;x+1<o;x++){let M=m*o+x,v=M+1,S=M+o,b=S+1;Math.max(u[M*3+2],u[v*3+2],u[S*3+2],u[b*3+2])<=f||(h.set([M,v,b,M,b,S],d),d+=6)}let y=(m,x)=>{let[M,v,S]=u.subarray(m*3,m*3+3),[b,_,w]=u.subarray(x*3,x*3+3);u.set([M,v,S,M,v,n,b,_,w,b,_,w,M,v,n,b,_,n],p*3);for(let R=0;R<6;R++)h[d++]=p++};for(let m=0;m+1<o;m++)y(m,m+1),y((a-1)*o+m,(a-1)*o+m+1);for(let m=0;m+1<a;m++)y(m*o,(m+1)*o),y(m*o+o-1,(m+1)*o+o-1);let g=new Je().setAttribute("position",new Ze(u,3));return g.setIndex(new Ze(h.subarray(0,d),1)),g.computeVertexNormals(),g.computeBoundingSphere(),g}function i8(e,t,n,i){let r=(i.x[1]-i.x[0])/(t-1),s=(i.y[1]-i.y[0])/(n-1),o=Math.max(1.2*Math.max(r,s),i.deepest*.04),a=f=>e[f*3+2],l=[],c=new Float32Array(t*n*2),u=new Uint8Array(t*n);for(let f=1;f+1<n;f++)for(let d=1;d+1<t;d++){let p=f*t+d,y=0,g=0;for(let[x,M]of H3)Math.abs(a(p)-a(p+M*t+x))>o&&(y+=x,g+=M,u[p]=1);if(!u[p])continue;l.push(p);let m=Math.hypot(y,g)||1;c[p*2]=.3*y/m,c[p*2+1]=.3*g/m}let h=c.slice();for(let f=0;f<8;f++){for(let d of l){let p=c[d*2],y=c[d*2+1],g=1;for(let[x,M]of n8){let v=d+M*t+x;!u[v]||Math.abs(a(d)-a(v))>o||(p+=x+c[v*2],y+=M+c[v*2+1],g++)}let m=x=>Math.min(.45,Math.max(-.45,x));h[d*2]=m(p/g),h[d*2+1]=m(y/g)}c.set(h)}for(let f of l)e[f*3]+=c[f*2]*r,e[f*3+1]+=c[f*2+1]*s}function q3(e,t){let n=e.index.array,i=[];for(let r=0;r<n.length;r+=t*3){let s=new Je;for(let o of["position","normal"])s.setAttribute(o,e.attributes[o]);s.setIndex(new Ze(n.slice(r,r+t*3),1)),s.boundingSphere=e.boundingSphere,i.push(s)}return i}var r8=6e4,s8={0:1.3,1:1.1,2:2.5,3:5},o8={0:2.5,1:5,2:5,3:1.6},a8=[16,11,4.5],Y3=2,hv=8,Kp=4e3,l8=200,c8=200,u8=1.6,f8=9,Z3=.45,h8=[[3,.15],[0,.2],[1,.15],[2,.5]],Jp=class{constructor(t,n,i,r,s,o,a,l){this.canvas=t;this.painter=n;this.model=i;this.path=r;this.levels=s;this.quantity=a;this.shown=l;let[c,u,h,f]=rv(i,r),d=i.field?.top??0,p=Math.max(i.field?.thick??0,i.field?.deepest??0,1),[y,g]=d8(r),m=Math.min(g-d,Math.max(u-c,f-h)/2);this.box=[new z(c,h,Math.min(d-p,Math.max(y,d-p-Math.max(u-c,f-h)))),new z(u,f,d+Math.max(m,0))],this.centre=this.box[0].clone().add(this.box[1]).multiplyScalar(.5),this.radius=Math.max(this.box[0].distanceTo(this.box[1])/2,1);let x=i.field?.nx&&i.field.ny?i.field:null;this.left=x?.cut?o.numbers(x.cut):null,this.found=x?.start?o.numbers(x.start):null,this.camera.up.set(0,0,1),this.controls=new Wp(this.camera,t),this.controls.enableZoom=!1,this.controls.addEventListener("change",()=>{this.move(),this.redraw()}),this.controls.addEventListener("start",()=>{this.fitted=null,this.complete||(this.move(),this.redraw())}),t.addEventListener("wheel",v=>this.wheel(v),{passive:!1});let M=new uu(16777215,1.6);M.position.set(-.6,-.35,1),this.scene.add(new fu(16777215,1.7),M,this.always,this.whole),this.fitted="corner",this.resize(),this.rebuild()}canvas;painter;model;path;levels;quantity;shown;scene=new Hs;camera=new us;pace=new Zp;controls;centre;radius;box;left;found;over=new Hs;always=new ui;whole=new ui;parts=[];ready=new Set;few=new Map;shownFew=null;shownMay=0;lit=null;rows=[];asked=!1;complete=!1;waiting=!1;drawnAt=0;flight=0;run=0;rest=0;moving=!1;size={width:0,height:0};fitted=null;onDraw=()=>{};set(t,n){this.quantity=t,this.shown=n,this.rebuild()}resize(){let t=this.canvas.clientWidth,n=this.canvas.clientHeight;if(!t||!n)return;this.size={width:t,height:n},this.painter.size(t,n);let i=this.radius*.86,r=t/n,s=r>=1?i*r:i,o=r>=1?i:i/r;Object.assign(this.camera,{left:-s,right:s,top:o,bottom:-o,near:-this.radius*60,far:this.radius*60}),this.camera.updateProjectionMatrix(),this.fitted&&this.look(this.fitted,!1),this.redraw()}look(t,n=!0){let i={corner:[-.55,-1,.95],above:[0,-1e-4,1],front:[0,-1,.02],side:[1,0,.02]}[t],r=new z(...i).normalize().multiplyScalar(this.radius*4);this.fly(this.centre.clone(),this.fitting(r),r,n),this.fitted=t}fitting(t){let n=new z(0,0,1).cross(t).normalize(),i=t.clone().cross(n).normalize(),r=0,s=0;for(let o=0;o<8;o++){let a=new z(this.box[o&1].x,this.box[o>>1&1].y,this.box[o>>2].z).sub(this.centre);r=Math.max(r,Math.abs(a.dot(n))),s=Math.max(s,Math.abs(a.dot(i)))}return .94*Math.min(this.camera.right/Math.max(r,1e-6),this.camera.top/Math.max(s,1e-6))}goTo(t){let n=this.camera.position.clone().sub(this.controls.target),i=this.middle(t),r=this.fitting(n),s=Math.min(this.camera.zoom,r*u8),o=Math.max(s,r),a=Math.min(1,Math.max(0,1-r/o));this.fly(this.centre.clone().lerp(i,a),o,n,!0)}get target(){let{x:t,y:n,z:i}=this.controls.target;return[t,n,i,this.camera.zoom]}turn(t,n){this.fitted=null;let i=this.camera.position.clone().sub(this.controls.target),r=i.length(),s=Math.atan2(i.y,i.x)+t,o=Math.min(Math.PI/2-1e-4,Math.max(-Math.PI/2+1e-4,Math.asin(i.z/r)+n));i.set(Math.cos(o)*Math.cos(s),Math.cos(o)*Math.sin(s),Math.sin(o)).multiplyScalar(r),this.camera.position.copy(this.controls.target).add(i),this.controls.update(),this.move(),this.redraw()}zoom(t){this.fitted=null,this.camera.zoom=Math.min(400,Math.max(.3,this.camera.zoom*t)),this.camera.updateProjectionMatrix(),this.move(),this.redraw()}light(t){this.rows=[...t];for(let n of this.lit?[this.lit.all,this.lit.few]:[])this.over.remove(n),dv(n);if(this.lit=null,this.rows.length){let n=Math.ceil(this.rows.length/c8),i=r=>{let s=new ui,o=new ps().setPositions(this.ends(r,r.map(l=>l+1))),a=new ps().setPositions(this.ends(r,r.map(l=>l+1))).setColors(this.colours(Float32Array.from(r,l=>this.path.kind[l]===2?this.quantity.at(this.path,l):NaN)));return a8.forEach((l,c)=>{let u=new kt(c<2?Er(c?"paper":"ink"):16777215),h=new Fl(c<2?o:a,new ro({color:u,linewidth:l,depthTest:!1,vertexColors:c===2}));h.renderOrder=10+c,s.add(h)}),this.over.add(s),s};this.lit={all:i(this.rows),few:i(this.rows.filter((r,s)=>s%n===0))}}this.next()}pick(t,n){let i=this.canvas.getBoundingClientRect(),r=t-i.left,s=n-i.top;this.camera.updateMatrixWorld();let o=this.camera.projectionMatrix.clone().multiply(this.camera.matrixWorldInverse).elements,{x:a,y:l,z:c,n:u}=this.path,h=i.width/2,f=i.height/2,d=null,p=f8,y=1/0,g=(m,x)=>{let M=(o[0]*a[m]+o[4]*l[m]+o[8]*c[m]+o[12]+1)*h-r,v=(1-o[1]*a[m]-o[5]*l[m]-o[9]*c[m]-o[13])*f-s,S=(o[0]*a[x]+o[4]*l[x]+o[8]*c[x]+o[12]+1)*h-r-M,b=(1-o[1]*a[x]-o[5]*l[x]-o[9]*c[x]-o[13])*f-s-v,_=S*S+b*b,w=_>0?Math.min(1,Math.max(0,-(M*S+v*b)/_)):0,R=Math.hypot(M+w*S,v+w*b);if(R>p+1.5)return;let A=o[2]*a[m]+o[6]*l[m]+o[10]*c[m];(R<p-1.5||A<y)&&(d=[m,x],p=Math.min(p,R),y=A)};if(this.shownFew){for(let{from:x,to:M}of this.shownFew)for(let v=0;v<x.length;v++)g(x[v],M[v]);let m=d;if(d=null,p=1/0,y=1/0,m)for(let x=m[0];x<m[1];x++)g(x,x+1)}else for(let m=0;m<u;m++)this.visible(m)&&g(m,m+1);return d?d[0]:null}project(t){let{x:n,y:i,z:r}=this.middle(t);return this.projectPoint(n,i,r)}projectPoint(t,n,i){this.camera.updateMatrixWorld();let r=new z(t,n,i).project(this.camera);return[(r.x+1)/2*this.size.width,(1-r.y)/2*this.size.height]}rebuild(){for(let t of[this.over,this.always,this.whole,...[...this.few.values()].map(n=>n.group)])for(let n of[...t.children])t.remove(n),dv(n);for(let{group:t}of this.few.values())this.scene.remove(t);this.few.clear(),this.lit=null,this.painter.ground(Er("figure")),this.shown.stock&&this.model.field&&this.addEdges();for(let t of this.model.keep_out)this.addKeepOut(t.low,t.high);this.addZero(),this.parts=[...this.stockParts(),...this.lineParts()],this.pace.whole(this.parts.reduce((t,n)=>t+n.cost,0)),this.light(this.rows),this.redraw()}redraw(){this.asked=!0,this.complete=!1,this.run++,clearTimeout(this.rest),this.rest=window.setTimeout(()=>{this.settle()},this.moving?l8:0),this.next()}move(){this.moving||(this.moving=!0,this.pace.starts())}next(){this.waiting||(this.waiting=!0,requestAnimationFrame(t=>{if(this.waiting=!1,this.drawnAt&&this.moving&&this.pace.took(t-this.drawnAt),this.drawnAt=0,this.asked){this.asked=!1;let n=this.pace.budget;if(this.whole.children.length===this.parts.length&&(n===null||!this.moving&&this.pace.quick)?this.drawWhole():this.drawFew(this.pace.some),this.onDraw(),!this.moving)return;this.drawnAt=t,this.next()}else this.complete?this.present():this.shownFew&&this.drawFew(this.shownMay)}))}drawFew(t){let{group:n,drawn:i}=this.fewFor(t);this.show(n),this.painter.atOnce([this.scene,this.over],this.camera),this.shownMay=t,this.tell(i,t)}drawWhole(){this.show(this.whole),this.painter.slice(this.scene,this.camera,!0),this.present()}present(){this.complete=!0;let t=this.whole.children.filter((n,i)=>this.parts[i].form==="stock");this.canvas.dataset.faces=String(t.reduce((n,i)=>n+X3(i.geometry),0)),this.show(this.whole),this.painter.show(this.over,this.camera),this.tell(null,this.pace.cost)}async settle(){let t=this.run,{parts:n,whole:i}=this;if(this.moving=!1,!this.complete)for(let r=0,s=!0;r<n.length||s;s=!1){let o=performance.now(),a=r,l=0;do r>=i.children.length&&r<n.length&&this.make(r),l+=n[r]?.cost??0;while(++r<n.length&&l+n[r].cost<=this.pace.slice&&performance.now()-o<40);let c=n.slice(a,r).map(u=>u.form).filter(u=>!this.ready.has(u));c.length&&await this.painter.ready(this.scene,this.camera);for(let u of c)this.ready.add(u);if(t!==this.run)return;this.show(i,r>=n.length),i.children.forEach((u,h)=>{u.visible=h>=a&&h<r}),this.painter.slice(this.scene,this.camera,s);for(let u of i.children)u.visible=!0;if(r>=n.length&&(this.present(),this.onDraw()),await this.painter.drawn(),t!==this.run)return;this.pace.sliced(l,performance.now()-o)}}make(t){this.whole.add(this.parts[t].make())}show(t,n=!0){this.whole.visible=t===this.whole;for(let i of this.few.values())i.group.visible=i.group===t;this.always.visible=n,this.lit&&(this.lit.all.visible=this.whole.visible,this.lit.few.visible=!this.whole.visible)}tell(t,n){this.shownFew=t,this.canvas.dataset.drawn=t?"few":"all",this.canvas.dataset.cost=String(Math.round(n))}fly(t,n,i,r){let s=this.controls.target.clone(),o=this.camera.zoom,a=this.camera.position.clone().sub(s),l=performance.now(),c=++this.flight,u=!r||matchMedia("(prefers-reduced-motion: reduce)").matches;this.fitted=null;let h=()=>{if(c!==this.flight)return;let f=u?1:Math.min(1,(performance.now()-l)/350),d=f*f*(3-2*f);this.controls.target.lerpVectors(s,t,d),this.camera.position.copy(this.controls.target).add(a.clone().lerp(i,d).setLength(this.radius*4)),this.camera.zoom=o*Math.pow(n/o,d),f<1&&this.move(),this.camera.updateProjectionMatrix(),this.controls.update(),this.redraw(),f<1&&requestAnimationFrame(h)};h()}wheel(t){document.activeElement!==this.canvas&&!t.ctrlKey||(t.preventDefault(),this.zoom(Math.exp(-t.deltaY*.0015)))}middle(t){let{x:n,y:i,z:r}=this.path;return new z((n[t]+n[t+1])/2,(i[t]+i[t+1])/2,(r[t]+r[t+1])/2)}visible(t){let{kind:n,tool:i}=this.path;return n[t]===4||this.shown.tool!==null&&i[t]!==this.shown.tool?!1:n[t]===0?this.shown.rapids:n[t]===1?this.shown.air:!0}ends(t,n){let{x:i,y:r,z:s}=this.path,o=new Float32Array(t.length*6);for(let a=0,l=0;a<t.length;a++){let c=t[a],u=n[a];o[l++]=i[c],o[l++]=r[c],o[l++]=s[c],o[l++]=i[u],o[l++]=r[u],o[l++]=s[u]}return o}get cut(){return this.shown.before&&this.found?this.found:this.left}shows(t){return t===0?this.shown.rapids:t===1?this.shown.air:!0}stockParts(){let{field:t}=this.model;if(!this.shown.stock||!t)return[];if(!this.cut)return[{cost:12,form:"stock",make:()=>new $e(this.block(),this.ground())}];let n=this.ground(),i=null;return Array.from({length:Math.ceil($3(t)/Kp)},(r,s)=>({cost:Kp,form:"stock",make:()=>(i??=q3(fv(t,this.cut,this.bottom(),1),Kp),new $e(i[s]??new Je,n))}))}lineParts(){let t=[];for(let n of[0,1,2,3].filter(i=>this.shows(i))){let i=this.levels.all(n,this.shown.tool,this.quantity),r=i.from.length,s=n===3||r<=r8,o=s?hv:Y3,a=Math.floor(Kp/o);for(let l=0;l<r;l+=a){let c=Math.min(r,l+a);t.push({cost:(c-l)*o,form:`${n} ${s} ${n===2}`,make:()=>this.lines(n,{from:i.from.subarray(l,c),to:i.to.subarray(l,c),colour:i.colour.subarray(l,c)},s)})}}return t}fewFor(t){let n=this.few.get(t);if(n)return n;let i=new ui,r=[],{field:s}=this.model,o=t;this.shown.stock&&s&&!this.cut&&i.add(new $e(this.block(),this.ground())),this.shown.stock&&s&&this.cut&&(i.add(new $e(fv(s,this.cut,this.bottom(),W3(s,t*Z3)),this.ground())),o-=t*Z3);for(let[a,l]of h8.filter(([c])=>this.shows(c))){let c=this.levels.few(a,this.shown.tool,this.quantity,Math.floor(o*l/(a===3?hv:Y3)),this.radius);c.from.length&&(r.push(c),i.add(this.lines(a,c,a===3||c.from.length*hv<=o*l)))}return this.scene.add(i),this.few.set(t,{group:i,drawn:r}),this.few.get(t)}lines(t,n,i){let r=this.ends(n.from,n.to),s=this.radius/(t===3?110:45),o=t===0||t===3,a=new kt(t===2?16777215:Er(t===0?"rapid":t===1?"air":"crash")),l=t===2?this.colours(n.colour):null,c=t===2;if(i&&t===2)return this.cuts(n);if(i){let f=new ps().setPositions(r),d=new Fl(f,new ro({color:a,linewidth:s8[t],dashed:o,dashSize:s,gapSize:s,depthTest:t!==3}));return d.renderOrder=t===3?3:0,o?d.computeLineDistances():d}let u=new Je().setAttribute("position",new Ze(r,3));l&&u.setAttribute("color",new Ze(l,3));let h=new $s(u,o?new ou({color:a,dashSize:s,gapSize:s}):new Sr({color:a,vertexColors:c}));return o?h.computeLineDistances():h}cuts(t){let n=new ui;for(let i of[3,0,1,2]){let r=[];for(let c=0;c<t.from.length;c++)el(this.quantity,t.colour[c])===i&&r.push(c);if(!r.length)continue;let s=new ps().setPositions(this.ends(r.map(c=>t.from[c]),r.map(c=>t.to[c]))).setColors(this.colours(Float32Array.from(r,c=>t.colour[c]))),o=i===1,a=this.radius/60,l=new Fl(s,new ro({vertexColors:!0,linewidth:o8[i],dashed:o,dashSize:a,gapSize:a*.6}));n.add(o?l.computeLineDistances():l)}return n}colours(t){let n=eo(),i=[],r=new kt(Er("plain-cut")),s=new Float32Array(t.length*6);for(let o=0;o<256;o++)i.push(new kt(this.quantity.shade(o/255,n)));for(let o=0,a=0;o<t.length;o++){let l=t[o],{r:c,g:u,b:h}=Number.isNaN(l)?r:i[Math.round(Math.min(1,Math.max(0,l))*255)];s[a++]=c,s[a++]=u,s[a++]=h,s[a++]=c,s[a++]=u,s[a++]=h}return s}add(t){return this.always.add(t),t}bottom(){let t=this.model.field;return t.top-(t.thick??Math.max(t.deepest*1.15,this.radius/30))}ground(){return new Al({color:new kt(Er("stock")),side:Ni,flatShading:!0,polygonOffset:!0,polygonOffsetFactor:1.5,polygonOffsetUnits:2})}block(){let t=this.model.field,n=this.bottom();return new cs(t.x[1]-t.x[0],t.y[1]-t.y[0],t.top-n).translate((t.x[0]+t.x[1])/2,(t.y[0]+t.y[1])/2,(t.top+n)/2)}addEdges(){this.add(new $s(new El(this.block()),new Sr({color:new kt(Er("edge"))})))}addKeepOut(t,n){let i=new cs(n[0]-t[0],n[1]-t[1],n[2]-t[2]);i.translate((t[0]+n[0])/2,(t[1]+n[1])/2,(t[2]+n[2])/2),this.add(new $e(i,new Al({color:new kt(Er("keep-out")),transparent:!0,opacity:.45}))),this.add(new $s(new El(i),new Sr({color:new kt(Er("halt"))})))}addZero(){let t=this.radius/9,n=new Je;n.setAttribute("position",new Ze(new Float32Array([0,0,0,t,0,0,0,0,0,0,t,0,0,0,0,0,0,t]),3));let i=this.add(new $s(n,new Sr({color:new kt(Er("ink")),depthTest:!1})));i.renderOrder=4}get axis(){return this.radius/9}};function d8(e){let t=1/0,n=-1/0;for(let i=0;i<e.n;i++)e.kind[i]!==4&&(t=Math.min(t,e.z[i],e.z[i+1]),n=Math.max(n,e.z[i],e.z[i+1]));return n<t?[0,0]:[t,n]}function dv(e){for(let i of e.children)dv(i);let{geometry:t,material:n}=e;t?.dispose(),n?.dispose()}var K3=60,pv=60,p8=660,m8=680,g8=420,y8=520,x8=380,_8=420;async function v8(){if(document.documentElement.classList.add("scripted"),I3(),b8(),!document.getElementById("model"))return;await ea(!0);let e=new TextDecoder,t=JSON.parse(e.decode(await Dh("model"))),n=new Lh(await Dh("columns"));await ea();let i=e.decode(await Dh("text")).split(`
`);await ea();let r=new mv(t,n,i);await r.build(),Object.assign(window,r.hooks()),document.documentElement.dataset.ready="yes"}function ea(e=!1){return new Promise(t=>{if(!e){setTimeout(t,0);return}requestAnimationFrame(()=>setTimeout(t,0)),setTimeout(t,300)})}function b8(){let e=()=>[...document.querySelectorAll("details:not([open])")],t=[];addEventListener("beforeprint",()=>{t=e();for(let n of t)n.open=!0}),addEventListener("afterprint",()=>{for(let n of t)n.open=!1})}var mv=class{constructor(t,n,i){this.model=t;this.columns=n;this.fine=n.path(t.paths[0]),this.coarse=n.path(t.paths[1]),this.levels=new Fh(this.fine,this.coarse),this.all=DA(t,this.fine),this.quantity=this.all.find(s=>Dx(s,this.coarse)>.3)??this.all[this.all.length-1],t.findings.forEach((s,o)=>{this.findingRows.push(s.rows?n.whole(s.rows):new Int32Array),this.findingLines.push(n.whole(s.lines));for(let a of this.findingLines[o])J3(this.lineFindings,a,o);for(let a of this.findingRows[o])J3(this.rowFindings,a,o)});let r=t.kept?n.whole(t.kept):null;this.listing=new Oh(i,r?s=>r[s]:s=>s+1,t.lines,this.lineFindings,s=>this.toLine(s));for(let s of document.querySelectorAll("[data-show]"))s.addEventListener("click",()=>this.toFinding(Number(s.dataset.show),!0));P3(s=>{s&&(this.scene?.rebuild(),this.drawLegend()),this.drawPlan(),this.redrawStrips()})}model;columns;fine;coarse;levels;all;quantity;shown={stock:!0,before:!1,rapids:!0,air:!0,tool:null};scene=null;plan=null;planBox=Et("figure",{class:"from-above"});status=Et("p",{class:"status",role:"status"});legend=Et("div",{class:"legend"});pins=Et("div",{class:"pins","aria-hidden":"true"});marks=[];listing;lineFindings=new Map;rowFindings=new Map;findingRows=[];findingLines=[];chosen=null;async build(){await ea();let t=this.buildFigure();await ea();let n=this.painter(t);await ea(),n&&this.buildScene(t,n),await ea(),this.drawPlan(),this.buildStrips()}buildFigure(){let t=Et("canvas",{tabindex:"0",class:"space",role:"img","aria-describedby":"figure-keys","aria-label":"The path of the tool in space, with the stock as it is left"}),n=Et("div",{class:"space-box"},t,this.pins);return document.getElementById("figure-root").append(Et("figure",{class:"in-space"},n,this.views(t),Et("figcaption",{id:"figure-keys"},"Drag to turn; with the figure in focus: arrows turn, + and - or the wheel zoom, 0 shows all. Click the path for its line.")),this.legend,this.controls()),document.getElementById("figure-more").append(this.status,Et("div",{class:"figures"},this.planBox,Et("div",{class:"text-box"},Et("p",{class:"caption"},this.listing.whole?"The text of the program; a line in it leads to its place on the path.":"The text of the program where something points at it; the rest is left out of this page."),this.listing.element))),this.drawLegend(),this.say(null),new ResizeObserver(()=>this.fitPlan()).observe(this.planBox),t}painter(t){try{return new zp(t)}catch{return t.parentElement.replaceChildren(Et("p",{class:"aside"},"This browser cannot draw in space (WebGL is off); the drawing from above shows the same path.")),null}}buildScene(t,n){let i=this.scene=new Jp(t,n,this.model,this.fine,this.levels,this.columns,this.quantity,this.shown);i.onDraw=()=>this.placePins(),this.pins.addEventListener("click",r=>{let s=Number(r.target.dataset.pin??-1);s>=0&&this.toFinding(s,!1)}),new ResizeObserver(()=>i.resize()).observe(t),this.listen(t,i)}listen(t,n){let i=null;t.addEventListener("pointerdown",r=>{i=[r.clientX,r.clientY],t.focus({preventScroll:!0})}),t.addEventListener("pointerup",r=>{if(!i||Math.hypot(r.clientX-i[0],r.clientY-i[1])>4)return;let s=n.pick(r.clientX,r.clientY);s!==null&&this.toRow(s,!1)}),t.addEventListener("keydown",r=>{let s={ArrowLeft:[-.12,0],ArrowRight:[.12,0],ArrowUp:[0,.1],ArrowDown:[0,-.1]}[r.key];if(s)n.turn(s[0],s[1]);else if(r.key==="+"||r.key==="=")n.zoom(1.25);else if(r.key==="-")n.zoom(.8);else if(r.key==="0"||r.key==="Home")n.look("corner");else return;r.preventDefault()})}controls(){let t=Et("select",{id:"quantity"});for(let r of this.all){let s=Et("option",{value:r.key},r.label+(Dx(r,this.coarse)>0?"":" (not known)"));s.selected=r===this.quantity,t.append(s)}t.addEventListener("change",()=>{this.quantity=this.all.find(r=>r.key===t.value),this.refresh()});let n=Et("select",{id:"only-tool"},Et("option",{value:""},"all tools"));this.model.tools.forEach(r=>n.append(Et("option",{value:String(r.tool)},r.tool<0?"tool not named":`tool ${r.tool}`))),n.addEventListener("change",()=>{this.shown.tool=n.value===""?null:Number(n.value),this.refresh()});let i=(r,s)=>{let o=Et("input",{type:"checkbox",id:`show-${r}`});return o.checked=this.shown[r],o.addEventListener("change",()=>{this.shown[r]=o.checked,this.refresh()}),Et("label",{},o,s)};return Et("div",{class:"controls"},Et("label",{},"Coloured by ",t),this.model.tools.length>1?Et("label",{},"Show ",n):null,i("stock","stock as it is left"),this.model.field?.start?i("before","stock as earlier programs left it"):null,i("rapids","rapids"),i("air","feeds in the air"))}views(t){let n=Et("div",{class:"views",role:"group","aria-label":"View of the figure"}),i=(r,s)=>{let o=Et("button",{type:"button"},r);o.addEventListener("click",()=>{this.scene&&s(this.scene)}),n.append(o)};return i("corner",r=>r.look("corner")),i("above",r=>r.look("above")),i("front",r=>r.look("front")),i("right",r=>r.look("side")),i("nearer",r=>r.zoom(1.4)),i("farther",r=>r.zoom(1/1.4)),t.dataset.views="yes",n}refresh(){this.scene?.set(this.quantity,this.shown),this.drawLegend(),this.drawPlan(),this.redrawStrips()}drawLegend(){let t=eo(),n=[];for(let c=0;c<=pv;c++)n.push(this.quantity.shade(c/pv,t));let i=Et("div",{class:"bar"});i.style.background=`linear-gradient(to right, ${n.map((c,u)=>`${c} ${u*100/pv}%`).join(",")})`;let r=Et("div",{class:"ticks"});for(let[c,u]of this.quantity.ticks){let h=Et("span",{},u);h.style.left=`${c*100}%`,c===0&&h.classList.add("first"),c===1&&h.classList.add("last"),r.append(h)}for(let c of this.quantity.limits??[])i.append(M8(c));let s=this.fine.kind.includes(2),{limits:o}=this.quantity,a=(c,u,h)=>{let f=Et("li",{class:c},u);return h!==void 0&&f.style.setProperty("--own",this.quantity.shade(h,t)),f},l=o?[a("cut good","within the window",.5),a("cut thin","too thin: broad, dashed",.2),a("cut thick","too thick: broad",.85)]:[a("cut good","cut",.5)];this.legend.replaceChildren(s?Et("div",{class:"scale"},Et("p",{},Et("b",{},this.quantity.label),`: ${this.quantity.about}`),i,r):Et("p",{},"No cut is known, so nothing has a colour."),Et("ul",{class:"lines"},...s?[...l,a("plain-cut","cut, not judged or not known")]:[],a("air","feed in the air"),a("rapid","rapid"),this.fine.kind.includes(3)?a("crash","rapid in material"):null))}drawPlan(){let t=Ru()?m8:Math.max(240,Math.min(this.planBox.clientWidth||380,760));this.plan=Vp(this.model,this.levels,this.fine,this.quantity,t,this.shown.tool,!0,Ru()?g8:y8),this.drawMaps();let n=this.plan;n.svg.addEventListener("click",r=>{let s=r.target.closest("[data-pin]");if(s){this.toFinding(Number(s.dataset.pin),!1);return}let o=n.toMm(r),a=o&&this.nearest(o[0],o[1],9*n.perPixel());a!==null&&this.toRow(a,!1)});let i=["From above in the blank",this.model.field?"":"; no blank is known",this.model.hidden?`; ${this.model.hidden===1?"1 move is not drawn, as its":`${this.model.hidden.toLocaleString("en")} moves are not drawn, as their`} place in the blank is not known`:"",this.model.off>0?`; drawn to within ${ze(this.model.off*this.model.scale)} ${this.model.unit} of the ${this.model.moves.toLocaleString("en")} moves`:""];this.planBox.dataset.width=String(t),this.planBox.replaceChildren(n.svg,Et("figcaption",{},`${i.join("")}.`)),this.markPlan()}drawMaps(){for(let t of document.querySelectorAll("[data-map]")){let n=Ru()?x8:Math.max(240,Math.min(t.clientWidth||380,640)),i=Math.min(_8,n);t.replaceChildren(Vp(this.model,this.levels,this.fine,this.quantity,n,null,!0,i).svg,Et("figcaption",{},"From above: the blank, work zero, the path, and the places of what was found."))}}fitPlan(){let t=Math.max(240,Math.min(this.planBox.clientWidth,760));this.planBox.clientWidth&&Math.abs(t-Number(this.planBox.dataset.width))>20&&this.drawPlan()}nearest(t,n,i){let r=this.fine,s=null,o=i*i,a=-1/0;for(let l=0;l<r.n;l++){if(r.kind[l]>3||r.kind[l]===0&&!this.shown.rapids||this.shown.tool!==null&&r.tool[l]!==this.shown.tool)continue;let c=r.x[l+1]-r.x[l],u=r.y[l+1]-r.y[l],h=c*c+u*u,f=h>0?Math.min(1,Math.max(0,((t-r.x[l])*c+(n-r.y[l])*u)/h)):0,d=(r.x[l]+f*c-t)**2+(r.y[l]+f*u-n)**2,p=r.kind[l]===2?1:0;(d<o*.98||d<=o&&p>=a)&&(s=l,o=Math.max(d,1e-9),a=p)}return s}toFinding(t,n){let i=this.model.findings[t],r=document.querySelector(`[data-finding="${t}"]`);for(let o of document.querySelectorAll(".chosen"))o.classList.remove("chosen");r?.classList.add("chosen"),this.listing.show(i.line,this.findingLines[t]);let s=this.findingRows[t];this.scene?.light(s),i.row!==null&&this.scene?.goTo(i.row),this.choose(i.row),this.say(i.row,t),n&&document.getElementById("path").scrollIntoView({behavior:j3(),block:"start"})}toRow(t,n){let i=this.rowFindings.get(t)??[];for(let s of document.querySelectorAll(".chosen"))s.classList.remove("chosen");for(let s of i)document.querySelector(`[data-finding="${s}"]`)?.classList.add("chosen");let r=this.fine.line[t];this.listing.show(r),this.scene?.light(this.rowsOfLine(r,t)),n&&this.scene?.goTo(t),this.choose(t),this.say(t)}toLine(t){let n=this.rowOfLine(t),i=this.lineFindings.get(t)??[];for(let r of document.querySelectorAll(".chosen"))r.classList.remove("chosen");for(let r of i)document.querySelector(`[data-finding="${r}"]`)?.classList.add("chosen");this.listing.show(t),this.scene?.light(n===null?[]:this.rowsOfLine(t,n)),n!==null&&this.scene?.goTo(n),this.choose(n),this.say(n,void 0,t)}rowOfLine(t){let{line:n,n:i,x:r,y:s,z:o}=this.fine,a=[],l=[],c=null,u=0;for(let h=0;h<i;h++)n[h]===t&&this.fine.kind[h]!==4?(u+=Math.hypot(r[h+1]-r[h],s[h+1]-s[h],o[h+1]-o[h]),a.push(h),l.push(u)):n[h]<t&&(c===null||n[h]>=n[c])&&(c=h);return a.length?a[l.findIndex(h=>h>=u/2)]:this.model.off>0?c:null}rowsOfLine(t,n){let i=[];for(let r=0;r<this.fine.n&&i.length<4e3;r++)this.fine.line[r]===t&&i.push(r);return i.length?i:[n]}choose(t){this.chosen=t,this.markPlan(),this.placePins()}markPlan(){let t=this.plan?.svg;if(!t||(t.querySelector(".here")?.remove(),this.chosen===null||!this.plan))return;let n=this.chosen,i=this.fine;this.plan.mark((i.x[n]+i.x[n+1])/2,(i.y[n]+i.y[n+1])/2)}say(t,n,i){let r=[];if(t===null&&i===void 0&&n===void 0)r.push("Nothing chosen: pick a finding, the path or a line of the program.");else{let s=i??(n!==void 0?this.model.findings[n].line:this.fine.line[t]);r.push(Et("b",{},`Line ${s.toLocaleString("en")}`)),t===null?r.push(": it moves the tool nowhere that could be drawn"):r.push(`: ${this.facts(t)}`);let o=n!==void 0?[n]:i!==void 0?this.lineFindings.get(i):this.rowFindings.get(t);for(let a of(o??[]).slice(0,6))r.push(" · ",S8(a,this.model.findings[a].rule))}this.status.replaceChildren(...r)}facts(t){let n=this.fine,{most:i,scale:r,unit:s}=this.model,a=[["rapid","feed in the air","cut","rapid in material"][n.kind[t]]??""];n.tool[t]>=0&&a.push(`tool ${n.tool[t]}`);let l=(c,u,h,f)=>{c[t]!==255&&a.push(`${h} ${ze(c[t]/254*u)} ${f}`)};return n.kind[t]===2&&(l(n.chip,i.chip*r,"chip",s),l(n.depth,i.depth*r,"depth",s),l(n.force,i.force,"force to","N"),n.share[t]!==255&&n.share[t]<198&&a.push(`${Math.round(n.share[t]/2)} % of F reached`)),a.push(`to X ${ze(n.x[t+1]*r,5)} Y ${ze(n.y[t+1]*r,5)} Z ${ze(n.z[t+1]*r,4)}`),a.join(", ")}placePins(){let t=this.scene;if(!t)return;let{width:n,height:i}=t.size,r=0,s=(l,c,u,h,f=-1)=>{if(l<-20||c<-20||l>n+20||c>i+20)return;let d=this.marks[r]??(this.marks[r]=this.pins.appendChild(Et("span")));r++,d.className!==h&&(d.className=h),d.textContent!==u&&(d.textContent=u),d.dataset.pin=String(f),d.style.transform=`translate(${l.toFixed(1)}px, ${c.toFixed(1)}px)`,d.style.zIndex=String(K3+9-r)},o=t.axis*1.15;s(...t.projectPoint(o,0,0),"X","axis"),s(...t.projectPoint(0,o,0),"Y","axis"),s(...t.projectPoint(0,0,o),"Z","axis");let a=new Set;this.model.findings.forEach((l,c)=>{if(l.row===null||r>K3||this.shown.tool!==null&&l.tool!==null&&l.tool!==this.shown.tool)return;let[u,h]=t.project(l.row),f=`${Math.round(u/22)} ${Math.round(h/22)}`;a.has(f)||(a.add(f),s(u,h,String(c+1),`pin badge g-${l.grade}`,c))}),this.chosen!==null&&s(...t.project(this.chosen),"","target");for(let l of this.marks.splice(r))l.remove()}hooks(){return{gclintView:()=>this.scene?.target??null,gclintSpacePoint:(t,n,i)=>{let r=this.scene.canvas.getBoundingClientRect(),[s,o]=this.scene.projectPoint(t,n,i);return[r.left+s,r.top+o]},gclintShade:(t,n,i)=>this.all.find(r=>r.key===t).shade(n,i),gclintPlanPoint:(t,n)=>this.plan.toScreen(t,n)}}buildStrips(){let t=[...document.querySelectorAll("[data-tool]")],n=()=>{let s=t.shift();s&&this.fillStrip(s)},i=()=>{n(),t.length&&setTimeout(i,0)};setTimeout(i,0),addEventListener("beforeprint",()=>{for(;t.length;)n()});let r=0;addEventListener("resize",()=>{clearTimeout(r),r=window.setTimeout(()=>this.redrawStrips(),200)})}redrawStrips(){for(let t of document.querySelectorAll("[data-tool]"))t.childElementCount&&this.fillStrip(t)}fillStrip(t){let n=this.model.tools[Number(t.dataset.tool)],i=Ru()?p8:Math.max(280,Math.min(t.clientWidth||640,1100)),r=Vp(this.model,this.levels,this.fine,this.quantity,300,n.tool,!1).svg;t.replaceChildren(...PA(n,this.model,r,i,s=>{this.toRow(s,!0),document.getElementById("path").scrollIntoView({behavior:j3(),block:"start"})}))}};function M8(e){let t=Et("span",{class:"limit"});return t.style.left=`${e*100}%`,t}function J3(e,t,n){let i=e.get(t);i?i.push(n):e.set(t,[n])}function S8(e,t){let n=Et("a",{href:`#finding-${e+1}`},`finding ${e+1}: ${t}`);return n.addEventListener("click",()=>{let i=document.getElementById(`finding-${e+1}`)?.closest("details");i&&(i.open=!0)}),n}function j3(){return matchMedia("(prefers-reduced-motion: reduce)").matches?"instant":"smooth"}v8().catch(e=>{document.getElementById("figure-root")?.append(Et("p",{class:"aside"},`The figures could not be drawn: ${String(e)}`)),console.error(e)});})();
