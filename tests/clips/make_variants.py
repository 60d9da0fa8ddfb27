#!/usr/bin/env python3
"""Makes treated copies of a folder of clips with known truth.

usage: make_variants.py SOURCE OUT [--quick] [--only SUBSTRING] [--list]

SOURCE holds clips and a truth.json; OUT gets the treated clips and a truth.json
of the same shape. A treatment is applied to a whole set (references and cups
alike) and the result is a set of its own, named SET@TREATMENT, so that a cup is
always compared with references that went through the same camera. Clips that
must be refused land in the set "refusals".

Needs python3 and the ffmpeg and ffprobe commands, nothing else. Clips whose
command line has not changed are not made again. One ffmpeg thread at a time,
lowest priority.
"""
import argparse
import copy
import json
import os
import random
import shutil
import subprocess
import sys

X264 = ['-c:v', 'libx264', '-preset', 'veryfast', '-crf', '20',
        '-pix_fmt', 'yuv420p']
TIME_LISTS = ('continuity', 'neck_radius_mm', 'relief_rms_mm', 'radius_mm')


class Treatment:
    """How one clip is changed. `vf` may use {w} {h} {fps} {dur}.

    gain of pixels per old pixel `zoom`; `keep` drops frames; `slow` stretches
    playing time; `tagged` writes the capture rate into the file; `shift_s` is
    cut off the front; `complex_vf` is a filter graph from [0:v] to [v].
    """

    def __init__(self, vf='', codec=None, ext='mp4', zoom=1.0, slow=1,
                 tagged=False, size=None, fps_divisor=1, rotate=0, vfr=False,
                 output=(), copy_from_s=0.0, complex_vf=''):
        self.__dict__.update(locals())


def gain(expr):
    """All three components times `expr`, a function of t."""
    return (f"eq=eval=frame:contrast='{expr}':brightness='(({expr})-1)/2'"
            f":saturation='{expr}'")


def flicker(lamp_hz, depth):
    """Whole-frame brightness of a lamp seen by the camera's own clock."""
    return gain(f'1+{depth}*sin(2*PI*{lamp_hz}*t)')


def bands(lamp_hz, depth, readout_s):
    """Rolling shutter: every row sees the lamp a little later."""
    lum = (f"255*(1-{depth}*(1+sin(2*PI*{lamp_hz}*(T+{readout_s}*Y/H))))")
    return ("color=c=white:s=16x{h}:r={fps}:d={dur},format=gray,"
            f"geq=lum='{lum}',scale=" "{w}:{h}" ",format=yuv420p[b];"
            "[0:v]format=yuv420p[a];[a][b]blend=c0_mode=multiply:"
            "c1_mode=normal:c2_mode=normal:shortest=1[v]")


def shade(left, right):
    """Light falls off across the picture (a lamp on one side)."""
    lum = f"255*({left}+({right}-{left})*X/W)"
    return ("color=c=white:s=64x8:r={fps}:d={dur},format=gray,"
            f"geq=lum='{lum}',scale=" "{w}:{h}" ",format=yuv420p[b];"
            "[0:v]format=yuv420p[a];[a][b]blend=c0_mode=multiply:"
            "c1_mode=normal:c2_mode=normal:shortest=1[v]")


def shake(dx, dy, margin):
    """A window wandering over the picture, cubic interpolation."""
    x0, y0 = f'({margin}+{dx})', f'({margin}*H/W+{dy})'
    x1, y1 = f'(W-{margin}+{dx})', f'(H-{margin}*H/W+{dy})'
    return ("perspective=eval=frame:interpolation=cubic:sense=source:"
            f"x0='{x0}':y0='{y0}':x1='{x1}':y1='{y0}':"
            f"x2='{x0}':y2='{y1}':x3='{x1}':y3='{y1}'")


def smooth_path(px):
    t = '(in/{fps})'
    return (f'{px}*(0.6*sin(2*PI*0.83*{t})+0.4*sin(2*PI*2.3*{t}+1))',
            f'{px}*(0.6*sin(2*PI*0.61*{t}+2)+0.4*sin(2*PI*1.9*{t}))')


def jerky_path(px):
    # A new place about 4 times a second plus a tremor of every frame.
    n = 'floor(in/{fps}*4)'
    return (f'{px}*(sin({n}*12.9898+1)+0.25*sin(in*78.233))',
            f'{px}*(sin({n}*39.3461+2)+0.25*sin(in*43.332))')


MARGIN = 12.0


def zoomed(path):
    return Treatment(vf=shake(*path, MARGIN), zoom='margin')


ROW_READOUT_S = 0.012
TREATMENTS = {
    'same': Treatment(),
    'shakesmooth': zoomed(smooth_path(3.0)),
    'shakejerky': zoomed(jerky_path(2.0)),
    # A mains lamp at 100 or 120 Hz never beats exactly with the camera.
    'flicker100': Treatment(vf=flicker(100.3, 0.08)),
    'flicker120': Treatment(vf=flicker(119.7, 0.08)),
    'bands100': Treatment(complex_vf=bands(100.3, 0.06, ROW_READOUT_S)),
    'bands120': Treatment(complex_vf=bands(119.7, 0.06, ROW_READOUT_S)),
    'expdrift': Treatment(vf=gain('1.08-0.30*t/{dur}+0.03*sin(2*PI*t/3)')),
    'expstep': Treatment(
        vf=gain('1-0.18*clip((t-{dur}*0.45)/0.12,0,1)'
                '+0.25*clip((t-{dur}*0.7)/0.12,0,1)')),
    'wbdrift': Treatment(
        vf="eq=eval=frame:gamma_r='1+0.15*sin(2*PI*t/{dur})'"
           ":gamma_b='1-0.15*sin(2*PI*t/{dur})'"),
    'noisy': Treatment(vf='noise=c0s=10:c0f=t:c1s=6:c1f=t:c2s=6:c2f=t'),
    'verynoisy': Treatment(
        vf='noise=c0s=26:c0f=t:c1s=14:c1f=t:c2s=14:c2f=t',
        codec=X264[:5] + ['28'] + X264[6:]),
    'dark': Treatment(vf='eq=contrast=0.35:brightness=-0.325:saturation=0.4:gamma=0.9,'
                         'noise=c0s=6:c0f=t'),
    'lowrate': Treatment(vf='scale=-2:360:flags=area', size=360,
                         codec=['-c:v', 'libx264', '-preset', 'veryfast',
                                '-b:v', '220k', '-maxrate', '330k',
                                '-bufsize', '440k', '-pix_fmt', 'yuv420p']),
    'hevc10': Treatment(codec=['-c:v', 'libx265', '-preset', 'veryfast',
                               '-crf', '23', '-pix_fmt', 'yuv420p10le',
                               '-tag:v', 'hvc1', '-x265-params',
                               'pools=1:frame-threads=1:log-level=error']),
    'vp9': Treatment(ext='webm',
                     codec=['-c:v', 'libvpx-vp9', '-deadline', 'realtime',
                            '-cpu-used', '8', '-crf', '28', '-b:v', '0',
                            '-pix_fmt', 'yuv420p']),
    'mjpeg': Treatment(ext='avi', codec=['-c:v', 'mjpeg', '-q:v', '4',
                                         '-pix_fmt', 'yuvj420p']),
    # Stored turned; the display matrix turns it upright again.
    'rot90': Treatment(vf='transpose=cclock', rotate=90),
    'rot180': Treatment(vf='hflip,vflip', rotate=180),
    'rot270': Treatment(vf='transpose=clock', rotate=270),
    # About one frame in five lost, sometimes two or three in a row.
    'vfr': Treatment(vfr=True,
                     vf="select='gt(mod(abs(sin(floor(n/2)*12.9898)*437.585),1)"
                        ",0.2)+eq(n,0)'"),
    # The rate halves and comes back, as in bad light.
    'vfrhalf': Treatment(vfr=True,
                         vf="select='eq(mod(n,2),0)"
                            "+lt(mod(t,3),1.6)'"),
    'slowtag': Treatment(slow=4, tagged=True),
    'slowuntagged': Treatment(slow=4),
    'slow2untagged': Treatment(slow=2),
    'cropoff': Treatment(vf='crop=iw*0.72:ih*0.90:iw*0.22:ih*0.07'),
    'mirrored': Treatment(vf='hflip'),
    'p1080': Treatment(vf='scale=-2:1080:flags=bicubic', size=1080),
    'p720': Treatment(vf='scale=-2:720:flags=bicubic', size=720),
    'p360': Treatment(vf='scale=-2:360:flags=area', size=360),
    'defocus': Treatment(vf='gblur=sigma=1.3'),
    'halfrate': Treatment(vf="select='eq(mod(n,2),0)'", fps_divisor=2),
    'startoffset': Treatment(ext='mp4', output=['-output_ts_offset', '1.5']),
    'mkv': Treatment(ext='mkv', output=['-output_ts_offset', '0.7']),
    'editlist': Treatment(copy_from_s=0.4),
    'gray': Treatment(vf='hue=s=0'),
    'hue150': Treatment(vf='hue=h=150'),
    'sidelight': Treatment(complex_vf=shade(0.45, 1.0)),
    'contrasty': Treatment(vf='eq=contrast=1.35:gamma=1.1,unsharp=5:5:1.0'),
    'flat': Treatment(vf='eq=contrast=0.6:brightness=0.08'),
    # Cameras: held askew, seen from the side, a wide lens.
    'tilted': Treatment(vf='rotate=3.5*PI/180:bilinear=1,'
                           'crop=iw*0.86:ih*0.90'),
    'keystone': Treatment(vf='perspective=x0=0.03*W:y0=0:x1=0.97*W:y1=0.02*H'
                             ':x2=0:y2=H:x3=W:y3=0.98*H:interpolation=cubic'),
    'barrel': Treatment(vf='lenscorrection=k1=0.09:k2=0.02:i=bilinear'),
    # What a phone does to its own picture.
    'denoised': Treatment(vf='hqdn3d=6:5:9:9'),
    'sharpened': Treatment(vf='noise=c0s=5:c0f=t,hqdn3d=3:3:5:5,'
                              'unsharp=7:7:2.2'),
    'hunting': Treatment(complex_vf="[0:v]split[a][b];[b]gblur=sigma=2.2[c];"
                                    "[a][c]blend=all_expr="
                                    "'A+(B-A)*pow(max(0,sin(2*PI*T/2.3)),6)'"
                                    "[v]"),
    'ghosted': Treatment(vf="tmix=frames=3:weights='1 2 6'"),
    'threefifths': Treatment(vf='fps={fps}*0.6', fps_divisor=1 / 0.6),
    # Somebody else's programs.
    'stamped': Treatment(vf="drawbox=x=8:y=8:w=150:h=26:color=black@0.6:t=fill,"
                            "drawtext=text='%{{pts\\:hms}}':x=14:y=12"
                            ":fontsize=18:fontcolor=white"),
    'letterbox': Treatment(vf='pad=iw:ih*1.3:0:(oh-ih)/2:black'),
}

# Quick run: one or two treatments of each family on every test.
QUICK = {
    'stream': ['shakesmooth', 'flicker100', 'bands120', 'expstep', 'verynoisy',
               'lowrate', 'vfr', 'slowuntagged', 'mirrored', 'halfrate'],
    'level': ['shakejerky', 'flicker120', 'expdrift', 'noisy', 'hevc10',
              'rot90', 'slowtag'],
    'puddle': ['shakesmooth', 'bands100', 'wbdrift', 'dark', 'cropoff', 'vp9',
               'startoffset'],
}


def even(x):
    return int(x) // 2 * 2


def run(args):
    p = subprocess.run(args, capture_output=True, text=True)
    if p.returncode:
        raise SystemExit(' '.join(args) + '\n' + p.stderr[-2000:])
    return p.stdout


def probe(path):
    out = run(['ffprobe', '-v', 'error', '-select_streams', 'v:0',
               '-count_packets', '-show_entries',
               'stream=width,height,nb_read_packets,avg_frame_rate', '-of',
               'json', path])
    return json.loads(out)['streams'][0]


class Maker:
    def __init__(self, source, out, only, listing):
        self.source, self.out = source, out
        self.only, self.listing = only, listing
        self.truth = json.load(open(os.path.join(source, 'truth.json')))
        self.clips, self.sets = [], {}
        self.made = 0
        os.makedirs(out, exist_ok=True)
        self.recipes_path = os.path.join(out, 'recipes.json')
        self.recipes = {}
        if os.path.exists(self.recipes_path):
            self.recipes = json.load(open(self.recipes_path))

    def wanted(self, name):
        return not self.only or self.only in name

    def encode(self, name, args, rotate=0):
        """Runs ffmpeg with `args` into OUT/name unless it is there already.

        `rotate`: degrees the player still has to turn it clockwise; the
        tag counts the other way round and is only written when streams are
        copied, so that is a second pass.
        """
        path = os.path.join(self.out, name)
        if self.listing:
            print(name)
            return path
        key = ' '.join(args + [f'turn={rotate}'])
        if self.recipes.get(name) != key or not os.path.exists(path):
            run(['ffmpeg', '-v', 'error', '-y', '-threads', '1',
                 '-filter_threads', '1'] + args + ['-an', '-threads', '1',
                                                   path])
            if rotate:
                turned = path + '.turned.mp4'
                run(['ffmpeg', '-v', 'error', '-y', '-i', path, '-c', 'copy',
                     '-metadata:s:v:0', f'rotate={360 - rotate}', turned])
                os.replace(turned, path)
            self.recipes[name] = key
            json.dump(self.recipes, open(self.recipes_path, 'w'), indent=1)
            self.made += 1
            print(f'\r{self.made} made, last {name}      ', end='',
                  file=sys.stderr, flush=True)
        return path

    def source_path(self, clip):
        return os.path.join(self.source, clip['file'])

    def treat(self, clip, name):
        t = TREATMENTS[name]
        fps, w, h = clip['fps_true'], clip['width'], clip['height']
        played = clip['fps_container']
        duration = clip['duration_container_s']
        fill = dict(w=w, h=h, fps=f'{played:g}', dur=f'{duration:g}')
        stem = os.path.splitext(clip['file'])[0]
        file = f'{stem}@{name}.{t.ext}'
        args = ['-i', self.source_path(clip)]
        if t.copy_from_s:
            args = ['-ss', f'{t.copy_from_s}'] + args + ['-c', 'copy']
        else:
            vf = []
            if t.vf:
                vf.append(t.vf.format(**fill))
            if t.slow != 1:
                vf.append(f'setpts={t.slow}*PTS')
            if t.complex_vf:
                args += ['-filter_complex', t.complex_vf.format(**fill),
                         '-map', '[v]']
            elif vf:
                args += ['-vf', ','.join(vf)]
            if t.vfr:
                args += ['-vsync', 'vfr', '-enc_time_base', '1:90000',
                         '-video_track_timescale', '90000']
            else:
                args += ['-r', f'{played / t.slow / t.fps_divisor:g}']
            args += t.codec or X264
        if t.tagged:
            args += ['-movflags', 'use_metadata_tags', '-metadata',
                     f'com.android.capture.fps={fps:g}']
        args += list(t.output)
        path = self.encode(file, args, t.rotate)
        c = copy.deepcopy(clip)
        c.update(file=file, set=f"{clip['set']}@{name}", treatment=name,
                 rotation_deg=t.rotate)
        if self.listing:
            return c
        info = probe(path)
        sw, sh = info['width'], info['height']
        if t.rotate in (90, 270):
            sw, sh = sh, sw
        zoom = t.zoom
        if zoom == 'margin':
            zoom = w / (w - 2 * MARGIN)
        if t.size:
            zoom = sh / h
        c.update(width=sw, height=sh, size_bytes=os.path.getsize(path))
        if c.get('mm_per_px'):
            c['mm_per_px'] = round(c['mm_per_px'] / zoom, 6)
        args_in = c['measure_args']
        if args_in.get('mm_per_px'):
            args_in['mm_per_px'] = round(args_in['mm_per_px'] / zoom, 6)
        c['fps_true'] = fps / t.fps_divisor
        c['fps_container'] = played / t.slow / t.fps_divisor
        c['time_scale'] = clip['time_scale'] / t.slow
        c['duration_container_s'] = round(duration * t.slow, 6)
        c['frames'] = int(info['nb_read_packets'])
        if t.slow != 1 and not t.tagged:
            args_in['shot_fps'] = fps
        if t.copy_from_s:
            skipped = round(t.copy_from_s * played)
            c['frames'] -= skipped
            self.shift(c, skipped / fps)
        self.containers(c)
        return c

    @staticmethod
    def shift(c, seconds):
        """Moves every time of the truth so that 0 is `seconds` later."""
        move = lambda x: None if x is None else round(x - seconds, 6)
        for k, v in c.get('events_true_s', {}).items():
            c['events_true_s'][k] = ([move(x) for x in v]
                                     if isinstance(v, list) else move(v))
        if c.get('break_window_s'):
            c['break_window_s'] = [move(x) for x in c['break_window_s']]
        for k in TIME_LISTS:
            if c.get(k):
                c[k] = [[move(row[0])] + row[1:] for row in c[k]]
        c['duration_true_s'] = move(c['duration_true_s'])
        c['duration_container_s'] = round(
            c['duration_true_s'] / c['time_scale'], 6)

    @staticmethod
    def containers(c):
        f = 1.0 / c['time_scale']
        c['events_container_s'] = {
            k: [round(x * f, 6) for x in v] if isinstance(v, list)
            else (None if v is None else round(v * f, 6))
            for k, v in c['events_true_s'].items()}

    def treated_sets(self, plan, few):
        for name, info in self.truth['sets'].items():
            members = [c for c in self.truth['clips'] if c['set'] == name
                       and c['expect'] == 'measured']
            if not members:
                continue
            refs = [c for c in members if c['role'] == 'reference'
                    and not c['nuisances']]
            cups = sorted((c for c in members if c['role'] == 'colour'),
                          key=lambda c: c['ratio_kinematic'])
            if few and len(cups) > 2:
                cups = [cups[0], cups[-1]]
            for t in plan.get(members[0]['kind'], []):
                set_name = f'{name}@{t}'
                if not self.wanted(set_name):
                    continue
                made = [self.treat(c, t) for c in refs + cups]
                self.clips += made
                self.sets[set_name] = {
                    'reference_nu_mm2_s': info.get('reference_nu_mm2_s'),
                    'clips': [c['file'] for c in made]}

    # --- refusals -------------------------------------------------------

    def refuse(self, clip, what, args, expect='refused', test=None):
        """A clip made from `clip` that must not be answered."""
        stem = os.path.splitext(clip['file'])[0]
        file = f'{stem}!{what}.mp4'
        if not self.wanted(f'refusals {file}'):
            return
        self.encode(file, args)
        test = test or clip['kind']
        c = dict(file=file, kind=test, set='refusals', role='refusal',
                 expect=expect, nuisances=[what], paint=clip.get('paint'),
                 mu_pa_s=clip['mu_pa_s'], rho_kg_m3=clip['rho_kg_m3'],
                 sigma_n_m=clip['sigma_n_m'], nu_mm2_s=clip['nu_mm2_s'],
                 ratio_kinematic=clip['ratio_kinematic'],
                 ratio_dynamic=clip['ratio_dynamic'],
                 fps_true=clip['fps_true'],
                 fps_container=clip['fps_container'],
                 time_scale=clip['time_scale'], events_true_s={},
                 measure_args=dict(clip['measure_args'], test=test))
        self.clips.append(c)

    def refusals(self, per_kind):
        for kind in ('stream', 'level', 'puddle'):
            clips = [c for c in self.truth['clips'] if c['kind'] == kind
                     and c['expect'] == 'measured']
            # Spread over the folder, the same ones every time.
            random.Random(7).shuffle(clips)
            for clip in clips[:per_kind]:
                self.refusals_of(clip, kind)

    def refusals_of(self, clip, kind):
        src = ['-i', self.source_path(clip)]
        f = 1.0 / clip['time_scale']  # real to playing seconds
        ev = clip['events_true_s']
        end = clip['duration_true_s']
        w, h = clip['width'], clip['height']

        def part(what, a, b, expect='refused'):
            if b - a > 0.4:
                self.refuse(clip, what, src + [
                    '-vf', f'trim={a * f:.4f}:{b * f:.4f},setpts=PTS-STARTPTS']
                    + X264, expect)

        def filtered(what, vf, expect='refused'):
            self.refuse(clip, what, src + ['-vf', vf] + X264, expect)

        if kind == 'stream':
            window = clip['break_window_s']
            fall = window[0] - ev['lift_s']
            part('endsbeforelift', 0, ev['lift_s'] - 0.15)
            part('startsafterlift', ev['lift_s'] + 0.25 * fall, end)
            part('endsbeforebreak', 0, window[0] - 0.12 * fall)
            part('startsafterbreak', window[1] + 0.3, end)
            mid = ev['lift_s'] + 0.5 * fall
        elif kind == 'level':
            lay = ev.get('lay_start_s', ev['laid_s'] - 1.0)
            part('endsbeforelaid', 0, ev['laid_s'] - 0.2)
            part('endsatlaid', 0, ev['laid_s'] + 0.05)
            part('startsafterlevelled', end - 0.8, end)
            mid = 0.5 * (lay + ev['laid_s'])
        else:
            part('endsbeforestart', 0, ev['start_s'] - 0.05)
            part('endsatpourend', 0, ev['pour_end_s'] + 0.2)
            mid = ev['pour_end_s'] + 1.0
        filtered('reversed', 'reverse')
        n = round(mid * clip['fps_true'])
        fps = clip['fps_container']
        rest = round((end - mid) * clip['fps_true'])
        filtered('frozen', f"select='eq(n,{n})',loop={int(4 * fps)}:1:0,"
                           f'setpts=N/{fps:g}/TB')
        filtered('freezes', f'trim=end_frame={n},loop={rest}:1:{n - 1},'
                            f'setpts=N/{fps:g}/TB')
        self.refuse(clip, 'twice', src + src + [
            '-filter_complex', '[0:v][1:v]concat=n=2:v=1[v]', '-map', '[v]']
            + X264)
        # A corner of the first picture, held up by noise: a table, no cup.
        corner = ('crop=iw*0.22:ih*0.25:0:0' if kind != 'puddle'
                  else 'crop=iw*0.2:ih*0.3:iw*0.15:0')
        filtered('tableonly', f"select='eq(n,0)',{corner},"
                              f'scale={even(w)}:{even(h)},'
                              f'loop={int(5 * fps)}:1:0,setpts=N/{fps:g}/TB,'
                              'noise=c0s=5:c0f=t')
        filtered('black', 'lutyuv=y=17:u=128:v=128,noise=c0s=3:c0f=t')
        filtered('overblurred', f'gblur=sigma={h / 9:.0f}')
        others = {'stream': 'puddle', 'level': 'stream', 'puddle': 'level'}
        self.refuse(clip, f'as{others[kind]}', src + ['-c', 'copy'],
                    test=others[kind])

    def finish(self):
        if self.listing:
            return
        keep = {c['file'] for c in self.clips}
        truth = dict(note='treated copies made by make_variants.py; the truth '
                          'is that of the clip they came from',
                     sets=self.sets, clips=self.clips)
        with open(os.path.join(self.out, 'truth.json'), 'w') as f:
            json.dump(truth, f, indent=1)
        size = sum(os.path.getsize(os.path.join(self.out, n)) for n in keep)
        print(f'\n{len(keep)} clips in {len(self.sets)} sets, '
              f'{size / 1e6:.0f} MB in {self.out}', file=sys.stderr)


def main():
    ap = argparse.ArgumentParser(
        description='Treated copies of clips with known truth.')
    ap.add_argument('source', help='folder with clips and truth.json')
    ap.add_argument('out', help='folder to write')
    ap.add_argument('--quick', action='store_true',
                    help='fewer treatments, two cups a set, one refusal each')
    ap.add_argument('--only', help='only sets or refusals holding this text')
    ap.add_argument('--list', action='store_true', help='name them, make none')
    o = ap.parse_args()
    for tool in ('ffmpeg', 'ffprobe'):
        if not shutil.which(tool):
            raise SystemExit(f'{tool} is not installed.')
    os.nice(19)
    m = Maker(o.source, o.out, o.only, o.list)
    plan = QUICK if o.quick else {
        k: [t for t in TREATMENTS if t != 'same'] for k in QUICK}
    m.treated_sets(plan, few=o.quick)
    m.refusals(1 if o.quick else 3)
    m.finish()


if __name__ == '__main__':
    main()
